//! A message that names a bound names one that is taken when it is typed.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{bounds, either, in_every_language};
use winterset_calc::{Field, Problem as CalcProblem};
use winterset_profile::{Entry, Problem, System, kind_of};
use winterset_words::{PressureUnit, TemperatureUnit, Units, words};

#[test]
fn bounds_that_are_named_are_taken() {
    in_every_language(|| {
        for temperature in [TemperatureUnit::Fahrenheit, TemperatureUnit::Celsius] {
            let units = Units {
                temperature,
                pressure: PressureUnit::Psig,
            };
            for &field in Field::ALL {
                let (Some((low, high)), Some(kind)) = (field.range(), kind_of(field)) else {
                    continue;
                };
                let problem = Problem::Calc(CalcProblem::OutOfRange { low, high });
                let message = words().problem(field, &problem, units);
                for bound in bounds(&message) {
                    let mut system = System::new("", "");
                    let unit = units.unit(kind).token();
                    system.set(field, Entry::with_unit(&bound, unit));
                    let errors = system.read().unwrap_err();
                    let here: Vec<_> = errors.iter().filter(|error| error.field == field).collect();
                    assert!(here.is_empty(), "{field:?} {bound}: {here:?}");
                }
            }
        }
    });
}

/// The radio hut with one field typed anew: what is said of it, if anything.
fn said(field: Field, typed: &str, unit: &str, units: Units) -> Option<String> {
    let text = include_str!("../../../tests/systems/radio-hut.json");
    let mut system = System::from_json(text).unwrap();
    system.set(field, Entry::with_unit(typed, unit));
    let errors = system.plan().err()?;
    let [only] = &errors[..] else {
        panic!("{errors:?}");
    };
    assert_eq!(only.field, field);
    Some(words().problem(field, &only.problem, units))
}

#[test]
fn what_would_be_right_beside_the_other_answers_is_taken() {
    in_every_language(|| {
        for temperature in [TemperatureUnit::Fahrenheit, TemperatureUnit::Celsius] {
            let units = Units {
                temperature,
                pressure: PressureUnit::Psig,
            };
            let airflow = units.unit(winterset_profile::Kind::Airflow).token();
            let message = said(Field::Airflow, "100", airflow, units).unwrap();
            let (_, rest) = message
                .split_once(either("at least ", "al menos ", "au moins "))
                .unwrap();
            let (least, _) = rest.split_once(either(", or", ", o ", ", ou")).unwrap();
            assert_eq!(said(Field::Airflow, least, "", units), None, "{message}");
        }
    });
}
