//! The compressor: what it draws in and what it does to it.
//!
//! Without a data sheet `m = V·ρ₁·η_v` with `η_v = 1 − c·(ρ₂s/ρ₁ − 1)`, and `h₂ = h₁ + (h₂s − h₁)/η_s`, at constant speed. With one, flow and
//! power follow its ten-coefficient polynomials, brought to the suction gas that there is, and `h₂ = h₁ + P/m`. Either is scaled so that the
//! known point is met.
//!
//! Source: Stoecker & Jones, Refrigeration and Air Conditioning, compressors chapter: clearance volumetric efficiency, isentropic
//! efficiency; AHRI 540 for data sheets.

use winterset_refrigerant::{Error, Refrigerant, State};

use super::fluid::temperature;
use crate::compressor::rating::DataSheet;
use crate::compressor::{CompressorError, Point, Suction};
use crate::cycle::ISENTROPIC_EFFICIENCY;

/// Clearance volume over swept volume. Common practice, no published source.
const CLEARANCE: f64 = 0.04;

/// Volumetric efficiency below which one stage of compression is taken to do no more. Common practice, no published source.
pub(crate) const LEAST_VOLUMETRIC_EFFICIENCY: f64 = 0.1;

/// How flow and work go with the pressures.
#[derive(Clone, Debug)]
pub(crate) enum Pattern {
    /// By clearance and isentropic efficiency.
    Clearance,
    /// By a data sheet.
    Sheet(Box<DataSheet>),
}

/// One stroke, before it is scaled.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Stroke {
    /// Flow by the pattern: kg/s of the sheet, or kg/s a swept m³/s.
    pub(crate) flow: f64,
    /// Enthalpy of the discharge, J/kg.
    pub(crate) enthalpy: f64,
    /// Volumetric efficiency; one where a sheet tells the flow.
    pub(crate) volumetric: f64,
}

/// Share of the known flow below which a sheet is taken to be past what it was fitted to. Common practice, no published source.
const LEAST_FLOW: f64 = 0.1;

/// Flow where a pattern knows of none, kg/s: so little that a balance turns away from it.
const TRICKLE: f64 = 1e-9;

impl Pattern {
    /// Suction vapour compressed to the pressure of a dew point, from an evaporating temperature, K.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn stroke(
        &self,
        refrigerant: &Refrigerant,
        evaporating: f64,
        suction: &State,
        head: &State,
    ) -> Result<Stroke, Error> {
        if let Pattern::Sheet(sheet) = self {
            let point = Point {
                evaporating: temperature(evaporating),
                condensing: head.temperature,
            };
            let gas = Suction::ReturnGas(suction.temperature);
            match sheet.at(point, gas, sheet.subcooling) {
                Ok(found) => {
                    if let Some(power) = found.power {
                        let flow = found.mass_flow.value;
                        return Ok(Stroke {
                            flow,
                            enthalpy: suction.enthalpy.value + power.value / flow,
                            volumetric: 1.0,
                        });
                    }
                    let work = work(refrigerant, suction, head)?;
                    return Ok(Stroke {
                        flow: found.mass_flow.value,
                        enthalpy: suction.enthalpy.value + work.0,
                        volumetric: 1.0,
                    });
                }
                Err(CompressorError::Refrigerant(error)) => return Err(error),
                // Past what the polynomials were fitted to, a sheet knows of no flow.
                Err(_) => {
                    let work = work(refrigerant, suction, head)?;
                    return Ok(Stroke {
                        flow: TRICKLE,
                        enthalpy: suction.enthalpy.value + work.0,
                        volumetric: 0.0,
                    });
                }
            }
        }
        let (work, squeezed) = work(refrigerant, suction, head)?;
        let volumetric = 1.0 - CLEARANCE * (squeezed - 1.0);
        Ok(Stroke {
            flow: suction.density.value * volumetric,
            enthalpy: suction.enthalpy.value + work,
            volumetric,
        })
    }
}

/// Work, J/kg, and how much denser the gas would be without losses.
fn work(refrigerant: &Refrigerant, suction: &State, head: &State) -> Result<(f64, f64), Error> {
    let isentropic = refrigerant.superheated_at_entropy(head, suction.entropy)?;
    Ok((
        (isentropic.enthalpy - suction.enthalpy).value / ISENTROPIC_EFFICIENCY,
        (isentropic.density / suction.density).value,
    ))
}

/// A compressor at constant speed.
#[derive(Clone, Debug)]
pub(crate) struct Compressor {
    pattern: Pattern,
    scale: f64,
    /// Flow at the known point, kg/s.
    known_flow: f64,
}

impl Compressor {
    /// The compressor whose known stroke passes a mass flow, kg/s.
    pub(crate) fn passing(flow: f64, pattern: Pattern, known: &Stroke) -> Self {
        Self {
            pattern,
            scale: flow / known.flow,
            known_flow: flow,
        }
    }

    /// Whether a data sheet tells the flow.
    pub(crate) fn is_by_sheet(&self) -> bool {
        matches!(self.pattern, Pattern::Sheet(_))
    }

    /// Suction vapour compressed to the pressure of a dew point. The flow is below zero where clearance takes the whole stroke.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn compress(
        &self,
        refrigerant: &Refrigerant,
        evaporating: f64,
        suction: &State,
        head: &State,
    ) -> Result<Stroke, Error> {
        let stroke = self
            .pattern
            .stroke(refrigerant, evaporating, suction, head)?;
        let flow = self.scale * stroke.flow;
        let is_past_sheet = self.is_by_sheet() && flow < LEAST_FLOW * self.known_flow;
        Ok(Stroke {
            flow,
            volumetric: if is_past_sheet {
                0.0
            } else {
                stroke.volumetric
            },
            ..stroke
        })
    }
}
