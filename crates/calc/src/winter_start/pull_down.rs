//! The equations of a start: a low side that is pumped down and fed, and a high side that warms up.
//!
//! Three variables: the dew temperature `θ` of the low side, the liquid `m` in the evaporator, the temperature `T` of condenser, receiver and
//! their liquid.
//! * compressor: `ṁ_k = V̇·ρ_v(θ)`, the volume flow that is that of the known point;
//! * metering device: `ṁ_v = r·ṁ₀·√(ρ_l·Δp / (ρ_l₀·Δp₀))` from the bubble pressure at `T`, wide open until the evaporator holds its charge of the
//!   running system and closing over the next fifth;
//! * evaporator: `ṁ_e = (UA/h_fg)·min(1, m/m₀)·(T_room − θ)`, its surface at work as far as it is wetted;
//! * vapour: `(V·dρ_v/dθ + m·c_l/h_fg)·dθ/dt = x·ṁ_v + ṁ_e − ṁ_k`: liquid that is there cools down with the pressure and boils at that, and
//!   a share `x` of what comes in flashes;
//! * liquid: `dm/dt = (1 − x)·ṁ_v − ṁ_e + (m·c_l/h_fg)·dθ/dt`;
//! * high side: `C·dT/dt = ṁ_k·(h_v − h_l + w) + Q_heater − G·(T − T_o)`, never above the condensing temperature of the known point, where the
//!   fan holds it. `w` is the work of an isentropic compression by the vapour's own exponent, over the efficiency of a usual compressor.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::Refrigerant;

use super::error::StartError;
use super::table::Table;
use crate::cycle::ISENTROPIC_EFFICIENCY;

/// Below this difference the flow through the metering device goes with the difference itself, Pa: its square root alone has no slope at zero.
const LAMINAR: f64 = 1e3;

/// Share of the evaporator's charge over which the metering device closes.
const CLOSING: f64 = 0.2;

/// Steps of the tables, K.
const STEP: f64 = 1.5;

/// Properties of the low side at a dew temperature.
pub(super) struct Low {
    pub(super) pressure: f64,
    pub(super) vapor: f64,
    slope: f64,
    pub(super) vapor_enthalpy: f64,
    liquid_enthalpy: f64,
    pub(super) liquid_heat_capacity: f64,
    exponent: f64,
}

impl Low {
    /// The same as a row of a table.
    fn row(refrigerant: &Refrigerant, kelvins: f64) -> Result<[f64; 7], StartError> {
        // Central difference over 0.1 K: the curvature of the density takes some 1e-7 of its slope.
        const ASIDE: f64 = 0.05;
        let dew = |k| refrigerant.dew_at_temperature(ThermodynamicTemperature::new::<kelvin>(k));
        let vapor = dew(kelvins)?;
        let slope = (dew(kelvins + ASIDE)?.density - dew(kelvins - ASIDE)?.density) / (2.0 * ASIDE);
        let liquid = refrigerant.bubble_at_pressure(vapor.pressure)?;
        let sound = vapor.speed_of_sound.unwrap_or_default();
        let exponent = (sound * sound * vapor.density / vapor.pressure).value;
        Ok([
            vapor.pressure.value,
            vapor.density.value,
            slope.value,
            vapor.enthalpy.value,
            liquid.enthalpy.value,
            liquid.heat_capacity.unwrap_or_default().value,
            exponent,
        ])
    }

    fn from(row: [f64; 7]) -> Self {
        let [
            pressure,
            vapor,
            slope,
            vapor_enthalpy,
            liquid_enthalpy,
            liquid_heat_capacity,
            exponent,
        ] = row;
        Self {
            pressure,
            vapor,
            slope,
            vapor_enthalpy,
            liquid_enthalpy,
            liquid_heat_capacity,
            exponent,
        }
    }

    pub(super) fn at(refrigerant: &Refrigerant, kelvins: f64) -> Result<Self, StartError> {
        Ok(Self::from(Self::row(refrigerant, kelvins)?))
    }

    fn latent(&self) -> f64 {
        self.vapor_enthalpy - self.liquid_enthalpy
    }

    /// Work on a kg up to a pressure, `(n/(n−1))·(p/ρ)·((p₂/p)^((n−1)/n) − 1)/η`; none where nothing is to be raised.
    fn work(&self, head: f64) -> f64 {
        let ratio = (head / self.pressure).max(1.0).ln();
        let power = 1.0 - 1.0 / self.exponent;
        let raised = if (power * ratio).abs() < 1e-9 {
            ratio
        } else {
            (power * ratio).exp_m1() / power
        };
        self.pressure / self.vapor * raised / ISENTROPIC_EFFICIENCY
    }
}

