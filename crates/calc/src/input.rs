//! What a plan starts from: a system, each value with its basis, inside the limits that the models hold for.

use uom::si::f64::{
    AngularVelocity, ElectricCurrent, ElectricPotential, Frequency, Length, Power,
    TemperatureInterval, ThermodynamicTemperature, VolumeRate,
};
use uom::si::{
    electric_potential::volt, frequency::hertz, length::meter,
    temperature_interval::kelvin as kelvin_interval,
};
use winterset_refrigerant::Refrigerant;

use crate::compressor::rating::DataSheet;
use crate::explain::{Given, Quantity};
use crate::field::Field;
use crate::problem::InputError;
use crate::usual;

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

choices! {
    /// How the evaporators are defrosted, as far as head pressure has to do with it.
    Defrost {
        /// By the air, by electric heat, or not at all.
        Other = "other",
        /// By hot gas.
        HotGas = "hot-gas",
    }
}

choices! {
    /// How the compressors follow the load.
    CapacityControl {
        /// One compressor that stops and starts.
        OnOff = "on-off",
        /// Compressors of equal size, switched one after another.
        Stages = "stages",
        /// One compressor with cylinders or parts of its scroll unloaded.
        Unloading = "unloading",
        /// One compressor with variable speed.
        VariableSpeed = "variable-speed",
    }
}

choices! {
    /// What a speed controller does where even its minimum output cools too much.
    BelowMinimum {
        /// The fan keeps turning at minimum output.
        KeepsTurning = "keeps-turning",
        /// The fan stops, and starts again as the sensed value rises.
        Stops = "stops",
    }
}

choices! {
    /// When the reversing valve of a heat pump is energised.
    Reversing {
        /// The system cools alone.
        None = "none",
        /// Energised in cooling.
        InCooling = "in-cooling",
        /// Energised in heating.
        InHeating = "in-heating",
    }
}

