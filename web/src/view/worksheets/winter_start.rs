//! A start after a night in the cold: standing pressure against the switch, the bypass, and heat for the sump.

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};
use uom::si::thermodynamic_temperature::kelvin;
use winterset_calc::input::Metering;
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::winter_start::{
    BypassOutcome, Contact, LowPressureSwitch, Nominal, Persists, Standing, StartError, StartInput,
    StartUp, standing, sump_heat, usual_evaporator_charge, usual_high_side, usual_horizon,
    usual_idle_conductance, usual_low_side_volume, usual_shell, usual_sump_conductance,
    usual_switch_below, usual_wind,
};
use winterset_calc::{Given, SheetRule};
use winterset_profile::{Amount, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found, saturation};
use crate::view::words;

/// What follows: the switch from the evaporating temperature, sizes from the cooling capacity.
pub fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    let refrigerant = reader.refrigerant().ok()?;
    let temperature =
        |at: ThermodynamicTemperature| Some(Amount::new(Measure::Temperature, at.get::<kelvin>()));
    let cooling = || Some(reader.number(Question::CoolingCapacity).ok()?.value.power());
    let (opens, closes) = usual_switch_below();
    match question {
        Question::Room => temperature(saturation::near(&refrigerant, 22.0, 5.0)),
        Question::Condensing => temperature(saturation::condensing(&refrigerant)),
        Question::CutOut => switch(reader, &refrigerant, opens),
        Question::CutIn => switch(reader, &refrigerant, closes),
        Question::LiquidAtStart | Question::Around => {
            Some(reader.number(Question::Outdoor).ok()?.value)
        }
        Question::StartConductance => Some(Amount::new(
            Measure::Conductance,
            usual_idle_conductance(cooling()?).value,
        )),
        Question::HeatCapacity => Some(Amount::new(
            Measure::HeatCapacity,
            usual_high_side(cooling()?).value,
        )),
        Question::LowSideVolume => Some(Amount::new(
            Measure::Volume,
            usual_low_side_volume(cooling()?).value,
        )),
        Question::EvaporatorCharge => Some(Amount::new(
            Measure::Mass,
            usual_evaporator_charge(cooling()?).value,
        )),
        Question::SumpConductance => {
            let conductance = usual_sump_conductance(usual_shell(cooling()?), usual_wind()).ok()?;
            Some(Amount::new(Measure::Conductance, conductance.value))
        }
        _ => saturation::usual(reader, question),
    }
}

fn switch(
    reader: &Reader,
    refrigerant: &Refrigerant,
    below: TemperatureInterval,
) -> Option<Amount> {
    let evaporating = reader.number(Question::Evaporating).ok()?;
    let lowest = refrigerant.temperature_range().0;
    let at = (evaporating.value.temperature() - below).max(lowest);
    let pressure = refrigerant.dew_pressure(at).ok()?;
    Some(Amount::new(Measure::Pressure, pressure.value))
}

/// Standing pressures, bypass and sump, each as far as its own answers allow.
pub fn answer(reader: &Reader) -> Answers {
    let found = Night::read(reader).map(|night| {
        let mut all = night.contact(reader).unwrap_or_default();
        all.extend(night.start(reader).unwrap_or_default());
        all.extend(night.sump(reader).unwrap_or_default());
        all
    });
    Answers {
        found: found.unwrap_or_default(),
        notes: Vec::new(),
    }
}

/// The system after the night.
struct Night {
    refrigerant: Refrigerant,
    outdoor: Given<Amount>,
    room: Given<Amount>,
    standing: Standing,
}

