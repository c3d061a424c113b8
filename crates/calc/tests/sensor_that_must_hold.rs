//! Sensors against printed tables and worked numbers, and laws that hold for every sound sensor.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::electric_current::milliampere;
use uom::si::electric_potential::volt;
use uom::si::electrical_resistance::ohm;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Pressure,
    TemperatureInterval, ThermodynamicTemperature,
};
use uom::si::length::meter;
use uom::si::pressure::{bar, pascal};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use winterset_calc::air::atmosphere;
use winterset_calc::sensor::{
    Beta, CurrentLoop, Fault, PressureRange, Ratiometric, Reading, Reference, ResistancePoint,
    SensorError, Series, SteinhartHart, Thermistor, current_at_share, share_at_current, substitute,
};

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn ohms(value: f64) -> ElectricalResistance {
    ElectricalResistance::new::<ohm>(value)
}

fn bars(value: f64) -> Pressure {
    Pressure::new::<bar>(value)
}

fn volts(value: f64) -> ElectricPotential {
    ElectricPotential::new::<volt>(value)
}

fn milliamperes(value: f64) -> ElectricCurrent {
    ElectricCurrent::new::<milliampere>(value)
}

fn point(degrees: f64, resistance: f64) -> ResistancePoint {
    ResistancePoint {
        temperature: celsius(degrees),
        resistance: ohms(resistance),
    }
}

fn beta(base: f64, kelvins: f64) -> Thermistor {
    let beta = TemperatureInterval::new::<kelvin_interval>(kelvins);
    Thermistor::Beta(Beta::at_25(ohms(base), beta).unwrap())
}

/// A printed resistance table of a common 10 kΩ thermistor (a data logger's manual, openly published; six figures).
const TABLE: [(f64, f64); 8] = [
    (-40.0, 336_103.2),
    (-35.0, 242_430.2),
    (-30.0, 176_804.8),
    (-25.0, 130_307.6),
    (-20.0, 97_006.9),
    (-15.0, 72_911.1),
    (-10.0, 55_303.9),
    (0.0, 32_650.9),
];

/// Steinhart & Hart 1968: a curve through three points of a table is within millikelvins of the rest of it.
#[test]
fn three_points_of_a_table_give_the_rest() {
    let curve = SteinhartHart::through([
        point(-40.0, 336_103.2),
        point(-20.0, 97_006.9),
        point(0.0, 32_650.9),
    ]);
    let sensor = Thermistor::SteinhartHart(curve.unwrap());
    for (degrees, resistance) in TABLE {
        let read = sensor.temperature(ohms(resistance)).unwrap();
        assert!(
            (read.get::<degree_celsius>() - degrees).abs() < 0.005,
            "{degrees}"
        );
        let expected = sensor.resistance(celsius(degrees)).unwrap().get::<ohm>();
        assert!((expected / resistance - 1.0).abs() < 3e-4, "{degrees}");
    }
    // 10 kΩ at 25 °C, the sensor's name, 25 K beyond the points.
    let name = sensor.temperature(ohms(10_000.0)).unwrap();
    assert!((name.get::<degree_celsius>() - 25.0).abs() < 0.02);
}

/// A worked example of the equation that is in wide public use: 25 kΩ at 5 °C, 10 kΩ at 25 °C and 4 kΩ at 45 °C give these
/// coefficients (from memory; ten figures, so the last of them is open).
#[test]
fn a_worked_fit_gives_its_coefficients() {
    let points = [
        point(5.0, 25_000.0),
        point(25.0, 10_000.0),
        point(45.0, 4_000.0),
    ];
    let (a, b, c) = SteinhartHart::through(points).unwrap().coefficients();
    for (ours, printed) in [
        (a, 2.108_508_173e-3),
        (b, 0.797_920_472_7e-4),
        (c, 6.535_076_315e-7),
    ] {
        assert!((ours / printed - 1.0).abs() < 2e-9, "{ours} {printed}");
    }
}

/// The coefficients usually printed for a 10 kΩ thermistor (from memory) give 25 °C at 10 kΩ and the table's 0 °C.
#[test]
fn printed_coefficients_give_the_printed_resistances() {
    let curve = SteinhartHart::new(1.129_148e-3, 2.341_25e-4, 8.767_41e-8).unwrap();
    let sensor = Thermistor::SteinhartHart(curve);
    for (degrees, resistance) in [(25.0, 10_000.0), (0.0, 32_650.9), (-20.0, 97_006.9)] {
        let read = sensor.temperature(ohms(resistance)).unwrap();
        // The coefficients carry six figures, good for some hundredths of a kelvin.
        assert!(
            (read.get::<degree_celsius>() - degrees).abs() < 0.03,
            "{degrees}"
        );
    }
}

