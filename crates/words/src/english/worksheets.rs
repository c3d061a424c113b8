//! Worksheets in English.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::SheetRule;
use winterset_calc::flooding::FloodingError;
use winterset_calc::liquid_line::LineError;
use winterset_calc::motor::MotorError;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::StartError;
use winterset_profile::{Amount, AmountProblem, Measure, Question, Scale, Sheet, Title};

use super::{English, problems, sensors};
use crate::amounts::{at_least, at_most};
use crate::help::FindWords;
use crate::language::{FieldWords, RuleWords};
use crate::units::Units;
use crate::worksheets::{StartLabels, WorksheetLabels, WorksheetWords};

static LABELS: WorksheetLabels = WorksheetLabels {
    worksheets: "Worksheets",
    list_note: "One question each, answered at once, without a site.",
    result: "Result",
    touch_note: "Touch a value for its reason, equation and source.",
    left_out: "left out",
    clear: "Clear this worksheet",
    clear_question: "Forget what was typed here? The refrigerant and the elevation stay.",
    gone: "There is no such worksheet.",
    fix: "No result yet: look at the answers marked.",
    stalls: "stalls",
    stalls_reason: "At this voltage a turning fan does not go on turning.",
    above_line: "This is more than the supply gives. Enter less, or a higher supply voltage.",
    flash: "Vapour at the valve",
    flash_reason: "The liquid flashes on its way: the valve gets vapour too. Start with more subcooling, or take a larger line.",
    liquid_reason: "Liquid alone arrives at the valve, this far below its bubble point.",
    not_superheated: "At or below saturation: liquid is in this line, or one of the two readings is off.",
    not_subcooled: "At or above saturation: vapour is in this line, or one of the two readings is off.",
    receiver_short: "Receiver, missing",
    receiver_short_reason: "The receiver is too small for the flooding charge and the pumpdown together.",
    inlet_subcooling: "Subcooling at the inlet",
    held_pressure: "Head pressure held",
    held_pressure_reason: "Dew pressure at the temperature to hold: what the valve is set to.",
    usual_range: |low, high| format!("usual {low} to {high}"),
    below_bearing: "The motor keeps turning, but slower than its bearing allows for long.",
    below_start: "A fan that turns goes on turning; from rest it does not start. It needs a start boost.",
    gauge_note: |air| format!("Gauge pressure stands on {air} of air."),
    carry: "Carry into a system",
    carry_note: "Answers given here become answers of the system. Nothing changes there before you say so.",
    carry_to: "Which system",
    choose_system: "Choose a system",
    carry_same: "That system holds all of this already.",
    carry_differences: "Keep or take each answer.",
    from_worksheet: "From here",
    carry_act: |count| match count {
        1 => "Carry over 1 answer".to_owned(),
        count => format!("Carry over {count} answers"),
    },
};

