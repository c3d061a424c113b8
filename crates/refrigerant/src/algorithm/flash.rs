//! Two phases in equilibrium at a given pressure, with one more value held.
//!
//! Unknowns are the moles of each component in the vapour, for one mole in all, ln ρ of liquid and of vapour, and ln T; material
//! balance is thereby met exactly. Equations are equal fugacities, the pressure of each phase, and the value held.

use super::equilibrium::{Point, composition};
use super::linear::solve;
use super::{Stalled, properties};
use crate::model::mixture::{MOST, Mixture, Vector};

const ROOM: usize = MOST + 3;

/// What is held besides the pressure.
#[derive(Clone, Copy, Debug)]
pub enum Hold {
    /// Mass of vapour over total mass.
    Quality(f64),
    /// Temperature, K.
    Temperature(f64),
}

/// A split of one mole into two phases.
#[derive(Clone, Copy, Debug)]
pub struct Split {
    /// K.
    pub temperature: f64,
    /// Moles of vapour.
    pub vapor_amount: f64,
    /// Mole fractions and density, mol/m³, of the liquid.
    pub liquid: (Vector, f64),
    /// Mole fractions and density, mol/m³, of the vapour.
    pub vapor: (Vector, f64),
}

/// A first guess between the bubble and the dew point at the same pressure, at a molar share of vapour.
///
/// ln K_i, ln T and the densities are taken as linear between the two.
pub fn between(z: &[f64], bubble: &Point, dew: &Point, vapor_amount: f64) -> Split {
    let n = z.len();
    let (v, l) = (vapor_amount, 1.0 - vapor_amount);
    let (bubble_vapor, y) = composition(&bubble.unknowns[..n]);
    let (dew_liquid, x) = composition(&dew.unknowns[..n]);
    let mix = |a: f64, b: f64| (l * a.ln() + v * b.ln()).exp();
    let mut split = Split {
        temperature: (l * bubble.unknowns[n + 1] + v * dew.unknowns[n + 1]).exp(),
        vapor_amount: 0.0,
        liquid: ([0.0; MOST], mix(bubble.unknowns[n].exp(), dew_liquid)),
        vapor: ([0.0; MOST], mix(bubble_vapor, dew.unknowns[n].exp())),
    };
    for i in 0..n {
        let k = mix(y[i] / z[i], z[i] / x[i]);
        let amount = z[i] * v * k / (l + v * k);
        split.vapor.0[i] = amount;
        split.liquid.0[i] = z[i] - amount;
        split.vapor_amount += amount;
    }
    let total = split.vapor_amount;
    split.vapor.0.iter_mut().for_each(|y| *y /= total);
    split.liquid.0.iter_mut().for_each(|x| *x /= 1.0 - total);
    split
}

