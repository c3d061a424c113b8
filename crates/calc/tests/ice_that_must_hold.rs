//! The evaporator's surface and its ice: laws that hold for every plausible coil.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::f64::{
    Area, Length, Mass, MassRate, Power, Pressure, ThermalConductance, ThermodynamicTemperature,
    Time, VolumeRate,
};
use uom::si::{
    area::square_meter, available_energy::joule_per_kilogram, length::millimeter, mass::kilogram,
    mass_rate::kilogram_per_second, power::kilowatt, power::watt, pressure::kilopascal,
    thermal_conductance::watt_per_kelvin, thermodynamic_temperature::degree_celsius,
    thermodynamic_temperature::kelvin, time::minute, time::second,
    volume_rate::cubic_meter_per_second,
};
use winterset_calc::Given;
use winterset_calc::ice::{
    Coil, Cycle, EvaporatingLimit, Fins, Ice, IceError, IceInput, KnownPoint, LimitedBy, Melt,
    NoLimit, ReturnAir, Stays, Surface, coldest_refrigerant, ice_starts, lowest_evaporating,
    melting, outcome, usual_air_share, usual_inlet_quality, usual_off_airflow,
};
use winterset_calc::input::Duty;
use winterset_calc::moist_air::MoistAir;
use winterset_calc::refrigerant::Refrigerant;

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn returning(degrees: f64, humidity: f64) -> ReturnAir {
    let pressure = Pressure::new::<kilopascal>(101.325);
    ReturnAir {
        air: MoistAir::new(celsius(degrees), humidity, pressure).unwrap(),
        airflow: VolumeRate::new::<cubic_meter_per_second>(0.5),
    }
}

fn coil(overall: f64) -> Coil {
    Coil::new(
        ThermalConductance::new::<watt_per_kelvin>(overall),
        Given::assumed(usual_air_share()),
    )
    .unwrap()
}

/// Kays & London, one side of one temperature: `(t − t_r) = (t₀ − t_r)·exp(−UA/C)`; the surface divides what is left by the resistances.
#[test]
fn a_dry_coil_is_that_of_effectiveness_and_ntu() {
    let air = returning(24.0, 0.1);
    let pass = coil(450.0).pass(&air, celsius(2.0)).unwrap();
    assert_eq!(pass.surface, Surface::Dry);
    assert_eq!(pass.condensate, MassRate::default());
    let dry_air = (air.airflow * air.air.dry_air_density()).get::<kilogram_per_second>();
    let rate = dry_air * (1006.0 + 1860.0 * air.air.humidity_ratio());
    let left = 22.0 * (-450.0 / rate).exp();
    let leaving = pass.leaving.dry_bulb().get::<degree_celsius>();
    assert!((leaving - 2.0 - left).abs() < 1e-6, "{leaving}");
    let coldest = pass.coldest.get::<degree_celsius>();
    assert!((coldest - 2.0 - 0.3 * left).abs() < 1e-6, "{coldest}");
    assert!((pass.sensible_heat_ratio() - 1.0).abs() < 1e-12);
}

/// Common practice, no published source: at a room's usual air and airflow a coil begins to ice at some 2 to 8 K below freezing in the refrigerant,
/// sooner behind a clogged filter.
#[test]
fn a_room_coil_ices_where_practice_has_it() {
    let point = KnownPoint {
        capacity: Power::new::<kilowatt>(9.0),
        returning: returning(24.0, 0.5),
        refrigerant: celsius(5.0),
    };
    let coil = Coil::from_known_point(&point, Given::assumed(usual_air_share())).unwrap();
    let (starts, by) = ice_starts(&coil, &point.returning).unwrap().unwrap();
    let degrees = starts.get::<degree_celsius>();
    assert!((-8.0..=-2.0).contains(&degrees), "{degrees}");
    assert_eq!(by, LimitedBy::Freezing);
    let clogged = ReturnAir {
        airflow: point.returning.airflow * 0.5,
        ..point.returning
    };
    let behind = ice_starts(&coil.at_airflow(0.5).unwrap(), &clogged)
        .unwrap()
        .unwrap();
    assert!(behind.0 > starts);
}

