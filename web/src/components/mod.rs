//! The parts that screens are made of, one a file.

pub mod advice;
pub mod cautions;
pub mod chart;
pub mod choices;
pub mod confirm;
pub mod curves;
pub mod cycle;
pub mod diagram;
pub mod field;
pub mod from_phone;
pub mod go;
pub mod head;
pub mod icon;
pub mod ladder;
pub mod places;
pub mod refrigerant;
pub mod scale;
pub mod send;
pub mod shared_bank;
pub mod sheet;
pub mod stretches;
pub mod symbol;
pub mod value;
pub mod verdict;
pub mod winter;
pub mod worksheet;
