#!/usr/bin/env python3
"""Times of the same calls in CoolProp's low-level state object.

    winterset-bench > cases.jsonl; python peer.py cases.jsonl

Reads the lines that winterset-bench printed and prints one of its own for each case that CoolProp answers: index, time of one call in
microseconds, and the share of the values that it answered; those that it refuses are not timed. Crossing from Python into CoolProp
is not CoolProp's work: what as many calls that do nothing but cross take is taken off.
"""

import json
import sys
import time

import CoolProp.CoolProp as CP

STATE = ["p", "rhomass", "hmass", "smass", "cpmass", "cvmass", "speed_sound"]
# For each call: CoolProp's pair of inputs, the two values from the one given, and what is read then to have the same content.
# An update finds the pressure and both densities at saturation; the rest is worked out as it is read.
CALLS = {
    "p of bubble at T": (CP.QT_INPUTS, lambda t: (0.0, t), ["p"]),
    "state of bubble at T": (CP.QT_INPUTS, lambda t: (0.0, t), STATE),
    "state of dew at T": (CP.QT_INPUTS, lambda t: (1.0, t), STATE),
    "state of bubble at p": (CP.PQ_INPUTS, lambda p: (p, 0.0), ["T", *STATE[1:]]),
    "state at T, 150 kPa": (CP.PT_INPUTS, lambda t: (1.5e5, t), STATE[1:]),
    "T, ρ, s at p, 450 kJ/kg": (CP.HmassP_INPUTS, lambda p: (450e3, p), ["T", "rhomass", "smass"]),
    "T, ρ, h, s at p, x = 0.5": (CP.PQ_INPUTS, lambda p: (p, 0.5), ["T", "rhomass", "hmass", "smass"]),
}
# Slow calls are asked for fewer values, which are out of order and so still spread over the range.
SLOW_SECONDS, FEW = 1e-3, 40
BUDGET_SECONDS, BATCHES = 1.5, 15


def abstract_state(composition):
    names = [name.replace("-", "") for name, _ in composition]
    state = CP.AbstractState("HEOS", "&".join(names))
    if len(names) > 1:
        moles = [mass / CP.PropsSI("M", name) for name, (_, mass) in zip(names, composition)]
        state.set_mole_fractions([n / sum(moles) for n in moles])
    return state


def measure(call, state, inputs):
    """Time of one call and the share of the values that are answered; None where none is."""
    pair, values_of, reads = CALLS[call]
    values = [values_of(value) for value in inputs]

    def once(first, second):
        state.update(pair, first, second)
        for read in readers:
            read()

    readers = [getattr(state, name) for name in reads]
    asked, answered, start = 0, [], time.perf_counter()
    for value in values:
        if asked >= FEW and time.perf_counter() - start > SLOW_SECONDS * asked:
            break
        asked += 1
        try:
            once(*value)
            answered.append(value)
        except ValueError:
            pass
    if not answered:
        return None

    def quickest(call):
        best, start = float("inf"), time.perf_counter()
        for _ in range(BATCHES):
            begin = time.perf_counter()
            for first, second in answered:
                call(first, second)
            now = time.perf_counter()
            best = min(best, now - begin)
            if now - start > BUDGET_SECONDS:
                break
        return best / len(answered) * 1e6

    nothing = state.gas_constant

    def cross(first, second):
        nothing()
        for read in crossings:
            read()

    crossings = [nothing for _ in reads]
    return quickest(once) - quickest(cross), len(answered) / asked


def main():
    states = {}
    with open(sys.argv[1], encoding="utf-8") as file:
        cases = [json.loads(line) for line in file]
    for case in cases:
        if case["call"] not in CALLS:
            continue
        subject = case["subject"]
        try:
            if subject not in states:
                states[subject] = abstract_state(case["composition"])
            found = measure(case["call"], states[subject], case["inputs"])
        except ValueError:
            # A refrigerant that it does not have.
            found = None
        if found:
            print(json.dumps({"index": case["index"], "microseconds": found[0], "answered": found[1],
                              "peer": "CoolProp " + CP.get_global_param_string("version")}), flush=True)


main()
