//! What is said about the advice of a plan keeps the manner of everything else, with every value there is.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{ALL_UNITS, assert_calm, assert_sentence, either, in_every_language, words};
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::electric_current::ampere;
use uom::si::electric_potential::volt;
use uom::si::energy::kilowatt_hour;
use uom::si::f64::{
    AngularVelocity, ElectricCurrent, ElectricPotential, Energy, Mass, Power, Pressure,
    TemperatureInterval, ThermodynamicTemperature, Time, Velocity, Volume,
};
use uom::si::mass::kilogram;
use uom::si::power::watt;
use uom::si::pressure::kilopascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::{hour, second};
use uom::si::velocity::meter_per_second;
use uom::si::volume::liter;
use winterset_calc::advice::{
    FanMotorAdvice, FanStart, Hottest, LoadEffect, LowestSpeed, PartLoad, Remedy,
};
use winterset_calc::free_cooling::Outcome;
use winterset_calc::input::{CapacityControl, Duty, MotorKind};
use winterset_calc::lever::Change;
use winterset_calc::parts_list::{OutputKind, Part, Sensed};
use winterset_calc::recommendation::Reason;
use winterset_calc::sensor_place::{Reason as PlaceReason, When};
use winterset_calc::settings::SettingsNote;
use winterset_calc::winter_start::{BypassOutcome, Persists};
use winterset_calc::{Condition, Method};

