//! The system under each control method at one outdoor temperature.

use uom::si::f64::{
    AngularVelocity, ElectricPotential, Frequency, MassDensity, Power, Pressure,
    TemperatureInterval, ThermodynamicTemperature, VolumeRate,
};
use uom::si::frequency::hertz;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::power::watt;
use uom::si::temperature_interval::nanokelvin;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::Refrigerant;

use crate::air;
use crate::compressor::{
    self,
    envelope::{Envelope, Exit, Place, Side},
};
use crate::controller::{Proportional, coil_temperature};
use crate::fan;
use crate::input::Bearing;
use crate::mixed_bank::MixedBank;
use crate::motor::{Friction, InductionMotor};
use crate::phase_cut;
use crate::plan::{Condition, Cycle, Method, Output, Point, Zones};
use crate::problem::Problem;
use crate::root::bracketed;
use crate::system::balance::{Balance, balance};
use crate::system::circuit::Running;
use crate::system::fluid::{pressure, temperature};
use crate::system::line::Line;
use crate::system::zones::{Air, Coil};

/// Density of air that nameplate data of fans and motors refer to (AMCA 210: standard air).
pub(crate) fn standard_density() -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(1.2)
}

/// Most of a condenser that a flooding valve fills with liquid and still keeps in hand. Common practice, no published source.
pub(crate) const MOST_FLOODED: f64 = 0.95;

/// What a wind baffle leaves of the air that wind and draft move. Common practice, no published source.
pub(crate) const BAFFLED: f64 = 0.3;

/// Heat capacity of a condenser with its refrigerant over the heat it rejects, J/K a watt. Common practice, no published source.
pub(crate) const HEAT_CAPACITY: f64 = 2.0;

/// Share of the throttling range above the need at which a stopped fan starts again. Common practice, no published source.
const RESTART: f64 = 0.2;

/// The coldest outdoor temperature that a site can have, K: -60 °C. A method that still holds there has it as its limit.
const COLDEST: f64 = 213.15;

/// How a controller's output becomes speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Actuator {
    /// Phase-cut voltage on an induction motor.
    Voltage(InductionMotor, ElectricPotential),
    /// A signal that the motor or its drive turns into a share of nameplate speed.
    Signal(AngularVelocity),
}

impl Actuator {
    fn density_ratio(density: MassDensity) -> f64 {
        (density / standard_density()).value
    }

    /// Speed at full output in air of this density.
    pub(crate) fn full_speed(&self, density: MassDensity) -> AngularVelocity {
        self.speed(1.0, density)
    }

    /// Speed at a share of full output; zero where the motor stalls.
    pub(crate) fn speed(&self, output: f64, density: MassDensity) -> AngularVelocity {
        match self {
            Actuator::Voltage(motor, _) => motor
                .speed_at(output, Self::density_ratio(density))
                .unwrap_or(motor.synchronous() * 0.0),
            Actuator::Signal(full) => *full * output,
        }
    }

    /// Share of full output that gives a speed.
    pub(crate) fn output_for(&self, speed: AngularVelocity, density: MassDensity) -> f64 {
        match self {
            Actuator::Voltage(motor, _) => motor.voltage_for(speed, Self::density_ratio(density)),
            Actuator::Signal(full) => (speed / *full).value,
        }
    }

    /// Whether the motor would not keep its fan turning on a share of full output, in air of this density and temperature.
    fn stalls(
        &self,
        output: f64,
        density: MassDensity,
        bearing: Bearing,
        outdoor: ThermodynamicTemperature,
    ) -> bool {
        let Actuator::Voltage(motor, _) = self else {
            return false;
        };
        // The models of bearings end at the coldest that a site can have; below that they say no more.
        let keeps = Friction::usual(bearing, outdoor)
            .and_then(|friction| motor.keeps_running(Self::density_ratio(density), friction));
        // At the minimum output itself rounding must not decide.
        keeps.is_ok_and(|keeps| output < keeps * (1.0 - 1e-9)) || output <= 0.0
    }

    /// Electrical power at a share of full speed over that at full speed in standard air.
    ///
    /// Shaft power goes with the cube of speed; a motor that is slowed by its voltage pays the slip on top.
    fn power_share(&self, fraction: f64, density: MassDensity) -> f64 {
        let shaft = fraction.powi(3) * Self::density_ratio(density);
        match self {
            Actuator::Voltage(motor, _) if fraction > 0.0 => {
                let turning = self.full_speed(density) * fraction;
                shaft * (motor.rated() / turning).value.max(1.0)
            }
            _ => shaft,
        }
    }

