//! The algorithms put to use for one composition: mass units, the reference state, ranges and errors.
//!
//! Values are plain SI here: K, Pa absolute, J/kg, J/(kg K), kg/m³.

mod caloric;
mod density;
#[cfg(test)]
mod equal_fugacities;
mod saturation;
mod single;
mod split;
mod superheated;

pub use saturation::Saturated;

use std::sync::OnceLock;

use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{
    AvailableEnergy, MassDensity, Pressure, Ratio, SpecificHeatCapacity, ThermodynamicTemperature,
    Velocity,
};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::velocity::meter_per_second;

use crate::algorithm::Stalled;
use crate::algorithm::critical::Critical;
use crate::algorithm::envelope::{Envelope, Given};
use crate::algorithm::equilibrium::Side;
use crate::algorithm::properties::{Properties, properties};
use crate::data::FLUIDS;
use crate::model::mixture::Mixture;
use crate::{Calculation, Error, Phase, Quantity, State};

/// Lowest temperature of any saturation curve: -100 °C.
const COLDEST: f64 = 173.15;
/// Lowest pressure that is answered.
const THINNEST: f64 = 1.0;
/// The gas of a blend is answered at least up to here, and its liquid up to this pressure, even where one of its components'
/// equations was fitted to a smaller range; these equations extrapolate smoothly.
const WARMEST: f64 = 450.0;
const DENSEST: f64 = 1e7;
/// Reference state of the IIR: saturated liquid at 0 °C.
const REFERENCE_TEMPERATURE: f64 = 273.15;
const REFERENCE_ENTHALPY: f64 = 200e3;
const REFERENCE_ENTROPY: f64 = 1e3;
/// Where 0 °C is above critical, zero enthalpy and entropy are at the normal boiling point instead.
const NORMAL_PRESSURE: f64 = 101_325.0;

/// A composition with all that is computed once.
pub struct Engine {
    mixture: Mixture,
    z: Vec<f64>,
    molar_mass: f64,
    lowest: f64,
    highest: f64,
    densest: f64,
    envelope: OnceLock<Result<Envelope, Stalled>>,
    reference: OnceLock<(f64, f64)>,
}

impl Engine {
    /// By indices of the fluids and mass fractions.
    pub fn new(parts: &[(usize, f64)]) -> Engine {
        let amounts: Vec<f64> = parts
            .iter()
            .map(|&(i, share)| share / FLUIDS[i].molar_mass)
            .collect();
        let sum: f64 = amounts.iter().sum();
        let z: Vec<f64> = amounts.iter().map(|a| a / sum).collect();
        let mixture = Mixture::new(&parts.iter().map(|(i, _)| *i).collect::<Vec<_>>());
        let fluids = &mixture.fluids;
        // In a blend a component stays dissolved below its own triple point.
        let triple = match fluids.as_slice() {
            [only] => only.triple_temperature,
            _ => COLDEST,
        };
        let least = |value: fn(&crate::data::Fluid) -> f64| {
            fluids
                .iter()
                .map(|f| value(f))
                .fold(f64::INFINITY, f64::min)
        };
        Engine {
            lowest: triple.max(COLDEST),
            highest: least(|f| f.highest_temperature).max(WARMEST),
            densest: least(|f| f.highest_pressure).max(DENSEST),
            molar_mass: mixture.molar_mass(&z),
            mixture,
            z,
            envelope: OnceLock::new(),
            reference: OnceLock::new(),
        }
    }

    /// Molar mass, kg/mol.
    pub fn molar_mass(&self) -> f64 {
        self.molar_mass
    }

    /// Whether a pair has no published parameters.
    pub fn is_estimated(&self) -> bool {
        self.mixture.estimated
    }

    /// The saturation curves, traced at the first call.
    pub fn envelope(&self) -> Result<&Envelope, Error> {
        self.envelope
            .get_or_init(|| Envelope::trace(&self.mixture, &self.z, self.lowest))
            .as_ref()
            .map_err(|Stalled| Error::NotConverged {
                calculation: Calculation::CriticalPoint,
                quantity: Quantity::Temperature,
                value: self.lowest,
            })
    }

