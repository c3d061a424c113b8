//! Answers to plans against the JSON Schema beside the README, by a validator of draft 2020-12 that is not ours.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use std::collections::BTreeSet;

use common::{SYSTEMS, answers, system};
use jsonschema::Validator;
use serde_json::{Value, json};

const README: &str = include_str!("../README.md");

fn schema() -> Value {
    serde_json::from_str(include_str!("../plan.schema.json")).unwrap()
}

fn validator() -> Validator {
    jsonschema::draft202012::new(&schema()).unwrap()
}

/// A record with some of its entries typed anew.
fn with(name: &str, entries: &[(&str, &str, &str)]) -> Value {
    let mut record = system(name);
    for (field, typed, unit) in entries {
        record["entries"][field] = match *unit {
            "" => json!({ "typed": typed }),
            unit => json!({ "typed": typed, "unit": unit }),
        };
    }
    record
}

/// Systems with every motor, metering device and duty, a liquid line, a trip, and lows from mild to arctic.
fn varied() -> Vec<Value> {
    let mut records: Vec<Value> = SYSTEMS.iter().map(|name| system(name)).collect();
    for motor in [
        "permanent-split-capacitor",
        "shaded-pole",
        "electronically-commutated",
        "three-phase",
    ] {
        records.push(with("radio-hut", &[("motor", motor, "")]));
        records.push(with(
            "flower-cooler",
            &[("motor", motor, ""), ("outdoor_low", "-30", "C")],
        ));
    }
    for metering in [
        "txv-conventional",
        "txv-balanced",
        "electronic-valve",
        "fixed-orifice",
    ] {
        let entries = [("metering", metering, ""), ("outdoor_low", "-25", "C")];
        records.push(with("radio-hut", &entries));
        records.push(with("brewery-cellar", &entries));
    }
    for duty in ["room-cooling", "cooler", "freezer"] {
        let mut record = with("flower-cooler", &[("duty", duty, "")]);
        record["entries"]
            .as_object_mut()
            .unwrap()
            .remove("evaporating");
        records.push(record);
    }
    let line = [
        ("liquid_length", "40", "m"),
        ("liquid_lift", "9", "m"),
        ("liquid_diameter", "9.5", "mm"),
    ];
    records.push(with("radio-hut", &line));
    records.push(with("flower-cooler", &line[..2]));
    records.push(with("radio-hut", &[("outdoor_low", "20", "C")]));
    let mixed = [("fans", "3", ""), ("modulated_fans", "1", "")];
    records.push(with("radio-hut", &mixed));
    for (motor, low) in [("permanent-split-capacitor", "-25"), ("shaded-pole", "-50")] {
        let entries = [
            ("motor", motor, ""),
            ("bearing", "sleeve", ""),
            ("rated_speed", "850", "rpm"),
            ("outdoor_low", low, "C"),
            ("compressor_highest", "46", "C"),
        ];
        records.push(with("radio-hut", &entries));
    }
    for control in ["on-off", "stages", "unloading", "variable-speed"] {
        let entries = [("capacity_control", control, ""), ("lowest_load", "", "")];
        records.push(with("radio-hut", &entries));
    }
    records.push(with(
        "radio-hut",
        &[
            ("capacity_control", "stages", ""),
            ("compressor_stages", "4", ""),
        ],
    ));
    records.push(with(
        "radio-hut",
        &[
            ("capacity_control", "unloading", ""),
            ("lowest_load", "100", "%"),
        ],
    ));
    records.push(with(
        "archive-vault",
        &[("outdoor_low", "-30", "C"), ("idle_airflow", "30", "%")],
    ));
    records
}

fn found() -> Vec<Value> {
    let requests: String = varied()
        .iter()
        .map(|record| format!("{}\n", json!({ "plan": { "system": record } })))
        .collect();
    answers(requests.as_bytes())
}

#[test]
fn the_schema_is_one() {
    assert!(jsonschema::draft202012::meta::is_valid(&schema()));
}

