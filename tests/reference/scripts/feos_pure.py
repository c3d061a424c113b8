#!/usr/bin/env python3
"""Saturation of pure refrigerants by feos, a third code unrelated to CoolProp and teqp: its multiparameter model and its own search for equilibrium.

    python feos_pure.py FOLDER

refrigerant_feos.csv    saturation pressure and both densities

The coefficients are those that CoolProp hands out as JSON. feos evaluates every equation with the gas constant of 2019; at one temperature,
densities in equilibrium do not depend on it and pressure is proportional to it, so pressures are put back on each equation's own.
"""

import json
import sys
from pathlib import Path

import CoolProp.CoolProp as CP
import feos
import numpy as np
import si_units as si
from refrigerant import COLDEST, PURE, Table, coolprop

GAS_CONSTANT = 8.31446261815324
SHARES = (0.0, 0.2, 0.4, 0.6, 0.8, 1.0)
# feos takes whole exponents only in some of its terms.
WHOLE = {"ResidualHelmholtzPower": "dl", "ResidualHelmholtzGaussian": "d", "ResidualHelmholtzGaoB": "d", "ResidualHelmholtzLemmon2005": "dlm",
         "ResidualHelmholtzExponential": "dlt", "ResidualHelmholtzDoubleExponential": "d"}


def whole(term):
    out = {}
    for key, value in term.items():
        if key in WHOLE.get(term["type"], "") and key != "m":
            if any(v != int(v) for v in value):
                return None
            value = [int(v) for v in value]
        out[key] = value
    return out


def model(designation):
    """The equation of state, its gas constant and molar mass; None where feos has no such term."""
    fluid = json.loads(CP.get_fluid_param_string(coolprop(designation), "JSON"))[0]
    eos = fluid["EOS"][0]
    terms = [whole(term) for term in eos["alphar"]]
    if None in terms:
        return None
    record = {
        "identifier": {"name": designation},
        "molarweight": eos["molar_mass"] * 1000,
        "tc": eos["STATES"]["reducing"]["T"],
        "rhoc": eos["STATES"]["reducing"]["rhomolar"],
        "residual": terms,
        "ideal_gas": [],
    }
    parameters = feos.Parameters.new_pure(feos.PureRecord.from_json_str(json.dumps(record)))
    return feos.EquationOfState.multiparameter(parameters), eos["gas_constant"], eos["molar_mass"]


def pure(out):
    table = Table(
        out,
        "refrigerant_feos.csv",
        "Saturation by the multiparameter model, with the coefficients that CoolProp hands out.",
        "refrigerant,temperature_K,pressure_Pa,liquid_kg_m3,vapor_kg_m3",
        script="feos_pure.py",
        code=f"feos {feos.__version__}",
    )
    for name in PURE:
        found = model(name)
        if found is None:
            print(f"{name}: an exponent that feos does not take", file=sys.stderr)
            continue
        eos, gas_constant, mass = found
        cold = max(COLDEST, CP.PropsSI("Ttriple", coolprop(name)))
        warm = 0.98 * CP.PropsSI("Tcrit", coolprop(name))
        for t in np.array([cold + (warm - cold) * share for share in SHARES]).round(2) + 0.01:
            try:
                both = feos.PhaseEquilibrium.pure(eos, t * si.KELVIN, tol=1e-13, max_iter=200)
            except RuntimeError as error:
                print(f"{name} at {t} K: {error}", file=sys.stderr)
                continue
            p = both.vapor.pressure() / si.PASCAL * gas_constant / GAS_CONSTANT
            unit = si.MOL / si.METER**3
            table.row(name, t, p, both.liquid.density / unit * mass, both.vapor.density / unit * mass)


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit(__doc__)
    pure(Path(sys.argv[1]))
