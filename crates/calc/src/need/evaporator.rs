//! What the evaporator asks for: head pressure enough that its coil stays free of ice.
//!
//! Starved, an evaporator turns colder until the compressor's flow is the metering device's. On the operating line that is a condensing temperature
//! for the evaporating temperature at which ice starts.

use uom::si::f64::{Pressure, ThermodynamicTemperature, VolumeRate};
use uom::si::power::watt;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::volume_rate::cubic_meter_per_second;
use winterset_refrigerant::Error;

use crate::explain::{Explained, Given, Quantity, Rule, Working};
use crate::ice::{
    Coil, EvaporatingLimit, KnownPoint, ReturnAir, lowest_evaporating, usual_air_share,
    usual_inlet_quality,
};
use crate::input::Input;
use crate::moist_air::MoistAir;
use crate::planning::breath;
use crate::root::bracketed;
use crate::system::circuit::Circuit;
use crate::system::fluid;
use crate::system::line::Line;

/// Airflow of an indoor coil, m³/s a watt of cooling capacity. Common practice, no published source.
const AIRFLOW: f64 = 5.4e-5;

/// What ice has to do with a system.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum IceLimit {
    /// Ice grows below this evaporating temperature (dew).
    Below(ThermodynamicTemperature),
    /// The coil is below it at the known point already, so that no head pressure keeps ice off.
    AlreadyAtKnownPoint(ThermodynamicTemperature),
    /// The coil is defrosted, or the air too dry to ice it.
    None,
    /// The return air and the airflow do not go with the capacity, so that nothing is known of the coil's surface.
    Unknown,
}

/// Evaporating temperature at which ice starts.
pub(crate) async fn ice_limit(input: &Input, atmosphere: Pressure, circuit: &Circuit) -> IceLimit {
    let Some((coil, returning)) = indoor_coil(input, atmosphere, circuit) else {
        return IceLimit::Unknown;
    };
    breath().await;
    let found = lowest_evaporating(
        &input.refrigerant,
        input.duty.value,
        &coil,
        &returning,
        Given::assumed(usual_inlet_quality()),
    )
    .ok();
    match found {
        Some(EvaporatingLimit::Lowest { evaporating, .. })
            if evaporating >= input.evaporating.value =>
        {
            IceLimit::AlreadyAtKnownPoint(evaporating)
        }
        Some(EvaporatingLimit::Lowest { evaporating, .. }) => IceLimit::Below(evaporating),
        Some(EvaporatingLimit::None(_)) => IceLimit::None,
        None => IceLimit::Unknown,
    }
}

/// The coil that has the cooling capacity at the known point, and the air that returns to it; `None` where they do not go together.
fn indoor_coil(
    input: &Input,
    atmosphere: Pressure,
    circuit: &Circuit,
) -> Option<(Coil, ReturnAir)> {
    let cooling = circuit.at_known.cooling();
    let airflow = input
        .indoor_airflow
        .unwrap_or(VolumeRate::new::<cubic_meter_per_second>(AIRFLOW * cooling));
    let air = MoistAir::new(
        input.return_air.value,
        input.return_humidity.value,
        atmosphere,
    );
    let returning = ReturnAir {
        air: air.ok()?,
        airflow,
    };
    let known = KnownPoint {
        capacity: uom::si::f64::Power::new::<watt>(cooling),
        returning,
        refrigerant: input.evaporating.value,
    };
    let coil = Coil::from_known_point(&known, Given::assumed(usual_air_share())).ok()?;
    Some((coil, returning))
}

/// Head pressure that keeps the coil free of ice; `None` where no head pressure bears on it.
///
/// # Errors
/// Those of the refrigerant outside its range.
pub(super) fn evaporator_need(
    input: &Input,
    limit: IceLimit,
    line: &Line,
) -> Result<Option<Explained<Pressure>>, Error> {
    let IceLimit::Below(lowest) = limit else {
        return Ok(None);
    };
    let wanted = lowest.get::<kelvin>();
    if line.at(line.trip).evaporating >= wanted {
        return Ok(None);
    }
    let known = input.known_outdoor.value + input.over_ambient.value;
    let condensing = bracketed(line.trip, known.get::<kelvin>(), |condensing| {
        line.at(condensing).evaporating - wanted
    });
    let pressure = input
        .refrigerant
        .dew_pressure(fluid::temperature(condensing))?;
    Ok(Some(Explained::new(
        pressure,
        Working::new(Rule::EvaporatorNeed)
            .with("T_e,ice", Quantity::Temperature(lowest))
            .given("T_ra", input.return_air, Quantity::Temperature)
            .given("φ", input.return_humidity, Quantity::Ratio),
    )))
}
