//! A language is whole: it says everything in words of its own, and leaves no English behind.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{ALL_UNITS, assert_calm, in_every_language, words};
use uom::si::electric_current::ampere;
use uom::si::f64::{ElectricCurrent, Pressure, ThermodynamicTemperature, Time};
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;
use winterset_calc::advice::{PartLoad, ReversingValve};
use winterset_calc::fitting::{Arrangement, Choice};
use winterset_calc::input::{
    Bearing, BelowMinimum, CapacityControl, Defrost, Duty, Metering, MotorKind, Reversing, Sensing,
    SheetUnits,
};
use winterset_calc::lever::Change;
use winterset_calc::motor::Loading;
use winterset_calc::need::NeedPart;
use winterset_calc::own_controller::{
    Effect, Finding, MotorOutput, Outside, Safety, Setting, Standing,
};
use winterset_calc::recommendation::Reason;
use winterset_calc::sensor::{SensorError, SensorValue};
use winterset_calc::weather::epw::{self, Column, EpwError};
use winterset_calc::winter_start::{StartError, StartInput};
use winterset_calc::{
    Action, Basis, Caution, Condition, Field, Given, Method, Quantity, Rule, SheetRule, plan,
};
use winterset_profile::share::ShareError;
use winterset_profile::{Answer, ControllerField, Entry, Measure, Sheet, System, Unit};
use winterset_words::{Language, RungValue, screen, symbol};

/// What is the same in two languages because the words are.
const ALIKE: &[&str] = &[
    "Motor",
    "Kelvin",
    "Kilopascal",
    "Pascal",
    "Sites",
    "Source",
    "Saturation",
    "Volume",
    "Angle",
    "Kilowatt",
    "Watt",
    "Litre",
    "Coefficient",
    "Signal",
    "contactor",
];

/// Titles and names in sources, which no language changes.
const TITLES: &[&str] = &[
    "U.S. Standard Atmosphere",
    "ASHRAE Handbook HVAC Systems and Equipment",
    "ASHRAE Handbook Refrigeration",
    "ASHRAE Handbook Fundamentals",
    "Compact Heat Exchangers",
];

/// Words that stand in nearly every English sentence and are none in the other languages.
const ENGLISH: &[&str] = &[
    "the", "of", "with", "and", "is", "are", "it", "from", "for", "below", "by", "which", "not",
    "this", "that", "at", "fan", "heat", "enter", "gauge",
];

