//! States from temperature and pressure.

use super::Engine;
use super::saturation::Saturated;
use crate::algorithm::Stalled;
use crate::algorithm::density::density;
use crate::algorithm::envelope::Given;
use crate::algorithm::properties::properties;
use crate::{Calculation, Error, Phase, Quantity, State};

/// Highest density over the reducing density that a liquid, and a fluid above the critical temperature, is looked for at.
const CLOSEST: f64 = 4.0;
const CLOSEST_FLUID: f64 = 3.3;
/// Smallest and largest ratio of ideal-gas to actual density of a vapour that is allowed for.
const LIGHTEST: f64 = 0.2;

impl Engine {
    pub fn state(&self, t: f64, p: f64) -> Result<State, Error> {
        self.check(Quantity::Temperature, t, self.lowest, self.highest)?;
        self.check_pressure(p)?;
        let (bubble, dew) = self.each(Given::Temperature, t);
        let rho = match (bubble, dew) {
            (Ok(bubble), _) if p > bubble.pressure => self.liquid(t, p, bubble.density)?,
            (_, Ok(dew)) if p <= dew.pressure => self.vapor(t, p, dew.density)?,
            (Err(Error::AboveCritical { .. }), Err(Error::AboveCritical { .. })) => {
                self.fluid(t, p)?
            }
            (Ok(_), Ok(_))
            | (Err(Error::AboveCritical { .. }), _)
            | (_, Err(Error::AboveCritical { .. })) => match self.split_at_temperature(t, p)? {
                Some(split) => return Ok(self.split_state(p, &split)),
                None => self.fluid(t, p)?,
            },
            (Err(error), _) | (_, Err(error)) => return Err(error),
        };
        Ok(self.single_state(t, p, rho))
    }

    /// A single phase of known molar density.
    pub(super) fn single_state(&self, t: f64, p: f64, rho: f64) -> State {
        let of = properties(&self.mixture, t, rho, &self.z);
        self.single(self.phase_name(t, p, rho), None, (t, p, rho), &of)
    }

    fn phase_name(&self, t: f64, p: f64, rho: f64) -> Phase {
        let critical = self.critical();
        match (t > critical.temperature, p > critical.pressure) {
            (true, true) => Phase::Supercritical,
            (true, false) => Phase::Vapor,
            (false, true) => Phase::Liquid,
            (false, false) if rho > critical.density => Phase::Liquid,
            (false, false) => Phase::Vapor,
        }
    }

    fn solve_density(&self, t: f64, p: f64, guess: f64, bracket: (f64, f64)) -> Result<f64, Error> {
        density(&self.mixture, t, p, &self.z, guess, bracket).map_err(|Stalled| {
            Error::NotConverged {
                calculation: Calculation::Density,
                quantity: Quantity::Temperature,
                value: t,
            }
        })
    }

    fn ideal(&self, t: f64, p: f64) -> f64 {
        p / (self.mixture.gas_constant * t)
    }

    fn reducing_density(&self) -> f64 {
        self.mixture.reducing(&self.z).1
    }

    /// Density of a liquid, not less than a given one.
    pub(super) fn liquid(&self, t: f64, p: f64, least: f64) -> Result<f64, Error> {
        let most = (CLOSEST * self.reducing_density()).max(1.2 * least);
        self.solve_density(t, p, least, (least * (1.0 - 1e-9), most))
    }

    /// Density of a vapour, not more than a given one.
    pub(super) fn vapor(&self, t: f64, p: f64, most: f64) -> Result<f64, Error> {
        self.vapor_near(t, p, self.ideal(t, p), most)
    }

    /// As [`Engine::vapor`], from a first guess.
    pub(super) fn vapor_near(&self, t: f64, p: f64, guess: f64, most: f64) -> Result<f64, Error> {
        let most = most * (1.0 + 1e-9);
        self.solve_density(t, p, guess, (LIGHTEST * self.ideal(t, p).min(most), most))
    }

    /// Density where there is but one for each pressure: of a liquid, compressed, below the critical temperature, and of any
    /// fluid above it.
    pub(super) fn fluid(&self, t: f64, p: f64) -> Result<f64, Error> {
        let saturated = self
            .envelope()
            .ok()
            .and_then(|envelope| envelope.liquid_density(t));
        if let Some(least) = saturated {
            return self.liquid(t, p, least * (1.0 - 1e-3));
        }
        let ideal = self.ideal(t, p);
        let most = CLOSEST_FLUID * self.reducing_density();
        let guess = ideal.min(0.6 * most);
        self.solve_density(t, p, guess, (LIGHTEST * guess, most))
    }

    /// The saturated phases at a pressure, where it has them.
    pub(super) fn saturated_pair(&self, p: f64) -> Result<Region, Error> {
        match self.each(Given::Pressure, p) {
            (Ok(bubble), Ok(dew)) if bubble.temperature <= dew.temperature => {
                Ok(Region::Subcritical(bubble, dew))
            }
            (Err(Error::OutOfRange { .. }), Ok(dew)) => Ok(Region::Cold(dew)),
            (_, Err(Error::OutOfRange { .. })) => Ok(Region::Thin),
            (Err(Error::AboveCritical { .. }), _) | (_, Err(Error::AboveCritical { .. })) => {
                Ok(Region::Dense)
            }
            (Err(error), _) | (_, Err(error)) => Err(error),
            (Ok(_), Ok(_)) => Ok(Region::Dense),
        }
    }
}

/// What an isobar crosses.
#[derive(Clone, Copy, Debug)]
pub enum Region {
    /// Liquid, two phases, vapour.
    Subcritical(Saturated, Saturated),
    /// The bubble point is colder than the range: two phases, of which only the dew point is known, and vapour.
    Cold(Saturated),
    /// Vapour alone within the range.
    Thin,
    /// One phase throughout.
    Dense,
}