impl WorksheetWords for English {
    fn labels(&self) -> &'static WorksheetLabels {
        &LABELS
    }

    fn start_labels(&self) -> &'static StartLabels {
        &sensors::LABELS
    }

    fn sheet(&self, sheet: Sheet) -> RuleWords {
        let (name, reason) = match sheet {
            Sheet::Saturation => (
                "Saturation",
                "Bubble and dew, from a temperature or from a gauge pressure.",
            ),
            Sheet::Superheat => (
                "Superheat and subcooling",
                "From a gauge pressure and a line temperature.",
            ),
            Sheet::FanLaws => (
                "Fan laws",
                "Airflow, pressure and power at another speed and in colder or thinner air.",
            ),
            Sheet::MotorVolts => (
                "Motor volts and speed",
                "What a phase cut gives a fan motor, what a meter shows, and where it stalls.",
            ),
            Sheet::Flooding => (
                "Flooding charge",
                "How much of a condenser to flood, the charge it takes, and the receiver.",
            ),
            Sheet::LiquidLine => (
                "Liquid line",
                "Pressure drop, flash, and the subcooling to start with.",
            ),
            Sheet::Sensors => (
                "Sensors",
                "What a meter reads at a thermistor or transducer, and the resistor to test with.",
            ),
            Sheet::WinterStart => (
                "Winter start",
                "Standing pressure against the cut-out, bypass time, and heat for the sump.",
            ),
            Sheet::Units => ("Units", "A value in every other unit."),
        };
        RuleWords { name, reason }
    }

    fn title(&self, title: Title) -> &'static str {
        match title {
            Title::FromTemperature => "From temperature to pressure",
            Title::FromPressure => "From pressure to temperature",
            Title::SuctionLine => "Suction line",
            Title::LiquidLine => "Liquid line",
            Title::KnownPoint => "The known point",
            Title::NewPoint => "At another speed, in other air",
            Title::Motor => "Motor",
            Title::Supply => "Supply",
            Title::Output => "Output of the controller",
            Title::Surroundings => "Air at the fan",
            Title::Condenser => "Condenser, at its design point",
            Title::Winter => "In the cold",
            Title::Receiver => "Receiver",
            Title::Load => "Load",
            Title::Line => "The line",
            Title::Place => "Place",
            Title::Sensor => "The sensor",
            Title::Meter => "From the meter",
            Title::Simulate => "To test the controller",
            Title::PressureSwitch => "Low-pressure switch",
            Title::HighSide => "Condenser and receiver, at the start",
            Title::LowSide => "Low side",
            Title::Sump => "Compressor sump",
        }
    }

    fn question(&self, question: Question) -> FieldWords {
        let (ask, help) = question_words(question);
        FieldWords { ask, help }
    }

    fn choice(&self, question: Question, key: &str) -> &'static str {
        let field = match question {
            Question::MotorKind => winterset_calc::Field::Motor,
            Question::Bearing => winterset_calc::Field::Bearing,
            Question::Metering => winterset_calc::Field::Metering,
            Question::Convert => {
                let measure = Measure::ALL.iter().find(|measure| measure.key() == key);
                return measure.map_or("Unknown choice", |measure| self.measure(*measure));
            }
            _ => {
                return match key {
                    "output" => "Output in percent",
                    "true-volts" => "Volts on a true r.m.s. meter",
                    "meter-volts" => "Volts on a plain meter",
                    _ => sensors::choice(key).unwrap_or("Unknown choice"),
                };
            }
        };
        super::fields::choice(field, key)
    }

    fn measure(&self, measure: Measure) -> &'static str {
        match measure {
            Measure::Temperature => "Temperature",
            Measure::Difference => "Temperature difference",
            Measure::Pressure => "Pressure, gauge and absolute",
            Measure::PressureDifference => "Pressure difference",
            Measure::FanPressure => "Pressure rise of a fan",
            Measure::Power => "Power, capacity",
            Measure::ShaftPower => "Shaft power",
            Measure::Airflow => "Airflow",
            Measure::Elevation => "Elevation",
            Measure::Length => "Length",
            Measure::Lift => "Height",
            Measure::Bore => "Diameter",
            Measure::Volume => "Volume",
            Measure::Mass => "Mass, charge",
            Measure::MassFlow => "Mass flow",
            Measure::Velocity => "Velocity",
            Measure::Density => "Density",
            Measure::Conductance => "Conductance for heat",
            Measure::HeatCapacity => "Capacity for heat",
            Measure::Resistance => "Resistance",
            Measure::Beta => "Beta",
            Measure::Coefficient => "Coefficient",
            Measure::Signal => "Signal",
            Measure::LoopCurrent => "Current",
            Measure::Time => "Time",
            Measure::Voltage => "Voltage",
            Measure::Current => "Current",
            Measure::Frequency => "Frequency",
            Measure::Speed => "Speed",
            Measure::Share => "Share",
            Measure::Quality => "Vapour by mass",
            Measure::Angle => "Angle",
        }
    }

    fn unit(&self, scale: Scale) -> &'static str {
        unit_name(scale)
    }

    fn measured(&self, rule: SheetRule) -> FindWords {
        super::sheet_help::measured(rule)
    }

    fn rule(&self, rule: SheetRule) -> RuleWords {
        let (name, reason) = rule_words(rule);
        RuleWords { name, reason }
    }

    fn amount_problem(
        &self,
        problem: &AmountProblem,
        scale: Scale,
        atmosphere: Pressure,
    ) -> String {
        let labels = &super::screen::SCREEN;
        match problem {
            AmountProblem::NotANumber => "Enter a number, such as 12.5.".to_owned(),
            AmountProblem::UnknownUnit { unit, measure } => {
                let units: Vec<_> = measure.scales().iter().map(Scale::symbol).collect();
                (labels.unit_like)(unit, &units.join(", "))
            }
            AmountProblem::Ambiguous { whole, decimal } => (labels.two_readings)(whole, decimal),
            AmountProblem::OutOfRange { low, high } => (labels.from_to)(
                &at_least(scale, *low, atmosphere).to_string(),
                &at_most(scale, *high, atmosphere).to_string(),
            ),
        }
    }

    fn motor_error(&self, error: &MotorError, _: Units) -> String {
        match error {
            MotorError::OutOfRange { .. } => {
                "This is further from the nameplate than the motor's model holds. Enter a value nearer to it."
            }
            _ => "The motor has no answer at this value. Enter a higher voltage or output.",
        }
        .to_owned()
    }

    fn line_error(&self, error: &LineError, units: Units, atmosphere: Pressure) -> String {
        let temperature = |value: &ThermodynamicTemperature| {
            let amount = Amount::new(Measure::Temperature, value.value);
            at_most(units.scale(Measure::Temperature), amount, atmosphere).to_string()
        };
        match error {
            LineError::InletNotLiquid { bubble, .. } => format!(
                "At this pressure the refrigerant is liquid only up to {}. Enter a lower temperature, or check the pressure.",
                temperature(bubble)
            ),
            LineError::DropAbovePressure { .. } => {
                "This line would take all the pressure there is. Enter a larger diameter, a shorter line or less lift.".to_owned()
            }
            LineError::NotReached { .. } => {
                "No subcooling is enough for this line. Enter a larger diameter, a shorter line or less lift.".to_owned()
            }
            LineError::OutOfRange { .. } => {
                "With this value the flow leaves the range of the model. Enter a capacity and a diameter that go together.".to_owned()
            }
            LineError::Refrigerant(error) => problems::refused(error, units, atmosphere),
        }
    }

    fn sensor_error(&self, error: &SensorError) -> &'static str {
        sensors::sensor_error(error)
    }

    fn start_error(&self, error: &StartError, units: Units, atmosphere: Pressure) -> String {
        sensors::start_error(error, units, atmosphere)
    }

    fn flooding_error(&self, error: &FloodingError, units: Units, atmosphere: Pressure) -> String {
        match error {
            FloodingError::Refrigerant(error) => problems::refused(error, units, atmosphere),
            _ => "With this value the condenser leaves the range of the model. Enter one nearer to the usual.".to_owned(),
        }
    }
}

