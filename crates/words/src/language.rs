//! What can be said, whatever the language.

use std::cell::Cell;

use serde::{Deserialize, Serialize};
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
use crate::help::{FindWords, HelpLabels, HelpWords, RungValue};
use crate::install::Install;
use crate::numerals::Numerals;
use crate::paper::Paper;
use crate::pictures::Pictures;
use crate::screen::Screen;
use crate::sending::Sending;
use crate::units::Units;
use crate::weather::WeatherLabels;
use crate::worksheets::WorksheetWords;

/// The words round one field of the inputs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FieldWords {
    /// The question, as it stands over the answer.
    pub ask: &'static str,
    /// What it is and how to find it out.
    pub help: &'static str,
}

/// The words for one rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RuleWords {
    /// What the value is.
    pub name: &'static str,
    /// Why it is what it is, in a sentence.
    pub reason: &'static str,
}

/// A caution: what can hurt, and what to do about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Part {
    /// What it is about, in a word or two.
    pub title: &'static str,
    /// The caution itself.
    pub text: &'static str,
}

/// Everything that is said in one language. Only words here: values arrive typed and leave written in the [`Units`] given.
pub trait Words: Sync {
    /// How numbers are written.
    fn numerals(&self) -> Numerals;
    /// What stands beside a number for a unit, by its international symbol.
    fn symbol(&self, symbol: &'static str) -> &'static str {
        symbol
    }
    /// The labels of the screens.
    fn screen(&self) -> &'static Screen;
    /// The labels of a printed plan.
    fn paper(&self) -> &'static Paper;
    /// The labels round sending a system and receiving one.
    fn sending(&self) -> &'static Sending;
    /// The words round a field.
    fn field(&self, field: Field) -> FieldWords;
    /// How the answer at a field is found.
    fn find(&self, field: Field) -> FindWords;
    /// The labels round help.
    fn help(&self) -> &'static HelpLabels;
    /// What a value is, by the rule that made it.
    fn help_on(&self, rule: Rule) -> HelpWords;
    /// What a value is that a rung of the ladder answers.
    fn help_on_rung(&self, value: RungValue) -> HelpWords;
    /// Everything that is said about fitting and wiring.
    fn fitting(&self) -> &'static dyn FittingWords;
    /// The labels round the home screen and finding sites.
    fn install(&self) -> &'static Install;
    /// What is usual at a field, for under the answer; `None` where nothing is.
    fn usual(&self, field: Field, units: Units) -> Option<String>;
    /// A choice, by the field and the key that records carry.
    fn choice(&self, field: Field, key: &str) -> &'static str;
    /// What is wrong at a field, and what would be right.
    fn problem(&self, field: Field, problem: &Problem, units: Units) -> String;
    /// Why a refrigerant has no answer, and what would have one. `atmosphere` is what gauge pressure stands on.
    fn refused(&self, error: &Error, units: Units, atmosphere: Pressure) -> String;
    /// What is wrong with a link.
    fn share_error(&self, error: &ShareError) -> &'static str;
    /// The words for a rule.
    fn rule(&self, rule: Rule) -> RuleWords;
    /// The source of a rule, where it is a word of the trade rather than a publication.
    fn source(&self, rule: Rule) -> &'static str;
    /// The verdict of a plan in a sentence.
    fn verdict(&self, verdict: Verdict, plan: &Plan, units: Units) -> String;
    /// The one thing to do, in a sentence.
    fn action(&self, action: Action) -> &'static str;
    /// A caution.
    fn caution(&self, caution: Caution) -> Part;
    /// A part that asks for head pressure.
    fn need_part(&self, part: NeedPart) -> RuleWords;
    /// A remark on the settings sheet.
    fn note(&self, note: SettingsNote, units: Units) -> String;
    /// Where to put a sensor, and why.
    fn sensing(&self, sensing: Sensing) -> RuleWords;
    /// Where a value comes from.
    fn basis(&self, basis: Basis) -> &'static str;
    /// What the fan does in heating, told from a reversing valve that is energised in one of the two modes.
    fn heating(&self, valve: ReversingValve) -> RuleWords;
    /// A method.
    fn method(&self, method: Method) -> RuleWords;
    /// Everything that is said on worksheets.
    fn worksheets(&self) -> &'static dyn WorksheetWords;
    /// Everything that is said about a technician's own controllers.
    fn controllers(&self) -> &'static dyn ControllerWords;
    /// The labels round a site's weather file.
    fn weather(&self) -> &'static WeatherLabels;
    /// What is wrong with a weather file, and what would be right.
    fn weather_error(&self, error: &EpwError) -> String;

    /// The labels round the elevation that a phone gives.
    fn phone(&self) -> &'static FromPhone;
    /// The labels round the pictures of a plan.
    fn pictures(&self) -> &'static Pictures;
    /// The labels round what follows from a plan.
    fn advice(&self) -> &'static Advice;
    /// Why a method is recommended, in a sentence.
    fn reason(&self, reason: Reason) -> &'static str;
    /// What part load does to the hold limit of the recommended method.
    fn part_load(&self, found: &PartLoad, units: Units) -> String;
    /// A change that lowers the need, and how it does.
    fn change(&self, change: Change) -> RuleWords;
    /// What comes of a system at one outdoor temperature.
    fn condition(&self, condition: Condition) -> RuleWords;
    /// A part to order. `atmosphere` is what gauge pressure stands on.
    fn part(&self, part: &parts_list::Part, units: Units, atmosphere: Pressure) -> Ordered;
    /// What a start in the cold asks of the low-pressure switch. `atmosphere` is what gauge pressure stands on.
    fn bypass(&self, outcome: &BypassOutcome, units: Units, atmosphere: Pressure) -> String;
    /// How a fan starts in the cold.
    fn fan_start(&self, advice: &FanMotorAdvice, units: Units) -> String;
    /// Where a fan motor that is slowed by its voltage runs hottest.
    fn fan_heat(&self, hottest: &Hottest, units: Units) -> String;
    /// What to do where a fan may not start.
    fn fan_remedy(&self, remedy: Remedy, advice: &FanMotorAdvice, units: Units) -> String;
    /// Why the usual place of a coil sensor does not do, and what does.
    fn place(&self, reason: &sensor_place::Reason, units: Units) -> String;
    /// Whether outdoor cold would do the job of a system of this duty.
    fn off(&self, outcome: &Outcome, duty: Duty, units: Units) -> String;
}

/// A language of the app.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Language {
    /// English.
    #[default]
    #[serde(rename = "en")]
    English,
    /// Spanish.
    #[serde(rename = "es")]
    Spanish,
    /// French.
    #[serde(rename = "fr")]
    French,
}

