//! The winter plan: everything that is computed for a system.

use uom::si::f64::{
    Angle, AngularVelocity, ElectricPotential, Power, Pressure, TemperatureInterval,
    ThermalConductance, ThermodynamicTemperature, VolumeRate,
};

use crate::build::highest_condensing;
use crate::explain::{Explained, Given};
use crate::input::Input;
use crate::method::Model;
use crate::need::PressureNeed;
use crate::problem::Problem;
use crate::settings::Settings;
use crate::verdict::{Caution, Verdict};

/// A way of keeping head pressure up, or none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Method {
    /// All fans at full speed always.
    FullFan,
    /// All fans on one pressure switch.
    OnOff,
    /// All fans slowed together.
    SpeedControl,
}

impl Method {
    /// Every method of a plan.
    pub const ALL: [Method; 3] = [Method::FullFan, Method::OnOff, Method::SpeedControl];

    /// The stable name that records and the batch form carry.
    pub fn key(self) -> &'static str {
        match self {
            Method::FullFan => "full_fan",
            Method::OnOff => "on_off",
            Method::SpeedControl => "speed_control",
        }
    }
}

/// The known point with the fans at full speed, from which the condenser is scaled.
#[derive(Clone, Debug)]
pub struct Design {
    /// Outdoor temperature.
    pub outdoor: Given<ThermodynamicTemperature>,
    /// Condensing temperature (dew).
    pub condensing: Explained<ThermodynamicTemperature>,
    /// Head pressure.
    pub pressure: Pressure,
    /// Heat rejected with the compressor at full load.
    pub heat_rejected: Explained<Power>,
    /// Airflow of all fans at full speed.
    pub airflow: Explained<VolumeRate>,
    /// Heat capacity rate of that air.
    pub air_capacity_rate: Explained<ThermalConductance>,
    /// Condenser conductance at that airflow.
    pub conductance: Explained<ThermalConductance>,
    /// Effectiveness, a share of one.
    pub effectiveness: f64,
}

/// Lowest outdoor temperature at which each method keeps head pressure at or above the need.
#[derive(Clone, Debug)]
pub struct HoldLimits {
    /// With all fans at full speed.
    pub full_fan: Explained<ThermodynamicTemperature>,
    /// With the fans cycled by a pressure switch.
    pub on_off: Explained<ThermodynamicTemperature>,
    /// With speed control.
    pub speed_control: Explained<ThermodynamicTemperature>,
}

impl HoldLimits {
    /// The limit of one method.
    pub fn of(&self, method: Method) -> &Explained<ThermodynamicTemperature> {
        match method {
            Method::FullFan => &self.full_fan,
            Method::OnOff => &self.on_off,
            Method::SpeedControl => &self.speed_control,
        }
    }
}

/// The state of a condenser under one method at one outdoor temperature.
///
/// `heat_rejected = effectiveness · air_capacity_rate · (condensing − outdoor)` and
/// `effectiveness = 1 − exp(−conductance / air_capacity_rate)` hold at every point. For a cycling fan the values are means
/// over time, and `swing` holds the pressures between which it saws.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Outdoor temperature.
    pub outdoor: ThermodynamicTemperature,
    /// Condensing temperature (dew).
    pub condensing: ThermodynamicTemperature,
    /// Head pressure.
    pub pressure: Pressure,
    /// Temperature that a sensor half way through condensing sees.
    pub coil: ThermodynamicTemperature,
    /// Share of full speed; for a cycling fan the share of time that it runs.
    pub fan_speed_fraction: f64,
    /// Airflow through the condenser.
    pub airflow: VolumeRate,
    /// Heat capacity rate of that air.
    pub air_capacity_rate: ThermalConductance,
    /// Condenser conductance at that airflow.
    pub conductance: ThermalConductance,
    /// Effectiveness, a share of one.
    pub effectiveness: f64,
    /// Heat rejected.
    pub heat_rejected: Power,
    /// What the controller gives the motor, for speed control.
    pub output: Option<Output>,
    /// Lowest and highest head pressure while a fan cycles.
    pub swing: Option<(Pressure, Pressure)>,
    /// Whether head pressure stays at or above the need.
    pub holds: bool,
}

impl Point {
    /// Condensing temperature over outdoor temperature.
    pub fn over_ambient(&self) -> TemperatureInterval {
        crate::air::difference(self.condensing, self.outdoor)
    }
}

