//! Heat that keeps refrigerant out of the oil of a standing compressor.
//!
//! The sump has to be warmer than the saturation temperature of the pressure that the system stands at, and than what is round it, by some kelvins;
//! then no refrigerant condenses in it and little dissolves in the oil. The heat is what the shell loses at that, `Q = G·(t_sump − t_around)`.
//!
//! Source: the 10 K, the heating time and the surface coefficient of still air are common practice, no published source; with wind by McAdams's
//! flat plate, `h = 5.7 + 3.8·v` (from memory: McAdams, Heat Transmission).

use uom::si::area::square_meter;
use uom::si::f64::{
    Area, Power, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, Time, Velocity,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::hour;
use uom::si::velocity::meter_per_second;

use super::error::{StartError, StartInput, temperature, within};
use crate::air::difference;
use crate::explain::Given;

/// Natural convection and radiation together on a shell in still air, W/(m² K).
const STILL_AIR: f64 = 10.0;

/// How far the sump is to be above what is round it, 10 K. Common practice, no published source.
pub fn usual_sump_rise() -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(10.0)
}

/// How long the sump is heated before a start after a long stop, 12 h. Common practice, no published source: 8 to 24 h.
pub fn usual_heating_time() -> Time {
    Time::new::<hour>(12.0)
}

/// Conductance from a bare shell to its surroundings, from its surface (0.01 to 100 m²) and the wind along it (0 to 40 m/s).
///
/// Still air takes 10 W/(m² K), a wind what McAdams's `5.7 + 3.8·v` says where that is more.
///
/// # Errors
/// [`StartError::OutOfRange`].
pub fn usual_sump_conductance(
    shell: Area,
    wind: Velocity,
) -> Result<ThermalConductance, StartError> {
    let area = within(
        StartInput::ShellArea,
        shell.get::<square_meter>(),
        (0.01, 100.0),
    )?;
    let speed = within(
        StartInput::WindSpeed,
        wind.get::<meter_per_second>(),
        (0.0, 40.0),
    )?;
    let coefficient = STILL_AIR.max(5.7 + 3.8 * speed);
    Ok(ThermalConductance::new::<watt_per_kelvin>(
        coefficient * area,
    ))
}

/// What the sump of a standing compressor needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SumpHeat {
    /// Temperature that it has to be held at.
    pub temperature: ThermodynamicTemperature,
    /// Heat that this takes.
    pub heat: Power,
}

/// Heat for a sump, from what is round the compressor and the saturation temperature of the pressure that the system stands at (173.15 to 400 K each),
/// the rise over both (0 to 60 K; see [`usual_sump_rise`]) and the conductance (0.01 W/K to 10 kW/K).
///
/// # Errors
/// [`StartError::OutOfRange`].
pub fn sump_heat(
    around: ThermodynamicTemperature,
    saturation: ThermodynamicTemperature,
    rise: Given<TemperatureInterval>,
    conductance: Given<ThermalConductance>,
) -> Result<SumpHeat, StartError> {
    temperature(StartInput::Outdoor, around)?;
    temperature(StartInput::PartTemperature, saturation)?;
    let kelvins = rise.value.get::<kelvin_interval>();
    within(StartInput::SumpRise, kelvins, (0.0, 60.0))?;
    let watts = conductance.value.get::<watt_per_kelvin>();
    within(StartInput::SumpConductance, watts, (0.01, 1e4))?;
    let held = if saturation > around {
        saturation
    } else {
        around
    };
    let temperature = ThermodynamicTemperature::new::<kelvin>(held.get::<kelvin>() + kelvins);
    Ok(SumpHeat {
        temperature,
        heat: conductance.value * difference(temperature, around),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::power::watt;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    fn shell(wind: f64) -> ThermalConductance {
        usual_sump_conductance(
            Area::new::<square_meter>(0.5),
            Velocity::new::<meter_per_second>(wind),
        )
        .unwrap()
    }

    #[test]
    fn a_small_compressor_takes_what_heaters_of_its_size_give() {
        // Common practice, no published source: 30 to 100 W for the shell of a compressor of some kilowatts, in still air.
        let rise = Given::assumed(usual_sump_rise());
        let still = sump_heat(
            celsius(-10.0),
            celsius(-10.0),
            rise,
            Given::assumed(shell(0.0)),
        );
        let watts = still.unwrap().heat.get::<watt>();
        assert!((watts - 50.0).abs() < 1e-9, "{watts}");
    }

    #[test]
    fn wind_and_a_warmer_saturation_take_more() {
        let rise = Given::assumed(usual_sump_rise());
        let need = |saturation, wind| {
            let conductance = Given::assumed(shell(wind));
            sump_heat(celsius(-10.0), celsius(saturation), rise, conductance).unwrap()
        };
        assert!(need(-10.0, 5.0).heat > need(-10.0, 0.0).heat);
        let warm = need(5.0, 0.0);
        assert!((warm.temperature.get::<degree_celsius>() - 15.0).abs() < 1e-9);
        assert_eq!(need(-30.0, 0.0), need(-10.0, 0.0));
    }

    #[test]
    fn what_cannot_be_is_named() {
        let rise = Given::entered(TemperatureInterval::new::<kelvin_interval>(90.0));
        let refused = sump_heat(celsius(0.0), celsius(0.0), rise, Given::assumed(shell(0.0)));
        assert!(matches!(
            refused,
            Err(StartError::OutOfRange {
                input: StartInput::SumpRise,
                ..
            })
        ));
    }
}
