//! In what state is this refrigerant?
//!
//! Thermodynamic properties of refrigerants from multiparameter equations of state in the Helmholtz energy, pure fluids and
//! blends alike: bubble and dew points, single-phase and two-phase states. The crate knows fluids and nothing of the systems they run in.
//!
//! Quantities are [`uom`] `f64` quantities; every pressure is absolute. Fractions and qualities are by mass.
//!
//! ```
//! use uom::si::f64::ThermodynamicTemperature;
//! use uom::si::pressure::kilopascal;
//! use uom::si::thermodynamic_temperature::degree_celsius;
//! use winterset_refrigerant::Refrigerant;
//!
//! # fn main() -> Result<(), winterset_refrigerant::Error> {
//! let refrigerant = Refrigerant::named("R-448A")?;
//! let ambient = ThermodynamicTemperature::new::<degree_celsius>(-20.0);
//! let saturation = refrigerant.saturation_at_temperature(ambient)?;
//! assert!(saturation.bubble.pressure > saturation.dew.pressure); // a blend with glide
//! assert!((saturation.bubble.pressure.get::<kilopascal>() - 304.8).abs() < 10.0);
//! # Ok(())
//! # }
//! ```
//!
//! # How it is built
//! Three layers that do not know the ones after them: `data`, published coefficients of fluids and pairs; `model`, the Helmholtz energy with its
//! exact derivatives; `algorithm`, saturation, flash and critical point. `engine` puts them to use for one composition, and [`Refrigerant`]
//! gives them types. A new fluid touches only data.
//!
//! # Reference state
//! Enthalpy and entropy are on the IIR reference state: 200 kJ/kg and 1.00 kJ/(kg K) for saturated (bubble) liquid at 0 °C
//! of the refrigerant itself, a blend included. A refrigerant that is above critical at 0 °C (R-14) has zero enthalpy and entropy as
//! saturated liquid at 101.325 kPa instead.
//!
//! # What is left out
//! Viscosity, conductivity and surface tension: nothing that is computed on these states needs them. Heat exchangers are scaled from a known
//! point by conductance, and for most blends no correlation of transport properties is published.
//!
//! # Range and trust
//! Pure fluids follow the equations named in `data/fluids/`, blends the multi-fluid model with the binary parameters named in
//! `data/pairs.txt`. Near the critical point of a blend (within about 2 K) no model is certain. A blend may be asked for far below the
//! triple point of one of its components; whether that freezes out, or whether the liquid splits in two (R-431A and R-504 below about -45 °C), is not computed.

mod algorithm;
mod data;
mod designation;
mod engine;
mod error;
mod model;
mod refrigerant;
mod safety;
mod state;
mod supply;

pub use error::{Calculation, Error, Quantity};
pub use refrigerant::{Component, Refrigerant};
pub use safety::SafetyClass;
pub use state::{CriticalPoint, Phase, Saturation, State};
pub use supply::Supply;
