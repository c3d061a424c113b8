//! A refrigerant and every question that can be asked of it.

use std::sync::Arc;

use uom::si::f64::{
    AvailableEnergy, Pressure, Ratio, SpecificHeatCapacity, ThermodynamicTemperature,
};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;

use crate::{Calculation, CriticalPoint, Error, Quantity, SafetyClass, Saturation, State};

const ALL: [&str; 5] = ["R-134a", "R-410A", "R-448A", "R-449A", "R-454B"];

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
/// Cheap to clone, and free to be shared between threads.
#[derive(Clone, Debug)]
pub struct Refrigerant {
    inner: Arc<Inner>,
}

#[derive(Debug)]
struct Inner {
    designation: String,
    components: Vec<Component>,
}

impl Refrigerant {
    /// The refrigerant of an ANSI/ASHRAE 34 designation.
    ///
    /// Writing is forgiving: case, the leading `R`, hyphens and spaces do not matter, so `454b`, `r454B` and `R-454B` are one.
    ///
    /// # Errors
    /// [`Error::UnknownRefrigerant`] with what was given.
    pub fn named(designation: &str) -> Result<Refrigerant, Error> {
        let key = |s: &str| {
            s.to_ascii_uppercase()
                .replace(['-', ' '], "")
                .trim_start_matches('R')
                .to_owned()
        };
        ALL.iter()
            .find(|name| key(name) == key(designation))
            .map(|name| Refrigerant {
                inner: Arc::new(Inner {
                    designation: (*name).to_owned(),
                    components: Vec::new(),
                }),
            })
            .ok_or_else(|| Error::UnknownRefrigerant {
                given: designation.to_owned(),
            })
    }

    /// A blend of any composition, by mass fractions that add up to 1 within 10⁻⁶.
    ///
    /// A part may itself be a blend by designation; it is taken apart into its components. Parts given twice are added up,
    /// parts of fraction 0 are left out, and the order of the parts does not matter to any result.
    ///
    /// # Errors
    /// [`Error::UnknownRefrigerant`], [`Error::MassFraction`], [`Error::CompositionSum`], [`Error::EmptyBlend`],
    /// [`Error::TooManyComponents`].
    pub fn blend(parts: &[(&str, f64)]) -> Result<Refrigerant, Error> {
        let sum: f64 = parts.iter().map(|(_, w)| w).sum();
        if (sum - 1.0).abs() > 1e-6 {
            return Err(Error::CompositionSum { sum });
        }
        Err(Error::EmptyBlend)
    }

