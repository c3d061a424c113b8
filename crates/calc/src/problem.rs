//! What can be wrong with an input, and what would be right.

use uom::si::f64::{AngularVelocity, TemperatureInterval, ThermodynamicTemperature, VolumeRate};

use crate::explain::Quantity;
use crate::field::Field;

/// What is wrong with a value, and what would be right.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Problem {
    /// Outside the limits that the models hold for.
    #[error("outside {low:?} to {high:?}")]
    OutOfRange {
        /// Smallest value allowed.
        low: Quantity,
        /// Largest value allowed.
        high: Quantity,
    },
    /// The condensing temperature that follows is too close to the critical temperature or above it.
    #[error("condensing at {condensing:?} is above {highest:?}")]
    AboveCritical {
        /// The condensing temperature that would follow.
        condensing: ThermodynamicTemperature,
        /// The highest that this refrigerant condenses at, with a margin.
        highest: ThermodynamicTemperature,
    },
    /// It is so hot outdoors that even the full fan condenses above what the refrigerant or the compressor allows.
    #[error("condensing above {highest:?}")]
    AboveEnvelope {
        /// The highest condensing temperature of this system.
        highest: ThermodynamicTemperature,
    },
    /// The compressor's highest condensing temperature leaves no room above what the system needs.
    #[error("highest condensing temperature below {lowest:?}")]
    HighestBelowNeed {
        /// The lowest that would do.
        lowest: ThermodynamicTemperature,
    },
    /// One stage of compression does not lift from the evaporating to the condensing temperature.
    #[error("more than one stage of compression lifts")]
    LiftTooHigh,
    /// The liquid would leave the condenser colder than the air: condensing temperature is meant at dew, and a blend glides below it.
    #[error("condensing temperature over ambient below {lowest:?}")]
    OverAmbientBelowGlide {
        /// The smallest over-ambient temperature that would do.
        lowest: TemperatureInterval,
    },
    /// The liquid would leave the condenser colder than the air allows.
    #[error("subcooling above {highest:?}")]
    ColderThanAir {
        /// The most that would do.
        highest: TemperatureInterval,
    },
    /// The liquid line takes more pressure than the system has.
    #[error("the liquid line is too thin, too long or too high")]
    LineTooThin,
    /// The discharge would be hotter than the refrigerant's equations reach.
    #[error("the discharge would be hotter than anything known of the refrigerant")]
    DischargeTooHot,
    /// The compressor's data sheet gives no flow at the known point.
    #[error("the data sheet gives no flow at the known point")]
    SheetWithoutFlow,
    /// The return air does not lie above the suction vapour.
    #[error("return air below {lowest:?}")]
    ReturnAirTooCold {
        /// The coldest that would do.
        lowest: ThermodynamicTemperature,
    },
    /// The evaporating temperature does not lie below the condensing temperature by enough.
    #[error("evaporating above {highest:?}")]
    EvaporatingAboveCondensing {
        /// The highest that would do.
        highest: ThermodynamicTemperature,
    },
    /// The air would leave hotter than the refrigerant condenses.
    #[error("airflow below {lowest:?}")]
    TooLittleAir {
        /// The smallest airflow that could carry the heat.
        lowest: VolumeRate,
    },
    /// A nameplate speed that no induction motor reaches at this frequency.
    #[error("no synchronous speed within a third above")]
    NoSynchronousSpeed {
        /// The synchronous speed just above it.
        synchronous: AngularVelocity,
    },
    /// The refrigerant has no state there.
    #[error("outside the range of the refrigerant: {0}")]
    Refrigerant(winterset_refrigerant::Error),
}

/// A problem at a field.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{}: {problem}", .field.key())]
pub struct InputError {
    /// The field that would have to change.
    pub field: Field,
    /// What is wrong with it.
    pub problem: Problem,
}
