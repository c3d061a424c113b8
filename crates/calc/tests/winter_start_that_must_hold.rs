//! The winter start: what practice knows, and laws that hold for every plausible system.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::f64::{
    HeatCapacity, Mass, Power, Pressure, ThermalConductance, ThermodynamicTemperature, Time, Volume,
};
use uom::si::{
    heat_capacity::joule_per_kelvin, mass::kilogram, power::kilowatt, power::watt,
    pressure::kilopascal, pressure::pascal, thermal_conductance::watt_per_kelvin,
    thermodynamic_temperature::degree_celsius, time::hour, time::second, volume::liter,
};
use winterset_calc::Given;
use winterset_calc::input::Metering;
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::winter_start::{
    BypassOutcome, Contact, LowPressureSwitch, Night, Nominal, Part, Persists, Place, SetBy,
    StartError, StartInput, StartUp, migration, standing, usual_bypass_range,
    usual_evaporator_charge, usual_heat_capacity, usual_horizon,
};

const REFRIGERANTS: [&str; 5] = ["R-134a", "R-410A", "R-448A", "R-454B", "R-290"];

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn kilopascals(value: f64) -> Pressure {
    Pressure::new::<kilopascal>(value)
}

fn refrigerant(name: &str) -> Refrigerant {
    Refrigerant::named(name).unwrap()
}

/// A room system of 8 kW that has stood at equal pressures, its fan held off.
fn start_up(name: &str, outdoor: f64) -> StartUp {
    let refrigerant = refrigerant(name);
    let cooling = Power::new::<kilowatt>(8.0);
    let (metal, liquid) = (Mass::new::<kilogram>(20.0), Mass::new::<kilogram>(2.5));
    let suction = standing(&refrigerant, celsius(outdoor), celsius(20.0)).unwrap();
    StartUp {
        heat_capacity: usual_heat_capacity(&refrigerant, metal, liquid, celsius(outdoor)).unwrap(),
        refrigerant,
        nominal: Nominal {
            cooling,
            evaporating: celsius(5.0),
            condensing: celsius(40.0),
        },
        metering: Metering::TxvConventional,
        outdoor: celsius(outdoor),
        room: celsius(20.0),
        liquid_at_start: celsius(outdoor),
        suction_at_start: suction.low_side_equal,
        low_side_volume: Volume::new::<liter>(6.0),
        evaporator_charge: Given::assumed(usual_evaporator_charge(cooling)),
        charge_at_start: Given::assumed(0.0),
        condenser_conductance: ThermalConductance::new::<watt_per_kelvin>(25.0),
        receiver_heat: Power::default(),
    }
}

/// A switch by the dew temperatures at which it opens and closes.
fn switch(refrigerant: &Refrigerant, cut_out: f64, cut_in: f64) -> LowPressureSwitch {
    let at = |degrees| refrigerant.dew_pressure(celsius(degrees)).unwrap();
    LowPressureSwitch::new(at(cut_out), at(cut_in)).unwrap()
}

fn seconds(outcome: &BypassOutcome) -> Option<f64> {
    outcome.bypass().map(|time| time.get::<second>())
}

/// Common practice, no published source: 60 to 180 s of bypass carry a room system through a start at some ten degrees of frost; none is needed in
/// summer.
#[test]
fn the_bypass_that_practice_sets() {
    let (low, high) = usual_bypass_range();
    for name in ["R-134a", "R-410A", "R-454B"] {
        let cold = start_up(name, -12.0);
        let switch = switch(&cold.refrigerant, -8.0, -4.0);
        let outcome = cold.bypass(&switch, usual_horizon()).unwrap();
        let BypassOutcome::Trips { until, lowest, .. } = outcome else {
            panic!("{name}: {outcome:?}");
        };
        assert!(until > low * 0.5 && until < high, "{name}: {until:?}");
        assert!(lowest < switch.cut_out(), "{name}");
        let warm = start_up(name, 25.0)
            .bypass(&switch, usual_horizon())
            .unwrap();
        assert!(
            matches!(warm, BypassOutcome::NeverTrips { .. }),
            "{name}: {warm:?}"
        );
    }
}

