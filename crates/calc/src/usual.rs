//! Usual values, which stand in where nobody has answered. Common practice, no published source.

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::f64::{
    AngularVelocity, Frequency, Length, Power, Pressure, TemperatureInterval,
    ThermodynamicTemperature, VolumeRate,
};
use uom::si::frequency::hertz;
use uom::si::length::meter;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_refrigerant::Refrigerant;

use crate::compressor::capacity_steps::{CapacitySteps, Control, MOST_COMPRESSORS, Machine};
use crate::input::{CapacityControl, Duty, Sensing};

/// Speed of the air through a condenser fan, m/s.
const FAN_AIR_SPEED: f64 = 7.0;

/// Fastest that the tips of a condenser fan move, m/s: faster ones are too loud.
const TIP_SPEED: f64 = 45.0;

/// Shaft power over electrical power of a small fan motor.
const MOTOR_EFFICIENCY: f64 = 0.6;

/// Stages of compressors that are switched one after another.
pub const COMPRESSOR_STAGES: u32 = 2;

/// Share of its displacement that a compressor keeps when it is unloaded: half of its cylinders, or of its scroll's pockets.
const UNLOADED: f64 = 0.5;

/// Lowest speed of a compressor with a drive over its nominal one, at which its oil still gets where it is needed.
const LOWEST_SPEED: f64 = 0.3;

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

/// Lowest share of the full load that compressors of this control run at steadily, 0 to 1: all of it for one that stops and starts, one of `stages` of
/// equal size (2 to 6, else the nearest of these), half of it unloaded, three tenths with variable speed.
pub fn lowest_load(control: CapacityControl, stages: u32) -> f64 {
    let most = u32::try_from(MOST_COMPRESSORS).unwrap_or(COMPRESSOR_STAGES);
    let one = |control| vec![Machine { size: 1.0, control }];
    let machines = match control {
        CapacityControl::OnOff => one(Control::Fixed),
        CapacityControl::Stages => (0..stages.clamp(COMPRESSOR_STAGES, most))
            .flat_map(|_| one(Control::Fixed))
            .collect(),
        CapacityControl::Unloading => one(Control::Unloading(vec![UNLOADED])),
        CapacityControl::VariableSpeed => one(Control::Speed {
            lowest: LOWEST_SPEED,
            highest: 1.0,
        }),
    };
    CapacitySteps::new(&machines).map_or(1.0, |steps| steps.lowest())
}

/// Diameter of a condenser fan by its airflow at full speed: air at 7 m/s, and tips no faster than 45 m/s at the nameplate speed; 0.1 to 2 m.
pub fn fan_diameter(airflow: VolumeRate, rated: AngularVelocity) -> Length {
    let by_air = (4.0 * airflow.value / (std::f64::consts::PI * FAN_AIR_SPEED)).sqrt();
    let by_tips = 2.0 * TIP_SPEED / rated.value;
    Length::new::<meter>(by_air.min(by_tips).clamp(0.1, 2.0))
}

/// Shaft power of a fan motor by its electrical power: six tenths of it; 1 W to 50 kW.
pub fn shaft_power(electrical: Power) -> Power {
    Power::new::<watt>((MOTOR_EFFICIENCY * electrical.get::<watt>()).clamp(1.0, 50_000.0))
}

/// Pressure drop of a condenser coil at full airflow in standard air: 60 Pa.
pub fn coil_drop() -> Pressure {
    Pressure::new::<pascal>(60.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn lowest(control: CapacityControl, stages: u32, wanted: f64) {
        let found = lowest_load(control, stages);
        assert!((found - wanted).abs() < 1e-12, "{found}");
    }

    /// By hand: one of so many stages of equal size. The other shares are common practice, no published source.
    #[test]
    fn the_lowest_load_follows_from_the_control() {
        lowest(CapacityControl::OnOff, 2, 1.0);
        lowest(CapacityControl::OnOff, 6, 1.0);
        lowest(CapacityControl::Stages, 2, 0.5);
        lowest(CapacityControl::Stages, 3, 1.0 / 3.0);
        lowest(CapacityControl::Stages, 6, 1.0 / 6.0);
        lowest(CapacityControl::Unloading, 2, 0.5);
        lowest(CapacityControl::VariableSpeed, 2, 0.3);
    }

    #[test]
    fn stages_that_cannot_be_are_the_nearest_that_can() {
        lowest(CapacityControl::Stages, 0, 0.5);
        lowest(CapacityControl::Stages, u32::MAX, 1.0 / 6.0);
    }
}
