//! The commands for reading, held by running the program.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use std::fs;
use std::path::PathBuf;

use common::{SYSTEMS, file, run, stderr, stdout, system};

/// R-134a boils at 101.325 kPa at -26.07 °C (Tillner-Roth & Baehr 1994): 0 over the atmosphere at sea level, and 2.58 psi over that at
/// 1600 m (83.53 kPa by the U.S. Standard Atmosphere 1976, from PyPI `fluids` 1.3.1, `ATMOSPHERE_1976`).
#[test]
fn saturation_is_answered_in_the_units_chosen() {
    let asked = ["saturation", "R-134a", "--temperature", "-26.07C"];
    let rows = |more: &[&str]| {
        let output = run(&[&asked[..], more].concat());
        assert!(output.status.success(), "{}", stderr(&output));
        let text = stdout(&output).replace('\u{a0}', " ");
        assert!(text.starts_with("R-134a\n"), "{text}");
        assert!(text.contains("bubble") && text.contains("dew"), "{text}");
        text
    };
    let us = rows(&[]);
    assert!(us.contains("−15 °F") && us.contains(" 0 psig"), "{us}");
    let si = rows(&["--units", "si"]);
    assert!(si.contains("−26.1 °C") && si.contains(" 0.00 bar"), "{si}");
    let high = rows(&["--elevation", "1600m"]);
    assert!(high.contains(" 3 psig"), "{high}");
}

/// At one pressure a blend glides and a pure refrigerant does not.
#[test]
fn glide_is_said_where_there_is_one() {
    let text = |name: &str| stdout(&run(&["saturation", name, "--pressure", "250psig"]));
    assert!(text("R-454B").contains("glide"));
    assert!(text("R-32/R-1234yf 68.9/31.1").contains("glide"));
    assert!(!text("R-134a").contains("glide"));
}

#[test]
fn what_is_wrong_on_the_command_line_is_said() {
    for (arguments, wrong) in [
        ("saturation R-454B --temperature lukewarm", "--temperature"),
        (
            "saturation R-454B --temperature 1C --elevation 6,200ft",
            "6200 or as 6.2",
        ),
        ("saturation R-454B --temperature 105psig", "--temperature"),
        ("saturation R-454B --temperature 400F", "--temperature"),
        ("saturation R-454B --pressure -20psig", "--pressure"),
        ("saturation R-454B --pressure 9000psig", "--pressure"),
        ("saturation R-454B --pressure 9kW", "kW"),
        (
            "saturation R-454B --temperature 1C --elevation 90km",
            "--elevation",
        ),
        (
            "saturation R-454B --temperature 1C --elevation 90000m",
            "--elevation",
        ),
        (
            "saturation R-454B --temperature 1C --units furlong",
            "--units",
        ),
        ("saturation R-9999 --temperature 1C", "R-9999"),
        ("saturation R-32/R-125 --temperature 1C", "R-32/R-125"),
        ("plan a.json --language xx", "--language"),
        ("plan no-such-file.json", "no-such-file.json"),
    ] {
        assert_refused(arguments, 1, wrong);
    }
}

#[test]
fn a_command_line_that_makes_no_sense_is_told_from_a_question_without_an_answer() {
    for (arguments, wrong) in [
        ("saturation R-454B", "--temperature"),
        (
            "saturation R-454B --temperature 1C --pressure 2bar",
            "either",
        ),
        ("saturation R-454B --temprature 1C", "--temprature"),
        ("saturation", "refrigerant"),
        ("plan", "file"),
        ("plan a.json b.json", "b.json"),
        ("plan a.json --elevation 3m", "--elevation"),
        ("batch --units us", "--units"),
        ("batch --language es", "--language"),
        ("guess", "batch"),
    ] {
        assert_refused(arguments, 2, wrong);
    }
}

fn assert_refused(arguments: &str, code: i32, wrong: &str) {
    let output = run(&arguments.split(' ').collect::<Vec<_>>());
    assert_eq!(output.status.code(), Some(code), "{arguments}");
    assert!(output.stdout.is_empty(), "{arguments}");
    let said = stderr(&output);
    assert!(said.contains(wrong), "{arguments}: {said}");
}