#[test]
fn a_dry_room_may_go_below_freezing_without_frost() {
    let dry = returning(20.0, 0.15);
    let (starts, by) = ice_starts(&coil(400.0), &dry).unwrap().unwrap();
    assert_eq!(by, LimitedBy::FrostPoint);
    let below_freezing = coil(400.0)
        .pass(
            &dry,
            ThermodynamicTemperature::new::<kelvin>(starts.value + 0.5),
        )
        .unwrap();
    assert!(below_freezing.coldest < celsius(0.0));
    assert_eq!(below_freezing.surface, Surface::Dry);
}

#[test]
fn a_coil_that_is_defrosted_has_no_limit() {
    let refrigerant = Refrigerant::named("R-448A").unwrap();
    let quality = Given::assumed(usual_inlet_quality());
    let limit = |duty| {
        lowest_evaporating(
            &refrigerant,
            duty,
            &coil(400.0),
            &returning(22.0, 0.5),
            quality,
        )
        .unwrap()
    };
    for duty in [Duty::Cooler, Duty::Freezer] {
        assert_eq!(limit(duty), EvaporatingLimit::None(NoLimit::Defrosted));
    }
    let EvaporatingLimit::Lowest {
        evaporating,
        refrigerant: coldest,
        ..
    } = limit(Duty::RoomCooling)
    else {
        panic!();
    };
    // The glide counts: the dew temperature lies above what enters the coil, which is what its coldest part meets.
    assert!(evaporating.value - coldest.value > 1.0);
    let back = coldest_refrigerant(&refrigerant, evaporating, quality).unwrap();
    assert!((back.value - coldest.value).abs() < 1e-6);
}

/// R-134a has one temperature.
#[test]
fn a_pure_refrigerant_has_the_limit_itself() {
    let refrigerant = Refrigerant::named("R-134a").unwrap();
    let air = returning(22.0, 0.5);
    let quality = Given::assumed(usual_inlet_quality());
    let duty = Duty::RoomCooling;
    let limit = lowest_evaporating(&refrigerant, duty, &coil(400.0), &air, quality).unwrap();
    let (starts, _) = ice_starts(&coil(400.0), &air).unwrap().unwrap();
    let EvaporatingLimit::Lowest { evaporating, .. } = limit else {
        panic!("{limit:?}");
    };
    assert!((evaporating.value - starts.value).abs() < 1e-6);
}

#[test]
fn ice_melts_in_the_off_time_or_says_why_it_stays() {
    let (coil, air) = (coil(400.0), returning(22.0, 0.5));
    let cold = celsius(-12.0);
    let cycle = |off, fan_goes_on| Cycle {
        run: Time::new::<minute>(12.0),
        off: Time::new::<minute>(off),
        off_airflow: Given::assumed(usual_off_airflow(fan_goes_on)),
    };
    let with = |cycle: Option<&Cycle>| outcome(&coil, &air, cold, cycle).unwrap();
    let Ice::MeltsEachCycle {
        each_run, melts_in, ..
    } = with(Some(&cycle(10.0, true)))
    else {
        panic!("{:?}", with(Some(&cycle(10.0, true))));
    };
    assert!(each_run > Mass::default() && melts_in < Time::new::<minute>(10.0));
    let short = cycle(0.25, false);
    let Ice::Grows {
        growth,
        average,
        because: Stays::OffTimeTooShort { needed },
    } = with(Some(&short))
    else {
        panic!("{:?}", with(Some(&short)));
    };
    assert!(needed > short.off && average < growth);
    assert!(matches!(
        with(None),
        Ice::Grows {
            because: Stays::NoOffTime,
            ..
        }
    ));
    let freezer = outcome(
        &coil,
        &returning(-18.0, 0.8),
        celsius(-26.0),
        Some(&cycle(10.0, true)),
    );
    assert!(matches!(
        freezer.unwrap(),
        Ice::Grows {
            because: Stays::NothingMelts,
            ..
        }
    ));
    let mild = outcome(&coil, &air, celsius(2.0), None).unwrap();
    assert_eq!(mild, Ice::None(Surface::Wet));
}

