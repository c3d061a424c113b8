//! Where the coil sensor goes: a place on the coil that is in two phases both at design and at the low.
//!
//! A place is a share of the circuit's length from where the hot gas comes in (0) to where the liquid leaves (1). In a coil with the gas connection at the top
//! and the liquid connection at the bottom, a return bend two thirds of the way up the coil is at 1/3: that is where common practice puts the sensor. Zones
//! follow each other along the circuit as the gas is desuperheated, condensed, and subcooled or backed up as liquid; where the whole coil is the air's first, each
//! tube sees the same air, so that length goes with surface.
//!
//! Within the condensing zone heat is taken as given off evenly, so that quality falls from 1 to 0 in a straight line. A blend with glide is warmest where it starts to
//! condense: a sensor away from half quality, which the settings count on, reads too warm or too cold.
//!
//! Source: two-phase temperatures from the refrigerant's equation of state. Where the sensor goes, and how far off it may read, is common practice, no published
//! source.

use uom::si::f64::{Pressure, Ratio, TemperatureInterval, ThermodynamicTemperature};
use uom::si::ratio::ratio;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Error, Refrigerant};

use crate::air::difference;
use crate::controller::{SENSOR_QUALITY, coil_temperature};
use crate::root::bracketed;

/// Where common practice puts a coil sensor: at a return bend two thirds of the way up a coil that is fed from the top.
///
/// Common practice, no published source.
pub const USUAL_PLACE: f64 = 1.0 / 3.0;

/// How far from half quality a sensor may read without its settings being off: 1 K, as much as the sensor and its strap are good for.
///
/// Common practice, no published source.
pub fn usual_tolerance() -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(1.0)
}

/// Shares of a circuit's length, in the order of flow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shares {
    /// Superheated vapour.
    pub desuperheating: f64,
    /// Two phases.
    pub condensing: f64,
    /// Liquid, subcooled or flooded.
    pub liquid: f64,
}

/// A condition that the coil works in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Condition {
    /// Zones along the circuit: none below 0, together 1 within 1e-6.
    pub shares: Shares,
    /// Condensing temperature (dew).
    pub condensing: ThermodynamicTemperature,
}

/// The two conditions that a place has to suit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum When {
    /// The known point on a warm day.
    Design,
    /// The lowest outdoor temperature of the site.
    Low,
}

/// Why a place does not do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reason {
    /// The gas is still superheated there: the sensor reads too warm.
    Superheated {
        /// In which condition.
        when: When,
        /// How much further along the circuit condensing starts, as a share of its length.
        short_by: f64,
    },
    /// There is liquid alone there: the sensor reads too cold.
    Liquid {
        /// In which condition.
        when: When,
        /// How much further back condensing ends, as a share of the circuit's length.
        beyond_by: f64,
    },
    /// The refrigerant glides, and the place reads too far from half quality.
    OffByGlide {
        /// In which condition.
        when: When,
        /// Quality at the place.
        quality: f64,
        /// How much warmer it is there than at half quality; below 0 where it is colder.
        off: TemperatureInterval,
    },
}

/// What a sensor in the two-phase zone reads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Quality at the place.
    pub quality: f64,
    /// Temperature there.
    pub temperature: ThermodynamicTemperature,
    /// How much warmer that is than at half quality; below 0 where it is colder.
    pub off: TemperatureInterval,
}

/// Whether a place does.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// It does in both conditions.
    Confirmed {
        /// What the sensor reads at design.
        design: Reading,
        /// What it reads at the low.
        low: Reading,
    },
    /// It does not.
    Refused {
        /// Every reason, those at design first. Never empty.
        reasons: Vec<Reason>,
    },
}

/// Places from one share of the circuit's length to another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// The nearest to the gas inlet.
    pub from: f64,
    /// The nearest to the liquid outlet.
    pub to: f64,
}

/// The answer for a place.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// Whether the place does.
    pub outcome: Outcome,
    /// The places that are in two phases in both conditions; `None` where no place is, so that only pressure can be sensed.
    pub band: Option<Band>,
    /// The place in that band that stays nearest to half quality temperature in both conditions; the middle where glide does not matter.
    pub best: Option<f64>,
}

/// What is wrong with what was given.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum PlaceError {
    /// A place that is no share of the circuit.
    #[error("a place of {value} is outside 0 to 1")]
    Place {
        /// As given.
        value: f64,
    },
    /// A share below 0, above 1 or no number.
    #[error("a zone's share of {value} at {when:?} is outside 0 to 1")]
    Share {
        /// In which condition.
        when: When,
        /// As given.
        value: f64,
    },
    /// The shares do not make up the circuit.
    #[error("the zones at {when:?} add up to {sum}: they must add up to 1")]
    Sum {
        /// In which condition.
        when: When,
        /// What they add up to.
        sum: f64,
    },
    /// A condensing temperature that is no number or outside 150 to 450 K.
    #[error("condensing at {kelvins} K at {when:?} is outside 150 to 450 K")]
    Condensing {
        /// In which condition.
        when: When,
        /// As given, K.
        kelvins: f64,
    },
    /// A tolerance outside 0.1 to 20 K.
    #[error("a tolerance of {kelvins} K is outside 0.1 to 20 K")]
    Tolerance {
        /// As given, K.
        kelvins: f64,
    },
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

