//! What a technician expects of eleven systems, written down from the trade before the program was asked. Common practice, no published source.
//!
//! An expectation is never changed to what the program answers. Where the two part, the case says so under `differs`, with the answer, and that
//! answer is held too, so that a change to it is seen.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use std::fs;
use std::path::PathBuf;

use common::answer;
use serde_json::{Value, json};

/// Every case with the name of its file.
fn cases() -> Vec<(String, Value)> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../tests/systems/cases");
    let mut found: Vec<(String, Value)> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| {
            let path = entry.unwrap().path();
            let text = fs::read_to_string(&path).unwrap();
            let name = path.file_stem().unwrap().to_string_lossy().into_owned();
            (name, serde_json::from_str(&text).unwrap())
        })
        .collect();
    found.sort_by(|(a, _), (b, _)| a.cmp(b));
    found
}

/// What the program answers to each of a case's expectations.
fn answered(case: &Value) -> Value {
    let low = |plan: &Value| plan["verdict"]["outdoor_low_K"].clone();
    let plan = answer(&json!({ "plan": { "system": case["system"] } }));
    assert!(plan.get("error").is_none(), "{plan}");
    let at_low = json!({
        "plan": { "system": case["system"], "outdoor_temperatures_K": [low(&plan)] }
    });
    let at_low = answer(&at_low);
    let celsius = |kelvins: &Value| kelvins.as_f64().unwrap() - 273.15;
    let held: Vec<&String> = plan["hold_limits_K"]
        .as_object()
        .unwrap()
        .iter()
        .filter(|(_, limit)| limit.as_f64() <= low(&plan).as_f64())
        .map(|(method, _)| method)
        .collect();
    json!({
        "verdict": plan["verdict"]["kind"],
        "method": plan["verdict"]["method"],
        "governing": plan["pressure_need"]["governing"],
        "full_fan_limit_C": celsius(&plan["hold_limits_K"]["full_fan"]),
        "uncontrolled_at_low": at_low["curves"]["full_fan"][0]["condition"],
        "action": plan["verdict"]["action"],
        "holds": held,
        "fails": held,
    })
}

/// Whether an answer is what was expected.
fn is_met(key: &str, expected: &Value, found: &Value) -> bool {
    let wanted = expected.as_array().unwrap();
    match key {
        "full_fan_limit_C" => {
            let [low, high] = [0, 1].map(|index| wanted[index].as_f64().unwrap());
            (low..=high).contains(&found.as_f64().unwrap())
        }
        "holds" => wanted
            .iter()
            .all(|method| found.as_array().unwrap().contains(method)),
        "fails" => !wanted
            .iter()
            .any(|method| found.as_array().unwrap().contains(method)),
        _ => wanted.contains(found),
    }
}

#[test]
fn each_case_is_answered_as_a_technician_expects_or_the_difference_is_told() {
    let mut wrong = Vec::new();
    for (name, case) in cases() {
        let found = answered(&case);
        for (key, expected) in case["expected"].as_object().unwrap() {
            let (found, differs) = (&found[key], &case["differs"][key]);
            let is_told = !differs.is_null();
            if is_met(key, expected, found) == is_told {
                wrong.push(format!("{name}: {key}: {found}, expected {expected}"));
            }
            if is_told && !alike(&differs["answer"], found) {
                wrong.push(format!(
                    "{name}: {key}: {found}, told {}",
                    differs["answer"]
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// The same to a tenth of a degree.
fn alike(told: &Value, found: &Value) -> bool {
    match (told.as_f64(), found.as_f64()) {
        (Some(told), Some(found)) => (told - found).abs() < 0.1,
        _ => told == found,
    }
}

/// Between them the cases ask about every way there is, and each says why.
#[test]
fn the_cases_cover_the_trade() {
    let cases = cases();
    assert!(cases.len() >= 10);
    let mut asked = String::new();
    for (name, case) in &cases {
        let why = case["why"].as_array().unwrap();
        assert!(why.len() >= 3, "{name}");
        for sentence in why {
            assert!(sentence.as_str().unwrap().ends_with('.'), "{name}");
        }
        assert_eq!(case["basis"], "common practice, no published source");
        asked += &case.to_string();
    }
    for wanted in [
        "not_needed",
        "falls_short",
        "speed_with_baffle",
        "flooding",
        "staged",
        "on_off",
        "liquid_line",
        "evaporator",
        "electronically-commutated",
        "three-phase",
        "shaded-pole",
        "fixed-orifice",
        "R-448A",
        "R-410A",
        "R-454B",
        "R-449A",
        "R-134a",
    ] {
        assert!(asked.contains(wanted), "{wanted}");
    }
}
