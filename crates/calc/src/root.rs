//! Bracketed root finding for the monotone balances of the models.

use std::convert::Infallible;

/// Roots nearer to zero than this are found to its last bits, not to theirs.
const ZERO: f64 = 1e-12;

/// The root of a function that changes sign between `low` and `high`, to the last bits of the bracket.
///
/// Inverse quadratic interpolation where it is safe, else bisection: never leaves the bracket, never fails on a continuous function. Where the ends
/// have the same sign the end with the smaller magnitude is returned, so callers that clamp need no second path.
///
/// Source: Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function without using derivatives,
/// Advances in Engineering Software 28 (1997).
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
    let mut share = 0.5_f64;
    for _ in 0..200 {
        let best = if fa.abs() < fb.abs() { a } else { b };
        let width = (b - a).abs();
        // Never so near an end that the bracket would not shrink; next to a root at zero, no finer than matters to anyone.
        let least = f64::EPSILON * best.abs().max(ZERO) / width;
        if fa == 0.0 || fb == 0.0 || least >= 0.5 {
            return Ok(best);
        }
        let x = a + share.max(least).min(1.0 - least) * (b - a);
        let fx = f(x)?;
        let given_up = if fx.signum() == fa.signum() {
            (a, fa)
        } else {
            let other = (b, fb);
            (b, fb) = (a, fa);
            other
        };
        (a, fa) = (x, fx);
        share = interpolated((a, fa), (b, fb), given_up).unwrap_or(0.5);
    }
    Ok(if fa.abs() < fb.abs() { a } else { b })
}

/// Where inverse quadratic interpolation puts the root, as a share of the way from `a` to `b`; `None` where the three points bend too much for it.
fn interpolated((a, fa): (f64, f64), (b, fb): (f64, f64), (c, fc): (f64, f64)) -> Option<f64> {
    let along = (a - b) / (c - b);
    let up = (fa - fb) / (fc - fb);
    let is_safe = up * up < along && (1.0 - up) * (1.0 - up) < 1.0 - along;
    is_safe.then(|| {
        fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
    })
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
    fn settles_at_a_step_at_zero() {
        let mut calls = 0;
        let root = bracketed(-1.0, 2.0, |x| {
            calls += 1;
            if x < 0.0 { -1.0 } else { 1.0 }
        });
        assert!(root.abs() < 1e-20 && calls < 150, "{root} after {calls}");
    }

    #[test]
    fn returns_the_nearer_end_without_a_sign_change() {
        assert_eq!(bracketed(0.0, 1.0, |x| x + 1.0), 0.0);
        assert_eq!(bracketed(0.0, 1.0, |x| x - 2.0), 1.0);
    }
}
