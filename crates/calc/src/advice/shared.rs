//! Two circuits on one fan bank: the needier one wins, and the other gets more air than it asked for.
//!
//! Each circuit's controller asks for an output; the fans follow the higher. The circuit that asked for less is cooled further than its own
//! controller would have it, which may take it below its need. Where a controller moves but some of the fans, the mean speed of all counts.
//!
//! Source: maximum selection, control textbooks.

use uom::si::f64::ThermodynamicTemperature;

use crate::plan::{Method, Plan, Point};
use crate::problem::Problem;

/// Two circuits whose condensers share their fans.
#[derive(Clone, Copy, Debug)]
pub struct SharedBank<'a> {
    /// Plan of the first circuit, with all the bank's air as its own.
    pub first: &'a Plan,
    /// Plan of the second.
    pub second: &'a Plan,
}

/// Which circuit the fans follow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Leads {
    /// The first.
    First,
    /// The second.
    Second,
}

/// Both circuits at one outdoor temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shared {
    /// The circuit that the fans follow.
    pub leads: Leads,
    /// Share of full speed of the fans.
    pub fan_speed_fraction: f64,
    /// What becomes of the first circuit.
    pub first: Point,
    /// What becomes of the second.
    pub second: Point,
    /// What each would be if it had the fans to itself.
    pub alone: (Point, Point),
}

impl Shared {
    /// The circuit that does not lead, as it is and as it would be alone.
    pub fn other(&self) -> (&Point, &Point) {
        match self.leads {
            Leads::First => (&self.second, &self.alone.1),
            Leads::Second => (&self.first, &self.alone.0),
        }
    }

    /// Whether the circuit that does not lead is drawn below its need by the other's air.
    pub fn draws_other_down(&self) -> bool {
        let (shared, alone) = self.other();
        alone.holds && !shared.holds
    }
}

impl SharedBank<'_> {
    /// Both circuits under speed control at an outdoor temperature.
    ///
    /// # Errors
    /// As [`Plan::at`].
    pub fn at(&self, outdoor: ThermodynamicTemperature) -> Result<Shared, Problem> {
        let alone = (
            self.first.point(Method::SpeedControl, outdoor)?,
            self.second.point(Method::SpeedControl, outdoor)?,
        );
        let (first, second) = (alone.0.fan_speed_fraction, alone.1.fan_speed_fraction);
        let (leads, fraction) = if first >= second {
            (Leads::First, first)
        } else {
            (Leads::Second, second)
        };
        Ok(Shared {
            leads,
            fan_speed_fraction: fraction,
            first: match leads {
                Leads::First => alone.0,
                Leads::Second => self.first.at_speed(outdoor, fraction)?,
            },
            second: match leads {
                Leads::Second => alone.1,
                Leads::First => self.second.at_speed(outdoor, fraction)?,
            },
            alone,
        })
    }
}
