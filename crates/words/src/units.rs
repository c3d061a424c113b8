//! How quantities are written: the unit that a person chose and as many figures as mean something.

use std::fmt;

use serde::{Deserialize, Serialize};
use uom::si::f64::Pressure;
use uom::si::{
    angle::degree, mass_density::kilogram_per_cubic_meter, mass_rate::kilogram_per_second,
    thermal_conductance::watt_per_kelvin, time::second,
};
use winterset_calc::Quantity;
use winterset_profile::{Kind, Unit};

use crate::words;

/// Unit of temperature; airflow, power and elevation go with it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum TemperatureUnit {
    /// °F, with cfm, Btu/h and ft.
    #[default]
    Fahrenheit,
    /// °C, with m³/h, kW and m.
    Celsius,
}

/// Unit of pressure, over atmospheric unless said otherwise.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum PressureUnit {
    /// Pound-force per square inch.
    #[default]
    Psig,
    /// Kilopascal.
    Kilopascal,
    /// Bar.
    Bar,
}

/// The units that a person reads in, set once.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Units {
    /// Unit of temperature, and the family that goes with it.
    #[serde(default)]
    pub temperature: TemperatureUnit,
    /// Unit of pressure.
    #[serde(default)]
    pub pressure: PressureUnit,
}

/// A quantity as written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The number, with a true minus sign where negative.
    pub number: String,
    /// The unit; empty for counts.
    pub unit: &'static str,
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.number)?;
        if self.unit.is_empty() {
            return Ok(());
        }
        write!(f, "\u{a0}{}", self.unit)
    }
}

impl Units {
    /// The unit that a number of this kind is entered and shown in.
    pub fn unit(self, kind: Kind) -> Unit {
        let american = self.temperature == TemperatureUnit::Fahrenheit;
        let either = |us, si| if american { us } else { si };
        match kind {
            Kind::Temperature => either(Unit::Fahrenheit, Unit::Celsius),
            Kind::Difference => either(Unit::FahrenheitDifference, Unit::KelvinDifference),
            Kind::Pressure => match self.pressure {
                PressureUnit::Psig => Unit::Psig,
                PressureUnit::Kilopascal => Unit::KilopascalGauge,
                PressureUnit::Bar => Unit::BarGauge,
            },
            Kind::Power => either(Unit::BtuPerHour, Unit::Kilowatt),
            Kind::Airflow => either(Unit::CubicFootPerMinute, Unit::CubicMeterPerHour),
            Kind::Elevation => either(Unit::Foot, Unit::Meter),
            Kind::Bore => either(Unit::Inch, Unit::Millimeter),
            Kind::Current => Unit::Ampere,
            Kind::Voltage => Unit::Volt,
            Kind::Frequency => Unit::Hertz,
            Kind::Speed => Unit::Rpm,
            Kind::Share => Unit::Percent,
            Kind::Count => Unit::Piece,
        }
    }

    /// A quantity as a person reads it. `atmosphere` is what gauge pressure stands on.
    pub fn show(self, quantity: &Quantity, atmosphere: Pressure) -> Shown {
        let (number, figures, unit) = self.written(quantity, atmosphere);
        Shown {
            number: match figures {
                Figures::Decimals(decimals) => decimal(number, decimals),
                Figures::Significant(figures) => significant(number, figures),
            },
            unit,
        }
    }

    /// A quantity for a sentence: temperatures and pressures to the whole unit.
    pub fn brief(self, quantity: &Quantity, atmosphere: Pressure) -> Shown {
        match quantity {
            Quantity::Temperature(_) | Quantity::Difference(_) => {
                let (number, _, unit) = self.written(quantity, atmosphere);
                Shown {
                    number: decimal(number, 0),
                    unit,
                }
            }
            _ => self.show(quantity, atmosphere),
        }
    }

    /// The least value that is allowed, for a sentence: rounded up, so that what is written is allowed itself.
    pub fn at_least(self, quantity: &Quantity, atmosphere: Pressure) -> Shown {
        self.bound(quantity, atmosphere, f64::ceil)
    }

    /// The largest value that is allowed, for a sentence: rounded down.
    pub fn at_most(self, quantity: &Quantity, atmosphere: Pressure) -> Shown {
        self.bound(quantity, atmosphere, f64::floor)
    }

