//! Amounts on worksheets: more quantities and more units than the fields of a system take, each a plain number in SI with what it
//! measures.

use uom::si::f64::{
    AngularVelocity, ElectricCurrent, ElectricPotential, ElectricalResistance, Frequency,
    HeatCapacity, Length, Mass, Power, Pressure, TemperatureInterval, ThermalConductance,
    ThermodynamicTemperature, Time, Volume, VolumeRate,
};
use uom::si::{
    angular_velocity::radian_per_second, electric_current::ampere, electric_potential::volt,
    electrical_resistance::ohm, frequency::hertz, heat_capacity::joule_per_kelvin, length::meter,
    mass::kilogram, power::watt, pressure::pascal, temperature_interval::kelvin as kelvin_interval,
    thermal_conductance::watt_per_kelvin, thermodynamic_temperature::kelvin, time::second,
    volume::cubic_meter, volume_rate::cubic_meter_per_second,
};
use winterset_calc::Quantity;

use crate::number::{NumberError, parse_with};
use crate::record::Entry;
use crate::unit::Unit;

/// A unit that an amount can be written in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Scale {
    /// One that fields take too.
    Field(Unit),
    /// A multiple of the SI unit.
    Further {
        /// The name that records carry.
        token: &'static str,
        /// What stands beside a number.
        symbol: &'static str,
        /// Other ways to write it.
        aliases: &'static [&'static str],
        /// What one of it is in the SI unit.
        factor: f64,
    },
}

/// Shorthand for the table below.
const fn further(
    token: &'static str,
    symbol: &'static str,
    aliases: &'static [&'static str],
    factor: f64,
) -> Scale {
    Scale::Further {
        token,
        symbol,
        aliases,
        factor,
    }
}

impl Scale {
    /// The name that records carry.
    pub fn token(&self) -> &'static str {
        match self {
            Scale::Field(unit) => unit.token(),
            Scale::Further { token, .. } => token,
        }
    }

    /// What stands beside a number.
    pub fn symbol(&self) -> &'static str {
        match self {
            Scale::Field(unit) => unit.symbol(),
            Scale::Further { symbol, .. } => symbol,
        }
    }

    fn is_written(&self, written: &str) -> bool {
        match self {
            Scale::Field(unit) => Unit::parse(unit.kind(), written) == Some(*unit),
            Scale::Further { token, aliases, .. } => {
                let close = |text: &str| text.replace(char::is_whitespace, "").to_lowercase();
                std::iter::once(token)
                    .chain(*aliases)
                    .any(|name| close(name) == close(written))
            }
        }
    }

    /// The SI value of a number in this unit. `atmosphere` turns gauge into absolute pressure.
    pub fn si(&self, number: f64, atmosphere: Pressure) -> f64 {
        match self {
            Scale::Field(unit) => unit.quantity(number, atmosphere).si(),
            Scale::Further { factor, .. } => number * factor,
        }
    }

    /// The number in this unit of an SI value.
    pub fn number(&self, si: f64, atmosphere: Pressure) -> f64 {
        match self {
            Scale::Field(unit) => unit.number(&quantity(*unit, si), atmosphere),
            Scale::Further { factor, .. } => si / factor,
        }
    }
}

/// A quantity of a unit's kind with this SI value.
fn quantity(unit: Unit, si: f64) -> Quantity {
    match unit.quantity(1.0, Pressure::default()) {
        Quantity::Temperature(_) => {
            Quantity::Temperature(ThermodynamicTemperature::new::<kelvin>(si))
        }
        Quantity::Difference(_) => {
            Quantity::Difference(TemperatureInterval::new::<kelvin_interval>(si))
        }
        Quantity::Pressure(_) => Quantity::Pressure(Pressure::new::<pascal>(si)),
        // Every other unit is a multiple of its SI unit, and so of a share.
        _ => Quantity::Ratio(si),
    }
}

