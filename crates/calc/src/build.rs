//! Making a plan, step by step from the known point.

use uom::si::f64::{
    MassDensity, Power, Pressure, TemperatureInterval, ThermalConductance,
    ThermodynamicTemperature, VolumeRate,
};
use uom::si::power::watt;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::Error;

use crate::air;
use crate::compressor::envelope::{Envelope, Limits};
use crate::compressor::rating::DataSheet;
use crate::controller::Proportional;
use crate::cycle::{ISENTROPIC_EFFICIENCY, SUBCOOLING, SUPERHEAT};
use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::fan_bank::{Fan, FanBank, Layout, Role};
use crate::field::Field;
use crate::input::{BelowMinimum, Input, Load};
use crate::method::{Actuator, Model};
use crate::mixed_bank::MixedBank;
use crate::motor::{InductionMotor, takes_phase_cut};
use crate::need::{ice_limit, opening, pressure_need};
use crate::plan::{Cycle, Design, HoldLimits, Method, Plan, Zones};
use crate::planning::{at_once, breath};
use crate::problem::{InputError, Problem};
use crate::recommendation::recommend;
use crate::root::bracketed;
use crate::settings::{self, NARROWEST_RANGE, Range, SettingsNote};
use crate::stage_points::stage_points;
use crate::system::circuit::{Circuit, KnownPoint, Running, Scale, Unfit};
use crate::system::compressor::Pattern;
use crate::system::line::Line;
use crate::system::zones::Coil;
use crate::verdict::{self, Verdict};

/// Effectiveness that a usual condenser reaches at its known point, at the middle of condensing. Common practice, no published
/// source.
const USUAL_EFFECTIVENESS: f64 = 0.6;

/// Transfer units above which an entered airflow cannot be right: the air would leave within a hundredth of the condensing
/// temperature.
const MOST_TRANSFER_UNITS: f64 = 4.605_170_185_988_092;

/// Distance from the critical temperature that a condensing temperature keeps, K: nearer, liquid and vapour hardly differ and
/// no condenser works.
const CRITICAL_MARGIN: f64 = 3.0;

/// Least distance from the air to the bubble point at the known point, K: nearer, no liquid leaves the condenser.
const LEAST_APPROACH: f64 = 1.0;

/// Span above the known point that a system is worked out for, K. Common practice, no published source: high-pressure cut-outs
/// act before.
const BEYOND_KNOWN: f64 = 30.0;

/// Power of all fans over the heat that a usual condenser rejects. Common practice, no published source.
const FAN_POWER_SHARE: f64 = 0.03;

/// Makes the winter plan of a system.
///
/// # Errors
/// Every field whose value lies outside the limits of the models, or does not go with the others.
pub fn plan(input: &Input) -> Result<Plan, Vec<InputError>> {
    at_once(made(input))
}

/// The same, with a breath between its pieces.
pub(crate) async fn made(input: &Input) -> Result<Plan, Vec<InputError>> {
    let out_of_range = input.out_of_range();
    if !out_of_range.is_empty() {
        return Err(out_of_range);
    }
    build(input).await.map_err(|error| vec![error])
}

/// Names the field that a refrigerant error comes from.
fn at(field: Field) -> impl Fn(Error) -> InputError {
    move |error| InputError {
        field,
        problem: Problem::Refrigerant(error),
    }
}

