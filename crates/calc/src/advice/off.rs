//! When the compressor may stay off: the cheapest winter plan.

use uom::si::f64::Power;
use uom::si::time::hour;

use crate::comparison::Summary;
use crate::free_cooling::{Bin, FreeCooling, FreeCoolingError, Outcome, Source};
use crate::input::Duty;
use crate::plan::Plan;
use crate::weather::Bins;

/// Share of the compressor's and the fans' power that fans or pump take instead. Common practice, no published source.
const INSTEAD: f64 = 0.15;

/// What may carry the heat of a duty out without a compressor; `None` for a freezer, which is colder than most winters.
pub fn free_cooling_source(duty: Duty) -> Option<Source> {
    match duty {
        Duty::RoomCooling => Some(Source::OutsideAir),
        Duty::Cooler => Some(Source::DryCooler),
        Duty::Freezer => None,
    }
}

impl Plan {
    /// Whether outdoor cold would do the job over the hours of a year, against a method's energy; `None` for a freezer.
    ///
    /// # Errors
    /// [`FreeCoolingError`].
    pub fn free_cooling(
        &self,
        bins: &Bins,
        summary: &Summary,
    ) -> Result<Option<Outcome>, FreeCoolingError> {
        let Some(source) = free_cooling_source(self.input.duty.value) else {
            return Ok(None);
        };
        let now: Power = (summary.fan_energy + summary.compressor_energy) / bins.total();
        let hours: Vec<Bin> = bins
            .iter()
            .filter(|bin| bin.hours.get::<hour>() > 0.0)
            .map(|bin| Bin {
                outdoor: bin.high,
                time: bin.hours,
            })
            .collect();
        FreeCooling {
            inside: self.input.return_air.value,
            approach: source.usual_approach(),
            now,
            instead: now * INSTEAD,
        }
        .over_year(&hours)
        .map(Some)
    }
}
