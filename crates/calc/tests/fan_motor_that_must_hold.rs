//! What a plan says about its fan motors: lowest output, start boost, heating, and the compressor's own limit beside them.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{celsius, interval, plausible, usual};
use proptest::prelude::*;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::electric_current::ampere;
use uom::si::electric_potential::volt;
use uom::si::f64::{AngularVelocity, ElectricCurrent, Frequency, ThermodynamicTemperature, Time};
use uom::si::frequency::hertz;
use uom::si::time::second;
use winterset_calc::advice::{FanStart, LowestSpeed, Remedy};
use winterset_calc::input::{Bearing, MotorKind};
use winterset_calc::motor::{Friction, InductionMotor, Loading, lowest_speed_fraction};
use winterset_calc::parts_list::Part;
use winterset_calc::settings::{Drive, SettingsNote};
use winterset_calc::{
    Condition, Field, Given, Input, Method, Plan, Problem, Quantity, Rule, air, plan,
};

fn boost(plan: &Plan) -> Option<Time> {
    match &plan.settings.drive {
        Drive::PhaseCut { start_boost, .. } => Some(start_boost.value),
        _ => None,
    }
}

/// A motor as the plan's nameplate has it, with the air and the friction of the site's low.
fn motor(input: &Input, plan: &Plan) -> (InductionMotor, f64, Friction) {
    let motor = InductionMotor::from_nameplate(
        input.motor.value,
        input.rated_speed.value,
        input.frequency.value,
    )
    .unwrap();
    let density = air::density(plan.atmosphere.value, input.outdoor_low).value / 1.2;
    let friction = Friction::usual(input.bearing.value, input.outdoor_low).unwrap();
    (motor, density, friction)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn start_boost_is_never_shorter_in_deeper_cold(input in plausible(), colder in 1.0..15.0) {
        let deeper = Input { outdoor_low: input.outdoor_low - interval(colder), ..input.clone() };
        let (Ok(mild), Ok(deep)) = (plan(&input), plan(&deeper)) else { return Ok(()) };
        prop_assert!(boost(&deep) >= boost(&mild));
    }

    #[test]
    fn start_boost_is_longer_for_a_sleeve_bearing_and_can_be_set(input in plausible()) {
        let with = |bearing| plan(&Input { bearing: Given::entered(bearing), ..input.clone() });
        let (Ok(ball), Ok(sleeve)) = (with(Bearing::Ball), with(Bearing::Sleeve)) else { return Ok(()) };
        let (Some(ball), Some(sleeve)) = (boost(&ball), boost(&sleeve)) else { return Ok(()) };
        let seconds = |time: Time| time.get::<second>();
        // At the longest that controllers offer there is nothing longer to set.
        prop_assert!(sleeve > ball || seconds(ball) == 5.0);
        // Common practice, no published source: 0.1 to 5 s.
        prop_assert!(seconds(ball) >= 0.1 && seconds(sleeve) <= 5.0);
    }

    #[test]
    fn minimum_output_is_never_below_the_stall_limit(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let Drive::PhaseCut { minimum_output, lowest_speed, .. } = &made.settings.drive else { return Ok(()) };
        let (motor, density, friction) = motor(&input, &made);
        let limits = motor.limits(density, friction).unwrap();
        prop_assert!(minimum_output.value >= limits.keeps_running.min(1.0) * (1.0 - 1e-12));
        let full = motor.speed_at(1.0, density).unwrap();
        let share = (lowest_speed.value / full).value;
        prop_assert!(share >= lowest_speed_fraction(input.bearing.value) - 1e-9);
        let by_stall = minimum_output.working.rule == Rule::StallOutput;
        prop_assert_eq!(by_stall, lowest_speed.working.rule == Rule::StallSpeed);
    }

    #[test]
    fn no_fan_stalls_at_or_above_the_sites_low(input in plausible(), above in 0.0..40.0) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let Ok(rung) = made.at(input.outdoor_low + interval(above)) else { return Ok(()) };
        for (method, point) in rung.iter() {
            prop_assert!(point.condition != Condition::StalledFan, "{method:?}");
        }
    }

    #[test]
    fn what_may_not_start_comes_with_what_to_do(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let Some(advice) = made.fan_motor() else {
            prop_assert!(boost(&made).is_none());
            return Ok(());
        };
        let all_well = matches!(advice.start, FanStart::WithinBoost { .. }) && advice.starts_at_minimum;
        prop_assert_eq!(advice.remedies.is_empty(), all_well);
        let never = made.settings.notes.contains(&SettingsNote::WillNotStart);
        prop_assert_eq!(never, advice.start == FanStart::Never);
        prop_assert!(advice.hottest.loss.is_finite() && advice.hottest.output <= 1.0);
        // Where the fan starts against the air that the wind drives through it, it starts in still air.
        let within = matches!(advice.start, FanStart::WithinBoost { .. });
        prop_assert!(advice.wind.is_some() || !within);
    }
}

