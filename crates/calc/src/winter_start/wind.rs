//! Wind on an idle condenser fan: how fast and which way it turns, and what its start takes then.
//!
//! The wind's pressure `k·ρ·v²/2` drives air through coil and fan; the coil alone resists with `Δp₀·(V/V₀)²`, and the idle fan turns with the air:
//! `n/n₀ = V/V₀ = √(k·ρ·v² / (2·Δp₀·ρ/ρ₀))`. The fan resists and slips too, so that this is the upper end. Wind onto the outlet turns the fan backwards.
//!
//! A motor that is started while it is driven backwards has first to stop it, see [`InductionMotor::start_time`]. A direct current in the windings
//! brakes it, but holds with no torque at rest: it leaves the fan creeping at the speed at which it gives the wind's torque. That torque follows
//! `T = T_b·2 / (n/n_b + n_b/n)`. A winding on direct current keeps its current and not its flux as the rotor turns, which lowers the greatest torque
//! to half the magnetising power over synchronous speed; the slope at rest is that of the motor at its slip in the same flux.
//!
//! Source: ASHRAE Handbook Fundamentals, airflow around buildings chapter, for the pressure of wind on both sides; electrical machine
//! textbooks (Fitzgerald, Kingsley & Umans; Fischer) for direct-current braking.

use uom::si::f64::{AngularVelocity, MassDensity, Pressure, Velocity};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::velocity::meter_per_second;

use super::error::{StartError, StartInput, within};
use crate::explain::Given;
use crate::motor::{InductionMotor, MotorError, Start, StartTime, windmill_speed};
use crate::root::bracketed;

/// Difference of wind pressure between the windward and the leeward side over the dynamic pressure: 0.8 in front and 0.5 behind (ASHRAE
/// Handbook Fundamentals, airflow around buildings; from memory).
pub fn usual_wind_coefficient() -> f64 {
    1.3
}

/// Density that the pressure drop of a coil is stated for, kg/m³.
const STANDARD_DENSITY: f64 = 1.2;

/// Magnetising power of a small motor over its shaft power. Common practice, no published source: 0.5 to 1.
const MAGNETISING: f64 = 0.6;

/// Largest share of full speed that the models of a start against the wind hold for.
const MOST_BACKWARDS: f64 = 0.5;

/// Which side of the condenser the wind meets.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WindOn {
    /// The outlet, against the airflow of the fan.
    Outlet,
    /// The inlet, or across an upward outlet that it sucks at: with the airflow of the fan.
    Inlet,
}

/// Wind on a condenser with an idle fan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wind {
    /// Speed of the wind: 0 to 60 m/s.
    pub speed: Velocity,
    /// Which side it meets.
    pub on: WindOn,
    /// Pressure difference over the dynamic pressure: 0 to 2; see [`usual_wind_coefficient`]. Less behind a baffle or in the lee.
    pub coefficient: Given<f64>,
    /// Density of the air: 0.4 to 2 kg/m³.
    pub density: MassDensity,
    /// Pressure drop of the coil at full airflow in air of 1.2 kg/m³: 5 to 1000 Pa.
    pub coil_drop: Pressure,
}

/// What wind makes of an idle fan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Turn {
    /// The way that it blows, at up to this share of full speed.
    Forwards(f64),
    /// The other way, at up to this share of full speed.
    Backwards(f64),
    /// It stands.
    Still,
}

impl Wind {
    /// Direction and speed that the wind can turn an idle fan with, as a share of full speed; it can be above 1 in a storm.
    ///
    /// # Errors
    /// [`StartError::OutOfRange`].
    pub fn turn(&self) -> Result<Turn, StartError> {
        let speed = self.speed.get::<meter_per_second>();
        within(StartInput::WindSpeed, speed, (0.0, 60.0))?;
        let coefficient = self.coefficient.value;
        within(StartInput::WindCoefficient, coefficient, (0.0, 2.0))?;
        let density = self.density.get::<kilogram_per_cubic_meter>();
        within(StartInput::AirDensity, density, (0.4, 2.0))?;
        let drop = self.coil_drop.get::<pascal>();
        within(StartInput::CoilDrop, drop, (5.0, 1000.0))?;
        // Density stands in the wind's pressure and in the coil's, and cancels.
        let share = (coefficient * STANDARD_DENSITY * speed * speed / (2.0 * drop)).sqrt();
        Ok(if share == 0.0 {
            Turn::Still
        } else if self.on == WindOn::Outlet {
            Turn::Backwards(share)
        } else {
            Turn::Forwards(share)
        })
    }
}

