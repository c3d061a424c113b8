//! What can be wrong with a weather file, and what would be right.

/// A cell that is read; the unit is the one that limits in [`EpwError`] are in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Column {
    /// Latitude of the place, degrees.
    Latitude,
    /// Longitude of the place, degrees.
    Longitude,
    /// Time zone of the place, hours.
    TimeZone,
    /// Elevation of the place, m.
    Elevation,
    /// Number of rows for one hour.
    RecordsPerHour,
    /// Dry-bulb temperature, °C.
    DryBulb,
    /// Relative humidity, %.
    RelativeHumidity,
    /// Atmospheric pressure, Pa.
    Pressure,
    /// Wind speed, m/s.
    WindSpeed,
}

impl Column {
    /// Its number in the line, counted from 1.
    pub fn number(self) -> usize {
        match self {
            Column::Latitude => 7,
            Column::Longitude => 8,
            Column::TimeZone => 9,
            Column::Elevation => 10,
            Column::RecordsPerHour => 3,
            Column::DryBulb => 7,
            Column::RelativeHumidity => 9,
            Column::Pressure => 10,
            Column::WindSpeed => 22,
        }
    }

    /// The smallest and the largest value taken.
    ///
    /// Those of the format, but for two that real places pass: the format ends wind at 40 m/s and time zones at 12 h.
    pub fn range(self) -> (f64, f64) {
        match self {
            Column::Latitude => (-90.0, 90.0),
            Column::Longitude => (-180.0, 180.0),
            Column::TimeZone => (-12.0, 14.0),
            Column::Elevation => (-1000.0, 9999.9),
            Column::RecordsPerHour => (1.0, 60.0),
            Column::DryBulb => (-70.0, 70.0),
            Column::RelativeHumidity => (0.0, 110.0),
            Column::Pressure => (31_000.0, 120_000.0),
            Column::WindSpeed => (0.0, 120.0),
        }
    }

    /// The value at and above which a cell of a row holds nothing.
    pub fn missing_from(self) -> Option<f64> {
        match self {
            Column::DryBulb => Some(99.9),
            Column::RelativeHumidity | Column::WindSpeed => Some(999.0),
            Column::Pressure => Some(999_999.0),
            Column::Latitude
            | Column::Longitude
            | Column::TimeZone
            | Column::Elevation
            | Column::RecordsPerHour => None,
        }
    }
}

/// What is wrong with a weather file, and what would be right. Lines count from 1.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum EpwError {
    /// The first line with text does not start with `LOCATION`: this is no EPW file, or its head is cut off.
    #[error("line {line} should start with LOCATION, not with {found:?}")]
    NotALocation {
        /// Line of the file.
        line: usize,
        /// Start of what stands there.
        found: String,
    },
    /// No line that starts with `DATA PERIODS` ends the header.
    #[error("no DATA PERIODS line up to line {line}")]
    NoDataPeriods {
        /// The last line looked at.
        line: usize,
    },
    /// The line ends too early.
    #[error("line {line} has {found} columns, needs {needed}")]
    TooFewColumns {
        /// Line of the file.
        line: usize,
        /// Columns there.
        found: usize,
        /// Columns that there should be at least.
        needed: usize,
    },
    /// A cell should hold a number.
    #[error("line {line}, column {}: {found:?} should be a number from {} to {}",
        .column.number(), .column.range().0, .column.range().1)]
    NotANumber {
        /// Line of the file.
        line: usize,
        /// Which cell.
        column: Column,
        /// Start of what stands there.
        found: String,
    },
    /// A number that the place on earth cannot have.
    #[error("line {line}, column {}: {found} is outside {low} to {high}", .column.number())]
    OutOfRange {
        /// Line of the file.
        line: usize,
        /// Which cell.
        column: Column,
        /// What stands there, in the column's unit.
        found: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The number of rows for an hour has to be whole and to divide 60.
    #[error("line {line}, column 3: {found} rows an hour, should divide 60")]
    RecordsPerHour {
        /// Line of the file.
        line: usize,
        /// What stands there.
        found: f64,
    },
    /// A line longer than any of the format.
    #[error("line {line} is longer than {longest} bytes")]
    LineTooLong {
        /// Line of the file.
        line: usize,
        /// Longest line taken, in bytes.
        longest: usize,
    },
    /// More rows than a leap year has minutes.
    #[error("line {line}: more than {most} rows")]
    TooManyRows {
        /// Line of the file.
        line: usize,
        /// Most rows taken.
        most: usize,
    },
    /// The file ends too early, or marks nearly all temperatures as missing.
    #[error("{found} hours with a temperature, needs {needed}")]
    TooFewHours {
        /// Whole hours with a temperature.
        found: u32,
        /// Hours that there should be at least.
        needed: u32,
    },
}

/// The start of a cell or line, short enough to show.
pub(super) fn excerpt(text: &str) -> String {
    text.chars().take(40).collect()
}
