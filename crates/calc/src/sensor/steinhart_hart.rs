//! The Steinhart–Hart equation of a thermistor: `1/T = A + B·ln R + C·(ln R)³`, R in Ω and T in K.
//!
//! Source: Steinhart & Hart 1968, Calibration curves for thermistors, Deep-Sea Research 15: within millikelvins between points
//! 50 K apart, and still close beyond them.

use super::ResistancePoint;
use super::error::SensorError;
use super::thermistor::{falling, kelvin_range};
use crate::root::bracketed;

/// Logarithms of resistance that are looked at: a hundredth of an ohm to ten gigaohms.
const LOGARITHMS: (f64, f64) = (-4.7, 23.1);

/// A thermistor by three coefficients.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SteinhartHart {
    a: f64,
    b: f64,
    c: f64,
    /// Logarithms of resistance between which the curve falls and that hold -60 to 150 °C.
    span: (f64, f64),
}

impl SteinhartHart {
    /// By the coefficients A, B and C, all in 1/K with the resistance in ohms.
    ///
    /// # Errors
    /// [`SensorError::NotFalling`] where they give no curve that falls all the way from -60 to 150 °C, or are no numbers.
    pub fn new(a: f64, b: f64, c: f64) -> Result<Self, SensorError> {
        // With c below zero the curve turns at (ln R)² = B / 3|C|. What is no number fails the checks below.
        let turn = if c < 0.0 {
            (b / (-3.0 * c)).sqrt()
        } else {
            f64::INFINITY
        };
        let span = (LOGARITHMS.0.max(-turn), LOGARITHMS.1.min(turn));
        let curve = Self { a, b, c, span };
        let (cold, hot) = kelvin_range();
        let numbers = a.is_finite() && b.is_finite() && c.is_finite();
        let falls = b > 0.0
            && curve.inverse_temperature(span.0) < 1.0 / hot
            && curve.inverse_temperature(span.1) > 1.0 / cold;
        if numbers && falls {
            Ok(curve)
        } else {
            Err(SensorError::NotFalling)
        }
    }

    /// Through three points.
    ///
    /// With `L = ln R`, `Y = 1/T` and `γⱼ = (Yⱼ − Y₁)/(Lⱼ − L₁)`: `C = (γ₃ − γ₂)/(L₃ − L₂) / (L₁ + L₂ + L₃)`,
    /// `B = γ₂ − C·(L₁² + L₁·L₂ + L₂²)`, `A = Y₁ − L₁·(B + C·L₁²)`: the three equations solved by elimination.
    ///
    /// # Errors
    /// [`SensorError::PointsTooClose`] for two less than 5 K apart; [`SensorError::NotFalling`] where a warmer point has no less
    /// resistance or the curve through them does not fall all the way from -60 to 150 °C; [`SensorError::OutOfRange`] for a
    /// point outside -60 to 150 °C or 10 Ω to 10 MΩ.
    pub fn through(points: [ResistancePoint; 3]) -> Result<Self, SensorError> {
        let [first, second, third] = points;
        let [p1, p2, p3] = falling([first.checked()?, second.checked()?, third.checked()?])?;
        let (l1, l2, l3) = (p1.1.ln(), p2.1.ln(), p3.1.ln());
        let (y1, y2, y3) = (1.0 / p1.0, 1.0 / p2.0, 1.0 / p3.0);
        let (slope2, slope3) = ((y2 - y1) / (l2 - l1), (y3 - y1) / (l3 - l1));
        let c = (slope3 - slope2) / (l3 - l2) / (l1 + l2 + l3);
        let b = slope2 - c * (l1 * l1 + l1 * l2 + l2 * l2);
        let a = y1 - l1 * (b + c * l1 * l1);
        Self::new(a, b, c)
    }

    /// A, B and C, in 1/K with the resistance in ohms.
    pub fn coefficients(&self) -> (f64, f64, f64) {
        (self.a, self.b, self.c)
    }

    pub(super) fn logarithm_at(&self, kelvin: f64) -> f64 {
        bracketed(self.span.0, self.span.1, |logarithm| {
            self.inverse_temperature(logarithm) - 1.0 / kelvin
        })
    }

    pub(super) fn inverse_temperature(&self, logarithm: f64) -> f64 {
        self.a + logarithm * (self.b + self.c * logarithm * logarithm)
    }
}