#[test]
fn every_invented_system_has_a_plan_to_read() {
    for name in SYSTEMS {
        for (units, sign) in [("si", "°C"), ("us", "°F")] {
            let output = run(&["plan", file(name).to_str().unwrap(), "--units", units]);
            assert!(output.status.success(), "{name}: {}", stderr(&output));
            let text = stdout(&output);
            let record = system(name);
            for wanted in [
                record["name"].as_str().unwrap(),
                sign,
                "Settings sheet",
                "Full-speed point",
                "Throttling range",
                "Pressure need",
                "Hold limits",
                "Methods side by side",
                "What lowers the need",
                "What to order",
                "Winter start",
                "How sure this is",
                "Assumed",
                "Mains",
                "Local codes",
            ] {
                assert!(text.contains(wanted), "{name}: {wanted} in {text}");
            }
        }
    }
}

/// A voltage and a start boost are for motors that take voltage speed control.
#[test]
fn a_motor_that_takes_no_voltage_control_gets_no_voltage() {
    let text = |name: &str| stdout(&run(&["plan", file(name).to_str().unwrap()]));
    assert!(text("radio-hut").contains("Start boost"));
    assert!(!text("archive-vault").contains("Start boost"));
    assert!(!text("flower-cooler").contains("Start boost"));
}

#[test]
fn every_wrong_field_of_a_record_is_said() {
    let mut broken = system("radio-hut");
    broken["entries"]["over_ambient"]["typed"] = "much".into();
    broken["entries"]["fans"]["typed"] = "1.5".into();
    broken["entries"]["outdoor_low"]["typed"] = "".into();
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("broken.json");
    fs::write(&path, broken.to_string()).unwrap();
    let output = run(&["plan", path.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(output.stdout.is_empty());
    let said = stderr(&output);
    assert_eq!(said.lines().count(), 3, "{said}");
    for field in ["over_ambient: ", "fans: ", "outdoor_low: "] {
        assert!(said.lines().any(|line| line.starts_with(field)), "{said}");
    }
}

/// A misspelt key would otherwise leave its field to what is usual.
#[test]
fn a_misspelt_key_of_a_file_is_said() {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("misspelt.json");
    let good = system("radio-hut").to_string();
    for (right, wrong) in [("elevation", "elevatoin"), ("entries", "entires")] {
        let quoted = |key: &str| format!("\"{key}\"");
        fs::write(&path, good.replace(&quoted(right), &quoted(wrong))).unwrap();
        let output = run(&["plan", path.to_str().unwrap()]);
        assert_eq!(output.status.code(), Some(1));
        let said = stderr(&output);
        assert!(said.contains("misspelt.json"), "{said}");
        assert!(said.contains(wrong), "{said}");
    }
}

#[test]
fn a_file_that_is_no_record_is_said() {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("list.json");
    for text in [&b"[]"[..], b"", b"\xff", b"{\"version\":0}"] {
        fs::write(&path, text).unwrap();
        let output = run(&["plan", path.to_str().unwrap()]);
        assert_eq!(output.status.code(), Some(1));
        assert!(stderr(&output).contains("list.json"));
    }
}

/// Every language answers with its own words and signs; nothing of the first language is left in the others.
#[test]
fn a_plan_is_written_in_the_language_chosen() {
    let text = |language: &str| {
        let path = file("radio-hut");
        let asked = [
            "plan",
            path.to_str().unwrap(),
            "--units",
            "si",
            "--language",
            language,
        ];
        let output = run(&asked);
        assert!(output.status.success(), "{}", stderr(&output));
        stdout(&output)
    };
    assert_eq!(
        text("en"),
        stdout(&run(&[
            "plan",
            file("radio-hut").to_str().unwrap(),
            "--units",
            "si"
        ]))
    );
    for (language, heads) in [
        ("es", ["Hoja de ajustes", "Presión necesaria", "Qué pedir"]),
        (
            "fr",
            ["Fiche de réglage", "Pression nécessaire", "À commander"],
        ),
    ] {
        let text = text(language);
        for wanted in heads {
            assert!(text.contains(wanted), "{wanted} in {text}");
        }
        assert!(text.contains("8,0\u{a0}K"), "{text}");
        for left in ["Settings", "Pressure", " the ", " of "] {
            assert!(!text.contains(left), "{left} in {text}");
        }
    }
}

/// What stands in a column keeps its distance from the next, however long the words are.
#[test]
fn columns_stay_apart() {
    for language in ["en", "es", "fr"] {
        let path = file("radio-hut");
        let asked = ["plan", path.to_str().unwrap(), "--language", language];
        let text = stdout(&run(&asked));
        let rows = text.lines().filter(|line| line.ends_with("psig"));
        for row in rows {
            assert!(row.trim().contains("  "), "{row}");
        }
    }
}
