//! Saturation of one refrigerant, for reading.

use uom::si::f64::{Length, Pressure};
use uom::si::length::meter;
use winterset_calc::{Quantity, air};
use winterset_profile::{Kind, Unit, parse_number, read_refrigerant};
use winterset_words::{Language, Units};

use crate::error::Error;
use crate::options::Saturation;
use crate::output;

pub fn print(question: &Saturation, units: Units) -> Result<(), Error> {
    let refrigerant = read_refrigerant(&question.refrigerant).map_err(|problem| Error::Value {
        option: "REFRIGERANT",
        message: Language::English.words().problem(
            winterset_calc::Field::Refrigerant,
            &problem,
            units,
        ),
    })?;
    let elevation = match &question.elevation {
        Some(text) => match read(
            "--elevation",
            text,
            Kind::Elevation,
            units,
            Pressure::default(),
        )? {
            Quantity::Elevation(elevation) => elevation,
            _ => return Err(Error::Wanted("a height")),
        },
        None => Length::new::<meter>(0.0),
    };
    let atmosphere = air::atmosphere(elevation);
    let asked = match (&question.temperature, &question.pressure) {
        (Some(text), None) => read("--temperature", text, Kind::Temperature, units, atmosphere)?,
        (None, Some(text)) => read("--pressure", text, Kind::Pressure, units, atmosphere)?,
        _ => return Err(Error::Wanted("either --temperature or --pressure")),
    };
    let found = match asked {
        Quantity::Temperature(temperature) => refrigerant.saturation_at_temperature(temperature)?,
        Quantity::Pressure(pressure) => refrigerant.saturation_at_pressure(pressure)?,
        _ => return Err(Error::Wanted("either --temperature or --pressure")),
    };
    let show = |quantity| units.show(&quantity, atmosphere).to_string();
    let mut out = format!("{}\n", refrigerant.designation());
    for (name, state) in [("bubble", found.bubble), ("dew", found.dew)] {
        out += &format!(
            "{name:<8}{:>12}{:>20}{:>12.2} kg/m³\n",
            show(Quantity::Temperature(state.temperature)),
            show(Quantity::Pressure(state.pressure)),
            state.density.value,
        );
    }
    out += &format!(
        "Gauge pressure stands on {:.1} kPa of air.\n",
        atmosphere.value / 1000.0
    );
    Ok(output::print(&out)?)
}

/// A value of the command line; a number without a unit is in the units chosen.
fn read(
    option: &'static str,
    text: &str,
    kind: Kind,
    units: Units,
    atmosphere: Pressure,
) -> Result<Quantity, Error> {
    let typed = parse_number(kind, text).map_err(|_| {
        let known: Vec<&str> = Unit::of(kind).map(Unit::token).collect();
        Error::Value {
            option,
            message: format!(
                "“{text}” is not understood; enter a number with one of {}",
                known.join(", ")
            ),
        }
    })?;
    Ok(typed
        .unit
        .unwrap_or(units.unit(kind))
        .quantity(typed.number, atmosphere))
}
