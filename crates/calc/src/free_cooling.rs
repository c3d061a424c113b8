//! Cooling with the compressor off: outside air, or a dry cooler, in the hours that are cold enough.
//!
//! The whole load is carried at outdoor temperatures up to the temperature of the room, or of the liquid that comes back from it, less the approach of what carries
//! the heat out. Hours in which it could carry a part of the load are not counted, nor is the outside air's moisture, which a room may not take.
//!
//! Source: energy balance, power times hours; the usual approaches are common practice, no published source.

use uom::si::energy::joule;
use uom::si::f64::{Energy, Power, TemperatureInterval, ThermodynamicTemperature, Time};
use uom::si::power::watt;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::hour;

/// Hours in a leap year, more than which no year has.
const YEAR: f64 = 8784.0;

/// What carries the heat out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Source {
    /// Outside air blown into the room, filtered and mixed.
    OutsideAir,
    /// A liquid cooled by outside air, and a coil in the room.
    DryCooler,
}

impl Source {
    /// Usual approach to outdoor temperature. Common practice, no published source.
    ///
    /// Outside air: the room air warms by that much on its way through the load. Dry cooler: what dry cooler and room coil take together.
    pub fn usual_approach(self) -> TemperatureInterval {
        TemperatureInterval::new::<kelvin_interval>(match self {
            Source::OutsideAir => 8.0,
            Source::DryCooler => 10.0,
        })
    }
}

/// What the cooling is for and what it takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FreeCooling {
    /// Temperature of the room, or of the liquid that comes back from it: 200 to 350 K.
    pub inside: ThermodynamicTemperature,
    /// How much colder than that it has to be outdoors, usually [`Source::usual_approach`]: 0 to 60 K.
    pub approach: TemperatureInterval,
    /// Mean electric power now in those hours, compressor and fans together: 0 to 10 MW.
    pub now: Power,
    /// Mean electric power with the compressor off, fans and pump together: 0 to 10 MW.
    pub instead: Power,
}

/// Hours a year at an outdoor temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bin {
    /// Outdoor temperature: 150 to 350 K.
    pub outdoor: ThermodynamicTemperature,
    /// Time a year: 0 to 8784 h, and no more than that over all bins.
    pub time: Time,
}

/// Whether outdoor cold would do the job.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// It would, and it saves energy.
    Saves {
        /// Outdoor temperature up to which it does.
        up_to: ThermodynamicTemperature,
        /// Hours a year.
        time: Time,
        /// Those hours over all hours given.
        share: f64,
        /// Energy saved a year.
        energy: Energy,
    },
    /// It would do the job, but takes as much power as there is to save.
    SavesNothing {
        /// Outdoor temperature up to which it does.
        up_to: ThermodynamicTemperature,
        /// Hours a year.
        time: Time,
        /// Energy that it would cost on top, 0 where the powers are alike.
        extra: Energy,
    },
    /// It is never cold enough.
    NeverColdEnough {
        /// Outdoor temperature up to which it would do.
        up_to: ThermodynamicTemperature,
        /// Coldest outdoor temperature that has any hours.
        coldest: ThermodynamicTemperature,
    },
}

/// Which value was out of its range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FreeCoolingValue {
    /// Temperature inside, K.
    Inside,
    /// Approach, K.
    Approach,
    /// Power now, W.
    Now,
    /// Power instead, W.
    Instead,
    /// Outdoor temperature of a bin, K.
    Outdoor,
    /// Time of a bin, h.
    Time,
    /// Time of all bins, h.
    Total,
}

/// What is wrong with what was given.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum FreeCoolingError {
    /// A value outside its range, or no number; in the unit named with it.
    #[error("{what:?} of {given} is outside {low} to {high}")]
    OutOfRange {
        /// Which value.
        what: FreeCoolingValue,
        /// As given.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// No bin has any hours.
    #[error("no hours are given at any outdoor temperature")]
    NoHours,
}

impl FreeCooling {
    /// Outdoor temperature up to which the compressor may stay off.
    ///
    /// # Errors
    /// [`FreeCoolingError::OutOfRange`].
    pub fn up_to(&self) -> Result<ThermodynamicTemperature, FreeCoolingError> {
        self.check()?;
        Ok(self.inside - self.approach)
    }

    /// Hours a year with the compressor off, and what they save.
    ///
    /// # Errors
    /// [`FreeCoolingError::OutOfRange`], [`FreeCoolingError::NoHours`].
    pub fn over_year(&self, bins: &[Bin]) -> Result<Outcome, FreeCoolingError> {
        let up_to = self.up_to()?;
        let year = Year::of(bins, up_to)?;
        if year.cold == 0.0 {
            return Ok(Outcome::NeverColdEnough {
                up_to,
                coldest: ThermodynamicTemperature::new::<kelvin>(year.coldest),
            });
        }
        let time = Time::new::<hour>(year.cold);
        let energy = (self.now - self.instead) * time;
        Ok(if energy.get::<joule>() > 0.0 {
            Outcome::Saves {
                up_to,
                time,
                share: year.cold / year.all,
                energy,
            }
        } else {
            Outcome::SavesNothing {
                up_to,
                time,
                extra: -energy,
            }
        })
    }

