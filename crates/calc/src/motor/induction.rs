//! Torque balance of an induction motor on a reduced voltage against a fan.
//!
//! Torque follows Kloss's equation and the square of the voltage, load torque the square of the speed and the density of the air.
//! Everything is relative to the nameplate point.
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer): Kloss's equation, voltage speed control of
//! fan drives.

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::f64::{AngularVelocity, Frequency};
use uom::si::frequency::hertz;

use super::stall::starting_torque_ratio;
use crate::input::MotorKind;
use crate::problem::Problem;

/// An induction motor on a fan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InductionMotor {
    synchronous: AngularVelocity,
    pub(super) rated_slip: f64,
    pub(super) breakdown_slip: f64,
    pub(super) breakdown_ratio: f64,
    pub(super) starting_ratio: f64,
}

impl InductionMotor {
    /// A motor from its nameplate speed and the supply frequency.
    ///
    /// The synchronous speed is the nearest one above the nameplate speed. Breakdown torque over rated torque is 1.6 for a
    /// motor with a run capacitor and 1.3 for a shaded pole (common practice, no published source); the breakdown slip
    /// follows from Kloss's equation at the nameplate point.
    ///
    /// # Errors
    /// [`Problem::NoSynchronousSpeed`] where the nameplate speed lies more than a third below any synchronous speed.
    pub fn from_nameplate(
        kind: MotorKind,
        rated: AngularVelocity,
        supply: Frequency,
    ) -> Result<Self, Problem> {
        let rated_rpm = rated.get::<revolution_per_minute>();
        let synchronous_rpm = (1..=12)
            .rev()
            .map(|pole_pairs| 60.0 * supply.get::<hertz>() / f64::from(pole_pairs))
            .find(|&rpm| rpm > rated_rpm * 1.002)
            .unwrap_or(60.0 * supply.get::<hertz>());
        let synchronous = AngularVelocity::new::<revolution_per_minute>(synchronous_rpm);
        let rated_slip = 1.0 - rated_rpm / synchronous_rpm;
        if !(0.001..=1.0 / 3.0).contains(&rated_slip) {
            return Err(Problem::NoSynchronousSpeed { synchronous });
        }
        let breakdown_ratio: f64 = match kind {
            MotorKind::ShadedPole => 1.3,
            MotorKind::PermanentSplitCapacitor
            | MotorKind::ElectronicallyCommutated
            | MotorKind::ThreePhase => 1.6,
        };
        Ok(Self {
            synchronous,
            rated_slip,
            breakdown_slip: rated_slip * (breakdown_ratio + (breakdown_ratio.powi(2) - 1.0).sqrt()),
            breakdown_ratio,
            starting_ratio: starting_torque_ratio(kind),
        })
    }

    /// Speed of the rotating field.
    pub fn synchronous(&self) -> AngularVelocity {
        self.synchronous
    }

    /// Nameplate speed.
    pub fn rated(&self) -> AngularVelocity {
        self.synchronous * (1.0 - self.rated_slip)
    }

    /// Breakdown slip, and the torque there over rated torque.
    pub(crate) fn breakdown(&self) -> (f64, f64) {
        (self.breakdown_slip, self.breakdown_ratio)
    }

    /// Motor torque over rated torque at a slip and a share of rated voltage: `u²·2·T_b / (s/s_b + s_b/s)`.
    pub fn torque(&self, voltage: f64, slip: f64) -> f64 {
        if slip <= 0.0 {
            return 0.0;
        }
        let relative = slip / self.breakdown_slip;
        voltage.powi(2) * 2.0 * self.breakdown_ratio / (relative + 1.0 / relative)
    }

    /// Load torque over rated torque at a slip, in air of a share of the rated density.
    pub fn load(&self, density: f64, slip: f64) -> f64 {
        self.load_at(density, 1.0 - slip)
    }

    /// Load torque over rated torque at a share of nameplate synchronous speed.
    pub(super) fn load_at(&self, density: f64, speed: f64) -> f64 {
        density * (speed / (1.0 - self.rated_slip)).powi(2)
    }

    /// Share of rated voltage at which the fan settles at this speed.
    ///
    /// Above what the rated voltage reaches the answer exceeds one.
    pub fn voltage_for(&self, speed: AngularVelocity, density: f64) -> f64 {
        let slip = (1.0 - (speed / self.synchronous).value).clamp(f64::EPSILON, 1.0);
        (self.load(density, slip) / self.torque(1.0, slip)).sqrt()
    }

