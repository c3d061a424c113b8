//! Where the refrigerant of a standing system gathers, and how much of it.
//!
//! In equilibrium the pressure is that of saturation in the coldest part: every warmer part holds vapour of that pressure, the coldest all the
//! rest. Once it is full of liquid the next warmer one takes over. That a blend shifts its composition on the way is left out.
//!
//! How much comes over in a night is also bounded by the heat that the cold part can get rid of: at most as if it were as warm as the warmest part
//! that still holds liquid, `m ≤ G·(T_warm − T_cold)·t / h_fg`.
//!
//! Source: two-phase equilibrium; ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter, on migration while a system stands.

use uom::si::f64::{
    Mass, MassDensity, Pressure, ThermalConductance, ThermodynamicTemperature, Time, Volume,
};
use uom::si::mass::kilogram;
use uom::si::pressure::pascal;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::time::second;
use uom::si::volume::cubic_meter;
use winterset_refrigerant::Refrigerant;

use super::error::{StartError, StartInput, temperature, within};
use crate::air::difference;
use crate::root::bracketed;

/// Which part of the circuit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Place {
    /// The compressor with its sump.
    Compressor,
    /// The condenser.
    Condenser,
    /// The receiver.
    Receiver,
    /// The liquid line.
    LiquidLine,
    /// The evaporator.
    Evaporator,
    /// The suction line.
    SuctionLine,
}

/// A part that is open to the others while the system stands. A closed solenoid valve or check valve parts the circuit: what lies behind it
/// is not given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Which.
    pub place: Place,
    /// Temperature that it has while the system stands: 173.15 to 400 K and within the range of the refrigerant.
    pub temperature: ThermodynamicTemperature,
    /// Inside volume, oil taken off: 1e-6 to 100 m³.
    pub volume: Volume,
    /// Refrigerant in it when the system stops: 0 to 10 t.
    pub charge: Mass,
}

/// How long the system stands and how the coldest part gets rid of heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// Time: 0 s to 365 days.
    pub time: Time,
    /// Conductance from the coldest part to its surroundings: 0 to 1 MW/K.
    pub conductance: ThermalConductance,
}

/// What a part holds in the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// Which part.
    pub place: Place,
    /// What it holds in equilibrium.
    pub mass: Mass,
    /// Share of its volume that is liquid.
    pub liquid: f64,
}

/// What bounds the mass that comes over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SetBy {
    /// All that equilibrium moves has come.
    Equilibrium,
    /// The night is too short for the heat to leave.
    Heat,
}

/// What migrates while the system stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Migration {
    /// The coldest part.
    pub coldest: Place,
    /// Pressure in the end.
    pub pressure: Pressure,
    /// Mass that comes over into the coldest part, at most; 0 where it loses some.
    pub moved: Mass,
    /// What bounds it.
    pub set_by: SetBy,
    /// Every part in equilibrium, the coldest first. Where there is not enough for any liquid, all hold vapour.
    pub parts: Vec<Held>,
}

/// What migrates to the coldest of some parts; of parts that are equally cold the first one given. Without a [`Night`] the time is unbounded.
///
/// # Errors
/// [`StartError::NoParts`], [`StartError::OutOfRange`]; [`StartError::Overfilled`] where the charge is more than the parts hold as liquid;
/// [`StartError::Refrigerant`].
pub fn migration(
    refrigerant: &Refrigerant,
    parts: &[Part],
    night: Option<&Night>,
) -> Result<Migration, StartError> {
    parts.iter().try_for_each(check)?;
    let mut sorted: Vec<&Part> = parts.iter().collect();
    sorted.sort_by(|a, b| a.temperature.value.total_cmp(&b.temperature.value));
    let Some(&coldest) = sorted.first() else {
        return Err(StartError::NoParts);
    };
    let charge: Mass = parts.iter().map(|part| part.charge).sum();
    let (pressure, held) = settled(refrigerant, &sorted, charge)?;
    let in_coldest = held.first().map_or(Mass::default(), |first| first.mass);
    let equilibrium = (in_coldest - coldest.charge).max(Mass::default());
    let mut migration = Migration {
        coldest: coldest.place,
        pressure,
        moved: equilibrium,
        set_by: SetBy::Equilibrium,
        parts: held,
    };
    if let Some(night) = night {
        let most = heat_bound(refrigerant, &sorted, coldest, night)?;
        if most < equilibrium {
            migration.moved = most;
            migration.set_by = SetBy::Heat;
        }
    }
    Ok(migration)
}

fn check(part: &Part) -> Result<(), StartError> {
    temperature(StartInput::PartTemperature, part.temperature)?;
    let volume = part.volume.get::<cubic_meter>();
    within(StartInput::PartVolume, volume, (1e-6, 100.0))?;
    let charge = part.charge.get::<kilogram>();
    within(StartInput::PartCharge, charge, (0.0, 1e4))?;
    Ok(())
}

