//! The README's examples, asked of the program.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::answer;
use serde_json::Value;

const README: &str = include_str!("../README.md");

/// The blocks of requests and answers.
fn blocks() -> Vec<Vec<Value>> {
    let fenced = README.split("```").skip(1).step_by(2);
    fenced
        .filter_map(|block| block.strip_prefix("jsonl\n"))
        .map(|block| {
            let lines = block.lines();
            lines
                .map(|line| serde_json::from_str(line).unwrap())
                .collect()
        })
        .collect()
}

/// Numbers within a hundred-thousandth, everything else alike.
fn assert_alike(ours: &Value, shown: &Value, at: &str) {
    match (ours, shown) {
        (Value::Object(a), Value::Object(b)) => {
            assert!(a.keys().eq(b.keys()), "{at}: {ours}");
            for (key, value) in a {
                assert_alike(value, &b[key], &format!("{at}.{key}"));
            }
        }
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64().unwrap(), b.as_f64().unwrap());
            assert!((a / b - 1.0).abs() < 1e-5, "{at}: {a} is not {b}");
        }
        _ => assert_eq!(ours, shown, "{at}"),
    }
}

/// The values shown for saturation and state come from CoolProp 8.0.0 (HEOS), with enthalpy and entropy moved to the reference state
/// of the README.
#[test]
fn each_example_is_answered_as_shown() {
    let pairs: Vec<_> = blocks().into_iter().filter(|b| b.len() == 2).collect();
    assert_eq!(pairs.len(), 7);
    for pair in pairs {
        assert_alike(&answer(&pair[0]), &pair[1], &pair[0].to_string());
    }
}

#[test]
fn every_key_of_a_plan_is_explained() {
    let mut requests: Vec<Value> = blocks()
        .into_iter()
        .flatten()
        .filter(|line| line.get("plan").is_some())
        .collect();
    assert_eq!(requests.len(), 2);
    // With a motor that takes no phase-cut supply too.
    let mut signal = requests[0].clone();
    signal["plan"]["system"]["entries"]["motor"]["typed"] = "three-phase".into();
    requests.push(signal);
    for request in requests {
        let found = answer(&request);
        assert!(found.get("error").is_none(), "{found}");
        assert!(found["curves"]["on_off"][0].get("swing_Pa").is_some());
        each_key(&found, &mut |key| {
            assert!(README.contains(&format!("`{key}`")), "{key}");
        });
    }
}

fn each_key(value: &Value, check: &mut impl FnMut(&str)) {
    match value {
        Value::Object(object) => {
            for (key, value) in object {
                check(key);
                each_key(value, check);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| each_key(item, check)),
        _ => {}
    }
}