macro_rules! measures {
    ($($(#[doc = $doc:literal])+ $name:ident = $key:literal: [$($scale:expr),+ $(,)?],)+) => {
        /// What an amount measures, and so the units that it is written in.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Measure { $($(#[doc = $doc])+ $name,)+ }

        impl Measure {
            /// Every measure.
            pub const ALL: &'static [Measure] = &[$(Measure::$name,)+];

            /// A stable name.
            pub fn key(self) -> &'static str {
                match self { $(Measure::$name => $key,)+ }
            }

            /// The units that it is written in.
            pub fn scales(self) -> &'static [Scale] {
                match self { $(Measure::$name => const { &[$($scale),+] },)+ }
            }
        }
    };
}

use Scale::Field as U;

// Factors: NIST SP 811 (2008), appendix B.8; the inch of water is the conventional one.
const PASCAL: Scale = further("Pa", "Pa", &[], 1.0);
const INCH_WATER: Scale = further(
    "inH2O",
    "in H₂O",
    &["in H₂O", "inwg", "inwc", "in wg", "iwc", "in"],
    249.088_91,
);
const KILOPASCAL: Scale = further("kPa", "kPa", &[], 1000.0);
const BAR: Scale = further("bar", "bar", &[], 1e5);
const PSI: Scale = further("psi", "psi", &[], 6_894.757_293_168_361);
const HORSEPOWER: Scale = further("hp", "hp", &[], 745.699_871_582_270_2);
const MILLIMETER: Scale = further("mm", "mm", &[], 1e-3);
const INCH: Scale = further("in", "in", &["inch", "inches", "\"", "″"], 0.0254);

