//! The compressor: what it moves and takes at an evaporating and a condensing temperature, and where it may run.
//!
//! * [`polynomial`]: the ten coefficients of a data sheet, and [`rating`], which brings their answer to the suction gas that there is;
//! * [`efficiency`]: volumetric and isentropic efficiency scaled to the nameplate, for a compressor without a data sheet;
//! * [`envelope`]: the maker's limits of evaporating and condensing temperature;
//! * [`capacity_steps`]: the shares of its displacement that it can run at.
//!
//! Evaporating and condensing temperature are dew temperatures throughout, at the compressor's suction and discharge pressure.
//!
//! Source: AHRI Standard 540. Further sources stand in the modules.

pub mod capacity_steps;
pub mod coefficients;
pub mod efficiency;
pub mod envelope;
mod error;
pub mod polynomial;
pub mod rating;
mod states;

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};
use uom::si::thermodynamic_temperature::kelvin;

pub use error::{CompressorError, CompressorValue, Output};

use error::inside;

/// Least condensing over evaporating temperature that the models answer for, K: nearer than that there is no compression to speak of.
pub const LEAST_LIFT: f64 = 1.0;

/// The two pressures that a compressor works between, as dew temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Evaporating temperature (suction dew): 150 to 450 K.
    pub evaporating: ThermodynamicTemperature,
    /// Condensing temperature (discharge dew): 150 to 450 K, at least [`LEAST_LIFT`] above evaporating.
    pub condensing: ThermodynamicTemperature,
}

impl Point {
    /// Condensing over evaporating temperature, K.
    pub(crate) fn lift(&self) -> f64 {
        self.condensing.get::<kelvin>() - self.evaporating.get::<kelvin>()
    }

    pub(crate) fn check(&self) -> Result<(), CompressorError> {
        let (low, high) = (self.evaporating, self.condensing);
        inside(
            CompressorValue::Evaporating,
            low.get::<kelvin>(),
            (150.0, 450.0),
        )?;
        inside(
            CompressorValue::Condensing,
            high.get::<kelvin>(),
            (150.0, 450.0),
        )?;
        inside(CompressorValue::Lift, self.lift(), (LEAST_LIFT, 300.0))?;
        Ok(())
    }
}

/// How the gas at the compressor's inlet is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Suction {
    /// By its superheat over the evaporating temperature: 0 to 100 K.
    Superheat(TemperatureInterval),
    /// By its own temperature, which data sheets call return gas: not below the evaporating temperature.
    ReturnGas(ThermodynamicTemperature),
}