/// Newton's method from a guess, at a pressure in Pa.
pub fn converge(
    mixture: &Mixture,
    z: &[f64],
    p: f64,
    hold: Hold,
    guess: &Split,
) -> Result<Split, Stalled> {
    let n = z.len();
    let size = n + 3;
    let r = mixture.gas_constant;
    let mass = mixture.molar_mass(z);
    let mut amounts = [0.0; MOST];
    for (a, y) in amounts.iter_mut().zip(&guess.vapor.0) {
        *a = y * guess.vapor_amount;
    }
    let mut logs = [
        guess.liquid.1.ln(),
        guess.vapor.1.ln(),
        guess.temperature.ln(),
    ];
    let mut before = f64::INFINITY;
    for round in 0..60 {
        let [ln_liquid, ln_vapor, ln_t] = logs;
        let t = ln_t.exp();
        let v: f64 = amounts[..n].iter().sum();
        let l = 1.0 - v;
        let (mut x, mut y) = ([0.0; MOST], [0.0; MOST]);
        for i in 0..n {
            y[i] = amounts[i] / v;
            x[i] = (z[i] - amounts[i]) / l;
        }
        let liquid = mixture.phase(t, ln_liquid.exp(), &x[..n]);
        let vapor = mixture.phase(t, ln_vapor.exp(), &y[..n]);

        let mut a = [[0.0; ROOM]; ROOM];
        let mut b = [[0.0; 2]; ROOM];
        for i in 0..n {
            b[i][0] = x[i].ln() + ln_liquid + liquid.ln_gamma[i]
                - y[i].ln()
                - ln_vapor
                - vapor.ln_gamma[i];
            // ln f_i by the moles of j in a phase of m moles, at its ρ: δ_ij/m_j + (F_ij − 1 − DF_i)/m.
            let (in_liquid, in_vapor) = (1.0 + liquid.by_density[i], 1.0 + vapor.by_density[i]);
            for j in 0..n {
                a[i][j] =
                    (vapor.second[i][j] - in_vapor) / v + (liquid.second[i][j] - in_liquid) / l;
            }
            a[i][i] += 1.0 / amounts[i] + 1.0 / (z[i] - amounts[i]);
            a[i][n] = -in_liquid;
            a[i][n + 1] = in_vapor;
            a[i][n + 2] = liquid.by_tau[i] - vapor.by_tau[i];
        }
        for (row, sign, amount, phase, ln_rho) in [
            (n, -1.0, l, &liquid, ln_liquid),
            (n + 1, 1.0, v, &vapor, ln_vapor),
        ] {
            let rho = ln_rho.exp();
            let unit = rho * r * t / p;
            let bulk = &phase.bulk;
            b[row][0] = 1.0 - properties::pressure(mixture, t, rho, bulk) / p;
            // p by the moles of j at constant ρ: ρRT (1 + DF_j − (1 + D + DD))/m; Σ x_j of it is 0, as it must be.
            for j in 0..n {
                a[row][j] = sign * unit * (phase.by_density[j] - bulk.d - bulk.dd) / amount;
            }
            a[row][row] = unit * (1.0 + bulk.d + bulk.dd);
            a[row][n + 2] = unit * (1.0 + bulk.d - bulk.dt);
        }
        match hold {
            Hold::Quality(quality) => {
                let mut now = 0.0;
                for j in 0..n {
                    let share = mixture.fluids[j].molar_mass / mass;
                    a[n + 2][j] = share;
                    now += share * amounts[j];
                }
                b[n + 2][0] = quality - now;
            }
            Hold::Temperature(temperature) => {
                a[n + 2][n + 2] = 1.0;
                b[n + 2][0] = temperature.ln() - ln_t;
            }
        }
        if !solve(&mut a, &mut b, size) {
            return Err(Stalled);
        }
        // No component may leave a phase within one step.
        let mut damping: f64 = 1.0;
        let mut largest: f64 = 0.0;
        for i in 0..n {
            let step = b[i][0];
            let room = if step < 0.0 {
                amounts[i]
            } else {
                z[i] - amounts[i]
            };
            damping = damping.min(0.7 * room / step.abs());
            largest = largest.max(step.abs() / z[i]);
        }
        for step in &b[n..size] {
            damping = damping.min(0.3 / step[0].abs());
            largest = largest.max(step[0].abs());
        }
        for i in 0..n {
            amounts[i] += damping * b[i][0];
        }
        for (log, step) in logs.iter_mut().zip(&b[n..size]) {
            *log += damping * step[0];
        }
        if largest < 1e-9 || (largest < 1e-7 && largest > 0.3 * before && round > 3) {
            return Ok(split(z, &amounts, &logs));
        }
        before = largest;
    }
    Err(Stalled)
}

fn split(z: &[f64], amounts: &Vector, logs: &[f64; 3]) -> Split {
    let vapor_amount: f64 = amounts[..z.len()].iter().sum();
    let mut out = Split {
        temperature: logs[2].exp(),
        vapor_amount,
        liquid: ([0.0; MOST], logs[0].exp()),
        vapor: ([0.0; MOST], logs[1].exp()),
    };
    for (i, z) in z.iter().enumerate() {
        out.vapor.0[i] = amounts[i] / vapor_amount;
        out.liquid.0[i] = (z - amounts[i]) / (1.0 - vapor_amount);
    }
    out
}
