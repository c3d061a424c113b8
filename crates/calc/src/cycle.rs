//! The compressor's inlet, and the constants of the cycle at its known point.

use uom::si::f64::{Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::{Error, Refrigerant, State};

/// Isentropic efficiency of the compressor. Common practice, no published source.
pub(crate) const ISENTROPIC_EFFICIENCY: f64 = 0.65;

/// Superheat that the metering device controls for, K. Common practice, no published source.
pub(crate) const SUPERHEAT: f64 = 8.0;

/// Most subcooling at the known point, K. Common practice, no published source.
pub(crate) const SUBCOOLING: f64 = 5.0;

/// Vapour at the compressor's inlet.
#[derive(Clone, Copy, Debug)]
pub struct Suction {
    /// Evaporating pressure.
    pub pressure: Pressure,
    /// State at the inlet.
    pub state: State,
}

impl Suction {
    /// The inlet state at an evaporating temperature (dew).
    ///
    /// # Errors
    /// Those of the refrigerant outside its range.
    pub fn new(
        refrigerant: &Refrigerant,
        evaporating: ThermodynamicTemperature,
    ) -> Result<Self, Error> {
        let pressure = refrigerant.dew_at_temperature(evaporating)?.pressure;
        let superheat = TemperatureInterval::new::<kelvin_interval>(SUPERHEAT);
        Ok(Self {
            pressure,
            state: refrigerant.state(evaporating + superheat, pressure)?,
        })
    }
}
