"""Reference values for the evaporator coil, by scipy with saturation by psychrolib.

    python ice.py OUT_DIR

writes ice.json. The equations of heat and mass transfer along the coil are written here from their sources (Lewis relation, ASHRAE Handbook
Fundamentals) and integrated by scipy; the warmest refrigerant at which ice starts is found by scipy's root finder on that integration.
"""

import json
import sys
from importlib.metadata import version
from pathlib import Path

import psychrolib
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

OUT = Path(sys.argv[1])
psychrolib.SetUnitSystem(psychrolib.SI)
psychrolib.PSYCHROLIB_TOLERANCE = 1e-11


def write(name, source, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / name).write_text(f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


def saturated(t, pressure):
    p = psychrolib.GetSatVapPres(t)
    return 0.621945 * p / (pressure - p)


FUSION = 333.4e3


class Coil:
    """Along the air-side transfer units n: dt/dn = t_s - t, dW/dn = -(W - W_s(t_s)) where that is wet."""

    def __init__(self, air, refrigerant, pressure, ratio):
        self.conductances, self.pressure = air / refrigerant, pressure
        self.capacity = 1e3 * (1.006 + 1.86 * ratio)

    def settling(self, ratio, surface):
        return max(0.0, ratio - saturated(surface, self.pressure))

    def heat(self, surface, refrigerant):
        return self.capacity * (surface - refrigerant) / self.conductances

    def as_water(self, t, ratio, surface, refrigerant):
        latent = 1e3 * (2501.0 + 1.86 * t - 4.186 * surface)
        taken = self.capacity * (t - surface) + latent * self.settling(ratio, surface)
        return taken - self.heat(surface, refrigerant)

    def as_ice(self, t, ratio, surface, refrigerant):
        latent = 1e3 * (2501.0 + 1.86 * t - 2.1 * surface) + FUSION
        taken = self.capacity * (t - surface) + latent * self.settling(ratio, surface)
        return taken - self.heat(surface, refrigerant)

    def surface(self, t, ratio, refrigerant):
        """Temperature, and the share of what settles that turns to ice."""
        tight = {"xtol": 1e-13, "rtol": 1e-14}
        if t > 0 and (refrigerant >= 0 or self.as_water(t, ratio, 0.0, refrigerant) > 0):
            return brentq(lambda s: self.as_water(t, ratio, s, refrigerant), max(refrigerant, 0.0), t, **tight), 0.0
        if t <= 0 or self.as_ice(t, ratio, 0.0, refrigerant) < 0:
            return brentq(lambda s: self.as_ice(t, ratio, s, refrigerant), refrigerant, min(t, 0.0), **tight), 1.0
        return 0.0, -self.as_water(t, ratio, 0.0, refrigerant) / (FUSION * self.settling(ratio, 0.0))

    def through(self, t, ratio, refrigerant, units):
        def rate(_, y):
            surface, frozen = self.surface(y[0], y[1], refrigerant)
            settling = self.settling(y[1], surface)
            return [surface - y[0], -settling, self.heat(surface, refrigerant), frozen * settling]

        # Tight, and by a method that calls no library of linear algebra: those choose their code by the processor, and the solution bends where
        # water begins to settle and to freeze, which makes much of a last digit.
        found = solve_ivp(rate, (0, units), [t, ratio, 0.0, 0.0], method="LSODA", rtol=1e-12, atol=1e-15)
        return found.y[:, -1]


def apparatus(start, end, pressure):
    """The line through the state that enters and the one that leaves, on to saturation."""
    slope = (start[1] - end[1]) / (start[0] - end[0])
    if slope <= 0:
        return None

    def above(t):
        return start[1] + slope * (t - start[0]) - saturated(t, pressure)

    low = end[0]
    while above(low) < 0 and low > end[0] - 30:
        low -= 0.01
    return brentq(above, low, low + 0.01, xtol=1e-13) if above(low) >= 0 and low < end[0] else None


def rows():
    found = []
    for t, humidity in ((26.0, 0.5), (22.0, 0.3), (20.0, 0.65), (4.0, 0.85), (2.0, 0.6)):
        for overall, share, airflow, pressure in ((400.0, 0.7, 0.5, 101325.0), (900.0, 0.6, 0.6, 85000.0), (250.0, 0.8, 0.35, 98000.0)):
            ratio = psychrolib.GetHumRatioFromRelHum(t, humidity, pressure)
            dry_air = airflow / psychrolib.GetMoistAirVolume(t, ratio, pressure)
            air, inside = overall / share, overall / (1 - share)
            coil = Coil(air, inside, pressure, ratio)
            units = air / (dry_air * coil.capacity)

            dew = psychrolib.GetTDewPointFromHumRatio(t, ratio, pressure)

            def short_of_ice(refrigerant):
                end = coil.through(t, ratio, refrigerant, units)
                if dew > 0:
                    return coil.as_water(end[0], end[1], 0.0, refrigerant)
                return coil.surface(end[0], end[1], refrigerant)[0] - dew

            starts = brentq(short_of_ice, min(dew, 0.0) - 40, min(dew, 0.0), xtol=1e-13)
            for refrigerant in (t - 8.0, t - 18.0, t - 30.0):
                end = coil.through(t, ratio, refrigerant, units)
                found.append(
                    {
                        "celsius": t, "humidity": humidity, "pressure_Pa": pressure, "airflow_m3_s": airflow,
                        "overall_W_K": overall, "air_share": share, "refrigerant_celsius": refrigerant,
                        "warmest_celsius": coil.surface(t, ratio, refrigerant)[0],
                        "coldest_celsius": coil.surface(end[0], end[1], refrigerant)[0],
                        "leaving_celsius": end[0], "leaving_ratio": end[1],
                        "total_W": dry_air * end[2], "sensible_W": dry_air * coil.capacity * (t - end[0]),
                        "condensate_kg_s": dry_air * (ratio - end[1]), "frost_kg_s": dry_air * end[3],
                        "apparatus_celsius": apparatus((t, ratio), end, pressure), "starts_celsius": starts,
                    }
                )  # fmt: skip
    return found


write("ice.json", f"scipy {scipy.__version__}, saturation by psychrolib {version('psychrolib')}", rows())
