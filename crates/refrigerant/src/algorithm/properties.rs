//! Properties of a single phase from the derivatives of the Helmholtz energy.
//!
//! Span 2000, Multiparameter Equations of State, table 3.10, in the operators D and T of the model: δαʳ_δ = D, τ²αʳ_ττ = TT − T.

use crate::model::ideal::DATUM_PRESSURE;
use crate::model::mixture::{Bulk, Mixture};

/// Molar properties of a phase; enthalpy and entropy from the datum of the ideal gas.
#[derive(Clone, Copy, Debug)]
pub struct Properties {
    pub pressure: f64,
    pub enthalpy: f64,
    pub entropy: f64,
    pub isobaric: f64,
    pub isochoric: f64,
    pub speed_of_sound: f64,
}

/// p in Pa.
pub fn pressure(mixture: &Mixture, t: f64, rho: f64, bulk: &Bulk) -> f64 {
    rho * mixture.gas_constant * t * (1.0 + bulk.d)
}

/// All properties at temperature K, density mol/m³ and mole fractions.
pub fn properties(mixture: &Mixture, t: f64, rho: f64, x: &[f64]) -> Properties {
    let b = mixture.bulk(t, rho, x);
    let ideal = mixture.caloric(t, x);
    let r = mixture.gas_constant;
    let mixing: f64 = x.iter().map(|x| x * x.ln()).sum();
    let isochoric = ideal.heat_capacity - r - r * (b.tt - b.t);
    let stiffness = 1.0 + b.d + b.dd;
    let push = 1.0 + b.d - b.dt;
    let isobaric = isochoric + r * push * push / stiffness;
    Properties {
        pressure: pressure(mixture, t, rho, &b),
        enthalpy: ideal.enthalpy + r * t * (b.t + b.d),
        entropy: ideal.entropy + r * (b.t - b.a - mixing - (rho * r * t / DATUM_PRESSURE).ln()),
        isobaric,
        isochoric,
        speed_of_sound: (r * t / mixture.molar_mass(x) * stiffness * isobaric / isochoric).sqrt(),
    }
}
