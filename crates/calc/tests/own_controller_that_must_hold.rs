//! A controller's limits against wanted settings: findings by their definitions, and laws that hold for all limits.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::electric_current::ampere;
use uom::si::electric_potential::volt;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Power, Pressure, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use uom::si::power::kilowatt;
use uom::si::pressure::bar;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::second;
use winterset_calc::input::{Duty, Essentials, Load, MotorKind, Sensing};
use winterset_calc::own_controller::{
    Effect, Finding, InputLimits, LimitError, Limits, MotorOutput, NotOrdered, OwnController,
    Safety, SensedSettings, Setting, Standing, Wanted,
};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{Given, Input, Quantity, plan};

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn kelvins(value: f64) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(value)
}

fn seconds(value: f64) -> Time {
    Time::new::<second>(value)
}

fn amperes(value: f64) -> ElectricCurrent {
    ElectricCurrent::new::<ampere>(value)
}

fn volts(value: f64) -> ElectricPotential {
    ElectricPotential::new::<volt>(value)
}

fn limits<T: PartialOrd + Copy>(low: T, high: T) -> Limits<T> {
    Limits::new(low, high).unwrap_or_else(|_| panic!("limits in order"))
}

/// An invented controller.
fn controller() -> OwnController {
    OwnController {
        inputs: vec![InputLimits::Temperature {
            full_speed: limits(celsius(15.0), celsius(55.0)),
            throttling: limits(kelvins(3.0), kelvins(15.0)),
        }],
        minimum_output: Some(limits(0.2, 0.6)),
        start_boost: Some(limits(seconds(0.5), seconds(5.0))),
        outputs: vec![MotorOutput::PhaseCut],
        supply: Some(limits(volts(200.0), volts(250.0))),
        rated_current: Some(amperes(8.0)),
    }
}

fn wanted() -> Wanted {
    Wanted {
        sensed: SensedSettings::Temperature {
            full_speed: celsius(40.0),
            throttling: kelvins(8.0),
        },
        minimum_output: Some(0.35),
        start_boost: Some(seconds(2.0)),
        outputs: vec![MotorOutput::PhaseCut],
        supply: volts(230.0),
        motors: vec![amperes(2.0), amperes(2.0)],
    }
}

fn standing(findings: &[Finding], setting: Setting) -> &Standing {
    &findings
        .iter()
        .find(|f| f.setting == setting)
        .unwrap()
        .standing
}

#[track_caller]
fn moved(controller: &OwnController, wanted: &Wanted, setting: Setting) -> (Quantity, Effect) {
    match standing(&controller.check(wanted), setting) {
        Standing::Outside(outside) => (outside.nearest.unwrap(), outside.effect),
        other => panic!("{setting:?}: {other:?}"),
    }
}

#[test]
fn settings_that_fit_are_inside() {
    let findings = controller().check(&wanted());
    assert_eq!(findings.len(), 8);
    assert!(findings.iter().all(|f| f.standing == Standing::Inside));
    let within = controller().within(&wanted());
    assert_eq!(
        (within.settings.clone(), within.safety()),
        (wanted(), Safety::Safe)
    );
    assert!(within.findings.is_empty() && controller().problems().is_empty());
}

#[test]
fn an_output_moved_up_or_down_is_told_apart() {
    let with = |minimum: f64| Wanted {
        minimum_output: Some(minimum),
        ..wanted()
    };
    let own = controller();
    assert_eq!(
        moved(&own, &with(0.1), Setting::MinimumOutput),
        (Quantity::Ratio(0.2), Effect::HoldLimitRises)
    );
    assert_eq!(
        moved(&own, &with(0.7), Setting::MinimumOutput),
        (Quantity::Ratio(0.6), Effect::BelowLowestSpeed)
    );
    assert_eq!(own.within(&with(0.1)).safety(), Safety::Check);
    assert_eq!(own.within(&with(0.7)).safety(), Safety::Unsafe);
    assert_eq!(own.within(&with(0.7)).settings.minimum_output, Some(0.6));
    assert_eq!(
        standing(&own.check(&with(f64::NAN)), Setting::MinimumOutput),
        &Standing::NotANumber
    );
}

