//! What follows from a plan for the work. SI, absolute pressure.

use serde_json::{Map, Value, json};
use winterset_calc::advice::{FanMotorAdvice, FanStart, PartLoad};
use winterset_calc::comparison::Summary;
use winterset_calc::free_cooling::Outcome as Off;
use winterset_calc::parts_list::{OutputKind, Part, Sensed};
use winterset_calc::sensor_place::{Answer, Outcome as Place, Reason, USUAL_PLACE, When};
use winterset_calc::weather::{Bins, UsualYear};
use winterset_calc::winter_start::{BypassOutcome, Contact, Persists};
use winterset_calc::{Method, PerMethod, Plan};

use super::plan::rpm;

/// Everything that a plan advises, over the hours of a year or the usual ones. What a plan has no answer to is `null`.
pub fn of(plan: &Plan, hours: Option<&Bins>) -> Value {
    let method = plan.recommendation.method;
    let usual = || Some(UsualYear::new(plan.input.outdoor_low).ok()?.bins());
    let bins = hours.cloned().or_else(usual);
    let compared = bins.as_ref().map(|bins| plan.compare(bins));
    json!({
        "methods": compared.as_ref().map(methods),
        "free_cooling": bins.as_ref().zip(compared.as_ref()).and_then(|(bins, compared)| off(plan, bins, compared.of(method))),
        "part_load": part_load(&plan.part_load()),
        "levers": levers(plan),
        "bands": bands(plan),
        "order": plan.order(method).ok().map(|parts| parts.iter().map(part).collect::<Vec<_>>()),
        "sensor_place": plan.sensor_place(method).ok().flatten().map(|answer| place(&answer)),
        "winter_start": start(plan, method),
        "fan_motor": plan.fan_motor().map(|found| fan_motor(&found)),
    })
}

fn methods(compared: &PerMethod<Summary>) -> Value {
    let each = compared.iter();
    each.map(|(method, summary)| (method.key().to_owned(), summary_of(summary)))
        .collect::<Map<String, Value>>()
        .into()
}

fn summary_of(summary: &Summary) -> Value {
    json!({
        "applies": summary.applies,
        "holds": summary.holds,
        "limit_K": summary.limit.value,
        "swing_Pa": summary.swing.map(|(low, high)| [low.value, high.value]),
        // A count an hour is how the trade reads it.
        "starts_per_hour": summary.starts.map(|starts| starts.value * 3600.0),
        "fan_energy_J": summary.fan_energy.value,
        "compressor_energy_J": summary.compressor_energy.value,
        "held_s": summary.held.value,
        "tripped_s": summary.tripped.value,
        "unknown_s": summary.unknown.value,
        "extra_charge_kg": summary.extra_charge.map(|mass| mass.value),
    })
}

fn off(plan: &Plan, bins: &Bins, summary: &Summary) -> Option<Value> {
    Some(match plan.free_cooling(bins, summary).ok()?? {
        Off::Saves {
            up_to,
            time,
            energy,
            ..
        } => json!({
            "kind": "saves", "up_to_K": up_to.value, "time_s": time.value, "energy_J": energy.value,
        }),
        Off::SavesNothing { up_to, time, extra } => json!({
            "kind": "saves_nothing", "up_to_K": up_to.value, "time_s": time.value, "energy_J": -extra.value,
        }),
        Off::NeverColdEnough { up_to, .. } => json!({
            "kind": "never_cold_enough", "up_to_K": up_to.value, "time_s": 0.0, "energy_J": 0.0,
        }),
    })
}

fn part_load(found: &PartLoad) -> Value {
    json!({
        "control": found.control.key(),
        "lowest_load": found.share,
        "kind": found.effect().key(),
        "method": found.method.key(),
        "limit_K": found.limit.value,
        "full_load_limit_K": found.full_load.value,
    })
}

fn levers(plan: &Plan) -> Vec<Value> {
    let levers = plan.levers().into_iter();
    levers
        .map(|lever| {
            json!({
                "change": lever.change.key(),
                "pressure_Pa": lever.need.value,
                "condensing_K": lever.condensing.value,
                "governing": lever.governing.key(),
                "speed_control_limit_K": lever.limit.value,
            })
        })
        .collect()
}

fn bands(plan: &Plan) -> Value {
    let bands = plan.bands();
    let fields: Map<String, Value> = bands
        .by_field
        .iter()
        .map(|(field, span)| (field.key().to_owned(), span.value.into()))
        .collect();
    let limits: Map<String, Value> = bands
        .limits
        .iter()
        .map(|(method, span)| (method.key().to_owned(), span.value.into()))
        .collect();
    json!({
        "need_Pa": bands.need.value,
        "need_K": bands.condensing.value,
        "minimum_output_fraction": bands.minimum_output,
        "limits_K": limits,
        "by_field_K": fields,
        "measure_first": bands.measure_first().map(|field| field.key()),
    })
}

fn sensed(sensed: &Sensed) -> Value {
    match sensed {
        Sensed::Coil { lowest, highest } => {
            json!({ "kind": "coil", "lowest_K": lowest.value, "highest_K": highest.value })
        }
        Sensed::Pressure { lowest, highest } => {
            json!({ "kind": "pressure", "lowest_Pa": lowest.value, "highest_Pa": highest.value })
        }
    }
}

