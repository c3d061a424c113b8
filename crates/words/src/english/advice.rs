//! Reasons, changes, parts and outcomes: what follows from a plan.

use uom::si::f64::Pressure;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_calc::advice::{
    FanMotorAdvice, FanStart, Hottest, LoadEffect, LowestSpeed, PartLoad, Remedy,
};
use winterset_calc::free_cooling::Outcome as Off;
use winterset_calc::input::{CapacityControl, Duty, MotorKind};
use winterset_calc::lever::Change;
use winterset_calc::parts_list::{OutputKind, Part, Sensed};
use winterset_calc::recommendation::Reason;
use winterset_calc::sensor_place::{Reason as PlaceReason, When};
use winterset_calc::winter_start::{BypassOutcome, Persists};
use winterset_calc::{Condition, Field, Quantity};

use super::{fields, plan};
use crate::advice::{Advice, Ordered};
use crate::language::RuleWords;
use crate::pen::Pen;
use crate::units::Units;

pub(super) const ADVICE: Advice = Advice {
    methods: "Methods side by side",
    methods_note: "Over a usual year at this site, with the same load all year. Hours in which low pressure stops the compressor take no energy and do no cooling.",
    stopped: "Stopped: methods, accuracy, what lowers the need and what to order are not worked out.",
    work_out: "Work it out",
    hold_limit: "hold limit",
    holds: "holds",
    falls_short: "falls short",
    starts_an_hour: "starts/h",
    fan_energy: "fan a year",
    compressor_energy: "compressor a year",
    recommended: "Recommended",
    lowers_need: "What lowers the need",
    nothing_lowers: "No valve and no subcooling lowers the need of this system.",
    with_it: |need, limit| format!("the need is {need}, and speed control holds to {limit}"),
    order: "What to order",
    nothing_to_order: "Nothing has to be ordered.",
    sensor_place: "Where the coil sensor goes",
    place_does: "The usual place does: a return bend two thirds of the way up the coil is in two phases at the known point and at the site's low.",
    winter_start: "Winter start",
    fan_motor: "The fan motor in the cold",
    compressor_off: "When the compressor may stay off",
    accuracy: "How sure this is",
    give_or_take: |method, span| {
        format!(
            "With the assumed values as far off as they usually are, the hold limit of {} may move by {span} either way.",
            method.to_lowercase()
        )
    },
    shared_bank: "Two circuits on one fan bank",
    shared_note: "The circuit that needs more air leads; the other gets more than it asked for. Answer each circuit as if all the air were its own.",
    two_plans: "It takes two systems whose answers come to a plan.",
    first_circuit: "First circuit",
    second_circuit: "Second circuit",
    shared_rung: |outdoor, leader, fan, other, head| {
        format!("At {outdoor}: {leader} leads, fans at {fan}; {other} at {head}.")
    },
    drawn_down: "Below its need by the other's air.",
    measure_first: |question| format!("Measuring this narrows it most: {question}."),
};

pub(super) fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::HoldsByItself => "Head pressure stays up by itself down to the site's low.",
        Reason::HoldsSteadily => {
            "It holds to the site's low, keeps head pressure steady and takes a controller alone."
        }
        Reason::BaffleCloses => {
            "At the least fan speed the wind still cools too much; with a baffle it no longer does."
        }
        Reason::OnlyFloodingHolds => {
            "Even at its least airflow the coil is too large for the cold. Liquid that fills part of it holds head pressure up, and steady."
        }
        Reason::OnlySwitchingHolds => {
            "No steady method that this system can have holds to the site's low. Switching does, but head pressure saws, and each start disturbs the metering device."
        }
        Reason::NothingHolds => {
            "No method that this system can have holds to the site's low. This one comes nearest."
        }
    }
}

/// What the condenser gets at the lowest load.
fn least(control: CapacityControl, share: &str) -> String {
    match control {
        CapacityControl::OnOff => {
            format!("At the lowest load the condenser gets {share} of the full heat.")
        }
        CapacityControl::Stages => {
            format!("With the last stage alone, the condenser gets {share} of the full heat.")
        }
        CapacityControl::Unloading => format!(
            "Unloaded as far as it goes, the compressor gives the condenser {share} of the full heat."
        ),
        CapacityControl::VariableSpeed => format!(
            "At its lowest speed the compressor gives the condenser {share} of the full heat."
        ),
    }
}

