//! Where a value comes from: its basis, the rule that made it and the terms that went in.

use uom::si::f64::{
    Angle, AngularVelocity, ElectricCurrent, ElectricPotential, Frequency, Length, MassDensity,
    MassRate, Power, Pressure, TemperatureInterval, ThermalConductance, ThermodynamicTemperature,
    Time, VolumeRate,
};

/// How a value came to be known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Basis {
    /// Nobody said; a usual value stands in.
    Assumed,
    /// A person entered it.
    Entered,
    /// Derived from other values by a [`Rule`].
    Computed,
}

/// An input value with its basis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Given<T> {
    /// The value.
    pub value: T,
    /// Entered or assumed.
    pub basis: Basis,
}

impl<T> Given<T> {
    /// A value that a person entered.
    pub fn entered(value: T) -> Self {
        Self {
            value,
            basis: Basis::Entered,
        }
    }

    /// A usual value that stands in for an answer.
    pub fn assumed(value: T) -> Self {
        Self {
            value,
            basis: Basis::Assumed,
        }
    }

    /// The entered value where there is one, else the usual one.
    pub fn or_assume(entered: Option<T>, usual: T) -> Self {
        entered.map_or_else(|| Self::assumed(usual), Self::entered)
    }
}

/// Any value that a plan shows, typed so that the edge can choose its unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Quantity {
    /// A point on the temperature scale.
    Temperature(ThermodynamicTemperature),
    /// A difference between two temperatures.
    Difference(TemperatureInterval),
    /// An absolute pressure; the edge may show it as gauge.
    Pressure(Pressure),
    /// A difference between two pressures, never shown as gauge.
    PressureDifference(Pressure),
    /// Heat flow or power.
    Power(Power),
    /// Volume flow of air.
    Airflow(VolumeRate),
    /// Heat per kelvin: a conductance or a capacity rate.
    Conductance(ThermalConductance),
    /// A share of one.
    Ratio(f64),
    /// Height above sea level, or the length of a line.
    Elevation(Length),
    /// Inside diameter of a pipe, or the diameter of a fan.
    Bore(Length),
    /// Electric current.
    Current(ElectricCurrent),
    /// Density of air.
    Density(MassDensity),
    /// Electric potential, r.m.s. unless said otherwise.
    Voltage(ElectricPotential),
    /// Supply frequency.
    Frequency(Frequency),
    /// Speed of a shaft.
    Speed(AngularVelocity),
    /// An angle.
    Angle(Angle),
    /// A span of time.
    Time(Time),
    /// Mass flow of refrigerant.
    MassFlow(MassRate),
    /// A whole number of things.
    Count(u32),
}

impl Quantity {
    /// The value in its SI base unit; counts and ratios as they are.
    pub fn si(&self) -> f64 {
        match self {
            Quantity::Temperature(value) => value.value,
            Quantity::Difference(value) => value.value,
            Quantity::Pressure(value) | Quantity::PressureDifference(value) => value.value,
            Quantity::Power(value) => value.value,
            Quantity::Airflow(value) => value.value,
            Quantity::Conductance(value) => value.value,
            Quantity::Ratio(value) => *value,
            Quantity::Elevation(value) | Quantity::Bore(value) => value.value,
            Quantity::Current(value) => value.value,
            Quantity::Density(value) => value.value,
            Quantity::Voltage(value) => value.value,
            Quantity::Frequency(value) => value.value,
            Quantity::Speed(value) => value.value,
            Quantity::Angle(value) => value.value,
            Quantity::Time(value) => value.value,
            Quantity::MassFlow(value) => value.value,
            Quantity::Count(value) => f64::from(*value),
        }
    }
}

/// One term of a rule: the symbol in its equation, the value, and where the value comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Term {
    /// The symbol as it stands in [`Rule::equation`].
    pub symbol: &'static str,
    /// The value that went in.
    pub quantity: Quantity,
    /// Where that value comes from.
    pub basis: Basis,
}

/// How one value was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Working {
    /// The rule that made it.
    pub rule: Rule,
    /// What went in.
    pub terms: Vec<Term>,
}

impl Working {
    /// Starts a working with no terms.
    pub fn new(rule: Rule) -> Self {
        Self {
            rule,
            terms: Vec::new(),
        }
    }

    /// Adds a derived term.
    #[must_use]
    pub fn with(self, symbol: &'static str, quantity: Quantity) -> Self {
        self.term(symbol, quantity, Basis::Computed)
    }

    /// Adds an input term; `wrap` names the kind of quantity.
    #[must_use]
    pub fn given<T: Copy>(
        self,
        symbol: &'static str,
        given: Given<T>,
        wrap: impl Fn(T) -> Quantity,
    ) -> Self {
        self.term(symbol, wrap(given.value), given.basis)
    }

