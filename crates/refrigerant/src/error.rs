//! What can go wrong when a refrigerant is named or a state is asked for.

use std::fmt;

/// A property that a caller gives or that a limit applies to.
///
/// Values that go with it in an [`Error`] are in the SI unit named here, pressures absolute.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Quantity {
    /// Thermodynamic temperature, in K.
    Temperature,
    /// Absolute pressure, in Pa.
    Pressure,
    /// Mass density, in kg/m³.
    Density,
    /// Specific enthalpy on the crate's reference state, in J/kg.
    Enthalpy,
    /// Specific entropy on the crate's reference state, in J/(kg K).
    Entropy,
    /// Vapour quality: mass of vapour over total mass, from 0 to 1.
    Quality,
}

impl Quantity {
    /// Symbol of the SI unit of the values reported for this quantity; empty for a ratio.
    pub fn unit(self) -> &'static str {
        match self {
            Quantity::Temperature => "K",
            Quantity::Pressure => "Pa",
            Quantity::Density => "kg/m³",
            Quantity::Enthalpy => "J/kg",
            Quantity::Entropy => "J/(kg K)",
            Quantity::Quality => "",
        }
    }
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Quantity::Temperature => "temperature",
            Quantity::Pressure => "pressure",
            Quantity::Density => "density",
            Quantity::Enthalpy => "enthalpy",
            Quantity::Entropy => "entropy",
            Quantity::Quality => "quality",
        })
    }
}

/// A calculation that iterates and may, in principle, not arrive.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Calculation {
    /// Bubble point.
    Bubble,
    /// Dew point.
    Dew,
    /// Density of a single phase.
    Density,
    /// Split into two phases.
    Flash,
    /// Critical point.
    CriticalPoint,
}

impl fmt::Display for Calculation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Calculation::Bubble => "bubble point",
            Calculation::Dew => "dew point",
            Calculation::Density => "density",
            Calculation::Flash => "phase split",
            Calculation::CriticalPoint => "critical point",
        })
    }
}

/// Why a refrigerant or a state could not be given.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Error {
    /// The designation is none that this crate knows.
    #[error(
        "no refrigerant is known as {given:?}: give an ANSI/ASHRAE 34 designation such as R-454B"
    )]
    UnknownRefrigerant {
        /// As the caller wrote it.
        given: String,
    },
    /// A blend with no component at all.
    #[error("a blend needs at least one component")]
    EmptyBlend,
    /// More components than the mixture model is laid out for.
    #[error("a blend of {count} components is more than the {most} that can be computed")]
    TooManyComponents {
        /// How many different components were given.
        count: usize,
        /// How many there may be.
        most: usize,
    },
    /// A mass fraction that is not a number from 0 to 1.
    #[error("the mass fraction of {component} is {value}: it must lie between 0 and 1")]
    MassFraction {
        /// Component as the caller wrote it.
        component: String,
        /// Fraction as given.
        value: f64,
    },
    /// The mass fractions do not add up to 1.
    #[error("the mass fractions add up to {sum}: they must add up to 1")]
    CompositionSum {
        /// What they add up to.
        sum: f64,
    },
    /// A given value outside the range in which the equations hold.
    #[error(
        "{quantity} {value} {} is outside the range from {low} to {high} {}",
        quantity.unit(),
        quantity.unit()
    )]
    OutOfRange {
        /// Which value.
        quantity: Quantity,
        /// As given, in SI units.
        value: f64,
        /// Lowest value allowed, in SI units.
        low: f64,
        /// Highest value allowed, in SI units.
        high: f64,
    },
    /// Saturation was asked for where liquid and vapour are no longer two.
    #[error(
        "{quantity} {value} {} is above the highest at which liquid and vapour coexist, {highest} {}",
        quantity.unit(),
        quantity.unit()
    )]
    AboveCritical {
        /// Temperature or pressure.
        quantity: Quantity,
        /// As given, in SI units.
        value: f64,
        /// Highest value with two phases, in SI units.
        highest: f64,
    },
    /// The iteration did not arrive at an answer that satisfies its equations.
    #[error("the {calculation} did not converge at {quantity} {value} {}", quantity.unit())]
    NotConverged {
        /// What was being computed.
        calculation: Calculation,
        /// The value that was held fixed.
        quantity: Quantity,
        /// That value, in SI units.
        value: f64,
    },
}