/// Everything that needs no value, each with where it stands.
fn said() -> Vec<(String, String)> {
    let mut said = Vec::new();
    let mut put = |place: String, text: &str| said.push((place, text.to_owned()));
    for &field in Field::ALL {
        let found = words().field(field);
        put(format!("{field:?}, ask"), found.ask);
        put(format!("{field:?}, help"), found.help);
        for units in ALL_UNITS {
            put(
                format!("{field:?}, usual"),
                &words().usual(field, units).unwrap_or_default(),
            );
        }
        for key in keys(field) {
            put(format!("{field:?}, {key}"), words().choice(field, key));
        }
    }
    for &field in Field::ALL {
        let found = words().find(field);
        put(format!("{field:?}, find"), found.find);
        put(format!("{field:?}, typical"), found.typical);
    }
    for &rule in Rule::ALL {
        let found = words().help_on(rule);
        put(format!("{rule:?}, what"), found.what);
        put(format!("{rule:?}, measure"), found.measure);
        put(format!("{rule:?}, typical"), found.typical);
        let found = words().rule(rule);
        put(format!("{rule:?}, name"), found.name);
        put(format!("{rule:?}, reason"), found.reason);
        put(format!("{rule:?}, source"), words().source(rule));
    }
    for &rule in SheetRule::ALL {
        let found = words().worksheets().measured(rule);
        put(format!("{rule:?}, measured"), found.find);
        put(format!("{rule:?}, typical"), found.typical);
    }
    for value in RungValue::ALL {
        let found = words().help_on_rung(value);
        put(format!("{value:?}, what"), found.what);
        put(format!("{value:?}, measure"), found.measure);
        put(format!("{value:?}, typical"), found.typical);
    }
    put("help on a rung".to_owned(), words().help().on_a_rung);
    let named = [
        NeedPart::MeteringDevice,
        NeedPart::Compressor,
        NeedPart::LiquidLine,
        NeedPart::Evaporator,
        NeedPart::HotGasDefrost,
        NeedPart::HeatReclaim,
    ]
    .map(|part| words().need_part(part))
    .into_iter()
    .chain(Sensing::ALL.iter().map(|sensing| words().sensing(*sensing)))
    .chain(Method::ALL.map(|method| words().method(method)))
    .chain(
        [ReversingValve::InCooling, ReversingValve::InHeating].map(|valve| words().heating(valve)),
    )
    .chain(Change::ALL.map(|change| words().change(change)))
    .chain(
        [
            Condition::Holds,
            Condition::BelowNeed,
            Condition::Starved,
            Condition::LowPressureTrip,
            Condition::StalledFan,
            Condition::AboveEnvelope,
        ]
        .map(|condition| words().condition(condition)),
    );
    for (index, found) in named.enumerate() {
        put(format!("name {index}"), found.name);
        put(format!("reason {index}"), found.reason);
    }
    for caution in [
        Caution::Roof,
        Caution::Mains,
        Caution::Capacitor,
        Caution::RotatingFan,
        Caution::Pressure,
        Caution::Flammable,
    ] {
        put(
            format!("{caution:?}, title"),
            words().caution(caution).title,
        );
        put(format!("{caution:?}, text"), words().caution(caution).text);
    }
    for action in Action::ALL {
        put(format!("{action:?}"), words().action(action));
    }
    for reason in [
        Reason::HoldsByItself,
        Reason::HoldsSteadily,
        Reason::BaffleCloses,
        Reason::OnlyFloodingHolds,
        Reason::OnlySwitchingHolds,
        Reason::NothingHolds,
    ] {
        put(format!("{reason:?}"), words().reason(reason));
    }
    for basis in [Basis::Assumed, Basis::Entered, Basis::Computed] {
        put(format!("{basis:?}"), words().basis(basis));
    }
    for error in [
        ShareError::NewerForm,
        ShareError::Damaged,
        ShareError::TooLarge,
    ] {
        put(format!("{error:?}"), words().share_error(&error));
    }
    said.extend(labels(&format!("{:#?}", words().screen())));
    said.extend(labels(&format!("{:#?}", words().advice())));
    said.extend(labels(&format!("{:#?}", words().pictures())));
    said.extend(labels(&format!("{:#?}", words().phone())));
    said.extend(labels(&format!("{:#?}", words().worksheets().labels())));
    said.extend(labels(&format!(
        "{:#?}",
        words().worksheets().start_labels()
    )));
    said.extend(labels(&format!("{:#?}", words().controllers().labels())));
    said.extend(labels(&format!("{:#?}", words().weather())));
    said.extend(labels(&format!("{:#?}", words().sending())));
    said.extend(labels(&format!("{:#?}", words().paper())));
    said.extend(labels(&format!("{:#?}", words().help())));
    said.extend(labels(&format!("{:#?}", words().install())));
    said.extend(labels(&format!("{:#?}", words().fitting().labels())));
    said.extend(on_fitting());
    said.extend(on_controllers());
    said.extend(on_worksheets());
    said.extend(made());
    said
}

/// Parts, things and steps of fitting a method to one system, whatever its motor and arrangement.
fn on_fitting() -> Vec<(String, String)> {
    let text = include_str!("../../../tests/systems/flower-cooler.json");
    let mut input = System::from_json(text).unwrap().read().unwrap();
    let mut said = Vec::new();
    for &motor in MotorKind::ALL {
        input.motor = Given::entered(motor);
        let plan = plan(&input).unwrap();
        for method in Method::ALL {
            for arrangement in Arrangement::ALL {
                let fitting = plan.fitting(Choice {
                    method,
                    arrangement,
                });
                let place = |what: &dyn std::fmt::Debug| format!("{motor:?}, {method:?}, {what:?}");
                for step in &fitting.steps {
                    let work = words().fitting().work(step.work);
                    said.push((place(&step.work), work.to_owned()));
                    let how = words().fitting().how(step.work, ALL_UNITS[0]);
                    said.push((place(&step.work), how));
                }
                for item in fitting.circuit.items(2) {
                    said.push((place(&item), words().fitting().item(item)));
                }
                if let Some(wiring) = &fitting.wiring {
                    for part in wiring.line.iter().chain(&wiring.signals) {
                        said.push((place(part), words().fitting().part(*part, wiring.fans)));
                    }
                }
            }
        }
    }
    said
}

