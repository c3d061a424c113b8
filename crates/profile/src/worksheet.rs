//! Worksheets: calculations that stand outside any site. What each asks, in which order, and what was typed there.
//!
//! A further worksheet is a further [`Sheet`] with its sections and questions; its words follow in the `words` crate, and what it
//! answers in the interface.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use winterset_calc::Field;
use winterset_calc::input::{Bearing, Metering, MotorKind};

use crate::amount::Measure;
use crate::record::Entry;

macro_rules! sheets {
    ($($(#[doc = $doc:literal])+ $name:ident = $key:literal: [$($section:expr),+ $(,)?],)+) => {
        /// A worksheet.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Sheet { $($(#[doc = $doc])+ $name,)+ }

        impl Sheet {
            /// Every worksheet, in the order of their list.
            pub const ALL: &'static [Sheet] = &[$(Sheet::$name,)+];

            /// The stable name, which addresses and records carry.
            pub fn key(self) -> &'static str {
                match self { $(Sheet::$name => $key,)+ }
            }

            /// What it asks, in order.
            pub fn sections(self) -> &'static [Section] {
                match self { $(Sheet::$name => const { &[$($section),+] },)+ }
            }
        }
    };
}

/// Questions that belong together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// What they are about; `None` for those at the head of a worksheet.
    pub title: Option<Title>,
    /// The questions.
    pub questions: &'static [Question],
}

/// What a section of a worksheet is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs)] // each name is what the section is about
pub enum Title {
    FromTemperature,
    FromPressure,
    SuctionLine,
    LiquidLine,
    KnownPoint,
    NewPoint,
    Motor,
    Supply,
    Output,
    Surroundings,
    Condenser,
    Winter,
    Receiver,
    Load,
    Line,
    Place,
    Sensor,
    Meter,
    Simulate,
    PressureSwitch,
    HighSide,
    LowSide,
    Sump,
}

const fn section(title: Title, questions: &'static [Question]) -> Section {
    Section {
        title: Some(title),
        questions,
    }
}

const fn head(questions: &'static [Question]) -> Section {
    Section {
        title: None,
        questions,
    }
}

use Question as Q;

const PLACE: Section = section(Title::Place, &[Q::Elevation]);

