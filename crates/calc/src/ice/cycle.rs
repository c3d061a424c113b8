//! Ice over a cycle of the compressor: what grows while it runs and what melts while it stands.
//!
//! While the compressor stands, ice at 0 °C takes heat from the return air, and that of the vapour which settles on it; air that is so dry that
//! more evaporates than its warmth melts, wet bulb below 0 °C, melts nothing. The heat that the metal of the coil holds is left out.
//!
//! Source: ASHRAE Handbook Fundamentals, mass transfer chapter; enthalpy of fusion and heat capacity of ice from Incropera & DeWitt.

use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{AvailableEnergy, Mass, MassRate, Power, ThermodynamicTemperature, Time};
use uom::si::mass::kilogram;
use uom::si::power::watt;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;

use super::coil::{Coil, FUSION, Pass, ReturnAir, Surface};
use super::error::{IceError, IceInput, within};
use crate::explain::Given;
use crate::moist_air;

/// Heat capacity of ice, J/(kg K) (ASHRAE Handbook Fundamentals, wet-bulb equation over ice).
const ICE_HEAT_CAPACITY: f64 = 2.1e3;

const FREEZING: f64 = 273.15;

/// Airflow through the coil while the compressor stands, over the airflow of the fan: all of it where the fan goes on, a twentieth by natural
/// draft where it stops. Common practice, no published source.
pub fn usual_off_airflow(fan_goes_on: bool) -> f64 {
    if fan_goes_on { 1.0 } else { 0.05 }
}

/// A cycle of the compressor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cycle {
    /// Time that it runs: 1 s to 7 days.
    pub run: Time,
    /// Time that it stands: 0 s to 7 days.
    pub off: Time,
    /// Airflow while it stands over that while it runs: 0 to 1; see [`usual_off_airflow`].
    pub off_airflow: Given<f64>,
}

impl Cycle {
    fn check(&self) -> Result<(), IceError> {
        const WEEK: f64 = 7.0 * 86_400.0;
        within(IceInput::RunTime, self.run.get::<second>(), (1.0, WEEK))?;
        within(IceInput::OffTime, self.off.get::<second>(), (0.0, WEEK))?;
        within(IceInput::AirflowShare, self.off_airflow.value, (0.0, 1.0))?;
        Ok(())
    }
}

/// What the air that still passes the coil does to a mass of ice while the compressor stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Melt {
    /// It is gone after this time.
    After(Time),
    /// It stays: the wet bulb is not above freezing, or no air moves.
    Never,
}

/// Time until a mass of ice (0 to 10 t) at a temperature (173.15 K to 0 °C) is melted by the return air, of whose flow a share (0 to 1) passes the coil.
///
/// # Errors
/// [`IceError::OutOfRange`], [`IceError::TooManyUnits`].
pub fn melting(
    coil: &Coil,
    returning: &ReturnAir,
    airflow: f64,
    mass: Mass,
    temperature: ThermodynamicTemperature,
) -> Result<Melt, IceError> {
    within(IceInput::IceMass, mass.get::<kilogram>(), (0.0, 1e4))?;
    let kelvins = temperature.get::<kelvin>();
    within(IceInput::IceTemperature, kelvins, (173.15, FREEZING))?;
    within(IceInput::AirflowShare, airflow, (0.0, 1.0))?;
    let power = melting_power(coil, returning, airflow)?;
    if power <= Power::default() {
        return Ok(Melt::Never);
    }
    Ok(Melt::After(mass * to_melt(kelvins) / power))
}

fn to_melt(kelvins: f64) -> AvailableEnergy {
    let warming = ICE_HEAT_CAPACITY * (FREEZING - kelvins);
    AvailableEnergy::new::<joule_per_kilogram>(FUSION + warming)
}

