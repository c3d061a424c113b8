//! The two header lines that are read.

use uom::si::angle::degree;
use uom::si::f64::{Angle, Length, Time};
use uom::si::length::meter;
use uom::si::time::hour;

use super::super::Location;
use super::error::{Column, EpwError, excerpt};
use super::row::{cells, number};

/// The line that a file starts with: place, region, country, two cells on the data's source, then four numbers.
pub(super) fn location(line: usize, text: &str) -> Result<Location, EpwError> {
    let starts = text.split(',').next().unwrap_or_default().trim();
    if !starts.eq_ignore_ascii_case("LOCATION") {
        return Err(EpwError::NotALocation {
            line,
            found: excerpt(text),
        });
    }
    let cells = cells(line, text, Column::Elevation.number())?;
    let word = |index: usize| cells.get(index).copied().unwrap_or_default().to_owned();
    let number = |column| number(line, &cells, column);
    Ok(Location {
        place: word(1),
        region: word(2),
        country: word(3),
        latitude: Angle::new::<degree>(number(Column::Latitude)?),
        longitude: Angle::new::<degree>(number(Column::Longitude)?),
        time_zone: Time::new::<hour>(number(Column::TimeZone)?),
        elevation: Length::new::<meter>(number(Column::Elevation)?),
    })
}

/// The line again, where it is the one that ends the header.
pub(super) fn data_periods(text: &str) -> Option<&str> {
    let starts = text.split(',').next()?.trim();
    starts.eq_ignore_ascii_case("DATA PERIODS").then_some(text)
}

/// Rows for one hour: the third cell of the line that ends the header.
pub(super) fn records_per_hour(line: usize, text: &str) -> Result<u32, EpwError> {
    let cells = cells(line, text, Column::RecordsPerHour.number())?;
    let found = number(line, &cells, Column::RecordsPerHour)?;
    if found.fract() == 0.0 && 60.0 % found == 0.0 {
        return Ok(found as u32);
    }
    Err(EpwError::RecordsPerHour { line, found })
}
