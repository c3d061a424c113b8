//! Units that a person can type and read: symbols, other ways to write them, and the way to SI and back.
//!
//! Factors come from `uom`; the tests hold them to NIST SP 811.

use calc::Quantity;
use uom::si::f64::{
    AngularVelocity, ElectricCurrent, ElectricPotential, Frequency, Length, Power, Pressure,
    TemperatureInterval, ThermodynamicTemperature, VolumeRate,
};
use uom::si::{
    angular_velocity::revolution_per_minute, electric_current::ampere, electric_potential::volt,
    frequency::hertz, length, power, pressure, temperature_interval, thermodynamic_temperature,
    volume_rate,
};
use winterset_calc as calc;

/// What a number measures; decides which units can stand beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// A point on the temperature scale.
    Temperature,
    /// A difference of temperatures.
    Difference,
    /// Pressure over atmospheric, or absolute.
    Pressure,
    /// Heat flow or power.
    Power,
    /// Volume flow of air.
    Airflow,
    /// Height above sea level.
    Elevation,
    /// Inside diameter of a pipe.
    Bore,
    /// Electric potential.
    Voltage,
    /// Electric current.
    Current,
    /// Supply frequency.
    Frequency,
    /// Speed of a shaft.
    Speed,
    /// A share of a whole.
    Share,
    /// A whole number of things.
    Count,
}

macro_rules! units {
    ($($(#[doc = $doc:literal])+ $name:ident: $kind:ident, $token:literal, $symbol:literal, [$($alias:literal),*];)+) => {
        /// A unit.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Unit { $($(#[doc = $doc])+ $name,)+ }

        impl Unit {
            /// Every unit; the first of a kind is its SI or SI-near unit.
            pub const ALL: &'static [Unit] = &[$(Unit::$name,)+];

            /// What the unit measures.
            pub fn kind(self) -> Kind {
                match self { $(Unit::$name => Kind::$kind,)+ }
            }

            /// The name that records carry.
            pub fn token(self) -> &'static str {
                match self { $(Unit::$name => $token,)+ }
            }

            /// What stands beside a number on a screen.
            pub fn symbol(self) -> &'static str {
                match self { $(Unit::$name => $symbol,)+ }
            }

            fn aliases(self) -> &'static [&'static str] {
                match self { $(Unit::$name => &[$($alias),*],)+ }
            }
        }
    };
}

units! {
    /// Degree Celsius.
    Celsius: Temperature, "C", "°C", ["°C", "degC"];
    /// Degree Fahrenheit.
    Fahrenheit: Temperature, "F", "°F", ["°F", "degF"];
    /// Kelvin.
    Kelvin: Temperature, "K", "K", [];
    /// Difference of one kelvin.
    KelvinDifference: Difference, "K", "K", ["C", "°C"];
    /// Difference of one degree Fahrenheit.
    FahrenheitDifference: Difference, "F", "°F", ["°F", "R"];
    /// Kilopascal over atmospheric pressure.
    KilopascalGauge: Pressure, "kPa", "kPa gauge", ["kPag", "kPa gauge", "kPa(g)"];
    /// Bar over atmospheric pressure.
    BarGauge: Pressure, "bar", "bar gauge", ["barg", "bar gauge", "bar(g)"];
    /// Pound-force per square inch over atmospheric pressure.
    Psig: Pressure, "psig", "psig", ["psi"];
    /// Pound-force per square inch, absolute.
    Psia: Pressure, "psia", "psia", [];
    /// Kilopascal, absolute.
    KilopascalAbsolute: Pressure, "kPaa", "kPa absolute", ["kPa absolute", "kPa(a)"];
    /// Bar, absolute.
    BarAbsolute: Pressure, "bara", "bar absolute", ["bar absolute", "bar(a)"];
    /// Kilowatt.
    Kilowatt: Power, "kW", "kW", [];
    /// Watt.
    Watt: Power, "W", "W", [];
    /// British thermal unit (international table) an hour.
    BtuPerHour: Power, "Btu/h", "Btu/h", ["btuh", "btu/hr", "btu"];
    /// Ton of refrigeration, 12,000 Btu an hour.
    Ton: Power, "ton", "ton", ["tons", "tr", "rt"];
    /// Cubic metre a second.
    CubicMeterPerSecond: Airflow, "m3/s", "m³/s", ["m³/s"];
    /// Cubic metre an hour.
    CubicMeterPerHour: Airflow, "m3/h", "m³/h", ["m³/h"];
    /// Litre a second.
    LiterPerSecond: Airflow, "L/s", "L/s", [];
    /// Cubic foot a minute.
    CubicFootPerMinute: Airflow, "cfm", "cfm", ["ft3/min"];
    /// Metre.
    Meter: Elevation, "m", "m", [];
    /// Foot.
    Foot: Elevation, "ft", "ft", ["feet"];
    /// Millimetre.
    Millimeter: Bore, "mm", "mm", [];
    /// Inch.
    Inch: Bore, "in", "in", ["inch", "\""];
    /// Ampere.
    Ampere: Current, "A", "A", ["amp", "amps"];
    /// Volt.
    Volt: Voltage, "V", "V", ["volt", "volts", "vac"];
    /// Hertz.
    Hertz: Frequency, "Hz", "Hz", [];
    /// Revolution a minute.
    Rpm: Speed, "rpm", "rpm", ["r/min", "1/min", "tr/min"];
    /// Hundredth.
    Percent: Share, "%", "%", ["percent"];
    /// A plain number of things.
    Piece: Count, "", "", [];
}

