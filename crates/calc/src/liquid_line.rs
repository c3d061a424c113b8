//! The liquid line, from the outlet of condenser or receiver to the metering device: what it takes from the pressure, whether the
//! liquid still is liquid at the valve, and how much subcooling it has to start with.
//!
//! Friction follows `Δp = f · (L/D) · ρ·v²/2`, lift `Δp = ρ·g·H`, filter-drier and solenoid valve the square of the mass flow. Density
//! and heat capacity are those at the inlet. Enthalpy stays what it was but for the heat from the surroundings; lift takes 10 J/kg a metre
//! from it, less than 0.01 K, and is left out. Where the liquid flashes on its way the drop of the vapour comes on top, so that
//! pressure and quality at the valve are then the mildest case.
//!
//! Source: Darcy-Weisbach and Colebrook equations; ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter.

use uom::si::acceleration::meter_per_second_squared;
use uom::si::area::square_meter;
use uom::si::dynamic_viscosity::pascal_second;
use uom::si::f64::{
    Acceleration, Area, AvailableEnergy, DynamicViscosity, Length, MassDensity, MassRate, Power,
    Pressure, Ratio, TemperatureInterval, ThermalConductivity, ThermodynamicTemperature, Velocity,
};
use uom::si::length::meter;
use uom::si::mass_rate::kilogram_per_second;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Error, Phase, Refrigerant, State};

use crate::air::difference;
use crate::explain::Given;
use crate::root::bracketed;

/// Reynolds number below which the flow in a pipe stays laminar (Avila et al., Science 333, 2011).
const LAMINAR_LIMIT: f64 = 2040.0;

/// Greatest roughness over diameter of the Moody chart, which the Colebrook equation is drawn for.
const ROUGHEST: f64 = 0.05;

/// Standard gravity, m/s².
const GRAVITY: f64 = 9.80665;

/// Distance from the bubble point within which liquid counts as saturated, K.
const SATURATED_WITHIN: f64 = 1e-3;

/// Furthest below the bubble point that the subcooling needed is looked for, K.
const SUBCOOLING_LIMIT: f64 = 100.0;

/// Roughness of drawn tube, 1.5 µm (Moody 1944).
pub fn usual_roughness() -> Length {
    Length::new::<meter>(1.5e-6)
}

/// Viscosity of liquid refrigerant near 30 °C, 1.5e-4 Pa·s: common halocarbons lie between about 1.0e-4 and 2.0e-4. From memory, no source
/// looked up; see [`Arrival::viscosity_sensitivity`] for what it matters.
pub fn usual_viscosity() -> DynamicViscosity {
    DynamicViscosity::new::<pascal_second>(1.5e-4)
}

/// A part in the line with its drop at a rated flow, such as a filter-drier or a solenoid valve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RatedDrop {
    /// Mass flow that the drop is rated at: above 0 to 100 kg/s.
    pub flow: MassRate,
    /// Pressure difference at that flow: 0 to 1 MPa.
    pub drop: Pressure,
}

/// Heat from the surroundings of the line; negative where they are colder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatGain {
    /// Conductance of each metre of line, surroundings to liquid: 0 to 100 W/(m K).
    pub conductance: ThermalConductivity,
    /// Length of line that is exposed: 0 to 1000 m, without any addition for fittings.
    pub exposed: Length,
    /// Temperature round the line: 150 to 400 K.
    pub surroundings: ThermodynamicTemperature,
}

