//! What holding a wanted setting against a controller's limits shows.

use super::{MotorOutput, Setting};
use crate::explain::Quantity;
use crate::input::Sensing;
use crate::motor::{Loading, MotorError};

/// Whether the system may run so.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Safety {
    /// As wanted, or on the harmless side of it.
    Safe,
    /// May do; what the finding names has to be checked first.
    Check,
    /// Harms the fan, the compressor or the controller, or does not work at all.
    Unsafe,
}

impl Safety {
    /// A stable name.
    pub fn key(self) -> &'static str {
        match self {
            Safety::Safe => "safe",
            Safety::Check => "check",
            Safety::Unsafe => "unsafe",
        }
    }
}

/// What using the nearest value allowed, in place of the wanted one, does. Common practice, no published source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Effect {
    /// A higher minimum output moves more air in the cold: the hold limit is warmer than planned.
    HoldLimitRises,
    /// A lower minimum output turns the fan slower than its bearing or its torque allows.
    BelowLowestSpeed,
    /// A longer start boost costs a little head pressure at each start.
    LongerBoost,
    /// A shorter start boost may leave the fan standing.
    MayNotStart,
    /// The fan slows already at a higher head pressure: whether it still reaches full speed at the known point has to be checked.
    RunsHotter,
    /// The lower end of the throttling range lies below the pressure need. A full-speed point as much higher, where the
    /// controller takes it, makes up for a wider range.
    BelowNeed,
    /// A narrower throttling range may make the fan hunt.
    MayHunt,
    /// The supply is what it is: the controller may not be connected to it.
    CannotBeSet,
}

impl Effect {
    /// Every effect.
    pub const ALL: [Self; 8] = [
        Effect::HoldLimitRises,
        Effect::BelowLowestSpeed,
        Effect::LongerBoost,
        Effect::MayNotStart,
        Effect::RunsHotter,
        Effect::BelowNeed,
        Effect::MayHunt,
        Effect::CannotBeSet,
    ];

    /// A stable name.
    pub fn key(self) -> &'static str {
        match self {
            Effect::HoldLimitRises => "hold_limit_rises",
            Effect::BelowLowestSpeed => "below_lowest_speed",
            Effect::LongerBoost => "longer_boost",
            Effect::MayNotStart => "may_not_start",
            Effect::RunsHotter => "runs_hotter",
            Effect::BelowNeed => "below_need",
            Effect::MayHunt => "may_hunt",
            Effect::CannotBeSet => "cannot_be_set",
        }
    }

    /// Whether the system may run so.
    pub fn safety(self) -> Safety {
        match self {
            Effect::HoldLimitRises | Effect::RunsHotter | Effect::MayHunt => Safety::Check,
            Effect::LongerBoost => Safety::Safe,
            Effect::BelowLowestSpeed
            | Effect::MayNotStart
            | Effect::BelowNeed
            | Effect::CannotBeSet => Safety::Unsafe,
        }
    }
}

/// A wanted value outside the limits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outside {
    /// The wanted value.
    pub wanted: Quantity,
    /// The lowest value that the controller takes.
    pub low: Quantity,
    /// The highest value that the controller takes.
    pub high: Quantity,
    /// The nearest of them; `None` where the value is not the technician's to set.
    pub nearest: Option<Quantity>,
    /// What using that does.
    pub effect: Effect,
}

/// How a wanted setting stands to the controller.
#[derive(Clone, Debug, PartialEq)]
pub enum Standing {
    /// The controller takes it.
    Inside,
    /// The controller's limit is not known.
    NotStated,
    /// The controller does not take it.
    Outside(Outside),
    /// The wanted value is no number.
    NotANumber,
    /// The controller has no input that senses this.
    NoSuchInput {
        /// What was to be sensed.
        wanted: Sensing,
        /// What the controller senses.
        offered: Vec<Sensing>,
    },
    /// The controller has none of the outputs that would drive the motor.
    NoSuchOutput {
        /// Outputs that would do.
        wanted: Vec<MotorOutput>,
        /// Outputs that the controller has.
        offered: Vec<MotorOutput>,
    },
    /// The rated current carries the motors, but short of the reserve.
    ShortOfReserve(Loading),
    /// The rated current does not carry the motors.
    Overloaded(Loading),
    /// The currents cannot be added up.
    Currents(MotorError),
}

impl Standing {
    /// A stable name.
    pub fn key(&self) -> &'static str {
        match self {
            Standing::Inside => "inside",
            Standing::NotStated => "not_stated",
            Standing::Outside(_) => "outside",
            Standing::NotANumber => "not_a_number",
            Standing::NoSuchInput { .. } => "no_such_input",
            Standing::NoSuchOutput { .. } => "no_such_output",
            Standing::ShortOfReserve(_) => "short_of_reserve",
            Standing::Overloaded(_) => "overloaded",
            Standing::Currents(_) => "currents",
        }
    }
}

/// One setting against a controller.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// Which setting.
    pub setting: Setting,
    /// How it stands.
    pub standing: Standing,
}

impl Finding {
    /// Whether the system may run with the nearest value allowed.
    pub fn safety(&self) -> Safety {
        match &self.standing {
            Standing::Inside => Safety::Safe,
            Standing::NotStated | Standing::ShortOfReserve(_) => Safety::Check,
            Standing::Outside(outside) => outside.effect.safety(),
            Standing::NotANumber
            | Standing::NoSuchInput { .. }
            | Standing::NoSuchOutput { .. }
            | Standing::Overloaded(_)
            | Standing::Currents(_) => Safety::Unsafe,
        }
    }
}