#[test]
fn every_other_setting_says_what_moving_it_does() {
    let own = controller();
    let sensed = |full: f64, span: f64| Wanted {
        sensed: SensedSettings::Temperature {
            full_speed: celsius(full),
            throttling: kelvins(span),
        },
        ..wanted()
    };
    let boost = |time: f64| Wanted {
        start_boost: Some(seconds(time)),
        ..wanted()
    };
    for (wanted, setting, effect, safety) in [
        (
            sensed(10.0, 8.0),
            Setting::FullSpeedPoint,
            Effect::RunsHotter,
            Safety::Check,
        ),
        (
            sensed(60.0, 8.0),
            Setting::FullSpeedPoint,
            Effect::BelowNeed,
            Safety::Unsafe,
        ),
        (
            sensed(40.0, 2.0),
            Setting::ThrottlingRange,
            Effect::BelowNeed,
            Safety::Unsafe,
        ),
        (
            sensed(40.0, 20.0),
            Setting::ThrottlingRange,
            Effect::MayHunt,
            Safety::Check,
        ),
        (
            boost(0.1),
            Setting::StartBoost,
            Effect::LongerBoost,
            Safety::Safe,
        ),
        (
            boost(9.0),
            Setting::StartBoost,
            Effect::MayNotStart,
            Safety::Unsafe,
        ),
    ] {
        assert_eq!(moved(&own, &wanted, setting).1, effect);
        assert_eq!(own.within(&wanted).safety(), safety, "{effect:?}");
    }
}

#[test]
fn what_cannot_be_set_stays_and_is_unsafe() {
    let own = controller();
    let wanted = Wanted {
        supply: volts(400.0),
        outputs: MotorOutput::for_speed_of(MotorKind::ElectronicallyCommutated).to_vec(),
        motors: vec![amperes(6.0), amperes(3.0)],
        sensed: SensedSettings::Pressure {
            full_speed: Pressure::new::<bar>(15.0),
            throttling: Pressure::new::<bar>(4.0),
        },
        ..wanted()
    };
    let findings = own.check(&wanted);
    assert!(matches!(
        standing(&findings, Setting::SupplyVoltage),
        Standing::Outside(outside) if outside.nearest.is_none()
    ));
    assert!(matches!(
        standing(&findings, Setting::MotorOutput),
        Standing::NoSuchOutput { .. }
    ));
    assert!(matches!(
        standing(&findings, Setting::RatedCurrent),
        Standing::Overloaded(_)
    ));
    assert!(matches!(
        standing(&findings, Setting::Input),
        Standing::NoSuchInput {
            wanted: Sensing::LiquidPressure,
            ..
        }
    ));
    let within = own.within(&wanted);
    assert_eq!(
        (within.settings.clone(), within.safety()),
        (wanted, Safety::Unsafe)
    );
}

/// NFPA 70 article 430.24 (from memory): 4 A and 3 A need 1.25 x 4 A + 3 A = 8 A.
#[test]
fn the_reserve_of_the_largest_motor_counts() {
    let with = |motors: &[f64]| {
        let wanted = Wanted {
            motors: motors.iter().map(|a| amperes(*a)).collect(),
            ..wanted()
        };
        standing(&controller().check(&wanted), Setting::RatedCurrent).clone()
    };
    assert_eq!(with(&[4.0, 3.0]), Standing::Inside);
    assert!(matches!(with(&[4.0, 3.5]), Standing::ShortOfReserve(_)));
    assert!(matches!(with(&[5.0, 3.5]), Standing::Overloaded(_)));
    assert!(matches!(with(&[1.0; 33]), Standing::Currents(_)));
}

/// A controller that only gives a signal carries no current, and the motors' supply is not its own.
#[test]
fn a_signal_loads_nothing() {
    let wanted = Wanted {
        motors: Vec::new(),
        supply: volts(400.0),
        ..wanted()
    };
    let findings = controller().check(&wanted);
    assert_eq!(findings.len(), 6);
    assert!(findings.iter().all(|f| f.standing == Standing::Inside));
}

#[test]
fn what_is_not_stated_is_said_so() {
    let findings = OwnController::default().check(&wanted());
    assert!(findings.iter().all(|f| f.standing == Standing::NotStated));
    let within = OwnController::default().within(&wanted());
    assert_eq!(
        (within.settings.clone(), within.safety()),
        (wanted(), Safety::Check)
    );
    let only_switched = Wanted {
        minimum_output: None,
        start_boost: None,
        outputs: vec![MotorOutput::Contact],
        ..wanted()
    };
    let findings = controller().check(&only_switched);
    assert!(findings.iter().all(|f| f.setting != Setting::StartBoost));
}

