//! States from density and enthalpy.
//!
//! At constant enthalpy density rises with pressure, through both phases and across their borders: (∂ρ/∂p)_h = 1/w² + α/c_p in a single
//! phase. So the pressure is looked for in a bracket, on states of that pressure and enthalpy, and no guess of phases is needed.

use super::{Engine, THINNEST};
use crate::algorithm::envelope::Given;
use crate::algorithm::equilibrium::Side;
use crate::{Calculation, Error, Quantity, State};

/// How near the density is met, relative.
const NEAR: f64 = 1e-13;

impl Engine {
    pub fn state_at_density_enthalpy(&self, rho: f64, h: f64) -> Result<State, Error> {
        let at = |ln_p: f64| self.state_at_pressure_enthalpy(ln_p.exp(), h);
        let gap = |state: &State| (state.density.value / rho).ln();

        let (mut low, first) = self.thinnest(h, rho)?;
        let mut high = self.densest.ln();
        let mut below = gap(&first);
        // Where nothing is known at so high a pressure, the pressure is too high: `above` stays unknown there.
        let mut above = at(high).ok().map(|state| gap(&state));
        // NaN and anything that is no density are refused here too.
        if !(rho > 0.0 && rho.is_finite() && below <= NEAR)
            || above.is_some_and(|above| above < -NEAR)
        {
            return Err(self.no_such_density(rho, h, (low, &first)));
        }
        let mut side = 0;
        for round in 0..200 {
            let secant = above.map(|above: f64| low - below * (high - low) / (above - below));
            let ln_p = match secant {
                Some(p) if p > low && p < high && round % 4 != 3 => p,
                _ => 0.5 * (low + high),
            };
            let narrow = high - low <= 4.0 * f64::EPSILON * high.abs();
            if narrow && above.is_none() {
                return Err(self.no_such_density(rho, h, (low, &first)));
            }
            let Ok(state) = at(ln_p) else {
                (high, above) = (ln_p, None);
                continue;
            };
            let here = gap(&state);
            if here.abs() <= NEAR || narrow {
                return Ok(state);
            }
            // The end that stays is weighed half (the Illinois rule), so that both ends move.
            if here < 0.0 {
                (low, below) = (ln_p, here);
                if side < 0 {
                    above = above.map(|a| 0.5 * a);
                }
                side = -1;
            } else {
                (high, above) = (ln_p, Some(here));
                if side > 0 {
                    below *= 0.5;
                }
                side = 1;
            }
        }
        Err(Error::NotConverged {
            calculation: Calculation::Flash,
            quantity: Quantity::Density,
            value: rho,
        })
    }

    /// A state of this enthalpy and no higher density, from which pressure is answered all the way up, with its ln p; the thinnest that
    /// there is where none is as thin as that.
    fn thinnest(&self, h: f64, rho: f64) -> Result<(f64, State), Error> {
        let at = |p: f64| Ok((p.ln(), self.state_at_pressure_enthalpy(p, h)?));
        // From the coldest bubble point on, liquid and two phases are answered. A little below, where only vapour is, they are not.
        let coldest = self.saturated(Side::Bubble, Given::Temperature, self.lowest)?;
        let cold = at(coldest.pressure.max(THINNEST) * (1.0 + 1e-9));
        match cold {
            Ok((_, state)) if state.density.value <= rho => cold,
            _ => at(THINNEST).or(cold),
        }
    }

    /// The density is none that this enthalpy can have, with the range that it can, seen from its thinnest state.
    fn no_such_density(&self, rho: f64, h: f64, (low, thinnest): (f64, &State)) -> Error {
        let (mut low, mut high) = (low, self.densest.ln());
        let mut densest = thinnest.density.value;
        let mut trial = high;
        for _ in 0..50 {
            match self.state_at_pressure_enthalpy(trial.exp(), h) {
                Ok(state) => (low, densest) = (trial, densest.max(state.density.value)),
                Err(_) => high = trial,
            }
            trial = 0.5 * (low + high);
        }
        Error::OutOfRange {
            quantity: Quantity::Density,
            value: rho,
            low: thinnest.density.value,
            high: densest,
        }
    }
}
