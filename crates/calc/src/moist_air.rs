//! Moist air: humidity ratio, dew or frost point, enthalpy and wet bulb from dry bulb, relative humidity and pressure.
//!
//! Air and water vapour as ideal gases. Below the triple point of water saturation is that over ice, so that the dew point there is a frost
//! point. Everything specific counts for a kilogram of dry air.
//!
//! Source: ASHRAE Handbook Fundamentals, psychrometrics chapter; saturation pressures are those of Hyland & Wexler 1983, given there.

use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{AvailableEnergy, MassDensity, Pressure, ThermodynamicTemperature};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use crate::root::bracketed;

/// Triple point of water, °C: saturation is over ice up to here.
const TRIPLE_POINT: f64 = 0.01;

/// Molar mass of water over that of dry air.
const MOLAR_MASSES: f64 = 0.621_945;

/// Gas constant of dry air, J/(kg K).
const GAS_CONSTANT: f64 = 287.042;

/// Coldest and warmest saturation that the equations hold for, °C.
const SATURATION_RANGE: (f64, f64) = (-100.0, 200.0);

/// Dry bulbs that a state may have, °C: at the highest of them water is far from boiling at the lowest pressure allowed.
const DRY_BULB_RANGE: (f64, f64) = (-60.0, 60.0);

/// Relative humidities that a state may have; below the least one a frost point would leave the range of the equations.
const HUMIDITY_RANGE: (f64, f64) = (0.01, 1.0);

/// What is wrong with a state of moist air.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum MoistAirError {
    /// An input outside its range; values in the SI unit named with the input.
    #[error("{input:?} {value} is outside {low} to {high}")]
    OutOfRange {
        /// Which input.
        input: MoistAirInput,
        /// As given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
}

/// An input of the functions of moist air.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MoistAirInput {
    /// Temperature of a saturated state, K.
    Saturation,
    /// Dry-bulb temperature, K.
    DryBulb,
    /// Relative humidity, as a share.
    RelativeHumidity,
    /// Humidity ratio, kg of water to a kg of dry air.
    HumidityRatio,
    /// Absolute pressure, Pa.
    Pressure,
}

fn within(input: MoistAirInput, value: f64, (low, high): (f64, f64)) -> Result<(), MoistAirError> {
    if (low..=high).contains(&value) {
        return Ok(());
    }
    Err(MoistAirError::OutOfRange {
        input,
        value,
        low,
        high,
    })
}

fn in_kelvin((low, high): (f64, f64)) -> (f64, f64) {
    (low + 273.15, high + 273.15)
}

/// Pressure of saturated water vapour over ice up to the triple point, over water above it; from -100 to 200 °C.
///
/// `ln p = C₁/T + C₂ + C₃·T + C₄·T² + C₅·T³ + C₆·T⁴ + C₇·ln T`.
///
/// # Errors
/// [`MoistAirError::OutOfRange`].
pub fn saturation_pressure(
    temperature: ThermodynamicTemperature,
) -> Result<Pressure, MoistAirError> {
    let range = in_kelvin(SATURATION_RANGE);
    within(MoistAirInput::Saturation, temperature.value, range)?;
    let celsius = temperature.get::<degree_celsius>();
    Ok(Pressure::new::<pascal>(saturation(celsius)))
}

/// [`saturation_pressure`] in Pa at °C.
pub(crate) fn saturation(celsius: f64) -> f64 {
    let t = celsius + 273.15;
    let logarithm = if celsius <= TRIPLE_POINT {
        -5.674_535_9e3 / t
            + 6.392_524_7
            + t * (-9.677_843e-3 + t * (6.221_570_1e-7 + t * (2.074_782_5e-9 - t * 9.484_024e-13)))
            + 4.163_501_9 * t.ln()
    } else {
        -5.800_220_6e3 / t
            + 1.391_499_3
            + t * (-4.864_023_9e-2 + t * (4.176_476_8e-5 - t * 1.445_209_3e-8))
            + 6.545_967_3 * t.ln()
    };
    logarithm.exp()
}

/// Humidity ratio of air that is saturated at a temperature in °C, `0.621945·p_s / (p − p_s)`.
pub(crate) fn saturated_ratio(celsius: f64, pascals: f64) -> f64 {
    ratio_at(saturation(celsius), pascals)
}

fn ratio_at(vapor: f64, pascals: f64) -> f64 {
    MOLAR_MASSES * vapor / (pascals - vapor)
}

/// Enthalpy in J on a kg of dry air, of air at a temperature in °C with a humidity ratio.
pub(crate) fn enthalpy(celsius: f64, ratio: f64) -> f64 {
    1e3 * (1.006 * celsius + ratio * (2501.0 + 1.86 * celsius))
}

/// Heat capacity in J/K on a kg of dry air: the slope of [`enthalpy`] with temperature.
pub(crate) fn heat_capacity(ratio: f64) -> f64 {
    1e3 * (1.006 + 1.86 * ratio)
}

