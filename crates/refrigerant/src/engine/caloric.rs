//! States from pressure and enthalpy or entropy.

use super::Engine;
use super::saturation::Saturated;
use super::single::Region;
use crate::algorithm::envelope::Given;
use crate::algorithm::properties::{Properties, properties};
use crate::{Calculation, Error, Quantity, State};

/// Which caloric value is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Value {
    Enthalpy,
    Entropy,
}

impl Value {
    fn quantity(self) -> Quantity {
        match self {
            Value::Enthalpy => Quantity::Enthalpy,
            Value::Entropy => Quantity::Entropy,
        }
    }

    pub(super) fn of(self, properties: &Properties) -> f64 {
        self.pick((properties.enthalpy, properties.entropy))
    }

    fn pick(self, (enthalpy, entropy): (f64, f64)) -> f64 {
        match self {
            Value::Enthalpy => enthalpy,
            Value::Entropy => entropy,
        }
    }
}

/// Where along an isobar a single phase is looked for: temperatures, and how its density is found.
struct Stretch<'a> {
    from: f64,
    to: f64,
    start: f64,
    density: &'a dyn Fn(f64) -> Result<f64, Error>,
}

impl Engine {
    pub fn state_at_pressure_enthalpy(&self, p: f64, h: f64) -> Result<State, Error> {
        self.caloric_state(p, Value::Enthalpy, h)
    }

    pub fn state_at_pressure_entropy(&self, p: f64, s: f64) -> Result<State, Error> {
        self.caloric_state(p, Value::Entropy, s)
    }

    fn caloric_state(&self, p: f64, value: Value, given: f64) -> Result<State, Error> {
        self.check_pressure(p)?;
        let target = match value {
            Value::Enthalpy => given * self.molar_mass + self.reference().0,
            Value::Entropy => given * self.molar_mass + self.reference().1,
        };
        let at = |s: &Saturated| properties(&self.mixture, s.temperature, s.density, &self.z);
        match self.saturated_pair(p)? {
            Region::Subcritical(bubble, dew) => {
                let (l, v) = (at(&bubble), at(&dew));
                let (low, high) = (value.of(&l), value.of(&v));
                if target < low {
                    self.along(
                        p,
                        value,
                        target,
                        &Stretch {
                            from: self.lowest,
                            to: bubble.temperature,
                            start: bubble.temperature,
                            density: &|t| self.fluid(t, p),
                        },
                    )
                } else if target > high {
                    self.along(
                        p,
                        value,
                        target,
                        &Stretch {
                            from: dew.temperature,
                            to: self.highest,
                            start: dew.temperature,
                            density: &|t| self.vapor(t, p, dew.density),
                        },
                    )
                } else if self.z.len() == 1 {
                    let quality = (target - low) / (high - low);
                    Ok(self.lever((&bubble, &l), (&dew, &v), quality))
                } else {
                    self.within(p, value, target, low, high)
                }
            }
            Region::Cold(dew) => self.along(
                p,
                value,
                target,
                &Stretch {
                    from: dew.temperature,
                    to: self.highest,
                    start: dew.temperature,
                    density: &|t| self.vapor(t, p, dew.density),
                },
            ),
            Region::Thin => self.along(
                p,
                value,
                target,
                &Stretch {
                    from: self.lowest,
                    to: self.highest,
                    start: self.critical().temperature.clamp(self.lowest, self.highest),
                    density: &|t| self.vapor(t, p, 3.0 * p / (self.mixture.gas_constant * t)),
                },
            ),
            Region::Dense => self.along(
                p,
                value,
                target,
                &Stretch {
                    from: self.lowest,
                    to: self.highest,
                    start: self.critical().temperature.clamp(self.lowest, self.highest),
                    density: &|t| self.fluid(t, p),
                },
            ),
        }
    }

    /// Newton's method for the temperature of a single phase, inside a bracket: ∂h/∂T = c_p and ∂s/∂ln T = c_p at constant pressure.
    fn along(
        &self,
        p: f64,
        value: Value,
        target: f64,
        stretch: &Stretch<'_>,
    ) -> Result<State, Error> {
        let evaluate = |t: f64| -> Result<(f64, Properties), Error> {
            let rho = (stretch.density)(t)?;
            Ok((rho, properties(&self.mixture, t, rho, &self.z)))
        };
        let outside = || -> Error {
            let mass = |molar: f64| match value {
                Value::Enthalpy => self.mass_enthalpy(molar),
                Value::Entropy => self.mass_entropy(molar),
            };
            let end = |t: f64| evaluate(t).map(|(_, of)| mass(value.of(&of)));
            match (end(stretch.from), end(stretch.to)) {
                (Ok(low), Ok(high)) => Error::OutOfRange {
                    quantity: value.quantity(),
                    value: mass(target),
                    low,
                    high,
                },
                (Err(error), _) | (_, Err(error)) => error,
            }
        };
        if !target.is_finite() {
            return Err(outside());
        }
        let (mut low, mut high) = (stretch.from, stretch.to);
        let mut t = stretch.start;
        for _ in 0..100 {
            let (rho, of) = evaluate(t)?;
            let gap = target - value.of(&of);
            let next = match value {
                Value::Enthalpy => t + gap / of.isobaric,
                Value::Entropy => t * (gap / of.isobaric).exp(),
            };
            if (next - t).abs() <= 1e-12 * t {
                return Ok(self.single_state(t, p, rho));
            }
            if (gap > 0.0 && t >= stretch.to) || (gap < 0.0 && t <= stretch.from) {
                return Err(outside());
            }
            if gap > 0.0 {
                low = t;
            } else {
                high = t;
            }
            // An end is tried before the bracket is halved towards it.
            t = if next >= high {
                if high >= stretch.to {
                    high
                } else {
                    0.5 * (low + high)
                }
            } else if next <= low {
                if low <= stretch.from {
                    low
                } else {
                    0.5 * (low + high)
                }
            } else {
                next
            };
        }
        Err(Error::NotConverged {
            calculation: Calculation::Flash,
            quantity: value.quantity(),
            value: target,
        })
    }

    /// The quality of a blend in two phases: secants inside a bracket, the value rising steadily with quality.
    fn within(
        &self,
        p: f64,
        value: Value,
        target: f64,
        below: f64,
        above: f64,
    ) -> Result<State, Error> {
        let span = above - below;
        let (mut low, mut high) = (0.0, 1.0);
        let mut last = (0.0, below - target);
        let mut q = -last.1 / span;
        if !(1e-9..=1.0 - 1e-9).contains(&q) {
            return self.two_phase(p, q);
        }
        let ends = self.ends(Given::Pressure, p)?;
        let mut near = None;
        for _ in 0..100 {
            let split = self.split_at_quality(p, q, &ends, near.as_ref())?;
            let gap = value.pick(self.split_caloric(&split)) - target;
            if gap.abs() <= 1e-12 * span || high - low < 1e-14 {
                return Ok(self.split_state(p, &split));
            }
            if gap < 0.0 {
                low = q;
            } else {
                high = q;
            }
            near = Some(split);
            let next = q - gap * (q - last.0) / (gap - last.1);
            last = (q, gap);
            q = if next > low && next < high {
                next
            } else {
                0.5 * (low + high)
            };
        }
        Err(Error::NotConverged {
            calculation: Calculation::Flash,
            quantity: value.quantity(),
            value: target,
        })
    }
}
