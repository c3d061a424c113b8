//! Head-pressure control by flooding: how much of the condenser is to be filled with liquid, the charge that takes, and the receiver
//! that has to take it back.
//!
//! The surface at work goes with the heat over the temperature difference to the air, so that holding a condensing temperature leaves all
//! but the share `r·ΔT₀ / (T_held − T_o)` of it to be flooded. What the flooded share takes up is the liquid in it less what the condenser
//! held there before. In summer it all has to lie somewhere else.
//!
//! Source: ASHRAE Handbook HVAC Systems and Equipment, condensers chapter.

use uom::si::f64::{
    Length, Mass, MassDensity, Power, TemperatureInterval, ThermodynamicTemperature, Volume,
};
use uom::si::length::meter;
use uom::si::mass::kilogram;
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::volume::cubic_meter;
use winterset_refrigerant::{Error, Refrigerant};

use crate::air::difference;
use crate::explain::Given;
use crate::root::bracketed;
use crate::void_fraction::{self, VoidModel};

/// Greatest share of a receiver's volume that liquid may fill at the warmest temperature it may see.
///
/// Common practice in the manner of ANSI/ASHRAE 15 and of transport rules for cylinders; the figure is from memory.
pub const FILL_LIMIT: f64 = 0.8;

/// Inside volume of a condenser of round tubes over heat rejected by temperature difference, m³ K/W: 0.4 litres a kilowatt at 15 K.
/// Microchannel coils hold about a third. Common practice, no published source.
const VOLUME_PER_CONDUCTANCE: f64 = 6.0e-6;

/// What is wrong with the flooding of a condenser.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FloodingError {
    /// An input outside its range; values in the SI unit named with the input.
    #[error("{input:?} {value} is outside {low} to {high}")]
    OutOfRange {
        /// Which input.
        input: FloodingInput,
        /// As given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// Vapour and liquid zone together leave nothing to condense in.
    #[error(
        "vapour and liquid zone take {sum} of the condenser: they must leave more than {least}"
    )]
    NoTwoPhaseZone {
        /// The two shares together.
        sum: f64,
        /// What must be left.
        least: f64,
    },
    /// The charge given is less than the circuit holds with the least liquid in the condenser with which it works: none, or as much as
    /// brings condensing above evaporating.
    #[error("a charge below {least:?} is too little for the circuit to work")]
    TooLittleCharge {
        /// The least that will do.
        least: Mass,
    },
    /// The charge given floods the condenser so far that it condenses above the highest temperature allowed.
    #[error("a charge above {most:?} drives condensing above {highest:?}")]
    TooMuchCharge {
        /// The most that does not.
        most: Mass,
        /// The highest condensing temperature that was looked at.
        highest: ThermodynamicTemperature,
    },
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

/// An input of the flooding or charge functions.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FloodingInput {
    /// Condensing over ambient temperature at the design point, K.
    OverAmbient,
    /// Condensing temperature, K.
    Condensing,
    /// Outdoor temperature, K.
    Outdoor,
    /// Heat rejected over that of the design point.
    HeatRatio,
    /// Heat rejected, W.
    Heat,
    /// Inside volume of the condenser, m³.
    CondenserVolume,
    /// Inner diameter of the condenser's tubes, m.
    TubeDiameter,
    /// Length of one tube, m.
    TubeLength,
    /// Number of tubes.
    TubeCount,
    /// Share of the condenser that holds vapour alone.
    VaporShare,
    /// Share of the condenser that holds liquid alone.
    LiquidShare,
    /// Share of the condenser that is flooded.
    FloodedShare,
    /// Temperature of the flooded liquid, K.
    LiquidTemperature,
    /// Warmest temperature that the receiver may see, K.
    Warmest,
    /// Inside volume of the receiver, m³.
    ReceiverVolume,
    /// Share of the receiver's volume that is liquid.
    ReceiverFill,
    /// Inside volume of the liquid line, m³.
    LiquidLineVolume,
    /// Inside volume of the evaporator, m³.
    EvaporatorVolume,
    /// Share of the evaporator that holds superheated vapour.
    SuperheatShare,
    /// Evaporating temperature, K.
    Evaporating,
    /// A charge, kg.
    Charge,
}

