//! The inputs as questions: what is essential, which units can stand beside an answer, and what a blank is taken to be.

use uom::si::f64::{Length, Pressure};
use winterset_calc::input::{
    Bearing, BelowMinimum, CapacityControl, Defrost, Duty, Metering, MotorKind, Reversing, Sensing,
    SheetUnits,
};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{Basis, Field, Quantity};
use winterset_profile::{Assumed, Kind, System, Unit, kind_of};
use winterset_words::{TemperatureUnit, Units, screen, symbol};
use yew::AttrValue;

use super::words;
use crate::components::field::{Choice, Round};

/// The answers that make a usable plan. Cooling capacity and heat rejected are one question.
pub const ESSENTIALS: [Field; 7] = [
    Field::Refrigerant,
    Field::Duty,
    Field::CoolingCapacity,
    Field::OutdoorLow,
    Field::Metering,
    Field::Motor,
    Field::Bearing,
];

/// Everything else, in the order in which it is found on the way from the nameplate to the roof.
pub const REST: [Field; 37] = [
    Field::OverAmbient,
    Field::KnownOutdoor,
    Field::Evaporating,
    Field::Elevation,
    Field::Voltage,
    Field::Frequency,
    Field::Fans,
    Field::ModulatedFans,
    Field::RatedSpeed,
    Field::Airflow,
    Field::Sensing,
    Field::ThrottlingRange,
    Field::BelowMinimum,
    Field::CompressorLowest,
    Field::CompressorHighest,
    Field::IdleAirflow,
    Field::Subcooling,
    Field::ReturnAir,
    Field::ReturnHumidity,
    Field::IndoorAirflow,
    Field::LiquidLength,
    Field::LiquidLift,
    Field::LiquidDiameter,
    Field::FullLoad,
    Field::CapacityControl,
    Field::CompressorStages,
    Field::LowestLoad,
    Field::Defrost,
    Field::HeatReclaim,
    Field::ReversingValve,
    Field::FlowCoefficients,
    Field::PowerCoefficients,
    Field::SheetUnits,
    Field::SheetSuperheat,
    Field::FanPower,
    Field::Recirculation,
    Field::Dirt,
];

/// Stable names of the choices at a field; empty for numbers.
fn keys(field: Field) -> Vec<&'static str> {
    match field {
        Field::Duty => Duty::ALL.iter().map(|choice| choice.key()).collect(),
        Field::Metering => Metering::ALL.iter().map(|choice| choice.key()).collect(),
        Field::Motor => MotorKind::ALL.iter().map(|choice| choice.key()).collect(),
        Field::Bearing => Bearing::ALL.iter().map(|choice| choice.key()).collect(),
        Field::CapacityControl => CapacityControl::ALL
            .iter()
            .map(|choice| choice.key())
            .collect(),
        Field::Defrost => Defrost::ALL.iter().map(|choice| choice.key()).collect(),
        Field::BelowMinimum => BelowMinimum::ALL
            .iter()
            .map(|choice| choice.key())
            .collect(),
        Field::ReversingValve => Reversing::ALL.iter().map(|choice| choice.key()).collect(),
        Field::SheetUnits => SheetUnits::ALL.iter().map(|choice| choice.key()).collect(),
        Field::Sensing => Sensing::ALL.iter().map(|choice| choice.key()).collect(),
        _ => Vec::new(),
    }
}

/// The choices at a field with their words.
pub fn choices(field: Field) -> Vec<Choice> {
    keys(field)
        .into_iter()
        .map(|key| (key.into(), words().choice(field, key).into()))
        .collect()
}

/// Every refrigerant as a choice.
pub fn refrigerants() -> Vec<Choice> {
    Refrigerant::all()
        .map(|name| (name.into(), name.into()))
        .collect()
}

/// The units that can stand beside a number.
pub fn units_of(kind: Kind) -> Vec<Choice> {
    let units: Vec<Choice> = Unit::of(kind)
        .map(|unit| (unit.token().into(), symbol(unit).into()))
        .collect();
    match units.as_slice() {
        // A plain number of things has nothing beside it.
        [(_, symbol)] if symbol.is_empty() => Vec::new(),
        _ => units,
    }
}

/// The stable name of the unit beside a field: the one that its answer was given in, else the person's own.
pub fn unit_beside(system: &System, field: Field, kind: Kind, units: Units) -> String {
    system
        .entry(field)
        .and_then(|entry| entry.unit.clone())
        .unwrap_or_else(|| units.unit(kind).token().to_owned())
}

/// Whether a field takes values below zero.
pub fn is_signed(kind: Kind) -> bool {
    matches!(kind, Kind::Temperature | Kind::Elevation)
}

