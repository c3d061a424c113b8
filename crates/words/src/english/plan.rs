//! Verdict, actions, cautions and remarks of a plan.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use winterset_calc::advice::ReversingValve;
use winterset_calc::input::{MotorKind, Sensing};
use winterset_calc::need::NeedPart;
use winterset_calc::settings::SettingsNote;
use winterset_calc::{Action, Caution, Method, Plan, Quantity, Verdict};

use crate::language::{Part, RuleWords};
use crate::units::Units;

pub(super) fn verdict(verdict: Verdict, plan: &Plan, units: Units) -> String {
    let show = |temperature: ThermodynamicTemperature| {
        units
            .brief(&Quantity::Temperature(temperature), plan.atmosphere.value)
            .to_string()
    };
    let (said, limit, low, holds) = match verdict {
        Verdict::NotNeeded { limit, low } => {
            return format!(
                "Not needed: with the fan at full speed head pressure holds to {}; this site sees {}.",
                show(limit),
                show(low)
            );
        }
        Verdict::Holds { method, limit, low } => (method, limit, low, "holds"),
        Verdict::FallsShort { method, limit, low } => (method, limit, low, "holds only"),
    };
    let (limit, low) = (show(limit), show(low));
    let refusal = refusal(plan.input.motor.value).filter(|_| said.is_modulated());
    match refusal {
        None => format!(
            "{} {holds} to {limit}; this site sees {low}.",
            method(said).name
        ),
        Some(refusal) => {
            format!("{refusal} Driven as it asks, it {holds} to {limit}; this site sees {low}.")
        }
    }
}

/// What a motor says to a phase-cut supply, where it refuses one.
fn refusal(motor: MotorKind) -> Option<&'static str> {
    match motor {
        MotorKind::ElectronicallyCommutated => {
            Some("An electronically commutated motor takes no voltage speed control.")
        }
        MotorKind::ThreePhase => {
            Some("A three-phase motor takes no single-phase voltage speed control.")
        }
        MotorKind::PermanentSplitCapacitor | MotorKind::ShadedPole => None,
    }
}

pub(super) fn action(action: Action) -> &'static str {
    match action {
        Action::LeaveFanAlone => "Leave the fan at full speed.",
        Action::EnterValues => "Enter the values below on the controller.",
        Action::UseSpeedInput => {
            "Slow it by its own speed input, 0 to 10 V or pulse width, from a controller that puts out that signal."
        }
        Action::UseFrequencyDrive => "Slow it by a frequency drive made for the motor.",
        Action::AddBaffle => {
            "Enter the values below on the controller, and fit a baffle that keeps the wind off the coil."
        }
        Action::AddFlooding => {
            "Enter the values below on the controller, and fit a valve and a receiver that flood the condenser on the coldest days."
        }
        Action::Flood => "Fit a valve and a receiver that flood the condenser in the cold.",
        Action::CycleFans => "Switch the fans by pressure at the points below.",
        Action::StageFans => {
            "Switch the fans one after another by pressure, and leave the last one on."
        }
        Action::LowerNeed => {
            "Make the system need less head pressure, by a valve that opens further or more subcooling, or warm the receiver: see what lowers the need."
        }
    }
}

pub(super) fn caution(caution: Caution) -> Part {
    let (title, text) = match caution {
        Caution::Roof => (
            "Roof and ice",
            "A fall kills. Keep back from the edge or tie off, and do not work alone on an icy roof.",
        ),
        Caution::Mains => (
            "Mains",
            "The fan and the controller carry mains voltage, also when the fan stands still. Lock the supply off and prove it dead with a meter you have just checked on a live source. Follow your local code and the maker's instructions.",
        ),
        Caution::Capacitor => (
            "Run capacitor",
            "It stays charged after the supply is off. Discharge it through a resistor made for it and measure before you touch.",
        ),
        Caution::RotatingFan => (
            "Rotating fan",
            "A controlled fan starts by itself, also from rest at low speed. Isolate it before hands go near, and refit the guard.",
        ),
        Caution::Pressure => (
            "Pressure",
            "Refrigerant under pressure burns skin and eyes. Wear gloves and goggles, and leave opened circuits to licensed hands.",
        ),
        Caution::Flammable => (
            "Flammable refrigerant",
            "This refrigerant can burn. Keep sparks and flames away, air the place, test for leaks first, and use tools and controls allowed for its class.",
        ),
    };
    Part { title, text }
}

