//! How cold the refrigerant may be before ice starts.
//!
//! Ice starts where the coldest part of the surface is at 0 °C and water settles there, or, in air whose frost point is below 0 °C, where the
//! surface is at the frost point.

use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use winterset_refrigerant::Refrigerant;

use super::coil::{Coil, ReturnAir};
use super::error::{IceError, IceInput, within};
use crate::explain::Given;
use crate::input::Duty;
use crate::root::bracketed;

/// Coldest refrigerant that ice is looked for at, °C: below any coil that cools a room.
const COLDEST: f64 = -90.0;

/// Share of vapour where the refrigerant enters the coil. Common practice, no published source: 0.1 to 0.3, the less the colder the liquid.
pub fn usual_inlet_quality() -> f64 {
    0.2
}

/// Coldest temperature in an evaporator whose pressure is that of a dew temperature: that of the mixture that enters, with a share of vapour from
/// 0 to 1. For a pure fluid the dew temperature itself.
///
/// # Errors
/// [`IceError::OutOfRange`], [`IceError::Refrigerant`].
pub fn coldest_refrigerant(
    refrigerant: &Refrigerant,
    evaporating: ThermodynamicTemperature,
    inlet_quality: Given<f64>,
) -> Result<ThermodynamicTemperature, IceError> {
    let quality = within(IceInput::InletQuality, inlet_quality.value, (0.0, 1.0))?;
    let pressure = refrigerant.dew_pressure(evaporating)?;
    let entering = refrigerant.two_phase(pressure, Ratio::new::<ratio>(quality))?;
    Ok(entering.temperature)
}

/// What sets the surface temperature at which ice starts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LimitedBy {
    /// Water on the surface freezes.
    Freezing,
    /// The air is so dry that vapour settles as frost only below its frost point.
    FrostPoint,
}

/// Surface temperature at which ice starts, °C, and why.
fn starts_at(returning: &ReturnAir) -> (f64, LimitedBy) {
    let dew = returning.air.dew_point().temperature();
    let dew = dew.get::<degree_celsius>();
    if dew > 0.0 {
        (0.0, LimitedBy::Freezing)
    } else {
        (dew, LimitedBy::FrostPoint)
    }
}

/// Warmest refrigerant at which ice starts on the coldest part of the coil, and why there; `None` in air so dry that none does above -90 °C.
///
/// # Errors
/// [`IceError::OutOfRange`], [`IceError::TooManyUnits`].
pub fn ice_starts(
    coil: &Coil,
    returning: &ReturnAir,
) -> Result<Option<(ThermodynamicTemperature, LimitedBy)>, IceError> {
    let (surface, why) = starts_at(returning);
    let over = |refrigerant: f64| -> Result<f64, IceError> {
        if refrigerant >= returning.celsius() {
            return Ok(returning.celsius() - surface);
        }
        let refrigerant = ThermodynamicTemperature::new::<degree_celsius>(refrigerant);
        Ok(coil.coldest_less_frozen(returning, refrigerant)? - surface)
    };
    if over(COLDEST)? > 0.0 {
        return Ok(None);
    }
    let mut failure = None;
    let found = bracketed(COLDEST, returning.celsius(), |refrigerant| {
        over(refrigerant).unwrap_or_else(|error| {
            failure = Some(error);
            0.0
        })
    });
    match failure {
        Some(error) => Err(error),
        None => Ok(Some((
            ThermodynamicTemperature::new::<degree_celsius>(found),
            why,
        ))),
    }
}

/// Why ice sets no limit to the evaporating temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NoLimit {
    /// The coil frosts by design, and is defrosted.
    Defrosted,
    /// The air is so dry that no frost settles above -90 °C.
    DryAir,
    /// The refrigerant is not colder than the limit anywhere in the range of its equations.
    RefrigerantRange,
}

/// The limit that ice sets to the evaporating temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EvaporatingLimit {
    /// The coil stays free of ice down to here.
    Lowest {
        /// Lowest evaporating temperature (dew).
        evaporating: ThermodynamicTemperature,
        /// Coldest refrigerant in the coil then.
        refrigerant: ThermodynamicTemperature,
        /// What sets it.
        by: LimitedBy,
    },
    /// There is none.
    None(NoLimit),
}

/// Lowest evaporating temperature (dew) that keeps a coil free of ice.
///
/// A coil that cools a room has no defrost, so that ice on it stays. One in a cooler or a freezer is defrosted and has no such limit.
///
/// # Errors
/// [`IceError::OutOfRange`], [`IceError::TooManyUnits`], [`IceError::Refrigerant`].
pub fn lowest_evaporating(
    refrigerant: &Refrigerant,
    duty: Duty,
    coil: &Coil,
    returning: &ReturnAir,
    inlet_quality: Given<f64>,
) -> Result<EvaporatingLimit, IceError> {
    if duty != Duty::RoomCooling {
        return Ok(EvaporatingLimit::None(NoLimit::Defrosted));
    }
    let Some((coldest, by)) = ice_starts(coil, returning)? else {
        return Ok(EvaporatingLimit::None(NoLimit::DryAir));
    };
    let found = dew_temperature(refrigerant, coldest, inlet_quality)?;
    Ok(
        found.map_or(EvaporatingLimit::None(NoLimit::RefrigerantRange), |found| {
            EvaporatingLimit::Lowest {
                evaporating: found,
                refrigerant: coldest,
                by,
            }
        }),
    )
}

/// The dew temperature whose [`coldest_refrigerant`] is the one given; `None` where that is colder than the refrigerant's range.
fn dew_temperature(
    refrigerant: &Refrigerant,
    coldest: ThermodynamicTemperature,
    inlet_quality: Given<f64>,
) -> Result<Option<ThermodynamicTemperature>, IceError> {
    // No blend glides as far; the glide only asks for a bracket that holds the answer.
    const GLIDE: f64 = 60.0;
    let (low, high) = refrigerant.temperature_range();
    let sought = coldest.get::<kelvin>();
    let over = |dew: f64| -> Result<f64, IceError> {
        let dew = ThermodynamicTemperature::new::<kelvin>(dew);
        let there = coldest_refrigerant(refrigerant, dew, inlet_quality)?;
        Ok(there.get::<kelvin>() - sought)
    };
    let least = sought.max(low.get::<kelvin>() + 10.0);
    let most = (sought + GLIDE).min(high.get::<kelvin>() - 2.0);
    if least >= most || over(least)? > 1e-9 {
        return Ok(None);
    }
    let mut failure = None;
    let found = bracketed(least, most, |dew| {
        over(dew).unwrap_or_else(|error| {
            failure = Some(error);
            0.0
        })
    });
    match failure {
        Some(error) => Err(error),
        None => Ok(Some(ThermodynamicTemperature::new::<kelvin>(found))),
    }
}
