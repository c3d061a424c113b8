"""Reference values for the fan motor and the fan bank, by scipy.

    python motor.py OUT_DIR

writes motor_*.json. The equations are written here from their sources (Kloss's equation, square-law load, run-up of a drive, quadratic
fan curves in parallel); nothing is taken from the Rust code but the stated constants of practice, which are inputs of the comparison.
"""

import json
import math
import sys
from pathlib import Path

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, minimize_scalar

OUT = Path(sys.argv[1])
BREAKDOWN = {"permanent-split-capacitor": 1.6, "shaded-pole": 1.3, "three-phase": 1.6}
STARTING = {"permanent-split-capacitor": 0.5, "shaded-pole": 0.4, "three-phase": 1.5}
MOTORS = (  # kind, nameplate rpm, synchronous rpm, Hz
    ("permanent-split-capacitor", 1075.0, 1200.0, 60.0),
    ("permanent-split-capacitor", 825.0, 900.0, 60.0),
    ("shaded-pole", 1300.0, 1500.0, 50.0),
    ("three-phase", 1455.0, 1500.0, 50.0),
)


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    text = f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n'
    (OUT / name).write_text(text, encoding="utf-8")


class Motor:
    """Torques in shares of rated torque, over the angular speed in rad/s."""

    def __init__(self, kind, rated, synchronous, hertz):
        self.kind, self.hertz = kind, hertz
        self.rated, self.synchronous = rated * math.pi / 30, synchronous * math.pi / 30
        rated_slip = 1 - rated / synchronous
        self.peak = BREAKDOWN[kind]
        # The larger slip at which Kloss's equation gives rated torque at the nameplate point.
        self.peak_slip = brentq(
            lambda s: 2 * self.peak / (rated_slip / s + s / rated_slip) - 1, rated_slip * 1.0001, rated_slip * 20, xtol=1e-15, rtol=1e-14
        )

    def record(self):
        return {"kind": self.kind, "rated_rad_s": self.rated, "frequency_Hz": self.hertz}

    def kloss(self, speed, voltage=1.0, frequency=1.0):
        """Textbook form over the slip at that frequency: peak torque by (V/f)², peak slip by 1/f."""
        field = self.synchronous * frequency
        slip, peak_slip = (field - speed) / field, self.peak_slip / frequency
        return (voltage / frequency) ** 2 * 2 * self.peak / (slip / peak_slip + peak_slip / slip)

    def starting(self, speed, voltage):
        slip = 1 - speed / self.synchronous
        lacking = max(0.0, 1 - STARTING[self.kind] / self.kloss(0.0))
        part = 0.0 if slip < self.peak_slip else 1.0 if slip > 1 else (slip - self.peak_slip) / (1 - self.peak_slip)
        return self.kloss(speed, voltage) * (1 - lacking * part**2)

    def load(self, speed, density):
        return density * (speed / self.rated) ** 2


# Speed on a supply ---------------------------------------------------------------------------------------------------


def supplies():
    rows = []
    for given in MOTORS:
        motor = Motor(*given)
        for voltage, frequency in ((1.0, 1.0), (0.9, 1.0), (1.0, 50 / 60), (50 / 60, 50 / 60), (1.0, 1.2), (0.8, 1.2), (0.75, 1.0)):
            if not 45 <= motor.hertz * frequency <= 65:
                continue
            for density in (0.85, 1.0, 1.25):
                field = motor.synchronous * frequency

                def surplus(speed):
                    return motor.kloss(speed, voltage, frequency) - motor.load(speed, density)

                grid = np.linspace(field * (1 - 1e-9), 0.0, 200001)
                first = int(np.argmax(surplus(grid) >= 0))
                speed = brentq(surplus, grid[first], grid[first - 1], xtol=1e-13, rtol=1e-14)
                rows.append(motor.record() | {"voltage": voltage, "frequency": frequency, "density": density, "speed_rad_s": speed})
    write("motor_supply.json", f"torque balance solved by scipy {scipy.__version__}", rows)


# Stall and start -----------------------------------------------------------------------------------------------------


def limits():
    rows = []
    for given in MOTORS:
        motor = Motor(*given)
        for density in (0.9, 1.3):
            for running, breakaway in ((0.01, 0.02), (0.08, 0.2)):

                def needed(speed):
                    return (motor.load(speed, density) + running) / motor.kloss(speed)

                grid = np.linspace(motor.synchronous * (1 - 1e-4), 0.0, 100001)
                rising = np.diff(needed(grid)) > 0
                if rising.any():
                    at = int(np.argmax(rising))
                    found = minimize_scalar(
                        needed, bounds=(grid[min(at + 2, 100000)], grid[max(at - 2, 0)]), method="bounded", options={"xatol": 1e-9}
                    )
                    lost, keeps = found.x, found.fun
                else:
                    lost, keeps = 0.0, needed(0.0)

                def up(speed):
                    return (motor.load(speed, density) + running) / motor.starting(speed, 1.0)

                way = np.linspace(0.0, lost, 20001)
                values = [up(v) for v in way]
                top = int(np.argmax(values))
                highest = values[top]
                if 0 < top < 20000:
                    found = minimize_scalar(
                        lambda v: -up(v), bounds=(way[top - 1], way[top + 1]), method="bounded", options={"xatol": 1e-9}
                    )
                    highest = max(highest, -found.fun)
                starts = max(highest, keeps, breakaway / motor.starting(0.0, 1.0))
                rows.append(
                    motor.record()
                    | {
                        "density": density,
                        "running": running,
                        "breakaway": breakaway,
                        "keeps_running": math.sqrt(keeps),
                        "starts": math.sqrt(starts),
                    }
                )
    write("motor_limits.json", f"extremes of the voltage in balance by scipy {scipy.__version__}", rows)