impl Night {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        let refrigerant = reader.refrigerant()?;
        let (outdoor, room) = (
            reader.number(Question::Outdoor)?,
            reader.number(Question::Room)?,
        );
        let standing = standing(
            &refrigerant,
            outdoor.value.temperature(),
            room.value.temperature(),
        )
        .map_err(|error| {
            let is_room = refrigerant.dew_pressure(room.value.temperature()).is_err();
            let at = if is_room {
                Question::Room
            } else {
                Question::Outdoor
            };
            said(reader, at, &error)
        })?;
        Ok(Self {
            refrigerant,
            outdoor,
            room,
            standing,
        })
    }

    fn contact(&self, reader: &Reader) -> Result<Vec<Found>, Wrong> {
        let labels = words().worksheets().start_labels();
        let pressures = Pressures::read(reader)?;
        let low = self.standing.low_side_equal;
        let rule = SheetRule::SwitchMargin;
        let by = |si: f64| Found::new(rule, Measure::PressureDifference, si);
        let found = match pressures.switch.contact(low) {
            Contact::Closed { margin } => by(margin.value)
                .named(labels.closed)
                .because(labels.closed_reason),
            Contact::AsItWas => {
                Found::word(rule, labels.as_it_was).because(labels.as_it_was_reason)
            }
            Contact::Open { short_by } => by(short_by.value)
                .named(labels.missing)
                .because(labels.missing_reason),
        };
        let outdoor = Found::new(
            SheetRule::StandingOutdoor,
            Measure::Pressure,
            self.standing.cold_side.value,
        )
        .reading("T_o", self.outdoor);
        let low_side = Found::new(SheetRule::StandingLow, Measure::Pressure, low.value)
            .reading("T_o", self.outdoor)
            .reading("T_r", self.room);
        Ok(vec![
            found
                .with("p", Measure::Pressure, low.value)
                .reading("p_out", pressures.cut_out)
                .reading("p_in", pressures.cut_in)
                .reading("T_o", self.outdoor)
                .strong(),
            low_side,
            outdoor,
        ])
    }

    fn start(&self, reader: &Reader) -> Result<Vec<Found>, Wrong> {
        let labels = words().worksheets().start_labels();
        let pressures = Pressures::read(reader)?;
        let parts = Parts::read(reader)?;
        let start = self.start_up(reader, &parts);
        let outcome = start
            .bypass(&pressures.switch, usual_horizon())
            .map_err(|error| said(reader, Question::CoolingCapacity, &error))?;
        let rule = SheetRule::BypassTime;
        let (bypass, lowest) = match outcome {
            BypassOutcome::NeverTrips { lowest } => (
                Found::word(rule, labels.none_needed).because(labels.none_needed_reason),
                lowest,
            ),
            BypassOutcome::Trips { until, lowest, .. } => {
                (Found::new(rule, Measure::Time, until.value), lowest)
            }
            BypassOutcome::NeverRecovers {
                lowest, persists, ..
            } => {
                let (word, reason) = match persists {
                    Persists::StillRising => (labels.longer, labels.longer_reason),
                    Persists::Settled => (labels.never, labels.never_reason),
                };
                (Found::word(rule, word).because(reason), lowest)
            }
        };
        let lowest = Found::new(SheetRule::LowestSuction, Measure::Pressure, lowest.value);
        Ok(vec![
            parts
                .terms(
                    bypass
                        .reading("p_in", pressures.cut_in)
                        .reading("T_o", self.outdoor),
                )
                .strong(),
            parts.terms(lowest.reading("T_o", self.outdoor)),
        ])
    }

    fn start_up(&self, reader: &Reader, parts: &Parts) -> StartUp {
        let metering = Metering::from_key(reader.choice(Question::Metering).value);
        StartUp {
            refrigerant: self.refrigerant.clone(),
            nominal: Nominal {
                cooling: parts.cooling.value.power(),
                evaporating: parts.evaporating.value.temperature(),
                condensing: parts.condensing.value.temperature(),
            },
            metering: metering.unwrap_or(Metering::TxvConventional),
            outdoor: self.outdoor.value.temperature(),
            room: self.room.value.temperature(),
            liquid_at_start: parts.liquid.value.temperature(),
            suction_at_start: self.standing.low_side_equal,
            low_side_volume: parts.volume.value.volume(),
            evaporator_charge: Given {
                value: parts.charge.value.mass(),
                basis: parts.charge.basis,
            },
            charge_at_start: Given::assumed(0.0),
            heat_capacity: parts.heat_capacity.value.heat_capacity(),
            condenser_conductance: parts.conductance.value.conductance(),
            receiver_heat: parts.heater.value.power(),
        }
    }

    fn sump(&self, reader: &Reader) -> Result<Vec<Found>, Wrong> {
        let around = reader.number(Question::Around)?;
        let rise = reader.number(Question::SumpRise)?;
        let conductance = reader.number(Question::SumpConductance)?;
        let pressure = self.standing.low_side_equal;
        let dew = self
            .refrigerant
            .dew_temperature(pressure)
            .map_err(|error| reader.refused(Question::Outdoor, &error))?;
        let sump = sump_heat(
            around.value.temperature(),
            dew,
            Given {
                value: rise.value.difference(),
                basis: rise.basis,
            },
            Given {
                value: conductance.value.conductance(),
                basis: conductance.basis,
            },
        )
        .map_err(|error| said(reader, Question::SumpConductance, &error))?;
        let temperature = Found::new(
            SheetRule::SumpTemperature,
            Measure::Temperature,
            sump.temperature.value,
        )
        .reading("T_a", around)
        .with("T_dew", Measure::Temperature, dew.value)
        .given("ΔT", rise);
        let heat = Found::new(SheetRule::SumpHeat, Measure::ShaftPower, sump.heat.value)
            .in_scale(watts())
            .reading("G", conductance)
            .with("T", Measure::Temperature, sump.temperature.value)
            .reading("T_a", around)
            .strong();
        Ok(vec![heat, temperature])
    }
}

