//! A resistor in place of a thermistor, to show the controller a temperature that the coil has not.

use uom::si::electrical_resistance::ohm;
use uom::si::f64::{ElectricalResistance, TemperatureInterval, ThermodynamicTemperature};

use super::{SensorError, Series, Thermistor};
use crate::air::difference;

/// The resistor to connect, and what the controller then sees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Substitute {
    /// Resistance of the sensor at the temperature asked for.
    pub exact: ElectricalResistance,
    /// The preferred value that comes closest in temperature.
    pub resistor: ElectricalResistance,
    /// The temperature that it simulates.
    pub simulates: ThermodynamicTemperature,
    /// How much warmer that is than the temperature asked for.
    pub off_by: TemperatureInterval,
    /// The coldest and the warmest that a resistor of this value simulates, by the tolerance of its series.
    pub between: (ThermodynamicTemperature, ThermodynamicTemperature),
}

/// The preferred resistor that comes closest to a sensor at a temperature.
///
/// Resistors from 1 Ω to below 10 MΩ are looked at.
///
/// # Errors
/// [`SensorError::OutOfRange`] for a temperature outside -60 to 150 °C.
pub fn substitute(
    sensor: &Thermistor,
    temperature: ThermodynamicTemperature,
    series: Series,
) -> Result<Substitute, SensorError> {
    let exact = sensor.resistance(temperature)?;
    let off = |ohms: f64| difference(sensor.temperature_beyond(ohms), temperature);
    let ohms = neighbors(series, exact.get::<ohm>())
        .into_iter()
        .flatten()
        .min_by(|a, b| off(*a).value.abs().total_cmp(&off(*b).value.abs()))
        .unwrap_or(exact.get::<ohm>());
    let tolerance = series.tolerance();
    Ok(Substitute {
        exact,
        resistor: ElectricalResistance::new::<ohm>(ohms),
        simulates: sensor.temperature_beyond(ohms),
        off_by: off(ohms),
        between: (
            sensor.temperature_beyond(ohms * (1.0 + tolerance)),
            sensor.temperature_beyond(ohms * (1.0 - tolerance)),
        ),
    })
}

/// The nearest value at or below, and the nearest at or above.
fn neighbors(series: Series, ohms: f64) -> [Option<f64>; 2] {
    [
        series.ohms().take_while(|value| *value <= ohms).last(),
        series.ohms().find(|value| *value >= ohms),
    ]
}
