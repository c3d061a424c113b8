//! Requests.

use serde_json::Value;
use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{
    AvailableEnergy, MassDensity, Pressure, Ratio, SpecificHeatCapacity, ThermodynamicTemperature,
    Time,
};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;
use winterset_calc::own_controller::OwnController;
use winterset_calc::weather::{Bins, HoursError};
use winterset_profile::System;
use winterset_refrigerant::Refrigerant;

use super::body::Body;
use super::{Outcome, WireError, controller, json, record};

/// A request, read.
pub enum Request {
    Saturation(Refrigerant, Given),
    State(Refrigerant, At),
    Refrigerants,
    Plan(Box<Planned>),
}

/// What a plan is asked for.
pub struct Planned {
    /// The record.
    pub system: System,
    /// Outdoor temperatures of the curves; `None` for the usual ones.
    pub outdoor: Option<Vec<ThermodynamicTemperature>>,
    /// The controller that the settings are held against.
    pub controller: Option<OwnController>,
    /// Hours of a year by outdoor temperature; `None` for the usual year.
    pub hours: Option<Bins>,
}

/// What saturation is asked at.
pub enum Given {
    Temperature(ThermodynamicTemperature),
    Pressure(Pressure),
}

/// The two values that a state is asked at.
pub enum At {
    PressureTemperature(Pressure, ThermodynamicTemperature),
    PressureEnthalpy(Pressure, AvailableEnergy),
    PressureEntropy(Pressure, SpecificHeatCapacity),
    PressureQuality(Pressure, Ratio),
    DensityEnthalpy(MassDensity, AvailableEnergy),
}

const TEMPERATURE: &str = "temperature_K";
const PRESSURE: &str = "pressure_Pa";
const OUTDOOR: &str = "outdoor_temperatures_K";
const CONTROLLER: &str = "controller";
const HOURS: &str = "hours";
const DENSITY: &str = "density_kg_m3";
const ENTHALPY: &str = "enthalpy_J_kg";
const ENTROPY: &str = "entropy_J_kgK";
const QUALITY: &str = "quality";
const SATURATION: [&str; 4] = ["refrigerant", "blend", TEMPERATURE, PRESSURE];
const STATE: [&str; 8] = [
    "refrigerant",
    "blend",
    TEMPERATURE,
    PRESSURE,
    DENSITY,
    ENTHALPY,
    ENTROPY,
    QUALITY,
];

/// Reads a line.
pub fn read(line: &[u8]) -> Outcome<Request> {
    let line = json::read(line)?;
    let mut parts = line.as_object().into_iter().flatten();
    let (Some((name, body)), None) = (parts.next(), parts.next()) else {
        let message =
            "a request is an object with one key: saturation, state, plan or refrigerants";
        return Err(WireError::new("not_a_request", "", message));
    };
    match name.as_str() {
        "saturation" => saturation(Body::new(name, body, &SATURATION)?),
        "state" => state(Body::new(name, body, &STATE)?),
        "refrigerants" => Body::new(name, body, &[]).map(|_| Request::Refrigerants),
        "plan" => plan(Body::new(
            name,
            body,
            &["system", OUTDOOR, CONTROLLER, HOURS],
        )?),
        _ => {
            let message = "a request is one of saturation, state, plan or refrigerants";
            Err(WireError::new("unknown_request", name, message))
        }
    }
}

fn saturation(body: Body) -> Outcome<Request> {
    let given = match (temperature(body)?, pressure(body)?) {
        (Some(temperature), None) => Given::Temperature(temperature),
        (None, Some(pressure)) => Given::Pressure(pressure),
        (None, None) => {
            let message = "give temperature_K or pressure_Pa";
            return Err(WireError::new("missing", TEMPERATURE, message));
        }
        (Some(_), Some(_)) => {
            let message = "give either temperature_K or pressure_Pa, not both";
            return Err(WireError::new("either_or", PRESSURE, message));
        }
    };
    Ok(Request::Saturation(refrigerant(body)?, given))
}

