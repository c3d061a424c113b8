//! Answers to plans. SI, absolute pressure.

use serde_json::{Map, Value, json};
use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use winterset_calc::advice::ReversingValve;
use winterset_calc::need::IceLimit;
use winterset_calc::settings::{Drive, Settings, SettingsNote};
use winterset_calc::{
    Curves, Cycle, HoldLimits, Method, Plan, Point, Problem, Rule, Verdict, Zones,
};

use super::request::Planned;
use super::{Outcome, WireError, advice, controller};

/// Answers with the plan of a record, its curves along outdoor temperatures or the usual ones.
pub fn to(asked: &Planned) -> Outcome<Value> {
    let plan = asked.system.plan();
    let plan = plan.map_err(|errors| WireError::fields(&errors))?;
    let outdoor = asked.outdoor.clone();
    let outdoor = outdoor.unwrap_or_else(|| usual_outdoor(&plan));
    let curves = plan.curves(&outdoor).map_err(|(index, problem)| {
        let field = format!("outdoor_temperatures_K[{index}]");
        let message = match problem {
            Problem::AboveEnvelope { highest } => format!(
                "so warm that it would condense above {:.2} K, the highest for this system",
                highest.get::<kelvin>()
            ),
            Problem::Refrigerant(error) => {
                format!("so cold that it would condense where nothing is known: {error}")
            }
            other => other.to_string(),
        };
        WireError::new("out_of_range", field, message)
    })?;
    let parts: Map<String, Value> = plan
        .need
        .parts
        .iter()
        .map(|(part, pressure)| (part.key().to_owned(), pressure.value.value.into()))
        .collect();
    let mut out = json!({
        "pressure_need": {
            "pressure_Pa": plan.need.pressure.value.value,
            "condensing_K": plan.need.condensing.value,
            "governing": plan.need.governing.key(),
            "parts_Pa": parts,
            "ice": ice(plan.need.ice),
            "flashes_at_known_point": plan.need.flashes,
        },
        "hold_limit_K": plan.hold.of(Method::SpeedControl).value.value,
        "hold_limits_K": limits_of(&plan.hold),
        "hold_limits_at_lowest_load_K": plan.hold_at_lowest_load.as_ref().map(limits_of),
        "in_heating": ReversingValve::of(plan.input.reversing_valve.value).map(|valve| match valve {
            ReversingValve::InCooling => "full_while_valve_off",
            ReversingValve::InHeating => "full_while_valve_on",
        }),
        "verdict": verdict(&plan),
        "design": {
            "outdoor_K": plan.design.outdoor.value.value,
            "condensing_K": plan.design.condensing.value.value,
            "pressure_Pa": plan.design.pressure.value,
            "heat_rejected_W": plan.design.heat_rejected.value.value,
            "airflow_m3_s": plan.design.airflow.value.value,
            "air_capacity_rate_W_K": plan.design.air_capacity_rate.value.value,
            "conductance_W_K": plan.design.conductance.value.value,
            "effectiveness": plan.design.effectiveness,
            "subcooling_K": plan.design.subcooling.value,
            "fan_power_W": plan.design.fan_power.value.value,
            "zones": zones(&plan.design.zones),
            "cycle": cycle(&plan.design.cycle),
        },
        "atmosphere_Pa": plan.atmosphere.value.value,
        "settings": settings(&plan.settings),
        "on_off_Pa": { "off": plan.on_off_points.value.0.value, "on": plan.on_off_points.value.1.value },
        "stage_points_Pa": plan.stage_points.iter().map(|point| json!({
            "off": point.value.0.value, "on": point.value.1.value,
        })).collect::<Vec<_>>(),
        "curves": curves_of(&curves),
        "advice": advice::of(&plan, asked.hours.as_ref()),
    });
    if let Some(limits) = &asked.controller {
        out["controller"] = controller::findings(&plan, limits);
    }
    Ok(out)
}

fn limits_of(hold: &HoldLimits) -> Map<String, Value> {
    let each = hold.iter();
    each.map(|(method, limit)| (method.key().to_owned(), limit.value.value.into()))
        .collect()
}

fn ice(limit: IceLimit) -> Value {
    match limit {
        IceLimit::Below(evaporating) => {
            json!({ "kind": "below", "evaporating_K": evaporating.value })
        }
        IceLimit::AlreadyAtKnownPoint(evaporating) => {
            json!({ "kind": "already_at_known_point", "evaporating_K": evaporating.value })
        }
        IceLimit::None => json!({ "kind": "none" }),
        IceLimit::Unknown => json!({ "kind": "unknown" }),
    }
}

fn verdict(plan: &Plan) -> Value {
    let (kind, low) = match plan.verdict {
        Verdict::NotNeeded { low, .. } => ("not_needed", low),
        Verdict::Holds { low, .. } => ("holds", low),
        Verdict::FallsShort { low, .. } => ("falls_short", low),
    };
    json!({
        "kind": kind,
        "method": plan.verdict.method().key(),
        "reason": plan.recommendation.reason.key(),
        "limit_K": plan.verdict.limit().value,
        "outdoor_low_K": low.value,
        "action": plan.verdict.action(plan.input.motor.value).key(),
        "above_envelope_from_K": plan.settings.notes.iter().find_map(|note| match note {
            SettingsNote::AboveEnvelope { from, .. } => Some(from.value),
            _ => None,
        }),
    })
}