    fn bound(self, quantity: &Quantity, atmosphere: Pressure, round: fn(f64) -> f64) -> Shown {
        let (number, figures, unit) = self.written(quantity, atmosphere);
        let decimals = match (quantity, figures) {
            (Quantity::Temperature(_) | Quantity::Difference(_), _) => 0,
            (_, Figures::Decimals(decimals)) => decimals as i32,
            (_, Figures::Significant(figures)) => decimals_of(number, figures),
        };
        let decimals = words().numerals().typed_decimals(decimals);
        let scale = 10f64.powi(decimals);
        let (scaled, nearest) = (number * scale, (number * scale).round());
        // What a change of units has left a last digit off is that number.
        let is_nearest = (scaled - nearest).abs() <= 1e-9 * nearest.abs().max(1.0);
        let rounded = if is_nearest { nearest } else { round(scaled) };
        Shown {
            number: decimal(rounded / scale, usize::try_from(decimals).unwrap_or(0)),
            unit,
        }
    }

    /// The pressure of the air itself, absolute: finer than a head pressure is read.
    pub fn air(self, pressure: Pressure) -> Shown {
        let (unit, decimals) = match self.pressure {
            PressureUnit::Psig => (Unit::Psia, 1),
            PressureUnit::Kilopascal => (Unit::KilopascalAbsolute, 1),
            PressureUnit::Bar => (Unit::BarAbsolute, 3),
        };
        let number = unit.number(&Quantity::Pressure(pressure), Pressure::default());
        Shown {
            number: decimal(number, decimals),
            unit: symbol(unit),
        }
    }

    /// The number alone in the unit that a person chose, for scales and curves.
    pub fn number(self, quantity: &Quantity, atmosphere: Pressure) -> f64 {
        self.written(quantity, atmosphere).0
    }

    fn written(self, quantity: &Quantity, atmosphere: Pressure) -> (f64, Figures, &'static str) {
        use Figures::{Decimals, Significant};
        let by = |kind: Kind, figures: Figures| {
            let unit = self.unit(kind);
            (unit.number(quantity, atmosphere), figures, symbol(unit))
        };
        let pressure_decimals = Decimals(match self.pressure {
            PressureUnit::Psig | PressureUnit::Kilopascal => 0,
            PressureUnit::Bar => 2,
        });
        match quantity {
            Quantity::Temperature(_) => by(
                Kind::Temperature,
                Decimals(match self.temperature {
                    TemperatureUnit::Fahrenheit => 0,
                    TemperatureUnit::Celsius => 1,
                }),
            ),
            Quantity::Difference(_) => by(Kind::Difference, Decimals(1)),
            Quantity::Pressure(_) => by(Kind::Pressure, pressure_decimals),
            Quantity::PressureDifference(_) => {
                let (number, figures, _) = by(Kind::Pressure, pressure_decimals);
                let unit = match self.pressure {
                    PressureUnit::Psig => "psi",
                    PressureUnit::Kilopascal => "kPa",
                    PressureUnit::Bar => "bar",
                };
                (number, figures, unit)
            }
            Quantity::Power(_) => by(Kind::Power, Significant(3)),
            Quantity::Airflow(_) => by(Kind::Airflow, Significant(3)),
            Quantity::Conductance(value) => (value.get::<watt_per_kelvin>(), Significant(3), "W/K"),
            Quantity::Ratio(_) => by(Kind::Share, Decimals(0)),
            Quantity::Elevation(_) => by(Kind::Elevation, Decimals(0)),
            Quantity::Bore(_) => by(
                Kind::Bore,
                Decimals(match self.temperature {
                    TemperatureUnit::Fahrenheit => 3,
                    TemperatureUnit::Celsius => 1,
                }),
            ),
            Quantity::Current(_) => by(Kind::Current, Significant(3)),
            Quantity::Density(value) => (
                value.get::<kilogram_per_cubic_meter>(),
                Decimals(3),
                "kg/m³",
            ),
            Quantity::Voltage(_) => by(Kind::Voltage, Decimals(0)),
            Quantity::Frequency(_) => by(Kind::Frequency, Decimals(0)),
            Quantity::Speed(_) => by(Kind::Speed, Decimals(0)),
            Quantity::Angle(value) => (value.get::<degree>(), Decimals(0), "°"),
            Quantity::Time(value) => (value.get::<second>(), Decimals(1), "s"),
            Quantity::MassFlow(value) => {
                (value.get::<kilogram_per_second>(), Significant(3), "kg/s")
            }
            Quantity::Count(_) => by(Kind::Count, Decimals(0)),
        }
    }
}

