//! Flooding, receiver and charge: a check value of practice, and laws that hold for every plausible system.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::f64::{Length, Mass, Power, TemperatureInterval, ThermodynamicTemperature, Volume};
use uom::si::{
    length::meter, mass::kilogram, power::kilowatt,
    temperature_interval::degree_fahrenheit as rankine,
    temperature_interval::kelvin as kelvin_interval, thermodynamic_temperature::degree_celsius,
    thermodynamic_temperature::degree_fahrenheit, thermodynamic_temperature::kelvin, volume::liter,
};
use winterset_calc::Given;
use winterset_calc::charge::{Circuit, ReceiverContent, usual_superheat_share};
use winterset_calc::flooding::{
    CondenserVolume, FloodingError, FloodingInput, ReceiverFit, Summer, Surface, Zones,
    flooding_charge, receiver_check, summer,
};
use winterset_calc::refrigerant::Refrigerant;

const REFRIGERANTS: [&str; 5] = ["R-134a", "R-410A", "R-448A", "R-454B", "R-290"];

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn liters(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

fn kilograms(value: f64) -> Mass {
    Mass::new::<kilogram>(value)
}

fn surface(over_ambient: f64) -> Surface {
    Surface {
        over_ambient: TemperatureInterval::new::<kelvin_interval>(over_ambient),
        heat_ratio: 1.0,
    }
}

fn circuit(refrigerant: &str) -> Circuit {
    Circuit {
        refrigerant: Refrigerant::named(refrigerant).unwrap(),
        condenser: liters(5.0),
        zones: Zones::usual(),
        surface: surface(12.0),
        liquid_line: liters(1.2),
        receiver: None,
        evaporator: liters(4.0),
        superheat_share: Given::assumed(usual_superheat_share()),
        evaporating: celsius(-5.0),
    }
}

/// Common practice, no published source: 90 °F held at 0 °F outdoors by a condenser made for 15 °F floods 83 %.
#[test]
fn the_share_that_practice_knows() {
    let condenser = Surface {
        over_ambient: TemperatureInterval::new::<rankine>(15.0),
        heat_ratio: 1.0,
    };
    let fahrenheit = ThermodynamicTemperature::new::<degree_fahrenheit>;
    let share = condenser
        .flooded_share(fahrenheit(90.0), fahrenheit(0.0))
        .unwrap();
    assert!((share - 0.83).abs() < 0.005, "{share}");
    let warm = condenser
        .flooded_share(fahrenheit(90.0), fahrenheit(75.0))
        .unwrap();
    assert!(warm.abs() < 1e-12);
}

/// What the flooded share and the condensing temperature that it leaves must be: one undoes the other.
#[test]
fn a_held_temperature_comes_back_from_its_share() {
    let circuit = circuit("R-134a");
    for outdoor in [-5.0, 0.0, 10.0, 15.0] {
        let (held, outdoor) = (celsius(32.0), celsius(outdoor));
        let share = circuit.surface.flooded_share(held, outdoor).unwrap();
        let there = circuit.balance(outdoor, share).unwrap();
        assert!((there.condensing.get::<kelvin>() - held.get::<kelvin>()).abs() < 1e-9);
    }
}

#[test]
fn a_volume_is_typed_counted_or_estimated() {
    let tubes = CondenserVolume::Tubes {
        inner_diameter: Length::new::<meter>(0.0087),
        length: Length::new::<meter>(2.0),
        count: 40,
    };
    // π/4 · 8.7² mm² · 80 m
    assert!((tubes.volume().unwrap().value.get::<liter>() - 4.7557).abs() < 1e-3);
    let estimate = CondenserVolume::FromHeat {
        heat: Power::new::<kilowatt>(10.0),
        over_ambient: TemperatureInterval::new::<kelvin_interval>(15.0),
    };
    let volume = estimate.volume().unwrap();
    assert_eq!(volume, Given::assumed(volume.value));
    assert!((volume.value.get::<liter>() - 4.0).abs() < 1e-9);
    assert!(CondenserVolume::Entered(liters(f64::NAN)).volume().is_err());
}

#[test]
fn a_receiver_fits_or_is_short_by_what_is_missing() {
    let refrigerant = Refrigerant::named("R-448A").unwrap();
    let check = |receiver| {
        receiver_check(
            &refrigerant,
            kilograms(6.0),
            kilograms(4.0),
            celsius(52.0),
            receiver,
        )
        .unwrap()
    };
    let needed = check(None).needed;
    assert!(check(None).fit.is_none());
    match check(Some(needed * 1.5)).fit {
        Some(ReceiverFit::Fits { spare }) => assert!(((spare / needed).value - 0.5).abs() < 1e-12),
        other => panic!("{other:?}"),
    }
    match check(Some(needed * 0.75)).fit {
        Some(ReceiverFit::Short { by }) => assert!(((by / needed).value - 0.25).abs() < 1e-12),
        other => panic!("{other:?}"),
    }
    // Above the critical temperature there is no liquid to hold.
    let carbon_dioxide = Refrigerant::named("R-744").unwrap();
    let hot = receiver_check(
        &carbon_dioxide,
        kilograms(6.0),
        kilograms(4.0),
        celsius(45.0),
        None,
    );
    assert!(matches!(hot, Err(FloodingError::Refrigerant(_))));
}

#[test]
fn in_summer_the_charge_goes_where_there_is_room() {
    let refrigerant = Refrigerant::named("R-134a").unwrap();
    let zones = Zones::usual();
    let condenser = (liters(6.0), &zones, &surface(12.0));
    let hot = |receiver, stored| {
        summer(
            &refrigerant,
            condenser,
            celsius(38.0),
            receiver,
            kilograms(stored),
        )
        .unwrap()
    };
    assert!(matches!(
        hot(Some(liters(8.0)), 5.0),
        Summer::InReceiver { fill } if fill < 0.8
    ));
    assert!(matches!(
        hot(Some(liters(5.0)), 5.0),
        Summer::AboveFillLimit { fill, excess } if fill > 0.8 && excess > kilograms(0.0)
    ));
    let design = celsius(50.0);
    let Summer::BacksUp {
        share: with_small, ..
    } = hot(Some(liters(3.0)), 5.0)
    else {
        panic!();
    };
    let Summer::BacksUp {
        charge,
        share: with_none,
        condensing,
    } = hot(None, 2.0)
    else {
        panic!();
    };
    assert_eq!(charge, kilograms(2.0));
    assert!(with_small < with_none);
    assert!(condensing > design);
    assert!(matches!(hot(None, 7.0), Summer::Overfills { .. }));
    assert!(matches!(hot(None, 0.0), Summer::BacksUp { share, .. } if share == 0.0));
}

#[test]
fn too_little_and_too_much_charge_say_what_would_do() {
    for name in REFRIGERANTS {
        let circuit = circuit(name);
        let outdoor = celsius(25.0);
        let Err(FloodingError::TooLittleCharge { least }) =
            circuit.flooded_share_for_charge(kilograms(0.1), outdoor)
        else {
            panic!("{name}");
        };
        let Err(FloodingError::TooMuchCharge { most, .. }) =
            circuit.flooded_share_for_charge(kilograms(50.0), outdoor)
        else {
            panic!("{name}");
        };
        assert!(least < most, "{name}");
        for part in [0.01, 0.5, 0.99] {
            let total = least + (most - least) * part;
            let there = circuit.flooded_share_for_charge(total, outdoor).unwrap();
            assert!(
                ((there.charge.total() / total).value - 1.0).abs() < 1e-9,
                "{name}"
            );
        }
    }
}

#[test]
fn too_hot_a_day_is_refused() {
    let carbon_dioxide = circuit("R-744");
    assert!(matches!(
        carbon_dioxide.flooded_share_for_charge(kilograms(5.0), celsius(35.0)),
        Err(FloodingError::Refrigerant(_))
    ));
}

/// A cold day with condensing below evaporating at any small share: the charge that the circuit must have is told.
#[test]
fn a_cold_day_needs_liquid_in_the_condenser() {
    let circuit = circuit("R-134a");
    let Err(FloodingError::TooLittleCharge { least }) =
        circuit.flooded_share_for_charge(kilograms(1.0), celsius(-30.0))
    else {
        panic!();
    };
    let there = circuit
        .flooded_share_for_charge(least * 1.01, celsius(-30.0))
        .unwrap();
    assert!(there.condensing > circuit.evaporating);
    assert!(there.flooded > 0.5);
}

#[test]
fn a_receiver_adds_what_lies_in_it() {
    let plain = circuit("R-454B");
    let with = Circuit {
        receiver: Some(ReceiverContent {
            volume: liters(3.0),
            fill: 0.3,
        }),
        ..plain.clone()
    };
    let (without, with) = (
        plain.balance(celsius(20.0), 0.1).unwrap(),
        with.balance(celsius(20.0), 0.1).unwrap(),
    );
    assert_eq!(without.charge.receiver, kilograms(0.0));
    assert!(with.charge.receiver > kilograms(0.5));
    assert_eq!(without.charge.condenser, with.charge.condenser);
}

#[test]
fn what_is_out_of_range_is_named() {
    let refused = surface(12.0).flooded_share(celsius(30.0), celsius(f64::NAN));
    assert!(matches!(
        refused,
        Err(FloodingError::OutOfRange {
            input: FloodingInput::Outdoor,
            ..
        })
    ));
    let crowded = Zones {
        vapor: Given::entered(0.6),
        liquid: Given::entered(0.4),
        ..Zones::usual()
    };
    let refrigerant = Refrigerant::named("R-134a").unwrap();
    assert!(matches!(
        crowded.mean_density(&refrigerant, celsius(40.0)),
        Err(FloodingError::NoTwoPhaseZone { .. })
    ));
}

proptest! {
    #[test]
    fn colder_never_needs_less(
        refrigerant in prop::sample::select(REFRIGERANTS.to_vec()),
        over_ambient in 4.0..25.0,
        heat_ratio in 0.3..1.3,
        held in 15.0..45.0,
        outdoor in -45.0..40.0,
        colder in 0.0..20.0,
    ) {
        let refrigerant = Refrigerant::named(refrigerant).unwrap();
        let surface = Surface { heat_ratio, ..surface(over_ambient) };
        let held = celsius(held);
        let at = |outdoor: f64| {
            let share = surface.flooded_share(held, celsius(outdoor)).unwrap();
            let charge = flooding_charge(
                &refrigerant, liters(5.0), &Zones::usual(), share, held, celsius(outdoor),
            ).unwrap();
            (share, charge.extra)
        };
        let (warm, cold) = (at(outdoor), at(outdoor - colder));
        prop_assert!((0.0..1.0).contains(&warm.0));
        prop_assert!(cold.0 >= warm.0);
        prop_assert!(cold.1 >= warm.1);
    }

    #[test]
    fn more_charge_floods_more_and_condenses_hotter(
        refrigerant in prop::sample::select(REFRIGERANTS.to_vec()),
        outdoor in 0.0..38.0,
        first in 0.01..0.98_f64,
        more in 0.0..0.5_f64,
    ) {
        let circuit = circuit(refrigerant);
        let outdoor = celsius(outdoor);
        let bound = |total| match circuit.flooded_share_for_charge(kilograms(total), outdoor) {
            Err(FloodingError::TooLittleCharge { least }) => least,
            Err(FloodingError::TooMuchCharge { most, .. }) => most,
            other => panic!("{other:?}"),
        };
        let (least, most) = (bound(0.0), bound(100.0));
        let at = |part: f64| {
            circuit.flooded_share_for_charge(least + (most - least) * part, outdoor).unwrap()
        };
        let (less, more) = (at(first), at((first + more).min(0.99)));
        prop_assert!(more.flooded >= less.flooded - 1e-12);
        prop_assert!(more.condensing.get::<kelvin>() >= less.condensing.get::<kelvin>() - 1e-9);
        prop_assert!(less.subcooling.get::<kelvin_interval>() >= 0.0);
    }
}
