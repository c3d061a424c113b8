//! What charge a circuit holds, and how far a fixed charge floods the condenser of a circuit with no receiver to take up what is over.
//!
//! Each part holds its volume times the density of what lies in it. More charge lies as liquid in the condenser, takes surface from
//! condensing, raises the condensing temperature and subcools the liquid further, all by the outdoor temperature: what is sought is the
//! flooded share at which the parts add up to the charge. Fans run at full speed and nothing holds the pressure.
//!
//! The liquid in the condenser cools towards the outdoor air as in a heat exchanger with the same conductance for each share of the
//! surface as the condensing part, since the air side decides: `T = T_o + (T_bubble − T_o)·exp(−NTU)`, with
//! `NTU = l·q / ((1 − l₀)·r·ΔT₀·c)` of a liquid share `l`, `l₀` at the design point, and `q` given off by each kilogram before it. This puts
//! subcooling on the high side.
//!
//! Source: conservation of mass; Kays & London, effectiveness-NTU; void fraction as in [`crate::void_fraction`].

use uom::si::f64::{
    AvailableEnergy, Mass, MassDensity, TemperatureInterval, ThermodynamicTemperature, Volume,
};
use uom::si::ratio::ratio;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::volume::cubic_meter;
use winterset_refrigerant::{Error, Phase, Refrigerant, State};

use crate::air::difference;
use crate::cycle::{ISENTROPIC_EFFICIENCY, Suction};
use crate::explain::Given;
use crate::flooding::{
    FloodingError, FloodingInput, Surface, Zones, highest_condensing, highest_share, mass,
    temperature, within,
};
use crate::root::bracketed;
use crate::void_fraction;

/// Least condensing over evaporating temperature that is looked at, K.
const LEAST_LIFT: f64 = 2.0;

/// A receiver and what lies in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReceiverContent {
    /// Inside volume: 1e-6 to 100 m³.
    pub volume: Volume,
    /// Share of the volume that is liquid: 0 to 1.
    pub fill: f64,
}

/// The parts of a circuit that hold charge; what lies in suction line, compressor and oil is left out.
#[derive(Clone, Debug)]
pub struct Circuit {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// Inside volume of the condenser: 1e-6 to 10 m³.
    pub condenser: Volume,
    /// How the condenser is shared out at the design point.
    pub zones: Zones,
    /// The condenser's design point, and the heat over that of the design point.
    pub surface: Surface,
    /// Inside volume of the liquid line: 0 to 1 m³.
    pub liquid_line: Volume,
    /// The receiver, if there is one, with its level held fixed.
    pub receiver: Option<ReceiverContent>,
    /// Inside volume of the evaporator: 0 to 10 m³.
    pub evaporator: Volume,
    /// Share of the evaporator that holds superheated vapour: 0 to 0.9.
    pub superheat_share: Given<f64>,
    /// Evaporating temperature (dew).
    pub evaporating: ThermodynamicTemperature,
}

/// Share of the evaporator with superheated vapour under a valve that holds superheat. Common practice, no published source.
pub fn usual_superheat_share() -> f64 {
    0.1
}

/// Charge by part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Charge {
    /// In the condenser.
    pub condenser: Mass,
    /// In the liquid line.
    pub liquid_line: Mass,
    /// In the receiver.
    pub receiver: Mass,
    /// In the evaporator.
    pub evaporator: Mass,
}

impl Charge {
    /// All parts together.
    pub fn total(&self) -> Mass {
        self.condenser + self.liquid_line + self.receiver + self.evaporator
    }
}

/// A circuit at one outdoor temperature with one share of the condenser flooded.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    /// Share of the design point's condensing surface that liquid takes up: 0 at the design point, negative where there is less liquid than
    /// there.
    pub flooded: f64,
    /// Share of the whole condenser that is liquid alone.
    pub liquid_share: f64,
    /// Condensing temperature (dew).
    pub condensing: ThermodynamicTemperature,
    /// Temperature of the liquid as it leaves the condenser.
    pub leaving: ThermodynamicTemperature,
    /// How far that lies below the bubble point.
    pub subcooling: TemperatureInterval,
    /// Charge by part.
    pub charge: Charge,
}

