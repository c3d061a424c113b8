//! The refrigerant's side: where head pressure is sensed, and what else stands in the circuit.

use super::{Arrangement, Choice, Control, Part};
use crate::input::Sensing;
use crate::plan::Plan;
use crate::sensor_place::{Outcome, USUAL_PLACE};

/// Where a coil sensor goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CoilPlace {
    /// The usual place, at [`USUAL_PLACE`] of the circuit from the gas inlet.
    Usual,
    /// Another place, as a share of the circuit from the gas inlet: the usual one does not do on this coil.
    Moved(f64),
    /// No place is in two phases both at the known point and at the low.
    Nowhere,
}

impl CoilPlace {
    /// Share of the circuit from the gas inlet; `None` where no place does.
    pub fn share(self) -> Option<f64> {
        match self {
            CoilPlace::Usual => Some(USUAL_PLACE),
            CoilPlace::Moved(share) => Some(share),
            CoilPlace::Nowhere => None,
        }
    }
}

/// Where head pressure is sensed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Tap {
    /// By a sensor strapped to the coil.
    Coil(CoilPlace),
    /// By a transducer on the liquid line at the condenser.
    LiquidLine,
    /// By a pressure switch on the liquid line at the condenser; one for each group of fans that is switched.
    Switches(u32),
}

/// A thing on the refrigerant's side, as a sketch shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Item {
    /// Hot gas from the compressor.
    HotGas,
    /// The reversing valve.
    ReversingValve,
    /// The condenser fans.
    Fans(u32),
    /// The condenser fans, where two circuits share them.
    SharedFans(u32),
    /// The baffle.
    Baffle,
    /// The condenser coil.
    Coil,
    /// The condenser coil of the second circuit.
    SecondCoil,
    /// A sensor or a switch.
    Sensor(Part),
    /// The valve that floods the condenser.
    FloodingValve,
    /// The receiver.
    Receiver,
    /// The liquid on its way to the metering device.
    Liquid,
}

/// What stands on the refrigerant's side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Circuit {
    /// Where head pressure is sensed; `None` where nothing moves by it.
    pub tap: Option<Tap>,
    /// A second circuit on the same fans, sensed alike.
    pub has_second: bool,
    /// A receiver behind the condenser.
    pub has_receiver: bool,
    /// A valve that holds head pressure by flooding the condenser.
    pub has_flooding_valve: bool,
    /// A reversing valve.
    pub has_reversing_valve: bool,
    /// A baffle that keeps the wind off the coil.
    pub has_baffle: bool,
}

impl Circuit {
    pub(super) fn of(plan: &Plan, choice: Choice, control: Control) -> Self {
        let Choice {
            method,
            arrangement,
        } = choice;
        Self {
            tap: tap(plan, choice, control),
            has_second: arrangement == Arrangement::TwoCircuits,
            has_receiver: method.floods()
                || arrangement == Arrangement::WithReceiver
                || (arrangement == Arrangement::TwoCircuits
                    && Arrangement::of(plan) == Arrangement::WithReceiver),
            has_flooding_valve: method.floods(),
            has_reversing_valve: arrangement == Arrangement::HeatPump,
            has_baffle: method == crate::plan::Method::SpeedWithBaffle,
        }
    }
}

impl Circuit {
    /// The condenser fans as a sketch shows them.
    pub fn fans(&self, count: u32) -> Item {
        if self.has_second {
            Item::SharedFans(count)
        } else {
            Item::Fans(count)
        }
    }

    /// Everything that a sketch shows, from the hot gas on; what belongs to the second circuit comes last.
    pub fn items(&self, fans: u32) -> Vec<Item> {
        let sensors = self.tap.map(|tap| (tap, tap.parts()));
        let on_coil = matches!(self.tap, Some(Tap::Coil(place)) if place.share().is_some());
        let at = |coil: Item, sensor: Option<Part>| {
            let sensor = sensor.map(Item::Sensor);
            if on_coil {
                [Some(coil), sensor, Some(Item::Liquid)]
            } else {
                [Some(coil), Some(Item::Liquid), sensor]
            }
        };
        let first = at(Item::Coil, sensors.map(|(_, (first, _))| first));
        let second = at(Item::SecondCoil, sensors.map(|(_, (_, second))| second));
        [
            Some(Item::HotGas),
            self.has_reversing_valve.then_some(Item::ReversingValve),
            Some(self.fans(fans)),
            self.has_baffle.then_some(Item::Baffle),
        ]
        .into_iter()
        .chain(first)
        .chain([
            self.has_flooding_valve.then_some(Item::FloodingValve),
            self.has_receiver.then_some(Item::Receiver),
        ])
        .chain(second.into_iter().filter(|_| self.has_second))
        .flatten()
        .collect()
    }
}

impl Tap {
    /// What senses it: on the first circuit and on the second.
    pub(super) fn parts(self) -> (Part, Part) {
        match self {
            Tap::Coil(CoilPlace::Usual | CoilPlace::Moved(_)) => {
                (Part::CoilSensor, Part::SecondCoilSensor)
            }
            Tap::LiquidLine | Tap::Coil(CoilPlace::Nowhere) => {
                (Part::PressureSensor, Part::SecondPressureSensor)
            }
            Tap::Switches(_) => (Part::PressureSwitch, Part::SecondPressureSwitch),
        }
    }
}

fn tap(plan: &Plan, choice: Choice, control: Control) -> Option<Tap> {
    let fans = plan.input.fans.value;
    match control {
        Control::FullSpeed => None,
        Control::Switched => Some(Tap::Switches(1)),
        Control::Staged => Some(Tap::Switches(fans.saturating_sub(1).max(1))),
        Control::PhaseCut | Control::Signal | Control::FrequencyDrive => {
            Some(match plan.input.sensing.value {
                Sensing::LiquidPressure => Tap::LiquidLine,
                Sensing::CoilTemperature => Tap::Coil(coil_place(plan, choice)),
            })
        }
    }
}

/// Where the zones of the coil are not known at the low, the usual place stands.
fn coil_place(plan: &Plan, choice: Choice) -> CoilPlace {
    match plan.sensor_place(choice.method) {
        Ok(Some(answer)) => match (answer.outcome, answer.best) {
            (Outcome::Confirmed { .. }, _) => CoilPlace::Usual,
            (Outcome::Refused { .. }, Some(best)) => CoilPlace::Moved(best),
            (Outcome::Refused { .. }, None) => CoilPlace::Nowhere,
        },
        _ => CoilPlace::Usual,
    }
}
