//! The winter plan: everything that is computed for a system.

use uom::si::f64::{
    Angle, AngularVelocity, ElectricPotential, Power, Pressure, TemperatureInterval,
    ThermalConductance, ThermodynamicTemperature, VolumeRate,
};

use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::Error;

use crate::air;
use crate::condenser::{self, Condenser};
use crate::controller::Proportional;
use crate::cycle::{self, Suction};
use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::input::{Field, Input, InputError, Load, Problem};
use crate::method::{Actuator, Model};
use crate::motor::{InductionMotor, takes_phase_cut};
use crate::need::{PressureNeed, pressure_need};
use crate::settings::{self, Range, Settings};
use crate::verdict::{self, Caution, Verdict};

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
    model: Model,
}

/// Effectiveness that a usual condenser reaches at its known point. Common practice, no published source.
const USUAL_EFFECTIVENESS: f64 = 0.6;

/// Effectiveness above which an entered airflow cannot be right: the air would leave within a hundredth of the condensing
/// temperature.
const HIGHEST_EFFECTIVENESS: f64 = 0.99;

/// Distance from the critical temperature that a condensing temperature keeps, K: nearer, liquid and vapour hardly differ and
/// no condenser works.
const CRITICAL_MARGIN: f64 = 3.0;

/// Makes the winter plan of a system.
///
/// # Errors
/// Every field whose value lies outside the limits of the models, or does not go with the others.
pub fn plan(input: &Input) -> Result<Plan, Vec<InputError>> {
    let out_of_range = input.out_of_range();
    if !out_of_range.is_empty() {
        return Err(out_of_range);
    }
    build(input).map_err(|error| vec![error])
}

/// Names the field that a refrigerant error comes from.
fn at(field: Field) -> impl Fn(Error) -> InputError {
    move |error| InputError {
        field,
        problem: Problem::Refrigerant(error),
    }
}

fn build(input: &Input) -> Result<Plan, InputError> {
    let refrigerant = &input.refrigerant;
    let elevation = input.elevation;
    let atmosphere = Explained::new(
        air::atmosphere(elevation.value),
        Working::new(Rule::Atmosphere).given("H", elevation, Quantity::Elevation),
    );
    let suction =
        Suction::new(refrigerant, input.evaporating.value).map_err(at(Field::Evaporating))?;
    let condensing = design_condensing(input)?;
    let head = refrigerant
        .dew_at_temperature(condensing.value)
        .map_err(at(Field::OverAmbient))?
        .pressure;
    let heat = heat_rejected(input, &suction, head).map_err(at(Field::OverAmbient))?;
    let design = design(input, atmosphere.value, condensing, head, heat)?;
    let need = pressure_need(input, &suction, head).map_err(|error| {
        at(match input.compressor_lowest {
            Some(_) => Field::CompressorLowest,
            None => Field::Evaporating,
        })(error)
    })?;
    check_room_above(input, need.condensing)?;

    let actuator = actuator(input)?;
    let need_point = (need.pressure.value, need.condensing);
    let range = Range::new(input, need_point, design.condensing.value)
        .map_err(at(Field::ThrottlingRange))?;
    let (low, full) = (range.low, range.full);
    let cold = air::density(atmosphere.value, input.outdoor_low);
    let settings = settings::sheet(input, range, &actuator, cold);

    let model = Model {
        refrigerant: refrigerant.clone(),
        atmosphere: atmosphere.value,
        condenser: Condenser {
            heat: design.heat_rejected.value,
            airflow: design.airflow.value,
            density: air::density(atmosphere.value, design.outdoor.value),
            conductance: design.conductance.value,
        },
        actuator,
        controller: Proportional {
            sensing: input.sensing.value,
            low: (low.pressure, low.coil),
            full: (full.pressure, full.coil),
            minimum: settings.drive.minimum_output().value,
        },
        need: need_point,
        full_speed: (full.pressure, full.condensing),
        idle_airflow: input.idle_airflow.value,
    };
    let hold = hold_limits(&model);
    let verdict = Verdict::on(&hold, input.outdoor_low);
    Ok(Plan {
        input: input.clone(),
        atmosphere,
        design,
        need,
        settings,
        on_off_points: Explained::new(
            (low.pressure, full.pressure),
            Working::new(Rule::OnOffPoints)
                .with("p_off", Quantity::Pressure(low.pressure))
                .with("p_on", Quantity::Pressure(full.pressure)),
        ),
        hold,
        verdict,
        cautions: verdict::cautions(refrigerant, input.motor.value),
        model,
    })
}

/// The highest condensing temperature that a refrigerant still condenses at, with a margin.
fn highest_condensing(input: &Input) -> ThermodynamicTemperature {
    input.refrigerant.critical_point().temperature
        - TemperatureInterval::new::<kelvin_interval>(CRITICAL_MARGIN)
}

fn design_condensing(input: &Input) -> Result<Explained<ThermodynamicTemperature>, InputError> {
    let condensing = input.known_outdoor.value + input.over_ambient.value;
    let highest = highest_condensing(input);
    if condensing > highest {
        return Err(InputError {
            field: Field::OverAmbient,
            problem: Problem::AboveCritical {
                condensing,
                highest,
            },
        });
    }
    let highest = condensing - TemperatureInterval::new::<kelvin_interval>(CRITICAL_MARGIN);
    if input.evaporating.value > highest {
        return Err(InputError {
            field: Field::Evaporating,
            problem: Problem::EvaporatingAboveCondensing { highest },
        });
    }
    Ok(Explained::new(
        condensing,
        Working::new(Rule::DesignCondensing)
            .given("T_o", input.known_outdoor, Quantity::Temperature)
            .given("ΔT₀", input.over_ambient, Quantity::Difference),
    ))
}

