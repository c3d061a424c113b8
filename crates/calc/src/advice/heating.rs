//! A heat pump's fan in heating: full speed, told from the reversing valve.
//!
//! In heating the outdoor coil evaporates, and a fan slowed by its temperature would starve it. The controller learns of heating from the reversing
//! valve's coil, which is energised in one of the two modes. Common practice, no published source.

use crate::input::Reversing;

/// When the reversing valve is energised.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ReversingValve {
    /// Energised in cooling.
    InCooling,
    /// Energised in heating.
    InHeating,
}

/// What the fan does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HeatingFan {
    /// Full speed, whatever is sensed: the system heats.
    Full,
    /// As the speed controller says: the system cools.
    Controlled,
}

impl ReversingValve {
    /// The valve of a system; `None` where it only cools.
    pub fn of(reversing: Reversing) -> Option<Self> {
        match reversing {
            Reversing::None => None,
            Reversing::InCooling => Some(ReversingValve::InCooling),
            Reversing::InHeating => Some(ReversingValve::InHeating),
        }
    }

    /// What the fan does with the valve's coil energised or not.
    pub fn fan(self, energised: bool) -> HeatingFan {
        match (self, energised) {
            (ReversingValve::InHeating, true) | (ReversingValve::InCooling, false) => {
                HeatingFan::Full
            }
            _ => HeatingFan::Controlled,
        }
    }

    /// What the fan does where the signal wire breaks, so that the coil looks as if never energised: full speed fails to the safe side for
    /// heating and costs head pressure in cooling.
    pub fn fan_with_broken_wire(self) -> HeatingFan {
        self.fan(false)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heating_runs_the_fan_full_whichever_way_the_valve_is_wired() {
        assert_eq!(ReversingValve::InCooling.fan(false), HeatingFan::Full);
        assert_eq!(ReversingValve::InCooling.fan(true), HeatingFan::Controlled);
        assert_eq!(ReversingValve::InHeating.fan(true), HeatingFan::Full);
        assert_eq!(ReversingValve::InHeating.fan(false), HeatingFan::Controlled);
        assert_eq!(
            ReversingValve::InHeating.fan_with_broken_wire(),
            HeatingFan::Controlled
        );
    }
}
