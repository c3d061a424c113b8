//! The edge: units and words. The app and the command line speak through this crate alone.
//!
//! [`Units`] is the one place where a unit is chosen; gauge pressure exists only from here outwards. What is said stands in one folder a
//! language behind the trait [`Words`]; a further language is a further folder and a further arm in [`Language`]. Which one is spoken is set once a thread,
//! by [`Language::speak`].

#[macro_use]
mod by_files;

mod advice;
mod amounts;
mod controllers;
mod english;
mod example;
mod fitting;
mod french;
mod from_phone;
mod help;
mod install;
mod language;
mod numerals;
mod paper;
mod pen;
mod pictures;
mod refused;
mod screen;
mod sending;
mod spanish;
mod units;
mod weather;
mod worksheets;
mod written;

pub use advice::{Advice, Ordered};
pub use amounts::{amount_in, at_least, at_most, brief, converted, plain, symbol_of};
pub use controllers::{ControllerLabels, ControllerWords};
pub use fitting::{FittingLabels, FittingWords};
pub use from_phone::FromPhone;
pub use help::{FindWords, HelpLabels, HelpWords, RungValue};
pub use install::Install;
pub use language::{FieldWords, Language, Part, RuleWords, Words};
pub use numerals::Numerals;
pub use paper::Paper;
pub use pictures::Pictures;
pub use screen::Screen;
pub use sending::Sending;
pub use units::{PressureUnit, Shown, TemperatureUnit, Units, mark, symbol};
pub use weather::WeatherLabels;
pub use worksheets::{StartLabels, WorksheetLabels, WorksheetWords};

/// Everything that is said, in the language spoken.
pub fn words() -> &'static dyn Words {
    Language::spoken().words()
}

/// The labels of the screens, in the language spoken.
pub fn screen() -> &'static Screen {
    words().screen()
}
