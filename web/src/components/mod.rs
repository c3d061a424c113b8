//! The parts that screens are made of, one a file.

pub mod advice;
pub mod cautions;
pub mod chart;
pub mod choices;
pub mod code;
pub mod confirm;
pub mod differences;
pub mod field;
pub mod file;
pub mod go;
pub mod head;
pub mod icon;
pub mod ladder;
pub mod places;
pub mod refrigerant;
pub mod scale;
pub mod send;
pub mod sheet;
pub mod symbol;
pub mod test_values;
pub mod value;
pub mod verdict;
pub mod winter;
pub mod worksheet;
