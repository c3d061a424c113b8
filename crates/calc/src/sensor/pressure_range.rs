//! The range of a pressure transducer, and what its zero stands for.

use uom::si::f64::Pressure;
use uom::si::pressure::pascal;

use super::error::{SensorError, SensorValue, inside};

/// Standard atmosphere, Pa (U.S. Standard Atmosphere 1976; ISO 2533).
const STANDARD: f64 = 101_325.0;

/// What the zero of a transducer's range stands for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reference {
    /// Vacuum.
    Absolute,
    /// The air around it, which is this much at the site; see [`crate::air::atmosphere`].
    Gauge {
        /// Atmospheric pressure at the site, 30 to 120 kPa.
        atmosphere: Pressure,
    },
    /// Air of 101.325 kPa closed in when it was made, whatever the site.
    SealedGauge,
}

impl Reference {
    /// Absolute pressure of its zero, Pa, checked.
    fn zero(self) -> Result<f64, SensorError> {
        match self {
            Reference::Absolute => Ok(0.0),
            Reference::SealedGauge => Ok(STANDARD),
            Reference::Gauge { atmosphere } => inside(
                SensorValue::Atmosphere,
                atmosphere.get::<pascal>(),
                (30_000.0, 120_000.0),
            ),
        }
    }
}

/// The pressures at the low and the high end of a transducer's signal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PressureRange {
    /// Absolute, Pa.
    low: f64,
    span: f64,
    reference: Reference,
}

impl PressureRange {
    /// The ends as printed on the transducer, both from the zero of its reference.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for a low end below vacuum or above 5 MPa, a high end less than 50 kPa above the low end or
    /// above 50 MPa, or an atmosphere outside 30 to 120 kPa.
    pub fn new(low: Pressure, high: Pressure, reference: Reference) -> Result<Self, SensorError> {
        let zero = reference.zero()?;
        let low = inside(SensorValue::RangeLow, low.get::<pascal>(), (-zero, 5e6))?;
        let high = inside(
            SensorValue::RangeHigh,
            high.get::<pascal>(),
            (low + 50_000.0, 5e7),
        )?;
        Ok(Self {
            low: zero + low,
            span: high - low,
            reference,
        })
    }

    /// What its zero stands for.
    pub fn reference(&self) -> Reference {
        self.reference
    }

    /// Absolute pressures at the low and the high end.
    pub fn ends(&self) -> (Pressure, Pressure) {
        (self.at_share(0.0), self.at_share(1.0))
    }

    /// Absolute pressure at a share of the signal's range; a little beyond the ends it goes on in a straight line, to vacuum.
    pub(super) fn at_share(&self, share: f64) -> Pressure {
        Pressure::new::<pascal>((self.low + share * self.span).max(0.0))
    }

    /// Share of the signal's range at an absolute pressure.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] outside the range.
    pub(super) fn share_at(&self, absolute: Pressure) -> Result<f64, SensorError> {
        let (low, high) = (self.low, self.low + self.span);
        let given = inside(SensorValue::Pressure, absolute.get::<pascal>(), (low, high))?;
        Ok((given - low) / self.span)
    }
}
