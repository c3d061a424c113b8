//! Residual Helmholtz energy αʳ(τ, δ) of one fluid, and departure functions, which have the same kinds of term.
//!
//! Every kind but the non-analytic is n·A(δ)·B(τ), so with the operators D = δ ∂/∂δ and T = τ ∂/∂τ a term a has
//! `D a = a u`, `T a = a v`, `DD a = a (u² + Du)`, `DT a = a u v`, `TT a = a (v² + Tv)`,
//! where u = D ln A and v = T ln B. These derivatives in the logarithms are exact and cost one exponential a term.

use crate::data::Terms;

/// αʳ and its derivatives by the operators D = δ ∂/∂δ and T = τ ∂/∂τ.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Derivatives {
    pub a: f64,
    pub d: f64,
    pub t: f64,
    pub dd: f64,
    pub dt: f64,
    pub tt: f64,
}

impl Derivatives {
    /// Adds `factor` times another.
    #[inline]
    pub fn add(&mut self, factor: f64, other: &Derivatives) {
        self.a += factor * other.a;
        self.d += factor * other.d;
        self.t += factor * other.t;
        self.dd += factor * other.dd;
        self.dt += factor * other.dt;
        self.tt += factor * other.tt;
    }

    /// Adds a term of value `a` with logarithmic derivatives u, v and the derivatives Du, Tv of these.
    #[inline]
    fn term(&mut self, a: f64, u: f64, du: f64, v: f64, tv: f64) {
        self.a += a;
        self.d += a * u;
        self.t += a * v;
        self.dd += a * (u * u + du);
        self.dt += a * u * v;
        self.tt += a * (v * v + tv);
    }
}

/// Reduced temperature and density with their logarithms and the powers of δ that the exponentials need.
#[derive(Clone, Copy, Debug)]
pub struct Reduced {
    tau: f64,
    delta: f64,
    ln_tau: f64,
    ln_delta: f64,
    powers: [f64; 9],
}

impl Reduced {
    /// τ = T_r/T and δ = ρ/ρ_r.
    pub fn new(tau: f64, delta: f64) -> Self {
        let mut powers = [1.0; 9];
        for l in 1..powers.len() {
            powers[l] = powers[l - 1] * delta;
        }
        Reduced {
            tau,
            delta,
            ln_tau: tau.ln(),
            ln_delta: delta.ln(),
            powers,
        }
    }

    #[inline]
    fn log_power(&self, t: f64, d: f64) -> f64 {
        t * self.ln_tau + d * self.ln_delta
    }

    #[inline]
    fn delta_to(&self, l: f64) -> f64 {
        self.powers[(l as usize).min(8)]
    }
}

/// Sum of all terms.
pub fn residual(terms: &Terms, at: &Reduced) -> Derivatives {
    let mut sum = Derivatives::default();
    let (tau, delta) = (at.tau, at.delta);
    for &[n, t, d] in terms.power {
        sum.term(n * at.log_power(t, d).exp(), d, 0.0, t, 0.0);
    }
    for &[n, t, d, l, g] in terms.exponential {
        let e = g * at.delta_to(l);
        let a = n * (at.log_power(t, d) - e).exp();
        sum.term(a, d - l * e, -l * l * e, t, 0.0);
    }
    for &[n, t, d, l, m] in terms.double_exponential {
        let e = at.delta_to(l);
        let f = (m * at.ln_tau).exp();
        let a = n * (at.log_power(t, d) - e - f).exp();
        sum.term(a, d - l * e, -l * l * e, t - m * f, -m * m * f);
    }
    for &[n, t, d, eta, epsilon, beta, gamma] in terms.gaussian {
        let (x, y) = (delta - epsilon, tau - gamma);
        let a = n * (at.log_power(t, d) - eta * x * x - beta * y * y).exp();
        let (p, q) = (2.0 * eta * delta, 2.0 * beta * tau);
        sum.term(a, d - p * x, -p * (delta + x), t - q * y, -q * (tau + y));
    }
    for &[n, t, d, eta, epsilon, beta, gamma] in terms.gerg {
        let x = delta - epsilon;
        let a = n * (at.log_power(t, d) - eta * x * x - beta * (delta - gamma)).exp();
        let p = 2.0 * eta * delta;
        sum.term(
            a,
            d - p * x - beta * delta,
            -p * (delta + x) - beta * delta,
            t,
            0.0,
        );
    }
    for &[n, t, d, eta, epsilon, beta, gamma, b] in terms.gaob {
        let (x, y) = (delta - epsilon, tau - gamma);
        let w = 1.0 / (b + beta * y * y);
        let a = n * (at.log_power(t, d) + eta * x * x + w).exp();
        let p = 2.0 * eta * delta;
        let first = -2.0 * beta * y * w * w * tau;
        let second = (8.0 * beta * y * y * w - 2.0) * beta * w * w * tau * tau;
        sum.term(a, d + p * x, p * (delta + x), t + first, first + second);
    }
    for term in terms.nonanalytic {
        nonanalytic(&mut sum, term, tau, delta);
    }
    sum
}