choices! {
    /// Units that a compressor's coefficients are printed in: temperatures, mass flow, power.
    SheetUnits {
        /// °C, kg/h, W.
        CelsiusKilogramPerHour = "C-kg/h-W",
        /// °C, g/s, W.
        CelsiusGramPerSecond = "C-g/s-W",
        /// °C, kg/s, W.
        CelsiusKilogramPerSecond = "C-kg/s-W",
        /// °F, lb/h, W.
        FahrenheitPoundPerHour = "F-lb/h-W",
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
    /// Number of condenser fans, all alike.
    pub fans: Given<u32>,
    /// Number of those that the speed controller moves, where not all: pressure switches stage the rest.
    pub modulated_fans: Option<u32>,
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
    /// Highest condensing temperature that the compressor's maker allows, where known.
    pub compressor_highest: Option<ThermodynamicTemperature>,
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
    /// Temperature of the air that comes back to the evaporator.
    pub return_air: Given<ThermodynamicTemperature>,
    /// Relative humidity of that air.
    pub return_humidity: Given<f64>,
    /// Airflow of the evaporator; where not entered, a usual one.
    pub indoor_airflow: Option<VolumeRate>,
    /// Length of the liquid line, fittings included, where known.
    pub liquid_length: Option<Length>,
    /// Height of the metering device above the condenser's outlet, below zero where it lies lower.
    pub liquid_lift: Given<Length>,
    /// Inside diameter of the liquid line, where known.
    pub liquid_diameter: Option<Length>,
    /// Full-load current of one condenser fan motor; where not entered, worked out from its power.
    pub full_load: Option<ElectricCurrent>,
    /// The compressor's data sheet, where entered; its flow is scaled so that the known point is met.
    pub compressor_sheet: Option<DataSheet>,
    /// How the compressors follow the load.
    pub capacity_control: Given<CapacityControl>,
    /// Number of stages, where the compressors are switched one after another; without meaning otherwise.
    pub compressor_stages: Given<u32>,
    /// Lowest share of the full load that the compressors run at.
    pub lowest_load: Given<f64>,
    /// Condensing temperature (dew) that a user of the heat wants, where there is one.
    pub heat_reclaim: Option<ThermodynamicTemperature>,
    /// How the evaporators are defrosted.
    pub defrost: Given<Defrost>,
    /// What the speed controller does below its minimum output.
    pub below_minimum: Given<BelowMinimum>,
    /// When the reversing valve of a heat pump is energised.
    pub reversing_valve: Given<Reversing>,
    /// Subcooling at the condenser's outlet at the known point; where not entered, the usual.
    pub subcooling: Option<TemperatureInterval>,
    /// Electrical power of all fans at full speed in standard air; where not entered, a usual share of the heat rejected.
    pub fan_power: Option<Power>,
    /// Share of the condenser's air that it has just blown out, with the known point taken free of it.
    pub recirculation: Given<f64>,
    /// Share of the condenser's conductance and airflow that dirt takes, with the known point taken clean.
    pub dirt: Given<f64>,
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
    /// A system of which only the essentials are known; everything else is what is [`usual`], starting from its duty.
    pub fn assume(essentials: Essentials, duty: Given<Duty>) -> Self {
        let frequency = Frequency::new::<hertz>(60.0);
        Self {
            duty,
            load: essentials.load,
            evaporating: Given::assumed(usual::evaporating(duty.value)),
            over_ambient: Given::assumed(usual::over_ambient(duty.value, &essentials.refrigerant)),
            known_outdoor: Given::assumed(usual::known_outdoor()),
            airflow: None,
            fans: Given::assumed(1),
            modulated_fans: None,
            motor: Given::assumed(MotorKind::PermanentSplitCapacitor),
            bearing: Given::assumed(Bearing::Ball),
            voltage: Given::assumed(ElectricPotential::new::<volt>(230.0)),
            frequency: Given::assumed(frequency),
            rated_speed: Given::assumed(usual::rated_speed(frequency)),
            metering: Given::assumed(Metering::TxvConventional),
            compressor_lowest: None,
            compressor_highest: None,
            outdoor_low: essentials.outdoor_low,
            elevation: Given::assumed(Length::new::<meter>(0.0)),
            sensing: Given::assumed(usual::sensing(&essentials.refrigerant)),
            throttling_range: Given::assumed(TemperatureInterval::new::<kelvin_interval>(8.0)),
            idle_airflow: Given::assumed(0.1),
            return_air: Given::assumed(usual::return_air(
                duty.value,
                usual::evaporating(duty.value),
            )),
            return_humidity: Given::assumed(usual::return_humidity(duty.value)),
            indoor_airflow: None,
            liquid_length: None,
            liquid_lift: Given::assumed(Length::new::<meter>(0.0)),
            liquid_diameter: None,
            full_load: None,
            compressor_sheet: None,
            capacity_control: Given::assumed(CapacityControl::OnOff),
            compressor_stages: Given::assumed(usual::COMPRESSOR_STAGES),
            lowest_load: Given::assumed(usual::lowest_load(
                CapacityControl::OnOff,
                usual::COMPRESSOR_STAGES,
            )),
            heat_reclaim: None,
            defrost: Given::assumed(Defrost::Other),
            below_minimum: Given::assumed(BelowMinimum::KeepsTurning),
            reversing_valve: Given::assumed(Reversing::None),
            subcooling: None,
            fan_power: None,
            recirculation: Given::assumed(0.0),
            dirt: Given::assumed(0.0),
            refrigerant: essentials.refrigerant,
        }
    }
}

impl Input {
    /// Number of fans that the speed controller moves.
    pub fn modulated(&self) -> u32 {
        self.modulated_fans.unwrap_or(self.fans.value)
    }

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
                Field::CompressorHighest,
                self.compressor_highest.map(Quantity::Temperature),
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
            (
                Field::ModulatedFans,
                self.modulated_fans.map(Quantity::Count),
            ),
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
            (
                Field::ReturnAir,
                Some(Quantity::Temperature(self.return_air.value)),
            ),
            (
                Field::CompressorStages,
                Some(Quantity::Count(self.compressor_stages.value)),
            ),
            (
                Field::LowestLoad,
                Some(Quantity::Ratio(self.lowest_load.value)),
            ),
            (
                Field::HeatReclaim,
                self.heat_reclaim.map(Quantity::Temperature),
            ),
            (
                Field::ReturnHumidity,
                Some(Quantity::Ratio(self.return_humidity.value)),
            ),
            (
                Field::IndoorAirflow,
                self.indoor_airflow.map(Quantity::Airflow),
            ),
            (
                Field::LiquidLength,
                self.liquid_length.map(Quantity::Elevation),
            ),
            (
                Field::LiquidLift,
                Some(Quantity::Elevation(self.liquid_lift.value)),
            ),
            (
                Field::LiquidDiameter,
                self.liquid_diameter.map(Quantity::Bore),
            ),
            (Field::FullLoad, self.full_load.map(Quantity::Current)),
            (Field::Subcooling, self.subcooling.map(Quantity::Difference)),
            (Field::FanPower, self.fan_power.map(Quantity::Power)),
            (
                Field::Recirculation,
                Some(Quantity::Ratio(self.recirculation.value)),
            ),
            (Field::Dirt, Some(Quantity::Ratio(self.dirt.value))),
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
