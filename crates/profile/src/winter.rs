//! The winter of a place as kept with a site: hours by outdoor temperature, counted from a weather file that itself is not kept.

use serde::{Deserialize, Serialize};
use uom::si::f64::{ThermodynamicTemperature, Time};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use uom::si::time::{hour, minute};
use winterset_calc::weather::{Bins, Coverage, Percentile, Weather};

/// Longest name of a place that is kept, in characters.
const LONGEST_PLACE: usize = 80;

/// Hours of a year by outdoor temperature, with the place that they were measured for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WinterHours {
    /// The place, as the file spells it.
    #[serde(default)]
    place: String,
    /// Temperature that 99.6 % of the hours are warmer than, K, to the thousandth.
    design_low: f64,
    /// Lower edge of the first degree, °C.
    first: i32,
    /// Minutes within each degree from there upwards: whole, whatever the rows of the file stand for.
    minutes: Vec<u32>,
}

/// The file does not cover a year, so that its hours are not hours a year.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{} hours, not a year", .covered.get::<hour>())]
pub struct NotAYear {
    /// What it covers.
    pub covered: Time,
}

impl WinterHours {
    /// Counts a weather file.
    ///
    /// # Errors
    /// [`NotAYear`].
    pub fn of(weather: &Weather) -> Result<Self, NotAYear> {
        if weather.coverage() == Coverage::Other {
            return Err(NotAYear {
                covered: weather.duration(),
            });
        }
        let bins = Bins::from_weather(weather);
        let low = weather
            .design_low(Percentile::NinetyNineSix)
            .get::<kelvin>();
        let location = weather.location();
        let names = [&location.place, &location.region, &location.country];
        let names: Vec<_> = names
            .into_iter()
            .map(|name| name.trim())
            .filter(|name| !matches!(*name, "" | "-"))
            .collect();
        Ok(Self {
            place: names.join(", ").chars().take(LONGEST_PLACE).collect(),
            // A thousandth is finer than any file, and its short decimal comes back as the same number.
            design_low: (low * 1000.0).round() / 1000.0,
            // The edges are whole degrees well inside the range of the type.
            first: bins.coldest().get::<degree_celsius>().round() as i32,
            minutes: bins
                .iter()
                .map(|bin| bin.hours.get::<minute>().round() as u32)
                .collect(),
        })
    }

    /// The place; empty where the file names none.
    pub fn place(&self) -> &str {
        &self.place
    }

    /// Temperature that 99.6 % of the hours are warmer than.
    pub fn design_low(&self) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<kelvin>(self.design_low)
    }

    /// The hours by temperature; `None` where what was kept is no year.
    pub fn bins(&self) -> Option<Bins> {
        let degrees = self.minutes.iter().enumerate().map(|(index, minutes)| {
            let middle = f64::from(self.first) + index as f64 + 0.5;
            (
                ThermodynamicTemperature::new::<degree_celsius>(middle),
                Time::new::<minute>(f64::from(*minutes)),
            )
        });
        Bins::counted(&degrees.collect::<Vec<_>>()).ok()
    }

    /// Whether it can be used.
    pub(crate) fn is_whole(&self) -> bool {
        self.design_low.is_finite() && self.design_low > 0.0 && self.bins().is_some()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Site;
    use winterset_calc::weather::epw;

    /// A made year, which the reference checks hold against numpy.
    const YEAR: &str = include_str!("../../../tests/reference/data/weather_year.epw");

    #[test]
    fn a_year_is_kept_with_its_site_and_comes_back() {
        let weather = epw::read(YEAR).unwrap();
        let hours = WinterHours::of(&weather).unwrap();
        let (kept, counted) = (hours.bins().unwrap(), Bins::from_weather(&weather));
        assert_eq!(kept.coldest(), counted.coldest());
        for (ours, theirs) in kept.iter().zip(counted.iter()) {
            assert!((ours.hours - theirs.hours).get::<minute>().abs() < 1e-6);
        }
        assert_eq!(kept.iter().count(), counted.iter().count());
        let mut site = Site::new("a", "Hut");
        site.set_winter(Some(&hours));
        let text = site.to_json().unwrap();
        // A few kilobytes at most, where the file has more than a megabyte.
        assert!(text.len() < 2000, "{}", text.len());
        assert_eq!(Site::from_json(&text).unwrap().winter(), Some(hours));
        site.set_winter(None);
        assert_eq!(site, Site::new("a", "Hut"));
    }

    #[test]
    fn a_file_of_another_length_is_no_year() {
        let month: String = YEAR.lines().take(8 + 744).collect::<Vec<_>>().join("\n");
        let error = WinterHours::of(&epw::read(&month).unwrap()).unwrap_err();
        assert_eq!(error.covered, Time::new::<hour>(744.0));
    }

    #[test]
    fn what_is_no_winter_is_kept_and_not_used() {
        for weather in [
            "null",
            "[1]",
            r#"{"design_low":250,"first":-20,"minutes":[]}"#,
            r#"{"design_low":-3,"first":-20,"minutes":[60]}"#,
            r#"{"design_low":250,"first":-900,"minutes":[60]}"#,
            r#"{"design_low":250,"first":-20,"minutes":[4000000]}"#,
            r#"{"from":"a newer version"}"#,
        ] {
            let text = format!(r#"{{"version":1,"id":"a","weather":{weather}}}"#);
            let site = Site::from_json(&text).unwrap();
            assert_eq!(site.winter(), None, "{weather}");
            let back: serde_json::Value = serde_json::from_str(&site.to_json().unwrap()).unwrap();
            let kept: serde_json::Value = serde_json::from_str(weather).unwrap();
            assert_eq!(
                back.get("weather").unwrap_or(&serde_json::Value::Null),
                &kept
            );
        }
        let older = Site::from_json(r#"{"version":1,"id":"a"}"#).unwrap();
        assert_eq!(older.winter(), None);
    }
}
