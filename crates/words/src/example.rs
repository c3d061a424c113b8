//! Values that could stand at a field: an example of a right answer, and what is usual.

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_calc::{Field, Quantity};
use winterset_profile::{Kind, Unit, kind_of};

use crate::pen::Pen;
use crate::units::{Units, signed};

/// An example of a right answer, in the person's units; `None` where no number is asked for.
pub(crate) fn example(field: Field, units: Units) -> Option<String> {
    let kind = kind_of(field)?;
    let american = units.unit(Kind::Temperature) == Unit::Fahrenheit;
    let text = match field {
        Field::OutdoorLow if american => "-10",
        Field::OutdoorLow => "-20",
        Field::KnownOutdoor if american => "95",
        Field::KnownOutdoor => "35",
        Field::LiquidLift if american => "30",
        Field::LiquidLift => "10",
        Field::LiquidLength if american => "100",
        Field::LiquidLength => "30",
        Field::OverAmbient if american => "25",
        Field::OverAmbient => "14",
        _ => match kind {
            Kind::Temperature if american => "40",
            Kind::Temperature => "5",
            Kind::Difference if american => "14",
            Kind::Difference => "8",
            Kind::Power if american => "36000",
            Kind::Power => "10.5",
            Kind::Airflow if american => "3500",
            Kind::Airflow => "6000",
            Kind::Elevation if american => "1200",
            Kind::Elevation => "400",
            Kind::Bore if american => "0.43",
            Kind::Bore => "10",
            Kind::Current => "2.5",
            Kind::Voltage => "230",
            Kind::Frequency => "60",
            Kind::Speed => "1075",
            Kind::Share => "10",
            Kind::Count => "2",
            Kind::Pressure => "250",
        },
    };
    Some(signed(text))
}

/// What is usual at a field: the least, the most; `None` where nothing is.
pub(crate) fn usual(field: Field, units: Units) -> Option<(String, String)> {
    let pen = Pen::without_gauge(units);
    let plain = |low: &str, high: &str| Some((low.to_owned(), high.to_owned()));
    let temperature = |low: f64, high: f64| {
        let write = |degrees| {
            pen.brief(Quantity::Temperature(ThermodynamicTemperature::new::<
                degree_celsius,
            >(degrees)))
        };
        Some((write(low), write(high)))
    };
    let difference = |low: f64, high: f64| {
        let write = |kelvins| {
            pen.brief(Quantity::Difference(TemperatureInterval::new::<kelvin>(
                kelvins,
            )))
        };
        Some((write(low), write(high)))
    };
    match field {
        Field::OutdoorLow => temperature(-35.0, 0.0),
        Field::KnownOutdoor => temperature(20.0, 38.0),
        Field::Evaporating => temperature(-30.0, 7.0),
        Field::CompressorHighest => temperature(50.0, 68.0),
        Field::CompressorLowest => temperature(10.0, 30.0),
        Field::OverAmbient => difference(8.0, 17.0),
        Field::ThrottlingRange => difference(4.0, 10.0),
        Field::Fans | Field::ModulatedFans => plain("1", "8"),
        Field::Voltage => plain("120", "600 V"),
        Field::RatedSpeed => {
            let symbol = crate::symbol(Unit::Rpm);
            Some(("825".to_owned(), format!("{} {symbol}", signed("1550"))))
        }
        Field::IdleAirflow => plain("5", "25 %"),
        Field::ReturnAir => temperature(-20.0, 27.0),
        Field::ReturnHumidity => plain("40", "90 %"),
        Field::Subcooling => difference(3.0, 8.0),
        Field::CompressorStages => plain("2", "4"),
        Field::LowestLoad => plain("25", "100 %"),
        Field::HeatReclaim => temperature(30.0, 50.0),
        Field::SheetSuperheat => difference(8.0, 20.0),
        Field::Recirculation => plain("0", "20 %"),
        Field::Dirt => plain("0", "30 %"),
        Field::Frequency
        | Field::Elevation
        | Field::Airflow
        | Field::FanPower
        | Field::IndoorAirflow
        | Field::LiquidLength
        | Field::LiquidLift
        | Field::LiquidDiameter
        | Field::FullLoad
        | Field::CapacityControl
        | Field::Defrost
        | Field::ReversingValve
        | Field::BelowMinimum
        | Field::FlowCoefficients
        | Field::PowerCoefficients
        | Field::SheetUnits
        | Field::Refrigerant
        | Field::CoolingCapacity
        | Field::HeatRejected
        | Field::Metering
        | Field::Motor
        | Field::Bearing
        | Field::Duty
        | Field::Sensing => None,
    }
}
