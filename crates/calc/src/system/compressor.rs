//! The compressor: what it draws in and what it does to it.
//!
//! `m = V·ρ₁·η_v` with `η_v = 1 − c·(ρ₂s/ρ₁ − 1)`, and `h₂ = h₁ + (h₂s − h₁)/η_s`, at constant speed.
//!
//! Source: Stoecker & Jones, Refrigeration and Air Conditioning, compressors chapter: clearance volumetric efficiency, isentropic
//! efficiency.

use winterset_refrigerant::{Error, Refrigerant, State};

use crate::cycle::ISENTROPIC_EFFICIENCY;

/// Clearance volume over swept volume. Common practice, no published source.
const CLEARANCE: f64 = 0.04;

/// Volumetric efficiency below which one stage of compression is taken to do no more. Common practice, no published source.
pub(crate) const LEAST_VOLUMETRIC_EFFICIENCY: f64 = 0.1;

/// A compressor at constant speed.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Compressor {
    /// Volume displaced, m³/s.
    displacement: f64,
}

/// What a compressor does with suction vapour.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Compressed {
    /// Mass flow, kg/s.
    pub(crate) flow: f64,
    /// Enthalpy of the discharge, J/kg.
    pub(crate) enthalpy: f64,
    /// Volumetric efficiency.
    pub(crate) volumetric: f64,
}

/// Volumetric efficiency and discharge enthalpy from suction vapour to the pressure of a dew point.
fn stroke(refrigerant: &Refrigerant, suction: &State, head: &State) -> Result<(f64, f64), Error> {
    let isentropic = refrigerant.superheated_at_entropy(head, suction.entropy)?;
    let squeezed = (isentropic.density / suction.density).value;
    let work = (isentropic.enthalpy - suction.enthalpy).value / ISENTROPIC_EFFICIENCY;
    Ok((
        1.0 - CLEARANCE * (squeezed - 1.0),
        suction.enthalpy.value + work,
    ))
}

/// Volumetric efficiency and discharge enthalpy at the known point, before the displacement is known.
pub(crate) fn known_stroke(
    refrigerant: &Refrigerant,
    suction: &State,
    head: &State,
) -> Result<(f64, f64), Error> {
    stroke(refrigerant, suction, head)
}

impl Compressor {
    /// The compressor that passes a mass flow, kg/s, of this suction vapour at this volumetric efficiency.
    pub(crate) fn passing(flow: f64, suction: &State, volumetric: f64) -> Self {
        Self {
            displacement: flow / (suction.density.value * volumetric),
        }
    }

    /// Suction vapour compressed to the pressure of a dew point. The flow is below zero where clearance takes the whole stroke.
    pub(crate) fn compress(
        &self,
        refrigerant: &Refrigerant,
        suction: &State,
        head: &State,
    ) -> Result<Compressed, Error> {
        let (volumetric, enthalpy) = stroke(refrigerant, suction, head)?;
        Ok(Compressed {
            flow: self.displacement * suction.density.value * volumetric,
            enthalpy,
            volumetric,
        })
    }
}
