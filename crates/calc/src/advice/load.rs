//! What part load does to the hold limit of the recommended method.
//!
//! Less heat warms the condenser's air less, so that head pressure falls to the need at a warmer outdoor temperature. A compressor that only stops and
//! starts gives all of its heat while it runs: its limit does not move, but after each stop it starts cold.
//!
//! Source: effectiveness-NTU (Kays & London) for the hold limits, which the plan has already.

use uom::si::f64::ThermodynamicTemperature;
use uom::si::temperature_interval::kelvin as kelvin_interval;

use crate::air::difference;
use crate::input::CapacityControl;
use crate::plan::{Method, Plan};

/// Change of a hold limit that can be told from none, K.
const NOTICED: f64 = 0.05;

/// What part load comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LoadEffect {
    /// The compressor runs at full load or stands: the limit stays, and each start in the cold is a cold start.
    Cycles,
    /// The limit stays: the compressors never run below full load, or the method does not need their heat.
    Stays,
    /// The limit is warmer than at full load.
    Rises,
}

impl LoadEffect {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            LoadEffect::Cycles => "cycles",
            LoadEffect::Stays => "stays",
            LoadEffect::Rises => "rises",
        }
    }
}

/// The hold limit of a method at the compressors' lowest load against that at full load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartLoad {
    /// How the compressors follow the load.
    pub control: CapacityControl,
    /// Lowest share of the full load that they run at: 0.05 to 1.
    pub share: f64,
    /// The method that is recommended.
    pub method: Method,
    /// Its hold limit at that share.
    pub limit: ThermodynamicTemperature,
    /// Its hold limit at full load.
    pub full_load: ThermodynamicTemperature,
}

impl PartLoad {
    /// What it comes to.
    pub fn effect(&self) -> LoadEffect {
        let risen = difference(self.limit, self.full_load).get::<kelvin_interval>();
        if risen > NOTICED {
            LoadEffect::Rises
        } else if self.control == CapacityControl::OnOff && self.share >= 1.0 {
            LoadEffect::Cycles
        } else {
            LoadEffect::Stays
        }
    }
}

impl Plan {
    /// What part load does to the hold limit of the recommended method.
    pub fn part_load(&self) -> PartLoad {
        let method = self.recommendation.method;
        let lowest = self.hold_at_lowest_load.as_ref().unwrap_or(&self.hold);
        PartLoad {
            control: self.input.capacity_control.value,
            share: self.input.lowest_load.value,
            method,
            limit: lowest.of(method).value,
            full_load: self.hold.of(method).value,
        }
    }
}
