//! Browsers of other engines than Chromium's, each with its driver.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::{cargo_tools, debian};
use crate::error::Error;
use crate::run::works;

/// Folders that may hold the plain browser of WebKitGTK, the newest first.
const MINI_BROWSERS: [&str; 2] = [
    "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser",
    "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.0/MiniBrowser",
];

/// Firefox and its driver.
pub struct Firefox {
    /// The browser.
    pub browser: &'static str,
    /// Its driver.
    pub driver: PathBuf,
}

/// WebKitGTK's plain browser and its driver.
pub struct WebKit {
    /// The browser.
    pub browser: PathBuf,
    /// Its driver.
    pub driver: &'static str,
}

/// Finds or installs Firefox with its driver.
pub fn firefox() -> Result<Firefox, Error> {
    let found = || {
        let names = ["/usr/bin/firefox-esr", "/usr/bin/firefox"];
        names.into_iter().find(|path| Path::new(path).exists())
    };
    if found().is_none() {
        debian::install("Firefox", &["firefox-esr"])?;
    }
    Ok(Firefox {
        browser: found().unwrap_or("firefox"),
        driver: cargo_tools::geckodriver()?.join("geckodriver"),
    })
}

/// Finds or installs WebKitGTK's driver, the browser that comes with it, and a screen for it: it has no way to run without one.
pub fn webkit() -> Result<WebKit, Error> {
    let found = || {
        let paths = MINI_BROWSERS.into_iter().map(PathBuf::from);
        paths.into_iter().find(|path| path.exists())
    };
    let has = |program: &str| works(Command::new("which").arg(program));
    if found().is_none() || !has("WebKitWebDriver") || !has("xvfb-run") {
        debian::install(
            "WebKitGTK with its driver",
            &["webkit2gtk-driver", "xvfb", "xauth"],
        )?;
    }
    Ok(WebKit {
        browser: found().unwrap_or_default(),
        driver: "WebKitWebDriver",
    })
}