    fn term(mut self, symbol: &'static str, quantity: Quantity, basis: Basis) -> Self {
        self.terms.push(Term {
            symbol,
            quantity,
            basis,
        });
        self
    }
}

/// A derived value with its working.
#[derive(Clone, Debug, PartialEq)]
pub struct Explained<T> {
    /// The value.
    pub value: T,
    /// How it was found.
    pub working: Working,
}

impl<T> Explained<T> {
    /// A value and how it was found.
    pub fn new(value: T, working: Working) -> Self {
        Self { value, working }
    }
}

macro_rules! rules {
    ($($(#[doc = $doc:literal])+ $name:ident { $key:literal, $equation:literal, $source:literal })+) => {
        /// A rule that derives a value: what it is for, its equation, and the published source it stands on.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Rule {
            $($(#[doc = $doc])+ $name,)+
        }

        impl Rule {
            /// Every rule, for a view that lists them.
            pub const ALL: &'static [Rule] = &[$(Rule::$name,)+];

            /// A stable name for look-up tables of words.
            pub fn key(self) -> &'static str {
                match self { $(Rule::$name => $key,)+ }
            }

            /// The equation, in symbols; the terms of a [`Working`] carry the same symbols.
            pub fn equation(self) -> &'static str {
                match self { $(Rule::$name => $equation,)+ }
            }

            /// The published source, or a plain word that there is none.
            pub fn source(self) -> &'static str {
                match self { $(Rule::$name => $source,)+ }
            }
        }
    };
}

/// What a fact of the trade without a publication is marked with.
const PRACTICE: &str = "Common practice, no published source";

