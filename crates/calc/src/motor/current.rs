//! The currents of the motors on one controller.
//!
//! Full-load current is taken at every speed. What a cut sine makes of the r.m.s. current at a lower speed is not estimated
//! here: it hangs on the motor's winding, and around two thirds of synchronous speed it may stay near the full-load current.
//!
//! Source: NFPA 70 (National Electrical Code) article 430.24: several motors count with the sum of their full-load currents
//! and a quarter of the largest on top (from memory). It is written for conductors; using it for the controller is common practice.

use uom::si::electric_current::ampere;
use uom::si::f64::ElectricCurrent;

use super::error::{MotorError, MotorValue, inside};

/// Most motors on one controller.
const MOTORS: f64 = 32.0;

/// How a controller's rating stands to the motors on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fit {
    /// Rating at or above what is needed with the reserve.
    WithReserve,
    /// Rating above the sum, but short of the reserve.
    WithoutReserve,
    /// Rating below the sum.
    Over,
}

/// The motors on one controller against its rating.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Loading {
    /// Sum of the full-load currents.
    pub sum: ElectricCurrent,
    /// Rating needed: the sum and a quarter of the largest.
    pub needed: ElectricCurrent,
    /// Rating of the controller.
    pub rating: ElectricCurrent,
}

impl Loading {
    /// The full-load currents of 1 to 32 motors on a controller of a rated current.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for no motor or too many, a current outside 0.01 to 200 A, or a rating outside 0.1 to 1000 A.
    pub fn new(motors: &[ElectricCurrent], rating: ElectricCurrent) -> Result<Self, MotorError> {
        inside(MotorValue::Motors, motors.len() as f64, (1.0, MOTORS))?;
        inside(
            MotorValue::ControllerRating,
            rating.get::<ampere>(),
            (0.1, 1000.0),
        )?;
        let mut sum = 0.0;
        let mut largest: f64 = 0.0;
        for motor in motors {
            let amps = inside(
                MotorValue::FullLoadCurrent,
                motor.get::<ampere>(),
                (0.01, 200.0),
            )?;
            sum += amps;
            largest = largest.max(amps);
        }
        Ok(Self {
            sum: ElectricCurrent::new::<ampere>(sum),
            needed: ElectricCurrent::new::<ampere>(sum + 0.25 * largest),
            rating,
        })
    }

    /// Whether the controller carries the motors.
    pub fn fit(&self) -> Fit {
        if self.rating >= self.needed {
            Fit::WithReserve
        } else if self.rating >= self.sum {
            Fit::WithoutReserve
        } else {
            Fit::Over
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn amps(value: f64) -> ElectricCurrent {
        ElectricCurrent::new::<ampere>(value)
    }

    #[test]
    fn several_motors_count_as_the_code_says() {
        // NFPA 70 article 430.24 (from memory): 1.25 x 4 A + 3 A + 2 A = 10 A.
        let loading = |rating| Loading::new(&[amps(3.0), amps(4.0), amps(2.0)], amps(rating));
        let at_ten = loading(10.0).unwrap();
        assert_eq!((at_ten.sum, at_ten.needed), (amps(9.0), amps(10.0)));
        assert_eq!(at_ten.fit(), Fit::WithReserve);
        assert_eq!(loading(9.5).unwrap().fit(), Fit::WithoutReserve);
        assert_eq!(loading(8.0).unwrap().fit(), Fit::Over);
    }

    #[test]
    fn no_motor_and_no_current_are_refused() {
        assert!(Loading::new(&[], amps(10.0)).is_err());
        assert!(Loading::new(&[amps(1.0); 33], amps(10.0)).is_err());
        assert!(Loading::new(&[amps(f64::NAN)], amps(10.0)).is_err());
        assert!(Loading::new(&[amps(1.0)], amps(0.0)).is_err());
    }
}
