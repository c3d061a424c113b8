//! Usual values, which stand in where nobody has answered. Common practice, no published source.

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::f64::{AngularVelocity, Frequency, TemperatureInterval, ThermodynamicTemperature};
use uom::si::frequency::hertz;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_refrigerant::Refrigerant;

use crate::input::{Duty, Sensing};

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

/// Outdoor temperature of the known point: the one that data sheets of air-cooled condensers are made for.
pub fn known_outdoor() -> ThermodynamicTemperature {
    celsius(35.0)
}

/// Evaporating temperature (dew) of a duty.
pub fn evaporating(duty: Duty) -> ThermodynamicTemperature {
    celsius(match duty {
        Duty::RoomCooling => 5.0,
        Duty::Cooler => -7.0,
        Duty::Freezer => -30.0,
    })
}

/// Condensing temperature (dew) over ambient of a duty: that of the middle of condensing, and half the glide on top.
pub fn over_ambient(duty: Duty, refrigerant: &Refrigerant) -> TemperatureInterval {
    let middle = TemperatureInterval::new::<kelvin_interval>(match duty {
        Duty::RoomCooling => 15.0,
        Duty::Cooler => 10.0,
        Duty::Freezer => 8.0,
    });
    // A refrigerant without a saturated state there fails later, with its reason.
    refrigerant
        .glide(celsius(40.0))
        .map_or(middle, |glide| middle + glide * 0.5)
}

/// Return air of a duty over its evaporating temperature.
pub fn return_air(duty: Duty, evaporating: ThermodynamicTemperature) -> ThermodynamicTemperature {
    evaporating
        + TemperatureInterval::new::<kelvin_interval>(match duty {
            Duty::RoomCooling => 19.0,
            Duty::Cooler | Duty::Freezer => 10.0,
        })
}

/// Relative humidity of the return air of a duty.
pub fn return_humidity(duty: Duty) -> f64 {
    match duty {
        Duty::RoomCooling => 0.5,
        Duty::Cooler | Duty::Freezer => 0.85,
    }
}

/// Superheat that compressors are rated at: 20 °F (AHRI 540, from memory).
pub fn sheet_superheat() -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(20.0 / 1.8)
}

/// Nameplate speed: a six-pole motor at about a tenth of slip.
pub fn rated_speed(frequency: Frequency) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(0.9 * 20.0 * frequency.get::<hertz>())
}

/// Sensing: a coil sensor, unless the refrigerant glides so far that the sensor's place would decide the reading.
pub fn sensing(refrigerant: &Refrigerant) -> Sensing {
    match refrigerant.glide(celsius(40.0)) {
        Ok(glide) if glide.get::<kelvin_interval>() > 2.0 => Sensing::LiquidPressure,
        _ => Sensing::CoilTemperature,
    }
}
