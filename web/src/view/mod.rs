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

pub use winterset_words::words;
use yew::AttrValue;

/// A name, or the word for a thing that has none yet.
pub fn name_or(name: &str, otherwise: &str) -> AttrValue {
    let name = name.trim();
    AttrValue::from(if name.is_empty() { otherwise } else { name }.to_owned())
}
