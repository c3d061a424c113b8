//! How long the suction pressure stays below the cut-out after a start in the cold.
//!
//! The compressor empties the low side at once, while cold liquid has little pressure to feed it; only as the condenser and the receiver warm up
//! does the feed catch up. The equations stand beside the model, in `pull_down`: lumped, pressures alike throughout a side, the
//! receiver never without liquid, and the compressor kept running, as by a bypass of the switch.
//!
//! Source: mass and energy balances over saturated states; AHRI 750 for the square-root law of the metering device. That a bypass of the
//! low-pressure switch carries a system through is common practice, no published source.

use uom::si::f64::{
    HeatCapacity, Mass, Power, Pressure, ThermalConductance, ThermodynamicTemperature, Time, Volume,
};
use uom::si::heat_capacity::joule_per_kelvin;
use uom::si::mass::kilogram;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;
use uom::si::volume::cubic_meter;
use winterset_refrigerant::Refrigerant;

use super::error::{StartError, StartInput, above, temperature, within};
use super::pull_down::{Constants, High, Low, PullDown};
use super::standing::LowPressureSwitch;
use crate::explain::Given;
use crate::input::Metering;
use crate::integrate::{Step, integrate};
use crate::need::flow_reserve;
use crate::root::bracketed;

/// Longest step of the integration, s: short beside the times that a bypass is set in.
const LONGEST_STEP: f64 = 0.5;

/// How far below the evaporating temperature of the known point the low side is followed, K. A suction pressure that falls further stays there.
const DEEPEST: f64 = 60.0;

/// Dew temperature of the low side that still rises by more than this counts as rising, K/s: 1 K in ten minutes.
const RISING: f64 = 1.0 / 600.0;

/// Fastest change that the integration is made for, in shares a second: a compressor that would empty the low side sooner is refused.
const FASTEST: f64 = 50.0;

/// Bypass times that are set in the field, 60 to 180 s. Common practice, no published source.
pub fn usual_bypass_range() -> (Time, Time) {
    (Time::new::<second>(60.0), Time::new::<second>(180.0))
}

/// How long a start is followed: 10 minutes.
pub fn usual_horizon() -> Time {
    Time::new::<second>(600.0)
}

/// Refrigerant in the evaporator of a running system: 0.05 kg a kilowatt of cooling capacity. Common practice, no published source; within about a
/// factor of two.
pub fn usual_evaporator_charge(cooling: Power) -> Mass {
    Mass::new::<kilogram>(0.05e-3 * cooling.get::<watt>())
}

/// Heat capacity of a high side, from the mass of its metal and of the liquid in it (0 to 10 t each) at a temperature: the metal as half of copper
/// and half of aluminium, 640 J/(kg K) (Incropera & DeWitt, properties of metals; from memory), the liquid as saturated.
///
/// # Errors
/// [`StartError::OutOfRange`], [`StartError::Refrigerant`].
pub fn usual_heat_capacity(
    refrigerant: &Refrigerant,
    metal: Mass,
    liquid: Mass,
    at: ThermodynamicTemperature,
) -> Result<HeatCapacity, StartError> {
    const METAL: f64 = 640.0;
    temperature(StartInput::Outdoor, at)?;
    let kilograms = |mass: Mass| within(StartInput::Mass, mass.get::<kilogram>(), (0.0, 1e4));
    let (metal, liquid) = (kilograms(metal)?, kilograms(liquid)?);
    let saturated = refrigerant.bubble_at_temperature(at)?;
    let each = saturated.heat_capacity.unwrap_or_default().value;
    Ok(HeatCapacity::new::<joule_per_kelvin>(
        METAL * metal + each * liquid,
    ))
}

/// The point at which compressor, metering device and evaporator are known to match.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nominal {
    /// Cooling capacity: 10 W to 10 MW.
    pub cooling: Power,
    /// Evaporating temperature (dew): 173.15 to 400 K, more than 2 K below the room.
    pub evaporating: ThermodynamicTemperature,
    /// Condensing temperature (dew): 173.15 to 400 K, more than 5 K above evaporating and outdoors.
    pub condensing: ThermodynamicTemperature,
}

