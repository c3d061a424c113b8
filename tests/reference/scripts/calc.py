"""Reference values for crates/calc, from general-purpose libraries.

    python calc.py OUT_DIR

writes calc_*.json. Each file names its source. The equations of the plan are written here from their sources (see the
rules in crates/calc/src/explain.rs) and solved by scipy with states from CoolProp; nothing is taken from the Rust code but the
stated constants of practice, which are inputs of the comparison.
"""

import json
import math
import sys
from pathlib import Path

import CoolProp
import fluids
import ht
import scipy
from CoolProp import AbstractState
from scipy.integrate import quad
from scipy.interpolate import BarycentricInterpolator
from scipy.optimize import brentq

OUT = Path(sys.argv[1])


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    text = f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n'
    (OUT / name).write_text(text, encoding="utf-8")


# Outside air ---------------------------------------------------------------------------------------------------------


def air():
    rows = []
    for elevation in (-400, 0, 250, 1000, 1609.344, 2000, 3000, 4500, 5500):
        state = fluids.ATMOSPHERE_1976(elevation)
        rows.append({"elevation_m": elevation, "pressure_Pa": state.P, "temperature_K": state.T, "density_kg_m3": state.rho})
    write("calc_air.json", f"U.S. Standard Atmosphere 1976 by fluids {fluids.__version__}", rows)


# Effectiveness -------------------------------------------------------------------------------------------------------


def effectiveness():
    rows = []
    for units in (0.01, 0.1, 0.5, 0.916, 1.0, 1.5, 2.0, 3.0, 5.0, 8.0):
        # A condensing side has an unbounded capacity rate: Cr = 0, where every flow arrangement is the same.
        rows.append({"ntu": units, "effectiveness": ht.effectiveness_from_NTU(NTU=units, Cr=0, subtype="counterflow")})
    write("calc_effectiveness.json", f"ht {ht.__version__}, effectiveness_from_NTU with Cr = 0", rows)


# Phase-cut supply ----------------------------------------------------------------------------------------------------


def phase_cut():
    rows = []
    for degrees in (0, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165):
        firing = math.radians(degrees)
        mean_square = quad(lambda x: 2 * math.sin(x) ** 2, firing, math.pi, epsabs=1e-14)[0] / math.pi
        mean = quad(lambda x: math.sqrt(2) * math.sin(x), firing, math.pi, epsabs=1e-14)[0] / math.pi
        # A meter that averages is scaled so that it reads r.m.s. on a whole sine.
        scale = math.pi / (2 * math.sqrt(2))
        rows.append({"firing_deg": degrees, "rms": math.sqrt(mean_square), "averaging_meter": mean * scale})
    write("calc_phase_cut.json", f"quadrature of the cut sine by scipy {scipy.__version__}", rows)


# Whole plan ----------------------------------------------------------------------------------------------------------

COMPOSITIONS = {  # mass fractions: ANSI/ASHRAE 34
    "R-134a": {"R134a": 1.0},
    "R-410A": {"R32": 0.5, "R125": 0.5},
    "R-448A": {"R32": 0.26, "R125": 0.26, "R1234yf": 0.20, "R134a": 0.21, "R1234ze(E)": 0.07},
    "R-449A": {"R32": 0.243, "R125": 0.247, "R1234yf": 0.253, "R134a": 0.257},
    "R-454B": {"R32": 0.689, "R1234yf": 0.311},
}

# Constants of practice that the plan states; see crates/calc.
PRACTICE = {
    "isentropic_efficiency": 0.65,
    "superheat_K": 8.0,
    "subcooling_K": 5.0,
    "other_drops": 0.1,
    "compressor_lift_K": 15.0,
    "air_side_share": 0.85,
    "air_side_exponent": 0.6,
    "usual_effectiveness": 0.6,
    "air_heat_J_kgK": 1006.0,
    "standard_density_kg_m3": 1.2,
    "breakdown_ratio": 1.6,
}
RESERVE = {"txv-conventional": 1.25, "txv-balanced": 1.6, "electronic-valve": 2.5, "fixed-orifice": 1.2}
SLOWEST = {"ball": 0.2, "sleeve": 0.4}


