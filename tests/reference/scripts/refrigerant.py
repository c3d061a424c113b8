#!/usr/bin/env python3
"""Writes reference states of refrigerants from CoolProp into OUT_DIR.

    python refrigerant.py OUT_DIR

refrigerant_pure.csv    saturation of pure fluids, on temperatures from -100 °C (or the triple point) to 0.9999 of critical
refrigerant_blends.csv  bubble and dew points of blends by mass fractions, from -90 °C to 2 K below critical, where CoolProp converges
refrigerant_states.csv  single-phase states by temperature and pressure
refrigerant_flash.csv   two-phase states of blends by pressure and quality
refrigerant_teqp.csv    bubble points by teqp, a second and unrelated code, from its own copy of the published coefficients

Enthalpies and entropies are differences from those of saturated (bubble) liquid at 0 °C, computed here. SI units, mass based.
"""

import sys
from pathlib import Path

import CoolProp
import CoolProp.CoolProp as CP
import numpy as np
import teqp

BLENDS = Path(__file__).resolve().parents[3] / "crates/refrigerant/data/blends.txt"
PURE = """R-11 R-12 R-13 R-13I1 R-14 R-22 R-23 R-32 R-41 R-113 R-114 R-115 R-116 R-123 R-124 R-125 R-134a R-141b R-142b R-143a
R-152a R-161 R-170 R-218 R-227ea R-236fa R-245fa R-290 R-600 R-600a R-601 R-601a R-717 R-744 R-1123 R-1130(E) R-1132(E) R-1150
R-1224yd(Z) R-1233zd(E) R-1234yf R-1234ze(E) R-1243zf R-1270 R-1336mzz(E) R-1336mzz(Z) R-C318 R-E170""".split()
COLDEST = 173.15


def coolprop(designation):
    if designation == "R-1224yd(Z)":
        return "R1224YDZ"
    return designation.replace("R-", "R", 1)


def blends():
    out = {}
    for line in BLENDS.read_text().splitlines():
        words = line.split("#")[0].split()
        if words:
            out[words[0]] = [(n, float(w) / 100) for n, w in zip(words[2::2], words[3::2])]
    return out


def mixture(parts):
    state = CP.AbstractState("HEOS", "&".join(coolprop(n) for n, _ in parts))
    if len(parts) > 1:
        moles = np.array([w / CP.PropsSI("M", coolprop(n)) for n, w in parts])
        state.set_mole_fractions(list(moles / moles.sum()))
    return state


def number(x):
    return "" if x is None else f"{x:.13g}"


def zero(state):
    """Enthalpy and entropy of bubble liquid at 0 °C, or none where that does not exist."""
    try:
        state.update(CP.QT_INPUTS, 0, 273.15)
        return state.hmass(), state.smass()
    except ValueError:
        return None


def caloric(state, zero):
    return (None, None) if zero is None else (state.hmass() - zero[0], state.smass() - zero[1])


def saturation(state, quality, t, zero):
    try:
        state.update(CP.QT_INPUTS, quality, t)
        return [state.p(), state.rhomass(), *caloric(state, zero)]
    except ValueError:
        return [None] * 4


class Table:
    def __init__(self, out, name, what, columns, script="refrigerant.py", code=f"CoolProp {CoolProp.__version__}, Helmholtz-energy backend (HEOS)"):
        self.file = (out / name).open("w", newline="\n")
        self.file.write(f"# {code}; written by scripts/{script}.\n")
        self.file.write(f"# {what}\n{columns}\n")

    def row(self, name, *values):
        self.file.write(",".join([name, *(number(v) for v in values)]) + "\n")


def pure(out):
    table = Table(
        out,
        "refrigerant_pure.csv",
        "h and s from saturated liquid at 0 °C.",
        "refrigerant,temperature_K,fraction_of_critical,pressure_Pa,liquid_kg_m3,vapor_kg_m3,"
        "liquid_h_J_kg,vapor_h_J_kg,liquid_s_J_kgK,vapor_s_J_kgK",
    )
    for name in PURE:
        state = mixture([(name, 1.0)])
        tc = state.T_critical()
        low = max(COLDEST, state.Ttriple()) + 0.01
        base = zero(state)
        grid = list(np.linspace(low, 0.995 * tc, 30)) + [0.997 * tc, 0.999 * tc, 0.9995 * tc, 0.9999 * tc]
        for t in grid:
            liquid = saturation(state, 0, t, base)
            vapor = saturation(state, 1, t, base)
            if liquid[0] is None or vapor[0] is None:
                continue
            table.row(name, t, t / tc, liquid[0], liquid[1], vapor[1], liquid[2], vapor[2], liquid[3], vapor[3])


