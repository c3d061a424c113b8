//! The cooling system as one balance.
//!
//! [`circuit`] is what compressor, evaporator and metering device do at one condensing temperature; [`line`] is that along condensing
//! temperature; [`zones`] is what the condenser needs to reject it; [`balance`] finds where the two meet at an outdoor temperature.

pub(crate) mod balance;
mod chebyshev;
pub(crate) mod circuit;
pub(crate) mod compressor;
mod evaporator;
pub(crate) mod fluid;
pub(crate) mod line;
mod metering;
pub(crate) mod zones;
