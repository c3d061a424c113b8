//! A phase-cut supply: r.m.s. voltage and firing angle on a resistive waveform, and what a meter shows of it.
//!
//! Source: single-phase a.c. voltage controller, power-electronics textbooks (Mohan, Undeland & Robbins; Rashid).

use std::f64::consts::PI;

use uom::si::angle::radian;
use uom::si::f64::Angle;

use crate::root::bracketed;

/// r.m.s. voltage as a share of the supply's, `√(1 − α/π + sin 2α / 2π)`, for a firing angle from 0 to 180°.
///
/// Angles outside are taken as the nearer end.
pub fn rms_fraction(firing: Angle) -> f64 {
    let alpha = firing.get::<radian>().clamp(0.0, PI);
    (1.0 - alpha / PI + (2.0 * alpha).sin() / (2.0 * PI))
        .max(0.0)
        .sqrt()
}

/// Firing angle that gives this share of the supply's r.m.s. voltage; shares outside 0 to 1 are taken as the nearer end.
pub fn firing_angle(rms: f64) -> Angle {
    let wanted = rms.clamp(0.0, 1.0);
    Angle::new::<radian>(bracketed(0.0, PI, |alpha| {
        wanted * wanted - rms_fraction(Angle::new::<radian>(alpha)).powi(2)
    }))
}

/// What a meter that averages the rectified wave, and is scaled for a sine, shows as a share of the supply's r.m.s. voltage:
/// `(1 + cos α) / 2`.
pub fn averaging_meter_fraction(firing: Angle) -> f64 {
    0.5 * (1.0 + firing.get::<radian>().clamp(0.0, PI).cos())
}

/// Firing angle at which such a meter shows this share of the supply's r.m.s. voltage, `arccos(2·m − 1)`; shares outside 0 to 1 are taken
/// as the nearer end.
pub fn firing_angle_by_averaging_meter(shown: f64) -> Angle {
    Angle::new::<radian>((2.0 * shown.clamp(0.0, 1.0) - 1.0).acos())
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::angle::degree;

    #[test]
    fn a_quarter_wave_gives_the_textbook_value() {
        // Power-electronics textbooks: 90 degrees gives 0.7071 of line voltage.
        let quarter = Angle::new::<degree>(90.0);
        assert!((rms_fraction(quarter) - 0.5_f64.sqrt()).abs() < 1e-15);
        assert!((firing_angle(0.5_f64.sqrt()).get::<degree>() - 90.0).abs() < 1e-9);
        assert!((averaging_meter_fraction(quarter) - 0.5).abs() < 1e-15);
    }

    #[test]
    fn the_angle_inverts_the_voltage() {
        for percent in 0..=100 {
            let share = f64::from(percent) / 100.0;
            assert!(
                (rms_fraction(firing_angle(share)) - share).abs() < 1e-9,
                "{share}"
            );
        }
    }

    #[test]
    fn a_meter_that_averages_leads_back_to_the_angle() {
        // Integral of the rectified sine from the firing angle on: 3/4 of the whole at 60 degrees, a half at 90, a quarter at 120.
        for (shown, degrees) in [
            (1.0, 0.0),
            (0.75, 60.0),
            (0.5, 90.0),
            (0.25, 120.0),
            (0.0, 180.0),
        ] {
            let found = firing_angle_by_averaging_meter(shown).get::<degree>();
            assert!((found - degrees).abs() < 1e-9, "{shown}: {found}");
        }
        assert_eq!(
            firing_angle_by_averaging_meter(1.5),
            Angle::new::<radian>(0.0)
        );
    }

    #[test]
    fn ends_hold_outside_the_half_wave() {
        assert_eq!(rms_fraction(Angle::new::<degree>(-10.0)), 1.0);
        assert_eq!(rms_fraction(Angle::new::<degree>(200.0)), 0.0);
        assert_eq!(firing_angle(2.0), Angle::new::<radian>(0.0));
    }
}
