//! Compressors against general-purpose libraries; the data are written by `scripts/compressor.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::{Power, TemperatureInterval, ThermodynamicTemperature, VolumeRate};
use uom::si::{
    mass_rate::kilogram_per_second, power::watt, temperature_interval::kelvin as kelvin_interval,
    thermodynamic_temperature::kelvin, volume_rate::cubic_meter_per_second,
};
use winterset_calc::compressor::coefficients::Coefficients;
use winterset_calc::compressor::efficiency::{Compressor, Losses, Nameplate, Size};
use winterset_calc::compressor::polynomial::{
    CapacityUnit, FlowUnit, Polynomial, PowerUnit, TemperatureScale,
};
use winterset_calc::compressor::rating::DataSheet;
use winterset_calc::compressor::{Point, Suction};
use winterset_calc::refrigerant::Refrigerant;

/// States agree to about 1e-8 (see the tests of the refrigerants); differences of enthalpy lose a digit or two of it.
const TOLERANCE: f64 = 1e-6;

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
fn close(ours: f64, reference: f64, what: &str) {
    let error = (ours / reference - 1.0).abs();
    assert!(
        error <= TOLERANCE,
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

fn kelvins(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(value)
}

fn span(value: f64) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(value)
}

fn point(evaporating: f64, condensing: f64) -> Point {
    Point {
        evaporating: kelvins(evaporating),
        condensing: kelvins(condensing),
    }
}

#[test]
fn the_efficiency_model_agrees() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)] // units as they are written
    struct Row {
        refrigerant: String,
        clearance: f64,
        built_in: Option<f64>,
        rated_isentropic: f64,
        constant_share: f64,
        displacement_m3_s: f64,
        rated: (f64, f64, f64, f64),
        at: (f64, f64, f64, f64),
        mass_flow_kg_s: f64,
        capacity_W: f64,
        power_W: f64,
        volumetric: f64,
        isentropic: f64,
    }
    for row in rows::<Row>(include_str!("data/compressor_efficiency.json")) {
        let refrigerant = Refrigerant::named(&row.refrigerant).unwrap();
        let losses = Losses {
            clearance: row.clearance,
            built_in: row.built_in,
            isentropic: row.rated_isentropic,
            constant_share: row.constant_share,
        };
        let (evaporating, condensing, inlet, subcooling) = row.rated;
        let nameplate = |size| Nameplate {
            point: point(evaporating, condensing),
            suction: Suction::ReturnGas(kelvins(inlet)),
            subcooling: span(subcooling),
            size,
        };
        let displacement = VolumeRate::new::<cubic_meter_per_second>(row.displacement_m3_s);
        let make = |size| Compressor::new(&refrigerant, losses, nameplate(size)).unwrap();
        let compressor = make(Size::Displacement(displacement));
        let (evaporating, condensing, inlet, subcooling) = row.at;
        let there = compressor
            .at(
                point(evaporating, condensing),
                Suction::ReturnGas(kelvins(inlet)),
                span(subcooling),
            )
            .unwrap();
        let name = format!("{} {:?}", row.refrigerant, row.at);
        close(
            there.mass_flow.get::<kilogram_per_second>(),
            row.mass_flow_kg_s,
            &name,
        );
        close(there.capacity.get::<watt>(), row.capacity_W, &name);
        close(there.power.get::<watt>(), row.power_W, &name);
        close(there.volumetric, row.volumetric, &name);
        close(there.isentropic, row.isentropic, &name);
        if row.at == row.rated {
            let scaled = make(Size::Capacity(Power::new::<watt>(row.capacity_W)));
            close(
                scaled.displacement().get::<cubic_meter_per_second>(),
                row.displacement_m3_s,
                &name,
            );
        }
    }
}