sheets! {
    /// Bubble and dew from a temperature or a pressure.
    Saturation = "saturation": [
        head(&[Q::Refrigerant]),
        section(Title::FromTemperature, &[Q::Temperature]),
        section(Title::FromPressure, &[Q::Pressure]),
        PLACE,
    ],
    /// Superheat and subcooling from a pressure and a line temperature.
    Superheat = "superheat": [
        head(&[Q::Refrigerant]),
        section(Title::SuctionLine, &[Q::SuctionPressure, Q::SuctionTemperature]),
        section(Title::LiquidLine, &[Q::LiquidPressure, Q::LiquidTemperature]),
        PLACE,
    ],
    /// A fan at another speed and in other air.
    FanLaws = "fan-laws": [
        section(Title::NewPoint, &[Q::NewSpeed, Q::Outdoor, Q::Elevation]),
        section(Title::KnownPoint, &[
            Q::KnownSpeed, Q::KnownAirflow, Q::KnownFanPressure, Q::KnownPower, Q::KnownTemperature, Q::KnownElevation,
        ]),
    ],
    /// Volts, firing angle, speed and stall of a fan motor on a phase cut.
    MotorVolts = "motor-volts": [
        section(Title::Output, &[Q::KnownAs, Q::OutputShare, Q::MotorVolts, Q::MeterVolts]),
        section(Title::Supply, &[Q::SupplyVolts, Q::Frequency]),
        section(Title::Motor, &[Q::MotorKind, Q::NameplateVolts, Q::NameplateSpeed, Q::Bearing]),
        section(Title::Surroundings, &[Q::Outdoor, Q::Elevation]),
    ],
    /// The condenser surface to flood, the charge that takes and the receiver.
    Flooding = "flooding": [
        head(&[Q::Refrigerant]),
        section(Title::Winter, &[Q::HeldCondensing, Q::Outdoor, Q::HeatShare]),
        section(Title::Condenser, &[Q::HeatRejected, Q::OverAmbient, Q::CondenserVolume]),
        section(Title::Receiver, &[Q::PumpdownCharge, Q::Warmest, Q::ReceiverVolume]),
        PLACE,
    ],
    /// What the liquid line takes, and whether liquid arrives at the valve.
    LiquidLine = "liquid-line": [
        head(&[Q::Refrigerant]),
        section(Title::LiquidLine, &[Q::LiquidPressure, Q::LiquidTemperature]),
        section(Title::Line, &[Q::Bore, Q::EquivalentLength, Q::Lift, Q::PartsDrop]),
        section(Title::Load, &[Q::CoolingCapacity, Q::Evaporating, Q::WantedSubcooling]),
        PLACE,
    ],
    /// What a meter reads at a sensor, what that means, and what stands in for it.
    Sensors = "sensors": [
        head(&[Q::SensorKind]),
        section(Title::Sensor, &[
            Q::ThermistorBy, Q::BaseResistance, Q::Beta,
            Q::PointTemperature(0), Q::PointResistance(0), Q::PointTemperature(1), Q::PointResistance(1),
            Q::PointTemperature(2), Q::PointResistance(2),
            Q::Coefficient(0), Q::Coefficient(1), Q::Coefficient(2),
            Q::TransducerBy, Q::RangeReference, Q::RangeLow, Q::RangeHigh, Q::SensorSupply, Q::LowShare, Q::HighShare,
        ]),
        section(Title::Meter, &[Q::MeterResistance, Q::MeterOutput, Q::MeterCurrent]),
        section(Title::Simulate, &[Q::SimulatedTemperature, Q::SimulatedPressure]),
        section(Title::Place, &[Q::SensorElevation]),
    ],
    /// A start after a night in the cold.
    WinterStart = "winter-start": [
        head(&[Q::Refrigerant]),
        section(Title::Winter, &[Q::Outdoor, Q::Room]),
        section(Title::PressureSwitch, &[Q::CutOut, Q::CutIn]),
        section(Title::KnownPoint, &[Q::CoolingCapacity, Q::Evaporating, Q::Condensing, Q::Metering]),
        section(Title::HighSide, &[Q::LiquidAtStart, Q::ReceiverHeat, Q::StartConductance, Q::HeatCapacity]),
        section(Title::LowSide, &[Q::LowSideVolume, Q::EvaporatorCharge]),
        section(Title::Sump, &[Q::Around, Q::SumpRise, Q::SumpConductance]),
        PLACE,
    ],
    /// A value in other units.
    Units = "units": [
        head(&[
            Q::Convert,
            Q::Converted(Measure::Temperature), Q::Converted(Measure::Difference), Q::Converted(Measure::Pressure),
            Q::Converted(Measure::PressureDifference), Q::Converted(Measure::Power), Q::Converted(Measure::Airflow),
            Q::Converted(Measure::Length), Q::Converted(Measure::Volume), Q::Converted(Measure::Mass),
            Q::Converted(Measure::MassFlow), Q::Converted(Measure::Velocity), Q::Converted(Measure::Density),
            Q::Converted(Measure::Conductance), Q::GaugeElevation,
        ]),
    ],
}

impl Sheet {
    /// The worksheet with this stable name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|sheet| sheet.key() == key)
    }

    /// Every question, in order.
    pub fn questions(self) -> impl Iterator<Item = Question> {
        self.sections()
            .iter()
            .flat_map(|section| section.questions.iter().copied())
    }
}

