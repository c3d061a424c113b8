//! `calc` against general-purpose libraries; the data are written by `scripts/calc.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::{
    Angle, AngularVelocity, Length, Power, Pressure, TemperatureInterval, ThermalConductance,
    ThermodynamicTemperature,
};
use uom::si::{
    angle::degree, angular_velocity::revolution_per_minute, length::meter,
    mass_density::kilogram_per_cubic_meter, power::watt, pressure::pascal,
    temperature_interval::kelvin as kelvin_interval, thermal_conductance::watt_per_kelvin,
    thermodynamic_temperature::kelvin, volume_rate::cubic_meter_per_second,
};
use winterset_calc::input::{Bearing, Duty, Essentials, Load, Metering, Sensing};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::settings::Drive;
use winterset_calc::{Given, Input, Method, Plan, air, condenser, phase_cut, plan};

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
    bearing: String,
    cooling_W: f64,
    evaporating_K: f64,
    known_outdoor_K: f64,
    over_ambient_K: f64,
    elevation_m: f64,
    rated_rpm: f64,
    idle_airflow: f64,
    throttling_K: f64,
    outdoor_low_K: f64,
    outdoor_K: Vec<f64>,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Expected {
    atmosphere_Pa: f64,
    heat_rejected_W: f64,
    valve_Pa: f64,
    compressor_Pa: f64,
    need_K: f64,
    airflow_m3_s: f64,
    conductance_W_K: f64,
    minimum_output: f64,
    lowest_rpm: f64,
    full_speed_Pa: f64,
    throttling_Pa: f64,
    hold_K: Hold,
    points: Vec<PointRow>,
}

#[derive(Deserialize)]
struct Hold {
    full_fan: f64,
    on_off: f64,
    speed_control: f64,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct PointRow {
    outdoor_K: f64,
    full_fan_K: f64,
    speed_control_K: f64,
    output: f64,
    speed_fraction: f64,
}

fn made(system: &SystemRow) -> Plan {
    let temperature = ThermodynamicTemperature::new::<kelvin>;
    let difference = TemperatureInterval::new::<kelvin_interval>;
    let input = Input {
        evaporating: Given::entered(temperature(system.evaporating_K)),
        known_outdoor: Given::entered(temperature(system.known_outdoor_K)),
        over_ambient: Given::entered(difference(system.over_ambient_K)),
        elevation: Given::entered(Length::new::<meter>(system.elevation_m)),
        metering: Given::entered(Metering::from_key(&system.metering).unwrap()),
        bearing: Given::entered(Bearing::from_key(&system.bearing).unwrap()),
        rated_speed: Given::entered(AngularVelocity::new::<revolution_per_minute>(
            system.rated_rpm,
        )),
        idle_airflow: Given::entered(system.idle_airflow),
        throttling_range: Given::entered(difference(system.throttling_K)),
        sensing: Given::entered(Sensing::LiquidPressure),
        ..Input::assume(
            Essentials {
                refrigerant: Refrigerant::named(&system.refrigerant).unwrap(),
                load: Load::Cooling(Power::new::<watt>(system.cooling_W)),
                outdoor_low: temperature(system.outdoor_low_K),
            },
            Given::assumed(Duty::RoomCooling),
        )
    };
    plan(&input).unwrap()
}

/// The same equations, written from their sources in Python, solved by scipy with CoolProp's states. Tolerances: 1e-6 on what carries
/// a blend's states through a root (the engine itself is held to CoolProp elsewhere), 1 mK on temperatures.
#[test]
fn plans_agree_with_an_independent_solution() {
    const MILLIKELVIN: f64 = 1e-3;
    #[track_caller]
    fn near(ours: ThermodynamicTemperature, reference: f64, what: &str) {
        let ours = ours.get::<kelvin>();
        assert!(
            (ours - reference).abs() <= MILLIKELVIN,
            "{what}: {ours} K against {reference} K"
        );
    }
    let pascals = |pressure: Pressure| pressure.get::<pascal>();
    for row in rows::<PlanRow>(include_str!("data/calc_plan.json")) {
        let (ours, theirs) = (made(&row.system), row.plan);
        let name = format!("{} {}", row.system.refrigerant, row.system.metering);
        let close =
            |ours, theirs, what: &str| close(ours, theirs, 1e-6, &format!("{name}: {what}"));
        close(
            pascals(ours.atmosphere.value),
            theirs.atmosphere_Pa,
            "atmosphere",
        );
        close(
            ours.design.heat_rejected.value.get::<watt>(),
            theirs.heat_rejected_W,
            "heat rejected",
        );
        close(
            pascals(ours.need.parts[0].1.value),
            theirs.valve_Pa,
            "metering need",
        );
        close(
            pascals(ours.need.parts[1].1.value),
            theirs.compressor_Pa,
            "compressor need",
        );
        near(ours.need.condensing, theirs.need_K, &name);
        close(
            ours.design.airflow.value.get::<cubic_meter_per_second>(),
            theirs.airflow_m3_s,
            "airflow",
        );
        close(
            ours.design.conductance.value.get::<watt_per_kelvin>(),
            theirs.conductance_W_K,
            "conductance",
        );
        let Drive::PhaseCut { lowest_speed, .. } = &ours.settings.drive else {
            panic!("{name}: a run-capacitor motor takes a phase-cut supply");
        };
        close(
            lowest_speed.value.get::<revolution_per_minute>(),
            theirs.lowest_rpm,
            "lowest speed",
        );
        close(
            ours.settings.drive.minimum_output().value,
            theirs.minimum_output,
            "minimum output",
        );
        close(
            pascals(ours.settings.full_speed_pressure.value),
            theirs.full_speed_Pa,
            "full-speed point",
        );
        close(
            pascals(ours.settings.throttling_pressure.value),
            theirs.throttling_Pa,
            "throttling range",
        );
        near(
            ours.hold.of(Method::FullFan).value,
            theirs.hold_K.full_fan,
            &name,
        );
        near(
            ours.hold.of(Method::OnOff).value,
            theirs.hold_K.on_off,
            &name,
        );
        near(
            ours.hold.of(Method::SpeedControl).value,
            theirs.hold_K.speed_control,
            &name,
        );
        assert_eq!(theirs.points.len(), row.system.outdoor_K.len());
        for point in theirs.points {
            let rung = ours
                .at(ThermodynamicTemperature::new::<kelvin>(point.outdoor_K))
                .unwrap();
            near(rung.full_fan.condensing, point.full_fan_K, &name);
            near(rung.speed_control.condensing, point.speed_control_K, &name);
            close(
                rung.speed_control.output.unwrap().fraction,
                point.output,
                "output",
            );
            close(
                rung.speed_control.fan_speed_fraction,
                point.speed_fraction,
                "speed",
            );
        }
    }
}
