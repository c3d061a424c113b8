//! Running the program.
#![allow(dead_code)] // each test file uses its share

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

use serde_json::Value;

/// The invented sites.
pub const SYSTEMS: [&str; 5] = [
    "archive-vault",
    "brewery-cellar",
    "cheese-cave",
    "flower-cooler",
    "radio-hut",
];

pub fn program() -> Command {
    Command::new(env!("CARGO_BIN_EXE_winterset"))
}

pub fn run(arguments: &[&str]) -> Output {
    program().args(arguments).output().unwrap()
}

pub fn stdout(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).unwrap()
}

pub fn stderr(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).unwrap()
}

/// The file of an invented site's system.
pub fn file(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(format!("../../tests/systems/{name}.json"))
}

/// The record in that file.
pub fn system(name: &str) -> Value {
    serde_json::from_str(&std::fs::read_to_string(file(name)).unwrap()).unwrap()
}

/// What the batch form answers, a line each.
pub fn answers(input: &[u8]) -> Vec<Value> {
    written(input)
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect()
}

/// The same as it is written.
pub fn written(input: &[u8]) -> String {
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
    stdout(&output)
}

/// The one answer to one request.
pub fn answer(request: &Value) -> Value {
    let mut found = answers(request.to_string().as_bytes());
    assert_eq!(found.len(), 1);
    found.remove(0)
}

pub fn number(value: &Value, key: &str) -> f64 {
    value[key]
        .as_f64()
        .unwrap_or_else(|| panic!("{key} in {value}"))
}