/// A question on a worksheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs)] // each name is what is asked; `answer` says in what and within what
pub enum Question {
    Refrigerant,
    Elevation,
    Outdoor,
    Temperature,
    Pressure,
    SuctionPressure,
    SuctionTemperature,
    LiquidPressure,
    LiquidTemperature,
    KnownSpeed,
    KnownAirflow,
    KnownFanPressure,
    KnownPower,
    KnownTemperature,
    KnownElevation,
    NewSpeed,
    KnownAs,
    OutputShare,
    MotorVolts,
    MeterVolts,
    SupplyVolts,
    Frequency,
    MotorKind,
    NameplateVolts,
    NameplateSpeed,
    Bearing,
    HeldCondensing,
    HeatShare,
    HeatRejected,
    OverAmbient,
    CondenserVolume,
    PumpdownCharge,
    Warmest,
    ReceiverVolume,
    Bore,
    EquivalentLength,
    Lift,
    PartsDrop,
    CoolingCapacity,
    Evaporating,
    WantedSubcooling,
    Convert,
    Converted(Measure),
    GaugeElevation,
    SensorKind,
    ThermistorBy,
    BaseResistance,
    Beta,
    /// Of the three points of a thermistor's table, counted from none.
    PointTemperature(usize),
    PointResistance(usize),
    /// Of A, B and C, counted from none.
    Coefficient(usize),
    TransducerBy,
    RangeReference,
    RangeLow,
    RangeHigh,
    SensorSupply,
    LowShare,
    HighShare,
    MeterResistance,
    MeterOutput,
    MeterCurrent,
    SimulatedTemperature,
    SimulatedPressure,
    SensorElevation,
    Room,
    CutOut,
    CutIn,
    Condensing,
    Metering,
    LiquidAtStart,
    ReceiverHeat,
    StartConductance,
    HeatCapacity,
    LowSideVolume,
    EvaporatorCharge,
    Around,
    SumpRise,
    SumpConductance,
}

/// How a question is answered.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// A refrigerant by designation, or a blend by mass.
    Refrigerant,
    /// One of a few, by stable name; the first is usual.
    Choice(Vec<&'static str>),
    /// A number.
    Number(Number),
}

/// A number that answers a question; values in the SI unit of the measure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    /// What it measures.
    pub measure: Measure,
    /// Smallest and largest value that make sense.
    pub range: (f64, f64),
    /// What stands in for no answer.
    pub usual: Usual,
    /// Between which values it commonly lies. Common practice, no published source.
    pub common: Option<(f64, f64)>,
}

/// What stands in for no answer. Common practice, no published source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Usual {
    /// A value.
    At(f64),
    /// A value that follows from other answers.
    Follows,
    /// Nothing: what needs the answer is left out.
    LeftOut,
}

/// The ways in which the output of a phase cut may be known.
const KNOWN_AS: [&str; 3] = ["output", "true-volts", "meter-volts"];

/// The sensors whose readings are worked out.
const SENSORS: [&str; 2] = ["thermistor", "transducer"];

/// The ways in which a thermistor's curve may be known.
const THERMISTORS: [&str; 3] = ["beta", "points", "coefficients"];

/// The signals of a transducer.
const TRANSDUCERS: [&str; 2] = ["ratiometric", "current-loop"];

/// What the zero of a transducer's range stands for.
const REFERENCES: [&str; 3] = ["gauge", "sealed", "absolute"];

/// Temperatures and resistances of a usual thermistor of 10 kΩ at 25 °C whose beta is 3950 K: K and Ω.
const POINTS: [(f64, f64); 3] = [(253.15, 105_400.0), (273.15, 33_600.0), (298.15, 10_000.0)];

/// A, B and C of a usual thermistor of 10 kΩ at 25 °C, 1/K.
const COEFFICIENTS: [f64; 3] = [1.129_148e-3, 2.341_25e-4, 8.767_41e-8];

fn of_three<T: Copy + Default>(three: [T; 3], number: usize) -> T {
    three.get(number).copied().unwrap_or_default()
}

fn celsius(degrees: f64) -> f64 {
    degrees + 273.15
}

fn rpm(revolutions: f64) -> f64 {
    revolutions * std::f64::consts::PI / 30.0
}

