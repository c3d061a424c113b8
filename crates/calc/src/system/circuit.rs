//! Compressor, evaporator and metering device together, at one condensing temperature.
//!
//! All that the condenser does not decide follows from the condensing temperature alone: liquid with a fixed subcooling enters the
//! metering device, the evaporator boils it under the return air, the compressor takes it away. Where the device can pass what the
//! compressor draws at the superheat it controls for, it controls, and the evaporating temperature is the unknown. Where it cannot, it
//! is fully open: evaporating temperature and superheat both follow from flow in = flow out.
//!
//! Bare SI numbers throughout.

use winterset_refrigerant::{Error, Refrigerant, State};

use super::compressor::{Compressor, LEAST_VOLUMETRIC_EFFICIENCY, Pattern};
use super::evaporator::{Evaporator, Passing};
use super::fluid::{dew, enthalpy, heat_capacity, single, temperature};
use super::metering::Device;
use crate::cycle::SUPERHEAT;
use crate::root::try_near;

/// Below the known evaporating temperature by this, K, a low-pressure cut-out has stopped the compressor. Common practice, no
/// published source.
pub(crate) const CUT_OUT_BELOW: f64 = 25.0;

/// How close an evaporating temperature is found, K.
const PRECISION: f64 = 1e-6;

/// The load that scales a circuit.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Scale {
    /// Cooling capacity at the known point, W.
    Cooling(f64),
    /// Heat rejected at the known point, W.
    Rejected(f64),
}

/// The known point of a circuit.
#[derive(Clone, Copy, Debug)]
pub(crate) struct KnownPoint {
    pub(crate) evaporating: f64,
    pub(crate) condensing: f64,
    pub(crate) subcooling: f64,
    pub(crate) return_air: f64,
    pub(crate) scale: Scale,
}

/// Why no circuit fits a known point.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Unfit {
    /// The refrigerant has no state there.
    Refrigerant(Error),
    /// The discharge would be hotter than the refrigerant's equations reach.
    Discharge(Error),
    /// One stage of compression does not lift that far, or the data sheet knows of no flow there.
    Lift,
}

impl From<Error> for Unfit {
    fn from(error: Error) -> Self {
        Unfit::Refrigerant(error)
    }
}

/// What the high side alone decides, at one condensing temperature.
#[derive(Clone, Copy, Debug)]
pub(crate) struct HighSide {
    dew: State,
    coil: f64,
    bubble: f64,
    bubble_enthalpy: f64,
    pub(crate) liquid: State,
}

impl HighSide {
    fn condensing(&self) -> f64 {
        self.dew.temperature.value
    }

    fn head(&self) -> f64 {
        self.dew.pressure.value
    }
}

/// What comes and goes round the circuit at one condensing temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Running {
    /// Temperature half way through condensing.
    pub(crate) coil: f64,
    pub(crate) head: f64,
    pub(crate) suction_pressure: f64,
    /// Evaporating temperature (dew).
    pub(crate) evaporating: f64,
    /// Temperature of the suction vapour.
    pub(crate) suction: f64,
    pub(crate) flow: f64,
    pub(crate) suction_enthalpy: f64,
    pub(crate) discharge_enthalpy: f64,
    pub(crate) discharge: f64,
    pub(crate) dew_enthalpy: f64,
    pub(crate) bubble: f64,
    pub(crate) bubble_enthalpy: f64,
    pub(crate) liquid: f64,
    pub(crate) liquid_enthalpy: f64,
    /// Share of the evaporator that is wet.
    pub(crate) wetted: f64,
}

/// Columns of [`Running`] as a series carries them.
pub(crate) const COLUMNS: usize = 15;

impl Running {
    /// What an interpolated column may be off: 1e-4 K, 1e-6 of a pressure, a flow or a share, 0.2 J/kg.
    pub(crate) fn tolerance(flow: f64) -> [f64; COLUMNS] {
        Self {
            coil: 1e-4,
            head: 1.0 + 1e-6,
            suction_pressure: 1.0 + 1e-6,
            evaporating: 1e-4,
            suction: 1e-4,
            flow: 1e-6 * flow,
            suction_enthalpy: 0.2,
            discharge_enthalpy: 0.2,
            discharge: 1e-3,
            dew_enthalpy: 0.2,
            bubble: 1e-4,
            bubble_enthalpy: 0.2,
            liquid: 1e-4,
            liquid_enthalpy: 0.2,
            wetted: 1e-6,
        }
        .columns()
    }

