//! Effectiveness-NTU with one side at constant temperature, and how conductance goes with airflow.
//!
//! Source: Kays & London, Compact Heat Exchangers; Incropera & DeWitt, heat exchangers chapter.

use uom::si::f64::ThermalConductance;

/// Share of the thermal resistance on the air side of a finned coil (Incropera & DeWitt: the gas side controls; the share itself
/// is common practice, no published source).
pub(crate) const AIR_SIDE_SHARE: f64 = 0.85;

/// Power of the air's mass flow that its heat transfer coefficient follows: 0.6, from Colburn factors that fall with the Reynolds number
/// to about the power -0.4 on finned tubes (Kays & London).
pub(crate) const AIR_SIDE_EXPONENT: f64 = 0.6;

/// Effectiveness with one side at constant temperature, `ε = 1 − exp(−NTU)`.
pub fn effectiveness(conductance: ThermalConductance, capacity_rate: ThermalConductance) -> f64 {
    let transfer_units = (conductance / capacity_rate).value;
    -(-transfer_units).exp_m1()
}

/// Conductance that gives this effectiveness, `UA = −C·ln(1 − ε)`; effectiveness from 0 to below 1.
pub fn conductance(effectiveness: f64, capacity_rate: ThermalConductance) -> ThermalConductance {
    -capacity_rate * (-effectiveness).ln_1p()
}
