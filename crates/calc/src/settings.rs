//! The settings sheet: the values to enter on the controller, each with its reason.

use uom::si::f64::{
    AngularVelocity, ElectricPotential, MassDensity, Pressure, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::Error;

use crate::air;
use crate::controller::coil_temperature;
use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::input::{Input, MotorKind, Sensing};
use crate::method::Actuator;
use crate::motor::{lowest_speed_fraction, start_boost, takes_phase_cut};

/// The values to enter on a controller.
#[derive(Clone, Debug)]
pub struct Settings {
    /// What the controller senses.
    pub sensing: Given<Sensing>,
    /// Full-speed point as head pressure (absolute).
    pub full_speed_pressure: Explained<Pressure>,
    /// Full-speed point as the temperature that a sensor half way through condensing sees.
    pub full_speed_coil: Explained<ThermodynamicTemperature>,
    /// Throttling range as a pressure difference.
    pub throttling_pressure: Explained<Pressure>,
    /// Throttling range as a span of coil temperature.
    pub throttling_coil: Explained<TemperatureInterval>,
    /// How the motor is to be driven, with what that asks to be set.
    pub drive: Drive,
    /// What narrowed or moved a value away from the usual.
    pub notes: Vec<SettingsNote>,
}

/// How the fan motor is driven at less than full speed.
#[derive(Clone, Debug)]
pub enum Drive {
    /// By a phase-cut supply: the motor takes voltage speed control.
    PhaseCut {
        /// Lowest output as a share of the supply voltage, r.m.s.
        minimum_output: Explained<f64>,
        /// The same as a voltage.
        minimum_voltage: ElectricPotential,
        /// Lowest speed that the bearing allows.
        lowest_speed: Explained<AngularVelocity>,
        /// Time at full output at each start from rest.
        start_boost: Explained<Time>,
    },
    /// By the motor's own control signal or a frequency drive; voltage speed control would harm it.
    Signal {
        /// The motor that refuses a phase-cut supply.
        motor: MotorKind,
        /// Lowest signal as a share of full.
        minimum_signal: Explained<f64>,
        /// The speed at that signal.
        lowest_speed: Explained<AngularVelocity>,
    },
}

impl Drive {
    /// Lowest output as a share of full output.
    pub fn minimum_output(&self) -> &Explained<f64> {
        match self {
            Drive::PhaseCut { minimum_output, .. } => minimum_output,
            Drive::Signal { minimum_signal, .. } => minimum_signal,
        }
    }

    /// Lowest speed that the method may run the fan at.
    pub fn lowest_speed(&self) -> &Explained<AngularVelocity> {
        match self {
            Drive::PhaseCut { lowest_speed, .. } | Drive::Signal { lowest_speed, .. } => {
                lowest_speed
            }
        }
    }
}

/// A remark on the settings sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SettingsNote {
    /// The throttling range was narrowed so that the fan still reaches full speed at the known point.
    RangeNarrowed {
        /// The span that was asked for.
        wanted: TemperatureInterval,
        /// The span that fits.
        used: TemperatureInterval,
    },
    /// The pressure need lies so close to the known point that even the narrowest range passes it: in warm weather the fan would
    /// not reach full speed at the known point.
    NeedNearKnownPoint,
}

/// Narrowest throttling range that a fan settles on without hunting, K. Common practice, no published source.
const NARROWEST_RANGE: f64 = 2.0;

/// The two ends of the throttling range, as head pressure, condensing temperature (dew) and coil temperature.
#[derive(Clone, Copy, Debug)]
pub(crate) struct RangeEnd {
    pub(crate) pressure: Pressure,
    pub(crate) condensing: ThermodynamicTemperature,
    pub(crate) coil: ThermodynamicTemperature,
}

/// The throttling range stands on the need, and its top stays at or below the known point where that is possible.
pub(crate) struct Range {
    pub(crate) low: RangeEnd,
    pub(crate) full: RangeEnd,
    span: TemperatureInterval,
    notes: Vec<SettingsNote>,
}

