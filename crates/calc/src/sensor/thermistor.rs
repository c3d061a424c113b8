//! A thermistor whose resistance falls with temperature, by whichever equation is known of it.
//!
//! Held to -60 to 150 °C: colder than any coil in the cold, hotter than any discharge line. Resistance outside what the curve
//! has there is taken as a broken or a shorted sensor: common practice, no published source.

use uom::si::electrical_resistance::ohm;
use uom::si::f64::{ElectricalResistance, ThermodynamicTemperature};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use super::error::{SensorError, SensorValue, inside};
use super::{Beta, Fault, Reading, SteinhartHart};

/// A resistance measured at a temperature, or read from a table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResistancePoint {
    /// Temperature, -60 to 150 °C.
    pub temperature: ThermodynamicTemperature,
    /// Resistance, 10 Ω to 10 MΩ.
    pub resistance: ElectricalResistance,
}

impl ResistancePoint {
    /// Kelvin and ohms, checked.
    pub(super) fn checked(self) -> Result<(f64, f64), SensorError> {
        Ok((
            checked_temperature(self.temperature)?,
            inside(
                SensorValue::Resistance,
                self.resistance.get::<ohm>(),
                (10.0, 1e7),
            )?,
        ))
    }
}

/// The temperatures that thermistors are held to.
pub fn temperature_range() -> (ThermodynamicTemperature, ThermodynamicTemperature) {
    (
        ThermodynamicTemperature::new::<degree_celsius>(-60.0),
        ThermodynamicTemperature::new::<degree_celsius>(150.0),
    )
}

pub(super) fn kelvin_range() -> (f64, f64) {
    let (low, high) = temperature_range();
    (low.get::<kelvin>(), high.get::<kelvin>())
}

pub(super) fn checked_temperature(given: ThermodynamicTemperature) -> Result<f64, SensorError> {
    inside(
        SensorValue::Temperature,
        given.get::<kelvin>(),
        kelvin_range(),
    )
}

/// How far apart two points have to be, K: a tenth of a degree in reading them then bears on beta by a fiftieth at most.
const APART: f64 = 5.0;

/// Points in kelvin and ohms by rising temperature, far enough apart, their resistance falling.
pub(super) fn falling<const N: usize>(
    mut points: [(f64, f64); N],
) -> Result<[(f64, f64); N], SensorError> {
    points.sort_by(|a, b| a.0.total_cmp(&b.0));
    for (cold, warm) in points.iter().zip(points.iter().skip(1)) {
        let apart = warm.0 - cold.0;
        if apart < APART {
            return Err(SensorError::PointsTooClose {
                apart,
                needed: APART,
            });
        }
        if warm.1 >= cold.1 {
            return Err(SensorError::NotFalling);
        }
    }
    Ok(points)
}

/// A thermistor by the equation that is known of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Thermistor {
    /// By one resistance and beta.
    Beta(Beta),
    /// By three coefficients.
    SteinhartHart(SteinhartHart),
}

impl Thermistor {
    /// Resistance at a temperature.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] outside -60 to 150 °C.
    pub fn resistance(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<ElectricalResistance, SensorError> {
        let at = checked_temperature(temperature)?;
        Ok(ElectricalResistance::new::<ohm>(
            self.logarithm_at(at).exp(),
        ))
    }

    /// Temperature at a resistance.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] outside the resistances that the sensor has between -60 and 150 °C.
    pub fn temperature(
        &self,
        resistance: ElectricalResistance,
    ) -> Result<ThermodynamicTemperature, SensorError> {
        let given = resistance.get::<ohm>();
        let checked = inside(SensorValue::Resistance, given, self.limits())?;
        Ok(self.temperature_beyond(checked))
    }

    /// What a resistance at the sensor's terminals tells; an open line may be given as infinite.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for what is no number.
    pub fn reading(
        &self,
        resistance: ElectricalResistance,
    ) -> Result<Reading<ThermodynamicTemperature>, SensorError> {
        let given = resistance.get::<ohm>();
        let (low, high) = self.limits();
        if given > high {
            return Ok(Reading::Fault(Fault::Open));
        }
        if given < low {
            return Ok(Reading::Fault(Fault::Short));
        }
        self.temperature(resistance).map(Reading::Value)
    }

    /// Resistances at the hottest and at the coldest, Ω.
    fn limits(&self) -> (f64, f64) {
        let (cold, hot) = kelvin_range();
        let at = |temperature| self.logarithm_at(temperature).exp();
        (at(hot), at(cold))
    }

    /// Natural logarithm of the resistance in ohms, for a temperature that was checked.
    fn logarithm_at(&self, at: f64) -> f64 {
        match self {
            Thermistor::Beta(curve) => curve.logarithm_at(at),
            Thermistor::SteinhartHart(curve) => curve.logarithm_at(at),
        }
    }

    /// Temperature at a resistance that may lie a little beyond the limits.
    pub(super) fn temperature_beyond(&self, ohms: f64) -> ThermodynamicTemperature {
        let inverse = match self {
            Thermistor::Beta(curve) => curve.inverse_temperature(ohms.ln()),
            Thermistor::SteinhartHart(curve) => curve.inverse_temperature(ohms.ln()),
        };
        ThermodynamicTemperature::new::<kelvin>(1.0 / inverse)
    }
}
