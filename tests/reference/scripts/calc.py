"""Reference values for crates/calc, from general-purpose libraries.

    python calc.py OUT_DIR

writes calc_*.json. Each file names its source. The balance of a whole system is written here from the equations of the sources (see
the rules in crates/calc/src/explain.rs). At each outdoor temperature the evaporating, suction and condensing temperature are solved
for at once by scipy, with states from CoolProp at every step. The constants of practice are inputs of the comparison.
"""

import json
import math
import sys
from functools import lru_cache
from multiprocessing import Pool
from pathlib import Path
from types import SimpleNamespace

import CoolProp
import fluids
import ht
import numpy
import scipy
from CoolProp import AbstractState
from scipy.integrate import quad
from scipy.interpolate import BarycentricInterpolator
from scipy.optimize import brentq, minimize_scalar, root
from scipy.stats.qmc import Halton

OUT = Path(sys.argv[1])


def write(name, source, rows, indent="  ", **layout):
    lines = ",\n".join(indent + json.dumps(row, **layout) for row in rows)
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

PURE = {
    "R-134a": "R134a",
    "R-290": "Propane",
    "R-32": "R32",
    "R-22": "R22",
    "R-1234yf": "R1234yf",
    "R-600a": "IsoButane",
    "R-152a": "R152A",
    "R-1270": "Propylene",
}
BLENDS = {  # mass fractions: ANSI/ASHRAE 34
    "R-410A": {"R32": 0.5, "R125": 0.5},
    "R-448A": {"R32": 0.26, "R125": 0.26, "R1234yf": 0.20, "R134a": 0.21, "R1234ze(E)": 0.07},
    "R-449A": {"R32": 0.243, "R125": 0.247, "R1234yf": 0.253, "R134a": 0.257},
    "R-454B": {"R32": 0.689, "R1234yf": 0.311},
}

# Constants of practice that the plan states; see crates/calc.
ISENTROPIC = 0.65
CLEARANCE = 0.04
SUPERHEAT = 8.0
SUBCOOLING = 5.0
OTHER_DROPS = 0.1
VAPOUR_SHARE = 0.3
CUT_OUT_BELOW = 25.0
COMPRESSOR_LIFT = 15.0
AIR_SIDE = 0.85
AIR_EXPONENT = 0.6
RESISTANCE = (10.0, 1.0, 4.0)
USUAL_EFFECTIVENESS = 0.6
AIR_HEAT = 1006.0
STANDARD_DENSITY = 1.2
FAN_SHARE = 0.03
MOST_FLOODED = 0.95
BAFFLED = 0.3
COIL_HEAT = 2.0
COLDEST = 150.0
RESERVE = {"txv-conventional": 1.25, "txv-balanced": 1.6, "electronic-valve": 2.5, "fixed-orifice": 1.0}
ORIFICE_SHORTFALL = 1.4
SLOWEST = {"ball": 0.2, "sleeve": 0.4}
FRICTION = {"ball": 0.01, "sleeve": 0.02}
BREAKDOWN = {"permanent-split-capacitor": 1.6, "shaded-pole": 1.3}
METHODS = ("full_fan", "on_off", "staged", "speed_control", "flooding", "speed_with_baffle", "speed_with_flooding")
HOLDS, BELOW_NEED, STARVED, TRIPPED, STALLED = range(5)


class Pure:
    """States of a pure fluid."""

    def __init__(self, name):
        self.state = AbstractState("HEOS", PURE[name])
        self.hottest = self.state.T_critical() - 5

    def dew(self, temperature):
        """Pressure, enthalpy and heat capacity of saturated vapour."""
        self.state.update(CoolProp.QT_INPUTS, 1, temperature)
        return self.state.p(), self.state.hmass(), self.state.saturated_vapor_keyed_output(CoolProp.iCpmass)

    def bubble(self, pressure, _dew):
        """Temperature and enthalpy of saturated liquid."""
        self.state.update(CoolProp.PQ_INPUTS, pressure, 0)
        return self.state.T(), self.state.hmass()

    def single(self, phase, temperature, pressure):
        """Density, enthalpy and entropy."""
        self.state.specify_phase(phase)
        self.state.update(CoolProp.PT_INPUTS, pressure, temperature)
        self.state.unspecify_phase()
        return self.state.rhomass(), self.state.hmass(), self.state.smass()

    def at_entropy(self, pressure, entropy, _dew):
        """Density and enthalpy of vapour."""
        self.state.update(CoolProp.PSmass_INPUTS, pressure, entropy)
        return self.state.rhomass(), self.state.hmass()

    def at_enthalpy(self, pressure, enthalpy, _dew):
        """Temperature of vapour."""
        self.state.update(CoolProp.HmassP_INPUTS, enthalpy, pressure)
        return self.state.T()


