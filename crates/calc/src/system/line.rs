//! The operating line: the circuit along condensing temperature, worked out once and read many times.
//!
//! From the low-pressure cut-out the device starves the evaporator up to the knee; above, it controls. The line ends below the critical
//! point, where hot discharge leaves the range of the refrigerant's equation, or where one stage of compression lifts no further.
//!
//! Saturation properties bend like a root towards the critical temperature. Along the root of the distance to it they are all but straight,
//! which is what the series run along.

use winterset_refrigerant::Error;

use super::chebyshev::Series;
use super::circuit::{COLUMNS, Circuit, Running};
use crate::planning::breath;
use crate::root::try_near;

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
    /// Critical temperature, K.
    critical: f64,
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
    /// The line of a circuit up to a highest condensing temperature, K. Most of a plan's time goes into it, so that it takes breath on the way.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) async fn new(
        circuit: &Circuit,
        opening: Opening,
        highest: f64,
    ) -> Result<Self, Error> {
        let known = circuit.known;
        let Opening { reserve, shortfall } = opening;
        // Below the known evaporating temperature nothing flows, so that the device cannot feed enough.
        let lowest = known.evaporating + 1e-3;
        let asked = |shortfall: f64| {
            let mut trail = circuit.trail();
            near(
                (lowest, known.condensing),
                known.condensing - 10.0,
                // A shortfall of feed is one of flow: the drops before the device go with what flows.
                |condensing| {
                    let passed = circuit.surplus(condensing, reserve, &mut trail)? + 1.0;
                    Ok(shortfall * passed - 1.0)
                },
            )
        };
        let knee = if reserve > 1.0 {
            asked(1.0)?
        } else {
            known.condensing
        };
        let need = if shortfall > 1.0 {
            asked(shortfall)?
        } else {
            knee
        };
        breath().await;
        let trip = near(
            (circuit.cut_out + 1e-3, knee),
            known.evaporating,
            |condensing| circuit.surplus_at_cut_out(condensing, reserve),
        )?;
        breath().await;
        let highest = reached(circuit, highest);
        let mut trail = circuit.trail();
        let lift = circuit.lift_left(highest, &mut trail)?;
        let highest = if lift < 0.0 {
            // Falls along condensing temperature, where the others rise.
            near(
                (known.condensing, highest),
                known.condensing,
                |condensing| Ok(-circuit.lift_left(condensing, &mut trail)?),
            )?
        } else {
            highest
        };
        breath().await;

        let critical = circuit.refrigerant.critical_point().temperature.value;
        let along = |condensing: f64| along(critical, condensing);
        let back = |x: f64| critical - x * x;
        let tolerance = Running::tolerance(circuit.at_known.flow);
        let mut starved = Series::new();
        let mut trail = circuit.trail();
        starved.extend((along(trip), along(knee)), &tolerance, &mut |x| {
            let running = circuit.starved(back(x), reserve, &mut trail)?;
            Ok::<_, Error>(running.columns())
        })?;
        breath().await;
        let mut fed = Series::new();
        let mut trail = circuit.trail();
        let mut feed = |x: f64| Ok::<_, Error>(circuit.fed(back(x), &mut trail)?.columns());
        let parting = (known.condensing + ABOVE_KNOWN).min(highest);
        fed.extend((along(knee), along(parting)), &tolerance, &mut feed)?;
        if parting < highest {
            breath().await;
            fed.extend((along(parting), along(highest)), &tolerance, &mut feed)?;
        }
        Ok(Self {
            starved,
            fed,
            critical,
            trip,
            knee,
            need,
            highest,
        })
    }

    /// The circuit at a condensing temperature, K; beyond the ends, at the nearer end.
    pub(crate) fn at(&self, condensing: f64) -> Running {
        let series = if condensing < self.knee && !self.starved.is_empty() {
            &self.starved
        } else {
            &self.fed
        };
        Running::from_columns(series.at(along(self.critical, condensing)))
    }
}

/// The highest condensing temperature, K, up to one asked for, at which the refrigerant still has all states: hot discharge can leave its
/// equation's range well above a known point that is well inside.
fn reached(circuit: &Circuit, asked: f64) -> f64 {
    const PRECISION: f64 = 1e-3;
    let has = |condensing: f64| circuit.fed(condensing, &mut circuit.trail()).is_ok();
    if has(asked) {
        return asked;
    }
    let (mut low, mut high) = (circuit.known.condensing, asked);
    while high - low > PRECISION {
        let middle = 0.5 * (low + high);
        if has(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}

/// The condensing temperature, K, where a share that rises along it is zero.
fn near(
    (low, high): (f64, f64),
    guess: f64,
    mut f: impl FnMut(f64) -> Result<f64, Error>,
) -> Result<f64, Error> {
    const SLOPE: f64 = 0.02;
    const PRECISION: f64 = 1e-7;
    let share = |condensing: f64| Ok::<_, Error>((f(condensing)?, ()));
    let (root, _, ()) = try_near((low, high), (guess, SLOPE), PRECISION, share)?;
    Ok(root)
}

/// Where a condensing temperature lies along the series: rising, from minus the root of its distance to the critical temperature.
fn along(critical: f64, condensing: f64) -> f64 {
    -(critical - condensing).max(0.0).sqrt()
}
