//! A refrigerant, named or made up.

use std::fmt;
use std::sync::{Arc, OnceLock};

use uom::si::f64::{
    AvailableEnergy, MassDensity, Pressure, Ratio, SpecificHeatCapacity, TemperatureInterval,
    ThermodynamicTemperature,
};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;

use crate::algorithm::envelope::Given;
use crate::algorithm::equilibrium::Side;
use crate::data::{BLENDS, FLUIDS, USES};
use crate::designation::{self, Named};
use crate::engine::{Engine, Saturated};
use crate::model::mixture::MOST;
use crate::{CriticalPoint, Error, SafetyClass, Saturation, State, Supply};

/// How far the sum of mass fractions may be from 1.
const SUM_TOLERANCE: f64 = 1e-6;

/// One component of a refrigerant with its share of the mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Component {
    /// Strict designation, such as `R-32`.
    pub designation: &'static str,
    /// Share of the total mass, from 0 to 1.
    pub mass_fraction: f64,
}

/// A pure fluid or a blend of fixed composition.
///
/// Cheap to clone, and free to be shared between threads. The saturation curves are traced when first needed, in about a
/// millisecond for a pure fluid and some milliseconds for a blend, and kept; clones and later calls of
/// [`named`](Refrigerant::named) share them.
#[derive(Clone)]
pub struct Refrigerant {
    inner: Arc<Inner>,
}

struct Inner {
    designation: String,
    safety: Option<SafetyClass>,
    supply: Supply,
    components: Vec<Component>,
    engine: Engine,
}

impl fmt::Debug for Refrigerant {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Refrigerant")
            .field("designation", &self.inner.designation)
            .field("components", &self.inner.components)
            .finish_non_exhaustive()
    }
}

static FLUID_CACHE: [OnceLock<Refrigerant>; FLUIDS.len()] =
    [const { OnceLock::new() }; FLUIDS.len()];
static BLEND_CACHE: [OnceLock<Refrigerant>; BLENDS.len()] =
    [const { OnceLock::new() }; BLENDS.len()];

impl Refrigerant {
    /// The refrigerant of an ANSI/ASHRAE 34 designation.
    ///
    /// Writing is forgiving: case, the leading `R`, hyphens, blanks and brackets do not matter, so `454b`, `r454B` and
    /// `R-454B` are one.
    ///
    /// ```
    /// # fn main() -> Result<(), winterset_refrigerant::Error> {
    /// let refrigerant = winterset_refrigerant::Refrigerant::named("454b")?;
    /// assert_eq!(refrigerant.designation(), "R-454B");
    /// # Ok(())
    /// # }
    /// ```
    ///
    /// # Errors
    /// [`Error::UnknownRefrigerant`] with what was given.
    pub fn named(designation: &str) -> Result<Refrigerant, Error> {
        let found = designation::find(designation).ok_or_else(|| Error::UnknownRefrigerant {
            given: designation.to_owned(),
        })?;
        let cached = match found {
            Named::Fluid(i) => FLUID_CACHE[i].get_or_init(|| {
                let fluid = &FLUIDS[i];
                Refrigerant::from_parts(fluid.designation.to_owned(), fluid.safety, &[(i, 1.0)])
            }),
            Named::Blend(i) => BLEND_CACHE[i].get_or_init(|| {
                let blend = &BLENDS[i];
                Refrigerant::from_parts(blend.designation.to_owned(), blend.safety, blend.parts)
            }),
        };
        Ok(cached.clone())
    }

