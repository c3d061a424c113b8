//! A year's temperatures from a design low alone.
//!
//! The outdoor temperature is taken as a yearly swing with changeable weather on top,
//!
//! `T = M − A·cos φ + σ·z`,
//!
//! `φ` spread evenly over a turn (the day of the year), `z` normally distributed (weather and time of day). Then the share of
//! a year below a temperature is, with `u = (T − M)/A`,
//!
//! `F(u) = 1/2π · ∫ Φ((u + cos φ)·A/σ) dφ` over a turn.
//!
//! The swing is wider where it gets colder: `A = 7 K + (0 °C − T_low)/3`, held within 3 to 22 K, and the weather has half of
//! it: `σ = A/2`. The mean follows from the design low being the temperature that 99.6 % of the hours exceed:
//! `M = T_low + k·A`, `F(−k) = 0.004`, `k` = 2.003.
//!
//! Source: common practice, no published source, for the shape and its two rules. Good for the order of magnitude: a coast
//! and an inland plain with the same design low differ by several hundred hours. A weather file goes first.

use std::f64::consts::PI;

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature, Time};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::hour;

use super::normal::share_below;
use super::{Bins, Percentile, YEAR};
use crate::explain::Quantity;
use crate::field::Field;
use crate::problem::InputError;
use crate::root::bracketed;

/// Spread of the weather as a share of the yearly swing.
const WEATHER: f64 = 0.5;

/// A year as it usually is where the design low is this cold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualYear {
    /// Mean of the year, °C.
    mean: f64,
    /// Half the difference between the mean of the warmest and of the coldest day, K.
    swing: f64,
}

impl UsualYear {
    /// The year whose hours exceed `design_low` for 99.6 %.
    ///
    /// # Errors
    /// [`Problem::OutOfRange`](crate::Problem::OutOfRange) at [`Field::OutdoorLow`] outside -60 to 30 °C.
    pub fn new(design_low: ThermodynamicTemperature) -> Result<Self, InputError> {
        let field = Field::OutdoorLow;
        field
            .check(Quantity::Temperature(design_low))
            .map_err(|problem| InputError { field, problem })?;
        let low = design_low.get::<degree_celsius>();
        let swing = (7.0 - low / 3.0).clamp(3.0, 22.0);
        Ok(Self {
            mean: low - swing * place_of(Percentile::NinetyNineSix.colder()),
            swing,
        })
    }

    /// Mean of the year.
    pub fn mean(&self) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(self.mean)
    }

    /// Half the difference between the mean of the warmest and of the coldest day.
    pub fn swing(&self) -> TemperatureInterval {
        TemperatureInterval::new::<kelvin_interval>(self.swing)
    }

    /// Standard deviation of the weather about the day's mean.
    pub fn spread(&self) -> TemperatureInterval {
        TemperatureInterval::new::<kelvin_interval>(WEATHER * self.swing)
    }

    /// Hours a year colder than a temperature.
    pub fn hours_below(&self, temperature: ThermodynamicTemperature) -> Time {
        let share = self.share_below(temperature.get::<degree_celsius>());
        Time::new::<hour>(YEAR * if share.is_nan() { 0.0 } else { share })
    }

    /// The hours in bins of 1 K, 8760 in all.
    ///
    /// The first bin holds the temperature that the year falls below for half an hour, and everything colder; the last bin
    /// likewise at the warm end.
    pub fn bins(&self) -> Bins {
        let reach = self.swing * place_of(0.5 / YEAR);
        let first = (self.mean + reach).floor() as i32;
        let last = ((self.mean - reach).floor() as i32).max(first + 1);
        let below = |edge: i32| match edge {
            edge if edge <= first => 0.0,
            edge if edge > last => 1.0,
            edge => self.share_below(f64::from(edge)),
        };
        let hours = (first..=last)
            .map(|edge| YEAR * (below(edge + 1) - below(edge)).max(0.0))
            .collect();
        Bins::from_shape(first, hours)
    }

    fn share_below(&self, celsius: f64) -> f64 {
        share_of_year((celsius - self.mean) / self.swing)
    }
}

/// `F(u)` of the module's head. The midpoint rule is exact to rounding for so smooth a periodic function.
fn share_of_year(u: f64) -> f64 {
    const STEPS: u32 = 64;
    let sum: f64 = (0..STEPS)
        .map(|step| {
            let phase = PI * (f64::from(step) + 0.5) / f64::from(STEPS);
            share_below((u + phase.cos()) / WEATHER)
        })
        .sum();
    sum / f64::from(STEPS)
}

/// The `u` below which a share of the year lies, for a share in the cold half.
fn place_of(share: f64) -> f64 {
    bracketed(-10.0, 0.0, |u| share_of_year(u) - share)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    #[test]
    fn four_hours_in_a_thousand_are_colder_than_the_design_low() {
        for low in [-60.0, -33.3, -12.0, 0.0, 30.0] {
            let year = UsualYear::new(celsius(low)).unwrap();
            let colder = year.hours_below(celsius(low)).get::<hour>();
            assert!((colder - 0.004 * 8760.0).abs() < 1e-9, "{low}: {colder}");
            let half = year.hours_below(year.mean()).get::<hour>();
            assert!((half - 4380.0).abs() < 1e-9, "{low}: {half}");
        }
    }

    #[test]
    fn bins_hold_a_year() {
        let year = UsualYear::new(celsius(-20.0)).unwrap();
        let bins = year.bins();
        assert!((bins.total().get::<hour>() - 8760.0).abs() < 1e-8);
        let below = |t| {
            (year.hours_below(celsius(t)) - bins.hours_below(celsius(t)))
                .get::<hour>()
                .abs()
        };
        assert!(below(-20.0) < 1e-8 && below(-3.0) < 1e-8);
        assert!(bins.coldest() < celsius(-20.0));
    }

    #[test]
    fn a_low_that_nobody_has_is_refused() {
        for low in [-61.0, 31.0, f64::NAN, f64::INFINITY] {
            let refused = UsualYear::new(celsius(low)).unwrap_err();
            assert_eq!(refused.field, Field::OutdoorLow);
        }
        let year = UsualYear::new(celsius(-10.0)).unwrap();
        assert_eq!(year.hours_below(celsius(f64::NAN)).get::<hour>(), 0.0);
    }
}
