//! The winter plan: everything that is computed for a system.

use uom::si::f64::{
    Angle, AngularVelocity, AvailableEnergy, ElectricPotential, Frequency, MassRate, Power,
    Pressure, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, VolumeRate,
};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::power::watt;

use crate::explain::{Explained, Given};
use crate::input::Input;
use crate::method::Model;
use crate::need::PressureNeed;
use crate::problem::Problem;
use crate::recommendation::{self, Recommendation};
use crate::settings::Settings;
use crate::system::circuit::Running;
use crate::system::fluid;
use crate::verdict::{Caution, Verdict};

/// A way of keeping head pressure up, or none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Method {
    /// All fans at full speed always.
    FullFan,
    /// All fans on one pressure switch.
    OnOff,
    /// Fans switched off one after another; the last one always runs.
    Staged,
    /// All fans slowed together.
    SpeedControl,
    /// The condenser filled with liquid as far as it takes, all fans at full speed.
    Flooding,
    /// Fans slowed behind a wind baffle.
    SpeedWithBaffle,
    /// Fans slowed, and the condenser filled with liquid where the least speed still cools too much.
    SpeedWithFlooding,
}

impl Method {
    /// Every method of a plan, in the order of a comparison.
    pub const ALL: [Method; 7] = [
        Method::FullFan,
        Method::OnOff,
        Method::Staged,
        Method::SpeedControl,
        Method::Flooding,
        Method::SpeedWithBaffle,
        Method::SpeedWithFlooding,
    ];

    /// The stable name that records and the batch form carry.
    pub fn key(self) -> &'static str {
        match self {
            Method::FullFan => "full_fan",
            Method::OnOff => "on_off",
            Method::Staged => "staged",
            Method::SpeedControl => "speed_control",
            Method::Flooding => "flooding",
            Method::SpeedWithBaffle => "speed_with_baffle",
            Method::SpeedWithFlooding => "speed_with_flooding",
        }
    }

    /// The method with this stable name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|method| method.key() == key)
    }

    /// Whether a speed controller moves the fans.
    pub fn is_modulated(self) -> bool {
        matches!(
            self,
            Method::SpeedControl | Method::SpeedWithBaffle | Method::SpeedWithFlooding
        )
    }

    /// Whether liquid fills part of the condenser.
    pub fn floods(self) -> bool {
        matches!(self, Method::Flooding | Method::SpeedWithFlooding)
    }
}

/// One value a method.
#[derive(Clone, Debug, PartialEq)]
pub struct PerMethod<T>([T; 7]);

impl<T> PerMethod<T> {
    /// The value of each method.
    pub(crate) fn from_fn(mut of: impl FnMut(Method) -> T) -> Self {
        Self(Method::ALL.map(&mut of))
    }

    /// The value of each method.
    ///
    /// # Errors
    /// The first error of `of`.
    pub(crate) fn try_from_fn<E>(mut of: impl FnMut(Method) -> Result<T, E>) -> Result<Self, E> {
        let [a, b, c, d, e, f, g] = Method::ALL;
        Ok(Self([
            of(a)?,
            of(b)?,
            of(c)?,
            of(d)?,
            of(e)?,
            of(f)?,
            of(g)?,
        ]))
    }

    /// The value of one method.
    pub fn of(&self, method: Method) -> &T {
        &self.0[method as usize]
    }

    pub(crate) fn of_mut(&mut self, method: Method) -> &mut T {
        &mut self.0[method as usize]
    }