# Run-up --------------------------------------------------------------------------------------------------------------


def starts():
    rows = []
    cases = (  # inertia, W, voltage, density, running, breakaway, wind as a share of rated speed, target likewise
        (0.0443, 250.0, 1.0, 1.0, 0.01, 0.02, 0.0, 0.85),
        (0.0443, 250.0, 1.0, 1.25, 0.04, 0.10, 0.0, 0.85),
        (0.0443, 250.0, 1.0, 1.1, 0.02, 0.05, 0.2, 0.80),
        (0.0030, 60.0, 0.95, 1.0, 0.01, 0.02, 0.1, 0.70),
        (0.1900, 750.0, 1.1, 0.8, 0.02, 0.05, 0.3, 0.95),
    )
    for given in MOTORS:
        motor = Motor(*given)
        for inertia, power, voltage, density, running, breakaway, wind, target in cases:
            rated_torque = power / motor.rated
            backwards = wind * motor.rated
            held = (motor.load(backwards, density) + running) if backwards > 0 else 0.0

            def acceleration(_, state, forward):
                speed = state[0]
                sign = 1.0 if forward else -1.0
                torque = motor.starting(speed, voltage) - sign * motor.load(speed, density) - held - sign * running
                return [rated_torque * torque / inertia]

            def leg(low, high, forward):
                def reached(_, state, forward):
                    return state[0] - high

                reached.terminal = True
                run = solve_ivp(
                    acceleration, (0, 1000), [low], method="DOP853", rtol=1e-12, atol=1e-12, events=reached, args=(forward,)
                )
                return run.t_events[0][0] if len(run.t_events[0]) else math.nan

            def time(low):
                turning = leg(low, 0.0, False) if low < 0 else 0.0
                # The torque bends at the peak: the integrator starts anew there.
                bend, end = motor.synchronous * (1 - motor.peak_slip), target * motor.rated
                if bend < end:
                    return turning + leg(0.0, bend, True) + leg(bend, end, True)
                return turning + leg(0.0, end, True)

            if voltage**2 * motor.starting(0.0, 1.0) <= breakaway + held:
                continue
            total = time(-backwards)
            if math.isnan(total):
                continue
            rows.append(
                motor.record()
                | {
                    "inertia_kg_m2": inertia,
                    "power_W": power,
                    "voltage": voltage,
                    "density": density,
                    "running": running,
                    "breakaway": breakaway,
                    "windmill_rad_s": backwards,
                    "to_rad_s": target * motor.rated,
                    "time_s": total,
                }
            )
    write("motor_start.json", f"run-up integrated by scipy {scipy.__version__}, solve_ivp with DOP853", rows)


# Fans in parallel ----------------------------------------------------------------------------------------------------


def banks():
    rows = []
    cases = (  # full airflows, speeds, shutters, closed over working pressure, idle resistance
        ([2.0, 2.0, 2.0], [1.0, 0.0, 0.0], [False, False, False], 2.0, 1.0),
        ([2.0, 2.0, 2.0], [1.0, 0.6, 0.0], [False, False, True], 2.0, 1.0),
        ([1.5, 3.0], [0.0, 0.8], [False, False], 3.0, 4.0),
        ([1.5, 3.0, 0.7, 2.2], [1.0, 0.8, 0.0, 0.3], [True, False, False, False], 1.6, 0.5),
        ([1.0] * 8, [1.0, 1.0, 0.5, 0.5, 0.0, 0.0, 0.0, 0.0], [False] * 8, 2.5, 2.0),
    )
    for full, speeds, shutters, closed, idle in cases:
        # In pascals, with the coil's drop at full airflow set to an arbitrary figure.
        drop = 47.0
        coil = drop / sum(full) ** 2

        def outflow(pressure):
            out = []
            for volume, speed, shutter in zip(full, speeds, shutters):
                if speed > 0:
                    left = closed * drop * speed**2 - pressure
                    out.append(math.copysign(math.sqrt(abs(left) / ((closed - 1) * drop / volume**2)), left))
                else:
                    out.append(0.0 if shutter else -math.sqrt(pressure / (idle * drop / volume**2)))
            return out

        pressure = brentq(
            lambda p: sum(outflow(p)) - math.sqrt(p / coil), 0.0, closed * drop * max(speeds) ** 2, xtol=1e-13, rtol=1e-14
        )
        rows.append(
            {
                "full_m3_s": full,
                "speeds": speeds,
                "shutters": shutters,
                "closed": closed,
                "idle_resistance": idle,
                "airflow_m3_s": math.sqrt(pressure / coil),
                "short_circuit_m3_s": -sum(min(v, 0.0) for v in outflow(pressure)),
            }
        )
    write("motor_bank.json", f"flow balance solved by scipy {scipy.__version__}", rows)


for job in (supplies, limits, starts, banks):
    job()
