//! Two records of one system held against each other, and made into one.

use std::collections::{BTreeMap, BTreeSet};

use crate::record::{Entry, System};

/// An answer that two records of a system differ in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Difference {
    /// The stable name of the field; it may be one that only a newer version knows.
    pub key: String,
    /// What the one that is kept here holds; `None` where nothing was typed.
    pub here: Option<Entry>,
    /// What the one that arrived holds; `None` where nothing was typed.
    pub arrived: Option<Entry>,
}

impl Difference {
    /// Whether taking what arrived would leave the question without an answer.
    pub fn loses(&self) -> bool {
        self.arrived.is_none()
    }
}

/// The answers in which a system that arrived differs from the one kept here, by field. Spaces round an answer make no difference, nor does a
/// unit beside an answer that is blank.
pub fn differences(here: &System, arrived: &System) -> Vec<Difference> {
    let keys: BTreeSet<&String> = here.entries.keys().chain(arrived.entries.keys()).collect();
    keys.into_iter()
        .filter_map(|key| {
            let (ours, theirs) = (said(here, key), said(arrived, key));
            let is_same = match (ours, theirs) {
                (None, None) => true,
                (Some(ours), Some(theirs)) => {
                    ours.typed.trim() == theirs.typed.trim()
                        && ours.unit == theirs.unit
                        && ours.other == theirs.other
                }
                _ => false,
            };
            (!is_same).then(|| Difference {
                key: key.clone(),
                here: ours.cloned(),
                arrived: theirs.cloned(),
            })
        })
        .collect()
}

fn said<'a>(system: &'a System, key: &str) -> Option<&'a Entry> {
    system.entries.get(key).filter(|entry| !entry.is_blank())
}

/// The system kept here with some of its answers, by the names of their fields, taken from the one that arrived.
///
/// The identifier and the name stay those of the one here. What a newer version knows of the system as a whole comes along where there is
/// nothing of that name here.
#[must_use]
pub fn merge(here: &System, arrived: &System, taken: &BTreeSet<String>) -> System {
    let mut merged = here.clone();
    for key in taken {
        match arrived.entries.get(key) {
            Some(entry) => merged.entries.insert(key.clone(), entry.clone()),
            None => merged.entries.remove(key),
        };
    }
    merged.version = here.version.max(arrived.version);
    let unknown: BTreeMap<_, _> = arrived.other.clone();
    for (key, value) in unknown {
        merged.other.entry(key).or_insert(value);
    }
    merged
}

#[cfg(test)]
mod tests {
    use winterset_calc::Field;

    use super::*;

    fn system(id: &str, answers: &[(Field, &str, Option<&str>)]) -> System {
        let mut system = System::new(id, "North wall");
        for (field, typed, unit) in answers {
            let entry = match unit {
                Some(unit) => Entry::with_unit(*typed, *unit),
                None => Entry::new(*typed),
            };
            system.set(*field, entry);
        }
        system
    }

    fn here() -> System {
        system(
            "a",
            &[
                (Field::Refrigerant, "R-410A", None),
                (Field::OutdoorLow, "-18", Some("F")),
                (Field::Elevation, "6200", Some("ft")),
                (Field::Voltage, "", Some("V")),
            ],
        )
    }

    fn arrived() -> System {
        system(
            "",
            &[
                (Field::Refrigerant, " R-410A ", None),
                (Field::OutdoorLow, "-18", Some("C")),
                (Field::Fans, "2", None),
            ],
        )
    }

    #[test]
    fn only_what_differs_is_told() {
        let told: Vec<_> = differences(&here(), &arrived())
            .into_iter()
            .map(|one| (one.key.clone(), one.here.is_some(), one.loses()))
            .collect();
        let expected = [
            (Field::Elevation, true, true),
            (Field::Fans, false, false),
            (Field::OutdoorLow, true, false),
        ];
        assert_eq!(
            told,
            expected.map(|(field, had, loses)| (field.key().to_owned(), had, loses))
        );
        assert_eq!(differences(&here(), &here()), []);
    }

    #[test]
    fn each_answer_is_kept_or_taken_as_chosen() {
        let taken = |fields: &[Field]| {
            let keys = fields.iter().map(|field| field.key().to_owned()).collect();
            merge(&here(), &arrived(), &keys)
        };
        assert_eq!(taken(&[]), here());
        let one = taken(&[Field::OutdoorLow, Field::Elevation]);
        assert_eq!((one.id.as_str(), one.name.as_str()), ("a", "North wall"));
        assert_eq!(
            one.entry(Field::OutdoorLow),
            Some(&Entry::with_unit("-18", "C"))
        );
        assert_eq!(one.entry(Field::Elevation), None);
        assert_eq!(one.entry(Field::Fans), None);
        let all = taken(&[Field::OutdoorLow, Field::Elevation, Field::Fans]);
        assert_eq!(differences(&all, &arrived()), []);
    }

    #[test]
    fn what_only_a_newer_version_knows_is_lost_on_neither_side() {
        let text = r#"{"version":3,"entries":{"spin":{"typed":"1"},"voltage":{"typed":"230","by":"clamp"}},"photos":[1]}"#;
        let newer = System::from_json(text).unwrap();
        let keys: BTreeSet<_> = differences(&here(), &newer)
            .into_iter()
            .filter(|one| !one.loses())
            .map(|one| one.key)
            .collect();
        assert!(keys.contains("spin"));
        let merged = merge(&here(), &newer, &keys);
        assert_eq!(merged.version, 3);
        assert_eq!(merged.entries["spin"].typed, "1");
        assert!(merged.entries["voltage"].other.contains_key("by"));
        assert!(merged.other.contains_key("photos"));
        assert_eq!(
            merged.entry(Field::OutdoorLow),
            here().entry(Field::OutdoorLow)
        );
    }
}
