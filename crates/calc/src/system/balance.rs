//! Where the circuit and the condenser meet.

use super::circuit::Running;
use super::line::Line;
use super::zones::Air;
use crate::root::bracketed;

/// What comes of a system under one air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Balance {
    /// It runs at a condensing temperature, K.
    Runs(f64, Running),
    /// Head pressure falls so far that the low-pressure cut-out stops the compressor.
    Trips,
    /// The condenser cannot reject the heat below the highest condensing temperature.
    AboveEnvelope,
}

/// Steps in which the starved part of the line is looked through.
const STEPS: u32 = 16;

/// Balances the line with a coil of which a share is free of liquid.
///
/// A starved circuit can meet the condenser more than once; a running system stays at the warmest meeting, which is the one taken.
pub(crate) fn balance(line: &Line, air: &Air, free: f64) -> Balance {
    // Nearly straight along condensing temperature, and rising where a meeting is stable.
    let spare = |condensing: f64| free / air.taken(condensing, &line.at(condensing)) - 1.0;
    let found = |low: f64, high: f64| {
        let condensing = bracketed(low, high, spare);
        Balance::Runs(condensing, line.at(condensing))
    };
    if spare(line.highest) < 0.0 {
        return Balance::AboveEnvelope;
    }
    if spare(line.knee) <= 0.0 {
        return found(line.knee, line.highest);
    }
    let mut high = line.knee;
    for step in 1..=STEPS {
        let share = f64::from(STEPS - step) / f64::from(STEPS);
        let low = line.trip + share * (line.knee - line.trip);
        if spare(low) <= 0.0 {
            return found(low, high);
        }
        high = low;
    }
    Balance::Trips
}