pub(crate) fn within(
    input: FloodingInput,
    value: f64,
    low: f64,
    high: f64,
) -> Result<(), FloodingError> {
    if (low..=high).contains(&value) {
        return Ok(());
    }
    Err(FloodingError::OutOfRange {
        input,
        value,
        low,
        high,
    })
}

/// The condenser's design point and how far from it the heat is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surface {
    /// Condensing over ambient temperature at the design point, fans at full speed: 1 to 60 K.
    pub over_ambient: TemperatureInterval,
    /// Heat rejected over that of the design point: 0.01 to 2.
    pub heat_ratio: f64,
}

impl Surface {
    pub(crate) fn check(&self) -> Result<(), FloodingError> {
        let over_ambient = self.over_ambient.get::<kelvin_interval>();
        within(FloodingInput::OverAmbient, over_ambient, 1.0, 60.0)?;
        within(FloodingInput::HeatRatio, self.heat_ratio, 0.01, 2.0)
    }

    /// Share of the surface to be flooded for a condensing temperature to be held at an outdoor temperature,
    /// `1 − r·ΔT₀ / (T_held − T_o)`; 0 where the whole surface does not bring condensing below what is held.
    ///
    /// Held and outdoor temperature: 150 to 450 K.
    ///
    /// # Errors
    /// [`FloodingError::OutOfRange`].
    pub fn flooded_share(
        &self,
        held: ThermodynamicTemperature,
        outdoor: ThermodynamicTemperature,
    ) -> Result<f64, FloodingError> {
        self.check()?;
        temperature(FloodingInput::Condensing, held)?;
        temperature(FloodingInput::Outdoor, outdoor)?;
        let needed = self.heat_ratio * self.over_ambient.get::<kelvin_interval>();
        let there = difference(held, outdoor).get::<kelvin_interval>();
        if there <= needed {
            return Ok(0.0);
        }
        Ok(1.0 - needed / there)
    }

    /// Condensing temperature with a share of the surface flooded, `T_o + r·ΔT₀ / (1 − s)`; the share below 1.
    pub(crate) fn condensing(
        &self,
        outdoor: ThermodynamicTemperature,
        flooded: f64,
    ) -> ThermodynamicTemperature {
        let over = self.over_ambient * self.heat_ratio / (1.0 - flooded);
        outdoor + over
    }
}

pub(crate) fn temperature(
    input: FloodingInput,
    value: ThermodynamicTemperature,
) -> Result<(), FloodingError> {
    within(input, value.get::<kelvin>(), 150.0, 450.0)
}

/// Where the inside volume of a condenser is known from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CondenserVolume {
    /// Entered: 1e-6 to 10 m³.
    Entered(Volume),
    /// From its tubes.
    Tubes {
        /// Inner diameter: 0.3 mm to 0.1 m.
        inner_diameter: Length,
        /// Length of one tube: 0.01 to 1000 m.
        length: Length,
        /// Number of tubes: at least 1.
        count: u32,
    },
    /// Estimated from what it rejects: 0.4 litres a kilowatt at 15 K condensing over ambient, more where the difference is less. Common
    /// practice for round tubes, no published source.
    FromHeat {
        /// Heat rejected at the design point: 1 W to 10 MW.
        heat: Power,
        /// Condensing over ambient temperature at the design point: 1 to 60 K.
        over_ambient: TemperatureInterval,
    },
}

impl CondenserVolume {
    /// The volume, assumed where it was estimated from heat.
    ///
    /// # Errors
    /// [`FloodingError::OutOfRange`].
    pub fn volume(&self) -> Result<Given<Volume>, FloodingError> {
        match *self {
            CondenserVolume::Entered(volume) => {
                let value = volume.get::<cubic_meter>();
                within(FloodingInput::CondenserVolume, value, 1e-6, 10.0)?;
                Ok(Given::entered(volume))
            }
            CondenserVolume::Tubes {
                inner_diameter,
                length,
                count,
            } => {
                let (diameter, each) = (inner_diameter.get::<meter>(), length.get::<meter>());
                within(FloodingInput::TubeDiameter, diameter, 3e-4, 0.1)?;
                within(FloodingInput::TubeLength, each, 0.01, 1000.0)?;
                within(FloodingInput::TubeCount, f64::from(count), 1.0, 1e5)?;
                let section = std::f64::consts::FRAC_PI_4 * inner_diameter * inner_diameter;
                Ok(Given::entered(section * length * f64::from(count)))
            }
            CondenserVolume::FromHeat { heat, over_ambient } => {
                let span = over_ambient.get::<kelvin_interval>();
                within(FloodingInput::Heat, heat.get::<watt>(), 1.0, 1e7)?;
                within(FloodingInput::OverAmbient, span, 1.0, 60.0)?;
                let value = VOLUME_PER_CONDUCTANCE * heat.get::<watt>() / span;
                Ok(Given::assumed(Volume::new::<cubic_meter>(value)))
            }
        }
    }
}

