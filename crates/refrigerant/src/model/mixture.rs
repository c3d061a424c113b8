//! The multi-fluid mixture model; a pure fluid is a mixture of one.
//!
//! αʳ(τ, δ, x) = Σ x_i α_i(τ, δ) + Σ_{i<j} x_i x_j F_ij α_ij(τ, δ) with τ = T_r(x)/T and δ = ρ/ρ_r(x)
//! (Lemmon & Jacobsen 2004; Kunz & Wagner 2012). Derivatives by mole numbers at constant volume follow with
//! F = n αʳ, L_i = ∂ln δ/∂n_i and M_i = ∂ln τ/∂n_i, all taken at n = 1.

use super::ideal::{self, Caloric};
use super::reducing::{self, Cross};
use super::residual::{Derivatives, Reduced, residual};
use crate::data::{FLUIDS, Fluid, PAIRS, Terms};

/// Most components that a blend may have.
pub const MOST: usize = 8;

/// Gas constant of mixtures, CODATA 2018, J/(mol K).
const MOLAR_GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// A value for each component; those past the count are zero.
pub type Vector = [f64; MOST];

/// The model of a set of components, of any composition.
#[derive(Clone, Debug)]
pub struct Mixture {
    /// Components.
    pub fluids: Vec<&'static Fluid>,
    /// Gas constant, J/(mol K).
    pub gas_constant: f64,
    /// Whether a pair has no published parameters.
    pub estimated: bool,
    temperatures: Vec<f64>,
    volumes: Vec<f64>,
    temperature_pairs: Vec<Cross>,
    volume_pairs: Vec<Cross>,
    departures: Vec<(usize, usize, f64, &'static Terms)>,
}

/// Residual properties that need no derivative by composition.
pub type Bulk = Derivatives;

/// Residual properties of a phase with the derivatives by mole numbers.
#[derive(Clone, Copy, Debug)]
pub struct PhaseModel {
    /// αʳ and its derivatives at constant composition.
    pub bulk: Bulk,
    /// ∂(n αʳ)/∂n_i at constant T and V; ln f_i = ln(x_i ρ R T) + this.
    pub ln_gamma: Vector,
    /// Of each, the derivative by ln ρ at constant T and x.
    pub by_density: Vector,
    /// Of each, the derivative by ln τ at constant ρ and x.
    pub by_tau: Vector,
    /// ∂²(n αʳ)/∂n_i ∂n_j at constant T and V.
    pub second: [Vector; MOST],
}

impl Mixture {
    /// The model of the components with these indices in [`FLUIDS`].
    ///
    /// A pair without published parameters has β = 1 and the linear combining rule for γ: reducing temperature and volume are then those
    /// of an ideal mixing of the pure values, T_r = Σ x_i T_i (Kunz & Wagner 2012, section 2.3).
    pub fn new(components: &[usize]) -> Mixture {
        let fluids: Vec<&'static Fluid> = components.iter().map(|&i| &FLUIDS[i]).collect();
        let temperatures: Vec<f64> = fluids.iter().map(|f| f.reducing_temperature).collect();
        let volumes: Vec<f64> = fluids.iter().map(|f| 1.0 / f.reducing_density).collect();
        let mut mixture = Mixture {
            gas_constant: match fluids.as_slice() {
                [only] => only.gas_constant,
                _ => MOLAR_GAS_CONSTANT,
            },
            fluids,
            estimated: false,
            temperatures,
            volumes,
            temperature_pairs: Vec::new(),
            volume_pairs: Vec::new(),
            departures: Vec::new(),
        };
        for i in 0..components.len() {
            for j in i + 1..components.len() {
                mixture.add_pair(components, i, j);
            }
        }
        mixture
    }