impl Question {
    /// The stable name, which records carry.
    pub fn key(self) -> &'static str {
        match self {
            Q::Refrigerant => "refrigerant",
            Q::Elevation | Q::GaugeElevation | Q::SensorElevation => "elevation",
            Q::Outdoor => "outdoor",
            Q::Temperature => "temperature",
            Q::Pressure => "pressure",
            Q::SuctionPressure => "suction-pressure",
            Q::SuctionTemperature => "suction-temperature",
            Q::LiquidPressure => "liquid-pressure",
            Q::LiquidTemperature => "liquid-temperature",
            Q::KnownSpeed => "known-speed",
            Q::KnownAirflow => "known-airflow",
            Q::KnownFanPressure => "known-fan-pressure",
            Q::KnownPower => "known-power",
            Q::KnownTemperature => "known-temperature",
            Q::KnownElevation => "known-elevation",
            Q::NewSpeed => "new-speed",
            Q::KnownAs => "known-as",
            Q::OutputShare => "output-share",
            Q::MotorVolts => "motor-volts",
            Q::MeterVolts => "meter-volts",
            Q::SupplyVolts => "supply-volts",
            Q::Frequency => "frequency",
            Q::MotorKind => "motor-kind",
            Q::NameplateVolts => "nameplate-volts",
            Q::NameplateSpeed => "nameplate-speed",
            Q::Bearing => "bearing",
            Q::HeldCondensing => "held-condensing",
            Q::HeatShare => "heat-share",
            Q::HeatRejected => "heat-rejected",
            Q::OverAmbient => "over-ambient",
            Q::CondenserVolume => "condenser-volume",
            Q::PumpdownCharge => "pumpdown-charge",
            Q::Warmest => "warmest",
            Q::ReceiverVolume => "receiver-volume",
            Q::Bore => "bore",
            Q::EquivalentLength => "equivalent-length",
            Q::Lift => "lift",
            Q::PartsDrop => "parts-drop",
            Q::CoolingCapacity => "cooling-capacity",
            Q::Evaporating => "evaporating",
            Q::WantedSubcooling => "wanted-subcooling",
            Q::Convert => "convert",
            Q::SensorKind => "sensor-kind",
            Q::ThermistorBy => "thermistor-by",
            Q::BaseResistance => "base-resistance",
            Q::Beta => "beta",
            Q::TransducerBy => "transducer-by",
            Q::RangeReference => "range-reference",
            Q::RangeLow => "range-low",
            Q::RangeHigh => "range-high",
            Q::SensorSupply => "sensor-supply",
            Q::LowShare => "low-share",
            Q::HighShare => "high-share",
            Q::MeterResistance => "meter-resistance",
            Q::MeterOutput => "meter-output",
            Q::MeterCurrent => "meter-current",
            Q::SimulatedTemperature => "simulated-temperature",
            Q::SimulatedPressure => "simulated-pressure",
            Q::Room => "room",
            Q::CutOut => "cut-out",
            Q::CutIn => "cut-in",
            Q::Condensing => "condensing",
            Q::Metering => "metering",
            Q::LiquidAtStart => "liquid-at-start",
            Q::ReceiverHeat => "receiver-heat",
            Q::StartConductance => "start-conductance",
            Q::HeatCapacity => "heat-capacity",
            Q::LowSideVolume => "low-side-volume",
            Q::EvaporatorCharge => "evaporator-charge",
            Q::Around => "around",
            Q::SumpRise => "sump-rise",
            Q::SumpConductance => "sump-conductance",
            Q::PointTemperature(number) => of_three(
                [
                    "point-1-temperature",
                    "point-2-temperature",
                    "point-3-temperature",
                ],
                number,
            ),
            Q::PointResistance(number) => of_three(
                [
                    "point-1-resistance",
                    "point-2-resistance",
                    "point-3-resistance",
                ],
                number,
            ),
            Q::Coefficient(number) => {
                of_three(["coefficient-a", "coefficient-b", "coefficient-c"], number)
            }
            Q::Converted(measure) => measure.key(),
        }
    }

    /// Whether every worksheet shares the answer: the job has one refrigerant and one place.
    pub fn is_shared(self) -> bool {
        matches!(
            self,
            Q::Refrigerant | Q::Elevation | Q::GaugeElevation | Q::SensorElevation
        )
    }

    /// Whether the answer only says how something is to be entered, so that nothing is assumed without it.
    pub fn is_way(self) -> bool {
        matches!(
            self,
            Q::KnownAs | Q::Convert | Q::SensorKind | Q::ThermistorBy | Q::TransducerBy
        )
    }

    /// The choice that has to be made at another question, itself asked, for this one to be asked.
    pub fn when(self) -> Option<(Question, &'static str)> {
        Some(match self {
            Q::OutputShare => (Q::KnownAs, KNOWN_AS[0]),
            Q::MotorVolts => (Q::KnownAs, KNOWN_AS[1]),
            Q::MeterVolts => (Q::KnownAs, KNOWN_AS[2]),
            Q::Converted(measure) => (Q::Convert, measure.key()),
            Q::GaugeElevation => (Q::Convert, Measure::Pressure.key()),
            Q::ThermistorBy | Q::MeterResistance | Q::SimulatedTemperature => {
                (Q::SensorKind, SENSORS[0])
            }
            Q::BaseResistance | Q::Beta => (Q::ThermistorBy, THERMISTORS[0]),
            Q::PointTemperature(_) | Q::PointResistance(_) => (Q::ThermistorBy, THERMISTORS[1]),
            Q::Coefficient(_) => (Q::ThermistorBy, THERMISTORS[2]),
            Q::TransducerBy
            | Q::RangeReference
            | Q::RangeLow
            | Q::RangeHigh
            | Q::SimulatedPressure
            | Q::SensorElevation => (Q::SensorKind, SENSORS[1]),
            Q::SensorSupply | Q::LowShare | Q::HighShare | Q::MeterOutput => {
                (Q::TransducerBy, TRANSDUCERS[0])
            }
            Q::MeterCurrent => (Q::TransducerBy, TRANSDUCERS[1]),
            _ => return None,
        })
    }

    /// How it is answered, within which range, and what is usual.
    pub fn answer(self) -> Answer {
        match self {
            Q::Refrigerant => Answer::Refrigerant,
            Q::KnownAs => Answer::Choice(KNOWN_AS.to_vec()),
            Q::MotorKind => Answer::Choice(vec![
                MotorKind::PermanentSplitCapacitor.key(),
                MotorKind::ShadedPole.key(),
            ]),
            Q::Bearing => Answer::Choice(Bearing::ALL.iter().map(|one| one.key()).collect()),
            Q::SensorKind => Answer::Choice(SENSORS.to_vec()),
            Q::ThermistorBy => Answer::Choice(THERMISTORS.to_vec()),
            Q::TransducerBy => Answer::Choice(TRANSDUCERS.to_vec()),
            Q::RangeReference => Answer::Choice(REFERENCES.to_vec()),
            Q::Metering => Answer::Choice(Metering::ALL.iter().map(|one| one.key()).collect()),
            Q::Convert => {
                Answer::Choice(Measure::CONVERTIBLE.iter().map(|one| one.key()).collect())
            }
            Q::Converted(measure) => Answer::Number(converted(measure)),
            number => Answer::Number(number.number()),
        }
    }

    fn number(self) -> Number {
        use Measure as M;
        use Usual::{At, Follows, LeftOut};
        let (measure, (low, high), usual) = match self {
            Q::Elevation | Q::GaugeElevation | Q::SensorElevation | Q::KnownElevation => {
                (M::Elevation, of_field(Field::Elevation), At(0.0))
            }
            Q::Outdoor => (
                M::Temperature,
                (celsius(-60.0), celsius(60.0)),
                At(celsius(-20.0)),
            ),
            Q::Temperature => (M::Temperature, (100.0, 700.0), Follows),
            Q::Pressure | Q::SuctionPressure | Q::LiquidPressure => {
                (M::Pressure, (100.0, 2e7), Follows)
            }
            Q::SuctionTemperature => (M::Temperature, (celsius(-100.0), celsius(100.0)), Follows),
            Q::LiquidTemperature => (M::Temperature, (celsius(-60.0), celsius(120.0)), Follows),
            Q::KnownSpeed => (M::Speed, (rpm(50.0), rpm(6000.0)), At(rpm(1075.0))),
            Q::NewSpeed => (M::Speed, (rpm(1.0), rpm(6000.0)), Follows),
            Q::KnownAirflow => (M::Airflow, (1e-3, 500.0), At(1.65)),
            Q::KnownFanPressure => (M::FanPressure, (0.1, 5000.0), At(50.0)),
            Q::KnownPower => (M::ShaftPower, (0.1, 5e4), At(250.0)),
            Q::KnownTemperature => (
                M::Temperature,
                (celsius(-60.0), celsius(60.0)),
                At(celsius(20.0)),
            ),
            Q::OutputShare => (M::Share, (0.01, 1.0), At(0.6)),
            Q::MotorVolts | Q::MeterVolts => (M::Voltage, (0.0, 600.0), Follows),
            Q::SupplyVolts => (M::Voltage, of_field(Field::Voltage), At(230.0)),
            Q::Frequency => (M::Frequency, of_field(Field::Frequency), At(60.0)),
            Q::NameplateVolts => (M::Voltage, of_field(Field::Voltage), Follows),
            Q::NameplateSpeed => (M::Speed, of_field(Field::RatedSpeed), Follows),
            Q::HeldCondensing => (M::Temperature, (celsius(-40.0), celsius(60.0)), Follows),
            Q::HeatShare => (M::Share, (0.05, 1.5), At(1.0)),
            Q::HeatRejected => (M::Power, (100.0, 2e6), At(15e3)),
            Q::OverAmbient => (M::Difference, of_field(Field::OverAmbient), At(15.0)),
            Q::CondenserVolume => (M::Volume, (1e-5, 10.0), Follows),
            Q::PumpdownCharge => (M::Mass, (0.0, 1e4), At(0.0)),
            Q::Warmest => (M::Temperature, (celsius(-60.0), celsius(80.0)), Follows),
            Q::ReceiverVolume => (M::Volume, (1e-5, 100.0), LeftOut),
            Q::Bore => (M::Bore, (1e-3, 0.3), At(8e-3)),
            Q::EquivalentLength => (M::Length, (0.0, 1000.0), At(20.0)),
            Q::Lift => (M::Lift, (-200.0, 200.0), At(0.0)),
            Q::PartsDrop => (M::PressureDifference, (0.0, 1e6), At(15e3)),
            Q::CoolingCapacity => (M::Power, of_field(Field::CoolingCapacity), At(10e3)),
            Q::Evaporating => (M::Temperature, (celsius(-100.0), celsius(20.0)), Follows),
            Q::WantedSubcooling => (M::Difference, (0.0, 30.0), At(3.0)),
            Q::BaseResistance => (M::Resistance, (10.0, 1e7), At(10e3)),
            Q::Beta => (M::Beta, (1000.0, 8000.0), At(3950.0)),
            Q::PointTemperature(number) => (
                M::Temperature,
                THERMISTOR_RANGE,
                At(of_three(POINTS, number).0),
            ),
            Q::PointResistance(number) => {
                (M::Resistance, (10.0, 1e7), At(of_three(POINTS, number).1))
            }
            Q::Coefficient(number) => (
                M::Coefficient,
                (-1.0, 1.0),
                At(of_three(COEFFICIENTS, number)),
            ),
            Q::RangeLow => (M::Pressure, (0.0, 5e6), Follows),
            Q::RangeHigh => (M::Pressure, (5e4, 5e7), Follows),
            Q::SensorSupply => (M::Signal, (1.0, 36.0), At(5.0)),
            Q::LowShare => (M::Share, (0.0, 0.8), At(0.1)),
            Q::HighShare => (M::Share, (0.2, 1.0), At(0.9)),
            Q::MeterResistance => (M::Resistance, (0.0, 1e9), Follows),
            Q::MeterOutput => (M::Signal, (0.0, 48.0), Follows),
            Q::MeterCurrent => (M::LoopCurrent, (0.0, 0.1), At(12e-3)),
            Q::SimulatedTemperature => (M::Temperature, THERMISTOR_RANGE, At(celsius(20.0))),
            Q::SimulatedPressure => (M::Pressure, (0.0, 5e7), Follows),
            Q::Room => (M::Temperature, (celsius(-60.0), celsius(60.0)), Follows),
            Q::CutOut | Q::CutIn => (M::Pressure, (1e3, 1e7), Follows),
            Q::Condensing => (M::Temperature, (celsius(-60.0), celsius(90.0)), Follows),
            Q::LiquidAtStart => (M::Temperature, (celsius(-60.0), celsius(60.0)), Follows),
            Q::ReceiverHeat => (M::Power, (0.0, 1e5), At(0.0)),
            Q::StartConductance => (M::Conductance, (0.0, 1e6), Follows),
            Q::HeatCapacity => (M::HeatCapacity, (100.0, 1e8), Follows),
            Q::LowSideVolume => (M::Volume, (1e-5, 10.0), Follows),
            Q::EvaporatorCharge => (M::Mass, (1e-3, 1e3), Follows),
            Q::Around => (M::Temperature, (celsius(-60.0), celsius(60.0)), Follows),
            Q::SumpRise => (M::Difference, (0.0, 60.0), At(10.0)),
            Q::SumpConductance => (M::Conductance, (0.01, 1e4), Follows),
            // Those that take no number have been answered before; this arm only closes the match.
            _ => (M::Share, (0.0, 1.0), LeftOut),
        };
        Number {
            measure,
            range: (low, high),
            usual,
            common: self.common(),
        }
    }

    fn common(self) -> Option<(f64, f64)> {
        let temperature = |low, high| Some((celsius(low), celsius(high)));
        match self {
            Q::Outdoor => temperature(-35.0, 20.0),
            Q::KnownSpeed | Q::NameplateSpeed => Some((rpm(825.0), rpm(1550.0))),
            Q::KnownFanPressure => Some((20.0, 150.0)),
            Q::OutputShare => Some((0.3, 1.0)),
            Q::HeldCondensing => temperature(25.0, 35.0),
            Q::HeatShare => Some((0.5, 1.0)),
            Q::OverAmbient => Some((8.0, 17.0)),
            Q::Warmest => temperature(40.0, 60.0),
            Q::Bore => Some((5e-3, 40e-3)),
            Q::EquivalentLength => Some((5.0, 60.0)),
            Q::PartsDrop => Some((5e3, 30e3)),
            Q::Evaporating => temperature(-30.0, 7.0),
            Q::WantedSubcooling => Some((2.0, 5.0)),
            Q::Beta => Some((3000.0, 4600.0)),
            Q::SensorSupply => Some((5.0, 12.0)),
            Q::SumpRise => Some((8.0, 15.0)),
            _ => None,
        }
    }
}