#[test]
fn a_fan_that_runs_on_may_never_let_it_recover() {
    let cold = StartUp {
        condenser_conductance: ThermalConductance::new::<watt_per_kelvin>(1500.0),
        ..start_up("R-134a", -20.0)
    };
    let switch = switch(&cold.refrigerant, -8.0, -4.0);
    let outcome = cold.bypass(&switch, usual_horizon()).unwrap();
    assert!(
        matches!(
            outcome,
            BypassOutcome::NeverRecovers {
                persists: Persists::Settled,
                ..
            }
        ),
        "{outcome:?}"
    );
    // Cut short, the same start with its fan held off still rises.
    let short = start_up("R-134a", -20.0)
        .bypass(&switch, Time::new::<second>(20.0))
        .unwrap();
    assert!(
        matches!(
            short,
            BypassOutcome::NeverRecovers {
                persists: Persists::StillRising,
                ..
            }
        ),
        "{short:?}"
    );
}

/// ASHRAE Handbook Fundamentals, thermophysical properties of refrigerants, R-134a at saturation: 0.20060 MPa at -10 °C, 0.57171 MPa at 20 °C (from
/// memory).
#[test]
fn a_night_leaves_the_pressures_of_saturation() {
    let r134a = refrigerant("R-134a");
    let night = standing(&r134a, celsius(-10.0), celsius(20.0)).unwrap();
    assert!((night.cold_side.get::<kilopascal>() - 200.6).abs() < 0.1);
    assert!((night.low_side_closed.get::<kilopascal>() - 571.7).abs() < 0.2);
    assert_eq!(night.low_side_equal, night.cold_side);
    let summer = standing(&r134a, celsius(30.0), celsius(20.0)).unwrap();
    assert_eq!(summer.low_side_equal, summer.low_side_closed);
}

#[test]
fn a_switch_opens_closes_or_stays() {
    let switch = LowPressureSwitch::new(kilopascals(180.0), kilopascals(250.0)).unwrap();
    assert!(
        matches!(switch.contact(kilopascals(300.0)), Contact::Closed { margin } if margin > kilopascals(119.0))
    );
    assert_eq!(switch.contact(kilopascals(200.0)), Contact::AsItWas);
    assert!(
        matches!(switch.contact(kilopascals(150.0)), Contact::Open { short_by } if short_by > kilopascals(99.0))
    );
    assert!(matches!(
        LowPressureSwitch::new(kilopascals(250.0), kilopascals(180.0)),
        Err(StartError::CutInBelowCutOut { .. })
    ));
}

fn parts(compressor: f64) -> [Part; 3] {
    let part = |place, degrees, liters, kilograms| Part {
        place,
        temperature: celsius(degrees),
        volume: Volume::new::<liter>(liters),
        charge: Mass::new::<kilogram>(kilograms),
    };
    [
        part(Place::Evaporator, 20.0, 4.0, 0.8),
        part(Place::Compressor, compressor, 5.0, 0.1),
        part(Place::Condenser, -5.0, 4.0, 1.5),
    ]
}