    fn output(&self, fraction: f64, speed: AngularVelocity) -> Output {
        match self {
            Actuator::Voltage(_, supply) => {
                let angle = phase_cut::firing_angle(fraction);
                Output {
                    fraction,
                    voltage: Some(*supply * fraction),
                    averaging_meter: Some(*supply * phase_cut::averaging_meter_fraction(angle)),
                    firing_angle: Some(angle),
                    speed,
                }
            }
            Actuator::Signal(_) => Output {
                fraction,
                voltage: None,
                averaging_meter: None,
                firing_angle: None,
                speed,
            },
        }
    }
}

/// A system with what its methods need to know.
#[derive(Clone, Debug)]
pub(crate) struct Model {
    pub(crate) refrigerant: Refrigerant,
    pub(crate) line: Line,
    pub(crate) coil: Coil,
    pub(crate) atmosphere: Pressure,
    /// Airflow of all fans at full speed.
    pub(crate) airflow: VolumeRate,
    pub(crate) actuator: Actuator,
    pub(crate) controller: Proportional,
    /// Pressure need and its condensing temperature.
    pub(crate) need: (Pressure, ThermodynamicTemperature),
    /// Full-speed point and its condensing temperature; also the cut-in of switched fans.
    pub(crate) full_speed: (Pressure, ThermodynamicTemperature),
    /// Share of the full airflow that wind and draft move with the fans off.
    pub(crate) idle_airflow: f64,
    /// Whether the speed controller stops the fans below its minimum output.
    pub(crate) stops: bool,
    /// Bearing of the fan motors.
    pub(crate) bearing: Bearing,
    /// Where the compressor's maker lets it run, as far as that is known.
    pub(crate) envelope: Option<Envelope>,
    /// Share of the full airflow with one fan running, two, and so on to all.
    pub(crate) stages: Vec<f64>,
    /// The bank, where the speed controller does not move all fans.
    pub(crate) mixed: Option<MixedBank>,
    /// Electrical power of all fans at full speed in standard air.
    pub(crate) fan_power: Power,
}

/// The air that a method moves, with how it is moved.
#[derive(Clone, Copy, Debug)]
struct Moved {
    /// Share of full speed; for fans in stages the share of them that run.
    fraction: f64,
    airflow: VolumeRate,
    power: Power,
}

impl Model {
    fn density(&self, outdoor: ThermodynamicTemperature) -> MassDensity {
        air::density(self.atmosphere, outdoor)
    }

    fn idle(&self, method: Method) -> f64 {
        match method {
            Method::SpeedWithBaffle => self.idle_airflow * BAFFLED,
            _ => self.idle_airflow,
        }
    }

    /// Airflow where fans move a share of the full one: what wind and draft add fades as the fans fill the coil.
    fn driven(&self, share: f64, idle: f64) -> VolumeRate {
        let wind = idle * idle * (1.0 - share * share).max(0.0);
        fan::airflow(self.airflow, (share * share + wind).sqrt())
    }

    fn slowed(&self, outdoor: ThermodynamicTemperature, fraction: f64, idle: f64) -> Moved {
        Moved {
            fraction,
            airflow: self.driven(fraction, idle),
            power: self.fan_power * self.actuator.power_share(fraction, self.density(outdoor)),
        }
    }

    /// Number of fans that the speed controller does not move.
    fn fixed(&self) -> usize {
        self.mixed.as_ref().map_or(0, MixedBank::fixed)
    }

    /// The controller's fans at a share of full speed beside so many fixed ones that run.
    fn controlled(
        &self,
        outdoor: ThermodynamicTemperature,
        running: usize,
        fraction: f64,
        idle: f64,
    ) -> Moved {
        let Some(mixed) = &self.mixed else {
            return self.slowed(outdoor, fraction, idle);
        };
        let (fixed, modulated) = mixed.shares(running);
        let power = |fraction| {
            let density = self.density(outdoor);
            self.actuator.power_share(fraction, density)
        };
        Moved {
            fraction: fixed + modulated * fraction,
            airflow: self.driven(mixed.airflow(running, fraction), idle),
            power: self.fan_power * (fixed * power(1.0) + modulated * power(fraction)),
        }
    }