class Blend:
    """States of a blend."""

    def __init__(self, name):
        parts = BLENDS[name]
        self.state = AbstractState("HEOS", "&".join(parts))
        self.pure = [AbstractState("HEOS", part) for part in parts]
        self.state.set_mass_fractions(list(parts.values()))
        self.shares = self.state.get_mole_fractions()
        # Below the mixed critical temperature by what keeps CoolProp's saturation solver on its feet.
        self.hottest = sum(share * pure.T_critical() for share, pure in zip(self.shares, self.pure)) - 9

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

    def dew(self, temperature):
        """Pressure, enthalpy and heat capacity of saturated vapour."""
        pressure, gas, aside = self.saturated_pressure(1, temperature), CoolProp.iphase_gas, 0.02
        below, at, above = (self.single(gas, temperature + step, pressure)[1] for step in (-aside, 0, aside))
        return pressure, at, (above - below) / (2 * aside)

    def bubble(self, pressure, dew):
        """Temperature and enthalpy of saturated liquid."""

        def residual(temperature):
            return math.log(self.saturated_pressure(0, temperature) / pressure)

        try:
            self.state.update(CoolProp.PQ_INPUTS, pressure, 0)
            temperature = self.state.T()
        except ValueError:
            temperature = brentq(residual, dew - 12, dew, xtol=1e-11, rtol=1e-14)
        return temperature, self.single(CoolProp.iphase_liquid, temperature, pressure)[1]

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

    def vapour_where(self, place, value, pressure, dew):
        def residual(temperature):
            return self.single(CoolProp.iphase_gas, temperature, pressure)[place] - value

        return brentq(residual, dew - 0.5, dew + 110, xtol=1e-11, rtol=1e-14)

    def at_entropy(self, pressure, entropy, dew):
        """Density and enthalpy of vapour."""
        return self.single(CoolProp.iphase_gas, self.vapour_where(2, entropy, pressure, dew), pressure)[:2]

    def at_enthalpy(self, pressure, enthalpy, dew):
        """Temperature of vapour."""
        return self.vapour_where(1, enthalpy, pressure, dew)


class Motor:
    """A fan motor under its controller, by shares of nameplate speed. Kloss's equation against a square-law load, or a plain signal."""

    def __init__(self, given):
        self.rated = given["rated_rpm"]
        self.breakdown = BREAKDOWN.get(given["motor"])
        self.synchronous = given["synchronous_rpm"]
        self.rated_slip = 1 - self.rated / self.synchronous
        if self.breakdown:
            share = brentq(lambda x: 2 * self.breakdown / (1 / x + x) - 1, 1.0001, 20, xtol=1e-15)
            self.breakdown_slip = self.rated_slip * share

    def rpm(self, output, load):
        """Speed at an output in air of a share of standard density: the fastest in balance."""
        if not self.breakdown:
            return self.rated * output
        # u²·2·T_b·s·s_b·(1 − s_n)² = d·(1 − s)²·(s² + s_b²), a polynomial of the slip.
        square = self.breakdown_slip**2
        pull = output**2 * 2 * self.breakdown * self.breakdown_slip * (1 - self.rated_slip) ** 2 / load
        slips = numpy.roots([1, -2, 1 + square, -2 * square - pull, square])
        slip = min(x.real for x in slips if abs(x.imag) < 1e-9 and 0 < x.real <= 1)
        return self.synchronous * (1 - slip)

    def stall(self, load, friction):
        """The lowest output that keeps a turning fan turning: on the way down from synchronous speed, the first minimum of the output that balances
        air and bearing."""
        if not self.breakdown:
            return 0.0
        # u² = N(s) / (2·T_b·s_b·s) with N = (d·(1 − s)²/(1 − s_n)² + f)·(s² + s_b²), so that its slope goes with s·N' − N.
        air = load / (1 - self.rated_slip) ** 2 * numpy.poly1d([1, -2, 1])
        whole = (air + friction) * numpy.poly1d([1, 0, self.breakdown_slip**2])
        slope = numpy.poly1d([1, 0]) * whole.deriv() - whole
        turns = sorted(x.real for x in slope.roots if abs(x.imag) < 1e-9 and 0 < x.real < 1)
        slip = turns[0] if turns else 1.0
        return math.sqrt(whole(slip) / (2 * self.breakdown * self.breakdown_slip * slip))

    def lowest(self, slowest, load):
        """The output that keeps a share of full speed."""
        full = self.rpm(1.0, load)
        return brentq(lambda u: self.rpm(u, load) - slowest * full, 0.01, 1.0, xtol=1e-15, rtol=1e-14)


