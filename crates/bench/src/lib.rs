//! What is timed, once for this machine and for a browser on it.
//!
//! `cargo xtask bench` runs the same cases natively, as WebAssembly, and in CoolProp, and prints one table.

#![allow(clippy::expect_used)] // a case that cannot be set up should stop the benchmark

mod case;
mod plans;
mod refrigerants;

pub use case::Case;

/// Every case, those of one subject in a row.
pub fn cases() -> Vec<Case> {
    let mut cases = refrigerants::cases();
    cases.extend(plans::cases());
    cases
}
