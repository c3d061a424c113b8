#!/usr/bin/env python3
"""Writes the coefficient files of this folder from the source archive of CoolProp.

    pip download --no-deps --no-binary CoolProp CoolProp==8.0.0
    tar xzf coolprop-8.0.0.tar.gz
    python convert.py coolprop-8.0.0

What is taken over are the published coefficients (the paper is named in each file) and nothing that CoolProp computed from
them: no tables, no fits to its results. The form of the files is described in README.md beside this script.
Designations, names and safety classes are kept in the tables below.
"""

import json
import re
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent

# designation: (file in dev/fluids, chemical name, safety class of ANSI/ASHRAE 34 from memory, "-" where none is assigned or sure)
FLUIDS = {
    "R-11": ("R11", "trichlorofluoromethane", "A1"),
    "R-12": ("R12", "dichlorodifluoromethane", "A1"),
    "R-13": ("R13", "chlorotrifluoromethane", "A1"),
    "R-13I1": ("R13I1", "trifluoroiodomethane", "A1"),
    "R-14": ("R14", "tetrafluoromethane", "A1"),
    "R-22": ("R22", "chlorodifluoromethane", "A1"),
    "R-23": ("R23", "trifluoromethane", "A1"),
    "R-32": ("R32", "difluoromethane", "A2L"),
    "R-41": ("R41", "fluoromethane", "-"),
    "R-113": ("R113", "1,1,2-trichloro-1,2,2-trifluoroethane", "A1"),
    "R-114": ("R114", "1,2-dichloro-1,1,2,2-tetrafluoroethane", "A1"),
    "R-115": ("R115", "chloropentafluoroethane", "A1"),
    "R-116": ("R116", "hexafluoroethane", "A1"),
    "R-123": ("R123", "2,2-dichloro-1,1,1-trifluoroethane", "B1"),
    "R-124": ("R124", "2-chloro-1,1,1,2-tetrafluoroethane", "A1"),
    "R-125": ("R125", "pentafluoroethane", "A1"),
    "R-134a": ("R134a", "1,1,1,2-tetrafluoroethane", "A1"),
    "R-141b": ("R141b", "1,1-dichloro-1-fluoroethane", "-"),
    "R-142b": ("R142b", "1-chloro-1,1-difluoroethane", "A2"),
    "R-143a": ("R143a", "1,1,1-trifluoroethane", "A2L"),
    "R-152a": ("R152A", "1,1-difluoroethane", "A2"),
    "R-161": ("R161", "fluoroethane", "-"),
    "R-170": ("Ethane", "ethane", "A3"),
    "R-218": ("R218", "octafluoropropane", "A1"),
    "R-227ea": ("R227EA", "1,1,1,2,3,3,3-heptafluoropropane", "A1"),
    "R-236fa": ("R236FA", "1,1,1,3,3,3-hexafluoropropane", "A1"),
    "R-245fa": ("R245fa", "1,1,1,3,3-pentafluoropropane", "B1"),
    "R-290": ("n-Propane", "propane", "A3"),
    "R-600": ("n-Butane", "butane", "A3"),
    "R-600a": ("IsoButane", "isobutane", "A3"),
    "R-601": ("n-Pentane", "pentane", "A3"),
    "R-601a": ("Isopentane", "isopentane", "A3"),
    "R-717": ("Ammonia", "ammonia", "B2L"),
    "R-744": ("CarbonDioxide", "carbon dioxide", "A1"),
    "R-1123": ("R1123", "trifluoroethene", "-"),
    "R-1130(E)": ("R1130(E)", "trans-1,2-dichloroethene", "-"),
    "R-1132(E)": ("R1132(E)", "trans-1,2-difluoroethene", "-"),
    "R-1150": ("Ethylene", "ethene", "A3"),
    "R-1224yd(Z)": ("R1224yd(Z)", "cis-1-chloro-2,3,3,3-tetrafluoropropene", "A1"),
    "R-1233zd(E)": ("R1233zd(E)", "trans-1-chloro-3,3,3-trifluoropropene", "A1"),
    "R-1234yf": ("R1234yf", "2,3,3,3-tetrafluoropropene", "A2L"),
    "R-1234ze(E)": ("R1234ze(E)", "trans-1,3,3,3-tetrafluoropropene", "A2L"),
    "R-1243zf": ("R1243zf", "3,3,3-trifluoropropene", "-"),
    "R-1270": ("Propylene", "propene", "A3"),
    "R-1336mzz(E)": ("R1336mzz(E)", "trans-1,1,1,4,4,4-hexafluoro-2-butene", "A1"),
    "R-1336mzz(Z)": ("R1336mzz(Z)", "cis-1,1,1,4,4,4-hexafluoro-2-butene", "A1"),
    "R-C318": ("RC318", "octafluorocyclobutane", "A1"),
    "R-E170": ("DimethylEther", "dimethyl ether", "A3"),
}