/// IEC 60539-1: B = T₁·T₂/(T₂ − T₁) · ln(R₁/R₂); by hand, 10 kΩ at 25 °C and 1 kΩ at 85 °C: 298.15·358.15/60 · 2.302585 =
/// 4097.93 K.
#[test]
fn beta_follows_from_two_resistances() {
    let fit = Beta::through([point(25.0, 10_000.0), point(85.0, 1_000.0)]).unwrap();
    let ours = fit.beta().get::<kelvin_interval>();
    let by_hand = 298.15 * 358.15 / 60.0 * std::f64::consts::LN_10;
    assert!((ours - by_hand).abs() < 1e-6, "{ours}");
    let sensor = Thermistor::Beta(fit);
    for (degrees, resistance) in [(25.0, 10_000.0), (85.0, 1_000.0)] {
        let read = sensor.resistance(celsius(degrees)).unwrap().get::<ohm>();
        assert!((read - resistance).abs() < 1e-8 * resistance);
    }
}

/// Beta of the same sensor between 25 and 85 °C carries to 0 °C within a kelvin, not further: what its documentation warns of.
#[test]
fn beta_is_a_little_off_in_the_cold() {
    let sensor = beta(10_000.0, 3976.0);
    let off = |degrees: f64, resistance: f64| {
        let read = sensor.temperature(ohms(resistance)).unwrap();
        (read.get::<degree_celsius>() - degrees).abs()
    };
    assert!(off(0.0, 32_650.9) < 1.0);
    assert!(off(-40.0, 336_103.2) > off(-20.0, 97_006.9));
}

#[test]
fn broken_and_shorted_sensors_show() {
    let sensor = beta(10_000.0, 3976.0);
    let read = |value: f64| sensor.reading(ohms(value));
    assert_eq!(read(f64::INFINITY), Ok(Reading::Fault(Fault::Open)));
    assert_eq!(read(1e7), Ok(Reading::Fault(Fault::Open)));
    assert_eq!(read(0.3), Ok(Reading::Fault(Fault::Short)));
    assert_eq!(read(-0.2), Ok(Reading::Fault(Fault::Short)));
    assert!(matches!(read(10_000.0), Ok(Reading::Value(_))));
    assert!(matches!(
        read(f64::NAN),
        Err(SensorError::OutOfRange { .. })
    ));
    assert!(sensor.temperature(ohms(0.3)).is_err());
    assert!(sensor.resistance(celsius(-61.0)).is_err());
}

#[test]
fn impossible_points_are_refused() {
    let through = |points| SteinhartHart::through(points).unwrap_err();
    let rising = [point(0.0, 1000.0), point(20.0, 1080.0), point(40.0, 1160.0)];
    assert_eq!(through(rising), SensorError::NotFalling);
    let close = [
        point(0.0, 32_000.0),
        point(2.0, 30_000.0),
        point(40.0, 5_000.0),
    ];
    assert!(matches!(through(close), SensorError::PointsTooClose { .. }));
    let slip = [
        point(0.0, 32_650.0),
        point(25.0, 31_000.0),
        point(50.0, 3_603.0),
    ];
    assert_eq!(through(slip), SensorError::NotFalling);
    for wild in [f64::NAN, f64::INFINITY, -1.0] {
        assert!(SteinhartHart::new(1.1e-3, wild, 8.8e-8).is_err());
    }
    assert!(Beta::through([point(0.0, 100.0), point(50.0, 120.0)]).is_err());
}

