//! The liquid line: what it takes, what arrives at the valve, and the subcooling to start with.

use uom::si::f64::{MassRate, Pressure};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_calc::liquid_line::{
    Arrival, Condition, LineError, LineInput, LiquidLine, RatedDrop, mass_flow, usual_roughness,
    usual_viscosity,
};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{Basis, Given, SheetRule};
use winterset_profile::{Amount, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found};
use crate::view::words;

/// What the line takes and what arrives.
pub fn answer(reader: &Reader) -> Answers {
    let Ok(line) = Line::read(reader) else {
        return Answers::default();
    };
    let mut found = line.arrives(reader).unwrap_or_default();
    let needed = line.needed(reader);
    // Beside what arrives, which it is to be held against.
    let place = found.len().min(1);
    found.splice(place..place, needed);
    Answers {
        found,
        notes: Vec::new(),
    }
}

/// A liquid line with the answers that it was made from.
struct Line {
    refrigerant: Refrigerant,
    line: LiquidLine,
    pressure: Given<Amount>,
    temperature: Given<Amount>,
    bore: Given<Amount>,
    length: Given<Amount>,
    lift: Given<Amount>,
    parts: Given<Amount>,
    cooling: Given<Amount>,
    evaporating: Given<Amount>,
}

impl Line {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        let refrigerant = reader.refrigerant()?;
        let pressure = reader.number(Question::LiquidPressure)?;
        let temperature = reader.number(Question::LiquidTemperature)?;
        let bore = reader.number(Question::Bore)?;
        let length = reader.number(Question::EquivalentLength)?;
        let lift = reader.number(Question::Lift)?;
        let parts = reader.number(Question::PartsDrop)?;
        let cooling = reader.number(Question::CoolingCapacity)?;
        let evaporating = reader.number(Question::Evaporating)?;
        let inlet = (pressure.value.pressure(), temperature.value.temperature());
        let flow = mass_flow(
            &refrigerant,
            cooling.value.power(),
            evaporating.value.temperature(),
            inlet,
        )
        .map_err(|error| said(reader, &error))?;
        let line = LiquidLine {
            inlet_pressure: inlet.0,
            inlet_temperature: inlet.1,
            mass_flow: flow,
            inner_diameter: bore.value.length(),
            equivalent_length: length.value.length(),
            lift: lift.value.length(),
            roughness: Given::assumed(usual_roughness()),
            viscosity: Given::assumed(usual_viscosity()),
            parts: rated(flow, parts.value.pressure()),
            heat: None,
        };
        Ok(Self {
            refrigerant,
            line,
            pressure,
            temperature,
            bore,
            length,
            lift,
            parts,
            cooling,
            evaporating,
        })
    }

    /// Whether anything that only this line can tell was left to a usual value.
    fn basis(&self) -> Basis {
        let own = [self.bore, self.length, self.cooling];
        let is_assumed = own.iter().any(|given| given.basis == Basis::Assumed);
        if is_assumed {
            Basis::Assumed
        } else {
            Basis::Computed
        }
    }

    fn arrives(&self, reader: &Reader) -> Result<Vec<Found>, Wrong> {
        let arrival = self
            .line
            .arrival(&self.refrigerant)
            .map_err(|error| said(reader, &error))?;
        let drops = arrival.drops;
        let drop = |rule, value: Pressure| {
            Found::new(rule, Measure::PressureDifference, value.value).resting_on(self.basis())
        };
        Ok(vec![
            self.arrival_found(&arrival),
            drop(SheetRule::LineDrop, drops.total)
                .with("Δp_f", Measure::PressureDifference, drops.friction.value)
                .with("Δp_H", Measure::PressureDifference, drops.lift.value)
                .given("Δp_parts", self.parts),
            drop(SheetRule::LineFriction, drops.friction)
                .given("L", self.length)
                .given("D", self.bore)
                .with("v", Measure::Velocity, drops.velocity.value),
            drop(SheetRule::LineLift, drops.lift).given("H", self.lift),
            Found::new(
                SheetRule::LineVelocity,
                Measure::Velocity,
                drops.velocity.value,
            )
            .with("ṁ", Measure::MassFlow, self.line.mass_flow.value)
            .given("D", self.bore)
            .resting_on(self.basis()),
            Found::new(
                SheetRule::MassFlow,
                Measure::MassFlow,
                self.line.mass_flow.value,
            )
            .reading("Q_0", self.cooling)
            .given("T_e", self.evaporating)
            .given("T", self.temperature)
            .given("p", self.pressure),
            Found::new(
                SheetRule::Subcooling,
                Measure::Difference,
                arrival.inlet_subcooling.get::<kelvin_interval>(),
            )
            .named(words().worksheets().labels().inlet_subcooling)
            .reading("p", self.pressure)
            .reading("T", self.temperature),
        ])
    }

    fn arrival_found(&self, arrival: &Arrival) -> Found {
        let labels = words().worksheets().labels();
        let found = match arrival.condition {
            Condition::Liquid { subcooling } => Found::new(
                SheetRule::Arrival,
                Measure::Difference,
                subcooling.get::<kelvin_interval>(),
            ),
            Condition::Flashed { quality } => {
                Found::new(SheetRule::Arrival, Measure::Quality, quality.value)
                    .named(labels.flash)
                    .because(labels.flash_reason)
            }
        };
        found
            .given("p", self.pressure)
            .given("T", self.temperature)
            .with("Δp", Measure::PressureDifference, arrival.drops.total.value)
            .with("T_bubble", Measure::Temperature, arrival.bubble.value)
            .resting_on(self.basis())
            .strong()
    }

    /// The subcooling to start with; nothing where no subcooling is enough, which is told at the line.
    fn needed(&self, reader: &Reader) -> Option<Found> {
        let wanted = reader.number(Question::WantedSubcooling).ok()?;
        let needed = self
            .line
            .subcooling_needed(&self.refrigerant, wanted.value.difference())
            .map_err(|error| said(reader, &error))
            .ok()?;
        Some(
            Found::new(
                SheetRule::NeededSubcooling,
                Measure::Difference,
                needed.subcooling.get::<kelvin_interval>(),
            )
            .given("ΔT_w", wanted)
            .given("p", self.pressure)
            .resting_on(self.basis())
            .strong(),
        )
    }
}

/// The parts with their drop at the very flow that is there.
fn rated(flow: MassRate, drop: Pressure) -> Vec<RatedDrop> {
    vec![RatedDrop { flow, drop }]
}

fn said(reader: &Reader, error: &LineError) -> Wrong {
    let question = match error {
        LineError::InletNotLiquid { .. } => Question::LiquidTemperature,
        LineError::DropAbovePressure { .. } | LineError::NotReached { .. } => Question::Bore,
        LineError::OutOfRange { input, .. } => match input {
            LineInput::InletPressure => Question::LiquidPressure,
            LineInput::InletTemperature => Question::LiquidTemperature,
            LineInput::InnerDiameter | LineInput::Roughness => Question::Bore,
            LineInput::EquivalentLength => Question::EquivalentLength,
            LineInput::Lift => Question::Lift,
            LineInput::RatedDrop => Question::PartsDrop,
            LineInput::WantedSubcooling => Question::WantedSubcooling,
            _ => Question::CoolingCapacity,
        },
        LineError::Refrigerant(_) => Question::LiquidPressure,
    };
    let said = words()
        .worksheets()
        .line_error(error, reader.units(), reader.atmosphere());
    reader.wrong(question, said)
}
