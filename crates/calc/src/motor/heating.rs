//! Slip heating: what a fan motor slowed by voltage turns into heat in its rotor.
//!
//! Of the power that crosses the air gap the share `s` (slip) stays in the rotor. A fan asks for torque by the square of its
//! speed, so that the loss is `s·(1 − s)²` of the fan power at synchronous speed. It peaks at `s` = 1/3, two thirds of
//! synchronous speed, at 4/27. Losses in the stator and by the harmonics of a cut sine come on top and are not counted.
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer), slip losses of fan drives.

use uom::si::f64::{AngularVelocity, Power};

use super::InductionMotor;
use super::error::{self, MotorError, MotorValue, inside};

/// Slip at which the rotor loss peaks.
pub const PEAK_SLIP: f64 = 1.0 / 3.0;

/// Rotor loss at its peak over the fan power at synchronous speed.
pub const PEAK_SHARE: f64 = 4.0 / 27.0;

/// Share of the peak from which the warning band counts.
const BAND: f64 = 0.9;

/// Rotor loss over the fan power at synchronous speed in nameplate air: `(ρ/ρ₀)·s·(1 − s)²`.
///
/// The slip is held within 0 to 1.
pub fn slip_loss_share(slip: f64, density: f64) -> f64 {
    let slip = slip.clamp(0.0, 1.0);
    density * slip * (1.0 - slip).powi(2)
}

/// Shares of synchronous speed between which the loss is at least nine tenths of its peak (our choice of the band): 0.536 and
/// 0.782.
///
/// `s·(1 − s)² = k·4/27` has the roots `s = 2/3·(1 + cos θ)` with `cos 3θ = 2k − 1`.
pub fn warning_band() -> (f64, f64) {
    let third = (2.0 * BAND - 1.0).acos() / 3.0;
    let root = |turn: f64| 2.0 / 3.0 * (1.0 + (third + turn * std::f64::consts::TAU / 3.0).cos());
    (1.0 - root(2.0), 1.0 - root(1.0))
}

/// Rotor loss of a slowed fan against the loss that the nameplate point brings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SlipHeating {
    /// Rotor loss at the speed asked for.
    pub loss: Power,
    /// Rotor loss at the nameplate point.
    pub rated_loss: Power,
    /// Highest rotor loss on the way down to rest, at two thirds of synchronous speed, in the same air.
    pub highest: Power,
    /// Share of synchronous speed asked for.
    pub speed_share: f64,
}

impl SlipHeating {
    /// Loss above the one that the nameplate point brings; `None` where it is not above.
    pub fn excess(&self) -> Option<Power> {
        (self.loss > self.rated_loss).then(|| self.loss - self.rated_loss)
    }

    /// Loss over the loss at the nameplate point.
    pub fn ratio(&self) -> f64 {
        (self.loss / self.rated_loss).value
    }

    /// Whether the speed lies in the [`warning_band`] and heats the rotor more than the nameplate point does.
    pub fn in_warning_band(&self) -> bool {
        let (low, high) = warning_band();
        (low..=high).contains(&self.speed_share) && self.excess().is_some()
    }
}

impl InductionMotor {
    /// Rotor loss at a speed, from rest to synchronous speed, in air of a share of the nameplate density.
    ///
    /// `P = s·(1 − s)²·(ρ/ρ₀)·P_n / (1 − s_n)³`, with the nameplate shaft power taken as fully used by the fan.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a speed outside 0 to synchronous speed, a shaft power outside 1 W to 50 kW or a density
    /// ratio outside 0.4 to 1.6.
    pub fn slip_heating(
        &self,
        shaft: Power,
        speed: AngularVelocity,
        density: f64,
    ) -> Result<SlipHeating, MotorError> {
        let shaft = error::shaft(shaft)?;
        let density = error::density(density)?;
        inside(
            MotorValue::Speed,
            speed.value,
            (0.0, self.synchronous().value),
        )?;
        let speed_share = (speed / self.synchronous()).value;
        let at_synchronous = shaft / (1.0 - self.rated_slip).powi(3);
        Ok(SlipHeating {
            loss: at_synchronous * slip_loss_share(1.0 - speed_share, density),
            rated_loss: at_synchronous * slip_loss_share(self.rated_slip, 1.0),
            highest: at_synchronous * density * PEAK_SHARE,
            speed_share,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::motor::induction::tests::six_pole;
    use uom::si::power::watt;

    #[test]
    fn the_peak_is_the_textbooks() {
        // Machine textbooks: rotor loss of a fan drive peaks at 2/3 of synchronous speed, at 4/27 of the fan power at
        // synchronous speed.
        assert!((slip_loss_share(PEAK_SLIP, 1.0) - PEAK_SHARE).abs() < 1e-15);
        let motor = six_pole();
        let shaft = Power::new::<watt>(250.0);
        let at = |share: f64| {
            let speed = motor.synchronous() * share;
            motor.slip_heating(shaft, speed, 1.0).unwrap()
        };
        let peak = at(2.0 / 3.0);
        let fan_at_synchronous = shaft * (1200.0_f64 / 1075.0).powi(3);
        assert!(((peak.loss / fan_at_synchronous).value - 4.0 / 27.0).abs() < 1e-14);
        assert!((peak.loss / peak.highest - 1.0.into()).value.abs() < 1e-14);
        for step in 0..=300 {
            assert!(at(f64::from(step) / 300.0).loss <= peak.loss * (1.0 + 1e-14));
        }
    }

    #[test]
    fn the_nameplate_point_loses_slip_times_air_gap_power() {
        // Machine textbooks: rotor loss over shaft power is s/(1 − s).
        let motor = six_pole();
        let shaft = Power::new::<watt>(250.0);
        let rated = motor.slip_heating(shaft, motor.rated(), 1.0).unwrap();
        let slip = 125.0 / 1200.0;
        assert!(((rated.loss / shaft).value - slip / (1.0 - slip)).abs() < 1e-14);
        assert!((rated.ratio() - 1.0).abs() < 1e-14);
        let slowed = motor
            .slip_heating(shaft, motor.synchronous() * 0.65, 1.1)
            .unwrap();
        assert!(slowed.in_warning_band());
        let excess = slowed.excess().unwrap();
        assert!(
            ((slowed.rated_loss + excess) / slowed.loss - 1.0.into())
                .value
                .abs()
                < 1e-14
        );
    }

    #[test]
    fn the_band_is_where_nine_tenths_of_the_peak_are() {
        let (low, high) = warning_band();
        assert!(low < 2.0 / 3.0 && high > 2.0 / 3.0);
        for share in [low, high] {
            assert!((slip_loss_share(1.0 - share, 1.0) / PEAK_SHARE - 0.9).abs() < 1e-12);
        }
        let motor = six_pole();
        let shaft = Power::new::<watt>(250.0);
        let rated = motor.slip_heating(shaft, motor.rated(), 1.0).unwrap();
        assert!(!rated.in_warning_band());
    }

    #[test]
    fn what_no_motor_does_is_refused() {
        let motor = six_pole();
        let heating = |watts, share: f64, density| {
            motor.slip_heating(
                Power::new::<watt>(watts),
                motor.synchronous() * share,
                density,
            )
        };
        assert!(heating(250.0, 1.01, 1.0).is_err());
        assert!(heating(-250.0, 0.5, 1.0).is_err());
        assert!(heating(250.0, f64::NAN, 1.0).is_err());
        assert!(heating(250.0, 0.5, 0.0).is_err());
    }
}