    /// Each method with its value.
    pub fn iter(&self) -> impl Iterator<Item = (Method, &T)> {
        Method::ALL.into_iter().zip(&self.0)
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
    /// Conductance of the condenser while condensing, at that airflow.
    pub conductance: Explained<ThermalConductance>,
    /// Heat rejected over what the air could take at condensing temperature, a share of one.
    pub effectiveness: f64,
    /// Subcooling at the condenser's outlet.
    pub subcooling: TemperatureInterval,
    /// What the cycle does there.
    pub cycle: Cycle,
    /// How the coil is divided there.
    pub zones: Zones,
    /// Electrical power of all fans at full speed, in standard air.
    pub fan_power: Given<Power>,
}

/// The refrigerant round the cycle at one balance.
///
/// Cooling capacity and compressor power sum to the heat rejected; expansion keeps the liquid's enthalpy.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cycle {
    /// Mass flow of the refrigerant.
    pub mass_flow: MassRate,
    /// Evaporating pressure.
    pub suction_pressure: Pressure,
    /// Evaporating temperature (dew).
    pub evaporating: ThermodynamicTemperature,
    /// Temperature at the compressor's inlet.
    pub suction: ThermodynamicTemperature,
    /// Temperature at the compressor's outlet.
    pub discharge: ThermodynamicTemperature,
    /// Temperature of the liquid at the condenser's outlet.
    pub liquid: ThermodynamicTemperature,
    /// Enthalpy at the compressor's inlet.
    pub suction_enthalpy: AvailableEnergy,
    /// Enthalpy at the compressor's outlet.
    pub discharge_enthalpy: AvailableEnergy,
    /// Enthalpy of the liquid, before and after expansion.
    pub liquid_enthalpy: AvailableEnergy,
    /// Share of the evaporator that is wet.
    pub wetted: f64,
    /// Cooling capacity.
    pub cooling: Power,
    /// Power that the compressor puts into the refrigerant.
    pub compressor_power: Power,
}

impl Cycle {
    pub(crate) fn of(running: &Running) -> Self {
        Self {
            mass_flow: MassRate::new::<kilogram_per_second>(running.flow),
            suction_pressure: fluid::pressure(running.suction_pressure),
            evaporating: fluid::temperature(running.evaporating),
            suction: fluid::temperature(running.suction),
            discharge: fluid::temperature(running.discharge),
            liquid: fluid::temperature(running.liquid),
            suction_enthalpy: fluid::enthalpy(running.suction_enthalpy),
            discharge_enthalpy: fluid::enthalpy(running.discharge_enthalpy),
            liquid_enthalpy: fluid::enthalpy(running.liquid_enthalpy),
            wetted: running.wetted,
            cooling: Power::new::<watt>(running.cooling()),
            compressor_power: Power::new::<watt>(running.compression()),
        }
    }

    /// Superheat at the compressor's inlet.
    pub fn superheat(&self) -> TemperatureInterval {
        crate::air::difference(self.suction, self.evaporating)
    }
}

/// Shares of the condenser, from inlet to outlet; they sum to one where the system runs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Zones {
    /// Cools the hot gas.
    pub desuperheating: f64,
    /// Condenses.
    pub condensing: f64,
    /// Cools the liquid.
    pub subcooling: f64,
    /// Holds liquid and passes next to no heat.
    pub flooded: f64,
}

impl Zones {
    /// Zones that take these shares; the rest is flooded.
    pub(crate) fn of([desuperheating, condensing, subcooling]: [f64; 3]) -> Self {
        let taken = desuperheating + condensing + subcooling;
        // A share of rounding is no liquid.
        let rest = 1.0 - taken;
        Self {
            desuperheating,
            condensing,
            subcooling,
            flooded: if taken > 0.0 && rest > 1e-7 {
                rest
            } else {
                0.0
            },
        }
    }
}

/// What comes of a system under a method at one outdoor temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Condition {
    /// Head pressure stays at or above the need.
    Holds,
    /// Head pressure lies below the need.
    BelowNeed,
    /// The metering device is fully open and the evaporator starved.
    Starved,
    /// The low-pressure cut-out stops the compressor.
    LowPressureTrip,
    /// The voltage is too low for the motor to keep its fan turning in this cold: it stops and starts, and head pressure is no lower than with
    /// a fan that turns.
    StalledFan,
    /// The compressor condenses above what its maker allows.
    AboveEnvelope,
}

impl Condition {
    /// The stable name that the batch form carries.
    pub fn key(self) -> &'static str {
        match self {
            Condition::Holds => "holds",
            Condition::BelowNeed => "below_need",
            Condition::Starved => "starved",
            Condition::LowPressureTrip => "low_pressure_trip",
            Condition::StalledFan => "stalled_fan",
            Condition::AboveEnvelope => "above_envelope",
        }
    }
}

/// Lowest outdoor temperature at which each method keeps head pressure at or above the need.
pub type HoldLimits = PerMethod<Explained<ThermodynamicTemperature>>;

