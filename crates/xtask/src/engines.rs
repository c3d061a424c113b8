//! The main journey in the engines of other browsers: Firefox, and WebKit, which every browser of an iPhone is made on.

use std::process::Command;

use crate::app;
use crate::error::Error;
use crate::project;
use crate::run::{say, step};
use crate::setup::engines;

/// Goes the journey where the browsers can be had. A machine that cannot have them still has every test in Chromium.
pub fn where_they_are() -> Result<(), Error> {
    match journey() {
        Err(missing @ Error::Missing { .. }) => {
            say(&format!("Firefox and WebKit are left out: {missing}"));
            Ok(())
        }
        gone => gone,
    }
}

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
