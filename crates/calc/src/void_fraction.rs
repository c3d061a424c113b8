//! Void fraction: the share of the volume that vapour takes where vapour and liquid flow together.
//!
//! `α = 1 / (1 + (1 − x)/x · S·ρ_v/ρ_l)` with the slip `S` of vapour against liquid, 1 where both go equally fast, `(ρ_l/ρ_v)^⅓` where the
//! kinetic energy of the flow is least.
//!
//! Source: Zivi, Journal of Heat Transfer 86 (1964); Collier & Thome, Convective Boiling and Condensation.

/// How much faster than the liquid the vapour flows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum VoidModel {
    /// Equally fast: the least liquid.
    Homogeneous,
    /// Zivi's least kinetic energy: more liquid, nearer to what coils hold.
    Zivi,
}

impl VoidModel {
    /// `S·ρ_v/ρ_l` at a density ratio `ρ_v/ρ_l`.
    fn factor(self, density_ratio: f64) -> f64 {
        let density_ratio = held(density_ratio, 1e-12, 1.0);
        match self {
            VoidModel::Homogeneous => density_ratio,
            VoidModel::Zivi => density_ratio.powf(2.0 / 3.0),
        }
    }
}

/// A value within its range; no number at all counts as the low end.
fn held(value: f64, low: f64, high: f64) -> f64 {
    if value >= low { value.min(high) } else { low }
}

/// Void fraction at a quality from 0 to 1 and a density ratio `ρ_v/ρ_l` from 1e-12 to 1; arguments outside are held at the end of their range.
pub fn at(model: VoidModel, quality: f64, density_ratio: f64) -> f64 {
    let quality = held(quality, 0.0, 1.0);
    let factor = model.factor(density_ratio);
    quality / (quality + factor * (1.0 - quality))
}

/// Below this distance of the factor from 1 the closed form loses digits, and a quadrature has them all.
const NEARLY_ALIKE: f64 = 0.05;

/// Void fraction averaged over quality between two qualities: over the volume of a zone that takes up or gives off heat evenly.
///
/// With `c = S·ρ_v/ρ_l` and `k = 1 − c`, `∫ x/(c + k·x) dx = x/k − c/k²·ln(c + k·x)`. Arguments as for [`at`].
pub fn mean(model: VoidModel, (from, to): (f64, f64), density_ratio: f64) -> f64 {
    let (from, to) = (held(from, 0.0, 1.0), held(to, 0.0, 1.0));
    let factor = model.factor(density_ratio);
    let (k, width) = (1.0 - factor, to - from);
    if width.abs() < f64::EPSILON {
        return at(model, from, density_ratio);
    }
    if k < NEARLY_ALIKE {
        return quadrature(|share| at(model, from + share * width, density_ratio));
    }
    let grown = k * width / (factor + k * from);
    1.0 / k - factor / (k * k * width) * grown.ln_1p()
}

/// Mean of a smooth function over 0 to 1 by the five points of Gauss and Legendre.
fn quadrature(f: impl Fn(f64) -> f64) -> f64 {
    const POINTS: [(f64, f64); 5] = [
        (0.0, 128.0 / 225.0),
        (0.538_469_310_105_683_1, 0.478_628_670_499_366_47),
        (-0.538_469_310_105_683_1, 0.478_628_670_499_366_47),
        (0.906_179_845_938_664, 0.236_926_885_056_189_08),
        (-0.906_179_845_938_664, 0.236_926_885_056_189_08),
    ];
    POINTS
        .iter()
        .map(|(point, weight)| 0.5 * weight * f(0.5 + 0.5 * point))
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn vapor_alone_and_liquid_alone() {
        for model in [VoidModel::Homogeneous, VoidModel::Zivi] {
            assert_eq!(at(model, 0.0, 0.05), 0.0);
            assert_eq!(at(model, 1.0, 0.05), 1.0);
            assert_eq!(mean(model, (0.3, 0.3), 0.05), at(model, 0.3, 0.05));
        }
    }

    #[test]
    fn slip_leaves_more_liquid() {
        for percent in 1..100 {
            let quality = f64::from(percent) / 100.0;
            assert!(at(VoidModel::Zivi, quality, 0.05) < at(VoidModel::Homogeneous, quality, 0.05));
        }
    }

    #[test]
    fn alike_phases_are_void_by_quality() {
        // With equal densities volume goes with mass: the mean over all qualities is a half.
        assert!((mean(VoidModel::Zivi, (0.0, 1.0), 1.0) - 0.5).abs() < 1e-15);
    }

    #[test]
    fn no_number_gives_none_out() {
        assert_eq!(at(VoidModel::Zivi, f64::NAN, 0.05), 0.0);
        assert!(mean(VoidModel::Zivi, (f64::NAN, 1.0), f64::NAN).is_finite());
    }
}
