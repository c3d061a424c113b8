//! The rules behind the values of worksheets, which stand apart from any plan: equation and source of each.
//!
//! The functions that a worksheet calls stand in their own modules; here is only what a person is shown of them.

macro_rules! rules {
    ($($(#[doc = $doc:literal])+ $name:ident { $key:literal, $equation:literal, $source:expr })+) => {
        /// A rule that derives a value of a worksheet.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum SheetRule {
            $($(#[doc = $doc])+ $name,)+
        }

        impl SheetRule {
            /// Every rule, for a view that lists them.
            pub const ALL: &'static [SheetRule] = &[$(SheetRule::$name,)+];

            /// A stable name.
            pub fn key(self) -> &'static str {
                match self { $(SheetRule::$name => $key,)+ }
            }

            /// The equation, in symbols; the inputs that are shown with it carry the same symbols.
            pub fn equation(self) -> &'static str {
                match self { $(SheetRule::$name => $equation,)+ }
            }

            /// The published source, or a plain word that there is none.
            pub fn source(self) -> &'static str {
                match self { $(SheetRule::$name => $source,)+ }
            }
        }
    };
}

const STATE: &str = "The refrigerant's equation of state";
const FAN: &str = "AMCA 201 and ISO 5801: fan laws for a fan in an unchanged system";
const CUT: &str = "Single-phase a.c. voltage controller: Mohan, Undeland & Robbins; Rashid";
const KLOSS: &str = "Kloss's equation with torque by voltage squared, against a square-law fan load (Fitzgerald, Kingsley & Umans). Breakdown torque, starting torque and bearing friction: common practice, no published source";
const FLOOD: &str = "ASHRAE Handbook HVAC Systems and Equipment, condensers chapter";
const BETA: &str = "IEC 60539-1: beta of a thermistor";
const STEINHART: &str = "Steinhart & Hart 1968, Deep-Sea Research 15";
const RATIO: &str = "A straight line between the ends of the range, by definition";
const LOOP: &str = "IEC 60381-1 for the signal; faults in the manner of NAMUR NE 43";
const PRACTICE: &str = "Common practice, no published source";