fn question_words(question: Question) -> (&'static str, &'static str) {
    match question {
        Question::Refrigerant => (
            "Refrigerant",
            "What the circuit holds now. Every worksheet keeps the last one chosen.",
        ),
        Question::Elevation | Question::GaugeElevation => (
            "Height above sea level",
            "Gauge pressure stands on less air higher up, and thin air carries less. Every worksheet keeps the last one entered.",
        ),
        Question::Outdoor => (
            "Outdoor temperature",
            "Of the air going into the condenser or through the fan.",
        ),
        Question::Temperature => (
            "Temperature",
            "The one at which you want the pressures of bubble and dew point.",
        ),
        Question::Pressure => (
            "Gauge pressure",
            "As a gauge shows it. It may be below zero: a vacuum.",
        ),
        Question::SuctionPressure => (
            "Suction pressure",
            "Gauge pressure in the suction line, where you measure the temperature or close to it.",
        ),
        Question::SuctionTemperature => (
            "Suction line temperature",
            "On the pipe, insulated from the air, at the same place as the pressure.",
        ),
        Question::LiquidPressure => (
            "Liquid pressure",
            "Gauge pressure in the liquid line, behind the condenser or the receiver.",
        ),
        Question::LiquidTemperature => (
            "Liquid line temperature",
            "On the pipe, insulated from the air, at the same place as the pressure.",
        ),
        Question::KnownSpeed => (
            "Speed there",
            "From the nameplate or a tachometer, at the airflow below.",
        ),
        Question::KnownAirflow => ("Airflow there", "From the data sheet, or measured."),
        Question::KnownFanPressure => (
            "Pressure rise there",
            "Static pressure over the fan, from the data sheet or measured.",
        ),
        Question::KnownPower => (
            "Shaft power there",
            "What the fan takes at its shaft. The motor takes more from the mains.",
        ),
        Question::KnownTemperature => (
            "Air temperature there",
            "Data sheets are written for about 20 °C (68 °F) at sea level.",
        ),
        Question::KnownElevation => (
            "Elevation there",
            "Where the known point was taken; sea level for a data sheet.",
        ),
        Question::NewSpeed => (
            "New speed",
            "The speed to which the fan is slowed, or sped up.",
        ),
        Question::KnownAs => (
            "Known as",
            "A plain meter averages and is scaled for a sine: on a cut sine it shows too little.",
        ),
        Question::OutputShare => (
            "Output",
            "r.m.s. voltage behind the controller over the supply's.",
        ),
        Question::MotorVolts => (
            "At the motor, true r.m.s.",
            "What a true r.m.s. meter shows behind the controller.",
        ),
        Question::MeterVolts => (
            "At the motor, plain meter",
            "What a meter that averages shows behind the controller.",
        ),
        Question::SupplyVolts => (
            "Supply voltage",
            "Measured in front of the controller under load, or the nominal supply.",
        ),
        Question::Frequency => ("Supply frequency", "50 or 60 Hz."),
        Question::MotorKind => (
            "Motor",
            "A run capacitor on a single-phase motor means permanent split capacitor. Other motors take no phase cut.",
        ),
        Question::NameplateVolts => (
            "Nameplate voltage",
            "A 230 V motor on a 208 V supply starts from nine tenths.",
        ),
        Question::NameplateSpeed => ("Nameplate speed", "In revolutions a minute, at full load."),
        Question::Bearing => (
            "Bearing",
            "A sleeve bearing needs speed to keep its oil film, and sticks more in the cold.",
        ),
        Question::HeldCondensing => (
            "Condensing temperature to hold",
            "The dew temperature that the valve or controller is set to hold.",
        ),
        Question::HeatShare => (
            "Heat in the cold, of the design heat",
            "Below 100 % where the compressor unloads or the load is less in winter.",
        ),
        Question::HeatRejected => (
            "Heat rejected",
            "By the condenser at its design point: cooling capacity and heat of compression.",
        ),
        Question::OverAmbient => (
            "Condensing over ambient",
            "At the design point with all fans at full speed.",
        ),
        Question::CondenserVolume => (
            "Inside volume of the condenser",
            "From the data sheet. Left blank, it is taken from the heat for round tubes; a microchannel coil holds about a third.",
        ),
        Question::PumpdownCharge => (
            "Other charge that the receiver must take",
            "What is pumped down into it from the rest of the system.",
        ),
        Question::Warmest => (
            "Warmest that the receiver gets",
            "On a roof in the sun in summer.",
        ),
        Question::ReceiverVolume => (
            "Inside volume of the receiver",
            "From its plate. Left blank, only the volume needed is worked out.",
        ),
        Question::Bore => (
            "Inside diameter",
            "Outside diameter less twice the wall, of the liquid line.",
        ),
        Question::EquivalentLength => (
            "Length with fittings",
            "Straight length, and for each fitting the length that would take as much.",
        ),
        Question::Lift => (
            "Valve above the condenser",
            "Height of the metering device over the outlet of condenser or receiver; below zero where it lies lower.",
        ),
        Question::PartsDrop => (
            "Drop of drier and valves",
            "Filter-drier, solenoid valve and sight glass together, at this flow.",
        ),
        Question::CoolingCapacity => (
            "Cooling capacity",
            "At full load: it sets the flow in the line.",
        ),
        Question::Evaporating => (
            "Evaporating temperature",
            "Saturation (dew) at the suction pressure.",
        ),
        Question::WantedSubcooling => (
            "Subcooling wanted at the valve",
            "Some reserve against flash, such as 3 K (5 °F).",
        ),
        Question::Convert => ("What to convert", "All quantities that this app uses."),
        Question::Converted(measure) => {
            (English.measure(measure), "The value and the unit it is in.")
        }
        other => sensors::question(other).unwrap_or_default(),
    }
}

