//! A saved record, in a request or in a file.
//!
//! The app keeps what a newer version wrote and passes over it. A misspelt key must not go unnoticed, so a record of a version
//! that is known here may hold only what that version has.

use serde_json::Value;
use winterset_calc::Field;
use winterset_profile::{System, VERSION};

use super::body::Body;
use super::{Outcome, WireError};

/// The system of a record.
pub fn read(record: &Value) -> Outcome<System> {
    let record = &without_nulls(record);
    let is_newer = record["version"].as_u64() > Some(VERSION.into());
    if !is_newer {
        check(record)?;
    }
    System::from_json(&record.to_string())
        .map_err(|error| WireError::new("bad_form", "system", error.to_string()))
}

/// The record without the keys that count as left out.
fn without_nulls(value: &Value) -> Value {
    let Some(object) = value.as_object() else {
        return value.clone();
    };
    let held = object.iter().filter(|(_, value)| !value.is_null());
    held.map(|(key, value)| (key.clone(), without_nulls(value)))
        .collect()
}

fn check(record: &Value) -> Outcome<()> {
    let system = Body::new(
        "system",
        record,
        &["version", "id", "name", "entries", "controller"],
    )?;
    let version = |value: &Value| value.as_u64().filter(|version| *version > 0);
    let wanted = "a whole number is wanted: the version of the record form";
    system.read("version", "version", version, wanted)?;
    system.text("id")?;
    system.text("name")?;
    system.text("controller")?;
    let Some(entries) = system.value("entries") else {
        return Ok(());
    };
    let fields: Vec<&str> = Field::ALL.iter().map(|field| field.key()).collect();
    for (field, entry) in Body::new("entries", entries, &fields)?.entries() {
        let entry = Body::new(field, entry, &["typed", "unit"])?;
        for key in ["typed", "unit"] {
            entry.read(key, field, Value::as_str, "typed and unit are texts")?;
        }
        if entry.value("typed").is_none() {
            let message = "an entry needs what was typed";
            return Err(WireError::new("missing", field, message));
        }
    }
    Ok(())
}
