//! The Helmholtz energy and its derivatives; knows nothing of how they are used.

pub mod ideal;
pub mod mixture;
mod reducing;
pub mod residual;
