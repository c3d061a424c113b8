//! Whether a fan keeps turning on a reduced voltage, and whether it starts from rest on it.
//!
//! The voltage in balance at a slip is `u² = (load + friction) / torque at rated voltage`. Coming down from full speed it falls
//! until, past the breakdown torque, the load no longer gives way fast enough: that first minimum is the lowest voltage that
//! keeps the fan running. From rest, the torque has to break the bearing loose and then stay above load and friction all the
//! way; single-phase motors have far less torque there than Kloss's equation says. Between the two voltages a fan goes on
//! turning but does not start.
//!
//! The limited starting torque bears on starting alone: a running fan follows Kloss's equation, as in
//! [`InductionMotor::speed_at`].
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer) for the balance; common practice, no
//! published source, for the starting torques.

use uom::si::f64::AngularVelocity;

use super::error::{self, MotorError};
use super::{Friction, InductionMotor};
use crate::input::MotorKind;
use crate::root::bracketed;

/// Starting torque over rated torque at rated voltage: 0.5 with a run capacitor, 0.4 with a shading ring, 1.0 with electronics,
/// 1.5 three-phase.
///
/// Common practice, no published source. Where Kloss's equation gives less at rest, that counts: on the safe side, since the bars of
/// a three-phase rotor are often shaped for more.
pub fn starting_torque_ratio(kind: MotorKind) -> f64 {
    match kind {
        MotorKind::PermanentSplitCapacitor => 0.5,
        MotorKind::ShadedPole => 0.4,
        MotorKind::ElectronicallyCommutated => 1.0,
        MotorKind::ThreePhase => 1.5,
    }
}

/// What a fan does before its voltage is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum State {
    /// It turns.
    Turning,
    /// It stands still.
    AtRest,
}

/// What a fan does on a voltage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Turning {
    /// It settles at a speed.
    Running(AngularVelocity),
    /// It turned before, and does not go on.
    Stalled,
    /// It stood still before, and stays so.
    WillNotStart,
}

/// The voltages that part running, stalling and starting, as shares of rated voltage; above one where rated voltage does not do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Lowest share that keeps a running fan on the stable part of its torque curve.
    pub keeps_running: f64,
    /// Lowest share that brings a fan up from rest; never below `keeps_running`.
    pub starts: f64,
    /// Slip at which a running fan is lost.
    pull_out: f64,
}

const STEPS: u32 = 128;

/// Where the search for the lowest voltage begins: next to the speed of the field, where the voltage in balance is boundless.
const NO_SLIP: f64 = 1e-6;

impl InductionMotor {
    /// Torque over rated torque at rated voltage on the way up from rest (slip above one: driven backwards).
    ///
    /// From the breakdown slip to rest it departs from Kloss's equation with the square of the distance, down to the kind's
    /// [`starting_torque_ratio`].
    pub(super) fn starting_torque(&self, slip: f64) -> f64 {
        let at_rest = self.torque(1.0, 1.0);
        let lacking = 1.0 - (self.starting_ratio / at_rest).min(1.0);
        let past = ((slip - self.breakdown_slip) / (1.0 - self.breakdown_slip)).clamp(0.0, 1.0);
        self.torque(1.0, slip) * (1.0 - lacking * past * past)
    }

    /// The voltages that keep a fan running and that start it, in air of a share of the nameplate density.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a density ratio outside 0.4 to 1.6.
    pub fn limits(&self, density: f64, friction: Friction) -> Result<Limits, MotorError> {
        let density = error::density(density)?;
        let resisting = |slip: f64| self.load(density, slip) + friction.running();
        let pull_out = self.pull_out(density, friction.running());
        let keeps_running = self.keeps_running(density, friction)?;
        let way_up = highest(pull_out, 1.0, |slip| {
            resisting(slip) / self.starting_torque(slip)
        });
        let loose = friction.breakaway() / self.starting_torque(1.0);
        Ok(Limits {
            keeps_running,
            starts: way_up.max(loose).sqrt().max(keeps_running),
            pull_out,
        })
    }