#[test]
fn the_working_of_the_start_boost_shows_its_terms() {
    let made = plan(&usual("R-410A")).unwrap();
    let Drive::PhaseCut { start_boost, .. } = &made.settings.drive else {
        panic!();
    };
    let symbols: Vec<&str> = start_boost
        .working
        .terms
        .iter()
        .map(|term| term.symbol)
        .collect();
    assert_eq!(
        symbols,
        ["t_b", "D", "P", "T_o", "f", "V_wind/V", "t_s", "t_wind"]
    );
}

/// Machine textbooks: rotor loss of a fan drive peaks at two thirds of synchronous speed, here 800 of 1200 rpm.
#[test]
fn the_hottest_speed_is_two_thirds_of_synchronous_speed() {
    let with = |bearing| {
        let input = Input {
            bearing: Given::entered(bearing),
            rated_speed: Given::entered(AngularVelocity::new::<revolution_per_minute>(1075.0)),
            ..usual("R-410A")
        };
        plan(&input).unwrap().fan_motor().unwrap().hottest
    };
    let hottest = with(Bearing::Ball);
    assert!((hottest.speed.get::<revolution_per_minute>() - 800.0).abs() < 1e-9);
    assert_eq!(hottest.lowest_speed, LowestSpeed::Below);
    assert!(hottest.loss > 1.0);
}

/// Common practice, no published source: a sleeve bearing's oil in arctic cold holds the rotor faster than a shaded pole turns it.
#[test]
fn a_shaded_pole_with_a_sleeve_bearing_does_not_start_in_arctic_cold() {
    let input = Input {
        motor: Given::entered(MotorKind::ShadedPole),
        bearing: Given::entered(Bearing::Sleeve),
        outdoor_low: celsius(-50.0),
        ..usual("R-410A")
    };
    let made = plan(&input).unwrap();
    let advice = made.fan_motor().unwrap();
    assert_eq!(advice.start, FanStart::Never);
    assert!(made.settings.notes.contains(&SettingsNote::WillNotStart));
    assert!(advice.remedies.contains(&Remedy::KeepTurning));
    assert_eq!(boost(&made), Some(Time::new::<second>(5.0)));
}

#[test]
fn a_fan_set_for_a_mild_low_stalls_in_deeper_cold() {
    let input = Input {
        bearing: Given::entered(Bearing::Ball),
        outdoor_low: celsius(-5.0),
        ..usual("R-454B")
    };
    let made = plan(&input).unwrap();
    let stalls = (5..=50).any(|below| {
        let point = made.point(Method::SpeedControl, celsius(-5.0 - f64::from(below)));
        point.is_ok_and(|point| point.condition == Condition::StalledFan)
    });
    assert!(stalls);
}

