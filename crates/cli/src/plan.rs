//! A winter plan, for reading.

use std::path::Path;

use winterset_words::{Units, words};

use crate::error::Error;
use crate::report::Report;
use crate::{batch, output};

pub fn print(file: &Path, units: Units) -> Result<(), Error> {
    let text = std::fs::read(file).map_err(|source| Error::File {
        path: file.to_owned(),
        source,
    })?;
    let system = batch::system(&text).map_err(|source| Error::Record {
        path: file.to_owned(),
        source,
    })?;
    let words = words();
    let plan = system.plan().map_err(|errors| {
        let lines = errors.iter().map(|error| {
            let said = words.problem(error.field, &error.problem, units);
            format!("{}: {said}", error.field.key())
        });
        Error::Fields(lines.collect())
    })?;
    let report = Report::new(&plan, words, units);
    Ok(output::print(&report.of(&system))?)
}
