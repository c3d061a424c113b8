//! wasm-opt, which makes the app smaller: the npm package `binaryen`.

use std::path::PathBuf;
use std::process::Command;

use crate::error::Error;
use crate::project;
use crate::run::{say, step, works};

/// Its version is also in Trunk.toml.
const VERSION: &str = "132";

/// Folder with wasm-opt; `None` where there is no npm, and Trunk is left to fetch its own.
pub fn ready() -> Result<Option<PathBuf>, Error> {
    let root = project::tools().join(format!("binaryen-{VERSION}"));
    let binaries = root.join("node_modules").join(".bin");
    if works(Command::new(binaries.join("wasm-opt")).arg("--version")) {
        return Ok(Some(binaries));
    }
    if !works(Command::new("npm").arg("--version")) {
        say("no npm here, so Trunk will fetch wasm-opt itself");
        return Ok(None);
    }
    std::fs::create_dir_all(&root).map_err(Error::at(&root))?;
    step(
        "installing wasm-opt from npm (some seconds)",
        Some("npm install --prefix .tools/binaryen-132 binaryen@132"),
        Command::new("npm")
            .args([
                "install",
                "--no-audit",
                "--no-fund",
                "--no-package-lock",
                "--loglevel=error",
                "--prefix",
            ])
            .arg(&root)
            .arg(format!("binaryen@{VERSION}")),
    )?;
    Ok(Some(binaries))
}
