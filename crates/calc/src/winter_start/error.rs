//! What can be wrong with a question about a winter start, and what would be right.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::Error;

use crate::motor::MotorError;

/// What is wrong with a question about a winter start.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum StartError {
    /// An input outside its range; values in the SI unit named with the input.
    #[error("{input:?} {value} is outside {low} to {high}")]
    OutOfRange {
        /// Which input.
        input: StartInput,
        /// As given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The switch would close below the pressure at which it opens.
    #[error("cut-in {cut_in:?} is below cut-out {cut_out:?}")]
    CutInBelowCutOut {
        /// Pressure at which it closes.
        cut_in: Pressure,
        /// Pressure at which it opens.
        cut_out: Pressure,
    },
    /// Two temperatures that must lie apart, the first above the second.
    #[error("{above:?} must be more than {by} K above {below:?} at {than:?}")]
    NotAbove {
        /// The one that must be higher.
        above: StartInput,
        /// The one that must be lower.
        below: StartInput,
        /// The lower one as given.
        than: ThermodynamicTemperature,
        /// How far they must lie apart, K.
        by: f64,
    },
    /// There is nothing for the refrigerant to be in.
    #[error("no part given")]
    NoParts,
    /// The parts together cannot hold the charge, not even full of liquid.
    #[error("the charge fills every part with liquid; at most {most} kg fit")]
    Overfilled {
        /// What fits, kg.
        most: f64,
    },
    /// The motor was asked for something that it cannot answer.
    #[error(transparent)]
    Motor(#[from] MotorError),
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

/// An input of the functions about a winter start.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StartInput {
    /// Outdoor temperature, K.
    Outdoor,
    /// Temperature of the room that is cooled, K.
    Room,
    /// Evaporating temperature at the known point, K.
    Evaporating,
    /// Condensing temperature at the known point, K.
    Condensing,
    /// Temperature of receiver and condenser at the start, K.
    LiquidAtStart,
    /// Cooling capacity at the known point, W.
    Cooling,
    /// Inside volume of the low side, m³.
    LowSideVolume,
    /// Refrigerant in the evaporator of the running system, kg.
    EvaporatorCharge,
    /// Share of it that is there at the start.
    ChargeAtStart,
    /// Heat capacity of condenser, receiver and what is in them, J/K.
    HeatCapacity,
    /// Mass of metal or of liquid, kg.
    Mass,
    /// Conductance from condenser and receiver to the air outside, W/K.
    CondenserConductance,
    /// Heat from a receiver heater, W.
    ReceiverHeat,
    /// Suction pressure at the start, Pa.
    SuctionAtStart,
    /// Pressure at which the low-pressure switch opens, Pa.
    CutOut,
    /// Pressure at which it closes, Pa.
    CutIn,
    /// Time that is looked at after the start, s.
    Horizon,
    /// Volume of a part, m³.
    PartVolume,
    /// Temperature of a part, K.
    PartTemperature,
    /// Refrigerant in a part, kg.
    PartCharge,
    /// Time that the system stands, s.
    StandingTime,
    /// Conductance from the coldest part to its surroundings, W/K.
    PartConductance,
    /// Surface of the compressor's shell, m².
    ShellArea,
    /// Wind speed, m/s.
    WindSpeed,
    /// Conductance of the sump to its surroundings, W/K.
    SumpConductance,
    /// Sump over its surroundings, K.
    SumpRise,
    /// Wind pressure over that of still air brought to rest.
    WindCoefficient,
    /// Density of the air, kg/m³.
    AirDensity,
    /// Density of the air over that of the motor's nameplate.
    DensityRatio,
    /// Pressure drop of the coil at full airflow, Pa.
    CoilDrop,
    /// Speed of a fan that wind turns over full speed.
    TurnShare,
    /// Flux of a direct-current hold over that at rated voltage.
    HoldFlux,
}

pub(super) fn within(
    input: StartInput,
    value: f64,
    (low, high): (f64, f64),
) -> Result<f64, StartError> {
    if (low..=high).contains(&value) {
        return Ok(value);
    }
    Err(StartError::OutOfRange {
        input,
        value,
        low,
        high,
    })
}

pub(super) fn temperature(
    input: StartInput,
    value: ThermodynamicTemperature,
) -> Result<f64, StartError> {
    within(input, value.get::<kelvin>(), (173.15, 400.0))
}

/// The first temperature, which must be above the second by some kelvins.
pub(super) fn above(
    (above, value): (StartInput, ThermodynamicTemperature),
    (below, than): (StartInput, ThermodynamicTemperature),
    by: f64,
) -> Result<(), StartError> {
    if value.get::<kelvin>() > than.get::<kelvin>() + by {
        return Ok(());
    }
    Err(StartError::NotAbove {
        above,
        below,
        than,
        by,
    })
}