fn state(body: Body) -> Outcome<Request> {
    let wanted = "a state needs pressure_Pa and one of temperature_K, enthalpy_J_kg, entropy_J_kgK and quality, or density_kg_m3 and \
                  enthalpy_J_kg";
    let missing = |field| WireError::new("missing", field, wanted);
    let either_or = |field| Err(WireError::new("either_or", field, wanted));
    let number = |field: &'static str| Ok(body.number(field)?.map(|value| (field, value)));
    let beside = [
        body.positive(TEMPERATURE)?
            .map(|value| (TEMPERATURE, value)),
        number(ENTHALPY)?,
        number(ENTROPY)?,
        number(QUALITY)?,
    ];
    let mut beside = beside.into_iter().flatten();
    let (field, value) = beside.next().ok_or_else(|| missing(TEMPERATURE))?;
    if let Some((other, _)) = beside.next() {
        return either_or(other);
    }
    let enthalpy = AvailableEnergy::new::<joule_per_kilogram>(value);
    let at = match (pressure(body)?, body.positive(DENSITY)?, field) {
        (Some(_), Some(_), _) => return either_or(DENSITY),
        (None, None, _) => return Err(missing(PRESSURE)),
        (None, Some(density), ENTHALPY) => {
            let density = MassDensity::new::<kilogram_per_cubic_meter>(density);
            At::DensityEnthalpy(density, enthalpy)
        }
        (None, Some(_), _) => return Err(missing(ENTHALPY)),
        (Some(p), None, ENTHALPY) => At::PressureEnthalpy(p, enthalpy),
        (Some(p), None, ENTROPY) => {
            let entropy = SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(value);
            At::PressureEntropy(p, entropy)
        }
        (Some(p), None, QUALITY) => At::PressureQuality(p, Ratio::new::<ratio>(value)),
        (Some(p), None, _) => {
            At::PressureTemperature(p, ThermodynamicTemperature::new::<kelvin>(value))
        }
    };
    Ok(Request::State(refrigerant(body)?, at))
}

fn plan(body: Body) -> Outcome<Request> {
    let Some(system) = body.value("system") else {
        let message = "a plan needs the saved record of a system";
        return Err(WireError::new("missing", "system", message));
    };
    let outdoor = body.positives(OUTDOOR)?.map(|temperatures| {
        let temperatures = temperatures.into_iter();
        temperatures
            .map(ThermodynamicTemperature::new::<kelvin>)
            .collect()
    });
    Ok(Request::Plan(Box::new(Planned {
        system: record::read(system)?,
        outdoor,
        controller: body.value(CONTROLLER).map(controller::read).transpose()?,
        hours: hours(body)?,
    })))
}

/// Hours of a year by outdoor temperature.
fn hours(body: Body) -> Outcome<Option<Bins>> {
    let wanted = "a list of pairs is wanted, each a temperature in K and a time in s";
    let pairs = |value: &Value| {
        let pairs = value.as_array()?.iter();
        pairs
            .map(|pair| match pair.as_array()?.as_slice() {
                [temperature, time] => Some((
                    ThermodynamicTemperature::new::<kelvin>(temperature.as_f64()?),
                    Time::new::<second>(time.as_f64()?),
                )),
                _ => None,
            })
            .collect::<Option<Vec<_>>>()
    };
    let Some(entries) = body.read(HOURS, HOURS, pairs, wanted)? else {
        return Ok(None);
    };
    Bins::counted(&entries).map(Some).map_err(|error| {
        let (field, message) = match error {
            HoursError::Temperature {
                index, low, high, ..
            } => (
                format!("{HOURS}[{index}]"),
                format!(
                    "a temperature from {} K to {} K is wanted",
                    low.value, high.value
                ),
            ),
            HoursError::Time { index, .. } => (
                format!("{HOURS}[{index}]"),
                "a time of nothing or more is wanted".to_owned(),
            ),
            HoursError::Nothing => (HOURS.to_owned(), "some time is wanted".to_owned()),
            HoursError::MoreThanAYear { total } => (
                HOURS.to_owned(),
                format!("{} s together are more than a year", total.value),
            ),
        };
        WireError::new("out_of_range", field, message)
    })
}

fn refrigerant(body: Body) -> Outcome<Refrigerant> {
    match (body.text("refrigerant")?, body.shares("blend")?) {
        (Some(name), None) => {
            Refrigerant::named(name).map_err(WireError::refrigerant("refrigerant"))
        }
        (None, Some(parts)) => Refrigerant::blend(&parts).map_err(WireError::refrigerant("blend")),
        (None, None) => {
            let message = "name a refrigerant, or a blend by mass fractions";
            Err(WireError::new("missing", "refrigerant", message))
        }
        (Some(_), Some(_)) => {
            let message = "name either a refrigerant or a blend, not both";
            Err(WireError::new("either_or", "blend", message))
        }
    }
}

fn temperature(body: Body) -> Outcome<Option<ThermodynamicTemperature>> {
    let value = body.positive(TEMPERATURE)?;
    Ok(value.map(ThermodynamicTemperature::new::<kelvin>))
}

fn pressure(body: Body) -> Outcome<Option<Pressure>> {
    let value = body.positive(PRESSURE)?;
    Ok(value.map(Pressure::new::<pascal>))
}
