//! What can be said about a technician's own controllers, whatever the language.

use uom::si::f64::Pressure;
use winterset_calc::own_controller::{Finding, MotorOutput, Safety, Setting};
use winterset_profile::{ControllerField, ControllerProblem, Scale};

use crate::language::FieldWords;
use crate::units::Units;

/// The labels round a technician's own controllers, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct ControllerLabels {
    pub own: &'static str,
    pub own_note: &'static str,
    pub none_yet: &'static str,
    pub add: &'static str,
    pub unnamed: &'static str,
    pub name: &'static str,
    pub output: &'static str,
    pub output_help: &'static str,
    pub output_unknown: &'static str,
    pub outputs: &'static str,
    pub pressure_input: &'static str,
    pub temperature_input: &'static str,
    pub settings: &'static str,
    pub supply: &'static str,
    pub limits_note: &'static str,
    pub count: fn(usize) -> String,
    pub wrong: fn(usize) -> String,
    pub remove: &'static str,
    pub remove_question: fn(&str) -> String,
    pub gone: &'static str,
    /// The head of the part on a plan.
    pub on_yours: &'static str,
    pub which: &'static str,
    pub none_chosen: &'static str,
    pub choose_note: &'static str,
    pub to_settings: &'static str,
    pub to_limits: &'static str,
    /// Some of the limits cannot be read.
    pub limits_wrong: fn(usize) -> String,
}

/// Everything that is said about a technician's own controllers in one language.
pub trait ControllerWords: Sync {
    /// The labels.
    fn labels(&self) -> &'static ControllerLabels;
    /// The words round a limit.
    fn field(&self, field: ControllerField) -> FieldWords;
    /// A kind of motor output.
    fn output(&self, output: MotorOutput) -> &'static str;
    /// What is wrong at a limit, and what would be right. `scale` is the unit that stands beside it.
    fn problem(&self, problem: &ControllerProblem, scale: Scale, atmosphere: Pressure) -> String;
    /// A setting.
    fn setting(&self, setting: Setting) -> &'static str;
    /// How a setting stands to a controller, and what comes of it. `atmosphere` is what gauge pressure stands on.
    fn finding(&self, finding: &Finding, units: Units, atmosphere: Pressure) -> String;
    /// Whether the system may run so.
    fn safety(&self, safety: Safety) -> &'static str;
    /// Whether the system may run with all the findings, in a sentence.
    fn whole(&self, safety: Safety) -> &'static str;
}