measures! {
    /// A point on the temperature scale, K.
    Temperature = "temperature": [U(Unit::Celsius), U(Unit::Fahrenheit), U(Unit::Kelvin)],
    /// A difference of temperatures, K.
    Difference = "difference": [U(Unit::KelvinDifference), U(Unit::FahrenheitDifference)],
    /// An absolute pressure, Pa; written as gauge or absolute.
    Pressure = "pressure": [
        U(Unit::Psig), U(Unit::KilopascalGauge), U(Unit::BarGauge),
        U(Unit::Psia), U(Unit::KilopascalAbsolute), U(Unit::BarAbsolute),
    ],
    /// A difference of pressures, Pa.
    PressureDifference = "pressure-difference": [KILOPASCAL, BAR, PSI, PASCAL, INCH_WATER],
    /// The pressure rise of a fan, Pa.
    FanPressure = "fan-pressure": [PASCAL, INCH_WATER],
    /// Heat flow, W.
    Power = "power": [U(Unit::Kilowatt), U(Unit::Watt), U(Unit::BtuPerHour), U(Unit::Ton), HORSEPOWER],
    /// Power of a shaft, W.
    ShaftPower = "shaft-power": [U(Unit::Watt), U(Unit::Kilowatt), HORSEPOWER],
    /// Volume flow of air, m³/s.
    Airflow = "airflow": [
        U(Unit::CubicMeterPerHour), U(Unit::CubicMeterPerSecond), U(Unit::LiterPerSecond), U(Unit::CubicFootPerMinute),
    ],
    /// Height above sea level, m.
    Elevation = "elevation": [U(Unit::Meter), U(Unit::Foot)],
    /// A length, m.
    Length = "length": [U(Unit::Meter), U(Unit::Foot), MILLIMETER, INCH],
    /// A height against another, m; below zero where it lies lower.
    Lift = "lift": [U(Unit::Meter), U(Unit::Foot)],
    /// The inside diameter of a tube, m.
    Bore = "bore": [MILLIMETER, INCH],
    /// A volume, m³.
    Volume = "volume": [
        further("L", "L", &["l", "liter", "litre"], 1e-3),
        further("m3", "m³", &["m³"], 1.0),
        further("ft3", "ft³", &["ft³"], 0.028_316_846_592),
        further("in3", "in³", &["in³"], 1.638_706_4e-5),
    ],
    /// A mass, kg.
    Mass = "mass": [
        further("kg", "kg", &[], 1.0),
        further("g", "g", &[], 1e-3),
        further("lb", "lb", &["lbs"], 0.453_592_37),
        further("oz", "oz", &[], 0.028_349_523_125),
    ],
    /// A mass flow, kg/s.
    MassFlow = "mass-flow": [
        further("kg/s", "kg/s", &[], 1.0),
        further("kg/h", "kg/h", &[], 1.0 / 3600.0),
        further("lb/min", "lb/min", &[], 0.453_592_37 / 60.0),
        further("lb/h", "lb/h", &["lb/hr"], 0.453_592_37 / 3600.0),
    ],
    /// A velocity, m/s.
    Velocity = "velocity": [
        further("m/s", "m/s", &[], 1.0),
        further("ft/s", "ft/s", &["fps"], 0.3048),
        further("ft/min", "ft/min", &["fpm"], 0.3048 / 60.0),
    ],
    /// A density, kg/m³.
    Density = "density": [
        further("kg/m3", "kg/m³", &["kg/m³"], 1.0),
        further("lb/ft3", "lb/ft³", &["lb/ft³"], 16.018_463_373_960_14),
    ],
    /// A conductance for heat, W/K.
    Conductance = "conductance": [
        further("W/K", "W/K", &[], 1.0),
        further("Btu/h F", "Btu/(h °F)", &["Btu/(h °F)", "Btu/h/F"], 0.527_527_926_31),
    ],
    /// A capacity for heat, J/K.
    HeatCapacity = "heat-capacity": [
        further("kJ/K", "kJ/K", &[], 1e3),
        further("Btu/F", "Btu/°F", &["Btu/°F"], 1_899.100_534_716),
    ],
    /// A resistance, Ω.
    Resistance = "resistance": [
        further("ohm", "Ω", &["Ω", "Ω", "ohms", "r"], 1.0),
        further("kohm", "kΩ", &["kΩ", "kΩ", "k"], 1e3),
        further("Mohm", "MΩ", &["MΩ", "MΩ", "meg"], 1e6),
    ],
    /// Beta of a thermistor, K.
    Beta = "beta": [further("K", "K", &[], 1.0)],
    /// A coefficient of a thermistor's curve, 1/K.
    Coefficient = "coefficient": [
        further("e-3/K", "×10⁻³/K", &["×10⁻³/K"], 1e-3),
        further("e-4/K", "×10⁻⁴/K", &["×10⁻⁴/K"], 1e-4),
        further("e-7/K", "×10⁻⁷/K", &["×10⁻⁷/K"], 1e-7),
        further("/K", "/K", &[], 1.0),
    ],
    /// The output of a sensor, V.
    Signal = "signal": [U(Unit::Volt)],
    /// A current of a signal, A.
    LoopCurrent = "loop-current": [further("mA", "mA", &[], 1e-3)],
    /// A voltage, V.
    Voltage = "voltage": [U(Unit::Volt)],
    /// An electric current, A.
    Current = "current": [U(Unit::Ampere)],
    /// A time, s.
    Time = "time": [further("s", "s", &["sec"], 1.0), further("min", "min", &[], 60.0)],
    /// A supply frequency, Hz.
    Frequency = "frequency": [U(Unit::Hertz)],
    /// The speed of a shaft, rad/s.
    Speed = "speed": [U(Unit::Rpm)],
    /// A share of one.
    Share = "share": [U(Unit::Percent)],
    /// A share of vapour by mass.
    Quality = "quality": [U(Unit::Percent)],
    /// An angle, rad.
    Angle = "angle": [further("deg", "°", &["°"], std::f64::consts::PI / 180.0)],
}

