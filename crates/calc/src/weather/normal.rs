//! The normal distribution, which the standard library has not.

use std::f64::consts::{FRAC_1_SQRT_2, PI};

/// Share of a normal distribution below `z` standard deviations from its mean, to about 1e-15.
///
/// Source: Abramowitz & Stegun 7.1.6: `erf x = 2/√π · e^(−x²) · Σ 2ⁿ·x^(2n+1) / (1·3·…·(2n+1))`, whose terms all have one sign.
pub(super) fn share_below(z: f64) -> f64 {
    let x = z * FRAC_1_SQRT_2;
    // Beyond 6 the rest is less than one part in 10¹⁶.
    if x.abs() > 6.0 {
        return if x > 0.0 { 1.0 } else { 0.0 };
    }
    let mut term = x;
    let mut sum = x;
    let mut odd = 1.0;
    while term.abs() > f64::EPSILON * sum.abs() {
        odd += 2.0;
        term *= 2.0 * x * x / odd;
        sum += term;
    }
    let erf = 2.0 / PI.sqrt() * (-x * x).exp() * sum;
    (0.5 * (1.0 + erf)).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::share_below;

    #[test]
    fn agrees_with_the_printed_table() {
        // Abramowitz & Stegun table 26.1 (from memory): P(0.5), P(1), P(1.96), P(3).
        for (z, share) in [
            (0.0, 0.5),
            (0.5, 0.691_462_461),
            (1.0, 0.841_344_746),
            (1.96, 0.975_002_105),
            (3.0, 0.998_650_102),
        ] {
            assert!((share_below(z) - share).abs() < 5e-10, "{z}");
            assert!((share_below(-z) - (1.0 - share)).abs() < 5e-10, "{z}");
        }
    }

    #[test]
    fn ends_far_out() {
        assert_eq!((share_below(1e9), share_below(-1e9)), (1.0, 0.0));
        assert!(share_below(f64::NAN).is_nan());
    }
}
