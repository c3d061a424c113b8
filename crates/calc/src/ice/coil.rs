//! An evaporator coil, from the air's way in to its way out.
//!
//! With `n` the air-side conductance passed so far over the air's heat capacity rate, `dt/dn = −(t − t_s)` and, wherever the surface is below the
//! dew point, `dW/dn = −(W − W_s(t_s))`: heat and mass go alike, the Lewis relation with a Lewis number of 1. The surface lies where what
//! it takes from the air is what it passes to the refrigerant, `(UA_a/UA_r)·[(t − t_s) + (λ/c)·(W − W_s)] = t_s − t_r`; `λ` is the heat of
//! condensing, or of turning to ice where the surface is below freezing; in between a surface at 0 °C freezes a part of what settles. Dry, wet and frosting coil, and one that is each in part,
//! are so one equation. The refrigerant has one temperature.
//!
//! Source: ASHRAE Handbook Fundamentals, mass transfer chapter; Incropera & DeWitt, heat and mass transfer analogy.

use uom::si::f64::{MassRate, Power, ThermalConductance, ThermodynamicTemperature, VolumeRate};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::power::watt;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use uom::si::volume_rate::cubic_meter_per_second;

use super::error::{IceError, IceInput, within};
use crate::explain::Given;
use crate::integrate::integrate;
use crate::moist_air::{self, MoistAir};
use crate::root::bracketed;

/// Largest step of the march through a coil, as a share of it.
const LARGEST_STEP: f64 = 0.1;

/// Most transfer units on the air side: far above any coil, and still resolved by the march.
const MOST_UNITS: f64 = 12.0;

/// Enthalpy of fusion of ice, J/kg (Incropera & DeWitt, properties of water; from memory).
pub(super) const FUSION: f64 = 333.4e3;

/// How the air-side conductance goes with the airflow: as on the condenser, Incropera & DeWitt's exponent for banks of tubes.
const AIRFLOW_EXPONENT: f64 = 0.6;

/// Share of the air side, fins included, in the resistance of a finned coil that is dry. Common practice, no published source: 0.6 to 0.8.
pub fn usual_air_share() -> f64 {
    0.7
}

/// The air that returns to a coil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReturnAir {
    /// Its state.
    pub air: MoistAir,
    /// Its volume flow in that state: 0.001 to 1000 m³/s.
    pub airflow: VolumeRate,
}

impl ReturnAir {
    /// Dry air, kg/s.
    pub(super) fn dry_air(&self) -> Result<f64, IceError> {
        let airflow = self.airflow.get::<cubic_meter_per_second>();
        within(IceInput::Airflow, airflow, (1e-3, 1e3))?;
        Ok((self.airflow * self.air.dry_air_density()).get::<kilogram_per_second>())
    }

    pub(super) fn celsius(&self) -> f64 {
        self.air.dry_bulb().get::<degree_celsius>()
    }
}

/// A point at which the capacity of a coil is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnownPoint {
    /// Cooling capacity, water included: 1 W to 10 MW.
    pub capacity: Power,
    /// The air that enters.
    pub returning: ReturnAir,
    /// Temperature of the refrigerant: 173.15 K up to below the return air's.
    pub refrigerant: ThermodynamicTemperature,
}

/// A coil as its two conductances, air to surface and surface to refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coil {
    air: f64,
    refrigerant: f64,
}

/// What settles on the surface of a coil.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Surface {
    /// Nothing, be it below freezing or not: all of it is above the dew or frost point.
    Dry,
    /// Water, on all of it or the coldest part.
    Wet,
    /// Frost, on all of it or the coldest part.
    Frosting,
}

