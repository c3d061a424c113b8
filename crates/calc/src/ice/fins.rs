//! What ice leaves of the airflow, between two bounds.
//!
//! Ice of a thickness on both walls leaves the share `s = 1 − 2·m/(ρ·A·b)` of the gap `b` between the fins. The most air passes where it is clear
//! ice and the flow goes with the free section, `s`. The least passes where it is light frost and all the pressure of the fan is spent on
//! laminar flow between the fins, `s³` (plane Poiseuille flow at a constant pressure difference). The ice is taken to lie evenly: on a coil whose
//! first rows take most of it the passage is closed sooner.
//!
//! Source: Incropera & DeWitt, internal flow, for laminar flow in a gap; density of frost: common practice, no published source.

use uom::si::area::square_meter;
use uom::si::f64::{Area, Length, Mass, MassDensity, MassRate, Time};
use uom::si::length::meter;
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::kilogram_per_second;

use super::error::{IceError, IceInput, within};

/// Density of clear ice, kg/m³ (Incropera & DeWitt, properties of water; from memory), and of frost in its first hours: common practice, 100 to 300.
const ICE: f64 = 917.0;
const LIGHT_FROST: f64 = 150.0;

/// The fins of a coil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fins {
    area: Area,
    gap: Length,
}

/// Share of the airflow of the clean coil that is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirflowLeft {
    /// Light frost, laminar flow: 0 to 1.
    pub least: f64,
    /// Clear ice, flow with the free section: 0 to 1.
    pub most: f64,
}

impl Fins {
    /// Fins by their surface, both sides, 0.01 to 10 000 m², and the clear gap between two of them, 0.3 to 30 mm.
    ///
    /// # Errors
    /// [`IceError::OutOfRange`].
    pub fn new(area: Area, gap: Length) -> Result<Self, IceError> {
        within(IceInput::FinArea, area.get::<square_meter>(), (0.01, 1e4))?;
        within(IceInput::FinGap, gap.get::<meter>(), (3e-4, 0.03))?;
        Ok(Self { area, gap })
    }

    /// Mass that closes the gaps.
    fn closing(&self, density: f64) -> Mass {
        MassDensity::new::<kilogram_per_cubic_meter>(density) * self.area * self.gap / 2.0
    }

    /// Airflow that a mass of ice leaves (0 to 10 t).
    ///
    /// # Errors
    /// [`IceError::OutOfRange`].
    pub fn airflow_left(&self, mass: Mass) -> Result<AirflowLeft, IceError> {
        within(IceInput::IceMass, mass.get::<kilogram>(), (0.0, 1e4))?;
        let open = |density| (1.0 - (mass / self.closing(density)).value).max(0.0);
        Ok(AirflowLeft {
            least: open(LIGHT_FROST).powi(3),
            most: open(ICE),
        })
    }

    /// Earliest and latest time after which a steady growth (1e-9 to 100 kg/s) closes the gaps.
    ///
    /// # Errors
    /// [`IceError::OutOfRange`].
    pub fn closed_after(&self, growth: MassRate) -> Result<(Time, Time), IceError> {
        let rate = growth.get::<kilogram_per_second>();
        within(IceInput::Growth, rate, (1e-9, 100.0))?;
        Ok((
            self.closing(LIGHT_FROST) / growth,
            self.closing(ICE) / growth,
        ))
    }
}
