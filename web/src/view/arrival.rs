//! A system that arrived, beside the one of the same name that is kept here.

use winterset_calc::{Basis, Field};
use winterset_profile::{Difference, Site, System, differences};
use winterset_words::Units;
use yew::AttrValue;

use super::{fields, words};

/// An answer as written, with where it comes from.
pub type Written = (AttrValue, Basis);

/// An answer that differs.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The stable name of its field.
    pub key: String,
    /// The question.
    pub ask: AttrValue,
    /// What is kept here.
    pub here: Written,
    /// What arrived.
    pub arrived: Written,
    /// Whether it would be taken as long as nobody says otherwise: what arrived is newer, but an answer is not given up for none.
    pub is_taken: bool,
}

/// The system of a site that has the same name; case and spaces round it make no difference.
pub fn twin<'a>(site: &'a Site, arrived: &System) -> Option<&'a System> {
    let plain = |name: &str| name.trim().to_lowercase();
    let name = plain(&arrived.name);
    site.systems.iter().find(|one| plain(&one.name) == name)
}

/// What differs between the two, written out.
pub fn rows(here: &System, arrived: &System, units: Units) -> Vec<Row> {
    let found = differences(here, arrived);
    let place = |key: &str| Field::ALL.iter().position(|field| field.key() == key);
    let mut rows: Vec<(usize, Row)> = found
        .iter()
        .map(|one| {
            let at = place(&one.key).unwrap_or(Field::ALL.len());
            (at, row(one, (here, arrived), units))
        })
        .collect();
    // In the order in which they are asked.
    rows.sort_by_key(|(at, _)| *at);
    rows.into_iter().map(|(_, row)| row).collect()
}

fn row(one: &Difference, (here, arrived): (&System, &System), units: Units) -> Row {
    let field = Field::ALL.iter().find(|field| field.key() == one.key);
    let written = |system: &System, entry: Option<&winterset_profile::Entry>| -> Written {
        let value = match field {
            Some(field) => fields::value(system, *field, units),
            // Only a newer version knows what this is: as it was typed.
            None => entry.map(|entry| (entry.typed.clone(), Basis::Entered)),
        };
        value.map_or_else(
            || (words().sending().no_answer.into(), Basis::Assumed),
            |(text, basis)| (text.into(), basis),
        )
    };
    Row {
        key: one.key.clone(),
        ask: field.map_or_else(
            || AttrValue::from(one.key.clone()),
            |field| words().field(*field).ask.into(),
        ),
        here: written(here, one.here.as_ref()),
        arrived: written(arrived, one.arrived.as_ref()),
        is_taken: !one.loses(),
    }
}
