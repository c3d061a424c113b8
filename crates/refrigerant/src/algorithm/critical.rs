//! The critical point of a composition: where its bubble and its dew curve meet.
//!
//! With the bulk liquid on one side and vapour on the other, every unknown of the two-phase equations is a smooth function of
//! s = ln(ρ_bulk/ρ_incipient), which is 0 where the phases are one. The polynomial through the nearest points of both curves gives that
//! limit to about 10⁻⁸ without solving equations that turn singular there.

/// Critical constants in molar SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Critical {
    /// K.
    pub temperature: f64,
    /// mol/m³.
    pub density: f64,
    /// Pa.
    pub pressure: f64,
}

/// Values and their derivatives by s, at s = 0.
#[derive(Clone, Copy, Debug)]
pub struct Limit<const N: usize> {
    pub value: [f64; N],
    pub slope: [f64; N],
}

/// The limit from points of the bubble curve at s = D and of the dew curve at s = −D.
pub fn between<const N: usize>(bubble: &[(f64, [f64; N])], dew: &[(f64, [f64; N])]) -> Limit<N> {
    let points: Vec<(f64, &[f64; N])> = bubble
        .iter()
        .map(|(d, v)| (*d, v))
        .chain(dew.iter().map(|(d, v)| (-*d, v)))
        .collect();
    let mut out = Limit {
        value: [0.0; N],
        slope: [0.0; N],
    };
    for (k, (sk, value)) in points.iter().enumerate() {
        // Lagrange's basis polynomial of this point at 0, and its derivative there.
        let (mut basis, mut relative) = (1.0, 0.0);
        for (j, (sj, _)) in points.iter().enumerate() {
            if j != k {
                basis *= sj / (sj - sk);
                relative -= 1.0 / sj;
            }
        }
        for (i, v) in value.iter().enumerate() {
            out.value[i] += basis * v;
            out.slope[i] += basis * relative * v;
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::between;

    #[test]
    fn a_cubic_is_met_exactly() {
        let f = |s: f64| [2.0 - 3.0 * s + s * s - 0.5 * s * s * s];
        let bubble = [(0.1, f(0.1)), (0.2, f(0.2))];
        let dew = [(0.1, f(-0.1)), (0.2, f(-0.2))];
        let limit = between(&bubble, &dew);
        assert!((limit.value[0] - 2.0).abs() < 1e-13);
        assert!((limit.slope[0] + 3.0).abs() < 1e-12);
    }
}
