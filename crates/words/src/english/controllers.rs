//! A technician's own controllers: their limits, and how a settings sheet stands to them.

use uom::si::f64::{ElectricCurrent, Pressure};
use winterset_calc::Quantity;
use winterset_calc::input::Sensing;
use winterset_calc::motor::Loading;
use winterset_calc::own_controller::{
    Effect, Finding, MotorOutput, Outside, Safety, Setting, Standing,
};
use winterset_profile::{ControllerField, ControllerProblem, Scale};

use super::English;
use crate::amounts::at_least_as_typed;
use crate::controllers::{ControllerLabels, ControllerWords};
use crate::language::{FieldWords, Words};
use crate::pen::Pen;
use crate::units::Units;

static LABELS: ControllerLabels = ControllerLabels {
    own: "Own controllers",
    own_note: "Enter the limits of a controller once. A plan then shows which of its settings the controller takes.",
    none_yet: "No controller yet.",
    add: "Add a controller",
    unnamed: "Controller without a name",
    name: "Name of the controller",
    output: "Kind of output",
    output_help: "What leaves the controller for the fan motor. Its wiring sheet says which.",
    output_unknown: "Not known",
    outputs: "Output",
    pressure_input: "Input for pressure",
    temperature_input: "Input for temperature",
    settings: "Fan settings",
    supply: "Supply and motors",
    limits_note: "What is left blank is not held against a plan. Leave an input blank that the controller does not have.",
    count: |count| match count {
        0 => "no limits yet".to_owned(),
        1 => "1 limit".to_owned(),
        count => format!("{count} limits"),
    },
    wrong: |count| match count {
        1 => "1 limit to look at".to_owned(),
        count => format!("{count} limits to look at"),
    },
    remove: "Remove this controller",
    remove_question: |name| format!("Remove {name} with its limits? This cannot be undone."),
    gone: "This controller is not on this phone.",
    on_yours: "On your controller",
    which: "Controller",
    none_chosen: "None chosen",
    choose_note: "Choose one to see which settings it takes.",
    to_settings: "Enter your controller's limits",
    to_limits: "Its limits",
    limits_wrong: |count| match count {
        1 => "One of its limits cannot be used and counts as not stated.".to_owned(),
        count => format!("{count} of its limits cannot be used and count as not stated."),
    },
};

impl ControllerWords for English {
    fn labels(&self) -> &'static ControllerLabels {
        &LABELS
    }

    fn field(&self, field: ControllerField) -> FieldWords {
        let (ask, help) = field_words(field);
        FieldWords { ask, help }
    }

    fn output(&self, output: MotorOutput) -> &'static str {
        match output {
            MotorOutput::PhaseCut => "Phase cut to the motor",
            MotorOutput::ZeroToTenVolts => "0 to 10 V",
            MotorOutput::PulseWidth => "Pulse width",
            MotorOutput::Contact => "Contact, on and off",
        }
    }

    fn problem(&self, problem: &ControllerProblem, scale: Scale, atmosphere: Pressure) -> String {
        match problem {
            ControllerProblem::Amount(problem) => {
                self.worksheets().amount_problem(problem, scale, atmosphere)
            }
            ControllerProblem::Missing => {
                "Enter this one too, so that the limits are whole.".to_owned()
            }
            ControllerProblem::BelowLowest { lowest } => format!(
                "Enter at least the lowest, {}.",
                at_least_as_typed(scale, *lowest, atmosphere)
            ),
        }
    }

    fn setting(&self, setting: Setting) -> &'static str {
        match setting {
            Setting::Input => "Input",
            Setting::FullSpeedPoint => "Full-speed point",
            Setting::ThrottlingRange => "Throttling range",
            Setting::MinimumOutput => "Minimum output",
            Setting::StartBoost => "Start boost",
            Setting::MotorOutput => "Output to the motor",
            Setting::SupplyVoltage => "Supply voltage",
            Setting::RatedCurrent => "Rated current",
        }
    }

    fn finding(&self, finding: &Finding, units: Units, atmosphere: Pressure) -> String {
        let pen = Pen { units, atmosphere };
        match &finding.standing {
            Standing::Inside => "Your controller takes it.".to_owned(),
            Standing::NotStated => {
                "Not among the limits that you entered. Look it up before you rely on it.".to_owned()
            }
            Standing::Outside(found) => outside(&pen, found),
            Standing::NotANumber => {
                "The plan has no value for it. Check the inputs of the system.".to_owned()
            }
            Standing::NoSuchInput { wanted, .. } => format!(
                "The plan senses {}, and your controller has no input for that. Choose the other way to sense in the inputs, or another controller.",
                sensed(*wanted)
            ),
            Standing::NoSuchOutput { wanted, offered } => format!(
                "The motor takes {}, and your controller gives {}. Another output can harm the motor or the controller: use another controller.",
                outputs(wanted),
                outputs(offered)
            ),
            Standing::ShortOfReserve(loading) => format!(
                "{} It carries them, but without the usual reserve of a quarter of the largest motor: {} would have it.",
                load(&pen, loading),
                current(&pen, loading.needed)
            ),
            Standing::Overloaded(loading) => format!(
                "{} It does not carry them: use one for {}, or a contactor.",
                load(&pen, loading),
                current(&pen, loading.needed)
            ),
            Standing::Currents(_) => {
                "The currents of the motors cannot be added up. Check fans, fan power and full-load current in the inputs.".to_owned()
            }
        }
    }

    fn safety(&self, safety: Safety) -> &'static str {
        match safety {
            Safety::Safe => "Safe",
            Safety::Check => "Check first",
            Safety::Unsafe => "Not safe",
        }
    }

    fn whole(&self, safety: Safety) -> &'static str {
        match safety {
            Safety::Safe => "This controller takes the settings sheet.",
            Safety::Check => "This controller may do. Check what is marked before it runs.",
            Safety::Unsafe => {
                "Do not run the system on this controller as it is. What is marked says why."
            }
        }
    }
}