impl Measure {
    /// Those that a person may want in another unit.
    pub const CONVERTIBLE: &'static [Measure] = &[
        Measure::Temperature,
        Measure::Difference,
        Measure::Pressure,
        Measure::PressureDifference,
        Measure::Power,
        Measure::Airflow,
        Measure::Length,
        Measure::Volume,
        Measure::Mass,
        Measure::MassFlow,
        Measure::Velocity,
        Measure::Density,
        Measure::Conductance,
    ];

    /// Whether values below zero make sense.
    pub fn is_signed(self) -> bool {
        matches!(
            self,
            Measure::Temperature
                | Measure::Elevation
                | Measure::Lift
                | Measure::Pressure
                | Measure::Coefficient
        )
    }

    /// The unit with this stable name.
    pub fn scale(self, token: &str) -> Option<Scale> {
        let mut scales = self.scales().iter().copied();
        scales.find(|scale| scale.token() == token)
    }

    /// The unit that is written like this, in any case, however spaced.
    fn written(self, written: &str) -> Option<Scale> {
        let mut scales = self.scales().iter().copied();
        scales.find(|scale| scale.is_written(written))
    }
}

/// A value with what it measures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// What it measures.
    pub measure: Measure,
    /// The value in the SI unit named with the measure.
    pub si: f64,
}