/// How a condenser that is not flooded is shared out between vapour, liquid and both.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Zones {
    /// Share of the volume with vapour alone, where it is desuperheated.
    pub vapor: Given<f64>,
    /// Share of the volume with liquid alone, where it is subcooled.
    pub liquid: Given<f64>,
    /// Void fraction between them.
    pub void_model: VoidModel,
}

/// Least two-phase share of a condenser.
const LEAST_TWO_PHASE: f64 = 0.05;

impl Zones {
    /// A tenth of vapour, a tenth of liquid, Zivi's void fraction. Common practice, no published source for the shares.
    pub fn usual() -> Self {
        Self {
            vapor: Given::assumed(0.1),
            liquid: Given::assumed(0.1),
            void_model: VoidModel::Zivi,
        }
    }

    pub(crate) fn check(&self) -> Result<(), FloodingError> {
        within(FloodingInput::VaporShare, self.vapor.value, 0.0, 1.0)?;
        within(FloodingInput::LiquidShare, self.liquid.value, 0.0, 1.0)?;
        let sum = self.vapor.value + self.liquid.value;
        if sum > 1.0 - LEAST_TWO_PHASE {
            return Err(FloodingError::NoTwoPhaseZone {
                sum,
                least: LEAST_TWO_PHASE,
            });
        }
        Ok(())
    }

    /// Mean density of what the condenser holds at a condensing temperature (dew) when it is not flooded.
    ///
    /// Two phases with a void fraction averaged over quality from 1 to 0, as heat that is given off evenly makes it; vapour as at the dew
    /// point; liquid as at the bubble point. Vapour weighs so little beside liquid that its superheat is left out.
    ///
    /// # Errors
    /// [`FloodingError::OutOfRange`], [`FloodingError::NoTwoPhaseZone`], [`FloodingError::Refrigerant`].
    pub fn mean_density(
        &self,
        refrigerant: &Refrigerant,
        condensing: ThermodynamicTemperature,
    ) -> Result<MassDensity, FloodingError> {
        self.check()?;
        temperature(FloodingInput::Condensing, condensing)?;
        let pressure = refrigerant.dew_pressure(condensing)?;
        let saturation = refrigerant.saturation_at_pressure(pressure)?;
        let (vapor, liquid) = (saturation.dew.density, saturation.bubble.density);
        let void =
            void_fraction::mean(self.void_model, (0.0, 1.0), (vapor / liquid).get::<ratio>());
        let both = vapor * void + liquid * (1.0 - void);
        let two_phase = 1.0 - self.vapor.value - self.liquid.value;
        Ok(vapor * self.vapor.value + liquid * self.liquid.value + both * two_phase)
    }
}

/// What flooding a condenser takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloodingCharge {
    /// Share of the condenser that is flooded.
    pub share: f64,
    /// Density of the liquid in the flooded share.
    pub liquid: MassDensity,
    /// Mean density of what the condenser holds unflooded, at the same pressure.
    pub unflooded: MassDensity,
    /// Charge on top of that of the unflooded system, `V·s·(ρ_liquid − ρ_unflooded)`; never below 0.
    pub extra: Mass,
}

