//! Pictures of every screen, to be looked at.

use crate::app;
use crate::error::Error;
use crate::run::step;
use crate::setup::browser;
use crate::test;

/// Takes them into `target/screenshots/`.
pub fn take() -> Result<(), Error> {
    let dist = app::build(None)?;
    let browser = browser::ready()?;
    step(
        "taking pictures of every screen",
        None,
        &mut test::browser_command(&["run", "--bin", "screenshots"], &dist, &browser),
    )
}
