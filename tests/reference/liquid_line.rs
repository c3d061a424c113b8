//! The liquid line against general-purpose libraries; the data are written by `scripts/liquid_line.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::dynamic_viscosity::pascal_second;
use uom::si::f64::{
    DynamicViscosity, Length, MassRate, Pressure, TemperatureInterval, ThermalConductivity,
    ThermodynamicTemperature,
};
use uom::si::{
    length::meter, mass_rate::kilogram_per_second, pressure::pascal, ratio::ratio,
    temperature_interval::kelvin as kelvin_interval, thermal_conductivity::watt_per_meter_kelvin,
    thermodynamic_temperature::kelvin, velocity::meter_per_second,
};
use winterset_calc::Given;
use winterset_calc::liquid_line::{Condition, HeatGain, LiquidLine, RatedDrop, friction_factor};
use winterset_calc::refrigerant::Refrigerant;

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
fn close(ours: f64, reference: f64, relative: f64, what: &str) {
    let error = (ours - reference).abs() / reference.abs().max(f64::MIN_POSITIVE);
    assert!(
        ours == reference || error <= relative,
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

#[test]
fn friction_factors_agree_with_fluids() {
    #[derive(Deserialize)]
    struct Row {
        reynolds: f64,
        roughness: f64,
        factor: f64,
    }
    let rows = rows::<Row>(include_str!("data/liquid_line_friction.json"));
    assert!(rows.len() >= 200);
    for row in rows {
        let what = format!("Re {} roughness {}", row.reynolds, row.roughness);
        close(
            friction_factor(row.reynolds, row.roughness),
            row.factor,
            1e-12,
            &what,
        );
    }
}

#[derive(Deserialize)]
struct Row {
    line: Line,
    arrival: Expected,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Line {
    refrigerant: String,
    inlet_Pa: f64,
    inlet_K: f64,
    mass_flow_kg_s: f64,
    diameter_m: f64,
    length_m: f64,
    lift_m: f64,
    roughness_m: f64,
    viscosity_Pa_s: f64,
    part_kg_s: f64,
    part_Pa: f64,
    conductance_W_mK: f64,
    exposed_m: f64,
    surroundings_K: f64,
    wanted_K: f64,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Expected {
    velocity_m_s: f64,
    reynolds: f64,
    factor: f64,
    friction_Pa: f64,
    static_Pa: f64,
    outlet_Pa: f64,
    bubble_K: f64,
    subcooling_K: Option<f64>,
    quality: Option<f64>,
    needed_K: f64,
}

fn made(line: &Line) -> LiquidLine {
    let length = Length::new::<meter>;
    LiquidLine {
        inlet_pressure: Pressure::new::<pascal>(line.inlet_Pa),
        inlet_temperature: ThermodynamicTemperature::new::<kelvin>(line.inlet_K),
        mass_flow: MassRate::new::<kilogram_per_second>(line.mass_flow_kg_s),
        inner_diameter: length(line.diameter_m),
        equivalent_length: length(line.length_m),
        lift: length(line.lift_m),
        roughness: Given::entered(length(line.roughness_m)),
        viscosity: Given::entered(DynamicViscosity::new::<pascal_second>(line.viscosity_Pa_s)),
        parts: vec![RatedDrop {
            flow: MassRate::new::<kilogram_per_second>(line.part_kg_s),
            drop: Pressure::new::<pascal>(line.part_Pa),
        }],
        heat: Some(HeatGain {
            conductance: ThermalConductivity::new::<watt_per_meter_kelvin>(line.conductance_W_mK),
            exposed: length(line.exposed_m),
            surroundings: ThermodynamicTemperature::new::<kelvin>(line.surroundings_K),
        }),
    }
}

/// Drops by `fluids`, states by CoolProp, the inlet temperature by scipy's root finder. Tolerances: 1e-7 on what follows from a density, 1 mK
/// on temperatures, 1e-6 on a quality.
#[test]
fn lines_agree_with_fluids_and_coolprop() {
    const MILLIKELVIN: f64 = 1e-3;
    let (mut liquid, mut flashed) = (0, 0);
    for row in rows::<Row>(include_str!("data/liquid_line_arrival.json")) {
        let refrigerant = Refrigerant::named(&row.line.refrigerant).unwrap();
        let line = made(&row.line);
        let ours = line.arrival(&refrigerant).unwrap();
        let theirs = row.arrival;
        let name = format!("{} {} m", row.line.refrigerant, row.line.lift_m);
        let close = |ours, theirs| close(ours, theirs, 1e-7, &name);
        let near = |ours: f64, theirs: f64| {
            assert!(
                (ours - theirs).abs() <= MILLIKELVIN,
                "{name}: {ours} K against {theirs} K"
            );
        };
        close(
            ours.drops.velocity.get::<meter_per_second>(),
            theirs.velocity_m_s,
        );
        close(ours.drops.reynolds, theirs.reynolds);
        close(ours.drops.friction_factor, theirs.factor);
        close(ours.drops.friction.get::<pascal>(), theirs.friction_Pa);
        close(ours.drops.lift.get::<pascal>(), theirs.static_Pa);
        close(ours.pressure.get::<pascal>(), theirs.outlet_Pa);
        near(ours.bubble.get::<kelvin>(), theirs.bubble_K);
        match (ours.condition, theirs.subcooling_K) {
            (Condition::Liquid { subcooling }, Some(left)) => {
                near(subcooling.get::<kelvin_interval>(), left);
                liquid += 1;
            }
            (Condition::Flashed { quality }, None) => {
                if let Some(share) = theirs.quality {
                    assert!((quality.get::<ratio>() - share).abs() <= 1e-6, "{name}");
                }
                flashed += 1;
            }
            (ours, theirs) => panic!("{name}: {ours:?} against {theirs:?}"),
        }
        let wanted = TemperatureInterval::new::<kelvin_interval>(row.line.wanted_K);
        let needed = line.subcooling_needed(&refrigerant, wanted).unwrap();
        near(needed.temperature.get::<kelvin>(), theirs.needed_K);
    }
    assert!(liquid > 20 && flashed > 20, "{liquid} and {flashed}");
}
