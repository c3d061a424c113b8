//! A data sheet's answer for the suction gas that there is.
//!
//! The coefficients hold for the suction condition they are rated at. At another, mass flow is corrected by
//! `m = m_r·(1 + F·(v_r/v − 1))` with the specific volumes of the gas and `F` = 0.75, and power by
//! `P = P_r·(m/m_r)·(Δh_s/Δh_s,r)`, which takes the isentropic efficiency as unchanged. Capacity goes with the mass flow and the enthalpy from
//! the liquid to the compressor's inlet.
//!
//! Source: Dabiri & Rice 1981, A compressor simulation model with corrections for the level of suction gas superheat (ASHRAE Transactions 87), as taken up
//! in AHRI Standard 540 (from memory).

use uom::si::f64::{AvailableEnergy, ElectricCurrent, MassRate, Power, TemperatureInterval};
use winterset_refrigerant::{Refrigerant, State};

use super::envelope::Envelope;
use super::polynomial::{CapacityUnit, CurrentUnit, FlowUnit, Polynomial, PowerUnit};
use super::states::{cooling, discharge_pressure, isentropic_work, suction};
use super::{CompressorError, Point, Suction};

/// Share of the change of density that reaches the mass flow, `F`: the rest is lost to the gas warming on its way in (Dabiri & Rice 1981).
pub const VOLUME_CORRECTION: f64 = 0.75;

/// What a data sheet says of a compressor.
#[derive(Clone, Debug)]
pub struct DataSheet {
    /// The refrigerant that it is rated with.
    pub refrigerant: Refrigerant,
    /// Mass flow; where it is missing, capacity over the rated enthalpy difference stands in.
    pub mass_flow: Option<Polynomial<FlowUnit>>,
    /// Electric power.
    pub power: Option<Polynomial<PowerUnit>>,
    /// Current.
    pub current: Option<Polynomial<CurrentUnit>>,
    /// Cooling capacity, counted to the compressor's inlet as AHRI 540 has it.
    pub capacity: Option<Polynomial<CapacityUnit>>,
    /// The suction gas that it is rated at.
    pub suction: Suction,
    /// The subcooling that its capacity is rated at: 0 to 100 K.
    pub subcooling: TemperatureInterval,
}

/// What a compressor does at a point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Performance {
    /// Mass flow.
    pub mass_flow: MassRate,
    /// Cooling capacity, counted to the compressor's inlet.
    pub capacity: Power,
    /// Electric power, where the data sheet has it.
    pub power: Option<Power>,
    /// Current as rated, not corrected for suction gas, where the data sheet has it.
    pub current: Option<ElectricCurrent>,
}

/// The gas at the inlet with what it takes to compress it and what it has cooled.
struct Gas {
    state: State,
    work: AvailableEnergy,
    cooling: AvailableEnergy,
}

impl DataSheet {
    /// What the compressor does at the suction condition and subcooling that it is rated at.
    ///
    /// # Errors
    /// As [`DataSheet::at`].
    pub fn rated(&self, point: Point) -> Result<Performance, CompressorError> {
        let gas = self.gas(point, self.suction, self.subcooling)?;
        self.performance(point, &gas)
    }

    /// What the compressor does with this suction gas and this subcooling (0 to 100 K).
    ///
    /// # Errors
    /// [`CompressorError::OutOfRange`], [`CompressorError::ReturnGasTooCold`], [`CompressorError::NotFinite`],
    /// [`CompressorError::NotPositive`], [`CompressorError::NoFlow`], [`CompressorError::NoCooling`], [`CompressorError::Refrigerant`].
    pub fn at(
        &self,
        point: Point,
        suction: Suction,
        subcooling: TemperatureInterval,
    ) -> Result<Performance, CompressorError> {
        point.check()?;
        let rated_gas = self.gas(point, self.suction, self.subcooling)?;
        let rated = self.performance(point, &rated_gas)?;
        let gas = self.gas(point, suction, subcooling)?;
        let volumes = (gas.state.density / rated_gas.state.density).value;
        let flow = 1.0 + VOLUME_CORRECTION * (volumes - 1.0);
        let work = (gas.work / rated_gas.work).value;
        let cooling = (gas.cooling / rated_gas.cooling).value;
        Ok(Performance {
            mass_flow: rated.mass_flow * flow,
            capacity: rated.capacity * flow * cooling,
            power: rated.power.map(|power| power * flow * work),
            current: rated.current,
        })
    }

    /// Looks for a point of the envelope where a polynomial gives no number or nothing: at its corners and on a grid of 25 by 25.
    ///
    /// # Errors
    /// [`CompressorError::OpenEnvelope`], [`CompressorError::NoFlow`]; [`CompressorError::NotFinite`] or [`CompressorError::NotPositive`] with the first
    /// such point.
    pub fn check(&self, envelope: &Envelope) -> Result<(), CompressorError> {
        if self.mass_flow.is_none() && self.capacity.is_none() {
            return Err(CompressorError::NoFlow);
        }
        let points = envelope.grid(25).ok_or(CompressorError::OpenEnvelope)?;
        for point in points.into_iter().filter(|point| point.check().is_ok()) {
            self.mass_flow.map(|flow| flow.at(point)).transpose()?;
            self.power.map(|power| power.at(point)).transpose()?;
            self.current.map(|current| current.at(point)).transpose()?;
            self.capacity
                .map(|capacity| capacity.at(point))
                .transpose()?;
        }
        Ok(())
    }

    fn performance(&self, point: Point, gas: &Gas) -> Result<Performance, CompressorError> {
        let flow = self.mass_flow.map(|flow| flow.at(point)).transpose()?;
        let capacity = self
            .capacity
            .map(|capacity| capacity.at(point))
            .transpose()?;
        let (mass_flow, capacity) = match (flow, capacity) {
            (Some(flow), Some(capacity)) => (flow, capacity),
            (Some(flow), None) => (flow, flow * gas.cooling),
            (None, Some(capacity)) => (capacity / gas.cooling, capacity),
            (None, None) => return Err(CompressorError::NoFlow),
        };
        Ok(Performance {
            mass_flow,
            capacity,
            power: self.power.map(|power| power.at(point)).transpose()?,
            current: self.current.map(|current| current.at(point)).transpose()?,
        })
    }

    fn gas(
        &self,
        point: Point,
        inlet: Suction,
        subcooling: TemperatureInterval,
    ) -> Result<Gas, CompressorError> {
        point.check()?;
        let discharge = discharge_pressure(&self.refrigerant, point)?;
        let state = suction(&self.refrigerant, point.evaporating, inlet)?;
        let (_, work) = isentropic_work(&self.refrigerant, &state, discharge)?;
        let cooling = cooling(&self.refrigerant, point, &state, discharge, subcooling)?;
        Ok(Gas {
            state,
            work,
            cooling,
        })
    }
}