    /// A blend of any composition, by mass fractions that add up to 1 within 10⁻⁶.
    ///
    /// A part may itself be a blend by designation; it is taken apart into its components. Parts given twice are added up,
    /// parts of fraction 0 are left out, and the order of the parts does not matter to any result.
    ///
    /// ```
    /// # fn main() -> Result<(), winterset_refrigerant::Error> {
    /// use winterset_refrigerant::Refrigerant;
    /// let typed = Refrigerant::blend(&[("R-32", 0.689), ("R-1234yf", 0.311)])?;
    /// assert_eq!(typed.designation(), "R-32/R-1234yf (0.689/0.311)");
    /// # Ok(())
    /// # }
    /// ```
    ///
    /// # Errors
    /// [`Error::UnknownRefrigerant`], [`Error::MassFraction`], [`Error::CompositionSum`], [`Error::EmptyBlend`],
    /// [`Error::TooManyComponents`]; [`Error::NotConverged`] where the saturation curves of the composition cannot be traced.
    pub fn blend(parts: &[(&str, f64)]) -> Result<Refrigerant, Error> {
        let mut shares = [0.0; FLUIDS.len()];
        let mut sum = 0.0;
        for &(given, fraction) in parts {
            if !(0.0..=1.0).contains(&fraction) {
                return Err(Error::MassFraction {
                    component: given.to_owned(),
                    value: fraction,
                });
            }
            match designation::find(given) {
                None => {
                    return Err(Error::UnknownRefrigerant {
                        given: given.to_owned(),
                    });
                }
                Some(Named::Fluid(i)) => shares[i] += fraction,
                Some(Named::Blend(i)) => {
                    for &(component, share) in BLENDS[i].parts {
                        shares[component] += fraction * share;
                    }
                }
            }
            sum += fraction;
        }
        if parts.is_empty() {
            return Err(Error::EmptyBlend);
        }
        if (sum - 1.0).abs() > SUM_TOLERANCE {
            return Err(Error::CompositionSum { sum });
        }
        let present: Vec<(usize, f64)> = shares
            .into_iter()
            .enumerate()
            .filter(|(_, share)| *share > 0.0)
            .collect();
        if present.len() > MOST {
            return Err(Error::TooManyComponents {
                count: present.len(),
                most: MOST,
            });
        }
        if let [(only, _)] = present.as_slice() {
            return Refrigerant::named(FLUIDS[*only].designation);
        }
        let list = |what: &dyn Fn(&(usize, f64)) -> String| {
            present.iter().map(what).collect::<Vec<_>>().join("/")
        };
        let designation = format!(
            "{} ({})",
            list(&|(i, _)| FLUIDS[*i].designation.to_owned()),
            list(&|(_, share)| ((share * 1e9).round() / 1e9).to_string()),
        );
        let blend = Refrigerant::from_parts(designation, None, &present);
        blend.inner.engine.envelope()?;
        Ok(blend)
    }

    fn from_parts(
        designation: String,
        safety: Option<SafetyClass>,
        parts: &[(usize, f64)],
    ) -> Refrigerant {
        let sum: f64 = parts.iter().map(|(_, share)| share).sum();
        let mut parts: Vec<(usize, f64)> = parts.iter().map(|(i, w)| (*i, w / sum)).collect();
        // One order for one composition, so that permuted components give the very same numbers.
        parts.sort_by_key(|(i, _)| *i);
        Refrigerant {
            inner: Arc::new(Inner {
                designation,
                safety,
                supply: Supply::of(parts.iter().map(|(i, _)| *i)),
                components: parts
                    .iter()
                    .map(|&(i, mass_fraction)| Component {
                        designation: FLUIDS[i].designation,
                        mass_fraction,
                    })
                    .collect(),
                engine: Engine::new(&parts),
            }),
        }
    }