/// Judges a place on the circuit, at design and at the low; the tolerance is how far from half quality it may read, 0.1 to 20 K.
///
/// # Errors
/// Any [`PlaceError`].
pub fn judge(
    refrigerant: &Refrigerant,
    place: f64,
    design: Condition,
    low: Condition,
    tolerance: TemperatureInterval,
) -> Result<Answer, PlaceError> {
    if !(0.0..=1.0).contains(&place) {
        return Err(PlaceError::Place { value: place });
    }
    let kelvins = tolerance.get::<kelvin_interval>();
    if !(0.1..=20.0).contains(&kelvins) {
        return Err(PlaceError::Tolerance { kelvins });
    }
    let design = Coil::new(refrigerant, When::Design, design)?;
    let low = Coil::new(refrigerant, When::Low, low)?;
    let band = Band {
        from: design.band.from.max(low.band.from),
        to: design.band.to.min(low.band.to),
    };
    let band = (band.from < band.to).then_some(band);
    let outcome = match (design.look(place, kelvins)?, low.look(place, kelvins)?) {
        (Ok(design), Ok(low)) => Outcome::Confirmed { design, low },
        (design, low) => Outcome::Refused {
            reasons: [design.err(), low.err()].into_iter().flatten().collect(),
        },
    };
    Ok(Answer {
        outcome,
        band,
        best: band.map(|band| best(band, &design, &low)).transpose()?,
    })
}

/// Glide below which every place in two phases reads alike, K: below what a sensor resolves.
const NO_GLIDE: f64 = 0.05;

fn best(band: Band, design: &Coil, low: &Coil) -> Result<f64, Error> {
    let mut failure = None;
    let mut worst = |place: f64| {
        let reading = |coil: &Coil| Ok(coil.reading(place)?.off.get::<kelvin_interval>());
        match (reading(design), reading(low)) {
            (Ok(a), Ok(b)) => f64::max(a, b) + f64::min(a, b),
            (Err(error), _) | (_, Err(error)) => {
                failure = Some(error);
                0.0
            }
        }
    };
    let glide = worst(band.from) - worst(band.to);
    let place = if glide < NO_GLIDE {
        0.5 * (band.from + band.to)
    } else {
        bracketed(band.from, band.to, worst)
    };
    match failure {
        Some(error) => Err(error),
        None => Ok(place),
    }
}

/// The coil in one condition.
struct Coil<'a> {
    refrigerant: &'a Refrigerant,
    when: When,
    pressure: Pressure,
    half: ThermodynamicTemperature,
    band: Band,
}

impl<'a> Coil<'a> {
    fn new(
        refrigerant: &'a Refrigerant,
        when: When,
        condition: Condition,
    ) -> Result<Self, PlaceError> {
        let shares = condition.shares;
        let all = [shares.desuperheating, shares.condensing, shares.liquid];
        for value in all {
            if !(0.0..=1.0).contains(&value) {
                return Err(PlaceError::Share { when, value });
            }
        }
        let sum: f64 = all.iter().sum();
        if (sum - 1.0).abs() > 1e-6 {
            return Err(PlaceError::Sum { when, sum });
        }
        let kelvins = condition.condensing.get::<kelvin>();
        if !(150.0..=450.0).contains(&kelvins) {
            return Err(PlaceError::Condensing { when, kelvins });
        }
        let pressure = refrigerant.dew_pressure(condition.condensing)?;
        Ok(Self {
            refrigerant,
            when,
            pressure,
            half: coil_temperature(refrigerant, pressure)?,
            band: Band {
                from: shares.desuperheating,
                to: shares.desuperheating + shares.condensing,
            },
        })
    }

    fn look(&self, place: f64, tolerance: f64) -> Result<Result<Reading, Reason>, Error> {
        let when = self.when;
        let (short_by, beyond_by) = (self.band.from - place, place - self.band.to);
        if short_by > 0.0 {
            return Ok(Err(Reason::Superheated { when, short_by }));
        }
        if beyond_by > 0.0 {
            return Ok(Err(Reason::Liquid { when, beyond_by }));
        }
        let reading = self.reading(place)?;
        if reading.off.get::<kelvin_interval>().abs() > tolerance {
            return Ok(Err(Reason::OffByGlide {
                when,
                quality: reading.quality,
                off: reading.off,
            }));
        }
        Ok(Ok(reading))
    }