    /// As columns; pressures as logarithms, which are nearly straight along temperature.
    pub(crate) fn columns(&self) -> [f64; COLUMNS] {
        [
            self.coil,
            self.head.ln(),
            self.suction_pressure.ln(),
            self.evaporating,
            self.suction,
            self.flow,
            self.suction_enthalpy,
            self.discharge_enthalpy,
            self.discharge,
            self.dew_enthalpy,
            self.bubble,
            self.bubble_enthalpy,
            self.liquid,
            self.liquid_enthalpy,
            self.wetted,
        ]
    }

    /// From columns.
    pub(crate) fn from_columns(columns: [f64; COLUMNS]) -> Self {
        let [
            coil,
            head,
            suction_pressure,
            evaporating,
            suction,
            flow,
            suction_enthalpy,
            discharge_enthalpy,
            discharge,
            dew_enthalpy,
            bubble,
            bubble_enthalpy,
            liquid,
            liquid_enthalpy,
            wetted,
        ] = columns;
        Self {
            coil,
            head: head.exp(),
            suction_pressure: suction_pressure.exp(),
            evaporating,
            suction,
            flow,
            suction_enthalpy,
            discharge_enthalpy,
            discharge,
            dew_enthalpy,
            bubble,
            bubble_enthalpy,
            liquid,
            liquid_enthalpy,
            wetted,
        }
    }

    /// Heat rejected, W.
    pub(crate) fn rejected(&self) -> f64 {
        self.flow * (self.discharge_enthalpy - self.liquid_enthalpy)
    }

    /// Cooling capacity, W.
    pub(crate) fn cooling(&self) -> f64 {
        self.flow * (self.suction_enthalpy - self.liquid_enthalpy)
    }

    /// Power into the refrigerant, W.
    pub(crate) fn compression(&self) -> f64 {
        self.flow * (self.discharge_enthalpy - self.suction_enthalpy)
    }
}

/// One end of the compressor's low side: an evaporating and a suction temperature, and what the compressor makes of them.
#[derive(Clone, Copy, Debug)]
struct LowSide {
    evaporating: f64,
    suction_pressure: f64,
    suction: State,
    flow: f64,
    discharge_enthalpy: f64,
    volumetric: f64,
    wetted: f64,
}

/// First guesses of a search, carried from one condensing temperature to the next.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Trail {
    /// The last two condensing temperatures with the evaporating temperatures found there.
    found: [(f64, f64); 2],
    slope: f64,
}

impl Trail {
    /// First guess of an evaporating temperature: straight on from the last two.
    fn guess(&self, condensing: f64) -> f64 {
        let [(before, older), (last, newer)] = self.found;
        if last == before {
            return newer;
        }
        newer + (newer - older) * ((condensing - last) / (last - before)).clamp(-2.0, 2.0)
    }

    fn step(&mut self, condensing: f64, evaporating: f64, slope: f64) {
        let [_, last] = self.found;
        if last.0 != condensing {
            self.found = [last, (condensing, evaporating)];
        }
        self.slope = slope;
    }
}

/// A circuit scaled from its known point.
#[derive(Clone, Debug)]
pub(crate) struct Circuit {
    pub(crate) refrigerant: Refrigerant,
    compressor: Compressor,
    evaporator: Evaporator,
    pub(crate) device: Device,
    pub(crate) known: KnownPoint,
    /// Circulation at the known point.
    pub(crate) at_known: Running,
    /// Evaporating temperature at which the low-pressure cut-out stops the compressor.
    pub(crate) cut_out: f64,
}

impl Circuit {
    /// The circuit that runs at its known point.
    ///
    /// # Errors
    /// [`Unfit`].
    pub(crate) fn new(
        refrigerant: &Refrigerant,
        known: KnownPoint,
        pattern: Pattern,
    ) -> Result<Self, Unfit> {
        let high = high_side(refrigerant, known.condensing, known.subcooling)?;
        let boiling = dew(refrigerant, known.evaporating)?;
        let suction_pressure = boiling.pressure.value;
        let suction =
            refrigerant.superheated(&boiling, temperature(known.evaporating + SUPERHEAT))?;
        let stroke = pattern
            .stroke(refrigerant, known.evaporating, &suction, &high.dew)
            .map_err(Unfit::Discharge)?;
        let (volumetric, discharge) = (stroke.volumetric, stroke.enthalpy);
        if volumetric < LEAST_VOLUMETRIC_EFFICIENCY {
            return Err(Unfit::Lift);
        }
        let (inlet, liquid) = (suction.enthalpy.value, high.liquid.enthalpy.value);
        let flow = match known.scale {
            Scale::Cooling(cooling) => cooling / (inlet - liquid),
            Scale::Rejected(heat) => heat / (discharge - liquid),
        };
        let passing = Passing {
            flow,
            boiling: boiling.enthalpy.value - liquid,
            heat_capacity: heat_capacity(&boiling),
        };
        let evaporator =
            Evaporator::filled(known.return_air, passing, known.evaporating, SUPERHEAT);
        let lowest = refrigerant.temperature_range().0.value;
        let low = LowSide {
            evaporating: known.evaporating,
            suction_pressure,
            suction,
            flow,
            discharge_enthalpy: discharge,
            volumetric,
            wetted: evaporator.wetted(passing, known.evaporating),
        };
        let mut circuit = Self {
            compressor: Compressor::passing(flow, pattern, &stroke),
            evaporator,
            device: Device::new(
                flow,
                high.liquid.density.value,
                high.head() - suction_pressure,
            ),
            known,
            at_known: running(refrigerant, &high, &low)?,
            // A whole kelvin of room keeps the search off the edge of the refrigerant's range.
            cut_out: (known.evaporating - CUT_OUT_BELOW).max(lowest + 1.0),
            refrigerant: refrigerant.clone(),
        };
        circuit.cut_out = circuit.coldest_of_sheet(&high)?;
        Ok(circuit)
    }

