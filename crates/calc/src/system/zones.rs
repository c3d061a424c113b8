//! The condenser in three zones: desuperheating, condensing, subcooling, each a share of the coil under outdoor air.
//!
//! Along a strip of the coil the air takes `dQ = ε·C·(T − T_in)·df`, with `ε = 1 − exp(−UA/C)` of the zone. Where enthalpy is straight
//! along temperature between a zone's ends, as it is to a good measure, a zone takes the share
//! `f = m·Δh / (ε·C·ΔT_lm)`, and the shares sum to the part of the coil that is not flooded.
//!
//! `UA` is two resistances in series: the air's, with the air's mass flow to the power -0.6, and the refrigerant's, which is larger where
//! it is vapour or liquid alone.
//!
//! Source: Kays & London, Compact Heat Exchangers; Incropera & DeWitt, heat exchangers chapter. How much larger: common practice, no
//! published source.

use super::circuit::Running;
use crate::condenser::{AIR_SIDE_EXPONENT, AIR_SIDE_SHARE};

/// Refrigerant-side resistance over that of condensing: vapour, condensing, liquid.
const RESISTANCE: [f64; 3] = [10.0, 1.0, 4.0];

/// Least temperature difference that a share is worked out for, K. The logarithmic mean shrinks so slowly that a share need not be large
/// even here; from here on it grows in proportion, so that no balance leaves liquid colder than the air.
const CLOSEST: f64 = 1e-6;

/// Shares of the coil: desuperheating, condensing, subcooling.
pub(crate) type Shares = [f64; 3];

/// A condenser, scaled from its known point. SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Coil {
    /// Conductance while condensing, at the known airflow, W/K.
    pub(crate) conductance: f64,
    /// Mass flow of the air at the known point, kg/s.
    pub(crate) mass_flow: f64,
    /// Share of the air drawn in that the condenser has just blown out.
    pub(crate) recirculation: f64,
    /// Share of conductance and airflow that dirt takes.
    pub(crate) dirt: f64,
}

/// Air through a coil. SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Air {
    /// Temperature outdoors, K.
    pub(crate) outdoor: f64,
    /// Mass flow, kg/s.
    pub(crate) mass_flow: f64,
    /// Heat capacity rate, W/K.
    pub(crate) capacity_rate: f64,
    /// Conductance while condensing, W/K.
    pub(crate) conductance: f64,
    /// Heat that a zone passes a kelvin if it had the whole coil, `ε·C`, W/K.
    passing: [f64; 3],
    /// Rise of the air drawn in over outdoors for heat rejected, K/W.
    rise: f64,
}

impl Coil {
    /// This coil under outdoor air of a mass flow above zero, kg/s.
    pub(crate) fn under(&self, outdoor: f64, mass_flow: f64, specific_heat: f64) -> Air {
        let mass_flow = mass_flow * (1.0 - self.dirt);
        let capacity_rate = mass_flow * specific_heat;
        let air_side = AIR_SIDE_SHARE * (mass_flow / self.mass_flow).powf(-AIR_SIDE_EXPONENT);
        let conductance = |resistance: f64| {
            self.conductance * (1.0 - self.dirt) / ((1.0 - AIR_SIDE_SHARE) * resistance + air_side)
        };
        Air {
            outdoor,
            mass_flow,
            capacity_rate,
            conductance: conductance(1.0),
            passing: RESISTANCE.map(|resistance| {
                -capacity_rate * (-conductance(resistance) / capacity_rate).exp_m1()
            }),
            rise: self.recirculation / (1.0 - self.recirculation) / capacity_rate,
        }
    }
}

impl Air {
    /// Shares of the coil that the circuit takes to reject its heat at a condensing temperature, K.
    pub(crate) fn shares(&self, condensing: f64, running: &Running) -> Shares {
        let inlet = self.outdoor + self.rise * running.rejected();
        let ends = [
            running.discharge,
            condensing,
            running.bubble,
            running.liquid,
        ]
        .map(|end| end - inlet);
        let enthalpies = [
            running.discharge_enthalpy,
            running.dew_enthalpy,
            running.bubble_enthalpy,
            running.liquid_enthalpy,
        ];
        let share = |zone: usize| {
            let heat = running.flow * (enthalpies[zone] - enthalpies[zone + 1]);
            let (inlet, outlet) = (ends[zone].max(CLOSEST), ends[zone + 1].max(CLOSEST));
            let beyond = 1.0 + (CLOSEST - ends[zone + 1]).max(0.0) / CLOSEST;
            beyond * heat / (self.passing[zone] * log_mean(inlet, outlet))
        };
        [share(0), share(1), share(2)]
    }

    /// Heat a kelvin that the whole coil passes while it condenses, W/K.
    pub(crate) fn condensing_conductance(&self) -> f64 {
        self.passing[1]
    }

    /// The part of the coil that the circuit takes.
    pub(crate) fn taken(&self, condensing: f64, running: &Running) -> f64 {
        self.shares(condensing, running).iter().sum()
    }
}

/// Logarithmic mean of two differences above zero.
fn log_mean(a: f64, b: f64) -> f64 {
    let ratio = a / b;
    if (ratio - 1.0).abs() < 1e-4 {
        // The series of the mean about equal ends; its next term is below 1e-16.
        let half = 0.5 * (ratio - 1.0);
        return b * (1.0 + half - half * half / 3.0 + half.powi(3) / 3.0);
    }
    (a - b) / ratio.ln()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_logarithmic_mean_lies_between_its_ends_and_is_smooth() {
        assert_eq!(log_mean(5.0, 5.0), 5.0);
        let (inside, outside) = (
            log_mean(5.0, 5.0 * (1.0 + 0.9999e-4)),
            log_mean(5.0, 5.0 * (1.0 + 1.0001e-4)),
        );
        assert!(inside < outside && outside - inside < 1e-7);
        let mean = log_mean(10.0, 20.0);
        assert!((mean - 10.0 / 2_f64.ln()).abs() < 1e-12);
    }
}
