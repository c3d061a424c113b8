#!/usr/bin/env python3
"""Times of CoolProp's low-level state object for the calls that saturation.rs times, in the same form.

    python peer.py
"""

import json
import time

import CoolProp.CoolProp as CP

BLENDS = {
    "R-454B": [("R32", 0.689), ("R1234yf", 0.311)],
    "R-410A": [("R32", 0.5), ("R125", 0.5)],
    "R-448A": [("R32", 0.26), ("R125", 0.26), ("R1234yf", 0.2), ("R134a", 0.21), ("R1234ze(E)", 0.07)],
    "R-449A": [("R32", 0.243), ("R125", 0.247), ("R1234yf", 0.253), ("R134a", 0.257)],
}


def measure(name, call, state, inputs, values, batches):
    times = []
    for _ in range(batches):
        start = time.perf_counter()
        for value in values:
            try:
                state.update(inputs, *value)
                state.p()
                state.rhomass()
            except ValueError:
                pass
        times.append((time.perf_counter() - start) / len(values) * 1e6)
    times.sort()
    print(json.dumps({"peer": "CoolProp " + CP.get_global_param_string("version"), "refrigerant": name, "call": call,
                      "microseconds": round(times[len(times) // 2], 3)}))


for name in ["R-134a", "R-32", "R-744", *BLENDS]:
    parts = BLENDS.get(name, [(name.replace("-", ""), 1.0)])
    state = CP.AbstractState("HEOS", "&".join(n for n, _ in parts))
    if len(parts) > 1:
        moles = [w / CP.PropsSI("M", n) for n, w in parts]
        state.set_mole_fractions([m / sum(moles) for m in moles])
    high = (state.T_critical() if len(parts) == 1 else 345.0) - 5.0
    temperatures = [220.0 + (high - 220.0) * (i * 77 % 200) / 199 for i in range(200)]
    batches = 40 if len(parts) == 1 else 3
    measure(name, "bubble at temperature", state, CP.QT_INPUTS, [(0.0, t) for t in temperatures], batches)
    measure(name, "dew at temperature", state, CP.QT_INPUTS, [(1.0, t) for t in temperatures], batches)
