//! The pressure need: the lowest head pressure that a system can live with, and which part sets it.

mod evaporator;
mod liquid_line;

use uom::si::f64::{MassRate, Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::pressure::pascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::{Error, Refrigerant};

use crate::explain::{Explained, Quantity, Rule, Working};
use crate::field::Field;
use crate::input::{Defrost, Input, Metering};
use crate::part_load::{Extras, HeatReclaim, HotGasDefrost, NeedReason, PartLoadError};
use crate::problem::{InputError, Problem};
use crate::system::circuit::Circuit;
use crate::system::fluid;
use crate::system::line::{Line, Opening};

pub use evaporator::IceLimit;
use evaporator::evaporator_need;
pub(crate) use evaporator::ice_limit;
use liquid_line::{LineNeed, Run, liquid_line_need};

/// A part of the system that asks for head pressure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NeedPart {
    /// The metering device starves below it.
    MeteringDevice,
    /// The compressor's envelope ends there.
    Compressor,
    /// Gas reaches the metering device below it.
    LiquidLine,
    /// The coil ices below it.
    Evaporator,
    /// Hot gas does not melt the ice below it.
    HotGasDefrost,
    /// The heat is not warm enough for its user below it.
    HeatReclaim,
}

impl NeedPart {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            NeedPart::MeteringDevice => "metering_device",
            NeedPart::Compressor => "compressor",
            NeedPart::LiquidLine => "liquid_line",
            NeedPart::Evaporator => "evaporator",
            NeedPart::HotGasDefrost => "hot_gas_defrost",
            NeedPart::HeatReclaim => "heat_reclaim",
        }
    }

    /// The symbol in [`Rule::GoverningNeed`].
    fn symbol(self) -> &'static str {
        match self {
            NeedPart::MeteringDevice => "p_valve",
            NeedPart::Compressor => "p_compressor",
            NeedPart::LiquidLine => "p_line",
            NeedPart::Evaporator => "p_evaporator",
            NeedPart::HotGasDefrost => "p_defrost",
            NeedPart::HeatReclaim => "p_reclaim",
        }
    }
}

/// What each part asks for, and what governs.
#[derive(Clone, Debug)]
pub struct PressureNeed {
    /// What each part asks for.
    pub parts: Vec<(NeedPart, Explained<Pressure>)>,
    /// The part that asks for most.
    pub governing: NeedPart,
    /// The need: the highest of the parts.
    pub pressure: Explained<Pressure>,
    /// The need as a condensing temperature (dew).
    pub condensing: ThermodynamicTemperature,
    /// What ice has to do with it.
    pub ice: IceLimit,
    /// Whether gas reaches the metering device at the known point already, so that no head pressure in the cold mends it.
    pub flashes: bool,
}

/// Least condensing over evaporating temperature of a compressor whose maker's limit is not known, K. Common practice, no
/// published source.
const COMPRESSOR_LIFT: f64 = 15.0;

/// Flow that the fully open device can pass over the flow it passes at the known point; an orifice cannot open. Common practice, no
/// published source.
pub fn flow_reserve(metering: Metering) -> f64 {
    match metering {
        Metering::TxvConventional => 1.25,
        Metering::TxvBalanced => 1.6,
        Metering::ElectronicValve => 2.5,
        Metering::FixedOrifice => 1.0,
    }
}

/// Flow that is controlled for over the flow that is put up with. A valve is expected to control; an orifice feeds less on every day that is
/// cooler than the known point, and is taken to do until two sevenths are missing, which lies near the 50 to 60 °F outdoors below which
/// uncontrolled systems are known to run into trouble. Common practice, no published source.
pub fn feed_shortfall(metering: Metering) -> f64 {
    match metering {
        Metering::FixedOrifice => 1.4,
        _ => 1.0,
    }
}

/// How a metering device bears on the operating line.
pub(crate) fn opening(metering: Metering) -> Opening {
    Opening {
        reserve: flow_reserve(metering),
        shortfall: feed_shortfall(metering),
    }
}

