//! A plan's winter start, with usual values for what no nameplate tells.

use uom::si::f64::{HeatCapacity, Pressure, TemperatureInterval, ThermalConductance};
use uom::si::heat_capacity::joule_per_kelvin;
use uom::si::power::watt;
use uom::si::thermal_conductance::watt_per_kelvin;

use crate::explain::Given;
use crate::method::HEAT_CAPACITY;
use crate::plan::{Method, Plan};
use crate::winter_start::{
    BypassOutcome, Contact, LowPressureSwitch, Nominal, Standing, StartError, StartUp, SumpHeat,
    standing, sump_heat, usual_evaporator_charge, usual_horizon, usual_low_side_volume,
    usual_shell, usual_sump_conductance, usual_sump_rise, usual_switch_below, usual_wind,
};

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
        let below = |difference: TemperatureInterval| {
            let lowest = refrigerant.temperature_range().0;
            refrigerant.dew_pressure((input.evaporating.value - difference).max(lowest))
        };
        let (opens, closes) = usual_switch_below();
        let (cut_out, cut_in) = (below(opens)?, below(closes)?);
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
            low_side_volume: usual_low_side_volume(design.cycle.cooling),
            evaporator_charge: Given::assumed(usual_evaporator_charge(design.cycle.cooling)),
            charge_at_start: Given::assumed(0.0),
            heat_capacity: HeatCapacity::new::<joule_per_kelvin>(HEAT_CAPACITY * heat),
            condenser_conductance: ThermalConductance::new::<watt_per_kelvin>(
                self.model.least_conductance(method, low),
            ),
            receiver_heat: Default::default(),
        };
        let shell = usual_shell(design.cycle.cooling);
        let conductance = usual_sump_conductance(shell, usual_wind())?;
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
