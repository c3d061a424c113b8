//! Preferred values of resistors.
//!
//! Source: IEC 60063: the E96 series is `10^(i/96)` rounded to three figures; the E24 series is a list, which departs from its
//! formula.

const E24: [u32; 24] = [
    10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91,
];

/// The powers of ten that resistors are sold in: from 1 Ω up to less than 10 MΩ.
const DECADES: i32 = 7;

/// A series of preferred resistor values.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Series {
    /// 24 values a decade, made to 5 %.
    E24,
    /// 96 values a decade, made to 1 %.
    E96,
}

impl Series {
    /// The tolerance that the series is made for, as a share.
    pub fn tolerance(self) -> f64 {
        match self {
            Series::E24 => 0.05,
            Series::E96 => 0.01,
        }
    }

    /// Every value from 1 Ω to below 10 MΩ, in ohms, rising.
    pub(super) fn ohms(self) -> impl Iterator<Item = f64> {
        (0..DECADES).flat_map(move |decade| {
            // Whole hundredths of an ohm keep the values exact.
            let scale = 10.0_f64.powi(decade);
            self.hundredths()
                .into_iter()
                .map(move |hundredths| hundredths * scale / 100.0)
        })
    }

    /// One decade, 100 to below 1000.
    fn hundredths(self) -> Vec<f64> {
        match self {
            Series::E24 => E24.iter().map(|value| f64::from(*value) * 10.0).collect(),
            Series::E96 => (0..96)
                .map(|index| (100.0 * 10.0_f64.powf(f64::from(index) / 96.0)).round())
                .collect(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// IEC 60063, table of the E96 series (from memory).
    const E96: [f64; 96] = [
        100.0, 102.0, 105.0, 107.0, 110.0, 113.0, 115.0, 118.0, 121.0, 124.0, 127.0, 130.0, 133.0,
        137.0, 140.0, 143.0, 147.0, 150.0, 154.0, 158.0, 162.0, 165.0, 169.0, 174.0, 178.0, 182.0,
        187.0, 191.0, 196.0, 200.0, 205.0, 210.0, 215.0, 221.0, 226.0, 232.0, 237.0, 243.0, 249.0,
        255.0, 261.0, 267.0, 274.0, 280.0, 287.0, 294.0, 301.0, 309.0, 316.0, 324.0, 332.0, 340.0,
        348.0, 357.0, 365.0, 374.0, 383.0, 392.0, 402.0, 412.0, 422.0, 432.0, 442.0, 453.0, 464.0,
        475.0, 487.0, 499.0, 511.0, 523.0, 536.0, 549.0, 562.0, 576.0, 590.0, 604.0, 619.0, 634.0,
        649.0, 665.0, 681.0, 698.0, 715.0, 732.0, 750.0, 768.0, 787.0, 806.0, 825.0, 845.0, 866.0,
        887.0, 909.0, 931.0, 953.0, 976.0,
    ];

    #[test]
    fn the_formula_gives_the_printed_series() {
        assert_eq!(Series::E96.hundredths(), E96);
    }

    #[test]
    fn values_rise_and_are_exact() {
        for series in [Series::E24, Series::E96] {
            let all: Vec<f64> = series.ohms().collect();
            assert!(all.is_sorted_by(|a, b| a < b));
            assert_eq!((all.first(), all.len() % 24), (Some(&1.0), 0));
        }
        assert!(Series::E24.ohms().any(|ohms| ohms == 3300.0));
        assert!(Series::E96.ohms().any(|ohms| ohms == 32_400.0));
    }
}
