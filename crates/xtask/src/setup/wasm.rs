//! A toolchain that builds for the browser: rustup's target where it is to be had, else Debian's compiler with its sources of the
//! standard library.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::debian;
use crate::error::Error;
use crate::project;
use crate::run::{output, say, works};

/// The target.
pub const TARGET: &str = "wasm32-unknown-unknown";

/// How to call cargo for the browser.
pub struct Toolchain {
    /// Folder with the cargo to use, in front of the search path.
    pub path: Option<PathBuf>,
    environment: Vec<(&'static str, String)>,
}

impl Toolchain {
    /// Cargo for the browser's target.
    pub fn cargo(&self) -> Command {
        let cargo = match &self.path {
            Some(folder) => folder.join("cargo"),
            None => PathBuf::from("cargo"),
        };
        let mut command = Command::new(cargo);
        self.apply(&mut command);
        command
    }

    /// Sets the environment that any program which calls cargo needs.
    pub fn apply(&self, command: &mut Command) {
        // What the cargo that runs this program set for itself is not for another one.
        for (name, _) in std::env::vars_os() {
            let own = name.to_str().is_some_and(|name| {
                name == "CARGO"
                    || name.starts_with("CARGO_PKG_")
                    || name.starts_with("CARGO_MANIFEST_")
            });
            if own {
                command.env_remove(&name);
            }
        }
        command
            .env("CARGO_TARGET_DIR", project::web_target())
            .envs(self.environment.iter().map(|(name, value)| (name, value)));
    }
}

/// Finds or installs it.
pub fn ready() -> Result<Toolchain, Error> {
    let rustup = Toolchain {
        path: None,
        environment: Vec::new(),
    };
    if has_target() {
        return Ok(rustup);
    }
    say("asking rustup for the browser's target");
    if works(Command::new("rustup").args(["target", "add", TARGET])) && has_target() {
        return Ok(rustup);
    }
    say("rustup cannot give the browser's target here; turning to Debian's compiler");
    debian_toolchain()
}

fn has_target() -> bool {
    output(Command::new("rustc").args(["--print", "target-libdir", "--target", TARGET]))
        .is_some_and(|folder| Path::new(&folder).is_dir())
}

const DEBIAN_SOURCES: &str = "/usr/lib/rustlib/src/rust/library/std/Cargo.toml";

fn debian_has_sources() -> bool {
    output(Command::new("/usr/bin/rustc").args(["--print", "sysroot"]))
        .map(|sysroot| Path::new(&sysroot).join("lib/rustlib/src/rust/library/std/Cargo.toml"))
        .is_some_and(|sources| sources.exists())
        || Path::new(DEBIAN_SOURCES).exists()
}

fn debian_toolchain() -> Result<Toolchain, Error> {
    let complete = || {
        works(Command::new("/usr/bin/cargo").arg("--version"))
            && works(Command::new("/usr/bin/rustc").arg("--version"))
            && debian_has_sources()
            && linker().is_some()
    };
    if !complete() {
        let mut packages = vec!["rustc-web", "cargo-web", "rust-web-src"];
        // The toolchain of rustup brings a linker of its own.
        if linker().is_none() {
            packages.push("lld");
        }
        debian::install("a Rust compiler for the browser", &packages)?;
    }
    let linker = linker().ok_or_else(|| Error::Missing {
        tool: "rust-lld",
        why: "neither the Rust toolchain nor Debian's lld has it".to_owned(),
        mend: "sudo apt-get install -y lld".to_owned(),
    })?;
    Ok(Toolchain {
        path: Some(PathBuf::from("/usr/bin")),
        environment: vec![
            ("RUSTC", "/usr/bin/rustc".to_owned()),
            ("RUSTDOC", "/usr/bin/rustdoc".to_owned()),
            // Building the standard library with a released compiler is still called unstable.
            ("RUSTC_BOOTSTRAP", "1".to_owned()),
            ("CARGO_UNSTABLE_BUILD_STD", "std,panic_abort".to_owned()),
            (
                "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER",
                linker.to_string_lossy().into_owned(),
            ),
        ],
    })
}

fn linker() -> Option<PathBuf> {
    let bundled = output(Command::new("rustc").args(["--print", "target-libdir"]))
        .map(|folder| Path::new(&folder).with_file_name("bin").join("rust-lld"))
        .filter(|linker| linker.exists());
    bundled.or_else(|| {
        let debian = Path::new("/usr/bin/wasm-ld");
        debian.exists().then(|| debian.to_owned())
    })
}
