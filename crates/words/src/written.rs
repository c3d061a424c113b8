//! How amounts are written that no field asks for: charge, volume, energy, enthalpy and hours.

use uom::si::available_energy::{btu_it_per_pound, kilojoule_per_kilogram};
use uom::si::energy::kilowatt_hour;
use uom::si::f64::{AvailableEnergy, Energy, Frequency, Mass, Power, Time, Velocity, Volume};
use uom::si::frequency::cycle_per_hour;
use uom::si::mass::{kilogram, pound};
use uom::si::power::watt;
use uom::si::time::{hour, second};
use uom::si::velocity::{meter_per_second, mile_per_hour};
use uom::si::volume::{cubic_foot, liter};

use crate::units::{Shown, TemperatureUnit, Units, decimal, significant};

impl Units {
    /// A mass of refrigerant.
    pub fn mass(self, mass: Mass) -> Shown {
        let (number, unit) = match self.temperature {
            TemperatureUnit::Fahrenheit => (mass.get::<pound>(), "lb"),
            TemperatureUnit::Celsius => (mass.get::<kilogram>(), "kg"),
        };
        shown(significant(number, 2), unit)
    }

    /// The volume of a vessel.
    pub fn volume(self, volume: Volume) -> Shown {
        let (number, unit) = match self.temperature {
            TemperatureUnit::Fahrenheit => (volume.get::<cubic_foot>(), "ft³"),
            TemperatureUnit::Celsius => (volume.get::<liter>(), "L"),
        };
        shown(significant(number, 2), unit)
    }

    /// Electrical energy, which is paid for in kilowatt-hours everywhere.
    pub fn energy(self, energy: Energy) -> Shown {
        shown(significant(energy.get::<kilowatt_hour>(), 3), "kWh")
    }

    /// Specific enthalpy of a refrigerant.
    pub fn enthalpy(self, enthalpy: AvailableEnergy) -> Shown {
        let unit = self.unit_of_enthalpy();
        shown(decimal(self.enthalpy_number(enthalpy), 1), unit)
    }

    /// The number of a specific enthalpy alone, for scales and curves.
    pub fn enthalpy_number(self, enthalpy: AvailableEnergy) -> f64 {
        match self.temperature {
            TemperatureUnit::Fahrenheit => enthalpy.get::<btu_it_per_pound>(),
            TemperatureUnit::Celsius => enthalpy.get::<kilojoule_per_kilogram>(),
        }
    }

    /// The unit of specific enthalpy.
    pub fn unit_of_enthalpy(self) -> &'static str {
        match self.temperature {
            TemperatureUnit::Fahrenheit => "Btu/lb",
            TemperatureUnit::Celsius => "kJ/kg",
        }
    }

    /// Hours of a year.
    pub fn hours(self, time: Time) -> Shown {
        shown(decimal(time.get::<hour>(), 0), "h")
    }

    /// A time to be set on a timer: whole seconds, rounded up.
    pub fn seconds(self, time: Time) -> Shown {
        shown(decimal(time.get::<second>().ceil(), 0), "s")
    }

    /// How often a fan starts: starts an hour.
    pub fn starts_an_hour(self, starts: Frequency) -> Shown {
        shown(significant(starts.get::<cycle_per_hour>(), 2), "")
    }

    /// Speed of the wind.
    pub fn wind(self, speed: Velocity) -> Shown {
        let (number, unit) = match self.temperature {
            TemperatureUnit::Fahrenheit => (speed.get::<mile_per_hour>(), "mph"),
            TemperatureUnit::Celsius => (speed.get::<meter_per_second>(), "m/s"),
        };
        shown(significant(number, 2), unit)
    }

    /// How many times another value one is.
    pub fn times(self, ratio: f64) -> Shown {
        shown(significant(ratio, 2), "")
    }

    /// Electrical power of a heater, which is rated in watts everywhere.
    pub fn heater(self, power: Power) -> Shown {
        shown(decimal(power.get::<watt>(), 0), "W")
    }
}

fn shown(number: String, unit: &'static str) -> Shown {
    Shown { number, unit }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::PressureUnit;
    use uom::si::energy::joule;

    /// One pound is 0.45359237 kg, one foot 0.3048 m, one Btu (IT) a pound 2326 J/kg (NIST SP 811); one kilowatt-hour is 3.6 MJ.
    #[test]
    fn amounts_come_with_their_unit() {
        let us = Units::default();
        let metric = Units {
            temperature: TemperatureUnit::Celsius,
            pressure: PressureUnit::Bar,
        };
        let charge = Mass::new::<kilogram>(2.268);
        assert_eq!(us.mass(charge).to_string(), "5.0\u{a0}lb");
        assert_eq!(metric.mass(charge).to_string(), "2.3\u{a0}kg");
        let receiver = Volume::new::<liter>(8.5);
        assert_eq!(us.volume(receiver).to_string(), "0.30\u{a0}ft³");
        assert_eq!(metric.volume(receiver).to_string(), "8.5\u{a0}L");
        let energy = Energy::new::<joule>(3.6e9);
        assert_eq!(us.energy(energy).to_string(), "1000\u{a0}kWh");
        let enthalpy = AvailableEnergy::new::<kilojoule_per_kilogram>(232.6);
        assert_eq!(us.enthalpy(enthalpy).to_string(), "100.0\u{a0}Btu/lb");
        assert_eq!(metric.enthalpy(enthalpy).to_string(), "232.6\u{a0}kJ/kg");
        let time = Time::new::<second>(90.2);
        assert_eq!(us.seconds(time).to_string(), "91\u{a0}s");
        assert_eq!(
            us.hours(Time::new::<hour>(8766.0)).to_string(),
            "8766\u{a0}h"
        );
        let starts = Frequency::new::<cycle_per_hour>(12.0);
        assert_eq!(us.starts_an_hour(starts).to_string(), "12");
        assert_eq!(us.heater(Power::new::<watt>(40.4)).to_string(), "40\u{a0}W");
    }
}
