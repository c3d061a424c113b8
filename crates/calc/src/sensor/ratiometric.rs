//! A pressure transducer whose output is a share of its supply voltage.
//!
//! `U = U_supply · (s_low + (s_high − s_low)·(p − p_low)/(p_high − p_low))`. Usually a tenth to nine tenths: 0.5 to 4.5 V of 5 V.
//!
//! Source: a straight line by definition. Half way from an end of the range to the supply or to common counts as a fault: common
//! practice, no published source.

use uom::si::electric_potential::volt;
use uom::si::f64::{ElectricPotential, Pressure};

use super::error::{SensorError, SensorValue, inside};
use super::{Fault, PressureRange, Reading};

/// Supply voltages taken, V.
const SUPPLY: (f64, f64) = (1.0, 36.0);

/// Narrowest range of the output as a share of the supply.
const NARROWEST: f64 = 0.2;

/// A ratiometric pressure transducer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ratiometric {
    range: PressureRange,
    low: f64,
    high: f64,
}

impl Ratiometric {
    /// A transducer with its output at the low and the high end of its range, as shares of the supply.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for a low share outside 0 to 0.8, or a high share above 1 or less than 0.2 above the low one.
    pub fn new(range: PressureRange, (low, high): (f64, f64)) -> Result<Self, SensorError> {
        let low = inside(SensorValue::LowShare, low, (0.0, 1.0 - NARROWEST))?;
        let high = inside(SensorValue::HighShare, high, (low + NARROWEST, 1.0))?;
        Ok(Self { range, low, high })
    }

    /// With the usual output of a tenth to nine tenths of the supply. Common practice, no published source.
    pub fn usual(range: PressureRange) -> Self {
        Self {
            range,
            low: 0.1,
            high: 0.9,
        }
    }

    /// Output on a supply voltage at an absolute pressure.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for a supply outside 1 to 36 V or a pressure outside the range.
    pub fn output(
        &self,
        supply: ElectricPotential,
        absolute: Pressure,
    ) -> Result<ElectricPotential, SensorError> {
        let volts = checked_supply(supply)?;
        let share = self.range.share_at(absolute)?;
        Ok(ElectricPotential::new::<volt>(
            volts * (self.low + (self.high - self.low) * share),
        ))
    }

    /// Absolute pressure, or the fault, from the supply and the output measured at the same time.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for a supply outside 1 to 36 V or an output that is no number.
    pub fn pressure(
        &self,
        supply: ElectricPotential,
        output: ElectricPotential,
    ) -> Result<Reading<Pressure>, SensorError> {
        let volts = checked_supply(supply)?;
        let measured = inside(
            SensorValue::OutputVoltage,
            output.get::<volt>(),
            (f64::MIN, f64::MAX),
        )?;
        let share = measured / volts;
        Ok(if share < 0.5 * self.low {
            Reading::Fault(Fault::SignalLow)
        } else if share > 0.5 * (1.0 + self.high) {
            Reading::Fault(Fault::SignalHigh)
        } else {
            let of_range = (share - self.low) / (self.high - self.low);
            Reading::Value(self.range.at_share(of_range))
        })
    }
}

fn checked_supply(supply: ElectricPotential) -> Result<f64, SensorError> {
    inside(SensorValue::SupplyVoltage, supply.get::<volt>(), SUPPLY)
}
