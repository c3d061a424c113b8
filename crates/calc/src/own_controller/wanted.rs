//! What is to be set on a controller, and what is to be connected to it.

use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Pressure, TemperatureInterval, ThermodynamicTemperature,
    Time,
};

use super::MotorOutput;
use crate::input::Sensing;
use crate::plan::Plan;
use crate::settings::{Drive, Settings};

/// The settings that stand in the sensed quantity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SensedSettings {
    /// On a pressure transducer.
    Pressure {
        /// Full-speed point, absolute.
        full_speed: Pressure,
        /// Throttling range, a pressure difference.
        throttling: Pressure,
    },
    /// On a temperature sensor on the coil.
    Temperature {
        /// Full-speed point.
        full_speed: ThermodynamicTemperature,
        /// Throttling range.
        throttling: TemperatureInterval,
    },
}

impl SensedSettings {
    /// Those of a settings sheet, for either kind of sensing.
    pub fn of(settings: &Settings, sensing: Sensing) -> Self {
        match sensing {
            Sensing::LiquidPressure => SensedSettings::Pressure {
                full_speed: settings.full_speed_pressure.value,
                throttling: settings.throttling_pressure.value,
            },
            Sensing::CoilTemperature => SensedSettings::Temperature {
                full_speed: settings.full_speed_coil.value,
                throttling: settings.throttling_coil.value,
            },
        }
    }

    /// What is sensed.
    pub fn sensing(&self) -> Sensing {
        match self {
            SensedSettings::Pressure { .. } => Sensing::LiquidPressure,
            SensedSettings::Temperature { .. } => Sensing::CoilTemperature,
        }
    }
}

/// What is to be set on a controller, and what is to be connected to it.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// Full-speed point and throttling range.
    pub sensed: SensedSettings,
    /// Lowest output as a share of full output, 0 to 1; `None` where the fan is only switched.
    pub minimum_output: Option<f64>,
    /// Time at full output at a start from rest; `None` where the motor starts by itself.
    pub start_boost: Option<Time>,
    /// Kinds of motor output that would do, any one of them.
    pub outputs: Vec<MotorOutput>,
    /// Supply voltage, r.m.s.
    pub supply: ElectricPotential,
    /// Full-load current of each motor that the controller feeds; none where it gives them a signal alone.
    pub motors: Vec<ElectricCurrent>,
}

impl Wanted {
    /// What a settings sheet asks for.
    pub fn of(
        settings: &Settings,
        sensing: Sensing,
        supply: ElectricPotential,
        motors: Vec<ElectricCurrent>,
    ) -> Self {
        let start_boost = match &settings.drive {
            Drive::PhaseCut { start_boost, .. } => Some(start_boost.value),
            Drive::Signal { .. } | Drive::Frequency { .. } => None,
        };
        let outputs = match settings.drive.refuses_phase_cut() {
            Some(motor) => MotorOutput::for_speed_of(motor),
            None => [MotorOutput::PhaseCut].as_slice(),
        };
        Self {
            sensed: SensedSettings::of(settings, sensing),
            minimum_output: Some(settings.drive.minimum_output().value),
            start_boost,
            outputs: outputs.to_vec(),
            supply,
            motors,
        }
    }
}

impl Plan {
    /// What the plan asks of a controller: its settings sheet, with all fans that are slowed on one controller.
    pub fn wanted(&self) -> Wanted {
        let input = &self.input;
        let motors = match self.settings.drive {
            Drive::PhaseCut { .. } => vec![self.full_load(); input.modulated() as usize],
            Drive::Signal { .. } | Drive::Frequency { .. } => Vec::new(),
        };
        let sensing = self.settings.sensing.value;
        Wanted::of(&self.settings, sensing, input.voltage.value, motors)
    }
}
