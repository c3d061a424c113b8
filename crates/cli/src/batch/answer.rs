//! Answers. SI, absolute pressure.

use serde_json::{Value, json};
use winterset_refrigerant::{Phase, Refrigerant, State};

use super::request::{At, Given, Request};
use super::{Outcome, WireError, plan, refrigerants};

/// Answers a request.
pub fn to(request: Request) -> Outcome<Value> {
    match request {
        Request::Saturation(refrigerant, given) => saturation(&refrigerant, &given),
        Request::State(refrigerant, at) => state(&refrigerant, &at),
        Request::Refrigerants => Ok(refrigerants::all()),
        Request::Plan(asked) => plan::to(&asked),
    }
}

fn saturation(refrigerant: &Refrigerant, given: &Given) -> Outcome<Value> {
    let found = match given {
        Given::Temperature(temperature) => refrigerant
            .saturation_at_temperature(*temperature)
            .map_err(WireError::refrigerant("temperature_K")),
        Given::Pressure(pressure) => refrigerant
            .saturation_at_pressure(*pressure)
            .map_err(WireError::refrigerant("pressure_Pa")),
    }?;
    Ok(json!({ "bubble": saturated(&found.bubble), "dew": saturated(&found.dew) }))
}

fn state(refrigerant: &Refrigerant, at: &At) -> Outcome<Value> {
    let found = match *at {
        At::PressureTemperature(p, t) => refrigerant.state(t, p),
        At::PressureEnthalpy(p, h) => refrigerant.state_at_pressure_enthalpy(p, h),
        At::PressureEntropy(p, s) => refrigerant.state_at_pressure_entropy(p, s),
        At::PressureQuality(p, x) => refrigerant.two_phase(p, x),
        At::DensityEnthalpy(rho, h) => refrigerant.state_at_density_enthalpy(rho, h),
    };
    let state = found.map_err(WireError::at_state)?;
    let mut out = json!({
        "phase": phase(state.phase),
        "density_kg_m3": state.density.value,
        "enthalpy_J_kg": state.enthalpy.value,
        "entropy_J_kgK": state.entropy.value,
        "cp_J_kgK": state.heat_capacity.map(|capacity| capacity.value),
    });
    if !matches!(at, At::PressureTemperature(..)) {
        out["temperature_K"] = state.temperature.value.into();
        out["pressure_Pa"] = state.pressure.value.into();
        out["quality"] = state.quality.map(|quality| quality.value).into();
    }
    Ok(out)
}

fn saturated(state: &State) -> Value {
    json!({
        "temperature_K": state.temperature.value,
        "pressure_Pa": state.pressure.value,
        "density_kg_m3": state.density.value,
        "enthalpy_J_kg": state.enthalpy.value,
        "entropy_J_kgK": state.entropy.value,
    })
}

fn phase(phase: Phase) -> &'static str {
    match phase {
        Phase::Liquid => "liquid",
        Phase::Vapor => "vapor",
        Phase::TwoPhase => "two_phase",
        Phase::Supercritical => "supercritical",
    }
}
