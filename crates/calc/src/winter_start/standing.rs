//! Pressures of a system that has stood in the cold, against the low-pressure switch.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use winterset_refrigerant::Refrigerant;

use super::error::{StartError, StartInput, temperature, within};

/// Pressures after a night at one outdoor temperature.
///
/// What the low side has lies between its two pressures: closed off by the metering device and the compressor's valves, it keeps that of the
/// room as long as there is liquid in it; sooner or later it falls to that of the cold side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standing {
    /// Condenser, receiver and liquid line outdoors: the bubble pressure, since nearly all in them is liquid.
    pub cold_side: Pressure,
    /// Suction line and evaporator in the room, closed off with liquid left: the dew pressure, the least that goes with it.
    pub low_side_closed: Pressure,
    /// The same once the pressures are equal: the lower of the two.
    pub low_side_equal: Pressure,
}

/// The pressures after a night, from the temperatures outdoors and in the room: each 173.15 to 400 K and within the range of the refrigerant.
///
/// # Errors
/// [`StartError::OutOfRange`], [`StartError::Refrigerant`].
pub fn standing(
    refrigerant: &Refrigerant,
    outdoor: ThermodynamicTemperature,
    room: ThermodynamicTemperature,
) -> Result<Standing, StartError> {
    temperature(StartInput::Outdoor, outdoor)?;
    temperature(StartInput::Room, room)?;
    let cold_side = refrigerant.bubble_pressure(outdoor)?;
    let low_side_closed = refrigerant.dew_pressure(room)?;
    Ok(Standing {
        cold_side,
        low_side_closed,
        low_side_equal: cold_side.min(low_side_closed),
    })
}

/// A low-pressure switch by its two pressures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LowPressureSwitch {
    cut_out: Pressure,
    cut_in: Pressure,
}

/// What the switch does at a pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Contact {
    /// At or above the cut-in: closed, whatever was before.
    Closed {
        /// Pressure above the cut-out.
        margin: Pressure,
    },
    /// Between cut-out and cut-in: as it was. After a stop by the switch that is open.
    AsItWas,
    /// Below the cut-out: open. The compressor does not start without a bypass.
    Open {
        /// Pressure that is missing up to the cut-in.
        short_by: Pressure,
    },
}

impl LowPressureSwitch {
    /// A switch that opens below one absolute pressure and closes at another (1 kPa to 10 MPa each), or at the same.
    ///
    /// # Errors
    /// [`StartError::OutOfRange`], [`StartError::CutInBelowCutOut`].
    pub fn new(cut_out: Pressure, cut_in: Pressure) -> Result<Self, StartError> {
        let range = (1e3, 1e7);
        within(StartInput::CutOut, cut_out.get::<pascal>(), range)?;
        within(StartInput::CutIn, cut_in.get::<pascal>(), range)?;
        if cut_in < cut_out {
            return Err(StartError::CutInBelowCutOut { cut_in, cut_out });
        }
        Ok(Self { cut_out, cut_in })
    }

    /// Pressure at which it opens.
    pub fn cut_out(&self) -> Pressure {
        self.cut_out
    }

    /// Pressure at which it closes.
    pub fn cut_in(&self) -> Pressure {
        self.cut_in
    }

    /// What it does at a standing pressure.
    pub fn contact(&self, pressure: Pressure) -> Contact {
        if pressure >= self.cut_in {
            Contact::Closed {
                margin: pressure - self.cut_out,
            }
        } else if pressure >= self.cut_out {
            Contact::AsItWas
        } else {
            Contact::Open {
                short_by: self.cut_in - pressure,
            }
        }
    }
}
