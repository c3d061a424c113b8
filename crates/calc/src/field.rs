//! The fields of an input and the ranges that the models hold for.

use uom::si::f64::{
    AngularVelocity, ElectricCurrent, ElectricPotential, Frequency, Length, Power,
    TemperatureInterval, ThermodynamicTemperature, VolumeRate,
};
use uom::si::{
    angular_velocity::revolution_per_minute, electric_current::ampere, electric_potential::volt,
    frequency::hertz, length::meter, power::watt, temperature_interval::kelvin as kelvin_interval,
    thermodynamic_temperature::degree_celsius, volume_rate::cubic_meter_per_second,
};

use crate::explain::Quantity;
use crate::problem::Problem;

macro_rules! fields {
    ($($(#[doc = $doc:literal])+ $name:ident = $key:literal,)+) => {
        /// One field of an input, as errors and records name it.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Field { $($(#[doc = $doc])+ $name,)+ }

        impl Field {
            /// Every field, in the order of a form.
            pub const ALL: &'static [Field] = &[$(Field::$name,)+];

            /// The stable name that records and error messages carry.
            pub fn key(self) -> &'static str {
                match self { $(Field::$name => $key,)+ }
            }
        }
    };
}

fields! {
    /// The refrigerant.
    Refrigerant = "refrigerant",
    /// Nominal cooling capacity.
    CoolingCapacity = "cooling_capacity",
    /// Heat rejected, in place of cooling capacity.
    HeatRejected = "heat_rejected",
    /// Lowest outdoor temperature.
    OutdoorLow = "outdoor_low",
    /// Metering device.
    Metering = "metering",
    /// Kind of fan motor.
    Motor = "motor",
    /// Bearing of the fan motor.
    Bearing = "bearing",
    /// Supply voltage.
    Voltage = "voltage",
    /// What the system cools.
    Duty = "duty",
    /// Condensing temperature over ambient at the known point.
    OverAmbient = "over_ambient",
    /// Outdoor temperature at the known point.
    KnownOutdoor = "known_outdoor",
    /// Evaporating temperature.
    Evaporating = "evaporating",
    /// Number of condenser fans.
    Fans = "fans",
    /// Number of those fans that the speed controller moves.
    ModulatedFans = "modulated_fans",
    /// Airflow of all fans at full speed.
    Airflow = "airflow",
    /// Supply frequency.
    Frequency = "frequency",
    /// Nameplate speed of the fan motor.
    RatedSpeed = "rated_speed",
    /// Height above sea level.
    Elevation = "elevation",
    /// What the controller senses.
    Sensing = "sensing",
    /// Throttling range.
    ThrottlingRange = "throttling_range",
    /// Lowest condensing temperature allowed for the compressor.
    CompressorLowest = "compressor_lowest",
    /// Highest condensing temperature allowed for the compressor.
    CompressorHighest = "compressor_highest",
    /// Share of the full airflow with the fans off.
    IdleAirflow = "idle_airflow",
    /// Temperature of the air that comes back to the evaporator.
    ReturnAir = "return_air",
    /// Subcooling at the condenser's outlet at the known point.
    Subcooling = "subcooling",
    /// Electrical power of all condenser fans at full speed.
    FanPower = "fan_power",
    /// Relative humidity of that air.
    ReturnHumidity = "return_humidity",
    /// Airflow of the evaporator.
    IndoorAirflow = "indoor_airflow",
    /// Length of the liquid line, fittings included.
    LiquidLength = "liquid_length",
    /// Height of the metering device above the condenser's outlet.
    LiquidLift = "liquid_lift",
    /// Inside diameter of the liquid line.
    LiquidDiameter = "liquid_diameter",
    /// Full-load current of one condenser fan motor.
    FullLoad = "full_load",
    /// How the compressors follow the load.
    CapacityControl = "capacity_control",
    /// Number of stages that the compressors are switched in.
    CompressorStages = "compressor_stages",
    /// Lowest share of the full load that the compressors run at.
    LowestLoad = "lowest_load",
    /// Condensing temperature that a user of the heat wants.
    HeatReclaim = "heat_reclaim",
    /// How the evaporators are defrosted.
    Defrost = "defrost",
    /// What the speed controller does below its minimum output.
    BelowMinimum = "below_minimum",
    /// When the reversing valve of a heat pump is energised.
    ReversingValve = "reversing_valve",
    /// Ten coefficients of the compressor's mass flow.
    FlowCoefficients = "flow_coefficients",
    /// Ten coefficients of the compressor's power.
    PowerCoefficients = "power_coefficients",
    /// Units that the coefficients are printed in.
    SheetUnits = "sheet_units",
    /// Superheat that the coefficients are rated at.
    SheetSuperheat = "sheet_superheat",
    /// Share of the condenser's air that it has just blown out.
    Recirculation = "recirculation",
    /// Share of the condenser's conductance and airflow that dirt takes.
    Dirt = "dirt",
}

impl Field {
    /// The smallest and the largest value that the models hold for; `None` for choices.
    pub fn range(self) -> Option<(Quantity, Quantity)> {
        let celsius = |degrees| {
            Quantity::Temperature(ThermodynamicTemperature::new::<degree_celsius>(degrees))
        };
        let temperature = |low, high| (celsius(low), celsius(high));
        let difference = |low, high| {
            (
                Quantity::Difference(TemperatureInterval::new::<kelvin_interval>(low)),
                Quantity::Difference(TemperatureInterval::new::<kelvin_interval>(high)),
            )
        };
        let elevation = |low, high| {
            (
                Quantity::Elevation(Length::new::<meter>(low)),
                Quantity::Elevation(Length::new::<meter>(high)),
            )
        };
        let power = |low, high| {
            (
                Quantity::Power(Power::new::<watt>(low)),
                Quantity::Power(Power::new::<watt>(high)),
            )
        };
        Some(match self {
            Field::CoolingCapacity | Field::HeatRejected => power(100.0, 2.0e6),
            Field::OutdoorLow => temperature(-60.0, 30.0),
            Field::KnownOutdoor => temperature(-40.0, 55.0),
            Field::Evaporating => temperature(-50.0, 20.0),
            Field::CompressorLowest => temperature(-40.0, 60.0),
            Field::CompressorHighest => temperature(0.0, 100.0),
            Field::OverAmbient => difference(2.0, 40.0),
            Field::ThrottlingRange => difference(2.0, 20.0),
            Field::Subcooling => difference(0.5, 30.0),
            Field::Fans | Field::ModulatedFans => (Quantity::Count(1), Quantity::Count(32)),
            Field::CompressorStages => (Quantity::Count(2), Quantity::Count(6)),
            Field::Voltage => (
                Quantity::Voltage(ElectricPotential::new::<volt>(100.0)),
                Quantity::Voltage(ElectricPotential::new::<volt>(600.0)),
            ),
            Field::Frequency => (
                Quantity::Frequency(Frequency::new::<hertz>(50.0)),
                Quantity::Frequency(Frequency::new::<hertz>(60.0)),
            ),
            Field::RatedSpeed => (
                Quantity::Speed(AngularVelocity::new::<revolution_per_minute>(200.0)),
                Quantity::Speed(AngularVelocity::new::<revolution_per_minute>(3550.0)),
            ),
            Field::Airflow => (
                Quantity::Airflow(VolumeRate::new::<cubic_meter_per_second>(0.01)),
                Quantity::Airflow(VolumeRate::new::<cubic_meter_per_second>(500.0)),
            ),
            Field::Elevation => elevation(-450.0, 5500.0),
            Field::IdleAirflow => (Quantity::Ratio(0.01), Quantity::Ratio(0.3)),
            Field::LowestLoad => (Quantity::Ratio(0.05), Quantity::Ratio(1.0)),
            Field::HeatReclaim => temperature(0.0, 80.0),
            Field::SheetSuperheat => difference(0.0, 50.0),
            Field::ReturnHumidity => (Quantity::Ratio(0.05), Quantity::Ratio(1.0)),
            Field::IndoorAirflow => (
                Quantity::Airflow(VolumeRate::new::<cubic_meter_per_second>(0.01)),
                Quantity::Airflow(VolumeRate::new::<cubic_meter_per_second>(500.0)),
            ),
            Field::LiquidLength => elevation(1.0, 300.0),
            Field::LiquidLift => elevation(-60.0, 60.0),
            Field::LiquidDiameter => (
                Quantity::Bore(Length::new::<meter>(0.003)),
                Quantity::Bore(Length::new::<meter>(0.15)),
            ),
            Field::FullLoad => (
                Quantity::Current(ElectricCurrent::new::<ampere>(0.05)),
                Quantity::Current(ElectricCurrent::new::<ampere>(100.0)),
            ),
            Field::ReturnAir => temperature(-40.0, 50.0),
            Field::FanPower => power(1.0, 1.0e5),
            Field::Recirculation | Field::Dirt => (Quantity::Ratio(0.0), Quantity::Ratio(0.6)),
            Field::Refrigerant
            | Field::Metering
            | Field::Motor
            | Field::Bearing
            | Field::Duty
            | Field::CapacityControl
            | Field::Defrost
            | Field::ReversingValve
            | Field::BelowMinimum
            | Field::FlowCoefficients
            | Field::PowerCoefficients
            | Field::SheetUnits
            | Field::Sensing => return None,
        })
    }
}

impl Field {
    /// Whether a value lies in the field's range.
    ///
    /// # Errors
    /// [`Problem::OutOfRange`] where it does not, or is no number.
    pub fn check(self, value: Quantity) -> Result<(), Problem> {
        let Some((low, high)) = self.range() else {
            return Ok(());
        };
        let inside = value.si() >= low.si() && value.si() <= high.si();
        if inside {
            Ok(())
        } else {
            Err(Problem::OutOfRange { low, high })
        }
    }
}
