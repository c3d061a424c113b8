"""Reference values for flooding and charge, from general-purpose libraries.

    python flooding.py OUT_DIR

writes flooding_*.json: void fractions integrated by scipy, charges with states of CoolProp, and the flooded share of a fixed charge by scipy's
root finder. The equations are written here from their sources; constants of practice are inputs of the comparison.
"""

import json
import math
import sys
from pathlib import Path

import CoolProp
import scipy
from CoolProp import AbstractState
from scipy.integrate import quad
from scipy.optimize import brentq

OUT = Path(sys.argv[1])


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / name).write_text(f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


def void(model, quality, densities):
    """Zivi 1964: slip is the cube root of the density ratio; homogeneous: none."""
    if quality == 0:
        return 0.0
    slip = (1 / densities) ** (1 / 3) if model == "zivi" else 1.0
    return 1 / (1 + (1 - quality) / quality * slip * densities)


def mean_void(model, start, end, densities):
    return quad(lambda x: void(model, x, densities), start, end, epsabs=1e-13, epsrel=1e-13, limit=500)[0] / (end - start)


def void_fractions():
    rows = []
    for model in ("zivi", "homogeneous"):
        for densities in (0.001, 0.005, 0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 0.94, 0.97, 0.999):
            for start, end in ((0.0, 1.0), (0.2, 1.0), (0.35, 0.9), (0.0, 0.05), (0.5, 0.52)):
                mean = mean_void(model, start, end, densities)
                rows.append({"model": model, "densities": densities, "from": start, "to": end, "mean": mean})
    write("flooding_void.json", f"Zivi 1964 and homogeneous, integrated over quality by scipy {scipy.__version__}", rows)


FLUIDS = {"R-134a": "R134a", "R-290": "Propane", "R-1234yf": "R1234yf", "R-32": "R32"}


class Fluid:
    def __init__(self, name):
        self.state = AbstractState("HEOS", FLUIDS[name])

    def saturated(self, quality, temperature):
        self.state.update(CoolProp.QT_INPUTS, quality, temperature)
        return self.state.rhomass(), self.state.hmass(), self.state.cpmass()

    def pressure(self, temperature):
        self.state.update(CoolProp.QT_INPUTS, 0, temperature)
        return self.state.p()

    def liquid(self, temperature, pressure):
        self.state.specify_phase(CoolProp.iphase_liquid)
        self.state.update(CoolProp.PT_INPUTS, pressure, temperature)
        self.state.unspecify_phase()
        return self.state.rhomass(), self.state.hmass()


def unflooded(fluid, zones, condensing):
    liquid, vapor = fluid.saturated(0, condensing)[0], fluid.saturated(1, condensing)[0]
    alpha = mean_void(zones["model"], 0.0, 1.0, vapor / liquid)
    both = alpha * vapor + (1 - alpha) * liquid
    return zones["vapor"] * vapor + zones["liquid"] * liquid + (1 - zones["vapor"] - zones["liquid"]) * both


def charges():
    rows = []
    for name in FLUIDS:
        fluid = Fluid(name)
        for model in ("zivi", "homogeneous"):
            for outdoor, held, over, heat in ((243.15, 303.15, 15.0, 1.0), (258.15, 305.37, 8.333, 1.0), (268.15, 298.15, 10.0, 0.7)):
                zones = {"model": model, "vapor": 0.12, "liquid": 0.08}
                share = 1 - heat * over / (held - outdoor)
                mean = unflooded(fluid, zones, held)
                dense = fluid.liquid(outdoor, fluid.pressure(held))[0]
                extra = 0.006 * share * (dense - mean)
                warmest, pumpdown = 325.15, 2.5
                rows.append(
                    {
                        "refrigerant": name, "zones": zones, "outdoor_K": outdoor, "held_K": held, "over_ambient_K": over,
                        "heat_ratio": heat, "volume_m3": 0.006, "warmest_K": warmest, "pumpdown_kg": pumpdown,
                        "share": share, "liquid_kg_m3": dense, "unflooded_kg_m3": mean, "extra_kg": extra,
                        "receiver_m3": (extra + pumpdown) / (0.8 * fluid.saturated(0, warmest)[0]),
                    }
                )  # fmt: skip
    write("flooding_charge.json", f"states from CoolProp {CoolProp.__version__}, void by scipy {scipy.__version__}", rows)


def circuit(fluid, system, flooded):
    """Charge of every part with a share of the design point's condensing surface flooded."""
    zones, outdoor = system["zones"], system["outdoor_K"]
    condensing = outdoor + system["over_ambient_K"] / (1 - flooded)
    pressure = fluid.pressure(condensing)
    share = 1 - (1 - flooded) * (1 - zones["liquid"])
    bubble, bubble_h, capacity = fluid.saturated(0, condensing)
    dew = fluid.saturated(1, condensing)[0]

    # Compression with an isentropic efficiency of 0.65 from 8 K of superheat: constants of practice of the plan.
    low = fluid.pressure(system["evaporating_K"])
    fluid.state.update(CoolProp.PT_INPUTS, low, system["evaporating_K"] + 8.0)
    suction_h, suction_s = fluid.state.hmass(), fluid.state.smass()
    fluid.state.update(CoolProp.PSmass_INPUTS, pressure, suction_s)
    discharge_h = suction_h + (fluid.state.hmass() - suction_h) / 0.65

    units = share * (discharge_h - bubble_h) / (capacity * system["over_ambient_K"]) / (1 - zones["liquid"])
    span = condensing - outdoor
    leaving = outdoor + span * math.exp(-units)
    liquid, enthalpy = fluid.liquid(leaving, pressure)
    average = quad(lambda z: outdoor + span * math.exp(-units * z), 0, 1, epsabs=1e-12)[0]
    mean_liquid = fluid.liquid(average, pressure)[0]

    alpha = mean_void(zones["model"], 0.0, 1.0, dew / bubble)
    active = (1 - share) / (1 - zones["liquid"])
    condensed = (1 - zones["vapor"] - zones["liquid"]) * (alpha * dew + (1 - alpha) * bubble) + zones["vapor"] * dew
    condenser = system["condenser_m3"] * (share * mean_liquid + active * condensed)

    cold, cold_h, _ = fluid.saturated(0, system["evaporating_K"])
    gas, gas_h, _ = fluid.saturated(1, system["evaporating_K"])
    quality = max(0.0, (enthalpy - cold_h) / (gas_h - cold_h))
    alpha = mean_void(zones["model"], quality, 1.0, gas / cold)
    superheated = system["superheat_share"]
    evaporator = system["evaporator_m3"] * ((1 - superheated) * (alpha * gas + (1 - alpha) * cold) + superheated * gas)
    return {
        "condensing_K": condensing, "leaving_K": leaving, "liquid_share": share, "condenser_kg": condenser,
        "line_kg": system["line_m3"] * liquid, "evaporator_kg": evaporator,
    }  # fmt: skip


def fixed_charges():
    rows = []
    for number, name in enumerate(FLUIDS):
        fluid = Fluid(name)
        for outdoor in (283.15, 298.15, 308.15):
            for filled in (0.02, 0.2, 0.45):
                system = {
                    "refrigerant": name, "outdoor_K": outdoor, "over_ambient_K": (10.0, 12.0)[number % 2],
                    "zones": {"model": ("zivi", "homogeneous")[number % 2], "vapor": 0.1, "liquid": 0.08},
                    "condenser_m3": 0.004, "line_m3": 0.0009, "evaporator_m3": 0.003, "superheat_share": 0.1,
                    "evaporating_K": 273.15,
                }  # fmt: skip

                def total(flooded):
                    there = circuit(fluid, system, flooded)
                    return there["condenser_kg"] + there["line_kg"] + there["evaporator_kg"]

                charge = round(total(filled), 4)
                flooded = brentq(lambda share: total(share) - charge, 0.0, 0.6, xtol=1e-13, rtol=1e-13)
                rows.append({"system": system, "charge_kg": charge, "flooded": flooded, **circuit(fluid, system, flooded)})
    write(
        "flooding_fixed_charge.json",
        f"states from CoolProp {CoolProp.__version__}, void and root by scipy {scipy.__version__}",
        rows,
    )


for job in (void_fractions, charges, fixed_charges):
    job()