    fn check(&self) -> Result<(), FreeCoolingError> {
        inside(
            FreeCoolingValue::Inside,
            self.inside.get::<kelvin>(),
            (200.0, 350.0),
        )?;
        inside(
            FreeCoolingValue::Approach,
            self.approach.get::<kelvin_interval>(),
            (0.0, 60.0),
        )?;
        inside(FreeCoolingValue::Now, self.now.get::<watt>(), (0.0, 1e7))?;
        inside(
            FreeCoolingValue::Instead,
            self.instead.get::<watt>(),
            (0.0, 1e7),
        )
    }
}

/// Hours of a year: all, and those cold enough; the coldest outdoor temperature that has any.
struct Year {
    all: f64,
    cold: f64,
    coldest: f64,
}

impl Year {
    fn of(bins: &[Bin], up_to: ThermodynamicTemperature) -> Result<Self, FreeCoolingError> {
        let mut year = Self {
            all: 0.0,
            cold: 0.0,
            coldest: f64::INFINITY,
        };
        for bin in bins {
            let outdoor = bin.outdoor.get::<kelvin>();
            let hours = bin.time.get::<hour>();
            inside(FreeCoolingValue::Outdoor, outdoor, (150.0, 350.0))?;
            inside(FreeCoolingValue::Time, hours, (0.0, YEAR))?;
            year.all += hours;
            if hours > 0.0 {
                year.coldest = year.coldest.min(outdoor);
            }
            if bin.outdoor <= up_to {
                year.cold += hours;
            }
        }
        // Hours that were added up in another order may differ in their last digits.
        inside(FreeCoolingValue::Total, year.all, (0.0, YEAR + 1e-6))?;
        if year.all == 0.0 {
            return Err(FreeCoolingError::NoHours);
        }
        Ok(year)
    }
}

fn inside(
    what: FreeCoolingValue,
    given: f64,
    (low, high): (f64, f64),
) -> Result<(), FreeCoolingError> {
    if (low..=high).contains(&given) {
        return Ok(());
    }
    Err(FreeCoolingError::OutOfRange {
        what,
        given,
        low,
        high,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::energy::kilowatt_hour;
    use uom::si::power::kilowatt;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    fn bins(pairs: &[(f64, f64)]) -> Vec<Bin> {
        let bin = |(degrees, hours): &(f64, f64)| Bin {
            outdoor: celsius(*degrees),
            time: Time::new::<hour>(*hours),
        };
        pairs.iter().map(bin).collect()
    }

    fn hut(now: f64, instead: f64) -> FreeCooling {
        FreeCooling {
            inside: celsius(26.0),
            approach: Source::OutsideAir.usual_approach(),
            now: Power::new::<kilowatt>(now),
            instead: Power::new::<kilowatt>(instead),
        }
    }

    /// By hand: 18 °C and below is 3000 h; 2.5 kW less 0.5 kW over them is 6000 kWh.
    #[test]
    fn hours_and_energy() {
        let year = bins(&[
            (-5.0, 1000.0),
            (10.0, 1500.0),
            (18.0, 500.0),
            (18.1, 1000.0),
            (30.0, 2000.0),
        ]);
        let Outcome::Saves {
            up_to,
            time,
            share,
            energy,
        } = hut(2.5, 0.5).over_year(&year).unwrap()
        else {
            panic!("saves nothing");
        };
        assert!((up_to.get::<degree_celsius>() - 18.0).abs() < 1e-9);
        assert!((time.get::<hour>() - 3000.0).abs() < 1e-9);
        assert!((share - 0.5).abs() < 1e-12);
        assert!((energy.get::<kilowatt_hour>() - 6000.0).abs() < 1e-6);
    }

    #[test]
    fn warm_places_and_hungry_fans() {
        let warm = bins(&[(10.0, 0.0), (20.0, 4000.0), (30.0, 4000.0)]);
        assert!(matches!(
            hut(2.5, 0.5).over_year(&warm).unwrap(),
            Outcome::NeverColdEnough { coldest, .. } if (coldest.get::<degree_celsius>() - 20.0).abs() < 1e-9
        ));
        let cold = bins(&[(0.0, 100.0)]);
        assert!(matches!(
            hut(1.0, 1.5).over_year(&cold).unwrap(),
            Outcome::SavesNothing { extra, .. } if (extra.get::<kilowatt_hour>() - 50.0).abs() < 1e-9
        ));
    }

    #[test]
    fn what_is_no_year() {
        let ask = |pairs: &[(f64, f64)]| hut(2.0, 1.0).over_year(&bins(pairs));
        assert_eq!(ask(&[]), Err(FreeCoolingError::NoHours));
        assert_eq!(ask(&[(0.0, 0.0)]), Err(FreeCoolingError::NoHours));
        assert!(ask(&[(0.0, -1.0)]).is_err());
        assert!(ask(&[(f64::NAN, 1.0)]).is_err());
        assert!(matches!(
            ask(&[(0.0, 8000.0), (10.0, 1000.0)]),
            Err(FreeCoolingError::OutOfRange {
                what: FreeCoolingValue::Total,
                ..
            })
        ));
        let mut wrong = hut(2.0, 1.0);
        wrong.approach = TemperatureInterval::new::<kelvin_interval>(-1.0);
        assert!(wrong.up_to().is_err());
    }
}