    /// Speed at which a running fan settles on this share of rated voltage: the fastest speed where torque meets load.
    ///
    /// `None` where the motor stalls.
    pub fn speed_at(&self, voltage: f64, density: f64) -> Option<AngularVelocity> {
        self.settle(voltage, 1.0, density, 0.0)
            .map(|share| self.synchronous * share)
    }

    /// Share of nameplate synchronous speed at which a running fan settles: the fastest one where torque meets load and friction.
    ///
    /// `field` is the voltage over the frequency and `frequency` the frequency, both as shares of the nameplate's. The slip is
    /// counted in shares of nameplate synchronous speed throughout, where the torque curve only scales with the field.
    pub(super) fn settle(
        &self,
        field: f64,
        frequency: f64,
        density: f64,
        friction: f64,
    ) -> Option<f64> {
        const STEPS: u32 = 256;
        let surplus = |slip: f64| {
            let load = self.load_at(density, frequency - slip);
            self.torque(field, slip) - load - friction
        };
        let at = |step: u32| frequency * f64::from(step) / f64::from(STEPS);
        // Walks down from the speed of the field to the first slip with torque to spare, then closes in.
        let step = (1..=STEPS).find(|&step| surplus(at(step)) >= 0.0)?;
        if step == STEPS && field <= 0.0 {
            return None;
        }
        Some(frequency - crate::root::bracketed(at(step - 1), at(step), surplus))
    }
}

#[cfg(test)]
pub(in crate::motor) mod tests {
    use super::*;

    pub(in crate::motor) fn six_pole() -> InductionMotor {
        InductionMotor::from_nameplate(
            MotorKind::PermanentSplitCapacitor,
            AngularVelocity::new::<revolution_per_minute>(1075.0),
            Frequency::new::<hertz>(60.0),
        )
        .unwrap()
    }

    #[test]
    fn the_nameplate_point_is_in_balance() {
        let motor = six_pole();
        assert!((motor.synchronous().get::<revolution_per_minute>() - 1200.0).abs() < 1e-9);
        assert!((motor.torque(1.0, motor.rated_slip) - 1.0).abs() < 1e-12);
        let speed = motor.speed_at(1.0, 1.0).unwrap();
        assert!((speed.get::<revolution_per_minute>() - 1075.0).abs() < 1e-6);
    }

    #[test]
    fn breakdown_torque_peaks_at_breakdown_slip() {
        // Kloss's equation: the peak is the breakdown torque, at the breakdown slip (machine textbooks).
        let motor = six_pole();
        assert!((motor.torque(1.0, motor.breakdown_slip) - 1.6).abs() < 1e-12);
        assert!(motor.torque(1.0, motor.breakdown_slip * 1.01) < 1.6);
        assert!(motor.torque(1.0, motor.breakdown_slip * 0.99) < 1.6);
    }

    #[test]
    fn slip_loss_peaks_at_two_thirds_of_synchronous_speed() {
        // Machine textbooks: with load torque by speed squared, rotor loss peaks at 2/3 of synchronous speed, at 4/27 of the fan
        // power at synchronous speed.
        let motor = six_pole();
        let at_synchronous = motor.load(1.0, 0.0);
        let loss = |slip: f64| slip * motor.load(1.0, slip) / at_synchronous;
        let (peak_slip, peak) = (0..=3000)
            .map(|step| f64::from(step) / 3000.0)
            .map(|slip| (slip, loss(slip)))
            .max_by(|a, b| a.1.total_cmp(&b.1))
            .unwrap();
        assert!((peak_slip - 1.0 / 3.0).abs() < 1e-12);
        assert!((peak - 4.0 / 27.0).abs() < 1e-12);
    }

    #[test]
    fn voltage_and_speed_invert_each_other() {
        let motor = six_pole();
        for percent in 15..=100 {
            let speed = motor.rated() * (f64::from(percent) / 100.0);
            let voltage = motor.voltage_for(speed, 1.1);
            let back = motor.speed_at(voltage, 1.1).unwrap();
            assert!((back / speed).value - 1.0 < 1e-9, "{percent} %");
        }
    }

    #[test]
    fn no_voltage_stalls() {
        assert_eq!(six_pole().speed_at(0.0, 1.0), None);
    }

    #[test]
    fn a_speed_between_synchronous_speeds_is_refused() {
        let refused = InductionMotor::from_nameplate(
            MotorKind::ShadedPole,
            AngularVelocity::new::<revolution_per_minute>(2000.0),
            Frequency::new::<hertz>(60.0),
        );
        assert!(matches!(refused, Err(Problem::NoSynchronousSpeed { .. })));
    }
}
