//! The electrical side: what the current passes from the supply to the fans, and which signals steer it.

use super::{Arrangement, Circuit, Control, Tap};
use crate::input::MotorKind;
use crate::plan::Plan;

/// A part of the wiring.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Part {
    /// Where the current comes from.
    Supply,
    /// What isolates everything behind it.
    Disconnect,
    /// The unit's own contactor, closed while the compressor is to run.
    Contactor,
    /// A contactor that a pressure switch closes, for the fans alone.
    FanContactor,
    /// What slows the fans.
    SpeedController,
    /// What slows three-phase fans.
    FrequencyDrive,
    /// A fan motor, or all that run alike.
    Motor,
    /// The fan motors that are never switched off.
    FirstMotor,
    /// The fan motors that are switched off one after another.
    FurtherMotors,
    /// The fan motors of a bank that are switched while a controller slows the others.
    SwitchedMotors,
    /// The run capacitor of a motor.
    Capacitor,
    /// A sensor strapped to the coil.
    CoilSensor,
    /// The same on the second circuit.
    SecondCoilSensor,
    /// A transducer on the liquid line.
    PressureSensor,
    /// The same on the second circuit.
    SecondPressureSensor,
    /// A pressure switch, or one for each group that is switched.
    PressureSwitch,
    /// The same on the second circuit.
    SecondPressureSwitch,
    /// The coil of the reversing valve.
    ReversingValve,
}

/// How many fans there are, and how they stand to each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fans {
    /// All side by side, alike.
    Alike(u32),
    /// One runs always, and so many further ones are switched.
    OneAndFurther(u32),
    /// Some are slowed, and the rest are switched together.
    Mixed {
        /// How many are slowed.
        slowed: u32,
        /// How many are switched.
        switched: u32,
    },
}

/// The wiring of the fans.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wiring {
    /// Wires of the supply that reach the fans: three where it has three phases, else two.
    pub wires: u8,
    /// What the current passes, from the supply to the motors.
    pub line: Vec<Part>,
    /// The part that signals steer: on the line or, where it only gives a signal to the motor, beside it.
    pub hub: Part,
    /// What steers it, in the order in which it is wired.
    pub signals: Vec<Part>,
    /// What closes the contactor of the switched motors, where the controller slows but some of the fans.
    pub switches: Vec<Part>,
    /// Whether each motor keeps a run capacitor of its own.
    pub has_capacitor: bool,
    /// The fans.
    pub fans: Fans,
}

impl Wiring {
    /// Whether the hub only gives a signal, so that the motor stays on its full supply.
    pub fn hub_is_beside(&self) -> bool {
        !self.line.contains(&self.hub)
    }

    pub(super) fn of(
        plan: &Plan,
        arrangement: Arrangement,
        control: Control,
        circuit: &Circuit,
    ) -> Option<Self> {
        let fans = fans(plan, control);
        let (line, hub): (&[Part], Part) = match control {
            Control::FullSpeed => return None,
            Control::Switched => (
                &[
                    Part::Supply,
                    Part::Disconnect,
                    Part::FanContactor,
                    Part::Motor,
                ],
                Part::FanContactor,
            ),
            Control::Staged => (
                &[
                    Part::Supply,
                    Part::Disconnect,
                    Part::Contactor,
                    Part::FirstMotor,
                    Part::FanContactor,
                    Part::FurtherMotors,
                ],
                Part::FanContactor,
            ),
            Control::PhaseCut => (
                &[
                    Part::Supply,
                    Part::Disconnect,
                    Part::Contactor,
                    Part::SpeedController,
                    Part::Motor,
                ],
                Part::SpeedController,
            ),
            Control::Signal => (
                &[Part::Supply, Part::Disconnect, Part::Contactor, Part::Motor],
                Part::SpeedController,
            ),
            // Nothing switches between a drive and its motor.
            Control::FrequencyDrive => (
                &[
                    Part::Supply,
                    Part::Disconnect,
                    Part::FrequencyDrive,
                    Part::Motor,
                ],
                Part::FrequencyDrive,
            ),
        };
        let motor = plan.input.motor.value;
        let mut line = line.to_vec();
        let mut switches = Vec::new();
        if let Fans::Mixed { .. } = fans {
            // Ahead of the controller, so that they get the whole supply.
            let slowed = line.iter().position(|part| *part == hub);
            let at = slowed.unwrap_or(line.len().saturating_sub(1));
            line.insert(at, Part::SwitchedMotors);
            switches.push(Part::PressureSwitch);
            if circuit.has_second {
                switches.push(Part::SecondPressureSwitch);
            }
        }
        Some(Self {
            wires: if motor == MotorKind::ThreePhase { 3 } else { 2 },
            line,
            hub,
            signals: signals(arrangement, control, circuit),
            switches,
            has_capacitor: motor == MotorKind::PermanentSplitCapacitor,
            fans,
        })
    }
}

fn fans(plan: &Plan, control: Control) -> Fans {
    let fans = plan.input.fans.value;
    match control {
        Control::Staged => Fans::OneAndFurther(fans.saturating_sub(1).max(1)),
        _ => switched_beside(plan, control).map_or(Fans::Alike(fans), |switched| Fans::Mixed {
            slowed: fans - switched,
            switched,
        }),
    }
}

/// How many fans are switched while a controller slows the others; `None` where it slows all.
pub(super) fn switched_beside(plan: &Plan, control: Control) -> Option<u32> {
    let switched = plan.input.fans.value.checked_sub(plan.input.modulated())?;
    (control.slows() && switched > 0).then_some(switched)
}

fn signals(arrangement: Arrangement, control: Control, circuit: &Circuit) -> Vec<Part> {
    let Some((first, second)) = circuit.tap.map(Tap::parts) else {
        return Vec::new();
    };
    let mut signals = vec![first];
    if circuit.has_second {
        signals.push(second);
    }
    if arrangement == Arrangement::HeatPump {
        signals.push(Part::ReversingValve);
    }
    // The drive is told to run by the contactor that it does not stand behind.
    if control == Control::FrequencyDrive {
        signals.push(Part::Contactor);
    }
    signals
}
