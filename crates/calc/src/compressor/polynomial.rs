//! The ten-coefficient polynomial of a compressor's data sheet.
//!
//! `X = C1 + C2·t_s + C3·t_d + C4·t_s² + C5·t_s·t_d + C6·t_d² + C7·t_s³ + C8·t_d·t_s² + C9·t_s·t_d² + C10·t_d³`
//!
//! with the suction dew temperature `t_s` and the discharge dew temperature `t_d` on the scale that the data sheet is in. The coefficients
//! stay as printed, together with their units.
//!
//! Source: AHRI Standard 540 (and EN 12900, which takes the same form).

use uom::si::electric_current::ampere;
use uom::si::f64::{ElectricCurrent, MassRate, Power, ThermodynamicTemperature};
use uom::si::mass_rate::{gram_per_second, kilogram_per_hour, kilogram_per_second};
use uom::si::power::{kilowatt, watt};
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};

use super::coefficients::Coefficients;
use super::{CompressorError, Output, Point};

/// Scale of the temperatures that a data sheet's coefficients are made for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TemperatureScale {
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

impl TemperatureScale {
    fn read(self, temperature: ThermodynamicTemperature) -> f64 {
        match self {
            TemperatureScale::Celsius => temperature.get::<degree_celsius>(),
            TemperatureScale::Fahrenheit => temperature.get::<degree_fahrenheit>(),
        }
    }
}

/// A unit that a data sheet prints a polynomial's answer in.
pub trait PrintedUnit: Copy {
    /// What is measured in it.
    type Quantity;

    /// Which output is measured in it.
    const OUTPUT: Output;

    /// A number in this unit as a quantity.
    fn quantity(self, printed: f64) -> Self::Quantity;

    /// A number in this unit in the SI unit of the output.
    fn si(self, printed: f64) -> f64;
}

/// Kilograms in a pound, exactly (NIST SP 811).
const POUND: f64 = 0.453_592_37;

/// Unit of mass flow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FlowUnit {
    /// kg/s
    KilogramPerSecond,
    /// kg/h
    KilogramPerHour,
    /// g/s
    GramPerSecond,
    /// lb/h
    PoundPerHour,
}

impl PrintedUnit for FlowUnit {
    type Quantity = MassRate;
    const OUTPUT: Output = Output::MassFlow;

    fn quantity(self, printed: f64) -> MassRate {
        match self {
            FlowUnit::KilogramPerSecond => MassRate::new::<kilogram_per_second>(printed),
            FlowUnit::KilogramPerHour => MassRate::new::<kilogram_per_hour>(printed),
            FlowUnit::GramPerSecond => MassRate::new::<gram_per_second>(printed),
            FlowUnit::PoundPerHour => MassRate::new::<kilogram_per_hour>(printed * POUND),
        }
    }

    fn si(self, printed: f64) -> f64 {
        self.quantity(printed).value
    }
}

/// Unit of electric power.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PowerUnit {
    /// W
    Watt,
    /// kW
    Kilowatt,
}

impl PrintedUnit for PowerUnit {
    type Quantity = Power;
    const OUTPUT: Output = Output::Power;

    fn quantity(self, printed: f64) -> Power {
        match self {
            PowerUnit::Watt => Power::new::<watt>(printed),
            PowerUnit::Kilowatt => Power::new::<kilowatt>(printed),
        }
    }

    fn si(self, printed: f64) -> f64 {
        self.quantity(printed).value
    }
}

/// Watts in a British thermal unit (International Table) an hour: 1055.055 852 62 J in 3600 s, as NIST SP 811 has it.
const BTU_PER_HOUR: f64 = 1_055.055_852_62 / 3600.0;

/// Unit of cooling capacity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CapacityUnit {
    /// W
    Watt,
    /// kW
    Kilowatt,
    /// Btu/h, International Table.
    BtuPerHour,
}

impl PrintedUnit for CapacityUnit {
    type Quantity = Power;
    const OUTPUT: Output = Output::Capacity;

    fn quantity(self, printed: f64) -> Power {
        match self {
            CapacityUnit::Watt => Power::new::<watt>(printed),
            CapacityUnit::Kilowatt => Power::new::<kilowatt>(printed),
            CapacityUnit::BtuPerHour => Power::new::<watt>(printed * BTU_PER_HOUR),
        }
    }

    fn si(self, printed: f64) -> f64 {
        self.quantity(printed).value
    }
}

/// Unit of current.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CurrentUnit {
    /// A
    Ampere,
}

impl PrintedUnit for CurrentUnit {
    type Quantity = ElectricCurrent;
    const OUTPUT: Output = Output::Current;

    fn quantity(self, printed: f64) -> ElectricCurrent {
        ElectricCurrent::new::<ampere>(printed)
    }

    fn si(self, printed: f64) -> f64 {
        printed
    }
}