def solved(equations, start):
    """The root of several equations near a start, or None."""
    try:
        found = root(equations, start, method="hybr", options={"xtol": 1e-13})
        rest = max(abs(value) for value in equations(found.x))
    except (ValueError, ZeroDivisionError, OverflowError):
        return None
    return found.x if rest < 1e-9 else None


def log_mean(a, b):
    return a if a == b else (a - b) / math.log1p((a - b) / b)


class System:
    """One system: scaled from its known point, then solved anywhere."""

    def __init__(self, fluid, given):
        self.fluid, self.given = fluid, given
        self.high, self.low = lru_cache(64)(self.high_side), lru_cache(64)(self.low_side)
        self.return_air = given["return_air_K"]
        self.known_outdoor = given["known_outdoor_K"]
        self.known = (given["evaporating_K"], self.known_outdoor + given["over_ambient_K"])
        evaporating, condensing = self.known
        head = fluid.dew(condensing)[0]
        self.subcooling = min(SUBCOOLING, (fluid.bubble(head, condensing)[0] - self.known_outdoor) / 2)

        # The compressor's displacement, the evaporator's conductance and the metering device's size from the known point.
        self.displacement, self.conductance = 1.0, 1.0
        units = self.units(evaporating, evaporating + SUPERHEAT)
        at = self.states(evaporating, units, condensing)
        wanted = given["cooling_W"] / (at.suction_enthalpy - at.liquid_enthalpy)
        self.displacement = wanted / at.flow
        at = self.states(evaporating, units, condensing)
        self.conductance = sum(self.evaporator(at))
        self.known_flow, self.known_density = wanted, at.liquid_density
        self.drops = OTHER_DROPS * (at.head - at.suction_pressure)
        self.known_drop = (1 - OTHER_DROPS) * (at.head - at.suction_pressure)
        self.reserve = RESERVE[given["metering"]]
        self.cut_out = evaporating - CUT_OUT_BELOW
        self.at_known = at

        # The condenser.
        self.atmosphere = fluids.ATMOSPHERE_1976(given["elevation_m"]).P
        middle = given["over_ambient_K"] - (condensing - at.bubble) / 2
        self.airflow = at.rejected / (USUAL_EFFECTIVENESS * middle * AIR_HEAT * self.density(self.known_outdoor))
        self.known_mass = self.airflow * self.density(self.known_outdoor)
        self.coil = 1.0

        def surplus(log):
            self.coil = math.exp(log)
            return 1 - 1 / sum(self.zones(at, self.known_outdoor, self.air(self.known_outdoor, 1.0)))

        scale = math.log(self.known_mass * AIR_HEAT)
        surplus(brentq(surplus, scale - 7, scale + 1.5, xtol=1e-14, rtol=1e-14))
        self.fan_power = FAN_SHARE * at.rejected
        self.motor = Motor(given)
        self.nodes()

    def density(self, outdoor):
        return self.atmosphere / (8314.32 / 28.9644 * outdoor)

    def high_side(self, condensing):
        head, dew_enthalpy, _ = self.fluid.dew(condensing)
        bubble, bubble_enthalpy = self.fluid.bubble(head, condensing)
        liquid = bubble - self.subcooling
        density, enthalpy, _ = self.fluid.single(CoolProp.iphase_liquid, liquid, head)
        return head, dew_enthalpy, bubble, bubble_enthalpy, liquid, density, enthalpy

    def low_side(self, evaporating):
        return self.fluid.dew(evaporating)

    def units(self, evaporating, suction):
        return math.log((self.return_air - evaporating) / (self.return_air - suction))

    def states(self, evaporating, units, condensing):
        """Everything round the circuit, in balance or not.

        The transfer units of the superheating part, ln((T_ra - T_e) / (T_ra - T_1)), stand for the suction temperature: where the
        evaporator is starved, that comes within nothing of the return air.
        """
        suction = self.return_air - (self.return_air - evaporating) * math.exp(-units)
        head, dew_enthalpy, bubble, bubble_enthalpy, liquid, liquid_density, liquid_enthalpy = self.high(float(condensing))
        pressure, boiled_enthalpy, heat_capacity = self.low(float(evaporating))
        density, enthalpy, entropy = self.fluid.single(CoolProp.iphase_gas, suction, pressure)
        squeezed, isentropic = self.fluid.at_entropy(head, entropy, condensing)
        volumetric = 1 - CLEARANCE * (squeezed / density - 1)
        flow = self.displacement * density * volumetric
        discharge_enthalpy = enthalpy + (isentropic - enthalpy) / ISENTROPIC
        return SimpleNamespace(
            evaporating=evaporating,
            suction=suction,
            units=units,
            condensing=condensing,
            head=head,
            suction_pressure=pressure,
            flow=flow,
            heat_capacity=heat_capacity,
            boiled_enthalpy=boiled_enthalpy,
            suction_enthalpy=enthalpy,
            discharge_enthalpy=discharge_enthalpy,
            discharge=self.fluid.at_enthalpy(head, discharge_enthalpy, condensing),
            dew_enthalpy=dew_enthalpy,
            bubble=bubble,
            bubble_enthalpy=bubble_enthalpy,
            liquid=liquid,
            liquid_density=liquid_density,
            liquid_enthalpy=liquid_enthalpy,
            rejected=flow * (discharge_enthalpy - liquid_enthalpy),
            cooling=flow * (enthalpy - liquid_enthalpy),
            compression=flow * (discharge_enthalpy - enthalpy),
        )

    def evaporator(self, at):
        """Wetted and superheating share."""
        over = self.return_air - at.evaporating
        wetted = at.flow * (at.boiled_enthalpy - at.liquid_enthalpy) / (self.conductance * over)
        return wetted, at.flow * at.heat_capacity / (VAPOUR_SHARE * self.conductance) * at.units

    def most(self, at):
        """Flow of the fully open device."""
        a = self.reserve**2 * at.liquid_density / self.known_density / self.known_drop
        return self.known_flow * math.sqrt(a * (at.head - at.suction_pressure) / (1 + a * self.drops))

    def low_balance(self, at, opened):
        """Residuals of evaporator and metering device."""
        metering = at.flow / self.most(at) - 1 if opened else (at.suction - at.evaporating - SUPERHEAT) / SUPERHEAT
        return sum(self.evaporator(at)) - 1, metering

    def circuit(self, condensing, opened, start):
        """The circuit at a condensing temperature."""

        def equations(x):
            return self.low_balance(self.states(x[0], x[1], condensing), opened)

        found = solved(equations, start)
        if found is None:
            found = self.circuit_bracketed(condensing, opened)
        return self.states(found[0], found[1], condensing)

    def circuit_bracketed(self, condensing, opened):
        """As circuit, by nested bracketing: slower, and sure."""

        def units(evaporating):
            if not opened:
                return self.units(evaporating, evaporating + SUPERHEAT)

            def coil(x):
                return self.low_balance(self.states(evaporating, x, condensing), True)[0]

            return 0.0 if coil(0.0) > 0 else brentq(coil, 0.0, 200.0, xtol=1e-12, rtol=1e-14)

        def rest(evaporating):
            return self.low_balance(self.states(evaporating, units(evaporating), condensing), opened)[1 if opened else 0]

        highest = min(self.return_air, condensing) - (0 if opened else SUPERHEAT) - 1e-6
        evaporating = brentq(rest, self.cut_out - 10, highest, xtol=1e-11, rtol=1e-14)
        return evaporating, units(evaporating)

    def nodes(self):
        """Circuits from hot to cold, between which balances are then bracketed; knee and trip are among them."""
        condensing = self.known[1]
        hottest = min(self.fluid.hottest, condensing + 16)
        fed = [self.at_known]
        while fed[0].condensing + 4 < hottest:
            fed.insert(0, self.circuit(fed[0].condensing + 4, False, (fed[0].evaporating, fed[0].units)))
        last = self.at_known
        # Towards the cold the device opens further: down to where it is fully open.
        if self.reserve > 1:
            while self.most(last) > last.flow:
                fed.append(last)
                last = self.circuit(last.condensing - 2, False, (last.evaporating, last.units))

            def opening(x):
                at = self.states(x[0], self.units(x[0], x[0] + SUPERHEAT), x[1])
                return self.low_balance(at, False)[0], self.low_balance(at, True)[1]

            found = solved(opening, (last.evaporating, last.condensing + 1))
            last = self.states(found[0], self.units(found[0], found[0] + SUPERHEAT), found[1])
            fed.append(last)
        self.knee = last
        starved, step = [], 1.0
        while last.evaporating > self.cut_out:
            before = starved[-1] if starved else self.knee
            start = (2 * last.evaporating - before.evaporating, 2 * last.units - before.units)
            starved.append(last)
            last = self.circuit(last.condensing - step, True, start)

        def tripping(x):
            return self.low_balance(self.states(self.cut_out, x[0], x[1]), True)

        part = (self.cut_out - last.evaporating) / (starved[-1].evaporating - last.evaporating)
        start = (last.units + part * (starved[-1].units - last.units), last.condensing + part * step)
        found = solved(tripping, start)
        assert found is not None, self.given
        starved.append(self.states(self.cut_out, found[0], found[1]))
        self.line = fed + starved[1:]

    def at(self, condensing):
        """The circuit at a condensing temperature."""
        near = min(self.line, key=lambda at: abs(at.condensing - condensing))
        return self.circuit(condensing, condensing < self.knee.condensing, (near.evaporating, near.units))

    # Air

    def share(self, speed, idle):
        return math.sqrt(speed**2 + idle**2 * (1 - speed**2))

    def air(self, outdoor, share):
        """What each zone passes a kelvin if it had the whole coil."""
        mass = self.density(outdoor) * self.airflow * share
        rate, side = mass * AIR_HEAT, AIR_SIDE * (mass / self.known_mass) ** -AIR_EXPONENT
        return [-rate * math.expm1(-self.coil / ((1 - AIR_SIDE) * k + side) / rate) for k in RESISTANCE]

    def zones(self, at, outdoor, passing):
        ends = [end - outdoor for end in (at.discharge, at.condensing, at.bubble, at.liquid)]
        if min(ends) <= 0:
            return [math.inf] * 3
        heats = (at.discharge_enthalpy, at.dew_enthalpy, at.bubble_enthalpy, at.liquid_enthalpy)
        return [at.flow * (heats[z] - heats[z + 1]) / (passing[z] * log_mean(ends[z], ends[z + 1])) for z in range(3)]

    def crowding(self, at, outdoor, passing, free):
        """Above zero where the circuit would need more of the coil than is free."""
        return 1 - free / sum(self.zones(at, outdoor, passing))

    def balance(self, outdoor, passing, free=1.0):
        """The warmest balance; None where there is none above the low-pressure cut-out. `passing` is a function of the circuit."""

        def crowding(at):
            return self.crowding(at, outdoor, passing(at), free)

        values = [crowding(at) for at in self.line]
        if values[0] >= 0:
            return "hot"
        for place in range(1, len(values)):
            if values[place] >= 0:
                return self.between(self.line[place - 1], self.line[place], values[place - 1 : place + 1], outdoor, passing, free)
            top = values[place] > max(values[place - 1], values[min(place + 1, len(values) - 1)])
            if top and values[place] > -0.02 and place + 1 < len(values):
                # A balance may hide between two circuits that both leave some of the coil.
                hot, cold = self.line[place - 1].condensing, self.line[place + 1].condensing
                peak = minimize_scalar(lambda t: -crowding(self.at(t)), bounds=(cold, hot), method="bounded", options={"xatol": 1e-7})
                if peak.fun <= 0:
                    found = brentq(lambda t: crowding(self.at(t)), peak.x, hot, xtol=1e-10)
                    return self.at(found)
        return None

    def between(self, hot, cold, values, outdoor, passing, free):
        opened = hot.condensing <= self.knee.condensing
        part = values[0] / (values[0] - values[1])

        def equations(x):
            at = self.states(*x)
            return (*self.low_balance(at, opened), self.crowding(at, outdoor, passing(at), free))

        start = [getattr(hot, name) * (1 - part) + getattr(cold, name) * part for name in ("evaporating", "units", "condensing")]
        found = solved(equations, start)
        if found is not None and cold.condensing <= found[2] <= hot.condensing:
            return self.states(*found)
        bracketed = brentq(
            lambda t: self.crowding(self.at(t), outdoor, passing(self.at(t)), free), cold.condensing, hot.condensing, xtol=1e-11
        )
        return self.at(bracketed)


