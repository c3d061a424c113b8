//! The worksheets on sensors and on a winter start, in English.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::SheetRule;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::{StartError, StartInput};
use winterset_profile::{Amount, Measure, Question};

use super::problems;
use crate::units::Units;
use crate::worksheets::StartLabels;

pub(super) static LABELS: StartLabels = StartLabels {
    open: "open",
    open_reason: "More resistance than at the coldest: a broken wire or sensor.",
    short: "short",
    short_reason: "Less resistance than at the hottest: wires that touch, or water in the sensor.",
    signal_low: "too low",
    signal_low_reason: "Below its range: no supply, a broken wire, or a short to common.",
    signal_high: "too high",
    signal_high_reason: "Above its range: a broken common wire, a short to supply, or a broken sensor.",
    e24: "Resistor, E24 series (5 %)",
    e96: "Resistor, E96 series (1 %)",
    e24_shows: "The E24 resistor shows",
    e96_shows: "The E96 resistor shows",
    closed: "Standing above the cut-out",
    closed_reason: "The low-pressure switch is closed before the start.",
    as_it_was: "as it was",
    as_it_was_reason: "Between cut-out and cut-in the switch stays as it was. After a stop by the switch it is open.",
    missing: "Standing below the cut-in",
    missing_reason: "The low-pressure switch is open: without a bypass the compressor does not start.",
    none_needed: "none needed",
    none_needed_reason: "Suction pressure stays above the cut-out.",
    longer: "over 10 min",
    longer_reason: "Suction pressure still rises after ten minutes. Heat on the receiver shortens it.",
    never: "none is enough",
    never_reason: "Suction pressure settles below the switch. Warm the receiver, or hold head pressure by flooding.",
    curve: "Sensor curve",
    temperature: "Temperature",
    pressure: "Pressure",
    resistance: "Resistance",
    signal: "Signal",
    curve_marker: "Marker on the sensor curve",
    curve_summary: |(sensed, signal), (last_sensed, last_signal)| {
        format!("From {signal} at {sensed} to {last_signal} at {last_sensed}.")
    },
};

pub(super) fn choice(key: &str) -> Option<&'static str> {
    Some(match key {
        "thermistor" => "Thermistor (NTC)",
        "transducer" => "Pressure transducer",
        "beta" => "Resistance at 25 °C, and beta",
        "points" => "Three points of its table",
        "coefficients" => "Coefficients A, B and C",
        "ratiometric" => "Volts, a share of its supply",
        "current-loop" => "4 to 20 mA",
        "gauge" => "Gauge",
        "sealed" => "Sealed gauge",
        "absolute" => "Absolute",
        _ => return None,
    })
}