async fn build(input: &Input) -> Result<Plan, InputError> {
    let refrigerant = &input.refrigerant;
    let elevation = input.elevation;
    let atmosphere = Explained::new(
        air::atmosphere(elevation.value),
        Working::new(Rule::Atmosphere).given("H", elevation, Quantity::Elevation),
    );
    let condensing = design_condensing(input)?;
    let subcooling = subcooling(input, condensing.value)?;
    let circuit = circuit(input, condensing.value, subcooling)?;
    let beyond = TemperatureInterval::new::<kelvin_interval>(BEYOND_KNOWN);
    let highest = highest_condensing(input).min(condensing.value + beyond);
    let highest = highest.get::<kelvin>();
    breath().await;
    let line = Line::new(&circuit, opening(input.metering.value), highest)
        .await
        .map_err(at(Field::Evaporating))?;
    breath().await;
    let (design, coil) = design(input, atmosphere.value, condensing, subcooling, &circuit)?;
    let ice = ice_limit(input, atmosphere.value, &circuit).await;
    breath().await;
    let need = pressure_need(input, ice, &circuit, &line)?;
    check_room_above(input, need.condensing, line.highest)?;
    check_compressor_highest(input, need.condensing)?;

    breath().await;
    check_modulated(input)?;
    let actuator = actuator(input)?;
    let need_point = (need.pressure.value, need.condensing);
    let range = Range::new(input, need_point, design.condensing.value)
        .map_err(at(Field::ThrottlingRange))?;
    let (low, full) = (range.low, range.full);
    let cold = air::density(atmosphere.value, input.outdoor_low);
    let mut settings = settings::sheet(input, range, &actuator, cold, &design);

    let model = Model {
        refrigerant: refrigerant.clone(),
        line,
        coil,
        atmosphere: atmosphere.value,
        airflow: design.airflow.value,
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
        stops: input.below_minimum.value == BelowMinimum::Stops,
        bearing: input.bearing.value,
        envelope: envelope(input),
        stages: stages(input.fans.value),
        mixed: mixed(input, low.condensing, full.condensing),
        fan_power: design.fan_power.value,
    };
    settings
        .notes
        .extend(input.compressor_highest.and_then(|highest| {
            let from = model.warmest_outdoor(highest)?;
            Some(SettingsNote::AboveEnvelope { from, highest })
        }));
    let stage_points = stage_points(
        refrigerant,
        low.condensing,
        air::difference(full.condensing, low.condensing),
        input.fans.value,
    )
    .map_err(at(Field::ThrottlingRange))?;
    breath().await;
    let hold = hold_limits(&model, 1.0);
    breath().await;
    let lowest_load =
        (input.lowest_load.value < 1.0).then(|| hold_limits(&model, input.lowest_load.value));
    let recommendation = recommend(input, lowest_load.as_ref().unwrap_or(&hold));
    let verdict = Verdict::on(&recommendation, input.outdoor_low);
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
        stage_points,
        hold,
        hold_at_lowest_load: lowest_load,
        recommendation,
        verdict,
        cautions: verdict::cautions(refrigerant, input.motor.value),
        model,
    })
}

/// The compressor's limits of condensing temperature, as far as they are entered.
fn envelope(input: &Input) -> Option<Envelope> {
    let highest = input.compressor_highest?;
    let limits = Limits::new((None, None), (input.compressor_lowest, Some(highest)));
    limits.ok().map(Envelope::Limits)
}

/// The compressor must be allowed to condense where the system needs to, and through the narrowest throttling range.
fn check_compressor_highest(
    input: &Input,
    need: ThermodynamicTemperature,
) -> Result<(), InputError> {
    let lowest = need + TemperatureInterval::new::<kelvin_interval>(NARROWEST_RANGE);
    match input.compressor_highest {
        Some(highest) if highest < lowest => Err(InputError {
            field: Field::CompressorHighest,
            problem: Problem::HighestBelowNeed { lowest },
        }),
        _ => Ok(()),
    }
}

/// The speed controller cannot move more fans than there are.
fn check_modulated(input: &Input) -> Result<(), InputError> {
    let fans = input.fans.value;
    if input.modulated() <= fans {
        return Ok(());
    }
    Err(InputError {
        field: Field::ModulatedFans,
        problem: Problem::OutOfRange {
            low: Quantity::Count(1),
            high: Quantity::Count(fans),
        },
    })
}

/// The bank, where the speed controller does not move all its fans.
fn mixed(
    input: &Input,
    off_below: ThermodynamicTemperature,
    on_above: ThermodynamicTemperature,
) -> Option<MixedBank> {
    let modulated = input.modulated();
    let fixed = input.fans.value.checked_sub(modulated)?;
    if fixed == 0 {
        return None;
    }
    MixedBank::new((fixed, modulated), off_below, on_above).ok()
}

/// Airflow with one of some like fans running, two, and so on, over that of all: fans on one open space, without shutters.
fn stages(fans: u32) -> Vec<f64> {
    let count = fans as usize;
    let fan = Fan {
        role: Role::Fixed,
        airflow: VolumeRate::new::<uom::si::volume_rate::cubic_meter_per_second>(1.0),
        power: Power::new::<watt>(1.0),
        shutter: false,
    };
    let bank = FanBank::new(vec![fan; count], Layout::USUAL_OPEN);
    (1..=count)
        .map(|running| {
            let states: Vec<f64> = (0..count)
                .map(|fan| if fan < running { 1.0 } else { 0.0 })
                .collect();
            // As many like fans as the input's range allows are a bank; the plain share stands in for what cannot happen.
            bank.as_ref()
                .ok()
                .and_then(|bank| bank.flow(&states, 1.0).ok())
                .map_or(running as f64 / count as f64, |flow| flow.airflow_share)
        })
        .collect()
}

