//! The evaporator coil against an integration by scipy with saturation by psychrolib; the data are written by `scripts/ice.py`.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::{Pressure, ThermalConductance, ThermodynamicTemperature, VolumeRate};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume_rate::cubic_meter_per_second;
use winterset_calc::Given;
use winterset_calc::ice::{Coil, KnownPoint, ReturnAir, ice_starts};
use winterset_calc::moist_air::MoistAir;

#[derive(Deserialize)]
struct Table {
    rows: Vec<Row>,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Row {
    celsius: f64,
    humidity: f64,
    pressure_Pa: f64,
    airflow_m3_s: f64,
    overall_W_K: f64,
    air_share: f64,
    refrigerant_celsius: f64,
    warmest_celsius: f64,
    coldest_celsius: f64,
    leaving_celsius: f64,
    leaving_ratio: f64,
    total_W: f64,
    sensible_W: f64,
    condensate_kg_s: f64,
    frost_kg_s: f64,
    apparatus_celsius: Option<f64>,
    starts_celsius: f64,
}

fn rows() -> Vec<Row> {
    let table: Table = serde_json::from_str(include_str!("data/ice.json")).unwrap();
    assert!(!table.rows.is_empty());
    table.rows
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

impl Row {
    fn returning(&self) -> ReturnAir {
        let pressure = Pressure::new::<pascal>(self.pressure_Pa);
        ReturnAir {
            air: MoistAir::new(celsius(self.celsius), self.humidity, pressure).unwrap(),
            airflow: VolumeRate::new::<cubic_meter_per_second>(self.airflow_m3_s),
        }
    }

    fn coil(&self) -> Coil {
        let overall = ThermalConductance::new::<watt_per_kelvin>(self.overall_W_K);
        Coil::new(overall, Given::entered(self.air_share)).unwrap()
    }

    fn what(&self) -> String {
        format!(
            "{} °C {}, {} W/K, refrigerant {} °C",
            self.celsius, self.humidity, self.overall_W_K, self.refrigerant_celsius
        )
    }
}

#[track_caller]
fn close(ours: f64, reference: f64, tolerance: f64, what: &str) {
    let error = (ours - reference).abs();
    assert!(
        error <= tolerance,
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

/// Heat to 1e-4 of all of it, water to what carries 1e-4 of it, temperatures to 2 mK.
#[test]
fn coils_agree_with_an_independent_integration() {
    for row in rows() {
        let what = row.what();
        let refrigerant = celsius(row.refrigerant_celsius);
        let pass = row.coil().pass(&row.returning(), refrigerant).unwrap();
        let degrees = |ours: ThermodynamicTemperature, theirs: f64| {
            close(ours.get::<degree_celsius>(), theirs, 2e-3, &what);
        };
        degrees(pass.warmest, row.warmest_celsius);
        degrees(pass.coldest, row.coldest_celsius);
        degrees(pass.leaving.dry_bulb(), row.leaving_celsius);
        let watts = 1e-4 * row.total_W;
        close(pass.total.get::<watt>(), row.total_W, watts, &what);
        close(pass.sensible.get::<watt>(), row.sensible_W, watts, &what);
        let water = pass.condensate.get::<kilogram_per_second>();
        let grams = 1e-4 * row.total_W / 2.5e6;
        close(water, row.condensate_kg_s, grams, &what);
        let frost = pass.frost.get::<kilogram_per_second>();
        close(frost, row.frost_kg_s, grams, &what);
        let saturated = pass.leaving.relative_humidity() >= 1.0 - 1e-9;
        if !saturated {
            close(
                pass.leaving.humidity_ratio(),
                row.leaving_ratio,
                1e-6,
                &what,
            );
        }
        match (pass.apparatus_dew_point, row.apparatus_celsius) {
            (Some(ours), Some(theirs)) => degrees(ours, theirs),
            (None, None) => {}
            other => panic!("{what}: {other:?}"),
        }
    }
}

#[test]
fn ice_starts_where_an_independent_integration_has_it() {
    for row in rows() {
        let (starts, _) = ice_starts(&row.coil(), &row.returning()).unwrap().unwrap();
        let ours = starts.get::<degree_celsius>();
        close(ours, row.starts_celsius, 5e-3, &row.what());
    }
}

/// The reference's coil comes back from its capacity.
#[test]
fn a_coil_comes_back_from_its_known_point() {
    for row in rows() {
        let point = KnownPoint {
            capacity: uom::si::f64::Power::new::<watt>(row.total_W),
            returning: row.returning(),
            refrigerant: celsius(row.refrigerant_celsius),
        };
        let coil = Coil::from_known_point(&point, Given::entered(row.air_share)).unwrap();
        let ours = coil.overall().get::<watt_per_kelvin>();
        close(ours / row.overall_W_K, 1.0, 5e-4, &row.what());
    }
}
