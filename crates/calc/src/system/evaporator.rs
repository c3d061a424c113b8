//! The evaporator: a wetted part at evaporating temperature and a part that superheats, both under the return air.
//!
//! With `K` the conductance from air to refrigerant (coil and air together, so that the return air's temperature is the only other
//! end), wetted share `f` and superheating share `s = 1 − f`:
//! * `m·(h_dew − h₃) = f·K·(T_ra − T_e)`;
//! * `m·c_p·ln((T_ra − T_e)/(T_ra − T₁)) = s·g·K`, the vapour passing heat at a share `g` of the conductance.
//!
//! A valve that controls holds the superheat, and the evaporating temperature follows. A starved evaporator takes what comes, and the
//! superheat follows.
//!
//! Source: Incropera & DeWitt, heat exchangers chapter (one side at constant temperature, and a single-phase side under a constant
//! one); the two constants are common practice, no published source.

/// Conductance of a coil to vapour over that to boiling refrigerant.
const VAPOUR_SHARE: f64 = 0.3;

/// An evaporator.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Evaporator {
    /// Temperature of the return air, K.
    pub(crate) return_air: f64,
    conductance: f64,
}

/// What passes through an evaporator.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Passing {
    /// Mass flow, kg/s.
    pub(crate) flow: f64,
    /// Enthalpy from the inlet to dew, J/kg.
    pub(crate) boiling: f64,
    /// Heat capacity of the vapour, J/(kg K).
    pub(crate) heat_capacity: f64,
}

impl Evaporator {
    /// The evaporator that this flow just fills at an evaporating temperature and superheat, K.
    pub(crate) fn filled(
        return_air: f64,
        passing: Passing,
        evaporating: f64,
        superheat: f64,
    ) -> Self {
        let unit = Self {
            return_air,
            conductance: 1.0,
        };
        Self {
            conductance: unit.wetted(passing, evaporating)
                + unit.superheating(passing, evaporating, superheat),
            ..unit
        }
    }

    /// Share of the coil that the flow wets.
    pub(crate) fn wetted(&self, passing: Passing, evaporating: f64) -> f64 {
        passing.flow * passing.boiling / (self.conductance * (self.return_air - evaporating))
    }

    /// Share of the coil that superheats the flow.
    fn superheating(&self, passing: Passing, evaporating: f64, superheat: f64) -> f64 {
        let (whole, left) = (
            self.return_air - evaporating,
            self.return_air - evaporating - superheat,
        );
        passing.flow * passing.heat_capacity / (VAPOUR_SHARE * self.conductance)
            * (whole / left).ln()
    }

    /// Share of the coil that boiling and superheating the flow takes, over the share that there is: one at balance.
    pub(crate) fn taken(&self, passing: Passing, evaporating: f64, superheat: f64) -> f64 {
        self.wetted(passing, evaporating) + self.superheating(passing, evaporating, superheat)
    }

    /// Temperature of the vapour that leaves, K, where the flow decides how much of the coil is wet.
    pub(crate) fn leaving(&self, passing: Passing, evaporating: f64) -> f64 {
        let dry = (1.0 - self.wetted(passing, evaporating)).max(0.0);
        let units = dry * VAPOUR_SHARE * self.conductance / (passing.flow * passing.heat_capacity);
        self.return_air - (self.return_air - evaporating) * (-units).exp()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PASSING: Passing = Passing {
        flow: 0.05,
        boiling: 150e3,
        heat_capacity: 900.0,
    };

    #[test]
    fn a_filled_coil_gives_back_its_superheat() {
        let coil = Evaporator::filled(297.0, PASSING, 278.0, 8.0);
        assert!((coil.taken(PASSING, 278.0, 8.0) - 1.0).abs() < 1e-12);
        assert!((coil.leaving(PASSING, 278.0) - 286.0).abs() < 1e-9);
    }

    #[test]
    fn half_the_flow_leaves_almost_as_warm_as_the_air() {
        let coil = Evaporator::filled(297.0, PASSING, 278.0, 8.0);
        let starved = Passing {
            flow: 0.025,
            ..PASSING
        };
        let leaving = coil.leaving(starved, 278.0);
        assert!((296.0..297.0).contains(&leaving), "{leaving}");
    }
}