/// What a start takes in the wind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AgainstWind {
    /// The fan turns its own way or stands: as in still air. A frequency drive has to catch a fan that turns already.
    Usual(StartTime),
    /// The motor stops and turns the fan itself within the usual start boost.
    Boost(StartTime),
    /// The motor does it, but not within the usual start boost: brake the fan first, or give it full output for this long.
    LongerBoost(StartTime),
    /// The motor cannot do it from the line: the fan must be held or screened from the wind.
    MustBeHeld,
}

/// What a start takes in the wind; `start` is the one in still air, its own windmilling speed is not looked at.
///
/// # Errors
/// [`StartError::OutOfRange`], [`StartError::Motor`].
pub fn against_wind(
    motor: &InductionMotor,
    start: &Start,
    wind: &Wind,
) -> Result<AgainstWind, StartError> {
    let backwards = match wind.turn()? {
        Turn::Backwards(share) if share > MOST_BACKWARDS => return Ok(AgainstWind::MustBeHeld),
        Turn::Backwards(share) => windmill_speed(motor.rated(), share)?,
        Turn::Forwards(_) | Turn::Still => {
            let still = Start {
                windmill: AngularVelocity::default(),
                ..*start
            };
            return Ok(AgainstWind::Usual(motor.start_time(&still)?));
        }
    };
    let windy = Start {
        windmill: backwards,
        ..*start
    };
    match motor.start_time(&windy) {
        Ok(time) if time.is_usual() => Ok(AgainstWind::Boost(time)),
        Ok(time) => Ok(AgainstWind::LongerBoost(time)),
        Err(MotorError::WillNotStart { .. } | MotorError::NeverReaches { .. }) => {
            Ok(AgainstWind::MustBeHeld)
        }
        Err(error) => Err(error.into()),
    }
}

/// What a direct current in the windings does to a fan in the wind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hold {
    /// It leaves the fan creeping at this speed.
    Creeps(AngularVelocity),
    /// Its most torque is less than the wind's.
    TooWeak {
        /// Flux over that at rated voltage that would just do.
        needed: f64,
    },
}

