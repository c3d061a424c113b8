//! Compressors: laws that hold for every plausible machine, and what is refused.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::f64::{Power, TemperatureInterval, ThermodynamicTemperature, VolumeRate};
use uom::si::{
    mass_rate::kilogram_per_second, power::kilowatt, power::watt,
    temperature_interval::kelvin as kelvin_interval, thermodynamic_temperature::degree_celsius,
    volume_rate::cubic_meter_per_hour,
};
use winterset_calc::compressor::capacity_steps::{CapacitySteps, Control, Delivery, Machine};
use winterset_calc::compressor::coefficients::Coefficients;
use winterset_calc::compressor::efficiency::{Build, Compressor, Losses, Nameplate, Size};
use winterset_calc::compressor::envelope::{
    Envelope, Limits, LowestCondensing, Place, Polygon, Side,
};
use winterset_calc::compressor::polynomial::{FlowUnit, Polynomial, PowerUnit, TemperatureScale};
use winterset_calc::compressor::rating::{DataSheet, VOLUME_CORRECTION};
use winterset_calc::compressor::{CompressorError, Output, Point, Suction};
use winterset_calc::refrigerant::Refrigerant;

const REFRIGERANTS: [&str; 5] = ["R-134a", "R-410A", "R-448A", "R-454B", "R-290"];
const BUILDS: [Build; 4] = [
    Build::Reciprocating,
    Build::Rotary,
    Build::Scroll,
    Build::Screw,
];

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn point(evaporating: f64, condensing: f64) -> Point {
    Point {
        evaporating: celsius(evaporating),
        condensing: celsius(condensing),
    }
}

fn span(kelvins: f64) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(kelvins)
}

fn superheat(kelvins: f64) -> Suction {
    Suction::Superheat(span(kelvins))
}

/// An invented flow that falls with condensing and rises with evaporating temperature, and power that rises with both.
fn sheet(refrigerant: &str) -> DataSheet {
    let scale = TemperatureScale::Celsius;
    let flow = [150.0, 5.0, -0.5, 0.06, 0.0, 0.0, 3e-4, 0.0, 0.0, 0.0];
    let power = [400.0, 2.0, 30.0, 0.0, 0.1, 0.0, 0.0, 0.0, 0.0, 0.0];
    DataSheet {
        refrigerant: Refrigerant::named(refrigerant).unwrap(),
        mass_flow: Some(Polynomial {
            coefficients: Coefficients::new(flow).unwrap(),
            scale,
            unit: FlowUnit::KilogramPerHour,
        }),
        power: Some(Polynomial {
            coefficients: Coefficients::new(power).unwrap(),
            scale,
            unit: PowerUnit::Watt,
        }),
        current: None,
        capacity: None,
        suction: superheat(10.0),
        subcooling: span(0.0),
    }
}

fn box_of(evaporating: (f64, f64), condensing: (f64, f64)) -> Envelope {
    let bounds = |(low, high)| (Some(celsius(low)), Some(celsius(high)));
    Envelope::Limits(Limits::new(bounds(evaporating), bounds(condensing)).unwrap())
}

#[test]
fn a_sheet_is_looked_through_over_its_envelope() {
    let sheet = sheet("R-134a");
    sheet.check(&box_of((-20.0, 10.0), (20.0, 60.0))).unwrap();
    let mut swapped = sheet.clone();
    let coefficients = [-150.0, 5.0, 0.5, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0];
    swapped.mass_flow = Some(Polynomial {
        coefficients: Coefficients::new(coefficients).unwrap(),
        scale: TemperatureScale::Celsius,
        unit: FlowUnit::KilogramPerHour,
    });
    assert!(matches!(
        swapped.check(&box_of((-20.0, 10.0), (20.0, 60.0))),
        Err(CompressorError::NotPositive {
            output: Output::MassFlow,
            ..
        })
    ));
    let open = Envelope::Limits(Limits::new((None, None), (None, None)).unwrap());
    assert_eq!(sheet.check(&open), Err(CompressorError::OpenEnvelope));
    let mut empty = sheet;
    empty.mass_flow = None;
    assert_eq!(
        empty.check(&box_of((-20.0, 10.0), (20.0, 60.0))),
        Err(CompressorError::NoFlow)
    );
    assert_eq!(empty.rated(point(0.0, 40.0)), Err(CompressorError::NoFlow));
}

#[test]
fn gas_below_its_dew_point_is_refused() {
    let at = |suction| sheet("R-448A").at(point(0.0, 40.0), suction, span(0.0));
    assert!(matches!(
        at(Suction::ReturnGas(celsius(-1.0))),
        Err(CompressorError::ReturnGasTooCold { .. })
    ));
    for kelvins in [-1.0, f64::NAN, f64::INFINITY] {
        assert!(at(superheat(kelvins)).is_err());
    }
    assert!(at(Suction::ReturnGas(celsius(f64::NAN))).is_err());
    assert!(at(superheat(0.0)).is_ok());
}

