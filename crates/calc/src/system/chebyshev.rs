//! Smooth functions of one variable as Chebyshev series in pieces, several columns at once.
//!
//! Source: Trefethen, Approximation Theory and Approximation Practice: interpolation in Chebyshev points, whose last coefficients
//! tell the error.

use std::f64::consts::PI;

/// Points of a piece: so many that one or two pieces are enough for 1e-7 over some 40 K of saturation properties.
const NODES: usize = 14;

/// Halvings of a piece before it is taken as it is.
const DEPTH: u32 = 5;

/// A series between two ends.
#[derive(Clone, Debug)]
struct Piece<const N: usize> {
    low: f64,
    high: f64,
    /// One row of columns a degree.
    coefficients: [[f64; N]; NODES],
}

impl<const N: usize> Piece<N> {
    fn at(&self, x: f64) -> [f64; N] {
        let t = ((x - self.low) - (self.high - x)) / (self.high - self.low);
        let (mut later, mut last) = ([0.0; N], [0.0; N]);
        for row in self.coefficients.iter().skip(1).rev() {
            let mut next = [0.0; N];
            for (((next, row), last), later) in next.iter_mut().zip(row).zip(&last).zip(&later) {
                *next = row + 2.0 * t * last - later;
            }
            (later, last) = (last, next);
        }
        let mut value = self.coefficients[0];
        for ((value, last), later) in value.iter_mut().zip(&last).zip(&later) {
            *value += t * last - later;
        }
        value
    }

    fn through(low: f64, high: f64, values: &[[f64; N]; NODES]) -> Self {
        let mut coefficients = [[0.0; N]; NODES];
        for (degree, row) in coefficients.iter_mut().enumerate() {
            let weight = if degree == 0 { 1.0 } else { 2.0 } / NODES as f64;
            for (node, values) in values.iter().enumerate() {
                let factor = weight * (degree as f64 * angle(node)).cos();
                for (cell, value) in row.iter_mut().zip(values) {
                    *cell += factor * value;
                }
            }
        }
        Self {
            low,
            high,
            coefficients,
        }
    }

    fn is_within(&self, tolerance: &[f64; N]) -> bool {
        self.coefficients
            .iter()
            .skip(NODES - 2)
            .all(|row| row.iter().zip(tolerance).all(|(c, most)| c.abs() <= *most))
    }
}

fn angle(node: usize) -> f64 {
    // Backwards, so that the points rise.
    PI * (1.0 - (node as f64 + 0.5) / NODES as f64)
}

/// A function of one variable with `N` columns.
#[derive(Clone, Debug)]
pub(crate) struct Series<const N: usize> {
    pieces: Vec<Piece<N>>,
}

impl<const N: usize> Series<N> {
    /// An empty series; [`Series::extend`] gives it pieces from low to high.
    pub(crate) fn new() -> Self {
        Self { pieces: Vec::new() }
    }

    /// Adds the function between two ends, in as many pieces as keep each column within its tolerance.
    ///
    /// # Errors
    /// The function's first.
    pub(crate) fn extend<E>(
        &mut self,
        (low, high): (f64, f64),
        tolerance: &[f64; N],
        f: &mut impl FnMut(f64) -> Result<[f64; N], E>,
    ) -> Result<(), E> {
        // Between ends that are one point there is nothing to follow.
        if high - low <= 1e-9 {
            return Ok(());
        }
        self.halve((low, high), tolerance, DEPTH, f)
    }

    /// Whether there is no piece.
    pub(crate) fn is_empty(&self) -> bool {
        self.pieces.is_empty()
    }

    fn halve<E>(
        &mut self,
        (low, high): (f64, f64),
        tolerance: &[f64; N],
        depth: u32,
        f: &mut impl FnMut(f64) -> Result<[f64; N], E>,
    ) -> Result<(), E> {
        let middle = 0.5 * (low + high);
        let mut values = [[0.0; N]; NODES];
        for (node, value) in values.iter_mut().enumerate() {
            *value = f(middle + 0.5 * (high - low) * angle(node).cos())?;
        }
        let piece = Piece::through(low, high, &values);
        if depth == 0 || piece.is_within(tolerance) {
            self.pieces.push(piece);
            return Ok(());
        }
        self.halve((low, middle), tolerance, depth - 1, f)?;
        self.halve((middle, high), tolerance, depth - 1, f)
    }

    /// The columns at a point; beyond the ends, those of the nearer end. Zeros where there is no piece.
    pub(crate) fn at(&self, x: f64) -> [f64; N] {
        let piece = self.pieces.iter().find(|piece| x <= piece.high);
        match piece.or(self.pieces.last()) {
            Some(piece) => piece.at(x.clamp(piece.low, piece.high)),
            None => [0.0; N],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::convert::Infallible;

    #[test]
    fn follows_smooth_functions_and_a_square_root() {
        let exact = |x: f64| [x.exp(), (2.1 - x).sqrt(), 3.0];
        let mut series = Series::<3>::new();
        series
            .extend((-1.0, 1.99), &[1e-8; 3], &mut |x| {
                Ok::<_, Infallible>(exact(x))
            })
            .unwrap();
        for step in 0..=200 {
            let x = -1.0 + 2.99 * f64::from(step) / 200.0;
            for (ours, exact) in series.at(x).iter().zip(exact(x)) {
                assert!((ours - exact).abs() < 1e-6, "{x}: {ours} against {exact}");
            }
        }
        assert_eq!(series.at(-5.0), series.at(-1.0));
    }
}
