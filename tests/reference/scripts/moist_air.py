"""Reference values for moist air, by psychrolib.

    python moist_air.py OUT_DIR

writes moist_air.json and moist_air_saturation.json. psychrolib follows ASHRAE Handbook Fundamentals 2017; its searches for dew point and wet
bulb stop at a stated tolerance, which is set tight here.
"""

import json
import sys
from importlib.metadata import version
from pathlib import Path

import psychrolib

OUT = Path(sys.argv[1])
SOURCE = f"psychrolib {version('psychrolib')} (ASHRAE Handbook Fundamentals 2017)"

psychrolib.SetUnitSystem(psychrolib.SI)
psychrolib.PSYCHROLIB_TOLERANCE = 1e-11


def write(name, rows):
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    (OUT / name).write_text(f'{{"source": {json.dumps(SOURCE)}, "rows": [\n{lines}\n]}}\n', encoding="utf-8")


def saturation():
    temperatures = (-100, -80, -60, -40, -20, -10, -1, 0, 0.005, 0.02, 1, 5, 10, 20, 35, 60, 100, 150, 200)
    write(
        "moist_air_saturation.json",
        [{"celsius": t, "pressure_Pa": psychrolib.GetSatVapPres(t)} for t in temperatures],
    )


def states():
    rows = []
    for pressure in (70000.0, 101325.0):
        for t in (-50.0, -25.0, -10.0, -2.0, 0.0, 1.5, 4.0, 8.0, 15.0, 21.0, 27.0, 38.0, 55.0):
            for humidity in (0.02, 0.15, 0.4, 0.62, 0.85, 0.99):
                ratio = psychrolib.GetHumRatioFromRelHum(t, humidity, pressure)
                if ratio <= psychrolib.MIN_HUM_RATIO * 10:
                    continue  # psychrolib holds humidity ratios up at its own least one
                rows.append(
                    {
                        "celsius": t,
                        "humidity": humidity,
                        "pressure_Pa": pressure,
                        "ratio": ratio,
                        "vapor_Pa": psychrolib.GetVapPresFromHumRatio(ratio, pressure),
                        "dew_celsius": psychrolib.GetTDewPointFromHumRatio(t, ratio, pressure),
                        "wet_bulb_celsius": psychrolib.GetTWetBulbFromHumRatio(t, ratio, pressure),
                        "enthalpy_J_kg": psychrolib.GetMoistAirEnthalpy(t, ratio),
                        "volume_m3_kg": psychrolib.GetMoistAirVolume(t, ratio, pressure),
                    }
                )
    write("moist_air.json", rows)


for job in (saturation, states):
    job()
