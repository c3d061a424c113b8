//! What slowing its voltage and starting in the cold ask of a fan motor.
//!
//! Source: electrical machine textbooks (see [`crate::motor`]); what to do about it is common practice, no published source.

use uom::si::f64::{AngularVelocity, Time, Velocity};
use uom::si::velocity::meter_per_second;

use crate::air;
use crate::explain::Given;
use crate::fan_motor::{FanMotor, Outcome};
use crate::method::Actuator;
use crate::motor::{InductionMotor, PEAK_SLIP, slip_loss_share, usual_boost_range, warning_band};
use crate::plan::Plan;
use crate::usual;
use crate::winter_start::{
    AgainstWind, Hold, Turn, Wind, WindOn, against_wind, dc_hold, usual_wind_coefficient,
};

/// Strongest wind onto the outlet that a start is looked at in, m/s.
const STRONGEST_WIND: f64 = 20.0;

/// How a start at the site's low and at full output comes out, against the air that wind drives backwards through the idle fan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FanStart {
    /// Within the start boosts that controllers offer.
    WithinBoost {
        /// Time until the fan is up.
        time: Time,
        /// Part of it that the wind costs.
        by_wind: Time,
    },
    /// Not within them.
    LongerBoost {
        /// Time until the fan is up.
        time: Time,
        /// Part of it that the wind costs.
        by_wind: Time,
    },
    /// The fan does not come up.
    Never,
}

/// How the lowest speed stands to the band of speeds in which the rotor runs hottest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LowestSpeed {
    /// Below it: the fan passes through the band as it slows, and may stay in it for hours.
    Below,
    /// In it.
    Inside,
    /// Above it, so that the fan never gets there.
    Above,
}

impl LowestSpeed {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            LowestSpeed::Below => "below",
            LowestSpeed::Inside => "inside",
            LowestSpeed::Above => "above",
        }
    }
}

/// Where a motor that is slowed by its voltage turns most into heat in its rotor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hottest {
    /// Shaft speed.
    pub speed: AngularVelocity,
    /// Share of full output there, in the air of the site's low.
    pub output: f64,
    /// Rotor loss over that of the nameplate point.
    pub loss: f64,
    /// How the lowest speed stands to it.
    pub lowest_speed: LowestSpeed,
}

/// What to do where a fan may not start.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Remedy {
    /// Let the controller give full output at every start: at minimum output the fan stays where it is.
    FullOutputAtStart,
    /// Give full output for longer than the usual start boost.
    LongerBoost,
    /// Keep the wind off the fan with a baffle, so that it does not turn backwards.
    Baffle,
    /// Keep the fan turning, since it does not come up from rest in this cold.
    KeepTurning,
}

impl Remedy {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            Remedy::FullOutputAtStart => "full_output_at_start",
            Remedy::LongerBoost => "longer_boost",
            Remedy::Baffle => "baffle",
            Remedy::KeepTurning => "keep_turning",
        }
    }
}

/// What slowing and starting ask of a fan motor on a phase-cut supply.
#[derive(Clone, Debug, PartialEq)]
pub struct FanMotorAdvice {
    /// The start at full output.
    pub start: FanStart,
    /// Lowest share of full output that brings the fan up from rest in still air; above one where none does.
    pub starts_from: f64,
    /// Whether the fan comes up from rest at minimum output, in still air.
    pub starts_at_minimum: bool,
    /// Strongest wind onto the fan's outlet that it starts against within the usual start boosts, up to 20 m/s; `None` where it does not even in
    /// still air.
    pub wind: Option<Velocity>,
    /// Speed that a direct current of rated flux lets the wind turn the idle fan at; `None` where the wind is too strong for it.
    pub held: Option<AngularVelocity>,
    /// Where the motor runs hottest.
    pub hottest: Hottest,
    /// What to do, the simplest first.
    pub remedies: Vec<Remedy>,
}

