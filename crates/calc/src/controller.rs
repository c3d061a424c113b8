//! The controller: proportional between a lower end at minimum output and the full-speed point.

use uom::si::f64::{Pressure, Ratio, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Error, Refrigerant};

use crate::input::Sensing;

/// Vapour quality where a coil sensor is taken to sit: half way through condensing.
pub(crate) const SENSOR_QUALITY: f64 = 0.5;

/// Temperature that a sensor on the two-phase part of the coil sees at a head pressure.
///
/// # Errors
/// Those of [`Refrigerant::two_phase`].
pub fn coil_temperature(
    refrigerant: &Refrigerant,
    pressure: Pressure,
) -> Result<ThermodynamicTemperature, Error> {
    Ok(refrigerant
        .two_phase(pressure, Ratio::new::<ratio>(SENSOR_QUALITY))?
        .temperature)
}

/// A proportional controller with a floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Proportional {
    /// What it senses.
    pub sensing: Sensing,
    /// Head pressure at and below which the output is at its minimum.
    pub low: (Pressure, ThermodynamicTemperature),
    /// Head pressure at and above which the output is full, and the coil temperature there.
    pub full: (Pressure, ThermodynamicTemperature),
    /// Minimum output, a share of one.
    pub minimum: f64,
}

impl Proportional {
    /// Output as a share of full, from the head pressure and the coil temperature that goes with it.
    pub fn output(&self, pressure: Pressure, coil: ThermodynamicTemperature) -> f64 {
        let (sensed, low, full) = match self.sensing {
            Sensing::LiquidPressure => (
                pressure.get::<pascal>(),
                self.low.0.get::<pascal>(),
                self.full.0.get::<pascal>(),
            ),
            Sensing::CoilTemperature => (
                coil.get::<kelvin>(),
                self.low.1.get::<kelvin>(),
                self.full.1.get::<kelvin>(),
            ),
        };
        let share = ((sensed - low) / (full - low)).clamp(0.0, 1.0);
        self.minimum + (1.0 - self.minimum) * share
    }
}
