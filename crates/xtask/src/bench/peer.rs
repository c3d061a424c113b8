//! The same calls in CoolProp, where there is a Python for it.

use std::process::Command;

use serde_json::Value;

use super::{Row, folder};
use crate::error::Error;
use crate::project;
use crate::run::{output_of_step, say};
use crate::setup::python;

/// Time of a call in CoolProp.
#[derive(Clone, Copy)]
pub struct Time {
    /// In microseconds.
    pub microseconds: f64,
    /// Whether it answered every value.
    pub whole: bool,
}

/// Fills in CoolProp's times and gives its name with the version; says so and gives none where it cannot be had.
pub fn time(rows: &mut [Row], cases: &str) -> Option<String> {
    lines(cases)
        .and_then(|lines| fill(rows, &lines))
        .unwrap_or_else(|error| {
            say(&format!("no times of CoolProp: {error}"));
            None
        })
}

fn lines(cases: &str) -> Result<String, Error> {
    let python = python::ready()?;
    let file = folder().join("cases.jsonl");
    std::fs::write(&file, cases).map_err(Error::at(&file))?;
    output_of_step(
        "timing CoolProp (about two minutes, nearly all for blends)",
        None,
        Command::new(python)
            .arg(project::root().join("crates/bench/peer.py"))
            .arg(file),
    )
}

fn fill(rows: &mut [Row], lines: &str) -> Result<Option<String>, Error> {
    let mut name = None;
    for line in lines.lines() {
        let unread = || Error::Times {
            line: line.to_owned(),
        };
        let value: Value = serde_json::from_str(line).map_err(|_| unread())?;
        let number = |key: &str| value[key].as_f64().ok_or_else(unread);
        let time = Time {
            microseconds: number("microseconds")?,
            whole: number("answered")? >= 1.0,
        };
        let index = value["index"].as_u64().ok_or_else(unread)?;
        if let Some(row) = rows.iter_mut().find(|row| row.index == index) {
            row.peer = Some(time);
        }
        name = value["peer"].as_str().map(str::to_owned);
    }
    Ok(name)
}
