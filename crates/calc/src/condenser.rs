//! The air-cooled condenser: effectiveness-NTU with one side condensing, and conductance with airflow.
//!
//! Source: Kays & London, Compact Heat Exchangers; Incropera & DeWitt, heat exchangers chapter.

use uom::si::f64::{
    MassDensity, Power, TemperatureInterval, ThermalConductance, ThermodynamicTemperature,
    VolumeRate,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;

use crate::air;

/// Share of the thermal resistance on the air side of a finned coil (Incropera & DeWitt: the gas side controls; the share itself
/// is common practice, no published source).
const AIR_SIDE_SHARE: f64 = 0.85;

/// Power of the air's mass flow that its heat transfer coefficient follows: 0.6, from Colburn factors that fall with the Reynolds number
/// to about the power -0.4 on finned tubes (Kays & London).
const AIR_SIDE_EXPONENT: f64 = 0.6;

/// Effectiveness with one side at constant temperature, `ε = 1 − exp(−NTU)`.
pub fn effectiveness(conductance: ThermalConductance, capacity_rate: ThermalConductance) -> f64 {
    let transfer_units = (conductance / capacity_rate).value;
    -(-transfer_units).exp_m1()
}

/// Conductance that gives this effectiveness, `UA = −C·ln(1 − ε)`; effectiveness from 0 to below 1.
pub fn conductance(effectiveness: f64, capacity_rate: ThermalConductance) -> ThermalConductance {
    -capacity_rate * (-effectiveness).ln_1p()
}

/// A condenser scaled from one known point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Condenser {
    /// Heat rejected, taken as the same at every outdoor temperature.
    pub heat: Power,
    /// Airflow at the known point.
    pub airflow: VolumeRate,
    /// Density of the air at the known point.
    pub density: MassDensity,
    /// Conductance at the known point.
    pub conductance: ThermalConductance,
}

/// What a condenser does at one airflow and air density.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Duty {
    /// Heat capacity rate of the air.
    pub capacity_rate: ThermalConductance,
    /// Conductance.
    pub conductance: ThermalConductance,
    /// Effectiveness, a share of one.
    pub effectiveness: f64,
}

impl Duty {
    /// Heat that passes at a condensing temperature over outdoor temperature, `Q = ε·C·ΔT`.
    pub fn heat(&self, over_ambient: TemperatureInterval) -> Power {
        self.capacity_rate * self.effectiveness * over_ambient
    }
}

impl Condenser {
    /// Conductance at a share of the known point's mass flow of air.
    ///
    /// Two resistances in series, of which the air's goes with the mass flow to the power -0.6.
    pub fn conductance_at(&self, mass_flow_ratio: f64) -> ThermalConductance {
        self.conductance
            / (1.0 - AIR_SIDE_SHARE + AIR_SIDE_SHARE * mass_flow_ratio.powf(-AIR_SIDE_EXPONENT))
    }

    /// What the condenser does at an airflow above zero, in air of this density.
    pub fn duty(&self, airflow: VolumeRate, density: MassDensity) -> Duty {
        let ratio = (airflow * density / (self.airflow * self.density)).value;
        let capacity_rate = air::capacity_rate(density, airflow);
        let conductance = self.conductance_at(ratio);
        Duty {
            capacity_rate,
            conductance,
            effectiveness: effectiveness(conductance, capacity_rate),
        }
    }

    /// Condensing temperature over outdoor temperature that passes all the heat.
    pub fn over_ambient(&self, duty: &Duty) -> TemperatureInterval {
        let kelvin = (self.heat / duty.capacity_rate).value / duty.effectiveness;
        TemperatureInterval::new::<kelvin_interval>(kelvin)
    }

    /// Condensing temperature at an outdoor temperature and airflow.
    pub fn condensing(
        &self,
        outdoor: ThermodynamicTemperature,
        airflow: VolumeRate,
        density: MassDensity,
    ) -> ThermodynamicTemperature {
        outdoor + self.over_ambient(&self.duty(airflow, density))
    }
}
