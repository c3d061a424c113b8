//! A controller's limits in a request, and how the settings of a plan stand to them. SI, absolute pressure.

use serde_json::{Value, json};
use uom::si::electric_current::ampere;
use uom::si::electric_potential::volt;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Pressure, TemperatureInterval, ThermodynamicTemperature,
    Time,
};
use uom::si::pressure::pascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;
use winterset_calc::own_controller::{
    Finding, InputLimits, LimitError, Limits, MotorOutput, Outside, OwnController, Safety, Setting,
    Standing,
};
use winterset_calc::{Plan, Quantity};

use super::body::Body;
use super::{Outcome, WireError};

const POINT_PRESSURE: &str = "full_speed_pressure_Pa";
const RANGE_PRESSURE: &str = "throttling_range_Pa";
const POINT_COIL: &str = "full_speed_coil_K";
const RANGE_COIL: &str = "throttling_range_K";
const OUTPUT: &str = "minimum_output_fraction";
const BOOST: &str = "start_boost_s";
const OUTPUTS: &str = "outputs";
const SUPPLY: &str = "supply_V";
const CURRENT: &str = "rated_current_A";
const KEYS: [&str; 9] = [
    POINT_PRESSURE,
    RANGE_PRESSURE,
    POINT_COIL,
    RANGE_COIL,
    OUTPUT,
    BOOST,
    OUTPUTS,
    SUPPLY,
    CURRENT,
];

/// The limits in an object.
pub fn read(value: &Value) -> Outcome<OwnController> {
    let body = Body::new("controller", value, &KEYS)?;
    let pressure = Pressure::new::<pascal>;
    let point = limits(body, POINT_PRESSURE, pressure)?;
    let range = limits(body, RANGE_PRESSURE, pressure)?;
    let by_pressure =
        pair((POINT_PRESSURE, point), (RANGE_PRESSURE, range))?.map(|(full_speed, throttling)| {
            InputLimits::Pressure {
                full_speed,
                throttling,
            }
        });
    let point = limits(body, POINT_COIL, ThermodynamicTemperature::new::<kelvin>)?;
    let range = limits(
        body,
        RANGE_COIL,
        TemperatureInterval::new::<kelvin_interval>,
    )?;
    let by_coil =
        pair((POINT_COIL, point), (RANGE_COIL, range))?.map(|(full_speed, throttling)| {
            InputLimits::Temperature {
                full_speed,
                throttling,
            }
        });
    let own = OwnController {
        inputs: by_pressure.into_iter().chain(by_coil).collect(),
        minimum_output: limits(body, OUTPUT, |share| share)?,
        start_boost: limits(body, BOOST, Time::new::<second>)?,
        outputs: outputs(body)?,
        supply: limits(body, SUPPLY, ElectricPotential::new::<volt>)?,
        rated_current: body.number(CURRENT)?.map(ElectricCurrent::new::<ampere>),
    };
    match own.problems().first() {
        Some(problem) => Err(beyond(problem)),
        None => Ok(own),
    }
}

fn limits<T: PartialOrd + Copy>(
    body: Body,
    key: &str,
    typed: fn(f64) -> T,
) -> Outcome<Option<Limits<T>>> {
    let wanted = "a list of two numbers is wanted, the lowest and the highest";
    let two = |value: &Value| match value.as_array()?.as_slice() {
        [low, high] => Some((low.as_f64()?, high.as_f64()?)),
        _ => None,
    };
    let Some((low, high)) = body.read(key, key, two, wanted)? else {
        return Ok(None);
    };
    let limits = Limits::new(typed(low), typed(high));
    let message = "the lowest value is wanted first, the highest second";
    limits
        .map(Some)
        .map_err(|_| WireError::new("out_of_range", key, message))
}

