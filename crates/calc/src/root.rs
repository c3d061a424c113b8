//! Bracketed root finding for the monotone balances of the models.

use std::convert::Infallible;

/// The root of a function that changes sign between `low` and `high`, to the last bits of the bracket.
///
/// Regula falsi in its Illinois form with bisection as a safeguard: never leaves the bracket, never fails on a continuous
/// function. Where the ends have the same sign the end with the smaller magnitude is returned, so callers that clamp
/// need no second path.
pub(crate) fn bracketed(low: f64, high: f64, mut f: impl FnMut(f64) -> f64) -> f64 {
    match try_bracketed(low, high, |x| Ok::<f64, Infallible>(f(x))) {
        Ok(root) => root,
        Err(never) => match never {},
    }
}

/// As [`bracketed`], of a function that can fail; its first error ends the search.
pub(crate) fn try_bracketed<E>(
    low: f64,
    high: f64,
    mut f: impl FnMut(f64) -> Result<f64, E>,
) -> Result<f64, E> {
    let (mut a, mut b) = (low, high);
    let (mut fa, mut fb) = (f(a)?, f(b)?);
    if fa == 0.0 || fa.signum() == fb.signum() {
        return Ok(if fa.abs() <= fb.abs() { a } else { b });
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
        let fc = f(c)?;
        if fc == 0.0 {
            return Ok(c);
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
    Ok(b)
}

/// The root of an increasing function between `low` and `high` near a first guess, with what the function found besides at the root.
///
/// Secant steps from the guess, the first along `slope`; where one would leave the bracket or they do not settle to `precision`
/// within ten, [`try_bracketed`] takes over. Returns root, slope there and the function's findings.
pub(crate) fn try_near<S, E>(
    (low, high): (f64, f64),
    (guess, slope): (f64, f64),
    precision: f64,
    mut f: impl FnMut(f64) -> Result<(f64, S), E>,
) -> Result<(f64, f64, S), E> {
    let mut x = guess.clamp(low, high);
    let (mut fx, mut found) = f(x)?;
    let mut slope = slope;
    for _ in 0..10 {
        let step = -fx / slope;
        let next = x + step;
        if !(low..=high).contains(&next) || slope <= 0.0 {
            break;
        }
        if step.abs() <= precision {
            return Ok((x, slope, found));
        }
        let (f_next, found_next) = f(next)?;
        if f_next != fx {
            slope = (f_next - fx) / step;
        }
        (x, fx, found) = (next, f_next, found_next);
    }
    let root = try_bracketed(low, high, |x| Ok(f(x)?.0))?;
    let near = precision * 1e3;
    let aside = if root + near <= high { near } else { -near };
    let (at, found) = f(root)?;
    let slope = (f(root + aside)?.0 - at) / aside;
    Ok((root, slope, found))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_guess_leads_to_the_same_root() {
        for guess in [-9.0, 0.1, 1.4, 3.0] {
            let cube = |x: f64| Ok::<_, Infallible>((x * x * x - 3.0, ()));
            let (root, slope, ()) = try_near((0.0, 2.0), (guess, 1.0), 1e-9, cube).unwrap();
            assert!((root - 3_f64.cbrt()).abs() < 1e-8, "{guess}: {root}");
            assert!(slope > 0.0);
        }
    }

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
