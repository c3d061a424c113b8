//! Fan motor and fan bank against scipy; the data are written by `scripts/motor.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::{AngularVelocity, Frequency, MomentOfInertia, Power, VolumeRate};
use uom::si::{
    angular_velocity::radian_per_second, frequency::hertz,
    moment_of_inertia::kilogram_square_meter, power::watt, time::second,
    volume_rate::cubic_meter_per_second,
};
use winterset_calc::fan_bank::{Fan, FanBank, Layout, Role};
use winterset_calc::input::MotorKind;
use winterset_calc::motor::{
    FrequencyDrive, Friction, InductionMotor, Start, State, Supply, Turning,
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
    let error = (ours - reference).abs();
    assert!(
        error <= relative * reference.abs(),
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Nameplate {
    kind: String,
    rated_rad_s: f64,
    frequency_Hz: f64,
}

impl Nameplate {
    fn frequency(&self) -> Frequency {
        Frequency::new::<hertz>(self.frequency_Hz)
    }

    fn motor(&self) -> InductionMotor {
        InductionMotor::from_nameplate(
            MotorKind::from_key(&self.kind).unwrap(),
            rad_s(self.rated_rad_s),
            self.frequency(),
        )
        .unwrap()
    }
}

fn rad_s(value: f64) -> AngularVelocity {
    AngularVelocity::new::<radian_per_second>(value)
}

#[test]
fn speeds_on_a_supply_balance_torque() {
    #[derive(Deserialize)]
    struct Row {
        #[serde(flatten)]
        nameplate: Nameplate,
        voltage: f64,
        frequency: f64,
        density: f64,
        speed_rad_s: f64,
    }
    use uom::si::{electric_potential::volt, f64::ElectricPotential};
    for row in rows::<Row>(include_str!("data/motor_supply.json")) {
        let motor = row.nameplate.motor();
        let rated = ElectricPotential::new::<volt>(230.0);
        let nameplate = row.nameplate.frequency();
        let line = (rated * row.voltage, nameplate * row.frequency);
        let supply = Supply::new(line, (rated, nameplate)).unwrap();
        let speed = motor.speed_on(supply, row.density).unwrap();
        close(
            speed.get::<radian_per_second>(),
            row.speed_rad_s,
            1e-9,
            &row.nameplate.kind,
        );
        if row.voltage == row.frequency && row.frequency <= 1.0 {
            let drive = FrequencyDrive::new(motor, nameplate, nameplate * 0.2).unwrap();
            let driven = drive.speed(line.1, row.density).unwrap();
            close(
                driven.get::<radian_per_second>(),
                row.speed_rad_s,
                1e-9,
                "drive",
            );
        }
    }
}

/// The minimiser places the extremes themselves to about the root of its tolerance, their values to its square.
#[test]
fn limits_are_the_extremes_of_the_voltage_in_balance() {
    #[derive(Deserialize)]
    struct Row {
        #[serde(flatten)]
        nameplate: Nameplate,
        density: f64,
        running: f64,
        breakaway: f64,
        keeps_running: f64,
        starts: f64,
    }
    for row in rows::<Row>(include_str!("data/motor_limits.json")) {
        let motor = row.nameplate.motor();
        let friction = Friction::new(row.running, row.breakaway).unwrap();
        let limits = motor.limits(row.density, friction).unwrap();
        let kind = &row.nameplate.kind;
        close(limits.keeps_running, row.keeps_running, 1e-9, kind);
        close(limits.starts, row.starts, 1e-9, kind);
        for (state, limit) in [
            (State::Turning, row.keeps_running),
            (State::AtRest, row.starts),
        ] {
            let on = |voltage: f64| {
                motor
                    .turning(state, voltage.min(1.5), row.density, friction)
                    .unwrap()
            };
            assert!(matches!(on(limit * 1.001), Turning::Running(_)), "{kind}");
            assert!(!matches!(on(limit * 0.999), Turning::Running(_)), "{kind}");
        }
    }
}

#[test]
fn starts_take_the_time_that_solve_ivp_finds() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        #[serde(flatten)]
        nameplate: Nameplate,
        inertia_kg_m2: f64,
        power_W: f64,
        voltage: f64,
        density: f64,
        running: f64,
        breakaway: f64,
        windmill_rad_s: f64,
        to_rad_s: f64,
        time_s: f64,
    }
    for row in rows::<Row>(include_str!("data/motor_start.json")) {
        let start = Start {
            inertia: MomentOfInertia::new::<kilogram_square_meter>(row.inertia_kg_m2),
            shaft: Power::new::<watt>(row.power_W),
            voltage: row.voltage,
            density: row.density,
            friction: Friction::new(row.running, row.breakaway).unwrap(),
            windmill: rad_s(row.windmill_rad_s),
            to: rad_s(row.to_rad_s),
        };
        let ours = row.nameplate.motor().start_time(&start).unwrap();
        close(
            ours.time.get::<second>(),
            row.time_s,
            1e-8,
            &row.nameplate.kind,
        );
    }
}

#[test]
fn fans_in_parallel_balance_their_flows() {
    #[derive(Deserialize)]
    struct Row {
        full_m3_s: Vec<f64>,
        speeds: Vec<f64>,
        shutters: Vec<bool>,
        closed: f64,
        idle_resistance: f64,
        airflow_m3_s: f64,
        short_circuit_m3_s: f64,
    }
    for row in rows::<Row>(include_str!("data/motor_bank.json")) {
        let fans = row.full_m3_s.iter().zip(&row.shutters);
        let fans = fans.map(|(full, shutter)| Fan {
            role: Role::Modulated,
            airflow: VolumeRate::new::<cubic_meter_per_second>(*full),
            power: Power::new::<watt>(300.0),
            shutter: *shutter,
        });
        let layout = Layout::Open {
            closed: row.closed,
            idle_resistance: row.idle_resistance,
        };
        let bank = FanBank::new(fans.collect(), layout).unwrap();
        // Density moves every pressure alike and no flow.
        for density in [0.8, 1.3] {
            let flow = bank.flow(&row.speeds, density).unwrap();
            let through = flow.airflow.get::<cubic_meter_per_second>();
            close(through, row.airflow_m3_s, 1e-9, "coil");
            let back = flow.short_circuit.get::<cubic_meter_per_second>();
            close(back, row.short_circuit_m3_s, 1e-9, "back");
        }
    }
}