/// Both settings of an input, or none.
fn pair<A, B>(
    (point_key, point): (&str, Option<A>),
    (range_key, range): (&str, Option<B>),
) -> Outcome<Option<(A, B)>> {
    let missing = |key: &str, other: &str| {
        let message = format!("an input has both: {other} needs {key}");
        Err(WireError::new("missing", key, message))
    };
    match (point, range) {
        (Some(point), Some(range)) => Ok(Some((point, range))),
        (None, None) => Ok(None),
        (Some(_), None) => missing(range_key, point_key),
        (None, Some(_)) => missing(point_key, range_key),
    }
}

fn outputs(body: Body) -> Outcome<Vec<MotorOutput>> {
    let wanted = format!(
        "a list of outputs is wanted, each one of {}",
        MotorOutput::ALL.map(MotorOutput::key).join(", ")
    );
    let all = |value: &Value| {
        let names = value.as_array()?.iter();
        names
            .map(|name| MotorOutput::from_key(name.as_str()?))
            .collect::<Option<Vec<_>>>()
    };
    let outputs = body.read(OUTPUTS, OUTPUTS, all, &wanted)?;
    Ok(outputs.unwrap_or_default())
}

/// A limit that no controller has.
fn beyond(problem: &LimitError) -> WireError {
    let (field, low, high) = match problem {
        LimitError::OutOfRange {
            setting, low, high, ..
        } => (key_of(*setting, low), low.si(), high.si()),
        LimitError::RatedCurrent { low, high, .. } => (CURRENT, low.value, high.value),
    };
    let message = format!("a limit from {low} to {high} is wanted");
    WireError::new("out_of_range", field, message)
}

fn key_of(setting: Setting, limit: &Quantity) -> &'static str {
    match (setting, limit) {
        (Setting::FullSpeedPoint, Quantity::Pressure(_)) => POINT_PRESSURE,
        (Setting::FullSpeedPoint, _) => POINT_COIL,
        (Setting::ThrottlingRange, Quantity::PressureDifference(_)) => RANGE_PRESSURE,
        (Setting::ThrottlingRange, _) => RANGE_COIL,
        (Setting::MinimumOutput, _) => OUTPUT,
        (Setting::StartBoost, _) => BOOST,
        (Setting::SupplyVoltage, _) => SUPPLY,
        (Setting::RatedCurrent, _) => CURRENT,
        (Setting::Input | Setting::MotorOutput, _) => OUTPUTS,
    }
}

/// How the settings of a plan stand to a controller.
pub fn findings(plan: &Plan, controller: &OwnController) -> Value {
    let findings = controller.check(&plan.wanted());
    let worst = findings.iter().map(Finding::safety).max();
    json!({
        "safety": worst.unwrap_or(Safety::Safe).key(),
        "findings": findings.iter().map(finding).collect::<Vec<_>>(),
    })
}

fn finding(finding: &Finding) -> Value {
    let mut out = json!({
        "setting": finding.setting.key(),
        "standing": finding.standing.key(),
        "safety": finding.safety().key(),
    });
    match &finding.standing {
        Standing::Outside(outside) => {
            out["unit"] = unit(outside).into();
            out["wanted"] = outside.wanted.si().into();
            out["lowest"] = outside.low.si().into();
            out["highest"] = outside.high.si().into();
            out["nearest"] = outside.nearest.as_ref().map(Quantity::si).into();
            out["effect"] = outside.effect.key().into();
        }
        Standing::ShortOfReserve(loading) | Standing::Overloaded(loading) => {
            out["motors_A"] = loading.sum.value.into();
            out["needed_A"] = loading.needed.value.into();
            out["rated_A"] = loading.rating.value.into();
        }
        _ => {}
    }
    out
}

fn unit(outside: &Outside) -> &'static str {
    match outside.wanted {
        Quantity::Pressure(_) | Quantity::PressureDifference(_) => "Pa",
        Quantity::Temperature(_) | Quantity::Difference(_) => "K",
        Quantity::Time(_) => "s",
        Quantity::Voltage(_) => "V",
        _ => "1",
    }
}