/// The need of a system on its operating line.
///
/// # Errors
/// Those of the refrigerant at the evaporating temperature, of a compressor's limit, or of a line that takes more pressure than there is, at
/// the field that has to change.
pub(crate) fn pressure_need(
    input: &Input,
    ice: IceLimit,
    circuit: &Circuit,
    line: &Line,
) -> Result<PressureNeed, InputError> {
    let at = |field| {
        move |error| InputError {
            field,
            problem: Problem::Refrigerant(error),
        }
    };
    let compressor = match input.compressor_lowest {
        Some(_) => Field::CompressorLowest,
        None => Field::Evaporating,
    };
    let refrigerant = &input.refrigerant;
    let mut parts = vec![
        (
            NeedPart::MeteringDevice,
            metering_need(input, circuit, line).map_err(at(Field::Evaporating))?,
        ),
        (
            NeedPart::Compressor,
            compressor_need(refrigerant, input).map_err(at(compressor))?,
        ),
    ];
    let mut flashes = false;
    if let Some(run) = Run::of(input) {
        let found = liquid_line_need(input, &run, circuit, line).map_err(|_| InputError {
            field: Field::LiquidDiameter,
            problem: Problem::LineTooThin,
        })?;
        match found {
            LineNeed::Pressure(pressure) => parts.push((NeedPart::LiquidLine, pressure)),
            LineNeed::FlashesAtKnownPoint => flashes = true,
            LineNeed::Never => {}
        }
    }
    if let Some(pressure) = evaporator_need(input, ice, line).map_err(at(Field::Evaporating))? {
        parts.push((NeedPart::Evaporator, pressure));
    }
    parts.extend(extra_needs(input)?);
    let mut working = Working::new(Rule::GoverningNeed);
    let (mut governing, mut pressure) = (NeedPart::MeteringDevice, Pressure::default());
    for (part, asked) in &parts {
        working = working.with(part.symbol(), Quantity::Pressure(asked.value));
        // Of equals, the first governs.
        if asked.value > pressure {
            (governing, pressure) = (*part, asked.value);
        }
    }
    Ok(PressureNeed {
        condensing: refrigerant
            .dew_temperature(pressure)
            .map_err(at(compressor))?,
        parts,
        governing,
        pressure: Explained::new(pressure, working),
        ice,
        flashes,
    })
}

/// What defrost and heat reclaim ask for.
fn extra_needs(input: &Input) -> Result<Vec<(NeedPart, Explained<Pressure>)>, InputError> {
    let extras = Extras {
        steps: None,
        defrost: (input.defrost.value == Defrost::HotGas).then(HotGasDefrost::usual),
        reclaim: input
            .heat_reclaim
            .map(|wanted| HeatReclaim { wanted, share: 0.0 }),
    };
    let demands = extras
        .demands(&input.refrigerant)
        .map_err(|error| InputError {
            field: match input.heat_reclaim {
                Some(_) => Field::HeatReclaim,
                None => Field::Defrost,
            },
            problem: match error {
                PartLoadError::Refrigerant(error) => Problem::Refrigerant(error),
                PartLoadError::OutOfRange { .. } => Problem::DischargeTooHot,
            },
        })?;
    Ok(demands
        .needs
        .iter()
        .map(|need| {
            let (part, rule) = match need.reason {
                NeedReason::HotGasDefrost => (NeedPart::HotGasDefrost, Rule::DefrostNeed),
                NeedReason::HeatReclaim => (NeedPart::HeatReclaim, Rule::ReclaimNeed),
            };
            let working = Working::new(rule).with("T_c", Quantity::Temperature(need.condensing));
            (part, Explained::new(need.pressure, working))
        })
        .collect())
}

/// Head pressure at which the fully open device just passes what the compressor draws at the superheat it controls for.
///
/// Colder liquid helps twice: each kilogram carries more, and it is denser.
fn metering_need(
    input: &Input,
    circuit: &Circuit,
    line: &Line,
) -> Result<Explained<Pressure>, Error> {
    let pressure = input
        .refrigerant
        .dew_pressure(fluid::temperature(line.need))?;
    let running = line.at(line.need);
    let drop = circuit.device.drop_at(
        running.flow,
        pressure.get::<pascal>() - running.suction_pressure,
    );
    let difference = |value| Quantity::PressureDifference(Pressure::new::<pascal>(value));
    let working = Working::new(Rule::MeteringNeed)
        .with(
            "r",
            Quantity::Ratio(
                flow_reserve(input.metering.value) * feed_shortfall(input.metering.value),
            ),
        )
        .with(
            "m₀",
            Quantity::MassFlow(MassRate::new::<kilogram_per_second>(circuit.at_known.flow)),
        )
        .with("Δp₀", difference(circuit.device.known_drop))
        .with("Δp", difference(drop))
        .given("T_e", input.evaporating, Quantity::Temperature);
    Ok(Explained::new(pressure, working))
}

fn compressor_need(refrigerant: &Refrigerant, input: &Input) -> Result<Explained<Pressure>, Error> {
    let (lowest, working) = match input.compressor_lowest {
        Some(lowest) => (
            lowest,
            Working::new(Rule::CompressorEntered).given(
                "T_c,min",
                crate::Given::entered(lowest),
                Quantity::Temperature,
            ),
        ),
        None => (
            input.evaporating.value + TemperatureInterval::new::<kelvin_interval>(COMPRESSOR_LIFT),
            Working::new(Rule::CompressorNeed).given(
                "T_e",
                input.evaporating,
                Quantity::Temperature,
            ),
        ),
    };
    Ok(Explained::new(
        refrigerant.dew_at_temperature(lowest)?.pressure,
        working,
    ))
}
