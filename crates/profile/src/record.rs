//! Records as they are stored.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use winterset_calc::Field;

use crate::winter::WinterHours;

/// Version of the record form that this code writes.
pub const VERSION: u32 = 1;

/// What a person typed at one field, valid or not.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Entry {
    /// The text, or the key of a choice.
    #[serde(default)]
    pub typed: String,
    /// The unit that stood beside the field, as a token of [`Unit`](crate::Unit).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<String>,
    /// What a newer version keeps here and this one does not know.
    #[serde(flatten)]
    pub other: BTreeMap<String, serde_json::Value>,
}

impl Entry {
    /// An entry with no unit.
    pub fn new(typed: impl Into<String>) -> Self {
        Self {
            typed: typed.into(),
            ..Self::default()
        }
    }

    /// An entry in a unit.
    pub fn with_unit(typed: impl Into<String>, unit: impl Into<String>) -> Self {
        Self {
            typed: typed.into(),
            unit: Some(unit.into()),
            ..Self::default()
        }
    }

    /// Whether nothing was typed.
    pub fn is_blank(&self) -> bool {
        self.typed.trim().is_empty()
    }
}

/// One refrigerant circuit with its condenser.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct System {
    /// Version of the form.
    #[serde(default = "first")]
    pub version: u32,
    /// What tells it from other systems; empty in a record that was never kept.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub id: String,
    /// What a person calls it.
    #[serde(default)]
    pub name: String,
    /// What was typed, by [`Field::key`].
    #[serde(default)]
    pub entries: BTreeMap<String, Entry>,
    /// Which of the technician's own controllers drives its fans, by [`Controller::id`](crate::Controller::id); empty for none.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub controller: String,
    /// What a newer version keeps here and this one does not know.
    #[serde(flatten)]
    pub other: BTreeMap<String, serde_json::Value>,
}

fn first() -> u32 {
    1
}

impl System {
    /// A system of which nothing is known but its name.
    pub fn new(id: impl Into<String>, name: impl Into<String>) -> Self {
        Self {
            version: VERSION,
            id: id.into(),
            name: name.into(),
            entries: BTreeMap::new(),
            controller: String::new(),
            other: BTreeMap::new(),
        }
    }

    /// What was typed at a field.
    pub fn entry(&self, field: Field) -> Option<&Entry> {
        self.entries.get(field.key())
    }

    /// Keeps what was typed at a field; an entry that holds nothing is forgotten. What a newer version knew of the answer before it goes
    /// with that answer.
    pub fn set(&mut self, field: Field, entry: Entry) {
        if entry == Entry::default() {
            self.entries.remove(field.key());
        } else {
            self.entries.insert(field.key().to_owned(), entry);
        }
    }
}

/// A place with its systems.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Site {
    /// Version of the form.
    #[serde(default = "first")]
    pub version: u32,
    /// What tells it from other sites.
    #[serde(default)]
    pub id: String,
    /// What a person calls it.
    #[serde(default)]
    pub name: String,
    /// Its systems, in the order they were added.
    #[serde(default)]
    pub systems: Vec<System>,
    /// What is kept of its weather file; in a form that this version does not know, it is kept and not used.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    weather: Option<serde_json::Value>,
    /// What a newer version keeps here and this one does not know.
    #[serde(flatten)]
    pub other: BTreeMap<String, serde_json::Value>,
}

impl Site {
    /// A site without systems.
    pub fn new(id: impl Into<String>, name: impl Into<String>) -> Self {
        Self {
            version: VERSION,
            id: id.into(),
            name: name.into(),
            systems: Vec::new(),
            weather: None,
            other: BTreeMap::new(),
        }
    }

    /// The hours counted from its weather file, where there are any that can be used.
    pub fn winter(&self) -> Option<WinterHours> {
        let kept = self.weather.clone()?;
        let hours: WinterHours = serde_json::from_value(kept).ok()?;
        hours.is_whole().then_some(hours)
    }

    /// Keeps the hours counted from a weather file, or none.
    pub fn set_winter(&mut self, hours: Option<&WinterHours>) {
        self.weather = hours.and_then(|hours| serde_json::to_value(hours).ok());
    }

    /// The system with this id.
    pub fn system(&self, id: &str) -> Option<&System> {
        self.systems.iter().find(|system| system.id == id)
    }

    /// The system with this id, to change.
    pub fn system_mut(&mut self, id: &str) -> Option<&mut System> {
        self.systems.iter_mut().find(|system| system.id == id)
    }
}

/// Why a stored text is no record.
#[derive(Debug, thiserror::Error)]
pub enum Migration {
    /// It is no record at all.
    #[error("not a record: {0}")]
    NotARecord(#[from] serde_json::Error),
    /// Its version number makes no sense.
    #[error("version {version} of the record form does not exist")]
    NoSuchVersion {
        /// What the record says.
        version: u32,
    },
}

macro_rules! from_json {
    ($record:ident) => {
        impl $record {
            /// Reads a stored text, bringing older forms up to date. A record of a newer version is read as far as it is understood; what
            /// is not understood is kept and written back.
            ///
            /// # Errors
            /// [`Migration`] where the text is no record.
            pub fn from_json(text: &str) -> Result<Self, Migration> {
                let record: Self = serde_json::from_str(text)?;
                if record.version == 0 {
                    return Err(Migration::NoSuchVersion { version: 0 });
                }
                Ok(record)
            }

            /// The text to store.
            ///
            /// # Errors
            /// None that a record made here can cause; passed on from the serialiser.
            pub fn to_json(&self) -> Result<String, serde_json::Error> {
                serde_json::to_string(self)
            }
        }
    };
}

from_json!(System);
from_json!(Site);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_typed_survives_whatever_it_is() {
        let mut system = System::new("a", "Hut");
        system.set(Field::Voltage, Entry::with_unit("zwölf \"V\" \u{0}", "V"));
        let back = System::from_json(&system.to_json().unwrap()).unwrap();
        assert_eq!(back, system);
    }

    #[test]
    fn what_a_newer_version_keeps_survives() {
        let text = r#"{"version":7,"id":"x","name":"n","entries":{"spin":{"typed":"1"},"voltage":{"typed":"230","unit":"V","measured":{"by":"clamp"}}},"photos":[1,2]}"#;
        let system = System::from_json(text).unwrap();
        let back: serde_json::Value = serde_json::from_str(&system.to_json().unwrap()).unwrap();
        assert_eq!(
            back,
            serde_json::from_str::<serde_json::Value>(text).unwrap()
        );
    }

    #[test]
    fn an_entry_in_which_nothing_was_typed_is_blank() {
        let text = r#"{"version":7,"entries":{"voltage":{"measured":230}}}"#;
        let system = System::from_json(text).unwrap();
        assert!(system.entry(Field::Voltage).unwrap().is_blank());
    }

    #[test]
    fn a_text_that_is_no_record_is_refused() {
        assert!(matches!(
            Site::from_json("[]"),
            Err(Migration::NotARecord(_))
        ));
        assert!(matches!(
            Site::from_json(r#"{"version":0}"#),
            Err(Migration::NoSuchVersion { version: 0 })
        ));
    }
}
