//! What is said about own controllers keeps the manner, and says the value, the limit and what to use.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{ALL_UNITS, assert_calm, assert_sentence, either, in_every_language, words};
use uom::si::electric_current::ampere;
use uom::si::f64::{ElectricCurrent, Pressure, Time};
use uom::si::pressure::pascal;
use uom::si::time::second;
use winterset_calc::Quantity;
use winterset_calc::input::Sensing;
use winterset_calc::motor::Loading;
use winterset_calc::own_controller::{
    Effect, Finding, MotorOutput, Outside, Safety, Setting, Standing,
};
use winterset_profile::{Controller, ControllerField, ControllerProblem, Entry};

fn sea_level() -> Pressure {
    Pressure::new::<pascal>(101_325.0)
}

fn seconds(value: f64) -> Quantity {
    Quantity::Time(Time::new::<second>(value))
}

fn boost(wanted: f64, low: f64, high: f64, effect: Effect) -> Standing {
    Standing::Outside(Outside {
        wanted: seconds(wanted),
        low: seconds(low),
        high: seconds(high),
        nearest: (effect != Effect::CannotBeSet)
            .then(|| seconds(if wanted < low { low } else { high })),
        effect,
    })
}

fn said(setting: Setting, standing: Standing) -> String {
    let finding = Finding { setting, standing };
    let said = words()
        .controllers()
        .finding(&finding, ALL_UNITS[0], sea_level());
    assert_sentence(&said);
    said
}

fn loading(rating: f64) -> Loading {
    let amps = ElectricCurrent::new::<ampere>;
    Loading::new(&[amps(3.0), amps(4.0)], amps(rating)).unwrap()
}

#[test]
fn every_finding_is_whole() {
    in_every_language(|| {
        let outside = said(
            Setting::StartBoost,
            boost(3.0, 0.5, 2.0, Effect::MayNotStart),
        );
        for part in either(
            ["3.0\u{a0}s", "2.0\u{a0}s", "no higher", "stand still"],
            ["3,0\u{a0}s", "2,0\u{a0}s", "no pasa de", "quedar parado"],
            [
                "3,0\u{a0}s",
                "2,0\u{a0}s",
                "ne monte qu",
                "rester à l’arrêt",
            ],
        ) {
            assert!(outside.contains(part), "{outside}");
        }
        let mut seen = Vec::new();
        for effect in Effect::ALL {
            seen.push(said(Setting::StartBoost, boost(1.0, 2.0, 4.0, effect)));
        }
        for standing in [
            Standing::Inside,
            Standing::NotStated,
            Standing::NotANumber,
            Standing::NoSuchInput {
                wanted: Sensing::LiquidPressure,
                offered: vec![Sensing::CoilTemperature],
            },
            Standing::NoSuchOutput {
                wanted: MotorOutput::ALL.to_vec(),
                offered: vec![MotorOutput::Contact],
            },
            Standing::ShortOfReserve(loading(7.5)),
            Standing::Overloaded(loading(6.0)),
            Standing::Currents(Loading::new(&[], ElectricCurrent::new::<ampere>(1.0)).unwrap_err()),
        ] {
            seen.push(said(Setting::RatedCurrent, standing));
        }
        let count = seen.len();
        seen.sort();
        seen.dedup();
        assert_eq!(seen.len(), count, "two findings are told alike");
    });
}

#[test]
fn values_written_alike_are_told_apart() {
    in_every_language(|| {
        let text = said(
            Setting::StartBoost,
            boost(1.96, 2.0, 4.0, Effect::LongerBoost),
        );
        let close = either(
            "a little less than 2.0\u{a0}s",
            "un poco menos de 2,0\u{a0}s",
            "un peu moins de 2,0\u{a0}s",
        );
        assert!(text.contains(close), "{text}");
    });
}

#[test]
fn labels_and_help_keep_the_manner() {
    in_every_language(|| {
        let words = words().controllers();
        for &field in ControllerField::ALL {
            let found = words.field(field);
            assert_calm(found.ask);
            assert_sentence(found.help);
        }
        for output in MotorOutput::ALL {
            assert_calm(words.output(output));
        }
        for safety in [Safety::Safe, Safety::Check, Safety::Unsafe] {
            assert_calm(words.safety(safety));
            assert_sentence(words.whole(safety));
        }
        let labels = words.labels();
        for count in [1, 3] {
            assert_sentence(&(labels.limits_wrong)(count));
        }
        for sentence in [
            labels.own_note,
            labels.none_yet,
            labels.limits_note,
            labels.choose_note,
        ] {
            assert_sentence(sentence);
        }
    });
}

#[test]
fn problems_say_what_would_be_right() {
    in_every_language(|| {
        for typed in [
            ("x", "5"),
            ("5", ""),
            ("5", "1"),
            ("1,250", "5"),
            ("5 furlongs", "1e9"),
        ] {
            let mut controller = Controller::new("a");
            for (field, typed) in ControllerField::ALL
                .iter()
                .zip([typed.0, typed.1].iter().cycle())
            {
                controller.set(*field, Entry::new(*typed));
            }
            let (_, wrong) = controller.read(sea_level());
            assert!(!wrong.is_empty());
            for units in ALL_UNITS {
                for wrong in &wrong {
                    let scale = units.scale(wrong.field.measure());
                    let said = words()
                        .controllers()
                        .problem(&wrong.problem, scale, sea_level());
                    assert_sentence(&said);
                    let says_what = either(
                        ["Enter", "Use"],
                        ["ntroduzca", "Use"],
                        ["aisissez", "Utilisez"],
                    )
                    .iter()
                    .any(|word| said.contains(word));
                    assert!(says_what, "{:?} {typed:?}: {said}", wrong.field);
                }
            }
        }
    });
}

/// The lowest that a message names is taken as the highest when it is typed, however fine it is.
#[test]
fn bounds_that_are_named_are_taken() {
    in_every_language(|| {
        let spans = ControllerField::ALL.chunks_exact(2);
        for (span, (lowest, lower)) in spans.flat_map(|span| {
            let typed = [("40.26", "20"), ("12.4", "12"), ("0.4", "0.1")];
            typed.map(|typed| (span, typed))
        }) {
            let (low, high) = (span[0], span[1]);
            for scale in low.measure().scales() {
                let typed = |text: &str| Entry::with_unit(text, scale.token());
                let mut controller = Controller::new("a");
                controller.set(low, typed(lowest));
                controller.set(high, typed(lower));
                let said = |controller: &Controller| {
                    let (_, wrong) = controller.read(sea_level());
                    let wrong = wrong.into_iter().find(|wrong| wrong.field == high)?;
                    let ControllerProblem::BelowLowest { .. } = wrong.problem else {
                        return None;
                    };
                    Some(
                        words()
                            .controllers()
                            .problem(&wrong.problem, *scale, sea_level()),
                    )
                };
                // Where a unit makes these no limits of a controller, nothing is named.
                let Some(message) = said(&controller) else {
                    continue;
                };
                let (_, named) = message.rsplit_once(", ").unwrap();
                controller.set(high, typed(named.trim_end_matches('.')));
                let (_, wrong) = controller.read(sea_level());
                let wrong = wrong.iter().find(|wrong| wrong.field == high);
                assert_eq!(wrong, None, "{message}");
            }
        }
    });
}