/// What happens to the air on its way through a coil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pass {
    /// What settles on the surface.
    pub surface: Surface,
    /// Surface where the air enters: the warmest.
    pub warmest: ThermodynamicTemperature,
    /// Surface where the air leaves: the coldest.
    pub coldest: ThermodynamicTemperature,
    /// The air that leaves, held at saturation: what humid air on a deep-cold surface has above it drifts off as fog.
    pub leaving: MoistAir,
    /// Heat that the refrigerant takes up.
    pub total: Power,
    /// Part of it that cools the air.
    pub sensible: Power,
    /// Water that settles, frost included.
    pub condensate: MassRate,
    /// Frost that settles.
    pub frost: MassRate,
    /// Apparatus dew point: where the line through the air that enters and leaves meets saturation. `None` on a dry coil, on one that is dry in
    /// so great a part that the line misses saturation, and where the air leaves as fog.
    pub apparatus_dew_point: Option<ThermodynamicTemperature>,
}

impl Pass {
    /// Sensible heat ratio; 1 on a dry coil.
    pub fn sensible_heat_ratio(&self) -> f64 {
        (self.sensible / self.total).value
    }
}

/// Air on its way through the coil, and what it has left behind on a kg of dry air.
#[derive(Clone, Copy)]
struct Along {
    celsius: f64,
    ratio: f64,
    heat: f64,
    frost: f64,
}

impl From<[f64; 4]> for Along {
    fn from([celsius, ratio, heat, frost]: [f64; 4]) -> Self {
        Self {
            celsius,
            ratio,
            heat,
            frost,
        }
    }
}

/// What stays the same along the coil.
struct March {
    /// Air-side over refrigerant-side conductance.
    conductances: f64,
    heat_capacity: f64,
    refrigerant: f64,
    pascals: f64,
}

/// What the air meets at one place of the surface.
struct Contact {
    surface: f64,
    /// Heat that passes on to the refrigerant.
    heat: f64,
    settling: f64,
    /// Share of what settles that freezes.
    frozen: f64,
}

/// Heat given off by vapour that settles from air at a temperature as water at another, J/kg.
fn condensing(celsius: f64, surface: f64) -> f64 {
    1e3 * (2501.0 + 1.86 * celsius - 4.186 * surface)
}

/// The same as ice.
fn deposition(celsius: f64, surface: f64) -> f64 {
    1e3 * (2501.0 + 1.86 * celsius - 2.1 * surface) + FUSION
}

impl March {
    fn settling(&self, ratio: f64, surface: f64) -> f64 {
        (ratio - moist_air::saturated_ratio(surface, self.pascals)).max(0.0)
    }

    /// Heat on to the refrigerant from a surface at a temperature.
    fn passed_on(&self, surface: f64) -> f64 {
        self.heat_capacity * (surface - self.refrigerant) / self.conductances
    }

    /// Heat from the air less that to the refrigerant.
    fn surplus(&self, at: &Along, surface: f64, latent: fn(f64, f64) -> f64) -> f64 {
        let settling = self.settling(at.ratio, surface);
        self.heat_capacity * (at.celsius - surface) + latent(at.celsius, surface) * settling
            - self.passed_on(surface)
    }

    /// Between all water and all ice there is a stretch at 0 °C, in which as much freezes as the refrigerant takes heat for.
    fn contact(&self, at: &Along) -> Contact {
        let water = self.surplus(at, 0.0, condensing);
        let ice = self.surplus(at, 0.0, deposition);
        let (low, high) = (self.refrigerant, at.celsius);
        let (surface, frozen) = if high > 0.0 && (low >= 0.0 || water >= 0.0) {
            let root = bracketed(low.max(0.0), high, |s| self.surplus(at, s, condensing));
            (root, 0.0)
        } else if high <= 0.0 || ice <= 0.0 {
            let root = bracketed(low, high.min(0.0), |s| self.surplus(at, s, deposition));
            (root, 1.0)
        } else {
            (0.0, water / (water - ice))
        };
        Contact {
            surface,
            heat: self.passed_on(surface),
            settling: self.settling(at.ratio, surface),
            frozen,
        }
    }

    fn rates(&self, at: &[f64; 4]) -> [f64; 4] {
        let at = Along::from(*at);
        let contact = self.contact(&at);
        [
            contact.surface - at.celsius,
            -contact.settling,
            contact.heat,
            contact.frozen * contact.settling,
        ]
    }

