//! Tools that come from crates.io, built once into `.tools/NAME-VERSION/`.

use std::path::PathBuf;
use std::process::Command;

use crate::error::Error;
use crate::project;
use crate::run::{step, works};

/// Puts the app together: builds it, calls wasm-bindgen and wasm-opt, names files by their content.
pub fn trunk() -> Result<PathBuf, Error> {
    install("trunk", "0.21.14", "trunk", true, "2 to 6 minutes")
}

/// Writes the JavaScript between the browser and the app, and runs tests in a browser.
///
/// One version with the `wasm-bindgen` crate in web/Cargo.toml and in Trunk.toml.
pub fn wasm_bindgen() -> Result<PathBuf, Error> {
    // Its own lock file names versions that no longer build.
    install(
        "wasm-bindgen-cli",
        "0.2.130",
        "wasm-bindgen",
        false,
        "1 to 2 minutes",
    )
}

/// Drives Firefox.
pub fn geckodriver() -> Result<PathBuf, Error> {
    install(
        "geckodriver",
        "0.37.1",
        "geckodriver",
        true,
        "1 to 2 minutes",
    )
}

/// Folder with the binaries of a crate at a version.
fn install(
    name: &'static str,
    version: &str,
    program: &str,
    locked: bool,
    takes: &str,
) -> Result<PathBuf, Error> {
    let root = project::tools().join(format!("{program}-{version}"));
    let binaries = root.join("bin");
    if works(Command::new(binaries.join(program)).arg("--version")) {
        return Ok(binaries);
    }
    let mut command = Command::new("cargo");
    command
        .args(["install", name, "--version", version, "--root"])
        .arg(&root)
        .arg("--target-dir")
        .arg(project::tools().join("build"))
        // These tools wait for the compiler and not the other way round: built plainly they are there three times sooner.
        .envs([
            ("CARGO_PROFILE_RELEASE_LTO", "off"),
            ("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16"),
            ("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1"),
        ]);
    if locked {
        command.arg("--locked");
    }
    let mend = format!(
        "cargo install {name} --version {version} --root {}",
        root.display()
    );
    step(
        &format!("building {name} {version} from crates.io ({takes})"),
        Some(&mend),
        &mut command,
    )?;
    Ok(binaries)
}
