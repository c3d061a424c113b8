//! Holds wanted settings against limits.

use uom::si::f64::ElectricCurrent;

use super::{
    Effect, Finding, InputLimits, Limits, MotorOutput, Outside, OwnController, Safety,
    SensedSettings, Setting, Standing, Wanted,
};
use crate::explain::Quantity;
use crate::motor::{Fit, Loading};

/// What a controller makes of wanted settings.
#[derive(Clone, Debug, PartialEq)]
pub struct Within {
    /// The settings moved to the nearest that the controller takes. Supply, motors and outputs, and the settings of an input
    /// that the controller has not, stay as they were.
    pub settings: Wanted,
    /// Every setting that is not inside as it was wanted.
    pub findings: Vec<Finding>,
}

impl Within {
    /// Whether the system may run with these settings: the worst of the findings.
    pub fn safety(&self) -> Safety {
        let worst = self.findings.iter().map(Finding::safety).max();
        worst.unwrap_or(Safety::Safe)
    }
}

impl OwnController {
    /// Each wanted setting against the limits, in the order of [`Setting`]; what is not wanted has no finding, nor has the
    /// full-speed point or the throttling range where the controller has no such input, nor supply and current where it feeds no motor.
    pub fn check(&self, wanted: &Wanted) -> Vec<Finding> {
        let mut standings = self.sensed(&wanted.sensed);
        if let Some(value) = wanted.minimum_output {
            let effects = (Effect::HoldLimitRises, Effect::BelowLowestSpeed);
            let standing = place(self.minimum_output, value, Quantity::Ratio, effects);
            standings.push((Setting::MinimumOutput, standing));
        }
        if let Some(value) = wanted.start_boost {
            let effects = (Effect::LongerBoost, Effect::MayNotStart);
            let standing = place(self.start_boost, value, Quantity::Time, effects);
            standings.push((Setting::StartBoost, standing));
        }
        standings.push((Setting::MotorOutput, self.output(&wanted.outputs)));
        if !wanted.motors.is_empty() {
            standings.push((Setting::SupplyVoltage, self.supply(wanted)));
            standings.push((Setting::RatedCurrent, self.current(&wanted.motors)));
        }
        let finding = |(setting, standing)| Finding { setting, standing };
        standings.into_iter().map(finding).collect()
    }

    /// The wanted settings moved to the nearest that the controller takes, with what that does.
    pub fn within(&self, wanted: &Wanted) -> Within {
        let mut findings = self.check(wanted);
        findings.retain(|finding| finding.standing != Standing::Inside);
        Within {
            settings: Wanted {
                sensed: self.nearest_sensed(wanted.sensed),
                minimum_output: wanted
                    .minimum_output
                    .map(|v| nearest(self.minimum_output, v)),
                start_boost: wanted.start_boost.map(|v| nearest(self.start_boost, v)),
                ..wanted.clone()
            },
            findings,
        }
    }

    fn input_for(&self, sensed: &SensedSettings) -> Option<&InputLimits> {
        let mut inputs = self.inputs.iter();
        inputs.find(|input| input.sensing() == sensed.sensing())
    }

    fn sensed(&self, sensed: &SensedSettings) -> Vec<(Setting, Standing)> {
        let point = (Effect::RunsHotter, Effect::BelowNeed);
        let span = (Effect::BelowNeed, Effect::MayHunt);
        let (point, span) = match (sensed, self.input_for(sensed)) {
            (
                SensedSettings::Pressure {
                    full_speed,
                    throttling,
                },
                Some(InputLimits::Pressure {
                    full_speed: points,
                    throttling: spans,
                }),
            ) => (
                place(Some(*points), *full_speed, Quantity::Pressure, point),
                place(
                    Some(*spans),
                    *throttling,
                    Quantity::PressureDifference,
                    span,
                ),
            ),
            (
                SensedSettings::Temperature {
                    full_speed,
                    throttling,
                },
                Some(InputLimits::Temperature {
                    full_speed: points,
                    throttling: spans,
                }),
            ) => (
                place(Some(*points), *full_speed, Quantity::Temperature, point),
                place(Some(*spans), *throttling, Quantity::Difference, span),
            ),
            _ => return vec![(Setting::Input, self.no_input(sensed))],
        };
        vec![
            (Setting::Input, Standing::Inside),
            (Setting::FullSpeedPoint, point),
            (Setting::ThrottlingRange, span),
        ]
    }