/// Enthalpy of fusion 333.4 kJ/kg; the air is dry enough for its wet bulb to decide.
#[test]
fn melting_takes_the_heat_of_fusion() {
    let (coil, air) = (coil(400.0), returning(10.0, 0.6));
    let mass = Mass::new::<kilogram>(2.0);
    let at = |mass, degrees| melting(&coil, &air, 1.0, mass, celsius(degrees)).unwrap();
    let (Melt::After(warm), Melt::After(twice)) = (at(mass, 0.0), at(mass * 2.0, 0.0)) else {
        panic!();
    };
    assert!((twice.value / warm.value - 2.0).abs() < 1e-12);
    let Melt::After(colder) = at(mass, -10.0) else {
        panic!();
    };
    let added = 2.1e3 * 10.0 / 333.4e3;
    assert!((colder.value / warm.value - 1.0 - added).abs() < 1e-12);
    // Dry bulb above freezing, wet bulb below it.
    let dry = returning(3.0, 0.2);
    assert!(dry.air.wet_bulb() < celsius(0.0));
    let stays = melting(&coil, &dry, 1.0, mass, celsius(0.0)).unwrap();
    assert_eq!(stays, Melt::Never);
}

#[test]
fn ice_takes_airflow_between_two_bounds() {
    let fins = Fins::new(
        Area::new::<square_meter>(20.0),
        Length::new::<millimeter>(2.0),
    )
    .unwrap();
    let left = |kilograms| fins.airflow_left(Mass::new::<kilogram>(kilograms)).unwrap();
    let clean = left(0.0);
    assert_eq!((clean.least, clean.most), (1.0, 1.0));
    let some = left(1.0);
    // 1 kg over 20 m² is 0.333 mm of frost of 150 kg/m³ on each of two walls 2 mm apart: two thirds open.
    assert!((some.least - (2.0_f64 / 3.0).powi(3)).abs() < 1e-12);
    assert!(some.least < some.most && some.most < 1.0);
    assert_eq!(left(100.0).most, 0.0);
    let growth = MassRate::new::<kilogram_per_second>(1e-3);
    let (earliest, latest) = fins.closed_after(growth).unwrap();
    assert!((earliest.get::<second>() - 3000.0).abs() < 1e-9);
    assert!(latest > earliest);
}