/// A need entered so high that no throttling range fits under the critical point is the entry's fault.
fn check_room_above(input: &Input, need: ThermodynamicTemperature) -> Result<(), InputError> {
    let highest = highest_condensing(input);
    let condensing = need + input.throttling_range.value;
    if condensing > highest {
        let field = if input.compressor_lowest.is_some() {
            Field::CompressorLowest
        } else {
            Field::ThrottlingRange
        };
        return Err(InputError {
            field,
            problem: Problem::AboveCritical {
                condensing,
                highest,
            },
        });
    }
    Ok(())
}

fn heat_rejected(
    input: &Input,
    suction: &Suction,
    head: Pressure,
) -> Result<Explained<Power>, Error> {
    match input.load {
        Load::Rejected(heat) => Ok(Explained::new(
            heat,
            Working::new(Rule::HeatEntered).given("Q", Given::entered(heat), Quantity::Power),
        )),
        Load::Cooling(cooling) => {
            let ratio = cycle::heat_rejection_ratio(&input.refrigerant, suction, head)?;
            Ok(Explained::new(
                cooling * ratio,
                Working::new(Rule::HeatRejected)
                    .given("Q₀", Given::entered(cooling), Quantity::Power)
                    .with("Q/Q₀", Quantity::Ratio(ratio))
                    .with("η", Quantity::Ratio(cycle::ISENTROPIC_EFFICIENCY)),
            ))
        }
    }
}

fn design(
    input: &Input,
    atmosphere: Pressure,
    condensing: Explained<ThermodynamicTemperature>,
    pressure: Pressure,
    heat_rejected: Explained<Power>,
) -> Result<Design, InputError> {
    let density = air::density(atmosphere, input.known_outdoor.value);
    let over_ambient = input.over_ambient.value;
    let carried = |effectiveness: f64| -> VolumeRate {
        let capacity_rate: ThermalConductance = heat_rejected.value / over_ambient / effectiveness;
        capacity_rate / (density * air::specific_heat())
    };
    let airflow = match input.airflow {
        Some(airflow) => Explained::new(
            airflow,
            Working::new(Rule::AirflowEntered).given(
                "V",
                Given::entered(airflow),
                Quantity::Airflow,
            ),
        ),
        None => Explained::new(
            carried(USUAL_EFFECTIVENESS),
            Working::new(Rule::AssumedAirflow)
                .with("Q", Quantity::Power(heat_rejected.value))
                .with("ρ", Quantity::Density(density))
                .given("ΔT₀", input.over_ambient, Quantity::Difference),
        ),
    };
    let lowest = carried(HIGHEST_EFFECTIVENESS);
    if airflow.value < lowest {
        return Err(InputError {
            field: Field::Airflow,
            problem: Problem::TooLittleAir { lowest },
        });
    }
    let capacity_rate = air::capacity_rate(density, airflow.value);
    let effectiveness = (heat_rejected.value / over_ambient / capacity_rate).value;
    let conductance = condenser::conductance(effectiveness, capacity_rate);
    Ok(Design {
        outdoor: input.known_outdoor,
        condensing,
        pressure,
        air_capacity_rate: Explained::new(
            capacity_rate,
            Working::new(Rule::AirCapacityRate)
                .with("ρ", Quantity::Density(density))
                .with("V", Quantity::Airflow(airflow.value)),
        ),
        conductance: Explained::new(
            conductance,
            Working::new(Rule::Conductance)
                .with("Q", Quantity::Power(heat_rejected.value))
                .with("C", Quantity::Conductance(capacity_rate))
                .given("ΔT₀", input.over_ambient, Quantity::Difference)
                .with("ε", Quantity::Ratio(effectiveness)),
        ),
        heat_rejected,
        airflow,
        effectiveness,
    })
}

fn actuator(input: &Input) -> Result<Actuator, InputError> {
    if !takes_phase_cut(input.motor.value) {
        return Ok(Actuator::Signal(input.rated_speed.value));
    }
    InductionMotor::from_nameplate(
        input.motor.value,
        input.rated_speed.value,
        input.frequency.value,
    )
    .map(|motor| Actuator::Voltage(motor, input.voltage.value))
    .map_err(|problem| InputError {
        field: Field::RatedSpeed,
        problem,
    })
}

fn hold_limits(model: &Model) -> HoldLimits {
    let explained = |limit: ThermodynamicTemperature, fraction: f64| {
        let airflow = model.airflow(fraction);
        Explained::new(
            limit,
            Working::new(Rule::HoldLimit)
                .with("T_need", Quantity::Temperature(model.need.1))
                .with("Q", Quantity::Power(model.condenser.heat))
                .with("V", Quantity::Airflow(airflow)),
        )
    };
    let speed_control = model.speed_control_limit();
    HoldLimits {
        full_fan: explained(model.hold_limit(1.0), 1.0),
        on_off: explained(model.hold_limit(0.0), 0.0),
        speed_control: explained(speed_control, model.lowest_fraction(speed_control)),
    }
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