/// A system about to start.
#[derive(Clone, Debug)]
pub struct StartUp {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// The known point.
    pub nominal: Nominal,
    /// Metering device.
    pub metering: Metering,
    /// Outdoor temperature: 173.15 to 400 K.
    pub outdoor: ThermodynamicTemperature,
    /// Temperature of the air that returns to the evaporator: 173.15 to 400 K.
    pub room: ThermodynamicTemperature,
    /// Temperature of receiver and condenser at the start: the outdoor one unless something has warmed them. From outdoors up to the nominal
    /// condensing temperature.
    pub liquid_at_start: ThermodynamicTemperature,
    /// Absolute suction pressure at the start, as [`super::standing`] gives it.
    pub suction_at_start: Pressure,
    /// Inside volume of evaporator, suction line and the compressor's low side: 1e-5 to 10 m³, and at least what the compressor draws in 0.02 s.
    pub low_side_volume: Volume,
    /// Liquid in the evaporator of the running system, 1 g to 1 t; see [`usual_evaporator_charge`].
    pub evaporator_charge: Given<Mass>,
    /// Share of that which is there at the start: 0 to 1.2. None after a night in which it has migrated.
    pub charge_at_start: Given<f64>,
    /// Heat capacity of condenser, receiver and the liquid in them: 100 J/K to 100 MJ/K; see [`usual_heat_capacity`].
    pub heat_capacity: HeatCapacity,
    /// Conductance from condenser and receiver to the air outside during the start: 0 to 1 MW/K. With the fan held off the one of wind and
    /// natural draft; with a fan that runs on, all of it.
    pub condenser_conductance: ThermalConductance,
    /// Heat from a receiver heater that is on during the start: 0 to 100 kW.
    pub receiver_heat: Power,
}

/// Why the suction pressure does not recover.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Persists {
    /// It still rises at the end of the time looked at: a longer bypass may do, and heat on the receiver shortens it.
    StillRising,
    /// It has settled below the switch: no bypass is long enough. The liquid must be warm, by receiver heat, or the head pressure held, by
    /// flooding.
    Settled,
}

/// What a start asks of the low-pressure switch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BypassOutcome {
    /// The switch stays closed: no bypass is needed.
    NeverTrips {
        /// Lowest suction pressure.
        lowest: Pressure,
    },
    /// The switch opens, and is closed for good later: the bypass time wanted.
    Trips {
        /// Time after the start at which it first opens.
        first: Time,
        /// Time after the start from which it stays closed.
        until: Time,
        /// Lowest suction pressure.
        lowest: Pressure,
    },
    /// The switch is open at the end of the time looked at.
    NeverRecovers {
        /// Time after the start at which it first opens.
        first: Time,
        /// Lowest suction pressure.
        lowest: Pressure,
        /// Suction pressure at the end.
        at_end: Pressure,
        /// Whether it would yet come.
        persists: Persists,
    },
}

impl BypassOutcome {
    /// Bypass time wanted: none where the switch stays closed, `None` where no time is known to do.
    pub fn bypass(&self) -> Option<Time> {
        match *self {
            BypassOutcome::NeverTrips { .. } => Some(Time::default()),
            BypassOutcome::Trips { until, .. } => Some(until),
            BypassOutcome::NeverRecovers { .. } => None,
        }
    }
}

/// A moment of a start.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time after the start.
    pub time: Time,
    /// Suction pressure.
    pub suction: Pressure,
    /// Pressure of the liquid outdoors.
    pub head: Pressure,
    /// Liquid in the evaporator.
    pub evaporator_charge: Mass,
}

impl StartUp {
    /// What the start asks of a switch, looked at for a time (10 s to 1 h; see [`usual_horizon`]).
    ///
    /// After an opening the switch is closed again from its cut-in upwards.
    ///
    /// # Errors
    /// [`StartError::OutOfRange`], [`StartError::NotAbove`], [`StartError::Refrigerant`].
    pub fn bypass(
        &self,
        switch: &LowPressureSwitch,
        horizon: Time,
    ) -> Result<BypassOutcome, StartError> {
        let mut watch = Watch {
            cut_out: self.dew(switch.cut_out())?,
            cut_in: self.dew(switch.cut_in())?,
            ..Watch::default()
        };
        let model = self.follow(horizon, |_, step| watch.see(step))?;
        Ok(watch.outcome(&model))
    }