/// The texts among the fields of a table of labels, written out with a line a field.
fn labels(table: &str) -> Vec<(String, String)> {
    table
        .lines()
        .filter_map(|line| line.trim().split_once(": \""))
        .map(|(name, text)| (name.to_owned(), text.trim_end_matches("\",").to_owned()))
        .collect()
}

fn keys(field: Field) -> Vec<&'static str> {
    match field {
        Field::Duty => Duty::ALL.iter().map(|c| c.key()).collect(),
        Field::Motor => MotorKind::ALL.iter().map(|c| c.key()).collect(),
        Field::Bearing => Bearing::ALL.iter().map(|c| c.key()).collect(),
        Field::Metering => Metering::ALL.iter().map(|c| c.key()).collect(),
        Field::CapacityControl => CapacityControl::ALL.iter().map(|c| c.key()).collect(),
        Field::Defrost => Defrost::ALL.iter().map(|c| c.key()).collect(),
        Field::BelowMinimum => BelowMinimum::ALL.iter().map(|c| c.key()).collect(),
        Field::ReversingValve => Reversing::ALL.iter().map(|c| c.key()).collect(),
        Field::SheetUnits => SheetUnits::ALL.iter().map(|c| c.key()).collect(),
        Field::Sensing => Sensing::ALL.iter().map(|c| c.key()).collect(),
        _ => Vec::new(),
    }
}

fn on_controllers() -> Vec<(String, String)> {
    let words = words().controllers();
    let mut said = Vec::new();
    let mut put = |place: String, text: &str| said.push((place, text.to_owned()));
    for &field in ControllerField::ALL {
        put(format!("{field:?}, ask"), words.field(field).ask);
        put(format!("{field:?}, help"), words.field(field).help);
    }
    for output in MotorOutput::ALL {
        put(format!("{output:?}"), words.output(output));
    }
    for setting in [
        Setting::Input,
        Setting::FullSpeedPoint,
        Setting::ThrottlingRange,
        Setting::MinimumOutput,
        Setting::StartBoost,
        Setting::MotorOutput,
        Setting::SupplyVoltage,
        Setting::RatedCurrent,
    ] {
        put(format!("{setting:?}"), words.setting(setting));
    }
    for safety in [Safety::Safe, Safety::Check, Safety::Unsafe] {
        put(format!("{safety:?}"), words.safety(safety));
        put(format!("{safety:?}, whole"), words.whole(safety));
    }
    for (index, standing) in standings().into_iter().enumerate() {
        let finding = Finding {
            setting: Setting::StartBoost,
            standing,
        };
        let text = words.finding(&finding, ALL_UNITS[0], Pressure::default());
        put(format!("finding {index}"), &text);
    }
    said
}

/// How a setting may stand to a controller.
fn standings() -> Vec<Standing> {
    let seconds = |value| Quantity::Time(Time::new::<second>(value));
    let amps = ElectricCurrent::new::<ampere>;
    let loading = |rating| Loading::new(&[amps(3.0), amps(4.0)], amps(rating)).unwrap();
    let mut standings = vec![
        Standing::Inside,
        Standing::NotStated,
        Standing::NotANumber,
        Standing::ShortOfReserve(loading(7.5)),
        Standing::Overloaded(loading(6.0)),
        Standing::Currents(Loading::new(&[], amps(1.0)).unwrap_err()),
        Standing::NoSuchOutput {
            wanted: MotorOutput::ALL.to_vec(),
            offered: vec![],
        },
    ];
    standings.extend(Sensing::ALL.iter().map(|sensing| Standing::NoSuchInput {
        wanted: *sensing,
        offered: vec![],
    }));
    standings.extend(Effect::ALL.map(|effect| {
        Standing::Outside(Outside {
            wanted: seconds(1.0),
            low: seconds(2.0),
            high: seconds(4.0),
            nearest: (effect != Effect::CannotBeSet).then(|| seconds(2.0)),
            effect,
        })
    }));
    standings
}