/// Heaters are sold in watts everywhere.
fn watts() -> winterset_profile::Scale {
    winterset_profile::Scale::Field(winterset_profile::Unit::Watt)
}

/// The low-pressure switch with its answers.
struct Pressures {
    switch: LowPressureSwitch,
    cut_out: Given<Amount>,
    cut_in: Given<Amount>,
}

impl Pressures {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        let (cut_out, cut_in) = (
            reader.number(Question::CutOut)?,
            reader.number(Question::CutIn)?,
        );
        let switch = LowPressureSwitch::new(cut_out.value.pressure(), cut_in.value.pressure())
            .map_err(|error| said(reader, Question::CutIn, &error))?;
        Ok(Self {
            switch,
            cut_out,
            cut_in,
        })
    }
}

/// What the start depends on besides the temperatures.
struct Parts {
    cooling: Given<Amount>,
    evaporating: Given<Amount>,
    condensing: Given<Amount>,
    liquid: Given<Amount>,
    heater: Given<Amount>,
    conductance: Given<Amount>,
    heat_capacity: Given<Amount>,
    volume: Given<Amount>,
    charge: Given<Amount>,
}

impl Parts {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        Ok(Self {
            cooling: reader.number(Question::CoolingCapacity)?,
            evaporating: reader.number(Question::Evaporating)?,
            condensing: reader.number(Question::Condensing)?,
            liquid: reader.number(Question::LiquidAtStart)?,
            heater: reader.number(Question::ReceiverHeat)?,
            conductance: reader.number(Question::StartConductance)?,
            heat_capacity: reader.number(Question::HeatCapacity)?,
            volume: reader.number(Question::LowSideVolume)?,
            charge: reader.number(Question::EvaporatorCharge)?,
        })
    }

    fn terms(&self, found: Found) -> Found {
        found
            .reading("Q_0", self.cooling)
            .reading("T_e", self.evaporating)
            .reading("T_c", self.condensing)
            .given("T_liquid", self.liquid)
            .given("Q_heater", self.heater)
            .reading("G", self.conductance)
            .reading("C", self.heat_capacity)
            .reading("V", self.volume)
            .reading("m", self.charge)
    }
}

fn said(reader: &Reader, question: Question, error: &StartError) -> Wrong {
    let at = match error {
        StartError::NotAbove { above, .. } => of(*above).unwrap_or(question),
        StartError::OutOfRange { input, .. } => of(*input).unwrap_or(question),
        StartError::CutInBelowCutOut { .. } => Question::CutIn,
        _ => question,
    };
    let said = words()
        .worksheets()
        .start_error(error, reader.units(), reader.atmosphere());
    reader.wrong(at, said)
}

/// The answer that an input of the start came from.
fn of(input: StartInput) -> Option<Question> {
    Some(match input {
        StartInput::Outdoor => Question::Outdoor,
        StartInput::Room => Question::Room,
        StartInput::Evaporating => Question::Evaporating,
        StartInput::Condensing => Question::Condensing,
        StartInput::LiquidAtStart => Question::LiquidAtStart,
        StartInput::LowSideVolume => Question::LowSideVolume,
        StartInput::EvaporatorCharge => Question::EvaporatorCharge,
        StartInput::HeatCapacity => Question::HeatCapacity,
        StartInput::CondenserConductance => Question::StartConductance,
        StartInput::ReceiverHeat => Question::ReceiverHeat,
        StartInput::CutOut => Question::CutOut,
        StartInput::CutIn => Question::CutIn,
        StartInput::SumpConductance => Question::SumpConductance,
        StartInput::SumpRise => Question::SumpRise,
        _ => return None,
    })
}
