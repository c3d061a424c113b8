//! Shared by the tests beside this folder: a real server process and a real browser to drive.

#[cfg(feature = "browser")]
pub mod browser;