/// What can be wrong with a weather file.
fn of_files() -> Vec<EpwError> {
    let mut errors: Vec<_> = ["", "a,b", "LOCATION,a,b,c,d,e,1,2,3,4"]
        .into_iter()
        .filter_map(|text| epw::read(text).err())
        .collect();
    errors.extend(
        [
            Column::Latitude,
            Column::Longitude,
            Column::TimeZone,
            Column::Elevation,
            Column::RecordsPerHour,
            Column::DryBulb,
            Column::RelativeHumidity,
            Column::Pressure,
            Column::WindSpeed,
        ]
        .map(|column| EpwError::NotANumber {
            line: 9,
            column,
            found: "x".to_owned(),
        }),
    );
    errors.extend([
        EpwError::TooFewColumns {
            line: 9,
            found: 3,
            needed: 22,
        },
        EpwError::OutOfRange {
            line: 1,
            column: Column::Latitude,
            found: 99.0,
            low: -90.0,
            high: 90.0,
        },
        EpwError::RecordsPerHour {
            line: 8,
            found: 7.0,
        },
        EpwError::LineTooLong {
            line: 1,
            longest: 65_536,
        },
        EpwError::TooManyRows {
            line: 9,
            most: 527_040,
        },
        EpwError::TooFewHours {
            found: 3,
            needed: 24,
        },
    ]);
    errors
}

/// What can be wrong with a sensor and with a winter start.
fn of_starts() -> Vec<String> {
    let words = words().worksheets();
    let sensors = [
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
    ];
    let not_above = |above| StartError::NotAbove {
        above,
        below: StartInput::Evaporating,
        than: ThermodynamicTemperature::new::<kelvin>(270.0),
        by: 1.0,
    };
    let out_of_range = |input| StartError::OutOfRange {
        input,
        value: 1.0,
        low: 2.0,
        high: 3.0,
    };
    let starts = [
        StartError::CutInBelowCutOut {
            cut_in: Pressure::default(),
            cut_out: Pressure::default(),
        },
        not_above(StartInput::Room),
        not_above(StartInput::Condensing),
        out_of_range(StartInput::LiquidAtStart),
        out_of_range(StartInput::LowSideVolume),
        StartError::NoParts,
    ];
    let sensors = sensors
        .iter()
        .map(|error| words.sensor_error(error).to_owned());
    let starts = starts
        .iter()
        .map(|error| words.start_error(error, ALL_UNITS[1], Pressure::default()));
    sensors.chain(starts).collect()
}

fn on_worksheets() -> Vec<(String, String)> {
    let words = words().worksheets();
    let mut said = Vec::new();
    let mut put = |place: String, text: &str| said.push((place, text.to_owned()));
    for &rule in SheetRule::ALL {
        put(format!("{rule:?}, name"), words.rule(rule).name);
        put(format!("{rule:?}, reason"), words.rule(rule).reason);
        put(format!("{rule:?}, source"), words.source(rule));
        put(format!("{rule:?}, equation"), words.equation(rule));
    }
    for &sheet in Sheet::ALL {
        put(format!("{sheet:?}, name"), words.sheet(sheet).name);
        put(format!("{sheet:?}, reason"), words.sheet(sheet).reason);
        for title in sheet.sections().iter().filter_map(|one| one.title) {
            put(format!("{title:?}"), words.title(title));
        }
        for question in sheet.questions() {
            put(format!("{question:?}, ask"), words.question(question).ask);
            put(format!("{question:?}, help"), words.question(question).help);
            if let Answer::Choice(keys) = question.answer() {
                for key in keys {
                    put(format!("{question:?}, {key}"), words.choice(question, key));
                }
            }
        }
    }
    for measure in Measure::ALL {
        put(format!("{measure:?}"), words.measure(*measure));
    }
    for scale in Measure::CONVERTIBLE.iter().flat_map(|one| one.scales()) {
        put(format!("{scale:?}"), words.unit(*scale));
    }
    said
}