    /// The cut-out, or the coldest evaporating temperature down to which a data sheet still tells a flow, at the known condensing
    /// temperature and at little lift, in steps of 1 K.
    fn coldest_of_sheet(&self, known: &HighSide) -> Result<f64, Error> {
        const LITTLE_LIFT: f64 = 15.0;
        let tells = |evaporating: f64| -> Result<bool, Error> {
            let boiling = dew(&self.refrigerant, evaporating)?;
            let suction = self
                .refrigerant
                .superheated(&boiling, temperature(evaporating + SUPERHEAT))?;
            let near = dew(&self.refrigerant, evaporating + LITTLE_LIFT)?;
            for head in [&known.dew, &near] {
                let stroke =
                    self.compressor
                        .compress(&self.refrigerant, evaporating, &suction, head)?;
                if stroke.volumetric <= 0.0 {
                    return Ok(false);
                }
            }
            Ok(true)
        };
        if !self.compressor.is_by_sheet() {
            return Ok(self.cut_out);
        }
        let mut coldest = self.known.evaporating - 1.0;
        while coldest - 1.0 > self.cut_out && tells(coldest - 1.0)? {
            coldest -= 1.0;
        }
        Ok(coldest.max(self.cut_out))
    }

    /// The high side at a condensing temperature.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn high_side(&self, condensing: f64) -> Result<HighSide, Error> {
        high_side(&self.refrigerant, condensing, self.known.subcooling)
    }

    /// Where the search for an evaporating temperature may start.
    pub(crate) fn trail(&self) -> Trail {
        Trail {
            found: [(self.known.condensing, self.known.evaporating); 2],
            slope: 0.1,
        }
    }

    /// Low side at an evaporating temperature, with the superheat that the device controls for or with a flow that is given.
    fn low_side(
        &self,
        high: &HighSide,
        boiling: &State,
        flow: Option<f64>,
    ) -> Result<(LowSide, Passing), Error> {
        let evaporating = boiling.temperature.value;
        let mut passing = Passing {
            flow: flow.unwrap_or_default(),
            boiling: boiling.enthalpy.value - high.liquid.enthalpy.value,
            heat_capacity: heat_capacity(boiling),
        };
        let leaving = match flow {
            Some(_) => self.evaporator.leaving(passing, evaporating),
            None => evaporating + SUPERHEAT,
        };
        let suction = self
            .refrigerant
            .superheated(boiling, temperature(leaving))?;
        let compressed =
            self.compressor
                .compress(&self.refrigerant, evaporating, &suction, &high.dew)?;
        if flow.is_none() {
            passing.flow = compressed.flow;
        }
        let low = LowSide {
            evaporating,
            suction_pressure: boiling.pressure.value,
            suction,
            flow: compressed.flow,
            discharge_enthalpy: compressed.enthalpy,
            volumetric: compressed.volumetric,
            wetted: self.evaporator.wetted(passing, evaporating),
        };
        Ok((low, passing))
    }

    /// The low side with the metering device in control of its superheat.
    fn controlled(&self, high: &HighSide, trail: &mut Trail) -> Result<LowSide, Error> {
        let warmest = self.evaporator.return_air - SUPERHEAT - 1e-3;
        let (evaporating, slope, low) = try_near(
            (self.cut_out, warmest),
            (trail.guess(high.condensing()), trail.slope),
            PRECISION,
            |evaporating| {
                let boiling = dew(&self.refrigerant, evaporating)?;
                let (low, passing) = self.low_side(high, &boiling, None)?;
                let taken = self.evaporator.taken(passing, evaporating, SUPERHEAT);
                Ok::<_, Error>((taken - 1.0, low))
            },
        )?;
        trail.step(high.condensing(), evaporating, slope);
        Ok(low)
    }

    /// What the fully open device passes at an evaporating pressure.
    fn most(&self, high: &HighSide, reserve: f64, suction_pressure: f64) -> f64 {
        let difference = high.head() - suction_pressure;
        self.device
            .most(reserve, high.liquid.density.value, difference)
    }

    /// What the compressor draws over what the fully open device passes, less one.
    fn shortfall(
        &self,
        high: &HighSide,
        reserve: f64,
        evaporating: f64,
    ) -> Result<(f64, LowSide), Error> {
        let boiling = dew(&self.refrigerant, evaporating)?;
        // A trickle where nothing passes keeps the shares finite.
        let most = self
            .most(high, reserve, boiling.pressure.value)
            .max(1e-9 * self.at_known.flow);
        let (low, _) = self.low_side(high, &boiling, Some(most))?;
        Ok((low.flow / most - 1.0, low))
    }

    /// By how much the flow that the fully open device passes exceeds the one that it would control for, as a share.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn surplus(
        &self,
        condensing: f64,
        reserve: f64,
        trail: &mut Trail,
    ) -> Result<f64, Error> {
        let high = self.high_side(condensing)?;
        let low = self.controlled(&high, trail)?;
        Ok(self.most(&high, reserve, low.suction_pressure) / low.flow - 1.0)
    }

    /// By how much the device passes more than the compressor draws at the low-pressure cut-out, as a share of what it draws.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn surplus_at_cut_out(&self, condensing: f64, reserve: f64) -> Result<f64, Error> {
        let high = self.high_side(condensing)?;
        Ok(-self.shortfall(&high, reserve, self.cut_out)?.0)
    }

    /// Volumetric efficiency over the least that one stage of compression works at, less one, with the device in control.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn lift_left(&self, condensing: f64, trail: &mut Trail) -> Result<f64, Error> {
        let high = self.high_side(condensing)?;
        let low = self.controlled(&high, trail)?;
        Ok(low.volumetric / LEAST_VOLUMETRIC_EFFICIENCY - 1.0)
    }

    /// The circuit with the metering device in control.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn fed(&self, condensing: f64, trail: &mut Trail) -> Result<Running, Error> {
        let high = self.high_side(condensing)?;
        let low = self.controlled(&high, trail)?;
        running(&self.refrigerant, &high, &low)
    }

    /// The circuit with the metering device fully open and passing less than it would control for.
    ///
    /// # Errors
    /// Those of the refrigerant.
    pub(crate) fn starved(
        &self,
        condensing: f64,
        reserve: f64,
        trail: &mut Trail,
    ) -> Result<Running, Error> {
        let high = self.high_side(condensing)?;
        let warmest = self.known.evaporating.max(trail.guess(condensing)) + 5.0;
        let warmest = warmest
            .min(self.evaporator.return_air - 1e-3)
            .min(condensing - 1e-3);
        let (evaporating, slope, low) = try_near(
            (self.cut_out, warmest),
            (trail.guess(high.condensing()), trail.slope),
            PRECISION,
            |evaporating| self.shortfall(&high, reserve, evaporating),
        )?;
        trail.step(high.condensing(), evaporating, slope);
        running(&self.refrigerant, &high, &low)
    }
}

