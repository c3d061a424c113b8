//! How long a fan takes from rest, or from turning backwards in the wind, to the speed that it needs.
//!
//! `J·dω/dt = T_motor(ω) − T_load(ω) − T_wind − T_friction`. No term depends on time, so that the time is the plain integral
//! `t = ∫ J dω / T(ω)`: one pass of Gauss-Legendre quadrature, with no step to control and nothing that could run away. The
//! range is cut where the integrand has a bend: at rest and at the breakdown slip.
//!
//! The wind that drives an idle fan backwards is taken as a constant torque: the one that holds the fan at that speed.
//!
//! Source: electrical machine textbooks (Fitzgerald, Kingsley & Umans; Fischer), run-up of a drive. The estimates of inertia
//! are common practice, no published source.

use uom::si::f64::{AngularVelocity, Length, MomentOfInertia, Power, Time};
use uom::si::length::meter;
use uom::si::moment_of_inertia::kilogram_square_meter;
use uom::si::power::kilowatt;
use uom::si::time::second;

use super::error::{self, MotorError, MotorValue, inside};
use super::{Friction, InductionMotor};

/// Start boosts that controllers usually offer: 0.1 to 5 s. Common practice, no published source.
pub fn usual_boost_range() -> (Time, Time) {
    (Time::new::<second>(0.1), Time::new::<second>(5.0))
}

/// Inertia of an axial fan and its motor, from the fan's diameter and the motor's shaft power.
///
/// `J = 0.56·D⁵ + 0.003·P`, in kg m², m and kW: a light-metal wheel of 9 kg/m³ times the diameter cubed, its mass at a
/// quarter of the diameter, and the rotor of a small motor. An estimate, common practice, no published source; within about
/// a factor of two.
///
/// # Errors
/// [`MotorError::OutOfRange`] for a diameter outside 0.1 to 2 m or a shaft power outside 1 W to 50 kW.
pub fn usual_inertia(diameter: Length, shaft: Power) -> Result<MomentOfInertia, MotorError> {
    let diameter = inside(MotorValue::FanDiameter, diameter.get::<meter>(), (0.1, 2.0))?;
    let kilowatts = error::shaft(shaft)?.get::<kilowatt>();
    Ok(MomentOfInertia::new::<kilogram_square_meter>(
        0.56 * diameter.powi(5) + 0.003 * kilowatts,
    ))
}

/// Speed at which air that is blown backwards through an idle fan turns it: the share of its own airflow that passes is the share
/// of its speed.
///
/// Common practice, no published source; the fan slips, so this is the upper end.
///
/// # Errors
/// [`MotorError::OutOfRange`] for a share of the airflow outside 0 to 0.5.
pub fn windmill_speed(full: AngularVelocity, backward: f64) -> Result<AngularVelocity, MotorError> {
    Ok(full * inside(MotorValue::AirflowShare, backward, (0.0, 0.5))?)
}

/// A start to work out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Start {
    /// Inertia of fan and motor; [`usual_inertia`] where it is not known. 1e-6 to 100 kg m².
    pub inertia: MomentOfInertia,
    /// Nameplate shaft power. 1 W to 50 kW.
    pub shaft: Power,
    /// Share of rated voltage during the start, usually all of it. 0 to 1.5.
    pub voltage: f64,
    /// Density of the air over the nameplate's. 0.4 to 1.6.
    pub density: f64,
    /// Friction of the bearings in this cold.
    pub friction: Friction,
    /// Speed at which the wind drives the idle fan backwards; zero in still air. Up to half of nameplate speed.
    pub windmill: AngularVelocity,
    /// The speed that it needs. Above zero, below synchronous speed.
    pub to: AngularVelocity,
}

/// What a start takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StartTime {
    /// Time until the speed is there.
    pub time: Time,
    /// Part of it that the wind costs.
    pub by_wind: Time,
}

impl StartTime {
    /// Whether the time lies within [`usual_boost_range`].
    pub fn is_usual(&self) -> bool {
        let (low, high) = usual_boost_range();
        self.time >= low && self.time <= high
    }
}

