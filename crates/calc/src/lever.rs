//! What would lower the pressure need, and by how much: each change worked out as a plan of its own.

use uom::si::f64::{Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin as kelvin_interval;

use crate::explain::Given;
use crate::input::{Input, Metering};
use crate::need::NeedPart;
use crate::plan::{Method, Plan};

/// Subcooling that a longer condenser or a subcooler would add, K. Common practice, no published source.
const MORE_SUBCOOLING: f64 = 5.0;

/// A change to the system.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Change {
    /// A valve with a balanced port in place of what is there.
    BalancedPort,
    /// An electronic valve in place of what is there.
    ElectronicValve,
    /// More subcooling.
    MoreSubcooling,
}

impl Change {
    /// Every change.
    pub const ALL: [Change; 3] = [
        Change::BalancedPort,
        Change::ElectronicValve,
        Change::MoreSubcooling,
    ];

    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            Change::BalancedPort => "balanced_port",
            Change::ElectronicValve => "electronic_valve",
            Change::MoreSubcooling => "more_subcooling",
        }
    }

    /// The system with the change made; `None` where it has it already.
    fn made(self, plan: &Plan) -> Option<Input> {
        let input = &plan.input;
        let valve = |metering| Input {
            metering: Given::entered(metering),
            ..input.clone()
        };
        match (self, input.metering.value) {
            (Change::BalancedPort, Metering::TxvConventional | Metering::FixedOrifice) => {
                Some(valve(Metering::TxvBalanced))
            }
            (Change::ElectronicValve, Metering::ElectronicValve) => None,
            (Change::ElectronicValve, _) => Some(valve(Metering::ElectronicValve)),
            (Change::BalancedPort, _) => None,
            (Change::MoreSubcooling, _) => Some(Input {
                subcooling: Some(
                    plan.design.subcooling
                        + TemperatureInterval::new::<kelvin_interval>(MORE_SUBCOOLING),
                ),
                ..input.clone()
            }),
        }
    }
}

/// What a change does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lever {
    /// The change.
    pub change: Change,
    /// The need with it.
    pub need: Pressure,
    /// The need with it as a condensing temperature (dew).
    pub condensing: ThermodynamicTemperature,
    /// Which part then governs.
    pub governing: NeedPart,
    /// Hold limit of speed control with it.
    pub limit: ThermodynamicTemperature,
}

impl Plan {
    /// Every change that lowers the need, the strongest first.
    pub fn levers(&self) -> Vec<Lever> {
        let mut levers: Vec<Lever> = Change::ALL
            .into_iter()
            .filter_map(|change| self.lever(change))
            .collect();
        levers.sort_by(|a, b| a.need.value.total_cmp(&b.need.value));
        levers
    }

    /// What a change does; `None` where the system has it already, or where it does not lower the need.
    pub fn lever(&self, change: Change) -> Option<Lever> {
        let made = crate::plan(&change.made(self)?).ok()?;
        let lever = Lever {
            change,
            need: made.need.pressure.value,
            condensing: made.need.condensing,
            governing: made.need.governing,
            limit: made.hold.of(Method::SpeedControl).value,
        };
        (lever.need < self.need.pressure.value).then_some(lever)
    }
}
