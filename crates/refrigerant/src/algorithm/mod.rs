//! What is done with the Helmholtz energy: one algorithm a file, in molar SI units.

#![allow(clippy::needless_range_loop)] // matrices read best by their indices

mod chebyshev;
pub mod critical;
pub mod density;
pub mod envelope;
pub mod equilibrium;
pub mod flash;
mod linear;
pub mod properties;
mod start;

/// An iteration did not arrive.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stalled;
