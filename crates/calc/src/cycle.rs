//! The refrigeration cycle as far as a first plan needs it: heat of compression and what the metering device must pass.

use uom::si::f64::{
    AvailableEnergy, MassDensity, Pressure, TemperatureInterval, ThermodynamicTemperature,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::{Error, Refrigerant, State};

/// Isentropic efficiency of the compressor. Common practice, no published source.
pub(crate) const ISENTROPIC_EFFICIENCY: f64 = 0.65;

/// Superheat at the compressor's inlet, K. Common practice, no published source.
const SUPERHEAT: f64 = 8.0;

/// Subcooling at the metering device, K. Common practice, no published source.
const SUBCOOLING: f64 = 5.0;

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

/// Liquid in front of the metering device.
#[derive(Clone, Copy, Debug)]
pub struct Liquid {
    /// Density.
    pub density: MassDensity,
    /// Specific enthalpy.
    pub enthalpy: AvailableEnergy,
}

/// Subcooled liquid at a head pressure.
///
/// # Errors
/// Those of the refrigerant outside its range.
pub fn liquid(refrigerant: &Refrigerant, pressure: Pressure) -> Result<Liquid, Error> {
    let bubble = refrigerant.bubble_at_pressure(pressure)?.temperature;
    let state = refrigerant.state(
        bubble - TemperatureInterval::new::<kelvin_interval>(SUBCOOLING),
        pressure,
    )?;
    Ok(Liquid {
        density: state.density,
        enthalpy: state.enthalpy,
    })
}

/// Heat rejected over cooling capacity, `1 + (h₂s − h₁) / (η·(h₁ − h₃))`.
///
/// # Errors
/// Those of the refrigerant outside its range.
pub fn heat_rejection_ratio(
    refrigerant: &Refrigerant,
    suction: &Suction,
    head: Pressure,
) -> Result<f64, Error> {
    let discharge = refrigerant.state_at_pressure_entropy(head, suction.state.entropy)?;
    let work = (discharge.enthalpy - suction.state.enthalpy) / ISENTROPIC_EFFICIENCY;
    let cooling = suction.state.enthalpy - liquid(refrigerant, head)?.enthalpy;
    Ok(1.0 + (work / cooling).value)
}