    /// The start as it goes: a moment at most every half second, up to a time (10 s to 1 h).
    ///
    /// # Errors
    /// As for [`bypass`](Self::bypass).
    pub fn course(&self, horizon: Time) -> Result<Vec<Moment>, StartError> {
        let mut moments = Vec::new();
        self.follow(horizon, |model, step| {
            let mut add = |time, state: &[f64; 3]| {
                let [_, liquid, _] = *state;
                moments.push(Moment {
                    time: Time::new::<second>(time),
                    suction: model.suction(state),
                    head: model.head(state),
                    evaporator_charge: Mass::new::<kilogram>(liquid.max(0.0)),
                });
            };
            if step.from == 0.0 {
                add(0.0, &step.start.0);
            }
            add(step.to, &step.end.0);
        })?;
        Ok(moments)
    }

    fn follow(
        &self,
        horizon: Time,
        mut show: impl FnMut(&PullDown, &Step<3>),
    ) -> Result<PullDown, StartError> {
        let horizon = within(StartInput::Horizon, horizon.get::<second>(), (10.0, 3600.0))?;
        self.check()?;
        let constants = self.constants()?;
        let dew = self.dew(self.suction_at_start)?;
        let liquid = constants.charge * self.charge_at_start.value;
        let start = [dew, liquid, self.liquid_at_start.get::<kelvin>()];
        let model = self.model(constants, dew)?;
        let absolute = [1e-6, 1e-7 * start[1].max(1e-2), 1e-6];
        integrate(
            start,
            absolute,
            (horizon, LONGEST_STEP),
            |state| model.rates(state),
            |step| show(&model, step),
        );
        Ok(model)
    }

    fn model(&self, constants: Constants, dew: f64) -> Result<PullDown, StartError> {
        let (coldest, warmest) = self.refrigerant.temperature_range();
        let (coldest, warmest) = (coldest.get::<kelvin>(), warmest.get::<kelvin>());
        let evaporating = self.nominal.evaporating.get::<kelvin>();
        let lowest = (evaporating - DEEPEST).max(coldest + 1.0).min(dew);
        let highest = dew.max(constants.room).max(evaporating + 10.0);
        let low = (lowest, highest.min(warmest - 1.0));
        let high = (constants.outdoor, constants.condensing);
        PullDown::new(&self.refrigerant, constants, low, high)
    }

    fn dew(&self, pressure: Pressure) -> Result<f64, StartError> {
        Ok(self.refrigerant.dew_temperature(pressure)?.get::<kelvin>())
    }

    fn constants(&self) -> Result<Constants, StartError> {
        let evaporating = self.nominal.evaporating.get::<kelvin>();
        let condensing = self.condensing()?;
        let low = Low::at(&self.refrigerant, evaporating)?;
        let high = High::at(&self.refrigerant, condensing)?;
        let cooling = self.nominal.cooling.get::<watt>();
        let flow = cooling / (low.vapor_enthalpy - high.enthalpy);
        let drop = high.pressure - low.pressure;
        let room = self.room.get::<kelvin>();
        let constants = Constants {
            outdoor: self.outdoor.get::<kelvin>(),
            room,
            condensing,
            swept: flow / low.vapor,
            valve: flow_reserve(self.metering) * flow / (high.density * drop).sqrt(),
            evaporator: cooling / (room - evaporating),
            volume: self.low_side_volume.get::<cubic_meter>(),
            charge: self.evaporator_charge.value.get::<kilogram>(),
            heat_capacity: self.heat_capacity.get::<joule_per_kelvin>(),
            conductance: self.condenser_conductance.get::<watt_per_kelvin>(),
            heater: self.receiver_heat.get::<watt>(),
        };
        not_too_fast(&constants, &low)?;
        Ok(constants)
    }

    /// Bubble temperature at the nominal condensing pressure: what the liquid is at when the fan holds the head pressure.
    fn condensing(&self) -> Result<f64, StartError> {
        let pressure = self.refrigerant.dew_pressure(self.nominal.condensing)?;
        let bubble = self.refrigerant.bubble_temperature(pressure)?;
        Ok(bubble.get::<kelvin>())
    }

