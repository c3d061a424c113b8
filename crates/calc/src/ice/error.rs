//! What can be wrong with a question about ice, and what would be right.

use uom::si::f64::{Power, ThermodynamicTemperature};
use winterset_refrigerant::Error;

/// What is wrong with a question about ice.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum IceError {
    /// An input outside its range; values in the SI unit named with the input.
    #[error("{input:?} {value} is outside {low} to {high}")]
    OutOfRange {
        /// Which input.
        input: IceInput,
        /// As given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The refrigerant is not colder than the air that it is to cool.
    #[error("refrigerant at {given:?}: it must be below the return air's {highest:?}")]
    NotColder {
        /// Temperature of the refrigerant.
        given: ThermodynamicTemperature,
        /// Dry bulb of the return air.
        highest: ThermodynamicTemperature,
    },
    /// No coil draws the capacity given from this air at this temperature of the refrigerant.
    #[error("{given:?} is above the {most:?} that this airflow can give up")]
    TooMuchCapacity {
        /// Capacity given.
        given: Power,
        /// What the largest coil of the model draws.
        most: Power,
    },
    /// The coil given is too large for the airflow for the model to march through.
    #[error("air-side conductance over heat capacity rate {given} is above {most}")]
    TooManyUnits {
        /// Number of transfer units on the air side.
        given: f64,
        /// Largest number allowed.
        most: f64,
    },
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

/// An input of the functions about ice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum IceInput {
    /// Conductance of the dry coil from air to refrigerant, W/K.
    Conductance,
    /// Share of the air side in the coil's resistance.
    AirShare,
    /// Airflow, m³/s.
    Airflow,
    /// Airflow as a share of the one that the coil is known at.
    AirflowShare,
    /// Cooling capacity, W.
    Capacity,
    /// Temperature of the refrigerant, K.
    RefrigerantTemperature,
    /// Share of vapour where the refrigerant enters the coil.
    InletQuality,
    /// Time that the compressor runs in a cycle, s.
    RunTime,
    /// Time that the compressor stands in a cycle, s.
    OffTime,
    /// Mass of ice, kg.
    IceMass,
    /// Temperature of the ice, K.
    IceTemperature,
    /// Growth of the ice, kg/s.
    Growth,
    /// Surface of the fins, m².
    FinArea,
    /// Clear gap between two fins, m.
    FinGap,
}

pub(super) fn within(
    input: IceInput,
    value: f64,
    (low, high): (f64, f64),
) -> Result<f64, IceError> {
    if (low..=high).contains(&value) {
        return Ok(value);
    }
    Err(IceError::OutOfRange {
        input,
        value,
        low,
        high,
    })
}