fn output(kind: OutputKind) -> &'static str {
    match kind {
        OutputKind::PhaseCut => "phase_cut",
        OutputKind::Signal => "signal",
        OutputKind::Frequency => "frequency",
    }
}

fn part(part: &Part) -> Value {
    match part {
        Part::Motor { from, to, count } => {
            json!({ "part": "motor", "from": from.key(), "to": to.key(), "count": count })
        }
        Part::Controller {
            output: kind,
            current,
            supply,
            input,
        } => json!({
            "part": "controller", "output": output(*kind), "current_A": current.map(|current| current.value),
            "supply_V": supply.value, "input": sensed(input),
        }),
        Part::PressureSwitch { group, on, off } => {
            json!({ "part": "pressure_switch", "group": group, "on_Pa": on.value, "off_Pa": off.value })
        }
        Part::Contactor {
            group,
            current,
            supply,
        } => json!({
            "part": "contactor", "group": group, "current_A": current.value, "supply_V": supply.value,
        }),
        Part::WindBaffle => json!({ "part": "wind_baffle" }),
        Part::FloodingValve { setting } => {
            json!({ "part": "flooding_valve", "setting_Pa": setting.value })
        }
        Part::Receiver { volume } => json!({ "part": "receiver", "volume_m3": volume.value }),
        Part::ExtraCharge { mass } => json!({ "part": "extra_charge", "mass_kg": mass.value }),
        Part::CrankcaseHeater { power } => {
            json!({ "part": "crankcase_heater", "power_W": power.value })
        }
        Part::LowPressureBypass { time } => {
            json!({ "part": "low_pressure_bypass", "time_s": time.value })
        }
        Part::BalancedPortValve => json!({ "part": "balanced_port_valve" }),
    }
}

fn when(when: When) -> &'static str {
    match when {
        When::Design => "known_point",
        When::Low => "outdoor_low",
    }
}

fn place(answer: &Answer) -> Value {
    let reasons: Vec<Value> = match &answer.outcome {
        Place::Confirmed { .. } => Vec::new(),
        Place::Refused { reasons } => reasons
            .iter()
            .map(|reason| match *reason {
                Reason::Superheated { when: at, short_by } => {
                    json!({ "kind": "superheated", "when": when(at), "by": short_by })
                }
                Reason::Liquid {
                    when: at,
                    beyond_by,
                } => {
                    json!({ "kind": "liquid", "when": when(at), "by": beyond_by })
                }
                Reason::OffByGlide { when: at, off, .. } => {
                    json!({ "kind": "off_by_glide", "when": when(at), "off_K": off.value })
                }
            })
            .collect(),
    };
    json!({
        "place": USUAL_PLACE,
        "confirmed": reasons.is_empty(),
        "reasons": reasons,
        "two_phase": answer.band.map(|band| [band.from, band.to]),
        "best": answer.best,
    })
}

fn fan_motor(found: &FanMotorAdvice) -> Value {
    let start = match found.start {
        FanStart::WithinBoost { time, by_wind } => json!({
            "kind": "within_boost", "time_s": time.value, "by_wind_s": by_wind.value,
        }),
        FanStart::LongerBoost { time, by_wind } => json!({
            "kind": "longer_boost", "time_s": time.value, "by_wind_s": by_wind.value,
        }),
        FanStart::Never => json!({ "kind": "never" }),
    };
    let hottest = &found.hottest;
    json!({
        "start": start,
        "starts_from_fraction": found.starts_from,
        "starts_at_minimum": found.starts_at_minimum,
        "wind_m_s": found.wind.map(|wind| wind.value),
        "held_rpm": found.held.map(rpm),
        "hottest": {
            "speed_rpm": rpm(hottest.speed),
            "output_fraction": hottest.output,
            "loss_ratio": hottest.loss,
            "lowest_speed": hottest.lowest_speed.key(),
        },
        "remedies": found.remedies.iter().map(|remedy| remedy.key()).collect::<Vec<_>>(),
    })
}

fn start(plan: &Plan, method: Method) -> Option<Value> {
    let start = plan.winter_start(method).ok()?;
    let contact = match start.contact {
        Contact::Closed { .. } => "closed",
        Contact::AsItWas => "as_it_was",
        Contact::Open { .. } => "open",
    };
    let bypass = match start.bypass {
        BypassOutcome::NeverTrips { lowest } => {
            json!({ "kind": "never_trips", "lowest_Pa": lowest.value })
        }
        BypassOutcome::Trips { until, lowest, .. } => {
            json!({ "kind": "trips", "bypass_s": until.value, "lowest_Pa": lowest.value })
        }
        BypassOutcome::NeverRecovers {
            lowest, persists, ..
        } => json!({
            "kind": "never_recovers", "lowest_Pa": lowest.value,
            "still_rising": persists == Persists::StillRising,
        }),
    };
    Some(json!({
        "cold_side_Pa": start.standing.cold_side.value,
        "low_side_closed_Pa": start.standing.low_side_closed.value,
        "low_side_equal_Pa": start.standing.low_side_equal.value,
        "cut_out_Pa": start.cut_out.value,
        "cut_in_Pa": start.cut_in.value,
        "contact": contact,
        "bypass": bypass,
        "sump_K": start.sump.temperature.value,
        "sump_heat_W": start.sump.heat.value,
    }))
}