/// How many figures mean something.
#[derive(Clone, Copy)]
pub(crate) enum Figures {
    Decimals(usize),
    Significant(i32),
}

pub(crate) fn decimal(number: f64, decimals: usize) -> String {
    let text = format!("{number:.decimals$}");
    // What rounds to nothing has no sign.
    let is_zero = text.bytes().all(|b| matches!(b, b'-' | b'0' | b'.'));
    signed(if is_zero {
        text.trim_start_matches('-')
    } else {
        &text
    })
}

pub(crate) fn significant(number: f64, figures: i32) -> String {
    let decimals = decimals_of(number, figures);
    let step = 10f64.powi(-decimals);
    decimal(
        (number / step).round() * step,
        usize::try_from(decimals).unwrap_or(0),
    )
}

/// Decimals that show this many figures; below zero where whole digits are left out.
pub(crate) fn decimals_of(number: f64, figures: i32) -> i32 {
    if number == 0.0 || !number.is_finite() {
        return 0;
    }
    // Log of a finite number other than zero lies between -324 and 309.
    let magnitude = number.abs().log10().floor() as i32;
    figures - 1 - magnitude
}

/// A plain number with the signs of the language spoken.
pub(crate) fn signed(text: &str) -> String {
    words().numerals().write(text)
}

/// A mark of a scale: whole where it is whole.
pub fn mark(value: f64) -> String {
    decimal(value, usize::from(value.fract().abs() >= 1e-9))
}

/// What stands beside a number for a unit, in the language spoken.
pub fn symbol(unit: Unit) -> &'static str {
    words().symbol(unit.symbol())
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::f64::{Power, TemperatureInterval, ThermodynamicTemperature};
    use uom::si::power::kilowatt;
    use uom::si::pressure::kilopascal;
    use uom::si::temperature_interval::kelvin;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn sea_level() -> Pressure {
        Pressure::new::<kilopascal>(101.325)
    }

    const METRIC: Units = Units {
        temperature: TemperatureUnit::Celsius,
        pressure: PressureUnit::Bar,
    };

    #[test]
    fn values_come_with_their_unit() {
        let cold = Quantity::Temperature(ThermodynamicTemperature::new::<degree_celsius>(-40.0));
        let us = Units::default();
        assert_eq!(
            us.show(&cold, sea_level()).to_string(),
            "\u{2212}40\u{a0}°F"
        );
        assert_eq!(
            METRIC.show(&cold, sea_level()).to_string(),
            "\u{2212}40.0\u{a0}°C"
        );
        assert_eq!(
            METRIC.brief(&cold, sea_level()).to_string(),
            "\u{2212}40\u{a0}°C"
        );
        let head = Quantity::Pressure(Pressure::new::<kilopascal>(2_101.325));
        assert_eq!(us.show(&head, sea_level()).to_string(), "290\u{a0}psig");
        assert_eq!(
            METRIC.show(&head, sea_level()).to_string(),
            "20.00\u{a0}bar gauge"
        );
        let range = Quantity::PressureDifference(Pressure::new::<kilopascal>(500.0));
        assert_eq!(us.show(&range, sea_level()).to_string(), "73\u{a0}psi");
        let span = Quantity::Difference(TemperatureInterval::new::<kelvin>(8.0));
        assert_eq!(us.show(&span, sea_level()).to_string(), "14.4\u{a0}°F");
        let heat = Quantity::Power(Power::new::<kilowatt>(17.58));
        assert_eq!(
            us.show(&heat, sea_level()).to_string(),
            "60\u{202f}000\u{a0}Btu/h"
        );
        assert_eq!(METRIC.show(&heat, sea_level()).to_string(), "17.6\u{a0}kW");
    }

    #[test]
    fn the_air_is_shown_absolute() {
        // 101.325 kPa is 14.696 psi (NIST SP 811).
        assert_eq!(
            Units::default().air(sea_level()).to_string(),
            "14.7\u{a0}psia"
        );
        assert_eq!(
            METRIC.air(sea_level()).to_string(),
            "1.013\u{a0}bar absolute"
        );
    }

    #[test]
    fn nothing_has_no_sign() {
        assert_eq!(decimal(-0.2, 0), "0");
        assert_eq!(decimal(-0.6, 0), "\u{2212}1");
    }
}
