//! Hours by outdoor temperature against numpy and scipy; the data are written by `scripts/weather.py`, each file names its source.
#![allow(clippy::unwrap_used)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::hour;
use winterset_calc::weather::{Bins, Coverage, Percentile, UsualYear, epw};

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Below {
    limit_C: f64,
    hours: f64,
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

#[track_caller]
fn near(ours: f64, theirs: f64, within: f64, what: &str) {
    assert!(
        (ours - theirs).abs() <= within,
        "{what}: {ours} against {theirs}"
    );
}

/// Counts are whole numbers; percentiles agree to rounding.
#[test]
fn a_year_is_counted_as_numpy_counts_it() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Year {
        missing: f64,
        coldest_C: f64,
        exceeded_996_C: f64,
        exceeded_99_C: f64,
        first_C: f64,
        hours: Vec<f64>,
        below: Vec<Below>,
    }
    let year: Year = serde_json::from_str(include_str!("data/weather_year.json")).unwrap();
    let weather = epw::read(include_str!("data/weather_year.epw")).unwrap();
    assert_eq!(weather.coverage(), Coverage::Year);
    near(
        weather.missing().get::<hour>(),
        year.missing,
        1e-9,
        "missing",
    );
    for (ours, theirs) in [
        (weather.coldest(), year.coldest_C),
        (
            weather.design_low(Percentile::NinetyNineSix),
            year.exceeded_996_C,
        ),
        (
            weather.design_low(Percentile::NinetyNine),
            year.exceeded_99_C,
        ),
    ] {
        near(ours.get::<degree_celsius>(), theirs, 1e-9, "percentile");
    }
    let bins = Bins::from_weather(&weather);
    near(
        bins.coldest().get::<degree_celsius>(),
        year.first_C,
        1e-9,
        "first",
    );
    let hours: Vec<f64> = bins.iter().map(|bin| bin.hours.get::<hour>()).collect();
    assert_eq!(hours.len(), year.hours.len());
    for (ours, theirs) in hours.iter().zip(&year.hours) {
        near(*ours, *theirs, 1e-9, "bin");
    }
    for Below { limit_C, hours } in year.below {
        let ours = bins.hours_below(celsius(limit_C)).get::<hour>();
        near(ours, hours, 1e-9, "below");
    }
}

/// Both integrate the same definition; a millionth of an hour apart at most.
#[test]
fn a_usual_year_is_what_scipy_integrates() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        low_C: f64,
        swing_K: f64,
        mean_C: f64,
        below: Vec<Below>,
    }
    #[derive(Deserialize)]
    struct Table {
        rows: Vec<Row>,
    }
    let table: Table = serde_json::from_str(include_str!("data/weather_usual.json")).unwrap();
    assert!(!table.rows.is_empty());
    for row in table.rows {
        let year = UsualYear::new(celsius(row.low_C)).unwrap();
        let swing = year.swing().get::<kelvin_interval>();
        near(swing, row.swing_K, 1e-9, "swing");
        near(
            year.mean().get::<degree_celsius>(),
            row.mean_C,
            1e-9,
            "mean",
        );
        for Below { limit_C, hours } in row.below {
            let ours = year.hours_below(celsius(limit_C)).get::<hour>();
            near(ours, hours, 1e-6, "below");
        }
    }
}
