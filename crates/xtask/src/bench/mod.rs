//! Benchmarks: the cases of `crates/bench` natively, in a browser and in CoolProp, in one table. Speed is shown here and never in timed tests.

mod browser;
mod pace;
mod peer;
mod table;

use std::ffi::OsString;
use std::path::PathBuf;
use std::process::Command;

use serde_json::Value;

use crate::error::Error;
use crate::project;
use crate::run::output_of_step;

/// One case with its time in microseconds wherever it was run.
struct Row {
    index: u64,
    subject: String,
    call: String,
    native: f64,
    wasm: Option<f64>,
    peer: Option<peer::Time>,
}

/// Runs every benchmark, or those of the refrigerants named, and prints the table; or measures the pace of the app.
pub fn run(refrigerants: &[OsString]) -> Result<(), Error> {
    if refrigerants == [pace::NAME] {
        return pace::print();
    }
    let folder = folder();
    std::fs::create_dir_all(&folder).map_err(Error::at(&folder))?;
    let lines = output_of_step(
        "timing natively (about a minute)",
        None,
        Command::new("cargo")
            .current_dir(project::root())
            .args(["run", "--release", "--package", "winterset-bench", "--"])
            .args(refrigerants),
    )?;
    let mut rows = lines.lines().map(row).collect::<Result<Vec<_>, _>>()?;
    if rows.is_empty() {
        return Err(Error::Usage {
            wanted: "refrigerants among the cases in crates/bench, such as R-744",
        });
    }
    browser::time(&mut rows)?;
    let peer = peer::time(&mut rows, &lines);
    table::print(&rows, peer.as_deref());
    Ok(())
}

/// Where the page, and what goes from one to the other, is put.
fn folder() -> PathBuf {
    project::target().join("bench")
}

fn row(line: &str) -> Result<Row, Error> {
    let unread = || Error::Times {
        line: line.to_owned(),
    };
    let value: Value = serde_json::from_str(line).map_err(|_| unread())?;
    let text = |key: &str| value[key].as_str().map(str::to_owned).ok_or_else(unread);
    Ok(Row {
        index: value["index"].as_u64().ok_or_else(unread)?,
        subject: text("subject")?,
        call: text("call")?,
        native: value["microseconds"].as_f64().ok_or_else(unread)?,
        wasm: None,
        peer: None,
    })
}