impl Range {
    /// The range of a system with this need, whose known point condenses at `design`.
    pub(crate) fn new(
        input: &Input,
        need: (Pressure, ThermodynamicTemperature),
        design: ThermodynamicTemperature,
    ) -> Result<Self, Error> {
        let refrigerant = &input.refrigerant;
        let wanted = input.throttling_range.value;
        let narrowest = TemperatureInterval::new::<kelvin_interval>(NARROWEST_RANGE);
        let room = air::difference(design, need.1);
        let mut notes = Vec::new();
        let span = if wanted <= room {
            wanted
        } else if room >= narrowest {
            notes.push(SettingsNote::RangeNarrowed { wanted, used: room });
            room
        } else {
            notes.push(SettingsNote::NeedNearKnownPoint);
            narrowest
        };
        let condensing = need.1 + span;
        let pressure = refrigerant.dew_at_temperature(condensing)?.pressure;
        Ok(Self {
            low: RangeEnd {
                pressure: need.0,
                condensing: need.1,
                coil: coil_temperature(refrigerant, need.0)?,
            },
            full: RangeEnd {
                pressure,
                condensing,
                coil: coil_temperature(refrigerant, pressure)?,
            },
            span,
            notes,
        })
    }
}

/// The settings sheet for a throttling range and an actuator, in air as dense as at the site's low.
pub(crate) fn sheet(
    input: &Input,
    range: Range,
    actuator: &Actuator,
    cold: MassDensity,
) -> Settings {
    let Range {
        low,
        full,
        span,
        notes,
    } = range;
    let need = |rule| {
        Working::new(rule)
            .with("T_need", Quantity::Temperature(low.condensing))
            .with("ΔT", Quantity::Difference(span))
    };
    let throttling = || {
        need(Rule::ThrottlingRange)
            .with("sensed(T_need)", sensed(input.sensing.value, &low))
            .with("sensed(T_need + ΔT)", sensed(input.sensing.value, &full))
    };
    Settings {
        sensing: input.sensing,
        full_speed_pressure: Explained::new(full.pressure, need(Rule::FullSpeedPressure)),
        full_speed_coil: Explained::new(
            full.coil,
            Working::new(Rule::FullSpeedCoil)
                .with("p", Quantity::Pressure(full.pressure))
                .with("x", Quantity::Ratio(crate::controller::SENSOR_QUALITY)),
        ),
        throttling_pressure: Explained::new(full.pressure - low.pressure, throttling()),
        throttling_coil: Explained::new(air::difference(full.coil, low.coil), throttling()),
        drive: drive(input, actuator, cold),
        notes,
    }
}

fn sensed(sensing: Sensing, end: &RangeEnd) -> Quantity {
    match sensing {
        Sensing::CoilTemperature => Quantity::Temperature(end.coil),
        Sensing::LiquidPressure => Quantity::Pressure(end.pressure),
    }
}

fn drive(input: &Input, actuator: &Actuator, cold: MassDensity) -> Drive {
    let share = lowest_speed_fraction(input.bearing.value);
    let full = actuator.full_speed(cold);
    let speed = full * share;
    let lowest_speed = Explained::new(
        speed,
        Working::new(Rule::LowestSpeed)
            .with("k", Quantity::Ratio(share))
            .with("n_full", Quantity::Speed(full)),
    );
    let output = actuator.output_for(speed, cold);
    if !takes_phase_cut(input.motor.value) {
        return Drive::Signal {
            motor: input.motor.value,
            minimum_signal: Explained::new(
                output,
                Working::new(Rule::MinimumSignal)
                    .with("n", Quantity::Speed(speed))
                    .with("n_full", Quantity::Speed(full)),
            ),
            lowest_speed,
        };
    }
    Drive::PhaseCut {
        minimum_output: Explained::new(
            output,
            Working::new(Rule::MinimumOutput)
                .with("n", Quantity::Speed(speed))
                .given("n_n", input.rated_speed, Quantity::Speed)
                .with("ρ", Quantity::Density(cold)),
        ),
        minimum_voltage: input.voltage.value * output,
        lowest_speed,
        start_boost: Explained::new(
            start_boost(input.bearing.value),
            Working::new(Rule::StartBoost),
        ),
    }
}