    fn add_pair(&mut self, components: &[usize], i: usize, j: usize) {
        let (a, b) = (components[i], components[j]);
        let published = PAIRS
            .iter()
            .find(|p| (p.first, p.second) == (a, b) || (p.first, p.second) == (b, a));
        // The cross term is not symmetric: β belongs to the pair as published.
        let (i, j) = match published {
            Some(p) if p.first == b => (j, i),
            _ => (i, j),
        };
        let (ti, tj) = (self.temperatures[i], self.temperatures[j]);
        let (vi, vj) = (self.volumes[i], self.volumes[j]);
        let t = (ti * tj).sqrt();
        let v = (vi.cbrt() + vj.cbrt()).powi(3) / 8.0;
        let (beta_t, gamma_t, beta_v, gamma_v) = match published {
            Some(p) => (p.beta_t, p.gamma_t, p.beta_v, p.gamma_v),
            None => (1.0, 0.5 * (ti + tj) / t, 1.0, 0.5 * (vi + vj) / v),
        };
        self.estimated |= published.is_none();
        let cross = |weight: f64, beta: f64| Cross {
            i,
            j,
            weight: 2.0 * beta * weight,
            beta_squared: beta * beta,
        };
        self.temperature_pairs.push(cross(gamma_t * t, beta_t));
        self.volume_pairs.push(cross(gamma_v * v, beta_v));
        if let Some((terms, factor)) = published.and_then(|p| p.departure) {
            self.departures.push((i, j, factor, terms));
        }
    }

    /// Count of components.
    pub fn len(&self) -> usize {
        self.fluids.len()
    }

    /// Reducing temperature, K, and density, mol/m³, of a composition.
    pub fn reducing(&self, x: &[f64]) -> (f64, f64) {
        (
            reducing::value(&self.temperatures, &self.temperature_pairs, x),
            1.0 / reducing::value(&self.volumes, &self.volume_pairs, x),
        )
    }

    /// Molar mass of a composition, kg/mol.
    pub fn molar_mass(&self, x: &[f64]) -> f64 {
        self.fluids
            .iter()
            .zip(x)
            .map(|(f, x)| x * f.molar_mass)
            .sum()
    }

    /// Residual properties at temperature K, density mol/m³ and mole fractions.
    pub fn bulk(&self, temperature: f64, density: f64, x: &[f64]) -> Bulk {
        let (t, rho) = self.reducing(x);
        let at = Reduced::new(t / temperature, density / rho);
        let mut sum = Bulk::default();
        for (fluid, x) in self.fluids.iter().zip(x) {
            sum.add(*x, &residual(&fluid.residual, &at));
        }
        for &(i, j, factor, terms) in &self.departures {
            sum.add(x[i] * x[j] * factor, &residual(terms, &at));
        }
        sum
    }

    /// Residual properties with derivatives by mole numbers.
    pub fn phase(&self, temperature: f64, density: f64, x: &[f64]) -> PhaseModel {
        let n = self.len();
        let g = reducing::derivatives(&self.temperatures, &self.temperature_pairs, x);
        let h = reducing::derivatives(&self.volumes, &self.volume_pairs, x);
        let at = Reduced::new(g.value / temperature, density * h.value);

        // αʳ of each component, then with all that the departure functions add to ∂(n αʳ)/∂n_i at constant τ and δ.
        let mut partial = [Derivatives::default(); MOST];
        let mut second = [[0.0; MOST]; MOST];
        let mut bulk = Bulk::default();
        for i in 0..n {
            partial[i] = residual(&self.fluids[i].residual, &at);
            bulk.add(x[i], &partial[i]);
        }
        let mut departure = Derivatives::default();
        let mut slope = [0.0; MOST];
        for &(i, j, factor, terms) in &self.departures {
            let a = residual(terms, &at);
            departure.add(x[i] * x[j] * factor, &a);
            partial[i].add(x[j] * factor, &a);
            partial[j].add(x[i] * factor, &a);
            slope[i] += x[j] * factor * a.a;
            slope[j] += x[i] * factor * a.a;
            second[i][j] += factor * a.a;
            second[j][i] += factor * a.a;
        }
        bulk.add(1.0, &departure);
        for p in &mut partial[..n] {
            p.add(-1.0, &departure);
        }

        let mut l = [0.0; MOST];
        let mut m = [0.0; MOST];
        let mut out = PhaseModel {
            bulk,
            ln_gamma: [0.0; MOST],
            by_density: [0.0; MOST],
            by_tau: [0.0; MOST],
            second: [[0.0; MOST]; MOST],
        };
        for i in 0..n {
            l[i] = h.first[i] / h.value - 1.0;
            m[i] = g.first[i] / g.value - 2.0;
            out.ln_gamma[i] = partial[i].a + bulk.d * l[i] + bulk.t * m[i];
            out.by_density[i] = partial[i].d + bulk.dd * l[i] + bulk.dt * m[i];
            out.by_tau[i] = partial[i].t + bulk.dt * l[i] + bulk.tt * m[i];
        }
        for i in 0..n {
            for j in 0..=i {
                let lij = h.second[i][j] / h.value - (1.0 + l[i]) * (1.0 + l[j]) + 1.0;
                let mij = g.second[i][j] / g.value - (2.0 + m[i]) * (2.0 + m[j]) + 2.0;
                let value = second[i][j] - slope[i] - slope[j]
                    + 2.0 * departure.a
                    + partial[i].d * l[j]
                    + partial[j].d * l[i]
                    + partial[i].t * m[j]
                    + partial[j].t * m[i]
                    + bulk.d * lij
                    + bulk.t * mij
                    + bulk.dd * l[i] * l[j]
                    + bulk.dt * (l[i] * m[j] + l[j] * m[i])
                    + bulk.tt * m[i] * m[j];
                out.second[i][j] = value;
                out.second[j][i] = value;
            }
        }
        out
    }

