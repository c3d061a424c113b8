"""Reference values for compressors, from general-purpose libraries.

    python compressor.py OUT_DIR

writes compressor_*.json: an efficiency model with states of CoolProp; data sheets of invented compressors, whose ten coefficients are fitted to that model
by least squares of numpy, as printed and in several units; and what these say at another suction gas, corrected with states of CoolProp. The equations
are written here from their sources.
"""

import json
import sys
from pathlib import Path

import CoolProp
import numpy
import scipy
from CoolProp import AbstractState
from scipy.optimize import brentq

OUT = Path(sys.argv[1])


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / name).write_text(f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


FLUIDS = {"R-134a": "R134a", "R-290": "Propane", "R-1234yf": "R1234yf", "R-32": "R32"}


class Gas:
    """A kilogram from the inlet of a compressor to the liquid that comes back."""

    def __init__(self, name, evaporating, condensing, inlet, subcooling):
        fluid = AbstractState("HEOS", FLUIDS[name])

        def saturated(temperature, quality):
            fluid.update(CoolProp.QT_INPUTS, quality, temperature)
            return fluid.p()

        self.low, self.high = saturated(evaporating, 1), saturated(condensing, 1)
        if inlet > evaporating:
            fluid.update(CoolProp.PT_INPUTS, self.low, inlet)
        else:
            fluid.update(CoolProp.QT_INPUTS, 1, evaporating)
        self.density, self.enthalpy, self.entropy = fluid.rhomass(), fluid.hmass(), fluid.smass()
        fluid.update(CoolProp.PSmass_INPUTS, self.high, self.entropy)
        self.discharge_density, self.work = fluid.rhomass(), fluid.hmass() - self.enthalpy
        if subcooling > 0:
            fluid.update(CoolProp.PT_INPUTS, self.high, condensing - subcooling)
        else:
            fluid.update(CoolProp.QT_INPUTS, 0, condensing)
        self.cooling = self.enthalpy - fluid.hmass()
        self.fluid = fluid

    def work_at_fixed_ratio(self, built_in):
        """Isentropic to the built-in volume ratio, then at constant volume."""

        def density(pressure):
            self.fluid.update(CoolProp.PSmass_INPUTS, pressure, self.entropy)
            return self.fluid.rhomass()

        wanted = built_in * self.density
        opened = brentq(lambda p: density(p) - wanted, self.low, self.low * built_in**1.7, xtol=1e-9, rtol=1e-14)
        self.fluid.update(CoolProp.PSmass_INPUTS, opened, self.entropy)
        return self.fluid.hmass() - self.enthalpy + (self.high - opened) / wanted


# Clearance, built-in volume ratio, isentropic efficiency and constant share at the nameplate.
LOSSES = {"pistons": (0.04, None, 0.66, 0.12), "scrolls": (0.005, 2.5, 0.68, 0.08)}


class Compressor:
    """Stoecker & Jones for the flow, Winandy et al. 2002 for the power."""

    def __init__(self, name, losses, displacement, rated):
        self.name, self.displacement = name, displacement
        self.clearance, self.built_in, isentropic, constant = losses
        gas = Gas(name, *rated)
        flow = self.flow(gas)
        power = flow * gas.work / isentropic
        self.constant = constant * power
        self.proportional = (1 - constant) * power / (flow * self.work(gas))

    def volumetric(self, gas):
        return 1 - self.clearance * (gas.discharge_density / gas.density - 1)

    def flow(self, gas):
        return self.displacement * gas.density * self.volumetric(gas)

    def work(self, gas):
        return gas.work if self.built_in is None else gas.work_at_fixed_ratio(self.built_in)

    def at(self, evaporating, condensing, inlet, subcooling):
        gas = Gas(self.name, evaporating, condensing, inlet, subcooling)
        flow = self.flow(gas)
        power = self.constant + self.proportional * flow * self.work(gas)
        return {
            "mass_flow_kg_s": flow, "capacity_W": flow * gas.cooling, "power_W": power,
            "volumetric": self.volumetric(gas), "isentropic": flow * gas.work / power,
        }  # fmt: skip


RATED = (280.15, 318.15, 290.15, 5.0)
DISPLACEMENT = 0.0025


def efficiencies():
    rows = []
    for name in FLUIDS:
        for kind, losses in LOSSES.items():
            compressor = Compressor(name, losses, DISPLACEMENT, RATED)
            for evaporating, condensing, inlet, subcooling in (
                RATED,
                (280.15, 290.15, 285.15, 0.0),
                (263.15, 293.15, 263.15, 2.0),
                (263.15, 323.15, 293.15, 8.0),
                (248.15, 303.15, 258.15, 4.0),
            ):
                there = compressor.at(evaporating, condensing, inlet, subcooling)
                rows.append(
                    {
                        "refrigerant": name, "clearance": losses[0], "built_in": losses[1], "rated_isentropic": losses[2],
                        "constant_share": losses[3], "displacement_m3_s": DISPLACEMENT,
                        "rated": RATED, "at": (evaporating, condensing, inlet, subcooling), **there,
                    }
                )  # fmt: skip
    write("compressor_efficiency.json", f"states from CoolProp {CoolProp.__version__}, root by scipy {scipy.__version__}", rows)


def terms(s, d):
    """AHRI 540."""
    return [1.0, s, d, s * s, s * d, d * d, s**3, d * s * s, s * d * d, d**3]


def scale(name, kelvins):
    celsius = kelvins - 273.15
    return celsius if name == "C" else celsius * 1.8 + 32


POUND, BTU = 0.45359237, 1055.05585262
# Scale of the temperatures, and for each output the unit with its size in SI.
SHEETS = {
    "metric": {"scale": "C", "flow": ("kg/h", 1 / 3600), "power": ("W", 1.0), "capacity": ("kW", 1000.0)},
    "small": {"scale": "C", "flow": ("g/s", 1e-3), "power": ("kW", 1000.0), "capacity": ("W", 1.0)},
    "customary": {"scale": "F", "flow": ("lb/h", POUND / 3600), "power": ("W", 1.0), "capacity": ("Btu/h", BTU / 3600)},
    "plain": {"scale": "F", "flow": ("kg/s", 1.0), "power": ("kW", 1000.0), "capacity": ("Btu/h", BTU / 3600)},
}


def fit(matrix, wanted):
    """Least squares on columns of like size, printed with the digits of a data sheet: few enough that no processor rounds them otherwise."""
    columns = numpy.array(matrix)
    sizes = numpy.linalg.norm(columns, axis=0)
    found = numpy.linalg.lstsq(columns / sizes, numpy.array(wanted), rcond=None)[0] / sizes
    return [float(f"{value:.6E}") for value in found]


def value(coefficients, evaporating, condensing, sheet):
    row = terms(scale(sheet["scale"], evaporating), scale(sheet["scale"], condensing))
    return sum(c * t for c, t in zip(coefficients, row))


def data_sheets():
    rows = []
    grid = [(e, c) for e in range(248, 287, 4) for c in range(293, 334, 4)]
    for number, name in enumerate(FLUIDS):
        units = list(SHEETS.values())[number]
        compressor = Compressor(name, list(LOSSES.values())[number % 2], DISPLACEMENT, RATED)
        # Two ways in which data sheets say the suction gas: superheat, or return gas.
        rated = ("superheat", 10.0) if number % 2 else ("return_gas", 291.15)
        rated_subcooling = (0.0, 8.3)[number // 2]

        def inlet(gas, evaporating):
            return evaporating + gas[1] if gas[0] == "superheat" else gas[1]

        answers = [compressor.at(e, c, inlet(rated, e), rated_subcooling) for e, c in grid]
        matrix = [terms(scale(units["scale"], e), scale(units["scale"], c)) for e, c in grid]
        fitted = {}
        for what, key in (("flow", "mass_flow_kg_s"), ("power", "power_W"), ("capacity", "capacity_W")):
            wanted = [answer[key] / units[what][1] for answer in answers]
            fitted[what] = fit(matrix, wanted)
        for evaporating, condensing in ((253.15, 298.15), (263.15, 303.15), (268.15, 313.15), (278.15, 328.15)):
            for gas, subcooling in ((("superheat", 0.0), 0.0), (("superheat", 5.0), 3.0), (("superheat", 25.0), 8.3), (("return_gas", 295.15), 12.0)):
                base = Gas(name, evaporating, condensing, inlet(rated, evaporating), rated_subcooling)
                there = Gas(name, evaporating, condensing, inlet(gas, evaporating), subcooling)
                # Dabiri & Rice 1981, with 0.75 of the change in specific volume.
                flow = 1 + 0.75 * (there.density / base.density - 1)
                said = {what: value(fitted[what], evaporating, condensing, units) * units[what][1] for what in fitted}
                rows.append(
                    {
                        "refrigerant": name, "scale": units["scale"], "flow_unit": units["flow"][0], "power_unit": units["power"][0],
                        "capacity_unit": units["capacity"][0], "flow": fitted["flow"], "power": fitted["power"],
                        "capacity": fitted["capacity"], "rated_gas": rated, "rated_subcooling_K": rated_subcooling,
                        "evaporating_K": evaporating, "condensing_K": condensing, "gas": gas, "subcooling_K": subcooling,
                        "rated_flow_kg_s": said["flow"], "rated_power_W": said["power"], "rated_capacity_W": said["capacity"],
                        "flow_kg_s": said["flow"] * flow, "power_W": said["power"] * flow * there.work / base.work,
                        "capacity_W": said["capacity"] * flow * there.cooling / base.cooling,
                        "flow_from_capacity_kg_s": said["capacity"] / base.cooling * flow,
                        "capacity_from_flow_W": said["flow"] * flow * there.cooling,
                    }
                )  # fmt: skip
    write(
        "compressor_data_sheet.json",
        f"states from CoolProp {CoolProp.__version__}, least squares by numpy {numpy.__version__}",
        rows,
    )


for job in (efficiencies, data_sheets):
    job()