/// What a blank field is taken to be, in words; `None` where it needs an answer.
pub fn assumed(system: &System, field: Field, units: Units) -> Option<String> {
    let t = screen();
    match system.assumed(field) {
        Assumed::Value(quantity) => Some(units.show(&quantity, Pressure::default()).to_string()),
        Assumed::Choice(key) => Some(words().choice(field, key).to_owned()),
        Assumed::WorkedOut => Some(t.worked_out.to_owned()),
        Assumed::LeftOut => Some(t.left_out.to_owned()),
        Assumed::Nothing => None,
    }
}

/// Where an answer is found, what is typical, and what a blank is taken to be, each with its name.
fn more(system: &System, field: Field, units: Units) -> Vec<Choice> {
    let t = words().help();
    let found = words().find(field);
    let blank = match system.assumed(field) {
        Assumed::Nothing => t.blank_is_not.to_owned(),
        Assumed::WorkedOut => t.blank_worked_out.to_owned(),
        Assumed::LeftOut => t.blank_left_out.to_owned(),
        Assumed::Value(_) | Assumed::Choice(_) => assumed(system, field, units)
            .map(|assumed| (t.blank_is)(&assumed))
            .unwrap_or_default(),
    };
    vec![
        (t.find.into(), found.find.into()),
        (t.typical.into(), found.typical.into()),
        (t.blank.into(), blank.into()),
    ]
}

/// The person's units, or those of the family of the unit beside a field: what is usual there is read against what is typed there.
fn family_of(system: &System, field: Field, units: Units) -> Units {
    let Some(kind) = kind_of(field) else {
        return units;
    };
    let beside = unit_beside(system, field, kind, units);
    [
        units.temperature,
        TemperatureUnit::Fahrenheit,
        TemperatureUnit::Celsius,
    ]
    .into_iter()
    .map(|temperature| Units {
        temperature,
        ..units
    })
    .find(|units| units.unit(kind).token() == beside)
    .unwrap_or(units)
}

/// What stands round the answer of a field.
pub fn round(system: &System, field: Field, error: Option<String>, units: Units) -> Round {
    let said = words().field(field);
    let units = family_of(system, field, units);
    Round {
        key: field.key().into(),
        ask: said.ask.into(),
        help: Some(said.help.into()),
        more: more(system, field, units),
        usual: words()
            .usual(field, units)
            .map(|usual| (screen().usual)(&usual).into()),
        assumed: assumed(system, field, units).map(AttrValue::from),
        error: error.map(AttrValue::from),
        ..Round::default()
    }
}

/// What a field holds or is taken to hold, as written, with where it comes from.
pub fn value(system: &System, field: Field, units: Units) -> Option<(String, Basis)> {
    let entry = system.entry(field).filter(|entry| !entry.is_blank());
    let Some(entry) = entry else {
        return match system.assumed(field) {
            Assumed::LeftOut => None,
            _ => assumed(system, field, units).map(|text| (text, Basis::Assumed)),
        };
    };
    let Some(kind) = kind_of(field) else {
        let known = keys(field)
            .into_iter()
            .find(|key| *key == entry.typed.trim());
        let text = known.map_or(entry.typed.as_str(), |key| words().choice(field, key));
        return Some((text.to_owned(), Basis::Entered));
    };
    let token = unit_beside(system, field, kind, units);
    let symbol = Unit::parse(kind, &token).map_or("", symbol);
    // A unit typed behind the number stands for itself.
    let has_unit = entry
        .typed
        .trim_end()
        .ends_with(|c: char| !c.is_ascii_digit());
    let text = if symbol.is_empty() || has_unit {
        entry.typed.trim().to_owned()
    } else {
        format!(
            "{}\u{a0}{symbol}",
            entry.typed.trim().replace('-', "\u{2212}")
        )
    };
    Some((text, Basis::Entered))
}

/// An elevation as written.
pub fn elevation(elevation: Length, units: Units) -> String {
    units
        .show(&Quantity::Elevation(elevation), Pressure::default())
        .to_string()
}

/// An elevation as a person would type it beside a unit: whole, since nothing knows it finer.
pub fn typed_elevation(elevation: Length, token: &str, units: Units) -> String {
    let unit = Unit::parse(Kind::Elevation, token).unwrap_or_else(|| units.unit(Kind::Elevation));
    let number = unit.number(&Quantity::Elevation(elevation), Pressure::default());
    format!("{:.0}", number.round() + 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::length::meter;

    #[test]
    fn an_elevation_is_typed_in_the_unit_that_stands_beside_it() {
        // One foot is 0.3048 m (NIST SP 811).
        let typed =
            |metres, token| typed_elevation(Length::new::<meter>(metres), token, Units::default());
        assert_eq!(typed(1889.76, "ft"), "6200");
        assert_eq!(typed(1889.76, "m"), "1890");
        assert_eq!(typed(-3.4, "m"), "-3");
        assert_eq!(typed(-0.2, "m"), "0");
    }
}
