//! A browser and its driver, for tests and screenshots.

use std::path::PathBuf;
use std::process::Command;

use super::debian;
use crate::error::Error;
use crate::run::works;

/// A browser with its driver.
pub struct Browser {
    /// chromedriver.
    pub driver: PathBuf,
}

/// Finds or installs Chromium with its driver.
pub fn ready() -> Result<Browser, Error> {
    let has = |program: &str| works(Command::new(program).arg("--version"));
    let browser = || {
        ["chromium", "google-chrome", "chrome"]
            .iter()
            .any(|name| has(name))
    };
    if !(browser() && has("chromedriver")) {
        debian::install("Chromium with its driver", &["chromium", "chromium-driver"])?;
    }
    Ok(Browser {
        driver: PathBuf::from("chromedriver"),
    })
}
