//! From plans and records to what components draw: words and places on a scale, nothing computed.

pub mod advice;
pub mod curves;
pub mod fields;
pub mod ladder;
pub mod outdoor;
pub mod plan;
pub mod sheet;
pub mod worksheets;

pub use winterset_words::words;