/// Subcooling at the known point: as entered, else the usual or half of what the air leaves.
fn subcooling(
    input: &Input,
    condensing: ThermodynamicTemperature,
) -> Result<TemperatureInterval, InputError> {
    let over_ambient = at(Field::OverAmbient);
    let bubble = input
        .refrigerant
        .dew_pressure(condensing)
        .and_then(|head| input.refrigerant.bubble_temperature(head))
        .map_err(over_ambient)?;
    let room = air::difference(bubble, input.known_outdoor.value);
    let least = TemperatureInterval::new::<kelvin_interval>(LEAST_APPROACH);
    if room < least {
        return Err(InputError {
            field: Field::OverAmbient,
            problem: Problem::OverAmbientBelowGlide {
                lowest: input.over_ambient.value - room + least,
            },
        });
    }
    if let Some(subcooling) = input.subcooling {
        let highest = room - least * 0.5;
        return if subcooling <= highest {
            Ok(subcooling)
        } else {
            Err(InputError {
                field: Field::Subcooling,
                problem: Problem::ColderThanAir { highest },
            })
        };
    }
    let usual = TemperatureInterval::new::<kelvin_interval>(SUBCOOLING);
    Ok(if room * 0.5 < usual {
        room * 0.5
    } else {
        usual
    })
}

