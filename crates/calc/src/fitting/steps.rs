//! The work in its order, with what can hurt at each step.

use super::wiring::switched_beside;
use super::{Arrangement, Choice, Circuit, CoilPlace, Control, Tap};
use crate::advice::ReversingValve;
use crate::input::MotorKind;
use crate::plan::Plan;
use crate::verdict::Caution;

/// A piece of the work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Work {
    /// Compare what is ordered with the plan, and have the makers' instructions at hand.
    Prepare,
    /// Lock the supply off and prove it dead.
    Isolate,
    /// Put in the receiver and the valve that floods the condenser, and charge.
    FitFlooding,
    /// Put up the baffle.
    FitBaffle,
    /// Strap the sensor to the coil.
    StrapSensor(CoilPlace),
    /// Screw the transducer on the liquid line.
    FitTransducer,
    /// Screw the pressure switches on, one for each group that is switched.
    FitSwitches(u32),
    /// The same on the second circuit.
    FitSecond(Tap),
    /// Lay the lead of the sensor.
    LayLead,
    /// Mount the controller, the drive or the contactors.
    Mount(Control),
    /// Wire the fans.
    Wire(Control, MotorKind),
    /// Wire the fans that are switched while a controller slows the others.
    WireSwitched,
    /// Bring the signal of the reversing valve; `None` where it is not known in which mode its coil is energised.
    WireReversingValve {
        /// The mode.
        valve: Option<ReversingValve>,
        /// Whether there are pressure switches to be passed by.
        switched: bool,
    },
    /// Enter the settings sheet.
    EnterValues,
    /// Set the pressure switches.
    SetSwitches,
    /// Give power again, and look.
    GivePower,
}

/// A step of the work.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What is done.
    pub work: Work,
    /// What can hurt at it.
    pub cautions: Vec<Caution>,
}

pub(super) fn of(plan: &Plan, choice: Choice, control: Control, circuit: &Circuit) -> Vec<Step> {
    let mut work = Vec::new();
    if circuit.has_flooding_valve {
        work.push(Work::FitFlooding);
    }
    if circuit.has_baffle {
        work.push(Work::FitBaffle);
    }
    if let Some(tap) = circuit.tap {
        work.push(match tap {
            Tap::Coil(place) => Work::StrapSensor(place),
            Tap::LiquidLine => Work::FitTransducer,
            Tap::Switches(count) => Work::FitSwitches(count),
        });
        if circuit.has_second {
            work.push(Work::FitSecond(tap));
        }
        let has_switched = switched_beside(plan, control).is_some();
        if has_switched {
            work.push(Work::FitSwitches(1));
            if circuit.has_second {
                work.push(Work::FitSecond(Tap::Switches(1)));
            }
        }
        if control.slows() {
            work.push(Work::LayLead);
        }
        work.extend([
            Work::Mount(control),
            Work::Wire(control, plan.input.motor.value),
        ]);
        if has_switched {
            work.push(Work::WireSwitched);
        }
        if choice.arrangement == Arrangement::HeatPump {
            let valve = ReversingValve::of(plan.input.reversing_valve.value);
            work.push(Work::WireReversingValve {
                valve,
                switched: has_switched || !control.slows(),
            });
        }
        if control.slows() {
            work.push(Work::EnterValues);
        }
        if has_switched || !control.slows() {
            work.push(Work::SetSwitches);
        }
    }
    if work.is_empty() {
        return Vec::new();
    }
    [Work::Prepare, Work::Isolate]
        .into_iter()
        .chain(work)
        .chain([Work::GivePower])
        .map(|work| Step {
            work,
            cautions: cautions(work)
                .iter()
                .filter(|caution| plan.cautions.contains(caution))
                .copied()
                .collect(),
        })
        .collect()
}

/// What can hurt at a piece of work, whatever the plan.
fn cautions(work: Work) -> &'static [Caution] {
    match work {
        Work::Prepare | Work::LayLead | Work::EnterValues | Work::SetSwitches => &[],
        Work::Isolate => &[Caution::Roof, Caution::Mains],
        Work::FitBaffle => &[Caution::RotatingFan],
        Work::StrapSensor(_) | Work::FitSecond(Tap::Coil(_)) => &[Caution::RotatingFan],
        Work::FitFlooding
        | Work::FitTransducer
        | Work::FitSwitches(_)
        | Work::FitSecond(Tap::LiquidLine | Tap::Switches(_)) => {
            &[Caution::Pressure, Caution::Flammable]
        }
        // What is mounted near a leak must be allowed there.
        Work::Mount(_) => &[Caution::Flammable],
        Work::Wire(..) | Work::WireSwitched => &[Caution::Capacitor],
        Work::WireReversingValve { .. } => &[Caution::Mains],
        Work::GivePower => &[Caution::RotatingFan],
    }
}
