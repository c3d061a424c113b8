//! From plans and records to what components draw: words and places on a scale, nothing computed.

pub mod advice;
pub mod arrival;
pub mod curves;
pub mod fields;
pub mod ladder;
pub mod outdoor;
pub mod plan;
pub mod sheet;
pub mod test_values;
pub mod worksheets;

use winterset_words::{Language, Words};

/// Everything that is said, in the language of the app.
pub fn words() -> &'static dyn Words {
    Language::default().words()
}