fn high_side(
    refrigerant: &Refrigerant,
    condensing: f64,
    subcooling: f64,
) -> Result<HighSide, Error> {
    let dew = dew(refrigerant, condensing)?;
    let bubble = refrigerant.bubble_at_pressure(dew.pressure)?;
    let coil = crate::controller::coil_temperature(refrigerant, dew.pressure)?;
    Ok(HighSide {
        dew,
        coil: coil.value,
        bubble: bubble.temperature.value,
        bubble_enthalpy: bubble.enthalpy.value,
        liquid: single(
            refrigerant,
            bubble.temperature.value - subcooling,
            dew.pressure.value,
        )?,
    })
}

fn running(refrigerant: &Refrigerant, high: &HighSide, low: &LowSide) -> Result<Running, Error> {
    let discharge =
        refrigerant.superheated_at_enthalpy(&high.dew, enthalpy(low.discharge_enthalpy))?;
    Ok(Running {
        coil: high.coil,
        head: high.head(),
        suction_pressure: low.suction_pressure,
        evaporating: low.evaporating,
        suction: low.suction.temperature.value,
        flow: low.flow,
        suction_enthalpy: low.suction.enthalpy.value,
        discharge_enthalpy: low.discharge_enthalpy,
        discharge: discharge.temperature.value,
        dew_enthalpy: high.dew.enthalpy.value,
        bubble: high.bubble,
        bubble_enthalpy: high.bubble_enthalpy,
        liquid: high.liquid.temperature.value,
        liquid_enthalpy: high.liquid.enthalpy.value,
        wetted: low.wetted,
    })
}
