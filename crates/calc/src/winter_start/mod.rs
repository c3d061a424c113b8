//! Winter start: what happens when a system starts after standing in the cold, and what that needs.
//!
//! * [`standing`] and [`LowPressureSwitch`]: the pressures of a night against the low-pressure cut-out;
//! * [`StartUp`]: how long the suction pressure stays below the cut-out after the start, which is the bypass time wanted;
//! * [`migration`]: how much refrigerant gathers in the coldest part while the system stands, and [`sump_heat`] that keeps it out of the oil;
//! * [`Wind`]: what wind makes of an idle fan, and what its start then takes.
//!
//! Source: two-phase equilibrium from the refrigerant's equation of state; ASHRAE Handbook Refrigeration, halocarbon refrigeration systems
//! chapter. Further sources, and what is common practice, stand in the modules.

mod error;
mod migration;
mod pull_down;
mod standing;
mod start_up;
mod sump;
mod table;
mod usual;
mod wind;

pub use error::{StartError, StartInput};
pub use migration::{Held, Migration, Night, Part, Place, SetBy, migration};
pub use standing::{Contact, LowPressureSwitch, Standing, standing};
pub use start_up::{
    BypassOutcome, Moment, Nominal, Persists, StartUp, usual_bypass_range, usual_evaporator_charge,
    usual_heat_capacity, usual_horizon,
};
pub use sump::{SumpHeat, sump_heat, usual_heating_time, usual_sump_conductance, usual_sump_rise};
pub use usual::{
    usual_high_side, usual_idle_conductance, usual_low_side_volume, usual_shell,
    usual_switch_below, usual_wind,
};
pub use wind::{
    AgainstWind, Hold, Turn, Wind, WindOn, against_wind, dc_hold, usual_wind_coefficient,
};
