//! The methods of a plan side by side over a year.
//!
//! The compressor runs as long as it takes to carry the load, which is the capacity at the known point at every outdoor temperature: for
//! `q = Q₀/Q(T_o)` of the time, and all the time where the capacity is less. Hours in which low pressure stops it are counted apart.
//!
//! Source: energy balance, power times hours (the bin method, ASHRAE Handbook Fundamentals, energy estimating chapter). That the load is the same
//! all year is common practice for what has to be cooled in winter, no published source.

use uom::si::f64::{
    Energy, Frequency, Mass, Pressure, TemperatureInterval, ThermodynamicTemperature, Time,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;

use crate::flooding::{CondenserVolume, Zones, flooding_charge};
use crate::plan::{Method, PerMethod, Plan, Point};
use crate::weather::Bins;

/// What a method comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Summary {
    /// Whether the system can have it at all.
    pub applies: bool,
    /// Hold limit.
    pub limit: ThermodynamicTemperature,
    /// Whether it holds to the site's low.
    pub holds: bool,
    /// Pressures between which head pressure saws somewhere in the year.
    pub swing: Option<(Pressure, Pressure)>,
    /// Most starts of a fan in a time, where it is switched.
    pub starts: Option<Frequency>,
    /// Energy of the fans in a year.
    pub fan_energy: Energy,
    /// Energy that the compressor puts into the refrigerant in a year.
    pub compressor_energy: Energy,
    /// Time of the year at or above the pressure need.
    pub held: Time,
    /// Time of the year in which low pressure stops the compressor.
    pub tripped: Time,
    /// Time of the year that none of the answers covers: so hot that the system is past its envelope, or so cold that the refrigerant is.
    pub unknown: Time,
    /// Charge on top of the present one, where liquid fills part of the condenser; `None` where it does not.
    pub extra_charge: Option<Mass>,
}

impl Plan {
    /// Every method over the hours of a year.
    pub fn compare(&self, bins: &Bins) -> PerMethod<Summary> {
        PerMethod::from_fn(|method| self.over_year(method, bins))
    }

    /// One method over the hours of a year.
    pub fn over_year(&self, method: Method, bins: &Bins) -> Summary {
        let limit = self.hold.of(method).value;
        let mut summary = Summary {
            applies: self.applies(method),
            limit,
            holds: limit <= self.input.outdoor_low,
            swing: None,
            starts: None,
            fan_energy: Energy::default(),
            compressor_energy: Energy::default(),
            held: Time::default(),
            tripped: Time::default(),
            unknown: Time::default(),
            extra_charge: self.extra_charge(method),
        };
        for bin in bins.iter() {
            let half = TemperatureInterval::new::<kelvin_interval>(0.5);
            match self.point(method, bin.low + half) {
                Ok(point) => summary.add(&point, bin.hours, self),
                Err(_) => summary.unknown += bin.hours,
            }
        }
        summary
    }

    /// Charge that the method takes at the site's low on top of the present one; `None` where no liquid fills the condenser, or where the
    /// refrigerant has no answer that cold.
    pub(crate) fn extra_charge(&self, method: Method) -> Option<Mass> {
        if !method.floods() {
            return None;
        }
        let low = self.input.outdoor_low;
        let point = self.point(method, low).ok()?;
        let volume = CondenserVolume::FromHeat {
            heat: self.design.heat_rejected.value,
            over_ambient: self.input.over_ambient.value,
        };
        let charge = flooding_charge(
            &self.input.refrigerant,
            volume.volume().ok()?.value,
            &Zones::usual(),
            point.zones.flooded,
            point.condensing,
            low,
        );
        Some(charge.ok()?.extra)
    }
}

impl Summary {
    fn add(&mut self, point: &Point, hours: Time, plan: &Plan) {
        if point.holds {
            self.held += hours;
        }
        self.swing = self.swing.or(point.swing);
        self.starts = match (self.starts, point.starts) {
            (Some(most), Some(here)) if here <= most => Some(most),
            (most, None) => most,
            (_, here) => here,
        };
        let Some(cycle) = point.cycle else {
            self.tripped += hours;
            return;
        };
        let share = (plan.design.cycle.cooling / cycle.cooling).value.min(1.0);
        self.fan_energy += point.fan_power * hours * share;
        self.compressor_energy += cycle.compressor_power * hours * share;
    }
}
