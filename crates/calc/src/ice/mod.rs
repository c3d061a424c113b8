//! Ice on the evaporator: how cold its surface gets, whether water or frost settles there, how fast, and what melts it again.
//!
//! * [`Coil`] and its [`Pass`]: surface and air all the way through a coil that is dry, wet or frosting;
//! * [`ice_starts`] and [`lowest_evaporating`]: how cold the refrigerant may be before ice starts;
//! * [`outcome`]: whether ice stays away, is melted in the off time of every cycle, or grows;
//! * [`Fins`]: what a mass of ice leaves of the airflow, between two bounds.
//!
//! Temperatures of the refrigerant are those of its coldest part in the coil: see [`coldest_refrigerant`] for a blend, which is colder where it
//! enters than its dew temperature says.
//!
//! Source: ASHRAE Handbook Fundamentals, psychrometrics and mass transfer chapters; ASHRAE Handbook HVAC Systems and Equipment, air-cooling
//! and dehumidifying coils chapter; Incropera & DeWitt, analogy of heat and mass transfer.

mod coil;
mod cycle;
mod error;
mod fins;
mod limit;

pub use coil::{Coil, KnownPoint, Pass, ReturnAir, Surface, usual_air_share};
pub use cycle::{Cycle, Ice, Melt, Stays, melting, outcome, usual_off_airflow};
pub use error::{IceError, IceInput};
pub use fins::{AirflowLeft, Fins};
pub use limit::{
    EvaporatingLimit, LimitedBy, NoLimit, coldest_refrigerant, ice_starts, lowest_evaporating,
    usual_inlet_quality,
};
