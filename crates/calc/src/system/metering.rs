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
}
