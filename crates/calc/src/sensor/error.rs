//! What can be wrong with what a sensor is asked, and what would be right.

/// A value that a sensor function takes; the unit is the one that limits in [`SensorError::OutOfRange`] are in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SensorValue {
    /// Resistance, Ω.
    Resistance,
    /// Temperature, K.
    Temperature,
    /// Beta of a thermistor, K.
    Beta,
    /// Supply voltage of a transducer, V.
    SupplyVoltage,
    /// Output voltage of a transducer, V.
    OutputVoltage,
    /// Share of the supply voltage at the low end of a range.
    LowShare,
    /// Share of the supply voltage at the high end of a range.
    HighShare,
    /// Share of a range.
    RangeShare,
    /// Loop current, A.
    LoopCurrent,
    /// Low end of a pressure range, Pa in the range's own reference.
    RangeLow,
    /// High end of a pressure range, Pa in the range's own reference.
    RangeHigh,
    /// Atmospheric pressure, Pa.
    Atmosphere,
    /// Absolute pressure, Pa.
    Pressure,
}

/// What is wrong with what a sensor is asked, and what would be right.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum SensorError {
    /// A value outside the limits that the models hold for, or no number.
    #[error("{what:?} of {given} is outside {low} to {high}")]
    OutOfRange {
        /// Which value.
        what: SensorValue,
        /// What was given, in the value's unit.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// Two points of a thermistor too close together to fit a curve through.
    #[error("points {apart} K apart, need {needed} K")]
    PointsTooClose {
        /// How far apart they are, K.
        apart: f64,
        /// How far apart they should be at least, K.
        needed: f64,
    },
    /// The resistance does not fall all the way from -60 to 150 °C with these points or coefficients: a point is wrong, or the
    /// sensor is none with a negative temperature coefficient.
    #[error("resistance does not fall steadily with temperature")]
    NotFalling,
}

/// A value inside its limits; anything that is no number is outside.
pub(super) fn inside(
    what: SensorValue,
    given: f64,
    (low, high): (f64, f64),
) -> Result<f64, SensorError> {
    if (low..=high).contains(&given) {
        Ok(given)
    } else {
        Err(SensorError::OutOfRange {
            what,
            given,
            low,
            high,
        })
    }
}