#[test]
fn each_kind_of_motor_has_its_own_lines() {
    let with = |motor, bearing| {
        let input = Input {
            motor: Given::entered(motor),
            bearing: Given::entered(bearing),
            frequency: Given::entered(Frequency::new::<hertz>(50.0)),
            rated_speed: Given::entered(AngularVelocity::new::<revolution_per_minute>(900.0)),
            ..usual("R-410A")
        };
        plan(&input).unwrap().settings.drive
    };
    // Common practice, no published source: the usual input goes straight through zero, so that 0.2 of full speed is 2 V and 20 %.
    let Drive::Signal { volts, duty, .. } =
        with(MotorKind::ElectronicallyCommutated, Bearing::Ball)
    else {
        panic!();
    };
    assert!((volts.value.get::<volt>() - 2.0).abs() < 1e-9 && (duty.value - 0.2).abs() < 1e-9);
    // The share of full speed that the bearing allows, of 50 Hz.
    let Drive::Frequency { lowest, .. } = with(MotorKind::ThreePhase, Bearing::Sleeve) else {
        panic!();
    };
    assert!((lowest.value.get::<hertz>() - 20.0).abs() < 1e-9);
    assert!(matches!(
        with(MotorKind::ShadedPole, Bearing::Ball),
        Drive::PhaseCut { .. }
    ));
}

fn with_highest(highest: f64) -> Input {
    Input {
        compressor_highest: Some(celsius(highest)),
        ..usual("R-410A")
    }
}

#[test]
fn above_the_compressors_highest_a_point_says_so() {
    let made = plan(&with_highest(45.0)).unwrap();
    let from = made.settings.notes.iter().find_map(|note| match note {
        SettingsNote::AboveEnvelope { from, highest } => {
            assert_eq!(*highest, celsius(45.0));
            Some(*from)
        }
        _ => None,
    });
    let from = from.unwrap();
    let full = |outdoor: ThermodynamicTemperature| made.point(Method::FullFan, outdoor).unwrap();
    let (below, above) = (full(from - interval(0.1)), full(from + interval(0.1)));
    assert_eq!(below.condition, Condition::Holds);
    assert_eq!(above.condition, Condition::AboveEnvelope);
    assert!(above.holds && above.condensing > celsius(45.0));
    // Without the field nothing is said, as before.
    let silent = plan(&usual("R-410A")).unwrap();
    let same = silent.point(Method::FullFan, from + interval(0.1)).unwrap();
    assert_eq!(same.condition, Condition::Holds);
    assert_eq!(same.pressure, above.pressure);
}

#[test]
fn the_full_speed_point_stays_below_the_compressors_highest() {
    let free = plan(&usual("R-410A")).unwrap();
    let need = free.need.condensing;
    let highest = need + interval(4.0);
    let made = plan(&Input {
        compressor_highest: Some(highest),
        ..usual("R-410A")
    })
    .unwrap();
    let full = made.input.refrigerant.dew_pressure(highest).unwrap();
    assert!((made.settings.full_speed_pressure.value / full).value - 1.0 < 1e-9);
    let errors = plan(&Input {
        compressor_highest: Some(need),
        ..usual("R-410A")
    })
    .unwrap_err();
    assert_eq!(errors[0].field, Field::CompressorHighest);
    assert!(matches!(
        errors[0].problem,
        Problem::HighestBelowNeed { lowest } if lowest > need
    ));
    let errors = plan(&with_highest(200.0)).unwrap_err();
    assert!(matches!(
        errors[0].problem,
        Problem::OutOfRange {
            high: Quantity::Temperature(_),
            ..
        }
    ));
}

/// What is ordered carries what the same controller would be held against.
#[test]
fn the_order_and_the_check_of_a_controller_count_currents_alike() {
    let input = Input {
        fans: Given::entered(3),
        full_load: Some(ElectricCurrent::new::<ampere>(1.6)),
        outdoor_low: celsius(-5.0),
        ..usual("R-410A")
    };
    let made = plan(&input).unwrap();
    let parts = made.order(Method::SpeedControl).unwrap();
    let ordered = parts.iter().find_map(|part| match part {
        Part::Controller { current, .. } => *current,
        _ => None,
    });
    let ordered = ordered.unwrap();
    let loading = Loading::new(&made.wanted().motors, ordered).unwrap();
    assert!((ordered / loading.needed - 1.0.into()).value.abs() < 1e-12);
    // NFPA 70 article 430.24 (from memory): 2 x 1.6 A + 1.25 x 1.6 A = 5.2 A.
    assert!((ordered.get::<ampere>() - 5.2).abs() < 1e-12);
}
