//! Units: one value in every other unit of what it measures.

use winterset_calc::SheetRule;
use winterset_profile::{Answer, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found};
use crate::view::words;

/// The value in each unit but its own.
pub fn answer(reader: &Reader) -> Answers {
    Answers {
        found: in_others(reader).unwrap_or_default(),
        notes: Vec::new(),
    }
}

fn in_others(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let chosen = reader.choice(Question::Convert).value;
    let measure = Measure::CONVERTIBLE
        .iter()
        .copied()
        .find(|measure| measure.key() == chosen)
        .ok_or(Wrong)?;
    let question = Question::Converted(measure);
    let Answer::Number(number) = question.answer() else {
        return Err(Wrong);
    };
    let given = reader.number(question)?;
    let own = reader.scale(question, &number);
    let others = measure.scales().iter().filter(|scale| **scale != own);
    Ok(others
        .map(|scale| {
            Found::new(SheetRule::Conversion, measure, given.value.si)
                .in_scale(*scale)
                .named(words().worksheets().unit(*scale))
                .keyed(scale.token())
                .reading("x", given)
        })
        .collect())
}
