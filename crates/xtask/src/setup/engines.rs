//! Browsers of other engines than Chromium's, each with its driver.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::{cargo_tools, debian};
use crate::error::Error;
use crate::run::works;

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
        browser: found().ok_or_else(|| still_missing("Firefox", "firefox-esr"))?,
        driver: cargo_tools::geckodriver()?.join("geckodriver"),
    })
}

/// Finds or installs WebKitGTK's driver, the browser that comes with it, and a screen for it: it has no way to run without one.
pub fn webkit() -> Result<WebKit, Error> {
    let has = |program: &str| works(Command::new("which").arg(program));
    if mini_browser().is_none() || !has("WebKitWebDriver") || !has("xvfb-run") {
        debian::install(
            "WebKitGTK with its driver",
            &["webkit2gtk-driver", "xvfb", "xauth"],
        )?;
    }
    Ok(WebKit {
        browser: mini_browser()
            .ok_or_else(|| still_missing("WebKitGTK's browser", "webkit2gtk-driver"))?,
        driver: "WebKitWebDriver",
    })
}

/// The plain browser of WebKitGTK, whose folder is named by the machine's kind and the library's version; of several, the newest.
fn mini_browser() -> Option<PathBuf> {
    let folders = |folder: &Path| -> Vec<PathBuf> {
        let read = std::fs::read_dir(folder).into_iter().flatten().flatten();
        read.map(|entry| entry.path()).collect()
    };
    folders(Path::new("/usr/lib"))
        .iter()
        .flat_map(|kind| folders(kind))
        .filter(|folder| {
            let name = folder.file_name().unwrap_or_default().to_string_lossy();
            name.starts_with("webkit2gtk-")
        })
        .map(|folder| folder.join("MiniBrowser"))
        .filter(|browser| browser.is_file())
        .max()
}

fn still_missing(tool: &'static str, package: &str) -> Error {
    Error::Missing {
        tool,
        why: "it is not where its package puts it".to_owned(),
        mend: format!("sudo apt-get install --reinstall {package}"),
    }
}
