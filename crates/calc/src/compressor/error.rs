//! What can be wrong with what a compressor is asked, and what would be right.

use uom::si::f64::ThermodynamicTemperature;
use winterset_refrigerant::Error;

use super::Point;

/// A value that a compressor function takes; the unit is the one that limits in [`CompressorError::OutOfRange`] are in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CompressorValue {
    /// Evaporating temperature (dew), K.
    Evaporating,
    /// Condensing temperature (dew), K.
    Condensing,
    /// Condensing over evaporating temperature, K.
    Lift,
    /// Superheat at the compressor's inlet, K.
    Superheat,
    /// Temperature of the gas at the compressor's inlet, K.
    ReturnGas,
    /// Subcooling of the liquid that capacity counts from, K.
    Subcooling,
    /// Volume that stays behind at the end of the stroke over the swept volume.
    Clearance,
    /// Volume of the closed pocket at suction over that at discharge.
    BuiltInRatio,
    /// Isentropic efficiency at the nameplate's point.
    IsentropicEfficiency,
    /// Share of the nameplate's power that does not change with load.
    ConstantShare,
    /// Swept volume a time, m³/s.
    Displacement,
    /// Cooling capacity, W.
    Capacity,
}

/// What a polynomial gives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Output {
    /// Mass flow, kg/s.
    MassFlow,
    /// Electric power, W.
    Power,
    /// Current, A.
    Current,
    /// Cooling capacity, W.
    Capacity,
}

/// What is wrong with what a compressor is asked, and what would be right.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CompressorError {
    /// A value outside the limits that the models hold for, or no number.
    #[error("{what:?} of {given} is outside {low} to {high}")]
    OutOfRange {
        /// Which value.
        what: CompressorValue,
        /// What was given, in the value's unit.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The gas at the inlet is colder than its dew point: it would carry liquid.
    #[error("return gas of {given:?} is below the evaporating temperature {evaporating:?}")]
    ReturnGasTooCold {
        /// As given.
        given: ThermodynamicTemperature,
        /// The evaporating temperature, which it must not be below.
        evaporating: ThermodynamicTemperature,
    },
    /// A polynomial overflows: its coefficients are not those of a compressor in the temperature unit said.
    #[error("the polynomial of {output:?} gives no finite number at {at:?}")]
    NotFinite {
        /// Which polynomial.
        output: Output,
        /// Where.
        at: Point,
    },
    /// A polynomial gives nothing, or less, where the compressor runs: coefficients in another order or unit, or a point far outside
    /// those that it was fitted to.
    #[error("the polynomial of {output:?} gives {value} at {at:?}: it must be above 0")]
    NotPositive {
        /// Which polynomial.
        output: Output,
        /// Where.
        at: Point,
        /// What it gives, in the SI unit of the output.
        value: f64,
    },
    /// Neither mass flow nor capacity is known.
    #[error("a data sheet needs coefficients of mass flow or of capacity")]
    NoFlow,
    /// The envelope is open on a side, so that it cannot be searched.
    #[error("the envelope has to be closed on every side")]
    OpenEnvelope,
    /// The liquid carries as much heat as the gas at the inlet: condensing is too near the critical point for this evaporating temperature.
    #[error("at {at:?} the liquid leaves nothing to cool with")]
    NoCooling {
        /// Where.
        at: Point,
    },
    /// All that is swept is taken up by gas that expands again out of the clearance.
    #[error(
        "at {at:?} clearance leaves a volumetric efficiency of {volumetric}: it must be above 0"
    )]
    NoDelivery {
        /// Where.
        at: Point,
        /// What is left.
        volumetric: f64,
    },
    /// The isentropic efficiency at the nameplate's point is above what its constant losses and built-in ratio allow.
    #[error("isentropic efficiency of {given} is above {most}, which the losses allow")]
    TooEfficient {
        /// As given.
        given: f64,
        /// The most that would be possible.
        most: f64,
    },
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

/// A value inside its limits; anything that is no number is outside.
pub(super) fn inside(
    what: CompressorValue,
    given: f64,
    (low, high): (f64, f64),
) -> Result<f64, CompressorError> {
    if (low..=high).contains(&given) {
        Ok(given)
    } else {
        Err(CompressorError::OutOfRange {
            what,
            given,
            low,
            high,
        })
    }
}
