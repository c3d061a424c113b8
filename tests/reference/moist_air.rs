//! Moist air against psychrolib; the data are written by `scripts/moist_air.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_calc::moist_air::{MoistAir, saturation_pressure};

#[derive(Deserialize)]
struct Table<Row> {
    rows: Vec<Row>,
}

fn rows<Row: for<'a> Deserialize<'a>>(text: &str) -> Vec<Row> {
    let table: Table<Row> = serde_json::from_str(text).unwrap();
    assert!(!table.rows.is_empty());
    table.rows
}

#[track_caller]
fn close(ours: f64, reference: f64, tolerance: f64, what: &str) {
    let error = (ours - reference).abs();
    assert!(
        error <= tolerance,
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

#[test]
fn saturation_agrees_with_psychrolib() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        celsius: f64,
        pressure_Pa: f64,
    }
    for row in rows::<Row>(include_str!("data/moist_air_saturation.json")) {
        let ours = saturation_pressure(celsius(row.celsius)).unwrap();
        let what = format!("{} °C", row.celsius);
        close(ours.get::<pascal>() / row.pressure_Pa, 1.0, 1e-12, &what);
    }
}

/// Both follow the same equations: 1e-11 of every value, 1e-8 K where one is searched for.
#[test]
fn states_agree_with_psychrolib() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        celsius: f64,
        humidity: f64,
        pressure_Pa: f64,
        ratio: f64,
        vapor_Pa: f64,
        dew_celsius: f64,
        wet_bulb_celsius: f64,
        enthalpy_J_kg: f64,
        volume_m3_kg: f64,
    }
    for row in rows::<Row>(include_str!("data/moist_air.json")) {
        let pressure = Pressure::new::<pascal>(row.pressure_Pa);
        let air = MoistAir::new(celsius(row.celsius), row.humidity, pressure).unwrap();
        let what = format!(
            "{} °C, {}, {} Pa",
            row.celsius, row.humidity, row.pressure_Pa
        );
        let ratio = |ours: f64, theirs: f64| close(ours / theirs, 1.0, 1e-11, &what);
        let degrees = |ours: ThermodynamicTemperature, theirs: f64| {
            close(ours.get::<degree_celsius>(), theirs, 1e-8, &what);
        };
        ratio(air.humidity_ratio(), row.ratio);
        ratio(air.vapor_pressure().get::<pascal>(), row.vapor_Pa);
        degrees(air.dew_point().temperature(), row.dew_celsius);
        degrees(air.wet_bulb(), row.wet_bulb_celsius);
        let enthalpy = air.enthalpy().get::<joule_per_kilogram>();
        close(enthalpy, row.enthalpy_J_kg, 1e-7, &what);
        let density = air.dry_air_density().get::<kilogram_per_cubic_meter>();
        ratio(density * row.volume_m3_kg, 1.0);
    }
}
