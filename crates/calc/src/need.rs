//! The pressure need: the lowest head pressure that a system can live with, and which part sets it.

use uom::si::f64::{Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::{Error, Refrigerant};

use crate::cycle::{self, Suction};
use crate::explain::{Explained, Quantity, Rule, Working};
use crate::input::{Input, Metering};
use crate::root::bracketed;

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

/// Share of the pressure difference from condenser to evaporator at the known point that distributor, filter and liquid line
/// take before the metering device. Common practice, no published source.
const OTHER_DROPS: f64 = 0.1;

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

/// The need of a system whose known point lies at head pressure `design`.
///
/// # Errors
/// Those of the refrigerant outside its range.
pub(crate) fn pressure_need(
    input: &Input,
    suction: &Suction,
    design: Pressure,
) -> Result<PressureNeed, Error> {
    let refrigerant = &input.refrigerant;
    let metering = metering_need(refrigerant, input, suction, design)?;
    let compressor = compressor_need(refrigerant, input)?;
    let working = Working::new(Rule::GoverningNeed)
        .with("p_valve", Quantity::Pressure(metering.value))
        .with("p_compressor", Quantity::Pressure(compressor.value));
    let governing = if metering.value >= compressor.value {
        NeedPart::MeteringDevice
    } else {
        NeedPart::Compressor
    };
    let pressure = metering.value.max(compressor.value);
    Ok(PressureNeed {
        condensing: refrigerant.dew_at_pressure(pressure)?.temperature,
        parts: vec![
            (NeedPart::MeteringDevice, metering),
            (NeedPart::Compressor, compressor),
        ],
        governing,
        pressure: Explained::new(pressure, working),
    })
}

/// Head pressure at which the fully open device just passes what the evaporator takes.
///
/// Colder liquid helps twice: each kilogram carries more, and it is denser.
fn metering_need(
    refrigerant: &Refrigerant,
    input: &Input,
    suction: &Suction,
    design: Pressure,
) -> Result<Explained<Pressure>, Error> {
    let reserve = flow_reserve(input.metering.value);
    let evaporating = suction.pressure.get::<pascal>();
    let drops = OTHER_DROPS * (design.get::<pascal>() - evaporating);
    let design_drop = design.get::<pascal>() - evaporating - drops;
    let at_design = cycle::liquid(refrigerant, design)?;
    let design_gain = suction.state.enthalpy - at_design.enthalpy;

    let mut failure = None;
    let surplus = |head: f64| {
        let liquid = match cycle::liquid(refrigerant, Pressure::new::<pascal>(head)) {
            Ok(liquid) => liquid,
            Err(error) => {
                failure = Some(error);
                return 0.0;
            }
        };
        let drop = (head - evaporating - drops).max(0.0) / design_drop;
        let passed = reserve * ((liquid.density / at_design.density).value * drop).sqrt();
        let taken = (design_gain / (suction.state.enthalpy - liquid.enthalpy)).value;
        passed - taken
    };
    let need = bracketed(evaporating + drops, design.get::<pascal>(), surplus);
    if let Some(error) = failure {
        return Err(error);
    }
    let pressure = Pressure::new::<pascal>(need);
    let working = Working::new(Rule::MeteringNeed)
        .with("r", Quantity::Ratio(reserve))
        .with(
            "Δp₀",
            Quantity::PressureDifference(Pressure::new::<pascal>(design_drop)),
        )
        .with(
            "Δp",
            Quantity::PressureDifference(
                pressure - suction.pressure - Pressure::new::<pascal>(drops),
            ),
        )
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