    fn reading(&self, place: f64) -> Result<Reading, Error> {
        let length = self.band.to - self.band.from;
        let quality = if length > 0.0 {
            ((self.band.to - place) / length).clamp(0.0, 1.0)
        } else {
            SENSOR_QUALITY
        };
        let state = self
            .refrigerant
            .two_phase(self.pressure, Ratio::new::<ratio>(quality))?;
        Ok(Reading {
            quality,
            temperature: state.temperature,
            off: difference(state.temperature, self.half),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn condition(desuperheating: f64, condensing: f64, degrees: f64) -> Condition {
        Condition {
            shares: Shares {
                desuperheating,
                condensing,
                liquid: 1.0 - desuperheating - condensing,
            },
            condensing: ThermodynamicTemperature::new::<degree_celsius>(degrees),
        }
    }

    fn judged(name: &str, place: f64, design: Condition, low: Condition) -> Answer {
        let refrigerant = Refrigerant::named(name).unwrap();
        judge(&refrigerant, place, design, low, usual_tolerance()).unwrap()
    }

    #[track_caller]
    fn refused(answer: &Answer) -> &[Reason] {
        match &answer.outcome {
            Outcome::Refused { reasons } => reasons,
            Outcome::Confirmed { .. } => panic!("{answer:?}"),
        }
    }

    /// Common practice, no published source: a coil that is neither flooded nor starved takes the sensor two thirds of the way up.
    #[test]
    fn the_usual_place_does_in_an_unflooded_coil() {
        let answer = judged(
            "R-134a",
            USUAL_PLACE,
            condition(0.15, 0.75, 45.0),
            condition(0.12, 0.70, 25.0),
        );
        let Outcome::Confirmed { design, low } = answer.outcome else {
            panic!("{answer:?}");
        };
        assert!(design.off.get::<kelvin_interval>().abs() < 1e-6);
        assert!((low.temperature.get::<degree_celsius>() - 25.0).abs() < 1e-6);
        let band = answer.band.unwrap();
        assert!((band.from - 0.15).abs() < 1e-12 && (band.to - 0.82).abs() < 1e-12);
        assert!((answer.best.unwrap() - 0.485).abs() < 1e-12);
    }

    #[test]
    fn a_flooded_coil_refuses_the_usual_place() {
        let design = condition(0.15, 0.75, 45.0);
        let answer = judged("R-134a", USUAL_PLACE, design, condition(0.03, 0.17, 30.0));
        let [
            Reason::Liquid {
                when: When::Low,
                beyond_by,
            },
        ] = refused(&answer)
        else {
            panic!("{answer:?}");
        };
        assert!((beyond_by - (1.0 / 3.0 - 0.2)).abs() < 1e-12);
        assert!(answer.band.is_some());
        let none = judged("R-134a", USUAL_PLACE, design, condition(0.03, 0.10, 30.0));
        assert_eq!((none.band, none.best), (None, None));
    }

    #[test]
    fn hot_gas_refuses_a_place_near_the_inlet() {
        let answer = judged(
            "R-32",
            0.1,
            condition(0.3, 0.6, 45.0),
            condition(0.05, 0.8, 20.0),
        );
        assert!(matches!(
            refused(&answer),
            [Reason::Superheated { when: When::Design, short_by }] if (short_by - 0.2).abs() < 1e-12
        ));
    }

    #[test]
    fn glide_refuses_a_place_away_from_half_quality() {
        // R-407C glides by some 5 K: half of that is more than the tolerance near either end of the zone.
        let both = condition(0.1, 0.8, 40.0);
        let answer = judged("R-407C", 0.15, both, both);
        for reason in refused(&answer) {
            let Reason::OffByGlide { quality, off, .. } = reason else {
                panic!("{reason:?}");
            };
            assert!((quality - 0.9375).abs() < 1e-12);
            assert!(off.get::<kelvin_interval>() > 1.0);
        }
        assert_eq!(refused(&answer).len(), 2);
        let best = answer.best.unwrap();
        assert!((best - 0.5).abs() < 1e-6, "{best}");
        assert!(matches!(
            judged("R-407C", best, both, both).outcome,
            Outcome::Confirmed { .. }
        ));
    }

    #[test]
    fn what_is_no_coil() {
        let refrigerant = Refrigerant::named("R-134a").unwrap();
        let good = condition(0.1, 0.8, 40.0);
        let ask = |place, design, low, tolerance| {
            let tolerance = TemperatureInterval::new::<kelvin_interval>(tolerance);
            judge(&refrigerant, place, design, low, tolerance).unwrap_err()
        };
        assert!(matches!(
            ask(1.1, good, good, 1.0),
            PlaceError::Place { .. }
        ));
        assert!(matches!(
            ask(0.5, good, good, f64::NAN),
            PlaceError::Tolerance { .. }
        ));
        let negative = condition(-0.1, 0.8, 40.0);
        assert!(matches!(
            ask(0.5, good, negative, 1.0),
            PlaceError::Share {
                when: When::Low,
                ..
            }
        ));
        let mut short = good;
        short.shares.liquid = 0.0;
        assert!(matches!(
            ask(0.5, short, good, 1.0),
            PlaceError::Sum {
                when: When::Design,
                ..
            }
        ));
        assert!(matches!(
            ask(0.5, condition(0.1, 0.8, f64::NAN), good, 1.0),
            PlaceError::Condensing { .. }
        ));
        assert!(matches!(
            ask(0.5, condition(0.1, 0.8, 150.0), good, 1.0),
            PlaceError::Refrigerant(_)
        ));
    }
}
