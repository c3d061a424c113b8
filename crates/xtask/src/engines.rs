//! The main journey in the engines of other browsers: Firefox, and WebKit, which every browser of an iPhone is made on. It is a job of its own and no
//! part of the tests, which no browser that a machine cannot have should stop.

use std::path::Path;
use std::process::Command;

use crate::app;
use crate::error::Error;
use crate::project;
use crate::run::{say, step};
use crate::setup::engines;

/// Builds the app and goes the journey in each that can be had; one that cannot is said, and stops only where there is no other.
pub fn journey() -> Result<(), Error> {
    let dist = app::build(None)?;
    let mut missing = Vec::new();
    for gone in [in_firefox(&dist), in_webkit(&dist)] {
        match gone {
            Err(error @ Error::Missing { .. }) => {
                say(&format!("left out: {error}"));
                missing.push(error);
            }
            gone => gone?,
        }
    }
    match missing.pop() {
        Some(error) if missing.len() == 1 => Err(error),
        _ => Ok(()),
    }
}

fn in_firefox(dist: &Path) -> Result<(), Error> {
    let firefox = engines::firefox()?;
    let mut command = Command::new("cargo");
    command
        .env("WINTERSET_FIREFOX", firefox.browser)
        .env("WINTERSET_GECKODRIVER", firefox.driver);
    go("Firefox", "firefox", dist, &mut command)
}

fn in_webkit(dist: &Path) -> Result<(), Error> {
    let webkit = engines::webkit()?;
    let mut command = Command::new("xvfb-run");
    command
        .args(["--auto-servernum", "cargo"])
        .env("WINTERSET_MINIBROWSER", webkit.browser)
        .env("WINTERSET_WEBKITDRIVER", webkit.driver);
    go("WebKit", "webkit", dist, &mut command)
}

/// Runs the tests of a name with what has been told about their browser.
fn go(browser: &str, name: &str, dist: &Path, command: &mut Command) -> Result<(), Error> {
    command
        .current_dir(project::root())
        .args(["test", "--package", "winterset-tests"])
        .args(["--features", "browser", "--test", "engines", name])
        .env("WINTERSET_DIST", dist);
    if let Ok(own) = std::env::current_exe() {
        command.env("WINTERSET_SERVER", own);
    }
    step(
        &format!("going the main journey in {browser}"),
        None,
        command,
    )
}