/// The non-analytic term of Span & Wagner 1996 (J. Phys. Chem. Ref. Data 25, 1509, table 32), which shapes the critical region
/// of carbon dioxide.
fn nonanalytic(sum: &mut Derivatives, term: &[f64; 8], tau: f64, delta: f64) {
    let &[n, a, b, beta, ca, cb, cc, cd] = term;
    // The derivatives have a removable singularity at δ = 1; beside it they are continuous.
    let x = if (delta - 1.0).abs() < 1e-10 {
        1e-10
    } else {
        delta - 1.0
    };
    let y = tau - 1.0;
    let x2 = x * x;
    let half = 0.5 / beta;
    let root = x2.powf(half - 1.0);
    let theta = -y + ca * root * x2;
    let far = cb * x2.powf(a - 1.0);
    let big = theta * theta + far * x2;

    let big_d = x * (ca * theta * 2.0 / beta * root + 2.0 * a * far);
    let big_dd = big_d / x
        + 4.0 * a * (a - 1.0) * far
        + x2 * 2.0 * (ca / beta * root).powi(2)
        + ca * theta * 4.0 / beta * (half - 1.0) * root;
    let power = big.powf(b);
    let (p1, p2) = (b * power / big, b * (b - 1.0) * power / (big * big));
    let power_d = p1 * big_d;
    let power_dd = p1 * big_dd + p2 * big_d * big_d;
    let power_t = -2.0 * theta * p1;
    let power_tt = 2.0 * p1 + 4.0 * theta * theta * p2;
    let power_dt = -ca * 2.0 / beta * x * root * p1 - 2.0 * theta * p2 * big_d;

    let psi = (-cc * x2 - cd * y * y).exp();
    let psi_d = -2.0 * cc * x * psi;
    let psi_dd = (2.0 * cc * x2 - 1.0) * 2.0 * cc * psi;
    let psi_t = -2.0 * cd * y * psi;
    let psi_tt = (2.0 * cd * y * y - 1.0) * 2.0 * cd * psi;
    let psi_dt = 4.0 * cc * cd * x * y * psi;

    let phi_d = power * (psi + delta * psi_d) + power_d * delta * psi;
    let phi_dd = power * (2.0 * psi_d + delta * psi_dd)
        + 2.0 * power_d * (psi + delta * psi_d)
        + power_dd * delta * psi;
    let phi_t = delta * (power_t * psi + power * psi_t);
    let phi_tt = delta * (power_tt * psi + 2.0 * power_t * psi_t + power * psi_tt);
    let phi_dt = power * (psi_t + delta * psi_dt)
        + delta * power_d * psi_t
        + power_t * (psi + delta * psi_d)
        + power_dt * delta * psi;

    sum.a += n * power * delta * psi;
    sum.d += n * delta * phi_d;
    sum.t += n * tau * phi_t;
    sum.dd += n * delta * (phi_d + delta * phi_dd);
    sum.dt += n * delta * tau * phi_dt;
    sum.tt += n * tau * (phi_t + tau * phi_tt);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::data::FLUIDS;

    /// The derivatives against central differences of the values one order below.
    #[test]
    fn derivatives_are_those_of_the_values() {
        for fluid in &FLUIDS {
            for (tau, delta) in [(0.8, 0.1), (1.05, 0.7), (1.2, 1.4), (1.5, 2.6), (1.9, 2.9)] {
                let at =
                    |tau: f64, delta: f64| residual(&fluid.residual, &Reduced::new(tau, delta));
                let here = at(tau, delta);
                let h = 1e-5;
                let d = (at(tau, delta * (1.0 + h)), at(tau, delta * (1.0 - h)));
                let t = (at(tau * (1.0 + h), delta), at(tau * (1.0 - h), delta));
                let width = (1.0 + h).ln() - (1.0 - h).ln();
                let scale = here.a.abs() + here.dd.abs() + here.tt.abs() + 1.0;
                for (got, (up, down)) in [
                    (here.d, (d.0.a, d.1.a)),
                    (here.t, (t.0.a, t.1.a)),
                    (here.dd, (d.0.d, d.1.d)),
                    (here.dt, (d.0.t, d.1.t)),
                    (here.dt, (t.0.d, t.1.d)),
                    (here.tt, (t.0.t, t.1.t)),
                ] {
                    let want = (up - down) / width;
                    assert!(
                        (got - want).abs() < 3e-6 * scale,
                        "{} at τ {tau}, δ {delta}: {got} and {want}",
                        fluid.designation
                    );
                }
            }
        }
    }
}
