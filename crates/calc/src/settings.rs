//! The settings sheet: the values to enter on the controller, each with its reason.

use uom::si::electric_potential::volt;
use uom::si::f64::{
    AngularVelocity, ElectricPotential, Frequency, MassDensity, Pressure, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::Error;

use crate::air;
use crate::controller::coil_temperature;
use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::fan_motor::{FanMotor, Outcome};
use crate::input::{Input, MotorKind, Sensing};
use crate::method::Actuator;
use crate::motor::{
    EcMotor, Signal, lowest_speed_fraction, usual_boost_range, usual_lowest_frequency,
};
use crate::plan::Design;

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
        /// Lowest output as a share of the supply voltage, r.m.s.: what the bearing asks for, or what keeps the motor from stalling in the cold,
        /// whichever is higher.
        minimum_output: Explained<f64>,
        /// The same as a voltage.
        minimum_voltage: ElectricPotential,
        /// The speed at that output.
        lowest_speed: Explained<AngularVelocity>,
        /// Time at full output at each start from rest.
        start_boost: Explained<Time>,
    },
    /// By the own control input of an electronically commutated motor, which a phase-cut supply would harm.
    Signal {
        /// Lowest signal as a share of full.
        minimum_signal: Explained<f64>,
        /// The same on an input for 0 to 10 V.
        volts: Explained<ElectricPotential>,
        /// The same on an input for a pulse width, the share of the time that it is on.
        duty: Explained<f64>,
        /// The speed at that signal.
        lowest_speed: Explained<AngularVelocity>,
    },
    /// By a frequency drive on a three-phase motor, which a phase-cut supply would harm.
    Frequency {
        /// Lowest signal to the drive as a share of full.
        minimum_signal: Explained<f64>,
        /// Lowest frequency that the drive keeps.
        lowest: Explained<Frequency>,
        /// The speed at that signal.
        lowest_speed: Explained<AngularVelocity>,
    },
}

impl Drive {
    /// Lowest output as a share of full output.
    pub fn minimum_output(&self) -> &Explained<f64> {
        match self {
            Drive::PhaseCut { minimum_output, .. } => minimum_output,
            Drive::Signal { minimum_signal, .. } | Drive::Frequency { minimum_signal, .. } => {
                minimum_signal
            }
        }
    }

    /// Lowest speed that the method may run the fan at.
    pub fn lowest_speed(&self) -> &Explained<AngularVelocity> {
        match self {
            Drive::PhaseCut { lowest_speed, .. }
            | Drive::Signal { lowest_speed, .. }
            | Drive::Frequency { lowest_speed, .. } => lowest_speed,
        }
    }