def mixed(out):
    table = Table(
        out,
        "refrigerant_blends.csv",
        "Empty where CoolProp does not converge; h and s from bubble liquid at 0 °C.",
        "refrigerant,temperature_K,bubble_Pa,bubble_kg_m3,dew_Pa,dew_kg_m3,"
        "bubble_h_J_kg,dew_h_J_kg,bubble_s_J_kgK,dew_s_J_kgK",
    )
    for name, parts in blends().items():
        try:
            state = mixture(parts)
        except ValueError:
            continue  # no binary parameters
        try:
            tc = max(point.T for point in state.all_critical_points() if point.stable)
        except ValueError:
            tc = 1.02 * state.T_reducing()
        base = zero(state)
        five = name in ("R-410A", "R-448A", "R-449A", "R-454B")
        for t in np.linspace(183.15, tc - 2.0, 60 if five else 22):
            bubble = saturation(state, 0, t, base)
            dew = saturation(state, 1, t, base)
            if bubble[0] is None and dew[0] is None:
                continue
            table.row(name, t, *bubble[:2], *dew[:2], bubble[2], dew[2], bubble[3], dew[3])


def states(out):
    table = Table(
        out,
        "refrigerant_states.csv",
        "Single-phase states; h and s from saturated liquid at 0 °C.",
        "refrigerant,temperature_K,pressure_Pa,density_kg_m3,h_J_kg,s_J_kgK,cp_J_kgK,cv_J_kgK,speed_of_sound_m_s",
    )
    every = blends()
    for name in [*PURE, "R-410A", "R-404A", "R-407C", "R-448A", "R-449A", "R-454B", "R-454C", "R-513A", "R-507A", "R-455A"]:
        state = mixture(every.get(name, [(name, 1.0)]))
        base = zero(state)
        if base is None:
            continue
        for t in (240.0, 280.0, 320.0, 380.0):
            for p in (5e4, 3e5, 1.2e6, 4e6):
                try:
                    low = state.Ttriple() if len(every.get(name, [])) == 0 else 0
                    if t < low + 1:
                        continue
                    state.update(CP.PT_INPUTS, p, t)
                    # At a few points of blends CoolProp lands on a root inside the unstable region, with heat capacities of 10⁹.
                    if not 300 < state.cpmass() < 20e3:
                        continue
                    table.row(name, t, p, state.rhomass(), *caloric(state, base), state.cpmass(), state.cvmass(), state.speed_sound())
                except ValueError:
                    continue


def flash(out):
    table = Table(
        out,
        "refrigerant_flash.csv",
        "Two-phase states of blends; the quality given is the molar one of CoolProp, that by mass is derived from its phases. "
        "h from bubble liquid at 0 °C.",
        "refrigerant,pressure_Pa,mass_quality,temperature_K,h_J_kg,density_kg_m3",
    )
    every = blends()
    for name in ["R-410A", "R-407C", "R-448A", "R-449A", "R-454B", "R-454C", "R-455A"]:
        state = mixture(every[name])
        base = zero(state)
        masses = np.array([CP.PropsSI("M", coolprop(n)) for n, _ in every[name]])
        for p in (2e5, 8e5, 2e6):
            for quality in (0.2, 0.5, 0.8):
                try:
                    state.update(CP.PQ_INPUTS, p, quality)
                    y = np.array(state.mole_fractions_vapor())
                    x = np.array(state.mole_fractions_liquid())
                    vapor, liquid = quality * (y @ masses), (1 - quality) * (x @ masses)
                    table.row(name, p, vapor / (vapor + liquid), state.T(), state.hmass() - base[0], state.rhomass())
                except ValueError:
                    continue


def by_teqp(out):
    table = Table(
        out,
        "refrigerant_teqp.csv",
        f"Bubble points by teqp {teqp.__version__}, started from CoolProp, with the CODATA 2018 gas constant.",
        "refrigerant,temperature_K,bubble_Pa,liquid_kg_m3,vapor_kg_m3",
    )
    every = blends()
    for name in ["R-415A", "R-430A", "R-433A", "R-436A", "R-500", "R-502"]:
        parts = every[name]
        state = mixture(parts)
        masses = np.array([CP.PropsSI("M", coolprop(n)) for n, _ in parts])
        z = np.array(state.get_mole_fractions())
        model = teqp.build_multifluid_model([coolprop(n) for n, _ in parts], teqp.get_datapath(), flags={"Rmodel": "CODATA"})
        for t in (200.0, 230.0, 260.0, 290.0, 315.0, 330.0):
            try:
                state.update(CP.QT_INPUTS, 0, t)
            except ValueError:
                continue
            y = np.array(state.mole_fractions_vapor())
            gas = CP.AbstractState("HEOS", "&".join(coolprop(n) for n, _ in parts))
            gas.set_mole_fractions(list(y))
            gas.specify_phase(CP.iphase_gas)
            gas.update(CP.PT_INPUTS, state.p(), t)
            code, liquid, vapor = model.mix_VLE_Tx(
                t, state.rhomolar() * z * 1.0001, gas.rhomolar() * y * 0.9999, z, 1e-10, 1e-12, 1e-12, 1e-12, 30
            )
            rho = liquid.sum()
            p = rho * model.get_R(z) * t * (1 + model.get_Ar01(t, rho, z))
            table.row(name, t, p, liquid @ masses, vapor @ masses)


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit(__doc__)
    target = Path(sys.argv[1])
    target.mkdir(parents=True, exist_ok=True)
    for job in (pure, mixed, states, flash, by_teqp):
        job(target)