    /// Critical constants, molar.
    pub fn critical(&self) -> Critical {
        let (temperature, density) = self.mixture.reducing(&self.z);
        match (self.mixture.fluids.as_slice(), self.envelope()) {
            ([only], envelope) => Critical {
                temperature: only.critical_temperature,
                density: envelope.map_or(density, |e| e.critical.density),
                pressure: only.critical_pressure,
            },
            (_, Ok(envelope)) => envelope.critical,
            // The reducing point is near the critical one; no blend is known that comes here.
            (_, Err(_)) => Critical {
                temperature,
                density,
                pressure: properties(&self.mixture, temperature, density, &self.z).pressure,
            },
        }
    }

    /// Lowest and highest temperature of the saturation functions.
    pub fn saturation_range(&self) -> (f64, f64) {
        let high = self.envelope().map_or(f64::NAN, |e| {
            e.highest(Side::Bubble, Given::Temperature)
                .min(e.highest(Side::Dew, Given::Temperature))
        });
        (self.lowest, high)
    }

    /// Molar enthalpy and entropy that the reference state lies at.
    fn reference(&self) -> (f64, f64) {
        *self.reference.get_or_init(|| {
            let liquid = |point: Result<Saturated, Error>| {
                point
                    .map(|s| properties(&self.mixture, s.temperature, s.density, &self.z))
                    .map(|p| (p.enthalpy, p.entropy))
            };
            match liquid(self.saturated(Side::Bubble, Given::Temperature, REFERENCE_TEMPERATURE)) {
                Ok((h, s)) => (
                    h - REFERENCE_ENTHALPY * self.molar_mass,
                    s - REFERENCE_ENTROPY * self.molar_mass,
                ),
                Err(_) => liquid(self.saturated(Side::Bubble, Given::Pressure, NORMAL_PRESSURE))
                    .unwrap_or((0.0, 0.0)),
            }
        })
    }

    /// J/kg on the reference state from J/mol on the datum.
    fn mass_enthalpy(&self, molar: f64) -> f64 {
        (molar - self.reference().0) / self.molar_mass
    }

    /// J/(kg K) on the reference state from J/(mol K) on the datum.
    fn mass_entropy(&self, molar: f64) -> f64 {
        (molar - self.reference().1) / self.molar_mass
    }

    /// A single phase.
    fn single(
        &self,
        phase: Phase,
        quality: Option<f64>,
        (t, p, rho): (f64, f64, f64),
        of: &Properties,
    ) -> State {
        let heat = |molar: f64| {
            Some(SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(
                molar / self.molar_mass,
            ))
        };
        State {
            heat_capacity: heat(of.isobaric),
            isochoric_heat_capacity: heat(of.isochoric),
            speed_of_sound: Some(Velocity::new::<meter_per_second>(of.speed_of_sound)),
            ..self.bare(phase, quality, (t, p, rho), (of.enthalpy, of.entropy))
        }
    }

    /// A state without what only a single phase has, from molar values.
    fn bare(
        &self,
        phase: Phase,
        quality: Option<f64>,
        (t, p, rho): (f64, f64, f64),
        (h, s): (f64, f64),
    ) -> State {
        State {
            phase,
            temperature: ThermodynamicTemperature::new::<kelvin>(t),
            pressure: Pressure::new::<pascal>(p),
            density: MassDensity::new::<kilogram_per_cubic_meter>(rho * self.molar_mass),
            enthalpy: AvailableEnergy::new::<joule_per_kilogram>(self.mass_enthalpy(h)),
            entropy: SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(self.mass_entropy(s)),
            heat_capacity: None,
            isochoric_heat_capacity: None,
            speed_of_sound: None,
            quality: quality.map(Ratio::new::<ratio>),
        }
    }

    fn check(&self, quantity: Quantity, value: f64, low: f64, high: f64) -> Result<(), Error> {
        if (low..=high).contains(&value) {
            Ok(())
        } else {
            Err(Error::OutOfRange {
                quantity,
                value,
                low,
                high,
            })
        }
    }

    fn check_pressure(&self, p: f64) -> Result<(), Error> {
        self.check(Quantity::Pressure, p, THINNEST, self.densest)
    }
}
