//! Requests.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_profile::System;
use winterset_refrigerant::Refrigerant;

use super::{Outcome, WireError};

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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(non_snake_case)]
struct Fluid {
    refrigerant: Option<String>,
    blend: Option<BTreeMap<String, f64>>,
    temperature_K: Option<f64>,
    pressure_Pa: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(non_snake_case)]
struct PlanBody {
    system: Value,
    outdoor_temperatures_K: Option<Vec<f64>>,
}

/// Reads a line.
pub fn read(line: &[u8]) -> Outcome<Request> {
    let line: Value = serde_json::from_slice(line)
        .map_err(|error| WireError::new("not_json", "", error.to_string()))?;
    let Value::Object(object) = line else {
        return Err(WireError::new(
            "not_a_request",
            "",
            "a request is an object",
        ));
    };
    let mut parts = object.into_iter();
    let (Some((name, body)), None) = (parts.next(), parts.next()) else {
        return Err(WireError::new(
            "not_a_request",
            "",
            "a request has one key: saturation, state or plan",
        ));
    };
    match name.as_str() {
        "saturation" => saturation(form("saturation", body)?),
        "state" => state(form("state", body)?),
        "plan" => plan(form("plan", body)?),
        _ => Err(WireError::new(
            "unknown_request",
            name,
            "a request is one of saturation, state or plan",
        )),
    }
}

/// The body in its form; what does not fit is named by the key it stands at, as far as that is known.
fn form<T: DeserializeOwned>(request: &'static str, body: Value) -> Outcome<T> {
    let keys: Vec<String> = match &body {
        Value::Object(object) => object.keys().cloned().collect(),
        _ => Vec::new(),
    };
    let probe = body.clone();
    serde_json::from_value(body).map_err(|error| {
        let message = error.to_string();
        // The parser quotes an unknown or a missing key; a value of the wrong type is found by leaving each key out in turn.
        let quoted = message.split('`').nth(1).map(str::to_owned);
        let wrong = keys.into_iter().find(|key| {
            let mut rest = probe.clone();
            let removed = rest.as_object_mut().and_then(|object| object.remove(key));
            removed.is_some() && serde_json::from_value::<T>(rest).is_ok()
        });
        let field = quoted
            .filter(|_| {
                message.starts_with("unknown field") || message.starts_with("missing field")
            })
            .or(wrong)
            .unwrap_or_else(|| request.to_owned());
        WireError::new("bad_form", field, message)
    })
}

impl Fluid {
    fn refrigerant(&self) -> Outcome<Refrigerant> {
        match (&self.refrigerant, &self.blend) {
            (Some(name), None) => {
                Refrigerant::named(name).map_err(WireError::refrigerant("refrigerant"))
            }
            (None, Some(parts)) => {
                let parts: Vec<(&str, f64)> = parts
                    .iter()
                    .map(|(name, share)| (name.as_str(), *share))
                    .collect();
                Refrigerant::blend(&parts).map_err(WireError::refrigerant("blend"))
            }
            _ => Err(WireError::new(
                "missing",
                "refrigerant",
                "name either a refrigerant or a blend by mass fractions",
            )),
        }
    }

    fn temperature(&self) -> Outcome<Option<ThermodynamicTemperature>> {
        let value = positive("temperature_K", self.temperature_K)?;
        Ok(value.map(ThermodynamicTemperature::new::<kelvin>))
    }

    fn pressure(&self) -> Outcome<Option<Pressure>> {
        let value = positive("pressure_Pa", self.pressure_Pa)?;
        Ok(value.map(Pressure::new::<pascal>))
    }
}

fn positive(field: &'static str, value: Option<f64>) -> Outcome<Option<f64>> {
    match value {
        Some(value) if value <= 0.0 => Err(WireError::new(
            "out_of_range",
            field,
            "a value above zero is wanted",
        )),
        other => Ok(other),
    }
}

fn saturation(fluid: Fluid) -> Outcome<Request> {
    let given = match (fluid.temperature()?, fluid.pressure()?) {
        (Some(temperature), None) => Given::Temperature(temperature),
        (None, Some(pressure)) => Given::Pressure(pressure),
        (None, None) => {
            return Err(WireError::new(
                "missing",
                "temperature_K",
                "give temperature_K or pressure_Pa",
            ));
        }
        (Some(_), Some(_)) => {
            return Err(WireError::new(
                "either_or",
                "pressure_Pa",
                "give either temperature_K or pressure_Pa, not both",
            ));
        }
    };
    Ok(Request::Saturation(fluid.refrigerant()?, given))
}

fn state(fluid: Fluid) -> Outcome<Request> {
    let missing = |field| {
        move || {
            WireError::new(
                "missing",
                field,
                "a state needs temperature_K and pressure_Pa",
            )
        }
    };
    let temperature = fluid.temperature()?.ok_or_else(missing("temperature_K"))?;
    let pressure = fluid.pressure()?.ok_or_else(missing("pressure_Pa"))?;
    Ok(Request::State(fluid.refrigerant()?, temperature, pressure))
}

fn plan(body: PlanBody) -> Outcome<Request> {
    let system = System::from_json(&body.system.to_string())
        .map_err(|error| WireError::new("bad_form", "system", error.to_string()))?;
    let outdoor = body.outdoor_temperatures_K.map(|temperatures| {
        temperatures
            .into_iter()
            .map(ThermodynamicTemperature::new::<kelvin>)
            .collect()
    });
    Ok(Request::Plan(Box::new(system), outdoor))
}