/// The charge that a flooded share takes at a held condensing temperature (dew).
///
/// `liquid_temperature` is that of the flooded liquid: it comes close to the outdoor temperature, which is also the safe side, since the
/// colder the denser. Between 150 and 450 K; held at the bubble point where it is warmer than that.
///
/// # Errors
/// [`FloodingError::OutOfRange`], [`FloodingError::NoTwoPhaseZone`], [`FloodingError::Refrigerant`].
pub fn flooding_charge(
    refrigerant: &Refrigerant,
    volume: Volume,
    zones: &Zones,
    share: f64,
    held: ThermodynamicTemperature,
    liquid_temperature: ThermodynamicTemperature,
) -> Result<FloodingCharge, FloodingError> {
    within(FloodingInput::FloodedShare, share, 0.0, 1.0)?;
    let cubic_meters = volume.get::<cubic_meter>();
    within(FloodingInput::CondenserVolume, cubic_meters, 1e-6, 10.0)?;
    temperature(FloodingInput::LiquidTemperature, liquid_temperature)?;
    let unflooded = zones.mean_density(refrigerant, held)?;
    let pressure = refrigerant.dew_pressure(held)?;
    let bubble = refrigerant.bubble_at_pressure(pressure)?;
    let liquid = if liquid_temperature >= bubble.temperature {
        bubble.density
    } else {
        refrigerant.state(liquid_temperature, pressure)?.density
    };
    Ok(FloodingCharge {
        share,
        liquid,
        unflooded,
        extra: (volume * share * (liquid - unflooded)).max(Mass::default()),
    })
}

/// A receiver against what it has to hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReceiverCheck {
    /// Density of the liquid at the warmest temperature.
    pub liquid: MassDensity,
    /// Volume needed, `m / (0.8·ρ)`. The vapour above the liquid is left out: the safe side, by some per cent at most.
    pub needed: Volume,
    /// How the receiver given compares; `None` without one.
    pub fit: Option<ReceiverFit>,
}

/// Whether a receiver holds what it has to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ReceiverFit {
    /// It does.
    Fits {
        /// Volume to spare.
        spare: Volume,
    },
    /// It does not.
    Short {
        /// Volume that is missing.
        by: Volume,
    },
}

/// Compares a receiver with the charge that it must hold: the flooding charge and all that is pumped down into it, each 0 to 10 t, at the
/// warmest temperature that it may see, such as that of a roof in the sun.
///
/// # Errors
/// [`FloodingError::OutOfRange`]; [`FloodingError::Refrigerant`] where there is no liquid at that temperature.
pub fn receiver_check(
    refrigerant: &Refrigerant,
    flooding: Mass,
    pumpdown: Mass,
    warmest: ThermodynamicTemperature,
    receiver: Option<Volume>,
) -> Result<ReceiverCheck, FloodingError> {
    for charge in [flooding, pumpdown] {
        mass(charge)?;
    }
    check_receiver(receiver)?;
    temperature(FloodingInput::Warmest, warmest)?;
    let liquid = refrigerant.bubble_at_temperature(warmest)?.density;
    let needed: Volume = (flooding + pumpdown) / (liquid * FILL_LIMIT);
    let fit = receiver.map(|there| {
        if there >= needed {
            ReceiverFit::Fits {
                spare: there - needed,
            }
        } else {
            ReceiverFit::Short { by: needed - there }
        }
    });
    Ok(ReceiverCheck {
        liquid,
        needed,
        fit,
    })
}

pub(crate) fn mass(charge: Mass) -> Result<(), FloodingError> {
    within(FloodingInput::Charge, charge.get::<kilogram>(), 0.0, 1e4)
}

fn check_receiver(receiver: Option<Volume>) -> Result<(), FloodingError> {
    receiver.map_or(Ok(()), |there| {
        within(
            FloodingInput::ReceiverVolume,
            there.get::<cubic_meter>(),
            1e-6,
            100.0,
        )
    })
}

/// Where the flooding charge lies on a hot day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Summer {
    /// In the receiver, with room left above the liquid.
    InReceiver {
        /// Share of the receiver's volume that is liquid.
        fill: f64,
    },
    /// In the receiver, but above the fill limit.
    AboveFillLimit {
        /// Share of the receiver's volume that is liquid.
        fill: f64,
        /// Charge above the limit.
        excess: Mass,
    },
    /// It backs up in the condenser, where it takes surface: the overcharge of a system without receiver, or with one too small.
    BacksUp {
        /// Charge that backs up.
        charge: Mass,
        /// Share of the condenser that it floods.
        share: f64,
        /// Condensing temperature that follows.
        condensing: ThermodynamicTemperature,
    },
    /// There is more than the condenser can take and still condense below the critical point: the high-pressure switch trips, or liquid
    /// fills the high side.
    Overfills {
        /// Charge that backs up.
        charge: Mass,
    },
}