/// Where vapour begins to settle on a surface that is cooled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DewPoint {
    /// As water, above the triple point.
    Dew(ThermodynamicTemperature),
    /// As frost.
    Frost(ThermodynamicTemperature),
}

impl DewPoint {
    /// The temperature, dew or frost alike.
    pub fn temperature(&self) -> ThermodynamicTemperature {
        match *self {
            DewPoint::Dew(temperature) | DewPoint::Frost(temperature) => temperature,
        }
    }
}

/// A state of moist air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoistAir {
    celsius: f64,
    ratio: f64,
    pascals: f64,
}

impl MoistAir {
    /// Air at a dry bulb (-60 to 60 °C), a relative humidity (0.01 to 1; below the triple point against saturation over ice) and an
    /// absolute pressure (30 to 120 kPa).
    ///
    /// # Errors
    /// [`MoistAirError::OutOfRange`].
    pub fn new(
        dry_bulb: ThermodynamicTemperature,
        relative_humidity: f64,
        pressure: Pressure,
    ) -> Result<Self, MoistAirError> {
        let (celsius, pascals) = checked(dry_bulb, pressure)?;
        let input = MoistAirInput::RelativeHumidity;
        within(input, relative_humidity, HUMIDITY_RANGE)?;
        let vapor = relative_humidity * saturation(celsius);
        Ok(Self {
            celsius,
            ratio: ratio_at(vapor, pascals),
            pascals,
        })
    }

    /// Air at a dry bulb and an absolute pressure as for [`new`](Self::new), with a humidity ratio that is between 1 % of relative humidity
    /// and saturation there.
    ///
    /// # Errors
    /// [`MoistAirError::OutOfRange`].
    pub fn from_humidity_ratio(
        dry_bulb: ThermodynamicTemperature,
        humidity_ratio: f64,
        pressure: Pressure,
    ) -> Result<Self, MoistAirError> {
        let (celsius, pascals) = checked(dry_bulb, pressure)?;
        let (least, most) = HUMIDITY_RANGE;
        let at = |share: f64| ratio_at(share * saturation(celsius), pascals);
        let input = MoistAirInput::HumidityRatio;
        within(input, humidity_ratio, (at(least), at(most)))?;
        Ok(Self {
            celsius,
            ratio: humidity_ratio,
            pascals,
        })
    }

    /// A state that a model led to: held at saturation, where rounding would put it past.
    pub(crate) fn led_to(celsius: f64, ratio: f64, pascals: f64) -> Self {
        let most = saturated_ratio(celsius, pascals);
        Self {
            celsius,
            ratio: ratio.min(most),
            pascals,
        }
    }

    /// Dry-bulb temperature.
    pub fn dry_bulb(&self) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(self.celsius)
    }

    /// Absolute pressure of air and vapour together.
    pub fn pressure(&self) -> Pressure {
        Pressure::new::<pascal>(self.pascals)
    }

    /// Humidity ratio, kg of water to a kg of dry air.
    pub fn humidity_ratio(&self) -> f64 {
        self.ratio
    }

    /// Partial pressure of the vapour, `p·W / (0.621945 + W)`.
    pub fn vapor_pressure(&self) -> Pressure {
        Pressure::new::<pascal>(self.vapor())
    }

    /// Relative humidity, as a share; below the triple point against saturation over ice.
    pub fn relative_humidity(&self) -> f64 {
        self.vapor() / saturation(self.celsius)
    }

    /// Dew point; frost point where it is below the triple point of water.
    pub fn dew_point(&self) -> DewPoint {
        let sought = self.vapor().ln();
        let celsius = bracketed(SATURATION_RANGE.0, self.celsius, |celsius| {
            saturation(celsius).ln() - sought
        });
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        if celsius <= TRIPLE_POINT {
            DewPoint::Frost(temperature)
        } else {
            DewPoint::Dew(temperature)
        }
    }

    /// Thermodynamic wet-bulb temperature: the one at which water, or ice below 0 °C, evaporates adiabatically into this air up to saturation.
    ///
    /// `W = (h_fg* · W_s* − c·(t − t*)) / (h_v(t) − h_w*)`. Air whose wet bulb is above 0 °C on an iced bulb and below it on a wet one has 0 °C.
    pub fn wet_bulb(&self) -> ThermodynamicTemperature {
        let coldest = self.dew_point().temperature().get::<degree_celsius>();
        let celsius = bracketed(coldest, self.celsius, |bulb| {
            self.ratio_by_wet_bulb(bulb) - self.ratio
        });
        ThermodynamicTemperature::new::<degree_celsius>(celsius)
    }

    fn ratio_by_wet_bulb(&self, bulb: f64) -> f64 {
        let saturated = saturated_ratio(bulb, self.pascals);
        let cooled = 1.006 * (self.celsius - bulb);
        if bulb >= 0.0 {
            ((2501.0 - 2.326 * bulb) * saturated - cooled)
                / (2501.0 + 1.86 * self.celsius - 4.186 * bulb)
        } else {
            ((2830.0 - 0.24 * bulb) * saturated - cooled)
                / (2830.0 + 1.86 * self.celsius - 2.1 * bulb)
        }
    }

    /// Enthalpy of air and vapour on a kg of dry air, `1.006·t + W·(2501 + 1.86·t)` kJ/kg; zero for dry air at 0 °C.
    pub fn enthalpy(&self) -> AvailableEnergy {
        AvailableEnergy::new::<joule_per_kilogram>(enthalpy(self.celsius, self.ratio))
    }

    /// Dry air in a volume of moist air, `p / (R·T·(1 + 1.607858·W))`.
    pub fn dry_air_density(&self) -> MassDensity {
        let kelvins = self.dry_bulb().get::<kelvin>();
        MassDensity::new::<kilogram_per_cubic_meter>(
            self.pascals / (GAS_CONSTANT * kelvins * (1.0 + 1.607_858 * self.ratio)),
        )
    }

    fn vapor(&self) -> f64 {
        self.pascals * self.ratio / (MOLAR_MASSES + self.ratio)
    }
}