/// British thermal unit (international table), J; the ton of refrigeration is 12,000 of them an hour (NIST SP 811, appendix B).
const BTU: f64 = 1_055.055_852_62;

impl Unit {
    /// The unit of a kind that is written like this, in any case, however spaced.
    pub fn parse(kind: Kind, written: &str) -> Option<Self> {
        let written = closed_up(written);
        Self::of(kind).find(|unit| {
            std::iter::once(&unit.token())
                .chain(unit.aliases())
                .any(|name| closed_up(name).eq_ignore_ascii_case(&written))
        })
    }

    /// The units of a kind.
    pub fn of(kind: Kind) -> impl Iterator<Item = Self> {
        Self::ALL
            .iter()
            .copied()
            .filter(move |unit| unit.kind() == kind)
    }

    /// The quantity that a number in this unit stands for. `atmosphere` turns gauge into absolute pressure.
    pub fn quantity(self, number: f64, atmosphere: Pressure) -> Quantity {
        let gauge = |pressure: Pressure| Quantity::Pressure(pressure + atmosphere);
        match self {
            Unit::Celsius => Quantity::Temperature(ThermodynamicTemperature::new::<
                thermodynamic_temperature::degree_celsius,
            >(number)),
            Unit::Fahrenheit => Quantity::Temperature(ThermodynamicTemperature::new::<
                thermodynamic_temperature::degree_fahrenheit,
            >(number)),
            Unit::Kelvin => Quantity::Temperature(ThermodynamicTemperature::new::<
                thermodynamic_temperature::kelvin,
            >(number)),
            Unit::KelvinDifference => Quantity::Difference(TemperatureInterval::new::<
                temperature_interval::kelvin,
            >(number)),
            Unit::FahrenheitDifference => Quantity::Difference(TemperatureInterval::new::<
                temperature_interval::degree_fahrenheit,
            >(number)),
            Unit::KilopascalGauge => gauge(Pressure::new::<pressure::kilopascal>(number)),
            Unit::BarGauge => gauge(Pressure::new::<pressure::bar>(number)),
            Unit::Psig => gauge(Pressure::new::<pressure::pound_force_per_square_inch>(
                number,
            )),
            Unit::Psia => Quantity::Pressure(
                Pressure::new::<pressure::pound_force_per_square_inch>(number),
            ),
            Unit::KilopascalAbsolute => {
                Quantity::Pressure(Pressure::new::<pressure::kilopascal>(number))
            }
            Unit::BarAbsolute => Quantity::Pressure(Pressure::new::<pressure::bar>(number)),
            Unit::Kilowatt => Quantity::Power(Power::new::<power::kilowatt>(number)),
            Unit::Watt => Quantity::Power(Power::new::<power::watt>(number)),
            Unit::BtuPerHour => Quantity::Power(Power::new::<power::watt>(number * BTU / 3600.0)),
            Unit::Ton => {
                Quantity::Power(Power::new::<power::watt>(number * 12_000.0 * BTU / 3600.0))
            }
            Unit::CubicMeterPerSecond => Quantity::Airflow(VolumeRate::new::<
                volume_rate::cubic_meter_per_second,
            >(number)),
            Unit::CubicMeterPerHour => {
                Quantity::Airflow(VolumeRate::new::<volume_rate::cubic_meter_per_hour>(number))
            }
            Unit::LiterPerSecond => {
                Quantity::Airflow(VolumeRate::new::<volume_rate::liter_per_second>(number))
            }
            Unit::CubicFootPerMinute => Quantity::Airflow(VolumeRate::new::<
                volume_rate::cubic_foot_per_minute,
            >(number)),
            Unit::Meter => Quantity::Elevation(Length::new::<length::meter>(number)),
            Unit::Foot => Quantity::Elevation(Length::new::<length::foot>(number)),
            Unit::Millimeter => Quantity::Bore(Length::new::<length::millimeter>(number)),
            Unit::Inch => Quantity::Bore(Length::new::<length::inch>(number)),
            Unit::Ampere => Quantity::Current(ElectricCurrent::new::<ampere>(number)),
            Unit::Volt => Quantity::Voltage(ElectricPotential::new::<volt>(number)),
            Unit::Hertz => Quantity::Frequency(Frequency::new::<hertz>(number)),
            Unit::Rpm => Quantity::Speed(AngularVelocity::new::<revolution_per_minute>(number)),
            Unit::Percent => Quantity::Ratio(number / 100.0),
            // A float turns into the nearest whole number in range; what is not whole is refused before.
            Unit::Piece => Quantity::Count(number as u32),
        }
    }