/// What a direct current holds against a wind that turns the idle fan at a share of full speed (0 to 2).
///
/// `flux` is that of the direct current over that at rated voltage and frequency, 0 to 1.5; torque goes with its square. The wind's torque is the one
/// that turns the idle fan at its speed, `ρ/ρ₀·share²` of rated torque with `density` as `ρ/ρ₀`, 0.4 to 1.6, as in [`InductionMotor::start_time`].
///
/// # Errors
/// [`StartError::OutOfRange`].
pub fn dc_hold(
    motor: &InductionMotor,
    turn: &Turn,
    density: f64,
    flux: f64,
) -> Result<Hold, StartError> {
    within(StartInput::HoldFlux, flux, (0.0, 1.5))?;
    within(StartInput::DensityRatio, density, (0.4, 1.6))?;
    let share = match *turn {
        Turn::Still => 0.0,
        Turn::Forwards(share) | Turn::Backwards(share) => share,
    };
    within(StartInput::TurnShare, share, (0.0, 2.0))?;
    let wind = density * share * share;
    // Shares of rated torque and of synchronous speed.
    let (slip, breakdown) = motor.breakdown();
    let strongest = 0.5 * MAGNETISING;
    let at = slip * strongest / breakdown;
    let braking = |speed: f64| {
        let relative = speed / at;
        flux * flux * strongest * 2.0 * relative / (1.0 + relative * relative)
    };
    if wind > braking(at) {
        return Ok(Hold::TooWeak {
            needed: (wind / strongest).sqrt(),
        });
    }
    let speed = bracketed(0.0, at, |speed| braking(speed) - wind);
    Ok(Hold::Creeps(motor.synchronous() * speed))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::{Bearing, MotorKind};
    use crate::motor::{Friction, usual_inertia};
    use uom::si::angular_velocity::revolution_per_minute;
    use uom::si::f64::{Frequency, Length, Power, ThermodynamicTemperature};
    use uom::si::frequency::hertz;
    use uom::si::length::meter;
    use uom::si::power::watt;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn motor() -> InductionMotor {
        InductionMotor::from_nameplate(
            MotorKind::PermanentSplitCapacitor,
            AngularVelocity::new::<revolution_per_minute>(1075.0),
            Frequency::new::<hertz>(60.0),
        )
        .unwrap()
    }

    fn start() -> Start {
        let shaft = Power::new::<watt>(250.0);
        let outdoor = ThermodynamicTemperature::new::<degree_celsius>(-15.0);
        Start {
            inertia: usual_inertia(Length::new::<meter>(0.6), shaft).unwrap(),
            shaft,
            voltage: 1.0,
            density: 1.14,
            friction: Friction::usual(Bearing::Ball, outdoor).unwrap(),
            windmill: AngularVelocity::default(),
            to: motor().rated() * 0.85,
        }
    }

    fn wind(speed: f64, on: WindOn) -> Wind {
        Wind {
            speed: Velocity::new::<meter_per_second>(speed),
            on,
            coefficient: Given::assumed(usual_wind_coefficient()),
            density: MassDensity::new::<kilogram_per_cubic_meter>(1.37),
            coil_drop: Pressure::new::<pascal>(60.0),
        }
    }

    #[test]
    fn the_share_is_the_root_of_the_pressures() {
        // 1.3 · 1.2 · 4² / 2 = 12.48 Pa against 60 Pa.
        let share = (12.48_f64 / 60.0).sqrt();
        let turn = |speed, on| wind(speed, on).turn().unwrap();
        assert!(
            matches!(turn(4.0, WindOn::Outlet), Turn::Backwards(s) if (s - share).abs() < 1e-12)
        );
        assert!(
            matches!(turn(8.0, WindOn::Inlet), Turn::Forwards(s) if (s - 2.0 * share).abs() < 1e-12)
        );
        assert_eq!(turn(0.0, WindOn::Outlet), Turn::Still);
    }

    #[test]
    fn more_wind_takes_more_until_the_fan_must_be_held() {
        let against = |speed, on| against_wind(&motor(), &start(), &wind(speed, on)).unwrap();
        let AgainstWind::Usual(still) = against(6.0, WindOn::Inlet) else {
            panic!();
        };
        let AgainstWind::Boost(light) = against(1.5, WindOn::Outlet) else {
            panic!();
        };
        let (AgainstWind::Boost(strong) | AgainstWind::LongerBoost(strong)) =
            against(4.0, WindOn::Outlet)
        else {
            panic!();
        };
        assert!(still.time < light.time && light.time < strong.time);
        assert_eq!(against(15.0, WindOn::Outlet), AgainstWind::MustBeHeld);
        let weak = Start {
            voltage: 0.2,
            ..start()
        };
        let held = against_wind(&motor(), &weak, &wind(4.0, WindOn::Outlet));
        assert_eq!(held, Ok(AgainstWind::MustBeHeld));
    }

    #[test]
    fn direct_current_lets_the_fan_creep() {
        let motor = motor();
        let hold = |share, flux| dc_hold(&motor, &Turn::Backwards(share), 1.0, flux).unwrap();
        assert_eq!(
            dc_hold(&motor, &Turn::Still, 1.0, 1.0),
            Ok(Hold::Creeps(AngularVelocity::default()))
        );
        let (Hold::Creeps(slow), Hold::Creeps(fast)) = (hold(0.2, 1.0), hold(0.3, 1.0)) else {
            panic!();
        };
        assert!(slow.value > 0.0 && slow < fast && fast < motor.rated() * 0.1);
        let Hold::TooWeak { needed } = hold(0.5, 0.5) else {
            panic!();
        };
        assert!(matches!(hold(0.5, needed * 1.001), Hold::Creeps(_)));
        assert!(matches!(hold(0.5, needed * 0.999), Hold::TooWeak { .. }));
    }

    #[test]
    fn what_cannot_be_is_named() {
        let storm = wind(f64::NAN, WindOn::Outlet).turn();
        assert!(matches!(
            storm,
            Err(StartError::OutOfRange {
                input: StartInput::WindSpeed,
                ..
            })
        ));
        assert!(dc_hold(&motor(), &Turn::Forwards(3.0), 1.0, 1.0).is_err());
        let no_inertia = Start {
            inertia: start().inertia * 0.0,
            ..start()
        };
        assert!(matches!(
            against_wind(&motor(), &no_inertia, &wind(3.0, WindOn::Outlet)),
            Err(StartError::Motor(_))
        ));
    }
}