/// Heat that ice at 0 °C takes from the air: a surface of one temperature, `ṁ·(1 − e^−N)·[c·t + λ·(W − W_s(0 °C))]`.
fn melting_power(coil: &Coil, returning: &ReturnAir, airflow: f64) -> Result<Power, IceError> {
    /// Less air than this counts as none: the exponent for its conductance reaches no further.
    const STILL: f64 = 0.01;
    if airflow < STILL {
        return Ok(Power::default());
    }
    let passing = ReturnAir {
        airflow: returning.airflow * airflow,
        ..*returning
    };
    let units = coil.at_airflow(airflow)?.units(&passing)?;
    let air = &returning.air;
    let celsius = returning.celsius();
    let saturated = moist_air::saturated_ratio(0.0, air.pressure().value);
    let sensible = moist_air::heat_capacity(air.humidity_ratio()) * celsius;
    let latent = 1e3 * (2501.0 + 1.86 * celsius) * (air.humidity_ratio() - saturated);
    let treated = passing.dry_air()? * -(-units).exp_m1();
    Ok(Power::new::<watt>(treated * (sensible + latent)))
}

/// Why ice stays.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stays {
    /// The compressor does not stop.
    NoOffTime,
    /// The wet bulb of the return air is not above freezing, or no air moves while the compressor stands.
    NothingMelts,
    /// The compressor stands for less than the time that melts what a run leaves.
    OffTimeTooShort {
        /// The off time that would do.
        needed: Time,
    },
}

/// What becomes of ice on a coil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ice {
    /// None settles: the surface is dry or wet.
    None(Surface),
    /// What a run leaves is gone before the next one.
    MeltsEachCycle {
        /// Growth while the compressor runs.
        growth: MassRate,
        /// Ice at the end of a run.
        each_run: Mass,
        /// Time that it takes to melt.
        melts_in: Time,
    },
    /// It grows from cycle to cycle.
    Grows {
        /// Growth while the compressor runs.
        growth: MassRate,
        /// Growth on average over the whole cycle.
        average: MassRate,
        /// Why it stays.
        because: Stays,
    },
}

/// What becomes of ice on a coil with its refrigerant at a temperature while the compressor runs; without a cycle it never stops.
///
/// The growth is that on a coil just beginning to frost; see [`super::Fins`] for what comes of it. Frost that a run leaves is taken to have the
/// temperature of the coldest surface.
///
/// # Errors
/// As for [`Coil::pass`] and [`melting`].
pub fn outcome(
    coil: &Coil,
    returning: &ReturnAir,
    refrigerant: ThermodynamicTemperature,
    cycle: Option<&Cycle>,
) -> Result<Ice, IceError> {
    let pass = coil.pass(returning, refrigerant)?;
    if let Some(cycle) = cycle {
        cycle.check()?;
    }
    if pass.surface != Surface::Frosting {
        return Ok(Ice::None(pass.surface));
    }
    match cycle {
        Some(cycle) if cycle.off > Time::default() => over_cycle(coil, returning, &pass, cycle),
        _ => Ok(Ice::Grows {
            growth: pass.frost,
            average: pass.frost,
            because: Stays::NoOffTime,
        }),
    }
}

fn over_cycle(
    coil: &Coil,
    returning: &ReturnAir,
    pass: &Pass,
    cycle: &Cycle,
) -> Result<Ice, IceError> {
    let growth = pass.frost;
    let each_run: Mass = growth * cycle.run;
    let whole = cycle.run + cycle.off;
    let airflow = cycle.off_airflow.value;
    Ok(
        match melting(coil, returning, airflow, each_run, pass.coldest)? {
            Melt::Never => Ice::Grows {
                growth,
                average: each_run / whole,
                because: Stays::NothingMelts,
            },
            Melt::After(melts_in) if melts_in > cycle.off => Ice::Grows {
                growth,
                average: each_run * (1.0 - (cycle.off / melts_in).value) / whole,
                because: Stays::OffTimeTooShort { needed: melts_in },
            },
            Melt::After(melts_in) => Ice::MeltsEachCycle {
                growth,
                each_run,
                melts_in,
            },
        },
    )
}
