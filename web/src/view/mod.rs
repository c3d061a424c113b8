//! From plans and records to what components draw: words and places on a scale, nothing computed.

pub mod advice;
pub mod arrival;
pub mod controllers;
pub mod curves;
pub mod cycle;
pub mod fields;
pub mod fitting;
pub mod ladder;
pub mod outdoor;
pub mod plan;
pub mod shared_bank;
pub mod sheet;
pub mod test_values;
pub mod weather;
pub mod worksheets;

use winterset_words::{Language, Words};
use yew::AttrValue;

/// Everything that is said, in the language of the app.
pub fn words() -> &'static dyn Words {
    Language::default().words()
}

/// A name, or the word for a thing that has none yet.
pub fn name_or(name: &str, otherwise: &str) -> AttrValue {
    let name = name.trim();
    AttrValue::from(if name.is_empty() { otherwise } else { name }.to_owned())
}
