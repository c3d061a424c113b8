//! What is said on worksheets keeps the manner: short, whole, calm.
#![allow(clippy::unwrap_used)] // a broken fixture should stop its test

mod common;

use common::{ALL_UNITS, assert_calm, assert_sentence, bounds, in_every_language};
use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_calc::SheetRule;
use winterset_calc::sensor::{SensorError, SensorValue};
use winterset_calc::winter_start::{StartError, StartInput};
use winterset_profile::{Amount, AmountProblem, Answer, Entry, Sheet, read_amount};
use winterset_words::{PressureUnit, TemperatureUnit, Units, WorksheetWords};

fn words() -> &'static dyn WorksheetWords {
    winterset_words::words().worksheets()
}

#[test]
fn names_reasons_and_help_are_whole() {
    in_every_language(|| {
        for rule in SheetRule::ALL {
            let said = words().rule(*rule);
            assert_calm(said.name);
            assert!(said.reason.ends_with('.'), "{}", said.reason);
            assert_calm(words().source(*rule));
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
                        let unknown = words().choice(question, "no-such-key");
                        assert_ne!(words().choice(question, key), unknown, "{key}");
                    }
                }
            }
        }
    });
}

#[test]
fn starts_and_sensors_are_told_in_sentences() {
    in_every_language(|| {
        let labels = words().start_labels();
        for reason in [
            labels.open_reason,
            labels.short_reason,
            labels.signal_low_reason,
            labels.signal_high_reason,
            labels.closed_reason,
            labels.as_it_was_reason,
            labels.missing_reason,
            labels.none_needed_reason,
            labels.longer_reason,
            labels.never_reason,
        ] {
            assert_sentence(reason);
        }
        for head in [labels.e24, labels.e96, labels.e24_shows, labels.e96_shows] {
            assert_calm(head);
        }
        for head in [labels.closed, labels.missing] {
            assert_calm(head);
        }
        for error in [
            SensorError::OutOfRange {
                what: SensorValue::RangeLow,
                given: 1.0,
                low: 2.0,
                high: 3.0,
            },
            SensorError::PointsTooClose {
                apart: 1.0,
                needed: 5.0,
            },
            SensorError::NotFalling,
        ] {
            assert_sentence(words().sensor_error(&error));
        }
        let cold = ThermodynamicTemperature::new::<kelvin>(261.3);
        let not_above = |above| StartError::NotAbove {
            above,
            below: StartInput::Evaporating,
            than: cold,
            by: 1.0,
        };
        let out_of_range = |input| StartError::OutOfRange {
            input,
            value: 1.0,
            low: 2.0,
            high: 3.0,
        };
        for error in [
            StartError::CutInBelowCutOut {
                cut_in: Pressure::default(),
                cut_out: Pressure::default(),
            },
            not_above(StartInput::Room),
            not_above(StartInput::Condensing),
            out_of_range(StartInput::LiquidAtStart),
            out_of_range(StartInput::HeatCapacity),
            StartError::NoParts,
        ] {
            for units in ALL_UNITS {
                assert_sentence(&words().start_error(&error, units, Pressure::default()));
            }
        }
    });
}

/// A message that names a bound names one that is taken when it is typed.
#[test]
fn bounds_that_are_named_are_taken() {
    in_every_language(|| {
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
                    for bound in bounds(&said) {
                        let read = read_amount(
                            measure,
                            &Entry::new(&bound),
                            units.scale(measure),
                            number.range,
                            atmosphere,
                        );
                        assert!(read.is_ok(), "{question:?} {scale:?} {bound}: {read:?}");
                    }
                }
            }
        }
    });
}
