//! Plausible systems for the tests of laws.
#![allow(clippy::unwrap_used)] // a broken fixture should stop its test
#![allow(dead_code)] // each file of tests uses what it needs

use proptest::prelude::*;
use uom::si::f64::{AngularVelocity, Length, Power, TemperatureInterval, ThermodynamicTemperature};
use uom::si::{
    angular_velocity::revolution_per_minute, length::meter, power::watt,
    temperature_interval::kelvin as kelvin_interval, thermodynamic_temperature::degree_celsius,
};
use winterset_calc::input::{
    Bearing, BelowMinimum, Duty, Essentials, Load, Metering, MotorKind, Sensing,
};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{Given, Input};

pub fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

pub fn interval(span: f64) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(span)
}

pub fn usual(refrigerant: &str) -> Input {
    Input::assume(
        Essentials {
            refrigerant: Refrigerant::named(refrigerant).unwrap(),
            load: Load::Cooling(Power::new::<watt>(10_000.0)),
            outdoor_low: celsius(-25.0),
        },
        Given::assumed(Duty::RoomCooling),
    )
}

prop_compose! {
    pub fn plausible()(
        refrigerant in prop::sample::select(vec!["R-134a", "R-410A", "R-448A", "R-449A", "R-454B"]),
        duty in prop::sample::select(Duty::ALL),
        metering in prop::sample::select(Metering::ALL),
        motor in prop::sample::select(MotorKind::ALL),
        bearing in prop::sample::select(Bearing::ALL),
        sensing in prop::sample::select(Sensing::ALL),
        watts in 500.0..500_000.0,
        over_ambient in 5.0..16.0,
        known in 15.0..38.0,
        low in -45.0..10.0,
        elevation in -100.0..4000.0,
        range in 3.0..12.0,
        idle in 0.02..0.25,
        fans in 1_u32..6,
        modulated in 1_u32..9,
        recirculation in prop::sample::select(vec![0.0, 0.1]),
        dirt in prop::sample::select(vec![0.0, 0.15]),
        below_minimum in prop::sample::select(BelowMinimum::ALL),
        speed in prop::sample::select(vec![850.0, 1075.0, 1550.0]),
    ) -> Input {
        Input {
            over_ambient: Given::entered(interval(over_ambient)),
            known_outdoor: Given::entered(celsius(known)),
            motor: Given::entered(motor),
            bearing: Given::entered(bearing),
            metering: Given::entered(metering),
            sensing: Given::entered(sensing),
            elevation: Given::entered(Length::new::<meter>(elevation)),
            throttling_range: Given::entered(interval(range)),
            idle_airflow: Given::entered(idle),
            fans: Given::entered(fans),
            // Mostly all of them.
            modulated_fans: Some(modulated.min(fans)),
            recirculation: Given::entered(recirculation),
            dirt: Given::entered(dirt),
            below_minimum: Given::entered(below_minimum),
            rated_speed: Given::entered(AngularVelocity::new::<revolution_per_minute>(speed)),
            ..Input::assume(
                Essentials {
                    refrigerant: Refrigerant::named(refrigerant).unwrap(),
                    load: Load::Cooling(Power::new::<watt>(watts)),
                    outdoor_low: celsius(low),
                },
                Given::entered(duty),
            )
        }
    }
}
