"""Reference values for the winter start, by scipy with states of CoolProp.

    python winter_start.py OUT_DIR

writes winter_start_pull_down.json and winter_start_migration.json. The balances are written here from their sources and asked of CoolProp at
every step, with no tables; integrated by scipy, whose events find when the low-pressure switch opens and closes. Constants of practice are
inputs of the comparison.
"""

import json
import math
import sys
from pathlib import Path

import CoolProp
import scipy
from CoolProp import AbstractState
from scipy.integrate import solve_ivp

OUT = Path(sys.argv[1])
FLUIDS = {"R-134a": "R134a", "R-290": "Propane", "R-32": "R32", "R-1234yf": "R1234yf"}
EFFICIENCY, LAMINAR, CLOSING = 0.65, 1e3, 0.2
RESERVE = {"txv-conventional": 1.25, "electronic-valve": 2.5, "fixed-orifice": 1.0}


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / name).write_text(f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


class Fluid:
    def __init__(self, name):
        self.state = AbstractState("HEOS", FLUIDS[name])

    def pressure(self, temperature):
        self.state.update(CoolProp.QT_INPUTS, 1, temperature)
        return self.state.p()

    def liquid(self, temperature):
        self.state.update(CoolProp.QT_INPUTS, 0, temperature)
        return self.state.p(), self.state.rhomass(), self.state.hmass(), self.state.cpmass()

    def vapor(self, temperature):
        """Pressure, density, enthalpy, slope of the density with temperature along saturation, isentropic exponent."""
        self.state.update(CoolProp.QT_INPUTS, 1, temperature)
        p, density, enthalpy = self.state.p(), self.state.rhomass(), self.state.hmass()
        slope = self.state.first_saturation_deriv(CoolProp.iDmass, CoolProp.iT)
        self.state.specify_phase(CoolProp.iphase_gas)
        self.state.update(CoolProp.DmassT_INPUTS, density, temperature)
        sound = self.state.speed_sound()
        self.state.unspecify_phase()
        return p, density, enthalpy, slope, sound * sound * density / p

    def density(self, temperature, pressure, phase):
        self.state.specify_phase(phase)
        self.state.update(CoolProp.PT_INPUTS, pressure, temperature)
        self.state.unspecify_phase()
        return self.state.rhomass()


class Start:
    def __init__(self, case):
        self.case, self.fluid = case, Fluid(case["refrigerant"])
        p, density, enthalpy, _, _ = self.fluid.vapor(case["evaporating_K"])
        high, liquid, liquid_enthalpy, _ = self.fluid.liquid(case["condensing_K"])
        flow = case["cooling_W"] / (enthalpy - liquid_enthalpy)
        self.swept = flow / density
        self.valve = RESERVE[case["metering"]] * flow / math.sqrt(liquid * (high - p))
        self.evaporator = case["cooling_W"] / (case["room_K"] - case["evaporating_K"])

    def rates(self, _, y):
        case, (dew, mass, warm) = self.case, y
        p, density, enthalpy, slope, exponent = self.fluid.vapor(dew)
        _, _, boiling, heat_capacity = self.fluid.liquid(dew)
        head, liquid, liquid_enthalpy, _ = self.fluid.liquid(warm)
        latent, held = enthalpy - boiling, case["charge_kg"]
        drop = max(0.0, head - p)
        opening = min(1.0, max(0.0, (1 + CLOSING - mass / held) / CLOSING))
        fed = self.valve * opening * math.sqrt(liquid) * drop / math.sqrt(drop + LAMINAR)
        pumped = self.swept * density
        flash = (liquid_enthalpy - boiling) / latent
        boiled = self.evaporator / latent * min(1.0, max(0.0, mass / held)) * max(0.0, case["room_K"] - dew)
        sensible = max(0.0, mass) * heat_capacity / latent
        d_dew = (flash * fed + boiled - pumped) / (case["volume_m3"] * slope + sensible)
        d_mass = (1 - flash) * fed - boiled + sensible * d_dew
        power = (exponent - 1) / exponent
        work = p / density / power * (max(1.0, head / p) ** power - 1) / EFFICIENCY
        lost = case["conductance_W_K"] * (warm - case["outdoor_K"])
        d_warm = (pumped * (enthalpy - liquid_enthalpy + work) + case["heater_W"] - lost) / case["heat_capacity_J_K"]
        if warm >= case["condensing_K"]:
            d_warm = min(0.0, d_warm)
        return [d_dew, d_mass, d_warm]

    def run(self):
        case = self.case

        def cut_out(_, y):
            return self.fluid.pressure(y[0]) - case["cut_out_Pa"]

        def cut_in(_, y):
            return self.fluid.pressure(y[0]) - case["cut_in_Pa"]

        cut_out.direction, cut_in.direction = -1, 1
        self.fluid.state.update(CoolProp.PQ_INPUTS, case["suction_Pa"], 1)
        dew = self.fluid.state.T()
        start = [dew, case["charge_kg"] * case["share"], case["liquid_K"]]
        found = solve_ivp(
            self.rates, (0, case["horizon_s"]), start, method="DOP853", rtol=1e-12, atol=1e-12, max_step=1.0,
            events=(cut_out, cut_in), t_eval=[0.1 * case["horizon_s"], 0.5 * case["horizon_s"], case["horizon_s"]],
        )  # fmt: skip
        times = [(t, "open") for t in found.t_events[0]] + [(t, "close") for t in found.t_events[1]]
        is_open = case["suction_Pa"] < case["cut_out_Pa"]
        first, until = (0.0 if is_open else None), None
        for time, what in sorted(times):
            if what == "open" and not is_open:
                is_open, first = True, time if first is None else first
            elif what == "close" and is_open:
                is_open, until = False, time
        moments = [
            {"time_s": float(t), "suction_Pa": self.fluid.pressure(d), "head_Pa": self.fluid.pressure(w), "liquid_kg": float(m)}
            for t, d, m, w in zip(found.t, *found.y)
        ]
        return {"first_s": first, "until_s": None if is_open else until, "open": bool(is_open), "moments": moments}


def pull_downs():
    rows = []
    base = {
        "cooling_W": 8000.0, "volume_m3": 0.006, "charge_kg": 0.4, "share": 0.0, "heater_W": 0.0, "room_K": 293.15,
        "evaporating_K": 278.15, "condensing_K": 313.15, "horizon_s": 400.0,
    }  # fmt: skip
    cases = [
        {"refrigerant": "R-134a", "metering": "txv-conventional", "outdoor_K": 263.15, "heat_capacity_J_K": 15e3, "conductance_W_K": 25.0},
        {"refrigerant": "R-134a", "metering": "txv-conventional", "outdoor_K": 263.15, "heat_capacity_J_K": 15e3, "conductance_W_K": 900.0},
        {"refrigerant": "R-290", "metering": "fixed-orifice", "outdoor_K": 258.15, "heat_capacity_J_K": 20e3, "conductance_W_K": 30.0},
        {"refrigerant": "R-32", "metering": "electronic-valve", "outdoor_K": 253.15, "heat_capacity_J_K": 12e3, "conductance_W_K": 20.0, "share": 1.0},
        {"refrigerant": "R-1234yf", "metering": "txv-conventional", "outdoor_K": 268.15, "heat_capacity_J_K": 30e3, "conductance_W_K": 50.0, "heater_W": 300.0},
        {"refrigerant": "R-134a", "metering": "electronic-valve", "outdoor_K": 283.15, "heat_capacity_J_K": 15e3, "conductance_W_K": 25.0, "share": 0.5},
    ]  # fmt: skip
    for number, case in enumerate(cases):
        case = {**base, **case}
        fluid = Fluid(case["refrigerant"])
        case["liquid_K"] = case["outdoor_K"] + (12.0 if case["heater_W"] else 0.0)
        # With liquid left the low side keeps the room's pressure, else it has come down to the cold side's.
        case["suction_Pa"] = fluid.pressure(case["room_K"] if case["share"] else case["outdoor_K"])
        case["cut_out_Pa"] = fluid.pressure(case["evaporating_K"] - (14.0, 20.0)[number % 2])
        case["cut_in_Pa"] = fluid.pressure(case["evaporating_K"] - 10.0)
        rows.append({"case": case, **Start(case).run()})
    write("winter_start_pull_down.json", f"scipy {scipy.__version__}, states from CoolProp {CoolProp.__version__}", rows)


def migrations():
    """The part of a given number holds liquid and vapour; colder ones are full of liquid, warmer ones of vapour."""
    rows = []
    for name in FLUIDS:
        fluid = Fluid(name)
        for filled, liquid_share, temperatures in ((0, 0.4, (258.15, 273.15, 293.15)), (1, 0.3, (250.15, 262.15, 300.15)), (0, 0.95, (268.15, 283.15, 298.15))):
            volumes = (0.004, 0.003, 0.005)
            pressure, liquid, _, _ = fluid.liquid(temperatures[filled])
            masses = []
            for number, (t, volume) in enumerate(zip(temperatures, volumes)):
                if number < filled:
                    masses.append(volume * fluid.density(t, pressure, CoolProp.iphase_liquid))
                elif number == filled:
                    vapor = fluid.vapor(t)[1]
                    masses.append(volume * (liquid_share * liquid + (1 - liquid_share) * vapor))
                else:
                    masses.append(volume * fluid.density(t, pressure, CoolProp.iphase_gas))
            rows.append(
                {
                    "refrigerant": name, "temperatures_K": temperatures, "volumes_m3": volumes, "pressure_Pa": pressure,
                    "masses_kg": masses, "part": filled, "liquid_share": liquid_share,
                }
            )  # fmt: skip
    write("winter_start_migration.json", f"states from CoolProp {CoolProp.__version__}", rows)


for job in (pull_downs, migrations):
    job()
