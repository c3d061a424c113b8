//! Smooth functions of one variable as piecewise Chebyshev polynomials, cut in halves until each piece is met to rounding.
//!
//! For a pure fluid ln ρ of both saturated phases and ln p are smooth in θ = √(1 − T/T_c), so once solved for at the nodes they need no further
//! iteration (the idea of superancillary equations: Bell & Alpert 2021, Int. J. Thermophys. 42, 133).

use std::f64::consts::PI;

/// Count of coefficients of a piece, its nodes.
const NODES: usize = 14;
/// Largest of the last coefficients that counts as rounding, for functions that are logarithms.
const TAIL: f64 = 1e-12;
/// By how much a value may lie past the end of a piece.
const EDGE: f64 = 1e-11;
/// Most halvings; a function that is not smooth enough stays without a fit there.
const DEPTH: usize = 9;

/// Values of `N` functions on an interval.
#[derive(Clone, Debug)]
struct Piece<const N: usize> {
    low: f64,
    high: f64,
    coefficients: [[f64; NODES]; N],
}

/// `N` functions over a range; parts of it may be left out.
#[derive(Clone, Debug)]
pub struct Fit<const N: usize> {
    pieces: Vec<Piece<N>>,
}

impl<const N: usize> Fit<N> {
    /// Fits functions, given together, from `low` to `high`.
    pub fn new(low: f64, high: f64, f: &impl Fn(f64) -> Option<[f64; N]>) -> Fit<N> {
        let mut fit = Fit { pieces: Vec::new() };
        fit.add(low, high, f, 0);
        fit
    }

    fn add(&mut self, low: f64, high: f64, f: &impl Fn(f64) -> Option<[f64; N]>, depth: usize) {
        if depth > DEPTH {
            return;
        }
        if let Some(piece) = Piece::new(low, high, f) {
            self.pieces.push(piece);
            return;
        }
        let middle = 0.5 * (low + high);
        self.add(low, middle, f, depth + 1);
        self.add(middle, high, f, depth + 1);
    }

    /// The functions at a place, where there is a fit.
    pub fn at(&self, x: f64) -> Option<[f64; N]> {
        let i = self.pieces.partition_point(|piece| piece.high < x);
        let piece = self.pieces.get(i).filter(|piece| piece.low <= x)?;
        let u = (2.0 * x - piece.low - piece.high) / (piece.high - piece.low);
        Some(piece.coefficients.map(|c| clenshaw(&c, u)))
    }

    /// Where function `k`, which falls, has a value: Newton from a guess, inside the piece that holds it.
    pub fn find(&self, k: usize, value: f64) -> Option<f64> {
        let i = self
            .pieces
            .partition_point(|piece| clenshaw(&piece.coefficients[k], 1.0) > value + EDGE);
        let piece = self.pieces.get(i)?;
        let c = &piece.coefficients[k];
        let (first, last) = (clenshaw(c, -1.0), clenshaw(c, 1.0));
        if value > first + EDGE {
            return None;
        }
        let mut u = (-1.0 + 2.0 * (value - first) / (last - first)).clamp(-1.0, 1.0);
        for _ in 0..12 {
            let (at, slope) = clenshaw_with_slope(c, u);
            let step = (value - at) / slope;
            u = (u + step).clamp(-1.0, 1.0);
            // Newton's next step would be the square of this one.
            if step.abs() < 1e-8 {
                return Some(0.5 * (piece.low + piece.high + u * (piece.high - piece.low)));
            }
        }
        None
    }
}

impl<const N: usize> Piece<N> {
    fn new(low: f64, high: f64, f: &impl Fn(f64) -> Option<[f64; N]>) -> Option<Piece<N>> {
        let mut values = [[0.0; N]; NODES];
        for (j, value) in values.iter_mut().enumerate() {
            let u = (PI * (j as f64 + 0.5) / NODES as f64).cos();
            *value = f(0.5 * (low + high + u * (high - low)))?;
        }
        let mut coefficients = [[0.0; NODES]; N];
        for (k, c) in coefficients.iter_mut().enumerate() {
            for (m, c) in c.iter_mut().enumerate() {
                let sum: f64 = values
                    .iter()
                    .enumerate()
                    .map(|(j, v)| v[k] * (PI * m as f64 * (j as f64 + 0.5) / NODES as f64).cos())
                    .sum();
                *c = sum * if m == 0 { 1.0 } else { 2.0 } / NODES as f64;
            }
            if c[NODES - 3..].iter().any(|c| c.abs() > TAIL) {
                return None;
            }
        }
        Some(Piece {
            low,
            high,
            coefficients,
        })
    }
}

/// Clenshaw's sum.
fn clenshaw(c: &[f64; NODES], u: f64) -> f64 {
    let (mut b1, mut b2) = (0.0, 0.0);
    for &c in c[1..].iter().rev() {
        (b1, b2) = (c + 2.0 * u * b1 - b2, b1);
    }
    c[0] + u * b1 - b2
}

/// The sum and its derivative by u.
fn clenshaw_with_slope(c: &[f64; NODES], u: f64) -> (f64, f64) {
    let (mut b1, mut b2, mut d1, mut d2) = (0.0, 0.0, 0.0, 0.0);
    for &c in c[1..].iter().rev() {
        (d1, d2) = (2.0 * b1 + 2.0 * u * d1 - d2, d1);
        (b1, b2) = (c + 2.0 * u * b1 - b2, b1);
    }
    (c[0] + u * b1 - b2, b1 + u * d1 - d2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_smooth_function_is_met_and_turned_round() {
        let f = |x: f64| Some([(-3.0 * x).exp(), x.sin()]);
        let fit = Fit::new(0.1, 2.0, &f);
        for i in 0..100 {
            let x = 0.1 + 1.9 * f64::from(i) / 99.0;
            let got = fit.at(x).expect("inside");
            assert!((got[0] - (-3.0 * x).exp()).abs() < 1e-12);
            assert!((got[1] - x.sin()).abs() < 1e-12);
            let back = fit.find(0, (-3.0 * x).exp()).expect("inside");
            assert!((back - x).abs() < 1e-10);
        }
        assert_eq!(fit.at(2.1), None);
        assert_eq!(fit.find(0, 1.0), None);
    }

    #[test]
    fn what_is_not_smooth_is_left_out() {
        let fit = Fit::new(-1.0, 1.0, &|x: f64| Some([(x - 0.3).abs()]));
        assert_eq!(fit.at(0.3), None);
        assert!(fit.at(-0.9).is_some());
    }
}