/// A quarter, half and three quarters of a 0 to 34.5 bar range on 5 V: 1.5, 2.5 and 3.5 V by definition of 0.5 to 4.5 V.
#[test]
fn a_ratiometric_transducer_reads_in_proportion() {
    let range = PressureRange::new(bars(0.0), bars(34.5), Reference::SealedGauge).unwrap();
    let sensor = Ratiometric::usual(range);
    for (output, gauge) in [
        (0.5, 0.0),
        (1.5, 8.625),
        (2.5, 17.25),
        (3.5, 25.875),
        (4.5, 34.5),
    ] {
        let Reading::Value(read) = sensor.pressure(volts(5.0), volts(output)).unwrap() else {
            panic!("{output} V is no fault");
        };
        assert!(
            (read.get::<bar>() - gauge - 1.01325).abs() < 1e-9,
            "{output}"
        );
    }
    let fault = |output| sensor.pressure(volts(5.0), volts(output)).unwrap();
    assert_eq!(fault(0.0), Reading::Fault(Fault::SignalLow));
    assert_eq!(fault(5.0), Reading::Fault(Fault::SignalHigh));
    assert!(sensor.pressure(volts(0.0), volts(0.0)).is_err());
    assert!(sensor.output(volts(5.0), bars(40.0)).is_err());
}

/// The same gauge reading is less absolute pressure on a mountain: U.S. Standard Atmosphere 1976, table by geometric altitude, has
/// 79.501 kPa at 2000 m.
#[test]
fn gauge_and_absolute_stay_apart() {
    let mountain = atmosphere(Length::new::<meter>(2000.0));
    let read = |reference| {
        let range = PressureRange::new(bars(0.0), bars(30.0), reference).unwrap();
        let reading = CurrentLoop::new(range)
            .pressure(milliamperes(12.0))
            .unwrap();
        let Reading::Value(value) = reading else {
            panic!("12 mA is no fault");
        };
        value.get::<pascal>()
    };
    assert!((read(Reference::Absolute) - 1_500_000.0).abs() < 1e-3);
    assert!((read(Reference::SealedGauge) - 1_601_325.0).abs() < 1e-3);
    let gauge = read(Reference::Gauge {
        atmosphere: mountain,
    });
    assert!((gauge - 1_579_501.0).abs() < 1.0, "{gauge}");
    assert!(PressureRange::new(bars(-0.5), bars(30.0), Reference::Absolute).is_err());
    assert!(PressureRange::new(bars(-1.0), bars(30.0), Reference::SealedGauge).is_ok());
}

/// NAMUR NE 43 (from memory): 3.6 mA and 21 mA are faults, 3.8 to 20.5 mA values.
#[test]
fn loop_faults_show() {
    let read = |current| share_at_current(milliamperes(current)).unwrap();
    for low in [0.0, 3.0, 3.6] {
        assert_eq!(read(low), Reading::Fault(Fault::SignalLow), "{low}");
    }
    for high in [21.0, 22.0] {
        assert_eq!(read(high), Reading::Fault(Fault::SignalHigh), "{high}");
    }
    for value in [3.8, 4.0, 12.0, 20.0, 20.5] {
        assert!(matches!(read(value), Reading::Value(_)), "{value}");
    }
    assert!(share_at_current(milliamperes(f64::NAN)).is_err());
    assert!(current_at_share(1.1).is_err());
}

/// By the printed table 0 °C is 32 650.9 Ω: the nearest of IEC 60063 are 33 kΩ (E24) and 32.4 kΩ (E96).
#[test]
fn a_substitute_is_the_nearest_on_sale() {
    let curve = SteinhartHart::through([
        point(-40.0, 336_103.2),
        point(-20.0, 97_006.9),
        point(0.0, 32_650.9),
    ]);
    let sensor = Thermistor::SteinhartHart(curve.unwrap());
    for (series, resistor) in [(Series::E24, 33_000.0), (Series::E96, 32_400.0)] {
        let found = substitute(&sensor, celsius(0.0), series).unwrap();
        assert_eq!(found.resistor.get::<ohm>(), resistor);
        let (coldest, warmest) = found.between;
        assert!(coldest < found.simulates && found.simulates < warmest);
        assert_eq!(
            found.off_by.get::<kelvin_interval>() > 0.0,
            resistor < 32_650.9
        );
    }
}

fn sensors() -> impl Strategy<Value = Thermistor> {
    let betas = (500.0..100_000.0_f64, 2800.0..4800.0_f64).prop_map(|(base, k)| beta(base, k));
    // Two points by a beta, the third bent off it as real sensors are.
    let curves =
        (2000.0..100_000.0_f64, 3300.0..4300.0_f64, 0.0..0.04_f64).prop_map(|(base, k, bend)| {
            let plain = beta(base, k);
            let at = |degrees: f64, factor: f64| {
                point(
                    degrees,
                    factor * plain.resistance(celsius(degrees)).unwrap().get::<ohm>(),
                )
            };
            let points = [at(-20.0, 1.0 - bend), at(25.0, 1.0), at(70.0, 1.0 - bend)];
            Thermistor::SteinhartHart(SteinhartHart::through(points).unwrap())
        });
    prop_oneof![betas, curves]
}

