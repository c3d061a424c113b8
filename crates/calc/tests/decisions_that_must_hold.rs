//! Decisions hold together whatever the system: what is recommended holds, what is ordered can be ordered, what is assumed has a band.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{celsius, plausible, usual};
use proptest::prelude::*;
use uom::si::electric_potential::volt;
use uom::si::f64::{ElectricPotential, Time};
use uom::si::time::{hour, second};
use winterset_calc::advice::{Leads, SharedBank};
use winterset_calc::bands::Banding;
use winterset_calc::input::{Duty, Metering, Sensing};
use winterset_calc::own_controller::{
    InputLimits, Limits, MotorOutput, OwnController, Standing, Wanted,
};
use winterset_calc::recommendation::Reason;
use winterset_calc::weather::UsualYear;
use winterset_calc::{Basis, Given, Input, Method, Plan, plan};

fn limits<T: PartialOrd + Copy>(low: T, high: T) -> Limits<T> {
    Limits::new(low, high).unwrap()
}

/// A controller with narrow limits of both inputs, within which no plan fits by chance.
fn narrow(plan: &Plan) -> OwnController {
    let pressure = plan.settings.full_speed_pressure.value;
    let coil = plan.settings.full_speed_coil.value;
    let (span, kelvins) = (
        plan.settings.throttling_pressure.value,
        plan.settings.throttling_coil.value,
    );
    OwnController {
        inputs: vec![
            InputLimits::Pressure {
                full_speed: limits(pressure * 1.05, pressure * 1.5),
                throttling: limits(span * 0.1, span * 0.8),
            },
            InputLimits::Temperature {
                full_speed: limits(coil + kelvins * 0.1, coil + kelvins),
                throttling: limits(kelvins * 0.1, kelvins * 0.8),
            },
        ],
        minimum_output: Some(limits(0.3, 0.35)),
        start_boost: Some(limits(Time::new::<second>(1.9), Time::new::<second>(2.1))),
        outputs: MotorOutput::ALL.to_vec(),
        supply: Some(limits(
            ElectricPotential::new::<volt>(100.0),
            ElectricPotential::new::<volt>(600.0),
        )),
        rated_current: None,
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn what_is_recommended_holds_or_says_that_nothing_does(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let found = made.recommendation;
        prop_assert!(made.applies(found.method));
        let holds = |method| made.hold.of(method).value <= input.outdoor_low;
        match found.reason {
            Reason::NothingHolds => {
                prop_assert!(Method::ALL.into_iter().all(|method| !made.applies(method) || !holds(method)));
                prop_assert!(!made.verdict.is_enough());
            }
            _ => prop_assert!(holds(found.method) && made.verdict.is_enough()),
        }
        prop_assert_eq!(made.verdict.method() == Method::FullFan && made.verdict.is_enough(), holds(Method::FullFan));
        prop_assert_eq!(made.verdict.limit(), made.hold.of(made.verdict.method()).value);
    }

    #[test]
    fn no_setting_that_a_controller_does_not_take_is_recommended(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let own = narrow(&made);
        for sensing in Sensing::ALL {
            let wanted = Wanted::of(&made.settings, *sensing, input.voltage.value, vec![made.full_load()]);
            let within = own.within(&wanted);
            for finding in own.check(&within.settings) {
                prop_assert!(!matches!(finding.standing, Standing::Outside(_)), "{finding:?}");
            }
            prop_assert!(!within.findings.is_empty());
        }
    }

    #[test]
    fn what_follows_from_a_plan_follows_from_every_plan(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let method = made.recommendation.method;
        prop_assert!(made.order(method).is_ok(), "{:?}", made.order(method));
        prop_assert!(made.sensor_place(method).is_ok());
        if let Ok(start) = made.winter_start(method) {
            prop_assert!(start.cut_out < start.cut_in);
            prop_assert!(start.sump.heat.value > 0.0);
        }
        for lever in made.levers() {
            prop_assert!(lever.need < made.need.pressure.value);
        }
    }

    #[test]
    fn a_year_has_all_its_hours_and_energy_is_never_negative(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let bins = UsualYear::new(input.outdoor_low).unwrap().bins();
        let compared = made.compare(&bins);
        for (method, summary) in compared.iter() {
            prop_assert!(summary.fan_energy.value >= 0.0 && summary.compressor_energy.value >= 0.0);
            let most = summary.held + summary.tripped + summary.unknown;
            prop_assert!(most.get::<hour>() <= bins.total().get::<hour>() + 1e-6, "{method:?}");
            prop_assert_eq!(summary.extra_charge.is_some(), method.floods() && made.point(method, input.outdoor_low).is_ok());
            prop_assert_eq!(summary.starts.is_some(), summary.swing.is_some());
        }
        // Fans that turn slower never take more.
        let fans = |method: Method| compared.of(method).fan_energy.value;
        prop_assert!(fans(Method::SpeedControl) <= fans(Method::FullFan) * (1.0 + 1e-9) || compared.of(Method::FullFan).tripped.value > 0.0);
        prop_assert!(made.free_cooling(&bins, compared.of(Method::FullFan)).is_ok());
    }

    #[test]
    fn the_needier_of_two_circuits_leads(one in plausible(), other in plausible(), outdoor in -30.0..25.0) {
        let (Ok(a_plan), Ok(b_plan)) = (plan(&one), plan(&other)) else { return Ok(()) };
        let bank = SharedBank { first: &a_plan, second: &b_plan };
        let Ok(shared) = bank.at(celsius(outdoor)) else { return Ok(()) };
        let (a, b) = (shared.alone.0.fan_speed_fraction, shared.alone.1.fan_speed_fraction);
        prop_assert_eq!(shared.fan_speed_fraction, a.max(b));
        prop_assert_eq!(shared.leads, if a >= b { Leads::First } else { Leads::Second });
        let (other, alone) = shared.other();
        // What cycles is a mean over time, which one speed does not stand for.
        if shared.alone.0.swing.is_some() || shared.alone.1.swing.is_some() { return Ok(()) }
        prop_assert!(other.pressure <= alone.pressure * (1.0 + 1e-6));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 12, ..ProptestConfig::default() })]

    #[test]
    fn a_band_comes_from_what_is_assumed_alone(input in plausible()) {
        let Ok(made) = plan(&input) else { return Ok(()) };
        let bands = made.bands();
        prop_assert!(bands.by_field.len() <= Banding::STEPS);
        for (_, span) in &bands.by_field {
            prop_assert!(span.value.is_finite() && span.value >= 0.0);
        }
        let recommended = made.recommendation.method;
        let decisive = if recommended.floods() { Method::SpeedControl } else { recommended };
        let whole = bands.limits.of(decisive).value;
        let strongest = bands.by_field.first().map_or(0.0, |(_, span)| span.value);
        prop_assert!(whole + 1e-9 >= strongest);
    }
}

