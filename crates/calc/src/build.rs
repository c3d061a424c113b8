//! Making a plan, step by step from the known point.

use uom::si::f64::{
    Power, Pressure, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, VolumeRate,
};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_refrigerant::Error;

use crate::air;
use crate::condenser::{self, Condenser};
use crate::controller::Proportional;
use crate::cycle::{self, Suction};
use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::field::Field;
use crate::input::{Input, Load};
use crate::method::{Actuator, Model};
use crate::motor::{InductionMotor, takes_phase_cut};
use crate::need::pressure_need;
use crate::plan::{Design, HoldLimits, Plan};
use crate::problem::{InputError, Problem};
use crate::settings::{self, Range};
use crate::verdict::{self, Verdict};

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
pub(crate) fn highest_condensing(input: &Input) -> ThermodynamicTemperature {
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
