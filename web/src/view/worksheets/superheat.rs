//! Superheat and subcooling: a gauge pressure and a line temperature each.

use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_calc::{Field, SheetRule, air};
use winterset_profile::{Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found};
use crate::view::words;

/// Both, each below its questions.
pub fn answer(reader: &Reader) -> Answers {
    let superheat = superheat(reader).unwrap_or_default();
    let subcooling = subcooling(reader).unwrap_or_default();
    Answers {
        found: superheat.into_iter().chain(subcooling).collect(),
        notes: Vec::new(),
    }
}

fn superheat(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let (pressure, temperature) = (Question::SuctionPressure, Question::SuctionTemperature);
    let refrigerant = reader.refrigerant()?;
    let (at, line) = (reader.number(pressure)?, reader.number(temperature)?);
    let dew = refrigerant
        .dew_temperature(at.value.pressure())
        .map_err(|error| reader.refused(pressure, &error))?;
    let span = air::difference(line.value.temperature(), dew).get::<kelvin_interval>();
    let mut found = Found::new(SheetRule::Superheat, Measure::Difference, span)
        .reading("T", line)
        .reading("p", at)
        .with("T_dew", Measure::Temperature, dew.get::<kelvin>());
    if span <= 0.0 {
        found = found.because(words().worksheets().labels().not_superheated);
    }
    let part = reader.part_of(pressure);
    let saturated = Found::new(
        SheetRule::DewTemperature,
        Measure::Temperature,
        dew.get::<kelvin>(),
    );
    Ok(vec![
        found.in_part(part),
        saturated
            .reading("p", at)
            .in_part(part)
            .for_field(Field::Evaporating),
    ])
}

fn subcooling(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let (pressure, temperature) = (Question::LiquidPressure, Question::LiquidTemperature);
    let refrigerant = reader.refrigerant()?;
    let (at, line) = (reader.number(pressure)?, reader.number(temperature)?);
    let bubble = refrigerant
        .bubble_temperature(at.value.pressure())
        .map_err(|error| reader.refused(pressure, &error))?;
    let span = air::difference(bubble, line.value.temperature()).get::<kelvin_interval>();
    let mut found = Found::new(SheetRule::Subcooling, Measure::Difference, span)
        .reading("p", at)
        .reading("T", line)
        .with("T_bubble", Measure::Temperature, bubble.get::<kelvin>());
    if span <= 0.0 {
        found = found.because(words().worksheets().labels().not_subcooled);
    }
    let part = reader.part_of(pressure);
    let saturated = Found::new(
        SheetRule::BubbleTemperature,
        Measure::Temperature,
        bubble.get::<kelvin>(),
    );
    Ok(vec![
        found.in_part(part).for_field(Field::Subcooling),
        saturated.reading("p", at).in_part(part),
    ])
}
