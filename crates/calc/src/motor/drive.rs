//! A frequency drive on an induction motor: voltage by frequency, so that the field stays at its rated strength.
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer), constant volts per hertz. The stator's
//! resistance, which weakens the field at a few hertz, is left out: the lowest frequency kept stays above that.

use uom::si::f64::{AngularVelocity, Frequency};
use uom::si::frequency::hertz;

use super::InductionMotor;
use super::error::{self, MotorError, MotorValue, inside};
use super::lowest_speed_fraction;
use crate::input::Bearing;

/// Lowest frequency that a fan drive usually keeps: the share of full speed that the bearing allows.
///
/// Common practice, no published source.
pub fn usual_lowest_frequency(bearing: Bearing, nameplate: Frequency) -> Frequency {
    nameplate * lowest_speed_fraction(bearing)
}

/// An induction motor behind a frequency drive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FrequencyDrive {
    motor: InductionMotor,
    nameplate: Frequency,
    lowest: Frequency,
}

impl FrequencyDrive {
    /// A drive for a motor of a nameplate frequency, with the lowest frequency that it keeps.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a nameplate frequency outside 45 to 65 Hz, and for a lowest one below 2 Hz or above the
    /// nameplate's.
    pub fn new(
        motor: InductionMotor,
        nameplate: Frequency,
        lowest: Frequency,
    ) -> Result<Self, MotorError> {
        let full = inside(
            MotorValue::NameplateFrequency,
            nameplate.get::<hertz>(),
            (45.0, 65.0),
        )?;
        inside(
            MotorValue::LowestFrequency,
            lowest.get::<hertz>(),
            (2.0, full),
        )?;
        Ok(Self {
            motor,
            nameplate,
            lowest,
        })
    }

    /// Lowest frequency kept.
    pub fn lowest(&self) -> Frequency {
        self.lowest
    }

    /// Speed at an output frequency, in air of a share of the nameplate density: the field's speed less the slip.
    ///
    /// # Errors
    /// [`MotorError::BelowLowestFrequency`]; [`MotorError::OutOfRange`] above the nameplate frequency, where voltage no longer
    /// follows, or for a density ratio outside 0.4 to 1.6; [`MotorError::Stalls`].
    pub fn speed(&self, output: Frequency, density: f64) -> Result<AngularVelocity, MotorError> {
        if output < self.lowest {
            return Err(MotorError::BelowLowestFrequency {
                lowest: self.lowest,
            });
        }
        inside(
            MotorValue::OutputFrequency,
            output.get::<hertz>(),
            (self.lowest.get::<hertz>(), self.nameplate.get::<hertz>()),
        )?;
        let density = error::density(density)?;
        self.motor
            .settle(1.0, (output / self.nameplate).value, density, 0.0)
            .map(|share| self.motor.synchronous() * share)
            .ok_or(MotorError::Stalls)
    }

    /// Output frequency that gives a speed: the speed in balance plus the slip speed that its torque takes.
    ///
    /// With `L` the load over rated torque, Kloss's equation solved for the slip gives `σ/s_b = T_b/L − √((T_b/L)² − 1)`.
    ///
    /// # Errors
    /// [`MotorError::BelowLowestSpeed`], [`MotorError::AboveFullSpeed`], [`MotorError::Stalls`], or [`MotorError::OutOfRange`]
    /// for a density ratio outside 0.4 to 1.6.
    pub fn frequency_for(
        &self,
        speed: AngularVelocity,
        density: f64,
    ) -> Result<Frequency, MotorError> {
        let lowest = self.speed(self.lowest, density)?;
        let highest = self.speed(self.nameplate, density)?;
        inside(MotorValue::Speed, speed.value, (0.0, f64::MAX))?;
        if speed < lowest {
            return Err(MotorError::BelowLowestSpeed { lowest });
        }
        if speed > highest {
            return Err(MotorError::AboveFullSpeed { highest });
        }
        let share = (speed / self.motor.synchronous()).value;
        let reserve = self.motor.breakdown_ratio / self.motor.load_at(density, share);
        let slip = self.motor.breakdown_slip / (reserve + (reserve.powi(2) - 1.0).max(0.0).sqrt());
        let ratio = share + slip;
        Ok((self.nameplate * ratio)
            .max(self.lowest)
            .min(self.nameplate))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::motor::induction::tests::six_pole;
    use uom::si::angular_velocity::revolution_per_minute;

    fn drive() -> FrequencyDrive {
        let sixty = Frequency::new::<hertz>(60.0);
        let lowest = usual_lowest_frequency(Bearing::Ball, sixty);
        FrequencyDrive::new(six_pole(), sixty, lowest).unwrap()
    }

    #[test]
    fn nameplate_frequency_gives_nameplate_speed() {
        let rpm = drive()
            .speed(Frequency::new::<hertz>(60.0), 1.0)
            .unwrap()
            .get::<revolution_per_minute>();
        assert!((rpm - 1075.0).abs() < 1e-6);
    }

    #[test]
    fn frequency_and_speed_invert_each_other() {
        for cycles in 12..=60 {
            let output = Frequency::new::<hertz>(f64::from(cycles));
            let speed = drive().speed(output, 1.15).unwrap();
            let back = drive().frequency_for(speed, 1.15).unwrap();
            assert!((back / output - 1.0.into()).value.abs() < 1e-9, "{cycles}");
        }
    }

    #[test]
    fn slip_shrinks_with_the_square_of_the_speed() {
        // Machine textbooks: slip speed goes with torque on the straight part of the curve, and a fan's torque with the square of
        // its speed: at half speed about a quarter of the slip speed.
        let slip_at = |cycles: f64| {
            let speed = drive()
                .speed(Frequency::new::<hertz>(cycles), 1.0)
                .unwrap()
                .get::<revolution_per_minute>();
            (20.0 * cycles - speed, speed)
        };
        let (half, speed) = slip_at(30.0);
        let (full, rated) = slip_at(60.0);
        let straight = (speed / rated).powi(2);
        assert!(half / full < straight && half / full > 0.8 * straight);
    }

    #[test]
    fn the_lowest_frequency_is_kept() {
        assert!(matches!(
            drive().speed(Frequency::new::<hertz>(11.9), 1.0),
            Err(MotorError::BelowLowestFrequency { .. })
        ));
        let rpm = AngularVelocity::new::<revolution_per_minute>;
        assert!(matches!(
            drive().frequency_for(rpm(100.0), 1.0),
            Err(MotorError::BelowLowestSpeed { .. })
        ));
        assert!(matches!(
            drive().frequency_for(rpm(1190.0), 1.0),
            Err(MotorError::AboveFullSpeed { .. })
        ));
        assert!(drive().frequency_for(rpm(f64::NAN), 1.0).is_err());
        assert!(
            drive()
                .speed(Frequency::new::<hertz>(f64::NAN), 1.0)
                .is_err()
        );
    }
}
