//! Python with the outside libraries that reference values come from, in an environment of its own under `.tools/`.

use std::path::PathBuf;
use std::process::Command;

use sha2::{Digest, Sha256};

use super::debian;
use crate::error::Error;
use crate::project;
use crate::run::{step, works};

/// The interpreter.
pub fn ready() -> Result<PathBuf, Error> {
    let wanted = project::root().join("tests/reference/requirements.txt");
    let text = std::fs::read(&wanted).map_err(Error::at(&wanted))?;
    // Another list of requirements is another environment.
    let digest: String = Sha256::digest(&text)
        .iter()
        .take(4)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let root = project::tools().join(format!("python-{digest}"));
    let python = root.join("bin/python");
    let complete = root.join("complete");
    if complete.exists() && works(Command::new(&python).arg("--version")) {
        return Ok(python);
    }
    if !works(Command::new("python3").args(["-c", "import venv, ensurepip"])) {
        debian::install("Python 3 with venv", &["python3", "python3-venv"])?;
    }
    step(
        "making a Python environment",
        Some("sudo apt-get install -y python3-venv"),
        Command::new("python3")
            .args(["-m", "venv", "--clear"])
            .arg(&root),
    )?;
    step(
        "installing the reference libraries from PyPI (about a minute)",
        None,
        Command::new(&python)
            .args([
                "-m",
                "pip",
                "install",
                "-q",
                "--disable-pip-version-check",
                "-r",
            ])
            .arg(&wanted),
    )?;
    std::fs::write(&complete, b"").map_err(Error::at(&complete))?;
    Ok(python)
}