fn checked(
    dry_bulb: ThermodynamicTemperature,
    pressure: Pressure,
) -> Result<(f64, f64), MoistAirError> {
    let range = in_kelvin(DRY_BULB_RANGE);
    within(MoistAirInput::DryBulb, dry_bulb.get::<kelvin>(), range)?;
    let pascals = pressure.get::<pascal>();
    within(MoistAirInput::Pressure, pascals, (3e4, 1.2e5))?;
    Ok((dry_bulb.get::<degree_celsius>(), pascals))
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::pressure::kilopascal;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    fn air(degrees: f64, humidity: f64) -> MoistAir {
        MoistAir::new(
            celsius(degrees),
            humidity,
            Pressure::new::<kilopascal>(101.325),
        )
        .unwrap()
    }

    #[test]
    fn saturation_is_that_of_the_handbook() {
        // ASHRAE Handbook Fundamentals, psychrometrics chapter, table of water at saturation; figures from memory.
        for (degrees, kilopascals) in [(-20.0, 0.10324), (0.0, 0.6112), (20.0, 2.3393)] {
            let ours = saturation_pressure(celsius(degrees)).unwrap();
            let close = ours.get::<kilopascal>() / kilopascals - 1.0;
            assert!(close.abs() < 1e-3, "{degrees} °C: {ours:?}");
        }
    }

    #[test]
    fn saturated_air_has_one_temperature() {
        for degrees in [-40.0, -5.0, 0.5, 20.0, 50.0] {
            let saturated = air(degrees, 1.0);
            for one in [saturated.dew_point().temperature(), saturated.wet_bulb()] {
                let off = one.get::<degree_celsius>() - degrees;
                assert!(off.abs() < 1e-9, "{degrees} °C: {off}");
            }
        }
    }

    #[test]
    fn dew_turns_to_frost_at_the_triple_point() {
        assert!(matches!(air(20.0, 0.4).dew_point(), DewPoint::Dew(_)));
        assert!(matches!(air(20.0, 0.2).dew_point(), DewPoint::Frost(_)));
    }

    #[test]
    fn a_humidity_ratio_gives_the_humidity_back() {
        for (degrees, humidity) in [(-30.0, 0.8), (5.0, 0.3), (35.0, 0.95)] {
            let from = air(degrees, humidity);
            let pressure = from.pressure();
            let ratio = from.humidity_ratio();
            let back = MoistAir::from_humidity_ratio(celsius(degrees), ratio, pressure).unwrap();
            assert!((back.relative_humidity() - humidity).abs() < 1e-12);
        }
    }

    #[test]
    fn what_cannot_be_is_named() {
        let refused = |degrees, humidity, kilopascals| {
            let pressure = Pressure::new::<kilopascal>(kilopascals);
            let refused = MoistAir::new(celsius(degrees), humidity, pressure);
            let Err(MoistAirError::OutOfRange { input, .. }) = refused else {
                panic!("{refused:?}");
            };
            input
        };
        assert_eq!(refused(80.0, 0.5, 101.0), MoistAirInput::DryBulb);
        assert_eq!(refused(f64::NAN, 0.5, 101.0), MoistAirInput::DryBulb);
        assert_eq!(refused(20.0, 50.0, 101.0), MoistAirInput::RelativeHumidity);
        assert_eq!(refused(20.0, 0.5, 1.0), MoistAirInput::Pressure);
        let pressure = Pressure::new::<kilopascal>(101.325);
        assert!(MoistAir::from_humidity_ratio(celsius(20.0), 0.02, pressure).is_err());
        assert!(saturation_pressure(celsius(250.0)).is_err());
    }
}
