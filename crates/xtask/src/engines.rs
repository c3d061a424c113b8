//! The main journey in the engines of other browsers: Firefox, and WebKit, which every browser of an iPhone is made on. It is a job of its own and no
//! part of the tests, which no browser that a machine cannot have should stop.

use std::process::Command;

use crate::app;
use crate::error::Error;
use crate::project;
use crate::run::step;
use crate::setup::engines;

/// Builds the app and goes the journey in each.
pub fn journey() -> Result<(), Error> {
    let firefox = engines::firefox()?;
    let webkit = engines::webkit()?;
    let dist = app::build(None)?;
    let mut command = Command::new("xvfb-run");
    command
        .current_dir(project::root())
        .args(["--auto-servernum", "cargo", "test", "--package"])
        .args(["winterset-tests", "--features", "browser", "--test"])
        .arg("engines")
        .env("WINTERSET_DIST", dist)
        .env("WINTERSET_FIREFOX", firefox.browser)
        .env("WINTERSET_GECKODRIVER", firefox.driver)
        .env("WINTERSET_MINIBROWSER", webkit.browser)
        .env("WINTERSET_WEBKITDRIVER", webkit.driver);
    if let Ok(own) = std::env::current_exe() {
        command.env("WINTERSET_SERVER", own);
    }
    step(
        "going the main journey in Firefox and WebKit",
        None,
        &mut command,
    )
}