    fn no_input(&self, sensed: &SensedSettings) -> Standing {
        if self.inputs.is_empty() {
            return Standing::NotStated;
        }
        Standing::NoSuchInput {
            wanted: sensed.sensing(),
            offered: self.inputs.iter().map(InputLimits::sensing).collect(),
        }
    }

    fn nearest_sensed(&self, sensed: SensedSettings) -> SensedSettings {
        match (sensed, self.input_for(&sensed)) {
            (
                SensedSettings::Pressure {
                    full_speed,
                    throttling,
                },
                Some(InputLimits::Pressure {
                    full_speed: points,
                    throttling: spans,
                }),
            ) => SensedSettings::Pressure {
                full_speed: points.nearest(full_speed),
                throttling: spans.nearest(throttling),
            },
            (
                SensedSettings::Temperature {
                    full_speed,
                    throttling,
                },
                Some(InputLimits::Temperature {
                    full_speed: points,
                    throttling: spans,
                }),
            ) => SensedSettings::Temperature {
                full_speed: points.nearest(full_speed),
                throttling: spans.nearest(throttling),
            },
            _ => sensed,
        }
    }

    fn output(&self, wanted: &[MotorOutput]) -> Standing {
        if self.outputs.is_empty() {
            Standing::NotStated
        } else if wanted.iter().any(|output| self.outputs.contains(output)) {
            Standing::Inside
        } else {
            Standing::NoSuchOutput {
                wanted: wanted.to_vec(),
                offered: self.outputs.clone(),
            }
        }
    }

    fn supply(&self, wanted: &Wanted) -> Standing {
        let effects = (Effect::CannotBeSet, Effect::CannotBeSet);
        match place(self.supply, wanted.supply, Quantity::Voltage, effects) {
            Standing::Outside(outside) => Standing::Outside(Outside {
                nearest: None,
                ..outside
            }),
            standing => standing,
        }
    }

    fn current(&self, motors: &[ElectricCurrent]) -> Standing {
        let Some(rating) = self.rated_current else {
            return Standing::NotStated;
        };
        match Loading::new(motors, rating) {
            Err(error) => Standing::Currents(error),
            Ok(loading) => match loading.fit() {
                Fit::WithReserve => Standing::Inside,
                Fit::WithoutReserve => Standing::ShortOfReserve(loading),
                Fit::Over => Standing::Overloaded(loading),
            },
        }
    }
}

fn nearest<T: PartialOrd + Copy>(limits: Option<Limits<T>>, value: T) -> T {
    limits.map_or(value, |limits| limits.nearest(value))
}

/// How a value stands to limits; the effects are those of moving it up to the lowest and down to the highest.
fn place<T: PartialOrd + Copy>(
    limits: Option<Limits<T>>,
    wanted: T,
    wrap: fn(T) -> Quantity,
    (raised, lowered): (Effect, Effect),
) -> Standing {
    // Only what is no number differs from itself.
    if wanted.partial_cmp(&wanted).is_none() {
        return Standing::NotANumber;
    }
    let Some(limits) = limits else {
        return Standing::NotStated;
    };
    let effect = if wanted < limits.low() {
        raised
    } else if wanted > limits.high() {
        lowered
    } else {
        return Standing::Inside;
    };
    Standing::Outside(Outside {
        wanted: wrap(wanted),
        low: wrap(limits.low()),
        high: wrap(limits.high()),
        nearest: Some(wrap(limits.nearest(wanted))),
        effect,
    })
}
