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

/// Share of the coil left over at a step below which a meeting may hide between it and its neighbours.
const LITTLE_SPARE: f64 = 0.05;

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
    let place = |step: u32| {
        let share = f64::from(STEPS - step) / f64::from(STEPS);
        line.trip + share * (line.knee - line.trip)
    };
    let above = (2.0 * line.knee - place(1)).min(line.highest);
    let (mut hot, mut here) = ((above, spare(above)), (line.knee, spare(line.knee)));
    for step in 1..=STEPS {
        let next = (place(step), spare(place(step)));
        if here.1 < LITTLE_SPARE && here.1 < hot.1 && here.1 < next.1 {
            let dip = lowest((next.0, hot.0), spare);
            if spare(dip) <= 0.0 {
                return found(dip, hot.0);
            }
        }
        if next.1 <= 0.0 {
            return found(next.0, here.0);
        }
        (hot, here) = (here, next);
    }
    Balance::Trips
}

/// Where a function with a single dip is lowest, by golden sections; the first place at or below zero is low enough.
///
/// Source: numerical mathematics textbooks.
fn lowest((mut low, mut high): (f64, f64), f: impl Fn(f64) -> f64) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let inner = |from: f64, to: f64| {
        let at = from + GOLDEN * (to - from);
        (at, f(at))
    };
    let (mut colder, mut hotter) = (inner(high, low), inner(low, high));
    for _ in 0..32 {
        if colder.1.min(hotter.1) <= 0.0 {
            break;
        }
        if colder.1 < hotter.1 {
            high = hotter.0;
            hotter = colder;
            colder = inner(high, low);
        } else {
            low = colder.0;
            colder = hotter;
            hotter = inner(low, high);
        }
    }
    if colder.1 < hotter.1 {
        colder.0
    } else {
        hotter.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_the_bottom_of_a_dip() {
        let dip = lowest((1.0, 4.0), |x| 1.0 + (x - 2.3) * (x - 2.3));
        assert!((dip - 2.3).abs() < 1e-6, "{dip}");
        let below = lowest((1.0, 4.0), |x| (x - 2.3) * (x - 2.3) - 0.2);
        assert!((below - 2.3) * (below - 2.3) <= 0.2, "{below}");
    }
}