#[test]
fn every_answer_keeps_to_the_schema() {
    let validator = validator();
    let answers = found();
    for (record, answer) in varied().iter().zip(&answers) {
        assert!(answer.get("error").is_none(), "{record}: {answer}");
        let wrong: Vec<String> = validator
            .iter_errors(answer)
            .map(|error| format!("{}: {error}", error.instance_path()))
            .collect();
        assert!(wrong.is_empty(), "{record}: {}", wrong.join("\n"));
    }
    // What is held is held in many forms.
    for (key, least) in [
        ("condition", 5),
        ("kind", 13),
        ("control", 4),
        ("reason", 4),
        ("action", 5),
        ("drive", 2),
        ("governing", 2),
        ("part", 6),
        ("minimum_output_by", 2),
        ("lowest_speed", 2),
    ] {
        let mut seen = BTreeSet::new();
        answers
            .iter()
            .for_each(|answer| texts_at(answer, key, &mut seen));
        assert!(seen.len() >= least, "{key}: {seen:?}");
    }
    for wanted in ["minimum_signal_V", "lowest_frequency_Hz", "start_boost_s"] {
        let has = |answer: &Value| answer["settings"].get(wanted).is_some();
        assert!(answers.iter().any(has), "{wanted}");
    }
    let said = |note: &str| {
        let of = |answer: &&Value| {
            answer["settings"]["notes"]
                .as_array()
                .unwrap()
                .contains(&json!(note))
        };
        answers.iter().find(of)
    };
    assert!(said("will_not_start").is_some());
    let hot = said("above_envelope").unwrap();
    assert!(hot["verdict"]["above_envelope_from_K"].is_number());
    for part in ["liquid_line", "evaporator"] {
        let asks = |answer: &Value| answer["pressure_need"]["parts_Pa"].get(part).is_some();
        assert!(answers.iter().any(asks), "{part}");
    }
}

