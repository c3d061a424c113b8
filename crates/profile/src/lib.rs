//! What is kept: sites with their systems, exactly as typed, and the way from a record to a typed input.
//!
//! A record holds what a person typed, valid or not, so that nothing typed is ever lost; [`System::read`] turns it into a
//! [`calc::Input`](winterset_calc::Input) or says at which field what is wrong and what would be right. [`share`] carries a system in the
//! fragment of a link.

mod number;
mod read;
mod record;
pub mod share;
mod unit;

pub use number::{NumberError, Typed, parse as parse_number};
pub use read::{Assumed, FieldError, Problem, kind_of, read_refrigerant};
pub use record::{Entry, Migration, Site, System, VERSION};
pub use unit::{Kind, Unit};
