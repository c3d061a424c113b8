//! Laws that hold for every plausible system, whatever the models' constants are.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{celsius, interval, plausible, usual};
use proptest::prelude::*;
use uom::si::f64::{ThermodynamicTemperature, VolumeRate};
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::volume_rate::cubic_meter_per_second;
use winterset_calc::input::{Bearing, Metering};
use winterset_calc::parts_list::Part;
use winterset_calc::{
    Condition, Field, Given, Input, Method, Plan, Point, Problem, Quantity, Verdict, plan,
};

fn outdoors() -> Vec<ThermodynamicTemperature> {
    (-4..=3)
        .map(|step| celsius(10.0 * f64::from(step)))
        .collect()
}

/// Heat is what the air carries and what the cycle gives; the coil is whole; what the compressor draws the condenser condenses.
fn balances_close(point: &Point) -> Result<(), TestCaseError> {
    let heat = point.heat_rejected.value;
    let carried = point.air_capacity_rate.value * point.effectiveness * point.over_ambient().value;
    prop_assert!((carried - heat).abs() <= 1e-6 * heat);
    let Some(cycle) = point.cycle else {
        prop_assert_eq!(heat, 0.0);
        return Ok(());
    };
    let given = cycle.cooling.value + cycle.compressor_power.value;
    prop_assert!((given / heat - 1.0).abs() < 1e-6);
    let rise = (cycle.discharge_enthalpy - cycle.liquid_enthalpy).value;
    prop_assert!((cycle.mass_flow.value * rise / heat - 1.0).abs() < 1e-6);
    let zones = point.zones;
    let whole = zones.desuperheating + zones.condensing + zones.subcooling + zones.flooded;
    prop_assert!((whole - 1.0).abs() < 1e-6, "{zones:?}");
    Ok(())
}

/// A number in every place, and in its bounds.
fn is_sound(point: &Point) -> Result<(), TestCaseError> {
    let numbers = [
        point.pressure.value,
        point.condensing.value,
        point.coil.value,
        point.airflow.value,
        point.effectiveness,
        point.heat_rejected.value,
        point.fan_power.value,
    ];
    for number in numbers {
        prop_assert!(number.is_finite() && number >= 0.0, "{point:?}");
    }
    prop_assert!((0.0..=1.0 + 1e-12).contains(&point.fan_speed_fraction));
    prop_assert_eq!(
        point.cycle.is_none(),
        point.condition == Condition::LowPressureTrip
    );
    if let Some(cycle) = point.cycle {
        prop_assert!(cycle.mass_flow.value > 0.0);
        prop_assert!(cycle.superheat().value > 0.0);
        prop_assert!(cycle.suction_pressure < point.pressure);
        prop_assert!(cycle.suction < cycle.discharge && cycle.liquid < cycle.discharge);
    }
    Ok(())
}