fn texts_at(value: &Value, wanted: &str, seen: &mut BTreeSet<String>) {
    match value {
        Value::Object(object) => {
            for (key, value) in object {
                if key == wanted {
                    seen.extend(value.as_str().map(str::to_owned));
                }
                texts_at(value, wanted, seen);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| texts_at(item, wanted, seen)),
        _ => {}
    }
}

/// One change to a good answer each.
#[test]
fn a_broken_answer_does_not() {
    let validator = validator();
    let request = json!({ "plan": { "system": system("radio-hut") } });
    let good = &answers(request.to_string().as_bytes())[0];
    assert!(validator.is_valid(good));
    let broken = |pointer: &str, key: &str, value: Value| {
        let mut answer = good.clone();
        let object = answer.pointer_mut(pointer).unwrap().as_object_mut();
        object.unwrap().insert(key.to_owned(), value);
        answer
    };
    for (pointer, key, value) in [
        ("", "extra", json!(1)),
        ("", "hold_limit_K", json!(-3.0)),
        ("", "hold_limit_K", json!("cold")),
        ("", "curves", json!({})),
        ("/pressure_need", "governing", json!("fan")),
        ("/pressure_need", "pressure_Pa", json!(0)),
        ("/pressure_need", "ice", json!({ "kind": "below" })),
        ("/pressure_need/parts_Pa", "receiver", json!(1e5)),
        ("/verdict", "method", json!("prayer")),
        ("/verdict", "action", json!(null)),
        ("/settings", "drive", json!("signal")),
        ("/settings", "refuses_phase_cut", json!("three-phase")),
        ("/settings", "notes", json!(["odd"])),
        ("/design/zones", "condensing", json!(1.2)),
        ("/design/cycle", "mass_flow_kg_s", json!(0)),
        ("/curves/full_fan/0", "condition", json!("fine")),
        ("/curves/full_fan/0", "condition", json!("holds")),
        ("/curves/on_off/0", "condition", json!("low_pressure_trip")),
        ("/curves/full_fan/0", "starts_per_hour", json!(3)),
        ("/curves/on_off/0", "swing_Pa", json!([1e6])),
        ("/advice", "order", json!([{ "part": "motor" }])),
        ("/advice", "winter_start", json!({})),
        ("/advice", "part_load", json!(null)),
        ("/advice/part_load", "lowest_load", json!(0)),
        ("/advice/part_load", "kind", json!("falls")),
        ("/advice", "fan_motor", json!({})),
        ("/advice/fan_motor", "remedies", json!(["pray"])),
        (
            "/advice/fan_motor",
            "start",
            json!({ "kind": "longer_boost" }),
        ),
        ("/settings", "minimum_output_by", json!("weather")),
        ("/settings", "lowest_frequency_Hz", json!(12)),
        ("/advice/bands/by_field_K", "duty", json!(1)),
        ("/advice/methods/staged", "applies", json!("no")),
        ("/advice/sensor_place", "confirmed", json!(false)),
    ] {
        let answer = broken(pointer, key, value);
        assert!(!validator.is_valid(&answer), "{pointer} {key}");
    }
    // And each key left out, all through the answer but where it may be.
    for key in good.as_object().unwrap().keys() {
        let mut answer = good.clone();
        answer.as_object_mut().unwrap().remove(key);
        assert!(!validator.is_valid(&answer), "{key}");
    }
}

/// A controller of an invented kind, with some limits other than those that fit everywhere.
fn with_controller(name: &str, changes: &[(&str, Value)]) -> Value {
    let mut controller = json!({
        "full_speed_coil_K": [250, 390], "throttling_range_K": [0, 60],
        "full_speed_pressure_Pa": [5e4, 2e7], "throttling_range_Pa": [0, 5e6],
        "minimum_output_fraction": [0, 1], "start_boost_s": [0, 60],
        "outputs": ["phase-cut", "zero-to-ten-volts", "pulse-width"],
        "supply_V": [12, 1000], "rated_current_A": 1000,
    });
    for (key, value) in changes {
        controller[key] = value.clone();
    }
    json!({ "plan": { "system": system(name), "outdoor_temperatures_K": [], "controller": controller } })
}

#[test]
fn what_a_controller_takes_keeps_to_the_schema() {
    let changes: [&[(&str, Value)]; 8] = [
        &[],
        &[
            ("full_speed_coil_K", json!([250, 260])),
            ("full_speed_pressure_Pa", json!([5e4, 6e4])),
        ],
        &[
            ("throttling_range_K", json!([50, 60])),
            ("throttling_range_Pa", json!([4e6, 5e6])),
        ],
        &[
            ("minimum_output_fraction", json!([0.9, 1])),
            ("start_boost_s", json!([0, 0])),
        ],
        &[
            ("supply_V", json!([12, 24])),
            ("rated_current_A", json!(0.1)),
        ],
        &[("outputs", json!(["contact"]))],
        &[
            ("full_speed_coil_K", Value::Null),
            ("throttling_range_K", Value::Null),
            ("full_speed_pressure_Pa", Value::Null),
            ("throttling_range_Pa", Value::Null),
        ],
        &[
            ("full_speed_coil_K", Value::Null),
            ("throttling_range_K", Value::Null),
        ],
    ];
    let mut requests = String::new();
    // Motors on a phase cut and on a signal.
    for name in ["radio-hut", "archive-vault", "cheese-cave"] {
        for changes in changes {
            requests += &format!("{}\n", with_controller(name, changes));
        }
    }
    let (validator, answers) = (validator(), answers(requests.as_bytes()));
    let mut seen = BTreeSet::new();
    for answer in &answers {
        let wrong: Vec<String> = validator
            .iter_errors(answer)
            .map(|error| format!("{}: {error}", error.instance_path()))
            .collect();
        assert!(
            wrong.is_empty(),
            "{}: {}",
            answer["controller"],
            wrong.join("\n")
        );
        for finding in answer["controller"]["findings"].as_array().unwrap() {
            texts_at(finding, "standing", &mut seen);
        }
    }
    assert!(
        answers
            .iter()
            .step_by(changes.len())
            .all(|fits| fits["controller"]["safety"] == "safe")
    );
    for standing in [
        "inside",
        "outside",
        "not_stated",
        "no_such_input",
        "no_such_output",
        "overloaded",
    ] {
        assert!(seen.contains(standing), "{standing}: {seen:?}");
    }
    let finding = "/controller/findings/0";
    for (key, value) in [
        ("effect", json!("may_hunt")),
        ("setting", json!("colour")),
        ("safety", json!(1)),
    ] {
        let mut broken = answers[0].clone();
        broken.pointer_mut(finding).unwrap()[key] = value;
        assert!(!validator.is_valid(&broken), "{key}");
    }
}

/// Objects take no keys but those named, and all that is named stands in the README.
#[test]
fn the_schema_is_strict_and_explained() {
    strict(&schema(), "");
}

fn strict(value: &Value, at: &str) {
    match value {
        Value::Object(object) => {
            if object.get("type").is_some_and(|kind| kind == "object") {
                assert_eq!(object["additionalProperties"], false, "{at}");
                assert!(object.contains_key("required"), "{at}");
                let properties = object["properties"].as_object().unwrap();
                properties.keys().for_each(|key| explained(key));
            }
            let listed = object.get("enum").and_then(Value::as_array);
            let words = listed.into_iter().flatten().chain(object.get("const"));
            words.filter_map(Value::as_str).for_each(explained);
            for (key, value) in object {
                strict(value, &format!("{at}/{key}"));
            }
        }
        Value::Array(items) => items.iter().for_each(|item| strict(item, at)),
        _ => {}
    }
}

fn explained(word: &str) {
    assert!(README.contains(&format!("`{word}`")), "{word}");
}
