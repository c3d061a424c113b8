//! Friction of the motor's bearings, at rest and turning, warm and cold.
//!
//! Source: common practice, no published source, for every figure here: rolling bearings turn easily at rest and sleeve bearings
//! stick until their oil film forms; grease and oil stiffen severalfold in deep cold.

use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::thermodynamic_temperature::kelvin;

use super::error::{MotorError, MotorValue, inside};
use crate::input::Bearing;

/// Bearing friction as shares of rated torque.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Friction {
    running: f64,
    breakaway: f64,
}

/// Bearings at room temperature and above stay as they are; below, friction doubles for every 20 K.
const WARM_CELSIUS: f64 = 20.0;
const DOUBLING_K: f64 = 20.0;

impl Friction {
    /// No friction at all: what is left is the torque of the air.
    pub const NONE: Self = Self {
        running: 0.0,
        breakaway: 0.0,
    };

    /// Friction as measured or typed: turning (0 to 1) and at rest (from the turning one to 2).
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`].
    pub fn new(running: f64, breakaway: f64) -> Result<Self, MotorError> {
        let running = inside(MotorValue::RunningFriction, running, (0.0, 1.0))?;
        let breakaway = inside(MotorValue::Breakaway, breakaway, (running, 2.0))?;
        Ok(Self { running, breakaway })
    }

    /// What is usual for a bearing at an outdoor temperature from -60 to 70 °C: 1 % of rated torque turning and 2 % at rest for
    /// a ball bearing, 2 % and 5 % for a sleeve bearing, both times [`cold_factor`].
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] outside that temperature range.
    pub fn usual(bearing: Bearing, outdoor: ThermodynamicTemperature) -> Result<Self, MotorError> {
        let factor = cold_factor(outdoor)?;
        let (running, breakaway) = match bearing {
            Bearing::Ball => (0.01, 0.02),
            Bearing::Sleeve => (0.02, 0.05),
        };
        Self::new(running * factor, breakaway * factor)
    }

    /// Share of rated torque that a turning bearing takes.
    pub fn running(&self) -> f64 {
        self.running
    }

    /// Share of rated torque that breaks a resting bearing loose.
    pub fn breakaway(&self) -> f64 {
        self.breakaway
    }
}

/// How much more friction the cold brings: `2^((20 °C − t) / 20 K)` below 20 °C, one above.
///
/// # Errors
/// [`MotorError::OutOfRange`] outside -60 to 70 °C.
pub fn cold_factor(outdoor: ThermodynamicTemperature) -> Result<f64, MotorError> {
    inside(
        MotorValue::Temperature,
        outdoor.get::<kelvin>(),
        (213.15, 343.15),
    )?;
    let below = (WARM_CELSIUS - outdoor.get::<degree_celsius>()).max(0.0);
    Ok((below / DOUBLING_K).exp2())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    #[test]
    fn cold_stiffens_and_warmth_does_not_thin() {
        // Common practice, no published source: severalfold at -40 °C.
        assert_eq!(cold_factor(celsius(35.0)).unwrap(), 1.0);
        assert!((cold_factor(celsius(-40.0)).unwrap() - 8.0).abs() < 1e-9);
        for bearing in [Bearing::Ball, Bearing::Sleeve] {
            let warm = Friction::usual(bearing, celsius(20.0)).unwrap();
            let cold = Friction::usual(bearing, celsius(-20.0)).unwrap();
            assert!(cold.running() > warm.running() && cold.breakaway() > warm.breakaway());
            assert!(warm.breakaway() > warm.running());
        }
    }

    #[test]
    fn impossible_friction_is_refused() {
        assert!(matches!(
            Friction::new(0.1, 0.05),
            Err(MotorError::OutOfRange {
                what: MotorValue::Breakaway,
                ..
            })
        ));
        assert!(Friction::new(f64::NAN, 0.05).is_err());
        assert!(cold_factor(celsius(-61.0)).is_err());
    }
}