impl FanMotor<'_> {
    fn start_at_low(&self) -> Option<FanStart> {
        Some(match self.outcome().ok()? {
            Outcome::Never => FanStart::Never,
            Outcome::Starts(found) if found.time <= usual_boost_range().1 => {
                FanStart::WithinBoost {
                    time: found.time,
                    by_wind: found.by_wind,
                }
            }
            Outcome::Starts(found) => FanStart::LongerBoost {
                time: found.time,
                by_wind: found.by_wind,
            },
        })
    }

    /// Strongest wind onto the outlet that the fan starts against within the usual start boosts.
    fn strongest_wind(&self) -> Option<Velocity> {
        // A millimetre a second is finer than any wind is known.
        const HALVINGS: u32 = 14;
        let start = self.start().ok()?;
        let is_met = |speed: f64| {
            let wind = Wind {
                speed: Velocity::new::<meter_per_second>(speed),
                on: WindOn::Outlet,
                coefficient: Given::assumed(usual_wind_coefficient()),
                density: self.cold,
                coil_drop: usual::coil_drop(),
            };
            match against_wind(&self.motor, &start, &wind) {
                Ok(AgainstWind::Usual(time) | AgainstWind::Boost(time)) => {
                    time.time <= usual_boost_range().1
                }
                // Quicker than any boost offered is no trouble.
                Ok(AgainstWind::LongerBoost(time)) => time.time <= usual_boost_range().1,
                _ => false,
            }
        };
        if !is_met(0.0) {
            return None;
        }
        let (mut met, mut too_strong) = (0.0, STRONGEST_WIND);
        if is_met(too_strong) {
            return Some(Velocity::new::<meter_per_second>(too_strong));
        }
        for _ in 0..HALVINGS {
            let middle = 0.5 * (met + too_strong);
            if is_met(middle) {
                met = middle;
            } else {
                too_strong = middle;
            }
        }
        Some(Velocity::new::<meter_per_second>(met))
    }

    fn held(&self) -> Option<AngularVelocity> {
        let turn = Turn::Backwards(self.input.idle_airflow.value);
        match dc_hold(&self.motor, &turn, self.density(), 1.0) {
            Ok(Hold::Creeps(speed)) => Some(speed),
            _ => None,
        }
    }
}

fn hottest(motor: &InductionMotor, density: f64, lowest: AngularVelocity) -> Hottest {
    let synchronous = motor.synchronous();
    let full = motor.speed_at(1.0, density).unwrap_or(motor.rated());
    let speed = (synchronous * (1.0 - PEAK_SLIP)).min(full);
    let slip = |speed: AngularVelocity| 1.0 - (speed / synchronous).value;
    let (low, high) = warning_band();
    let share = (lowest / synchronous).value;
    Hottest {
        speed,
        output: motor.voltage_for(speed, density).min(1.0),
        loss: slip_loss_share(slip(speed), density) / slip_loss_share(slip(motor.rated()), 1.0),
        lowest_speed: if share < low {
            LowestSpeed::Below
        } else if share <= high {
            LowestSpeed::Inside
        } else {
            LowestSpeed::Above
        },
    }
}

fn remedies(start: FanStart, starts_at_minimum: bool, still_air: bool) -> Vec<Remedy> {
    let mut remedies = Vec::new();
    if !starts_at_minimum && start != FanStart::Never {
        remedies.push(Remedy::FullOutputAtStart);
    }
    match start {
        FanStart::WithinBoost { .. } => {}
        FanStart::LongerBoost { .. } => remedies.extend([Remedy::LongerBoost, Remedy::Baffle]),
        FanStart::Never if still_air => remedies.push(Remedy::Baffle),
        FanStart::Never => remedies.push(Remedy::KeepTurning),
    }
    remedies
}

impl Plan {
    /// What slowing and starting ask of the fan motors at the site's low; `None` where the motors take no phase-cut supply.
    pub fn fan_motor(&self) -> Option<FanMotorAdvice> {
        let Actuator::Voltage(motor, _) = self.model.actuator else {
            return None;
        };
        let fan = FanMotor {
            input: &self.input,
            motor,
            airflow: self.design.airflow.value,
            power: self.design.fan_power.value,
            cold: air::density(self.atmosphere.value, self.input.outdoor_low),
        };
        let limits = fan.limits().ok()?;
        let start = fan.start_at_low()?;
        let starts_at_minimum = self.settings.drive.minimum_output().value >= limits.starts;
        let wind = fan.strongest_wind();
        Some(FanMotorAdvice {
            start,
            starts_from: limits.starts,
            starts_at_minimum,
            wind,
            held: fan.held(),
            hottest: hottest(
                &motor,
                fan.density(),
                self.settings.drive.lowest_speed().value,
            ),
            remedies: remedies(start, starts_at_minimum, wind.is_some()),
        })
    }
}
