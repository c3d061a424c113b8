//! Saturation: bubble and dew from a temperature or a gauge pressure.

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{SheetRule, air};
use winterset_profile::{Amount, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found};

/// A usual temperature, or as close to it as the refrigerant has two phases with some room to its critical point.
pub fn near(refrigerant: &Refrigerant, celsius: f64, room: f64) -> ThermodynamicTemperature {
    let (low, high) = refrigerant.temperature_range();
    let usual = ThermodynamicTemperature::new::<degree_celsius>(celsius);
    let kelvins = TemperatureInterval::new::<kelvin_interval>;
    usual.min(high - kelvins(room)).max(low + kelvins(1.0))
}

/// A condensing temperature that is usual for the refrigerant.
pub fn condensing(refrigerant: &Refrigerant) -> ThermodynamicTemperature {
    near(refrigerant, 40.0, 10.0)
}

/// An evaporating temperature that is usual for the refrigerant.
pub fn evaporating(refrigerant: &Refrigerant) -> ThermodynamicTemperature {
    near(refrigerant, 5.0, 40.0)
}

/// What stands in for pressures and temperatures of a refrigerant: a system that runs as usual.
pub fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    let refrigerant = reader.refrigerant().ok()?;
    let pressure = |found: Result<uom::si::f64::Pressure, _>| {
        let found: uom::si::f64::Pressure = found.ok()?;
        Some(Amount::new(Measure::Pressure, found.value))
    };
    let temperature = |found: ThermodynamicTemperature, over: f64| {
        Amount::new(Measure::Temperature, found.get::<kelvin>() + over)
    };
    match question {
        Question::Evaporating => Some(temperature(evaporating(&refrigerant), 0.0)),
        Question::Temperature => Some(temperature(condensing(&refrigerant), 0.0)),
        Question::Pressure | Question::LiquidPressure => {
            pressure(refrigerant.bubble_pressure(condensing(&refrigerant)))
        }
        Question::SuctionPressure => pressure(refrigerant.dew_pressure(evaporating(&refrigerant))),
        Question::SuctionTemperature => {
            let at = reader.number(Question::SuctionPressure).ok()?;
            let dew = refrigerant.dew_temperature(at.value.pressure()).ok()?;
            Some(temperature(dew, 6.0))
        }
        Question::LiquidTemperature => {
            let at = reader.number(Question::LiquidPressure).ok()?;
            let bubble = refrigerant.bubble_temperature(at.value.pressure()).ok()?;
            Some(temperature(bubble, -5.0))
        }
        _ => None,
    }
}

/// Bubble and dew both ways.
pub fn answer(reader: &Reader) -> Answers {
    let at_temperature = at_temperature(reader).unwrap_or_default();
    let at_pressure = at_pressure(reader).unwrap_or_default();
    Answers {
        found: at_temperature.into_iter().chain(at_pressure).collect(),
        notes: Vec::new(),
    }
}

fn at_temperature(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let refrigerant = reader.refrigerant()?;
    let asked = reader.number(Question::Temperature)?;
    let found = refrigerant
        .saturation_at_temperature(asked.value.temperature())
        .map_err(|error| reader.refused(Question::Temperature, &error))?;
    let part = reader.part_of(Question::Temperature);
    Ok(vec![
        Found::new(
            SheetRule::BubblePressure,
            Measure::Pressure,
            found.bubble.pressure.value,
        )
        .reading("T", asked)
        .in_part(part),
        Found::new(
            SheetRule::DewPressure,
            Measure::Pressure,
            found.dew.pressure.value,
        )
        .reading("T", asked)
        .in_part(part),
    ])
}

fn at_pressure(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let refrigerant = reader.refrigerant()?;
    let asked = reader.number(Question::Pressure)?;
    let found = refrigerant
        .saturation_at_pressure(asked.value.pressure())
        .map_err(|error| reader.refused(Question::Pressure, &error))?;
    let part = reader.part_of(Question::Pressure);
    let (bubble, dew) = (found.bubble.temperature, found.dew.temperature);
    let at = |rule, temperature: ThermodynamicTemperature| {
        Found::new(rule, Measure::Temperature, temperature.get::<kelvin>())
            .reading("p", asked)
            .in_part(part)
    };
    let mut all = vec![
        at(SheetRule::BubbleTemperature, bubble),
        at(SheetRule::DewTemperature, dew),
    ];
    // A pure fluid has no glide to tell of.
    if refrigerant.composition().len() > 1 {
        let glide = air::difference(dew, bubble).get::<kelvin_interval>();
        all.push(
            Found::new(SheetRule::Glide, Measure::Difference, glide)
                .reading("p", asked)
                .in_part(part),
        );
    }
    Ok(all)
}