class Fluid:
    def __init__(self, name):
        parts = COMPOSITIONS[name]
        self.state = AbstractState("HEOS", "&".join(parts))
        self.pure = [AbstractState("HEOS", part) for part in parts]
        if len(parts) > 1:
            self.state.set_mass_fractions(list(parts.values()))
            self.shares = self.state.get_mole_fractions()
        else:
            self.shares = [1.0]

    def saturated_pressure(self, quality, temperature):
        try:
            return self.direct_pressure(quality, temperature)
        except ValueError:
            pass
        # CoolProp misses points of some blends. The three nearest that it solves on each side carry ln p over 1/T there; over less than
        # 1 K the error of the fifth-order curve is far below 1e-9.
        known = []
        for side in (-1, 1):
            found = 0
            for step in range(1, 40):
                near = temperature + side * 0.05 * step
                try:
                    known.append((1 / near, math.log(self.direct_pressure(quality, near))))
                except ValueError:
                    continue
                found += 1
                if found == 3:
                    break
        x, y = zip(*known)
        return math.exp(float(BarycentricInterpolator(x, y)(1 / temperature)))

    def direct_pressure(self, quality, temperature):
        self.state.update(CoolProp.QT_INPUTS, quality, temperature)
        return self.state.p()

    def dew_pressure(self, temperature):
        return self.saturated_pressure(1, temperature)

    def dew_temperature(self, pressure):
        return brentq(lambda t: math.log(self.dew_pressure(t) / pressure), 200, 335, xtol=1e-10, rtol=1e-14)

    def bubble_temperature(self, pressure):
        def residual(temperature):
            return math.log(self.saturated_pressure(0, temperature) / pressure)

        return brentq(residual, 200, 335, xtol=1e-10, rtol=1e-14)

    def single(self, phase, temperature, pressure):
        """Density, enthalpy and entropy.

        The ideal-gas part comes from the pure components: in a blend, CoolProp evaluates that of R-134a at the critical instead of the
        reducing temperature of its equation, which puts the heat capacity of nearly pure R-134a 5e-5 off its own pure fluid.
        """
        self.state.specify_phase(phase)
        self.state.update(CoolProp.PT_INPUTS, pressure, temperature)
        self.state.unspecify_phase()
        density, mass = self.state.rhomolar(), self.state.molar_mass()
        enthalpy, entropy = self.state.hmolar_residual(), self.state.smolar_residual()
        for share, pure in zip(self.shares, self.pure):
            # Any dilute state gives the ideal-gas enthalpy; the ideal-gas entropy is carried to the blend's density.
            pure.specify_phase(CoolProp.iphase_gas)
            pure.update(CoolProp.DmolarT_INPUTS, 1.0, temperature)
            enthalpy += share * (pure.hmolar() - pure.hmolar_residual())
            entropy += share * (pure.smolar() - pure.smolar_residual() - pure.gas_constant() * math.log(density / 1.0))
        return density * mass, enthalpy / mass, entropy / mass

    def isentropic_enthalpy(self, pressure, entropy, start):
        vapor = CoolProp.iphase_gas

        def residual(temperature):
            return self.single(vapor, temperature, pressure)[2] - entropy

        hot = brentq(residual, start, 470, xtol=1e-10, rtol=1e-14)
        return self.single(vapor, hot, pressure)[1]


