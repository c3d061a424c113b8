//! What is said on worksheets keeps the manner: short, whole, calm.
#![allow(clippy::unwrap_used)] // a broken fixture should stop its test

use uom::si::f64::Pressure;
use uom::si::pressure::pascal;
use winterset_calc::SheetRule;
use winterset_profile::{Amount, AmountProblem, Answer, Entry, Sheet, read_amount};
use winterset_words::{Language, PressureUnit, TemperatureUnit, Units, WorksheetWords};

fn words() -> &'static dyn WorksheetWords {
    Language::English.words().worksheets()
}

#[track_caller]
fn assert_calm(text: &str) {
    assert!(!text.contains('!') && !text.contains("  "), "{text}");
    let starts_well = |c: char| c.is_uppercase() || c.is_numeric() || c == '“';
    assert!(text.starts_with(starts_well), "{text}");
}

#[track_caller]
fn assert_sentence(text: &str) {
    assert!(text.ends_with('.'), "no full stop: {text}");
    assert_calm(text);
}

#[test]
fn names_reasons_and_help_are_whole() {
    for rule in SheetRule::ALL {
        let said = words().rule(*rule);
        assert_calm(said.name);
        assert!(said.reason.ends_with('.'), "{}", said.reason);
        assert_calm(rule.source());
    }
    for sheet in Sheet::ALL {
        let said = words().sheet(*sheet);
        assert_calm(said.name);
        assert_sentence(said.reason);
        for section in sheet.sections() {
            section
                .title
                .into_iter()
                .for_each(|title| assert_calm(words().title(title)));
        }
        for question in sheet.questions() {
            let said = words().question(question);
            assert_calm(said.ask);
            assert!(said.help.ends_with('.'), "{}", said.help);
            if let Answer::Choice(keys) = question.answer() {
                for key in keys {
                    assert_ne!(words().choice(question, key), "Unknown choice", "{key}");
                }
            }
        }
    }
}

/// A message that names a bound names one that is taken when it is typed.
#[test]
fn bounds_that_are_named_are_taken() {
    let atmosphere = Pressure::new::<pascal>(101_325.0);
    for (temperature, pressure) in [
        (TemperatureUnit::Fahrenheit, PressureUnit::Psig),
        (TemperatureUnit::Celsius, PressureUnit::Bar),
        (TemperatureUnit::Celsius, PressureUnit::Kilopascal),
    ] {
        let units = Units {
            temperature,
            pressure,
        };
        for question in Sheet::ALL.iter().flat_map(|sheet| sheet.questions()) {
            let Answer::Number(number) = question.answer() else {
                continue;
            };
            let (measure, (low, high)) = (number.measure, number.range);
            let problem = AmountProblem::OutOfRange {
                low: Amount::new(measure, low),
                high: Amount::new(measure, high),
            };
            for scale in measure.scales() {
                let said = words().amount_problem(&problem, *scale, atmosphere);
                let body = said.strip_prefix("Enter a value from ").unwrap();
                let (low, high) = body.trim_end_matches('.').split_once(" to ").unwrap();
                for bound in [low, high] {
                    let read = read_amount(
                        measure,
                        &Entry::new(bound),
                        units.scale(measure),
                        number.range,
                        atmosphere,
                    );
                    assert!(read.is_ok(), "{question:?} {scale:?} {bound}: {read:?}");
                }
            }
        }
    }
}