class Methods:
    """The methods of holding head pressure on a system."""

    def __init__(self, system):
        self.system, given, fluid = system, system.given, system.fluid
        self.idle = given["idle_airflow"]
        compressor = fluid.dew(given["evaporating_K"] + COMPRESSOR_LIFT)[0]
        metering = system.knee.condensing
        if given["metering"] == "fixed-orifice":
            metering = self.orifice_need()
        self.parts = (fluid.dew(metering)[0], compressor)
        self.need = max(metering, given["evaporating_K"] + COMPRESSOR_LIFT)
        room = system.known[1] - self.need
        span = min(given["throttling_K"], room) if room >= 2 else 2.0
        self.full = self.need + span
        self.at_need, self.at_middle = system.at(self.need), system.at(self.need + span / 2)
        self.pressures = (self.at_need.head, fluid.dew(self.full)[0])
        cold = system.density(given["outdoor_low_K"]) / STANDARD_DENSITY
        self.minimum = system.motor.lowest(SLOWEST[given["bearing"]], cold)
        self.lowest_rpm = SLOWEST[given["bearing"]] * system.motor.rpm(1.0, cold)
        stall = min(self.stall(given["outdoor_low_K"]), 1.0)
        if stall > self.minimum:
            self.minimum, self.lowest_rpm = stall, system.motor.rpm(stall, cold)
        # With k of N fans on one open space: N·V = k·√(2 − V²) − (N − k)·V.
        fans = given["fans"]
        self.stages = [math.sqrt(2 * k * k / ((2 * fans - k) ** 2 + k * k)) for k in range(1, fans + 1)]

    def orifice_need(self):
        """Where the orifice passes the controlled flow but for the shortfall that is put up with."""
        system = self.system

        def short(condensing):
            at = system.circuit(condensing, False, (system.known[0], system.at_known.units))
            return ORIFICE_SHORTFALL * system.most(at) / at.flow - 1

        return brentq(short, system.known[0] + 1, system.known[1], xtol=1e-11, rtol=1e-14)

    def speed(self, output, outdoor):
        load = self.system.density(outdoor) / STANDARD_DENSITY
        return self.system.motor.rpm(output, load) / self.system.motor.rpm(1.0, load)

    def stall(self, outdoor):
        """The output below which the fan stalls; bearings stiffen twofold for every 20 K below 20 °C."""
        friction = FRICTION[self.system.given["bearing"]] * 2 ** (max(293.15 - outdoor, 0.0) / 20)
        return self.system.motor.stall(self.system.density(outdoor) / STANDARD_DENSITY, friction)

    def power(self, speed, outdoor):
        motor, load = self.system.motor, self.system.density(outdoor) / STANDARD_DENSITY
        slip = max(motor.rated / (motor.rpm(1.0, load) * speed), 1.0) if motor.breakdown and speed > 0 else 1.0
        return self.system.fan_power * load * speed**3 * slip

    def hold(self, least, free):
        """Lowest outdoor temperature with a balance at or above the need. `least` gives the share of airflow at an outdoor temperature."""

        def outdoor(at):
            def crowding(t):
                return self.system.crowding(at, t, self.system.air(t, least(t)), free)

            if crowding(COLDEST) >= 0:
                return COLDEST
            return brentq(crowding, COLDEST, at.condensing, xtol=1e-11, rtol=1e-14)

        warmer = [at for at in self.system.line if at.condensing > self.need]
        limits = [outdoor(at) for at in warmer] + [outdoor(self.at_need)]
        place = limits.index(min(limits))
        if place in (0, len(warmer)):
            return limits[place]
        bounds = ([*warmer, self.at_need][place + 1].condensing, warmer[place - 1].condensing)
        found = minimize_scalar(lambda t: outdoor(self.system.at(t)), bounds=bounds, method="bounded", options={"xatol": 1e-6})
        return min(found.fun, limits[place])

    def holds(self):
        share, idle, slow = self.system.share, self.idle, lambda t: self.speed(self.minimum, t)
        liquid = 1 - MOST_FLOODED
        return [
            self.hold(lambda t: 1.0, 1.0),
            self.hold(lambda t: share(0.0, idle), 1.0),
            self.hold(lambda t: share(self.stages[0], idle), 1.0),
            self.hold(lambda t: share(slow(t), idle), 1.0),
            self.hold(lambda t: 1.0, liquid),
            self.hold(lambda t: share(slow(t), BAFFLED * idle), 1.0),
            self.hold(lambda t: share(slow(t), idle), liquid),
        ]

    # One outdoor temperature

    def stays(self, found, condensing):
        return found == "hot" or (found is not None and found.condensing >= condensing)

    def steady(self, outdoor, share, free=1.0):
        passing = self.system.air(outdoor, share)
        return self.system.balance(outdoor, lambda at: passing, free)

    def point(self, outdoor, found, speed, power, flooded=0.0, starts=None):
        """What a balance is like, as a row; the compressor stands where there is none."""
        if found is None:
            return [TRIPPED, outdoor, speed, power]
        condition = HOLDS if found.condensing >= self.need - 1e-7 else BELOW_NEED
        if condition == BELOW_NEED and found.condensing < self.system.knee.condensing:
            condition = STARVED
        row = [condition, found.condensing, speed, power, found.evaporating, found.suction, found.flow, found.cooling, found.compression]
        return [*row, flooded] if starts is None else [*row, flooded, starts]

    def stepped(self, outdoor, steps):
        """Fans in steps (speed, share of airflow, power), from least to most air; off at the need, on at the full-speed point."""
        more = None
        for step in reversed(steps):
            found = self.steady(outdoor, step[1])
            if not self.stays(found, self.need):
                more = step
                continue
            if more is None or not self.stays(found, self.full):
                return self.point(outdoor, found, step[0], step[2])
            # Neither keeps it between the two points: back and forth, at the middle.
            sums = [sum(self.system.zones(self.at_middle, outdoor, self.system.air(outdoor, s[1]))) for s in (step, more)]
            falling, rising = 1 / sums[1] - 1, 1 - 1 / sums[0]
            on = rising / (falling + rising)
            stored = COIL_HEAT * (self.full - self.need)
            starts = 1 / (stored / falling + stored / rising)
            speed, power = (on * b + (1 - on) * a for a, b in zip(step[::2], more[::2]))
            return self.point(outdoor, self.at_middle, speed, power, starts=starts)
        least = steps[0]
        return self.point(outdoor, self.steady(outdoor, least[1]), least[0], least[2])

    def flooded(self, outdoor, speed, share):
        found, flooded = self.steady(outdoor, share), 0.0
        if not self.stays(found, self.need):
            found, flooded = self.steady(outdoor, share, 1 - MOST_FLOODED), MOST_FLOODED
            if self.stays(found, self.need):
                found = self.at_need
                flooded = 1 - sum(self.system.zones(found, outdoor, self.system.air(outdoor, share)))
        return self.point(outdoor, found, speed, self.power(speed, outdoor), flooded)

    def asked(self, at):
        """Output of the controller."""
        if self.system.given["sensing"] == "liquid-pressure":
            part = (at.head - self.pressures[0]) / (self.pressures[1] - self.pressures[0])
        else:
            # A coil sensor on a pure fluid sees the condensing temperature.
            part = (at.condensing - self.need) / (self.full - self.need)
        return self.minimum + (1 - self.minimum) * min(max(part, 0.0), 1.0)

    def modulated(self, outdoor, idle, floods):
        """The row and the output of the controller."""
        speed = lru_cache(4096)(lambda output: self.speed(output, outdoor))
        air = lru_cache(4096)(lambda output: self.system.air(outdoor, self.system.share(speed(output), idle)))
        found = self.system.balance(outdoor, lambda at: air(self.asked(at)))
        output = self.minimum if found is None else self.asked(found)
        turning = speed(output)
        share = self.system.share(turning, idle)
        if floods and not self.stays(found, self.need):
            row = self.flooded(outdoor, turning, share)
        else:
            row = self.point(outdoor, found, turning, self.power(turning, outdoor))
        if row[0] != TRIPPED and output < self.stall(outdoor) * (1 - 1e-9):
            row[0] = STALLED
        return row, output

    def rung(self, outdoor):
        """Rows of all methods, and the outputs of the three that a controller moves."""
        share, idle = self.system.share, self.idle
        full_power = self.power(1.0, outdoor)
        full = self.point(outdoor, self.steady(outdoor, 1.0), 1.0, full_power)
        fans = len(self.stages)
        stages = [(k / fans, share(self.stages[k - 1], idle), full_power * k / fans) for k in range(1, fans + 1)]
        slowed = [self.modulated(outdoor, self.idle * shielded, floods) for shielded, floods in ((1, False), (BAFFLED, False), (1, True))]
        rows = [
            full,
            self.stepped(outdoor, [(0.0, share(0.0, idle), 0.0), (1.0, 1.0, full_power)]),
            self.stepped(outdoor, stages),
            slowed[0][0],
            self.flooded(outdoor, 1.0, 1.0),
            slowed[1][0],
            slowed[2][0],
        ]
        return rows, [output for _, output in slowed]


