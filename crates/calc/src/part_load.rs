//! What else bears on head pressure in the cold: what asks for more of it than valve and compressor do, and what leaves the condenser with less heat.
//!
//! * Hot-gas defrost: the coil that is defrosted has to condense well above freezing, and the gas has to get there: `p = p_dew(T_coil) + Δp`.
//! * Heat reclaim: condensing as warm as its user wants it, and a share of the heat that the outdoor condenser does not get.
//! * Compressors that stage, unload or slow down: the lowest share of load that runs steadily.
//!
//! At a given airflow the temperature difference of a condenser goes with its heat, so that a hold limit `T₀` at full load becomes
//! `T = T_need − s·(T_need − T₀)` at a share `s`: it rises towards the need.
//!
//! Source: effectiveness-NTU (Kays & London) for the hold limit; ASHRAE Handbook Refrigeration for hot-gas defrost in principle. The usual values are common
//! practice, no published source.

use uom::si::f64::{Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::pressure::{kilopascal, pascal};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use winterset_refrigerant::{Error, Refrigerant};

use crate::air::difference;
use crate::compressor::capacity_steps::CapacitySteps;
use crate::explain::Given;

/// Why more head pressure is needed than valve and compressor ask for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NeedReason {
    /// Hot gas has to melt ice.
    HotGasDefrost,
    /// The heat is wanted at a temperature.
    HeatReclaim,
}

/// Why the condenser gets less than the full heat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LoadReason {
    /// Compressors stage, unload or slow down.
    CompressorSteps,
    /// Heat reclaim takes its share first.
    HeatReclaim,
}

/// Defrost with hot gas from the compressors that go on running.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HotGasDefrost {
    /// Condensing temperature (dew) in the coil while it is defrosted: 1 to 60 °C.
    pub coil: Given<ThermodynamicTemperature>,
    /// Pressure that the way from the compressor into the coil takes: 0 to 2 MPa.
    pub drop: Given<Pressure>,
}

impl HotGasDefrost {
    /// 10 °C in the coil and 100 kPa on the way. Common practice, no published source.
    pub fn usual() -> Self {
        Self {
            coil: Given::assumed(ThermodynamicTemperature::new::<degree_celsius>(10.0)),
            drop: Given::assumed(Pressure::new::<kilopascal>(100.0)),
        }
    }
}

/// Heat taken from the hot gas for use.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatReclaim {
    /// Condensing temperature (dew) that its user wants: -20 to 90 °C.
    pub wanted: ThermodynamicTemperature,
    /// Largest share of the heat rejected that it takes while the outdoor condenser runs: 0 to 1.
    pub share: f64,
}

/// What is there beside valve and compressor.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Extras {
    /// Shares that the compressors run at; `None` for one that only stops and starts.
    pub steps: Option<CapacitySteps>,
    /// Defrost by hot gas.
    pub defrost: Option<HotGasDefrost>,
    /// Heat reclaim.
    pub reclaim: Option<HeatReclaim>,
}

/// A pressure need with the reason for it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ExtraNeed {
    /// Why.
    pub reason: NeedReason,
    /// The head pressure asked for.
    pub pressure: Pressure,
    /// The same as a condensing temperature (dew).
    pub condensing: ThermodynamicTemperature,
}

/// All that the extras ask for.
#[derive(Clone, Debug, PartialEq)]
pub struct Demands {
    /// Each need, the highest first.
    pub needs: Vec<ExtraNeed>,
    /// Smallest share of the full heat that reaches the condenser in steady running: 0 to 1.
    pub lowest_load: f64,
    /// What lowers it; empty where nothing does.
    pub lowered_by: Vec<LoadReason>,
}

/// Which need a plan has to keep to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Governing {
    /// That of valve and compressor: nothing else asks for more.
    Plan,
    /// An extra one.
    Extra(ExtraNeed),
}

/// Which value was out of its range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PartLoadValue {
    /// Condensing temperature in the coil that is defrosted, K.
    DefrostCoil,
    /// Pressure drop of the hot gas, Pa.
    DefrostDrop,
    /// Condensing temperature that heat reclaim wants, K.
    ReclaimCondensing,
    /// Share of the heat that reclaim takes.
    ReclaimShare,
    /// Share of the full load.
    LoadShare,
    /// Condensing temperature of the need, K.
    NeedCondensing,
    /// Hold limit, K.
    HoldLimit,
}

