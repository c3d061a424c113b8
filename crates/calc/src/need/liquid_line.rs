//! What the liquid line asks for: head pressure enough that lift and friction leave no gas before the metering device.
//!
//! The same drop is more kelvin of saturation the lower the pressure, so that subcooling that does at the known point may not in the cold.

use uom::si::f64::{Length, MassRate, Pressure, TemperatureInterval};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::temperature_interval::kelvin as kelvin_interval;

use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::input::Input;
use crate::liquid_line::{LineError, LiquidLine, usual_roughness, usual_viscosity};
use crate::root::try_bracketed;
use crate::system::circuit::{Circuit, Running};
use crate::system::fluid;
use crate::system::line::Line;

/// Condensing temperature span that the need is looked for below the known point, K.
const LOWER_END: f64 = 1.0;

/// How a liquid line runs.
#[derive(Clone, Copy, Debug)]
pub(super) struct Run {
    length: Length,
    lift: Length,
    inner_diameter: Length,
}

impl Run {
    /// The run that an input tells of; it takes length and diameter.
    pub(super) fn of(input: &Input) -> Option<Self> {
        Some(Self {
            length: input.liquid_length?,
            lift: input.liquid_lift.value,
            inner_diameter: input.liquid_diameter?,
        })
    }
}

/// What a liquid line comes to.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum LineNeed {
    /// The head pressure that it takes.
    Pressure(Explained<Pressure>),
    /// The subcooling does at any head pressure that the system runs at.
    Never,
    /// Gas reaches the device at the known point already.
    FlashesAtKnownPoint,
}

fn line_of(run: &Run, running: &Running) -> LiquidLine {
    LiquidLine {
        inlet_pressure: fluid::pressure(running.head),
        inlet_temperature: fluid::temperature(running.liquid),
        mass_flow: MassRate::new::<kilogram_per_second>(running.flow),
        inner_diameter: run.inner_diameter,
        equivalent_length: run.length,
        lift: run.lift,
        roughness: Given::assumed(usual_roughness()),
        viscosity: Given::assumed(usual_viscosity()),
        parts: Vec::new(),
        heat: None,
    }
}

/// Head pressure that keeps gas out of a line.
///
/// # Errors
/// Those of the line: it takes more pressure than there is, or the refrigerant has no such state.
pub(super) fn liquid_line_need(
    input: &Input,
    run: &Run,
    circuit: &Circuit,
    line: &Line,
) -> Result<LineNeed, LineError> {
    let spare = |condensing: f64| -> Result<f64, LineError> {
        let running = line.at(condensing);
        let subcooling = running.bubble - running.liquid;
        let needed = line_of(run, &running)
            .subcooling_needed(&input.refrigerant, TemperatureInterval::default());
        match needed {
            Ok(needed) => Ok(subcooling - needed.subcooling.get::<kelvin_interval>()),
            // So much subcooling that it lies past the range asks for more than there is.
            Err(LineError::NotReached { .. }) => Ok(-subcooling),
            Err(error) => Err(error),
        }
    };
    let known = circuit.known.condensing;
    let low = (line.trip + LOWER_END).min(known);
    if spare(known)? < 0.0 {
        return Ok(LineNeed::FlashesAtKnownPoint);
    }
    if spare(low)? >= 0.0 {
        return Ok(LineNeed::Never);
    }
    let condensing = try_bracketed(low, known, spare)?;
    let pressure = input
        .refrigerant
        .dew_pressure(fluid::temperature(condensing))
        .map_err(LineError::from)?;
    let working = Working::new(Rule::LiquidLineNeed)
        .with("L", Quantity::Elevation(run.length))
        .with("H", Quantity::Elevation(run.lift))
        .with(
            "ΔT_sub",
            Quantity::Difference(TemperatureInterval::new::<kelvin_interval>(
                circuit.known.subcooling,
            )),
        );
    Ok(LineNeed::Pressure(Explained::new(pressure, working)))
}
