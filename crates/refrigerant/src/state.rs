//! States and the curves they lie on.

use uom::si::f64::{
    AvailableEnergy, MassDensity, Pressure, Ratio, SpecificHeatCapacity, ThermodynamicTemperature,
    Velocity,
};

/// Which phase, or phases, a state consists of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Phase {
    /// Liquid alone, up to and including the bubble point.
    Liquid,
    /// Vapour alone, from the dew point up.
    Vapor,
    /// Liquid and vapour in equilibrium.
    TwoPhase,
    /// Above the critical pressure and temperature both.
    Supercritical,
}

/// One equilibrium state of a refrigerant.
///
/// Enthalpy and entropy are on the IIR reference state described in the [crate documentation](crate).
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct State {
    /// Phase or phases present.
    pub phase: Phase,
    /// Thermodynamic temperature.
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure.
    pub pressure: Pressure,
    /// Mass density; of both phases together where there are two.
    pub density: MassDensity,
    /// Specific enthalpy.
    pub enthalpy: AvailableEnergy,
    /// Specific entropy.
    pub entropy: SpecificHeatCapacity,
    /// Isobaric heat capacity c_p of a single phase; `None` in two phases.
    pub heat_capacity: Option<SpecificHeatCapacity>,
    /// Isochoric heat capacity c_v of a single phase; `None` in two phases.
    pub isochoric_heat_capacity: Option<SpecificHeatCapacity>,
    /// Speed of sound of a single phase; `None` in two phases.
    pub speed_of_sound: Option<Velocity>,
    /// Vapour quality: 0 at the bubble point, 1 at the dew point, between them in two phases;
    /// `None` for a single phase away from saturation.
    pub quality: Option<Ratio>,
}

/// Bubble and dew point at one temperature, or at one pressure.
///
/// A pure fluid has the same temperature and pressure at both. A blend at one pressure has its
/// dew point warmer by the glide; at one temperature its bubble point has the higher pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Saturation {
    /// Saturated liquid, at which the first bubble of vapour appears.
    pub bubble: State,
    /// Saturated vapour, at which the first drop of liquid appears.
    pub dew: State,
}

impl Saturation {
    /// Enthalpy of the saturated vapour less that of the saturated liquid.
    ///
    /// At one pressure this is the latent heat of the refrigerant, glide included.
    pub fn latent_heat(&self) -> AvailableEnergy {
        self.dew.enthalpy - self.bubble.enthalpy
    }
}

/// Where the liquid and the vapour of a refrigerant become one and the same.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct CriticalPoint {
    /// Critical temperature.
    pub temperature: ThermodynamicTemperature,
    /// Critical pressure, absolute.
    pub pressure: Pressure,
    /// Critical density.
    pub density: MassDensity,
}