    /// Some of the fans at full speed.
    fn staged_air(&self, outdoor: ThermodynamicTemperature, running: usize) -> Moved {
        let share = match running.checked_sub(1) {
            Some(index) => self.stages.get(index).copied().unwrap_or(1.0),
            None => 0.0,
        };
        let fraction = running as f64 / self.stages.len() as f64;
        Moved {
            fraction,
            airflow: self.driven(share, self.idle_airflow),
            power: self.fan_power
                * self.actuator.power_share(1.0, self.density(outdoor))
                * fraction,
        }
    }

    fn air(&self, outdoor: ThermodynamicTemperature, airflow: VolumeRate) -> Air {
        let mass_flow = (self.density(outdoor) * airflow).value;
        self.coil.under(
            outdoor.get::<kelvin>(),
            mass_flow,
            air::specific_heat().value,
        )
    }

    fn balance(&self, outdoor: ThermodynamicTemperature, moved: &Moved, free: f64) -> Balance {
        balance(&self.line, &self.air(outdoor, moved.airflow), free)
    }

    /// Whether head pressure stays at or above a condensing temperature.
    fn stays(
        &self,
        outdoor: ThermodynamicTemperature,
        moved: &Moved,
        free: f64,
        condensing: ThermodynamicTemperature,
    ) -> bool {
        match self.balance(outdoor, moved, free) {
            Balance::Runs(found, _) => found >= condensing.get::<kelvin>(),
            Balance::Trips => false,
            Balance::AboveEnvelope => true,
        }
    }

    /// Share of full speed at minimum output in air of this temperature.
    fn lowest_fraction(&self, outdoor: ThermodynamicTemperature) -> f64 {
        self.speed_fraction(self.controller.minimum, self.density(outdoor))
    }

    /// Share of full speed at the controller's least.
    fn slowest(&self, outdoor: ThermodynamicTemperature) -> f64 {
        if self.stops {
            0.0
        } else {
            self.lowest_fraction(outdoor)
        }
    }

    fn speed_fraction(&self, output: f64, density: MassDensity) -> f64 {
        (self.actuator.speed(output, density) / self.actuator.full_speed(density)).value
    }

    /// The least air that a method moves, and the least share of the coil that it leaves free of liquid.
    fn least(&self, method: Method, outdoor: ThermodynamicTemperature) -> (Moved, f64) {
        let idle = self.idle(method);
        let slowed = |fraction| self.slowed(outdoor, fraction, idle);
        let slowest = || self.controlled(outdoor, 0, self.slowest(outdoor), idle);
        match method {
            Method::FullFan => (slowed(1.0), 1.0),
            Method::OnOff => (slowed(0.0), 1.0),
            Method::Staged => (self.staged_air(outdoor, 1), 1.0),
            Method::SpeedControl | Method::SpeedWithBaffle => (slowest(), 1.0),
            Method::Flooding => (slowed(1.0), 1.0 - MOST_FLOODED),
            Method::SpeedWithFlooding => (slowest(), 1.0 - MOST_FLOODED),
        }
    }

    /// Heat a kelvin that passes from a condensing coil to outdoor air with the least air of a method, W/K.
    pub(crate) fn least_conductance(
        &self,
        method: Method,
        outdoor: ThermodynamicTemperature,
    ) -> f64 {
        let (moved, free) = self.least(method, outdoor);
        self.air(outdoor, moved.airflow).condensing_conductance() * free
    }

    /// Outdoor temperature at which a method just keeps the need with the compressors at a share of their displacement, and the airflow there.
    pub(crate) fn hold_limit(
        &self,
        method: Method,
        load: f64,
    ) -> (ThermodynamicTemperature, VolumeRate) {
        let need = self.need.1.get::<kelvin>();
        let running = self.line.at(need);
        let spare = |outdoor: f64| {
            let (moved, free) = self.least(method, temperature(outdoor));
            1.0 - free
                / load
                / self
                    .air(temperature(outdoor), moved.airflow)
                    .taken(need, &running)
        };
        let limit = if need >= self.line.knee {
            bracketed(COLDEST, need, spare)
        } else {
            // A starved circuit may leave a warmer balance before it reaches the need: what counts is whether it stays.
            let holds = |outdoor: f64| {
                let (moved, free) = self.least(method, temperature(outdoor));
                let stays = self.stays(temperature(outdoor), &moved, free / load, self.need.1);
                if stays { 1.0 } else { -1.0 }
            };
            let between = bracketed(COLDEST, need, holds);
            if spare(between).abs() < 1e-6 {
                bracketed(between - 1e-3, between + 1e-3, spare)
            } else {
                between
            }
        };
        let limit = temperature(limit);
        (limit, self.least(method, limit).0.airflow)
    }