pub(super) fn need_part(part: NeedPart) -> RuleWords {
    let (name, reason) = match part {
        NeedPart::MeteringDevice => (
            "The metering device",
            "Below this head pressure it starves the evaporator. The further a device can open, the less it asks for: a balanced port less than a conventional one, an electronic valve least.",
        ),
        NeedPart::Compressor => (
            "The compressor",
            "Below this head pressure it leaves its operating envelope. The maker's own limit may be lower.",
        ),
        NeedPart::LiquidLine => (
            "The liquid line",
            "Below this head pressure gas forms in it before the metering device. More subcooling, a wider or a shorter line ask for less.",
        ),
        NeedPart::HotGasDefrost => (
            "Hot-gas defrost",
            "Below this head pressure hot gas does not melt the ice.",
        ),
        NeedPart::HeatReclaim => (
            "Heat reclaim",
            "Below this head pressure the heat is not warm enough for its user.",
        ),
        NeedPart::Evaporator => (
            "The evaporator",
            "Below this head pressure ice grows on its coil.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn note(note: SettingsNote, units: Units) -> String {
    let vacuum = Pressure::new::<pascal>(0.0);
    let show = |span| units.show(&Quantity::Difference(span), vacuum).to_string();
    let at = |temperature| {
        units
            .brief(&Quantity::Temperature(temperature), vacuum)
            .to_string()
    };
    match note {
        SettingsNote::RangeNarrowed { wanted, used } => format!(
            "The throttling range is narrowed from {} to {} so that the fan still reaches full speed at the known point.",
            show(wanted),
            show(used)
        ),
        SettingsNote::NeedNearKnownPoint => {
            "The pressure need lies so near the known point that the fan would not reach full speed there. Check the known point, or lower the need with a balanced-port or an electronic valve.".to_owned()
        }
        SettingsNote::BoostTooShort { wanted, used } => format!(
            "At this site's low a start takes {}, longer than the {} that controllers usually offer. Look for a longer start boost, or keep the wind off the fan with a baffle.",
            units.show(&Quantity::Time(wanted), vacuum),
            units.show(&Quantity::Time(used), vacuum)
        ),
        SettingsNote::WillNotStart => {
            "At this site's low the motor may not bring its fan up from rest, even at full output. Keep the wind off it with a baffle, keep it turning through the cold, or choose a stronger motor or one with ball bearings.".to_owned()
        }
        SettingsNote::AboveEnvelope { from, highest } => format!(
            "Above {} outdoors the compressor condenses above {}, the highest that its maker allows, even with all fans at full speed.",
            at(from),
            at(highest)
        ),
    }
}

pub(super) fn sensing(sensing: Sensing) -> RuleWords {
    let (name, reason) = match sensing {
        Sensing::CoilTemperature => (
            "Coil temperature",
            "Sensor on a return bend in the two-phase part of the coil, about two thirds of the way up, strapped and insulated. Common practice: follow the controller's instructions.",
        ),
        Sensing::LiquidPressure => (
            "Liquid-line pressure",
            "Transducer on the liquid line at the condenser. This refrigerant glides, or you chose it: pressure does not depend on where a sensor sits.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn heating(valve: ReversingValve) -> RuleWords {
    let (name, reason) = match valve {
        ReversingValve::InCooling => (
            "Full speed while the valve is off",
            "Take the signal from the reversing valve's coil. Off means heating, and then the outdoor fan runs at full speed. A broken wire looks like heating: head pressure then falls in cooling.",
        ),
        ReversingValve::InHeating => (
            "Full speed while the valve is on",
            "Take the signal from the reversing valve's coil. On means heating, and then the outdoor fan runs at full speed. A broken wire looks like cooling: the fan then slows in heating and the coil ices.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn method(method: Method) -> RuleWords {
    let (name, reason) = match method {
        Method::FullFan => ("Full fan", "All fans at full speed always."),
        Method::OnOff => (
            "On/off fan",
            "All fans on one pressure switch. Head pressure saws between the two switching points.",
        ),
        Method::Staged => (
            "Staged fans",
            "Fans switched off one after another; the last one always runs.",
        ),
        Method::SpeedControl => (
            "Speed control",
            "All fans slowed together by the values of the settings sheet.",
        ),
        Method::Flooding => (
            "Flooding",
            "A valve fills part of the condenser with liquid, with all fans at full speed. It takes a receiver and extra charge.",
        ),
        Method::SpeedWithBaffle => (
            "Speed and baffle",
            "Fans slowed by the settings sheet, behind a baffle that keeps the wind off the coil.",
        ),
        Method::SpeedWithFlooding => (
            "Speed and flooding",
            "Fans slowed by the settings sheet; below that a valve floods the condenser. It takes a receiver and extra charge.",
        ),
    };
    RuleWords { name, reason }
}
