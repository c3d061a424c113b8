//! Sensor place, part load, free cooling and parts list: laws that hold for every plausible system.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Mass, Power, Pressure, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use uom::si::{
    electric_current::ampere, electric_potential::volt, energy::watt_hour, mass::kilogram,
    power::watt, pressure::kilopascal, temperature_interval::kelvin as kelvin_interval,
    thermodynamic_temperature::degree_celsius, thermodynamic_temperature::kelvin, time::hour,
};
use winterset_calc::Given;
use winterset_calc::compressor::capacity_steps::CapacitySteps;
use winterset_calc::free_cooling::{self, Bin, FreeCooling};
use winterset_calc::input::MotorKind;
use winterset_calc::part_load::{self, Extras, Governing, HeatReclaim, HotGasDefrost};
use winterset_calc::parts_list::{Facts, FanControl, Flooding, Group, Part, USUAL_RESERVE};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::sensor_place::{Condition, Outcome, Reason, Shares, judge, usual_tolerance};

const REFRIGERANTS: [&str; 5] = ["R-134a", "R-410A", "R-407C", "R-448A", "R-290"];

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn span(kelvins: f64) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(kelvins)
}

fn condition() -> impl Strategy<Value = Condition> {
    (0.0..1.0_f64, 0.0..1.0_f64, 10.0..55.0_f64).prop_map(|(a, b, degrees)| {
        let (from, to) = (a.min(b), a.max(b));
        Condition {
            shares: Shares {
                desuperheating: from,
                condensing: to - from,
                liquid: 1.0 - to,
            },
            condensing: celsius(degrees),
        }
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn a_place_is_confirmed_only_in_the_band(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        place in 0.0..1.0_f64,
        design in condition(),
        low in condition(),
    ) {
        let refrigerant = Refrigerant::named(name).unwrap();
        let ask = |place| judge(&refrigerant, place, design, low, usual_tolerance()).unwrap();
        let answer = ask(place);
        let in_band = answer.band.is_some_and(|band| band.from <= place && place <= band.to);
        match answer.outcome {
            Outcome::Confirmed { design: warm, low: cold } => {
                prop_assert!(in_band);
                for reading in [warm, cold] {
                    prop_assert!((0.0..=1.0).contains(&reading.quality));
                    prop_assert!(reading.off.get::<kelvin_interval>().abs() <= 1.0);
                }
                prop_assert!(warm.temperature <= design.condensing + span(1e-6));
                prop_assert!(cold.temperature <= low.condensing + span(1e-6));
            }
            Outcome::Refused { reasons } => {
                prop_assert!(!reasons.is_empty());
                let by_glide = reasons.iter().all(|reason| matches!(reason, Reason::OffByGlide { .. }));
                prop_assert_eq!(in_band, by_glide);
            }
        }
        prop_assert_eq!(answer.band.is_some(), answer.best.is_some());
        if let (Some(band), Some(best)) = (answer.band, answer.best) {
            prop_assert!(band.from <= best && best <= band.to);
            // What is best for both is no worse than what the place gives.
            if matches!(ask(place).outcome, Outcome::Confirmed { .. }) {
                let confirmed = matches!(ask(best).outcome, Outcome::Confirmed { .. });
                prop_assert!(confirmed);
            }
        }
    }

    #[test]
    fn extras_only_ever_ask_for_more(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        wanted in 5.0..60.0_f64,
        share in 0.0..1.0_f64,
        stages in 1_usize..6,
        plan in 300.0..2000.0_f64,
    ) {
        let refrigerant = Refrigerant::named(name).unwrap();
        let extras = Extras {
            steps: Some(CapacitySteps::stages(&vec![1.0; stages]).unwrap()),
            defrost: Some(HotGasDefrost { drop: Given::entered(Pressure::new::<kilopascal>(50.0)), ..HotGasDefrost::usual() }),
            reclaim: Some(HeatReclaim { wanted: celsius(wanted), share }),
        };
        let demands = extras.demands(&refrigerant).unwrap();
        let expected = (1.0 - share) / stages as f64;
        prop_assert!((demands.lowest_load - expected).abs() < 1e-12);
        prop_assert!(demands.needs[0].pressure >= demands.needs[1].pressure);
        for need in &demands.needs {
            let back = refrigerant.dew_pressure(need.condensing).unwrap();
            prop_assert!(((back / need.pressure).value - 1.0).abs() < 1e-9);
        }
        let plan = Pressure::new::<kilopascal>(plan);
        match demands.governing(plan) {
            Governing::Plan => prop_assert!(demands.needs.iter().all(|need| need.pressure <= plan)),
            Governing::Extra(extra) => {
                prop_assert!(extra.pressure > plan);
                prop_assert!(demands.needs.iter().all(|need| need.pressure <= extra.pressure));
            }
        }
    }

    #[test]
    fn less_load_never_lowers_the_hold_limit(
        need in 0.0..50.0_f64,
        below in 0.0..80.0_f64,
        less in 0.0..1.0_f64,
        more in 0.0..1.0_f64,
    ) {
        let (less, more) = (less.min(more), less.max(more));
        let at = |share| part_load::hold_limit(celsius(need), celsius(need - below), share).unwrap();
        prop_assert!(at(less) + span(1e-9) >= at(more));
        prop_assert!(at(less) <= celsius(need) + span(1e-9));
    }

    #[test]
    fn a_smaller_approach_never_has_fewer_hours(
        hours in prop::collection::vec((-40.0..45.0_f64, 0.0..180.0_f64), 1..48),
        approach in 0.0..20.0_f64,
        closer in 0.0..20.0_f64,
        (now, instead) in (0.0..1e5_f64, 0.0..1e5_f64),
    ) {
        let bins: Vec<Bin> = hours
            .iter()
            .map(|(degrees, hours)| Bin { outdoor: celsius(*degrees), time: Time::new::<hour>(*hours) })
            .collect();
        let ask = |approach: f64| {
            let case = FreeCooling {
                inside: celsius(24.0),
                approach: span(approach),
                now: Power::new::<watt>(now),
                instead: Power::new::<watt>(instead),
            };
            case.over_year(&bins).unwrap()
        };
        let time = |outcome: &free_cooling::Outcome| match outcome {
            free_cooling::Outcome::Saves { time, energy, share, .. } => {
                assert!(*share > 0.0 && *share <= 1.0);
                let product = (now - instead) * time.get::<hour>();
                assert!((energy.get::<watt_hour>() - product).abs() <= 1e-9 * product.abs());
                time.get::<hour>()
            }
            free_cooling::Outcome::SavesNothing { time, .. } => {
                assert!(now <= instead);
                time.get::<hour>()
            }
            free_cooling::Outcome::NeverColdEnough { up_to, coldest } => {
                assert!(coldest.get::<kelvin>() > up_to.get::<kelvin>());
                0.0
            }
        };
        prop_assert!(time(&ask(approach.min(closer))) >= time(&ask(approach.max(closer))));
    }

    #[test]
    fn a_list_holds_what_was_wanted_and_no_more(
        fans in 1_u32..=32,
        motor in prop::sample::select(MotorKind::ALL.to_vec()),
        new_motor in prop::option::of(prop::sample::select(MotorKind::ALL.to_vec())),
        groups in prop::collection::vec((1_u32..5, 800.0..1500.0_f64, 1.0..500.0_f64), 1..5),
        amps in 0.1..20.0_f64,
        (baffle, balanced_port) in any::<(bool, bool)>(),
        extra in prop::option::of(0.0..50.0_f64),
    ) {
        let wanted: u32 = groups.iter().map(|group| group.0).sum();
        let groups: Vec<Group> = groups
            .into_iter()
            .map(|(fans, off, more)| Group {
                fans,
                on: Pressure::new::<kilopascal>(off + more),
                off: Pressure::new::<kilopascal>(off),
            })
            .collect();
        let facts = Facts {
            fans,
            motor,
            new_motor,
            full_load: ElectricCurrent::new::<ampere>(amps),
            reserve: USUAL_RESERVE,
            supply: ElectricPotential::new::<volt>(230.0),
            fan_control: FanControl::Switched(groups.clone()),
            baffle,
            flooding: extra.map(|extra| Flooding {
                setting: Pressure::new::<kilopascal>(1200.0),
                extra_charge: Mass::new::<kilogram>(extra),
                receiver: None,
            }),
            crankcase_heater: None,
            low_pressure_bypass: None,
            balanced_port,
        };
        let possible = wanted <= fans && new_motor != Some(motor);
        let parts = facts.parts();
        prop_assert_eq!(parts.is_ok(), possible);
        if let Ok(parts) = parts {
            let charge = extra.map_or(0, |extra| 1 + usize::from(extra > 0.0));
            let expected = usize::from(new_motor.is_some()) + 2 * groups.len()
                + usize::from(baffle) + usize::from(balanced_port) + charge;
            prop_assert_eq!(parts.len(), expected);
            let carried: f64 = parts
                .iter()
                .map(|part| match part {
                    Part::Contactor { current, .. } => current.get::<ampere>(),
                    _ => 0.0,
                })
                .sum();
            // NFPA 70 article 430.24 (from memory): a quarter on top for the largest motor of each group.
            let expected = amps * (f64::from(wanted) + 0.25 * groups.len() as f64);
            prop_assert!((carried / expected - 1.0).abs() < 1e-12);
        }
    }
}
