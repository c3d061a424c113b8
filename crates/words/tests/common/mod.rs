//! What every sentence is held to.
#![allow(dead_code)] // each test file uses its share

use winterset_words::{Language, PressureUnit, TemperatureUnit, Units, Words};

pub fn words() -> &'static dyn Words {
    Language::English.words()
}

pub const ALL_UNITS: [Units; 2] = [
    Units {
        temperature: TemperatureUnit::Fahrenheit,
        pressure: PressureUnit::Psig,
    },
    Units {
        temperature: TemperatureUnit::Celsius,
        pressure: PressureUnit::Bar,
    },
];

#[track_caller]
pub fn assert_sentence(text: &str) {
    assert!(text.ends_with('.'), "no full stop: {text}");
    assert_calm(text);
}

#[track_caller]
pub fn assert_calm(text: &str) {
    assert!(!text.trim().is_empty());
    assert!(!text.contains('!'), "exclamation mark: {text}");
    assert!(!text.contains("  "), "two spaces: {text}");
    assert!(
        text.starts_with(|c: char| c.is_uppercase() || c.is_numeric() || c == '“'),
        "no capital: {text}"
    );
    let shouted = text
        .split(|c: char| !c.is_alphanumeric())
        // A publisher's name is written as it is.
        .filter(|word| *word != "ASHRAE")
        .find(|word| word.len() > 4 && word.chars().all(|c| c.is_ascii_uppercase()));
    assert_eq!(shouted, None, "{text}");
}