/// A liquid line and what flows in it.
#[derive(Clone, Debug, PartialEq)]
pub struct LiquidLine {
    /// Absolute pressure at the inlet: 1 kPa to 20 MPa, below the critical pressure.
    pub inlet_pressure: Pressure,
    /// Temperature at the inlet: 100 to 500 K, at or below the bubble point.
    pub inlet_temperature: ThermodynamicTemperature,
    /// Mass flow: 1e-5 to 100 kg/s.
    pub mass_flow: MassRate,
    /// Inner diameter: 1 mm to 0.3 m.
    pub inner_diameter: Length,
    /// Length of straight line that would cause the same friction, fittings included: 0 to 1000 m.
    pub equivalent_length: Length,
    /// Height of the valve above the inlet: -200 to 200 m, negative where the valve lies lower.
    pub lift: Length,
    /// Roughness of the wall: 0 to a twentieth of the diameter; see [`usual_roughness`].
    pub roughness: Given<Length>,
    /// Viscosity of the liquid: 1e-5 to 1e-2 Pa·s; see [`usual_viscosity`].
    pub viscosity: Given<DynamicViscosity>,
    /// Parts with a rated drop.
    pub parts: Vec<RatedDrop>,
    /// Heat from the surroundings; `None` leaves it out.
    pub heat: Option<HeatGain>,
}

/// How the refrigerant flows, and what the line takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drops {
    /// Mean velocity.
    pub velocity: Velocity,
    /// Reynolds number.
    pub reynolds: f64,
    /// Darcy friction factor.
    pub friction_factor: f64,
    /// Drop by friction in tube and fittings.
    pub friction: Pressure,
    /// Drop of the parts with a rated drop.
    pub parts: Pressure,
    /// Drop by lift; negative where the valve lies lower.
    pub lift: Pressure,
    /// Sum of the three.
    pub total: Pressure,
}

/// What the metering device gets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Condition {
    /// Liquid alone.
    Liquid {
        /// How far it lies below the bubble point at the valve.
        subcooling: TemperatureInterval,
    },
    /// Part of it has flashed.
    Flashed {
        /// Vapour by mass.
        quality: Ratio,
    },
}

/// The refrigerant as it arrives at the metering device.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Arrival {
    /// Subcooling at the inlet.
    pub inlet_subcooling: TemperatureInterval,
    /// What the line takes.
    pub drops: Drops,
    /// Pressure at the valve.
    pub pressure: Pressure,
    /// Bubble temperature at that pressure.
    pub bubble: ThermodynamicTemperature,
    /// Temperature at the valve.
    pub temperature: ThermodynamicTemperature,
    /// Heat from the surroundings into each kilogram.
    pub heat: AvailableEnergy,
    /// Liquid, or part vapour.
    pub condition: Condition,
    /// Change of the total drop with the natural logarithm of viscosity, `∂Δp/∂ln µ`: a viscosity 10 % higher adds a tenth of this.
    pub viscosity_sensitivity: Pressure,
}

/// What the line has to start with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Needed {
    /// Highest temperature at the inlet.
    pub temperature: ThermodynamicTemperature,
    /// Least subcooling at the inlet; 0 where saturated liquid arrives with more than is wanted.
    pub subcooling: TemperatureInterval,
}

/// An input of a liquid line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LineInput {
    /// [`LiquidLine::inlet_pressure`], Pa.
    InletPressure,
    /// [`LiquidLine::inlet_temperature`], K.
    InletTemperature,
    /// [`LiquidLine::mass_flow`], kg/s.
    MassFlow,
    /// [`LiquidLine::inner_diameter`], m.
    InnerDiameter,
    /// [`LiquidLine::equivalent_length`], m.
    EquivalentLength,
    /// [`LiquidLine::lift`], m.
    Lift,
    /// [`LiquidLine::roughness`], m.
    Roughness,
    /// [`LiquidLine::viscosity`], Pa·s.
    Viscosity,
    /// [`RatedDrop::flow`], kg/s.
    RatedFlow,
    /// [`RatedDrop::drop`], Pa.
    RatedDrop,
    /// [`HeatGain::conductance`], W/(m K).
    HeatConductance,
    /// [`HeatGain::exposed`], m.
    ExposedLength,
    /// [`HeatGain::surroundings`], K.
    Surroundings,
    /// Subcooling wanted at the valve, K.
    WantedSubcooling,
}

