//! In what state is this refrigerant?
//!
//! Thermodynamic properties of refrigerants from multiparameter equations of state in the Helmholtz energy, pure fluids and
//! blends alike: bubble and dew points, single-phase and two-phase states. The crate knows fluids and nothing of the systems they run in.
//!
//! Quantities are [`uom`] `f64` quantities; every pressure is absolute. Fractions and qualities are by mass.
//!
//! # Reference state
//! Enthalpy and entropy are on the IIR reference state: 200 kJ/kg and 1.00 kJ/(kg K) for saturated (bubble) liquid at 0 °C
//! of the refrigerant itself, a blend included.

mod error;
mod refrigerant;
mod safety;
mod state;

pub use error::{Calculation, Error, Quantity};
pub use refrigerant::{Component, Refrigerant};
pub use safety::SafetyClass;
pub use state::{CriticalPoint, Phase, Saturation, State};
