//! A lowest and a highest value, and what no controller's limits are.

use uom::si::electric_current::ampere;
use uom::si::electric_potential::volt;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Pressure, TemperatureInterval, ThermodynamicTemperature,
    Time,
};
use uom::si::pressure::megapascal;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::second;

use super::{InputLimits, OwnController, Setting};
use crate::explain::Quantity;

/// The lowest and the highest value that can be set, both allowed; alike where the value is fixed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits<T> {
    low: T,
    high: T,
}

/// The lowest value is above the highest, or one is no number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("the lowest value should not be above the highest")]
pub struct NotOrdered;

impl<T: PartialOrd + Copy> Limits<T> {
    /// Limits from the lowest to the highest value.
    ///
    /// # Errors
    /// [`NotOrdered`].
    pub fn new(low: T, high: T) -> Result<Self, NotOrdered> {
        if low <= high {
            Ok(Self { low, high })
        } else {
            Err(NotOrdered)
        }
    }

    /// The lowest value.
    pub fn low(&self) -> T {
        self.low
    }

    /// The highest value.
    pub fn high(&self) -> T {
        self.high
    }

    /// The value itself, or the limit that is nearest; what is no number comes back as it is.
    pub fn nearest(&self, value: T) -> T {
        if value < self.low {
            self.low
        } else if value > self.high {
            self.high
        } else {
            value
        }
    }
}

/// A limit that no controller has: a slip in a unit or a decimal point.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum LimitError {
    /// A limit of a setting.
    #[error("{setting:?} of {given:?} is outside {low:?} to {high:?}")]
    OutOfRange {
        /// The setting whose limit it is.
        setting: Setting,
        /// The limit as given.
        given: Quantity,
        /// Smallest limit taken.
        low: Quantity,
        /// Largest limit taken.
        high: Quantity,
    },
    /// The rated current.
    #[error("rated current of {given:?} is outside {low:?} to {high:?}")]
    RatedCurrent {
        /// The current as given.
        given: ElectricCurrent,
        /// Smallest current taken.
        low: ElectricCurrent,
        /// Largest current taken.
        high: ElectricCurrent,
    },
}

impl OwnController {
    /// Every limit that no controller has.
    ///
    /// Taken are: minimum output 0 to 1; start boost 0 to 60 s; full-speed point 0.05 to 20 MPa or -40 to 120 °C; throttling range
    /// 0 to 5 MPa or 0 to 60 K; supply 12 to 1000 V; rated current 0.1 to 1000 A.
    pub fn problems(&self) -> Vec<LimitError> {
        let mut found = Vec::new();
        for input in &self.inputs {
            input_problems(input, &mut found);
        }
        if let Some(limits) = self.minimum_output {
            let ends = (0.0, 1.0);
            look(
                Setting::MinimumOutput,
                limits,
                ends,
                Quantity::Ratio,
                &mut found,
            );
        }
        if let Some(limits) = self.start_boost {
            let ends = (Time::new::<second>(0.0), Time::new::<second>(60.0));
            look(
                Setting::StartBoost,
                limits,
                ends,
                Quantity::Time,
                &mut found,
            );
        }
        if let Some(limits) = self.supply {
            let ends = (
                ElectricPotential::new::<volt>(12.0),
                ElectricPotential::new::<volt>(1000.0),
            );
            look(
                Setting::SupplyVoltage,
                limits,
                ends,
                Quantity::Voltage,
                &mut found,
            );
        }
        found.extend(self.rated_current.and_then(current_problem));
        found
    }
}

fn input_problems(input: &InputLimits, found: &mut Vec<LimitError>) {
    let (point, span) = (Setting::FullSpeedPoint, Setting::ThrottlingRange);
    match input {
        InputLimits::Pressure {
            full_speed,
            throttling,
        } => {
            let pressure = Pressure::new::<megapascal>;
            let ends = (pressure(0.05), pressure(20.0));
            look(point, *full_speed, ends, Quantity::Pressure, found);
            let ends = (pressure(0.0), pressure(5.0));
            look(span, *throttling, ends, Quantity::PressureDifference, found);
        }
        InputLimits::Temperature {
            full_speed,
            throttling,
        } => {
            let celsius = ThermodynamicTemperature::new::<degree_celsius>;
            let ends = (celsius(-40.0), celsius(120.0));
            look(point, *full_speed, ends, Quantity::Temperature, found);
            let kelvin = TemperatureInterval::new::<kelvin_interval>;
            let ends = (kelvin(0.0), kelvin(60.0));
            look(span, *throttling, ends, Quantity::Difference, found);
        }
    }
}

fn look<T: PartialOrd + Copy>(
    setting: Setting,
    limits: Limits<T>,
    (low, high): (T, T),
    wrap: fn(T) -> Quantity,
    found: &mut Vec<LimitError>,
) {
    for given in [limits.low, limits.high] {
        if !(low..=high).contains(&given) {
            found.push(LimitError::OutOfRange {
                setting,
                given: wrap(given),
                low: wrap(low),
                high: wrap(high),
            });
        }
    }
}

fn current_problem(given: ElectricCurrent) -> Option<LimitError> {
    let (low, high) = (
        ElectricCurrent::new::<ampere>(0.1),
        ElectricCurrent::new::<ampere>(1000.0),
    );
    (!(low..=high).contains(&given)).then_some(LimitError::RatedCurrent { given, low, high })
}