/// Temperatures that thermistors are held to, K.
const THERMISTOR_RANGE: (f64, f64) = (213.15, 423.15);

/// The range of a field of a plan.
fn of_field(field: Field) -> (f64, f64) {
    let range = field.range().map(|(low, high)| (low.si(), high.si()));
    range.unwrap_or((f64::MIN, f64::MAX))
}

/// Any value that could be met, and one in the middle.
fn converted(measure: Measure) -> Number {
    let (range, usual) = match measure {
        Measure::Temperature => ((0.0, 1e4), celsius(20.0)),
        Measure::Pressure => ((0.0, 1e9), 101_325.0 + 1e6),
        Measure::PressureDifference => ((0.0, 1e9), 1e5),
        Measure::Power => ((0.0, 1e9), 1e4),
        Measure::Airflow => ((0.0, 1e6), 1.0),
        Measure::Volume => ((0.0, 1e6), 1e-3),
        _ => ((0.0, 1e9), 1.0),
    };
    Number {
        measure,
        range,
        usual: Usual::At(usual),
        common: None,
    }
}

/// What was typed on the worksheets, valid or not, by the stable names of worksheet and question.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Worksheets {
    /// What all worksheets share.
    #[serde(default)]
    shared: BTreeMap<String, Entry>,
    /// What each keeps for itself.
    #[serde(default)]
    sheets: BTreeMap<String, BTreeMap<String, Entry>>,
    /// What a newer version keeps here and this one does not know.
    #[serde(flatten)]
    other: BTreeMap<String, serde_json::Value>,
}

