//! A compressor's data sheet decides how flow and power go with the pressures; the nameplate decides how much they are.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

mod common;

use common::{celsius, interval, plausible};
use proptest::prelude::*;
use winterset_calc::advice::LoadEffect;
use winterset_calc::compressor::Suction;
use winterset_calc::compressor::coefficients::Coefficients;
use winterset_calc::compressor::polynomial::{FlowUnit, Polynomial, PowerUnit, TemperatureScale};
use winterset_calc::compressor::rating::DataSheet;
use winterset_calc::input::{CapacityControl, Load};
use winterset_calc::{Condition, Input, Method, plan, usual};

/// An invented compressor: flow falls with lift, power rises with condensing.
fn sheet(input: &Input, size: f64) -> DataSheet {
    let polynomial =
        |values: [f64; 10]| Coefficients::new(values.map(|value| value * size)).unwrap();
    DataSheet {
        refrigerant: input.refrigerant.clone(),
        mass_flow: Some(Polynomial {
            coefficients: polynomial([260.0, 7.0, -0.9, 0.06, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0]),
            scale: TemperatureScale::Celsius,
            unit: FlowUnit::KilogramPerHour,
        }),
        power: Some(Polynomial {
            coefficients: polynomial([900.0, -6.0, 45.0, 0.0, 0.2, 0.1, 0.0, 0.0, 0.0, 0.0]),
            scale: TemperatureScale::Celsius,
            unit: PowerUnit::Watt,
        }),
        current: None,
        capacity: None,
        suction: Suction::Superheat(interval(20.0 / 1.8)),
        subcooling: interval(0.0),
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn the_known_point_is_met_whatever_the_size_of_the_sheet(input in plausible(), size in 0.2..5.0) {
        let with = |size: f64| plan(&Input { compressor_sheet: Some(sheet(&input, size)), ..input.clone() });
        let (Ok(made), Ok(other)) = (with(1.0), with(size)) else { return Ok(()) };
        let Load::Cooling(wanted) = input.load else { return Ok(()) };
        prop_assert!((made.design.cycle.cooling / wanted).value - 1.0 < 1e-9);
        prop_assert!((made.need.condensing.value - other.need.condensing.value).abs() < 1e-4);
        let (a, b) = (made.design.heat_rejected.value, other.design.heat_rejected.value);
        prop_assert!((a / b).value - 1.0 < 1e-9);
    }

    #[test]
    fn balances_close_and_are_numbers(input in plausible(), outdoor in -30.0..30.0) {
        let Ok(made) = plan(&Input { compressor_sheet: Some(sheet(&input, 1.0)), ..input }) else { return Ok(()) };
        let Ok(rung) = made.at(celsius(outdoor)) else { return Ok(()) };
        for method in Method::ALL {
            let point = rung.of(method);
            prop_assert!(point.pressure.value.is_finite() && point.heat_rejected.value >= 0.0, "{method:?} {point:?}");
            match point.cycle {
                Some(cycle) => {
                    let given = cycle.cooling.value + cycle.compressor_power.value;
                    prop_assert!((given / point.heat_rejected.value - 1.0).abs() < 1e-6);
                }
                None => prop_assert_eq!(point.condition, Condition::LowPressureTrip),
            }
        }
    }

    #[test]
    fn of_two_loads_the_lower_never_holds_further(input in plausible(), shares in (0.05..1.0, 0.05..1.0_f64)) {
        let (less, more) = (f64::min(shares.0, shares.1), f64::max(shares.0, shares.1));
        let at = |share| plan(&Input { lowest_load: winterset_calc::Given::entered(share), ..input.clone() });
        let (Ok(less), Ok(more)) = (at(less), at(more)) else { return Ok(()) };
        let (less, more) = (less.hold_at_lowest_load.unwrap(), more.hold_at_lowest_load.unwrap());
        for method in Method::ALL {
            prop_assert!(less.of(method).value >= more.of(method).value - interval(1e-6), "{method:?}");
        }
    }

    #[test]
    fn part_load_is_that_of_the_recommended_method(
        input in plausible(),
        control in prop::sample::select(CapacityControl::ALL),
        stages in 2_u32..=6,
    ) {
        let lowest_load = winterset_calc::Given::assumed(usual::lowest_load(control, stages));
        let capacity_control = winterset_calc::Given::entered(control);
        let Ok(made) = plan(&Input { capacity_control, lowest_load, ..input }) else { return Ok(()) };
        let found = made.part_load();
        prop_assert_eq!(found.method, made.recommendation.method);
        prop_assert_eq!(found.limit, made.verdict.limit());
        prop_assert!(found.limit >= found.full_load - interval(1e-6));
        let full = control == CapacityControl::OnOff;
        prop_assert_eq!(found.share == 1.0, full);
        prop_assert_eq!(found.effect() == LoadEffect::Cycles, full);
    }

    #[test]
    fn less_load_never_lowers_a_hold_limit(input in plausible(), share in 0.2..0.9) {
        let part = Input { lowest_load: winterset_calc::Given::entered(share), ..input };
        let Ok(made) = plan(&part) else { return Ok(()) };
        let lowest = made.hold_at_lowest_load.as_ref().unwrap();
        for method in Method::ALL {
            prop_assert!(lowest.of(method).value >= made.hold.of(method).value - interval(1e-6), "{method:?}");
        }
    }
}
