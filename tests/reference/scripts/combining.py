#!/usr/bin/env python3
"""How far a bubble pressure may be off where the parameters of a pair are not published: pairs whose parameters are, computed with them and
with the combining rule that stands in elsewhere.

    python combining.py FOLDER

refrigerant_combining.csv    equimolar bubble pressures at 0.6 and 0.75 of the mean critical temperature
"""

import sys
from pathlib import Path

import CoolProp.CoolProp as CP
from refrigerant import PURE, Table, coolprop

PAIRS = Path(__file__).resolve().parents[3] / "crates/refrigerant/data/pairs.txt"


def pairs():
    for line in PAIRS.read_text().splitlines():
        words = line.split("#")[0].split()
        if len(words) > 2 and words[1] in PURE and words[2] in PURE:
            yield words[1], words[2]


def bubble(names, t, rule):
    """Bubble pressure; `rule` puts the combining rule, linear in critical temperature and volume, in place of the published pair."""
    state = CP.AbstractState("HEOS", "&".join(coolprop(n) for n in names))
    if rule:
        t1, t2 = (CP.PropsSI("T_reducing", coolprop(n)) for n in names)
        v1, v2 = (1 / CP.PropsSI("rhomolar_reducing", coolprop(n)) for n in names)
        for key, value in (
            ("betaT", 1.0),
            ("gammaT", 0.5 * (t1 + t2) / (t1 * t2) ** 0.5),
            ("betaV", 1.0),
            ("gammaV", 4 * (v1 + v2) / (v1 ** (1 / 3) + v2 ** (1 / 3)) ** 3),
            ("Fij", 0.0),
        ):
            state.set_binary_interaction_double(0, 1, key, value)
    state.set_mole_fractions([0.5, 0.5])
    state.update(CP.QT_INPUTS, 0, t)
    return state.p()


def combining(out):
    table = Table(
        out,
        "refrigerant_combining.csv",
        "Equimolar bubble pressures, with published parameters and with the combining rule.",
        "pair,temperature_K,published_Pa,rule_Pa",
        script="combining.py",
    )
    for names in pairs():
        mean = sum(CP.PropsSI("Tcrit", coolprop(n)) for n in names) / 2
        for t in (round(0.6 * mean, 2), round(0.75 * mean, 2)):
            try:
                table.row("/".join(names), t, bubble(names, t, False), bubble(names, t, True))
            except ValueError as error:
                print(f"{names} at {t} K: {error}", file=sys.stderr)


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit(__doc__)
    combining(Path(sys.argv[1]))