fn settings(settings: &Settings) -> Value {
    let mut out = json!({
        "sensing": settings.sensing.value.key(),
        "full_speed_pressure_Pa": settings.full_speed_pressure.value.value,
        "full_speed_coil_K": settings.full_speed_coil.value.value,
        "throttling_range_Pa": settings.throttling_pressure.value.value,
        "throttling_range_K": settings.throttling_coil.value.value,
        "minimum_output_fraction": settings.drive.minimum_output().value,
        "minimum_output_by": match settings.drive.minimum_output().working.rule {
            Rule::StallOutput => "stall",
            _ => "bearing",
        },
        // rad/s would be SI; shafts are read in revolutions everywhere.
        "lowest_speed_rpm": rpm(settings.drive.lowest_speed().value),
        "notes": settings.notes.iter().map(|note| match note {
            SettingsNote::RangeNarrowed { .. } => "range_narrowed",
            SettingsNote::NeedNearKnownPoint => "need_near_known_point",
            SettingsNote::BoostTooShort { .. } => "boost_too_short",
            SettingsNote::WillNotStart => "will_not_start",
            SettingsNote::AboveEnvelope { .. } => "above_envelope",
        }).collect::<Vec<_>>(),
    });
    match &settings.drive {
        Drive::PhaseCut {
            minimum_voltage,
            start_boost,
            ..
        } => {
            out["drive"] = "phase_cut".into();
            out["minimum_voltage_V"] = minimum_voltage.value.into();
            out["start_boost_s"] = start_boost.value.value.into();
        }
        Drive::Signal { volts, duty, .. } => {
            out["drive"] = "signal".into();
            out["minimum_signal_V"] = volts.value.value.into();
            out["minimum_duty"] = duty.value.into();
        }
        Drive::Frequency { lowest, .. } => {
            out["drive"] = "signal".into();
            out["lowest_frequency_Hz"] = lowest.value.value.into();
        }
    }
    if let Some(motor) = settings.drive.refuses_phase_cut() {
        out["refuses_phase_cut"] = motor.key().into();
    }
    out
}

/// Shafts are read in revolutions a minute everywhere.
pub(super) fn rpm(speed: uom::si::f64::AngularVelocity) -> f64 {
    speed.get::<uom::si::angular_velocity::revolution_per_minute>()
}

fn curves_of(curves: &Curves) -> Value {
    let all = |points: &[Point]| points.iter().map(point).collect::<Vec<_>>();
    curves
        .iter()
        .map(|(method, points)| (method.key().to_owned(), all(points).into()))
        .collect::<Map<String, Value>>()
        .into()
}

/// The refrigerant round the cycle.
fn cycle(cycle: &Cycle) -> Value {
    json!({
        "mass_flow_kg_s": cycle.mass_flow.value,
        "suction_pressure_Pa": cycle.suction_pressure.value,
        "evaporating_K": cycle.evaporating.value,
        "suction_K": cycle.suction.value,
        "discharge_K": cycle.discharge.value,
        "liquid_K": cycle.liquid.value,
        "suction_enthalpy_J_kg": cycle.suction_enthalpy.value,
        "discharge_enthalpy_J_kg": cycle.discharge_enthalpy.value,
        "liquid_enthalpy_J_kg": cycle.liquid_enthalpy.value,
        "wetted_evaporator": cycle.wetted,
        "cooling_W": cycle.cooling.value,
        "compressor_power_W": cycle.compressor_power.value,
    })
}

fn zones(zones: &Zones) -> Value {
    json!({
        "desuperheating": zones.desuperheating,
        "condensing": zones.condensing,
        "subcooling": zones.subcooling,
        "flooded": zones.flooded,
    })
}

fn point(point: &Point) -> Value {
    let mut out = json!({
        "outdoor_K": point.outdoor.value,
        "condensing_K": point.condensing.value,
        "pressure_Pa": point.pressure.value,
        "coil_K": point.coil.value,
        "fan_speed_fraction": point.fan_speed_fraction,
        "airflow_m3_s": point.airflow.value,
        "air_capacity_rate_W_K": point.air_capacity_rate.value,
        "conductance_W_K": point.conductance.value,
        "effectiveness": point.effectiveness,
        "heat_rejected_W": point.heat_rejected.value,
        "fan_power_W": point.fan_power.value,
        "zones": zones(&point.zones),
        "condition": point.condition.key(),
        "holds": point.holds,
    });
    if let Some(found) = &point.cycle {
        out["cycle"] = cycle(found);
    }
    if let Some(output) = &point.output {
        out["output_fraction"] = output.fraction.into();
        out["speed_rpm"] = rpm(output.speed).into();
        if let (Some(voltage), Some(averaging), Some(angle)) =
            (output.voltage, output.averaging_meter, output.firing_angle)
        {
            out["motor_voltage_V"] = voltage.value.into();
            out["averaging_meter_V"] = averaging.value.into();
            out["firing_angle_rad"] = angle.value.into();
        }
    }
    if let Some((low, high)) = point.swing {
        out["swing_Pa"] = json!([low.value, high.value]);
    }
    if let Some(starts) = point.starts {
        // A count an hour is how the trade reads it.
        out["starts_per_hour"] = (starts.value * 3600.0).into();
    }
    out
}

/// Each 5 K from 10 K below the site's low up to the known point, as far as the refrigerant's equations reach.
fn usual_outdoor(plan: &Plan) -> Vec<ThermodynamicTemperature> {
    let celsius = |temperature: ThermodynamicTemperature| temperature.get::<degree_celsius>();
    let step = |degrees: f64| (degrees / 5.0).floor() as i32;
    let low = step(celsius(plan.input.outdoor_low) - 10.0);
    let high = step(celsius(plan.design.outdoor.value)).max(low);
    (low..=high)
        .map(|five| ThermodynamicTemperature::new::<degree_celsius>(5.0 * f64::from(five)))
        .filter(|outdoor| plan.at(*outdoor).is_ok())
        .collect()
}
