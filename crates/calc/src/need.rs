//! The pressure need: the lowest head pressure that a system can live with, and which part sets it.

use uom::si::f64::{MassRate, Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::pressure::pascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::{Error, Refrigerant};

use crate::explain::{Explained, Quantity, Rule, Working};
use crate::input::{Input, Metering};
use crate::system::circuit::Circuit;
use crate::system::fluid;
use crate::system::line::{Line, Opening};

/// A part of the system that asks for head pressure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NeedPart {
    /// The metering device starves below it.
    MeteringDevice,
    /// The compressor's envelope ends there.
    Compressor,
}

impl NeedPart {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            NeedPart::MeteringDevice => "metering_device",
            NeedPart::Compressor => "compressor",
        }
    }

    /// The symbol in [`Rule::GoverningNeed`].
    fn symbol(self) -> &'static str {
        match self {
            NeedPart::MeteringDevice => "p_valve",
            NeedPart::Compressor => "p_compressor",
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
}

/// Least condensing over evaporating temperature of a compressor whose maker's limit is not known, K. Common practice, no
/// published source.
const COMPRESSOR_LIFT: f64 = 15.0;

/// Flow that the device can pass over the flow it must pass at the known point: fully open for a valve; for an orifice, which
/// cannot open, the shortfall of evaporator feed that is put up with. Common practice, no published source.
pub fn flow_reserve(metering: Metering) -> f64 {
    match metering {
        Metering::TxvConventional => 1.25,
        Metering::TxvBalanced => 1.6,
        Metering::ElectronicValve => 2.5,
        Metering::FixedOrifice => 1.2,
    }
}

/// How a metering device bears on the operating line: how far it opens, and the shortfall of an orifice, which does not.
pub(crate) fn opening(metering: Metering) -> Opening {
    let reserve = flow_reserve(metering);
    match metering {
        Metering::FixedOrifice => Opening {
            reserve: 1.0,
            shortfall: reserve,
        },
        _ => Opening {
            reserve,
            shortfall: 1.0,
        },
    }
}

/// The need of a system on its operating line.
///
/// # Errors
/// Those of the refrigerant outside its range.
pub(crate) fn pressure_need(
    input: &Input,
    circuit: &Circuit,
    line: &Line,
) -> Result<PressureNeed, Error> {
    let refrigerant = &input.refrigerant;
    let parts = vec![
        (
            NeedPart::MeteringDevice,
            metering_need(input, circuit, line)?,
        ),
        (NeedPart::Compressor, compressor_need(refrigerant, input)?),
    ];
    governed(refrigerant, parts)
}

/// The neediest part governs; of equals, the first.
fn governed(
    refrigerant: &Refrigerant,
    parts: Vec<(NeedPart, Explained<Pressure>)>,
) -> Result<PressureNeed, Error> {
    let mut working = Working::new(Rule::GoverningNeed);
    let (mut governing, mut pressure) = (NeedPart::MeteringDevice, Pressure::default());
    for (part, asked) in &parts {
        working = working.with(part.symbol(), Quantity::Pressure(asked.value));
        if asked.value > pressure {
            (governing, pressure) = (*part, asked.value);
        }
    }
    Ok(PressureNeed {
        condensing: refrigerant.dew_at_pressure(pressure)?.temperature,
        parts,
        governing,
        pressure: Explained::new(pressure, working),
    })
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
        .with("r", Quantity::Ratio(flow_reserve(input.metering.value)))
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
