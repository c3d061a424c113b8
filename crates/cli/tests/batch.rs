//! The batch form, held by running the program.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use std::io::{BufRead, BufReader, Write};
use std::process::Stdio;

use common::{SYSTEMS, answer, answers, number, program, system, written};
use serde_json::{Value, json};

fn keys(value: &Value) -> Vec<&str> {
    let object = value.as_object().unwrap();
    object.keys().map(String::as_str).collect()
}

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

/// A blend between its dew and its bubble pressure at 313.15 K (by CoolProp 8.0.0: 2.2326 and 2.3136 MPa) is in two phases.
#[test]
fn a_state_in_two_phases_has_no_heat_capacity() {
    let found = answer(
        &json!({"state": {"refrigerant": "R-454B", "temperature_K": 313.15, "pressure_Pa": 2.27e6}}),
    );
    assert_eq!(found["phase"], "two_phase");
    assert!(found["cp_J_kgK"].is_null());
    let density = number(&found, "density_kg_m3");
    assert!((78.0..916.8).contains(&density));
}

#[test]
fn a_state_above_the_critical_point_is_supercritical() {
    // R-134a: 374.21 K and 4.059 MPa (Tillner-Roth & Baehr 1994).
    let found = answer(
        &json!({"state": {"refrigerant": "R-134a", "temperature_K": 380, "pressure_Pa": 4.5e6}}),
    );
    assert_eq!(found["phase"], "supercritical");
}

const README: &str = include_str!("../README.md");

