//! Weather files: what stands round them, and what is wrong with one.

use winterset_calc::weather::epw::{Column, EpwError};

use crate::refused::cut;
use crate::units::signed;
use crate::weather::WeatherLabels;

pub(super) static LABELS: WeatherLabels = WeatherLabels {
    head: "Winter hours",
    note: "A weather file in the EPW format tells how many hours of the year are how cold. It is read on this phone, and only the counted hours are kept. Without one, a usual year round the site's low stands in.",
    choose: "Choose a weather file",
    choose_another: "Choose another file",
    reading: "Reading the file.",
    cancel: "Cancel",
    counted: |place, low| {
        let place = if place.is_empty() {
            "an unnamed place"
        } else {
            place
        };
        format!("Hours of {place}. Its design low is {low}: 99.6 % of the hours are warmer.")
    },
    use_low: |low, systems| match systems {
        1 => format!("Use {low} as the site's low of its system"),
        systems => format!("Use {low} as the site's low of all {systems} systems"),
    },
    use_low_question: "This replaces the site's low that was entered there. A cold night can still be colder than the design low.",
    low_used: "Every system here has it as the site's low.",
    offer: |low| format!("Use {low}, the design low of this site's weather file"),
    remove: "Remove the winter hours",
    remove_question: "Remove the counted hours? The usual year stands in until a file is chosen again.",
    unreadable: "The browser could not read this file. Choose it again, or another one.",
    not_a_year: |hours| format!("This file covers {hours}. Choose one that covers a whole year."),
    methods_note: |place| {
        let place = if place.is_empty() { "this site" } else { place };
        format!(
            "Over the year of the weather file for {place}, with the same load all year. Hours in which low pressure stops the compressor take no energy and do no cooling."
        )
    },
};

/// What is wrong with a weather file, and what would be right.
pub(super) fn error(error: &EpwError) -> String {
    match error {
        EpwError::NotALocation { .. } => {
            "This is no EPW file: its first line does not start with LOCATION. Choose a file whose name ends in .epw.".to_owned()
        }
        EpwError::NoDataPeriods { .. } => {
            "The head of this file does not end in a line that starts with DATA PERIODS. Choose another EPW file.".to_owned()
        }
        EpwError::TooFewColumns {
            line,
            found,
            needed,
        } => format!(
            "Line {line} of this file ends after {found} of {needed} columns. It may have been cut short: choose a whole one."
        ),
        EpwError::NotANumber {
            line,
            column,
            found,
        } => format!(
            "Line {line} of this file has “{}” for {}. Choose a file with a number there.",
            cut(found),
            name(*column)
        ),
        EpwError::OutOfRange {
            line,
            column,
            found,
            low,
            high,
        } => format!(
            "Line {line} of this file has {} for {}, which lies outside {} to {}. Choose another file.",
            number(*found),
            name(*column),
            number(*low),
            number(*high)
        ),
        EpwError::RecordsPerHour { line, found } => format!(
            "Line {line} of this file says {} rows an hour, which does not divide an hour. Choose another file.",
            number(*found)
        ),
        EpwError::LineTooLong { line, .. } => {
            format!("Line {line} is longer than any of an EPW file. Choose a file whose name ends in .epw.")
        }
        EpwError::TooManyRows { .. } => {
            "This file has more rows than a year has minutes. Choose one of a single year.".to_owned()
        }
        EpwError::TooFewHours { found, needed } => format!(
            "This file holds {found} hours with a temperature, and at least {needed} are needed. Choose a whole one."
        ),
    }
}

fn number(value: f64) -> String {
    signed(&value.to_string())
}

fn name(column: Column) -> &'static str {
    match column {
        Column::Latitude => "latitude",
        Column::Longitude => "longitude",
        Column::TimeZone => "time zone",
        Column::Elevation => "elevation",
        Column::RecordsPerHour => "rows an hour",
        Column::DryBulb => "outdoor temperature",
        Column::RelativeHumidity => "humidity",
        Column::Pressure => "air pressure",
        Column::WindSpeed => "wind speed",
    }
}