def rounded(value):
    """Ten significant digits, so that the last one stays within what `cargo xtask test` lets pass."""
    if isinstance(value, (list, tuple)):
        return [rounded(item) for item in value]
    return float(f"{value:.10g}") if isinstance(value, float) else value


def alike(row, other):
    return len(row) == len(other) and all(math.isclose(a, b, rel_tol=1e-8, abs_tol=1e-12) for a, b in zip(row, other))


def solve(given):
    fluid = Pure(given["refrigerant"]) if given["refrigerant"] in PURE else Blend(given["refrigerant"])
    system = System(fluid, given)
    methods = Methods(system)
    known = system.at_known
    points = []
    for outdoor in given["outdoor_K"]:
        rows, outputs = methods.rung(outdoor)
        # Methods that come to the same share one row.
        distinct, of = [], []
        for row in rows:
            place = next((place for place, other in enumerate(distinct) if alike(row, other)), len(distinct))
            if place == len(distinct):
                distinct.append(row)
            of.append(place)
        points.append({"outputs": rounded(outputs), "of": of, "rows": rounded(distinct)})
    zones = system.zones(known, system.known_outdoor, system.air(system.known_outdoor, 1.0))
    return {
        "system": given,
        "plan": {
            "atmosphere_Pa": rounded(system.atmosphere),
            "flow_kg_s": rounded(known.flow),
            "heat_rejected_W": rounded(known.rejected),
            "discharge_K": rounded(known.discharge),
            "airflow_m3_s": rounded(system.airflow),
            "conductance_W_K": rounded(system.coil),
            "zones": rounded(zones),
            "valve_Pa": rounded(methods.parts[0]),
            "compressor_Pa": rounded(methods.parts[1]),
            "need_K": rounded(methods.need),
            "minimum_output": rounded(methods.minimum),
            "lowest_rpm": rounded(methods.lowest_rpm),
            "full_speed_Pa": rounded(methods.pressures[1]),
            "throttling_Pa": rounded(methods.pressures[1] - methods.pressures[0]),
            "hold_K": rounded(methods.holds()),
            "points": points,
        },
    }