    /// The number that a quantity of the same kind comes to in this unit.
    pub fn number(self, quantity: &Quantity, atmosphere: Pressure) -> f64 {
        // Every unit is a scale and an offset on the SI value.
        let zero = self.quantity(0.0, atmosphere).si();
        let one = self.scale(atmosphere, zero);
        let offset = match quantity {
            Quantity::PressureDifference(_) => 0.0,
            _ => zero,
        };
        (quantity.si() - offset) / one
    }

    fn scale(self, atmosphere: Pressure, zero: f64) -> f64 {
        self.quantity(1000.0, atmosphere).si() / 1000.0 - zero / 1000.0
    }
}

/// Without spaces, which people leave out and put in as they like.
fn closed_up(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NIST SP 811 (2008), appendix B.8: exact factors, or as many figures as it prints.
    #[test]
    fn factors_are_those_of_the_standard() {
        let none = Pressure::new::<pressure::pascal>(0.0);
        let si = |unit: Unit, number: f64| unit.quantity(number, none).si();
        let near =
            |ours: f64, theirs: f64| assert!((ours / theirs - 1.0).abs() < 1e-6, "{ours} {theirs}");
        near(si(Unit::Fahrenheit, 32.0), 273.15);
        near(si(Unit::Celsius, -40.0), si(Unit::Fahrenheit, -40.0));
        near(si(Unit::FahrenheitDifference, 1.8), 1.0);
        near(si(Unit::Psig, 1.0), 6_894.757);
        near(si(Unit::BarGauge, 1.0), 1e5);
        near(si(Unit::BtuPerHour, 1.0), 0.293_071_1);
        near(si(Unit::Ton, 1.0), 3_516.853);
        near(si(Unit::CubicFootPerMinute, 1.0), 4.719_474e-4);
        near(si(Unit::Foot, 1.0), 0.3048);
        near(si(Unit::Rpm, 1.0), 0.104_719_8);
    }

    #[test]
    fn numbers_come_back() {
        let atmosphere = Pressure::new::<pressure::kilopascal>(84.0);
        for unit in Unit::ALL.iter().copied() {
            for number in [1.0, 17.0, 250.0] {
                let back = unit.number(&unit.quantity(number, atmosphere), atmosphere);
                assert!(
                    (back - number).abs() < 1e-9 * number.max(1.0),
                    "{unit:?} {number} {back}"
                );
            }
        }
    }

    #[test]
    fn gauge_pressure_stands_on_the_atmosphere() {
        let high = Pressure::new::<pressure::kilopascal>(80.0);
        let Quantity::Pressure(absolute) = Unit::KilopascalGauge.quantity(1000.0, high) else {
            unreachable!();
        };
        assert!((absolute.get::<pressure::kilopascal>() - 1080.0).abs() < 1e-9);
        let difference = Quantity::PressureDifference(Pressure::new::<pressure::kilopascal>(300.0));
        assert!((Unit::KilopascalGauge.number(&difference, high) - 300.0).abs() < 1e-9);
    }

    #[test]
    fn spelling_is_forgiving() {
        assert_eq!(Unit::parse(Kind::Temperature, "f"), Some(Unit::Fahrenheit));
        assert_eq!(
            Unit::parse(Kind::Difference, "F"),
            Some(Unit::FahrenheitDifference)
        );
        assert_eq!(Unit::parse(Kind::Power, " BTUH "), Some(Unit::BtuPerHour));
        assert_eq!(Unit::parse(Kind::Power, "V"), None);
    }
}