impl Worksheets {
    /// What was typed at a question of a worksheet; `None` where nothing is kept.
    pub fn entry(&self, sheet: Sheet, question: Question) -> Option<&Entry> {
        let kept = if question.is_shared() {
            Some(&self.shared)
        } else {
            self.sheets.get(sheet.key())
        };
        kept?.get(question.key())
    }

    /// What was typed, without what stands round it; empty for nothing.
    pub fn typed(&self, sheet: Sheet, question: Question) -> &str {
        self.entry(sheet, question)
            .map_or("", |entry| entry.typed.as_str())
    }

    /// Keeps what was typed; an entry that holds nothing is forgotten.
    pub fn set(&mut self, sheet: Sheet, question: Question, entry: Entry) {
        let kept = if question.is_shared() {
            &mut self.shared
        } else {
            self.sheets.entry(sheet.key().to_owned()).or_default()
        };
        if entry == Entry::default() {
            kept.remove(question.key());
        } else {
            kept.insert(question.key().to_owned(), entry);
        }
    }

    /// Forgets what a worksheet keeps for itself.
    pub fn clear(&mut self, sheet: Sheet) {
        self.sheets.remove(sheet.key());
    }

    /// Whether a worksheet keeps anything for itself.
    pub fn holds(&self, sheet: Sheet) -> bool {
        self.sheets
            .get(sheet.key())
            .is_some_and(|kept| kept.values().any(|entry| !entry.is_blank()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_stable_and_told_apart() {
        for sheet in Sheet::ALL {
            assert_eq!(Sheet::from_key(sheet.key()), Some(*sheet));
            let mut keys: Vec<_> = sheet.questions().map(Question::key).collect();
            let count = keys.len();
            keys.sort_unstable();
            keys.dedup();
            assert_eq!(keys.len(), count, "{sheet:?}");
        }
        assert_eq!(Sheet::from_key("nonsense"), None);
    }

    #[test]
    fn usual_values_make_sense_and_every_choice_leads_somewhere() {
        for question in Sheet::ALL.iter().flat_map(|sheet| sheet.questions()) {
            if let Answer::Number(number) = question.answer() {
                let (low, high) = number.range;
                assert!(low < high, "{question:?}");
                if let Usual::At(value) = number.usual {
                    assert!((low..=high).contains(&value), "{question:?}");
                }
            }
            if let Some((other, key)) = question.when() {
                let Answer::Choice(keys) = other.answer() else {
                    panic!("{other:?} is no choice");
                };
                assert!(keys.contains(&key), "{question:?}");
            }
        }
        for measure in Measure::CONVERTIBLE {
            let asked = Sheet::Units
                .questions()
                .any(|question| question == Question::Converted(*measure));
            assert!(asked, "{measure:?}");
        }
    }

    #[test]
    fn what_is_typed_is_kept_and_the_refrigerant_is_shared() {
        let mut kept = Worksheets::default();
        kept.set(Sheet::Superheat, Q::Refrigerant, Entry::new("R-448A"));
        kept.set(
            Sheet::FanLaws,
            Q::NewSpeed,
            Entry::with_unit("zwölf", "rpm"),
        );
        assert_eq!(kept.typed(Sheet::Flooding, Q::Refrigerant), "R-448A");
        assert_eq!(kept.typed(Sheet::FanLaws, Q::NewSpeed), "zwölf");
        assert_eq!(kept.typed(Sheet::MotorVolts, Q::NewSpeed), "");
        let text = serde_json::to_string(&kept).unwrap();
        assert_eq!(serde_json::from_str::<Worksheets>(&text).unwrap(), kept);
        assert!(kept.holds(Sheet::FanLaws));
        kept.clear(Sheet::FanLaws);
        assert!(!kept.holds(Sheet::FanLaws));
        assert_eq!(kept.typed(Sheet::Flooding, Q::Refrigerant), "R-448A");
    }
}