    fn through(&self, start: Along, units: f64) -> Along {
        /// Errors allowed of a step: K, shares, J and shares on a kg of dry air.
        const ABSOLUTE: [f64; 4] = [1e-6, 1e-9, 1e-2, 1e-9];
        let mut end = [start.celsius, start.ratio, start.heat, start.frost];
        integrate(
            end,
            ABSOLUTE,
            (units, LARGEST_STEP * units),
            |at| self.rates(at),
            |step| end = step.end.0,
        );
        Along::from(end)
    }
}

impl Coil {
    /// A coil from its conductance, dry, from air to refrigerant (0.1 W/K to 1 MW/K) and the share of the air side in its resistance (0.2 to
    /// 0.98); see [`usual_air_share`].
    ///
    /// # Errors
    /// [`IceError::OutOfRange`].
    pub fn new(overall: ThermalConductance, air_share: Given<f64>) -> Result<Self, IceError> {
        let overall = overall.get::<watt_per_kelvin>();
        within(IceInput::Conductance, overall, (0.1, 1e6))?;
        within(IceInput::AirShare, air_share.value, (0.2, 0.98))?;
        Ok(Self::shared(overall, air_share.value))
    }

    fn shared(overall: f64, air_share: f64) -> Self {
        Self {
            air: overall / air_share,
            refrigerant: overall / (1.0 - air_share),
        }
    }

    /// The coil that has a known capacity at a known point.
    ///
    /// # Errors
    /// [`IceError::OutOfRange`], [`IceError::NotColder`]; [`IceError::TooMuchCapacity`] where no coil draws so much.
    pub fn from_known_point(point: &KnownPoint, air_share: Given<f64>) -> Result<Self, IceError> {
        let capacity = point.capacity.get::<watt>();
        within(IceInput::Capacity, capacity, (1.0, 1e7))?;
        within(IceInput::AirShare, air_share.value, (0.2, 0.98))?;
        let returning = &point.returning;
        let rate = returning.dry_air()? * heat_capacity(returning);
        let largest = MOST_UNITS * rate * air_share.value;
        let coil = |overall| Self::shared(overall, air_share.value);
        let most = coil(largest).pass(returning, point.refrigerant)?.total;
        if point.capacity > most {
            return Err(IceError::TooMuchCapacity {
                given: point.capacity,
                most,
            });
        }
        let mut failure = None;
        let overall = bracketed(largest * 1e-6, largest, |overall| {
            match coil(overall).pass(returning, point.refrigerant) {
                Ok(pass) => pass.total.get::<watt>() - capacity,
                Err(error) => {
                    failure = Some(error);
                    0.0
                }
            }
        });
        failure.map_or_else(|| Ok(coil(overall)), Err)
    }

    /// Conductance, dry, from air to refrigerant.
    pub fn overall(&self) -> ThermalConductance {
        let resistance = 1.0 / self.air + 1.0 / self.refrigerant;
        ThermalConductance::new::<watt_per_kelvin>(1.0 / resistance)
    }

    /// The same coil at a share (0.01 to 2) of the airflow that it is known at, as behind a clogged filter: the air-side conductance goes with
    /// the airflow to the power 0.6.
    ///
    /// # Errors
    /// [`IceError::OutOfRange`].
    pub fn at_airflow(self, share: f64) -> Result<Self, IceError> {
        within(IceInput::AirflowShare, share, (0.01, 2.0))?;
        Ok(Self {
            air: self.air * share.powf(AIRFLOW_EXPONENT),
            ..self
        })
    }

    /// Transfer units on the air side.
    pub(super) fn units(&self, returning: &ReturnAir) -> Result<f64, IceError> {
        Ok(self.air / (returning.dry_air()? * heat_capacity(returning)))
    }

    fn marched_units(&self, returning: &ReturnAir) -> Result<f64, IceError> {
        let units = self.units(returning)?;
        if units <= MOST_UNITS * (1.0 + 1e-9) {
            return Ok(units);
        }
        Err(IceError::TooManyUnits {
            given: units,
            most: MOST_UNITS,
        })
    }