#[derive(Deserialize)]
#[allow(non_snake_case)] // units as they are written
struct SheetRow {
    refrigerant: String,
    scale: String,
    flow_unit: String,
    power_unit: String,
    capacity_unit: String,
    flow: [f64; 10],
    power: [f64; 10],
    capacity: [f64; 10],
    rated_gas: (String, f64),
    rated_subcooling_K: f64,
    evaporating_K: f64,
    condensing_K: f64,
    gas: (String, f64),
    subcooling_K: f64,
    rated_flow_kg_s: f64,
    rated_power_W: f64,
    rated_capacity_W: f64,
    flow_kg_s: f64,
    power_W: f64,
    capacity_W: f64,
    flow_from_capacity_kg_s: f64,
    capacity_from_flow_W: f64,
}

fn gas((how, value): &(String, f64)) -> Suction {
    match how.as_str() {
        "superheat" => Suction::Superheat(span(*value)),
        "return_gas" => Suction::ReturnGas(kelvins(*value)),
        other => panic!("{other}"),
    }
}

impl SheetRow {
    fn polynomial<Unit>(&self, coefficients: &[f64; 10], unit: Unit) -> Polynomial<Unit> {
        // As a person pastes them.
        let text = coefficients.map(|value| format!("{value:E}")).join("; ");
        Polynomial {
            coefficients: Coefficients::parse(&text).unwrap(),
            scale: match self.scale.as_str() {
                "C" => TemperatureScale::Celsius,
                "F" => TemperatureScale::Fahrenheit,
                other => panic!("{other}"),
            },
            unit,
        }
    }

    fn sheet(&self) -> DataSheet {
        let flow = match self.flow_unit.as_str() {
            "kg/s" => FlowUnit::KilogramPerSecond,
            "kg/h" => FlowUnit::KilogramPerHour,
            "g/s" => FlowUnit::GramPerSecond,
            "lb/h" => FlowUnit::PoundPerHour,
            other => panic!("{other}"),
        };
        let power = match self.power_unit.as_str() {
            "W" => PowerUnit::Watt,
            "kW" => PowerUnit::Kilowatt,
            other => panic!("{other}"),
        };
        let capacity = match self.capacity_unit.as_str() {
            "W" => CapacityUnit::Watt,
            "kW" => CapacityUnit::Kilowatt,
            "Btu/h" => CapacityUnit::BtuPerHour,
            other => panic!("{other}"),
        };
        DataSheet {
            refrigerant: Refrigerant::named(&self.refrigerant).unwrap(),
            mass_flow: Some(self.polynomial(&self.flow, flow)),
            power: Some(self.polynomial(&self.power, power)),
            current: None,
            capacity: Some(self.polynomial(&self.capacity, capacity)),
            suction: gas(&self.rated_gas),
            subcooling: span(self.rated_subcooling_K),
        }
    }
}

#[test]
fn data_sheets_are_brought_to_the_gas_that_there_is() {
    for row in rows::<SheetRow>(include_str!("data/compressor_data_sheet.json")) {
        let sheet = row.sheet();
        let at = point(row.evaporating_K, row.condensing_K);
        let name = format!("{} {at:?} {:?}", row.refrigerant, row.gas);
        let flow = |rate: uom::si::f64::MassRate| rate.get::<kilogram_per_second>();

        let rated = sheet.rated(at).unwrap();
        close(flow(rated.mass_flow), row.rated_flow_kg_s, &name);
        close(rated.power.unwrap().get::<watt>(), row.rated_power_W, &name);
        close(rated.capacity.get::<watt>(), row.rated_capacity_W, &name);

        let at_gas =
            |sheet: &DataSheet| sheet.at(at, gas(&row.gas), span(row.subcooling_K)).unwrap();
        let there = at_gas(&sheet);
        close(flow(there.mass_flow), row.flow_kg_s, &name);
        close(there.power.unwrap().get::<watt>(), row.power_W, &name);
        close(there.capacity.get::<watt>(), row.capacity_W, &name);

        let mut without_flow = sheet.clone();
        without_flow.mass_flow = None;
        let there = at_gas(&without_flow);
        close(flow(there.mass_flow), row.flow_from_capacity_kg_s, &name);

        let mut without_capacity = sheet;
        without_capacity.capacity = None;
        let there = at_gas(&without_capacity);
        close(
            there.capacity.get::<watt>(),
            row.capacity_from_flow_W,
            &name,
        );
    }
}
