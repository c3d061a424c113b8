//! How a method is fitted and wired: what goes where, in which order the work is done, and what can hurt at each step.
//!
//! [`Plan::fitting`] decides for a [`Choice`] of method and arrangement: where head pressure is sensed, which parts stand on the refrigerant's side
//! ([`Circuit`]), which parts the current passes and which signals steer them ([`Wiring`]), and the [`Step`]s of the work with their cautions. It names
//! no terminals: those are in the instructions of each part.
//!
//! Source: common practice, no published source, but for what each motor takes, which is in [`crate::motor`].

mod circuit;
mod steps;
mod wiring;

pub use circuit::{Circuit, CoilPlace, Item, Tap};
pub use steps::{Step, Work};
pub use wiring::{Fans, Part, Wiring};

use crate::input::{Duty, Metering, MotorKind, Reversing};
use crate::motor::takes_phase_cut;
use crate::plan::{Method, Plan};

/// How the system is put together, as far as fitting has to do with it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Arrangement {
    /// It cools, and has no receiver.
    CoolingOnly,
    /// Refrigeration with a receiver behind the condenser.
    WithReceiver,
    /// A heat pump: in heating the fan runs at full speed.
    HeatPump,
    /// Two circuits whose condensers share their fans.
    TwoCircuits,
}

impl Arrangement {
    /// Every arrangement, the plainest first.
    pub const ALL: [Arrangement; 4] = [
        Arrangement::CoolingOnly,
        Arrangement::WithReceiver,
        Arrangement::HeatPump,
        Arrangement::TwoCircuits,
    ];

    /// The stable name that preferences carry.
    pub fn key(self) -> &'static str {
        match self {
            Arrangement::CoolingOnly => "cooling-only",
            Arrangement::WithReceiver => "with-receiver",
            Arrangement::HeatPump => "heat-pump",
            Arrangement::TwoCircuits => "two-circuits",
        }
    }

    /// The arrangement with this stable name.
    pub fn from_key(key: &str) -> Option<Self> {
        let mut all = Self::ALL.into_iter();
        all.find(|arrangement| arrangement.key() == key)
    }

    /// What the answers of a plan speak for: a heat pump where a reversing valve was entered, else a receiver where a cold room is cooled through
    /// a valve. Two circuits are two plans, so that no answer tells of them.
    pub fn of(plan: &Plan) -> Self {
        let input = &plan.input;
        if input.reversing_valve.value != Reversing::None {
            Arrangement::HeatPump
        } else if input.duty.value != Duty::RoomCooling
            && input.metering.value != Metering::FixedOrifice
        {
            Arrangement::WithReceiver
        } else {
            Arrangement::CoolingOnly
        }
    }
}

/// How the fans are moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Control {
    /// At full speed always: their wiring stays as it is.
    FullSpeed,
    /// All at once, by a pressure switch.
    Switched,
    /// One after another, each group by its own pressure switch.
    Staged,
    /// By a controller that cuts the phase of their supply.
    PhaseCut,
    /// By the motor's own input, which takes a signal of 0 to 10 V or of pulses.
    Signal,
    /// By a frequency drive.
    FrequencyDrive,
}

impl Control {
    /// How a method moves fans with a kind of motor.
    pub fn of(method: Method, motor: MotorKind) -> Self {
        match method {
            Method::FullFan | Method::Flooding => Control::FullSpeed,
            Method::OnOff => Control::Switched,
            Method::Staged => Control::Staged,
            Method::SpeedControl | Method::SpeedWithBaffle | Method::SpeedWithFlooding => {
                match motor {
                    motor if takes_phase_cut(motor) => Control::PhaseCut,
                    MotorKind::ThreePhase => Control::FrequencyDrive,
                    _ => Control::Signal,
                }
            }
        }
    }

    /// Whether the fans are slowed.
    pub fn slows(self) -> bool {
        matches!(
            self,
            Control::PhaseCut | Control::Signal | Control::FrequencyDrive
        )
    }
}

/// What is to be fitted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Choice {
    /// The method.
    pub method: Method,
    /// How the system is put together.
    pub arrangement: Arrangement,
}

impl Choice {
    /// The method that the plan recommends, in the arrangement that its answers speak for.
    pub fn of(plan: &Plan) -> Self {
        Self {
            method: plan.recommendation.method,
            arrangement: Arrangement::of(plan),
        }
    }
}

/// How a method is fitted and wired.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitting {
    /// What was chosen.
    pub choice: Choice,
    /// How the fans are moved.
    pub control: Control,
    /// The refrigerant's side.
    pub circuit: Circuit,
    /// The electrical side; `None` where the wiring stays as it is.
    pub wiring: Option<Wiring>,
    /// The work in its order; empty where there is nothing to fit.
    pub steps: Vec<Step>,
}

impl Plan {
    /// How a method is fitted to this system in an arrangement.
    pub fn fitting(&self, choice: Choice) -> Fitting {
        let control = Control::of(choice.method, self.input.motor.value);
        let circuit = Circuit::of(self, choice, control);
        let wiring = Wiring::of(self, choice.arrangement, control, &circuit);
        let steps = steps::of(self, choice, control, &circuit);
        Fitting {
            choice,
            control,
            circuit,
            wiring,
            steps,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice, no published source: each kind of motor with what slows it.
    #[test]
    fn a_motor_is_slowed_by_what_it_takes() {
        let slowed = |motor| Control::of(Method::SpeedControl, motor);
        assert_eq!(
            slowed(MotorKind::PermanentSplitCapacitor),
            Control::PhaseCut
        );
        assert_eq!(slowed(MotorKind::ShadedPole), Control::PhaseCut);
        assert_eq!(slowed(MotorKind::ElectronicallyCommutated), Control::Signal);
        assert_eq!(slowed(MotorKind::ThreePhase), Control::FrequencyDrive);
    }

    #[test]
    fn arrangements_have_their_names() {
        for arrangement in Arrangement::ALL {
            assert_eq!(Arrangement::from_key(arrangement.key()), Some(arrangement));
        }
        assert_eq!(Arrangement::from_key("three-circuits"), None);
    }
}