impl Circuit {
    /// The circuit with a share of the design point's condensing surface flooded, from -l₀/(1 − l₀), with no liquid at all in the condenser,
    /// to below 1.
    ///
    /// # Errors
    /// [`FloodingError::OutOfRange`], [`FloodingError::NoTwoPhaseZone`], [`FloodingError::Refrigerant`].
    pub fn balance(
        &self,
        outdoor: ThermodynamicTemperature,
        flooded: f64,
    ) -> Result<Balance, FloodingError> {
        self.check()?;
        temperature(FloodingInput::Outdoor, outdoor)?;
        let least = self.no_liquid();
        within(FloodingInput::FloodedShare, flooded, least, 1.0 - 1e-6)?;
        let condensing = self.surface.condensing(outdoor, flooded);
        temperature(FloodingInput::Condensing, condensing)?;
        Ok(self.held(outdoor, flooded, condensing)?)
    }

    /// How far a fixed charge, 0 to 10 t, floods the condenser, and what condensing temperature and subcooling follow.
    ///
    /// # Errors
    /// As for [`balance`](Circuit::balance); [`FloodingError::TooLittleCharge`], [`FloodingError::TooMuchCharge`].
    pub fn flooded_share_for_charge(
        &self,
        total: Mass,
        outdoor: ThermodynamicTemperature,
    ) -> Result<Balance, FloodingError> {
        self.check()?;
        mass(total)?;
        temperature(FloodingInput::Outdoor, outdoor)?;
        let most = highest_share(&self.refrigerant, &self.surface, outdoor).max(self.no_liquid());
        let least = self.least_share(outdoor).min(most);
        let over = |flooded: f64| -> Result<f64, FloodingError> {
            Ok((self.balance(outdoor, flooded)?.charge.total() - total).value)
        };
        let lowest = self.balance(outdoor, least)?;
        if lowest.charge.total() > total {
            return Err(FloodingError::TooLittleCharge {
                least: lowest.charge.total(),
            });
        }
        let fullest = self.balance(outdoor, most)?;
        if fullest.charge.total() < total {
            return Err(FloodingError::TooMuchCharge {
                most: fullest.charge.total(),
                highest: highest_condensing(&self.refrigerant),
            });
        }
        let mut failure = None;
        let root = bracketed(least, most, |flooded| {
            over(flooded).unwrap_or_else(|error| {
                failure = Some(error);
                0.0
            })
        });
        failure.map_or_else(|| self.balance(outdoor, root), Err)
    }

    /// Flooded share with no liquid at all in the condenser.
    fn no_liquid(&self) -> f64 {
        1.0 - 1.0 / (1.0 - self.zones.liquid.value)
    }

    /// Least flooded share that brings condensing above evaporating.
    fn least_share(&self, outdoor: ThermodynamicTemperature) -> f64 {
        let room = difference(self.evaporating, outdoor).get::<kelvin_interval>() + LEAST_LIFT;
        let needed = self.surface.heat_ratio * self.surface.over_ambient.get::<kelvin_interval>();
        if room <= needed * (1.0 - self.zones.liquid.value) {
            return self.no_liquid();
        }
        (1.0 - needed / room).max(self.no_liquid())
    }

    fn held(
        &self,
        outdoor: ThermodynamicTemperature,
        flooded: f64,
        condensing: ThermodynamicTemperature,
    ) -> Result<Balance, Error> {
        let zone = LiquidZone::of(self, outdoor, flooded, condensing)?;
        let dew = self.refrigerant.dew_at_pressure(zone.bubble.pressure)?;
        let active = (1.0 - zone.share) / (1.0 - self.zones.liquid.value);
        let two_phase = 1.0 - self.zones.vapor.value - self.zones.liquid.value;
        let both = self.two_phase_density(0.0, zone.bubble.density, dew.density);
        let vapor = dew.density * self.zones.vapor.value;
        let condenser =
            self.condenser * (zone.mean_density * zone.share + (vapor + both * two_phase) * active);
        let receiver = self.receiver.map_or(Mass::default(), |receiver| {
            receiver.volume
                * (zone.leaving.density * receiver.fill + dew.density * (1.0 - receiver.fill))
        });
        Ok(Balance {
            flooded,
            liquid_share: zone.share,
            condensing,
            leaving: zone.leaving.temperature,
            subcooling: difference(zone.bubble.temperature, zone.leaving.temperature),
            charge: Charge {
                condenser,
                liquid_line: self.liquid_line * zone.leaving.density,
                receiver,
                evaporator: self.in_evaporator(zone.leaving.enthalpy)?,
            },
        })
    }

    fn two_phase_density(
        &self,
        from_quality: f64,
        liquid: MassDensity,
        vapor: MassDensity,
    ) -> MassDensity {
        let densities = (vapor / liquid).get::<ratio>();
        let void = void_fraction::mean(self.zones.void_model, (from_quality, 1.0), densities);
        vapor * void + liquid * (1.0 - void)
    }

