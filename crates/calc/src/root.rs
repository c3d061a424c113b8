//! Bracketed root finding for the monotone balances of the models.

/// The root of a function that changes sign between `low` and `high`, to the last bits of the bracket.
///
/// Regula falsi in its Illinois form with bisection as a safeguard: never leaves the bracket, never fails on a continuous
/// function. Where the ends have the same sign the end with the smaller magnitude is returned, so callers that clamp
/// need no second path.
pub(crate) fn bracketed(low: f64, high: f64, mut f: impl FnMut(f64) -> f64) -> f64 {
    let (mut a, mut b) = (low, high);
    let (mut fa, mut fb) = (f(a), f(b));
    if fa == 0.0 || fa.signum() == fb.signum() {
        return if fa.abs() <= fb.abs() { a } else { b };
    }
    for step in 0..200 {
        let width = (b - a).abs();
        if fb == 0.0 || width <= 2.0 * f64::EPSILON * a.abs().max(b.abs()) {
            break;
        }
        let secant = (a * fb - b * fa) / (fb - fa);
        // Every third step halves the bracket, which bounds the count whatever the shape.
        let c = if step % 3 == 2 || !secant.is_finite() {
            0.5 * (a + b)
        } else {
            secant
        };
        let fc = f(c);
        if fc == 0.0 {
            return c;
        }
        if fc.signum() == fb.signum() {
            fa *= 0.5;
        } else {
            a = b;
            fa = fb;
        }
        b = c;
        fb = fc;
    }
    b
}

#[cfg(test)]
mod tests {
    use super::bracketed;

    #[test]
    fn finds_a_simple_root() {
        let root = bracketed(0.0, 2.0, |x| x * x - 2.0);
        assert!((root - std::f64::consts::SQRT_2).abs() < 1e-14);
    }

    #[test]
    fn survives_a_step() {
        let root = bracketed(0.0, 1.0, |x| if x < 0.3 { -1.0 } else { 1.0 });
        assert!((root - 0.3).abs() < 1e-12);
    }

    #[test]
    fn returns_the_nearer_end_without_a_sign_change() {
        assert_eq!(bracketed(0.0, 1.0, |x| x + 1.0), 0.0);
        assert_eq!(bracketed(0.0, 1.0, |x| x - 2.0), 1.0);
    }
}
