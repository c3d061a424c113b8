//! The winter plan of an air-cooled system: the job's physics and its decisions.
//!
//! A plan starts from an [`Input`], which holds what is known of a system with the basis of each value (entered or
//! assumed), and ends in a [`Plan`]: the pressure need and the part that sets it, the values to set on a fan speed
//! controller, the hold limit of seven methods, the method that is recommended and why. Compressor, evaporator, metering
//! device and condenser are one balance, so that every [`Point`] of a plan, at any outdoor temperature, comes with what
//! the refrigerant does round the cycle. Every derived value is an [`Explained`] one: it carries the [`Rule`] it came
//! from, with equation and source, and the terms that went in.
//!
//! What follows from a plan is asked of it: [`Plan::compare`] over a year, [`Plan::levers`] that lower the need,
//! [`Plan::bands`] that assumed values leave, and in [`advice`] what to order, where the sensor goes, how the system
//! starts in the cold and when the compressor may stay off. The other modules answer questions of their own, without a
//! plan: [`motor`], [`sensor`], [`own_controller`], [`fan_bank`], [`liquid_line`], [`charge`], [`ice`], [`compressor`].
//!
//! Everything inside is SI and absolute pressure, as [`uom`] quantities at the public functions. Nothing here formats,
//! reads a clock, touches a file or knows a browser.
//!
//! Sign and reference conventions:
//! * the *condensing temperature* is the dew temperature at the condensing pressure, the reference that AHRI 540 uses for
//!   rating; [`controller`] turns a pressure into the temperature that a sensor on the coil sees;
//! * a *speed fraction* is a share of the speed at full supply voltage in the same air;
//! * an *output fraction* is the share of full output of the controller: for a phase-cut supply the r.m.s. voltage, for a
//!   control signal or a frequency drive the share of full speed.

pub mod advice;
pub mod air;
pub mod bands;
mod build;
pub mod charge;
pub mod comparison;
pub mod compressor;
pub mod condenser;
pub mod controller;
pub mod cycle;
pub mod explain;
pub mod fan;
pub mod fan_bank;
mod fan_motor;
mod field;
pub mod fitting;
pub mod flooding;
pub mod free_cooling;
pub mod ice;
pub mod input;
mod integrate;
pub mod lever;
pub mod liquid_line;
mod method;
mod mixed_bank;
pub mod moist_air;
pub mod motor;
pub mod need;
pub mod own_controller;
pub mod part_load;
pub mod parts_list;
pub mod phase_cut;
mod plan;
mod planning;
mod problem;
pub mod recommendation;
mod root;
pub mod sensor;
pub mod sensor_place;
pub mod settings;
mod stage_points;
mod system;
pub mod usual;
mod verdict;
pub mod void_fraction;
pub mod weather;
pub mod winter_start;
mod worksheet;

pub use build::plan;
pub use explain::{Basis, Explained, Given, Quantity, Rule, Term, Working};
pub use field::Field;
pub use input::Input;
pub use plan::{
    Condition, Curves, Cycle, Design, HoldLimits, Method, PerMethod, Plan, Point, Rung, Zones,
};
pub use planning::Planning;
pub use problem::{InputError, Problem};
pub use verdict::{Action, Caution, Verdict};
pub use worksheet::SheetRule;

pub use winterset_refrigerant as refrigerant;
