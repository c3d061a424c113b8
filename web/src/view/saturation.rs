//! The saturation worksheet: from what was typed to bubble and dew, both ways.

use uom::si::f64::{Length, Pressure, TemperatureInterval};
use uom::si::length::meter;
use uom::si::pressure::pascal;
use winterset_calc::refrigerant::{Error, Refrigerant, Saturation};
use winterset_calc::{Quantity, air};
use winterset_profile::{Kind, NumberError, Unit, parse_number, read_refrigerant};
use winterset_words::{Shown, Units, screen};

use crate::store::SaturationSheet;

/// Bubble and dew as written, with what lies between them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Saturated liquid.
    pub bubble: Shown,
    /// Saturated vapour.
    pub dew: Shown,
    /// Glide at one pressure; `None` where both are asked at one temperature, or where there is none.
    pub glide: Option<Shown>,
}

/// An answer, nothing where nothing was typed, or what is wrong and what would be right.
pub type Answered = Result<Option<Answer>, String>;

/// Everything that the worksheet answers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// Pressures at the temperature.
    pub at_temperature: Answered,
    /// Temperatures at the pressure.
    pub at_pressure: Answered,
    /// What is wrong with the refrigerant.
    pub refrigerant: Option<String>,
    /// Whether the answers are estimates.
    pub estimated: bool,
    /// What is wrong with the elevation.
    pub elevation: Option<String>,
    /// The air that gauge pressure stands on.
    pub air: Shown,
}

/// Answers the worksheet.
pub fn answer(sheet: &SaturationSheet, units: Units) -> Sheet {
    let (elevation, elevation_error) = match elevation(sheet, units) {
        Ok(elevation) => (elevation, None),
        Err(error) => (Length::new::<meter>(0.0), Some(error)),
    };
    let atmosphere = air::atmosphere(elevation);
    let air = units.air(atmosphere);
    let refrigerant = match read_refrigerant(&sheet.refrigerant) {
        Ok(refrigerant) => refrigerant,
        Err(problem) => {
            let said = super::words().problem(winterset_calc::Field::Refrigerant, &problem, units);
            return Sheet {
                at_temperature: Ok(None),
                at_pressure: Ok(None),
                refrigerant: Some(said),
                estimated: false,
                elevation: elevation_error,
                air,
            };
        }
    };
    let estimated = refrigerant.is_estimated();
    let asked = Asked {
        refrigerant,
        atmosphere,
        units,
    };
    Sheet {
        at_temperature: asked.at_temperature(&sheet.temperature),
        at_pressure: asked.at_pressure(&sheet.pressure),
        refrigerant: None,
        estimated,
        elevation: elevation_error,
        air,
    }
}

fn elevation(sheet: &SaturationSheet, units: Units) -> Result<Length, String> {
    if sheet.elevation.trim().is_empty() {
        return Ok(Length::new::<meter>(0.0));
    }
    let unit = Unit::parse(Kind::Elevation, &sheet.elevation_unit).unwrap_or(Unit::Meter);
    let typed = read(Kind::Elevation, &sheet.elevation, unit)?;
    let field = winterset_calc::Field::Elevation;
    match typed.0.quantity(typed.1, Pressure::default()) {
        quantity @ Quantity::Elevation(elevation) => match field.check(quantity) {
            Ok(()) => Ok(elevation),
            Err(problem) => Err(super::words().problem(field, &problem.into(), units)),
        },
        _ => Err((screen().number_like)("1200")),
    }
}

struct Asked {
    refrigerant: Refrigerant,
    atmosphere: Pressure,
    units: Units,
}

impl Asked {
    fn at_temperature(&self, text: &str) -> Answered {
        if text.trim().is_empty() {
            return Ok(None);
        }
        let (unit, number) = read(Kind::Temperature, text, self.units.unit(Kind::Temperature))?;
        let Quantity::Temperature(temperature) = unit.quantity(number, self.atmosphere) else {
            return Ok(None);
        };
        let found = self.refrigerant.saturation_at_temperature(temperature);
        let found = found.map_err(|error| self.said(&error))?;
        let show = |pressure| {
            self.units
                .show(&Quantity::Pressure(pressure), self.atmosphere)
        };
        Ok(Some(Answer {
            bubble: show(found.bubble.pressure),
            dew: show(found.dew.pressure),
            glide: None,
        }))
    }

    fn at_pressure(&self, text: &str) -> Answered {
        if text.trim().is_empty() {
            return Ok(None);
        }
        let (unit, number) = read(Kind::Pressure, text, self.units.unit(Kind::Pressure))?;
        let Quantity::Pressure(pressure) = unit.quantity(number, self.atmosphere) else {
            return Ok(None);
        };
        if pressure <= Pressure::new::<pascal>(0.0) {
            return Err(screen().above_vacuum.to_owned());
        }
        let found = self.refrigerant.saturation_at_pressure(pressure);
        let found = found.map_err(|error| self.said(&error))?;
        let show = |temperature| {
            self.units
                .show(&Quantity::Temperature(temperature), self.atmosphere)
        };
        Ok(Some(Answer {
            bubble: show(found.bubble.temperature),
            dew: show(found.dew.temperature),
            glide: self.glide(&found),
        }))
    }

    fn glide(&self, found: &Saturation) -> Option<Shown> {
        let glide: TemperatureInterval =
            air::difference(found.dew.temperature, found.bubble.temperature);
        let is_one_temperature = self.refrigerant.composition().len() == 1;
        (!is_one_temperature).then(|| {
            self.units
                .show(&Quantity::Difference(glide), self.atmosphere)
        })
    }

    fn said(&self, error: &Error) -> String {
        super::words().refused(error, self.units, self.atmosphere)
    }
}

/// A number with the unit that it is in.
fn read(kind: Kind, text: &str, beside: Unit) -> Result<(Unit, f64), String> {
    let t = screen();
    match parse_number(kind, text) {
        Ok(typed) => Ok((typed.unit.unwrap_or(beside), typed.number)),
        Err(NumberError::NotANumber) => Err((t.number_like)(match kind {
            Kind::Temperature => "40",
            Kind::Elevation => "1200",
            _ => "250",
        })),
        Err(NumberError::UnknownUnit { unit }) => {
            let units: Vec<_> = Unit::of(kind).map(Unit::symbol).collect();
            Err((t.unit_like)(&unit, &units.join(", ")))
        }
        Err(NumberError::Ambiguous { whole, decimal }) => Err((t.two_readings)(&whole, &decimal)),
    }
}