fn rule_words(rule: SheetRule) -> (&'static str, &'static str) {
    match rule {
        SheetRule::BubblePressure => (
            "Bubble pressure",
            "Saturated liquid: the first bubble appears here.",
        ),
        SheetRule::DewPressure => (
            "Dew pressure",
            "Saturated vapour: the first drop appears here.",
        ),
        SheetRule::BubbleTemperature => (
            "Bubble temperature",
            "Saturated liquid at this pressure: subcooling counts from here.",
        ),
        SheetRule::DewTemperature => (
            "Dew temperature",
            "Saturated vapour at this pressure: superheat counts from here.",
        ),
        SheetRule::Glide => (
            "Glide",
            "How much warmer the dew point is than the bubble point.",
        ),
        SheetRule::Superheat => (
            "Superheat",
            "How far the vapour is above its dew temperature.",
        ),
        SheetRule::Subcooling => (
            "Subcooling",
            "How far the liquid is below its bubble temperature.",
        ),
        SheetRule::AirDensity => ("Air density", "Cold air weighs more, thin air less."),
        SheetRule::FanAirflow => ("Airflow", "Goes with the speed, whatever the density."),
        SheetRule::FanPressure => (
            "Pressure rise",
            "Goes with the density and the square of the speed.",
        ),
        SheetRule::FanPower => (
            "Shaft power",
            "Goes with the density and the cube of the speed.",
        ),
        SheetRule::Output => ("Output", "r.m.s. voltage at the motor over the supply's."),
        SheetRule::CutVoltage => (
            "At the motor, true r.m.s.",
            "What a true r.m.s. meter shows, and what the motor's torque goes by.",
        ),
        SheetRule::MeterVoltage => (
            "A plain meter shows",
            "It averages and is scaled for a sine, so it shows too little here.",
        ),
        SheetRule::FiringAngle => (
            "Firing angle",
            "The part of each half wave that is cut away.",
        ),
        SheetRule::MotorSpeed => (
            "Motor speed",
            "Where the motor's torque at this voltage meets the fan and the bearing.",
        ),
        SheetRule::KeepsRunning => (
            "Stalls below",
            "Under this voltage a turning fan does not go on turning.",
        ),
        SheetRule::Starts => (
            "Starts from rest at",
            "Between the two voltages a fan goes on turning but does not start.",
        ),
        SheetRule::BearingSpeed => (
            "Lowest speed for the bearing",
            "Below it the bearing wears.",
        ),
        SheetRule::FloodedShare => (
            "Share to flood",
            "What is left of the surface rejects the heat at the temperature held.",
        ),
        SheetRule::CondenserVolume => (
            "Condenser volume",
            "Estimated from the heat, for round tubes.",
        ),
        SheetRule::FloodedLiquid => (
            "Liquid that floods",
            "Its density near the outdoor temperature.",
        ),
        SheetRule::Unflooded => (
            "Unflooded condenser",
            "Mean density of what it holds before it is flooded.",
        ),
        SheetRule::FloodingCharge => (
            "Flooding charge",
            "On top of the charge of the system without flooding.",
        ),
        SheetRule::ReceiverNeeded => (
            "Receiver needed",
            "It takes back the flooding charge on a warm day, at most eight tenths full.",
        ),
        SheetRule::ReceiverRoom => (
            "Receiver, to spare",
            "The receiver holds the flooding charge and the pumpdown.",
        ),
        SheetRule::MassFlow => ("Mass flow", "What the evaporator takes for this capacity."),
        SheetRule::LineVelocity => ("Velocity", "Mean velocity of the liquid."),
        SheetRule::LineFriction => ("Drop by friction", "In tube and fittings."),
        SheetRule::LineLift => (
            "Drop by height",
            "The weight of the liquid column; below zero where the valve lies lower.",
        ),
        SheetRule::LineDrop => (
            "Pressure drop of the line",
            "Friction, height, drier and valves together.",
        ),
        SheetRule::Arrival => (
            "Subcooling at the valve",
            "Liquid alone arrives, this far below its bubble point.",
        ),
        SheetRule::NeededSubcooling => (
            "Subcooling to start with",
            "At the outlet of condenser or receiver, for what is wanted at the valve.",
        ),
        SheetRule::Conversion => ("In another unit", "The same in another unit."),
        other => sensors::rule(other).unwrap_or_default(),
    }
}