    fn check(&self) -> Result<(), StartError> {
        let Nominal {
            cooling,
            evaporating,
            condensing,
        } = self.nominal;
        let outdoor = (StartInput::Outdoor, self.outdoor);
        let evaporating = (StartInput::Evaporating, evaporating);
        let condensing = (StartInput::Condensing, condensing);
        let bubble = ThermodynamicTemperature::new::<kelvin>(self.condensing()?);
        let room = (StartInput::Room, self.room);
        for (input, value) in [outdoor, evaporating, condensing, room] {
            temperature(input, value)?;
        }
        above(room, evaporating, 2.0)?;
        above((StartInput::Condensing, bubble), evaporating, 5.0)?;
        above((StartInput::Condensing, bubble), outdoor, 5.0)?;
        let warmed = self.liquid_at_start.get::<kelvin>();
        let range = (outdoor.1.get::<kelvin>(), bubble.get::<kelvin>());
        within(StartInput::LiquidAtStart, warmed, range)?;
        within(StartInput::Cooling, cooling.get::<watt>(), (10.0, 1e7))?;
        let suction = self.suction_at_start.get::<pascal>();
        within(StartInput::SuctionAtStart, suction, (1e3, 1e7))?;
        within(
            StartInput::ChargeAtStart,
            self.charge_at_start.value,
            (0.0, 1.2),
        )?;
        let heater = self.receiver_heat.get::<watt>();
        within(StartInput::ReceiverHeat, heater, (0.0, 1e5))?;
        let conductance = self.condenser_conductance.get::<watt_per_kelvin>();
        within(StartInput::CondenserConductance, conductance, (0.0, 1e6))?;
        Ok(())
    }
}

/// Holds every rate of the model below [`FASTEST`].
fn not_too_fast(c: &Constants, low: &Low) -> Result<(), StartError> {
    let least = |floor: f64, rate: f64| floor.max(rate / FASTEST);
    let volume = least(1e-5, c.swept);
    within(StartInput::LowSideVolume, c.volume, (volume, 10.0))?;
    let charge = least(1e-3, c.evaporator / low.liquid_heat_capacity);
    within(StartInput::EvaporatorCharge, c.charge, (charge, 1e3))?;
    let capacity = least(100.0, c.conductance);
    within(StartInput::HeatCapacity, c.heat_capacity, (capacity, 1e8))?;
    Ok(())
}

/// A switch that is watched along the steps; pressures as dew temperatures.
#[derive(Default)]
struct Watch {
    cut_out: f64,
    cut_in: f64,
    lowest: Option<f64>,
    ends: Option<(f64, f64)>,
    first: Option<f64>,
    open: bool,
    until: f64,
}

impl Watch {
    fn see(&mut self, step: &Step<3>) {
        let ([from, _, _], [to, _, _]) = (step.start.0, step.end.0);
        if step.from == 0.0 && from < self.cut_out {
            self.opens(0.0);
        }
        if !self.open && to < self.cut_out {
            self.opens(crossing(step, self.cut_out));
        } else if self.open && to >= self.cut_in {
            self.open = false;
            self.until = crossing(step, self.cut_in);
        }
        let least = from.min(to);
        self.lowest = Some(self.lowest.map_or(least, |lowest| lowest.min(least)));
        let rate = step.end.1.first().copied().unwrap_or_default();
        self.ends = Some((to, rate));
    }

    fn outcome(&self, model: &PullDown) -> BypassOutcome {
        let time = Time::new::<second>;
        let (end, rate) = self.ends.unwrap_or_default();
        let lowest = model.suction_at(self.lowest.unwrap_or(end));
        match self.first {
            None => BypassOutcome::NeverTrips { lowest },
            Some(first) if self.open => BypassOutcome::NeverRecovers {
                first: time(first),
                lowest,
                at_end: model.suction_at(end),
                persists: if rate > RISING {
                    Persists::StillRising
                } else {
                    Persists::Settled
                },
            },
            Some(first) => BypassOutcome::Trips {
                first: time(first),
                until: time(self.until),
                lowest,
            },
        }
    }

    fn opens(&mut self, time: f64) {
        self.open = true;
        self.first.get_or_insert(time);
    }
}

fn crossing(step: &Step<3>, level: f64) -> f64 {
    bracketed(step.from, step.to, |time| step.between(0, time) - level)
}
