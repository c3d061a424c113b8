//! Properties along a curve of saturation, tabulated once so that an integration need not ask the equation of state thousands of times.

use super::error::StartError;

/// Rows of properties at even steps of a temperature, read by cubic interpolation.
pub(super) struct Table<const N: usize> {
    low: f64,
    step: f64,
    /// The four rows round each interval.
    cells: Vec<[[f64; N]; 4]>,
}

impl<const N: usize> Table<N> {
    /// Asks for the properties from `low` to `high` at steps of about `step`.
    pub(super) fn new(
        (low, high): (f64, f64),
        step: f64,
        mut row: impl FnMut(f64) -> Result<[f64; N], StartError>,
    ) -> Result<Self, StartError> {
        let count = ((high - low) / step).ceil().clamp(3.0, 1000.0);
        let step = (high - low) / count;
        let rows = (0..=count as u32)
            .map(|index| row(low + step * f64::from(index)))
            .collect::<Result<Vec<_>, _>>()?;
        let cells = rows
            .windows(4)
            .filter_map(|four| <[[f64; N]; 4]>::try_from(four).ok())
            .collect();
        Ok(Self { low, step, cells })
    }

    /// Properties at a temperature; outside the table as at its end.
    pub(super) fn at(&self, temperature: f64) -> [f64; N] {
        let last = self.cells.len().saturating_sub(1);
        let along = ((temperature - self.low) / self.step).clamp(0.0, (last + 3) as f64);
        // A cell is read between its two inner rows, but for the first and the last, which reach to the ends.
        let cell = ((along - 1.0).max(0.0) as usize).min(last);
        let x = along - cell as f64;
        let weights = [
            (x - 1.0) * (x - 2.0) * (x - 3.0) / -6.0,
            x * (x - 2.0) * (x - 3.0) / 2.0,
            x * (x - 1.0) * (x - 3.0) / -2.0,
            x * (x - 1.0) * (x - 2.0) / 6.0,
        ];
        let mut values = [0.0; N];
        let rows = self.cells.get(cell).into_iter().flatten();
        for (weight, row) in weights.into_iter().zip(rows) {
            for (value, property) in values.iter_mut().zip(row) {
                *value += weight * property;
            }
        }
        values
    }
}

#[cfg(test)]
mod tests {
    use super::Table;

    #[test]
    fn a_cubic_comes_back_whole() {
        let cubic = |x: f64| 2.0 - x + 0.5 * x * x - 0.1 * x * x * x;
        let table = Table::new((-3.0, 4.0), 0.7, |x| Ok([cubic(x), x])).unwrap();
        for index in 0..=70 {
            let x = -3.0 + 0.1 * f64::from(index);
            let [value, same] = table.at(x);
            assert!((value - cubic(x)).abs() < 1e-12, "{x}");
            assert!((same - x).abs() < 1e-12, "{x}");
        }
        assert!((table.at(99.0)[1] - 4.0).abs() < 1e-12);
        assert!((table.at(-99.0)[1] + 3.0).abs() < 1e-12);
    }
}
