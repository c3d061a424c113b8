//! Packages of Debian, where the machine is one and may install.

use std::path::Path;
use std::process::Command;

use crate::error::Error;
use crate::run::{output, step};

/// Installs packages, or says what a person would have to do.
pub fn install(tool: &'static str, packages: &[&str]) -> Result<(), Error> {
    let list = packages.join(" ");
    let missing = |why: &str| Error::Missing {
        tool,
        why: why.to_owned(),
        mend: format!("sudo apt-get update && sudo apt-get install -y {list}"),
    };
    if !Path::new("/usr/bin/apt-get").exists() {
        return Err(missing("this machine has no apt-get to install it with"));
    }
    if output(Command::new("id").arg("-u")).as_deref() != Some("0") {
        return Err(missing("installing packages takes root"));
    }
    step(
        "reading Debian's package lists",
        None,
        Command::new("apt-get").args(["-q", "update"]),
    )?;
    step(
        &format!("installing {list} (about a minute)"),
        None,
        Command::new("apt-get")
            .args(["-q", "-y", "--no-install-recommends", "install"])
            .args(packages)
            .env("DEBIAN_FRONTEND", "noninteractive"),
    )
}