thread_local! {
    /// What is spoken here. Set once at the edge, so that no call has to carry it.
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
}

impl Language {
    /// Every language.
    pub const ALL: [Language; 3] = [Language::English, Language::Spanish, Language::French];

    /// The tag that records and pages carry (BCP 47).
    pub fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
            Language::Spanish => "es",
            Language::French => "fr",
        }
    }

    /// The name of the language in the language itself.
    pub fn name(self) -> &'static str {
        match self {
            Language::English => "English",
            Language::Spanish => "Español",
            Language::French => "Français",
        }
    }

    /// The language of a tag, whatever the region: `es` and `es-419` are both Spanish. `None` where it is none of the app's.
    pub fn of_tag(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next().unwrap_or_default();
        Self::ALL
            .into_iter()
            .find(|language| language.tag().eq_ignore_ascii_case(primary))
    }

    /// The language spoken on this thread: that of the last [`Language::speak`], at first English.
    pub fn spoken() -> Self {
        SPOKEN.get()
    }

    /// From here on everything on this thread is said in this language.
    pub fn speak(self) {
        SPOKEN.set(self);
    }

    /// The words of the language. Numbers in them are written as in the language spoken.
    pub fn words(self) -> &'static dyn Words {
        match self {
            Language::English => &crate::english::English,
            Language::Spanish => &crate::spanish::Spanish,
            Language::French => &crate::french::French,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tags_come_with_regions_or_without() {
        assert_eq!(Language::of_tag("es-419"), Some(Language::Spanish));
        assert_eq!(Language::of_tag("FR"), Some(Language::French));
        assert_eq!(Language::of_tag("en_US"), Some(Language::English));
        assert_eq!(Language::of_tag("de"), None);
        assert_eq!(Language::of_tag(""), None);
        for language in Language::ALL {
            assert_eq!(Language::of_tag(language.tag()), Some(language));
        }
    }

    #[test]
    fn what_is_spoken_is_heard() {
        assert_eq!(crate::screen().settings, "Settings");
        Language::Spanish.speak();
        assert_eq!(Language::spoken(), Language::Spanish);
        assert_eq!(crate::screen().settings, "Ajustes");
    }
}