    /// Lowest share of rated voltage that keeps a running fan turning, as in [`Limits::keeps_running`], for where the start is not asked.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a density ratio outside 0.4 to 1.6.
    pub fn keeps_running(&self, density: f64, friction: Friction) -> Result<f64, MotorError> {
        let density = error::density(density)?;
        let slip = self.pull_out(density, friction.running());
        let resisting = self.load(density, slip) + friction.running();
        Ok((resisting / self.torque(1.0, slip)).sqrt())
    }

    /// What a fan does on a share of rated voltage, out of a state, in air of a share of the nameplate density.
    ///
    /// The speed is a little below [`InductionMotor::speed_at`]: bearing friction counts here.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a voltage outside 0 to 1.5 of rated or a density ratio outside 0.4 to 1.6.
    pub fn turning(
        &self,
        from: State,
        voltage: f64,
        density: f64,
        friction: Friction,
    ) -> Result<Turning, MotorError> {
        let voltage = error::voltage(voltage)?;
        let limits = self.limits(density, friction)?;
        Ok(match from {
            State::Turning if voltage < limits.keeps_running || voltage == 0.0 => Turning::Stalled,
            State::AtRest if voltage < limits.starts || voltage == 0.0 => Turning::WillNotStart,
            State::Turning | State::AtRest => {
                let slip = bracketed(0.0, limits.pull_out, |slip| {
                    self.torque(voltage, slip) - self.load(density, slip) - friction.running()
                });
                Turning::Running(self.synchronous() * (1.0 - slip))
            }
        })
    }

    /// Slip of the first minimum of the voltage in balance on the way down from synchronous speed; one where there is none.
    ///
    /// With `L` load and `f` friction, `u² ∝ (L + f)·(s/s_b + s_b/s)`; the root of its derivative is sought.
    fn pull_out(&self, density: f64, friction: f64) -> f64 {
        let falling = |slip: f64| {
            let load = self.load(density, slip);
            // Density times (1 − s) over (1 − s_n)², which stays whole where the load vanishes.
            let steepness = -2.0 * density * (1.0 - slip) / (1.0 - self.rated_slip).powi(2);
            let relative = slip / self.breakdown_slip;
            steepness * (relative + 1.0 / relative)
                + (load + friction) * (1.0 - 1.0 / relative.powi(2)) / self.breakdown_slip
        };
        let mut before = NO_SLIP;
        for step in 1..=STEPS {
            let slip = f64::from(step) / f64::from(STEPS);
            if falling(slip) > 0.0 {
                return bracketed(before, slip, falling);
            }
            before = slip;
        }
        1.0
    }
}

