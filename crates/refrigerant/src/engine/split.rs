//! States of two phases.

use super::Engine;
use super::saturation::{Ends, Saturated};
use crate::algorithm::envelope::Given;
use crate::algorithm::equilibrium::{Point, Side};
use crate::algorithm::flash::{self, Hold, Split};
use crate::algorithm::properties::{Properties, properties};
use crate::{Calculation, Error, Phase, Quantity, State};

/// Steps in quality by which a split that does not converge at once is approached from its nearer end.
const APPROACH: usize = 16;

impl Engine {
    pub fn two_phase(&self, p: f64, quality: f64) -> Result<State, Error> {
        self.check(Quantity::Quality, quality, 0.0, 1.0)?;
        let ends = self.ends(Given::Pressure, p)?;
        let end = |side, point| self.exactly(Given::Pressure, p, self.saturated_of(side, point));
        let bubble = end(Side::Bubble, &ends.bubble);
        let dew = end(Side::Dew, &ends.dew);
        if self.z.len() == 1 {
            let of = |s: &Saturated| properties(&self.mixture, s.temperature, s.density, &self.z);
            let (l, v) = (of(&bubble), of(&dew));
            return Ok(self.lever((&bubble, &l), (&dew, &v), quality));
        }
        // A phase of next to nothing is the bubble or dew point itself.
        if quality < 1e-9 {
            return Ok(self.saturated_state(Side::Bubble, &bubble));
        }
        if quality > 1.0 - 1e-9 {
            return Ok(self.saturated_state(Side::Dew, &dew));
        }
        let split = self.split_at_quality(p, quality, &ends, None)?;
        Ok(self.split_state(p, &split))
    }

    /// Two phases of a pure fluid, by the lever rule.
    pub(super) fn lever(
        &self,
        (bubble, l): (&Saturated, &Properties),
        (dew, v): (&Saturated, &Properties),
        quality: f64,
    ) -> State {
        let mix = |a: f64, b: f64| (1.0 - quality) * a + quality * b;
        let rho = 1.0 / mix(1.0 / bubble.density, 1.0 / dew.density);
        self.bare(
            Phase::TwoPhase,
            Some(quality),
            (bubble.temperature, bubble.pressure, rho),
            (mix(l.enthalpy, v.enthalpy), mix(l.entropy, v.entropy)),
        )
    }

    /// The split of a blend at a quality, from a neighbouring split or from bubble and dew point.
    pub(super) fn split_at_quality(
        &self,
        p: f64,
        quality: f64,
        ends: &Ends,
        near: Option<&Split>,
    ) -> Result<Split, Error> {
        let attempt = |q: f64, guess: &Split| {
            flash::converge(&self.mixture, &self.z, p, Hold::Quality(q), guess).ok()
        };
        if let Some(split) = near.and_then(|near| attempt(quality, near)) {
            return Ok(split);
        }
        let guess = |q: f64| flash::between(&self.z, &ends.bubble, &ends.dew, q);
        if let Some(split) = attempt(quality, &guess(quality)) {
            return Ok(split);
        }
        let (from, to) = if quality < 0.5 {
            (0.0, quality)
        } else {
            (1.0, quality)
        };
        let mut here = None;
        for step in 1..=APPROACH {
            let q = from + (to - from) * step as f64 / APPROACH as f64;
            here = here
                .and_then(|near| attempt(q, &near))
                .or_else(|| attempt(q, &guess(q)));
        }
        here.ok_or(Error::NotConverged {
            calculation: Calculation::Flash,
            quantity: Quantity::Pressure,
            value: p,
        })
    }

    /// The split of a blend at a temperature, `None` where there is none.
    pub(super) fn split_at_temperature(&self, t: f64, p: f64) -> Result<Option<Split>, Error> {
        let Ok(ends) = self.ends(Given::Pressure, p) else {
            return Ok(None);
        };
        let n = self.z.len();
        let temperature = |end: &Point| end.unknowns[n + 1].exp();
        let (low, high) = (temperature(&ends.bubble), temperature(&ends.dew));
        if t <= low || t >= high {
            return Ok(None);
        }
        let share = (t - low) / (high - low);
        let guess = flash::between(&self.z, &ends.bubble, &ends.dew, share);
        let direct = flash::converge(&self.mixture, &self.z, p, Hold::Temperature(t), &guess).ok();
        if direct.is_some() {
            return Ok(direct);
        }
        // Temperature rises with quality at one pressure: halve to it.
        let (mut below, mut above) = (0.0, 1.0);
        let mut near = None;
        for _ in 0..60 {
            let q = 0.5 * (below + above);
            let split = self.split_at_quality(p, q, &ends, near.as_ref())?;
            if let Ok(exact) =
                flash::converge(&self.mixture, &self.z, p, Hold::Temperature(t), &split)
            {
                return Ok(Some(exact));
            }
            if split.temperature < t {
                below = q;
            } else {
                above = q;
            }
            near = Some(split);
        }
        Ok(near)
    }

    /// Molar enthalpy and entropy of a split.
    pub(super) fn split_caloric(&self, split: &Split) -> (f64, f64) {
        let n = self.z.len();
        let t = split.temperature;
        let l = properties(&self.mixture, t, split.liquid.1, &split.liquid.0[..n]);
        let v = properties(&self.mixture, t, split.vapor.1, &split.vapor.0[..n]);
        let mix = |a: f64, b: f64| (1.0 - split.vapor_amount) * a + split.vapor_amount * b;
        (mix(l.enthalpy, v.enthalpy), mix(l.entropy, v.entropy))
    }

    pub(super) fn split_state(&self, p: f64, split: &Split) -> State {
        let amount = split.vapor_amount;
        let volume = (1.0 - amount) / split.liquid.1 + amount / split.vapor.1;
        let quality = amount * self.mixture.molar_mass(&split.vapor.0[..self.z.len()]);
        self.bare(
            Phase::TwoPhase,
            Some(quality / self.molar_mass),
            (split.temperature, p, 1.0 / volume),
            self.split_caloric(split),
        )
    }
}