/// Properties of saturated liquid.
pub(super) struct High {
    pub(super) pressure: f64,
    pub(super) density: f64,
    pub(super) enthalpy: f64,
}

impl High {
    fn row(refrigerant: &Refrigerant, kelvins: f64) -> Result<[f64; 3], StartError> {
        let temperature = ThermodynamicTemperature::new::<kelvin>(kelvins);
        let liquid = refrigerant.bubble_at_temperature(temperature)?;
        Ok([
            liquid.pressure.value,
            liquid.density.value,
            liquid.enthalpy.value,
        ])
    }

    fn from([pressure, density, enthalpy]: [f64; 3]) -> Self {
        Self {
            pressure,
            density,
            enthalpy,
        }
    }

    pub(super) fn at(refrigerant: &Refrigerant, kelvins: f64) -> Result<Self, StartError> {
        Ok(Self::from(Self::row(refrigerant, kelvins)?))
    }
}

/// Everything that stays the same during a start; SI throughout.
pub(super) struct Constants {
    pub(super) outdoor: f64,
    pub(super) room: f64,
    pub(super) condensing: f64,
    /// Volume flow of the compressor.
    pub(super) swept: f64,
    /// Flow of the open metering device over `√(ρ·Δp)`.
    pub(super) valve: f64,
    pub(super) evaporator: f64,
    pub(super) volume: f64,
    pub(super) charge: f64,
    pub(super) heat_capacity: f64,
    pub(super) conductance: f64,
    pub(super) heater: f64,
}

/// A start in motion. State: `θ`, `m`, `T`.
pub(super) struct PullDown {
    constants: Constants,
    lowest: f64,
    low: Table<7>,
    high: Table<3>,
}

impl PullDown {
    /// `low` and `high` are the ranges of `θ` and `T` that may be met.
    pub(super) fn new(
        refrigerant: &Refrigerant,
        constants: Constants,
        low: (f64, f64),
        high: (f64, f64),
    ) -> Result<Self, StartError> {
        Ok(Self {
            constants,
            lowest: low.0,
            low: Table::new(low, STEP, |kelvins| Low::row(refrigerant, kelvins))?,
            high: Table::new(high, STEP, |kelvins| High::row(refrigerant, kelvins))?,
        })
    }

    pub(super) fn suction(&self, state: &[f64; 3]) -> Pressure {
        let [dew, _, _] = *state;
        self.suction_at(dew)
    }

    pub(super) fn suction_at(&self, dew: f64) -> Pressure {
        Pressure::new::<pascal>(Low::from(self.low.at(dew)).pressure)
    }

    pub(super) fn head(&self, state: &[f64; 3]) -> Pressure {
        let [_, _, high] = *state;
        Pressure::new::<pascal>(High::from(self.high.at(high)).pressure)
    }

    pub(super) fn rates(&self, &[dew, liquid, high]: &[f64; 3]) -> [f64; 3] {
        let c = &self.constants;
        let low = Low::from(self.low.at(dew));
        let head = High::from(self.high.at(high));
        let latent = low.latent();

        let drop = (head.pressure - low.pressure).max(0.0);
        let open = ((1.0 + CLOSING - liquid / c.charge) / CLOSING).clamp(0.0, 1.0);
        let fed = c.valve * open * head.density.sqrt() * drop / (drop + LAMINAR).sqrt();
        let pumped = c.swept * low.vapor;
        let flash = (head.enthalpy - low.liquid_enthalpy) / latent;
        let wetted = (liquid / c.charge).clamp(0.0, 1.0);
        let boiled = c.evaporator / latent * wetted * (c.room - dew).max(0.0);

        let sensible = liquid.max(0.0) * low.liquid_heat_capacity / latent;
        let held = c.volume * low.slope + sensible;
        let mut rising = (flash * fed + boiled - pumped) / held;
        if dew <= self.lowest {
            rising = rising.max(0.0);
        }
        let gained = (1.0 - flash) * fed - boiled + sensible * rising;

        let rejected = pumped * (low.vapor_enthalpy - head.enthalpy + low.work(head.pressure));
        let lost = c.conductance * (high - c.outdoor);
        let mut warming = (rejected + c.heater - lost) / c.heat_capacity;
        if high >= c.condensing {
            warming = warming.min(0.0);
        }
        [rising, gained, warming]
    }
}