#[test]
fn slips_in_the_limits_are_found() {
    assert_eq!(Limits::new(0.6, 0.2), Err(NotOrdered));
    assert_eq!(Limits::new(f64::NAN, 0.2), Err(NotOrdered));
    let slips = OwnController {
        minimum_output: Some(limits(20.0, 60.0)),
        rated_current: Some(amperes(0.008)),
        ..controller()
    };
    let problems = slips.problems();
    assert_eq!(problems.len(), 3);
    assert!(matches!(
        problems.last(),
        Some(LimitError::RatedCurrent { .. })
    ));
}

#[test]
fn the_settings_sheet_of_a_plan_can_be_held_against_it() {
    let essentials = Essentials {
        refrigerant: Refrigerant::named("R-134a").unwrap(),
        load: Load::Cooling(Power::new::<kilowatt>(10.0)),
        outdoor_low: celsius(-20.0),
    };
    let mut input = Input::assume(essentials, Given::entered(Duty::Cooler));
    input.fans = Given::entered(3);
    let plan = plan(&input).unwrap();
    let settings = &plan.settings;
    let whole = plan.wanted();
    assert_eq!(whole.motors, [plan.full_load(); 3]);
    assert_eq!(whole.sensed.sensing(), settings.sensing.value);
    assert_eq!(controller().check(&whole).len(), 8);
    input.motor = Given::entered(MotorKind::ThreePhase);
    let signal = winterset_calc::plan(&input).unwrap().wanted();
    assert_eq!(signal.outputs, [MotorOutput::ZeroToTenVolts]);
    assert!(signal.motors.is_empty());
    for sensing in [Sensing::CoilTemperature, Sensing::LiquidPressure] {
        let wanted = Wanted::of(settings, sensing, volts(230.0), vec![amperes(2.0)]);
        assert_eq!(wanted.sensed.sensing(), sensing);
        assert_eq!(wanted.outputs, [MotorOutput::PhaseCut]);
        assert_eq!(
            wanted.minimum_output,
            Some(settings.drive.minimum_output().value)
        );
        let findings = controller().check(&wanted);
        assert!(findings.iter().all(|f| f.standing != Standing::NotANumber));
    }
}

#[test]
fn names_for_records_go_both_ways() {
    for output in MotorOutput::ALL {
        assert_eq!(MotorOutput::from_key(output.key()), Some(output));
    }
}

fn ends(low: f64, high: f64) -> impl Strategy<Value = (f64, f64)> {
    (low..high, low..high).prop_map(|(a, b)| (a.min(b), a.max(b)))
}

proptest! {
    #[test]
    fn moved_settings_fit_and_stay(
        output in ends(0.0, 1.0),
        boost in ends(0.0, 10.0),
        full in ends(0.0, 60.0),
        span in ends(0.0, 20.0),
        values in (any::<f64>(), -1.0..20.0_f64, -20.0..90.0_f64, -5.0..40.0_f64),
    ) {
        let own = OwnController {
            inputs: vec![InputLimits::Temperature {
                full_speed: limits(celsius(full.0), celsius(full.1)),
                throttling: limits(kelvins(span.0), kelvins(span.1)),
            }],
            minimum_output: Some(limits(output.0, output.1)),
            start_boost: Some(limits(seconds(boost.0), seconds(boost.1))),
            ..controller()
        };
        let asked = Wanted {
            minimum_output: Some(values.0),
            start_boost: Some(seconds(values.1)),
            sensed: SensedSettings::Temperature { full_speed: celsius(values.2), throttling: kelvins(values.3) },
            ..wanted()
        };
        let within = own.within(&asked);
        prop_assume!(!values.0.is_nan());
        prop_assert!(own.check(&within.settings).iter().all(|f| f.standing == Standing::Inside));
        prop_assert_eq!(&own.within(&within.settings).settings, &within.settings);
        // Nothing is moved without a finding, and nothing found without a move.
        prop_assert_eq!(within.settings == asked, within.findings.is_empty());
        let moved = within.settings.minimum_output.unwrap();
        prop_assert!(moved >= output.0 && moved <= output.1);
    }
}
