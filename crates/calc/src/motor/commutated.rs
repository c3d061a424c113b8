//! An electronically commutated motor: its own electronics turn a signal into a speed and hold it, whatever the air.
//!
//! Source: common practice, no published source: 0 to 10 V or a pulse-width signal, off below a start value, from there on a
//! straight line to full speed. What a motor's data sheet says goes first.

use uom::si::electric_potential::volt;
use uom::si::f64::{AngularVelocity, ElectricPotential};

use super::error::{MotorError, MotorValue, inside};

/// What a control input of a motor sees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Signal {
    /// A control voltage, 0 to 10 V.
    Voltage(ElectricPotential),
    /// The share of the time that a pulse-width signal is on, 0 to 1.
    Duty(f64),
}

impl Signal {
    /// The share of the signal's span, checked.
    fn share(self) -> Result<f64, MotorError> {
        match self {
            Signal::Voltage(value) => {
                Ok(inside(MotorValue::SignalVoltage, value.get::<volt>(), (0.0, 10.0))? / 10.0)
            }
            Signal::Duty(value) => inside(MotorValue::SignalDuty, value, (0.0, 1.0)),
        }
    }

    /// A signal of the same sort at a share of its span.
    fn alike(self, share: f64) -> Self {
        match self {
            Signal::Voltage(_) => Signal::Voltage(ElectricPotential::new::<volt>(10.0 * share)),
            Signal::Duty(_) => Signal::Duty(share),
        }
    }

    fn same_sort(self, other: Self) -> bool {
        matches!(
            (self, other),
            (Signal::Voltage(_), Signal::Voltage(_)) | (Signal::Duty(_), Signal::Duty(_))
        )
    }
}

/// An electronically commutated motor with its control range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EcMotor {
    full_speed: AngularVelocity,
    start: Signal,
    /// Shares of the signal's span where the motor starts and where it is at full speed.
    ends: (f64, f64),
    lowest_share: f64,
}

impl EcMotor {
    /// A motor that starts at one signal and reaches full speed at another (usually 10 V, or always on).
    ///
    /// `lowest_share` is the share of full speed at the start signal.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a full speed outside 10 to 1000 rad/s, a full signal less than a tenth of the span above
    /// the start signal, or a lowest share outside 0 to 0.9; [`MotorError::OtherSignal`] where the two are of different sorts.
    pub fn new(
        full_speed: AngularVelocity,
        (start, full): (Signal, Signal),
        lowest_share: f64,
    ) -> Result<Self, MotorError> {
        inside(MotorValue::Speed, full_speed.value, (10.0, 1000.0))?;
        if !start.same_sort(full) {
            return Err(MotorError::OtherSignal);
        }
        let start_share = inside(MotorValue::StartSignal, start.share()?, (0.0, 0.9))?;
        let full_share = inside(
            MotorValue::FullSignal,
            full.share()?,
            (start_share + 0.1, 1.0),
        )?;
        inside(MotorValue::StartShare, lowest_share, (0.0, 0.9))?;
        Ok(Self {
            full_speed,
            start,
            ends: (start_share, full_share),
            lowest_share,
        })
    }

    /// A motor with the usual 0 to 10 V range: starts at 1 V with a tenth of full speed. Common practice, no published source.
    ///
    /// # Errors
    /// As [`EcMotor::new`].
    pub fn usual_voltage(full_speed: AngularVelocity) -> Result<Self, MotorError> {
        let volts = |value| Signal::Voltage(ElectricPotential::new::<volt>(value));
        Self::new(full_speed, (volts(1.0), volts(10.0)), 0.1)
    }

    /// A motor with the usual pulse-width range: starts at a tenth with a tenth of full speed. Common practice, no published
    /// source.
    ///
    /// # Errors
    /// As [`EcMotor::new`].
    pub fn usual_duty(full_speed: AngularVelocity) -> Result<Self, MotorError> {
        Self::new(full_speed, (Signal::Duty(0.1), Signal::Duty(1.0)), 0.1)
    }

    /// Speed at a signal; zero below the start signal, full speed from the full signal on.
    ///
    /// # Errors
    /// [`MotorError::OtherSignal`]; [`MotorError::OutOfRange`] outside 0 to 10 V or 0 to 1.
    pub fn speed(&self, signal: Signal) -> Result<AngularVelocity, MotorError> {
        if !signal.same_sort(self.start) {
            return Err(MotorError::OtherSignal);
        }
        let share = signal.share()?;
        let (start, full) = self.ends;
        if share < start {
            return Ok(self.full_speed * 0.0);
        }
        let along = ((share - start) / (full - start)).min(1.0);
        Ok(self.full_speed * (self.lowest_share + (1.0 - self.lowest_share) * along))
    }