fn points(plan: &Plan, method: Method) -> Vec<Point> {
    outdoors()
        .into_iter()
        .filter_map(|outdoor| Some(*plan.at(outdoor).ok()?.of(method)))
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn every_point_closes_and_is_a_number(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        for method in Method::ALL {
            for point in points(&made, method) {
                balances_close(&point)?;
                is_sound(&point)?;
            }
        }
    }

    #[test]
    fn colder_air_never_raises_head_pressure_of_an_uncontrolled_fan(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        for pair in points(&made, Method::FullFan).windows(2) {
            prop_assert!(pair[0].pressure < pair[1].pressure);
        }
    }

    #[test]
    fn colder_air_never_speeds_up_a_controlled_fan(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        for pair in points(&made, Method::SpeedControl).windows(2) {
            let (cold, warm) = (pair[0].output.unwrap(), pair[1].output.unwrap());
            // As fixed fans go off beside them, the modulated ones speed up again; together they move no more air.
            let all = input.modulated_fans == Some(input.fans.value);
            prop_assert!(!all || cold.fraction <= warm.fraction + 1e-9);
            prop_assert!(pair[0].airflow <= pair[1].airflow * (1.0 + 1e-9));
        }
    }

    #[test]
    fn methods_rank_by_their_least_airflow(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let limit = |method| made.hold.of(method).value;
        for (keener, plainer) in [
            (Method::SpeedControl, Method::FullFan),
            (Method::Staged, Method::FullFan),
            (Method::OnOff, Method::SpeedControl),
            (Method::OnOff, Method::Staged),
            (Method::SpeedWithBaffle, Method::SpeedControl),
            (Method::Flooding, Method::FullFan),
            (Method::SpeedWithFlooding, Method::Flooding),
            (Method::SpeedWithFlooding, Method::SpeedControl),
        ] {
            prop_assert!(limit(keener) <= limit(plainer) + interval(1e-6), "{keener:?} against {plainer:?}");
        }
    }

    #[test]
    fn a_hold_limit_parts_what_holds_from_what_starves(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        for method in Method::ALL {
            let limit = made.hold.of(method).value;
            // Below what a refrigerant is tabled for there is nothing to compare.
            let (Ok(above), Ok(below)) = (made.at(limit + interval(0.01)), made.at(limit - interval(0.01))) else {
                continue;
            };
            prop_assert!(above.of(method).holds, "{method:?} above {limit:?}");
            // Down there the limit is the coldest that a site can have, and the method holds further.
            let is_coldest = limit <= celsius(-60.0) + interval(1e-6);
            prop_assert!(is_coldest || !below.of(method).holds, "{method:?} below {limit:?}");
        }
    }

    #[test]
    fn a_higher_lowest_speed_never_lowers_the_hold_limit(input in plausible()) {
        let with = |bearing| plan(&Input { bearing: Given::entered(bearing), ..input.clone() });
        let (Ok(ball), Ok(sleeve)) = (with(Bearing::Ball), with(Bearing::Sleeve)) else { return Ok(()) };
        prop_assert!(sleeve.hold.of(Method::SpeedControl).value >= ball.hold.of(Method::SpeedControl).value - interval(1e-6));
    }

    #[test]
    fn fewer_modulated_fans_never_raise_the_hold_limit(input in plausible(), fewer in 1_u32..6) {
        let with = |modulated| plan(&Input { modulated_fans: modulated, ..input.clone() });
        let (Ok(all), Ok(some)) = (with(None), with(Some(fewer.min(input.fans.value)))) else { return Ok(()) };
        // The fixed ones stand at the limit, and let air pass back.
        prop_assert!(some.hold.of(Method::SpeedControl).value <= all.hold.of(Method::SpeedControl).value + interval(1e-6));
        // What moves no fan by its controller does not know of it.
        for method in [Method::FullFan, Method::OnOff, Method::Staged, Method::Flooding] {
            prop_assert_eq!(some.hold.of(method).value, all.hold.of(method).value);
        }
    }

    #[test]
    fn more_air_over_the_same_coil_never_raises_head_pressure(input in plausible(), share in 0.2..1.0) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let outdoor = celsius(5.0);
        let (Ok(less), Ok(more)) = (made.at_speed(outdoor, share), made.at_speed(outdoor, share + 0.05)) else {
            return Ok(());
        };
        prop_assert!(more.pressure <= less.pressure);
    }
}

#[test]
fn a_stronger_valve_asks_for_less_pressure() {
    let need = |metering| {
        let input = Input {
            metering: Given::entered(metering),
            ..usual("R-410A")
        };
        plan(&input).unwrap().need.parts[0].1.value
    };
    assert!(need(Metering::ElectronicValve) < need(Metering::TxvBalanced));
    assert!(need(Metering::TxvBalanced) < need(Metering::TxvConventional));
}

/// Common practice, no published source: a conventional valve on room cooling wants about 90 °F of condensing temperature, and an
/// air-cooled system without control runs into trouble below about 50 to 60 °F outdoors.
#[test]
fn an_ordinary_split_system_needs_what_the_trade_expects() {
    let made = plan(&usual("R-410A")).unwrap();
    let fahrenheit =
        |temperature: ThermodynamicTemperature| temperature.get::<kelvin>() * 1.8 - 459.67;
    let need = fahrenheit(made.need.condensing);
    assert!((80.0..100.0).contains(&need), "{need} °F");
    let full_fan = fahrenheit(made.hold.of(Method::FullFan).value);
    assert!((45.0..75.0).contains(&full_fan), "{full_fan} °F");
    let output = made.settings.drive.minimum_output().value;
    assert!((0.17..0.48).contains(&output), "{output}");
}