    /// The kind of motor that refuses a phase-cut supply; `None` where it takes one.
    pub fn refuses_phase_cut(&self) -> Option<MotorKind> {
        match self {
            Drive::PhaseCut { .. } => None,
            Drive::Signal { .. } => Some(MotorKind::ElectronicallyCommutated),
            Drive::Frequency { .. } => Some(MotorKind::ThreePhase),
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
    /// A start at the site's low takes longer than controllers give full output for.
    BoostTooShort {
        /// The time that it takes, with its reserve.
        wanted: Time,
        /// The longest that controllers offer.
        used: Time,
    },
    /// At the site's low the motor does not bring its fan up from rest, even at full output.
    WillNotStart,
    /// Above this outdoor temperature the compressor condenses above what its maker allows, even with all fans at full speed.
    AboveEnvelope {
        /// The outdoor temperature.
        from: ThermodynamicTemperature,
        /// The highest condensing temperature that the maker allows.
        highest: ThermodynamicTemperature,
    },
}

/// Narrowest throttling range that a fan settles on without hunting, K. Common practice, no published source.
pub(crate) const NARROWEST_RANGE: f64 = 2.0;

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
    /// The range of a system with this need, whose known point condenses at `design`; it also stays below the compressor's highest.
    pub(crate) fn new(
        input: &Input,
        need: (Pressure, ThermodynamicTemperature),
        design: ThermodynamicTemperature,
    ) -> Result<Self, Error> {
        let refrigerant = &input.refrigerant;
        let wanted = input.throttling_range.value;
        let narrowest = TemperatureInterval::new::<kelvin_interval>(NARROWEST_RANGE);
        let top = input
            .compressor_highest
            .map_or(design, |highest| highest.min(design));
        let room = air::difference(top, need.1);
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
    design: &Design,
) -> Settings {
    let Range {
        low,
        full,
        span,
        mut notes,
    } = range;
    let drive = match *actuator {
        Actuator::Voltage(motor, _) => {
            let fan = FanMotor {
                input,
                motor,
                airflow: design.airflow.value,
                power: design.fan_power.value,
                cold,
            };
            notes.extend(start_note(&fan));
            phase_cut(&fan, actuator)
        }
        Actuator::Signal(_) => by_signal(input, actuator, cold),
    };
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
        drive,
        notes,
    }
}

fn sensed(sensing: Sensing, end: &RangeEnd) -> Quantity {
    match sensing {
        Sensing::CoilTemperature => Quantity::Temperature(end.coil),
        Sensing::LiquidPressure => Quantity::Pressure(end.pressure),
    }
}

/// What the start at the site's low asks for beyond what can be set.
fn start_note(fan: &FanMotor) -> Option<SettingsNote> {
    let outcome = fan.outcome().ok()?;
    let (wanted, used) = (fan.wanted_boost(outcome), usual_boost_range().1);
    match outcome {
        Outcome::Never => Some(SettingsNote::WillNotStart),
        Outcome::Starts(_) if wanted > used => Some(SettingsNote::BoostTooShort { wanted, used }),
        Outcome::Starts(_) => None,
    }
}

/// The lowest speed that the bearing allows.
fn bearing_speed(input: &Input, full: AngularVelocity) -> Explained<AngularVelocity> {
    let share = lowest_speed_fraction(input.bearing.value);
    Explained::new(
        full * share,
        Working::new(Rule::LowestSpeed)
            .with("k", Quantity::Ratio(share))
            .with("n_full", Quantity::Speed(full)),
    )
}

/// The bearing's lowest speed, or the one below which the motor would stall in the cold.
fn phase_cut(fan: &FanMotor, actuator: &Actuator) -> Drive {
    let (input, cold) = (fan.input, fan.cold);
    let for_bearing = bearing_speed(input, actuator.full_speed(cold));
    let by_bearing = actuator.output_for(for_bearing.value, cold);
    let by_stall = fan.keeps_running().min(1.0);
    let balance = |rule, speed| {
        Working::new(rule)
            .with("n", Quantity::Speed(speed))
            .given("n_n", input.rated_speed, Quantity::Speed)
            .with("ρ", Quantity::Density(cold))
    };
    let (minimum_output, lowest_speed) = if by_stall > by_bearing {
        let speed = actuator.speed(by_stall, cold);
        let mut stall = Working::new(Rule::StallOutput)
            .given("n_n", input.rated_speed, Quantity::Speed)
            .with("ρ", Quantity::Density(cold))
            .with("T_o", Quantity::Temperature(input.outdoor_low))
            .with("u_bearing", Quantity::Ratio(by_bearing));
        if let Ok(friction) = fan.friction() {
            stall = stall.with("f", Quantity::Ratio(friction.running()));
        }
        let at_it = Working::new(Rule::StallSpeed)
            .with("u", Quantity::Ratio(by_stall))
            .given("n_n", input.rated_speed, Quantity::Speed)
            .with("ρ", Quantity::Density(cold));
        (
            Explained::new(by_stall, stall),
            Explained::new(speed, at_it),
        )
    } else {
        let working = balance(Rule::MinimumOutput, for_bearing.value)
            .with("u_stall", Quantity::Ratio(by_stall));
        (Explained::new(by_bearing, working), for_bearing)
    };
    Drive::PhaseCut {
        minimum_voltage: input.voltage.value * minimum_output.value,
        minimum_output,
        lowest_speed,
        start_boost: fan.boost(),
    }
}

fn by_signal(input: &Input, actuator: &Actuator, cold: MassDensity) -> Drive {
    let full = actuator.full_speed(cold);
    let lowest_speed = bearing_speed(input, full);
    let speed = lowest_speed.value;
    let output = actuator.output_for(speed, cold);
    let by_speed = |rule| {
        Working::new(rule)
            .with("n", Quantity::Speed(speed))
            .with("n_full", Quantity::Speed(full))
    };
    let minimum_signal = Explained::new(output, by_speed(Rule::MinimumSignal));
    if input.motor.value == MotorKind::ThreePhase {
        let share = lowest_speed_fraction(input.bearing.value);
        return Drive::Frequency {
            minimum_signal,
            lowest: Explained::new(
                usual_lowest_frequency(input.bearing.value, input.frequency.value),
                Working::new(Rule::LowestFrequency)
                    .with("k", Quantity::Ratio(share))
                    .given("f_n", input.frequency, Quantity::Frequency),
            ),
            lowest_speed,
        };
    }
    let signal = |motor: Result<EcMotor, _>| motor.and_then(|motor| motor.signal_for(speed)).ok();
    // The usual ranges hold every share of full speed that a bearing asks for; the plain share stands in for what cannot happen.
    let volts = match signal(EcMotor::usual_voltage(full)) {
        Some(Signal::Voltage(volts)) => volts,
        _ => ElectricPotential::new::<volt>(10.0 * output),
    };
    let duty = match signal(EcMotor::usual_duty(full)) {
        Some(Signal::Duty(duty)) => duty,
        _ => output,
    };
    Drive::Signal {
        minimum_signal,
        volts: Explained::new(volts, by_speed(Rule::MinimumSignalVolts)),
        duty: Explained::new(duty, by_speed(Rule::MinimumSignalDuty)),
        lowest_speed,
    }
}
