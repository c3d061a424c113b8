//! Usual values of a winter start for what no nameplate tells, by the size of the system.
//!
//! Source: common practice, no published source, for every one.

use uom::si::area::square_meter;
use uom::si::f64::{
    Area, HeatCapacity, Power, TemperatureInterval, ThermalConductance, Velocity, Volume,
};
use uom::si::heat_capacity::joule_per_kelvin;
use uom::si::power::{kilowatt, watt};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::velocity::meter_per_second;
use uom::si::volume::cubic_meter;

use crate::method::HEAT_CAPACITY;
use crate::system::circuit::CUT_OUT_BELOW;

/// Below the known evaporating temperature by this, K, a low-pressure switch closes again.
const CUT_IN_BELOW: f64 = 10.0;

/// Inside volume of the low side, m³ a watt of cooling capacity.
const LOW_SIDE: f64 = 1e-6;

/// Surface of a compressor's shell of 3 kW cooling capacity, m²; larger ones go with the power 2/3.
const SHELL: f64 = 0.1;

/// Heat rejected over cooling capacity.
const REJECTED: f64 = 1.25;

/// Conductance of an idle condenser in a light wind, 1/K: an eighth of the heat rejected over 15 K.
const IDLE: f64 = 1.0 / 120.0;

/// How far below the known evaporating temperature a low-pressure switch usually opens (25 K) and closes (10 K).
pub fn usual_switch_below() -> (TemperatureInterval, TemperatureInterval) {
    let kelvins = TemperatureInterval::new::<kelvin_interval>;
    (kelvins(CUT_OUT_BELOW), kelvins(CUT_IN_BELOW))
}

/// Inside volume of evaporator, suction line and the compressor's low side: 1 L a kilowatt of cooling capacity, 0.2 L at least.
pub fn usual_low_side_volume(cooling: Power) -> Volume {
    Volume::new::<cubic_meter>((LOW_SIDE * cooling.get::<watt>()).max(2e-4))
}

/// Heat capacity of condenser, receiver and the liquid in them: 2 J/K a watt of heat rejected, which is taken as 1.25 of the cooling capacity.
pub fn usual_high_side(cooling: Power) -> HeatCapacity {
    let heat = REJECTED * cooling.get::<watt>();
    HeatCapacity::new::<joule_per_kelvin>(HEAT_CAPACITY * heat)
}

/// Conductance from a condenser with its fans held off to the air outside, in a light wind: about an eighth of that with full airflow.
pub fn usual_idle_conductance(cooling: Power) -> ThermalConductance {
    ThermalConductance::new::<watt_per_kelvin>(IDLE * REJECTED * cooling.get::<watt>())
}

/// Surface of a compressor's shell: 0.1 m² at 3 kW of cooling capacity, held to 0.01 to 100 m².
pub fn usual_shell(cooling: Power) -> Area {
    let area = SHELL * (cooling.get::<kilowatt>().max(0.0) / 3.0).powf(2.0 / 3.0);
    Area::new::<square_meter>(area.clamp(0.01, 100.0))
}

/// Wind along a compressor outdoors: 3 m/s.
pub fn usual_wind() -> Velocity {
    Velocity::new::<meter_per_second>(3.0)
}
