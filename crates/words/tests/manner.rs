//! Every sentence keeps the manner: short, whole, calm.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{ALL_UNITS, assert_calm, assert_sentence, either, example, in_every_language, words};
use winterset_calc::input::Sensing;
use winterset_calc::need::NeedPart;
use winterset_calc::{Action, Caution, Field, Method, Rule};
use winterset_profile::{Entry, System, kind_of};

#[test]
fn reasons_and_help_are_sentences() {
    in_every_language(|| {
        for &field in Field::ALL {
            let found = words().field(field);
            assert_calm(found.ask);
            assert_sentence(found.help);
        }
        for &rule in Rule::ALL {
            let found = words().rule(rule);
            assert_calm(found.name);
            assert_sentence(found.reason);
            assert_calm(words().source(rule));
        }
        for found in [
            words().need_part(NeedPart::MeteringDevice),
            words().need_part(NeedPart::Compressor),
            words().need_part(NeedPart::LiquidLine),
            words().need_part(NeedPart::Evaporator),
            words().sensing(Sensing::CoilTemperature),
            words().sensing(Sensing::LiquidPressure),
        ]
        .into_iter()
        .chain(Method::ALL.map(|method| words().method(method)))
        {
            assert_calm(found.name);
            assert_sentence(found.reason);
        }
    });
}

/// What hurts, and what to do about it.
#[test]
fn cautions_say_what_to_do() {
    in_every_language(|| {
        for caution in [
            Caution::Roof,
            Caution::Mains,
            Caution::Capacitor,
            Caution::RotatingFan,
            Caution::Pressure,
            Caution::Flammable,
        ] {
            let found = words().caution(caution);
            assert_calm(found.title);
            assert_sentence(found.text);
            assert!(found.text.matches(". ").count() >= 1, "{}", found.text);
        }
    });
}

#[test]
fn verdicts_of_the_invented_sites_are_sentences() {
    in_every_language(|| {
        for text in [
            include_str!("../../../tests/systems/archive-vault.json"),
            include_str!("../../../tests/systems/brewery-cellar.json"),
            include_str!("../../../tests/systems/cheese-cave.json"),
            include_str!("../../../tests/systems/flower-cooler.json"),
            include_str!("../../../tests/systems/radio-hut.json"),
        ] {
            let plan = System::from_json(text).unwrap().plan().unwrap();
            for units in ALL_UNITS {
                let said = words().verdict(plan.verdict, &plan, units);
                assert_sentence(&said);
                let degree = units.unit(winterset_profile::Kind::Temperature).symbol();
                assert_eq!(said.matches(degree).count(), 2, "{said}");
            }
        }
        for action in Action::ALL {
            assert_sentence(words().action(action));
        }
    });
}

/// Whatever is wrong at a field, its message is a sentence that says what would be right.
#[test]
fn problems_say_what_would_be_right() {
    in_every_language(|| {
        for &field in Field::ALL {
            for typed in [
                "",
                "abc",
                "-99999",
                "1e7",
                "1,234",
                "5 furlongs",
                "1.5",
                "R-999/R-9 40/50",
            ] {
                let mut system = System::new("", "");
                if field == Field::HeatRejected {
                    system.set(Field::CoolingCapacity, Entry::new("5"));
                }
                system.set(field, Entry::new(typed));
                for error in system.read().unwrap_err() {
                    for units in ALL_UNITS {
                        let said = words().problem(error.field, &error.problem, units);
                        assert_sentence(&said);
                        let says_what = either(
                            ["Enter", "Choose", "Use", "must"],
                            ["ntroduzca", "Elija", "Use", "eben"],
                            ["aisissez", "Choisissez", "Utilisez", "oivent"],
                        )
                        .iter()
                        .any(|word| said.contains(word));
                        assert!(says_what, "{field:?} {typed}: {said}");
                    }
                }
            }
            // Every number has an example that would be taken.
            if kind_of(field).is_some() {
                for units in ALL_UNITS {
                    let problem = winterset_profile::Problem::NotANumber { typed: "x".into() };
                    let said = words().problem(field, &problem, units);
                    let example = example(&said);
                    let mut system = System::new("", "");
                    let unit = units.unit(kind_of(field).unwrap()).token();
                    system.set(field, Entry::with_unit(&example, unit));
                    let errors = system.read().unwrap_err();
                    assert!(errors.iter().all(|error| error.field != field), "{said}");
                }
            }
        }
    });
}