/// What is wrong with what was given.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum PartLoadError {
    /// A value outside its range, or no number; in the unit named with it.
    #[error("{what:?} of {given} is outside {low} to {high}")]
    OutOfRange {
        /// Which value.
        what: PartLoadValue,
        /// As given.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

impl Extras {
    /// What the extras ask for.
    ///
    /// # Errors
    /// [`PartLoadError::OutOfRange`], [`PartLoadError::Refrigerant`].
    pub fn demands(&self, refrigerant: &Refrigerant) -> Result<Demands, PartLoadError> {
        let mut needs = Vec::new();
        let mut lowered_by = Vec::new();
        let mut lowest_load = 1.0;
        if let Some(defrost) = self.defrost {
            needs.push(defrost_need(refrigerant, defrost)?);
        }
        if let Some(reclaim) = self.reclaim {
            needs.push(reclaim_need(refrigerant, reclaim)?);
            let share = inside(PartLoadValue::ReclaimShare, reclaim.share, (0.0, 1.0))?;
            if share > 0.0 {
                lowest_load *= 1.0 - share;
                lowered_by.push(LoadReason::HeatReclaim);
            }
        }
        let lowest_step = self.steps.as_ref().map_or(1.0, CapacitySteps::lowest);
        if lowest_step < 1.0 {
            lowest_load *= lowest_step;
            lowered_by.insert(0, LoadReason::CompressorSteps);
        }
        needs.sort_by(|a, b| b.pressure.value.total_cmp(&a.pressure.value));
        Ok(Demands {
            needs,
            lowest_load,
            lowered_by,
        })
    }
}

impl Demands {
    /// Whether an extra need is above the one of valve and compressor.
    pub fn governing(&self, plan: Pressure) -> Governing {
        match self.needs.first() {
            Some(highest) if highest.pressure > plan => Governing::Extra(*highest),
            _ => Governing::Plan,
        }
    }
}

/// The hold limit at a share of the load, from the need as a condensing temperature and the hold limit at full load.
///
/// Need and limit: 150 to 450 K, the limit at or below the need; share 0 to 1.
///
/// # Errors
/// [`PartLoadError::OutOfRange`].
pub fn hold_limit(
    need: ThermodynamicTemperature,
    full_load: ThermodynamicTemperature,
    share: f64,
) -> Result<ThermodynamicTemperature, PartLoadError> {
    let highest = inside(
        PartLoadValue::NeedCondensing,
        need.get::<kelvin>(),
        (150.0, 450.0),
    )?;
    // A method that moves air through a coil at rest has a limit far below anything outdoors, but still a number.
    inside(
        PartLoadValue::HoldLimit,
        full_load.get::<kelvin>(),
        (-1e6, highest),
    )?;
    inside(PartLoadValue::LoadShare, share, (0.0, 1.0))?;
    let over: TemperatureInterval = difference(need, full_load) * share;
    Ok(need - over)
}

fn defrost_need(
    refrigerant: &Refrigerant,
    defrost: HotGasDefrost,
) -> Result<ExtraNeed, PartLoadError> {
    let coil = defrost.coil.value;
    inside(
        PartLoadValue::DefrostCoil,
        coil.get::<kelvin>(),
        (274.15, 333.15),
    )?;
    let drop = defrost.drop.value;
    inside(PartLoadValue::DefrostDrop, drop.get::<pascal>(), (0.0, 2e6))?;
    let pressure = refrigerant.dew_pressure(coil)? + drop;
    Ok(ExtraNeed {
        reason: NeedReason::HotGasDefrost,
        pressure,
        condensing: refrigerant.dew_temperature(pressure)?,
    })
}

fn reclaim_need(
    refrigerant: &Refrigerant,
    reclaim: HeatReclaim,
) -> Result<ExtraNeed, PartLoadError> {
    let condensing = reclaim.wanted;
    inside(
        PartLoadValue::ReclaimCondensing,
        condensing.get::<kelvin>(),
        (253.15, 363.15),
    )?;
    Ok(ExtraNeed {
        reason: NeedReason::HeatReclaim,
        pressure: refrigerant.dew_pressure(condensing)?,
        condensing,
    })
}

fn inside(what: PartLoadValue, given: f64, (low, high): (f64, f64)) -> Result<f64, PartLoadError> {
    if (low..=high).contains(&given) {
        Ok(given)
    } else {
        Err(PartLoadError::OutOfRange {
            what,
            given,
            low,
            high,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    fn r134a() -> Refrigerant {
        Refrigerant::named("R-134a").unwrap()
    }

    #[test]
    fn nothing_extra_asks_for_nothing() {
        let demands = Extras::default().demands(&r134a()).unwrap();
        assert!(demands.needs.is_empty() && demands.lowered_by.is_empty());
        assert_eq!(demands.lowest_load, 1.0);
        let plan = Pressure::new::<kilopascal>(500.0);
        assert_eq!(demands.governing(plan), Governing::Plan);
    }

    #[test]
    fn the_highest_need_governs() {
        let extras = Extras {
            steps: Some(CapacitySteps::stages(&[1.0, 1.0]).unwrap()),
            defrost: Some(HotGasDefrost::usual()),
            reclaim: Some(HeatReclaim {
                wanted: celsius(40.0),
                share: 0.3,
            }),
        };
        let demands = extras.demands(&r134a()).unwrap();
        let reasons: Vec<_> = demands.needs.iter().map(|need| need.reason).collect();
        assert_eq!(
            reasons,
            [NeedReason::HeatReclaim, NeedReason::HotGasDefrost]
        );
        // Saturation tables of R-134a (ASHRAE Handbook Fundamentals): 414.6 kPa at 10 °C, 1016.6 kPa at 40 °C.
        assert!((demands.needs[0].pressure.get::<kilopascal>() - 1016.6).abs() < 0.1);
        assert!((demands.needs[1].pressure.get::<kilopascal>() - 514.6).abs() < 0.1);
        assert!((demands.lowest_load - 0.35).abs() < 1e-12);
        assert_eq!(
            demands.lowered_by,
            [LoadReason::CompressorSteps, LoadReason::HeatReclaim]
        );
        let governing = |pressure| demands.governing(Pressure::new::<kilopascal>(pressure));
        assert!(matches!(
            governing(900.0),
            Governing::Extra(ExtraNeed {
                reason: NeedReason::HeatReclaim,
                ..
            })
        ));
        assert_eq!(governing(1100.0), Governing::Plan);
    }

    /// By hand: 20 K under the need at full load is 5 K at a quarter.
    #[test]
    fn the_hold_limit_rises_with_less_load() {
        let at = |share| {
            hold_limit(celsius(25.0), celsius(5.0), share)
                .unwrap()
                .get::<degree_celsius>()
        };
        assert!((at(0.25) - 20.0).abs() < 1e-9);
        assert!((at(1.0) - 5.0).abs() < 1e-9);
        assert!((at(0.0) - 25.0).abs() < 1e-9);
        assert!(hold_limit(celsius(25.0), celsius(30.0), 0.5).is_err());
        assert!(hold_limit(celsius(25.0), celsius(5.0), f64::NAN).is_err());
    }

    #[test]
    fn ice_does_not_melt_below_freezing() {
        let mut defrost = HotGasDefrost::usual();
        defrost.coil = Given::entered(celsius(0.0));
        let extras = Extras {
            defrost: Some(defrost),
            ..Extras::default()
        };
        assert!(matches!(
            extras.demands(&r134a()),
            Err(PartLoadError::OutOfRange {
                what: PartLoadValue::DefrostCoil,
                ..
            })
        ));
    }

    #[test]
    fn the_refrigerant_may_have_no_such_pressure() {
        let extras = Extras {
            reclaim: Some(HeatReclaim {
                wanted: celsius(60.0),
                share: 0.0,
            }),
            ..Extras::default()
        };
        let carbon_dioxide = Refrigerant::named("R-744").unwrap();
        assert!(matches!(
            extras.demands(&carbon_dioxide),
            Err(PartLoadError::Refrigerant(_))
        ));
        assert!(extras.demands(&r134a()).unwrap().lowered_by.is_empty());
    }
}