rules! {
    /// Pressure of saturated liquid at a temperature.
    BubblePressure { "bubble-pressure", "p = p_bubble(T)", STATE }
    /// Pressure of saturated vapour at a temperature.
    DewPressure { "dew-pressure", "p = p_dew(T)", STATE }
    /// Temperature of saturated liquid at a pressure.
    BubbleTemperature { "bubble-temperature", "T = T_bubble(p)", STATE }
    /// Temperature of saturated vapour at a pressure.
    DewTemperature { "dew-temperature", "T = T_dew(p)", STATE }
    /// Glide at a pressure.
    Glide { "glide", "ΔT = T_dew(p) − T_bubble(p)", STATE }
    /// Superheat of vapour.
    Superheat { "superheat", "ΔT = T − T_dew(p)", "Definition of superheat; saturation by the refrigerant's equation of state" }
    /// Subcooling of liquid.
    Subcooling { "subcooling", "ΔT = T_bubble(p) − T", "Definition of subcooling; saturation by the refrigerant's equation of state" }

    /// Density of air at an elevation and a temperature.
    AirDensity { "air-density", "ρ = p(H) · M / (R · T)", "Ideal gas law for dry air, with the pressure of the U.S. Standard Atmosphere 1976 (ISO 2533)" }
    /// Airflow at another speed.
    FanAirflow { "fan-airflow", "V = V_1 · n / n_1", FAN }
    /// Pressure rise at another speed and density.
    FanPressure { "fan-pressure", "Δp = Δp_1 · (ρ / ρ_1) · (n / n_1)²", FAN }
    /// Shaft power at another speed and density.
    FanPower { "fan-power", "P = P_1 · (ρ / ρ_1) · (n / n_1)³", FAN }

    /// Share of the supply's r.m.s. voltage.
    Output { "output", "y = u / U", CUT }
    /// r.m.s. voltage behind a phase cut.
    CutVoltage { "cut-voltage", "u = U · √(1 − α/π + sin 2α / 2π)", CUT }
    /// Reading of a meter that averages.
    MeterVoltage { "meter-voltage", "u_m = U · (1 + cos α) / 2", CUT }
    /// Firing angle of a phase cut.
    FiringAngle { "firing-angle", "(u / U)² = 1 − α/π + sin 2α / 2π", CUT }
    /// Speed that a turning fan settles at.
    MotorSpeed { "motor-speed", "(u / U_n)² · 2 · T_b / (s/s_b + s_b/s) = (ρ/ρ_n) · (n / n_n)² + T_f", KLOSS }
    /// Lowest voltage that keeps a turning fan turning.
    KeepsRunning { "keeps-running", "u = U_n · min √((load + T_f) / torque), down from full speed", KLOSS }
    /// Lowest voltage that starts a fan from rest.
    Starts { "starts", "u = U_n · max √((load + T_f) / torque), up from rest", KLOSS }
    /// Lowest speed that the bearing allows.
    BearingSpeed { "bearing-speed", "n = k · n_n", PRACTICE }

    /// Share of a condenser to flood.
    FloodedShare { "flooded-share", "s = 1 − r · ΔT_0 / (T_c − T_o)", FLOOD }
    /// Inside volume of a condenser where it is not known.
    CondenserVolume { "condenser-volume", "V = 6 · 10⁻⁶ m³ K/W · Q / ΔT_0", PRACTICE }
    /// Density of the liquid that floods.
    FloodedLiquid { "flooded-liquid", "ρ_l = ρ(T_o, p)", STATE }
    /// Density of what the condenser holds unflooded.
    Unflooded { "unflooded", "ρ_0 = 0.1 · ρ_dew + 0.8 · ρ_two-phase + 0.1 · ρ_bubble",
        "Void fraction by Zivi 1964; a tenth of vapour and a tenth of liquid are common practice, no published source" }
    /// Charge that flooding takes.
    FloodingCharge { "flooding-charge", "m = V · s · (ρ_l − ρ_0)", FLOOD }
    /// Receiver volume that holds a charge.
    ReceiverNeeded { "receiver-needed", "V_r = (m + m_p) / (0.8 · ρ_bubble(T_w))",
        "Fill limit of 0.8 in the manner of ANSI/ASHRAE 15: common practice, no published source" }
    /// Room left or missing in a receiver.
    ReceiverRoom { "receiver-room", "ΔV = V − V_r", "The two volumes compared" }

    /// Mass flow for a cooling capacity.
    MassFlow { "mass-flow", "ṁ = Q_0 / (h_dew(T_e) − h(T, p))", "First law on the evaporator, without superheat; enthalpies by the refrigerant's equation of state" }
    /// Velocity in the line.
    LineVelocity { "line-velocity", "v = ṁ / (ρ · π/4 · D²)", "Continuity" }
    /// Drop by friction.
    LineFriction { "line-friction", "Δp_f = f · (L / D) · ρ · v² / 2;  1/√f = −2 · lg(ε/(3.7 · D) + 2.51/(Re · √f))",
        "Darcy-Weisbach and Colebrook equations; viscosity 0.15 mPa s and roughness 1.5 µm assumed" }
    /// Drop by lift.
    LineLift { "line-lift", "Δp_H = ρ · g · H", "Hydrostatics" }
    /// Everything that the line takes.
    LineDrop { "line-drop", "Δp = Δp_f + Δp_H + Δp_parts", "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter" }
    /// Subcooling or flash at the valve.
    Arrival { "arrival", "ΔT = T_bubble(p − Δp) − T(h, p − Δp)", "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter; heat from the surroundings left out" }
    /// Subcooling that the line has to start with.
    NeededSubcooling { "needed-subcooling", "h(T_bubble(p) − ΔT_1, p) = h(T_bubble(p − Δp) − ΔT_w, p − Δp)",
        "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter; heat from the surroundings left out" }

    /// Temperature of a thermistor by beta.
    BetaTemperature { "beta-temperature", "1/T = 1/T_25 + ln(R / R_25) / B", BETA }
    /// Resistance of a thermistor by beta.
    BetaResistance { "beta-resistance", "R = R_25 · exp(B · (1/T − 1/T_25))", BETA }
    /// Temperature of a thermistor by three coefficients.
    SteinhartTemperature { "steinhart-temperature", "1/T = A + B · ln R + C · (ln R)³", STEINHART }
    /// Resistance of a thermistor by three coefficients.
    SteinhartResistance { "steinhart-resistance", "A + B · ln R + C · (ln R)³ = 1/T", STEINHART }
    /// Resistor that stands in for a thermistor.
    SubstituteResistor { "substitute-resistor", "R_s: of its series, the one nearest in temperature to R", "IEC 60063: preferred values of resistors" }
    /// Temperature that such a resistor simulates.
    SubstituteTemperature { "substitute-temperature", "T = T(R_s)", "The sensor's own curve, at the resistor's value" }
    /// Pressure by a ratiometric transducer.
    RatiometricPressure { "ratiometric-pressure", "p = p_1 + (U / U_s − s_1) / (s_2 − s_1) · (p_2 − p_1)", RATIO }
    /// Output of a ratiometric transducer.
    RatiometricOutput { "ratiometric-output", "U = U_s · (s_1 + (s_2 − s_1) · (p − p_1) / (p_2 − p_1))", RATIO }
    /// Pressure by a current loop.
    LoopPressure { "loop-pressure", "p = p_1 + (I − 4 mA) / 16 mA · (p_2 − p_1)", LOOP }
    /// Current of a loop.
    LoopCurrent { "loop-current", "I = 4 mA + 16 mA · (p − p_1) / (p_2 − p_1)", LOOP }

    /// Standing pressure against the switch.
    SwitchMargin { "switch-margin", "Δp = p − p_out, or p_in − p", "The standing pressure and the switch compared" }
    /// Standing pressure outdoors.
    StandingOutdoor { "standing-outdoor", "p = p_bubble(T_o)", STATE }
    /// Standing pressure of the low side.
    StandingLow { "standing-low", "p = min(p_bubble(T_o), p_dew(T_r))", STATE }
    /// Bypass time of the low-pressure switch.
    BypassTime { "bypass-time", "t: from then on p_suction(t) ≥ p_in",
        "Mass and energy balances of a start, over saturated states; AHRI 750 for the metering device. Usual volumes and charges: common practice, no published source" }
    /// Lowest suction pressure of a start.
    LowestSuction { "lowest-suction", "p = min p_suction(t)", "Mass and energy balances of a start, over saturated states" }
    /// Temperature that keeps refrigerant out of the oil.
    SumpTemperature { "sump-temperature", "T = max(T_a, T_dew(p)) + ΔT", PRACTICE }
    /// Heat that holds a sump there.
    SumpHeat { "sump-heat", "Q = G · (T − T_a)", "Steady loss of the shell; the conductance of a bare shell in wind by McAdams's flat plate" }

    /// A value in another unit.
    Conversion { "conversion", "x · factor, and an offset for temperatures and gauge pressures", "NIST SP 811, appendix B" }
}

#[cfg(test)]
mod tests {
    use super::SheetRule;

    #[test]
    fn every_rule_says_where_it_comes_from() {
        let mut keys: Vec<_> = SheetRule::ALL.iter().map(|rule| rule.key()).collect();
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), SheetRule::ALL.len());
        for rule in SheetRule::ALL {
            assert!(!rule.equation().is_empty() && !rule.source().is_empty());
        }
    }
}
