//! `calc` against general-purpose libraries; the data are written by `scripts/calc.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use std::collections::BTreeMap;

use serde::Deserialize;
use uom::si::f64::{
    Angle, AngularVelocity, Frequency, Length, Power, TemperatureInterval, ThermalConductance,
    ThermodynamicTemperature,
};
use uom::si::{
    angle::degree, angular_velocity::revolution_per_minute, frequency::hertz, length::meter,
    mass_density::kilogram_per_cubic_meter, temperature_interval::kelvin as kelvin_interval,
    thermal_conductance::watt_per_kelvin, thermodynamic_temperature::kelvin,
};
use uom::si::{power::watt, pressure::pascal};
use winterset_calc::input::{Bearing, Duty, Essentials, Load, Metering, MotorKind, Sensing};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{
    Condition, Given, Input, Method, Plan, Point, air, condenser, phase_cut, plan,
};

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

#[test]
fn air_follows_the_standard_atmosphere() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        elevation_m: f64,
        pressure_Pa: f64,
        temperature_K: f64,
        density_kg_m3: f64,
    }
    for row in rows::<Row>(include_str!("data/calc_air.json")) {
        let pressure = air::atmosphere(Length::new::<meter>(row.elevation_m));
        close(pressure.get::<pascal>(), row.pressure_Pa, 1e-9, "pressure");
        let density = air::density(
            pressure,
            ThermodynamicTemperature::new::<kelvin>(row.temperature_K),
        );
        close(
            density.get::<kilogram_per_cubic_meter>(),
            row.density_kg_m3,
            1e-9,
            "density",
        );
    }
}

#[test]
fn effectiveness_agrees_with_ht() {
    #[derive(Deserialize)]
    struct Row {
        ntu: f64,
        effectiveness: f64,
    }
    let rate = ThermalConductance::new::<watt_per_kelvin>(437.0);
    for row in rows::<Row>(include_str!("data/calc_effectiveness.json")) {
        let ours = condenser::effectiveness(rate * row.ntu, rate);
        close(ours, row.effectiveness, 1e-12, "effectiveness");
        let back = condenser::conductance(row.effectiveness, rate);
        close((back / rate).value, row.ntu, 1e-9, "transfer units");
    }
}

#[test]
fn cut_sine_agrees_with_its_integral() {
    #[derive(Deserialize)]
    struct Row {
        firing_deg: f64,
        rms: f64,
        averaging_meter: f64,
    }
    for row in rows::<Row>(include_str!("data/calc_phase_cut.json")) {
        let firing = Angle::new::<degree>(row.firing_deg);
        close(phase_cut::rms_fraction(firing), row.rms, 1e-10, "r.m.s.");
        close(
            phase_cut::averaging_meter_fraction(firing),
            row.averaging_meter,
            1e-10,
            "averaging meter",
        );
    }
}