fn compressor(name: &str, build: Build, size: Size) -> Result<Compressor, CompressorError> {
    let refrigerant = Refrigerant::named(name).unwrap();
    let nameplate = Nameplate {
        point: point(5.0, 45.0),
        suction: superheat(10.0),
        subcooling: span(5.0),
        size,
    };
    Compressor::new(&refrigerant, Losses::usual(build), nameplate)
}

#[test]
fn an_efficiency_that_the_losses_rule_out_is_refused() {
    let refrigerant = Refrigerant::named("R-134a").unwrap();
    let make = |isentropic| {
        let losses = Losses {
            isentropic,
            constant_share: 0.2,
            ..Losses::usual(Build::Scroll)
        };
        let nameplate = Nameplate {
            point: point(5.0, 45.0),
            suction: superheat(10.0),
            subcooling: span(5.0),
            size: Size::Capacity(Power::new::<kilowatt>(5.0)),
        };
        Compressor::new(&refrigerant, losses, nameplate)
    };
    let Err(CompressorError::TooEfficient { most, .. }) = make(0.9) else {
        panic!("not refused");
    };
    assert!(most < 0.8);
    assert!(make(most - 1e-6).is_ok());
    assert!(make(most + 1e-6).is_err());
}

/// A compressor that opens at a fixed volume ratio wastes work on either side of it: least at low head pressure.
#[test]
fn low_head_pressure_costs_a_fixed_ratio_its_efficiency() {
    let size = Size::Displacement(VolumeRate::new::<cubic_meter_per_hour>(8.0));
    let [scroll, pistons] = [Build::Scroll, Build::Reciprocating]
        .map(|build| compressor("R-134a", build, size).unwrap());
    let isentropic = |compressor: &Compressor, condensing| {
        compressor
            .at(point(5.0, condensing), superheat(10.0), span(5.0))
            .unwrap()
            .isentropic
    };
    for condensing in [12.0, 16.0, 20.0] {
        assert!(isentropic(&scroll, condensing) < isentropic(&pistons, condensing));
        assert!(isentropic(&scroll, condensing) < isentropic(&scroll, condensing + 4.0));
    }
}

fn written(value: f64, comma: bool) -> String {
    let text = format!("{value:E}");
    if comma { text.replace('.', ",") } else { text }
}

fn machine() -> impl Strategy<Value = Machine> {
    let control = prop_oneof![
        Just(Control::Fixed),
        prop::collection::vec(0.05..1.0_f64, 0..4).prop_map(Control::Unloading),
        (0.2..1.0_f64, 1.0..1.5_f64)
            .prop_map(|(lowest, highest)| Control::Speed { lowest, highest }),
    ];
    (0.1..10.0_f64, control).prop_map(|(size, control)| Machine { size, control })
}

