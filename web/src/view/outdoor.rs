//! The stretch of outdoor temperature that the drawings cover: rungs at round values of the person's unit, and samples between.

use uom::si::f64::ThermodynamicTemperature;
use winterset_calc::{Plan, Quantity};
use winterset_profile::{Kind, Unit};
use winterset_words::Units;

/// Rungs of a ladder that could no longer be read as one picture.
const MOST_RUNGS: i32 = 18;

/// Samples from one rung to the next. An even number, a quarter of which is exact, so that every rung is a sample too.
const SAMPLES: i32 = 4;

/// Round outdoor temperatures from warm to cold.
#[derive(Clone, Debug, PartialEq)]
pub struct Outdoor {
    unit: Unit,
    step: f64,
    top: f64,
    count: i32,
}

impl Outdoor {
    /// From the known point down past the site's low, and to the hold limit where that is not far off.
    pub fn of(plan: &Plan, units: Units) -> Self {
        let unit = units.unit(Kind::Temperature);
        let step = match unit {
            Unit::Fahrenheit => 10.0,
            _ => 5.0,
        };
        let number =
            |temperature| units.number(&Quantity::Temperature(temperature), plan.atmosphere.value);
        let limit = number(plan.verdict.limit());
        let low = number(plan.input.outdoor_low);
        let top = (number(plan.input.known_outdoor.value).max(low) / step).ceil() * step;
        let below = if limit < low && limit > low - 3.5 * step {
            limit
        } else {
            low
        };
        let bottom = ((below - 0.3 * step) / step).floor() * step;
        // Rungs are few, whatever was entered: the fields bound both ends.
        let count = (((top - bottom) / step).round() as i32 + 1).clamp(2, MOST_RUNGS);
        // Where that is too many, it is the warm end that tells least.
        let top = bottom + f64::from(count - 1) * step;
        Self {
            unit,
            step,
            top,
            count,
        }
    }

    /// The rungs, warm first.
    pub fn rungs(&self) -> Vec<ThermodynamicTemperature> {
        (0..self.count)
            .map(|rung| self.temperature(f64::from(rung)))
            .collect()
    }

    /// Where on the ladder samples lie, from half a rung over the top to half a rung under the bottom.
    pub fn samples(&self) -> Vec<f64> {
        (0..=self.count * SAMPLES)
            .map(|sample| f64::from(sample) / f64::from(SAMPLES) - 0.5)
            .collect()
    }

    /// The temperature at a place on the ladder, counted in rungs from the top.
    pub fn temperature(&self, at: f64) -> ThermodynamicTemperature {
        let quantity = self
            .unit
            .quantity(self.number(at), uom::si::f64::Pressure::default());
        match quantity {
            Quantity::Temperature(temperature) => temperature,
            _ => ThermodynamicTemperature::default(),
        }
    }

    /// The number at a place on the ladder, in the person's unit.
    pub fn number(&self, at: f64) -> f64 {
        self.top - at * self.step
    }

    /// The place of a number in the person's unit.
    pub fn place(&self, number: f64) -> f64 {
        (self.top - number) / self.step
    }

    /// Whether a place lies on the drawing.
    pub fn holds(&self, at: f64) -> bool {
        (-0.5..=f64::from(self.count) - 0.5).contains(&at)
    }

    /// The rung at a number in the person's unit, or the next colder one.
    pub fn at_or_below(&self, number: f64) -> usize {
        let last = f64::from(self.count - 1);
        // Clamped to the rungs before it is cut to a whole number.
        (self.place(number) - 1e-9).ceil().clamp(0.0, last) as usize
    }
}
