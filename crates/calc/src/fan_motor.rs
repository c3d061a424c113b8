//! One condenser fan and its motor in the cold of a site's low, as far as a plan knows them.
//!
//! What no nameplate tells is [`crate::usual`]: the fan's diameter and with it its inertia, the motor's efficiency. A fan that is off is taken
//! to be driven backwards by the air that the input says wind moves with the fans off. A motor that runs warms its own bearings, so that cold
//! friction bears on the start and on stalling alone, and not on the speed that it settles at.
//!
//! Source: electrical machine textbooks, run-up of a drive (see [`crate::motor`]); the usual values are common practice, no published source.

use uom::si::f64::{Length, MassDensity, Power, Time, VolumeRate};

use crate::explain::{Explained, Quantity, Rule, Working};
use crate::input::Input;
use crate::method::standard_density;
use crate::motor::{
    Friction, InductionMotor, Limits, MotorError, Start, StartTime, start_boost, usual_boost_range,
    usual_inertia, windmill_speed,
};
use crate::usual;

/// Share of nameplate speed at which a fan counts as started: past the breakdown torque of any sound motor. Common practice, no published source.
const STARTED: f64 = 0.8;

/// Time given over the time worked out, since inertia is an estimate. Common practice, no published source.
const RESERVE: f64 = 1.5;

/// A fan with its motor at the site's low.
#[derive(Clone, Copy, Debug)]
pub(crate) struct FanMotor<'a> {
    pub(crate) input: &'a Input,
    pub(crate) motor: InductionMotor,
    /// Airflow of all fans at full speed.
    pub(crate) airflow: VolumeRate,
    /// Electrical power of all fans at full speed.
    pub(crate) power: Power,
    /// Density of the air at the site's low.
    pub(crate) cold: MassDensity,
}

/// What a start at the site's low comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Outcome {
    /// The fan is up after this.
    Starts(StartTime),
    /// It does not come up.
    Never,
}

impl FanMotor<'_> {
    fn fans(&self) -> f64 {
        f64::from(self.input.fans.value)
    }

    pub(crate) fn density(&self) -> f64 {
        (self.cold / standard_density()).value
    }

    pub(crate) fn diameter(&self) -> Length {
        usual::fan_diameter(self.airflow / self.fans(), self.motor.rated())
    }

    pub(crate) fn shaft(&self) -> Power {
        usual::shaft_power(self.power / self.fans())
    }

    pub(crate) fn friction(&self) -> Result<Friction, MotorError> {
        Friction::usual(self.input.bearing.value, self.input.outdoor_low)
    }

    /// The voltages that keep the fan turning and start it.
    pub(crate) fn limits(&self) -> Result<Limits, MotorError> {
        self.motor.limits(self.density(), self.friction()?)
    }

    /// Lowest share of full output that keeps the fan turning; zero where the model has no answer.
    pub(crate) fn keeps_running(&self) -> f64 {
        self.friction()
            .and_then(|friction| self.motor.keeps_running(self.density(), friction))
            .unwrap_or(0.0)
    }

    /// A start at full output against the air that the wind drives backwards through the idle fan.
    pub(crate) fn start(&self) -> Result<Start, MotorError> {
        let rated = self.motor.rated();
        Ok(Start {
            inertia: usual_inertia(self.diameter(), self.shaft())?,
            shaft: self.shaft(),
            voltage: 1.0,
            density: self.density(),
            friction: self.friction()?,
            windmill: windmill_speed(rated, self.input.idle_airflow.value)?,
            to: rated * STARTED,
        })
    }

    /// What that start comes to.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`].
    pub(crate) fn outcome(&self) -> Result<Outcome, MotorError> {
        match self.motor.start_time(&self.start()?) {
            Ok(time) => Ok(Outcome::Starts(time)),
            Err(MotorError::WillNotStart { .. } | MotorError::NeverReaches { .. }) => {
                Ok(Outcome::Never)
            }
            Err(error) => Err(error),
        }
    }

    /// The time to give a start, which can be longer than controllers offer; the longest that they offer where the fan does not come up.
    pub(crate) fn wanted_boost(&self, outcome: Outcome) -> Time {
        match outcome {
            Outcome::Starts(time) => start_boost(self.input.bearing.value).max(time.time * RESERVE),
            Outcome::Never => usual_boost_range().1,
        }
    }

    /// The start boost, within what controllers offer.
    pub(crate) fn boost(&self) -> Explained<Time> {
        let least = start_boost(self.input.bearing.value);
        let mut working = Working::new(Rule::StartBoost)
            .with("t_b", Quantity::Time(least))
            .with("D", Quantity::Bore(self.diameter()))
            .with("P", Quantity::Power(self.shaft()))
            .with("T_o", Quantity::Temperature(self.input.outdoor_low));
        if let Ok(friction) = self.friction() {
            working = working.with("f", Quantity::Ratio(friction.running()));
        }
        working = working.given("V_wind/V", self.input.idle_airflow, Quantity::Ratio);
        let outcome = self.outcome();
        if let Ok(Outcome::Starts(time)) = outcome {
            working = working
                .with("t_s", Quantity::Time(time.time))
                .with("t_wind", Quantity::Time(time.by_wind));
        }
        let wanted = outcome.map_or(least, |outcome| self.wanted_boost(outcome));
        let (low, high) = usual_boost_range();
        Explained::new(wanted.max(low).min(high), working)
    }
}