#[derive(Deserialize)]
struct PlanRow {
    system: SystemRow,
    plan: Expected,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct SystemRow {
    refrigerant: String,
    metering: String,
    motor: String,
    bearing: String,
    sensing: String,
    cooling_W: f64,
    evaporating_K: f64,
    return_air_K: f64,
    known_outdoor_K: f64,
    over_ambient_K: f64,
    elevation_m: f64,
    fans: u32,
    rated_rpm: f64,
    frequency_Hz: f64,
    idle_airflow: f64,
    throttling_K: f64,
    outdoor_low_K: f64,
    outdoor_K: Vec<f64>,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Expected {
    atmosphere_Pa: f64,
    flow_kg_s: f64,
    heat_rejected_W: f64,
    discharge_K: f64,
    airflow_m3_s: f64,
    conductance_W_K: f64,
    zones: [f64; 3],
    valve_Pa: f64,
    compressor_Pa: f64,
    need_K: f64,
    minimum_output: f64,
    lowest_rpm: f64,
    full_speed_Pa: f64,
    throttling_Pa: f64,
    /// In the order of `Method::ALL`, as everything of seven.
    hold_K: [f64; 7],
    points: Vec<RungRow>,
}

#[derive(Deserialize)]
struct RungRow {
    /// Controller's output under the methods that slow the fans.
    outputs: [f64; 3],
    /// Which of the rows each method comes to.
    of: [usize; 7],
    rows: Vec<StateRow>,
}

/// Condition, condensing temperature, speed, fan power; where the compressor runs also evaporating and suction temperature, mass flow,
/// cooling, compressor power, flooded share; where fans cycle also their starts.
#[derive(Deserialize)]
struct StateRow(Vec<f64>);

/// -60 °C, the coldest that a site can have.
const COLDEST_SITE: f64 = 213.15;

fn made(system: &SystemRow) -> Plan {
    let temperature = ThermodynamicTemperature::new::<kelvin>;
    let difference = TemperatureInterval::new::<kelvin_interval>;
    let input = Input {
        evaporating: Given::entered(temperature(system.evaporating_K)),
        return_air: Given::entered(temperature(system.return_air_K)),
        known_outdoor: Given::entered(temperature(system.known_outdoor_K)),
        over_ambient: Given::entered(difference(system.over_ambient_K)),
        elevation: Given::entered(Length::new::<meter>(system.elevation_m)),
        fans: Given::entered(system.fans),
        metering: Given::entered(Metering::from_key(&system.metering).unwrap()),
        motor: Given::entered(MotorKind::from_key(&system.motor).unwrap()),
        bearing: Given::entered(Bearing::from_key(&system.bearing).unwrap()),
        frequency: Given::entered(Frequency::new::<hertz>(system.frequency_Hz)),
        rated_speed: Given::entered(AngularVelocity::new::<revolution_per_minute>(
            system.rated_rpm,
        )),
        idle_airflow: Given::entered(system.idle_airflow),
        throttling_range: Given::entered(difference(system.throttling_K)),
        sensing: Given::entered(Sensing::from_key(&system.sensing).unwrap()),
        ..Input::assume(
            Essentials {
                refrigerant: Refrigerant::named(&system.refrigerant).unwrap(),
                load: Load::Cooling(Power::new::<watt>(system.cooling_W)),
                outdoor_low: temperature(system.outdoor_low_K),
            },
            // A coil that is defrosted, so that ice asks for no head pressure; it is compared on its own.
            Given::assumed(Duty::Freezer),
        )
    };
    plan(&input).unwrap()
}

/// The largest difference of each kind, with where it is.
#[derive(Default)]
struct Differences {
    at: String,
    largest: BTreeMap<&'static str, (f64, String)>,
}

impl Differences {
    fn note(&mut self, what: &'static str, difference: f64) {
        let difference = if difference.is_nan() {
            f64::INFINITY
        } else {
            difference.abs()
        };
        let entry = self.largest.entry(what).or_default();
        if difference >= entry.0 {
            *entry = (difference, self.at.clone());
        }
    }

    /// As a share of the reference; below `least`, of that.
    fn relative(&mut self, what: &'static str, ours: f64, reference: f64, least: f64) {
        self.note(what, (ours - reference) / reference.abs().max(least));
    }

    fn plan(&mut self, ours: &Plan, theirs: &Expected) {
        let mut relative =
            |what, ours: f64, theirs: f64| self.relative(what, ours, theirs, f64::MIN_POSITIVE);
        let design = &ours.design;
        let output = ours.settings.drive.minimum_output();
        let lowest = ours.settings.drive.lowest_speed().value;
        for (what, ours, theirs) in [
            (
                "atmosphere",
                ours.atmosphere.value.value,
                theirs.atmosphere_Pa,
            ),
            ("known flow", design.cycle.mass_flow.value, theirs.flow_kg_s),
            (
                "known heat",
                design.heat_rejected.value.value,
                theirs.heat_rejected_W,
            ),
            ("airflow", design.airflow.value.value, theirs.airflow_m3_s),
            (
                "conductance",
                design.conductance.value.value,
                theirs.conductance_W_K,
            ),
            ("zone", design.zones.desuperheating, theirs.zones[0]),
            ("zone", design.zones.condensing, theirs.zones[1]),
            ("zone", design.zones.subcooling, theirs.zones[2]),
            (
                "need pressure",
                ours.need.parts[0].1.value.value,
                theirs.valve_Pa,
            ),
            (
                "need pressure",
                ours.need.parts[1].1.value.value,
                theirs.compressor_Pa,
            ),
            (
                "full-speed point",
                ours.settings.full_speed_pressure.value.value,
                theirs.full_speed_Pa,
            ),
            (
                "throttling range",
                ours.settings.throttling_pressure.value.value,
                theirs.throttling_Pa,
            ),
            ("minimum output", output.value, theirs.minimum_output),
            (
                "lowest speed",
                lowest.get::<revolution_per_minute>(),
                theirs.lowest_rpm,
            ),
        ] {
            relative(what, ours, theirs);
        }
        self.note(
            "known discharge",
            design.cycle.discharge.get::<kelvin>() - theirs.discharge_K,
        );
        self.note("need", ours.need.condensing.get::<kelvin>() - theirs.need_K);
    }

    fn point(&mut self, ours: &Point, theirs: &StateRow, full_power: f64) {
        let row = &theirs.0;
        let conditions = [
            Condition::Holds,
            Condition::BelowNeed,
            Condition::Starved,
            Condition::LowPressureTrip,
            Condition::StalledFan,
        ];
        let same = ours.condition == conditions[row[0] as usize]
            && ours.cycle.is_some() == (row.len() > 4)
            && ours.starts.is_some() == (row.len() > 10);
        self.note("condition", if same { 0.0 } else { 1.0 });
        if !same {
            return;
        }
        self.note("condensing", ours.condensing.get::<kelvin>() - row[1]);
        self.note("speed", ours.fan_speed_fraction - row[2]);
        // A slow fan takes next to nothing: its power is measured by a millionth of the full one.
        self.relative("fan power", ours.fan_power.value, row[3], 1e-6 * full_power);
        let Some(cycle) = ours.cycle else { return };
        self.note("evaporating", cycle.evaporating.get::<kelvin>() - row[4]);
        self.note("suction", cycle.suction.get::<kelvin>() - row[5]);
        self.relative("flow", cycle.mass_flow.value, row[6], 0.0);
        self.relative("cooling", cycle.cooling.value, row[7], 0.0);
        self.relative("compression", cycle.compressor_power.value, row[8], 0.0);
        self.relative("heat", ours.heat_rejected.value, row[7] + row[8], 0.0);
        if let Some(starts) = ours.starts {
            self.relative("starts", starts.value, row[10], 0.0);
        } else {
            self.note("flooded", ours.zones.flooded - row[9]);
        }
    }

    #[track_caller]
    fn within(&self, limits: &[(&str, f64)]) {
        let mut over = Vec::new();
        for (what, (largest, at)) in &self.largest {
            let limit = limits
                .iter()
                .find(|(name, _)| name == what)
                .map_or(0.0, |(_, limit)| *limit);
            if *largest > limit {
                over.push(format!("{what} off by {largest:.2e} at {at}"));
            }
        }
        assert!(over.is_empty(), "{}", over.join("\n"));
    }
}

/// The same balance, written from its equations in Python and solved by scipy with CoolProp's states at every step: no operating line in
/// between.
#[test]
fn plans_agree_with_an_independent_solution() {
    let mut differences = Differences::default();
    for (number, row) in rows::<PlanRow>(include_str!("data/calc_plan.json"))
        .into_iter()
        .enumerate()
    {
        let (ours, theirs) = (made(&row.system), row.plan);
        let name = format!(
            "{number}, {} {}",
            row.system.refrigerant, row.system.metering
        );
        differences.at.clone_from(&name);
        differences.plan(&ours, &theirs);
        for (method, limit) in Method::ALL.into_iter().zip(theirs.hold_K) {
            differences.at = format!("{name}: {}", method.key());
            let found = ours.hold.of(method).value.get::<kelvin>();
            // A method that holds at the coldest that a site can have has that as its limit.
            differences.note("hold limit", found - limit.max(COLDEST_SITE));
        }
        assert_eq!(theirs.points.len(), row.system.outdoor_K.len());
        for (outdoor, expected) in row.system.outdoor_K.into_iter().zip(theirs.points) {
            let rung = ours
                .at(ThermodynamicTemperature::new::<kelvin>(outdoor))
                .unwrap();
            for (method, row) in Method::ALL.into_iter().zip(expected.of) {
                differences.at = format!("{name}: {} at {outdoor} K", method.key());
                let full = ours.design.fan_power.value.value;
                differences.point(rung.of(method), &expected.rows[row], full);
            }
            let slowed = Method::ALL.into_iter().filter(|m| m.is_modulated());
            for (method, output) in slowed.zip(expected.outputs) {
                differences.at = format!("{name}: {} at {outdoor} K", method.key());
                let found = rung.of(method).output.unwrap().fraction;
                differences.note("output", found - output);
            }
        }
    }
    // The circuit is read from series that are within 1e-4 K, 1e-6 of a flow and 0.2 J/kg of it.
    const KELVIN: f64 = 1e-3;
    const SHARE: f64 = 1e-5;
    const LIMITS: &[(&str, f64)] = &[
        ("airflow", 1e-6),
        ("atmosphere", 1e-9),
        ("compression", SHARE),
        ("condensing", KELVIN),
        ("condition", 0.0),
        ("conductance", 1e-6),
        ("cooling", SHARE),
        ("evaporating", KELVIN),
        ("fan power", SHARE),
        ("flooded", SHARE),
        ("flow", SHARE),
        ("full-speed point", SHARE),
        ("heat", SHARE),
        ("hold limit", KELVIN),
        ("known discharge", KELVIN),
        ("known flow", 1e-6),
        ("known heat", 1e-6),
        ("lowest speed", 1e-8),
        ("minimum output", 1e-8),
        ("need", KELVIN),
        ("need pressure", SHARE),
        ("output", SHARE),
        ("speed", SHARE),
        ("starts", SHARE),
        ("suction", KELVIN),
        ("throttling range", SHARE),
        ("zone", 1e-6),
    ];
    differences.within(LIMITS);
}
