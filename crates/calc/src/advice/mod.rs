//! What follows from a plan for the work: where the sensor goes, how the system starts in the cold, what to order, when the compressor may stay
//! off, and what a second circuit or heating changes.

mod fan_motor;
mod heating;
mod load;
mod off;
mod order;
mod sensor;
mod shared;
mod start;

pub use fan_motor::{FanMotorAdvice, FanStart, Hottest, LowestSpeed, Remedy};
pub use heating::{HeatingFan, ReversingValve};
pub use load::{LoadEffect, PartLoad};
pub use off::free_cooling_source;
pub use shared::{Leads, Shared, SharedBank};
pub use start::WinterStart;