fn circuit(
    input: &Input,
    condensing: ThermodynamicTemperature,
    subcooling: TemperatureInterval,
) -> Result<Circuit, InputError> {
    // Superheated vapour cannot leave warmer than the air that heats it.
    let lowest =
        input.evaporating.value + TemperatureInterval::new::<kelvin_interval>(SUPERHEAT + 1.0);
    if input.return_air.value < lowest {
        return Err(InputError {
            field: Field::ReturnAir,
            problem: Problem::ReturnAirTooCold { lowest },
        });
    }
    let known = KnownPoint {
        evaporating: input.evaporating.value.get::<kelvin>(),
        condensing: condensing.get::<kelvin>(),
        subcooling: subcooling.get::<kelvin_interval>(),
        return_air: input.return_air.value.get::<kelvin>(),
        scale: match input.load {
            Load::Cooling(cooling) => Scale::Cooling(cooling.get::<watt>()),
            Load::Rejected(heat) => Scale::Rejected(heat.get::<watt>()),
        },
    };
    let pattern = match &input.compressor_sheet {
        Some(sheet) => Pattern::Sheet(Box::new(sheet.clone())),
        None => Pattern::Clearance,
    };
    Circuit::new(&input.refrigerant, known, pattern).map_err(|unfit| match unfit {
        Unfit::Refrigerant(error) => at(Field::Evaporating)(error),
        Unfit::Discharge(_) => InputError {
            field: Field::Evaporating,
            problem: Problem::DischargeTooHot,
        },
        Unfit::Lift if input.compressor_sheet.is_some() => InputError {
            field: Field::FlowCoefficients,
            problem: Problem::SheetWithoutFlow,
        },
        Unfit::Lift => InputError {
            field: Field::Evaporating,
            problem: Problem::LiftTooHigh,
        },
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

/// A need entered so high that no throttling range fits under the highest condensing temperature is the entry's fault.
fn check_room_above(
    input: &Input,
    need: ThermodynamicTemperature,
    highest: f64,
) -> Result<(), InputError> {
    let highest = ThermodynamicTemperature::new::<kelvin>(highest);
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

fn heat_rejected(input: &Input, known: &Running) -> Explained<Power> {
    let heat = Power::new::<watt>(known.rejected());
    let working = match input.load {
        Load::Rejected(heat) => {
            Working::new(Rule::HeatEntered).given("Q", Given::entered(heat), Quantity::Power)
        }
        Load::Cooling(cooling) => {
            let has_power = |sheet: &DataSheet| sheet.power.is_some();
            let (rule, loss) = if input.compressor_sheet.as_ref().is_some_and(has_power) {
                (Rule::HeatRejectedBySheet, None)
            } else {
                (Rule::HeatRejected, Some(ISENTROPIC_EFFICIENCY))
            };
            let working = Working::new(rule)
                .given("Q₀", Given::entered(cooling), Quantity::Power)
                .with("Q/Q₀", Quantity::Ratio((heat / cooling).value));
            match loss {
                Some(efficiency) => working.with("η", Quantity::Ratio(efficiency)),
                None => working,
            }
        }
    };
    Explained::new(heat, working)
}

/// Airflow as entered, or what a usual condenser moves for this heat.
fn airflow(
    input: &Input,
    heat: Power,
    density: MassDensity,
    known: &Running,
) -> Explained<VolumeRate> {
    if let Some(airflow) = input.airflow {
        return Explained::new(
            airflow,
            Working::new(Rule::AirflowEntered).given(
                "V",
                Given::entered(airflow),
                Quantity::Airflow,
            ),
        );
    }
    let dew = input.known_outdoor.value + input.over_ambient.value;
    let glide = dew.get::<kelvin>() - known.bubble;
    let middle =
        input.over_ambient.value - TemperatureInterval::new::<kelvin_interval>(0.5 * glide);
    let capacity_rate: ThermalConductance = heat / middle / USUAL_EFFECTIVENESS;
    Explained::new(
        capacity_rate / (density * air::specific_heat()),
        Working::new(Rule::AssumedAirflow)
            .with("Q", Quantity::Power(heat))
            .with("ρ", Quantity::Density(density))
            .with("ΔT_m", Quantity::Difference(middle)),
    )
}

/// The coil that just rejects the known point's heat in this air: clean, and drawing none of its own air.
fn known_coil(
    input: &Input,
    condensing: ThermodynamicTemperature,
    airflow: VolumeRate,
    density: MassDensity,
    known: &Running,
) -> Result<Coil, InputError> {
    let outdoor = input.known_outdoor.value.get::<kelvin>();
    let mass_flow = (density * airflow).value;
    let specific_heat = air::specific_heat().value;
    let clean = |conductance: f64| Coil {
        conductance,
        mass_flow,
        recirculation: 0.0,
        dirt: 0.0,
    };
    let taken = |conductance: f64| {
        clean(conductance)
            .under(outdoor, mass_flow, specific_heat)
            .taken(condensing.get::<kelvin>(), known)
    };
    let most = MOST_TRANSFER_UNITS * mass_flow * specific_heat;
    let share = taken(most);
    if share > 1.0 {
        return Err(InputError {
            field: Field::Airflow,
            problem: Problem::TooLittleAir {
                // At given transfer units the share goes with one over the airflow; a hair more keeps rounding from deciding.
                lowest: airflow * share * (1.0 + 1e-9),
            },
        });
    }
    let log = bracketed((most * 1e-6).ln(), most.ln(), |log| {
        1.0 / taken(log.exp()) - 1.0
    });
    Ok(Coil {
        recirculation: input.recirculation.value,
        dirt: input.dirt.value,
        ..clean(log.exp())
    })
}

fn design(
    input: &Input,
    atmosphere: Pressure,
    condensing: Explained<ThermodynamicTemperature>,
    subcooling: TemperatureInterval,
    circuit: &Circuit,
) -> Result<(Design, Coil), InputError> {
    let known = &circuit.at_known;
    let density = air::density(atmosphere, input.known_outdoor.value);
    let heat_rejected = heat_rejected(input, known);
    let airflow = airflow(input, heat_rejected.value, density, known);
    let coil = known_coil(input, condensing.value, airflow.value, density, known)?;
    let capacity_rate = air::capacity_rate(density, airflow.value);
    let effectiveness = (heat_rejected.value / input.over_ambient.value / capacity_rate).value;
    let clean = Coil {
        recirculation: 0.0,
        dirt: 0.0,
        ..coil
    };
    let zones = clean
        .under(
            input.known_outdoor.value.get::<kelvin>(),
            coil.mass_flow,
            air::specific_heat().value,
        )
        .shares(condensing.value.get::<kelvin>(), known);
    let design = Design {
        outdoor: input.known_outdoor,
        pressure: crate::system::fluid::pressure(known.head),
        air_capacity_rate: Explained::new(
            capacity_rate,
            Working::new(Rule::AirCapacityRate)
                .with("ρ", Quantity::Density(density))
                .with("V", Quantity::Airflow(airflow.value)),
        ),
        conductance: Explained::new(
            ThermalConductance::new::<watt_per_kelvin>(coil.conductance),
            Working::new(Rule::Conductance)
                .with("Q", Quantity::Power(heat_rejected.value))
                .with("C", Quantity::Conductance(capacity_rate))
                .given("ΔT₀", input.over_ambient, Quantity::Difference)
                .with("f_desuperheating", Quantity::Ratio(zones[0]))
                .with("f_condensing", Quantity::Ratio(zones[1]))
                .with("f_subcooling", Quantity::Ratio(zones[2])),
        ),
        fan_power: Given::or_assume(input.fan_power, heat_rejected.value * FAN_POWER_SHARE),
        condensing,
        subcooling,
        cycle: Cycle::of(known),
        zones: Zones::of(zones),
        heat_rejected,
        airflow,
        effectiveness,
    };
    Ok((design, coil))
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

fn hold_limits(model: &Model, load: f64) -> HoldLimits {
    HoldLimits::from_fn(|method: Method| {
        let (limit, airflow) = model.hold_limit(method, load);
        let mut working = Working::new(Rule::HoldLimit)
            .with("T_need", Quantity::Temperature(model.need.1))
            .with("V", Quantity::Airflow(airflow));
        if load < 1.0 {
            working = working.with("s", Quantity::Ratio(load));
        }
        if method.floods() {
            working = working.with("f_flooded", Quantity::Ratio(crate::method::MOST_FLOODED));
        }
        Explained::new(limit, working)
    })
}
