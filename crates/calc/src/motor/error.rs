//! What can be wrong with what a motor is asked, and what would be right.

use uom::si::f64::{AngularVelocity, Frequency};

/// A value that a motor function takes; the unit is the one that limits in [`MotorError::OutOfRange`] are in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MotorValue {
    /// Density of the air over the nameplate's (1.2 kg/m³).
    DensityRatio,
    /// Share of rated voltage.
    VoltageShare,
    /// Line voltage, V.
    LineVoltage,
    /// Nameplate voltage, V.
    NameplateVoltage,
    /// Line frequency, Hz.
    LineFrequency,
    /// Nameplate frequency, Hz.
    NameplateFrequency,
    /// Output frequency of a drive, Hz.
    OutputFrequency,
    /// Lowest frequency that a drive keeps, Hz.
    LowestFrequency,
    /// Nameplate shaft power, W.
    ShaftPower,
    /// Speed, rad/s.
    Speed,
    /// Speed that an idle fan is driven backwards at, rad/s.
    WindmillSpeed,
    /// Moment of inertia, kg m².
    Inertia,
    /// Fan diameter, m.
    FanDiameter,
    /// Share of rated airflow.
    AirflowShare,
    /// Control voltage, V.
    SignalVoltage,
    /// Duty of a pulse-width signal, as a share.
    SignalDuty,
    /// Signal that starts the motor, as a share of its span.
    StartSignal,
    /// Signal that gives full speed, as a share of its span.
    FullSignal,
    /// Share of full speed where a signal starts the motor.
    StartShare,
    /// Friction of a turning bearing as a share of rated torque.
    RunningFriction,
    /// Friction of a bearing at rest as a share of rated torque.
    Breakaway,
    /// Outdoor temperature, K.
    Temperature,
    /// Full-load current of a motor, A.
    FullLoadCurrent,
    /// Rated current of a controller, A.
    ControllerRating,
    /// Number of motors.
    Motors,
}

/// What is wrong with what a motor is asked, and what would be right.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum MotorError {
    /// A value outside the limits that the models hold for, or no number.
    #[error("{what:?} of {given} is outside {low} to {high}")]
    OutOfRange {
        /// Which value.
        what: MotorValue,
        /// What was given, in the value's unit.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The signal is of another sort than the one that the motor's range is in.
    #[error("the motor takes the other sort of signal")]
    OtherSignal,
    /// The motor's torque at rest does not break the bearing loose against the wind.
    #[error("starts from {starts} of rated voltage upwards, not at {given}")]
    WillNotStart {
        /// Share of rated voltage given.
        given: f64,
        /// The lowest share that breaks the fan loose.
        starts: f64,
    },
    /// The fan starts but does not get up to the speed asked for.
    #[error("torque is spent at {stuck:?}, below the speed asked for")]
    NeverReaches {
        /// A speed at which no torque is left to speed up with.
        stuck: AngularVelocity,
    },
    /// A drive keeps its output at or above a lowest frequency.
    #[error("the drive does not go below {lowest:?}")]
    BelowLowestFrequency {
        /// The lowest frequency kept.
        lowest: Frequency,
    },
    /// The speed is above what the drive reaches without passing the nameplate frequency.
    #[error("the drive reaches {highest:?} at most")]
    AboveFullSpeed {
        /// The speed at nameplate frequency.
        highest: AngularVelocity,
    },
    /// The speed is below what the motor runs at; it is stopped there.
    #[error("the motor runs at {lowest:?} or stands")]
    BelowLowestSpeed {
        /// The lowest speed that it runs at.
        lowest: AngularVelocity,
    },
    /// The motor stalls on this supply.
    #[error("the motor stalls on this supply")]
    Stalls,
}

/// A value inside its limits; anything that is no number is outside.
pub(super) fn inside(
    what: MotorValue,
    given: f64,
    (low, high): (f64, f64),
) -> Result<f64, MotorError> {
    if (low..=high).contains(&given) {
        Ok(given)
    } else {
        Err(MotorError::OutOfRange {
            what,
            given,
            low,
            high,
        })
    }
}

/// Air from the top of a high mountain in summer to sea level in deep cold.
pub(super) fn density(given: f64) -> Result<f64, MotorError> {
    inside(MotorValue::DensityRatio, given, (0.4, 1.6))
}

/// A tenth above what a supply between its tolerances gives, on a motor for the next lower nominal voltage.
pub(super) fn voltage(given: f64) -> Result<f64, MotorError> {
    inside(MotorValue::VoltageShare, given, (0.0, 1.5))
}

/// Nameplate shaft power of a fan motor.
pub(super) fn shaft(given: uom::si::f64::Power) -> Result<uom::si::f64::Power, MotorError> {
    let watts = given.get::<uom::si::power::watt>();
    inside(MotorValue::ShaftPower, watts, (1.0, 50_000.0))?;
    Ok(given)
}
