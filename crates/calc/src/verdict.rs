//! The verdict of a plan: one sentence's worth, and one thing to do.

use uom::si::f64::ThermodynamicTemperature;

use winterset_refrigerant::{Refrigerant, SafetyClass};

use crate::input::MotorKind;
use crate::plan::Method;
use crate::recommendation::{Reason, Recommendation};

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
    /// The recommended method holds down to the site's low.
    Holds {
        /// The recommended method.
        method: Method,
        /// Its hold limit.
        limit: ThermodynamicTemperature,
        /// The site's low.
        low: ThermodynamicTemperature,
    },
    /// Every method falls short of the site's low.
    FallsShort {
        /// The method that comes nearest.
        method: Method,
        /// Its hold limit.
        limit: ThermodynamicTemperature,
        /// The site's low.
        low: ThermodynamicTemperature,
    },
}

impl Verdict {
    /// The verdict that a recommendation comes to at a site's low.
    pub(crate) fn on(recommended: &Recommendation, low: ThermodynamicTemperature) -> Self {
        let Recommendation {
            method,
            reason,
            limit,
        } = *recommended;
        match reason {
            Reason::HoldsByItself => Verdict::NotNeeded { limit, low },
            Reason::NothingHolds => Verdict::FallsShort { method, limit, low },
            _ => Verdict::Holds { method, limit, low },
        }
    }

    /// The method that the verdict speaks of.
    pub fn method(self) -> Method {
        match self {
            Verdict::NotNeeded { .. } => Method::FullFan,
            Verdict::Holds { method, .. } | Verdict::FallsShort { method, .. } => method,
        }
    }

    /// Its hold limit.
    pub fn limit(self) -> ThermodynamicTemperature {
        let (Verdict::NotNeeded { limit, .. }
        | Verdict::Holds { limit, .. }
        | Verdict::FallsShort { limit, .. }) = self;
        limit
    }

    /// The one thing to do.
    pub fn action(self, motor: MotorKind) -> Action {
        let method = match self {
            Verdict::NotNeeded { .. } => return Action::LeaveFanAlone,
            Verdict::FallsShort { .. } => return Action::LowerNeed,
            Verdict::Holds { method, .. } => method,
        };
        match (method, motor) {
            (Method::FullFan, _) => Action::LeaveFanAlone,
            (Method::OnOff, _) => Action::CycleFans,
            (Method::Staged, _) => Action::StageFans,
            (Method::Flooding, _) => Action::Flood,
            (Method::SpeedWithBaffle, _) => Action::AddBaffle,
            (Method::SpeedWithFlooding, _) => Action::AddFlooding,
            (Method::SpeedControl, MotorKind::ElectronicallyCommutated) => Action::UseSpeedInput,
            (Method::SpeedControl, MotorKind::ThreePhase) => Action::UseFrequencyDrive,
            (Method::SpeedControl, _) => Action::EnterValues,
        }
    }

    /// Whether the plan keeps head pressure up to the site's low.
    pub fn is_enough(self) -> bool {
        !matches!(self, Verdict::FallsShort { .. })
    }
}

/// The one thing to do about a verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Action {
    /// Nothing: leave the fan at full speed.
    LeaveFanAlone,
    /// Enter the values of the settings sheet.
    EnterValues,
    /// Drive the motor by its own 0 to 10 V or pulse-width input.
    UseSpeedInput,
    /// Drive the motor by a frequency drive.
    UseFrequencyDrive,
    /// Slow the fan, and keep the wind off the coil.
    AddBaffle,
    /// Slow the fan, and flood the condenser on the coldest days.
    AddFlooding,
    /// Flood the condenser.
    Flood,
    /// Switch all fans by pressure.
    CycleFans,
    /// Switch the fans one after another.
    StageFans,
    /// Make the system need less head pressure: no method holds it to the low.
    LowerNeed,
}

impl Action {
    /// Every action.
    pub const ALL: [Action; 10] = [
        Action::LeaveFanAlone,
        Action::EnterValues,
        Action::UseSpeedInput,
        Action::UseFrequencyDrive,
        Action::AddBaffle,
        Action::AddFlooding,
        Action::Flood,
        Action::CycleFans,
        Action::StageFans,
        Action::LowerNeed,
    ];

    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            Action::LeaveFanAlone => "leave_fan_alone",
            Action::EnterValues => "enter_values",
            Action::UseSpeedInput => "use_speed_input",
            Action::UseFrequencyDrive => "use_frequency_drive",
            Action::AddBaffle => "add_baffle",
            Action::AddFlooding => "add_flooding",
            Action::Flood => "flood",
            Action::CycleFans => "cycle_fans",
            Action::StageFans => "stage_fans",
            Action::LowerNeed => "lower_need",
        }
    }
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
