//! Set-up: whatever a job needs and the machine lacks, at pinned versions, into `.tools/` where it can be.

pub mod axe;
pub mod browser;
pub mod cargo_tools;
mod debian;
pub mod engines;
mod npm;
pub mod python;
pub mod wasm;
pub mod wasm_opt;

use std::ffi::OsString;
use std::path::PathBuf;

use crate::error::Error;

/// Everything that building the app needs.
pub struct WebTools {
    /// The toolchain that builds for the browser.
    pub wasm: wasm::Toolchain,
    /// Folders to put in front of the search path.
    pub paths: Vec<PathBuf>,
}

impl WebTools {
    /// Finds or installs them.
    pub fn ready() -> Result<Self, Error> {
        let wasm = wasm::ready()?;
        let mut paths = vec![cargo_tools::trunk()?, cargo_tools::wasm_bindgen()?];
        paths.extend(wasm_opt::ready()?);
        paths.extend(wasm.path.clone());
        // The build hook is this very program.
        if let Some(own) = std::env::current_exe()
            .ok()
            .and_then(|exe| exe.parent().map(PathBuf::from))
        {
            paths.push(own);
        }
        Ok(Self { wasm, paths })
    }

    /// The search path with the tools in front.
    pub fn search_path(&self) -> OsString {
        let old = std::env::var_os("PATH").unwrap_or_default();
        let all = self
            .paths
            .iter()
            .cloned()
            .chain(std::env::split_paths(&old));
        // A folder whose name holds the separator cannot stand in a search path at all; then the old one has to do.
        std::env::join_paths(all).unwrap_or(old)
    }
}
