//! Bubble and dew points.

use super::Engine;
use crate::algorithm::envelope::{Given, Outside};
use crate::algorithm::equilibrium::{Point, Side};
use crate::algorithm::properties::properties;
use crate::{Calculation, Error, Phase, Quantity, Saturation, State};

/// A saturated phase of the composition, molar.
#[derive(Clone, Copy, Debug)]
pub struct Saturated {
    pub temperature: f64,
    pub pressure: f64,
    pub density: f64,
}

/// Bubble and dew point of one temperature or pressure, in the unknowns of the algorithm.
pub struct Ends {
    pub bubble: Point,
    pub dew: Point,
}

impl Engine {
    /// The point on a saturation curve, in the unknowns of the algorithm.
    #[inline]
    pub(super) fn point(&self, side: Side, given: Given, value: f64) -> Result<Point, Error> {
        let envelope = self.envelope()?;
        let quantity = match given {
            Given::Temperature => Quantity::Temperature,
            Given::Pressure => Quantity::Pressure,
        };
        if !(value > 0.0 && value.is_finite())
            || (given == Given::Temperature && value < self.lowest)
        {
            let (low, high) = match given {
                Given::Temperature => self.saturation_range(),
                Given::Pressure => (0.0, envelope.highest(side, given)),
            };
            return Err(Error::OutOfRange {
                quantity,
                value,
                low,
                high,
            });
        }
        envelope
            .find(&self.mixture, side, given, value)
            .map_err(|outside| match outside {
                Outside::Above(highest) => Error::AboveCritical {
                    quantity,
                    value,
                    highest,
                },
                Outside::Below(low) => Error::OutOfRange {
                    quantity,
                    value,
                    low,
                    high: envelope.highest(side, given),
                },
                Outside::Stalled => Error::NotConverged {
                    calculation: match side {
                        Side::Bubble => Calculation::Bubble,
                        Side::Dew => Calculation::Dew,
                    },
                    quantity,
                    value,
                },
            })
    }

    /// Temperature, pressure and density of a point; `side` says which phase is meant where a pure fluid has both in one point.
    pub(super) fn saturated_of(&self, side: Side, point: &Point) -> Saturated {
        let n = self.z.len();
        let ln_rho = match side {
            Side::Dew if n == 1 => point.unknowns[0],
            _ => point.unknowns[n],
        };
        Saturated {
            temperature: point.unknowns[n + 1].exp(),
            pressure: point.ln_p.exp(),
            density: ln_rho.exp(),
        }
    }

    /// A saturated phase, with the given value exactly as given.
    pub fn saturated(&self, side: Side, given: Given, value: f64) -> Result<Saturated, Error> {
        let point = self.point(side, given, value)?;
        Ok(self.exactly(given, value, self.saturated_of(side, &point)))
    }

    pub(super) fn exactly(&self, given: Given, value: f64, mut found: Saturated) -> Saturated {
        match given {
            Given::Temperature => found.temperature = value,
            Given::Pressure => found.pressure = value,
        }
        found
    }

    /// Its state.
    pub(super) fn saturated_state(&self, side: Side, at: &Saturated) -> State {
        let of = properties(&self.mixture, at.temperature, at.density, &self.z);
        let (phase, quality) = match side {
            Side::Bubble => (Phase::Liquid, 0.0),
            Side::Dew => (Phase::Vapor, 1.0),
        };
        let place = (at.temperature, at.pressure, at.density);
        self.single(phase, Some(quality), place, &of)
    }

    fn one(&self, side: Side, given: Given, value: f64) -> Result<State, Error> {
        Ok(self.saturated_state(side, &self.saturated(side, given, value)?))
    }

    fn points(&self, given: Given, value: f64) -> (Result<Point, Error>, Result<Point, Error>) {
        let bubble = self.point(Side::Bubble, given, value);
        // One point of a pure fluid is both.
        let dew = match self.z.len() {
            1 => bubble.clone(),
            _ => self.point(Side::Dew, given, value),
        };
        (bubble, dew)
    }

    /// Bubble and dew point at one temperature or pressure.
    pub(super) fn ends(&self, given: Given, value: f64) -> Result<Ends, Error> {
        let (bubble, dew) = self.points(given, value);
        Ok(Ends {
            bubble: bubble?,
            dew: dew?,
        })
    }

    /// Both saturated phases, each where there is one.
    pub(super) fn each(
        &self,
        given: Given,
        value: f64,
    ) -> (Result<Saturated, Error>, Result<Saturated, Error>) {
        let (bubble, dew) = self.points(given, value);
        let of = |side, point| self.exactly(given, value, self.saturated_of(side, &point));
        (
            bubble.map(|point| of(Side::Bubble, point)),
            dew.map(|point| of(Side::Dew, point)),
        )
    }

    fn both(&self, given: Given, value: f64) -> Result<Saturation, Error> {
        let ends = self.ends(given, value)?;
        let state = |side, point| {
            let at = self.exactly(given, value, self.saturated_of(side, point));
            self.saturated_state(side, &at)
        };
        Ok(Saturation {
            bubble: state(Side::Bubble, &ends.bubble),
            dew: state(Side::Dew, &ends.dew),
        })
    }

    pub fn bubble_at_temperature(&self, t: f64) -> Result<State, Error> {
        self.one(Side::Bubble, Given::Temperature, t)
    }

    pub fn dew_at_temperature(&self, t: f64) -> Result<State, Error> {
        self.one(Side::Dew, Given::Temperature, t)
    }

    pub fn bubble_at_pressure(&self, p: f64) -> Result<State, Error> {
        self.one(Side::Bubble, Given::Pressure, p)
    }

    pub fn dew_at_pressure(&self, p: f64) -> Result<State, Error> {
        self.one(Side::Dew, Given::Pressure, p)
    }

    pub fn saturation_at_temperature(&self, t: f64) -> Result<Saturation, Error> {
        self.both(Given::Temperature, t)
    }

    pub fn saturation_at_pressure(&self, p: f64) -> Result<Saturation, Error> {
        self.both(Given::Pressure, p)
    }
}
