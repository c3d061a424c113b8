//! How soon the app itself answers a key, and how long it may answer nothing, in Chromium with the processor slowed.

use crate::app;
use crate::error::Error;
use crate::run::step;
use crate::setup::browser;
use crate::test::browser_command;

/// What stands on the command line in place of a refrigerant.
pub const NAME: &str = "pace";

/// Prints the table.
pub fn print() -> Result<(), Error> {
    let dist = app::build(None)?;
    let browser = browser::ready()?;
    step(
        "measuring how soon the app answers a key (about two minutes)",
        None,
        browser_command(&["run", "--bin", "bench"], &dist, &browser).args(["--", NAME]),
    )
}