/// The torques of a start, by the speed as a share of synchronous speed.
struct Torques<'a> {
    motor: &'a InductionMotor,
    voltage: f64,
    density: f64,
    friction: Friction,
    wind: f64,
}

impl Torques<'_> {
    /// Torque left to speed up with, over rated torque.
    fn surplus(&self, speed: f64) -> f64 {
        let air = self.motor.load_at(self.density, speed) * speed.signum();
        let friction = self.friction.running() * if speed < 0.0 { -1.0 } else { 1.0 };
        let driving = self.voltage.powi(2) * self.motor.starting_torque(1.0 - speed);
        driving - air - self.wind - friction
    }

    fn checked(&self, speed: f64) -> Result<f64, MotorError> {
        let surplus = self.surplus(speed);
        if surplus > 0.0 {
            Ok(surplus)
        } else {
            Err(MotorError::NeverReaches {
                stuck: self.motor.synchronous() * speed,
            })
        }
    }

    /// `∫ dν / T` between two speeds.
    fn integral(&self, from: f64, to: f64) -> Result<f64, MotorError> {
        const PANELS: u32 = 48;
        // Five-point Gauss-Legendre rule (Abramowitz & Stegun, table 25.4).
        const NODES: [(f64, f64); 5] = [
            (0.0, 0.568_888_888_888_888_9),
            (-0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
            (0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
            (-0.906_179_845_938_664, 0.236_926_885_056_189_1),
            (0.906_179_845_938_664, 0.236_926_885_056_189_1),
        ];
        let half = 0.5 * (to - from) / f64::from(PANELS);
        let mut sum = 0.0;
        for panel in 0..PANELS {
            let middle = from + half * f64::from(2 * panel + 1);
            for (node, weight) in NODES {
                sum += weight / self.checked(middle + half * node)?;
            }
        }
        Ok(sum * half)
    }

    fn time(&self, from: f64, to: f64) -> Result<f64, MotorError> {
        self.checked(to)?;
        let bend = 1.0 - self.motor.breakdown_slip;
        let mut time = 0.0;
        for (low, high) in [(from, 0.0), (0.0, to.min(bend)), (bend, to)] {
            if high > low {
                time += self.integral(low, high)?;
            }
        }
        Ok(time)
    }
}

impl InductionMotor {
    /// Time from rest, or from turning backwards in the wind, to a speed. Not held within any controller's range.
    ///
    /// # Errors
    /// [`MotorError::OutOfRange`] for a value outside what [`Start`] states, [`MotorError::WillNotStart`] where the bearing does
    /// not break loose, [`MotorError::NeverReaches`] where the torque is spent before the speed is there.
    pub fn start_time(&self, start: &Start) -> Result<StartTime, MotorError> {
        let inertia = inside(MotorValue::Inertia, start.inertia.value, (1e-6, 100.0))?;
        let shaft = error::shaft(start.shaft)?;
        let voltage = error::voltage(start.voltage)?;
        let density = error::density(start.density)?;
        let synchronous = self.synchronous().value;
        let rated = self.rated().value;
        let backwards = inside(
            MotorValue::WindmillSpeed,
            start.windmill.value,
            (0.0, 0.5 * rated),
        )? / synchronous;
        let to = inside(MotorValue::Speed, start.to.value, (0.0, synchronous))? / synchronous;

        let windy = |wind: f64| Torques {
            motor: self,
            voltage,
            density,
            friction: start.friction,
            wind,
        };
        // An idle fan in still air is held by nothing, so that there is no friction for the wind to overcome.
        let wind = if backwards > 0.0 {
            self.load_at(density, backwards) + start.friction.running()
        } else {
            0.0
        };
        let starts = ((start.friction.breakaway() + wind) / self.starting_torque(1.0)).sqrt();
        if voltage < starts || voltage == 0.0 {
            return Err(MotorError::WillNotStart {
                given: voltage,
                starts,
            });
        }
        // J·ω_s over rated torque, with rated torque = shaft power over nameplate speed.
        let scale = inertia * synchronous * rated / shaft.value;
        let time = scale * windy(wind).time(-backwards, to)?;
        let still = scale * windy(0.0).time(0.0, to)?;
        Ok(StartTime {
            time: Time::new::<second>(time),
            by_wind: Time::new::<second>((time - still).max(0.0)),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::Bearing;
    use crate::motor::induction::tests::six_pole;
    use uom::si::f64::ThermodynamicTemperature;
    use uom::si::power::watt;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn usual(bearing: Bearing, celsius: f64, diameter: f64, watts: f64) -> Start {
        let outdoor = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        let shaft = Power::new::<watt>(watts);
        Start {
            inertia: usual_inertia(Length::new::<meter>(diameter), shaft).unwrap(),
            shaft,
            voltage: 1.0,
            density: 293.15 / (273.15 + celsius),
            friction: Friction::usual(bearing, outdoor).unwrap(),
            windmill: AngularVelocity::default(),
            to: six_pole().rated() * 0.85,
        }
    }

    fn seconds(start: &Start) -> f64 {
        six_pole().start_time(start).unwrap().time.get::<second>()
    }

    #[test]
    fn condenser_fans_start_within_the_usual_boost() {
        // Common practice, no published source: 0.1 to 5 s.
        for (diameter, watts) in [(0.35, 60.0), (0.45, 120.0), (0.55, 190.0), (0.6, 250.0)] {
            for celsius in [35.0, 0.0, -25.0] {
                for bearing in [Bearing::Ball, Bearing::Sleeve] {
                    let start = usual(bearing, celsius, diameter, watts);
                    let time = six_pole().start_time(&start).unwrap();
                    assert!(time.is_usual(), "{diameter} m at {celsius} °C: {time:?}");
                    assert_eq!(time.by_wind.value, 0.0);
                }
            }
        }
    }

    #[test]
    fn time_goes_with_inertia_over_power() {
        // J·ω²/P by definition, whatever the torque curve.
        let start = usual(Bearing::Ball, 20.0, 0.6, 250.0);
        let heavier = Start {
            inertia: start.inertia * 3.0,
            ..start
        };
        assert!((seconds(&heavier) / seconds(&start) - 3.0).abs() < 1e-12);
    }

    #[test]
    fn cold_grease_low_voltage_and_wind_take_longer() {
        let start = usual(Bearing::Sleeve, -20.0, 0.6, 250.0);
        let warm = usual(Bearing::Sleeve, 20.0, 0.6, 250.0);
        assert!(seconds(&start) > seconds(&warm));
        let low = Start {
            voltage: 0.95,
            to: six_pole().rated() * 0.8,
            ..start
        };
        let full = Start {
            voltage: 1.0,
            ..low
        };
        assert!(seconds(&low) > seconds(&full));
        let windy = Start {
            windmill: windmill_speed(six_pole().rated(), 0.2).unwrap(),
            ..start
        };
        let time = six_pole().start_time(&windy).unwrap();
        assert!(time.by_wind.get::<second>() > 0.0);
        assert!(
            (time.time.get::<second>() - time.by_wind.get::<second>() - seconds(&start)).abs()
                < 1e-12
        );
    }

    #[test]
    fn a_start_that_cannot_be_is_refused() {
        let motor = six_pole();
        let start = usual(Bearing::Sleeve, -40.0, 0.6, 250.0);
        let low = Start {
            voltage: 0.5,
            ..start
        };
        assert!(matches!(
            motor.start_time(&low),
            Err(MotorError::WillNotStart { .. })
        ));
        let too_fast = Start {
            to: motor.synchronous() * 0.99,
            ..start
        };
        assert!(matches!(
            motor.start_time(&too_fast),
            Err(MotorError::NeverReaches { .. })
        ));
        let no_number = Start {
            inertia: MomentOfInertia::new::<kilogram_square_meter>(f64::NAN),
            ..start
        };
        assert!(motor.start_time(&no_number).is_err());
        let storm = Start {
            windmill: motor.rated(),
            ..start
        };
        assert!(motor.start_time(&storm).is_err());
        assert!(windmill_speed(motor.rated(), -0.1).is_err());
    }
}