fn sea_level() -> Pressure {
    Pressure::new::<kilopascal>(101.325)
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn pressure(kilopascals: f64) -> Pressure {
    Pressure::new::<kilopascal>(kilopascals)
}

#[test]
fn reasons_changes_and_conditions_are_sentences() {
    in_every_language(|| {
        for reason in [
            Reason::HoldsByItself,
            Reason::HoldsSteadily,
            Reason::BaffleCloses,
            Reason::OnlyFloodingHolds,
            Reason::OnlySwitchingHolds,
            Reason::NothingHolds,
        ] {
            assert_sentence(words().reason(reason));
        }
        let changes = Change::ALL.map(|change| words().change(change));
        let conditions = [
            Condition::Holds,
            Condition::BelowNeed,
            Condition::Starved,
            Condition::LowPressureTrip,
            Condition::StalledFan,
            Condition::AboveEnvelope,
        ]
        .map(|condition| words().condition(condition));
        for found in changes.into_iter().chain(conditions) {
            assert_calm(found.name);
            assert_sentence(found.reason);
        }
    });
}

#[test]
fn part_load_is_sentences_with_the_share_and_both_limits() {
    in_every_language(|| {
        for &control in CapacityControl::ALL {
            for method in Method::ALL {
                let part_load = |share, limit| PartLoad {
                    control,
                    share,
                    method,
                    limit: celsius(limit),
                    full_load: celsius(-31.0),
                };
                let [_, si] = ALL_UNITS;
                let rises = part_load(0.25, -12.0);
                assert_eq!(rises.effect(), LoadEffect::Rises);
                let said = words().part_load(&rises, si);
                assert_sentence(&said);
                for part in ["25", "12", "31"] {
                    assert!(said.contains(part), "{said}");
                }
                let stays = part_load(0.25, -31.0);
                assert_eq!(stays.effect(), LoadEffect::Stays);
                let said = words().part_load(&stays, si);
                assert_sentence(&said);
                assert!(said.contains("25") && said.contains("31"), "{said}");
                assert!(said.matches(". ").count() == 1, "{said}");
                let whole = part_load(1.0, -31.0);
                let said = words().part_load(&whole, si);
                assert_sentence(&said);
                let cycles = whole.effect() == LoadEffect::Cycles;
                assert_eq!(cycles, control == CapacityControl::OnOff);
                assert_eq!(said.contains("31"), !cycles, "{said}");
            }
        }
    });
}

#[test]
fn labels_are_calm() {
    in_every_language(|| {
        let labels = words().advice();
        for head in [
            labels.methods,
            labels.lowers_need,
            labels.order,
            labels.sensor_place,
            labels.winter_start,
            labels.fan_motor,
            labels.compressor_off,
            labels.accuracy,
            labels.recommended,
        ] {
            assert_calm(head);
            assert!(!head.ends_with('.'), "{head}");
        }
        for note in [
            labels.methods_note,
            labels.nothing_lowers,
            labels.nothing_to_order,
            labels.place_does,
        ] {
            assert_sentence(note);
        }
        assert_sentence(&(labels.give_or_take)("Speed control", "3 K"));
        assert_sentence(&(labels.measure_first)("Evaporating temperature"));
    });
}

fn parts() -> Vec<Part> {
    let amps = ElectricCurrent::new::<ampere>;
    let supply = ElectricPotential::new::<volt>(230.0);
    let coil = Sensed::Coil {
        lowest: celsius(10.0),
        highest: celsius(55.0),
    };
    let line = Sensed::Pressure {
        lowest: pressure(800.0),
        highest: pressure(2400.0),
    };
    let controller = |output, current, input| Part::Controller {
        output,
        current,
        supply,
        input,
    };
    vec![
        Part::Motor {
            from: MotorKind::PermanentSplitCapacitor,
            to: MotorKind::ElectronicallyCommutated,
            count: 2,
        },
        controller(OutputKind::PhaseCut, Some(amps(3.21)), coil),
        controller(OutputKind::Signal, None, line),
        controller(OutputKind::Frequency, Some(amps(6.4)), line),
        Part::PressureSwitch {
            group: 1,
            on: pressure(1800.0),
            off: pressure(1400.0),
        },
        Part::Contactor {
            group: 1,
            current: amps(1.87),
            supply,
        },
        Part::WindBaffle,
        Part::FloodingValve {
            setting: pressure(1200.0),
        },
        Part::Receiver {
            volume: Volume::new::<liter>(8.7),
        },
        Part::ExtraCharge {
            mass: Mass::new::<kilogram>(4.3),
        },
        Part::CrankcaseHeater {
            power: Power::new::<watt>(41.0),
        },
        Part::LowPressureBypass {
            time: Time::new::<second>(92.3),
        },
        Part::BalancedPortValve,
    ]
}

#[test]
fn every_part_is_named_with_what_it_must_do() {
    in_every_language(|| {
        for units in ALL_UNITS {
            for part in parts() {
                let ordered = words().part(&part, units, sea_level());
                assert_calm(&ordered.name);
                let value = &ordered.value;
                assert!(!value.is_empty() && !value.ends_with('.'), "{value}");
                assert!(!value.contains("  "), "{value}");
            }
        }
    });
}

/// A rating is never written as less than is asked for.
#[test]
fn ratings_are_rounded_up() {
    in_every_language(|| {
        let [us, _] = ALL_UNITS;
        let [_, controller, ..] = &parts()[..] else {
            panic!("no controller");
        };
        let value = words().part(controller, us, sea_level()).value;
        assert!(
            value.contains(either(
                "at least 3.21\u{a0}A",
                "al menos 3,21\u{a0}A",
                "au moins 3,21\u{a0}A"
            )),
            "{value}"
        );
        let timer = Part::LowPressureBypass {
            time: Time::new::<second>(92.3),
        };
        let value = words().part(&timer, us, sea_level()).value;
        assert!(value.contains("93\u{a0}s"), "{value}");
    });
}

#[test]
fn starts_in_the_cold_are_sentences() {
    in_every_language(|| {
        let (lowest, at_end) = (pressure(180.0), pressure(240.0));
        let first = Time::new::<second>(4.0);
        let never = |persists| BypassOutcome::NeverRecovers {
            first,
            lowest,
            at_end,
            persists,
        };
        for units in ALL_UNITS {
            for outcome in [
                BypassOutcome::NeverTrips { lowest },
                BypassOutcome::Trips {
                    first,
                    until: Time::new::<second>(88.0),
                    lowest,
                },
                never(Persists::StillRising),
                never(Persists::Settled),
            ] {
                assert_sentence(&words().bypass(&outcome, units, sea_level()));
            }
        }
    });
}

/// A place that does not do comes with what does; a sensor is never told to stay where it is.
#[test]
fn refused_places_say_what_to_do() {
    in_every_language(|| {
        for units in ALL_UNITS {
            for when in [When::Design, When::Low] {
                for reason in [
                    PlaceReason::Superheated {
                        when,
                        short_by: 0.0004,
                    },
                    PlaceReason::Liquid {
                        when,
                        beyond_by: 0.12,
                    },
                    PlaceReason::OffByGlide {
                        when,
                        quality: 0.9,
                        off: TemperatureInterval::new::<kelvin_interval>(-1.6),
                    },
                ] {
                    let said = words().place(&reason, units);
                    assert_sentence(&said);
                    assert!(!said.contains(" 0\u{a0}%"), "{said}");
                    assert!(!said.contains('\u{2212}'), "{said}");
                    assert!(
                        either(
                            ["ense pressure", "Move"],
                            ["ida la presión", "Muévalo"],
                            ["esurez la pression", "Déplacez"],
                        )
                        .iter()
                        .any(|word| said.contains(word)),
                        "{said}"
                    );
                }
            }
        }
    });
}

#[test]
fn a_compressor_that_may_stay_off_is_a_sentence() {
    in_every_language(|| {
        let (up_to, time) = (celsius(16.0), Time::new::<hour>(3120.0));
        let energy = Energy::new::<kilowatt_hour>(4210.0);
        for units in ALL_UNITS {
            for &duty in Duty::ALL {
                for outcome in [
                    Outcome::Saves {
                        up_to,
                        time,
                        share: 0.36,
                        energy,
                    },
                    Outcome::SavesNothing {
                        up_to,
                        time,
                        extra: energy,
                    },
                    Outcome::NeverColdEnough {
                        up_to,
                        coldest: celsius(18.0),
                    },
                ] {
                    assert_sentence(&words().off(&outcome, duty, units));
                }
            }
        }
    });
}

#[test]
fn a_fan_motor_in_the_cold_is_sentences() {
    in_every_language(|| {
        fan_motor_sentences();
    });
}

fn fan_motor_sentences() {
    let seconds = Time::new::<second>;
    let (time, by_wind) = (seconds(1.3), seconds(0.2));
    let hottest = |lowest_speed| Hottest {
        speed: AngularVelocity::new::<revolution_per_minute>(800.0),
        output: 0.64,
        loss: 2.1,
        lowest_speed,
    };
    let advice = |start, wind: Option<f64>| FanMotorAdvice {
        start,
        starts_from: 0.44,
        starts_at_minimum: false,
        wind: wind.map(Velocity::new::<meter_per_second>),
        held: None,
        hottest: hottest(LowestSpeed::Below),
        remedies: Vec::new(),
    };
    let [us, si] = ALL_UNITS;
    let within = advice(FanStart::WithinBoost { time, by_wind }, Some(4.0));
    // 4 m/s is 8.9 miles an hour (NIST SP 811: 1 mi/h is 0.44704 m/s).
    let wind = |units| words().fan_start(&within, units);
    let (us, si) = (wind(us), wind(si));
    assert!(
        us.contains(either("8.9\u{a0}mph", "8,9\u{a0}mph", "8,9\u{a0}mph")),
        "{us}"
    );
    assert!(
        si.contains(either("4.0\u{a0}m/s", "4,0\u{a0}m/s", "4,0\u{a0}m/s")),
        "{si}"
    );
    for units in ALL_UNITS {
        for found in [
            within.clone(),
            advice(FanStart::LongerBoost { time, by_wind }, Some(0.0)),
            advice(FanStart::Never, None),
        ] {
            assert_sentence(&words().fan_start(&found, units));
            for remedy in [
                Remedy::FullOutputAtStart,
                Remedy::LongerBoost,
                Remedy::Baffle,
                Remedy::KeepTurning,
            ] {
                assert_sentence(&words().fan_remedy(remedy, &found, units));
            }
        }
        for lowest in [LowestSpeed::Below, LowestSpeed::Inside, LowestSpeed::Above] {
            assert_sentence(&words().fan_heat(&hottest(lowest), units));
        }
        for note in [
            SettingsNote::BoostTooShort {
                wanted: seconds(7.4),
                used: seconds(5.0),
            },
            SettingsNote::WillNotStart,
            SettingsNote::AboveEnvelope {
                from: celsius(41.0),
                highest: celsius(60.0),
            },
        ] {
            assert_sentence(&words().note(note, units));
        }
    }
}
