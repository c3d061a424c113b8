//! The batch form, held by running the program.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::{Value, json};

fn program() -> Command {
    Command::new(env!("CARGO_BIN_EXE_winterset"))
}

fn answers(input: &[u8]) -> Vec<Value> {
    let mut child = program()
        .arg("batch")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let input = input.to_vec();
    let writer = std::thread::spawn(move || stdin.write_all(&input).unwrap());
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap();
    assert!(output.status.success());
    String::from_utf8(output.stdout)
        .unwrap()
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect()
}

fn answer(request: &Value) -> Value {
    let mut found = answers(request.to_string().as_bytes());
    assert_eq!(found.len(), 1);
    found.remove(0)
}

fn keys(value: &Value) -> Vec<&str> {
    value
        .as_object()
        .unwrap()
        .keys()
        .map(String::as_str)
        .collect()
}

fn number(value: &Value, key: &str) -> f64 {
    value[key]
        .as_f64()
        .unwrap_or_else(|| panic!("{key} in {value}"))
}

fn system(name: &str) -> Value {
    let file =
        Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../../tests/systems/{name}.json"));
    serde_json::from_str(&std::fs::read_to_string(file).unwrap()).unwrap()
}

const SYSTEMS: [&str; 5] = [
    "archive-vault",
    "brewery-cellar",
    "cheese-cave",
    "flower-cooler",
    "radio-hut",
];

#[test]
fn saturation_in_its_stable_form() {
    let found = answer(&json!({"saturation": {"refrigerant": "R-454B", "temperature_K": 313.15}}));
    assert_eq!(keys(&found), ["bubble", "dew"]);
    for side in ["bubble", "dew"] {
        assert_eq!(
            keys(&found[side]),
            [
                "density_kg_m3",
                "enthalpy_J_kg",
                "entropy_J_kgK",
                "pressure_Pa",
                "temperature_K"
            ]
        );
        assert_eq!(number(&found[side], "temperature_K"), 313.15);
    }
    let by_blend = answer(
        &json!({"saturation": {"blend": {"R-32": 0.689, "R-1234yf": 0.311}, "temperature_K": 313.15}}),
    );
    let (named, typed) = (
        number(&found["dew"], "pressure_Pa"),
        number(&by_blend["dew"], "pressure_Pa"),
    );
    assert!((named / typed - 1.0).abs() < 1e-12);
    let back = answer(&json!({"saturation": {"refrigerant": "454b", "pressure_Pa": named}}));
    assert!((number(&back["dew"], "temperature_K") - 313.15).abs() < 1e-8);
}

#[test]
fn state_in_its_stable_form() {
    let found = answer(
        &json!({"state": {"refrigerant": "R-134a", "temperature_K": 320, "pressure_Pa": 5e5}}),
    );
    assert_eq!(
        keys(&found),
        [
            "cp_J_kgK",
            "density_kg_m3",
            "enthalpy_J_kg",
            "entropy_J_kgK",
            "phase"
        ]
    );
    assert_eq!(found["phase"], "vapor");
    let liquid = answer(
        &json!({"state": {"refrigerant": "R-134a", "temperature_K": 280, "pressure_Pa": 5e5}}),
    );
    assert_eq!(liquid["phase"], "liquid");
}

#[test]
fn a_bad_line_is_answered_and_the_rest_still_are() {
    let good = json!({"saturation": {"refrigerant": "R-134a", "temperature_K": 300}}).to_string();
    let bad: [(&[u8], &str, &str); 11] = [
        (b"{", "not_json", ""),
        (b"\xff\xfe", "not_json", ""),
        (b"[]", "not_a_request", ""),
        (b"{\"weather\":{}}", "unknown_request", "weather"),
        (
            b"{\"saturation\":{\"refrigerant\":\"R-999\",\"temperature_K\":300}}",
            "unknown_refrigerant",
            "refrigerant",
        ),
        (
            b"{\"saturation\":{\"refrigerant\":\"R-134a\"}}",
            "missing",
            "temperature_K",
        ),
        (
            b"{\"saturation\":{\"refrigerant\":\"R-134a\",\"temperature_K\":\"warm\"}}",
            "bad_form",
            "temperature_K",
        ),
        (
            b"{\"saturation\":{\"refrigerant\":\"R-134a\",\"temperature\":300}}",
            "bad_form",
            "temperature",
        ),
        (
            b"{\"saturation\":{\"refrigerant\":\"R-134a\",\"temperature_K\":400}}",
            "above_critical",
            "temperature_K",
        ),
        (
            b"{\"saturation\":{\"blend\":{\"R-32\":0.5,\"R-125\":0.6},\"temperature_K\":300}}",
            "composition",
            "blend",
        ),
        (
            b"{\"saturation\":{\"refrigerant\":\"R-134a\",\"pressure_Pa\":-5}}",
            "out_of_range",
            "pressure_Pa",
        ),
    ];
    for (line, kind, field) in bad {
        let mut input = good.clone().into_bytes();
        input.push(b'\n');
        input.extend_from_slice(line);
        input.extend_from_slice(b"\n\n");
        input.extend_from_slice(good.as_bytes());
        let found = answers(&input);
        let shown = String::from_utf8_lossy(line);
        assert_eq!(found.len(), 3, "{shown}");
        assert_eq!(found[0], found[2]);
        assert_eq!(found[1]["error"]["kind"], kind, "{shown}: {}", found[1]);
        assert_eq!(found[1]["error"]["field"], field, "{shown}: {}", found[1]);
        assert!(!found[1]["error"]["message"].as_str().unwrap().is_empty());
    }
}

