//! Caloric properties of the ideal gas.

use crate::data::Ideal;

/// Temperature and pressure at which ideal-gas enthalpy and entropy are zero inside this crate: a fixed point only, since
/// what a caller sees is put on the reference state of the refrigerant.
pub const DATUM_TEMPERATURE: f64 = 273.15;
pub const DATUM_PRESSURE: f64 = 1e5;

/// Ideal-gas heat capacity, enthalpy and entropy over the gas constant.
#[derive(Clone, Copy, Debug, Default)]
pub struct Caloric {
    /// c_p⁰/R.
    pub heat_capacity: f64,
    /// h⁰/R from the datum, in K.
    pub enthalpy: f64,
    /// s⁰/R from the datum, at the datum pressure.
    pub entropy: f64,
}

/// c_p⁰/R and its integrals over T and over ln T from the datum.
pub fn caloric(ideal: &Ideal, temperature: f64) -> Caloric {
    let (t, t0) = (temperature, DATUM_TEMPERATURE);
    let mut out = Caloric {
        heat_capacity: ideal.constant,
        enthalpy: ideal.constant * (t - t0),
        entropy: ideal.constant * (t / t0).ln(),
    };
    for &[c, k] in ideal.power {
        let (now, then) = (c * t.powf(k), c * t0.powf(k));
        out.heat_capacity += now;
        out.enthalpy += (now * t - then * t0) / (k + 1.0);
        out.entropy += (now - then) / k;
    }
    for &[n, theta] in ideal.einstein {
        let einstein = |t: f64| {
            let x = theta / t;
            // 1 - e⁻ˣ; the energy is θ/(eˣ - 1), the entropy x/(eˣ - 1) - ln(1 - e⁻ˣ).
            let gap = -(-x).exp_m1();
            let occupied = (-x).exp() / gap;
            (
                x * x * occupied / gap,
                theta * occupied,
                x * occupied - gap.ln(),
            )
        };
        let (c, h, s) = einstein(t);
        let (_, h0, s0) = einstein(t0);
        out.heat_capacity += n * c;
        out.enthalpy += n * (h - h0);
        out.entropy += n * (s - s0);
    }
    out
}
