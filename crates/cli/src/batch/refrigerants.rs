//! The list of refrigerants.

use serde_json::{Map, Value, json};
use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_refrigerant::{Refrigerant, Supply};

/// Every refrigerant that is known by name.
pub fn all() -> Value {
    let list: Vec<Value> = Refrigerant::all()
        .filter_map(|name| Refrigerant::named(name).ok())
        .map(|refrigerant| one(&refrigerant))
        .collect();
    json!({ "refrigerants": list })
}

fn one(refrigerant: &Refrigerant) -> Value {
    let critical = refrigerant.critical_point();
    let composition: Map<String, Value> = refrigerant
        .composition()
        .iter()
        .map(|part| (part.designation.to_owned(), part.mass_fraction.into()))
        .collect();
    // A refrigerant whose critical temperature lies below 40 °C has no glide there.
    let glide = refrigerant
        .glide(ThermodynamicTemperature::new::<degree_celsius>(40.0))
        .ok()
        .map(|glide| glide.value);
    let (low, high) = refrigerant.temperature_range();
    json!({
        "designation": refrigerant.designation(),
        "safety_class": refrigerant.safety_class().map(|class| class.to_string()),
        "composition": composition,
        "glide_at_313_15_K_dew_K": glide,
        "critical_temperature_K": critical.temperature.value,
        "critical_pressure_Pa": critical.pressure.value,
        "temperature_range_K": [low.value, high.value],
        "estimated": refrigerant.is_estimated(),
        "common_use": refrigerant.common_use(),
        "supply": match refrigerant.supply() {
            Supply::Unrestricted => "unrestricted",
            Supply::PhaseDown => "phase_down",
            Supply::PhaseOut => "phase_out",
            _ => "unknown",
        },
    })
}