#[test]
fn refrigerant_goes_to_the_coldest_part() {
    let r134a = refrigerant("R-134a");
    let cold = migration(&r134a, &parts(-10.0), None).unwrap();
    assert_eq!(cold.coldest, Place::Compressor);
    assert!(cold.moved > Mass::new::<kilogram>(1.9), "{cold:?}");
    let heated = migration(&r134a, &parts(10.0), None).unwrap();
    assert_eq!(heated.coldest, Place::Condenser);
    let night = |hours, conductance| Night {
        time: Time::new::<hour>(hours),
        conductance: ThermalConductance::new::<watt_per_kelvin>(conductance),
    };
    let short = migration(&r134a, &parts(-10.0), Some(&night(1.0, 2.0))).unwrap();
    assert_eq!(short.set_by, SetBy::Heat);
    // 2 W/K · 30 K · 3600 s over some 206 kJ/kg (ASHRAE Handbook Fundamentals, R-134a at -10 °C, from memory).
    let moved = short.moved.get::<kilogram>();
    assert!((moved - 216e3 / 206e3).abs() < 0.01, "{moved}");
    let long = migration(&r134a, &parts(-10.0), Some(&night(24.0, 2.0))).unwrap();
    assert_eq!((long.set_by, long.moved), (SetBy::Equilibrium, cold.moved));
}

#[test]
fn little_charge_is_all_vapour_and_much_does_not_fit() {
    let r290 = refrigerant("R-290");
    let with = |kilograms| {
        let mut parts = parts(-10.0);
        for part in &mut parts {
            part.charge = Mass::new::<kilogram>(kilograms);
        }
        migration(&r290, &parts, None)
    };
    let vapor = with(0.02).unwrap();
    assert!(vapor.pressure < r290.bubble_pressure(celsius(-10.0)).unwrap());
    assert!(vapor.parts.iter().all(|held| held.liquid == 0.0));
    let total: Mass = vapor.parts.iter().map(|held| held.mass).sum();
    assert!((total.get::<kilogram>() - 0.06).abs() < 1e-9);
    assert!(matches!(with(5.0), Err(StartError::Overfilled { most }) if most > 5.0 && most < 8.0));
    assert_eq!(migration(&r290, &[], None), Err(StartError::NoParts));
}

