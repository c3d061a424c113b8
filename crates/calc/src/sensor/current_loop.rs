//! A 4 to 20 mA loop: `I = 4 mA + 16 mA · share of the range`.
//!
//! Source: IEC 60381-1 for the signal; NAMUR NE 43 for faults (from memory): 3.8 to 20.5 mA is a value, 3.6 mA and less or 21 mA
//! and more a fault. What lies between is still read as a value here.

use uom::si::electric_current::{ampere, milliampere};
use uom::si::f64::{ElectricCurrent, Pressure};

use super::error::{SensorError, SensorValue, inside};
use super::{Fault, PressureRange, Reading};

/// Currents at the ends of the range, mA.
const ENDS: (f64, f64) = (4.0, 20.0);

/// Currents at and beyond which the sensor is broken, mA.
const FAULTS: (f64, f64) = (3.6, 21.0);

/// Share of the sensor's range that a loop current stands for, a little below 0 or above 1 beyond the ends, or the fault.
///
/// # Errors
/// [`SensorError::OutOfRange`] for what is no number.
pub fn share_at_current(current: ElectricCurrent) -> Result<Reading<f64>, SensorError> {
    inside(
        SensorValue::LoopCurrent,
        current.get::<ampere>(),
        (f64::MIN, f64::MAX),
    )?;
    let ends = |(low, high)| {
        (
            ElectricCurrent::new::<milliampere>(low),
            ElectricCurrent::new::<milliampere>(high),
        )
    };
    // Compared as currents, so that 3.6 mA is a fault however the decimal was rounded on its way in.
    let (faults, (low, high)) = (ends(FAULTS), ends(ENDS));
    Ok(if current <= faults.0 {
        Reading::Fault(Fault::SignalLow)
    } else if current >= faults.1 {
        Reading::Fault(Fault::SignalHigh)
    } else {
        Reading::Value(((current - low) / (high - low)).value)
    })
}

/// Loop current at a share of the sensor's range.
///
/// # Errors
/// [`SensorError::OutOfRange`] outside 0 to 1.
pub fn current_at_share(share: f64) -> Result<ElectricCurrent, SensorError> {
    let share = inside(SensorValue::RangeShare, share, (0.0, 1.0))?;
    Ok(ElectricCurrent::new::<milliampere>(
        ENDS.0 + (ENDS.1 - ENDS.0) * share,
    ))
}

/// A pressure transducer on a 4 to 20 mA loop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurrentLoop {
    range: PressureRange,
}

impl CurrentLoop {
    /// A transducer with its range.
    pub fn new(range: PressureRange) -> Self {
        Self { range }
    }

    /// Loop current at an absolute pressure.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for a pressure outside the range.
    pub fn current(&self, absolute: Pressure) -> Result<ElectricCurrent, SensorError> {
        current_at_share(self.range.share_at(absolute)?)
    }

    /// Absolute pressure, or the fault, at a loop current.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for what is no number.
    pub fn pressure(&self, current: ElectricCurrent) -> Result<Reading<Pressure>, SensorError> {
        Ok(share_at_current(current)?.map(|share| self.range.at_share(share)))
    }
}