/// Labels round a value, and what is said of a plan and of wrong answers.
fn made() -> Vec<(String, String)> {
    let t = screen();
    let mut said: Vec<(String, String)> = [
        (t.remove_site)("X"),
        (t.remove_system)("X"),
        (t.systems_count)(0),
        (t.systems_count)(1),
        (t.systems_count)(3),
        (t.usual)("1"),
        (t.change_sign)("X"),
        (t.unit_of)("X"),
        (t.instead)("X"),
        (t.gauge_note)("1"),
        (t.help_on)("X"),
        (t.planless_for)(1),
        (t.planless_for)(2),
        (t.replace_assumed)(2),
        (t.need_reason)("x", "1"),
        (t.cycled)("X"),
        (t.holds_to)("1"),
        (t.rung)("1", "2", "3", true),
        (t.rung)("1", "2", "3", false),
        (t.head_summary)("1", "2"),
        (t.fan_summary)("1"),
        (t.number_like)("1"),
        (t.unit_like)("x", "K"),
        (t.two_readings)("1", "2"),
        (t.from_to)("1", "2"),
        (t.below_critical)("1"),
        (t.at_lowest_load)("1"),
        (words().pictures().beside_at)("X", "1", "2", true),
        (words().pictures().known_at)("1"),
        (words().pictures().low_at)("1", "X"),
        (words().pictures().logarithmic)("x"),
        (words().pictures().reads)("1", "2"),
        (words().pictures().cycle_in_words)("X", "1", "2", "3"),
        (words().pictures().no_cycle)("X"),
        (words().phone().filled_within)("1"),
        (words().advice().shared_rung)("1", "X", "2", "Y", "3"),
        (words().advice().with_it)("1", "2"),
        (words().advice().give_or_take)("X", "1"),
        (words().advice().measure_first)("X"),
        (words().worksheets().labels().usual_range)("1", "2"),
        (words().worksheets().labels().gauge_note)("1"),
        (words().weather().counted)("", "1"),
        (words().weather().counted)("X", "1"),
        (words().weather().use_low)("1", 1),
        (words().weather().use_low)("1", 3),
        (words().weather().offer)("1"),
        (words().weather().not_a_year)("1 h"),
        (words().weather().methods_note)(""),
        (words().weather().methods_note)("X"),
        (words().sending().code)("X"),
        (words().sending().code_too_long)(2345, 1273),
        (words().sending().differences_note)("X"),
        (words().sending().keep_or_take)("X"),
        (words().paper().test_values_note)("X"),
        (words().controllers().labels().count)(0),
        (words().controllers().labels().count)(1),
        (words().controllers().labels().count)(3),
        (words().controllers().labels().wrong)(1),
        (words().controllers().labels().wrong)(3),
        (words().controllers().labels().remove_question)("X"),
        (words().controllers().labels().limits_wrong)(1),
        (words().controllers().labels().limits_wrong)(3),
    ]
    .into_iter()
    .chain(of_files().iter().map(|error| words().weather_error(error)))
    .chain(of_starts())
    .enumerate()
    .map(|(index, text)| (format!("label {index}"), text))
    .collect();
    for text in [
        include_str!("../../../tests/systems/archive-vault.json"),
        include_str!("../../../tests/systems/radio-hut.json"),
    ] {
        let plan = System::from_json(text).unwrap().plan().unwrap();
        let verdict = words().verdict(plan.verdict, &plan, ALL_UNITS[1]);
        said.push(("verdict".to_owned(), verdict));
        for &control in CapacityControl::ALL {
            let found = plan.part_load();
            for (share, limit) in [
                (1.0, found.limit),
                (0.5, found.limit),
                (0.5, plan.need.condensing),
            ] {
                let found = PartLoad {
                    control,
                    share,
                    limit,
                    ..found
                };
                let text = words().part_load(&found, ALL_UNITS[1]);
                said.push((format!("{control:?}, {share}"), text));
            }
        }
    }
    for &field in Field::ALL {
        for typed in ["", "abc", "-99999", "5 furlongs", "1.5", "R-999/R-9 40/50"] {
            let mut system = System::new("", "");
            system.set(field, Entry::new(typed));
            for error in system.read().unwrap_err() {
                let problem = words().problem(error.field, &error.problem, ALL_UNITS[1]);
                said.push((format!("{field:?}, {typed:?}"), problem));
            }
        }
    }
    said
}