/// A plan request whose record holds these entries.
fn with_entries(entries: &str) -> String {
    format!(r#"{{"plan":{{"system":{{"entries":{{{entries}}}}}}}}}"#)
}

#[test]
fn a_bad_line_is_answered_and_the_rest_still_are() {
    let good = json!({"saturation": {"refrigerant": "R-134a", "temperature_K": 300}}).to_string();
    let about = |request: &str, body: &str| format!(r#"{{"{request}":{{{body}}}}}"#);
    let saturation = |body: &str| about("saturation", body);
    let state = |body: &str| about("state", body);
    let plan = |body: &str| about("plan", body);
    let deep = "[".repeat(100_000);
    let bad: Vec<(String, &str, &str)> = vec![
        ("{".into(), "not_json", ""),
        (deep, "not_json", ""),
        (format!("{good} {good}"), "not_json", ""),
        (saturation(r#""temperature_K":1e999"#), "not_json", ""),
        ("[]".into(), "not_a_request", ""),
        ("{}".into(), "not_a_request", ""),
        (r#"{"state":{},"plan":{}}"#.into(), "not_a_request", ""),
        (about("weather", ""), "unknown_request", "weather"),
        (r#"{"saturation":[]}"#.into(), "bad_form", "saturation"),
        (
            saturation(r#""refrigerant":"R-999","temperature_K":300"#),
            "unknown_refrigerant",
            "refrigerant",
        ),
        (
            saturation(r#""refrigerant":134,"temperature_K":300"#),
            "bad_form",
            "refrigerant",
        ),
        (
            saturation(r#""temperature_K":300"#),
            "missing",
            "refrigerant",
        ),
        (
            saturation(r#""refrigerant":"R-134a""#),
            "missing",
            "temperature_K",
        ),
        (
            saturation(r#""refrigerant":"R-134a","temperature_K":300,"pressure_Pa":5e5"#),
            "either_or",
            "pressure_Pa",
        ),
        (
            saturation(r#""refrigerant":"R-134a","blend":{"R-32":1},"temperature_K":300"#),
            "either_or",
            "blend",
        ),
        (
            saturation(r#""refrigerant":"R-134a","temperature_K":"warm""#),
            "bad_form",
            "temperature_K",
        ),
        (
            saturation(r#""refrigerant":"R-134a","temperature":300"#),
            "unknown_key",
            "temperature",
        ),
        (
            saturation(r#""refrigerant":"R-134a","temperature_K":300,"temperature_K":310"#),
            "duplicate_key",
            "temperature_K",
        ),
        (
            saturation(r#""refrigerant":"R-134a","temperature_K":400"#),
            "above_critical",
            "temperature_K",
        ),
        (
            saturation(r#""refrigerant":"R-134a","pressure_Pa":5e6"#),
            "above_critical",
            "pressure_Pa",
        ),
        (
            saturation(r#""refrigerant":"R-134a","pressure_Pa":-5"#),
            "out_of_range",
            "pressure_Pa",
        ),
        (
            saturation(r#""blend":{"R-32":0.5,"R-125":0.6},"temperature_K":300"#),
            "composition",
            "blend",
        ),
        (
            saturation(r#""blend":{"R-32":-0.5,"R-125":1.5},"temperature_K":300"#),
            "composition",
            "blend",
        ),
        (
            saturation(r#""blend":{"R-32":"half"},"temperature_K":300"#),
            "bad_form",
            "blend",
        ),
        (
            state(r#""refrigerant":"R-134a","temperature_K":300"#),
            "missing",
            "pressure_Pa",
        ),
        (
            state(r#""refrigerant":"R-134a","temperature_K":3000,"pressure_Pa":5e5"#),
            "out_of_range",
            "temperature_K",
        ),
        (
            state(r#""refrigerant":"R-134a","temperature_K":300,"pressure_Pa":5e12"#),
            "out_of_range",
            "pressure_Pa",
        ),
        (plan(""), "missing", "system"),
        (plan(r#""system":[]"#), "bad_form", "system"),
        (plan(r#""system":{"version":0}"#), "bad_form", "version"),
        (plan(r#""system":{"name":5}"#), "bad_form", "name"),
        (plan(r#""system":{"entires":{}}"#), "unknown_key", "entires"),
        (
            plan(r#""system":{},"outdoor_temperatures_K":[260,0]"#),
            "out_of_range",
            "outdoor_temperatures_K[1]",
        ),
        (
            plan(r#""system":{},"outdoor_temperatures_K":260"#),
            "bad_form",
            "outdoor_temperatures_K",
        ),
        (with_entries(r#""fan":{"typed":"2"}"#), "unknown_key", "fan"),
        (
            with_entries(r#""fans":{"typed":"2","units":""}"#),
            "unknown_key",
            "units",
        ),
        (with_entries(r#""fans":{"typed":2}"#), "bad_form", "fans"),
        (with_entries(r#""fans":{"unit":""}"#), "missing", "fans"),
        (
            with_entries(
                r#""refrigerant":{"typed":"R-134a"},"cooling_capacity":{"typed":"9","unit":"kW"},"outdoor_low":{"typed":"-9","unit":"C"},"elevation":{"typed":"6,200","unit":"ft"}"#,
            ),
            "ambiguous",
            "elevation",
        ),
        (with_entries(""), "missing", "refrigerant"),
    ];
    let mut input = good.clone().into_bytes();
    for (line, ..) in &bad {
        input.extend_from_slice(format!("\n{line}\n \r\n\n{good}").as_bytes());
    }
    let found = answers(&input);
    assert_eq!(found.len(), 1 + 2 * bad.len());
    for (index, (line, kind, field)) in bad.iter().enumerate() {
        let error = &found[1 + 2 * index]["error"];
        let shown: String = line.chars().take(100).collect();
        assert_eq!(error["kind"], *kind, "{shown}: {error}");
        assert_eq!(error["field"], *field, "{shown}: {error}");
        assert!(!error["message"].as_str().unwrap().is_empty());
        assert_eq!(found[2 + 2 * index], found[0], "{shown}");
        assert!(README.contains(&format!("`{kind}`")), "{kind}");
    }
}

#[test]
fn bytes_that_are_no_text_are_answered() {
    let good = json!({"saturation": {"refrigerant": "R-134a", "temperature_K": 300}}).to_string();
    for bytes in [
        &b"\xff\xfe"[..],
        &b"{\"saturation\":{\"refrigerant\":\"\xc3\x28\"}}"[..],
        &b"\0"[..],
    ] {
        let mut input = bytes.to_vec();
        input.push(b'\n');
        input.extend_from_slice(good.as_bytes());
        let found = answers(&input);
        assert_eq!(found[0]["error"]["kind"], "not_json");
        assert!(found[1].get("bubble").is_some());
        assert_eq!(found.len(), 2);
    }
}

/// What a newer version keeps in a record does not stop this one.
#[test]
fn a_record_of_a_newer_version_is_read_as_far_as_it_is_understood() {
    let mut newer = system("radio-hut");
    newer["version"] = 1_000.into();
    newer["photos"] = json!([1, 2]);
    newer["entries"]["rain"] = json!({"typed": "4"});
    assert_eq!(
        answer(&json!({"plan": {"system": newer}})),
        answer(&json!({"plan": {"system": system("radio-hut")}}))
    );
}

#[test]
fn a_null_in_a_record_counts_as_left_out() {
    let mut record = system("radio-hut");
    let entries = record["entries"].as_object_mut().unwrap();
    entries.remove("elevation");
    let wanted = answer(&json!({"plan": {"system": record}}));
    assert!(wanted.get("error").is_none(), "{wanted}");
    for key in ["version", "id", "name"] {
        record[key] = Value::Null;
    }
    record["entries"]["elevation"] = Value::Null;
    record["entries"]["fans"]["unit"] = Value::Null;
    assert_eq!(answer(&json!({"plan": {"system": record}})), wanted);
}

#[test]
fn each_answer_is_written_before_the_next_line_is_read() {
    let mut child = program()
        .arg("batch")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let mut stdout = BufReader::new(child.stdout.take().unwrap());
    for temperature in [280, 290] {
        let request =
            json!({"saturation": {"refrigerant": "R-134a", "temperature_K": temperature}});
        writeln!(stdin, "{request}").unwrap();
        let mut line = String::new();
        stdout.read_line(&mut line).unwrap();
        let found: Value = serde_json::from_str(&line).unwrap();
        assert_eq!(found["dew"]["temperature_K"], f64::from(temperature));
    }
    drop(stdin);
    assert!(child.wait().unwrap().success());
}

/// Decimals that a reader which rounds twice takes for the double next to the right one.
#[test]
fn numbers_come_back_exactly() {
    let asked = [
        "241.70084859132038",
        "251.15437595368306",
        "252.99596382783682",
        "253.85199249245906",
    ];
    let request = format!(
        r#"{{"plan":{{"system":{},"outdoor_temperatures_K":[{}]}}}}"#,
        system("radio-hut"),
        asked.join(",")
    );
    let text = written(request.as_bytes());
    for number in asked {
        assert!(
            text.contains(&format!("\"outdoor_K\":{number},")),
            "{number}"
        );
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
        let curves = found["curves"].as_object().unwrap();
        assert_eq!(curves.len(), 7);
        for points in curves.values() {
            let points = points.as_array().unwrap();
            assert_eq!(points.len(), outdoor.len());
            for (point, asked) in points.iter().zip(&outdoor) {
                assert_eq!(number(point, "outdoor_K"), *asked);
                let carried = number(point, "effectiveness")
                    * number(point, "air_capacity_rate_W_K")
                    * (number(point, "condensing_K") - asked);
                let heat = number(point, "heat_rejected_W");
                assert!((carried - heat).abs() <= 1e-6 * heat);
                if let Some(cycle) = point.get("cycle") {
                    let given = number(cycle, "cooling_W") + number(cycle, "compressor_power_W");
                    assert!((given / heat - 1.0).abs() < 1e-6);
                } else {
                    assert_eq!(point["condition"], "low_pressure_trip");
                }
                assert!(
                    number(point, "conductance_W_K") > 0.0 && number(point, "airflow_m3_s") > 0.0
                );
                if point.get("swing_Pa").is_none() {
                    assert_eq!(
                        point["holds"],
                        number(point, "pressure_Pa") >= need * (1.0 - 1e-9)
                    );
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
        ("brewery-cellar", "holds", "phase_cut"),
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

/// Carbon dioxide freezes at 216.6 K (Span & Wagner 1996), which a low of -60 °C is past: a system that has tripped is as cold as the air,
/// and its pressure is known down to there.
#[test]
fn without_outdoor_temperatures_the_curves_reach_round_the_sites_low() {
    let system = json!({"entries": {
        "refrigerant": {"typed": "R-744"},
        "cooling_capacity": {"typed": "10", "unit": "kW"},
        "outdoor_low": {"typed": "-60", "unit": "C"},
        "known_outdoor": {"typed": "10", "unit": "C"},
        "over_ambient": {"typed": "8", "unit": "K"},
        "evaporating": {"typed": "-10", "unit": "C"},
    }});
    for (system, below, above) in [
        (common::system("radio-hut"), 263.15 - 10.0, 308.15 - 5.0),
        (system, 216.6 + 5.0, 283.15 - 5.0),
    ] {
        let found = answer(&json!({"plan": {"system": system}}));
        let points = found["curves"]["speed_control"]
            .as_array()
            .unwrap_or_else(|| panic!("{found}"));
        let outdoor: Vec<f64> = points.iter().map(|p| number(p, "outdoor_K")).collect();
        assert!(outdoor[0] <= below + 1e-9, "{outdoor:?}");
        assert!(outdoor[outdoor.len() - 1] >= above, "{outdoor:?}");
        assert!(outdoor.windows(2).all(|w| (w[1] - w[0] - 5.0).abs() < 1e-9));
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
fn a_state_takes_one_value_beside_its_pressure() {
    let at = |extra: Value| {
        let mut body = json!({"refrigerant": "R-448A", "pressure_Pa": 1.5e6});
        for (key, value) in extra.as_object().unwrap() {
            body[key] = value.clone();
        }
        answer(&json!({ "state": body }))
    };
    let half = at(json!({"quality": 0.5}));
    assert_eq!(half["phase"], "two_phase");
    for key in ["enthalpy_J_kg", "entropy_J_kgK"] {
        let again = at(json!({ key: half[key] }));
        assert!((number(&again, "temperature_K") - number(&half, "temperature_K")).abs() < 1e-6);
        assert!((number(&again, "quality") - 0.5).abs() < 1e-7, "{again}");
    }
    let two = at(json!({"quality": 0.5, "temperature_K": 300}));
    assert_eq!(two["error"]["kind"], "either_or");
    assert_eq!(two["error"]["field"], "quality");
    let outside = at(json!({"quality": 1.5}));
    assert_eq!(outside["error"]["field"], "quality");
}

#[test]
fn the_list_holds_what_can_be_named() {
    let found = answer(&json!({"refrigerants": {}}));
    let list = found["refrigerants"].as_array().unwrap();
    assert!(list.len() > 100);
    for one in list {
        let sum: f64 = one["composition"]
            .as_object()
            .unwrap()
            .values()
            .map(|share| share.as_f64().unwrap())
            .sum();
        assert!((sum - 1.0).abs() < 1e-9, "{one}");
        assert!(number(one, "critical_temperature_K") > 0.0, "{one}");
    }
}

/// The plan asks for what its settings say, and the finding carries the same.
#[test]
fn a_controller_is_answered_with_findings() {
    let ask = |controller: Value| {
        answer(&json!({"plan": {
            "system": system("radio-hut"), "outdoor_temperatures_K": [], "controller": controller,
        }}))
    };
    let found = ask(json!({
        "minimum_output_fraction": [0.9, 1], "start_boost_s": [0, 60], "outputs": ["phase-cut"], "rated_current_A": 1000,
    }));
    let all = &found["controller"]["findings"];
    let of = |setting: &str| {
        let mut findings = all.as_array().unwrap().iter();
        findings.find(|one| one["setting"] == setting).unwrap()
    };
    let output = of("minimum_output");
    let settings = &found["settings"];
    assert_eq!(
        (&output["standing"], &output["unit"], &output["effect"]),
        (&json!("outside"), &json!("1"), &json!("hold_limit_rises"))
    );
    assert_eq!(output["wanted"], settings["minimum_output_fraction"]);
    assert_eq!(
        (number(output, "nearest"), &output["safety"]),
        (0.9, &json!("check"))
    );
    assert_eq!(of("start_boost")["standing"], "inside");
    assert_eq!(of("input")["standing"], "not_stated");
    assert_eq!(found["controller"]["safety"], "check");
    let without =
        answer(&json!({"plan": {"system": system("radio-hut"), "outdoor_temperatures_K": []}}));
    assert!(without.get("controller").is_none());
    for (controller, kind, field) in [
        (json!(3), "bad_form", "controller"),
        (json!({"colour": "grey"}), "unknown_key", "colour"),
        (json!({"start_boost_s": 3}), "bad_form", "start_boost_s"),
        (
            json!({"start_boost_s": [3, 1]}),
            "out_of_range",
            "start_boost_s",
        ),
        (
            json!({"start_boost_s": [3, 900]}),
            "out_of_range",
            "start_boost_s",
        ),
        (
            json!({"throttling_range_K": [3, 9]}),
            "missing",
            "full_speed_coil_K",
        ),
        (json!({"outputs": ["steam"]}), "bad_form", "outputs"),
        (
            json!({"rated_current_A": 0}),
            "out_of_range",
            "rated_current_A",
        ),
        (
            json!({"throttling_range_Pa": [3, 9], "full_speed_pressure_Pa": [1, 9e5]}),
            "out_of_range",
            "full_speed_pressure_Pa",
        ),
    ] {
        let error = &ask(controller.clone())["error"];
        assert_eq!(
            (&error["kind"], &error["field"]),
            (&json!(kind), &json!(field)),
            "{controller}"
        );
    }
}

/// A year all at one temperature is that temperature's point, all year.
#[test]
fn the_hours_of_a_year_can_be_given() {
    let (cold, year) = (268.65, 8760.0 * 3600.0);
    let ask = |hours: Value| {
        answer(&json!({"plan": {
            "system": system("radio-hut"), "outdoor_temperatures_K": [cold], "hours": hours,
        }}))
    };
    let found = ask(json!([[268.2, year / 3.0], [269.1, year * 2.0 / 3.0]]));
    let method = &found["advice"]["methods"]["full_fan"];
    let point = &found["curves"]["full_fan"][0];
    let share =
        number(&found["design"]["cycle"], "cooling_W") / number(&point["cycle"], "cooling_W");
    let energy = number(&point["cycle"], "compressor_power_W") * year * share.min(1.0);
    assert!((number(method, "compressor_energy_J") / energy - 1.0).abs() < 1e-9);
    for (hours, kind, field) in [
        (json!(5), "bad_form", "hours"),
        (json!([[270]]), "bad_form", "hours"),
        (json!([]), "out_of_range", "hours"),
        (json!([[270, 1], [-5, 10]]), "out_of_range", "hours[1]"),
        (json!([[270, -1]]), "out_of_range", "hours[0]"),
        (json!([[270, 4e7]]), "out_of_range", "hours"),
    ] {
        let error = &ask(hours.clone())["error"];
        assert_eq!(
            (&error["kind"], &error["field"]),
            (&json!(kind), &json!(field)),
            "{hours}"
        );
    }
}