    /// What happens to the air on its way through, with the refrigerant at a temperature from 173.15 K up to below the return air's.
    ///
    /// # Errors
    /// [`IceError::OutOfRange`], [`IceError::NotColder`], [`IceError::TooManyUnits`].
    pub fn pass(
        &self,
        returning: &ReturnAir,
        refrigerant: ThermodynamicTemperature,
    ) -> Result<Pass, IceError> {
        let (march, units, start) = self.march(returning, refrigerant)?;
        Ok(described(&march, returning.dry_air()?, units, start))
    }

    fn march(
        &self,
        returning: &ReturnAir,
        refrigerant: ThermodynamicTemperature,
    ) -> Result<(March, f64, Along), IceError> {
        let input = IceInput::RefrigerantTemperature;
        let highest = returning.air.dry_bulb();
        // Colder than the equation for ice holds, no coil surface is met.
        within(input, refrigerant.get::<kelvin>(), (173.15, 400.0))?;
        if refrigerant >= highest {
            return Err(IceError::NotColder {
                given: refrigerant,
                highest,
            });
        }
        let units = self.marched_units(returning)?;
        let march = March {
            conductances: self.air / self.refrigerant,
            heat_capacity: heat_capacity(returning),
            refrigerant: refrigerant.get::<degree_celsius>(),
            pascals: returning.air.pressure().value,
        };
        let start = Along {
            celsius: returning.celsius(),
            ratio: returning.air.humidity_ratio(),
            heat: 0.0,
            frost: 0.0,
        };
        Ok((march, units, start))
    }

    /// Coldest surface in °C, less a kelvin for the share of what settles there that freezes: falls with the refrigerant's temperature without
    /// resting at 0 °C.
    pub(super) fn coldest_less_frozen(
        &self,
        returning: &ReturnAir,
        refrigerant: ThermodynamicTemperature,
    ) -> Result<f64, IceError> {
        let (march, units, start) = self.march(returning, refrigerant)?;
        let exit = march.contact(&march.through(start, units));
        let freezing = exit.settling > 0.0;
        Ok(exit.surface - if freezing { exit.frozen } else { 0.0 })
    }
}

fn heat_capacity(returning: &ReturnAir) -> f64 {
    moist_air::heat_capacity(returning.air.humidity_ratio())
}

fn described(march: &March, dry_air: f64, units: f64, start: Along) -> Pass {
    let end = march.through(start, units);
    let (entry, exit) = (march.contact(&start), march.contact(&end));
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let mass = |ratio: f64| MassRate::new::<kilogram_per_second>(dry_air * ratio);
    let sensible = march.heat_capacity * (start.celsius - end.celsius);
    Pass {
        surface: match exit.settling > 0.0 {
            true if exit.frozen > 0.0 => Surface::Frosting,
            true => Surface::Wet,
            false => Surface::Dry,
        },
        warmest: celsius(entry.surface),
        coldest: celsius(exit.surface),
        leaving: MoistAir::led_to(end.celsius, end.ratio, march.pascals),
        total: Power::new::<watt>(dry_air * end.heat),
        sensible: Power::new::<watt>(dry_air * sensible),
        condensate: mass(start.ratio - end.ratio),
        frost: mass(end.frost),
        apparatus_dew_point: apparatus(march, start, end).map(celsius),
    }
}

/// The line lies furthest above the saturation curve where both are equally steep; from there on up to the air that leaves they meet once.
fn apparatus(march: &March, start: Along, end: Along) -> Option<f64> {
    const ASIDE: f64 = 0.01;
    let slope = (start.ratio - end.ratio) / (start.celsius - end.celsius);
    let saturated = |celsius| moist_air::saturated_ratio(celsius, march.pascals);
    let above = |celsius: f64| start.ratio + slope * (celsius - start.celsius) - saturated(celsius);
    let furthest = bracketed(march.refrigerant, end.celsius, |celsius| {
        slope - (saturated(celsius + ASIDE) - saturated(celsius - ASIDE)) / (2.0 * ASIDE)
    });
    let meets = slope > 0.0 && above(furthest) >= 0.0 && above(end.celsius) < 0.0;
    meets.then(|| bracketed(furthest, end.celsius, above))
}
