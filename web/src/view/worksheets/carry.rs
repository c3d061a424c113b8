//! What a worksheet has to say to a system: answers that a system asks too, and values that it asks for.

use winterset_calc::{Basis, Field};
use winterset_profile::{Amount, Answer, Entry, Question, Scale, Sheet, System, Unit, kind_of};
use winterset_words::plain;

use super::found::Found;
use super::reader::Reader;

/// The answers of a worksheet that a person gave and the values that follow from them, as entries of a system.
pub fn carried(reader: &Reader, found: &[Found]) -> Vec<(Field, Entry)> {
    let mut carried: Vec<(Field, Entry)> = reader
        .sheet()
        .questions()
        .filter(|question| reader.asks(*question))
        .filter_map(|question| {
            let field = asked_too(reader.sheet(), question)?;
            Some((field, entered(reader, question, field)?))
        })
        .collect();
    // What rests on a refrigerant that nobody named says nothing of a system.
    let is_named =
        !reader.asks(Question::Refrigerant) || reader.typed(Question::Refrigerant).is_some();
    carried.extend(found.iter().filter(|_| is_named).filter_map(|one| {
        let (field, amount) = one.answers()?;
        Some((field, in_a_unit_of(field, amount, reader, None)?))
    }));
    carried
}

/// A system with what a worksheet has to say to it. The heat rejected stands in place of the cooling capacity, and stays.
pub fn into(system: &System, carried: &[(Field, Entry)]) -> System {
    let mut filled = system.clone();
    for (field, entry) in carried {
        let is_replaced =
            *field == Field::CoolingCapacity && system.entry(Field::HeatRejected).is_some();
        if !is_replaced {
            filled.set(*field, entry.clone());
        }
    }
    filled
}

/// The field of a system that asks what a worksheet asks.
fn asked_too(sheet: Sheet, question: Question) -> Option<Field> {
    Some(match question {
        Question::Refrigerant => Field::Refrigerant,
        Question::Elevation => Field::Elevation,
        Question::SupplyVolts => Field::Voltage,
        Question::Frequency => Field::Frequency,
        Question::MotorKind => Field::Motor,
        Question::NameplateSpeed => Field::RatedSpeed,
        Question::Bearing => Field::Bearing,
        Question::OverAmbient => Field::OverAmbient,
        Question::CoolingCapacity => Field::CoolingCapacity,
        Question::Evaporating => Field::Evaporating,
        Question::Metering => Field::Metering,
        Question::Bore => Field::LiquidDiameter,
        Question::EquivalentLength => Field::LiquidLength,
        Question::Lift => Field::LiquidLift,
        // On other worksheets it is any day's.
        Question::Outdoor if matches!(sheet, Sheet::Flooding | Sheet::WinterStart) => {
            Field::OutdoorLow
        }
        _ => return None,
    })
}

/// An answer as it was given; `None` where nobody gave one, or one that does not hold.
fn entered(reader: &Reader, question: Question, field: Field) -> Option<Entry> {
    match question.answer() {
        Answer::Refrigerant => {
            let typed = reader.typed(question)?;
            reader.refrigerant().ok()?;
            Some(Entry::new(typed))
        }
        Answer::Choice(_) => {
            let chosen = reader.choice(question);
            (chosen.basis == Basis::Entered).then(|| Entry::new(chosen.value))
        }
        Answer::Number(number) => {
            let typed = reader.typed(question)?;
            let given = reader.number(question).ok()?;
            let scale = reader.scale(question, &number);
            in_a_unit_of(field, given.value, reader, Some((typed, scale)))
        }
    }
}

/// An amount as an answer to a field: as it was typed where the field takes that unit, else in the person's own or the first that it takes.
fn in_a_unit_of(
    field: Field,
    amount: Amount,
    reader: &Reader,
    typed: Option<(&str, Scale)>,
) -> Option<Entry> {
    let kind = kind_of(field)?;
    let takes = |scale: &Scale| Unit::parse(kind, scale.token()).is_some();
    if let Some((typed, scale)) = typed.filter(|(_, scale)| takes(scale)) {
        return Some(Entry::with_unit(typed, scale.token()));
    }
    let own = reader.units().scale(amount.measure);
    let scale = std::iter::once(own)
        .chain(amount.measure.scales().iter().copied())
        .find(takes)?;
    let written = plain(scale, amount, reader.atmosphere());
    Some(Entry::with_unit(written.number, scale.token()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::view::worksheets::answer;
    use winterset_profile::Worksheets;
    use winterset_words::Units;

    fn asked_by_both() -> impl Iterator<Item = (Sheet, Question, Field)> {
        Sheet::ALL.iter().flat_map(|sheet| {
            sheet
                .questions()
                .filter_map(|question| Some((*sheet, question, asked_too(*sheet, question)?)))
        })
    }

    fn is_taken(field: Field, entry: &Entry) -> bool {
        let mut system = System::new("a", "a");
        system.set(field, entry.clone());
        let errors = system.plan().err().unwrap_or_default();
        errors.iter().all(|error| error.field != field)
    }

    #[test]
    fn every_choice_and_every_unit_is_one_that_the_system_takes() {
        for (sheet, question, field) in asked_by_both() {
            match question.answer() {
                Answer::Refrigerant => {}
                Answer::Choice(keys) => {
                    for key in keys {
                        assert!(is_taken(field, &Entry::new(key)), "{field:?}: {key}");
                    }
                }
                Answer::Number(number) => {
                    let kept = Worksheets::default();
                    let reader = Reader::new(sheet, &kept, Units::default());
                    for scale in number.measure.scales() {
                        let si = (number.range.0 + number.range.1) / 2.0;
                        let amount = Amount::new(number.measure, si);
                        let text = plain(*scale, amount, reader.atmosphere()).number;
                        let entry = in_a_unit_of(field, amount, &reader, Some((&text, *scale)));
                        assert!(entry.is_some(), "{field:?}: {}", scale.token());
                    }
                }
            }
        }
    }

    #[test]
    fn what_a_person_gave_and_what_follows_is_carried_and_nothing_assumed() {
        let mut kept = Worksheets::default();
        for (question, typed) in [
            (Question::LiquidPressure, "124.2"),
            (Question::LiquidTemperature, "90"),
        ] {
            let nothing = answer(Sheet::Superheat, &kept, Units::default()).carried;
            assert_eq!(nothing, [], "before {question:?}");
            kept.set(Sheet::Superheat, question, Entry::new(typed));
        }

        for (question, typed, unit) in [
            (Question::Refrigerant, "R-134a", None),
            (Question::LiquidPressure, "124.2", Some("psig")),
            (Question::LiquidTemperature, "90", Some("F")),
        ] {
            let entry =
                unit.map_or_else(|| Entry::new(typed), |unit| Entry::with_unit(typed, unit));
            kept.set(Sheet::Superheat, question, entry);
        }
        let carried = answer(Sheet::Superheat, &kept, Units::default()).carried;
        // R-134a condenses at 100 °F at 124.2 psig: ASHRAE Handbook, Fundamentals, table of refrigerant 134a, from memory.
        assert_eq!(
            carried,
            [
                (Field::Refrigerant, Entry::new("R-134a")),
                (Field::Subcooling, Entry::with_unit("10", "F")),
            ]
        );
    }

    #[test]
    fn the_heat_rejected_is_not_contradicted() {
        let mut system = System::new("a", "a");
        system.set(Field::HeatRejected, Entry::with_unit("12", "kW"));
        let capacity = (Field::CoolingCapacity, Entry::with_unit("9", "kW"));
        assert_eq!(into(&system, &[capacity]), system);
    }
}
