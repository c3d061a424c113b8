//! Fan laws for a fan in an unchanged system.
//!
//! Source: AMCA 201 and ISO 5801; ASHRAE Handbook HVAC Systems and Equipment, fans chapter.

use uom::si::f64::{Power, Pressure, VolumeRate};

/// What a fan does at one speed in air of one density.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FanPoint {
    /// Volume flow.
    pub airflow: VolumeRate,
    /// Pressure rise, as a difference.
    pub pressure_rise: Pressure,
    /// Shaft power.
    pub power: Power,
}

impl FanPoint {
    /// The same fan in the same system at another speed and density.
    ///
    /// `V ∝ n`, `Δp ∝ ρ·n²`, `P ∝ ρ·n³`; both arguments are ratios of new to old.
    #[must_use]
    pub fn scaled(self, speed: f64, density: f64) -> Self {
        Self {
            airflow: airflow(self.airflow, speed),
            pressure_rise: self.pressure_rise * density * speed.powi(2),
            power: self.power * density * speed.powi(3),
        }
    }
}

/// Volume flow at a share of the speed: flow goes with speed, whatever the density.
pub fn airflow(full: VolumeRate, speed_fraction: f64) -> VolumeRate {
    full * speed_fraction
}