#[test]
fn plans_of_the_invented_sites_close_in_energy() {
    for name in SYSTEMS {
        let outdoor: Vec<f64> = (0..9).map(|step| 233.15 + 8.0 * f64::from(step)).collect();
        let found =
            answer(&json!({"plan": {"system": system(name), "outdoor_temperatures_K": outdoor}}));
        assert!(found.get("error").is_none(), "{name}: {found}");
        for key in ["pressure_need", "hold_limit_K", "settings", "curves"] {
            assert!(found.get(key).is_some(), "{name}: {key}");
        }
        let need = number(&found["pressure_need"], "pressure_Pa");
        for method in ["full_fan", "on_off", "speed_control"] {
            let points = found["curves"][method].as_array().unwrap();
            assert_eq!(points.len(), outdoor.len());
            for (point, asked) in points.iter().zip(&outdoor) {
                assert_eq!(number(point, "outdoor_K"), *asked);
                let carried = number(point, "effectiveness")
                    * number(point, "air_capacity_rate_W_K")
                    * (number(point, "condensing_K") - asked);
                assert!((carried / number(point, "heat_rejected_W") - 1.0).abs() < 1e-9);
                assert!(
                    number(point, "conductance_W_K") > 0.0 && number(point, "airflow_m3_s") > 0.0
                );
                if method != "on_off" {
                    assert_eq!(point["holds"], number(point, "pressure_Pa") >= need);
                }
            }
        }
    }
}

/// The sites show different outcomes, so that the demo and the pictures do.
#[test]
fn the_invented_sites_differ_in_what_they_come_to() {
    let come_to = |name: &str| {
        let found = answer(&json!({"plan": {"system": system(name)}}));
        (
            found["verdict"]["kind"].as_str().unwrap().to_owned(),
            found["settings"]["drive"].as_str().unwrap().to_owned(),
        )
    };
    for (name, verdict, drive) in [
        ("archive-vault", "holds", "signal"),
        ("brewery-cellar", "falls_short", "phase_cut"),
        ("cheese-cave", "falls_short", "phase_cut"),
        ("flower-cooler", "holds", "signal"),
        ("radio-hut", "holds", "phase_cut"),
    ] {
        assert_eq!(
            come_to(name),
            (verdict.to_owned(), drive.to_owned()),
            "{name}"
        );
    }
}

#[test]
fn a_wrong_field_of_a_record_is_named() {
    let mut broken = system("radio-hut");
    broken["entries"]["over_ambient"]["typed"] = "much".into();
    let found = answer(&json!({"plan": {"system": broken}}));
    assert_eq!(found["error"]["kind"], "not_a_number");
    assert_eq!(found["error"]["field"], "over_ambient");

    let hot = answer(
        &json!({"plan": {"system": system("radio-hut"), "outdoor_temperatures_K": [280.0, 340.0]}}),
    );
    assert_eq!(hot["error"]["field"], "outdoor_temperatures_K[1]");
}

#[test]
fn the_readable_commands_say_what_is_asked() {
    let output = program()
        .args(["saturation", "R-454B", "--temperature", "105F"])
        .output()
        .unwrap();
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(output.status.success());
    assert!(text.contains("bubble") && text.contains("psig"), "{text}");

    for name in SYSTEMS {
        let file =
            Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../../tests/systems/{name}.json"));
        let output = program()
            .arg("plan")
            .arg(file)
            .args(["--units", "si"])
            .output()
            .unwrap();
        let text = String::from_utf8(output.stdout).unwrap();
        assert!(output.status.success(), "{name}");
        assert!(
            text.contains("Hold limits") && text.contains("°C"),
            "{name}: {text}"
        );
    }

    let output = program()
        .args(["saturation", "R-454B", "--temperature", "lukewarm"])
        .output()
        .unwrap();
    assert!(!output.status.success());
    assert!(
        String::from_utf8(output.stderr)
            .unwrap()
            .contains("--temperature")
    );
}