macro_rules! typed {
    ($($(#[doc = $doc:literal])+ $name:ident: $type:ident, $unit:ident;)+) => {
        impl Amount {
            $($(#[doc = $doc])+
            pub fn $name(&self) -> $type {
                $type::new::<$unit>(self.si)
            })+
        }
    };
}

typed! {
    /// The value as a temperature.
    temperature: ThermodynamicTemperature, kelvin;
    /// The value as a difference of temperatures.
    difference: TemperatureInterval, kelvin_interval;
    /// The value as a pressure.
    pressure: Pressure, pascal;
    /// The value as a power.
    power: Power, watt;
    /// The value as a volume flow.
    airflow: VolumeRate, cubic_meter_per_second;
    /// The value as a length.
    length: Length, meter;
    /// The value as a volume.
    volume: Volume, cubic_meter;
    /// The value as a mass.
    mass: Mass, kilogram;
    /// The value as a voltage.
    voltage: ElectricPotential, volt;
    /// The value as an electric current.
    current: ElectricCurrent, ampere;
    /// The value as a time.
    time: Time, second;
    /// The value as a resistance.
    resistance: ElectricalResistance, ohm;
    /// The value as a capacity for heat.
    heat_capacity: HeatCapacity, joule_per_kelvin;
    /// The value as a conductance for heat.
    conductance: ThermalConductance, watt_per_kelvin;
    /// The value as a frequency.
    frequency: Frequency, hertz;
    /// The value as the speed of a shaft.
    speed: AngularVelocity, radian_per_second;
}

impl Amount {
    /// A value in the SI unit of what it measures.
    pub fn new(measure: Measure, si: f64) -> Self {
        Self { measure, si }
    }
}

/// What is wrong with a typed amount, and what would be right.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum AmountProblem {
    /// The text holds no number.
    #[error("no number")]
    NotANumber,
    /// The number has a unit of something else.
    #[error("{unit:?} is no unit of {}", measure.key())]
    UnknownUnit {
        /// The unit as typed.
        unit: String,
        /// What is measured.
        measure: Measure,
    },
    /// A number that can be read in two ways, a thousand apart.
    #[error("either {whole} or {decimal}")]
    Ambiguous {
        /// The one reading, to type instead.
        whole: String,
        /// The other.
        decimal: String,
    },
    /// Outside what makes sense there.
    #[error("outside {low:?} to {high:?}")]
    OutOfRange {
        /// Smallest value allowed.
        low: Amount,
        /// Largest value allowed.
        high: Amount,
    },
}

/// The amount that was typed, between two SI values. A number without a unit is in the unit that stood beside it, or else in `beside`.
///
/// # Errors
/// [`AmountProblem`].
pub fn read_amount(
    measure: Measure,
    entry: &Entry,
    beside: Scale,
    (low, high): (f64, f64),
    atmosphere: Pressure,
) -> Result<Amount, AmountProblem> {
    let (number, unit) = parse_with(&entry.typed, |written| measure.written(written)).map_err(
        |error| match error {
            NumberError::NotANumber => AmountProblem::NotANumber,
            NumberError::UnknownUnit { unit } => AmountProblem::UnknownUnit { unit, measure },
            NumberError::Ambiguous { whole, decimal } => {
                AmountProblem::Ambiguous { whole, decimal }
            }
        },
    )?;
    let stood = entry.unit.as_deref().and_then(|token| measure.scale(token));
    let scale = unit.or(stood).unwrap_or(beside);
    let si = scale.si(number, atmosphere);
    // A bound typed in another unit can miss it by the last digit of a double.
    let slack = |bound: f64| 1e-12 * bound.abs();
    if si < low - slack(low) || si > high + slack(high) {
        return Err(AmountProblem::OutOfRange {
            low: Amount::new(measure, low),
            high: Amount::new(measure, high),
        });
    }
    Ok(Amount::new(measure, si.clamp(low, high)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn none() -> Pressure {
        Pressure::default()
    }

    /// NIST SP 811 (2008), appendix B.8: exact factors, or as many figures as it prints.
    #[test]
    fn factors_are_those_of_the_standard() {
        for (measure, token, si) in [
            (Measure::FanPressure, "inH2O", 249.0889),
            (Measure::PressureDifference, "psi", 6_894.757),
            (Measure::ShaftPower, "hp", 745.6999),
            (Measure::Bore, "in", 0.0254),
            (Measure::Volume, "ft3", 2.831_685e-2),
            (Measure::Volume, "in3", 1.638_706e-5),
            (Measure::Mass, "lb", 4.535_924e-1),
            (Measure::Mass, "oz", 2.834_952e-2),
            (Measure::MassFlow, "lb/h", 1.259_979e-4),
            (Measure::MassFlow, "lb/min", 7.559_873e-3),
            (Measure::Velocity, "ft/min", 5.08e-3),
            (Measure::Density, "lb/ft3", 16.018_46),
            // Btu (international table) an hour, 0.2930711 W, over 5/9 K.
            // Btu (international table), 1055.056 J, over 5/9 K.
            (Measure::HeatCapacity, "Btu/F", 1_055.056 * 1.8),
            (Measure::Conductance, "Btu/h F", 0.293_071_1 * 1.8),
        ] {
            let ours = measure.scale(token).unwrap().si(1.0, none());
            assert!((ours / si - 1.0).abs() < 5e-7, "{token}: {ours} {si}");
        }
    }

    #[test]
    fn numbers_come_back_in_every_unit() {
        let atmosphere = Pressure::new::<pascal>(84_000.0);
        for measure in Measure::ALL {
            for scale in measure.scales() {
                let back = scale.number(scale.si(17.5, atmosphere), atmosphere);
                assert!((back - 17.5).abs() < 1e-9, "{measure:?} {scale:?} {back}");
                assert_eq!(measure.scale(scale.token()), Some(*scale));
                let written = format!("3 {}", scale.symbol());
                let entry = Entry::new(written);
                let read = read_amount(*measure, &entry, measure.scales()[0], (-1e9, 1e9), none());
                let wanted = scale.si(3.0, none());
                assert!((read.unwrap().si - wanted).abs() <= 1e-12 * wanted.abs());
            }
        }
    }

    #[test]
    fn what_was_typed_is_read_in_its_unit() {
        let read = |entry: &Entry| {
            let beside = Measure::Mass.scale("kg").unwrap();
            read_amount(Measure::Mass, entry, beside, (0.0, 10.0), none())
        };
        assert_eq!(read(&Entry::new("2,5")).unwrap().si, 2.5);
        assert_eq!(read(&Entry::with_unit("500", "g")).unwrap().si, 0.5);
        assert_eq!(
            read(&Entry::with_unit("1 lb", "g")).unwrap().si,
            0.453_592_37
        );
        assert_eq!(read(&Entry::new("x")), Err(AmountProblem::NotANumber));
        assert!(matches!(
            read(&Entry::new("5 kW")),
            Err(AmountProblem::UnknownUnit { .. })
        ));
        assert!(matches!(
            read(&Entry::new("11")),
            Err(AmountProblem::OutOfRange { .. })
        ));
        assert!(matches!(
            read(&Entry::new("1,250")),
            Err(AmountProblem::Ambiguous { .. })
        ));
    }
}
