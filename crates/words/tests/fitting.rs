//! What is said about fitting, and the help on numbers and questions, keeps the manner.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{ALL_UNITS, assert_calm, assert_sentence, in_every_language, words};
use winterset_calc::fitting::{Arrangement, Choice, CoilPlace, Fans, Item, Part, Tap, Work};
use winterset_calc::input::{MotorKind, Reversing, Sensing};
use winterset_calc::{Field, Given, Method, Rule, SheetRule, plan};
use winterset_profile::System;
use winterset_words::RungValue;

#[test]
fn help_is_sentences() {
    in_every_language(|| {
        for &rule in Rule::ALL {
            let found = words().help_on(rule);
            for text in [found.what, found.measure, found.typical] {
                assert_sentence(text);
            }
        }
        for &field in Field::ALL {
            let found = words().find(field);
            assert_sentence(found.find);
            assert_sentence(found.typical);
        }
        for value in RungValue::ALL {
            let found = words().help_on_rung(value);
            for text in [found.what, found.measure, found.typical] {
                assert_sentence(text);
            }
        }
        for &rule in SheetRule::ALL {
            let found = words().worksheets().measured(rule);
            assert_sentence(found.find);
            assert_sentence(found.typical);
        }
        let t = words().help();
        for label in [
            t.what,
            t.measure,
            t.typical,
            t.how_to_find,
            t.on_a_rung,
            t.find,
            t.blank,
        ] {
            assert_calm(label);
        }
        for sentence in [t.blank_is_not, t.blank_left_out, t.blank_worked_out] {
            assert_sentence(sentence);
        }
        assert_sentence(&(t.blank_is)("8.0 K"));
    });
}

/// Every step of every fitting of a system with each motor, each way of sensing and each reversing valve.
#[test]
fn steps_are_sentences() {
    in_every_language(|| {
        let text = include_str!("../../../tests/systems/flower-cooler.json");
        let mut input = System::from_json(text).unwrap().read().unwrap();
        for &motor in MotorKind::ALL {
            for &sensing in Sensing::ALL {
                for &reversing in Reversing::ALL {
                    input.motor = Given::entered(motor);
                    input.sensing = Given::entered(sensing);
                    input.reversing_valve = Given::entered(reversing);
                    let plan = plan(&input).unwrap();
                    for method in Method::ALL {
                        for arrangement in Arrangement::ALL {
                            let fitting = plan.fitting(Choice {
                                method,
                                arrangement,
                            });
                            for step in fitting.steps {
                                assert_calm(words().fitting().work(step.work));
                                for units in ALL_UNITS {
                                    assert_sentence(&words().fitting().how(step.work, units));
                                }
                            }
                        }
                    }
                }
            }
        }
        for place in [CoilPlace::Usual, CoilPlace::Moved(0.62), CoilPlace::Nowhere] {
            for work in [Work::StrapSensor(place), Work::FitSecond(Tap::Coil(place))] {
                assert_sentence(&words().fitting().how(work, ALL_UNITS[0]));
            }
        }
        let said = words()
            .fitting()
            .how(Work::StrapSensor(CoilPlace::Moved(0.62)), ALL_UNITS[0]);
        assert!(said.contains("38"), "{said}");
    });
}

const PARTS: [Part; 17] = [
    Part::Supply,
    Part::Disconnect,
    Part::Contactor,
    Part::FanContactor,
    Part::SpeedController,
    Part::FrequencyDrive,
    Part::Motor,
    Part::FirstMotor,
    Part::FurtherMotors,
    Part::Capacitor,
    Part::CoilSensor,
    Part::SecondCoilSensor,
    Part::PressureSensor,
    Part::SecondPressureSensor,
    Part::PressureSwitch,
    Part::SecondPressureSwitch,
    Part::ReversingValve,
];

/// Parts are named by words: no terminals, no colours of wires.
#[test]
fn parts_are_named_by_words_alone() {
    in_every_language(|| {
        let fans = [Fans::Alike(1), Fans::Alike(4), Fans::OneAndFurther(3)];
        let parts = PARTS
            .iter()
            .flat_map(|part| fans.map(|fans| words().fitting().part(*part, fans)));
        let items = [
            Item::HotGas,
            Item::ReversingValve,
            Item::Fans(1),
            Item::Fans(4),
            Item::SharedFans(4),
            Item::Baffle,
            Item::Coil,
            Item::SecondCoil,
            Item::Sensor(Part::CoilSensor),
            Item::FloodingValve,
            Item::Receiver,
            Item::Liquid,
        ]
        .map(|item| words().fitting().item(item));
        for name in parts.chain(items) {
            assert!(!name.trim().is_empty() && !name.ends_with('.'), "{name}");
            let first = name.chars().next().unwrap();
            assert!(first.is_lowercase() || first.is_numeric(), "{name}");
            for word in name.split(' ') {
                let shouted = word.chars().all(char::is_uppercase);
                assert!(!shouted, "{name}");
            }
        }
        // In one system no two things have one name.
        let mut names: Vec<String> = PARTS
            .iter()
            .map(|part| words().fitting().part(*part, Fans::Alike(1)))
            .collect();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), PARTS.len());
    });
}

#[test]
fn labels_of_fitting_keep_the_manner() {
    in_every_language(|| {
        let t = words().fitting().labels();
        for label in [t.fit, t.arrangement, t.places, t.wiring, t.in_words] {
            assert_calm(label);
        }
        for sentence in [t.note, t.nothing, t.capacitor_stays, t.defers] {
            assert_sentence(sentence);
        }
        for sentence in [
            (t.shown)("coil; receiver"),
            (t.passes)("supply; disconnect"),
            (t.steered)("drive", "sensor"),
            (t.beside)("controller"),
        ] {
            assert_sentence(&sentence);
        }
        for arrangement in Arrangement::ALL {
            assert_calm(words().fitting().arrangement(arrangement));
        }
        let install = words().install();
        for label in [
            install.title,
            install.install,
            install.dismiss,
            install.find_site,
            &(install.found)(3),
        ] {
            assert_calm(label);
        }
        for sentence in [
            install.why,
            install.by_hand,
            install.no_site,
            install.recent_first,
        ] {
            assert_sentence(sentence);
        }
    });
}
