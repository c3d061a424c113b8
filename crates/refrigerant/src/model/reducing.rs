//! Reducing temperature and volume of a mixture.
//!
//! Kunz & Wagner 2012 (J. Chem. Eng. Data 57, 3032, eqs. 16 and 17):
//! Y_r = Σ x_i² Y_i + Σ_{i<j} 2 x_i x_j β γ Y_ij (x_i + x_j)/(β² x_i + x_j).
//! Read as a function of free x it is homogeneous of degree 2, which makes the derivatives by mole numbers short.

use super::mixture::MOST;

/// One pair of the sum: weight 2 β γ Y_ij and β².
#[derive(Clone, Copy, Debug)]
pub struct Cross {
    pub i: usize,
    pub j: usize,
    pub weight: f64,
    pub beta_squared: f64,
}

/// Y_r with first and second derivatives by free mole fractions.
#[derive(Clone, Copy, Debug, Default)]
pub struct Reducing {
    pub value: f64,
    pub first: [f64; MOST],
    pub second: [[f64; MOST]; MOST],
}

/// Y_r alone.
pub fn value(pure: &[f64], pairs: &[Cross], x: &[f64]) -> f64 {
    let mut sum = 0.0;
    for (y, x) in pure.iter().zip(x) {
        sum += x * x * y;
    }
    for c in pairs {
        let (a, b) = (x[c.i], x[c.j]);
        sum += c.weight * a * b * (a + b) / (c.beta_squared * a + b);
    }
    sum
}

/// Y_r and its derivatives.
pub fn derivatives(pure: &[f64], pairs: &[Cross], x: &[f64]) -> Reducing {
    let mut out = Reducing::default();
    for (i, (&y, &x)) in pure.iter().zip(x).enumerate() {
        out.value += x * x * y;
        out.first[i] += 2.0 * x * y;
        out.second[i][i] += 2.0 * y;
    }
    for c in pairs {
        let (a, b, beta2) = (x[c.i], x[c.j], c.beta_squared);
        let inverse = 1.0 / (beta2 * a + b);
        let f = a * b * (a + b) * inverse;
        let fa = (b * (2.0 * a + b) - f * beta2) * inverse;
        let fb = (a * (a + 2.0 * b) - f) * inverse;
        let faa = 2.0 * (b - fa * beta2) * inverse;
        let fbb = 2.0 * (a - fb) * inverse;
        let fab = (2.0 * (a + b) - fb * beta2 - fa) * inverse;
        out.value += c.weight * f;
        out.first[c.i] += c.weight * fa;
        out.first[c.j] += c.weight * fb;
        out.second[c.i][c.i] += c.weight * faa;
        out.second[c.j][c.j] += c.weight * fbb;
        out.second[c.i][c.j] += c.weight * fab;
        out.second[c.j][c.i] += c.weight * fab;
    }
    out
}