    /// The system under a method.
    pub(crate) fn point(
        &self,
        method: Method,
        outdoor: ThermodynamicTemperature,
    ) -> Result<Point, Problem> {
        match method {
            Method::FullFan => self.at_speed(outdoor, 1.0),
            Method::OnOff => {
                let (off, on) = (
                    self.slowed(outdoor, 0.0, self.idle_airflow),
                    self.slowed(outdoor, 1.0, self.idle_airflow),
                );
                self.switched(outdoor, &[off, on])
            }
            Method::Staged => {
                let stages: Vec<Moved> = (1..=self.stages.len())
                    .map(|running| self.staged_air(outdoor, running))
                    .collect();
                self.switched(outdoor, &stages)
            }
            Method::SpeedControl | Method::SpeedWithBaffle => {
                self.modulated(outdoor, self.idle(method), false)
            }
            Method::SpeedWithFlooding => self.modulated(outdoor, self.idle(method), true),
            Method::Flooding => self.flooded(outdoor, self.slowed(outdoor, 1.0, self.idle_airflow)),
        }
    }

    /// All fans at a share of full speed.
    pub(crate) fn at_speed(
        &self,
        outdoor: ThermodynamicTemperature,
        fraction: f64,
    ) -> Result<Point, Problem> {
        self.steady(
            outdoor,
            self.slowed(outdoor, fraction, self.idle_airflow),
            1.0,
        )
    }

    fn above_envelope(&self) -> Problem {
        Problem::AboveEnvelope {
            highest: temperature(self.line.highest),
        }
    }

    fn steady(
        &self,
        outdoor: ThermodynamicTemperature,
        moved: Moved,
        free: f64,
    ) -> Result<Point, Problem> {
        match self.balance(outdoor, &moved, free) {
            Balance::Runs(condensing, running) => {
                Ok(self.running(outdoor, condensing, &running, moved))
            }
            Balance::Trips => self.tripped(outdoor, moved),
            Balance::AboveEnvelope => Err(self.above_envelope()),
        }
    }

    /// The valve holds the need by filling the coil with liquid, up to what it can.
    fn flooded(&self, outdoor: ThermodynamicTemperature, moved: Moved) -> Result<Point, Problem> {
        if self.stays(outdoor, &moved, 1.0, self.need.1) {
            return self.steady(outdoor, moved, 1.0);
        }
        if !self.stays(outdoor, &moved, 1.0 - MOST_FLOODED, self.need.1) {
            return self.steady(outdoor, moved, 1.0 - MOST_FLOODED);
        }
        let need = self.need.1.get::<kelvin>();
        Ok(self.running(outdoor, need, &self.line.at(need), moved))
    }

    /// Fans that are switched between steps of airflow, off at the need, on at the full-speed point.
    fn switched(
        &self,
        outdoor: ThermodynamicTemperature,
        steps: &[Moved],
    ) -> Result<Point, Problem> {
        let mut above = None;
        for &step in steps.iter().rev() {
            if self.stays(outdoor, &step, 1.0, self.need.1) {
                let settles =
                    above.is_none_or(|_| !self.stays(outdoor, &step, 1.0, self.full_speed.1));
                return match above {
                    Some(more) if !settles => {
                        Ok(self.cycling(outdoor, (step, more), self.full_speed))
                    }
                    _ => self.steady(outdoor, step, 1.0),
                };
            }
            above = Some(step);
        }
        match steps.first() {
            Some(&least) => self.steady(outdoor, least, 1.0),
            None => self.at_speed(outdoor, 1.0),
        }
    }

