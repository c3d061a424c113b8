//! What every sentence is held to.
#![allow(dead_code, clippy::panic)] // each test file uses its share; a broken shape should stop its test

use winterset_words::{Language, PressureUnit, TemperatureUnit, Units, Words};

/// The words of the language spoken.
pub fn words() -> &'static dyn Words {
    winterset_words::words()
}

/// Runs a test once in every language.
pub fn in_every_language(test: impl Fn()) {
    for language in Language::ALL {
        language.speak();
        test();
    }
}

/// What stands for this in the language spoken, for words that a message must hold.
pub fn either<T>(english: T, spanish: T, french: T) -> T {
    match Language::spoken() {
        Language::English => english,
        Language::Spanish => spanish,
        Language::French => french,
    }
}

/// The two values of a message that names a range, as a person would type them.
#[track_caller]
pub fn bounds(message: &str) -> [String; 2] {
    let shape = (winterset_words::screen().from_to)("{", "{");
    let parts: Vec<&str> = shape.split('{').collect();
    let [head, middle, tail] = parts[..] else {
        panic!("{shape}");
    };
    let (low, high) = message
        .strip_prefix(head)
        .and_then(|rest| rest.strip_suffix(tail))
        .and_then(|body| body.split_once(middle))
        .unwrap_or_else(|| panic!("{message}"));
    [low.to_owned(), high.to_owned()]
}

/// The example of a message that asks for a number.
#[track_caller]
pub fn example(message: &str) -> String {
    let shape = (winterset_words::screen().number_like)("{");
    let (head, tail) = shape.split_once('{').unwrap_or_else(|| panic!("{shape}"));
    let found = message
        .strip_prefix(head)
        .and_then(|rest| rest.strip_suffix(tail));
    found.unwrap_or_else(|| panic!("{message}")).to_owned()
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
        text.starts_with(|c: char| c.is_uppercase()
            || c.is_numeric()
            || ['“', '«', '¿'].contains(&c)),
        "no capital: {text}"
    );
    let shouted = text
        .split(|c: char| !c.is_alphanumeric())
        // A publisher's name is written as it is.
        .filter(|word| !["ASHRAE", "NAMUR"].contains(word))
        .find(|word| word.len() > 4 && word.chars().all(|c| c.is_ascii_uppercase()));
    assert_eq!(shouted, None, "{text}");
}
