"""Reference values for hours by outdoor temperature, from general-purpose libraries.

    python weather.py OUT_DIR

writes weather_year.epw, a year of an invented place in the EPW format (EnergyPlus documentation, Auxiliary Programs: EPW data dictionary);
weather_year.json, its percentiles and histogram by numpy; weather_usual.json, the usual year of a design low by scipy. The equations are
written here from the models' definitions; the two rules of practice, for swing and spread, are inputs of the comparison.
"""

import json
import math
import sys
from pathlib import Path

import numpy
import scipy
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.stats import norm

OUT = Path(sys.argv[1])
HEADER = """\
LOCATION,Invented Saddle,-,XXX,Invented,000000,47.25,-11.50,-1.0,1234.0
DESIGN CONDITIONS,0
TYPICAL/EXTREME PERIODS,0
GROUND TEMPERATURES,0
HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
COMMENTS 1,Invented: sums of sines and a fixed sequence of numbers; no place on earth
COMMENTS 2,
DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31
"""
DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
MISSING_EVERY = 997


def noise():
    """Numbers from -1 to 1 by a linear congruence, alike on every machine."""
    state = 20_011
    while True:
        state = (1_103_515_245 * state + 12_345) % 2**31
        yield state / 2**30 - 1


def invented():
    """Hourly tenths of a degree, None where missing."""
    rough, weather, temperatures = noise(), 0.0, []
    for hour in range(8760):
        weather = 0.985 * weather + 1.6 * next(rough)
        day = hour / 24
        mean = 4.0 - 13.0 * math.cos(2 * math.pi * (day - 18) / 365) - 4.0 * math.cos(2 * math.pi * (hour - 4) / 24)
        tenths = round(10 * (mean + weather))
        temperatures.append(None if hour % MISSING_EVERY == 500 else tenths / 10)
    return temperatures


def write_year(temperatures):
    dates = [(month + 1, day + 1, hour + 1) for month, days in enumerate(DAYS) for day in range(days) for hour in range(24)]
    rows = []
    for (month, day, hour), dry_bulb in zip(dates, temperatures, strict=True):
        text = "99.9" if dry_bulb is None else f"{dry_bulb:.1f}"
        rows.append(f"2001,{month},{day},{hour},60,?,{text},99.9,80,87500,,,,,,,,,,,,{2 + hour % 5}.5\n")
    (OUT / "weather_year.epw").write_text(HEADER + "".join(rows), encoding="utf-8", newline="\n")


def year():
    temperatures = invented()
    write_year(temperatures)
    known = numpy.array([t for t in temperatures if t is not None])
    low, high = math.floor(known.min()), math.floor(known.max()) + 1
    hours, _ = numpy.histogram(known, bins=numpy.arange(low, high + 1))
    answer = {
        "source": f"numpy {numpy.__version__}: percentile (linear) and histogram of the known temperatures of weather_year.epw",
        "missing": len(temperatures) - len(known),
        "coldest_C": float(known.min()),
        "exceeded_996_C": float(numpy.percentile(known, 0.4)),
        "exceeded_99_C": float(numpy.percentile(known, 1.0)),
        "first_C": low,
        "hours": [int(count) for count in hours],
        "below": [{"limit_C": float(t), "hours": int((known < t).sum())} for t in (-30, -20, -10, -5, 0, 10, 18, 40)],
    }
    (OUT / "weather_year.json").write_text(json.dumps(answer) + "\n", encoding="utf-8")


def share_below(u):
    """Share of a year below mean + u * swing: a sine with a normal spread of half its size on top."""
    return quad(lambda phase: norm.cdf((u + math.cos(phase)) / 0.5), 0, math.pi, epsabs=1e-14, epsrel=1e-13)[0] / math.pi


def usual():
    place = brentq(lambda u: share_below(u) - 0.004, -10, 0, xtol=1e-14, rtol=1e-14)
    rows = []
    for low in (-55.0, -40.0, -26.0, -15.0, -4.0, 3.0, 20.0):
        swing = min(max(7 - low / 3, 3), 22)
        mean = low - swing * place
        below = [{"limit_C": t, "hours": round(8760 * share_below((t - mean) / swing), 6)} for t in (-40.0, -20.0, -10.0, 0.0, 4.5, 15.0)]
        rows.append({"low_C": low, "swing_K": swing, "mean_C": mean, "below": below})
    source = f"sine and normal spread, integrated and solved by scipy {scipy.__version__}"
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / "weather_usual.json").write_text(f'{{"source": {json.dumps(source)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


for job in (year, usual):
    job()