pub(super) fn question(question: Question) -> Option<(&'static str, &'static str)> {
    Some(match question {
        Question::SensorKind => (
            "Sensor",
            "A thermistor tells a temperature, a transducer a pressure.",
        ),
        Question::ThermistorBy => (
            "Its curve is known by",
            "Three points of the maker's table are closer than beta far from 25 °C (77 °F).",
        ),
        Question::BaseResistance => (
            "Resistance at 25 °C (77 °F)",
            "As the sensor is sold, such as 10 kΩ.",
        ),
        Question::Beta => ("Beta", "From the data sheet, in kelvins."),
        Question::PointTemperature(number) => point_temperature(number),
        Question::PointResistance(number) => point_resistance(number),
        Question::Coefficient(number) => coefficient(number),
        Question::TransducerBy => (
            "Its signal",
            "Three wires are usually volts, two wires a current.",
        ),
        Question::RangeReference => (
            "Its range counts from",
            "Gauge: the air around it. Sealed gauge: air at sea level, closed in. Absolute: a vacuum.",
        ),
        Question::RangeLow => (
            "Low end of the range",
            "The pressure of the least signal, from its label.",
        ),
        Question::RangeHigh => (
            "High end of the range",
            "The pressure of the full signal, from its label.",
        ),
        Question::SensorSupply => (
            "Supply of the transducer",
            "Measured at its terminals, at the same time as the output.",
        ),
        Question::LowShare => (
            "Output at the low end",
            "Of the supply: 0.5 V of 5 V is 10 %.",
        ),
        Question::HighShare => (
            "Output at the high end",
            "Of the supply: 4.5 V of 5 V is 90 %.",
        ),
        Question::MeterResistance => (
            "Resistance of the sensor",
            "Measured with both wires off the controller. For an open line enter 100 MΩ.",
        ),
        Question::MeterOutput => (
            "Output of the transducer",
            "Measured from signal to common, with the controller connected.",
        ),
        Question::MeterCurrent => (
            "Current in the loop",
            "Measured in series with the transducer.",
        ),
        Question::SimulatedTemperature => (
            "Temperature to simulate",
            "What the controller is to see when you test it.",
        ),
        Question::SimulatedPressure => (
            "Pressure to simulate",
            "What the controller is to see when you test it.",
        ),
        Question::SensorElevation => (
            "Height above sea level",
            "Gauge pressure stands on less air higher up. Every worksheet keeps the last one entered.",
        ),
        Question::Room => (
            "Temperature of the cooled room",
            "Of the air going into the evaporator.",
        ),
        Question::CutOut => (
            "Low-pressure switch opens at",
            "Its cut-out, as set. Some have a cut-in and a difference: take the difference off.",
        ),
        Question::CutIn => (
            "Low-pressure switch closes at",
            "Its cut-in, as set. At or above the cut-out.",
        ),
        Question::Condensing => (
            "Condensing temperature",
            "Dew temperature at the known point, where the fan then holds it.",
        ),
        Question::Metering => (
            "Metering device",
            "How far it can open decides how soon liquid comes.",
        ),
        Question::LiquidAtStart => (
            "Receiver at the start",
            "As cold as outdoors unless something keeps it warm.",
        ),
        Question::ReceiverHeat => ("Receiver heater", "Heat that is on during the start."),
        Question::StartConductance => (
            "Heat that the condenser loses at the start",
            "A degree warmer than outdoors. Left blank: fans held off, a light wind.",
        ),
        Question::HeatCapacity => (
            "Heat that condenser and receiver take up",
            "With the liquid in them, a degree. Left blank, it goes with the cooling capacity.",
        ),
        Question::LowSideVolume => (
            "Inside volume of the low side",
            "Evaporator, suction line and the compressor's shell.",
        ),
        Question::EvaporatorCharge => (
            "Refrigerant in the running evaporator",
            "None of it is there after a long night.",
        ),
        Question::Around => (
            "Air round the compressor",
            "Outdoors, as cold as outdoors; in a machine room, warmer.",
        ),
        Question::SumpRise => (
            "Sump above it",
            "How far the oil is held above its surroundings and above what would condense in it.",
        ),
        Question::SumpConductance => (
            "Heat that the shell loses",
            "A degree. Left blank: a bare shell of usual size in a wind of 3 m/s (7 mph). A jacket halves it.",
        ),
        _ => return None,
    })
}

fn point_temperature(number: usize) -> (&'static str, &'static str) {
    let help = "The temperature of a point of the table.";
    match number {
        0 => ("First point, temperature", help),
        1 => ("Second point, temperature", help),
        _ => ("Third point, temperature", help),
    }
}

fn point_resistance(number: usize) -> (&'static str, &'static str) {
    let help = "The resistance that the table gives there.";
    match number {
        0 => ("First point, resistance", help),
        1 => ("Second point, resistance", help),
        _ => ("Third point, resistance", help),
    }
}

fn coefficient(number: usize) -> (&'static str, &'static str) {
    let help = "From the data sheet, with the resistance in ohms and the temperature in kelvins.";
    match number {
        0 => ("A", help),
        1 => ("B", help),
        _ => ("C", help),
    }
}

