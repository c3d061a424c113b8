//! What is said of each number and each question beyond its reason: what it is, how to find it, what is typical.

/// The labels round help, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct HelpLabels {
    pub what: &'static str,
    pub measure: &'static str,
    pub typical: &'static str,
    /// Over the help on what a rung of the ladder answers.
    pub on_a_rung: &'static str,
    /// Over the help on a question.
    pub how_to_find: &'static str,
    /// Where an answer is read or measured.
    pub find: &'static str,
    /// What a blank is taken to be.
    pub blank: &'static str,
    /// The same, where a blank is taken to be something.
    pub blank_is: fn(&str) -> String,
    /// Where a blank is worked out from the other answers.
    pub blank_worked_out: &'static str,
    /// Where a blank is left out of account.
    pub blank_left_out: &'static str,
    /// Where no plan can be made without the answer.
    pub blank_is_not: &'static str,
}

/// What a value is, how it is measured, and what is typical: each a sentence or two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HelpWords {
    /// What it is; empty where the reason beside the value says it.
    pub what: &'static str,
    /// How it is measured on a system that stands there.
    pub measure: &'static str,
    /// What is typical.
    pub typical: &'static str,
}

/// How an answer is found: each a sentence or two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FindWords {
    /// Where it is read or how it is measured.
    pub find: &'static str,
    /// What is typical.
    pub typical: &'static str,
}

/// A value that a rung of the cold ladder answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RungValue {
    /// Head pressure.
    HeadPressure,
    /// Temperature at the sensor on the coil.
    Coil,
    /// Condensing temperature over outdoor temperature.
    OverAmbient,
    /// What the controller gives.
    Output,
    /// Voltage at the motor.
    MotorVolts,
    /// Speed of the motor.
    MotorSpeed,
    /// Share of time that switched fans run.
    FanOn,
    /// Share of full fan speed.
    FanSpeed,
    /// Head pressure while a fan is switched.
    Swing,
    /// Starts of a switched fan.
    Starts,
    /// Share of the condenser full of liquid.
    Flooded,
    /// Evaporating temperature.
    Evaporating,
    /// Superheat.
    Superheat,
    /// Cooling capacity.
    Cooling,
}

impl RungValue {
    /// Every value, in the order in which a rung answers.
    pub const ALL: [RungValue; 14] = [
        RungValue::HeadPressure,
        RungValue::Coil,
        RungValue::OverAmbient,
        RungValue::Output,
        RungValue::MotorVolts,
        RungValue::MotorSpeed,
        RungValue::FanOn,
        RungValue::FanSpeed,
        RungValue::Swing,
        RungValue::Starts,
        RungValue::Flooded,
        RungValue::Evaporating,
        RungValue::Superheat,
        RungValue::Cooling,
    ];
}
