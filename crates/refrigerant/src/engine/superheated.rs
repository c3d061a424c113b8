//! Vapour along the isobar of a dew point that is known, which spares looking for it again at every state.

use super::Engine;
use super::caloric::Value;
use crate::algorithm::properties::{Properties, properties};
use crate::{Error, State};

/// Rounds of Newton's method before the flash that cannot fail takes over.
const ROUNDS: u32 = 12;

impl Engine {
    /// Vapour at the pressure of a dew point and a temperature at or above its own; a colder one is taken as the dew point's.
    pub fn superheated(&self, dew: &State, t: f64) -> Result<State, Error> {
        let at = dew.temperature.value;
        self.check(crate::Quantity::Temperature, t, self.lowest, self.highest)?;
        let t = t.max(at);
        let p = dew.pressure.value;
        let most = dew.density.value / self.molar_mass;
        let rho = self.vapor_near(t, p, most * at / t, most)?;
        Ok(self.single_state(t, p, rho))
    }

    /// Vapour at the pressure of a dew point and an enthalpy.
    pub fn superheated_enthalpy(&self, dew: &State, h: f64) -> Result<State, Error> {
        let target = h * self.molar_mass + self.reference().0;
        match self.along_dew_isobar(dew, Value::Enthalpy, target) {
            Some(state) => Ok(state),
            None => self.state_at_pressure_enthalpy(dew.pressure.value, h),
        }
    }

    /// Vapour at the pressure of a dew point and an entropy.
    pub fn superheated_entropy(&self, dew: &State, s: f64) -> Result<State, Error> {
        let target = s * self.molar_mass + self.reference().1;
        match self.along_dew_isobar(dew, Value::Entropy, target) {
            Some(state) => Ok(state),
            None => self.state_at_pressure_entropy(dew.pressure.value, s),
        }
    }

    /// Newton's method in temperature and density at once, from the dew point; `None` where it strays from the vapour.
    fn along_dew_isobar(&self, dew: &State, value: Value, target: f64) -> Option<State> {
        let p = dew.pressure.value;
        let (start, most) = (dew.temperature.value, dew.density.value / self.molar_mass);
        let (mut t, mut rho) = (start, most);
        for _ in 0..ROUNDS {
            let of = properties(&self.mixture, t, rho, &self.z);
            let (warmer, denser) = self.step(value, target - value.of(&of), p, (t, rho), &of);
            // The step squares what is off: taken, this one leaves nothing that a double shows.
            let done = warmer.abs() <= 1e-8 && denser.abs() <= 1e-8;
            // Steps as wide as the vapour itself are cut, so that a start near the critical point does not fly off.
            t *= warmer.clamp(-0.2, 0.2).exp();
            rho *= denser.clamp(-0.7, 0.7).exp();
            if done {
                let vapor = t >= start && t <= self.highest && rho <= most * (1.0 + 1e-9);
                return vapor.then(|| self.single_state(t, p, rho));
            }
        }
        None
    }

    /// Steps in ln T and ln ρ that would meet pressure and the caloric value if both were straight.
    fn step(
        &self,
        value: Value,
        gap: f64,
        p: f64,
        (t, rho): (f64, f64),
        of: &Properties,
    ) -> (f64, f64) {
        let mass = self.molar_mass;
        // (∂p/∂ρ)_T from the speed of sound, (∂p/∂T)_ρ from the difference of the heat capacities.
        let stiffness = of.speed_of_sound * of.speed_of_sound * mass * of.isochoric / of.isobaric;
        let push = rho * ((of.isobaric - of.isochoric).max(0.0) * stiffness / t).sqrt();
        let (p_t, p_rho) = (push * t, stiffness * rho);
        let (v_t, v_rho) = match value {
            Value::Enthalpy => (
                of.isochoric * t + push * t / rho,
                stiffness - push * t / rho,
            ),
            Value::Entropy => (of.isochoric, -push / rho),
        };
        let determinant = v_t * p_rho - v_rho * p_t;
        let short = p - of.pressure;
        let steps = (
            (gap * p_rho - v_rho * short) / determinant,
            (v_t * short - gap * p_t) / determinant,
        );
        // NaN from a state that is none ends the search.
        if steps.0.is_finite() && steps.1.is_finite() {
            steps
        } else {
            (f64::MAX, f64::MAX)
        }
    }
}
