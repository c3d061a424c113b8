//! The beta equation of a thermistor: `R = R₀ · exp(B·(1/T − 1/T₀))`.
//!
//! Beta itself changes a little with temperature, so the equation is good to about a kelvin near the points it comes from and
//! to several kelvin far from them; [`SteinhartHart`](super::SteinhartHart) is closer where three points are known.
//!
//! Source: IEC 60539-1, which defines B between two temperatures, usually 25 and 85 °C.

use uom::si::electrical_resistance::ohm;
use uom::si::f64::{ElectricalResistance, TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;

use super::ResistancePoint;
use super::error::{SensorError, SensorValue, inside};
use super::thermistor::falling;

/// Betas taken, K; sensors usually have 3000 to 4600.
const BETAS: (f64, f64) = (1000.0, 8000.0);

/// A thermistor by one resistance and beta.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beta {
    /// `1/T₀`, 1/K.
    inverse: f64,
    /// `ln R₀`, R₀ in Ω.
    logarithm: f64,
    /// B, K.
    beta: f64,
}

impl Beta {
    /// By a resistance at a temperature, and beta.
    ///
    /// # Errors
    /// [`SensorError::OutOfRange`] for a temperature outside -60 to 150 °C, a resistance outside 10 Ω to 10 MΩ or a beta
    /// outside 1000 to 8000 K.
    pub fn new(point: ResistancePoint, beta: TemperatureInterval) -> Result<Self, SensorError> {
        let (kelvin, ohms) = point.checked()?;
        Ok(Self {
            inverse: 1.0 / kelvin,
            logarithm: ohms.ln(),
            beta: inside(SensorValue::Beta, beta.get::<kelvin_interval>(), BETAS)?,
        })
    }

    /// By the resistance at 25 °C, as sensors are sold.
    ///
    /// # Errors
    /// Those of [`Beta::new`].
    pub fn at_25(
        resistance: ElectricalResistance,
        beta: TemperatureInterval,
    ) -> Result<Self, SensorError> {
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(25.0);
        let point = ResistancePoint {
            temperature,
            resistance,
        };
        Self::new(point, beta)
    }

    /// Through two points: `B = ln(R₁/R₂) / (1/T₁ − 1/T₂)`.
    ///
    /// # Errors
    /// [`SensorError::PointsTooClose`] less than 5 K apart; [`SensorError::NotFalling`] where the warmer point has no less
    /// resistance; [`SensorError::OutOfRange`] for a point or a beta outside the limits of [`Beta::new`].
    pub fn through(points: [ResistancePoint; 2]) -> Result<Self, SensorError> {
        let [first, second] = points;
        let [(cold, more), (warm, less)] = falling([first.checked()?, second.checked()?])?;
        let beta = (more / less).ln() / (1.0 / cold - 1.0 / warm);
        Ok(Self {
            inverse: 1.0 / cold,
            logarithm: more.ln(),
            beta: inside(SensorValue::Beta, beta, BETAS)?,
        })
    }

    /// B.
    pub fn beta(&self) -> TemperatureInterval {
        TemperatureInterval::new::<kelvin_interval>(self.beta)
    }

    /// Resistance at the temperature that beta stands on.
    pub fn base(&self) -> ElectricalResistance {
        ElectricalResistance::new::<ohm>(self.logarithm.exp())
    }

    pub(super) fn logarithm_at(&self, kelvin: f64) -> f64 {
        self.logarithm + self.beta * (1.0 / kelvin - self.inverse)
    }

    pub(super) fn inverse_temperature(&self, logarithm: f64) -> f64 {
        self.inverse + (logarithm - self.logarithm) / self.beta
    }
}
