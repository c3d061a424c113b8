//! A first point on the bubble and on the dew curve, from nothing but the components' critical points and acentric factors.

use super::Stalled;
use super::density::density;
use super::equilibrium::{Hold, Point, ROOM, Side, converge};
use crate::model::mixture::{MOST, Mixture};

/// Reduced temperatures tried in turn: cold enough for a nearly ideal vapour.
const REDUCED_TEMPERATURES: [f64; 4] = [0.68, 0.74, 0.62, 0.8];

/// A converged point somewhere between 0.6 and 0.8 of the reducing temperature.
pub fn first_point(mixture: &Mixture, z: &[f64], side: Side) -> Result<Point, Stalled> {
    let (t_r, _) = mixture.reducing(z);
    REDUCED_TEMPERATURES
        .iter()
        .find_map(|reduced| at_temperature(mixture, z, side, reduced * t_r).ok())
        .ok_or(Stalled)
}

/// A converged point at a temperature well below critical: successive substitution from Wilson's correlation of vapour pressure, ln(p/p_c) = 5.373 (1 + ω)(1 − T_c/T)
/// (Michelsen & Mollerup 2007, Thermodynamic Models, ch. 10), then Newton.
pub fn at_temperature(mixture: &Mixture, z: &[f64], side: Side, t: f64) -> Result<Point, Stalled> {
    let n = z.len();
    let rt = mixture.gas_constant * t;
    let mut k = [0.0; MOST];
    for (k, f) in k.iter_mut().zip(&mixture.fluids) {
        *k = f.critical_pressure
            * (5.373 * (1.0 + f.acentric) * (1.0 - f.critical_temperature / t)).exp();
    }
    // k holds p K_i until the pressure is known.
    let mut p = match side {
        Side::Bubble => z.iter().zip(&k).map(|(z, k)| z * k).sum::<f64>(),
        Side::Dew => 1.0 / z.iter().zip(&k).map(|(z, k)| z / k).sum::<f64>(),
    };
    k[..n].iter_mut().for_each(|k| *k /= p);
    let mut w = [0.0; MOST];
    let mut rho = (0.0, 0.0);
    for _ in 0..12 {
        let mut sum = 0.0;
        for i in 0..n {
            w[i] = match side {
                Side::Bubble => z[i] * k[i],
                Side::Dew => z[i] / k[i],
            };
            sum += w[i];
        }
        w[..n].iter_mut().for_each(|w| *w /= sum);
        p *= match side {
            Side::Bubble => sum,
            Side::Dew => 1.0 / sum,
        };
        let (x, y) = match side {
            Side::Bubble => (z, &w[..n]),
            Side::Dew => (&w[..n], z),
        };
        let (_, rho_r) = mixture.reducing(x);
        let ideal = p / rt;
        let vapor = density(mixture, t, p, y, ideal, (0.5 * ideal, 3.0 * ideal))?;
        let liquid = density(mixture, t, p, x, 2.8 * rho_r, (1.8 * rho_r, 4.0 * rho_r))?;
        rho = (liquid, vapor);
        let l = mixture.phase(t, liquid, x);
        let v = mixture.phase(t, vapor, y);
        for i in 0..n {
            // K_i = φ_i(liquid)/φ_i(vapour) with ln φ_i = ln γ_i − ln(p/ρRT).
            k[i] = (l.ln_gamma[i] - v.ln_gamma[i] + (liquid / vapor).ln()).exp();
        }
    }
    let (bulk, incipient) = match side {
        Side::Bubble => rho,
        Side::Dew => (rho.1, rho.0),
    };
    let mut guess = [0.0; ROOM];
    for i in 0..n {
        guess[i] = (w[i] * incipient).ln();
    }
    guess[n] = bulk.ln();
    guess[n + 1] = t.ln();
    let point = converge(mixture, z, side, Hold::Temperature(t.ln()), &guess)?;
    let apart = log_ratio(&point, n, side);
    if apart > 1.0 { Ok(point) } else { Err(Stalled) }
}

/// ln of the density of the liquid over that of the vapour.
pub fn log_ratio(point: &Point, n: usize, side: Side) -> f64 {
    let incipient: f64 = point.unknowns[..n].iter().map(|ln| ln.exp()).sum();
    let difference = point.unknowns[n] - incipient.ln();
    match side {
        Side::Bubble => difference,
        Side::Dew => -difference,
    }
}