/// Corners of an envelope with one lower and one upper edge a step of evaporating temperature.
fn envelope() -> impl Strategy<Value = Envelope> {
    let column = (0.5..8.0_f64, 5.0..30.0_f64, 5.0..40.0_f64);
    (-40.0..0.0_f64, prop::collection::vec(column, 2..12)).prop_map(|(start, columns)| {
        let mut evaporating = start;
        let (mut lower, mut upper) = (Vec::new(), Vec::new());
        for (step, low, height) in columns {
            evaporating += step;
            lower.push(point(evaporating, low));
            upper.push(point(evaporating, low + height));
        }
        upper.reverse();
        lower.extend(upper);
        Envelope::Polygon(Polygon::new(&lower).unwrap())
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn what_is_printed_is_read(
        values in prop::array::uniform10(-1e6..1e6_f64),
        comma: bool,
        separator in prop::sample::select(vec![" ", "\t", "\n", ";", " ; ", "\r\n", ", "]),
    ) {
        let text = values.map(|value| written(value, comma)).join(separator);
        prop_assert_eq!(Coefficients::parse(&text).unwrap().values(), values);
    }

    #[test]
    fn any_text_is_read_or_refused(text in "[-+0-9.,;eEC \\n]{0,60}|\\PC{0,40}") {
        if let Ok(read) = Coefficients::parse(&text) {
            prop_assert!(read.values().iter().all(|value| value.is_finite()));
        }
    }

    #[test]
    fn the_rated_gas_gives_the_rated_answer_and_warmer_gas_less_flow(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        evaporating in -25.0..8.0_f64,
        condensing in 20.0..55.0_f64,
        more in 0.5..25.0_f64,
    ) {
        let (sheet, at) = (sheet(name), point(evaporating, condensing));
        let rated = sheet.rated(at).unwrap();
        prop_assert_eq!(sheet.at(at, sheet.suction, sheet.subcooling).unwrap(), rated);
        let warm = sheet.at(at, superheat(10.0 + more), sheet.subcooling).unwrap();
        let ratio = (warm.mass_flow / rated.mass_flow).value;
        prop_assert!(ratio < 1.0 && ratio > 1.0 - VOLUME_CORRECTION);
        // A lighter gas takes more work a kilogram.
        let each = |there: &winterset_calc::compressor::rating::Performance| {
            there.power.unwrap().get::<watt>() / there.mass_flow.get::<kilogram_per_second>()
        };
        prop_assert!(each(&warm) > each(&rated));
        let gas = celsius(evaporating + 10.0 + more);
        let again = sheet.at(at, Suction::ReturnGas(gas), sheet.subcooling).unwrap();
        prop_assert!(((again.mass_flow / warm.mass_flow).value - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_compressor_is_what_its_nameplate_says_and_no_better_than_perfect(
        name in prop::sample::select(REFRIGERANTS.to_vec()),
        build in prop::sample::select(BUILDS.to_vec()),
        kilowatts in 1.0..200.0_f64,
        evaporating in -25.0..8.0_f64,
        condensing in 12.0..55.0_f64,
    ) {
        let capacity = Power::new::<kilowatt>(kilowatts);
        let made = compressor(name, build, Size::Capacity(capacity)).unwrap();
        let rated = made.at(point(5.0, 45.0), superheat(10.0), span(5.0)).unwrap();
        prop_assert!(((rated.capacity / capacity).value - 1.0).abs() < 1e-9);
        prop_assert!((rated.isentropic - Losses::usual(build).isentropic).abs() < 1e-9);
        let there = made.at(point(evaporating, condensing), superheat(10.0), span(5.0)).unwrap();
        prop_assert!(there.isentropic > 0.0 && there.isentropic < 1.0);
        prop_assert!(there.volumetric > 0.0 && there.volumetric < 1.0);
        let twice = Size::Displacement(made.displacement() * 2.0);
        let double = compressor(name, build, twice).unwrap()
            .at(point(evaporating, condensing), superheat(10.0), span(5.0)).unwrap();
        prop_assert!(((double.power / there.power).value - 2.0).abs() < 1e-9);
        prop_assert!((double.isentropic - there.isentropic).abs() < 1e-9);
    }

    #[test]
    fn an_envelope_knows_its_own_lower_edge(
        envelope in envelope(),
        evaporating in -45.0..60.0_f64,
        beyond in 0.01..20.0_f64,
    ) {
        match envelope.lowest_condensing(celsius(evaporating)).unwrap() {
            LowestCondensing::At(lowest) => {
                let at = |condensing| Point { evaporating: celsius(evaporating), condensing };
                prop_assert_eq!(envelope.place(at(lowest)).unwrap(), Place::Inside);
                let below = envelope.place(at(lowest - span(beyond))).unwrap();
                let Place::Outside { evaporating: None, condensing: Some(exit) } = below else {
                    panic!("{below:?}");
                };
                prop_assert_eq!(exit.side, Side::CondensingTooLow);
                prop_assert!((exit.by.get::<kelvin_interval>() - beyond).abs() < 1e-9);
            }
            LowestCondensing::EvaporatingOutside(exit) => {
                prop_assert!(exit.by.get::<kelvin_interval>() > 0.0);
                let place = envelope.place(point(evaporating, 30.0)).unwrap();
                let same = matches!(place, Place::Outside { evaporating: Some(found), .. } if found == exit);
                prop_assert!(same);
            }
            LowestCondensing::NotLimited => panic!("a polygon is closed"),
        }
    }

    #[test]
    fn steps_meet_a_load_on_average(
        machines in prop::collection::vec(machine(), 1..5),
        load in 0.0..1.6_f64,
    ) {
        let steps = CapacitySteps::new(&machines).unwrap();
        for pair in steps.spans().windows(2) {
            prop_assert!(pair[0].0 <= pair[0].1 && pair[0].1 < pair[1].0);
        }
        prop_assert!(steps.lowest() > 0.0 && steps.highest() >= 1.0 - 1e-9);
        match steps.meet(load).unwrap() {
            Delivery::Off => prop_assert_eq!(load, 0.0),
            Delivery::Steady { share } => prop_assert_eq!(share, load),
            Delivery::Cycling { below, above, time_above } => {
                let mean = below + (above - below) * time_above;
                prop_assert!((mean - load).abs() < 1e-9);
                prop_assert!(below < load && load < above && time_above < 1.0);
            }
            Delivery::Short { share } => {
                prop_assert_eq!(share, steps.highest());
                prop_assert!(load > share);
            }
        }
    }
}