# Chemical families; a blend is judged by its members.
FAMILIES = {
    "cfc": "R-11 R-12 R-13 R-113 R-114 R-115",
    "hcfc": "R-22 R-123 R-124 R-141b R-142b",
    "hfc": "R-23 R-32 R-41 R-125 R-134a R-143a R-152a R-161 R-227ea R-236fa R-245fa",
    "pfc": "R-14 R-116 R-218 R-C318",
    "hfo": "R-1123 R-1132(E) R-1234yf R-1234ze(E) R-1243zf R-1336mzz(E) R-1336mzz(Z)",
    "hcfo": "R-1130(E) R-1224yd(Z) R-1233zd(E)",
    "hc": "R-170 R-290 R-600 R-600a R-601 R-601a R-1150 R-1270",
    "other": "R-13I1 R-717 R-744 R-E170",
}
FAMILY = {name: family for family, names in FAMILIES.items() for name in names.split()}


def number(x):
    """Shortest decimal that reads back as the same double."""
    x = float(x)
    return str(int(x)) if x == int(x) and abs(x) < 1e15 else repr(x)


def row(*xs):
    return " ".join(number(x) for x in xs)


def bibliography(path):
    """BibTeX key -> one line: authors, title, journal, volume, pages, year, doi."""
    out = {}
    text = path.read_text(encoding="utf-8", errors="replace")
    for entry in re.split(r"\n@", text):
        head = re.match(r"\w+\{([^,]+),", entry)
        if not head:
            continue
        fields = dict(
            (k.lower(), re.sub(r"[{}$_]", "", v).strip())
            for k, v in re.findall(r"^\s*(\w+)\s*=\s*(\{.*?\}|\".*?\"|\d+)\s*,?\s*$", entry, re.M)
        )
        where = fields.get("journal") or fields.get("booktitle") or fields.get("publisher") or fields.get("school") or ""
        bits = [
            fields.get("author", "").replace(" and ", ", "),
            fields.get("title", ""),
            " ".join(x for x in (where, fields.get("volume", "")) if x),
            fields.get("pages", "").replace("--", "-"),
            fields.get("year", ""),
        ]
        line = "; ".join(b for b in bits if b)
        if fields.get("doi"):
            line += "; doi:" + fields["doi"]
        out[head.group(1)] = line.replace("\\", "").replace('"', "")
    return out


def ideal(eos, t_red):
    """c_p0/R = constant + sum c T^t + sum n x^2 e^x/(e^x-1)^2 with x = theta/T: the one form behind every kind of term."""
    constant, powers, einstein = 1.0, [], []
    for term in eos["alpha0"]:
        kind = term["type"]
        if kind in ("IdealGasHelmholtzLead", "IdealGasHelmholtzEnthalpyEntropyOffset"):
            continue  # only fixes the zero of enthalpy and entropy
        elif kind == "IdealGasHelmholtzLogTau":
            constant += term["a"]
        elif kind == "IdealGasHelmholtzPower":
            for n, t in zip(term["n"], term["t"]):
                if t not in (0, 1):
                    powers.append((-n * t * (t - 1) * t_red**t, -t))
        elif kind == "IdealGasHelmholtzPlanckEinstein":
            einstein += [(n, t * t_red) for n, t in zip(term["n"], term["t"])]
        elif kind == "IdealGasHelmholtzPlanckEinsteinFunctionT":
            einstein += list(zip(term["n"], term["v"]))
        elif kind == "IdealGasHelmholtzCP0Constant":
            constant += term["cp_over_R"]
        elif kind == "IdealGasHelmholtzCP0PolyT":
            for c, t in zip(term["c"], term["t"]):
                if t == 0:
                    constant += c
                else:
                    powers.append((c, t))
        else:
            raise SystemExit(f"ideal-gas term {kind} is not known")
    return constant, powers, einstein


def residual(terms):
    """Lines of the residual part, one a term."""
    out = []
    for term in terms:
        kind = term["type"]
        if kind in ("ResidualHelmholtzPower", "ResidualHelmholtzExponential"):
            gs = term.get("g", [1.0] * len(term["n"]))
            for n, t, d, l, g in zip(term["n"], term["t"], term["d"], term["l"], gs):
                if l == 0:
                    assert g == 1.0 or "g" not in term
                    out.append("power " + row(n, t, d))
                elif g == 1:
                    out.append("exponential " + row(n, t, d, l))
                else:
                    out.append("exponential " + row(n, t, d, l, g))
        elif kind == "ResidualHelmholtzLemmon2005":
            for n, t, d, l, m in zip(*(term[k] for k in "ntdlm")):
                if m:
                    out.append("double " + row(n, t, d, l, m))
                elif l:
                    out.append("exponential " + row(n, t, d, l))
                else:
                    out.append("power " + row(n, t, d))
        elif kind == "ResidualHelmholtzGaussian":
            for v in zip(*(term[k] for k in ("n", "t", "d", "eta", "epsilon", "beta", "gamma"))):
                out.append("gaussian " + row(*v))
        elif kind == "ResidualHelmholtzGaoB":
            for v in zip(*(term[k] for k in ("n", "t", "d", "eta", "epsilon", "beta", "gamma", "b"))):
                out.append("gaob " + row(*v))
        elif kind == "ResidualHelmholtzNonAnalytic":
            for v in zip(*(term[k] for k in ("n", "a", "b", "beta", "A", "B", "C", "D"))):
                out.append("nonanalytic " + row(*v))
        else:
            raise SystemExit(f"residual term {kind} is not known")
    return out


