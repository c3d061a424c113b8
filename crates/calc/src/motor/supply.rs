//! What the line gives a motor, against its nameplate: voltage and frequency.
//!
//! At another frequency the rotating field, and with it the fan, turns in proportion. The field in the air gap goes with
//! `V/f`, so torque goes with `(V/f)²` at the same difference of speeds between field and rotor; the fan asks for torque by
//! the square of its own speed. The stator's resistance is left out.
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer), induction machine on a variable frequency.

use uom::si::electric_potential::volt;
use uom::si::f64::{AngularVelocity, ElectricPotential, Frequency};
use uom::si::frequency::hertz;

use super::InductionMotor;
use super::error::{self, MotorError, MotorValue, inside};

/// Voltages that line and nameplate may have, V.
const VOLTS: (f64, f64) = (100.0, 600.0);

/// Frequencies that line and nameplate may have, Hz: 50 and 60 Hz with what a generator strays.
const HERTZ: (f64, f64) = (45.0, 65.0);

/// The voltages that line and nameplate may have: 100 to 600 V.
pub fn supply_voltage_range() -> (ElectricPotential, ElectricPotential) {
    (
        ElectricPotential::new::<volt>(VOLTS.0),
        ElectricPotential::new::<volt>(VOLTS.1),
    )
}

/// What a supply is to a motor: line over nameplate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supply {
    voltage: f64,
    frequency: f64,
}

impl Supply {
    /// The nameplate's own supply.
    pub const RATED: Self = Self {
        voltage: 1.0,
        frequency: 1.0,
    };

    /// A line as (voltage r.m.s., frequency) against the nameplate's.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] outside 100 to 600 V or 45 to 65 Hz, and for a line above one and a half times the nameplate
    /// voltage.
    pub fn new(
        line: (ElectricPotential, Frequency),
        nameplate: (ElectricPotential, Frequency),
    ) -> Result<Self, MotorError> {
        let volts = |what, value: ElectricPotential| inside(what, value.get::<volt>(), VOLTS);
        let cycles = |what, value: Frequency| inside(what, value.get::<hertz>(), HERTZ);
        let voltage = volts(MotorValue::LineVoltage, line.0)?
            / volts(MotorValue::NameplateVoltage, nameplate.0)?;
        let frequency = cycles(MotorValue::LineFrequency, line.1)?
            / cycles(MotorValue::NameplateFrequency, nameplate.1)?;
        Ok(Self {
            voltage: error::voltage(voltage)?,
            frequency,
        })
    }

    /// The same supply behind a controller that passes on a share of the voltage.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] outside 0 to 1.5 of the nameplate voltage.
    pub fn reduced(self, output: f64) -> Result<Self, MotorError> {
        Ok(Self {
            voltage: error::voltage(self.voltage * output)?,
            ..self
        })
    }

    /// Share of rated voltage.
    pub fn voltage(&self) -> f64 {
        self.voltage
    }

    /// Frequency over nameplate frequency.
    pub fn frequency(&self) -> f64 {
        self.frequency
    }

    /// Share of rated torque that the same slip speed gives: `(V/f)²`.
    pub fn torque_share(&self) -> f64 {
        (self.voltage / self.frequency).powi(2)
    }
}

impl InductionMotor {
    /// Speed at which a running fan settles on a supply, as [`InductionMotor::speed_at`] for another frequency.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a density ratio outside 0.4 to 1.6, [`MotorError::Stalls`] where no torque is left.
    pub fn speed_on(&self, supply: Supply, density: f64) -> Result<AngularVelocity, MotorError> {
        let density = error::density(density)?;
        self.settle(
            supply.voltage / supply.frequency,
            supply.frequency,
            density,
            0.0,
        )
        .map(|share| self.synchronous() * share)
        .ok_or(MotorError::Stalls)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::motor::induction::tests::six_pole;
    use uom::si::angular_velocity::revolution_per_minute;

    fn supply(line: (f64, f64), nameplate: (f64, f64)) -> Result<Supply, MotorError> {
        let pair = |(volts, cycles)| {
            (
                ElectricPotential::new::<volt>(volts),
                Frequency::new::<hertz>(cycles),
            )
        };
        Supply::new(pair(line), pair(nameplate))
    }

    #[test]
    fn a_208_volt_line_is_nine_tenths_for_a_230_volt_motor() {
        let line = supply((208.0, 60.0), (230.0, 60.0)).unwrap();
        assert!((line.voltage() - 208.0 / 230.0).abs() < 1e-15);
        let motor = six_pole();
        assert_eq!(
            motor.speed_on(line, 1.0).ok(),
            motor.speed_at(line.voltage(), 1.0)
        );
        assert!(motor.speed_on(line, 1.0).unwrap() < motor.rated());
    }

    #[test]
    fn constant_field_keeps_the_slip_speed_for_a_torque() {
        // Machine textbooks: with V/f kept, the torque curve moves along the speed axis unchanged. The fan's load shrinks, so the
        // slip speed does too.
        let motor = six_pole();
        let line = supply((191.6666666666667, 50.0), (230.0, 60.0)).unwrap();
        assert!((line.torque_share() - 1.0).abs() < 1e-12);
        let rpm = motor
            .speed_on(line, 1.0)
            .unwrap()
            .get::<revolution_per_minute>();
        assert!(rpm < 1000.0 && rpm > 1000.0 - 125.0, "{rpm}");
    }

    #[test]
    fn fifty_hertz_at_the_same_voltage_strengthens_the_field() {
        let motor = six_pole();
        let line = supply((230.0, 50.0), (230.0, 60.0)).unwrap();
        assert!((line.torque_share() - 1.44).abs() < 1e-12);
        let sixty = supply((230.0, 60.0), (230.0, 50.0)).unwrap();
        assert!((sixty.torque_share() - 25.0 / 36.0).abs() < 1e-12);
        assert!(motor.speed_on(line, 1.0).unwrap() < motor.rated());
    }

    #[test]
    fn the_nameplate_supply_gives_the_nameplate_speed() {
        let rpm = six_pole()
            .speed_on(Supply::RATED, 1.0)
            .unwrap()
            .get::<revolution_per_minute>();
        assert!((rpm - 1075.0).abs() < 1e-6);
    }

    #[test]
    fn supplies_outside_the_range_are_refused() {
        assert!(matches!(
            supply((99.0, 60.0), (230.0, 60.0)),
            Err(MotorError::OutOfRange {
                what: MotorValue::LineVoltage,
                ..
            })
        ));
        assert!(matches!(
            supply((230.0, 60.0), (601.0, 60.0)),
            Err(MotorError::OutOfRange {
                what: MotorValue::NameplateVoltage,
                ..
            })
        ));
        assert!(matches!(
            supply((480.0, 60.0), (230.0, 60.0)),
            Err(MotorError::OutOfRange {
                what: MotorValue::VoltageShare,
                ..
            })
        ));
        assert!(supply((230.0, f64::NAN), (230.0, 60.0)).is_err());
        assert_eq!(
            six_pole().speed_on(Supply::RATED.reduced(0.0).unwrap(), 1.0),
            Err(MotorError::Stalls)
        );
    }
}
