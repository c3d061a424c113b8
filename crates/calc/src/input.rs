//! What a plan starts from: a system, each value with its basis, inside the limits that the models hold for.

use uom::si::f64::{
    AngularVelocity, ElectricPotential, Frequency, Length, Power, TemperatureInterval,
    ThermodynamicTemperature, VolumeRate,
};
use uom::si::{
    angular_velocity::revolution_per_minute, electric_potential::volt, frequency::hertz,
    length::meter, power::watt, temperature_interval::kelvin as kelvin_interval,
    thermodynamic_temperature::degree_celsius, volume_rate::cubic_meter_per_second,
};
use winterset_refrigerant::Refrigerant;

use crate::explain::{Given, Quantity};

macro_rules! choices {
    ($(#[doc = $doc:literal])+ $name:ident { $($(#[doc = $vdoc:literal])+ $variant:ident = $key:literal,)+ }) => {
        $(#[doc = $doc])+
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum $name { $($(#[doc = $vdoc])+ $variant,)+ }

        impl $name {
            /// Every choice, in the order a person would want them.
            pub const ALL: &'static [$name] = &[$($name::$variant,)+];

            /// The stable name that records carry.
            pub fn key(self) -> &'static str {
                match self { $($name::$variant => $key,)+ }
            }

            /// The choice with this stable name.
            pub fn from_key(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|choice| choice.key() == key)
            }
        }
    };
}

choices! {
    /// What the system cools; sets the usual evaporating temperature.
    Duty {
        /// Rooms, cabinets, archives: air above about 15 °C.
        RoomCooling = "room-cooling",
        /// Coolers and cellars: air above freezing.
        Cooler = "cooler",
        /// Freezers.
        Freezer = "freezer",
    }
}

choices! {
    /// Kind of condenser fan motor.
    MotorKind {
        /// Single phase with a run capacitor.
        PermanentSplitCapacitor = "permanent-split-capacitor",
        /// Single phase with a shading ring.
        ShadedPole = "shaded-pole",
        /// Electronically commutated, with its own speed input.
        ElectronicallyCommutated = "electronically-commutated",
        /// Three-phase induction.
        ThreePhase = "three-phase",
    }
}

choices! {
    /// Bearing of the fan motor.
    Bearing {
        /// Rolling bearing.
        Ball = "ball",
        /// Plain bearing with an oil film.
        Sleeve = "sleeve",
    }
}

choices! {
    /// Metering device of the evaporator.
    Metering {
        /// Thermostatic expansion valve, conventional port.
        TxvConventional = "txv-conventional",
        /// Thermostatic expansion valve, balanced port.
        TxvBalanced = "txv-balanced",
        /// Electronic expansion valve.
        ElectronicValve = "electronic-valve",
        /// Fixed orifice or capillary tube.
        FixedOrifice = "fixed-orifice",
    }
}

choices! {
    /// What the controller senses.
    Sensing {
        /// A sensor strapped to the two-phase part of the condenser coil.
        CoilTemperature = "coil-temperature",
        /// A transducer on the liquid line.
        LiquidPressure = "liquid-pressure",
    }
}

/// The load that the condenser answers to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Load {
    /// Nominal cooling capacity; heat of compression comes on top.
    Cooling(Power),
    /// Heat rejected at the condenser.
    Rejected(Power),
}

/// A system, as a plan needs it.
#[derive(Clone, Debug)]
pub struct Input {
    /// The refrigerant in the circuit.
    pub refrigerant: Refrigerant,
    /// What the system cools.
    pub duty: Given<Duty>,
    /// Cooling capacity or heat rejected, with the compressor at full load.
    pub load: Load,
    /// Evaporating temperature (dew).
    pub evaporating: Given<ThermodynamicTemperature>,
    /// Condensing temperature over outdoor temperature at the known point.
    pub over_ambient: Given<TemperatureInterval>,
    /// Outdoor temperature at the known point.
    pub known_outdoor: Given<ThermodynamicTemperature>,
    /// Airflow of all fans at full speed; where not entered, a usual condenser's is worked out.
    pub airflow: Option<VolumeRate>,
    /// Number of condenser fans, all moved alike.
    pub fans: Given<u32>,
    /// Kind of fan motor.
    pub motor: Given<MotorKind>,
    /// Bearing of the fan motor.
    pub bearing: Given<Bearing>,
    /// Supply voltage at the fan motor, r.m.s.
    pub voltage: Given<ElectricPotential>,
    /// Supply frequency.
    pub frequency: Given<Frequency>,
    /// Nameplate speed of the fan motor.
    pub rated_speed: Given<AngularVelocity>,
    /// Metering device.
    pub metering: Given<Metering>,
    /// Lowest condensing temperature that the compressor's maker allows, where known.
    pub compressor_lowest: Option<ThermodynamicTemperature>,
    /// Lowest outdoor temperature that the site sees.
    pub outdoor_low: ThermodynamicTemperature,
    /// Height of the site above sea level.
    pub elevation: Given<Length>,
    /// What the controller senses.
    pub sensing: Given<Sensing>,
    /// Throttling range as a span of condensing temperature.
    pub throttling_range: Given<TemperatureInterval>,
    /// Share of the full airflow that wind and natural draft move with the fans off.
    pub idle_airflow: Given<f64>,
}

/// The answers that no usual value can stand in for.
#[derive(Clone, Debug)]
pub struct Essentials {
    /// The refrigerant in the circuit.
    pub refrigerant: Refrigerant,
    /// Cooling capacity or heat rejected.
    pub load: Load,
    /// Lowest outdoor temperature that the site sees.
    pub outdoor_low: ThermodynamicTemperature,
}

impl Input {
    /// A system of which only the essentials are known; everything else is assumed, starting from its duty.
    ///
    /// The usual values are common practice without a published source.
    pub fn assume(essentials: Essentials, duty: Given<Duty>) -> Self {
        let frequency = Frequency::new::<hertz>(60.0);
        Self {
            duty,
            load: essentials.load,
            evaporating: Given::assumed(usual_evaporating(duty.value)),
            over_ambient: Given::assumed(usual_over_ambient(duty.value)),
            known_outdoor: Given::assumed(celsius(35.0)),
            airflow: None,
            fans: Given::assumed(1),
            motor: Given::assumed(MotorKind::PermanentSplitCapacitor),
            bearing: Given::assumed(Bearing::Ball),
            voltage: Given::assumed(ElectricPotential::new::<volt>(230.0)),
            frequency: Given::assumed(frequency),
            rated_speed: Given::assumed(usual_rated_speed(frequency)),
            metering: Given::assumed(Metering::TxvConventional),
            compressor_lowest: None,
            outdoor_low: essentials.outdoor_low,
            elevation: Given::assumed(Length::new::<meter>(0.0)),
            sensing: Given::assumed(usual_sensing(&essentials.refrigerant)),
            throttling_range: Given::assumed(TemperatureInterval::new::<kelvin_interval>(8.0)),
            idle_airflow: Given::assumed(0.1),
            refrigerant: essentials.refrigerant,
        }
    }
}

impl Input {
    /// Every field whose value lies outside [`Field::range`].
    pub fn out_of_range(&self) -> Vec<InputError> {
        let (load_field, load) = match self.load {
            Load::Cooling(power) => (Field::CoolingCapacity, power),
            Load::Rejected(power) => (Field::HeatRejected, power),
        };
        let values = [
            (load_field, Some(Quantity::Power(load))),
            (
                Field::OutdoorLow,
                Some(Quantity::Temperature(self.outdoor_low)),
            ),
            (
                Field::KnownOutdoor,
                Some(Quantity::Temperature(self.known_outdoor.value)),
            ),
            (
                Field::Evaporating,
                Some(Quantity::Temperature(self.evaporating.value)),
            ),
            (
                Field::CompressorLowest,
                self.compressor_lowest.map(Quantity::Temperature),
            ),
            (
                Field::OverAmbient,
                Some(Quantity::Difference(self.over_ambient.value)),
            ),
            (
                Field::ThrottlingRange,
                Some(Quantity::Difference(self.throttling_range.value)),
            ),
            (Field::Fans, Some(Quantity::Count(self.fans.value))),
            (Field::Voltage, Some(Quantity::Voltage(self.voltage.value))),
            (
                Field::Frequency,
                Some(Quantity::Frequency(self.frequency.value)),
            ),
            (
                Field::RatedSpeed,
                Some(Quantity::Speed(self.rated_speed.value)),
            ),
            (Field::Airflow, self.airflow.map(Quantity::Airflow)),
            (
                Field::Elevation,
                Some(Quantity::Elevation(self.elevation.value)),
            ),
            (
                Field::IdleAirflow,
                Some(Quantity::Ratio(self.idle_airflow.value)),
            ),
        ];
        values
            .into_iter()
            .filter_map(|(field, value)| {
                let problem = field.check(value?).err()?;
                Some(InputError { field, problem })
            })
            .collect()
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

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

/// Usual evaporating temperature (dew) of a duty. Common practice, no published source.
pub fn usual_evaporating(duty: Duty) -> ThermodynamicTemperature {
    celsius(match duty {
        Duty::RoomCooling => 5.0,
        Duty::Cooler => -7.0,
        Duty::Freezer => -30.0,
    })
}

/// Usual condensing temperature over ambient of a duty. Common practice, no published source.
pub fn usual_over_ambient(duty: Duty) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin_interval>(match duty {
        Duty::RoomCooling => 15.0,
        Duty::Cooler => 10.0,
        Duty::Freezer => 8.0,
    })
}

/// Usual nameplate speed: a six-pole motor at about a tenth of slip. Common practice, no published source.
pub fn usual_rated_speed(frequency: Frequency) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(0.9 * 20.0 * frequency.get::<hertz>())
}

/// Usual sensing: a coil sensor, unless the refrigerant glides so far that the sensor's place would decide the reading.
pub fn usual_sensing(refrigerant: &Refrigerant) -> Sensing {
    let glide = refrigerant
        .saturation_at_temperature(celsius(40.0))
        .map(|saturation| saturation.dew.pressure)
        .and_then(|pressure| refrigerant.saturation_at_pressure(pressure))
        .map(|at_pressure| {
            at_pressure.dew.temperature.value - at_pressure.bubble.temperature.value
        });
    match glide {
        Ok(kelvin) if kelvin > 2.0 => Sensing::LiquidPressure,
        _ => Sensing::CoilTemperature,
    }
}

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
    /// Share of the full airflow with the fans off.
    IdleAirflow = "idle_airflow",
}

impl Field {
    /// The smallest and the largest value that the models hold for; `None` for choices.
    pub fn range(self) -> Option<(Quantity, Quantity)> {
        let temperature = |low, high| {
            (
                Quantity::Temperature(celsius(low)),
                Quantity::Temperature(celsius(high)),
            )
        };
        let difference = |low, high| {
            (
                Quantity::Difference(TemperatureInterval::new::<kelvin_interval>(low)),
                Quantity::Difference(TemperatureInterval::new::<kelvin_interval>(high)),
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
            Field::OverAmbient => difference(2.0, 40.0),
            Field::ThrottlingRange => difference(2.0, 20.0),
            Field::Fans => (Quantity::Count(1), Quantity::Count(32)),
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
            Field::Elevation => (
                Quantity::Elevation(Length::new::<meter>(-450.0)),
                Quantity::Elevation(Length::new::<meter>(5500.0)),
            ),
            Field::IdleAirflow => (Quantity::Ratio(0.01), Quantity::Ratio(0.3)),
            Field::Refrigerant
            | Field::Metering
            | Field::Motor
            | Field::Bearing
            | Field::Duty
            | Field::Sensing => return None,
        })
    }
}

/// What is wrong with a value, and what would be right.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Problem {
    /// Outside the limits that the models hold for.
    #[error("outside {low:?} to {high:?}")]
    OutOfRange {
        /// Smallest value allowed.
        low: Quantity,
        /// Largest value allowed.
        high: Quantity,
    },
    /// The condensing temperature that follows is too close to the critical temperature or above it.
    #[error("condensing at {condensing:?} is above {highest:?}")]
    AboveCritical {
        /// The condensing temperature that would follow.
        condensing: ThermodynamicTemperature,
        /// The highest that this refrigerant condenses at, with a margin.
        highest: ThermodynamicTemperature,
    },
    /// The evaporating temperature does not lie below the condensing temperature by enough.
    #[error("evaporating above {highest:?}")]
    EvaporatingAboveCondensing {
        /// The highest that would do.
        highest: ThermodynamicTemperature,
    },
    /// The air would leave hotter than the refrigerant condenses.
    #[error("airflow below {lowest:?}")]
    TooLittleAir {
        /// The smallest airflow that could carry the heat.
        lowest: VolumeRate,
    },
    /// A nameplate speed that no induction motor reaches at this frequency.
    #[error("no synchronous speed within a third above")]
    NoSynchronousSpeed {
        /// The synchronous speed just above it.
        synchronous: AngularVelocity,
    },
    /// The refrigerant has no state there.
    #[error("outside the range of the refrigerant: {0}")]
    Refrigerant(winterset_refrigerant::Error),
}

/// A problem at a field.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{}: {problem}", .field.key())]
pub struct InputError {
    /// The field that would have to change.
    pub field: Field,
    /// What is wrong with it.
    pub problem: Problem,
}
