//! States of the refrigerant as bare SI numbers, for the inner loops of a balance: K, Pa, kg/m³, J/kg, J/(kg K).

use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{AvailableEnergy, Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Error, Refrigerant, State};

pub(crate) fn temperature(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(value)
}

pub(crate) fn pressure(value: f64) -> Pressure {
    Pressure::new::<pascal>(value)
}

pub(crate) fn enthalpy(value: f64) -> AvailableEnergy {
    AvailableEnergy::new::<joule_per_kilogram>(value)
}

pub(crate) fn dew(refrigerant: &Refrigerant, at: f64) -> Result<State, Error> {
    refrigerant.dew_at_temperature(temperature(at))
}

pub(crate) fn single(refrigerant: &Refrigerant, at: f64, head: f64) -> Result<State, Error> {
    refrigerant.state(temperature(at), pressure(head))
}

/// Heat capacity of a single phase; of two phases, which have none, that of an ideal halocarbon vapour, so that no caller divides by
/// zero where a state lies on the dew line itself.
pub(crate) fn heat_capacity(state: &State) -> f64 {
    state
        .heat_capacity
        .map_or(800.0, |heat_capacity| heat_capacity.value)
}
