//! Fan laws: a known point carried to another speed and another density of the air.

use uom::si::f64::MassDensity;
use uom::si::mass_density::kilogram_per_cubic_meter;
use winterset_calc::fan::FanPoint;
use winterset_calc::{Given, SheetRule, air};
use winterset_profile::{Amount, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found};

/// Half the known speed stands in for a new one.
pub fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    if question != Question::NewSpeed {
        return None;
    }
    let known = reader.number(Question::KnownSpeed).ok()?;
    Some(Amount::new(Measure::Speed, 0.5 * known.value.si))
}

/// Airflow, pressure rise, shaft power and the density of the air.
pub fn answer(reader: &Reader) -> Answers {
    Answers {
        found: scaled(reader).unwrap_or_default(),
        notes: Vec::new(),
    }
}

/// Air at an elevation and a temperature, each with its basis.
struct Air {
    elevation: Given<Amount>,
    temperature: Given<Amount>,
    density: MassDensity,
}

impl Air {
    fn read(reader: &Reader, elevation: Question, temperature: Question) -> Result<Self, Wrong> {
        let elevation = reader.number(elevation)?;
        let temperature = reader.number(temperature)?;
        let pressure = air::atmosphere(elevation.value.length());
        Ok(Self {
            elevation,
            temperature,
            density: air::density(pressure, temperature.value.temperature()),
        })
    }

    fn si(&self) -> f64 {
        self.density.get::<kilogram_per_cubic_meter>()
    }
}

fn scaled(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let old = Air::read(reader, Question::KnownElevation, Question::KnownTemperature)?;
    let new = Air::read(reader, Question::Elevation, Question::Outdoor)?;
    let known_speed = reader.number(Question::KnownSpeed)?;
    let speed = reader.number(Question::NewSpeed)?;
    let airflow = reader.number(Question::KnownAirflow)?;
    let rise = reader.number(Question::KnownFanPressure)?;
    let power = reader.number(Question::KnownPower)?;
    let known = FanPoint {
        airflow: airflow.value.airflow(),
        pressure_rise: rise.value.pressure(),
        power: power.value.power(),
    };
    let turned = (speed.value.speed() / known_speed.value.speed()).value;
    let thicker = (new.density / old.density).value;
    let point = known.scaled(turned, thicker);
    let speeds = |found: Found| found.given("n_1", known_speed).reading("n", speed);
    let densities = |found: Found| {
        found
            .with("ρ_1", Measure::Density, old.si())
            .with("ρ", Measure::Density, new.si())
    };
    Ok(vec![
        speeds(
            Found::new(SheetRule::FanAirflow, Measure::Airflow, point.airflow.value)
                .reading("V_1", airflow),
        )
        .like(reader, Question::KnownAirflow)
        .strong(),
        densities(speeds(
            Found::new(
                SheetRule::FanPressure,
                Measure::FanPressure,
                point.pressure_rise.value,
            )
            .reading("Δp_1", rise),
        ))
        .like(reader, Question::KnownFanPressure),
        densities(speeds(
            Found::new(SheetRule::FanPower, Measure::ShaftPower, point.power.value)
                .reading("P_1", power),
        ))
        .like(reader, Question::KnownPower)
        .strong(),
        Found::new(SheetRule::AirDensity, Measure::Density, new.si())
            .given("H", new.elevation)
            .reading("T", new.temperature),
    ])
}
