//! wasm-opt, which makes the app smaller: the npm package `binaryen`.

use std::path::PathBuf;
use std::process::Command;

use super::npm;
use crate::error::Error;
use crate::run::{say, works};

const NAME: &str = "binaryen";

/// Its version is also in Trunk.toml.
const VERSION: &str = "132";

/// Folder with wasm-opt; `None` where there is no npm, and Trunk is left to fetch its own.
pub fn ready() -> Result<Option<PathBuf>, Error> {
    let binaries = npm::place(NAME, VERSION).join("node_modules").join(".bin");
    if works(Command::new(binaries.join("wasm-opt")).arg("--version")) {
        return Ok(Some(binaries));
    }
    if !npm::is_here() {
        say("no npm here, so Trunk will fetch wasm-opt itself");
        return Ok(None);
    }
    npm::install("wasm-opt", NAME, VERSION)?;
    Ok(Some(binaries))
}
