//! What can be said on worksheets, whatever the language.

use uom::si::f64::Pressure;
use winterset_calc::SheetRule;
use winterset_calc::flooding::FloodingError;
use winterset_calc::liquid_line::LineError;
use winterset_calc::motor::MotorError;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::StartError;
use winterset_profile::{AmountProblem, Measure, Question, Scale, Sheet, Title};

use crate::help::FindWords;
use crate::language::{FieldWords, RuleWords};
use crate::units::Units;

/// The labels round worksheets, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct WorksheetLabels {
    pub worksheets: &'static str,
    pub list_note: &'static str,
    pub result: &'static str,
    pub touch_note: &'static str,
    pub left_out: &'static str,
    pub clear: &'static str,
    pub clear_question: &'static str,
    pub gone: &'static str,
    pub fix: &'static str,
    pub stalls: &'static str,
    pub stalls_reason: &'static str,
    pub above_line: &'static str,
    pub flash: &'static str,
    pub flash_reason: &'static str,
    pub liquid_reason: &'static str,
    pub not_superheated: &'static str,
    pub not_subcooled: &'static str,
    pub receiver_short: &'static str,
    pub receiver_short_reason: &'static str,
    pub inlet_subcooling: &'static str,
    pub held_pressure: &'static str,
    pub held_pressure_reason: &'static str,
    pub usual_range: fn(&str, &str) -> String,
    pub below_bearing: &'static str,
    pub below_start: &'static str,
    pub gauge_note: fn(&str) -> String,
    pub carry: &'static str,
    pub carry_note: &'static str,
    pub carry_to: &'static str,
    pub choose_system: &'static str,
    pub carry_same: &'static str,
    pub carry_differences: &'static str,
    pub from_worksheet: &'static str,
    /// The button; how many answers are taken goes in.
    pub carry_act: fn(usize) -> String,
}

/// The words in place of values about sensors and a winter start, and what tells values of one rule apart.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct StartLabels {
    pub open: &'static str,
    pub open_reason: &'static str,
    pub short: &'static str,
    pub short_reason: &'static str,
    pub signal_low: &'static str,
    pub signal_low_reason: &'static str,
    pub signal_high: &'static str,
    pub signal_high_reason: &'static str,
    pub e24: &'static str,
    pub e96: &'static str,
    pub e24_shows: &'static str,
    pub e96_shows: &'static str,
    pub closed: &'static str,
    pub closed_reason: &'static str,
    pub as_it_was: &'static str,
    pub as_it_was_reason: &'static str,
    pub missing: &'static str,
    pub missing_reason: &'static str,
    pub none_needed: &'static str,
    pub none_needed_reason: &'static str,
    pub longer: &'static str,
    pub longer_reason: &'static str,
    pub never: &'static str,
    pub never_reason: &'static str,

    /// A sensor's curve, what stands along it, and its marker.
    pub curve: &'static str,
    pub temperature: &'static str,
    pub pressure: &'static str,
    pub resistance: &'static str,
    pub signal: &'static str,
    pub curve_marker: &'static str,
    /// The two ends of a curve in a sentence, each with what is sensed and what the meter shows.
    pub curve_summary: fn((&str, &str), (&str, &str)) -> String,
}

/// Everything that is said on worksheets in one language.
pub trait WorksheetWords: Sync {
    /// The labels.
    fn labels(&self) -> &'static WorksheetLabels;
    /// The words about sensors and a winter start.
    fn start_labels(&self) -> &'static StartLabels;
    /// A worksheet: its name, and what it is for.
    fn sheet(&self, sheet: Sheet) -> RuleWords;
    /// What a section is about.
    fn title(&self, title: Title) -> &'static str;
    /// The words round a question.
    fn question(&self, question: Question) -> FieldWords;
    /// A choice at a question, by the key that is kept.
    fn choice(&self, question: Question, key: &str) -> &'static str;
    /// What a value measures.
    fn measure(&self, measure: Measure) -> &'static str;
    /// A unit by its name in words.
    fn unit(&self, scale: Scale) -> &'static str;
    /// The words for a rule.
    fn rule(&self, rule: SheetRule) -> RuleWords;
    /// How the value of a rule is measured, and what is typical.
    fn measured(&self, rule: SheetRule) -> FindWords;
    /// The equation of a rule, where words stand in it.
    fn equation(&self, rule: SheetRule) -> &'static str {
        rule.equation()
    }
    /// The source of a rule, where words stand in it beside a publication.
    fn source(&self, rule: SheetRule) -> &'static str {
        rule.source()
    }
    /// What is wrong with a typed amount, and what would be right. `scale` is the unit that stands beside it.
    fn amount_problem(&self, problem: &AmountProblem, scale: Scale, atmosphere: Pressure)
    -> String;
    /// What is wrong with what a motor is asked.
    fn motor_error(&self, error: &MotorError, units: Units) -> String;
    /// What is wrong with a liquid line.
    fn line_error(&self, error: &LineError, units: Units, atmosphere: Pressure) -> String;
    /// What is wrong with what a sensor is asked.
    fn sensor_error(&self, error: &SensorError) -> &'static str;
    /// What is wrong with a winter start.
    fn start_error(&self, error: &StartError, units: Units, atmosphere: Pressure) -> String;
    /// What is wrong with a flooded condenser.
    fn flooding_error(&self, error: &FloodingError, units: Units, atmosphere: Pressure) -> String;
}