/// Largest value of a smooth function between two ends: the best of a row of points, then a golden section around it.
fn highest(low: f64, high: f64, f: impl Fn(f64) -> f64) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_894_8;
    let at = |step: u32| low + (high - low) * f64::from(step.min(STEPS)) / f64::from(STEPS);
    let mut best = (0, f(low));
    for step in 1..=STEPS {
        let value = f(at(step));
        if value > best.1 {
            best = (step, value);
        }
    }
    let (mut a, mut b) = (at(best.0.saturating_sub(1)), at(best.0 + 1));
    for _ in 0..40 {
        let (left, right) = (b - GOLDEN * (b - a), a + GOLDEN * (b - a));
        if f(left) < f(right) {
            a = left;
        } else {
            b = right;
        }
    }
    best.1.max(f(0.5 * (a + b)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::Bearing;
    use crate::motor::induction::tests::six_pole;
    use uom::si::angular_velocity::revolution_per_minute;
    use uom::si::f64::{Frequency, ThermodynamicTemperature};
    use uom::si::frequency::hertz;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn usual(bearing: Bearing, celsius: f64) -> Friction {
        let outdoor = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        Friction::usual(bearing, outdoor).unwrap()
    }

    fn stiff() -> InductionMotor {
        InductionMotor::from_nameplate(
            MotorKind::ThreePhase,
            AngularVelocity::new::<revolution_per_minute>(1455.0),
            Frequency::new::<hertz>(50.0),
        )
        .unwrap()
    }

    #[test]
    fn a_stiff_motor_is_lost_past_its_breakdown() {
        // Machine textbooks: a motor with little slip loses its fan at about the breakdown slip, where u² is the load there over
        // the breakdown torque.
        let motor = stiff();
        let limits = motor.limits(1.0, Friction::NONE).unwrap();
        assert!(limits.pull_out > motor.breakdown_slip);
        let at_breakdown = motor.load(1.0, motor.breakdown_slip) / motor.breakdown_ratio;
        assert!((limits.keeps_running / at_breakdown.sqrt() - 1.0).abs() < 0.02);
        let just = |share: f64| {
            let voltage = limits.keeps_running * share;
            motor.turning(State::Turning, voltage, 1.0, Friction::NONE)
        };
        assert!(matches!(just(1.0001), Ok(Turning::Running(_))));
        assert_eq!(just(0.9999), Ok(Turning::Stalled));
    }

    #[test]
    fn a_running_fan_goes_on_where_it_would_not_start() {
        let motor = six_pole();
        for bearing in [Bearing::Ball, Bearing::Sleeve] {
            let friction = usual(bearing, -20.0);
            let limits = motor.limits(1.2, friction).unwrap();
            assert!(limits.keeps_running < limits.starts, "{limits:?}");
            let between = 0.5 * (limits.keeps_running + limits.starts);
            let out_of = |state| motor.turning(state, between, 1.2, friction).unwrap();
            assert!(matches!(out_of(State::Turning), Turning::Running(_)));
            assert_eq!(out_of(State::AtRest), Turning::WillNotStart);
        }
    }

    #[test]
    fn cold_and_sleeve_bearings_need_more_to_start() {
        let motor = six_pole();
        let starts = |bearing, celsius| {
            let limits = motor.limits(1.0, usual(bearing, celsius)).unwrap();
            limits.starts
        };
        assert!(starts(Bearing::Ball, -40.0) > starts(Bearing::Ball, 20.0));
        assert!(starts(Bearing::Sleeve, -20.0) > starts(Bearing::Ball, -20.0));
        // Common practice, no published source: at full voltage a sound motor starts in any winter.
        assert!(starts(Bearing::Sleeve, -40.0) < 1.0);
    }

    #[test]
    fn starting_torque_joins_kloss_and_the_kinds_ratio() {
        let motor = six_pole();
        assert!((motor.starting_torque(1.0) - 0.5).abs() < 1e-12);
        let slip = motor.breakdown_slip;
        assert!((motor.starting_torque(slip) - motor.breakdown_ratio).abs() < 1e-12);
        for percent in 1..=200 {
            let slip = f64::from(percent) / 100.0;
            assert!(motor.starting_torque(slip) <= motor.torque(1.0, slip));
        }
    }

    #[test]
    fn without_friction_it_is_the_speed_that_speed_at_gives() {
        let motor = six_pole();
        for percent in 30..=100 {
            let voltage = f64::from(percent) / 100.0;
            let ours = motor.turning(State::Turning, voltage, 1.0, Friction::NONE);
            let Ok(Turning::Running(speed)) = ours else {
                panic!("{percent} % keeps running");
            };
            let plain = motor.speed_at(voltage, 1.0).unwrap();
            assert!((speed / plain - 1.0.into()).value.abs() < 1e-9);
        }
    }

    #[test]
    fn no_voltage_and_no_number_do_not_run() {
        let motor = six_pole();
        let turning = |state, voltage| motor.turning(state, voltage, 1.0, Friction::NONE);
        assert_eq!(turning(State::Turning, 0.0), Ok(Turning::Stalled));
        assert_eq!(turning(State::AtRest, 0.0), Ok(Turning::WillNotStart));
        assert!(turning(State::AtRest, f64::NAN).is_err());
        assert!(turning(State::AtRest, 1.6).is_err());
        assert!(motor.limits(f64::INFINITY, Friction::NONE).is_err());
    }
}