def solve(fluid, system):
    given = PRACTICE
    out = {}
    atmosphere = fluids.ATMOSPHERE_1976(system["elevation_m"]).P
    out["atmosphere_Pa"] = atmosphere

    def density(outdoor):
        return atmosphere / (8314.32 / 28.9644 * outdoor)

    evaporating = fluid.dew_pressure(system["evaporating_K"])
    _, suction_h, suction_s = fluid.single(
        CoolProp.iphase_gas, system["evaporating_K"] + given["superheat_K"], evaporating
    )
    design_t = system["known_outdoor_K"] + system["over_ambient_K"]
    design_p = fluid.dew_pressure(design_t)

    def liquid(pressure):
        bubble = fluid.bubble_temperature(pressure)
        return fluid.single(CoolProp.iphase_liquid, bubble - given["subcooling_K"], pressure)

    design_rho, design_h, _ = liquid(design_p)
    compressed_h = fluid.isentropic_enthalpy(design_p, suction_s, design_t)
    work = (compressed_h - suction_h) / given["isentropic_efficiency"]
    heat = system["cooling_W"] * (1 + work / (suction_h - design_h))
    out["heat_rejected_W"] = heat

    # Metering device: flow by the square root of density and pressure drop.
    drops = given["other_drops"] * (design_p - evaporating)
    design_drop = design_p - evaporating - drops
    reserve = RESERVE[system["metering"]]

    def starved(pressure):
        rho, h, _ = liquid(pressure)
        passed = reserve * math.sqrt(rho / design_rho * (pressure - evaporating - drops) / design_drop)
        return passed - (suction_h - design_h) / (suction_h - h)

    valve = brentq(starved, evaporating + drops + 1.0, design_p, xtol=1e-7, rtol=1e-13)
    compressor = fluid.dew_pressure(system["evaporating_K"] + given["compressor_lift_K"])
    need_p = max(valve, compressor)
    need_t = fluid.dew_temperature(need_p)
    out |= {"valve_Pa": valve, "compressor_Pa": compressor, "need_Pa": need_p, "need_K": need_t}

    # Condenser from the known point.
    cp = given["air_heat_J_kgK"]
    rate = heat / (given["usual_effectiveness"] * system["over_ambient_K"])
    airflow = rate / (density(system["known_outdoor_K"]) * cp)
    known_mass = rate / cp
    conductance = ht.NTU_from_effectiveness(
        effectiveness=given["usual_effectiveness"], Cr=0, subtype="counterflow"
    ) * rate
    out |= {"airflow_m3_s": airflow, "conductance_W_K": conductance}

    def condensing(outdoor, share):
        share = max(share, system["idle_airflow"])
        mass = density(outdoor) * airflow * share
        side = given["air_side_share"]
        ua = conductance / (1 - side + side * (mass / known_mass) ** -given["air_side_exponent"])
        eps = ht.effectiveness_from_NTU(NTU=ua / (mass * cp), Cr=0, subtype="counterflow")
        return outdoor + heat / (eps * mass * cp)

    # Motor: Kloss's equation, a square-law load.
    synchronous, rated = system["synchronous_rpm"], system["rated_rpm"]
    breakdown = given["breakdown_ratio"]
    rated_slip = 1 - rated / synchronous
    breakdown_slip = brentq(
        lambda s: 2 * breakdown / (rated_slip / s + s / rated_slip) - 1, rated_slip * 1.0001, rated_slip * 20, xtol=1e-15
    )

    def torque(voltage, slip):
        return voltage**2 * 2 * breakdown / (slip / breakdown_slip + breakdown_slip / slip)

    def rpm(voltage, outdoor):
        load = density(outdoor) / given["standard_density_kg_m3"]

        def surplus(slip):
            return torque(voltage, slip) - load * ((1 - slip) / (1 - rated_slip)) ** 2

        # The fastest speed in balance: the smallest slip at which torque catches up with load.
        slips = [k / 2000 for k in range(1, 2001)]
        caught = next(s for s in slips if surplus(s) >= 0)
        return synchronous * (1 - brentq(surplus, caught - 1 / 2000 + 1e-12, caught, xtol=1e-15))

    cold = system["outdoor_low_K"]
    slowest = SLOWEST[system["bearing"]] * rpm(1.0, cold)
    minimum = brentq(lambda u: rpm(u, cold) - slowest, 0.02, 1.0, xtol=1e-14)
    out |= {"minimum_output": minimum, "lowest_rpm": slowest}

    def share(voltage, outdoor):
        return rpm(voltage, outdoor) / rpm(1.0, outdoor)

    span = min(system["throttling_K"], design_t - need_t) if design_t - need_t >= 2 else 2.0
    full_t = need_t + span
    full_p = fluid.dew_pressure(full_t)
    out |= {"full_speed_Pa": full_p, "throttling_Pa": full_p - need_p}

    out["hold_K"] = {
        "full_fan": brentq(lambda t: condensing(t, 1.0) - need_t, 150, need_t, xtol=1e-10),
        "on_off": brentq(lambda t: condensing(t, 0.0) - need_t, 150, need_t, xtol=1e-10),
        "speed_control": brentq(lambda t: condensing(t, share(minimum, t)) - need_t, 150, need_t, xtol=1e-10),
    }

    points = []
    for outdoor in system["outdoor_K"]:

        def asked(voltage):
            t = condensing(outdoor, share(voltage, outdoor))
            if t <= need_t:
                return minimum - voltage
            if t >= full_t:
                return 1.0 - voltage
            part = (fluid.dew_pressure(t) - need_p) / (full_p - need_p)
            return minimum + (1 - minimum) * part - voltage

        if asked(1.0) >= 0:
            voltage = 1.0
        elif asked(minimum) <= 0:
            voltage = minimum
        else:
            voltage = brentq(asked, minimum, 1.0, xtol=1e-14)
        points.append(
            {
                "outdoor_K": outdoor,
                "full_fan_K": condensing(outdoor, 1.0),
                "speed_control_K": condensing(outdoor, share(voltage, outdoor)),
                "output": voltage,
                "speed_fraction": share(voltage, outdoor),
            }
        )
    out["points"] = points
    return out


def plans():
    rows = []
    outdoor = [238.15, 248.15, 258.15, 268.15, 278.15, 288.15, 298.15]
    for number, name in enumerate(COMPOSITIONS):
        fluid = Fluid(name)
        for turn, metering in enumerate(RESERVE):
            pick = number + turn
            system = {
                "refrigerant": name,
                "metering": metering,
                "bearing": ("ball", "sleeve")[pick % 2],
                "cooling_W": (3500.0, 8000.0, 17500.0, 52000.0)[turn],
                "evaporating_K": (278.15, 266.15, 263.15, 275.15)[pick % 4],
                "known_outdoor_K": (308.15, 303.15, 305.37)[pick % 3],
                "over_ambient_K": (15.0, 10.0, 12.0, 8.0)[pick % 4],
                "elevation_m": (0.0, 1600.0, 400.0)[turn % 3],
                "synchronous_rpm": (1200.0, 900.0, 1800.0)[pick % 3],
                "rated_rpm": (1075.0, 825.0, 1550.0)[pick % 3],
                "idle_airflow": 0.1,
                "throttling_K": (8.0, 6.0)[turn % 2],
                "outdoor_low_K": (244.15, 250.15)[pick % 2],
                "outdoor_K": outdoor,
            }
            rows.append({"system": system, "plan": solve(fluid, system)})
    write(
        "calc_plan.json",
        f"equations of the sources solved by scipy {scipy.__version__} with states from CoolProp {CoolProp.__version__}, "
        f"effectiveness from ht {ht.__version__}, atmosphere from fluids {fluids.__version__}",
        rows,
    )


for job in (air, effectiveness, phase_cut, plans):
    job()
