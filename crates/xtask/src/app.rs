//! Building the app.

use std::path::{Path, PathBuf};
use std::process::Command;

use sha2::{Digest, Sha256};

use crate::error::Error;
use crate::project;
use crate::run::{say, step};
use crate::setup::WebTools;

/// Builds the app into `dist/`.
pub fn build(base_path: Option<&str>) -> Result<PathBuf, Error> {
    let dist = project::dist();
    build_into(&dist, base_path)?;
    Ok(dist)
}

/// Builds the app into a folder, unless what is there was built from the same sources for the same place.
pub fn build_into(dist: &Path, base_path: Option<&str>) -> Result<(), Error> {
    if let Some(base) = base_path {
        check_base_path(base)?;
    }
    let stamp = stamp(base_path)?;
    let name = dist.file_name().unwrap_or_default();
    let kept = project::target().join(name).with_extension("stamp");
    if dist.join("index.html").exists()
        && std::fs::read_to_string(&kept).is_ok_and(|old| old == stamp)
    {
        say(&format!("{}/ is up to date", name.display()));
        return Ok(());
    }
    let tools = WebTools::ready()?;
    let mut trunk = Command::new("trunk");
    tools.wasm.apply(&mut trunk);
    trunk
        .current_dir(project::root())
        .env("PATH", tools.search_path())
        .args(["build", "--release", "--dist"])
        .arg(dist);
    if let Some(base) = base_path {
        trunk.args(["--public-url", base]);
    }
    step(
        "building the app (the first time 3 to 5 minutes, then less)",
        Some("cargo xtask build, and read what the compiler says above"),
        &mut trunk,
    )?;
    std::fs::write(&kept, stamp).map_err(Error::at(&kept))
}

/// Refuses a base path that could not stand in an address as it is.
pub fn check_base_path(base: &str) -> Result<(), Error> {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"/-._~".contains(&byte);
    if base.starts_with('/')
        && base.ends_with('/')
        && !base.contains("//")
        && base.bytes().all(plain)
    {
        return Ok(());
    }
    Err(Error::Usage {
        wanted: "a base path of letters, digits, - . _ ~ and slashes that starts and ends with a slash, such as /some/folder/",
    })
}

/// A digest of everything that the app is built from.
fn stamp(base_path: Option<&str>) -> Result<String, Error> {
    let root = project::root();
    let mut files = Vec::new();
    for part in [
        "Cargo.toml",
        "Cargo.lock",
        "Trunk.toml",
        "index.html",
        "crates",
        "web",
        "tests/systems",
    ] {
        collect(&root.join(part), &mut files)?;
    }
    files.sort();
    let mut digest = Sha256::new();
    digest.update(base_path.unwrap_or_default());
    for file in files {
        digest.update(file.to_string_lossy().as_bytes());
        digest.update(std::fs::read(&file).map_err(Error::at(&file))?);
    }
    Ok(hex(&digest.finalize()))
}

/// Every file below a path.
pub fn collect(path: &Path, into: &mut Vec<PathBuf>) -> Result<(), Error> {
    if path.is_file() {
        into.push(path.to_owned());
        return Ok(());
    }
    for entry in std::fs::read_dir(path).map_err(Error::at(path))? {
        collect(&entry.map_err(Error::at(path))?.path(), into)?;
    }
    Ok(())
}

/// Bytes in hexadecimal digits.
pub fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
