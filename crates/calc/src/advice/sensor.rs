//! Whether the usual place of a coil sensor suits this coil.

use crate::plan::{Method, Plan, Zones};
use crate::sensor_place::{
    Answer, Condition, PlaceError, Shares, USUAL_PLACE, judge, usual_tolerance,
};

fn shares(zones: &Zones) -> Shares {
    Shares {
        desuperheating: zones.desuperheating,
        condensing: zones.condensing,
        liquid: zones.subcooling + zones.flooded,
    }
}

impl Plan {
    /// The usual place of a coil sensor against the zones at the known point and, under a method, at the site's low; `None` where the system does
    /// not run at the low, so that there are no zones.
    ///
    /// # Errors
    /// [`PlaceError`].
    pub fn sensor_place(&self, method: Method) -> Result<Option<Answer>, PlaceError> {
        let Ok(low) = self.point(method, self.input.outdoor_low) else {
            return Ok(None);
        };
        if low.cycle.is_none() {
            return Ok(None);
        }
        judge(
            &self.input.refrigerant,
            USUAL_PLACE,
            Condition {
                shares: shares(&self.design.zones),
                condensing: self.design.condensing.value,
            },
            Condition {
                shares: shares(&low.zones),
                condensing: low.condensing,
            },
            usual_tolerance(),
        )
        .map(Some)
    }
}
