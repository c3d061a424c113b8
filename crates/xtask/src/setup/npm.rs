//! Packages of npm, each at one version into `.tools/NAME-VERSION/`, without a lock file.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::error::Error;
use crate::project;
use crate::run::{step, works};

/// Whether there is an npm to install with.
pub fn is_here() -> bool {
    works(Command::new("npm").arg("--version"))
}

/// Where a package at a version is, or would be, with the folder `node_modules` in it.
pub fn place(name: &str, version: &str) -> PathBuf {
    project::tools().join(format!("{name}-{version}"))
}

/// Installs a package at its place.
pub fn install(what: &str, name: &str, version: &str) -> Result<(), Error> {
    let root: &Path = &place(name, version);
    std::fs::create_dir_all(root).map_err(Error::at(root))?;
    let mend = format!("npm install --prefix .tools/{name}-{version} {name}@{version}");
    step(
        &format!("installing {what} from npm (some seconds)"),
        Some(&mend),
        Command::new("npm")
            .args([
                "install",
                "--no-audit",
                "--no-fund",
                "--no-package-lock",
                "--loglevel=error",
                "--prefix",
            ])
            .arg(root)
            .arg(format!("{name}@{version}")),
    )
}