def fluid(archive, bib, designation):
    stem, name, safety = FLUIDS[designation]
    data = json.loads((archive / "dev/fluids" / f"{stem}.json").read_text())
    eos = data["EOS"][0]
    reducing, critical = eos["STATES"]["reducing"], data["STATES"]["critical"]
    lines = [
        f"# Equation of state of {designation}, {name}. Written by convert.py from CoolProp 8.0.0, dev/fluids/{stem}.json.",
    ]
    for key in re.split(r"[,;]\s*", eos["BibTeX_EOS"]):
        lines.append(f"# source: {bib[key]}")
    lines += [
        f"designation {designation}",
        f"safety {safety}",
        f"family {FAMILY[designation]}",
        f"molar_mass {number(eos['molar_mass'])}",
        f"gas_constant {number(eos['gas_constant'])}",
        f"reducing {row(reducing['T'], reducing['rhomolar'])}",
        f"critical {row(round(critical['T'], 6), round(critical['p'], 3))}",
        f"acentric {number(eos['acentric'])}",
        f"limits {row(eos['Ttriple'], eos['T_max'], eos['p_max'])}",
    ]
    constant, powers, einstein = ideal(eos, reducing["T"])
    lines.append(f"ideal_constant {number(round(constant, 12))}")
    lines += ["ideal_power " + row(float("%.15g" % c), t) for c, t in powers]
    lines += ["ideal_einstein " + row(n, float("%.15g" % theta)) for n, theta in einstein]
    lines += residual(eos["alphar"])
    return data["INFO"]["CAS"], "\n".join(lines) + "\n"


def main(archive):
    bib = bibliography(archive / "CoolPropBibTeXLibrary.bib")
    (HERE / "fluids").mkdir(exist_ok=True)
    by_cas = {}
    for designation in FLUIDS:
        cas, text = fluid(archive, bib, designation)
        by_cas[cas] = designation
        (HERE / "fluids" / f"{designation}.eos").write_text(text)

    pairs = json.loads((archive / "dev/mixtures/mixture_binary_pairs.json").read_text())
    functions = json.loads((archive / "dev/mixtures/mixture_departure_functions.json").read_text())
    named = {alias: f for f in functions for alias in [f["Name"], *f["aliases"]]}
    used, by_source = {}, {}
    for p in pairs:
        a, b = by_cas.get(p["CAS1"]), by_cas.get(p["CAS2"])
        if not a or not b:
            continue
        if "xi" in p:
            line = f"xi {a} {b} {row(p['xi'], p['zeta'])}"
        else:
            line = f"beta {a} {b} {row(p['betaT'], p['gammaT'], p['betaV'], p['gammaV'])}"
        if p.get("function") and p["F"]:
            f = named[p["function"]]
            used[f["Name"]] = f
            line += f" {f['Name']} {number(p['F'])}"
        by_source.setdefault(p["BibTeX"], []).append(line)
    lines = [
        "# Parameters of binary pairs. Written by convert.py from CoolProp 8.0.0, dev/mixtures/mixture_binary_pairs.json.",
        "# xi A B xi_T/K zeta_v/(m3/mol) [departure F]   or   beta A B beta_T gamma_T beta_v gamma_v [departure F]",
    ]
    for source, rows in sorted(by_source.items()):
        lines += ["", f"# source: {bib.get(source, source)}", *rows]
    (HERE / "pairs.txt").write_text("\n".join(lines) + "\n")

    lines = [
        "# Departure functions of binary pairs. Written by convert.py from CoolProp 8.0.0, dev/mixtures/mixture_departure_functions.json.",
    ]
    for name, f in used.items():
        lines += ["", f"# source: {bib.get(f['BibTeX'], f['BibTeX'])}", f"departure {name}"]
        if f["type"] == "Exponential":
            lines += residual([{**f, "type": "ResidualHelmholtzPower"}])
        elif f["type"] == "GERG-2008":
            for i, v in enumerate(zip(*(f[k] for k in ("n", "t", "d", "eta", "epsilon", "beta", "gamma")))):
                lines.append(("power " + row(*v[:3])) if i < f["Npower"] else ("gerg " + row(*v)))
        else:
            raise SystemExit(f"departure function {f['type']} is not known")
    (HERE / "departures.txt").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit(__doc__)
    main(Path(sys.argv[1]))