/// Where `stored` charge, 0 to 10 t, goes on a hot day: the flooding charge, and what else lies in the receiver then.
///
/// What the receiver does not hold backs up as liquid at the bubble point in the condenser, of which it floods `m / (V·(ρ_liquid −
/// ρ_unflooded))`. Densities are those at the condensing temperature that follows.
///
/// # Errors
/// [`FloodingError::OutOfRange`], [`FloodingError::NoTwoPhaseZone`], [`FloodingError::Refrigerant`].
pub fn summer(
    refrigerant: &Refrigerant,
    condenser: (Volume, &Zones, &Surface),
    outdoor: ThermodynamicTemperature,
    receiver: Option<Volume>,
    stored: Mass,
) -> Result<Summer, FloodingError> {
    let (volume, _, surface) = condenser;
    surface.check()?;
    mass(stored)?;
    check_receiver(receiver)?;
    temperature(FloodingInput::Outdoor, outdoor)?;
    let cubic_meters = volume.get::<cubic_meter>();
    within(FloodingInput::CondenserVolume, cubic_meters, 1e-6, 10.0)?;
    let design = surface.condensing(outdoor, 0.0);
    let held = match receiver {
        None => Mass::default(),
        Some(room) => {
            let liquid = bubble_density(refrigerant, design)?;
            let fill = (stored / (room * liquid)).get::<ratio>();
            if fill <= FILL_LIMIT {
                return Ok(Summer::InReceiver { fill });
            }
            if fill <= 1.0 {
                let excess = stored - room * liquid * FILL_LIMIT;
                return Ok(Summer::AboveFillLimit { fill, excess });
            }
            room * liquid
        }
    };
    backed_up(refrigerant, condenser, outdoor, stored - held)
}

/// Liquid density at the pressure of a condensing temperature (dew).
fn bubble_density(
    refrigerant: &Refrigerant,
    condensing: ThermodynamicTemperature,
) -> Result<MassDensity, Error> {
    let pressure = refrigerant.dew_pressure(condensing)?;
    Ok(refrigerant.bubble_at_pressure(pressure)?.density)
}

/// The share that a charge floods: more share condenses hotter, where liquid is lighter and takes more share still.
fn backed_up(
    refrigerant: &Refrigerant,
    (volume, zones, surface): (Volume, &Zones, &Surface),
    outdoor: ThermodynamicTemperature,
    charge: Mass,
) -> Result<Summer, FloodingError> {
    let surplus = |share: f64| -> Result<f64, FloodingError> {
        let condensing = surface.condensing(outdoor, share);
        let liquid = bubble_density(refrigerant, condensing)?;
        let unflooded = zones.mean_density(refrigerant, condensing)?;
        Ok((volume * share * (liquid - unflooded) - charge).value)
    };
    surplus(0.0)?;
    let most = highest_share(refrigerant, surface, outdoor);
    if most <= 0.0 {
        return Ok(Summer::Overfills { charge });
    }
    // The first share that takes the charge, since the function falls again near the critical point.
    let steps = (1..=STEPS).map(|step| most * f64::from(step) / f64::from(STEPS));
    let mut low = 0.0;
    for high in steps {
        if surplus(high)? >= 0.0 {
            let mut failure = None;
            let share = bracketed(low, high, |share| {
                surplus(share).unwrap_or_else(|error| {
                    failure = Some(error);
                    0.0
                })
            });
            if let Some(error) = failure {
                return Err(error);
            }
            return Ok(Summer::BacksUp {
                charge,
                share,
                condensing: surface.condensing(outdoor, share),
            });
        }
        low = high;
    }
    Ok(Summer::Overfills { charge })
}

const STEPS: u32 = 32;

/// Distance from the critical temperature that condensing keeps, K.
const BELOW_CRITICAL: f64 = 5.0;

/// Highest condensing temperature that is looked at.
pub(crate) fn highest_condensing(refrigerant: &Refrigerant) -> ThermodynamicTemperature {
    refrigerant.critical_point().temperature
        - TemperatureInterval::new::<kelvin_interval>(BELOW_CRITICAL)
}

/// Share of the surface that, flooded, brings condensing to the highest temperature looked at.
pub(crate) fn highest_share(
    refrigerant: &Refrigerant,
    surface: &Surface,
    outdoor: ThermodynamicTemperature,
) -> f64 {
    let room = difference(highest_condensing(refrigerant), outdoor).get::<kelvin_interval>();
    1.0 - surface.heat_ratio * surface.over_ambient.get::<kelvin_interval>() / room.max(1e-3)
}
