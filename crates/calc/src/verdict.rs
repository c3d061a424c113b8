//! The verdict of a plan: one sentence's worth, and one thing to do.

use uom::si::f64::ThermodynamicTemperature;

use winterset_refrigerant::{Refrigerant, SafetyClass};

use crate::input::MotorKind;
use crate::plan::{HoldLimits, Method};

/// What the plan says in one sentence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Verdict {
    /// Head pressure stays up with the fans at full speed down to the site's low.
    NotNeeded {
        /// Hold limit with full fan.
        limit: ThermodynamicTemperature,
        /// The site's low.
        low: ThermodynamicTemperature,
    },
    /// Speed control holds down to the site's low.
    Holds {
        /// Hold limit with speed control.
        limit: ThermodynamicTemperature,
        /// The site's low.
        low: ThermodynamicTemperature,
    },
    /// Speed control falls short of the site's low.
    FallsShort {
        /// Hold limit with speed control.
        limit: ThermodynamicTemperature,
        /// The site's low.
        low: ThermodynamicTemperature,
    },
}

impl Verdict {
    /// The verdict on hold limits at a site's low.
    pub(crate) fn on(hold: &HoldLimits, low: ThermodynamicTemperature) -> Self {
        let limit = hold.of(Method::SpeedControl).value;
        let uncontrolled = hold.of(Method::FullFan).value;
        if uncontrolled <= low {
            Verdict::NotNeeded {
                limit: uncontrolled,
                low,
            }
        } else if limit <= low {
            Verdict::Holds { limit, low }
        } else {
            Verdict::FallsShort { limit, low }
        }
    }

    /// The one thing to do.
    pub fn action(self, motor: MotorKind) -> Action {
        match (self, motor) {
            (Verdict::NotNeeded { .. }, _) => Action::LeaveFanAlone,
            (_, MotorKind::ElectronicallyCommutated) => Action::UseSpeedInput,
            (_, MotorKind::ThreePhase) => Action::UseFrequencyDrive,
            (Verdict::Holds { .. }, _) => Action::EnterValues,
            (Verdict::FallsShort { .. }, _) => Action::AddBaffleOrFlood,
        }
    }

    /// Whether the plan keeps head pressure up to the site's low.
    pub fn is_enough(self) -> bool {
        !matches!(self, Verdict::FallsShort { .. })
    }
}

/// The one thing to do about a verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Action {
    /// Nothing: leave the fan at full speed.
    LeaveFanAlone,
    /// Enter the values of the settings sheet.
    EnterValues,
    /// Enter the values, and add a wind baffle or flood the condenser.
    AddBaffleOrFlood,
    /// Drive the motor by its own 0 to 10 V or pulse-width input.
    UseSpeedInput,
    /// Drive the motor by a frequency drive, or cycle and stage the fans.
    UseFrequencyDrive,
}

/// What can hurt someone in the work that a plan leads to; shown at the step it belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Caution {
    /// Mains at the fan and the controller.
    Mains,
    /// A charged run capacitor.
    Capacitor,
    /// Refrigerant under pressure.
    Pressure,
    /// A flammable refrigerant.
    Flammable,
    /// A fan that starts by itself.
    RotatingFan,
    /// Work on a roof.
    Roof,
}

/// The cautions of a plan, most general first.
pub(crate) fn cautions(refrigerant: &Refrigerant, motor: MotorKind) -> Vec<Caution> {
    let mut cautions = vec![Caution::Roof, Caution::Mains];
    if motor == MotorKind::PermanentSplitCapacitor {
        cautions.push(Caution::Capacitor);
    }
    cautions.extend([Caution::RotatingFan, Caution::Pressure]);
    // A blend that no standard classifies is taken as flammable until its maker says otherwise.
    if refrigerant
        .safety_class()
        .is_none_or(SafetyClass::is_flammable)
    {
        cautions.push(Caution::Flammable);
    }
    cautions
}