    /// Two phases from the quality behind the valve to vapour, and vapour as at the dew point.
    fn in_evaporator(&self, enthalpy: AvailableEnergy) -> Result<Mass, Error> {
        let pressure = self.refrigerant.dew_pressure(self.evaporating)?;
        let saturation = self.refrigerant.saturation_at_pressure(pressure)?;
        let expanded = self
            .refrigerant
            .state_at_pressure_enthalpy(pressure, enthalpy)?;
        let quality = match expanded.phase {
            Phase::Liquid => 0.0,
            _ => expanded.quality.map_or(1.0, |share| share.get::<ratio>()),
        };
        let (liquid, vapor) = (saturation.bubble.density, saturation.dew.density);
        let both = self.two_phase_density(quality, liquid, vapor);
        let superheated = self.superheat_share.value;
        Ok(self.evaporator * (both * (1.0 - superheated) + vapor * superheated))
    }

    fn check(&self) -> Result<(), FloodingError> {
        let volume = |input, volume: Volume, low, high| {
            within(input, volume.get::<cubic_meter>(), low, high)
        };
        self.zones.check()?;
        self.surface.check()?;
        volume(FloodingInput::CondenserVolume, self.condenser, 1e-6, 10.0)?;
        volume(FloodingInput::LiquidLineVolume, self.liquid_line, 0.0, 1.0)?;
        volume(FloodingInput::EvaporatorVolume, self.evaporator, 0.0, 10.0)?;
        let superheated = self.superheat_share.value;
        within(FloodingInput::SuperheatShare, superheated, 0.0, 0.9)?;
        temperature(FloodingInput::Evaporating, self.evaporating)?;
        let Some(receiver) = self.receiver else {
            return Ok(());
        };
        volume(FloodingInput::ReceiverVolume, receiver.volume, 1e-6, 100.0)?;
        within(FloodingInput::ReceiverFill, receiver.fill, 0.0, 1.0)
    }
}

/// The part of the condenser with liquid alone.
struct LiquidZone {
    share: f64,
    bubble: State,
    leaving: State,
    mean_density: MassDensity,
}

impl LiquidZone {
    fn of(
        circuit: &Circuit,
        outdoor: ThermodynamicTemperature,
        flooded: f64,
        condensing: ThermodynamicTemperature,
    ) -> Result<Self, Error> {
        let refrigerant = &circuit.refrigerant;
        let pressure = refrigerant.dew_pressure(condensing)?;
        let bubble = refrigerant.bubble_at_pressure(pressure)?;
        let at_design = circuit.zones.liquid.value;
        let share = (1.0 - (1.0 - flooded) * (1.0 - at_design)).max(0.0);
        let over = difference(bubble.temperature, outdoor).get::<kelvin_interval>();
        let Some(capacity) = bubble.heat_capacity.filter(|_| share > 0.0 && over > 0.0) else {
            return Ok(Self {
                share,
                bubble,
                leaving: bubble,
                mean_density: bubble.density,
            });
        };
        let suction = Suction::new(refrigerant, circuit.evaporating)?;
        let compressed = refrigerant.state_at_pressure_entropy(pressure, suction.state.entropy)?;
        let work = (compressed.enthalpy - suction.state.enthalpy) / ISENTROPIC_EFFICIENCY;
        let given_off = suction.state.enthalpy + work - bubble.enthalpy;
        let driving = circuit.surface.over_ambient * circuit.surface.heat_ratio;
        let units = share * (given_off / (capacity * driving)).get::<ratio>() / (1.0 - at_design);
        let cooled = |left: f64| {
            let there = outdoor.get::<kelvin>() + over * left;
            liquid(refrigerant, there, &bubble)
        };
        let mean = if units > 0.0 {
            -(-units).exp_m1() / units
        } else {
            1.0
        };
        Ok(Self {
            share,
            bubble,
            leaving: cooled((-units).exp())?,
            mean_density: cooled(mean)?.density,
        })
    }
}

/// Liquid at the pressure of a bubble point, at a temperature at or below it. Next to the bubble point, a state by temperature and pressure
/// would not tell liquid from vapour.
fn liquid(refrigerant: &Refrigerant, temperature: f64, bubble: &State) -> Result<State, Error> {
    const SATURATED_WITHIN: f64 = 1e-6;
    if bubble.temperature.get::<kelvin>() - temperature <= SATURATED_WITHIN {
        return Ok(*bubble);
    }
    refrigerant.state(
        ThermodynamicTemperature::new::<kelvin>(temperature),
        bubble.pressure,
    )
}
