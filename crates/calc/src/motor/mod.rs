//! The fan motor: what it needs to turn a fan at a speed, to start it and to stay within its rating.
//!
//! * [`InductionMotor`]: torque balance on a reduced voltage or another frequency, slip heating, stall and start limits,
//!   start time;
//! * [`FrequencyDrive`] and [`EcMotor`]: the two that a signal sets;
//! * [`Supply`]: what the line gives a motor, against its nameplate;
//! * [`Loading`]: the motors' currents together on one controller.
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer): Kloss's equation, voltage and frequency
//! speed control of fan drives. Further sources stand in the modules.

mod commutated;
mod current;
mod drive;
mod error;
mod friction;
mod heating;
mod induction;
mod stall;
mod start;
mod supply;

use uom::si::f64::Time;
use uom::si::time::second;

use crate::input::{Bearing, MotorKind};

pub use commutated::{EcMotor, Signal};
pub use current::{Fit, Loading};
pub use drive::{FrequencyDrive, usual_lowest_frequency};
pub use error::{MotorError, MotorValue};
pub use friction::{Friction, cold_factor};
pub use heating::{PEAK_SHARE, PEAK_SLIP, SlipHeating, slip_loss_share, warning_band};
pub use induction::InductionMotor;
pub use stall::{Limits, State, Turning, starting_torque_ratio};
pub use start::{Start, StartTime, usual_boost_range, usual_inertia, windmill_speed};
pub use supply::{Supply, supply_voltage_range};

/// Whether a phase-cut supply may slow this kind of motor. Common practice, no published source.
pub fn takes_phase_cut(kind: MotorKind) -> bool {
    matches!(
        kind,
        MotorKind::PermanentSplitCapacitor | MotorKind::ShadedPole
    )
}

/// Lowest share of full speed that a bearing allows: a sleeve bearing needs speed to keep its oil film.
///
/// Common practice, no published source.
pub fn lowest_speed_fraction(bearing: Bearing) -> f64 {
    match bearing {
        Bearing::Ball => 0.2,
        Bearing::Sleeve => 0.4,
    }
}

/// Shortest time at full output at a start that a bearing is given, however quickly its fan comes up: longer where an oil film has to form
/// first.
///
/// Common practice, no published source: within 0.1 to 5 s. [`InductionMotor::start_time`] works out what one fan takes.
pub fn start_boost(bearing: Bearing) -> Time {
    Time::new::<second>(match bearing {
        Bearing::Ball => 0.5,
        Bearing::Sleeve => 2.0,
    })
}