pub(super) fn rule(rule: SheetRule) -> Option<(&'static str, &'static str)> {
    Some(match rule {
        SheetRule::BetaTemperature | SheetRule::SteinhartTemperature => (
            "The sensor is at",
            "What a sound controller sees at this resistance.",
        ),
        SheetRule::BetaResistance | SheetRule::SteinhartResistance => (
            "The sensor would have",
            "Its resistance at the temperature to simulate.",
        ),
        SheetRule::SubstituteResistor => (
            "Resistor to connect",
            "The value of its series that comes nearest in temperature, in place of the sensor.",
        ),
        SheetRule::SubstituteTemperature => (
            "That resistor shows",
            "What the controller then sees. Its tolerance moves that from T_min to T_max.",
        ),
        SheetRule::RatiometricPressure | SheetRule::LoopPressure => {
            ("Pressure", "What the transducer tells the controller.")
        }
        SheetRule::RatiometricOutput => (
            "Output to feed in",
            "In place of the transducer, on the same supply.",
        ),
        SheetRule::LoopCurrent => ("Current to feed in", "In place of the transducer."),
        SheetRule::SwitchMargin => (
            "Low-pressure switch before the start",
            "Standing pressure of the low side, once the pressures are equal, against the switch.",
        ),
        SheetRule::StandingOutdoor => (
            "Standing pressure outdoors",
            "Condenser, receiver and liquid line after the night.",
        ),
        SheetRule::StandingLow => (
            "Standing pressure of the low side",
            "The least that it can fall to: sooner or later the colder side sets it.",
        ),
        SheetRule::BypassTime => (
            "Bypass of the low-pressure switch",
            "From the start until suction pressure stays above the cut-in.",
        ),
        SheetRule::LowestSuction => (
            "Lowest suction pressure",
            "At the start, before liquid comes through.",
        ),
        SheetRule::SumpTemperature => (
            "Sump temperature",
            "Above its surroundings, and above what would condense in it.",
        ),
        SheetRule::SumpHeat => (
            "Sump heat",
            "What the shell loses at that temperature. Heat it for 12 hours before a start after a long stop.",
        ),
        _ => return None,
    })
}

pub(super) fn sensor_error(error: &SensorError) -> &'static str {
    match error {
        SensorError::OutOfRange { .. } => {
            "This lies outside the range of the sensor. Enter a value inside it, or check the range."
        }
        SensorError::PointsTooClose { .. } => {
            "Two points are less than 5 K (9 °F) apart. Enter points further apart."
        }
        SensorError::NotFalling => {
            "With these values the resistance does not fall steadily as it gets warmer. Check each against the data sheet, with its unit."
        }
    }
}

pub(super) fn start_error(error: &StartError, units: Units, atmosphere: Pressure) -> String {
    let said = match error {
        StartError::CutInBelowCutOut { .. } => {
            "The switch would close below its cut-out. Enter a cut-in at or above it."
        }
        StartError::NotAbove {
            above, than, by, ..
        } => return not_above(*above, *than, *by, units, atmosphere),
        StartError::OutOfRange {
            input: StartInput::LiquidAtStart,
            ..
        } => "Enter a temperature from outdoors up to the condensing temperature.",
        StartError::OutOfRange { .. } => {
            "With this value the start leaves the range of the model. Enter one nearer to the usual."
        }
        StartError::Refrigerant(error) => return problems::refused(error, units, atmosphere),
        _ => "There is no answer for these values. Enter ones nearer to the usual.",
    };
    said.to_owned()
}

fn not_above(
    above: StartInput,
    than: ThermodynamicTemperature,
    by: f64,
    units: Units,
    atmosphere: Pressure,
) -> String {
    let least = Amount::new(Measure::Temperature, than.value + by);
    let scale = units.scale(Measure::Temperature);
    let least = crate::amounts::at_least(scale, least, atmosphere);
    match above {
        StartInput::Room => {
            format!(
                "The room must be warmer than the evaporating temperature. Enter more than {least}."
            )
        }
        _ => format!("Condensing must be above evaporating and outdoors. Enter more than {least}."),
    }
}
