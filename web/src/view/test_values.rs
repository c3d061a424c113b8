//! The rungs of the ladder as values to test a controller by.

use winterset_calc::{Method, Plan, Quantity};
use winterset_words::Units;

use super::ladder::Sampled;
use super::sheet::Writer;
use super::words;

/// What is to be found at one outdoor temperature, as written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The outdoor temperature.
    pub outdoor: String,
    /// Output of the controller.
    pub output: String,
    /// Voltage at the motor.
    pub volts: String,
    /// Speed of the motor.
    pub speed: String,
    /// Head pressure.
    pub head: String,
}

/// The method that the settings sheet sets: the plan's own where it controls speed.
pub fn method(plan: &Plan) -> Method {
    let own = plan.verdict.method();
    if own.is_modulated() {
        own
    } else {
        Method::SpeedControl
    }
}

/// A row for each rung, warmest first.
pub fn rows(plan: &Plan, sampled: &Sampled, units: Units) -> Vec<Row> {
    let writer = Writer::new(plan, units);
    let show = |quantity| writer.show(quantity).to_string();
    let none = || words().paper().none.to_owned();
    let method = method(plan);
    sampled
        .rungs
        .iter()
        .map(|rung| {
            let point = rung.of(method);
            let output = point.output;
            Row {
                outdoor: writer.brief(point.outdoor),
                output: output.map_or_else(none, |found| show(Quantity::Ratio(found.fraction))),
                volts: output
                    .and_then(|found| found.voltage)
                    .map_or_else(none, |volts| show(Quantity::Voltage(volts))),
                speed: output.map_or_else(none, |found| show(Quantity::Speed(found.speed))),
                head: show(Quantity::Pressure(point.pressure)),
            }
        })
        .collect()
}
