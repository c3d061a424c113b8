//! Saturation of one refrigerant, for reading.

use uom::si::f64::{Length, Pressure};
use uom::si::pressure::pascal;
use winterset_calc::{Field, Quantity, air};
use winterset_profile::{Kind, NumberError, Unit, parse_number, read_refrigerant};
use winterset_words::{Units, Words, screen, words};

use crate::error::Error;
use crate::options::Saturation;
use crate::output;

const EITHER: Error = Error::Wanted("either --temperature or --pressure");

pub fn print(question: &Saturation, units: Units) -> Result<(), Error> {
    let words = words();
    let refrigerant = read_refrigerant(&question.refrigerant).map_err(|problem| Error::Value {
        option: "REFRIGERANT",
        message: words.problem(Field::Refrigerant, &problem, units),
    })?;
    let elevation = match &question.elevation {
        Some(text) => elevation(text, units, words)?,
        None => Length::default(),
    };
    let atmosphere = air::atmosphere(elevation);
    let refused = |option| {
        move |error| Error::Value {
            option,
            message: words.refused(&error, units, atmosphere),
        }
    };
    let found = match (&question.temperature, &question.pressure) {
        (Some(text), None) => {
            let option = "--temperature";
            match read(option, text, Kind::Temperature, units, atmosphere)? {
                Quantity::Temperature(temperature) => refrigerant
                    .saturation_at_temperature(temperature)
                    .map_err(refused(option))?,
                _ => return Err(EITHER),
            }
        }
        (None, Some(text)) => {
            let option = "--pressure";
            match read(option, text, Kind::Pressure, units, atmosphere)? {
                Quantity::Pressure(pressure) if pressure <= Pressure::new::<pascal>(0.0) => {
                    let message = screen().above_vacuum.to_owned();
                    return Err(Error::Value { option, message });
                }
                Quantity::Pressure(pressure) => refrigerant
                    .saturation_at_pressure(pressure)
                    .map_err(refused(option))?,
                _ => return Err(EITHER),
            }
        }
        _ => return Err(EITHER),
    };
    let t = screen();
    let show = |quantity| units.show(&quantity, atmosphere).to_string();
    let mut out = format!("{}\n", refrigerant.designation());
    for (name, state) in [(t.bubble, found.bubble), (t.dew, found.dew)] {
        out += &format!(
            "  {name:<8}{:>12}{:>20}{:>16}\n",
            show(Quantity::Temperature(state.temperature)),
            show(Quantity::Pressure(state.pressure)),
            show(Quantity::Density(state.density)),
        );
    }
    if question.pressure.is_some() && refrigerant.composition().len() > 1 {
        let glide = air::difference(found.dew.temperature, found.bubble.temperature);
        out += &format!(
            "  {:<8}{:>12}\n",
            t.glide,
            show(Quantity::Difference(glide))
        );
    }
    out += &(t.gauge_note)(&units.air(atmosphere).to_string());
    out.push('\n');
    Ok(output::print(&out)?)
}

/// A height above sea level at which the air is known.
fn elevation(text: &str, units: Units, words: &dyn Words) -> Result<Length, Error> {
    let option = "--elevation";
    let quantity = read(option, text, Kind::Elevation, units, Pressure::default())?;
    let field = Field::Elevation;
    match (field.check(quantity), quantity) {
        (Ok(()), Quantity::Elevation(elevation)) => Ok(elevation),
        (Ok(()), _) => Err(Error::Wanted("a height")),
        (Err(problem), _) => Err(Error::Value {
            option,
            message: words.problem(field, &problem.into(), units),
        }),
    }
}

/// A value of the command line; a number without a unit is in the units chosen.
fn read(
    option: &'static str,
    text: &str,
    kind: Kind,
    units: Units,
    atmosphere: Pressure,
) -> Result<Quantity, Error> {
    let t = screen();
    let typed = parse_number(kind, text).map_err(|error| {
        let message = match error {
            NumberError::NotANumber => (t.number_like)(match kind {
                Kind::Temperature => "105F",
                Kind::Elevation => "1600m",
                _ => "250psig",
            }),
            NumberError::UnknownUnit { unit } => {
                let tokens: Vec<&str> = Unit::of(kind).map(Unit::token).collect();
                (t.unit_like)(&unit, &tokens.join(", "))
            }
            NumberError::Ambiguous { whole, decimal } => (t.two_readings)(&whole, &decimal),
        };
        Error::Value { option, message }
    })?;
    Ok(typed
        .unit
        .unwrap_or(units.unit(kind))
        .quantity(typed.number, atmosphere))
}
