//! The operating line: the circuit along condensing temperature, worked out once and read many times.
//!
//! From the low-pressure cut-out the device starves the evaporator up to the knee; above, it controls. The line ends below the critical
//! point, or where one stage of compression lifts no further.

use winterset_refrigerant::Error;

use super::chebyshev::Series;
use super::circuit::{COLUMNS, Circuit, Running};
use crate::root::try_bracketed;

/// Span above the known point that is worked out apart from what lies hotter, K: properties bend towards the critical point.
const ABOVE_KNOWN: f64 = 8.0;

/// How the metering device bears on the line.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Opening {
    /// Flow reserve of the fully open device.
    pub(crate) reserve: f64,
    /// Shortfall of feed that is put up with: the need lies where the device passes the controlled flow over this.
    pub(crate) shortfall: f64,
}

/// The circuit along condensing temperature.
#[derive(Clone, Debug)]
pub(crate) struct Line {
    starved: Series<COLUMNS>,
    fed: Series<COLUMNS>,
    /// Condensing temperature at which the low-pressure cut-out stops the compressor, K.
    pub(crate) trip: f64,
    /// Condensing temperature below which the evaporator is starved, K.
    pub(crate) knee: f64,
    /// Condensing temperature that the metering device asks for, K.
    pub(crate) need: f64,
    /// Highest condensing temperature, K.
    pub(crate) highest: f64,
}

impl Line {
    /// The line of a circuit up to a highest condensing temperature, K.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn new(circuit: &Circuit, opening: Opening, highest: f64) -> Result<Self, Error> {
        let known = circuit.known;
        let Opening { reserve, shortfall } = opening;
        // Below the known evaporating temperature nothing flows, so that the device cannot feed enough.
        let lowest = known.evaporating + 1e-3;
        let asked = |reserve: f64| {
            let mut trail = circuit.trail();
            try_bracketed(lowest, known.condensing, |condensing| {
                circuit.surplus(condensing, reserve, &mut trail)
            })
        };
        let knee = if reserve > 1.0 {
            asked(reserve)?
        } else {
            known.condensing
        };
        let need = if shortfall > 1.0 {
            asked(reserve * shortfall)?
        } else {
            knee
        };
        let trip = try_bracketed(circuit.cut_out + 1e-3, knee, |condensing| {
            circuit.surplus_at_cut_out(condensing, reserve)
        })?;
        let mut trail = circuit.trail();
        let lift = circuit.lift_left(highest, &mut trail)?;
        let highest = if lift < 0.0 {
            try_bracketed(known.condensing, highest, |condensing| {
                circuit.lift_left(condensing, &mut trail)
            })?
        } else {
            highest
        };

        let tolerance = Running::tolerance(circuit.at_known.flow);
        let mut starved = Series::new();
        let mut trail = circuit.trail();
        starved.extend((trip, knee), &tolerance, &mut |condensing| {
            Ok::<_, Error>(circuit.starved(condensing, reserve, &mut trail)?.columns())
        })?;
        let mut fed = Series::new();
        let mut trail = circuit.trail();
        let mut feed =
            |condensing: f64| Ok::<_, Error>(circuit.fed(condensing, &mut trail)?.columns());
        let parting = (known.condensing + ABOVE_KNOWN).min(highest);
        fed.extend((knee, parting), &tolerance, &mut feed)?;
        if parting < highest {
            fed.extend((parting, highest), &tolerance, &mut feed)?;
        }
        Ok(Self {
            starved,
            fed,
            trip,
            knee,
            need,
            highest,
        })
    }

    /// The circuit at a condensing temperature, K; beyond the ends, at the nearer end.
    pub(crate) fn at(&self, condensing: f64) -> Running {
        let series = if condensing < self.knee {
            &self.starved
        } else {
            &self.fed
        };
        Running::from_columns(series.at(condensing))
    }
}
