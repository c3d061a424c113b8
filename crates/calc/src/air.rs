//! Outside air: pressure and density with elevation and temperature.

use uom::si::f64::{
    Length, MassDensity, Pressure, SpecificHeatCapacity, TemperatureInterval, ThermalConductance,
    ThermodynamicTemperature, VolumeRate,
};
use uom::si::{
    length::meter, mass_density::kilogram_per_cubic_meter, pressure::pascal,
    specific_heat_capacity::joule_per_kilogram_kelvin,
    temperature_interval::kelvin as kelvin_interval, thermodynamic_temperature::kelvin,
};

/// Gas constant, J/(kmol K), and molar mass of dry air, kg/kmol (U.S. Standard Atmosphere 1976).
const GAS_CONSTANT: f64 = 8314.32;
const MOLAR_MASS: f64 = 28.9644;

/// Specific heat of dry air at constant pressure, 1006 J/(kg K) between -50 and 50 °C (Incropera & DeWitt, table A.4, within
/// 0.2 %).
pub fn specific_heat() -> SpecificHeatCapacity {
    SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(1006.0)
}

/// Atmospheric pressure at a height above sea level.
///
/// `p = 101325 Pa · (1 − L·H / T₀)^(g·M / (R·L))` with the geopotential height `H = r·Z / (r + Z)`, `L` = 0.0065 K/m,
/// `T₀` = 288.15 K, `r` = 6356766 m. Valid from -5000 m to 11000 m; the base of the power is held above zero beyond.
///
/// Source: U.S. Standard Atmosphere 1976; ISO 2533.
pub fn atmosphere(elevation: Length) -> Pressure {
    const LAPSE: f64 = 0.0065;
    const EARTH_RADIUS: f64 = 6_356_766.0;
    const EXPONENT: f64 = 9.80665 * MOLAR_MASS / (GAS_CONSTANT * LAPSE);
    let geometric = elevation.get::<meter>();
    let geopotential = EARTH_RADIUS * geometric / (EARTH_RADIUS + geometric);
    let base = (1.0 - LAPSE * geopotential / 288.15).max(0.0);
    Pressure::new::<pascal>(101_325.0 * base.powf(EXPONENT))
}

/// Density of dry air by the ideal gas law, `ρ = p / (R·T)`.
pub fn density(pressure: Pressure, temperature: ThermodynamicTemperature) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(
        pressure.get::<pascal>() * MOLAR_MASS / (GAS_CONSTANT * temperature.get::<kelvin>()),
    )
}

/// Heat capacity rate of an air stream, `C = ρ·V·c`.
pub fn capacity_rate(density: MassDensity, airflow: VolumeRate) -> ThermalConductance {
    density * airflow * specific_heat()
}

/// How much hotter the first temperature is than the second.
pub fn difference(
    hot: ThermodynamicTemperature,
    cold: ThermodynamicTemperature,
) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(hot.get::<kelvin>() - cold.get::<kelvin>())
}
