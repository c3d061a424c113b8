//! The commands for reading, held by running the program.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{SYSTEMS, file, run, stderr, stdout};

#[test]
fn saturation_is_answered_in_the_units_chosen() {
    let output = run(&["saturation", "R-454B", "--temperature", "105F"]);
    assert!(output.status.success());
    let text = stdout(&output);
    assert!(text.contains("bubble") && text.contains("psig"), "{text}");
    let output = run(&["saturation", "R-454B", "--temperature", "lukewarm"]);
    assert!(!output.status.success());
    assert!(stderr(&output).contains("--temperature"));
}

#[test]
fn every_invented_system_has_a_plan_to_read() {
    for name in SYSTEMS {
        let file = file(name);
        let output = run(&["plan", file.to_str().unwrap(), "--units", "si"]);
        assert!(output.status.success(), "{name}");
        let text = stdout(&output);
        assert!(
            text.contains("Hold limits") && text.contains("°C"),
            "{name}: {text}"
        );
    }
}