pub(super) fn part_load(found: &PartLoad, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let method = plan::method(found.method).name.to_lowercase();
    let limit = pen.show(Quantity::Temperature(found.limit));
    let full = pen.show(Quantity::Temperature(found.full_load));
    let least = least(found.control, &pen.show(Quantity::Ratio(found.share)));
    match found.effect() {
        LoadEffect::Cycles => "The compressor runs at full load or stands, so the hold limits are the same whatever the load. Each start after a stop in the cold is a cold start.".to_owned(),
        LoadEffect::Stays if found.share >= 1.0 => format!("The compressors never run below full load. The hold limit of {method} stays at {limit}."),
        LoadEffect::Stays => format!("{least} The hold limit of {method} is {limit} all the same, as at full load."),
        LoadEffect::Rises => format!("{least} The hold limit of {method} is {limit} there, against {full} at full load."),
    }
}

pub(super) fn change(change: Change) -> RuleWords {
    let (name, reason) = match change {
        Change::BalancedPort => (
            "A valve with a balanced port",
            "Head pressure does not push on its pin, so it still feeds the evaporator at a lower one.",
        ),
        Change::ElectronicValve => (
            "An electronic expansion valve",
            "A motor opens it whatever the pressure, and it opens furthest.",
        ),
        Change::MoreSubcooling => (
            "More subcooling",
            "Colder liquid is denser and carries more cooling, and less pressure keeps gas out of the liquid line.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn condition(condition: Condition) -> RuleWords {
    let (name, reason) = match condition {
        Condition::Holds => ("Holds", "Head pressure stays at or above the need."),
        Condition::BelowNeed => (
            "Below the need",
            "Head pressure is lower than this system can live with for long.",
        ),
        Condition::Starved => (
            "Evaporator starved",
            "The metering device is fully open and passes too little: superheat rises and cooling falls.",
        ),
        Condition::LowPressureTrip => (
            "Stopped by low pressure",
            "Suction pressure falls below the low-pressure cut-out, which stops the compressor.",
        ),
        Condition::StalledFan => (
            "Fan stalls",
            "In this cold the voltage is too low for the motor to keep its fan turning: it stops and starts, and head pressure is no lower than shown.",
        ),
        Condition::AboveEnvelope => (
            "Above the compressor's envelope",
            "The compressor condenses above what its maker allows.",
        ),
    };
    RuleWords { name, reason }
}

fn sensed(pen: &Pen, input: &Sensed) -> String {
    let (what, lowest, highest) = match *input {
        Sensed::Coil { lowest, highest } => (
            "coil temperature",
            pen.brief(Quantity::Temperature(lowest)),
            pen.brief(Quantity::Temperature(highest)),
        ),
        Sensed::Pressure { lowest, highest } => (
            "liquid-line pressure",
            pen.pressure(lowest),
            pen.pressure(highest),
        ),
    };
    format!("reads {what} from {lowest} to {highest}")
}

fn motor(kind: MotorKind) -> String {
    fields::choice(Field::Motor, kind.key()).to_lowercase()
}

fn output(kind: OutputKind) -> &'static str {
    match kind {
        OutputKind::PhaseCut => "phase-cut output",
        OutputKind::Signal => "output of 0 to 10 V or pulse width",
        OutputKind::Frequency => "frequency drive for three-phase motors",
    }
}

pub(super) fn part(part: &Part, units: Units, atmosphere: Pressure) -> Ordered {
    let pen = Pen { units, atmosphere };
    let amps = |current| pen.at_least(Quantity::Current(current));
    let volts = |voltage| pen.show(Quantity::Voltage(voltage));
    let (name, value) = match *part {
        Part::Motor { from, to, count } => (
            "Fan motor".to_owned(),
            format!("{count}, {} in place of {}", motor(to), motor(from)),
        ),
        Part::Controller {
            output: kind,
            current,
            supply,
            ref input,
        } => {
            let rated = match current {
                Some(current) => format!("at least {} at {}", amps(current), volts(supply)),
                None => format!("for motors on {}", volts(supply)),
            };
            (
                "Fan speed controller".to_owned(),
                format!("{}, {rated}, {}", output(kind), sensed(&pen, input)),
            )
        }
        Part::PressureSwitch { group, on, off } => (
            format!("Pressure switch, group {group}"),
            format!("on at {}, off at {}", pen.pressure(on), pen.pressure(off)),
        ),
        Part::Contactor {
            group,
            current,
            supply,
        } => (
            format!("Contactor, group {group}"),
            format!("at least {} at {}", amps(current), volts(supply)),
        ),
        Part::WindBaffle => (
            "Wind baffle".to_owned(),
            "keeps the wind off the whole coil".to_owned(),
        ),
        Part::FloodingValve { setting } => (
            "Flooding valve".to_owned(),
            format!("holds {}", pen.pressure(setting)),
        ),
        Part::Receiver { volume } => (
            "Receiver".to_owned(),
            format!("at least {}", units.volume(volume)),
        ),
        Part::ExtraCharge { mass } => (
            "Refrigerant on top of the charge".to_owned(),
            units.mass(mass).to_string(),
        ),
        Part::CrankcaseHeater { power } => (
            "Crankcase heater".to_owned(),
            format!("about {}", units.heater(power)),
        ),
        Part::LowPressureBypass { time } => (
            "Timer over the low-pressure switch".to_owned(),
            format!("bypasses it for {} at a start", pen.seconds(time)),
        ),
        Part::BalancedPortValve => (
            "Expansion valve with a balanced port".to_owned(),
            "of the present valve's capacity".to_owned(),
        ),
    };
    Ordered { name, value }
}

pub(super) fn fan_start(advice: &FanMotorAdvice, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let time = |time| pen.show(Quantity::Time(time));
    let start = match advice.start {
        FanStart::WithinBoost { time: all, by_wind } => format!(
            "At the site's low the fan is up in about {} at full output, {} of it to stop what the wind turns backwards.",
            time(all),
            time(by_wind)
        ),
        FanStart::LongerBoost { time: all, by_wind } => format!(
            "At the site's low the fan takes about {} at full output, {} of it to stop what the wind turns backwards: longer than a usual start boost.",
            time(all),
            time(by_wind)
        ),
        FanStart::Never => {
            "At the site's low the motor does not bring the fan up against cold grease and the wind, even at full output.".to_owned()
        }
    };
    match advice.wind {
        Some(wind) if advice.start != FanStart::Never => format!(
            "{start} It starts against wind of up to {} onto the fan's outlet.",
            units.wind(wind)
        ),
        _ => start,
    }
}

pub(super) fn fan_heat(hottest: &Hottest, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let stands = match hottest.lowest_speed {
        LowestSpeed::Below => {
            "The lowest speed lies below that: the fan may run there for hours, so feel how hot the motor gets."
        }
        LowestSpeed::Inside => {
            "The lowest speed lies in that band: feel how hot the motor gets, and raise the minimum output if it is too hot."
        }
        LowestSpeed::Above => "The lowest speed lies above that, and the fan never gets there.",
    };
    format!(
        "Slowed by its voltage, the motor runs hottest at {}, at {} of full output in the cold, with {} times the rotor heat of its nameplate point. {stands}",
        pen.show(Quantity::Speed(hottest.speed)),
        pen.show(Quantity::Ratio(hottest.output)),
        units.times(hottest.loss)
    )
}

pub(super) fn fan_remedy(remedy: Remedy, advice: &FanMotorAdvice, units: Units) -> String {
    let share = Pen::without_gauge(units).at_least(Quantity::Ratio(advice.starts_from));
    match remedy {
        Remedy::FullOutputAtStart => format!(
            "At minimum output the fan may not start from rest; that takes {share}. Let the controller give full output at every start, also after the supply was off."
        ),
        Remedy::LongerBoost => "Give it full output for longer.".to_owned(),
        Remedy::Baffle => "Keep the wind off the fan with a baffle.".to_owned(),
        Remedy::KeepTurning => {
            "Keep it turning through the cold, or choose a stronger motor or one with ball bearings.".to_owned()
        }
    }
}

pub(super) fn bypass(outcome: &BypassOutcome, units: Units, atmosphere: Pressure) -> String {
    let pen = Pen { units, atmosphere };
    match *outcome {
        BypassOutcome::NeverTrips { lowest } => format!(
            "Suction pressure falls no lower than {}, and the low-pressure switch stays closed. No bypass is needed.",
            pen.pressure(lowest)
        ),
        BypassOutcome::Trips { until, lowest, .. } => format!(
            "Suction pressure falls to {} and opens the low-pressure switch. Bypass the switch for the first {}.",
            pen.pressure(lowest),
            pen.seconds(until)
        ),
        BypassOutcome::NeverRecovers {
            lowest,
            at_end,
            persists: Persists::StillRising,
            ..
        } => format!(
            "Suction pressure falls to {} and opens the low-pressure switch. After ten minutes it is at {} and still rises: a longer bypass may do, and heat on the receiver shortens it.",
            pen.pressure(lowest),
            pen.pressure(at_end)
        ),
        BypassOutcome::NeverRecovers {
            at_end,
            persists: Persists::Settled,
            ..
        } => format!(
            "Suction pressure settles at {}, below the low-pressure switch. No bypass is long enough: warm the receiver, or flood the condenser.",
            pen.pressure(at_end)
        ),
    }
}

fn when(when: When) -> &'static str {
    match when {
        When::Design => "At the known point",
        When::Low => "At the site's low",
    }
}