#[test]
fn an_entered_value_has_no_spread() {
    let bands = plan(&usual("R-410A")).unwrap().bands();
    let measured = bands.measure_first().unwrap();
    let known = Input {
        over_ambient: Given {
            basis: Basis::Entered,
            ..usual("R-410A").over_ambient
        },
        ..usual("R-410A")
    };
    let narrower = plan(&known).unwrap().bands();
    assert_eq!(measured, winterset_calc::Field::OverAmbient);
    assert!(narrower.limits.of(Method::SpeedControl) < bands.limits.of(Method::SpeedControl));
}

#[test]
fn an_orifice_is_not_flooded() {
    let made = plan(&Input {
        metering: Given::entered(Metering::FixedOrifice),
        ..usual("R-134a")
    })
    .unwrap();
    assert!(!made.applies(Method::Flooding) && !made.applies(Method::SpeedWithFlooding));
}

#[test]
fn a_freezer_is_not_cooled_by_the_outdoors() {
    let made = plan(&Input {
        ..Input::assume(
            winterset_calc::input::Essentials {
                refrigerant: winterset_calc::refrigerant::Refrigerant::named("R-448A").unwrap(),
                load: usual("R-134a").load,
                outdoor_low: celsius(-20.0),
            },
            Given::entered(Duty::Freezer),
        )
    })
    .unwrap();
    let bins = UsualYear::new(celsius(-20.0)).unwrap().bins();
    let compared = made.compare(&bins);
    assert_eq!(
        made.free_cooling(&bins, compared.of(Method::FullFan))
            .unwrap(),
        None
    );
}
