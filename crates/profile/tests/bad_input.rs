//! Whatever is typed at a field: a message at that field, and nothing typed is lost.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use std::path::Path;

use winterset_calc::settings::SettingsNote;
use winterset_calc::{Basis, Field, Problem as CalcProblem, Quantity};
use winterset_profile::{Assumed, Entry, FieldError, Problem, System, kind_of};

fn system(name: &str) -> System {
    let file =
        Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../../tests/systems/{name}.json"));
    System::from_json(&std::fs::read_to_string(file).unwrap()).unwrap()
}

const SYSTEMS: [&str; 5] = [
    "archive-vault",
    "brewery-cellar",
    "cheese-cave",
    "flower-cooler",
    "radio-hut",
];

/// The errors of a system with one field typed anew.
fn typed(field: Field, entry: Entry) -> Vec<FieldError> {
    let mut system = system("radio-hut");
    // Heat rejected stands in place of the cooling capacity.
    if field == Field::HeatRejected {
        system.set(Field::CoolingCapacity, Entry::default());
    }
    system.set(field, entry.clone());
    let errors = system.plan().map_or_else(|errors| errors, |_| Vec::new());
    let kept = System::from_json(&system.to_json().unwrap()).unwrap();
    if !entry.typed.is_empty() {
        assert_eq!(kept.entry(field), Some(&entry), "what was typed is kept");
    }
    errors
}

#[track_caller]
fn one_at(field: Field, errors: &[FieldError]) -> &Problem {
    match errors {
        [only] if only.field == field => &only.problem,
        other => panic!("{field:?}: {other:?}"),
    }
}

fn numbers() -> impl Iterator<Item = Field> {
    Field::ALL
        .iter()
        .copied()
        .filter(|field| kind_of(*field).is_some())
}

fn choices() -> impl Iterator<Item = Field> {
    Field::ALL
        .iter()
        .copied()
        .filter(|field| kind_of(*field).is_none() && *field != Field::Refrigerant)
}

#[test]
fn every_invented_system_has_a_plan() {
    for name in SYSTEMS {
        assert!(system(name).plan().is_ok(), "{name}");
    }
}

#[test]
fn text_is_no_number() {
    for field in numbers() {
        for text in ["abc", "12 or so", "NaN", "inf", "1e999", "--5", "💧"] {
            let errors = typed(field, Entry::new(text));
            assert!(
                matches!(
                    one_at(field, &errors),
                    Problem::NotANumber { .. } | Problem::UnknownUnit { .. }
                ),
                "{field:?} {text}"
            );
        }
    }
}

#[test]
fn absurd_numbers_are_outside_the_range() {
    for field in numbers() {
        for text in ["-99999", "99999999"] {
            let errors = typed(field, Entry::new(text));
            assert!(
                matches!(
                    one_at(field, &errors),
                    Problem::Calc(CalcProblem::OutOfRange { .. })
                ),
                "{field:?} {text}: {errors:?}"
            );
        }
    }
}

#[test]
fn a_unit_of_another_kind_is_refused() {
    for field in numbers() {
        let foreign = if field == Field::Voltage { "kW" } else { "V" };
        for entry in [
            Entry::new(format!("5 {foreign}")),
            Entry::with_unit("5", foreign),
        ] {
            let errors = typed(field, entry);
            assert!(
                matches!(one_at(field, &errors), Problem::UnknownUnit { .. }),
                "{field:?}: {errors:?}"
            );
        }
    }
}

#[test]
fn an_unknown_choice_is_refused() {
    for field in choices() {
        let errors = typed(field, Entry::new("something-else"));
        match one_at(field, &errors) {
            Problem::UnknownChoice { choices, .. } => assert!(!choices.is_empty()),
            Problem::Coefficients(_) => {}
            _ => panic!("{errors:?}"),
        }
    }
}

#[test]
fn a_blank_is_assumed_where_that_can_be_and_missed_where_not() {
    for field in Field::ALL.iter().copied() {
        let errors = typed(field, Entry::new("  "));
        match field {
            Field::Refrigerant | Field::CoolingCapacity | Field::OutdoorLow => {
                assert_eq!(one_at(field, &errors), &Problem::Missing);
            }
            // The capacity that it would stand in for is blank too.
            Field::HeatRejected => {
                assert_eq!(one_at(Field::CoolingCapacity, &errors), &Problem::Missing)
            }
            _ => assert_eq!(errors, [], "{field:?}"),
        }
    }
}

