//! The winter start against scipy with states of CoolProp; the data are written by `scripts/winter_start.py`, each file names its source.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use serde::Deserialize;
use uom::si::f64::{
    HeatCapacity, Mass, Power, Pressure, ThermalConductance, ThermodynamicTemperature, Time, Volume,
};
use uom::si::{
    heat_capacity::joule_per_kelvin, mass::kilogram, power::watt, pressure::pascal,
    thermal_conductance::watt_per_kelvin, thermodynamic_temperature::kelvin, time::second,
    volume::cubic_meter,
};
use winterset_calc::Given;
use winterset_calc::input::Metering;
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::winter_start::{
    BypassOutcome, LowPressureSwitch, Nominal, Part, Place, StartUp, migration,
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
fn close(ours: f64, reference: f64, tolerance: f64, what: &str) {
    let error = (ours - reference).abs();
    assert!(
        error <= tolerance,
        "{what}: {ours} against {reference}, off by {error:.2e}"
    );
}

fn kelvins(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(value)
}

fn pascals(value: f64) -> Pressure {
    Pressure::new::<pascal>(value)
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Case {
    refrigerant: String,
    metering: String,
    cooling_W: f64,
    evaporating_K: f64,
    condensing_K: f64,
    room_K: f64,
    outdoor_K: f64,
    liquid_K: f64,
    suction_Pa: f64,
    volume_m3: f64,
    charge_kg: f64,
    share: f64,
    heat_capacity_J_K: f64,
    conductance_W_K: f64,
    heater_W: f64,
    cut_out_Pa: f64,
    cut_in_Pa: f64,
    horizon_s: f64,
}

impl Case {
    fn start(&self) -> StartUp {
        StartUp {
            refrigerant: Refrigerant::named(&self.refrigerant).unwrap(),
            nominal: Nominal {
                cooling: Power::new::<watt>(self.cooling_W),
                evaporating: kelvins(self.evaporating_K),
                condensing: kelvins(self.condensing_K),
            },
            metering: Metering::from_key(&self.metering).unwrap(),
            outdoor: kelvins(self.outdoor_K),
            room: kelvins(self.room_K),
            liquid_at_start: kelvins(self.liquid_K),
            suction_at_start: pascals(self.suction_Pa),
            low_side_volume: Volume::new::<cubic_meter>(self.volume_m3),
            evaporator_charge: Given::entered(Mass::new::<kilogram>(self.charge_kg)),
            charge_at_start: Given::entered(self.share),
            heat_capacity: HeatCapacity::new::<joule_per_kelvin>(self.heat_capacity_J_K),
            condenser_conductance: ThermalConductance::new::<watt_per_kelvin>(self.conductance_W_K),
            receiver_heat: Power::new::<watt>(self.heater_W),
        }
    }

    fn switch(&self) -> LowPressureSwitch {
        LowPressureSwitch::new(pascals(self.cut_out_Pa), pascals(self.cut_in_Pa)).unwrap()
    }

    fn horizon(&self) -> Time {
        Time::new::<second>(self.horizon_s)
    }
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Moment {
    time_s: f64,
    suction_Pa: f64,
    head_Pa: f64,
    liquid_kg: f64,
}

#[derive(Deserialize)]
struct Start {
    case: Case,
    first_s: Option<f64>,
    until_s: Option<f64>,
    open: bool,
    moments: Vec<Moment>,
}

fn starts() -> Vec<Start> {
    rows(include_str!("data/winter_start_pull_down.json"))
}

/// The same balances with no tables and another integrator: times to 50 ms.
#[test]
fn bypass_times_agree_with_an_independent_integration() {
    for row in starts() {
        let case = &row.case;
        let what = format!("{} at {} K", case.refrigerant, case.outdoor_K);
        let ours = case.start().bypass(&case.switch(), case.horizon()).unwrap();
        let time = |ours: Time, theirs: f64| close(ours.get::<second>(), theirs, 0.05, &what);
        match (ours, row.first_s, row.until_s) {
            (BypassOutcome::NeverTrips { .. }, None, None) => assert!(!row.open, "{what}"),
            (BypassOutcome::Trips { first, until, .. }, Some(opens), Some(closes)) => {
                time(first, opens);
                time(until, closes);
            }
            (BypassOutcome::NeverRecovers { first, .. }, Some(opens), None) => {
                assert!(row.open, "{what}");
                time(first, opens);
            }
            other => panic!("{what}: {other:?}"),
        }
    }
}

/// Pressures to a thousandth and liquid to a gram, read between two moments of ours.
#[test]
fn the_course_agrees_with_an_independent_integration() {
    for row in starts() {
        let case = &row.case;
        let what = format!("{} at {} K", case.refrigerant, case.outdoor_K);
        let course = case.start().course(case.horizon()).unwrap();
        for moment in &row.moments {
            let after = course
                .iter()
                .position(|ours| ours.time.get::<second>() >= moment.time_s - 1e-9)
                .unwrap();
            let (a, b) = (&course[after - 1], &course[after]);
            let (from, to) = (a.time.get::<second>(), b.time.get::<second>());
            let share = (moment.time_s - from) / (to - from);
            let between = |a: f64, b: f64| a + share * (b - a);
            let suction = between(a.suction.get::<pascal>(), b.suction.get::<pascal>());
            let head = between(a.head.get::<pascal>(), b.head.get::<pascal>());
            let liquid = between(
                a.evaporator_charge.get::<kilogram>(),
                b.evaporator_charge.get::<kilogram>(),
            );
            close(suction / moment.suction_Pa, 1.0, 1e-3, &what);
            close(head / moment.head_Pa, 1.0, 1e-3, &what);
            close(liquid, moment.liquid_kg, 1e-3, &what);
        }
    }
}

#[test]
fn what_gathers_in_the_cold_agrees_with_coolprop() {
    #[derive(Deserialize)]
    #[allow(non_snake_case)]
    struct Row {
        refrigerant: String,
        temperatures_K: [f64; 3],
        volumes_m3: [f64; 3],
        pressure_Pa: f64,
        masses_kg: [f64; 3],
        part: usize,
        liquid_share: f64,
    }
    let places = [Place::Condenser, Place::Compressor, Place::Evaporator];
    for row in rows::<Row>(include_str!("data/winter_start_migration.json")) {
        let refrigerant = Refrigerant::named(&row.refrigerant).unwrap();
        let charge: f64 = row.masses_kg.iter().sum();
        // All of it in the warmest part when the system stops; what comes of it does not depend on where it was.
        let parts: Vec<Part> = (0..3)
            .rev()
            .map(|index| Part {
                place: places[index],
                temperature: kelvins(row.temperatures_K[index]),
                volume: Volume::new::<cubic_meter>(row.volumes_m3[index]),
                charge: Mass::new::<kilogram>(if index == 2 { charge } else { 0.0 }),
            })
            .collect();
        let ours = migration(&refrigerant, &parts, None).unwrap();
        let what = &row.refrigerant;
        assert_eq!(ours.coldest, Place::Condenser, "{what}");
        close(
            ours.pressure.get::<pascal>() / row.pressure_Pa,
            1.0,
            1e-8,
            what,
        );
        for (held, mass) in ours.parts.iter().zip(row.masses_kg) {
            close(held.mass.get::<kilogram>() / mass, 1.0, 1e-7, what);
        }
        close(ours.parts[row.part].liquid, row.liquid_share, 1e-7, what);
        let moved = ours.moved.get::<kilogram>();
        close(moved / row.masses_kg[0], 1.0, 1e-7, what);
    }
}
