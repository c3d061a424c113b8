//! States of the refrigerant that every compressor model asks for.

use uom::si::f64::{AvailableEnergy, Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Refrigerant, State};

use super::error::inside;
use super::{CompressorError, CompressorValue, Point, Suction};

/// The gas at the inlet at a suction pressure.
///
/// At the dew point itself a blend would be asked for on the edge of two phases, so that the dew state answers there.
pub(super) fn suction(
    refrigerant: &Refrigerant,
    evaporating: ThermodynamicTemperature,
    suction: Suction,
) -> Result<State, CompressorError> {
    let dew = refrigerant.dew_at_temperature(evaporating)?;
    let temperature = match suction {
        Suction::Superheat(superheat) => {
            let kelvins = superheat.get::<kelvin_interval>();
            inside(CompressorValue::Superheat, kelvins, (0.0, 100.0))?;
            evaporating + superheat
        }
        Suction::ReturnGas(temperature) => {
            let kelvins = temperature.get::<kelvin>();
            inside(CompressorValue::ReturnGas, kelvins, (150.0, 450.0))?;
            if temperature < evaporating {
                return Err(CompressorError::ReturnGasTooCold {
                    given: temperature,
                    evaporating,
                });
            }
            temperature
        }
    };
    if temperature <= evaporating {
        return Ok(dew);
    }
    Ok(refrigerant.state(temperature, dew.pressure)?)
}

/// Work of compression without loss from a state to a discharge pressure, `h(p, s₁) − h₁`.
pub(super) fn isentropic_work(
    refrigerant: &Refrigerant,
    from: &State,
    discharge: Pressure,
) -> Result<(State, AvailableEnergy), CompressorError> {
    let end = refrigerant.state_at_pressure_entropy(discharge, from.entropy)?;
    Ok((end, end.enthalpy - from.enthalpy))
}

/// Heat that a kilogram takes up from the liquid to the inlet. The liquid is as far below the bubble point at discharge pressure as it is subcooled.
pub(super) fn cooling(
    refrigerant: &Refrigerant,
    at: Point,
    inlet: &State,
    discharge: Pressure,
    subcooling: TemperatureInterval,
) -> Result<AvailableEnergy, CompressorError> {
    let kelvins = subcooling.get::<kelvin_interval>();
    inside(CompressorValue::Subcooling, kelvins, (0.0, 100.0))?;
    let bubble = refrigerant.bubble_at_pressure(discharge)?;
    let liquid = if kelvins > 0.0 {
        refrigerant.state(bubble.temperature - subcooling, discharge)?
    } else {
        bubble
    };
    let cooling = inlet.enthalpy - liquid.enthalpy;
    if cooling <= AvailableEnergy::default() {
        return Err(CompressorError::NoCooling { at });
    }
    Ok(cooling)
}

/// The discharge pressure of a point that has been checked.
pub(super) fn discharge_pressure(
    refrigerant: &Refrigerant,
    point: Point,
) -> Result<Pressure, CompressorError> {
    Ok(refrigerant.dew_at_temperature(point.condensing)?.pressure)
}