#[test]
fn what_cannot_be_is_named() {
    let usual = start_up("R-134a", -10.0);
    let switch = switch(&usual.refrigerant, -8.0, -4.0);
    let refused = |start: &StartUp| start.bypass(&switch, usual_horizon()).unwrap_err();
    let tiny = StartUp {
        low_side_volume: Volume::new::<liter>(0.02),
        ..usual.clone()
    };
    assert!(matches!(
        refused(&tiny),
        StartError::OutOfRange {
            input: StartInput::LowSideVolume,
            ..
        }
    ));
    let cold_room = StartUp {
        room: celsius(5.0),
        ..usual.clone()
    };
    assert!(matches!(
        refused(&cold_room),
        StartError::NotAbove {
            above: StartInput::Room,
            ..
        }
    ));
    let hot_night = StartUp {
        outdoor: celsius(39.0),
        ..usual.clone()
    };
    assert!(matches!(refused(&hot_night), StartError::NotAbove { .. }));
    let no_number = StartUp {
        heat_capacity: HeatCapacity::new::<joule_per_kelvin>(f64::NAN),
        ..usual.clone()
    };
    assert!(matches!(
        refused(&no_number),
        StartError::OutOfRange {
            input: StartInput::HeatCapacity,
            ..
        }
    ));
    assert!(usual.bypass(&switch, Time::new::<hour>(5.0)).is_err());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn warmer_liquid_recovers_no_later(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        outdoor in -25.0..-5.0_f64,
        warmer in 1.0..25.0_f64,
        heat_capacity in 3e3..40e3_f64,
    ) {
        let cold = StartUp {
            heat_capacity: HeatCapacity::new::<joule_per_kelvin>(heat_capacity),
            ..start_up(name, outdoor)
        };
        let warmed = StartUp {
            liquid_at_start: celsius(outdoor + warmer),
            receiver_heat: Power::new::<watt>(200.0),
            ..cold.clone()
        };
        let switch = switch(&cold.refrigerant, -12.0, -8.0);
        let time = |start: &StartUp| seconds(&start.bypass(&switch, usual_horizon()).unwrap());
        match (time(&cold), time(&warmed)) {
            (Some(cold), Some(warmed)) => prop_assert!(warmed <= cold + 1e-3),
            (Some(_), None) => prop_assert!(false, "heat made it worse"),
            (None, _) => {}
        }
    }

    #[test]
    fn a_lower_switch_opens_no_sooner(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        outdoor in -25.0..10.0_f64,
        lower in 0.0..20.0_f64,
    ) {
        let start = start_up(name, outdoor);
        let outcome = |cut_out: f64| {
            let switch = switch(&start.refrigerant, cut_out, cut_out + 4.0);
            start.bypass(&switch, usual_horizon()).unwrap()
        };
        let (high, low) = (outcome(-6.0), outcome(-6.0 - lower));
        match (seconds(&high), seconds(&low)) {
            (Some(high), Some(low)) => prop_assert!(low <= high + 1e-3),
            (Some(_), None) => prop_assert!(false, "a lower switch stays open longer"),
            (None, _) => {}
        }
    }

    #[test]
    fn every_moment_is_a_number(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        outdoor in -40.0..30.0_f64,
        volume in 3.0..100.0_f64,
        charge in 0.1..5.0_f64,
        share in 0.0..1.2_f64,
        heat_capacity in 2e3..1e6_f64,
        conductance in 0.0..2000.0_f64,
    ) {
        let usual = start_up(name, outdoor);
        let start = StartUp {
            low_side_volume: Volume::new::<liter>(volume),
            evaporator_charge: Given::entered(Mass::new::<kilogram>(charge)),
            charge_at_start: Given::entered(share),
            heat_capacity: HeatCapacity::new::<joule_per_kelvin>(heat_capacity),
            condenser_conductance: ThermalConductance::new::<watt_per_kelvin>(conductance),
            ..usual
        };
        let highest = start.refrigerant.dew_pressure(celsius(41.0)).unwrap();
        let course = start.course(usual_horizon()).unwrap();
        prop_assert!(course.len() > 600);
        for moment in course {
            prop_assert!(moment.suction.get::<pascal>() > 0.0);
            prop_assert!(moment.head.get::<pascal>() > 0.0 && moment.head < highest * 1.3);
            let liquid = moment.evaporator_charge.get::<kilogram>();
            prop_assert!((0.0..=1.25 * charge).contains(&liquid), "{}", liquid);
        }
    }

    #[test]
    fn migration_loses_nothing(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        temperatures in prop::array::uniform4(-30.0..30.0_f64),
        volumes in prop::array::uniform4(0.2..10.0_f64),
        fill in 0.001..0.8_f64,
    ) {
        let refrigerant = refrigerant(name);
        let places = [Place::Compressor, Place::Condenser, Place::Evaporator, Place::SuctionLine];
        let parts: Vec<Part> = (0..4)
            .map(|index| {
                let volume = Volume::new::<liter>(volumes[index]);
                let temperature = celsius(temperatures[index]);
                let liquid = refrigerant.bubble_at_temperature(celsius(30.0)).unwrap().density;
                Part { place: places[index], temperature, volume, charge: liquid * volume * fill }
            })
            .collect();
        let charge: f64 = parts.iter().map(|part| part.charge.get::<kilogram>()).sum();
        let found = migration(&refrigerant, &parts, None).unwrap();
        let total: f64 = found.parts.iter().map(|held| held.mass.get::<kilogram>()).sum();
        prop_assert!((total / charge - 1.0).abs() < 1e-6, "{} of {}", total, charge);
        let coldest = parts.iter().map(|part| part.temperature.value).fold(f64::MAX, f64::min);
        let of = parts.iter().find(|part| part.place == found.coldest).unwrap();
        prop_assert_eq!(of.temperature.value, coldest);
        for pair in found.parts.windows(2) {
            prop_assert!(pair[0].liquid >= pair[1].liquid);
        }
        prop_assert!(found.moved.get::<kilogram>() >= 0.0);
    }
}
