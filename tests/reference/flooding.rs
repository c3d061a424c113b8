//! Flooding and charge against general-purpose libraries; the data are written by `scripts/flooding.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::{Mass, TemperatureInterval, ThermodynamicTemperature, Volume};
use uom::si::{
    mass::kilogram, mass_density::kilogram_per_cubic_meter,
    temperature_interval::kelvin as kelvin_interval, thermodynamic_temperature::kelvin,
    volume::cubic_meter,
};
use winterset_calc::Given;
use winterset_calc::charge::Circuit;
use winterset_calc::flooding::{Surface, Zones, flooding_charge, receiver_check};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::void_fraction::{self, VoidModel};

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
    let error = (ours / reference - 1.0).abs();
    assert!(
        error <= relative,
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

fn model(name: &str) -> VoidModel {
    match name {
        "zivi" => VoidModel::Zivi,
        "homogeneous" => VoidModel::Homogeneous,
        other => panic!("{other}"),
    }
}

fn kelvins(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(value)
}

fn volume(value: f64) -> Volume {
    Volume::new::<cubic_meter>(value)
}

#[derive(Deserialize)]
struct ZonesRow {
    model: String,
    vapor: f64,
    liquid: f64,
}

impl ZonesRow {
    fn made(&self) -> Zones {
        Zones {
            vapor: Given::entered(self.vapor),
            liquid: Given::entered(self.liquid),
            void_model: model(&self.model),
        }
    }
}

#[test]
fn mean_void_fractions_agree_with_quadrature() {
    #[derive(Deserialize)]
    struct Row {
        model: String,
        densities: f64,
        from: f64,
        to: f64,
        mean: f64,
    }
    for row in rows::<Row>(include_str!("data/flooding_void.json")) {
        let ours = void_fraction::mean(model(&row.model), (row.from, row.to), row.densities);
        let what = format!("{} {} {}..{}", row.model, row.densities, row.from, row.to);
        close(ours, row.mean, 1e-11, &what);
    }
}

/// Densities are those of the equations of state, alike in both to about 1e-9.
#[test]
fn charges_agree_with_coolprop() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        refrigerant: String,
        zones: ZonesRow,
        outdoor_K: f64,
        held_K: f64,
        over_ambient_K: f64,
        heat_ratio: f64,
        volume_m3: f64,
        warmest_K: f64,
        pumpdown_kg: f64,
        share: f64,
        liquid_kg_m3: f64,
        unflooded_kg_m3: f64,
        extra_kg: f64,
        receiver_m3: f64,
    }
    for row in rows::<Row>(include_str!("data/flooding_charge.json")) {
        let refrigerant = Refrigerant::named(&row.refrigerant).unwrap();
        let (held, outdoor) = (kelvins(row.held_K), kelvins(row.outdoor_K));
        let surface = Surface {
            over_ambient: TemperatureInterval::new::<kelvin_interval>(row.over_ambient_K),
            heat_ratio: row.heat_ratio,
        };
        let share = surface.flooded_share(held, outdoor).unwrap();
        let close = |ours, theirs, what| close(ours, theirs, 1e-8, what);
        close(share, row.share, "share");
        let ours = flooding_charge(
            &refrigerant,
            volume(row.volume_m3),
            &row.zones.made(),
            share,
            held,
            outdoor,
        )
        .unwrap();
        let density = |ours: uom::si::f64::MassDensity| ours.get::<kilogram_per_cubic_meter>();
        close(density(ours.liquid), row.liquid_kg_m3, "liquid");
        close(density(ours.unflooded), row.unflooded_kg_m3, "unflooded");
        close(ours.extra.get::<kilogram>(), row.extra_kg, "extra");
        let receiver = receiver_check(
            &refrigerant,
            ours.extra,
            Mass::new::<kilogram>(row.pumpdown_kg),
            kelvins(row.warmest_K),
            None,
        )
        .unwrap();
        close(
            receiver.needed.get::<cubic_meter>(),
            row.receiver_m3,
            "receiver",
        );
    }
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct SystemRow {
    refrigerant: String,
    outdoor_K: f64,
    over_ambient_K: f64,
    zones: ZonesRow,
    condenser_m3: f64,
    line_m3: f64,
    evaporator_m3: f64,
    superheat_share: f64,
    evaporating_K: f64,
}

/// The same balance written from its sources in Python, solved by scipy with CoolProp's states. Tolerances: 1e-6 on shares and masses, 1 mK.
#[test]
fn fixed_charges_flood_as_an_independent_solution_says() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        system: SystemRow,
        charge_kg: f64,
        flooded: f64,
        condensing_K: f64,
        leaving_K: f64,
        liquid_share: f64,
        condenser_kg: f64,
        line_kg: f64,
        evaporator_kg: f64,
    }
    for row in rows::<Row>(include_str!("data/flooding_fixed_charge.json")) {
        let system = &row.system;
        let circuit = Circuit {
            refrigerant: Refrigerant::named(&system.refrigerant).unwrap(),
            condenser: volume(system.condenser_m3),
            zones: system.zones.made(),
            surface: Surface {
                over_ambient: TemperatureInterval::new::<kelvin_interval>(system.over_ambient_K),
                heat_ratio: 1.0,
            },
            liquid_line: volume(system.line_m3),
            receiver: None,
            evaporator: volume(system.evaporator_m3),
            superheat_share: Given::entered(system.superheat_share),
            evaporating: kelvins(system.evaporating_K),
        };
        let ours = circuit
            .flooded_share_for_charge(
                Mass::new::<kilogram>(row.charge_kg),
                kelvins(system.outdoor_K),
            )
            .unwrap();
        let name = format!("{} {} K", system.refrigerant, system.outdoor_K);
        let near = |ours: ThermodynamicTemperature, theirs: f64| {
            assert!((ours.get::<kelvin>() - theirs).abs() <= 1e-3, "{name}");
        };
        assert!((ours.flooded - row.flooded).abs() <= 1e-6, "{name}");
        assert!(
            (ours.liquid_share - row.liquid_share).abs() <= 1e-6,
            "{name}"
        );
        near(ours.condensing, row.condensing_K);
        near(ours.leaving, row.leaving_K);
        let charge = ours.charge;
        for (ours, theirs) in [
            (charge.condenser, row.condenser_kg),
            (charge.liquid_line, row.line_kg),
            (charge.evaporator, row.evaporator_kg),
            (charge.total(), row.charge_kg),
        ] {
            close(ours.get::<kilogram>(), theirs, 1e-6, &name);
        }
    }
}
