//! Requests.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_profile::System;
use winterset_refrigerant::Refrigerant;

use super::body::Body;
use super::{Outcome, WireError, json, record};

/// A request, read.
pub enum Request {
    Saturation(Refrigerant, Given),
    State(Refrigerant, ThermodynamicTemperature, Pressure),
    Plan(Box<System>, Option<Vec<ThermodynamicTemperature>>),
}

/// What saturation is asked at.
pub enum Given {
    Temperature(ThermodynamicTemperature),
    Pressure(Pressure),
}

const TEMPERATURE: &str = "temperature_K";
const PRESSURE: &str = "pressure_Pa";
const OUTDOOR: &str = "outdoor_temperatures_K";
const FLUID: [&str; 4] = ["refrigerant", "blend", TEMPERATURE, PRESSURE];

/// Reads a line.
pub fn read(line: &[u8]) -> Outcome<Request> {
    let line = json::read(line)?;
    let mut parts = line.as_object().into_iter().flatten();
    let (Some((name, body)), None) = (parts.next(), parts.next()) else {
        let message = "a request is an object with one key: saturation, state or plan";
        return Err(WireError::new("not_a_request", "", message));
    };
    match name.as_str() {
        "saturation" => saturation(Body::new(name, body, &FLUID)?),
        "state" => state(Body::new(name, body, &FLUID)?),
        "plan" => plan(Body::new(name, body, &["system", OUTDOOR])?),
        _ => {
            let message = "a request is one of saturation, state or plan";
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
    let missing = |field| {
        move || {
            let message = "a state needs temperature_K and pressure_Pa";
            WireError::new("missing", field, message)
        }
    };
    let temperature = temperature(body)?.ok_or_else(missing(TEMPERATURE))?;
    let pressure = pressure(body)?.ok_or_else(missing(PRESSURE))?;
    Ok(Request::State(refrigerant(body)?, temperature, pressure))
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
    Ok(Request::Plan(Box::new(record::read(system)?), outdoor))
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
