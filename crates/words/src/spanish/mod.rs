//! Spanish.

mod advice;
mod controllers;
mod fields;
mod fitting;
mod from_phone;
mod help;
mod install;
mod paper;
mod pictures;
mod plan;
mod problems;
mod rules;
mod screen;
mod sending;
mod sensors;
mod sources;
mod weather;
mod worksheets;

use uom::si::f64::Pressure;
use winterset_calc::advice::{FanMotorAdvice, Hottest, PartLoad, Remedy, ReversingValve};
use winterset_calc::free_cooling::Outcome;
use winterset_calc::input::{Duty, Sensing};
use winterset_calc::lever::Change;
use winterset_calc::need::NeedPart;
use winterset_calc::parts_list;
use winterset_calc::recommendation::Reason;
use winterset_calc::sensor_place;
use winterset_calc::settings::SettingsNote;
use winterset_calc::weather::epw::EpwError;
use winterset_calc::winter_start::BypassOutcome;
use winterset_calc::{Action, Basis, Caution, Condition, Field, Method, Plan, Rule, Verdict};
use winterset_profile::{Problem, share::ShareError};
use winterset_refrigerant::Error;

use crate::advice::{Advice, Ordered};
use crate::controllers::ControllerWords;
use crate::fitting::FittingWords;
use crate::from_phone::FromPhone;
use crate::help::{FindWords, HelpLabels, HelpWords};
use crate::install::Install;
use crate::language::{FieldWords, Part, RuleWords, Words};
use crate::numerals::Numerals;
use crate::paper::Paper;
use crate::pictures::Pictures;
use crate::screen::Screen;
use crate::sending::Sending;
use crate::units::Units;
use crate::weather::WeatherLabels;
use crate::worksheets::WorksheetWords;

/// Spanish.
#[derive(Clone, Copy, Debug)]
pub struct Spanish;

impl Words for Spanish {
    fn numerals(&self) -> Numerals {
        Numerals {
            decimal: ',',
            gap: '\u{202f}',
            gap_from: 5,
        }
    }

    fn symbol(&self, symbol: &'static str) -> &'static str {
        match symbol {
            "kPa gauge" => "kPa(g)",
            "bar gauge" => "bar(g)",
            "kPa absolute" => "kPa(a)",
            "bar absolute" => "bar(a)",
            "ton" => "TR",
            other => other,
        }
    }

    fn screen(&self) -> &'static Screen {
        &screen::SCREEN
    }

    fn paper(&self) -> &'static Paper {
        &paper::PAPER
    }

    fn sending(&self) -> &'static Sending {
        &sending::SENDING
    }

    fn field(&self, field: Field) -> FieldWords {
        fields::field(field)
    }

    fn find(&self, field: Field) -> FindWords {
        help::field(field)
    }

    fn help(&self) -> &'static HelpLabels {
        &help::LABELS
    }

    fn help_on(&self, rule: Rule) -> HelpWords {
        help::rule(rule)
    }

    fn fitting(&self) -> &'static dyn FittingWords {
        &Spanish
    }

    fn install(&self) -> &'static Install {
        &install::INSTALL
    }

    fn usual(&self, field: Field, units: Units) -> Option<String> {
        fields::usual(field, units)
    }

    fn choice(&self, field: Field, key: &str) -> &'static str {
        fields::choice(field, key)
    }

    fn problem(&self, field: Field, problem: &Problem, units: Units) -> String {
        problems::problem(field, problem, units)
    }

    fn refused(&self, error: &Error, units: Units, atmosphere: Pressure) -> String {
        problems::refused(error, units, atmosphere)
    }

    fn share_error(&self, error: &ShareError) -> &'static str {
        problems::share_error(error)
    }

    fn rule(&self, rule: Rule) -> RuleWords {
        rules::rule(rule)
    }

    fn source(&self, rule: Rule) -> &'static str {
        sources::source(rule.source())
    }

    fn verdict(&self, verdict: Verdict, plan: &Plan, units: Units) -> String {
        plan::verdict(verdict, plan, units)
    }

    fn action(&self, action: Action) -> &'static str {
        plan::action(action)
    }

    fn caution(&self, caution: Caution) -> Part {
        plan::caution(caution)
    }

    fn need_part(&self, part: NeedPart) -> RuleWords {
        plan::need_part(part)
    }

    fn note(&self, note: SettingsNote, units: Units) -> String {
        plan::note(note, units)
    }

    fn sensing(&self, sensing: Sensing) -> RuleWords {
        plan::sensing(sensing)
    }

    fn basis(&self, basis: Basis) -> &'static str {
        match basis {
            Basis::Assumed => "supuesto",
            Basis::Entered => "introducido",
            Basis::Computed => "calculado",
        }
    }

    fn heating(&self, valve: ReversingValve) -> RuleWords {
        plan::heating(valve)
    }

    fn method(&self, method: Method) -> RuleWords {
        plan::method(method)
    }

    fn worksheets(&self) -> &'static dyn WorksheetWords {
        &Spanish
    }

    fn controllers(&self) -> &'static dyn ControllerWords {
        &Spanish
    }

    fn weather(&self) -> &'static WeatherLabels {
        &weather::LABELS
    }

    fn weather_error(&self, error: &EpwError) -> String {
        weather::error(error)
    }

    fn phone(&self) -> &'static FromPhone {
        &from_phone::FROM_PHONE
    }

    fn pictures(&self) -> &'static Pictures {
        &pictures::PICTURES
    }

    fn advice(&self) -> &'static Advice {
        &advice::ADVICE
    }

    fn reason(&self, reason: Reason) -> &'static str {
        advice::reason(reason)
    }

    fn change(&self, change: Change) -> RuleWords {
        advice::change(change)
    }

    fn part_load(&self, found: &PartLoad, units: Units) -> String {
        advice::part_load(found, units)
    }

    fn condition(&self, condition: Condition) -> RuleWords {
        advice::condition(condition)
    }

    fn part(&self, part: &parts_list::Part, units: Units, atmosphere: Pressure) -> Ordered {
        advice::part(part, units, atmosphere)
    }

    fn bypass(&self, outcome: &BypassOutcome, units: Units, atmosphere: Pressure) -> String {
        advice::bypass(outcome, units, atmosphere)
    }

    fn fan_start(&self, advice: &FanMotorAdvice, units: Units) -> String {
        advice::fan_start(advice, units)
    }

    fn fan_heat(&self, hottest: &Hottest, units: Units) -> String {
        advice::fan_heat(hottest, units)
    }

    fn fan_remedy(&self, remedy: Remedy, advice: &FanMotorAdvice, units: Units) -> String {
        advice::fan_remedy(remedy, advice, units)
    }

    fn place(&self, reason: &sensor_place::Reason, units: Units) -> String {
        advice::place(reason, units)
    }

    fn off(&self, outcome: &Outcome, duty: Duty, units: Units) -> String {
        advice::off(outcome, duty, units)
    }
}
