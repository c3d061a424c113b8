//! The app in a real browser: a server process that can be ended, a driver, and a phone-sized window.
//!
//! `cargo xtask test` builds the app and says in the environment where it is, which program serves it and which one drives the browser.

mod driver;
mod engine;
mod page;
mod server;
mod tour;

pub use driver::Driver;
pub use engine::Engine;
pub use page::{Page, Profile, Screen};
pub use server::{Server, built};
pub use tour::{Stop, demo_site, every_stop, filled_controller};

/// What stops a browser test.
pub type Failure = Box<dyn std::error::Error + Send + Sync>;

/// A value of the environment that `cargo xtask` sets.
pub fn told(name: &str) -> Result<std::ffi::OsString, Failure> {
    std::env::var_os(name)
        .ok_or_else(|| format!("{name} is not set; run this by `cargo xtask test`").into())
}
