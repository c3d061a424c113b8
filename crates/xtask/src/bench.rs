//! Benchmarks. Speed is shown here and never in timed tests.

use std::ffi::OsString;
use std::process::Command;

use crate::error::Error;
use crate::project;
use crate::run::step;

/// Runs every benchmark, passing arguments on.
pub fn run(arguments: &[OsString]) -> Result<(), Error> {
    step(
        "running the benchmarks",
        None,
        Command::new("cargo")
            .current_dir(project::root())
            .args([
                "bench",
                "--workspace",
                "--exclude",
                "winterset-web",
                "--benches",
            ])
            .args(arguments),
    )
}