/// One polynomial of a data sheet with the units that it is printed in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Polynomial<Unit> {
    /// As printed.
    pub coefficients: Coefficients,
    /// Scale of the temperatures.
    pub scale: TemperatureScale,
    /// Unit of the answer.
    pub unit: Unit,
}

impl<Unit: PrintedUnit> Polynomial<Unit> {
    /// What it gives at a point, at the suction condition that the data sheet is rated at.
    ///
    /// # Errors
    /// [`CompressorError::OutOfRange`] for the point, [`CompressorError::NotFinite`], [`CompressorError::NotPositive`].
    pub fn at(&self, point: Point) -> Result<Unit::Quantity, CompressorError> {
        point.check()?;
        let printed = evaluate(
            &self.coefficients,
            self.scale.read(point.evaporating),
            self.scale.read(point.condensing),
        );
        let value = self.unit.si(printed);
        let (output, at) = (Unit::OUTPUT, point);
        if !value.is_finite() {
            return Err(CompressorError::NotFinite { output, at });
        }
        if value <= 0.0 {
            return Err(CompressorError::NotPositive { output, at, value });
        }
        Ok(self.unit.quantity(printed))
    }
}

fn evaluate(coefficients: &Coefficients, s: f64, d: f64) -> f64 {
    let [c1, c2, c3, c4, c5, c6, c7, c8, c9, c10] = coefficients.values();
    c1 + c2 * s
        + c3 * d
        + c4 * s * s
        + c5 * s * d
        + c6 * d * d
        + c7 * s * s * s
        + c8 * d * s * s
        + c9 * s * d * d
        + c10 * d * d * d
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(evaporating: f64, condensing: f64) -> Point {
        let degrees = ThermodynamicTemperature::new::<degree_celsius>;
        Point {
            evaporating: degrees(evaporating),
            condensing: degrees(condensing),
        }
    }

    fn single(index: usize) -> Polynomial<PowerUnit> {
        let mut values = [0.0; 10];
        values[index] = 1.0;
        Polynomial {
            coefficients: Coefficients::new(values).unwrap(),
            scale: TemperatureScale::Celsius,
            unit: PowerUnit::Watt,
        }
    }

    /// AHRI 540: the order of the terms, by hand at t_s = 2 and t_d = 30.
    #[test]
    fn each_coefficient_has_its_term() {
        let terms = [
            1.0, 2.0, 30.0, 4.0, 60.0, 900.0, 8.0, 120.0, 1800.0, 27_000.0,
        ];
        for (index, term) in terms.into_iter().enumerate() {
            let got = single(index).at(celsius(2.0, 30.0)).unwrap();
            assert!((got.get::<watt>() / term - 1.0).abs() < 1e-12, "{index}");
        }
    }

    /// NIST SP 811: 1 lb = 0.453 592 37 kg; 1 Btu (IT) an hour = 0.293 071 1 W.
    #[test]
    fn printed_units_are_what_they_are() {
        let flow = |unit: FlowUnit| unit.si(1.0);
        assert!((flow(FlowUnit::PoundPerHour) * 3600.0 / 0.453_592_37 - 1.0).abs() < 1e-12);
        assert!((flow(FlowUnit::KilogramPerHour) * 3600.0 - 1.0).abs() < 1e-12);
        assert!((flow(FlowUnit::GramPerSecond) * 1000.0 - 1.0).abs() < 1e-12);
        assert!((CapacityUnit::BtuPerHour.si(1.0) - 0.293_071_1).abs() < 5e-8);
        assert_eq!(CapacityUnit::Kilowatt.si(2.0), 2000.0);
        assert_eq!(PowerUnit::Kilowatt.si(2.0), 2000.0);
    }

    #[test]
    fn the_scale_is_that_of_the_data_sheet() {
        let mut polynomial = single(2);
        polynomial.scale = TemperatureScale::Fahrenheit;
        let power = polynomial.at(celsius(0.0, 40.0)).unwrap();
        assert!((power.get::<watt>() - 104.0).abs() < 1e-9);
    }

    #[test]
    fn nonsense_is_refused() {
        let at = celsius(-10.0, 40.0);
        assert!(matches!(
            single(1).at(at),
            Err(CompressorError::NotPositive { output: Output::Power, value, .. }) if (value + 10.0).abs() < 1e-9
        ));
        let mut polynomial = single(0);
        polynomial.coefficients = Coefficients::new([f64::MAX; 10]).unwrap();
        assert!(matches!(
            polynomial.at(at),
            Err(CompressorError::NotFinite { .. })
        ));
        assert!(matches!(
            single(0).at(celsius(20.0, 20.0)),
            Err(CompressorError::OutOfRange { .. })
        ));
        assert!(single(0).at(celsius(f64::NAN, 20.0)).is_err());
    }
}