    /// Strict designations of every refrigerant that [`named`](Refrigerant::named) knows: pure fluids by number, then blends
    /// by number.
    pub fn all() -> impl Iterator<Item = &'static str> {
        designation::all()
    }

    /// Strict designation, such as `R-454B`; for a composition given by hand its components and mass fractions,
    /// such as `R-32/R-1234yf (0.689/0.311)`.
    pub fn designation(&self) -> &str {
        &self.inner.designation
    }

    /// The components by designation, each with its share of the mass; a pure fluid has one.
    pub fn composition(&self) -> &[Component] {
        &self.inner.components
    }

    /// Safety class of ANSI/ASHRAE 34; `None` for a composition given by hand, or where none is assigned.
    pub fn safety_class(&self) -> Option<SafetyClass> {
        self.inner.safety
    }

    /// Whether its components are being phased down or out.
    pub fn supply(&self) -> Supply {
        self.inner.supply
    }

    /// What it is commonly used for, in a few words; `None` where there is no common use to tell.
    pub fn common_use(&self) -> Option<&'static str> {
        USES.iter()
            .find(|(name, _)| *name == self.designation())
            .map(|(_, text)| *text)
    }

    /// Glide: how much warmer the dew point is than the bubble point, at the pressure of a dew temperature. None for a pure fluid,
    /// next to none for an azeotrope.
    ///
    /// # Errors
    /// As for [`dew_at_temperature`](Refrigerant::dew_at_temperature) and [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn glide(&self, dew: ThermodynamicTemperature) -> Result<TemperatureInterval, Error> {
        let bubble = self.bubble_temperature(self.dew_pressure(dew)?)?;
        Ok(TemperatureInterval::new::<kelvin_interval>(
            dew.value - bubble.value,
        ))
    }

    /// Where liquid and vapour become one: for a pure fluid as published with its equation of state, for a blend the critical
    /// point of its composition, computed from the mixture model.
    pub fn critical_point(&self) -> CriticalPoint {
        let critical = self.inner.engine.critical();
        CriticalPoint {
            temperature: ThermodynamicTemperature::new::<kelvin>(critical.temperature),
            pressure: Pressure::new::<pascal>(critical.pressure),
            density: MassDensity::new::<kilogram_per_cubic_meter>(
                critical.density * self.inner.engine.molar_mass(),
            ),
        }
    }

    /// Whether parameters for some pair of components are not published and come from a combining rule instead.
    ///
    /// What that means: of equimolar pairs whose parameters are published, the rule puts the bubble pressure of half within 14 % and of nine
    /// in ten within 41 %, mostly too low; worst where a hydrocarbon meets a halocarbon or ammonia meets anything. A few per cent by mass of
    /// one component move a blend by far less.
    pub fn is_estimated(&self) -> bool {
        self.inner.engine.is_estimated()
    }

    /// Lowest and highest temperature for which the saturation functions answer.
    ///
    /// From -100 °C, or a pure fluid's triple point where that is higher, to just below the critical temperature. Whether a
    /// blend stays liquid so far down, or one of its components freezes out, is not computed.
    pub fn temperature_range(&self) -> (ThermodynamicTemperature, ThermodynamicTemperature) {
        let (low, high) = self.inner.engine.saturation_range();
        (
            ThermodynamicTemperature::new::<kelvin>(low),
            ThermodynamicTemperature::new::<kelvin>(high),
        )
    }

    /// Saturated liquid at a temperature.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below the [range](Refrigerant::temperature_range), [`Error::AboveCritical`] above it.
    pub fn bubble_at_temperature(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<State, Error> {
        self.inner.engine.bubble_at_temperature(temperature.value)
    }

    /// Saturated vapour at a temperature.
    ///
    /// # Errors
    /// As for [`bubble_at_temperature`](Refrigerant::bubble_at_temperature).
    pub fn dew_at_temperature(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<State, Error> {
        self.inner.engine.dew_at_temperature(temperature.value)
    }

    /// Saturated liquid at an absolute pressure.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below the pressure at the lowest temperature of the range, [`Error::AboveCritical`] above the range.
    pub fn bubble_at_pressure(&self, pressure: Pressure) -> Result<State, Error> {
        self.inner.engine.bubble_at_pressure(pressure.value)
    }

    /// Saturated vapour at an absolute pressure.
    ///
    /// # Errors
    /// As for [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn dew_at_pressure(&self, pressure: Pressure) -> Result<State, Error> {
        self.inner.engine.dew_at_pressure(pressure.value)
    }

    /// Absolute pressure of the bubble point at a temperature, without the rest of the state: the quick way for a curve.
    ///
    /// # Errors
    /// As for [`bubble_at_temperature`](Refrigerant::bubble_at_temperature).
    pub fn bubble_pressure(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<Pressure, Error> {
        let found = self.saturated(Side::Bubble, Given::Temperature, temperature.value)?;
        Ok(Pressure::new::<pascal>(found.pressure))
    }

    /// Absolute pressure of the dew point at a temperature.
    ///
    /// # Errors
    /// As for [`bubble_at_temperature`](Refrigerant::bubble_at_temperature).
    pub fn dew_pressure(&self, temperature: ThermodynamicTemperature) -> Result<Pressure, Error> {
        let found = self.saturated(Side::Dew, Given::Temperature, temperature.value)?;
        Ok(Pressure::new::<pascal>(found.pressure))
    }

    /// Temperature of the bubble point at an absolute pressure.
    ///
    /// # Errors
    /// As for [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn bubble_temperature(
        &self,
        pressure: Pressure,
    ) -> Result<ThermodynamicTemperature, Error> {
        let found = self.saturated(Side::Bubble, Given::Pressure, pressure.value)?;
        Ok(ThermodynamicTemperature::new::<kelvin>(found.temperature))
    }

    /// Temperature of the dew point at an absolute pressure.
    ///
    /// # Errors
    /// As for [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn dew_temperature(&self, pressure: Pressure) -> Result<ThermodynamicTemperature, Error> {
        let found = self.saturated(Side::Dew, Given::Pressure, pressure.value)?;
        Ok(ThermodynamicTemperature::new::<kelvin>(found.temperature))
    }

    fn saturated(&self, side: Side, given: Given, value: f64) -> Result<Saturated, Error> {
        self.inner.engine.saturated(side, given, value)
    }

    /// Saturated liquid and saturated vapour at one temperature.
    ///
    /// # Errors
    /// As for [`bubble_at_temperature`](Refrigerant::bubble_at_temperature).
    pub fn saturation_at_temperature(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<Saturation, Error> {
        self.inner
            .engine
            .saturation_at_temperature(temperature.value)
    }

    /// Saturated liquid and saturated vapour at one absolute pressure.
    ///
    /// # Errors
    /// As for [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn saturation_at_pressure(&self, pressure: Pressure) -> Result<Saturation, Error> {
        self.inner.engine.saturation_at_pressure(pressure.value)
    }

    /// State at a temperature and an absolute pressure.
    ///
    /// A pure fluid is never in two phases here: at its saturation pressure it is taken as vapour. A blend between its dew
    /// and its bubble pressure is in two phases, and is answered as such.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state(
        &self,
        temperature: ThermodynamicTemperature,
        pressure: Pressure,
    ) -> Result<State, Error> {
        self.inner.engine.state(temperature.value, pressure.value)
    }

    /// State at an absolute pressure and a specific enthalpy, in one phase or two.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state_at_pressure_enthalpy(
        &self,
        pressure: Pressure,
        enthalpy: AvailableEnergy,
    ) -> Result<State, Error> {
        self.inner
            .engine
            .state_at_pressure_enthalpy(pressure.value, enthalpy.value)
    }

    /// State at an absolute pressure and a specific entropy, in one phase or two.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state_at_pressure_entropy(
        &self,
        pressure: Pressure,
        entropy: SpecificHeatCapacity,
    ) -> Result<State, Error> {
        self.inner
            .engine
            .state_at_pressure_entropy(pressure.value, entropy.value)
    }

    /// Vapour at the pressure of a dew point of this refrigerant and a temperature, at or above that of the dew point.
    ///
    /// The same as [`Refrigerant::state`] there, and quicker, since the dew point is not looked for again.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above the range of the equations, [`Error::NotConverged`] for a dew point of another refrigerant.
    pub fn superheated(
        &self,
        dew: &State,
        temperature: ThermodynamicTemperature,
    ) -> Result<State, Error> {
        self.inner.engine.superheated(dew, temperature.value)
    }

    /// Vapour at the pressure of a dew point of this refrigerant and a specific enthalpy above that of the dew point.
    ///
    /// The same as [`Refrigerant::state_at_pressure_enthalpy`] there, and quicker, since the dew point is not looked for again.
    ///
    /// # Errors
    /// As [`Refrigerant::state_at_pressure_enthalpy`].
    pub fn superheated_at_enthalpy(
        &self,
        dew: &State,
        enthalpy: AvailableEnergy,
    ) -> Result<State, Error> {
        self.inner.engine.superheated_enthalpy(dew, enthalpy.value)
    }

    /// Vapour at the pressure of a dew point of this refrigerant and a specific entropy above that of the dew point.
    ///
    /// The same as [`Refrigerant::state_at_pressure_entropy`] there, and quicker, since the dew point is not looked for again.
    ///
    /// # Errors
    /// As [`Refrigerant::state_at_pressure_entropy`].
    pub fn superheated_at_entropy(
        &self,
        dew: &State,
        entropy: SpecificHeatCapacity,
    ) -> Result<State, Error> {
        self.inner.engine.superheated_entropy(dew, entropy.value)
    }

    /// State at a density, of both phases together where there are two, and a specific enthalpy: what a vessel of known volume,
    /// charge and heat content holds.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state_at_density_enthalpy(
        &self,
        density: MassDensity,
        enthalpy: AvailableEnergy,
    ) -> Result<State, Error> {
        self.inner
            .engine
            .state_at_density_enthalpy(density.value, enthalpy.value)
    }

    /// Two phases in equilibrium at an absolute pressure, with a given share of the mass as vapour.
    ///
    /// For a blend this is the true flash: its temperature lies between bubble and dew point, and is what a sensor on the
    /// coil meets there.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a quality outside 0 to 1 or a pressure below the range, [`Error::AboveCritical`] above it.
    pub fn two_phase(&self, pressure: Pressure, quality: Ratio) -> Result<State, Error> {
        self.inner.engine.two_phase(pressure.value, quality.value)
    }
}