MOTORS = (  # kind, synchronous and nameplate speed, supply frequency
    ("permanent-split-capacitor", 1200.0, 1075.0, 60.0),
    ("permanent-split-capacitor", 900.0, 825.0, 60.0),
    ("shaded-pole", 1800.0, 1550.0, 60.0),
    ("electronically-commutated", 1200.0, 1140.0, 60.0),
    ("permanent-split-capacitor", 1000.0, 900.0, 50.0),
    ("three-phase", 1500.0, 1420.0, 50.0),
    ("shaded-pole", 1500.0, 1300.0, 50.0),
)
DUTIES = ((-3.0, 12.0), (-16.0, -2.0), (-38.0, -20.0))


def system(number, name, place):
    """A system at a place of the unit cube."""

    def spread(low, high, digits=2):
        return round(low + (high - low) * float(place.pop(0)), digits)

    place = list(place)
    motor, synchronous, rated, frequency = MOTORS[number % len(MOTORS)]
    # No freezers with R-32: one stage would press its vapour hotter than its equation of state holds for.
    evaporating = spread(*DUTIES[(number // 3) % (2 if name == "R-32" else 3)])
    known_outdoor = spread(20.0, 42.0)
    hottest = min(35.0, known_outdoor + 10)
    shift = spread(0.0, 1.0, 4)
    blend = name in BLENDS
    steps = 3 if blend else 3 + number % 2
    return {
        "refrigerant": name,
        "metering": list(RESERVE)[(number // 2) % 4],
        "motor": motor,
        "bearing": ("ball", "sleeve")[(number // 5) % 2],
        "sensing": "liquid-pressure" if blend else ("liquid-pressure", "coil-temperature")[(number // 11) % 2],
        "cooling_W": round(10 ** spread(3.0, 5.3, 6), 1),
        "evaporating_K": round(evaporating + 273.15, 2),
        "return_air_K": round(evaporating + 273.15 + spread(9.2, 24.0), 2),
        "known_outdoor_K": round(known_outdoor + 273.15, 2),
        "over_ambient_K": spread(9.0 if blend else 4.0, 20.0),
        "elevation_m": spread(-200.0, 3500.0, 0),
        "fans": 1 + (number // 7) % 8,
        "synchronous_rpm": synchronous,
        "rated_rpm": rated,
        "frequency_Hz": frequency,
        "idle_airflow": spread(0.02, 0.3, 4),
        "throttling_K": spread(2.0, 14.0),
        "outdoor_low_K": round(273.15 + spread(-45.0, 5.0), 2),
        "outdoor_K": [round(238.15 + (hottest + 35) * (step + shift) / steps, 2) for step in range(steps)],
    }


def plans():
    count = 528
    places = Halton(11, scramble=False).random(count + 1)[1:]
    names = [list(PURE)[number % len(PURE)] for number in range(count)]
    names[::41] = [list(BLENDS)[number % len(BLENDS)] for number in range(len(names[::41]))]
    with Pool(2) as pool:
        rows = pool.map(solve, [system(*each) for each in zip(range(count), names, places)], chunksize=5)
    write(
        "calc_plan.json",
        f"equations of the sources solved by scipy {scipy.__version__} with states from CoolProp {CoolProp.__version__}, "
        f"atmosphere from fluids {fluids.__version__}",
        rows,
        indent="",
        separators=(",", ":"),
    )


for job in (air, effectiveness, phase_cut, plans):
    job()