fn unit_name(scale: Scale) -> &'static str {
    match scale.symbol() {
        "°C" => "Degree Celsius",
        "°F" => "Degree Fahrenheit",
        "K" => "Kelvin",
        "psig" => "Pound per square inch, gauge",
        "psia" => "Pound per square inch, absolute",
        "kPa gauge" => "Kilopascal, gauge",
        "kPa absolute" => "Kilopascal, absolute",
        "bar gauge" => "Bar, gauge",
        "bar absolute" => "Bar, absolute",
        "psi" => "Pound per square inch",
        "kPa" => "Kilopascal",
        "Pa" => "Pascal",
        "bar" => "Bar",
        "in H₂O" => "Inch of water",
        "kW" => "Kilowatt",
        "W" => "Watt",
        "Btu/h" => "Btu an hour",
        "ton" => "Ton of refrigeration",
        "hp" => "Horsepower",
        "m³/h" => "Cubic metre an hour",
        "m³/s" => "Cubic metre a second",
        "L/s" => "Litre a second",
        "cfm" => "Cubic foot a minute",
        "m" => "Metre",
        "ft" => "Foot",
        "mm" => "Millimetre",
        "in" => "Inch",
        "L" => "Litre",
        "m³" => "Cubic metre",
        "ft³" => "Cubic foot",
        "in³" => "Cubic inch",
        "kg" => "Kilogram",
        "g" => "Gram",
        "lb" => "Pound",
        "oz" => "Ounce",
        "kg/s" => "Kilogram a second",
        "kg/h" => "Kilogram an hour",
        "lb/min" => "Pound a minute",
        "lb/h" => "Pound an hour",
        "m/s" => "Metre a second",
        "ft/s" => "Foot a second",
        "ft/min" => "Foot a minute",
        "kg/m³" => "Kilogram a cubic metre",
        "lb/ft³" => "Pound a cubic foot",
        "W/K" => "Watt a kelvin",
        "Btu/(h °F)" => "Btu an hour and °F",
        other => other,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_unit_that_is_converted_has_a_name() {
        for scale in Measure::CONVERTIBLE.iter().flat_map(|one| one.scales()) {
            assert_ne!(unit_name(*scale), scale.symbol());
        }
    }
}
