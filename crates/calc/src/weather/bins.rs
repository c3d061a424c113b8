//! Hours by whole degrees Celsius of outdoor temperature.

use std::collections::BTreeMap;

use uom::si::f64::{ThermodynamicTemperature, Time};
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::hour;

use super::{LEAP_YEAR, Weather};

/// Where the hours of [`Bins`] come from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Origin {
    /// Counted from a weather file, here or elsewhere.
    File,
    /// From a design low and the usual shape of a year: common practice, no published source.
    UsualShape,
}

/// The hours of one degree.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bin {
    /// Lower edge; counts as inside.
    pub low: ThermodynamicTemperature,
    /// Upper edge, 1 K above; counts as outside.
    pub high: ThermodynamicTemperature,
    /// Hours between the edges.
    pub hours: Time,
}

/// Coldest and warmest outdoor temperature that hours are counted for, °C: the degrees that a weather file can have.
const COUNTED: (f64, f64) = (-70.0, 71.0);

/// Why hours that were counted elsewhere are not taken. Entries count from 0.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum HoursError {
    /// A temperature that no place has.
    #[error("entry {index}: {given:?} is outside {low:?} to {high:?}")]
    Temperature {
        /// Which entry.
        index: usize,
        /// The temperature as given.
        given: ThermodynamicTemperature,
        /// Coldest taken.
        low: ThermodynamicTemperature,
        /// Warmest taken.
        high: ThermodynamicTemperature,
    },
    /// A time below nothing, or no number.
    #[error("entry {index}: {given:?} is no time")]
    Time {
        /// Which entry.
        index: usize,
        /// The time as given.
        given: Time,
    },
    /// There are no hours at all.
    #[error("no hours")]
    Nothing,
    /// All together are more than a leap year.
    #[error("{total:?} is more than a year")]
    MoreThanAYear {
        /// All hours together.
        total: Time,
    },
}

/// Hours by outdoor temperature in bins of 1 K whose edges are whole degrees Celsius.
#[derive(Clone, Debug, PartialEq)]
pub struct Bins {
    /// Lower edge of the first bin, °C.
    first: i32,
    /// Hours of each bin; the first and the last hold some.
    hours: Vec<f64>,
    origin: Origin,
}

impl Bins {
    /// Counts a weather file. Hours with a missing temperature are left out: the total is [`Weather::duration`] less
    /// [`Weather::missing`].
    pub fn from_weather(weather: &Weather) -> Self {
        let degrees = |record: &super::Record| -> Option<i32> {
            Some(record.dry_bulb?.get::<degree_celsius>().floor() as i32)
        };
        let all = || weather.records().iter().filter_map(degrees);
        let first = all().min().unwrap_or(0);
        let last = all().max().unwrap_or(first);
        let mut rows = vec![0_u32; last.abs_diff(first) as usize + 1];
        for degree in all() {
            if let Some(count) = rows.get_mut(degree.abs_diff(first) as usize) {
                *count += 1;
            }
        }
        let per_hour = f64::from(weather.records_per_hour());
        Self {
            first,
            hours: rows
                .iter()
                .map(|rows| f64::from(*rows) / per_hour)
                .collect(),
            origin: Origin::File,
        }
    }

    /// Counts hours that were counted elsewhere: each entry a temperature, -70 to 71 °C, and the time of a year that it stands for. They
    /// come in any order; several of one degree add up.
    ///
    /// # Errors
    /// [`HoursError`].
    pub fn counted(entries: &[(ThermodynamicTemperature, Time)]) -> Result<Self, HoursError> {
        let mut by_degree: BTreeMap<i32, f64> = BTreeMap::new();
        for (index, (given, time)) in entries.iter().enumerate() {
            let degrees = given.get::<degree_celsius>();
            if !(COUNTED.0..=COUNTED.1).contains(&degrees) {
                return Err(HoursError::Temperature {
                    index,
                    given: *given,
                    low: celsius(COUNTED.0),
                    high: celsius(COUNTED.1),
                });
            }
            let hours = time.get::<hour>();
            if !(0.0..=f64::MAX).contains(&hours) {
                return Err(HoursError::Time {
                    index,
                    given: *time,
                });
            }
            if hours > 0.0 {
                *by_degree.entry(degrees.floor() as i32).or_default() += hours;
            }
        }
        let total: f64 = by_degree.values().sum();
        // Sums of parts of hours miss the whole by a last digit.
        if total > LEAP_YEAR + 1e-6 {
            return Err(HoursError::MoreThanAYear {
                total: Time::new::<hour>(total),
            });
        }
        let ends = by_degree.keys().next().zip(by_degree.keys().next_back());
        let (first, last) = ends.ok_or(HoursError::Nothing)?;
        let hours = (*first..=*last).map(|degree| by_degree.get(&degree).copied().unwrap_or(0.0));
        Ok(Self {
            first: *first,
            hours: hours.collect(),
            origin: Origin::File,
        })
    }

    /// Bins from the lower edge of the first, °C, and the hours of each.
    pub(super) fn from_shape(first: i32, hours: Vec<f64>) -> Self {
        Self {
            first,
            hours,
            origin: Origin::UsualShape,
        }
    }

    /// Where the hours come from.
    pub fn origin(&self) -> Origin {
        self.origin
    }

    /// Every bin from the coldest to the warmest, empty ones between them included.
    pub fn iter(&self) -> impl Iterator<Item = Bin> + '_ {
        self.edges().map(|(low, hours)| Bin {
            low: celsius(low),
            high: celsius(low + 1.0),
            hours: Time::new::<hour>(hours),
        })
    }

    /// Hours of all bins.
    pub fn total(&self) -> Time {
        Time::new::<hour>(self.hours.iter().sum())
    }

    /// Hours colder than a temperature, inside a bin in proportion; none for what is no number.
    pub fn hours_below(&self, temperature: ThermodynamicTemperature) -> Time {
        let limit = temperature.get::<degree_celsius>();
        if limit.is_nan() {
            return Time::new::<hour>(0.0);
        }
        let share = |low: f64| (limit - low).clamp(0.0, 1.0);
        Time::new::<hour>(self.edges().map(|(low, hours)| share(low) * hours).sum())
    }

    /// Lower edge of the coldest bin.
    pub fn coldest(&self) -> ThermodynamicTemperature {
        celsius(f64::from(self.first))
    }

    fn edges(&self) -> impl Iterator<Item = (f64, f64)> + '_ {
        self.hours
            .iter()
            .enumerate()
            .map(|(index, hours)| (f64::from(self.first) + index as f64, *hours))
    }
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}