/// What a meter must show at the motor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Output {
    /// Share of full output.
    pub fraction: f64,
    /// Motor voltage, r.m.s., where the supply is phase-cut.
    pub voltage: Option<ElectricPotential>,
    /// What a meter that averages shows in place of the r.m.s. voltage.
    pub averaging_meter: Option<ElectricPotential>,
    /// Firing angle of the phase-cut supply.
    pub firing_angle: Option<Angle>,
    /// Shaft speed.
    pub speed: AngularVelocity,
}

/// All methods at one outdoor temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rung {
    /// All fans at full speed.
    pub full_fan: Point,
    /// Fans cycled.
    pub on_off: Point,
    /// Fans slowed.
    pub speed_control: Point,
}

impl Rung {
    /// The point of one method.
    pub fn of(&self, method: Method) -> &Point {
        match method {
            Method::FullFan => &self.full_fan,
            Method::OnOff => &self.on_off,
            Method::SpeedControl => &self.speed_control,
        }
    }
}

/// One curve a method along the outdoor temperatures that were asked for.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Curves {
    /// All fans at full speed.
    pub full_fan: Vec<Point>,
    /// Fans cycled.
    pub on_off: Vec<Point>,
    /// Fans slowed.
    pub speed_control: Vec<Point>,
}

/// A winter plan.
#[derive(Clone, Debug)]
pub struct Plan {
    /// What it was made from.
    pub input: Input,
    /// Atmospheric pressure at the site.
    pub atmosphere: Explained<Pressure>,
    /// The known point.
    pub design: Design,
    /// The lowest head pressure that the system can live with.
    pub need: PressureNeed,
    /// The values to enter.
    pub settings: Settings,
    /// Cut-out and cut-in pressure of the on/off method.
    pub on_off_points: Explained<(Pressure, Pressure)>,
    /// Hold limit of each method.
    pub hold: HoldLimits,
    /// The verdict.
    pub verdict: Verdict,
    /// What can hurt someone in this plan's work.
    pub cautions: Vec<Caution>,
    pub(crate) model: Model,
}

impl Plan {
    /// All methods at one outdoor temperature.
    ///
    /// # Errors
    /// [`Problem::AboveCritical`] where it is so hot that even the full fan condenses too near the critical point;
    /// [`Problem::Refrigerant`] where the refrigerant has no saturated state that cold.
    pub fn at(&self, outdoor: ThermodynamicTemperature) -> Result<Rung, Problem> {
        self.check_below_critical(outdoor, 1.0)?;
        Ok(Rung {
            full_fan: self.model.full_fan(outdoor).map_err(Problem::Refrigerant)?,
            on_off: self.model.on_off(outdoor).map_err(Problem::Refrigerant)?,
            speed_control: self
                .model
                .speed_control(outdoor)
                .map_err(Problem::Refrigerant)?,
        })
    }

    /// The condenser at a share of full fan speed, whatever a controller would ask for: what a fan held at that speed would do.
    ///
    /// # Errors
    /// As [`Plan::at`], at that speed.
    pub fn at_speed(
        &self,
        outdoor: ThermodynamicTemperature,
        speed_fraction: f64,
    ) -> Result<Point, Problem> {
        let speed_fraction = speed_fraction.clamp(0.0, 1.0);
        self.check_below_critical(outdoor, speed_fraction)?;
        self.model
            .steady(outdoor, speed_fraction, None)
            .map_err(Problem::Refrigerant)
    }

    fn check_below_critical(
        &self,
        outdoor: ThermodynamicTemperature,
        speed_fraction: f64,
    ) -> Result<(), Problem> {
        let condensing = self.model.condensing(outdoor, speed_fraction);
        let highest = highest_condensing(&self.input);
        if condensing > highest || condensing.value.is_nan() {
            return Err(Problem::AboveCritical {
                condensing,
                highest,
            });
        }
        Ok(())
    }

    /// Curves of all methods along outdoor temperatures, in the order given.
    ///
    /// # Errors
    /// As [`Plan::at`], with the index of the first outdoor temperature that fails.
    pub fn curves(&self, outdoor: &[ThermodynamicTemperature]) -> Result<Curves, (usize, Problem)> {
        let mut curves = Curves::default();
        for (index, &temperature) in outdoor.iter().enumerate() {
            let rung = self.at(temperature).map_err(|problem| (index, problem))?;
            curves.full_fan.push(rung.full_fan);
            curves.on_off.push(rung.on_off);
            curves.speed_control.push(rung.speed_control);
        }
        Ok(curves)
    }
}
