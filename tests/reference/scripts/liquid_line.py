"""Reference values for the liquid line, from general-purpose libraries.

    python liquid_line.py OUT_DIR

writes liquid_line_*.json: friction factors of fluids, and whole lines from drops of fluids with states of CoolProp.
"""

import json
import math
import sys
from pathlib import Path

import CoolProp
import fluids
import numpy
from CoolProp import AbstractState
from scipy.interpolate import BarycentricInterpolator
from scipy.optimize import brentq

OUT = Path(sys.argv[1])
GRAVITY = 9.80665


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / name).write_text(f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


def friction():
    rows = []
    for rough in (0.0, 1e-7, 1e-6, 1e-5, 5e-5, 1e-4, 1.5e-4, 5e-4, 1e-3, 2e-3, 5e-3, 0.01, 0.02, 0.05):
        turbulent = [2041.0, 3000.0, *(float(x) for x in numpy.logspace(3.7, 8, 16))]
        for reynolds in (1.0, 150.0, 2040.0, *turbulent):
            factor = fluids.friction_factor(Re=reynolds, eD=rough, Method="Colebrook")
            rows.append({"reynolds": reynolds, "roughness": rough, "factor": factor})
    write("liquid_line_friction.json", f"fluids {fluids.__version__}, friction_factor by Colebrook", rows)


COMPOSITIONS = {  # mass fractions: ANSI/ASHRAE 34
    "R-134a": {"R134a": 1.0},
    "R-290": {"Propane": 1.0},
    "R-1234yf": {"R1234yf": 1.0},
    "R-410A": {"R32": 0.5, "R125": 0.5},
    "R-454B": {"R32": 0.689, "R1234yf": 0.311},
}


class Fluid:
    def __init__(self, name):
        parts = COMPOSITIONS[name]
        self.state = AbstractState("HEOS", "&".join(parts))
        if len(parts) > 1:
            self.state.set_mass_fractions(list(parts.values()))

    def solved_pressure(self, temperature):
        self.state.update(CoolProp.QT_INPUTS, 0, temperature)
        return self.state.p()

    def bubble_pressure(self, temperature):
        """Where CoolProp misses a point of a blend, ln p over 1/T is carried there from three points on each side, far closer than 1e-9."""
        try:
            return self.solved_pressure(temperature)
        except ValueError:
            pass
        known = []
        for side in (-1, 1):
            wanted = len(known) + 3
            for step in range(1, 40):
                near = temperature + side * 0.05 * step
                try:
                    known.append((1 / near, math.log(self.solved_pressure(near))))
                except ValueError:
                    continue
                if len(known) == wanted:
                    break
        return math.exp(float(BarycentricInterpolator(*zip(*known))(1 / temperature)))

    def bubble_temperature(self, pressure):
        return brentq(lambda t: self.bubble_pressure(t) - pressure, 250, 330, xtol=1e-11, rtol=1e-14)

    def liquid(self, temperature, pressure):
        self.state.specify_phase(CoolProp.iphase_liquid)
        self.state.update(CoolProp.PT_INPUTS, pressure, temperature)
        self.state.unspecify_phase()
        return self.state.rhomass(), self.state.hmass(), self.state.cpmass()

    def quality(self, pressure, enthalpy):
        def residual(share):
            self.state.update(CoolProp.PQ_INPUTS, pressure, share)
            return self.state.hmass() - enthalpy

        # Quality of PQ is by moles; by mass it is the lever of enthalpy for a pure fluid.
        return brentq(residual, 0.0, 0.5, xtol=1e-14, rtol=1e-13)


def walk(fluid, line, inlet_temperature):
    density, enthalpy, capacity = fluid.liquid(inlet_temperature, line["inlet_Pa"])
    flow, diameter = line["mass_flow_kg_s"], line["diameter_m"]
    velocity = flow / density / (numpy.pi / 4 * diameter**2)
    reynolds = fluids.Reynolds(V=velocity, D=diameter, rho=density, mu=line["viscosity_Pa_s"])
    factor = fluids.friction_factor(Re=reynolds, eD=line["roughness_m"] / diameter, Method="Colebrook")
    loss = fluids.K_from_f(fd=factor, L=line["length_m"], D=diameter)
    friction = fluids.dP_from_K(K=loss, rho=density, V=velocity)
    lift = density * GRAVITY * line["lift_m"]
    parts = line["part_Pa"] * (flow / line["part_kg_s"]) ** 2
    units = line["conductance_W_mK"] * line["exposed_m"] / (flow * capacity)
    heat = capacity * (line["surroundings_K"] - inlet_temperature) * (1 - numpy.exp(-units))
    outlet = line["inlet_Pa"] - friction - lift - parts
    return {
        "velocity_m_s": float(velocity),
        "reynolds": float(reynolds),
        "factor": float(factor),
        "friction_Pa": float(friction),
        "static_Pa": float(lift),
        "outlet_Pa": float(outlet),
        "bubble_K": fluid.bubble_temperature(outlet),
        "enthalpy": enthalpy + heat,
    }


def subcooling(fluid, there):
    """Subcooling at the valve, negative where it flashes (then by the heat capacity of metastable liquid, only for its sign)."""

    def residual(temperature):
        return fluid.liquid(temperature, there["outlet_Pa"])[1] - there["enthalpy"]

    bubble = there["bubble_K"]
    if residual(bubble - 1e-7) < 0:
        return -1.0
    return bubble - brentq(residual, bubble - 90, bubble - 1e-7, xtol=1e-11, rtol=1e-14)


def lines():
    rows = []
    for name in COMPOSITIONS:
        fluid = Fluid(name)
        pure = len(COMPOSITIONS[name]) == 1
        for condensing in (293.15, 308.15, 318.15):
            for turn, (lift, under) in enumerate(((-6.0, 2.0), (0.0, 5.0), (4.0, 3.0), (10.0, 8.0), (25.0, 1.0))):
                line = {
                    "refrigerant": name,
                    "inlet_Pa": fluid.bubble_pressure(condensing),
                    "inlet_K": condensing - under,
                    "mass_flow_kg_s": (0.02, 0.05, 0.08, 0.03, 0.06)[turn],
                    "diameter_m": (0.0079, 0.0104, 0.0136, 0.0079, 0.0104)[turn],
                    "length_m": (12.0, 30.0, 55.0, 18.0, 40.0)[turn],
                    "lift_m": lift,
                    "roughness_m": (1.5e-6, 1.5e-6, 1e-5)[turn % 3],
                    "viscosity_Pa_s": (1.5e-4, 1.1e-4, 2e-4)[turn % 3],
                    "part_kg_s": 0.06,
                    "part_Pa": (0.0, 12000.0, 20000.0)[turn % 3],
                    "conductance_W_mK": (0.0, 0.35, 0.8)[turn % 3],
                    "exposed_m": (10.0, 25.0, 40.0)[turn % 3],
                    "surroundings_K": (313.15, 268.15)[turn % 2],
                    "wanted_K": 3.0,
                }
                there = walk(fluid, line, line["inlet_K"])
                left = subcooling(fluid, there)
                there["subcooling_K"] = left if left >= 0 else None
                there["quality"] = fluid.quality(there["outlet_Pa"], there["enthalpy"]) if left < 0 and pure else None

                def lacking(temperature):
                    trial = walk(fluid, line, temperature)
                    return fluid.liquid(trial["bubble_K"] - line["wanted_K"], trial["outlet_Pa"])[1] - trial["enthalpy"]

                warmest = condensing - 1e-6
                there["needed_K"] = (
                    condensing if lacking(warmest) > 0 else brentq(lacking, condensing - 60, warmest, xtol=1e-10, rtol=1e-13)
                )
                del there["enthalpy"]
                rows.append({"line": line, "arrival": there})
    write(
        "liquid_line_arrival.json",
        f"drops by fluids {fluids.__version__} with states from CoolProp {CoolProp.__version__}",
        rows,
    )


for job in (friction, lines):
    job()