    /// Means over time of fans that go back and forth between less and more air, at the mean of the need and the upper switching
    /// temperature.
    fn cycling(
        &self,
        outdoor: ThermodynamicTemperature,
        (less, more): (Moved, Moved),
        upper: (Pressure, ThermodynamicTemperature),
    ) -> Point {
        let swing = air::difference(upper.1, self.need.1);
        let condensing = (self.need.1 + swing * 0.5).get::<kelvin>();
        let running = self.line.at(condensing);
        let taken = |moved: &Moved| self.air(outdoor, moved.airflow).taken(condensing, &running);
        // What the coil could reject over what the circuit gives it, less one, with more air and with less.
        let (fall, rise) = (1.0 / taken(&more) - 1.0, 1.0 - 1.0 / taken(&less));
        let share = (rise / (fall + rise)).clamp(0.0, 1.0);
        let mean = |of: fn(&Moved) -> f64| share * of(&more) + (1.0 - share) * of(&less);
        let moved = Moved {
            fraction: mean(|moved| moved.fraction),
            airflow: more.airflow * share + less.airflow * (1.0 - share),
            power: more.power * share + less.power * (1.0 - share),
        };
        let mut point = self.running(outdoor, condensing, &running, moved);
        let shares = self.air(outdoor, more.airflow).shares(condensing, &running);
        point.zones = Zones::of(shares.map(|zone| zone / shares.iter().sum::<f64>()));
        point.swing = Some((self.need.0, upper.0));
        // Heat stored over the swing, taken out at one rate and filled up at the other.
        let starts = fall * rise / (fall + rise) / (HEAT_CAPACITY * swing.value);
        point.starts = Some(Frequency::new::<hertz>(starts.max(0.0)));
        point
    }

    /// Fans slowed by the controller, with or without a flooding valve for what the least speed leaves. Where it does not move all fans, as many
    /// of the rest run as leave head pressure above the need.
    fn modulated(
        &self,
        outdoor: ThermodynamicTemperature,
        idle: f64,
        floods: bool,
    ) -> Result<Point, Problem> {
        let density = self.density(outdoor);
        let minimum = self.controller.minimum;
        let moved = |running: usize, output: f64| {
            let fraction = self.speed_fraction(output, density);
            self.controlled(outdoor, running, fraction, idle)
        };
        let fixed = self.fixed();
        let stays = |running| self.stays(outdoor, &moved(running, minimum), 1.0, self.need.1);
        let (output, mut point) = match (0..=fixed).rev().find(|running| stays(*running)) {
            None => (
                minimum,
                self.at_least(outdoor, moved(0, minimum), idle, floods)?,
            ),
            Some(running) if self.stays(outdoor, &moved(running, 1.0), 1.0, self.full_speed.1) => {
                if running == fixed {
                    (1.0, self.steady(outdoor, moved(running, 1.0), 1.0)?)
                } else {
                    // One more fixed fan cools too much, one less too little: it goes on and off.
                    let steps = (moved(running, 1.0), moved(running + 1, minimum));
                    let point = self.cycling(outdoor, steps, self.full_speed);
                    let found = self.line.at(point.condensing.get::<kelvin>());
                    (self.asked_output(&found), point)
                }
            }
            Some(on) => {
                // A warmer condenser asks for more output, which takes less of the coil.
                let spare = |condensing: f64| {
                    let running = self.line.at(condensing);
                    let air = self.air(outdoor, moved(on, self.asked_output(&running)).airflow);
                    1.0 / air.taken(condensing, &running) - 1.0
                };
                let condensing = bracketed(
                    self.need.1.get::<kelvin>(),
                    self.full_speed.1.get::<kelvin>(),
                    spare,
                );
                let running = self.line.at(condensing);
                let output = self.asked_output(&running);
                (
                    output,
                    self.running(outdoor, condensing, &running, moved(on, output)),
                )
            }
        };
        let speed = self.actuator.speed(output, density);
        point.output = Some(self.actuator.output(output, speed));
        // A fan that its controller stops, or a compressor that stands, is no fan that stalls.
        let turns =
            point.cycle.is_some() && point.swing.is_none() && point.fan_speed_fraction > 0.0;
        let stalls = |output| self.actuator.stalls(output, density, self.bearing, outdoor);
        if turns && stalls(output) {
            point.condition = Condition::StalledFan;
        }
        Ok(point)
    }

    /// Where even minimum output cools too much.
    fn at_least(
        &self,
        outdoor: ThermodynamicTemperature,
        least: Moved,
        idle: f64,
        floods: bool,
    ) -> Result<Point, Problem> {
        let off = self.slowed(outdoor, 0.0, idle);
        let left = if self.stops { off } else { least };
        if self.stops && self.stays(outdoor, &off, 1.0, self.need.1) {
            self.stopping(outdoor, off, least)
        } else if floods {
            self.flooded(outdoor, left)
        } else {
            self.steady(outdoor, left, 1.0)
        }
    }