rules! {
    /// Atmospheric pressure at the site's elevation.
    Atmosphere { "atmosphere", "p = 101325 Pa · (1 − 0.0065 K/m · H / 288.15 K)^5.2559",
        "U.S. Standard Atmosphere 1976; ISO 2533" }
    /// Heat rejected from cooling capacity.
    HeatRejected { "heat-rejected", "Q = Q₀ · (1 + (h₂s − h₁) / (η · (h₁ − h₃)))",
        "First law round the cycle; enthalpies from the refrigerant's equation of state" }
    /// Heat rejected from cooling capacity and the power of the compressor's data sheet.
    HeatRejectedBySheet { "heat-rejected-by-sheet", "Q = Q₀ · (1 + P / (m · (h₁ − h₃)))",
        "First law round the cycle; AHRI 540 for power and mass flow" }
    /// Heat rejected as a person entered it.
    HeatEntered { "heat-entered", "Q", "As entered" }
    /// Airflow as a person entered it.
    AirflowEntered { "airflow-entered", "V", "As entered" }
    /// Airflow that a usual condenser moves.
    AssumedAirflow { "assumed-airflow", "V = Q / (ρ · c · 0.6 · ΔT_m)", "Common practice, no published source" }
    /// Condensing temperature at the known point.
    DesignCondensing { "design-condensing", "T_c = T_o + ΔT₀", "Definition of condensing temperature over ambient" }
    /// Heat capacity rate of the air.
    AirCapacityRate { "air-capacity-rate", "C = ρ · V · c", "Incropera & DeWitt, heat exchangers chapter" }
    /// Conductance from the known point.
    Conductance { "conductance", "Σ m · Δh_z / (ε_z · C · ΔT_lm,z) = 1;  ε_z = 1 − exp(−UA_z / C)",
        "Kays & London, Compact Heat Exchangers: effectiveness-NTU; Incropera & DeWitt: logarithmic mean; zones by enthalpy" }
    /// Lowest pressure that the metering device can feed the evaporator at.
    MeteringNeed { "metering-need", "m₀ · r · √(ρ · Δp / (ρ₀ · Δp₀)) = V_c · η_v · ρ₁",
        "AHRI 750: flow with the square root of the pressure drop; Stoecker & Jones: compressor with clearance" }
    /// Lowest condensing pressure for the compressor.
    CompressorNeed { "compressor-need", "p = p_dew(T_e + 15 K)", "Common practice, no published source" }
    /// Lowest condensing temperature that a person entered for the compressor.
    CompressorEntered { "compressor-entered", "p = p_dew(T_c,min)", "The compressor maker's operating envelope, as entered" }
    /// Lowest pressure that keeps gas out of the liquid line.
    LiquidLineNeed { "liquid-line-need", "T_bubble(p − ρ · g · H − f · L/d · ρ · w²/2) = T_bubble(p) − ΔT_sub",
        "Darcy-Weisbach with Colebrook's friction factor; ASHRAE Handbook Refrigeration, halocarbon refrigeration systems" }
    /// Lowest pressure that keeps the coil free of ice.
    EvaporatorNeed { "evaporator-need", "T_e(p) = T_e,ice(T_ra, φ)", "ASHRAE Handbook Fundamentals, mass transfer: surface temperature of a wet coil" }
    /// Lowest pressure that hot gas defrosts at.
    DefrostNeed { "defrost-need", "p = p_dew(10 °C) + 100 kPa", "Common practice, no published source" }
    /// Lowest pressure that a user of the heat is content with.
    ReclaimNeed { "reclaim-need", "p = p_dew(T_c)", "As entered" }
    /// The needier part sets the need.
    GoverningNeed { "governing-need", "p = max(p_valve, p_compressor, p_line, p_evaporator, p_defrost, p_reclaim)", "Definition of the pressure need" }
    /// Full-speed point as a pressure.
    FullSpeedPressure { "full-speed-pressure", "p = p_dew(T_need + ΔT)", "Proportional control: the range stands on the need" }
    /// Full-speed point as the temperature a coil sensor sees.
    FullSpeedCoil { "full-speed-coil", "T = T(p, x = 0.5)", "Two-phase temperature from the refrigerant's equation of state" }
    /// Throttling range.
    ThrottlingRange { "throttling-range", "Δ = sensed(T_need + ΔT) − sensed(T_need)", "Proportional control: span from minimum to full output" }
    /// Lowest speed that the bearing allows.
    LowestSpeed { "lowest-speed", "n = k · n_full", "Common practice, no published source" }
    /// Lowest voltage that keeps the lowest speed.
    MinimumOutput { "minimum-output", "u² · 2 · T_b / (s/s_b + s_b/s) = T_n · (n / n_n)² · ρ/ρ_n",
        "Kloss's equation with torque by voltage squared, against a square-law fan load" }
    /// Speed at the lowest voltage that keeps a fan turning.
    StallSpeed { "stall-speed", "u² · 2 · T_b / (s/s_b + s_b/s) = T_n · (n / n_n)² · ρ/ρ_n",
        "Kloss's equation with torque by voltage squared, against a square-law fan load" }
    /// Lowest voltage that keeps a fan turning in the cold.
    StallOutput { "stall-output", "u² = min_s((T_n · (n / n_n)² · ρ/ρ_n + f) · (s/s_b + s_b/s) / (2 · T_b))",
        "Kloss's equation: pull-out of a fan drive on a reduced voltage; friction in the cold is common practice" }
    /// Lowest control voltage of a motor with its own electronics.
    MinimumSignalVolts { "minimum-signal-volts", "U = 10 V · n / n_full", "Common practice, no published source" }
    /// Lowest pulse width of a motor with its own electronics.
    MinimumSignalDuty { "minimum-signal-duty", "y = n / n_full", "Common practice, no published source" }
    /// Lowest frequency of a drive.
    LowestFrequency { "lowest-frequency", "f = k · f_n", "Common practice, no published source" }
    /// Lowest control signal where the drive sets the speed itself.
    MinimumSignal { "minimum-signal", "y = n / n_full", "Common practice, no published source" }
    /// Time at full output at a start from rest.
    StartBoost { "start-boost", "t = max(t_b, 1.5 · t_s);  t_s = ∫ J · dω / (T − T_air − T_wind − f · T_n);  J = 0.56 · D⁵ + 0.003 · P",
        "Electrical machine textbooks: run-up of a drive; inertia, friction and reserve are common practice" }
    /// Cut-in and cut-out of an on/off fan.
    OnOffPoints { "on-off-points", "p_off = p_need;  p_on = p_dew(T_need + ΔT)", "Common practice, no published source" }
    /// Cut-in and cut-out of one of several switched fans.
    StagePoints { "stage-points", "T_off = T_need + ΔT / 2 · (m − k) / (m − 1);  T_on = T_off + ΔT / 2;  m = 1: T_off = T_need, T_on = T_need + ΔT",
        "Common practice, no published source" }
    /// Hold limit.
    HoldLimit { "hold-limit", "Σ f_z(T_need, T_o, V) = 1 − f_flooded", "Kays & London: effectiveness-NTU by zones, at the method's least airflow and most flooding" }
    /// Condensing temperature at one outdoor temperature.
    Condensing { "condensing", "Σ m · Δh_z / (ε_z · C · ΔT_lm,z) = 1", "Kays & London: effectiveness-NTU by zones; compressor, metering device and evaporator in balance" }
    /// Electrical power of the fans that a usual condenser has.
    AssumedFanPower { "assumed-fan-power", "P = 0.03 · Q", "Common practice, no published source" }
}

impl Rule {
    /// Whether the rule stands on practice alone.
    pub fn is_practice(self) -> bool {
        self.source() == PRACTICE
    }
}
