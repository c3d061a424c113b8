//! Sensors of a controller: what a meter reads at them, and what they tell the controller.
//!
//! * [`Thermistor`]: resistance of a coil sensor and its temperature, both ways, by [`Beta`] or by [`SteinhartHart`];
//! * [`substitute`]: the resistor that stands in for a thermistor at a simulated temperature;
//! * [`Ratiometric`] and [`CurrentLoop`]: pressure transducers, both ways, over a [`PressureRange`] that says whether it is
//!   gauge or absolute;
//! * [`Reading`]: a value, or the fault that the signal shows.
//!
//! Sources stand in the modules.

mod beta;
mod current_loop;
mod error;
mod preferred;
mod pressure_range;
mod ratiometric;
mod steinhart_hart;
mod substitute;
mod thermistor;

pub use beta::Beta;
pub use current_loop::{CurrentLoop, current_at_share, share_at_current};
pub use error::{SensorError, SensorValue};
pub use preferred::Series;
pub use pressure_range::{PressureRange, Reference};
pub use ratiometric::Ratiometric;
pub use steinhart_hart::SteinhartHart;
pub use substitute::{Substitute, substitute};
pub use thermistor::{ResistancePoint, Thermistor, temperature_range};

/// What a signal tells.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reading<T> {
    /// The sensor measures this.
    Value(T),
    /// The signal is none that a sound sensor gives.
    Fault(Fault),
}

impl<T> Reading<T> {
    /// The same reading with its value turned into another quantity.
    pub fn map<U>(self, turn: impl FnOnce(T) -> U) -> Reading<U> {
        match self {
            Reading::Value(value) => Reading::Value(turn(value)),
            Reading::Fault(fault) => Reading::Fault(fault),
        }
    }
}

/// What is wrong with a sensor or its wires.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fault {
    /// Thermistor: more resistance than at its coldest: a broken wire or sensor.
    Open,
    /// Thermistor: less resistance than at its hottest: wires that touch, or water.
    Short,
    /// Transducer: signal below its range: no supply, a broken wire, or a short to common.
    SignalLow,
    /// Transducer: signal above its range: a broken common wire, a short to supply, or a broken sensor.
    SignalHigh,
}