/// What can be wrong with a liquid line.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LineError {
    /// An input outside its range; values in the SI unit named with the input.
    #[error("{input:?} {value} is outside {low} to {high}")]
    OutOfRange {
        /// Which input.
        input: LineInput,
        /// As given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The refrigerant at the inlet is warmer than its bubble point: no liquid line.
    #[error("the inlet at {given:?} is above the bubble point, {bubble:?}")]
    InletNotLiquid {
        /// Temperature as given.
        given: ThermodynamicTemperature,
        /// The highest that would be liquid.
        bubble: ThermodynamicTemperature,
    },
    /// The line would take all the pressure there is: too thin, too long or too high for this flow.
    #[error("a drop of {drop:?} is not less than the inlet pressure, {inlet:?}")]
    DropAbovePressure {
        /// Drop of the line.
        drop: Pressure,
        /// Absolute pressure at the inlet.
        inlet: Pressure,
    },
    /// No inlet temperature gives the subcooling wanted, be it for the drop or for the heat from the surroundings.
    #[error("not even an inlet at {coldest:?} gives the subcooling wanted")]
    NotReached {
        /// The coldest that was tried.
        coldest: ThermodynamicTemperature,
    },
    /// The refrigerant has no such state.
    #[error(transparent)]
    Refrigerant(#[from] Error),
}

/// Reynolds numbers between which the friction factor is asked for.
const SLOWEST: f64 = 1e-6;
const FASTEST: f64 = 1e12;

/// A value within its range; no number at all counts as the low end.
fn held(value: f64, low: f64, high: f64) -> f64 {
    if value >= low { value.min(high) } else { low }
}

/// Darcy friction factor at a Reynolds number from 1e-6 to 1e12 and a roughness over diameter from 0 to 0.05.
///
/// `f = 64/Re` below 2040; from there on the Colebrook equation, `1/√f = −2·lg(ε/(3.7·D) + 2.51/(Re·√f))`. Arguments outside are held at the end of
/// their range.
///
/// Source: Colebrook 1939; Avila et al. 2011 for the limit of laminar flow.
pub fn friction_factor(reynolds: f64, relative_roughness: f64) -> f64 {
    let reynolds = held(reynolds, SLOWEST, FASTEST);
    if reynolds < LAMINAR_LIMIT {
        return 64.0 / reynolds;
    }
    inverse_root(reynolds, relative_roughness).powi(-2)
}

/// How the friction factor goes with the Reynolds number, `d ln f / d ln Re`; arguments as for [`friction_factor`].
pub fn friction_exponent(reynolds: f64, relative_roughness: f64) -> f64 {
    let reynolds = held(reynolds, SLOWEST, FASTEST);
    if reynolds < LAMINAR_LIMIT {
        return -1.0;
    }
    let (rough, smooth) = colebrook_terms(reynolds, relative_roughness);
    let argument = rough + smooth * inverse_root(reynolds, relative_roughness);
    -2.0 * PER_DECADE * smooth / (argument + PER_DECADE * smooth)
}

/// `2 / ln 10`, the factor of the natural logarithm in the Colebrook equation.
const PER_DECADE: f64 = 2.0 / std::f64::consts::LN_10;

fn colebrook_terms(reynolds: f64, relative_roughness: f64) -> (f64, f64) {
    (
        held(relative_roughness, 0.0, ROUGHEST) / 3.7,
        2.51 / reynolds,
    )
}

/// `x = 1/√f` from `x + 2·lg(a + b·x) = 0`.
///
/// The function rises and bends down, and is negative at 1 for every turbulent flow: Newton's steps from there only ever go up to the root.
fn inverse_root(reynolds: f64, relative_roughness: f64) -> f64 {
    let (rough, smooth) = colebrook_terms(reynolds, relative_roughness);
    let mut x = 1.0;
    for _ in 0..50 {
        let argument = rough + smooth * x;
        let step = -(x + PER_DECADE * argument.ln()) / (1.0 + PER_DECADE * smooth / argument);
        x += step;
        if step.abs() <= 4.0 * f64::EPSILON * x {
            break;
        }
    }
    x
}

/// Mass flow that a cooling capacity takes, `ṁ = Q₀ / (h_dew(T_e) − h(T, p))`, from liquid at an absolute pressure and a temperature at or
/// below the bubble point to saturated vapour at an evaporating temperature (dew). Superheat in the evaporator would lower it by some per
/// cent and is left out. Capacity: above 0.
///
/// Source: first law on the evaporator.
///
/// # Errors
/// [`LineError::InletNotLiquid`]; [`LineError::OutOfRange`] where the flow would not lie between 1e-5 and 100 kg/s;
/// [`LineError::Refrigerant`].
pub fn mass_flow(
    refrigerant: &Refrigerant,
    cooling: Power,
    evaporating: ThermodynamicTemperature,
    (pressure, temperature): (Pressure, ThermodynamicTemperature),
) -> Result<MassRate, LineError> {
    let bubble = refrigerant.bubble_temperature(pressure)?;
    if difference(temperature, bubble).get::<kelvin_interval>() > SATURATED_WITHIN {
        return Err(LineError::InletNotLiquid {
            given: temperature,
            bubble,
        });
    }
    let inlet = liquid(refrigerant, temperature, bubble, pressure)?;
    let outlet = refrigerant.dew_at_temperature(evaporating)?;
    let flow: MassRate = cooling / (outlet.enthalpy - inlet.enthalpy);
    let value = flow.get::<kilogram_per_second>();
    within(LineInput::MassFlow, value, 1e-5, 100.0)?;
    Ok(flow)
}

impl LiquidLine {
    /// How the refrigerant arrives at the metering device.
    ///
    /// # Errors
    /// [`LineError`], all but [`NotReached`](LineError::NotReached).
    pub fn arrival(&self, refrigerant: &Refrigerant) -> Result<Arrival, LineError> {
        self.check()?;
        let inlet_temperature = self.inlet_temperature.get::<kelvin>();
        within(LineInput::InletTemperature, inlet_temperature, 100.0, 500.0)?;
        let inlet = self.inlet(refrigerant, self.inlet_temperature)?;
        let drops = self.drops(inlet.density);
        let pressure = self.outlet_pressure(&drops)?;
        let bubble = refrigerant.bubble_temperature(pressure)?;
        let heat = self.heat_gained(&inlet);
        let state = refrigerant.state_at_pressure_enthalpy(pressure, inlet.enthalpy + heat)?;
        let condition = match (state.phase, state.quality) {
            (Phase::TwoPhase, Some(quality)) => Condition::Flashed { quality },
            (Phase::Vapor, _) => Condition::Flashed {
                quality: Ratio::new::<ratio>(1.0),
            },
            _ => Condition::Liquid {
                subcooling: not_negative(difference(bubble, state.temperature)),
            },
        };
        let inlet_bubble = refrigerant.bubble_temperature(self.inlet_pressure)?;
        let exponent = friction_exponent(drops.reynolds, self.relative_roughness());
        Ok(Arrival {
            inlet_subcooling: not_negative(difference(inlet_bubble, self.inlet_temperature)),
            drops,
            pressure,
            bubble,
            temperature: state.temperature,
            heat,
            condition,
            viscosity_sensitivity: drops.friction * -exponent,
        })
    }

    /// What the line has to start with, at its inlet pressure, for the valve to get the subcooling wanted, 0 to 50 K. The line's own
    /// inlet temperature does not matter.
    ///
    /// # Errors
    /// [`LineError`], all but [`InletNotLiquid`](LineError::InletNotLiquid).
    pub fn subcooling_needed(
        &self,
        refrigerant: &Refrigerant,
        wanted: TemperatureInterval,
    ) -> Result<Needed, LineError> {
        self.check()?;
        let span = wanted.get::<kelvin_interval>();
        within(LineInput::WantedSubcooling, span, 0.0, 50.0)?;
        let bubble = refrigerant.bubble_temperature(self.inlet_pressure)?;
        let low = refrigerant.temperature_range().0.get::<kelvin>() + 1.0;
        let coldest = low.max(bubble.get::<kelvin>() - SUBCOOLING_LIMIT);
        let spare = |temperature: f64| self.spare(refrigerant, wanted, temperature);
        let needed = |temperature: f64| Needed {
            temperature: ThermodynamicTemperature::new::<kelvin>(temperature),
            subcooling: not_negative(TemperatureInterval::new::<kelvin_interval>(
                bubble.get::<kelvin>() - temperature,
            )),
        };
        if spare(bubble.get::<kelvin>())? >= 0.0 {
            return Ok(needed(bubble.get::<kelvin>()));
        }
        if coldest >= bubble.get::<kelvin>() || spare(coldest)? < 0.0 {
            return Err(LineError::NotReached {
                coldest: ThermodynamicTemperature::new::<kelvin>(coldest),
            });
        }
        let mut failure = None;
        let root = bracketed(coldest, bubble.get::<kelvin>(), |temperature| {
            spare(temperature).unwrap_or_else(|error| {
                failure = Some(error);
                0.0
            })
        });
        failure.map_or_else(|| Ok(needed(root)), Err)
    }

    /// Enthalpy of liquid with the subcooling wanted at the valve less that of what arrives, J/kg. Enthalpy, since it goes on rising with
    /// the inlet temperature where the liquid flashes.
    fn spare(
        &self,
        refrigerant: &Refrigerant,
        wanted: TemperatureInterval,
        inlet_temperature: f64,
    ) -> Result<f64, LineError> {
        let temperature = ThermodynamicTemperature::new::<kelvin>(inlet_temperature);
        let inlet = self.inlet(refrigerant, temperature)?;
        let pressure = self.outlet_pressure(&self.drops(inlet.density))?;
        let bubble = refrigerant.bubble_temperature(pressure)?;
        let wanted = liquid(refrigerant, bubble - wanted, bubble, pressure)?;
        Ok((wanted.enthalpy - inlet.enthalpy - self.heat_gained(&inlet)).value)
    }

    fn inlet(
        &self,
        refrigerant: &Refrigerant,
        temperature: ThermodynamicTemperature,
    ) -> Result<State, LineError> {
        let bubble = refrigerant.bubble_temperature(self.inlet_pressure)?;
        if difference(temperature, bubble).get::<kelvin_interval>() > SATURATED_WITHIN {
            return Err(LineError::InletNotLiquid {
                given: temperature,
                bubble,
            });
        }
        Ok(liquid(
            refrigerant,
            temperature,
            bubble,
            self.inlet_pressure,
        )?)
    }

    fn relative_roughness(&self) -> f64 {
        (self.roughness.value / self.inner_diameter).get::<ratio>()
    }

    fn drops(&self, density: MassDensity) -> Drops {
        let diameter = self.inner_diameter.get::<meter>();
        let section = Area::new::<square_meter>(std::f64::consts::FRAC_PI_4 * diameter * diameter);
        let velocity: Velocity = self.mass_flow / (density * section);
        let reynolds = (self.mass_flow * self.inner_diameter / (section * self.viscosity.value))
            .get::<ratio>();
        let factor = friction_factor(reynolds, self.relative_roughness());
        let head: Pressure = density * velocity * velocity / 2.0;
        let friction = head * factor * (self.equivalent_length / self.inner_diameter);
        let gravity = Acceleration::new::<meter_per_second_squared>(GRAVITY);
        let lift: Pressure = density * gravity * self.lift;
        let parts = self
            .parts
            .iter()
            .map(|part| part.drop * (self.mass_flow / part.flow).get::<ratio>().powi(2))
            .sum::<Pressure>();
        Drops {
            velocity,
            reynolds,
            friction_factor: factor,
            friction,
            parts,
            lift,
            total: friction + parts + lift,
        }
    }

    fn outlet_pressure(&self, drops: &Drops) -> Result<Pressure, LineError> {
        let pressure = self.inlet_pressure - drops.total;
        if pressure.get::<pascal>() > 0.0 {
            return Ok(pressure);
        }
        Err(LineError::DropAbovePressure {
            drop: drops.total,
            inlet: self.inlet_pressure,
        })
    }

    /// `q = c·(T_s − T)·(1 − exp(−U′·L/(ṁ·c)))`, a stream of constant heat capacity along surroundings of constant temperature.
    fn heat_gained(&self, inlet: &State) -> AvailableEnergy {
        let (Some(heat), Some(capacity)) = (self.heat, inlet.heat_capacity) else {
            return AvailableEnergy::default();
        };
        let units = (heat.conductance * heat.exposed / (self.mass_flow * capacity)).get::<ratio>();
        capacity * difference(heat.surroundings, inlet.temperature) * -(-units).exp_m1()
    }

    fn check(&self) -> Result<(), LineError> {
        let diameter = self.inner_diameter.get::<meter>();
        let flow =
            |input, flow: MassRate| within(input, flow.get::<kilogram_per_second>(), 1e-5, 100.0);
        let length = |input, length: Length, low| within(input, length.get::<meter>(), low, 1000.0);
        let inlet = self.inlet_pressure.get::<pascal>();
        within(LineInput::InletPressure, inlet, 1e3, 2e7)?;
        flow(LineInput::MassFlow, self.mass_flow)?;
        within(LineInput::InnerDiameter, diameter, 1e-3, 0.3)?;
        length(LineInput::EquivalentLength, self.equivalent_length, 0.0)?;
        within(LineInput::Lift, self.lift.get::<meter>(), -200.0, 200.0)?;
        within(
            LineInput::Roughness,
            self.roughness.value.get::<meter>(),
            0.0,
            ROUGHEST * diameter,
        )?;
        within(
            LineInput::Viscosity,
            self.viscosity.value.get::<pascal_second>(),
            1e-5,
            1e-2,
        )?;
        for part in &self.parts {
            flow(LineInput::RatedFlow, part.flow)?;
            within(LineInput::RatedDrop, part.drop.get::<pascal>(), 0.0, 1e6)?;
        }
        let Some(heat) = self.heat else {
            return Ok(());
        };
        within(
            LineInput::HeatConductance,
            heat.conductance.get::<watt_per_meter_kelvin>(),
            0.0,
            100.0,
        )?;
        length(LineInput::ExposedLength, heat.exposed, 0.0)?;
        within(
            LineInput::Surroundings,
            heat.surroundings.get::<kelvin>(),
            150.0,
            400.0,
        )
    }
}

/// Liquid at or below the bubble point; at it, a state by temperature and pressure would not tell liquid from vapour.
fn liquid(
    refrigerant: &Refrigerant,
    temperature: ThermodynamicTemperature,
    bubble: ThermodynamicTemperature,
    pressure: Pressure,
) -> Result<State, Error> {
    if difference(bubble, temperature).get::<kelvin_interval>() <= SATURATED_WITHIN {
        refrigerant.bubble_at_pressure(pressure)
    } else {
        refrigerant.state(temperature, pressure)
    }
}

fn not_negative(difference: TemperatureInterval) -> TemperatureInterval {
    difference.max(TemperatureInterval::default())
}

fn within(input: LineInput, value: f64, low: f64, high: f64) -> Result<(), LineError> {
    if (low..=high).contains(&value) {
        return Ok(());
    }
    Err(LineError::OutOfRange {
        input,
        value,
        low,
        high,
    })
}

#[cfg(test)]
mod tests {
    use uom::si::thermodynamic_temperature::degree_celsius;

    use super::*;

    fn r134a() -> Refrigerant {
        Refrigerant::named("R-134a").unwrap()
    }

    fn line(refrigerant: &Refrigerant, subcooling: f64, lift: f64) -> LiquidLine {
        let condensing = ThermodynamicTemperature::new::<degree_celsius>(35.0);
        LiquidLine {
            inlet_pressure: refrigerant.bubble_pressure(condensing).unwrap(),
            inlet_temperature: condensing - TemperatureInterval::new::<kelvin_interval>(subcooling),
            mass_flow: MassRate::new::<kilogram_per_second>(0.06),
            inner_diameter: Length::new::<meter>(0.0104),
            equivalent_length: Length::new::<meter>(25.0),
            lift: Length::new::<meter>(lift),
            roughness: Given::assumed(usual_roughness()),
            viscosity: Given::assumed(usual_viscosity()),
            parts: vec![RatedDrop {
                flow: MassRate::new::<kilogram_per_second>(0.08),
                drop: Pressure::new::<pascal>(14_000.0),
            }],
            heat: None,
        }
    }

    #[test]
    fn the_flow_for_a_capacity_follows_from_the_enthalpies() {
        // CoolProp 8.0.0: 10 kW over h(dew) − h(liquid) of 149.6274 and 258.0142 kJ/kg.
        for (name, evaporating, bar, liquid, wanted) in [
            ("R-134a", 0.0, 12.0, 35.0, 0.066_832_677),
            ("R-32", -10.0, 25.0, 30.0, 0.038_757_550),
        ] {
            let celsius = ThermodynamicTemperature::new::<degree_celsius>;
            let flow = mass_flow(
                &Refrigerant::named(name).unwrap(),
                Power::new::<uom::si::power::kilowatt>(10.0),
                celsius(evaporating),
                (Pressure::new::<pascal>(bar * 1e5), celsius(liquid)),
            );
            let flow = flow.unwrap().get::<kilogram_per_second>();
            assert!((flow / wanted - 1.0).abs() < 1e-5, "{name}: {flow}");
        }
        let vapor = mass_flow(
            &r134a(),
            Power::new::<uom::si::power::kilowatt>(10.0),
            ThermodynamicTemperature::new::<degree_celsius>(0.0),
            (
                Pressure::new::<pascal>(1e6),
                ThermodynamicTemperature::new::<degree_celsius>(60.0),
            ),
        );
        assert!(matches!(vapor, Err(LineError::InletNotLiquid { .. })));
    }

    #[test]
    fn saturated_liquid_flashes_when_it_is_lifted_and_not_when_it_falls() {
        let refrigerant = r134a();
        let up = line(&refrigerant, 0.0, 8.0).arrival(&refrigerant).unwrap();
        assert!(
            matches!(up.condition, Condition::Flashed { quality } if quality.get::<ratio>() > 0.0)
        );
        let mut down = line(&refrigerant, 0.0, -20.0);
        down.parts.clear();
        let arrives = down.arrival(&refrigerant).unwrap();
        assert!(matches!(arrives.condition, Condition::Liquid { .. }));
        let none = down
            .subcooling_needed(&refrigerant, TemperatureInterval::default())
            .unwrap();
        assert_eq!(none.subcooling, TemperatureInterval::default());
    }

    #[test]
    fn a_rated_part_follows_the_square_of_the_flow() {
        let refrigerant = r134a();
        let drops = line(&refrigerant, 5.0, 0.0)
            .arrival(&refrigerant)
            .unwrap()
            .drops;
        assert!((drops.parts.get::<pascal>() - 14_000.0 * 0.5625).abs() < 1e-6);
        assert_eq!(drops.lift, Pressure::default());
    }

    #[test]
    fn the_subcooling_needed_gives_the_subcooling_wanted() {
        let wanted = TemperatureInterval::new::<kelvin_interval>(3.0);
        for name in ["R-134a", "R-454B", "R-448A"] {
            let refrigerant = Refrigerant::named(name).unwrap();
            for (lift, conductance) in [(-5.0, 0.0), (0.0, 0.3), (12.0, 0.8)] {
                let mut line = line(&refrigerant, 0.0, lift);
                line.heat = Some(HeatGain {
                    conductance: ThermalConductivity::new::<watt_per_meter_kelvin>(conductance),
                    exposed: Length::new::<meter>(20.0),
                    surroundings: ThermodynamicTemperature::new::<degree_celsius>(45.0),
                });
                let needed = line.subcooling_needed(&refrigerant, wanted).unwrap();
                line.inlet_temperature = needed.temperature;
                let arrival = line.arrival(&refrigerant).unwrap();
                let Condition::Liquid { subcooling } = arrival.condition else {
                    panic!("{name}: {arrival:?}");
                };
                assert!(
                    (subcooling - wanted).value.abs() < 1e-6,
                    "{name}: {subcooling:?}"
                );
                assert_eq!(arrival.inlet_subcooling, needed.subcooling);
            }
        }
    }

    #[test]
    fn heat_reaches_saturated_liquid_too() {
        let refrigerant = r134a();
        let mut warmed = line(&refrigerant, 0.0, -20.0);
        warmed.heat = Some(HeatGain {
            conductance: ThermalConductivity::new::<watt_per_meter_kelvin>(0.5),
            exposed: Length::new::<meter>(20.0),
            surroundings: ThermodynamicTemperature::new::<degree_celsius>(45.0),
        });
        assert!(warmed.arrival(&refrigerant).unwrap().heat > AvailableEnergy::default());
    }

    #[test]
    fn the_sensitivity_is_the_slope_of_the_drop() {
        let refrigerant = r134a();
        let at = |factor: f64| {
            let mut line = line(&refrigerant, 5.0, 3.0);
            line.viscosity = Given::entered(usual_viscosity() * factor);
            line.arrival(&refrigerant).unwrap()
        };
        let step = 1e-4_f64;
        let slope = (at(step.exp()).drops.total - at((-step).exp()).drops.total) / (2.0 * step);
        let said = at(1.0).viscosity_sensitivity;
        assert!((slope / said).get::<ratio>() - 1.0 < 1e-6);
        assert!((said / slope).get::<ratio>() - 1.0 < 1e-6);
        assert!(said > Pressure::default());
    }

    #[test]
    fn what_cannot_be_is_said_so() {
        let refrigerant = r134a();
        let usual = line(&refrigerant, 5.0, 0.0);
        let warm = line(&refrigerant, -2.0, 0.0);
        assert!(matches!(
            warm.arrival(&refrigerant),
            Err(LineError::InletNotLiquid { .. })
        ));
        let thin = LiquidLine {
            inner_diameter: Length::new::<meter>(0.002),
            ..usual.clone()
        };
        assert!(matches!(
            thin.arrival(&refrigerant),
            Err(LineError::DropAbovePressure { .. })
        ));
        let mut hot = usual.clone();
        hot.heat = Some(HeatGain {
            conductance: ThermalConductivity::new::<watt_per_meter_kelvin>(50.0),
            exposed: Length::new::<meter>(50.0),
            surroundings: ThermodynamicTemperature::new::<degree_celsius>(50.0),
        });
        assert!(matches!(
            hot.subcooling_needed(
                &refrigerant,
                TemperatureInterval::new::<kelvin_interval>(2.0)
            ),
            Err(LineError::NotReached { .. })
        ));
        for wrong in [f64::NAN, -1.0, 0.0, f64::INFINITY] {
            let none = LiquidLine {
                mass_flow: MassRate::new::<kilogram_per_second>(wrong),
                ..usual.clone()
            };
            assert!(matches!(
                none.arrival(&refrigerant),
                Err(LineError::OutOfRange {
                    input: LineInput::MassFlow,
                    ..
                })
            ));
        }
        let nowhere = LiquidLine {
            inlet_temperature: ThermodynamicTemperature::new::<kelvin>(f64::NAN),
            ..usual
        };
        assert!(matches!(
            nowhere.arrival(&refrigerant),
            Err(LineError::OutOfRange {
                input: LineInput::InletTemperature,
                ..
            })
        ));
    }
}
