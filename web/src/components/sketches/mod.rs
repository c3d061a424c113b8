//! Our own line sketches of what is fitted where and how it is wired, laid out by code from the arrangement at hand.
//!
//! One stroke weight. Solid lines are pipes and wires, dashed ones signals, dotted ones lead from a thing to its name. Names stand in a column of their
//! own, so that none lies over a line or over another, whatever the language.

mod circuit;
mod drawing;
mod figure;
mod wiring;

pub use circuit::circuit;
pub use drawing::{Drawing, Label, Stroke};
pub use figure::SketchFigure;
pub use wiring::wiring;