pub(super) fn place(reason: &PlaceReason, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    match *reason {
        PlaceReason::Superheated { when: at, short_by } => format!(
            "{} the usual place still has hot gas, and the sensor reads too warm. Move it by {} of the circuit towards the liquid outlet.",
            when(at),
            pen.at_least(Quantity::Ratio(short_by))
        ),
        PlaceReason::Liquid {
            when: at,
            beyond_by,
        } => format!(
            "{} the usual place has liquid alone, and the sensor reads too cold. Move it by {} of the circuit towards the gas inlet, or sense pressure.",
            when(at),
            pen.at_least(Quantity::Ratio(beyond_by))
        ),
        PlaceReason::OffByGlide { when: at, off, .. } => {
            let (off, side) = match off.get::<kelvin_interval>() {
                warmer if warmer >= 0.0 => (off, "warm"),
                _ => (-off, "cold"),
            };
            format!(
                "{} the refrigerant's glide makes a sensor at the usual place read {} too {side}. Sense pressure, or move it towards the middle of condensing.",
                when(at),
                pen.show(Quantity::Difference(off))
            )
        }
    }
}

pub(super) fn off(outcome: &Off, duty: Duty, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let carrier = match duty {
        Duty::RoomCooling => "outside air, filtered and mixed,",
        Duty::Cooler | Duty::Freezer => "a dry cooler with a coil in the room",
    };
    match *outcome {
        Off::Saves {
            up_to,
            time,
            energy,
            ..
        } => format!(
            "Up to {} outdoors {carrier} could carry the whole load: {} a year with the compressor off, which saves about {}.",
            pen.brief(Quantity::Temperature(up_to)),
            units.hours(time),
            units.energy(energy)
        ),
        Off::SavesNothing { up_to, time, .. } => format!(
            "Up to {} outdoors {carrier} could carry the whole load, {} a year, but takes as much power as there is to save.",
            pen.brief(Quantity::Temperature(up_to)),
            units.hours(time)
        ),
        Off::NeverColdEnough { up_to, coldest } => format!(
            "Below {} outdoors {carrier} could carry the whole load, but a year here is no colder than {}.",
            pen.brief(Quantity::Temperature(up_to)),
            pen.brief(Quantity::Temperature(coldest))
        ),
    }
}