/// Vapour in a part at a pressure, held at the dew point of its temperature.
fn vapor(refrigerant: &Refrigerant, part: &Part, pressure: Pressure) -> Result<Mass, StartError> {
    let dew = refrigerant.dew_at_temperature(part.temperature)?;
    let density = if pressure < dew.pressure {
        refrigerant.state(part.temperature, pressure)?.density
    } else {
        dew.density
    };
    Ok(density * part.volume)
}

/// Liquid that fills a part at a pressure, held at the bubble point of its temperature.
fn full(refrigerant: &Refrigerant, part: &Part, pressure: Pressure) -> Result<Mass, StartError> {
    let bubble = refrigerant.bubble_at_temperature(part.temperature)?;
    let density: MassDensity = if pressure > bubble.pressure {
        refrigerant.state(part.temperature, pressure)?.density
    } else {
        bubble.density
    };
    Ok(density * part.volume)
}

/// The parts at a pressure: the coldest ones, `filled` in number, full of liquid, the others full of vapour.
fn at_pressure(
    refrigerant: &Refrigerant,
    sorted: &[&Part],
    filled: usize,
    pressure: Pressure,
) -> Result<Vec<Held>, StartError> {
    let each = |(index, part): (usize, &&Part)| {
        let is_full = index < filled;
        Ok(Held {
            place: part.place,
            mass: if is_full {
                full(refrigerant, part, pressure)?
            } else {
                vapor(refrigerant, part, pressure)?
            },
            liquid: if is_full { 1.0 } else { 0.0 },
        })
    };
    sorted.iter().enumerate().map(each).collect()
}

fn total(held: &[Held]) -> Mass {
    held.iter().map(|held| held.mass).sum()
}

/// Pressure and contents in equilibrium. From the coldest part on, the first that need not be full sets the pressure.
fn settled(
    refrigerant: &Refrigerant,
    sorted: &[&Part],
    charge: Mass,
) -> Result<(Pressure, Vec<Held>), StartError> {
    // Below any pressure that a charge worth the name leaves.
    let mut below = Pressure::new::<pascal>(1.0);
    let mut most = Mass::default();
    for (index, part) in sorted.iter().enumerate() {
        let pressure = refrigerant.bubble_pressure(part.temperature)?;
        let mut held = at_pressure(refrigerant, sorted, index, pressure)?;
        let spare = charge - total(&held);
        if spare < Mass::default() {
            return between(refrigerant, sorted, (index, charge), (below, pressure));
        }
        let room = full(refrigerant, part, pressure)?;
        most = total(&held) + room;
        if let Some(own) = held.get_mut(index) {
            most -= own.mass;
            if own.mass + spare <= room {
                own.liquid = share(spare, room - own.mass);
                own.mass += spare;
                return Ok((pressure, held));
            }
        }
        below = pressure;
    }
    Err(StartError::Overfilled {
        most: most.get::<kilogram>(),
    })
}

fn share(of: Mass, whole: Mass) -> f64 {
    if whole > Mass::default() {
        (of / whole).value
    } else {
        0.0
    }
}

/// Equilibrium in which no part holds both liquid and vapour: the pressure lies between two.
fn between(
    refrigerant: &Refrigerant,
    sorted: &[&Part],
    (filled, charge): (usize, Mass),
    (low, high): (Pressure, Pressure),
) -> Result<(Pressure, Vec<Held>), StartError> {
    let mut failure = None;
    let found = bracketed(low.get::<pascal>(), high.get::<pascal>(), |pascals| {
        let pressure = Pressure::new::<pascal>(pascals);
        match at_pressure(refrigerant, sorted, filled, pressure) {
            Ok(held) => (total(&held) - charge).get::<kilogram>(),
            Err(error) => {
                failure = Some(error);
                0.0
            }
        }
    });
    if let Some(error) = failure {
        return Err(error);
    }
    let pressure = Pressure::new::<pascal>(found);
    Ok((
        pressure,
        at_pressure(refrigerant, sorted, filled, pressure)?,
    ))
}

/// Mass whose heat of condensing leaves the coldest part in the night.
fn heat_bound(
    refrigerant: &Refrigerant,
    sorted: &[&Part],
    coldest: &Part,
    night: &Night,
) -> Result<Mass, StartError> {
    const YEAR: f64 = 365.0 * 86_400.0;
    let time = night.time.get::<second>();
    within(StartInput::StandingTime, time, (0.0, YEAR))?;
    let conductance = night.conductance.get::<watt_per_kelvin>();
    within(StartInput::PartConductance, conductance, (0.0, 1e6))?;
    let warmest = sorted
        .iter()
        .filter(|part| part.charge > Mass::default())
        .map(|part| part.temperature)
        .fold(coldest.temperature, ThermodynamicTemperature::max);
    let pressure = refrigerant.bubble_pressure(coldest.temperature)?;
    let latent = refrigerant.saturation_at_pressure(pressure)?.latent_heat();
    let heat = night.conductance * difference(warmest, coldest.temperature) * night.time;
    Ok(heat / latent)
}
