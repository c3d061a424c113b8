//! Cells of a line, and the row of an hour.

use uom::si::f64::{Pressure, ThermodynamicTemperature, Velocity};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::velocity::meter_per_second;

use super::super::Record;
use super::error::{Column, EpwError, excerpt};

/// The first cells of a line, as many as are needed.
///
/// # Errors
/// [`EpwError::TooFewColumns`].
pub(super) fn cells(line: usize, text: &str, needed: usize) -> Result<Vec<&str>, EpwError> {
    let cells: Vec<&str> = text.split(',').take(needed).map(str::trim).collect();
    if cells.len() < needed {
        return Err(EpwError::TooFewColumns {
            line,
            found: cells.len(),
            needed,
        });
    }
    Ok(cells)
}

/// The number in a cell, inside the column's range.
///
/// # Errors
/// [`EpwError::NotANumber`], [`EpwError::OutOfRange`].
pub(super) fn number(line: usize, cells: &[&str], column: Column) -> Result<f64, EpwError> {
    let value = parsed(line, cells, column)?;
    let (low, high) = column.range();
    if (low..=high).contains(&value) {
        return Ok(value);
    }
    Err(EpwError::OutOfRange {
        line,
        column,
        found: value,
        low,
        high,
    })
}

fn parsed(line: usize, cells: &[&str], column: Column) -> Result<f64, EpwError> {
    let text = cell(cells, column);
    match text.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(value),
        _ => Err(EpwError::NotANumber {
            line,
            column,
            found: excerpt(text),
        }),
    }
}

fn cell<'a>(cells: &[&'a str], column: Column) -> &'a str {
    cells.get(column.number() - 1).copied().unwrap_or_default()
}

/// The number in a cell of a row, or nothing where it is empty or marked as missing.
fn known(line: usize, cells: &[&str], column: Column) -> Result<Option<f64>, EpwError> {
    if cell(cells, column).is_empty() {
        return Ok(None);
    }
    let value = parsed(line, cells, column)?;
    if column.missing_from().is_some_and(|code| value >= code) {
        return Ok(None);
    }
    number(line, cells, column).map(Some)
}

/// The row of an hour.
pub(super) fn record(line: usize, text: &str) -> Result<Record, EpwError> {
    let cells = cells(line, text, Column::WindSpeed.number())?;
    let known = |column| known(line, &cells, column);
    Ok(Record {
        dry_bulb: known(Column::DryBulb)?.map(ThermodynamicTemperature::new::<degree_celsius>),
        relative_humidity: known(Column::RelativeHumidity)?.map(|percent| percent / 100.0),
        pressure: known(Column::Pressure)?.map(Pressure::new::<pascal>),
        wind: known(Column::WindSpeed)?.map(Velocity::new::<meter_per_second>),
    })
}
