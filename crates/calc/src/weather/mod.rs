//! Hours by outdoor temperature: from a weather file, or from a design low alone.
//!
//! * [`epw`] reads a weather file in the open EPW format into a [`Weather`];
//! * [`Bins`] counts hours by whole degrees Celsius, from a [`Weather`] or from a [`UsualYear`];
//! * [`Weather::design_low`] is the temperature that nearly all hours are warmer than.
//!
//! Source: EnergyPlus documentation, Auxiliary Programs: EPW data dictionary;
//! ASHRAE Handbook Fundamentals, climatic design information chapter, for the design percentiles.

mod bins;
pub mod epw;
mod normal;
mod usual;

use uom::si::f64::{Angle, Length, Pressure, ThermodynamicTemperature, Time, Velocity};
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::hour;

pub use bins::{Bin, Bins, HoursError, Origin};
pub use usual::UsualYear;

/// Hours of a common year.
pub(crate) const YEAR: f64 = 8760.0;

/// Hours of a leap year.
const LEAP_YEAR: f64 = 8784.0;

/// Where a weather file was made for.
#[derive(Clone, Debug, PartialEq)]
pub struct Location {
    /// Town or station, as the file spells it.
    pub place: String,
    /// State, province or region, as the file spells it; often `-`.
    pub region: String,
    /// Country, as the file spells it.
    pub country: String,
    /// Latitude, north positive.
    pub latitude: Angle,
    /// Longitude, east positive.
    pub longitude: Angle,
    /// Local standard time less universal time.
    pub time_zone: Time,
    /// Height above sea level.
    pub elevation: Length,
}

/// One row of a weather file. What the file marks as missing is `None`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Record {
    /// Dry-bulb temperature, -70 to 70 °C.
    pub dry_bulb: Option<ThermodynamicTemperature>,
    /// Relative humidity as a share, 0 to 1.1.
    pub relative_humidity: Option<f64>,
    /// Atmospheric pressure, 31 to 120 kPa.
    pub pressure: Option<Pressure>,
    /// Wind speed, 0 to 120 m/s.
    pub wind: Option<Velocity>,
}

/// How much of a year a weather file covers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Coverage {
    /// 8760 hours.
    Year,
    /// 8784 hours.
    LeapYear,
    /// Another number of hours: what is counted is not hours a year.
    Other,
}

/// The share of all hours that are warmer than a design low.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Percentile {
    /// 99.6 % of the hours.
    NinetyNineSix,
    /// 99 % of the hours.
    NinetyNine,
}

impl Percentile {
    /// The share of the hours that are colder.
    fn colder(self) -> f64 {
        match self {
            Percentile::NinetyNineSix => 0.004,
            Percentile::NinetyNine => 0.01,
        }
    }
}

/// A weather file that was read; holds at least 24 hours with a known temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Weather {
    location: Location,
    records_per_hour: u32,
    records: Vec<Record>,
    /// The known temperatures in kelvin, coldest first.
    sorted: Vec<f64>,
}

impl Weather {
    pub(crate) fn new(location: Location, records_per_hour: u32, records: Vec<Record>) -> Self {
        let mut sorted: Vec<f64> = records
            .iter()
            .filter_map(|record| Some(record.dry_bulb?.get::<kelvin>()))
            .collect();
        sorted.sort_by(f64::total_cmp);
        Self {
            location,
            records_per_hour,
            records,
            sorted,
        }
    }

    /// Where the file was made for.
    pub fn location(&self) -> &Location {
        &self.location
    }

    /// Every row, in the order of the file.
    pub fn records(&self) -> &[Record] {
        &self.records
    }

    /// Number of rows for one hour, usually 1.
    pub fn records_per_hour(&self) -> u32 {
        self.records_per_hour
    }

    /// The time that the rows stand for, missing temperatures among them.
    pub fn duration(&self) -> Time {
        self.time_of(self.records.len())
    }

    /// The time whose temperature the file marks as missing.
    pub fn missing(&self) -> Time {
        self.time_of(self.records.len().saturating_sub(self.sorted.len()))
    }

    /// Whether the rows make up a year.
    pub fn coverage(&self) -> Coverage {
        let rows = self.records.len() as f64;
        let per_hour = f64::from(self.records_per_hour);
        if rows == YEAR * per_hour {
            Coverage::Year
        } else if rows == LEAP_YEAR * per_hour {
            Coverage::LeapYear
        } else {
            Coverage::Other
        }
    }

    /// The coldest temperature in the file.
    pub fn coldest(&self) -> ThermodynamicTemperature {
        self.quantile(0.0)
    }

    /// The temperature that this share of the hours exceed.
    ///
    /// Between two rows it is taken in proportion: the hours from coldest to warmest stand at 0, 1/(n-1), 2/(n-1) … 1.
    /// For a file of another length than a year it holds for those hours only.
    ///
    /// Source: ASHRAE Handbook Fundamentals, climatic design information chapter: annual heating design dry bulb.
    pub fn design_low(&self, exceeded: Percentile) -> ThermodynamicTemperature {
        self.quantile(exceeded.colder())
    }

    fn quantile(&self, share: f64) -> ThermodynamicTemperature {
        let last = self.sorted.len().saturating_sub(1);
        let position = share * last as f64;
        let at = |index: usize| self.sorted.get(index.min(last)).copied().unwrap_or(273.15);
        let below = position.floor() as usize;
        let (low, high) = (at(below), at(below + 1));
        ThermodynamicTemperature::new::<kelvin>(low + (high - low) * position.fract())
    }

    fn time_of(&self, rows: usize) -> Time {
        Time::new::<hour>(rows as f64 / f64::from(self.records_per_hour))
    }
}