fn all_in(language: Language) -> Vec<(String, String)> {
    language.speak();
    said()
}

/// Whether it holds words at all, rather than figures and units.
fn has_words(text: &str) -> bool {
    text.split(|c: char| !c.is_alphabetic())
        .any(|word| word.chars().count() > 3)
}

fn is_source(place: &str) -> bool {
    place.ends_with(", source")
}

fn is_equation(place: &str) -> bool {
    place.ends_with(", equation")
}

fn others() -> impl Iterator<Item = Language> {
    Language::ALL
        .into_iter()
        .filter(|language| *language != Language::English)
}

#[test]
fn nothing_is_said_twice_alike() {
    let english = all_in(Language::English);
    for language in others() {
        let other = all_in(language);
        assert_eq!(english.len(), other.len());
        let alike: Vec<_> = english
            .iter()
            .zip(&other)
            .filter(|(one, two)| one.1 == two.1 && has_words(&one.1))
            .filter(|(one, _)| !ALIKE.contains(&one.1.as_str()))
            .filter(|(one, _)| !is_source(&one.0) && !is_equation(&one.0))
            .map(|(one, _)| one)
            .collect();
        assert!(alike.is_empty(), "{language:?}: {alike:#?}");
    }
}

#[test]
fn no_english_word_is_left_in_another_language() {
    for language in others() {
        for (place, text) in all_in(language) {
            let bare = TITLES
                .iter()
                .fold(text.clone(), |text, title| text.replace(title, ""));
            let left = bare
                .split(|c: char| !c.is_alphabetic())
                .map(str::to_lowercase)
                .find(|word| ENGLISH.contains(&word.as_str()));
            assert_eq!(left, None, "{language:?}, {place}: {text}");
        }
    }
}

#[test]
fn every_choice_and_unit_has_its_words() {
    in_every_language(|| {
        for &field in Field::ALL {
            let unknown = words().choice(field, "no-such-key");
            for key in keys(field) {
                let found = words().choice(field, key);
                // Units in a row have no capital.
                if field != Field::SheetUnits {
                    assert_calm(found);
                }
                assert_ne!(found, unknown, "{field:?} {key}");
            }
        }
        for scale in Measure::CONVERTIBLE.iter().flat_map(|one| one.scales()) {
            let name = words().worksheets().unit(*scale);
            assert_ne!(name, scale.symbol());
        }
    });
}

/// A unit as it stands beside a number can be typed behind one.
#[test]
fn units_can_be_typed_as_they_are_written() {
    in_every_language(|| {
        for &unit in Unit::ALL.iter().filter(|unit| !unit.symbol().is_empty()) {
            let read = Unit::parse(unit.kind(), symbol(unit));
            let written = symbol(unit);
            assert_eq!(read.map(symbol), Some(written), "{unit:?}");
        }
    });
}

/// No label starts with a space, ends with one, or is left blank.
#[test]
fn labels_are_whole() {
    in_every_language(|| {
        for (place, text) in said().into_iter().filter(|(at, _)| !is_equation(at)) {
            assert_eq!(text.trim(), text, "{place}");
            assert!(
                !text.contains("  ") && !text.contains('!'),
                "{place}: {text}"
            );
            let may_be_blank = place.ends_with("usual");
            assert!(may_be_blank || !text.is_empty(), "{place}");
        }
    });
}