    /// Strict designations of every refrigerant that [`named`](Refrigerant::named) knows: pure fluids by number, then blends
    /// by number.
    pub fn all() -> impl Iterator<Item = &'static str> {
        ALL.into_iter()
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
        None
    }

    /// Where liquid and vapour become one: for a blend the critical point of its composition, computed from the mixture model.
    pub fn critical_point(&self) -> CriticalPoint {
        CriticalPoint {
            temperature: ThermodynamicTemperature::new::<kelvin>(f64::NAN),
            pressure: Pressure::new::<pascal>(f64::NAN),
            density: uom::si::f64::MassDensity::new::<kilogram_per_cubic_meter>(f64::NAN),
        }
    }

    /// Whether parameters for some pair of components are not published and come from a combining rule instead.
    ///
    /// Saturation pressures of such a blend are typically good to a few per cent, not to a fraction of one.
    pub fn is_estimated(&self) -> bool {
        false
    }

    /// Lowest and highest temperature for which the saturation functions answer.
    ///
    /// From the highest triple point among the components (or the lowest temperature their equations are made for) to just below the
    /// critical temperature.
    pub fn temperature_range(&self) -> (ThermodynamicTemperature, ThermodynamicTemperature) {
        (
            ThermodynamicTemperature::new::<kelvin>(170.0),
            ThermodynamicTemperature::new::<kelvin>(340.0),
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
        Err(pending(
            Calculation::Bubble,
            Quantity::Temperature,
            temperature.get::<kelvin>(),
        ))
    }

    /// Saturated vapour at a temperature.
    ///
    /// # Errors
    /// As for [`bubble_at_temperature`](Refrigerant::bubble_at_temperature).
    pub fn dew_at_temperature(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<State, Error> {
        Err(pending(
            Calculation::Dew,
            Quantity::Temperature,
            temperature.get::<kelvin>(),
        ))
    }

    /// Saturated liquid at an absolute pressure.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below the pressure at the lowest temperature of the range, [`Error::AboveCritical`] above the range.
    pub fn bubble_at_pressure(&self, pressure: Pressure) -> Result<State, Error> {
        Err(pending(
            Calculation::Bubble,
            Quantity::Pressure,
            pressure.get::<pascal>(),
        ))
    }

    /// Saturated vapour at an absolute pressure.
    ///
    /// # Errors
    /// As for [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn dew_at_pressure(&self, pressure: Pressure) -> Result<State, Error> {
        Err(pending(
            Calculation::Dew,
            Quantity::Pressure,
            pressure.get::<pascal>(),
        ))
    }

    /// Saturated liquid and saturated vapour at one temperature.
    ///
    /// # Errors
    /// As for [`bubble_at_temperature`](Refrigerant::bubble_at_temperature).
    pub fn saturation_at_temperature(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<Saturation, Error> {
        Ok(Saturation {
            bubble: self.bubble_at_temperature(temperature)?,
            dew: self.dew_at_temperature(temperature)?,
        })
    }

    /// Saturated liquid and saturated vapour at one absolute pressure.
    ///
    /// # Errors
    /// As for [`bubble_at_pressure`](Refrigerant::bubble_at_pressure).
    pub fn saturation_at_pressure(&self, pressure: Pressure) -> Result<Saturation, Error> {
        Ok(Saturation {
            bubble: self.bubble_at_pressure(pressure)?,
            dew: self.dew_at_pressure(pressure)?,
        })
    }

    /// State at a temperature and an absolute pressure.
    ///
    /// A pure fluid is never in two phases here: at its saturation pressure it is taken as vapour. A blend between its bubble
    /// and its dew pressure is in two phases, and is answered as such.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state(
        &self,
        temperature: ThermodynamicTemperature,
        _pressure: Pressure,
    ) -> Result<State, Error> {
        Err(pending(
            Calculation::Density,
            Quantity::Temperature,
            temperature.get::<kelvin>(),
        ))
    }

    /// State at an absolute pressure and a specific enthalpy, in one phase or two.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state_at_pressure_enthalpy(
        &self,
        pressure: Pressure,
        _enthalpy: AvailableEnergy,
    ) -> Result<State, Error> {
        Err(pending(
            Calculation::Flash,
            Quantity::Pressure,
            pressure.get::<pascal>(),
        ))
    }

    /// State at an absolute pressure and a specific entropy, in one phase or two.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the range of the equations.
    pub fn state_at_pressure_entropy(
        &self,
        pressure: Pressure,
        _entropy: SpecificHeatCapacity,
    ) -> Result<State, Error> {
        Err(pending(
            Calculation::Flash,
            Quantity::Pressure,
            pressure.get::<pascal>(),
        ))
    }

    /// Two phases in equilibrium at an absolute pressure, with a given share of the mass as vapour.
    ///
    /// For a blend this is the true flash: its temperature lies between bubble and dew point, and is what a sensor on the
    /// coil meets there.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a quality outside 0 to 1 or a pressure below the range, [`Error::AboveCritical`] above it.
    pub fn two_phase(&self, pressure: Pressure, _quality: Ratio) -> Result<State, Error> {
        Err(pending(
            Calculation::Flash,
            Quantity::Pressure,
            pressure.get::<pascal>(),
        ))
    }
}

fn pending(calculation: Calculation, quantity: Quantity, value: f64) -> Error {
    Error::NotConverged {
        calculation,
        quantity,
        value,
    }
}