/// Question and help.
fn field_words(field: ControllerField) -> (&'static str, &'static str) {
    use ControllerField as F;
    let point = "Sensed value at which the fan reaches full speed. The controller's own sheet calls it set point or full-speed point.";
    let range = "How far below the full-speed point the fan comes to its minimum. Where it cannot be changed, both limits are alike.";
    let output = "Lowest output while the fan runs, as a share of full output. Where it cannot be changed, both limits are alike.";
    let boost = "Time at full output at a start from rest. Where there is none, enter 0 twice.";
    let supply = "Voltage that the controller may be connected to.";
    match field {
        F::PressurePointLowest => ("Full-speed pressure, lowest", point),
        F::PressurePointHighest => ("Full-speed pressure, highest", point),
        F::PressureRangeLowest => ("Throttling range of pressure, narrowest", range),
        F::PressureRangeHighest => ("Throttling range of pressure, widest", range),
        F::TemperaturePointLowest => ("Full-speed temperature, lowest", point),
        F::TemperaturePointHighest => ("Full-speed temperature, highest", point),
        F::TemperatureRangeLowest => ("Throttling range of temperature, narrowest", range),
        F::TemperatureRangeHighest => ("Throttling range of temperature, widest", range),
        F::MinimumOutputLowest => ("Minimum output, lowest", output),
        F::MinimumOutputHighest => ("Minimum output, highest", output),
        F::StartBoostLowest => ("Start boost, shortest", boost),
        F::StartBoostHighest => ("Start boost, longest", boost),
        F::SupplyLowest => ("Supply voltage, lowest", supply),
        F::SupplyHighest => ("Supply voltage, highest", supply),
        F::RatedCurrent => (
            "Rated current",
            "Largest current of all motors on the controller together, from its nameplate.",
        ),
    }
}

fn sensed(sensing: Sensing) -> &'static str {
    match sensing {
        Sensing::CoilTemperature => "coil temperature",
        Sensing::LiquidPressure => "pressure",
    }
}

fn outputs(kinds: &[MotorOutput]) -> String {
    let named: Vec<_> = kinds
        .iter()
        .map(|kind| match kind {
            MotorOutput::PhaseCut => "a phase-cut supply",
            MotorOutput::ZeroToTenVolts => "a signal of 0 to 10 V",
            MotorOutput::PulseWidth => "a pulse-width signal",
            MotorOutput::Contact => "a contact alone",
        })
        .collect();
    if named.is_empty() {
        return "no output that is known here".to_owned();
    }
    named.join(" or ")
}

/// What using the nearest value does.
fn effect(effect: Effect) -> &'static str {
    match effect {
        Effect::HoldLimitRises => {
            "The fan then moves more air in the cold, and the hold limit is warmer than planned."
        }
        Effect::BelowLowestSpeed => {
            "The fan then turns slower than its bearing or its torque allows."
        }
        Effect::LongerBoost => "A longer boost costs a little head pressure at each start.",
        Effect::MayNotStart => "The fan may then stand still at a start in the cold.",
        Effect::RunsHotter => {
            "The fan then slows at a higher head pressure. Check that it still reaches full speed on a warm day."
        }
        Effect::BelowNeed => "Head pressure then falls below the pressure need in the cold.",
        Effect::MayHunt => "In a narrower range the fan may hunt.",
        Effect::CannotBeSet => "The supply is what it is. Do not connect this controller to it.",
    }
}

fn current(pen: &Pen, current: ElectricCurrent) -> String {
    pen.show(Quantity::Current(current))
}

fn load(pen: &Pen, loading: &Loading) -> String {
    format!(
        "The motors take {} together; your controller is rated for {}.",
        current(pen, loading.sum),
        current(pen, loading.rating)
    )
}

fn outside(pen: &Pen, found: &Outside) -> String {
    let is_low = found.wanted.si() < found.low.si();
    let limit = if is_low { found.low } else { found.high };
    let (wanted, limit) = (pen.show(found.wanted), pen.show(limit));
    // Two values that are written alike would seem to be inside.
    let close = match (wanted == limit, is_low) {
        (false, _) => "",
        (true, true) => "a little less than ",
        (true, false) => "a little more than ",
    };
    let reach = if is_low {
        "no lower than"
    } else {
        "no higher than"
    };
    let taken = format!("Wanted is {close}{wanted}; your controller goes {reach} {limit}.");
    match found.nearest {
        Some(nearest) => format!(
            "{taken} The nearest that it takes is {}. {}",
            pen.show(nearest),
            effect(found.effect)
        ),
        None => format!("{taken} {}", effect(found.effect)),
    }
}
