//! Fan laws and the density of air against published worked examples.

use uom::si::f64::{Length, Power, Pressure, ThermodynamicTemperature, VolumeRate};
use uom::si::{
    length::foot, mass_density::kilogram_per_cubic_meter, power::kilowatt, pressure::pascal,
    thermodynamic_temperature::degree_celsius, thermodynamic_temperature::degree_fahrenheit,
    volume_rate::cubic_meter_per_second,
};
use winterset_calc::air::{atmosphere, density};
use winterset_calc::fan::FanPoint;

/// Stoecker & Jones, Refrigeration and Air Conditioning, fan chapter problem: 20 r/s, 2.4 m³/s, 340 Pa, 1.8 kW at 20 °C take
/// 1.685 kW at the same speed at 40 °C.
#[test]
fn warmer_air_takes_less_power_at_the_same_speed() {
    let sea_level = Pressure::new::<pascal>(101_325.0);
    let at = |celsius| {
        density(
            sea_level,
            ThermodynamicTemperature::new::<degree_celsius>(celsius),
        )
    };
    let cool = FanPoint {
        airflow: VolumeRate::new::<cubic_meter_per_second>(2.4),
        pressure_rise: Pressure::new::<pascal>(340.0),
        power: Power::new::<kilowatt>(1.8),
    };
    let warm = cool.scaled(1.0, (at(40.0) / at(20.0)).value);
    // The book rounds to four figures.
    assert!((warm.power.get::<kilowatt>() - 1.685).abs() < 0.0005);
    assert_eq!(warm.airflow, cool.airflow);
    // The same share of the pressure rise.
    assert!(
        (warm.pressure_rise / cool.pressure_rise - warm.power / cool.power)
            .value
            .abs()
            < 1e-12
    );
}

/// A fan catalogue's density example: at 6000 ft and 200 °F the factor to air at 70 °F and sea level is 0.643; 1.5 in of water
/// there is chosen as 2.33 in, and 3.53 hp then comes to 2.27 hp.
#[test]
fn height_and_heat_thin_the_air() {
    let fahrenheit = ThermodynamicTemperature::new::<degree_fahrenheit>;
    let high = density(atmosphere(Length::new::<foot>(6000.0)), fahrenheit(200.0));
    let standard = density(atmosphere(Length::new::<foot>(0.0)), fahrenheit(70.0));
    let factor = (high / standard).value;
    // The catalogue's table carries three figures.
    assert!((factor - 0.643).abs() < 0.0005, "{factor}");
    assert!((1.5 / factor - 2.33).abs() < 0.005);
    assert!((3.53 * factor - 2.27).abs() < 0.005);
    // AMCA 210: standard air, 0.075 lb/ft³ or 1.2 kg/m³.
    assert!((standard.get::<kilogram_per_cubic_meter>() - 1.2).abs() < 0.002);
}

/// Affinity laws by definition (AMCA 201): half the speed moves half the air against a quarter of the pressure with an eighth
/// of the power.
#[test]
fn half_speed_takes_an_eighth_of_the_power() {
    let full = FanPoint {
        airflow: VolumeRate::new::<cubic_meter_per_second>(1.0),
        pressure_rise: Pressure::new::<pascal>(80.0),
        power: Power::new::<kilowatt>(0.4),
    };
    let half = full.scaled(0.5, 1.0);
    assert_eq!(half.airflow.get::<cubic_meter_per_second>(), 0.5);
    assert_eq!(half.pressure_rise.get::<pascal>(), 20.0);
    assert!((half.power.get::<kilowatt>() - 0.05).abs() < 1e-15);
}