#[test]
fn a_mild_site_needs_no_control() {
    let input = Input {
        outdoor_low: celsius(25.0),
        ..usual("R-134a")
    };
    assert!(matches!(
        plan(&input).unwrap().verdict,
        Verdict::NotNeeded { .. }
    ));
}

#[test]
fn a_value_outside_its_range_is_named_with_the_range() {
    let input = Input {
        over_ambient: Given::entered(interval(90.0)),
        ..usual("R-410A")
    };
    let errors = plan(&input).unwrap_err();
    assert_eq!(errors.len(), 1);
    assert_eq!(errors[0].field, Field::OverAmbient);
    assert!(matches!(errors[0].problem, Problem::OutOfRange { .. }));
}

#[test]
fn no_number_is_outside_every_range() {
    let input = Input {
        known_outdoor: Given::entered(celsius(f64::NAN)),
        ..usual("R-410A")
    };
    assert_eq!(plan(&input).unwrap_err()[0].field, Field::KnownOutdoor);
}

#[test]
fn condensing_near_the_critical_point_is_refused_at_the_field() {
    let input = Input {
        known_outdoor: Given::entered(celsius(50.0)),
        over_ambient: Given::entered(interval(30.0)),
        ..usual("R-410A")
    };
    let errors = plan(&input).unwrap_err();
    assert_eq!(errors[0].field, Field::OverAmbient);
    assert!(matches!(errors[0].problem, Problem::AboveCritical { .. }));
}

#[test]
fn too_little_air_names_the_least_that_would_do() {
    let input = Input {
        airflow: Some(VolumeRate::new::<cubic_meter_per_second>(0.05)),
        ..usual("R-410A")
    };
    let errors = plan(&input).unwrap_err();
    let Problem::TooLittleAir { lowest } = errors[0].problem else {
        panic!("{errors:?}");
    };
    let enough = Input {
        airflow: Some(lowest * 1.001),
        ..input
    };
    assert!(plan(&enough).is_ok());
}

#[test]
fn all_fans_entered_as_modulated_are_what_is_assumed() {
    let with = |modulated| {
        let input = Input {
            fans: Given::entered(3),
            modulated_fans: modulated,
            ..usual("R-410A")
        };
        plan(&input)
    };
    let (all, assumed) = (with(Some(3)).unwrap(), with(None).unwrap());
    for outdoor in outdoors() {
        assert_eq!(all.at(outdoor).ok(), assumed.at(outdoor).ok());
    }
    let errors = with(Some(4)).unwrap_err();
    assert_eq!(errors[0].field, Field::ModulatedFans);
    assert!(matches!(
        errors[0].problem,
        Problem::OutOfRange {
            high: Quantity::Count(3),
            ..
        }
    ));
}

/// One of three fans is slowed: it goes down to its least before the first fixed one goes off, and is faster after that.
#[test]
fn fixed_fans_go_off_one_after_another() {
    let input = Input {
        fans: Given::entered(3),
        modulated_fans: Some(1),
        ..usual("R-410A")
    };
    let made = plan(&input).unwrap();
    let mut running: Vec<u32> = (-20..=35)
        .filter_map(|degrees| {
            let point = made
                .point(Method::SpeedControl, celsius(f64::from(degrees)))
                .ok()?;
            let own = point.output?.speed / made.settings.drive.lowest_speed().value;
            assert!(own.value > 0.99);
            point.swing.is_none().then_some(())?;
            // A fixed fan is a third of all; what is left over is the modulated one.
            Some((3.0 * point.fan_speed_fraction - 1e-9).floor() as u32)
        })
        .collect();
    assert!(running.is_sorted(), "{running:?}");
    running.dedup();
    assert_eq!(running, [0, 1, 2]);
    let parts = made.order(Method::SpeedControl).unwrap();
    let switches = parts
        .iter()
        .filter(|part| matches!(part, Part::PressureSwitch { .. }));
    assert_eq!(switches.count(), 2);
    assert_eq!(made.wanted().motors.len(), 1);
}