    /// Fans that stop at the need and start again a little above, at minimum output.
    fn stopping(
        &self,
        outdoor: ThermodynamicTemperature,
        off: Moved,
        least: Moved,
    ) -> Result<Point, Problem> {
        let range = air::difference(self.full_speed.1, self.need.1);
        let restart = self.need.1 + range * RESTART;
        if !self.stays(outdoor, &off, 1.0, restart) {
            return self.steady(outdoor, off, 1.0);
        }
        let head = pressure(self.line.at(restart.get::<kelvin>()).head);
        Ok(self.cycling(outdoor, (off, least), (head, restart)))
    }

    fn asked_output(&self, running: &Running) -> f64 {
        self.controller
            .output(pressure(running.head), temperature(running.coil))
    }

    fn running(
        &self,
        outdoor: ThermodynamicTemperature,
        condensing: f64,
        running: &Running,
        moved: Moved,
    ) -> Point {
        let air = self.air(outdoor, moved.airflow);
        let heat = running.rejected();
        let over = condensing - outdoor.get::<kelvin>();
        // At the hold limit itself rounding must not decide.
        let holds =
            temperature(condensing) >= self.need.1 - TemperatureInterval::new::<nanokelvin>(100.0);
        Point {
            outdoor,
            condensing: temperature(condensing),
            pressure: pressure(running.head),
            coil: temperature(running.coil),
            fan_speed_fraction: moved.fraction,
            airflow: moved.airflow,
            air_capacity_rate: conductance(air.capacity_rate),
            conductance: conductance(air.conductance),
            effectiveness: heat / (air.capacity_rate * over),
            heat_rejected: Power::new::<watt>(heat),
            fan_power: moved.power,
            zones: Zones::of(air.shares(condensing, running)),
            cycle: Some(Cycle::of(running)),
            output: None,
            swing: None,
            starts: None,
            condition: if holds && self.is_above_envelope(condensing, running) {
                Condition::AboveEnvelope
            } else if holds {
                Condition::Holds
            } else if condensing < self.line.knee {
                Condition::Starved
            } else {
                Condition::BelowNeed
            },
            holds,
        }
    }

    fn is_above_envelope(&self, condensing: f64, running: &Running) -> bool {
        let Some(envelope) = &self.envelope else {
            return false;
        };
        let place = envelope.place(compressor::Point {
            evaporating: temperature(running.evaporating),
            condensing: temperature(condensing),
        });
        matches!(
            place,
            Ok(Place::Outside {
                condensing: Some(Exit {
                    side: Side::CondensingTooHigh,
                    ..
                }),
                ..
            })
        )
    }

    /// Outdoor temperature above which even all fans at full speed condense above a temperature; `None` where that is warmer than the system
    /// is worked out for.
    pub(crate) fn warmest_outdoor(
        &self,
        condensing: ThermodynamicTemperature,
    ) -> Option<ThermodynamicTemperature> {
        let highest = condensing.get::<kelvin>();
        if highest > self.line.highest || highest < self.line.knee {
            return None;
        }
        let running = self.line.at(highest);
        let outdoor = bracketed(COLDEST, highest, |outdoor| {
            let full = self.slowed(temperature(outdoor), 1.0, self.idle_airflow);
            1.0 - 1.0
                / self
                    .air(temperature(outdoor), full.airflow)
                    .taken(highest, &running)
        });
        Some(temperature(outdoor))
    }

    /// The compressor stands, and the condenser is as cold as the air.
    fn tripped(&self, outdoor: ThermodynamicTemperature, moved: Moved) -> Result<Point, Problem> {
        let head = self
            .refrigerant
            .dew_pressure(outdoor)
            .map_err(Problem::Refrigerant)?;
        let air = self.air(outdoor, moved.airflow);
        Ok(Point {
            outdoor,
            condensing: outdoor,
            pressure: head,
            coil: coil_temperature(&self.refrigerant, head).map_err(Problem::Refrigerant)?,
            fan_speed_fraction: moved.fraction,
            airflow: moved.airflow,
            air_capacity_rate: conductance(air.capacity_rate),
            conductance: conductance(air.conductance),
            effectiveness: 0.0,
            heat_rejected: Power::default(),
            fan_power: moved.power,
            zones: Zones::of([0.0; 3]),
            cycle: None,
            output: None,
            swing: None,
            starts: None,
            condition: Condition::LowPressureTrip,
            holds: false,
        })
    }
}

fn conductance(value: f64) -> uom::si::f64::ThermalConductance {
    uom::si::f64::ThermalConductance::new::<uom::si::thermal_conductance::watt_per_kelvin>(value)
}
