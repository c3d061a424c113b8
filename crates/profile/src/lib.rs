//! What is kept: sites with their systems, exactly as typed, and the way from a record to a typed input.
//!
//! A record holds what a person typed, valid or not, so that nothing typed is ever lost; [`System::read`] turns it into a
//! [`calc::Input`](winterset_calc::Input) or says at which field what is wrong and what would be right. [`share`] carries a system in the
//! fragment of a link or in a file, and [`merge`] makes one of two records of a system. [`Sheet`] is a worksheet, which stands outside any site: what it asks, and what was typed there.

mod amount;
mod controller;
mod merge;
mod number;
mod read;
mod record;
pub mod share;
mod unit;
mod winter;
mod worksheet;

pub use amount::{Amount, AmountProblem, Measure, Scale, read_amount};
pub use controller::{Controller, ControllerField, ControllerProblem, ControllerWrong};
pub use merge::{Difference, differences, merge};
pub use number::{NumberError, Typed, parse as parse_number};
pub use read::{Assumed, FieldError, Problem, kind_of, read_refrigerant};
pub use record::{Entry, Migration, Site, System, VERSION};
pub use unit::{Kind, Unit};
pub use winter::{NotAYear, WinterHours};
pub use worksheet::{Answer, Number, Question, Section, Sheet, Title, Usual, Worksheets};