#[test]
fn what_cannot_be_is_named() {
    let air = returning(22.0, 0.5);
    assert!(matches!(
        coil(400.0).pass(&air, celsius(22.5)),
        Err(IceError::NotColder { .. })
    ));
    assert!(matches!(
        coil(400.0).pass(&air, celsius(f64::NAN)),
        Err(IceError::OutOfRange {
            input: IceInput::RefrigerantTemperature,
            ..
        })
    ));
    assert!(matches!(
        coil(1e5).pass(&air, celsius(0.0)),
        Err(IceError::TooManyUnits { .. })
    ));
    let greedy = KnownPoint {
        capacity: Power::new::<kilowatt>(900.0),
        returning: air,
        refrigerant: celsius(5.0),
    };
    assert!(matches!(
        Coil::from_known_point(&greedy, Given::assumed(usual_air_share())),
        Err(IceError::TooMuchCapacity { .. })
    ));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn a_pass_keeps_its_order_and_its_energy(
        degrees in -25.0..35.0_f64,
        humidity in 0.02..1.0_f64,
        overall in 20.0..2500.0_f64,
        colder in 0.5..40.0_f64,
    ) {
        let air = returning(degrees, humidity);
        let refrigerant = celsius(degrees - colder);
        let pass = coil(overall).pass(&air, refrigerant).unwrap();
        prop_assert!(pass.coldest.value <= pass.warmest.value + 1e-9);
        prop_assert!(pass.coldest.value >= refrigerant.value - 1e-9);
        prop_assert!(pass.warmest <= air.air.dry_bulb());
        prop_assert!(pass.total.value >= pass.sensible.value * (1.0 - 1e-6));
        prop_assert!(pass.frost.value >= 0.0);
        prop_assert!(pass.condensate.value >= pass.frost.value * (1.0 - 1e-9));
        prop_assert!(pass.leaving.relative_humidity() <= 1.0 + 1e-9);
        if let Some(apparatus) = pass.apparatus_dew_point {
            prop_assert!(apparatus < pass.leaving.dry_bulb());
        }
        // First law on the air that does not leave as fog; what settles takes at most some kJ/kg with it, or the heat of fusion back.
        if pass.leaving.relative_humidity() < 1.0 - 1e-6 {
            let dry_air = air.airflow * air.air.dry_air_density();
            let given_up = (dry_air * (air.air.enthalpy() - pass.leaving.enthalpy())).get::<watt>();
            let water = pass.condensate.get::<kilogram_per_second>();
            let aside = 500e3 * water + 0.002 * given_up;
            prop_assert!((pass.total.get::<watt>() - given_up).abs() <= aside);
            prop_assert!(pass.leaving.enthalpy().get::<joule_per_kilogram>().is_finite());
        }
    }

    #[test]
    fn ice_starts_on_one_side_only(
        degrees in 1.0..32.0_f64,
        humidity in 0.1..0.95_f64,
        overall in 60.0..1500.0_f64,
    ) {
        let air = returning(degrees, humidity);
        let coil = coil(overall);
        let Some((starts, _)) = ice_starts(&coil, &air).unwrap() else {
            return Ok(());
        };
        let near = |aside: f64| {
            let refrigerant = ThermodynamicTemperature::new::<kelvin>(starts.value + aside);
            coil.pass(&air, refrigerant).map(|pass| pass.surface)
        };
        prop_assert_eq!(near(-0.01), Ok(Surface::Frosting));
        if starts.value + 0.01 < air.air.dry_bulb().value {
            prop_assert_ne!(near(0.01), Ok(Surface::Frosting));
        }
    }

    #[test]
    fn a_larger_coil_gives_no_less(
        degrees in 0.0..32.0_f64,
        humidity in 0.1..0.95_f64,
        overall in 60.0..1000.0_f64,
        more in 1.0..1.5_f64,
    ) {
        let air = returning(degrees, humidity);
        let refrigerant = celsius(degrees - 15.0);
        let total = |overall| coil(overall).pass(&air, refrigerant).unwrap().total;
        prop_assert!(total(overall * more).value >= total(overall).value * (1.0 - 1e-6));
    }

    #[test]
    fn nothing_makes_a_coil_panic(
        overall in prop::num::f64::ANY,
        share in prop::num::f64::ANY,
        airflow in prop::num::f64::ANY,
        refrigerant in prop::num::f64::ANY,
    ) {
        let air = ReturnAir {
            airflow: VolumeRate::new::<cubic_meter_per_second>(airflow),
            ..returning(20.0, 0.5)
        };
        let overall = ThermalConductance::new::<watt_per_kelvin>(overall);
        if let Ok(coil) = Coil::new(overall, Given::entered(share)) {
            let at = ThermodynamicTemperature::new::<kelvin>(refrigerant);
            if let Ok(pass) = coil.pass(&air, at) {
                prop_assert!(pass.total.value.is_finite());
            }
            let _ = ice_starts(&coil, &air);
        }
    }
}
