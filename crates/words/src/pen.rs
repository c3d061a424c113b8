//! Writes values into sentences, in the units of a person.

use uom::si::f64::{Pressure, Time};
use winterset_calc::Quantity;

use crate::units::Units;

/// Writes values in the units of a person.
pub(crate) struct Pen {
    pub(crate) units: Units,
    pub(crate) atmosphere: Pressure,
}

impl Pen {
    /// For sentences that no gauge pressure stands in.
    pub(crate) fn without_gauge(units: Units) -> Self {
        Self {
            units,
            atmosphere: Pressure::default(),
        }
    }

    pub(crate) fn show(&self, quantity: Quantity) -> String {
        self.units.show(&quantity, self.atmosphere).to_string()
    }

    pub(crate) fn brief(&self, quantity: Quantity) -> String {
        self.units.brief(&quantity, self.atmosphere).to_string()
    }

    pub(crate) fn pressure(&self, pressure: Pressure) -> String {
        self.show(Quantity::Pressure(pressure))
    }

    /// Never written as less than it is.
    pub(crate) fn at_least(&self, quantity: Quantity) -> String {
        self.units.at_least(&quantity, self.atmosphere).to_string()
    }

    /// Never written as more than it is.
    pub(crate) fn at_most(&self, quantity: Quantity) -> String {
        self.units.at_most(&quantity, self.atmosphere).to_string()
    }

    pub(crate) fn seconds(&self, time: Time) -> String {
        self.units.seconds(time).to_string()
    }
}