/// All methods at one outdoor temperature.
pub type Rung = PerMethod<Point>;

/// One curve a method along the outdoor temperatures that were asked for.
pub type Curves = PerMethod<Vec<Point>>;

/// The state of a system under one method at one outdoor temperature.
///
/// `heat_rejected = effectiveness · air_capacity_rate · (condensing − outdoor)`, and it is cooling capacity and compressor power together.
/// For switched fans the values are means over time, and `swing` holds the pressures between which head pressure saws.
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
    /// Share of full speed; for switched fans the share of them that runs, over time.
    pub fan_speed_fraction: f64,
    /// Airflow through the condenser.
    pub airflow: VolumeRate,
    /// Heat capacity rate of that air.
    pub air_capacity_rate: ThermalConductance,
    /// Conductance of the condenser while condensing, at that airflow.
    pub conductance: ThermalConductance,
    /// Heat rejected over what the air could take at condensing temperature; above one where hot gas warms the air past it.
    pub effectiveness: f64,
    /// Heat rejected.
    pub heat_rejected: Power,
    /// Electrical power of the fans.
    pub fan_power: Power,
    /// How the coil is divided.
    pub zones: Zones,
    /// What the cycle does; `None` where the compressor stands.
    pub cycle: Option<Cycle>,
    /// What the controller gives the motor, for speed control.
    pub output: Option<Output>,
    /// Lowest and highest head pressure while a fan cycles.
    pub swing: Option<(Pressure, Pressure)>,
    /// How often a cycling fan starts.
    pub starts: Option<Frequency>,
    /// What comes of it.
    pub condition: Condition,
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
    /// Where the switched fans of the staged method go off and on again, in the order in which they go off; none where there is one fan.
    pub stage_points: Vec<Explained<(Pressure, Pressure)>>,
    /// Hold limit of each method.
    pub hold: HoldLimits,
    /// Hold limit of each method with the compressors at their lowest load, where that is less than the full one: the limits that the
    /// recommendation goes by.
    pub hold_at_lowest_load: Option<HoldLimits>,
    /// The method to use, and why.
    pub recommendation: Recommendation,
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
    /// [`Problem::AboveEnvelope`] where it is so hot that even the full fan condenses too near the critical point or above what
    /// the compressor lifts to; [`Problem::Refrigerant`] where the refrigerant has no saturated state that cold.
    pub fn at(&self, outdoor: ThermodynamicTemperature) -> Result<Rung, Problem> {
        PerMethod::try_from_fn(|method| self.model.point(method, outdoor))
    }

    /// One method at one outdoor temperature.
    ///
    /// # Errors
    /// As [`Plan::at`].
    pub fn point(
        &self,
        method: Method,
        outdoor: ThermodynamicTemperature,
    ) -> Result<Point, Problem> {
        self.model.point(method, outdoor)
    }

    /// The system at a share of full fan speed, whatever a controller would ask for: what a fan held at that speed would do.
    ///
    /// # Errors
    /// As [`Plan::at`], at that speed.
    pub fn at_speed(
        &self,
        outdoor: ThermodynamicTemperature,
        speed_fraction: f64,
    ) -> Result<Point, Problem> {
        self.model.at_speed(outdoor, speed_fraction.clamp(0.0, 1.0))
    }

    /// Curves of all methods along outdoor temperatures, in the order given.
    ///
    /// # Errors
    /// As [`Plan::at`], with the index of the first outdoor temperature that fails.
    pub fn curves(&self, outdoor: &[ThermodynamicTemperature]) -> Result<Curves, (usize, Problem)> {
        let mut curves = Curves::from_fn(|_| Vec::with_capacity(outdoor.len()));
        for (index, &temperature) in outdoor.iter().enumerate() {
            let rung = self.at(temperature).map_err(|problem| (index, problem))?;
            for (method, point) in rung.iter() {
                curves.of_mut(method).push(*point);
            }
        }
        Ok(curves)
    }

    /// Whether a method can be had on this system at all: stages take more than one fan, and flooding a device that a receiver suits.
    pub fn applies(&self, method: Method) -> bool {
        recommendation::applies(&self.input, method)
    }
}
