//! Density of a single phase from temperature and pressure.

use super::Stalled;
use super::properties::pressure;
use crate::model::mixture::Mixture;

/// Density, mol/m³, at which the pressure is `p`, between `low` and `high`, from a first guess.
///
/// Newton steps in ln ρ; on the side of a gas they aim at ln p, which is nearly straight there. Wherever a step leaves the
/// bracket, which every evaluation narrows, the bracket is halved instead.
pub fn density(
    mixture: &Mixture,
    t: f64,
    p: f64,
    x: &[f64],
    guess: f64,
    (low, high): (f64, f64),
) -> Result<f64, Stalled> {
    let (mut low, mut high) = (low.ln(), high.ln());
    let mut at = guess.ln().clamp(low, high);
    for _ in 0..100 {
        let rho = at.exp();
        let b = mixture.bulk(t, rho, x);
        let now = pressure(mixture, t, rho, &b);
        let slope = rho * mixture.gas_constant * t * (1.0 + b.d + b.dd);
        if now > p {
            high = high.min(at);
        } else {
            low = low.max(at);
        }
        let step = if now > 0.0 && now / p > 0.05 && now / p < 20.0 && b.d > -0.6 && b.d < 0.5 {
            (p / now).ln() * now / slope
        } else {
            (p - now) / slope
        };
        let mut next = at + step;
        if !(slope > 0.0 && next >= low && next <= high) {
            next = 0.5 * (low + high);
        }
        let change = (next - at).abs();
        at = next;
        if change < 1e-13 || (change < 1e-9 && step.abs() < 1e-9) {
            return Ok(at.exp());
        }
    }
    // The last digits of a stiff liquid's pressure are noise; a bracket this narrow is the answer.
    if high - low < 1e-11 {
        return Ok(at.exp());
    }
    Err(Stalled)
}
