//! Equilibrium of a phase of given composition, the bulk, with the first of another, the incipient phase.
//!
//! Unknowns are ln ρ_j of the incipient phase's partial densities, ln ρ of the bulk and ln T. Equations are equal fugacity of
//! every component, equal pressure, and one value held. In these isochoric variables (Deiters & Bell 2018,
//! AIChE J. 64, 2745) no density has to be solved for inside, and the whole Jacobian is exact.

use super::linear::solve;
use super::{Stalled, properties};
use crate::model::mixture::{MOST, Mixture, PhaseModel};

/// Room for the unknowns.
pub const ROOM: usize = MOST + 2;

/// The unknowns in order: ln ρ_j of the incipient phase, ln ρ of the bulk, ln T. After them ln p is kept.
pub type Unknowns = [f64; ROOM];

/// Which phase the bulk is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The bulk is liquid: bubble point.
    Bubble,
    /// The bulk is vapour: dew point.
    Dew,
}

/// What is held.
#[derive(Clone, Copy, Debug)]
pub enum Hold {
    /// ln T.
    Temperature(f64),
    /// ln p.
    Pressure(f64),
    /// ln of the density of the liquid over that of the vapour.
    Ratio(f64),
}

/// A converged point.
#[derive(Clone, Copy, Debug)]
pub struct Point {
    pub unknowns: Unknowns,
    /// Derivative of the unknowns by the held value.
    pub slope: Unknowns,
    /// ln p and its derivative by the held value.
    pub ln_p: f64,
    pub ln_p_slope: f64,
}

/// Composition and total density from the logarithms of partial densities.
pub fn composition(partial: &[f64]) -> (f64, [f64; MOST]) {
    let mut x = [0.0; MOST];
    let mut total = 0.0;
    for (x, ln) in x.iter_mut().zip(partial) {
        *x = ln.exp();
        total += *x;
    }
    x.iter_mut().for_each(|x| *x /= total);
    (total, x)
}

/// Newton's method from a guess.
pub fn converge(
    mixture: &Mixture,
    z: &[f64],
    side: Side,
    hold: Hold,
    guess: &Unknowns,
) -> Result<Point, Stalled> {
    let n = z.len();
    let size = n + 2;
    let r = mixture.gas_constant;
    let mut y = *guess;
    let mut before = f64::INFINITY;
    for round in 0..40 {
        let t = y[n + 1].exp();
        let rho = y[n].exp();
        let (rho_i, x) = composition(&y[..n]);
        let bulk = mixture.phase(t, rho, z);
        let other = mixture.phase(t, rho_i, &x[..n]);
        let p_bulk = properties::pressure(mixture, t, rho, &bulk.bulk);
        let p_other = properties::pressure(mixture, t, rho_i, &other.bulk);

        let mut a = [[0.0; ROOM]; ROOM];
        let mut b = [[0.0; 2]; ROOM];
        for i in 0..n {
            b[i][0] =
                (x[i] * rho_i).ln() + other.ln_gamma[i] - (z[i] * rho).ln() - bulk.ln_gamma[i];
            for j in 0..n {
                a[i][j] = -x[j] * other.second[i][j];
            }
            a[i][i] -= 1.0;
            a[i][n] = 1.0 + bulk.by_density[i];
            a[i][n + 1] = other.by_tau[i] - bulk.by_tau[i];
        }
        let unit = r * t * rho.min(rho_i);
        let bulk_row = pressure_row(&bulk, rho * r * t / unit);
        let other_row = pressure_row(&other, rho_i * r * t / unit);
        b[n][0] = (p_other - p_bulk) / unit;
        for j in 0..n {
            a[n][j] = -x[j] * rho_i * r * t / unit * (1.0 + other.by_density[j]);
        }
        a[n][n] = bulk_row.0;
        a[n][n + 1] = bulk_row.1 - other_row.1;

        // ln p by the unknowns, from the vapour, whose pressure is the well-conditioned one.
        let vapor_is_bulk = side == Side::Dew;
        let p = if vapor_is_bulk { p_bulk } else { p_other };
        let mut ln_p_row = [0.0; ROOM];
        if vapor_is_bulk {
            ln_p_row[n] = bulk_row.0 * unit / p;
            ln_p_row[n + 1] = bulk_row.1 * unit / p;
        } else {
            for j in 0..n {
                ln_p_row[j] = -a[n][j] * unit / p;
            }
            ln_p_row[n + 1] = other_row.1 * unit / p;
        }
        match hold {
            Hold::Temperature(value) => {
                a[n + 1][n + 1] = 1.0;
                b[n + 1][0] = value - y[n + 1];
            }
            Hold::Pressure(value) => {
                a[n + 1] = ln_p_row;
                b[n + 1][0] = value - p.ln();
            }
            Hold::Ratio(value) => {
                let sign = if vapor_is_bulk { 1.0 } else { -1.0 };
                for j in 0..n {
                    a[n + 1][j] = sign * x[j];
                }
                a[n + 1][n] = -sign;
                b[n + 1][0] = value - sign * (rho_i.ln() - y[n]);
            }
        }
        b[n + 1][1] = 1.0;
        if !solve(&mut a, &mut b, size) {
            return Err(Stalled);
        }
        let largest = b[..size].iter().fold(0.0f64, |m, v| m.max(v[0].abs()));
        let damping = if largest > 0.5 { 0.5 / largest } else { 1.0 };
        for (y, b) in y.iter_mut().zip(&b[..size]) {
            *y += damping * b[0];
        }
        // Newton doubles the digits of a step this small; where rounding keeps it from shrinking further it is as good as it gets.
        if largest < 1e-8 || (largest < 1e-6 && largest > 0.3 * before && round > 3) {
            let mut slope = [0.0; ROOM];
            for (s, b) in slope.iter_mut().zip(&b[..size]) {
                *s = b[1];
            }
            let step: f64 = ln_p_row.iter().zip(&b).map(|(row, b)| row * b[0]).sum();
            return Ok(Point {
                unknowns: y,
                slope,
                ln_p: p.ln() + step,
                ln_p_slope: ln_p_row.iter().zip(&slope).map(|(row, s)| row * s).sum(),
            });
        }
        before = largest;
    }
    Err(Stalled)
}

/// ∂p/∂ln ρ and ∂p/∂ln T of a phase, over `unit` of pressure per ρRT.
fn pressure_row(phase: &PhaseModel, unit: f64) -> (f64, f64) {
    let b = &phase.bulk;
    (unit * (1.0 + b.d + b.dd), unit * (1.0 + b.d - b.dt))
}