    /// Signal that gives a speed; zero speed takes no signal at all.
    ///
    /// # Errors
    /// [`MotorError::BelowLowestSpeed`] for a speed that the motor does not run at, [`MotorError::AboveFullSpeed`],
    /// [`MotorError::OutOfRange`] for a speed that is negative or no number.
    pub fn signal_for(&self, speed: AngularVelocity) -> Result<Signal, MotorError> {
        inside(MotorValue::Speed, speed.value, (0.0, f64::MAX))?;
        let share = (speed / self.full_speed).value;
        if share == 0.0 {
            return Ok(self.start.alike(0.0));
        }
        if share < self.lowest_share {
            return Err(MotorError::BelowLowestSpeed {
                lowest: self.full_speed * self.lowest_share,
            });
        }
        if share > 1.0 {
            return Err(MotorError::AboveFullSpeed {
                highest: self.full_speed,
            });
        }
        let along = (share - self.lowest_share) / (1.0 - self.lowest_share);
        let (start, full) = self.ends;
        Ok(self.start.alike(start + (full - start) * along))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::angular_velocity::revolution_per_minute;

    fn rpm(value: f64) -> AngularVelocity {
        AngularVelocity::new::<revolution_per_minute>(value)
    }

    fn volts(value: f64) -> Signal {
        Signal::Voltage(ElectricPotential::new::<volt>(value))
    }

    #[test]
    fn the_usual_line_goes_through_zero() {
        // Common practice, no published source: 5 V is half speed, 10 V full speed, below 1 V the fan stands.
        let motor = EcMotor::usual_voltage(rpm(1000.0)).unwrap();
        for (signal, speed) in [(0.9, 0.0), (1.0, 100.0), (5.0, 500.0), (10.0, 1000.0)] {
            let ours = motor.speed(volts(signal)).unwrap();
            assert!((ours.get::<revolution_per_minute>() - speed).abs() < 1e-9);
        }
        let motor = EcMotor::usual_duty(rpm(1000.0)).unwrap();
        let half = motor.speed(Signal::Duty(0.5)).unwrap();
        assert!((half.get::<revolution_per_minute>() - 500.0).abs() < 1e-9);
    }

    #[test]
    fn signal_and_speed_invert_each_other() {
        for (motor, ends) in [
            (
                EcMotor::new(rpm(900.0), (volts(2.0), volts(9.0)), 0.25),
                (2.0, 9.0),
            ),
            (
                EcMotor::new(rpm(900.0), (volts(0.0), volts(10.0)), 0.0),
                (0.0, 10.0),
            ),
        ] {
            let motor = motor.unwrap();
            for step in 0..=20 {
                let value = ends.0 + (ends.1 - ends.0) * f64::from(step) / 20.0;
                let speed = motor.speed(volts(value)).unwrap();
                let Ok(Signal::Voltage(back)) = motor.signal_for(speed) else {
                    panic!("{value} V has a speed");
                };
                assert!((back.get::<volt>() - value).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn what_the_motor_does_not_do_is_refused() {
        let motor = EcMotor::usual_voltage(rpm(1000.0)).unwrap();
        assert_eq!(motor.speed(Signal::Duty(0.5)), Err(MotorError::OtherSignal));
        assert!(motor.speed(volts(10.1)).is_err());
        assert!(motor.speed(volts(f64::NAN)).is_err());
        assert!(matches!(
            motor.signal_for(rpm(50.0)),
            Err(MotorError::BelowLowestSpeed { .. })
        ));
        assert!(matches!(
            motor.signal_for(rpm(1001.0)),
            Err(MotorError::AboveFullSpeed { .. })
        ));
        assert_eq!(motor.signal_for(rpm(0.0)), Ok(volts(0.0)));
        let with = |start, full| EcMotor::new(rpm(1000.0), (start, full), 0.1);
        assert!(with(volts(9.5), volts(10.0)).is_err());
        assert!(with(volts(5.0), volts(5.5)).is_err());
        assert_eq!(
            with(volts(1.0), Signal::Duty(1.0)),
            Err(MotorError::OtherSignal)
        );
        let narrow = with(volts(2.0), volts(8.0)).unwrap();
        assert_eq!(narrow.speed(volts(9.0)), Ok(rpm(1000.0)));
    }
}
