//! The metering device: the most that it passes, with the drops before it.
//!
//! `m_max = r·m₀·√(ρ/ρ₀ · Δp/Δp₀)`, where the drops of distributor, filter and line, `d₀` at the known flow, go with the flow squared and
//! leave `Δp = P − d₀·(m/m₀)²` of the pressure difference `P`. Both together: `(m_max/m₀)² = a·P / (1 + a·d₀)` with `a = r²·(ρ/ρ₀)/Δp₀`.
//!
//! Source: AHRI 750, flow with the square root of the pressure drop; fluid mechanics textbooks for drops with the flow squared.

/// Share of the pressure difference from condenser to evaporator at the known point that distributor, filter and liquid line
/// take. Common practice, no published source.
const OTHER_DROPS: f64 = 0.1;

/// A metering device.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Device {
    /// Mass flow at the known point, kg/s.
    known_flow: f64,
    /// Density of the liquid at the known point, kg/m³.
    known_density: f64,
    /// Pressure difference over the device at the known point, Pa.
    pub(crate) known_drop: f64,
    other_drops: f64,
}

impl Device {
    /// The device that passes a flow of liquid of a density under a pressure difference from condenser to evaporator.
    pub(crate) fn new(known_flow: f64, known_density: f64, difference: f64) -> Self {
        let other_drops = OTHER_DROPS * difference;
        Self {
            known_flow,
            known_density,
            known_drop: difference - other_drops,
            other_drops,
        }
    }

    /// The most that passes, kg/s, with a flow reserve `r` and liquid of this density under this pressure difference.
    pub(crate) fn most(&self, reserve: f64, density: f64, difference: f64) -> f64 {
        let a = reserve * reserve * density / self.known_density / self.known_drop;
        let squared = a * difference.max(0.0) / (1.0 + a * self.other_drops);
        self.known_flow * squared.sqrt()
    }

    /// Pressure difference over the device itself at a flow that `difference` drives, Pa.
    pub(crate) fn drop_at(&self, flow: f64, difference: f64) -> f64 {
        difference - self.other_drops * (flow / self.known_flow).powi(2)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn passes_the_known_flow_at_the_known_point_and_half_at_a_quarter() {
        let device = Device::new(0.05, 1100.0, 1.6e6);
        assert!((device.most(1.0, 1100.0, 1.6e6) - 0.05).abs() < 1e-15);
        assert!((device.most(1.0, 1100.0, 0.4e6) - 0.025).abs() < 1e-15);
        assert_eq!(device.most(1.0, 1100.0, -1.0), 0.0);
        assert!(device.most(1.25, 1100.0, 1.6e6) > 0.05 * 1.2);
    }

    /// A device alone, as capacity tables rate it.
    fn alone(density: f64, drop: f64) -> Device {
        Device {
            known_flow: 1.0,
            known_density: density,
            known_drop: drop,
            other_drops: 0.0,
        }
    }

    #[test]
    fn follows_the_pressure_drop_corrections_of_valve_tables() {
        // Correction factors for the pressure drop at a rating of 100 psi, as tables of expansion valves print them (ASHRAE Handbook,
        // Refrigeration; from memory), to two decimals.
        for (drop, factor) in [
            (75.0, 0.87),
            (125.0, 1.12),
            (150.0, 1.22),
            (175.0, 1.32),
            (200.0, 1.41),
        ] {
            let found = alone(1190.0, 100.0).most(1.0, 1190.0, drop);
            assert!((found - factor).abs() < 0.006, "{drop} psi: {found}");
        }
    }

    #[test]
    fn follows_the_liquid_temperature_corrections_of_valve_tables() {
        use uom::si::f64::ThermodynamicTemperature;
        use uom::si::thermodynamic_temperature::degree_fahrenheit;
        use winterset_refrigerant::Refrigerant;

        let refrigerant = Refrigerant::named("R-22").unwrap();
        let fahrenheit = ThermodynamicTemperature::new::<degree_fahrenheit>;
        let vapour = refrigerant.dew_at_temperature(fahrenheit(40.0)).unwrap();
        let at = |liquid: f64| {
            let state = refrigerant
                .bubble_at_temperature(fahrenheit(liquid))
                .unwrap();
            let effect = (vapour.enthalpy - state.enthalpy).value;
            (state.density.value, effect)
        };
        let (rated, effect) = at(100.0);
        // Correction factors for the temperature of the liquid of R-22, 100 °F rated, as tables of expansion valves print them (from
        // memory). The tables stand for a range of evaporating temperatures, so 2 % of the capacity is what they tell.
        for (liquid, factor) in [
            (40.0, 1.34),
            (60.0, 1.23),
            (80.0, 1.12),
            (90.0, 1.06),
            (110.0, 0.94),
            (120.0, 0.88),
            (140.0, 0.76),
        ] {
            let (density, own) = at(liquid);
            let found = alone(rated, 1.0).most(1.0, density, 1.0) * own / effect;
            assert!((found - factor).abs() < 0.02, "{liquid} °F: {found}");
        }
    }
}