proptest! {
    #[test]
    fn both_directions_agree(sensor in sensors(), degrees in -60.0..150.0_f64) {
        let there = sensor.resistance(celsius(degrees)).unwrap();
        if let Reading::Value(back) = sensor.reading(there).unwrap() {
            prop_assert!((back.get::<degree_celsius>() - degrees).abs() < 1e-6);
        } else {
            // Rounding may put the very ends outside.
            prop_assert!(!(-59.9..149.9).contains(&degrees));
        }
        if degrees < 149.0 {
            prop_assert!(sensor.resistance(celsius(degrees + 1.0)).unwrap() < there);
        }
    }

    #[test]
    fn a_fit_goes_through_its_points(sensor in sensors(), cold in -60.0..10.0_f64) {
        let at = |degrees: f64| point(degrees, sensor.resistance(celsius(degrees)).unwrap().get::<ohm>());
        let points = [at(cold + 60.0), at(cold), at(cold + 30.0)];
        prop_assume!(points.iter().all(|p| (10.0..1e7).contains(&p.resistance.get::<ohm>())));
        let fit = Thermistor::SteinhartHart(SteinhartHart::through(points).unwrap());
        for point in points {
            let back = fit.temperature(point.resistance).unwrap();
            prop_assert!((back.get::<kelvin>() - point.temperature.get::<kelvin>()).abs() < 1e-6);
        }
    }

    #[test]
    fn no_other_resistor_is_nearer(sensor in sensors(), degrees in -40.0..100.0_f64, fine in any::<bool>()) {
        let series = if fine { Series::E96 } else { Series::E24 };
        let found = substitute(&sensor, celsius(degrees), series).unwrap();
        let off = found.off_by.get::<kelvin_interval>();
        prop_assert!((found.simulates.get::<degree_celsius>() - degrees - off).abs() < 1e-9);
        // Half the widest step of a series (E24: 10 to 11 and 18 to 20 to 22; E96: 2.4 %) bounds the error of resistance.
        let ratio = found.resistor.get::<ohm>() / found.exact.get::<ohm>();
        let bound = if fine { 1.016 } else { 1.08 };
        prop_assert!(ratio < bound && ratio > 1.0 / bound, "{}", ratio);
    }

    #[test]
    fn wild_values_give_errors_not_panics(a in any::<f64>(), b in any::<f64>(), c in any::<f64>(), r in any::<f64>()) {
        if let Ok(curve) = SteinhartHart::new(a, b, c) {
            let sensor = Thermistor::SteinhartHart(curve);
            if let Ok(Reading::Value(read)) = sensor.reading(ohms(r)) {
                prop_assert!(read.get::<kelvin>().is_finite());
            }
        }
        let _ = Beta::at_25(ohms(a), TemperatureInterval::new::<kelvin_interval>(b));
        let _ = Beta::through([point(a, b), point(c, r)]);
        let _ = SteinhartHart::through([point(a, b), point(b, c), point(c, r)]);
        let _ = PressureRange::new(Pressure::new::<pascal>(a), Pressure::new::<pascal>(b), Reference::SealedGauge);
        let _ = share_at_current(milliamperes(a));
        let _ = current_at_share(b);
    }

    #[test]
    fn transducers_agree_both_ways(share in 0.0..1.0_f64, low in 0.0..5.0_f64, span in 5.0..60.0_f64, supply in 3.0..30.0_f64) {
        let range = PressureRange::new(bars(low), bars(low + span), Reference::Absolute).unwrap();
        let pressure = bars(low + share * span);
        let close = |reading: Reading<Pressure>| match reading {
            Reading::Value(back) => (back - pressure).get::<pascal>().abs() < 1e-3,
            Reading::Fault(_) => false,
        };
        let sensor = Ratiometric::usual(range);
        let output = sensor.output(volts(supply), pressure).unwrap();
        prop_assert!(close(sensor.pressure(volts(supply), output).unwrap()));
        let sensor = CurrentLoop::new(range);
        let current = sensor.current(pressure).unwrap();
        prop_assert!(current >= milliamperes(4.0) * 0.999_999 && current <= milliamperes(20.0) * 1.000_001);
        prop_assert!(close(sensor.pressure(current).unwrap()));
    }
}
