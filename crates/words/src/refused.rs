//! Values in messages about what was typed or cannot be answered.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_calc::Quantity;
use winterset_refrigerant::Quantity as Property;

use crate::units::{Shown, Units};

/// How a bound is rounded.
pub(crate) type Write = fn(Units, &Quantity, Pressure) -> Shown;

/// A bound that a refrigerant's error carries, in the units of a person.
pub(crate) fn written(
    how: Write,
    property: Property,
    value: f64,
    units: Units,
    atmosphere: Pressure,
) -> String {
    let quantity = match property {
        Property::Temperature => {
            Quantity::Temperature(ThermodynamicTemperature::new::<kelvin>(value))
        }
        Property::Pressure => Quantity::Pressure(Pressure::new::<pascal>(value)),
        _ => return format!("{value} {}", property.unit()),
    };
    how(units, &quantity, atmosphere).to_string()
}

/// Enough of what was typed to recognise it by.
pub(crate) fn cut(typed: &str) -> String {
    const LONGEST: usize = 24;
    if typed.chars().count() <= LONGEST {
        return typed.to_owned();
    }
    let head: String = typed.chars().take(LONGEST).collect();
    format!("{head}…")
}
