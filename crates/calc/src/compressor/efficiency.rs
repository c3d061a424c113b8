//! A compressor without a data sheet: volumetric and isentropic efficiency, scaled to its nameplate.
//!
//! * Volumetric efficiency by the gas that expands again out of the clearance: `η_v = 1 − c·(ρ₂s/ρ₁ − 1)` with the density `ρ₂s` after compression without
//!   loss.
//! * Power: `P = P₀ + a·m·w`, a constant loss and one in proportion to the work `w` that is done on the gas. For a compressor whose valves open by
//!   themselves, `w = h₂s − h₁`. One that opens at a fixed volume ratio compresses to the pressure `p_i` there whatever the condensing pressure is, and the rest
//!   happens at constant volume: `w = h_i − h₁ + (p₂ − p_i)·v_i`. That is more than `h₂s − h₁` on either side of its ratio, and so the low head
//!   pressures of winter cost efficiency.
//! * Isentropic efficiency is what comes out: `η = m·(h₂s − h₁) / P`. `P₀` and `a` follow from its value at the nameplate's point and the share of power there
//!   that is constant.
//!
//! Source: Stoecker & Jones, Refrigeration and Air Conditioning, compressors chapter (clearance); Winandy, Saavedra & Lebrun 2002, Applied Thermal
//! Engineering 22 (constant and proportional loss, built-in volume ratio). The usual values are common practice, no published source.

use uom::si::f64::{
    AvailableEnergy, MassRate, Power, Pressure, Ratio, TemperatureInterval, VolumeRate,
};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::volume_rate::cubic_meter_per_second;
use winterset_refrigerant::{Refrigerant, State};

use super::error::inside;
use super::states::{cooling, discharge_pressure, isentropic_work, suction};
use super::{CompressorError, CompressorValue, Point, Suction};
use crate::root::bracketed;

/// How a compressor is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Build {
    /// Pistons with valves that open by themselves.
    Reciprocating,
    /// Rolling piston, with a valve at discharge.
    Rotary,
    /// Two scrolls, open at a fixed volume ratio.
    Scroll,
    /// Screws, open at a fixed volume ratio.
    Screw,
}

/// What a compressor loses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Losses {
    /// Volume that stays behind at the end of the stroke over the swept volume: 0 to 0.2.
    pub clearance: f64,
    /// Volume of the closed pocket at suction over that at discharge, 1.1 to 6; `None` with valves that open by themselves.
    pub built_in: Option<f64>,
    /// Isentropic efficiency at the nameplate's point, on electric power: 0.1 to 0.95.
    pub isentropic: f64,
    /// Share of the power at the nameplate's point that does not change with load, such as friction: 0 to 0.5.
    pub constant_share: f64,
}

impl Losses {
    /// Usual losses of a build. Common practice, no published source.
    pub fn usual(build: Build) -> Self {
        let (clearance, built_in) = match build {
            Build::Reciprocating => (0.04, None),
            Build::Rotary => (0.015, None),
            Build::Scroll => (0.005, Some(2.5)),
            Build::Screw => (0.005, Some(3.0)),
        };
        Self {
            clearance,
            built_in,
            isentropic: 0.65,
            constant_share: 0.1,
        }
    }

    fn check(&self) -> Result<(), CompressorError> {
        inside(CompressorValue::Clearance, self.clearance, (0.0, 0.2))?;
        if let Some(built_in) = self.built_in {
            inside(CompressorValue::BuiltInRatio, built_in, (1.1, 6.0))?;
        }
        let efficiency = CompressorValue::IsentropicEfficiency;
        inside(efficiency, self.isentropic, (0.1, 0.95))?;
        inside(
            CompressorValue::ConstantShare,
            self.constant_share,
            (0.0, 0.5),
        )?;
        Ok(())
    }
}

/// How large the compressor is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Size {
    /// Swept volume a time: 1e-7 to 10 m³/s.
    Displacement(VolumeRate),
    /// Cooling capacity at the nameplate's point, counted to the compressor's inlet: 1 W to 10 MW.
    Capacity(Power),
}

/// What a compressor is known by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nameplate {
    /// The point that it is rated at.
    pub point: Point,
    /// The suction gas there.
    pub suction: Suction,
    /// The subcooling there: 0 to 100 K.
    pub subcooling: TemperatureInterval,
    /// Its size.
    pub size: Size,
}

/// A compressor scaled to its nameplate.
#[derive(Clone, Debug)]
pub struct Compressor {
    refrigerant: Refrigerant,
    losses: Losses,
    displacement: VolumeRate,
    constant: Power,
    proportional: f64,
}

/// What a compressor does at a point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Performance {
    /// Mass flow.
    pub mass_flow: MassRate,
    /// Cooling capacity, counted to the compressor's inlet.
    pub capacity: Power,
    /// Electric power.
    pub power: Power,
    /// Volume drawn in over volume swept.
    pub volumetric: f64,
    /// Power without any loss over power.
    pub isentropic: f64,
}

/// One kilogram on its way through the compressor.
struct Stroke {
    inlet: State,
    volumetric: f64,
    least_work: AvailableEnergy,
    work: AvailableEnergy,
}

