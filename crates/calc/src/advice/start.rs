//! A plan's winter start, with usual values for what no nameplate tells.

use uom::si::area::square_meter;
use uom::si::f64::{
    Area, HeatCapacity, Pressure, TemperatureInterval, ThermalConductance, Velocity, Volume,
};
use uom::si::heat_capacity::joule_per_kelvin;
use uom::si::power::{kilowatt, watt};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::velocity::meter_per_second;
use uom::si::volume::cubic_meter;

use crate::explain::Given;
use crate::method::HEAT_CAPACITY;
use crate::plan::{Method, Plan};
use crate::system::circuit::CUT_OUT_BELOW;
use crate::winter_start::{
    BypassOutcome, Contact, LowPressureSwitch, Nominal, Standing, StartError, StartUp, SumpHeat,
    standing, sump_heat, usual_evaporator_charge, usual_horizon, usual_sump_conductance,
    usual_sump_rise,
};

/// Below the known evaporating temperature by this, K, a low-pressure switch closes again. Common practice, no published source.
const CUT_IN_BELOW: f64 = 10.0;

/// Inside volume of the low side, m³ a watt of cooling capacity. Common practice, no published source.
const LOW_SIDE: f64 = 1e-6;

/// Surface of a compressor's shell of 3 kW cooling capacity, m². Common practice, no published source; larger ones go with the power 2/3.
const SHELL: f64 = 0.1;

/// Wind along a compressor outdoors, m/s. Common practice, no published source.
const WIND: f64 = 3.0;

/// How a system starts after a night at the site's low.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WinterStart {
    /// Pressures after the night.
    pub standing: Standing,
    /// Pressure below which the low-pressure switch opens.
    pub cut_out: Pressure,
    /// Pressure from which it closes again.
    pub cut_in: Pressure,
    /// What the switch does before the start, at the lowest pressure of the low side.
    pub contact: Contact,
    /// What the start asks of the switch.
    pub bypass: BypassOutcome,
    /// What the compressor's sump needs while it stands.
    pub sump: SumpHeat,
}

impl Plan {
    /// The start after a night at the site's low, with the fans as the method has them at its least.
    ///
    /// # Errors
    /// [`StartError`].
    pub fn winter_start(&self, method: Method) -> Result<WinterStart, StartError> {
        let (input, design) = (&self.input, &self.design);
        let refrigerant = &input.refrigerant;
        let (low, room) = (input.outdoor_low, input.return_air.value);
        let below = |kelvins: f64| {
            let lowest = refrigerant.temperature_range().0;
            let wanted =
                input.evaporating.value - TemperatureInterval::new::<kelvin_interval>(kelvins);
            refrigerant.dew_pressure(wanted.max(lowest))
        };
        let (cut_out, cut_in) = (below(CUT_OUT_BELOW)?, below(CUT_IN_BELOW)?);
        let switch = LowPressureSwitch::new(cut_out, cut_in)?;
        let standing = standing(refrigerant, low, room)?;
        let heat = design.heat_rejected.value.get::<watt>();
        let start = StartUp {
            refrigerant: refrigerant.clone(),
            nominal: Nominal {
                cooling: design.cycle.cooling,
                evaporating: input.evaporating.value,
                condensing: design.condensing.value,
            },
            metering: input.metering.value,
            outdoor: low,
            room,
            liquid_at_start: low,
            suction_at_start: standing.low_side_equal,
            low_side_volume: Volume::new::<cubic_meter>(
                (LOW_SIDE * design.cycle.cooling.get::<watt>()).max(2e-4),
            ),
            evaporator_charge: Given::assumed(usual_evaporator_charge(design.cycle.cooling)),
            charge_at_start: Given::assumed(0.0),
            heat_capacity: HeatCapacity::new::<joule_per_kelvin>(HEAT_CAPACITY * heat),
            condenser_conductance: ThermalConductance::new::<watt_per_kelvin>(
                self.model.least_conductance(method, low),
            ),
            receiver_heat: Default::default(),
        };
        let shell = SHELL * (design.cycle.cooling.get::<kilowatt>() / 3.0).powf(2.0 / 3.0);
        let conductance = usual_sump_conductance(
            Area::new::<square_meter>(shell.clamp(0.01, 100.0)),
            Velocity::new::<meter_per_second>(WIND),
        )?;
        Ok(WinterStart {
            standing,
            cut_out,
            cut_in,
            contact: switch.contact(standing.low_side_equal),
            bypass: start.bypass(&switch, usual_horizon())?,
            sump: sump_heat(
                low,
                low,
                Given::assumed(usual_sump_rise()),
                Given::assumed(conductance),
            )?,
        })
    }
}
