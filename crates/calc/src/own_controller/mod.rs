//! The limits of a controller that a technician keeps at hand, and whether a settings sheet fits between them.
//!
//! [`OwnController::check`] holds what is [`Wanted`] against the limits, setting by setting; [`OwnController::within`] moves what
//! can be set to the nearest value that the controller takes, and says whether that still is safe.
//!
//! Source: what moving a setting does is common practice, no published source; the plan, worked out again, says how much. The
//! currents are those of [`Loading`](crate::motor::Loading).

mod check;
mod finding;
mod limits;
mod wanted;

use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Pressure, TemperatureInterval, ThermodynamicTemperature,
    Time,
};

use crate::input::{MotorKind, Sensing};

pub use check::Within;
pub use finding::{Effect, Finding, Outside, Safety, Standing};
pub use limits::{LimitError, Limits, NotOrdered};
pub use wanted::{SensedSettings, Wanted};

/// What a controller can be asked to do, setting by setting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Setting {
    /// What the controller senses.
    Input,
    /// Sensed value at which the fan reaches full speed.
    FullSpeedPoint,
    /// Span between minimum and full output.
    ThrottlingRange,
    /// Lowest output while the fan runs.
    MinimumOutput,
    /// Time at full output at a start from rest.
    StartBoost,
    /// How the motor is driven.
    MotorOutput,
    /// Supply voltage.
    SupplyVoltage,
    /// Rated current against the motors on it.
    RatedCurrent,
}

impl Setting {
    /// A stable name.
    pub fn key(self) -> &'static str {
        match self {
            Setting::Input => "input",
            Setting::FullSpeedPoint => "full_speed_point",
            Setting::ThrottlingRange => "throttling_range",
            Setting::MinimumOutput => "minimum_output",
            Setting::StartBoost => "start_boost",
            Setting::MotorOutput => "motor_output",
            Setting::SupplyVoltage => "supply_voltage",
            Setting::RatedCurrent => "rated_current",
        }
    }
}

/// How a controller drives a motor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MotorOutput {
    /// A phase-cut supply to the motor.
    PhaseCut,
    /// A control voltage to the motor or its drive.
    ZeroToTenVolts,
    /// A pulse-width signal to the motor.
    PulseWidth,
    /// A contact that switches the motor.
    Contact,
}

impl MotorOutput {
    /// Every kind.
    pub const ALL: [Self; 4] = [
        MotorOutput::PhaseCut,
        MotorOutput::ZeroToTenVolts,
        MotorOutput::PulseWidth,
        MotorOutput::Contact,
    ];

    /// The stable name that records carry.
    pub fn key(self) -> &'static str {
        match self {
            MotorOutput::PhaseCut => "phase-cut",
            MotorOutput::ZeroToTenVolts => "zero-to-ten-volts",
            MotorOutput::PulseWidth => "pulse-width",
            MotorOutput::Contact => "contact",
        }
    }

    /// The kind with this stable name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|output| output.key() == key)
    }

    /// The kinds that set the speed of a motor; any one of them does. A three-phase motor takes its signal through a frequency
    /// drive. Common practice, no published source.
    pub fn for_speed_of(motor: MotorKind) -> &'static [Self] {
        match motor {
            MotorKind::PermanentSplitCapacitor | MotorKind::ShadedPole => &[MotorOutput::PhaseCut],
            MotorKind::ElectronicallyCommutated => {
                &[MotorOutput::ZeroToTenVolts, MotorOutput::PulseWidth]
            }
            MotorKind::ThreePhase => &[MotorOutput::ZeroToTenVolts],
        }
    }
}

/// One kind of input that a controller has, with the limits of the settings that stand in its quantity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum InputLimits {
    /// A pressure transducer.
    Pressure {
        /// Full-speed point, absolute; a technician's gauge values are turned before.
        full_speed: Limits<Pressure>,
        /// Throttling range, a pressure difference.
        throttling: Limits<Pressure>,
    },
    /// A temperature sensor on the coil.
    Temperature {
        /// Full-speed point.
        full_speed: Limits<ThermodynamicTemperature>,
        /// Throttling range.
        throttling: Limits<TemperatureInterval>,
    },
}

impl InputLimits {
    /// What this input senses.
    pub fn sensing(&self) -> Sensing {
        match self {
            InputLimits::Pressure { .. } => Sensing::LiquidPressure,
            InputLimits::Temperature { .. } => Sensing::CoilTemperature,
        }
    }
}

/// The limits of a controller. `None` and empty lists are what the technician did not state: nothing is held against them.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OwnController {
    /// Inputs it has, at most one of a kind; of several alike the first counts.
    pub inputs: Vec<InputLimits>,
    /// Lowest and highest minimum output that can be set, as shares of full output.
    pub minimum_output: Option<Limits<f64>>,
    /// Shortest and longest start boost.
    pub start_boost: Option<Limits<Time>>,
    /// Kinds of motor output it has.
    pub outputs: Vec<MotorOutput>,
    /// Lowest and highest supply voltage, r.m.s.
    pub supply: Option<Limits<ElectricPotential>>,
    /// Rated current of all motors together.
    pub rated_current: Option<ElectricCurrent>,
}