/// By hand: two stages of equal size leave a half, four a quarter.
#[test]
fn the_lowest_load_follows_from_the_control_until_it_is_entered() {
    let mut record = system(SYSTEMS[0]);
    let lowest = |record: &System| {
        let read = record.read().unwrap().lowest_load;
        let assumed = Assumed::Value(Quantity::Ratio(read.value));
        assert_eq!(
            record.assumed(Field::LowestLoad) == assumed,
            read.basis == Basis::Assumed
        );
        read.value
    };
    assert_eq!(lowest(&record), 1.0);
    assert_eq!(record.assumed(Field::CompressorStages), Assumed::LeftOut);
    record.set(Field::CapacityControl, Entry::new("stages"));
    assert_eq!(lowest(&record), 0.5);
    let two = Assumed::Value(Quantity::Count(2));
    assert_eq!(record.assumed(Field::CompressorStages), two);
    record.set(Field::CompressorStages, Entry::new("4"));
    assert_eq!(lowest(&record), 0.25);
    record.set(Field::LowestLoad, Entry::with_unit("40", "%"));
    assert_eq!(lowest(&record), 0.4);
    record.set(Field::LowestLoad, Entry::new(""));
    record.set(Field::CapacityControl, Entry::new("on-off"));
    assert_eq!(lowest(&record), 1.0);
}

#[test]
fn values_that_do_not_go_together_are_told_at_a_field() {
    let over = typed(Field::OverAmbient, Entry::with_unit("39", "K"));
    assert!(matches!(
        one_at(Field::OverAmbient, &over),
        Problem::Calc(CalcProblem::AboveCritical { .. })
    ));

    let still = typed(Field::Airflow, Entry::with_unit("100", "cfm"));
    assert!(matches!(
        one_at(Field::Airflow, &still),
        Problem::Calc(CalcProblem::TooLittleAir { .. })
    ));

    let between = typed(Field::RatedSpeed, Entry::new("2100"));
    assert!(matches!(
        one_at(Field::RatedSpeed, &between),
        Problem::Calc(CalcProblem::NoSynchronousSpeed { .. })
    ));

    let half = typed(Field::Fans, Entry::new("1.5"));
    assert_eq!(one_at(Field::Fans, &half), &Problem::NotWhole);

    let mut both = system("radio-hut");
    both.set(Field::HeatRejected, Entry::with_unit("12", "kW"));
    let errors = both.plan().unwrap_err();
    assert!(matches!(
        one_at(Field::HeatRejected, &errors),
        Problem::EitherOr { .. }
    ));
}

#[test]
fn a_need_above_the_known_point_is_remarked_on() {
    let mut hot = system("radio-hut");
    hot.set(Field::CompressorLowest, Entry::with_unit("58", "C"));
    assert_eq!(
        hot.plan().unwrap().settings.notes,
        [SettingsNote::NeedNearKnownPoint]
    );
}

#[test]
fn refrigerants_as_people_type_them() {
    for (text, good) in [
        ("410a", true),
        (" r-454B ", true),
        ("R-32/R-1234yf 68.9/31.1", true),
        ("R-32/R-1234yf (0.689/0.311)", true),
        ("R-32/R-1234ze(E) 70/30", true),
        ("r32 / r1234ze(e) (70 % / 30 %)", true),
        ("R-32/R-1234ze(E)(70/30)", true),
        ("R-32/R-125/R-1234yf/R-134a/R-1234ze(E) 26/26/20/21/7", true),
        ("R-32/R-1234yf 68.9/41.1", false),
        ("R-32/R-1234yf", false),
        ("R-32/R-1234yf 50", false),
        ("//// ////", false),
        ("water ice", false),
    ] {
        let errors = typed(Field::Refrigerant, Entry::new(text));
        assert_eq!(errors.is_empty(), good, "{text}: {errors:?}");
        assert!(errors.iter().all(|error| error.field == Field::Refrigerant));
    }
}

#[test]
fn all_errors_come_at_once() {
    let mut broken = system("radio-hut");
    broken.set(Field::Refrigerant, Entry::new("R-nothing"));
    broken.set(Field::Voltage, Entry::new("lots"));
    broken.set(Field::OutdoorLow, Entry::default());
    let fields: Vec<Field> = broken
        .plan()
        .unwrap_err()
        .into_iter()
        .map(|error| error.field)
        .collect();
    assert_eq!(
        fields,
        [Field::Refrigerant, Field::OutdoorLow, Field::Voltage]
    );
}
