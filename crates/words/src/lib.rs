//! The edge: units and words. The app and the command line speak through this crate alone.
//!
//! [`Units`] is the one place where a unit is chosen; gauge pressure exists only from here outwards. What is said stands in one folder a
//! language behind the trait [`Words`]; a further language is a further folder and a further arm in [`Language`].

mod advice;
mod amounts;
mod english;
mod language;
mod screen;
mod units;

pub use advice::{Advice, Ordered};
pub use language::{FieldWords, Language, Part, RuleWords, Words};
pub use screen::Screen;
pub use units::{PressureUnit, Shown, TemperatureUnit, Units};

/// The labels of the screens.
pub fn screen() -> &'static Screen {
    Language::default().words().screen()
}
