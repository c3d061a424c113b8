//! Which method a system is told to use, and why.
//!
//! The plainest method that keeps head pressure up to the site's low and keeps it steady comes first; one that saws comes after those that hold it
//! steady, since each start of the fan disturbs the metering device.

use uom::si::f64::ThermodynamicTemperature;

use crate::input::{Input, Metering};
use crate::plan::{HoldLimits, Method};

/// Why a method is recommended.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Reason {
    /// Head pressure stays up by itself.
    HoldsByItself,
    /// It holds steadily with a controller alone.
    HoldsSteadily,
    /// The least speed alone still cools too much in the wind.
    BaffleCloses,
    /// Only liquid in the condenser holds it steadily.
    OnlyFloodingHolds,
    /// Only switching holds it, and head pressure saws.
    OnlySwitchingHolds,
    /// Nothing holds it to the low; this comes nearest.
    NothingHolds,
}

impl Reason {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            Reason::HoldsByItself => "holds_by_itself",
            Reason::HoldsSteadily => "holds_steadily",
            Reason::BaffleCloses => "baffle_closes",
            Reason::OnlyFloodingHolds => "only_flooding_holds",
            Reason::OnlySwitchingHolds => "only_switching_holds",
            Reason::NothingHolds => "nothing_holds",
        }
    }
}

/// A method and why it is the one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Recommendation {
    /// The method.
    pub method: Method,
    /// Why.
    pub reason: Reason,
    /// Its hold limit.
    pub limit: ThermodynamicTemperature,
}

/// Methods in the order in which they are looked at, each with what speaks for it.
const ORDER: [(Method, Reason); 7] = [
    (Method::FullFan, Reason::HoldsByItself),
    (Method::SpeedControl, Reason::HoldsSteadily),
    (Method::SpeedWithBaffle, Reason::BaffleCloses),
    (Method::SpeedWithFlooding, Reason::OnlyFloodingHolds),
    (Method::Flooding, Reason::OnlyFloodingHolds),
    (Method::Staged, Reason::OnlySwitchingHolds),
    (Method::OnOff, Reason::OnlySwitchingHolds),
];

/// Whether a method can be had on a system at all: stages take more than one fan, and flooding takes a device that does not let a receiver
/// run empty.
pub(crate) fn applies(input: &Input, method: Method) -> bool {
    match method {
        Method::Staged => input.fans.value > 1,
        Method::Flooding | Method::SpeedWithFlooding => {
            input.metering.value != Metering::FixedOrifice
        }
        _ => true,
    }
}

/// The method for a system with these hold limits.
pub(crate) fn recommend(input: &Input, hold: &HoldLimits) -> Recommendation {
    let limit = |method: Method| hold.of(method).value;
    let found = |(method, reason): (Method, Reason)| Recommendation {
        method,
        reason,
        limit: limit(method),
    };
    let can_be_had = || {
        ORDER
            .into_iter()
            .filter(|(method, _)| applies(input, *method))
    };
    if let Some(first) = can_be_had().find(|(method, _)| limit(*method) <= input.outdoor_low) {
        return found(first);
    }
    let (method, _) = can_be_had().fold(ORDER[0], |best, next| {
        if limit(next.0) < limit(best.0) {
            next
        } else {
            best
        }
    });
    found((method, Reason::NothingHolds))
}
