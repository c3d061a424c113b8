//! Equal fugacities and the right order of phases, of every blend all along its curves and between them: what a converged
//! answer means, checked on the unknowns themselves, which a state no longer shows.

use super::Engine;
use crate::algorithm::envelope::Given;
use crate::algorithm::equilibrium::{Side, composition};
use crate::data::BLENDS;

const FUGACITY: f64 = 1e-8;

/// A phase: mole fractions and density, mol/m³.
type Phase<'a> = (&'a [f64], f64);

/// Largest |ln f_i(liquid) − ln f_i(vapour)|.
fn gap(engine: &Engine, t: f64, liquid: Phase<'_>, vapor: Phase<'_>) -> f64 {
    let [l, v] = [liquid, vapor].map(|(x, rho)| engine.mixture.phase(t, rho, x).ln_gamma);
    let ln_f = |(x, rho): Phase<'_>, ln_gamma: &[f64], i: usize| (x[i] * rho).ln() + ln_gamma[i];
    (0..engine.z.len())
        .map(|i| (ln_f(liquid, &l, i) - ln_f(vapor, &v, i)).abs())
        .fold(0.0, f64::max)
}

#[test]
fn along_the_curves_and_between_them() {
    for blend in &BLENDS {
        let engine = Engine::new(blend.parts);
        let n = engine.z.len();
        let (low, high) = engine.saturation_range();
        let name = blend.designation;
        for i in 0..200 {
            let t = low + (high - low) * f64::from(i) / 199.0;
            for side in [Side::Bubble, Side::Dew] {
                let point = engine
                    .point(side, Given::Temperature, t)
                    .unwrap_or_else(|e| panic!("{name} at {t} K: {e}"));
                let (rho, x) = composition(&point.unknowns[..n]);
                let bulk = (engine.z.as_slice(), point.unknowns[n].exp());
                let other = (&x[..n], rho);
                let (liquid, vapor) = match side {
                    Side::Bubble => (bulk, other),
                    Side::Dew => (other, bulk),
                };
                assert!(liquid.1 > vapor.1, "{name} {side:?} at {t} K");
                let fugacity = gap(&engine, t, liquid, vapor);
                assert!(fugacity < FUGACITY, "{name} {side:?} at {t} K: {fugacity}");
            }
        }
        for share in [0.02, 0.2, 0.6, 0.9] {
            let p = share * engine.critical().pressure;
            let ends = engine
                .ends(Given::Pressure, p)
                .unwrap_or_else(|e| panic!("{name} at {p} Pa: {e}"));
            for quality in [0.1, 0.5, 0.9] {
                let Ok(split) = engine.split_at_quality(p, quality, &ends, None) else {
                    panic!("{name} at {p} Pa and {quality}");
                };
                let liquid = (&split.liquid.0[..n], split.liquid.1);
                let vapor = (&split.vapor.0[..n], split.vapor.1);
                let fugacity = gap(&engine, split.temperature, liquid, vapor);
                assert!(
                    fugacity < FUGACITY,
                    "{name} at {p} Pa, {quality}: {fugacity}"
                );
            }
        }
    }
}
