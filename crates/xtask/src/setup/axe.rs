//! axe, the rules that the tests hold every screen's accessibility against: the npm package `axe-core`.
//!
//! It is under the Mozilla Public License 2.0, which is not among the licences of the app: the tests load it into the browser from where it was
//! installed, and no part of it is kept in the project or built into the app.

use std::path::PathBuf;

use super::{debian, npm};
use crate::error::Error;

const NAME: &str = "axe-core";
const VERSION: &str = "4.14.1";

/// The script to load into a page.
pub fn ready() -> Result<PathBuf, Error> {
    let script = npm::place(NAME, VERSION).join("node_modules/axe-core/axe.min.js");
    if script.is_file() {
        return Ok(script);
    }
    if !npm::is_here() {
        debian::install("npm", &["npm"])?;
    }
    npm::install("axe", NAME, VERSION)?;
    Ok(script)
}