    /// Ideal-gas caloric properties of the composition: c_p⁰ and s⁰ in J/(mol K), h⁰ in J/mol; mixing entropy not included.
    pub fn caloric(&self, temperature: f64, x: &[f64]) -> Caloric {
        let mut sum = Caloric::default();
        for (fluid, x) in self.fluids.iter().zip(x) {
            let c = ideal::caloric(&fluid.ideal, temperature);
            let r = x * fluid.gas_constant;
            sum.heat_capacity += r * c.heat_capacity;
            sum.enthalpy += r * c.enthalpy;
            sum.entropy += r * c.entropy;
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn five() -> (Mixture, [f64; 5]) {
        let index = |name: &str| {
            FLUIDS
                .iter()
                .position(|f| f.designation == name)
                .expect(name)
        };
        let names = ["R-32", "R-125", "R-134a", "R-1234yf", "R-1234ze(E)"];
        (
            Mixture::new(&names.map(index)),
            [0.43, 0.19, 0.18, 0.15, 0.05],
        )
    }

    /// Euler's theorem for F(n, V): Σ x_j F_ij is the derivative of F_i by ln ρ, and Σ x_i F_i is αʳ + Dαʳ.
    #[test]
    fn derivatives_by_amount_are_homogeneous() {
        let (mixture, x) = five();
        for (t, rho) in [(240.0, 15_000.0), (300.0, 800.0), (360.0, 6_000.0)] {
            let phase = mixture.phase(t, rho, &x);
            let mut sum = 0.0;
            for i in 0..5 {
                sum += x[i] * phase.ln_gamma[i];
                let by_density: f64 = (0..5).map(|j| x[j] * phase.second[i][j]).sum();
                assert!((by_density - phase.by_density[i]).abs() < 1e-10);
            }
            assert!((sum - phase.bulk.a - phase.bulk.d).abs() < 1e-11);
            assert!((phase.bulk.dd - mixture.bulk(t, rho, &x).dd).abs() < 1e-12);
        }
    }

    /// Derivatives by the amount of one component against central differences of n αʳ and of ln γ.
    #[test]
    fn derivatives_by_amount_are_those_of_the_values() {
        let (mixture, x) = five();
        let (t, volume) = (290.0, 1.0 / 9_000.0);
        let at = |n: &[f64]| {
            let total: f64 = n.iter().sum();
            let x: Vec<f64> = n.iter().map(|n| n / total).collect();
            (total, mixture.phase(t, total / volume, &x))
        };
        let (_, here) = at(&x);
        for j in 0..5 {
            let h = 1e-6;
            let (mut up, mut down) = (x, x);
            up[j] += h;
            down[j] -= h;
            let ((n_up, up), (n_down, down)) = (at(&up), at(&down));
            let first = (n_up * up.bulk.a - n_down * down.bulk.a) / (2.0 * h);
            assert!((first - here.ln_gamma[j]).abs() < 1e-7, "{first}");
            for i in 0..5 {
                let second = (up.ln_gamma[i] - down.ln_gamma[i]) / (2.0 * h);
                assert!(
                    (second - here.second[i][j]).abs() < 1e-6,
                    "{i} {j} {second}"
                );
            }
        }
    }
}
