//! Reference data: written by the outside libraries, kept in the project, and checked to be what those libraries give.

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

use crate::error::Error;
use crate::project;
use crate::run::step;
use crate::setup::python;

fn folder() -> PathBuf {
    project::root().join("tests/reference")
}

/// Writes the data of every script into the project.
pub fn write() -> Result<(), Error> {
    run_scripts(&folder().join("data"))
}

/// Runs every script again and compares what it gives with what the project keeps.
pub fn check() -> Result<(), Error> {
    let fresh = project::target().join("references");
    if fresh.exists() {
        std::fs::remove_dir_all(&fresh).map_err(Error::at(&fresh))?;
    }
    std::fs::create_dir_all(&fresh).map_err(Error::at(&fresh))?;
    run_scripts(&fresh)?;
    let mut found = Vec::new();
    let kept = folder().join("data");
    for entry in std::fs::read_dir(&fresh).map_err(Error::at(&fresh))? {
        let path = entry.map_err(Error::at(&fresh))?.path();
        let name = path.file_name().unwrap_or_default();
        compare(&kept.join(name), &path, &mut found)?;
    }
    if found.is_empty() {
        return Ok(());
    }
    found.truncate(20);
    Err(Error::References { found })
}

fn run_scripts(out: &Path) -> Result<(), Error> {
    let python = python::ready()?;
    let scripts = folder().join("scripts");
    let mut names: Vec<PathBuf> = std::fs::read_dir(&scripts)
        .map_err(Error::at(&scripts))?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "py"))
        .collect();
    names.sort();
    for script in names {
        let name = script
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        step(
            &format!("reference values by {name}"),
            None,
            Command::new(&python).arg(&script).arg(out),
        )?;
    }
    Ok(())
}

fn compare(kept: &Path, fresh: &Path, found: &mut Vec<String>) -> Result<(), Error> {
    let name = fresh
        .file_name()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned();
    let Ok(old) = std::fs::read_to_string(kept) else {
        found.push(format!("  {name} is not kept in the project"));
        return Ok(());
    };
    let new = std::fs::read_to_string(fresh).map_err(Error::at(fresh))?;
    if old == new {
        return Ok(());
    }
    match (parsed(&name, &old), parsed(&name, &new)) {
        (Some(old), Some(new)) => differences(&old, &new, &name, found),
        _ => found.push(format!("  {name} differs")),
    }
    Ok(())
}

/// A file as values: JSON by its own form, anything else as lines of cells parted by commas.
fn parsed(name: &str, text: &str) -> Option<Value> {
    if name.ends_with(".json") {
        return serde_json::from_str(text).ok();
    }
    let cell = |cell: &str| match cell.trim().parse::<f64>() {
        Ok(number) => number.into(),
        Err(_) => Value::from(cell),
    };
    let lines = text
        .lines()
        .map(|line| line.split(',').map(cell).collect::<Value>());
    Some(lines.collect())
}

/// Numbers may differ in their last digits from one processor to another, and by what an outside root finder leaves open.
const TOLERANCE: f64 = 1e-9;

fn differences(old: &Value, new: &Value, at: &str, found: &mut Vec<String>) {
    match (old, new) {
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (
                a.as_f64().unwrap_or(f64::NAN),
                b.as_f64().unwrap_or(f64::NAN),
            );
            let close = a == b || (a - b).abs() <= TOLERANCE * a.abs().max(b.abs());
            if !close {
                found.push(format!("  {at}: kept {a}, given {b}"));
            }
        }
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            for (index, (a, b)) in a.iter().zip(b).enumerate() {
                differences(a, b, &format!("{at}[{index}]"), found);
            }
        }
        (Value::Object(a), Value::Object(b)) if a.len() == b.len() => {
            for (key, a) in a {
                differences(
                    a,
                    b.get(key).unwrap_or(&Value::Null),
                    &format!("{at}.{key}"),
                    found,
                );
            }
        }
        (a, b) if a == b => {}
        _ => found.push(format!("  {at}: kept and given have another form")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(old: &str, new: &str) -> usize {
        let parse = |text: &str| serde_json::from_str::<Value>(text).unwrap();
        let mut found = Vec::new();
        differences(&parse(old), &parse(new), "x", &mut found);
        found.len()
    }

    #[test]
    fn cells_of_a_table_are_numbers() {
        let mut found = Vec::new();
        let table = |text| parsed("x.csv", text).unwrap();
        differences(
            &table("a,1.0\nb,2.0"),
            &table("a,1.0000000000001\nb,2.0"),
            "x",
            &mut found,
        );
        assert_eq!(found.len(), 0);
        differences(&table("a,1.0"), &table("a,1.001"), "x", &mut found);
        differences(&table("a,1.0"), &table("b,1.0"), "x", &mut found);
        assert_eq!(found.len(), 2);
    }

    #[test]
    fn only_what_matters_differs() {
        assert_eq!(
            found("[1.0, {\"a\": 2.0}]", "[1.0000000000001, {\"a\": 2.0}]"),
            0
        );
        assert_eq!(found("[1.0, {\"a\": 2.0}]", "[1.0, {\"a\": 2.0001}]"), 1);
        assert_eq!(found("[1, 2]", "[1]"), 1);
        assert_eq!(found("{\"a\": 1}", "{\"b\": 1}"), 1);
    }
}