impl Compressor {
    /// The compressor of a nameplate with these losses.
    ///
    /// # Errors
    /// [`CompressorError::OutOfRange`], [`CompressorError::ReturnGasTooCold`], [`CompressorError::NoDelivery`], [`CompressorError::NoCooling`],
    /// [`CompressorError::TooEfficient`], [`CompressorError::Refrigerant`].
    pub fn new(
        refrigerant: &Refrigerant,
        losses: Losses,
        nameplate: Nameplate,
    ) -> Result<Self, CompressorError> {
        losses.check()?;
        let point = nameplate.point;
        point.check()?;
        let stroke = stroke(refrigerant, &losses, point, nameplate.suction)?;
        let displacement = match nameplate.size {
            Size::Displacement(displacement) => {
                let value = displacement.get::<cubic_meter_per_second>();
                inside(CompressorValue::Displacement, value, (1e-7, 10.0))?;
                displacement
            }
            Size::Capacity(capacity) => {
                let value = capacity.get::<watt>();
                inside(CompressorValue::Capacity, value, (1.0, 1e7))?;
                let cooling = cooling(
                    refrigerant,
                    point,
                    &stroke.inlet,
                    discharge_pressure(refrigerant, point)?,
                    nameplate.subcooling,
                )?;
                capacity / cooling / stroke.inlet.density / stroke.volumetric
            }
        };
        let flow = displacement * stroke.inlet.density * stroke.volumetric;
        let power: Power = flow * stroke.least_work / losses.isentropic;
        let indicated: Power = flow * stroke.work;
        let proportional = ((power * (1.0 - losses.constant_share)) / indicated).get::<ratio>();
        if proportional < 1.0 {
            return Err(CompressorError::TooEfficient {
                given: losses.isentropic,
                most: losses.isentropic * proportional,
            });
        }
        Ok(Self {
            refrigerant: refrigerant.clone(),
            losses,
            displacement,
            constant: power * losses.constant_share,
            proportional,
        })
    }

    /// Swept volume a time.
    pub fn displacement(&self) -> VolumeRate {
        self.displacement
    }

    /// What it does at a point with this suction gas and this subcooling (0 to 100 K).
    ///
    /// # Errors
    /// As [`Compressor::new`], but for [`CompressorError::TooEfficient`].
    pub fn at(
        &self,
        point: Point,
        suction: Suction,
        subcooling: TemperatureInterval,
    ) -> Result<Performance, CompressorError> {
        point.check()?;
        let stroke = stroke(&self.refrigerant, &self.losses, point, suction)?;
        let cooling = cooling(
            &self.refrigerant,
            point,
            &stroke.inlet,
            discharge_pressure(&self.refrigerant, point)?,
            subcooling,
        )?;
        let mass_flow = self.displacement * stroke.inlet.density * stroke.volumetric;
        let indicated: Power = mass_flow * stroke.work;
        let power = self.constant + indicated * self.proportional;
        let least: Power = mass_flow * stroke.least_work;
        Ok(Performance {
            mass_flow,
            capacity: mass_flow * cooling,
            power,
            volumetric: stroke.volumetric,
            isentropic: (least / power).get::<ratio>(),
        })
    }
}

/// Volumetric efficiency of a clearance, `1 − c·(ρ₂s/ρ₁ − 1)`; 0 or below where nothing is drawn in any more.
///
/// Source: Stoecker & Jones, Refrigeration and Air Conditioning, compressors chapter.
pub fn clearance_efficiency(clearance: f64, densities: Ratio) -> f64 {
    1.0 - clearance * (densities.get::<ratio>() - 1.0)
}

fn stroke(
    refrigerant: &Refrigerant,
    losses: &Losses,
    point: Point,
    gas: Suction,
) -> Result<Stroke, CompressorError> {
    let inlet = suction(refrigerant, point.evaporating, gas)?;
    let discharge = discharge_pressure(refrigerant, point)?;
    let (end, least_work) = isentropic_work(refrigerant, &inlet, discharge)?;
    let volumetric = clearance_efficiency(losses.clearance, end.density / inlet.density);
    if volumetric <= 0.0 {
        return Err(CompressorError::NoDelivery {
            at: point,
            volumetric,
        });
    }
    let work = match losses.built_in {
        None => least_work,
        Some(built_in) => work_at_fixed_ratio(refrigerant, &inlet, discharge, built_in)?,
    };
    Ok(Stroke {
        inlet,
        volumetric,
        least_work,
        work,
    })
}

/// Steepest rise of pressure with density in a compression without loss: above the isentropic exponent of any refrigerant's gas.
const STEEPEST: f64 = 1.7;

/// Work of a compression to a fixed volume ratio and on at constant volume, `h_i − h₁ + (p₂ − p_i)·v_i`.
fn work_at_fixed_ratio(
    refrigerant: &Refrigerant,
    inlet: &State,
    discharge: Pressure,
    built_in: f64,
) -> Result<AvailableEnergy, CompressorError> {
    let wanted = inlet.density.get::<kilogram_per_cubic_meter>() * built_in;
    let start = inlet.pressure.get::<pascal>();
    let mut failure = None;
    let opened = bracketed(start, start * built_in.powf(STEEPEST), |pressure| {
        let pressure = Pressure::new::<pascal>(pressure);
        match refrigerant.state_at_pressure_entropy(pressure, inlet.entropy) {
            Ok(state) => state.density.get::<kilogram_per_cubic_meter>() - wanted,
            Err(error) => {
                failure = Some(error);
                0.0
            }
        }
    });
    if let Some(error) = failure {
        return Err(error.into());
    }
    let opened = Pressure::new::<pascal>(opened);
    let (state, work) = isentropic_work(refrigerant, inlet, opened)?;
    let rest: AvailableEnergy = (discharge - opened) / state.density;
    Ok(work + rest)
}
