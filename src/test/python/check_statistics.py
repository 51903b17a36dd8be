"""Recomputes statistics.csv from flights.csv with numpy and pandas and compares every figure.

    python3 src/test/python/check_statistics.py reports/demo

Percentiles: pandas' linear method; sd with divisor n - 1; intervals of p5 and p95 from the binomial distribution, summed
here term by term. Ends with exit code 1 if a figure differs by more than 1e-9. Load factors are not in flights.csv, so
that grouping is left out, and said.
"""

import math
import re
import sys
from pathlib import Path

import numpy as np
import pandas as pd

NEAR = 1e-9
MEASURES = {
    "take-off CG": "tow_cg_pct_mac",
    "take-off trim": "trim_units",
    "zero-fuel CG": "zfw_cg_pct_mac",
    "landing CG": "lw_cg_pct_mac",
}
PERCENTILES = {"p5": 0.05, "p25": 0.25, "median": 0.5, "p75": 0.75, "p95": 0.95}


def extra(cell, name):
    """A carried column out of the cell that holds them all."""
    for pair in re.split(r"(?<!\\); ", cell):
        sides = re.split(r"(?<!\\)=", pair)
        if len(sides) == 2 and sides[0].lower() == name.lower():
            return re.sub(r"\\(.)", r"\1", sides[1]) or "not given"
    return "not given"


def route(flight):
    ends = [flight["from"], flight["to"]]
    return "–".join(end or "?" for end in ends) if any(ends) else "not given"


def group_of(grouping, flights):
    if grouping in ("type", "tail"):
        return flights[grouping]
    if grouping == "flap setting":
        thrust = flights["trim_thrust"].map(lambda rating: ", thrust " + rating if rating else "")
        return (flights["flaps"] + thrust).replace("", "not given")
    if grouping == "route":
        return flights.apply(route, axis=1)
    if grouping == "month":
        return flights["date"].str[:7]
    return flights["extras"].map(lambda cell: extra(cell, grouping))


def in_band(group, mass):
    low, high = (float(number.replace(",", "")) for number in re.findall(r"[\d,]+", group))
    return (mass >= low) & (mass < high)


def ranks(n, p):
    """Ranks r and s, from 1, with P(B < r) and P(B >= s) at most 2.5 %; 0 and n + 1 where there is none."""
    logs = [
        math.lgamma(n + 1) - math.lgamma(k + 1) - math.lgamma(n - k + 1) + k * math.log(p) + (n - k) * math.log(1 - p)
        for k in range(n + 1)
    ]
    below = np.cumsum(np.exp(logs))
    lower = [r for r in range(n + 1) if r == 0 or below[r - 1] <= 0.025]
    upper = [s for s in range(1, n + 2) if 1 - below[s - 1] <= 0.025]
    return max(lower), min(upper)


def figures(values, status):
    ordered = np.sort(values.to_numpy())
    n = len(ordered)
    found = {
        "n": n,
        "mean": values.mean(),
        "sd": values.std(ddof=1) if n > 1 else math.nan,
        "min": ordered[0],
        "max": ordered[-1],
        "share_marginal": (status == "marginal").mean(),
        "share_breached": (status == "breached").mean(),
    }
    for name, p in PERCENTILES.items():
        found[name] = values.quantile(p, interpolation="linear")
    for name, p in (("p5", 0.05), ("p95", 0.95)):
        low, high = ranks(n, p)
        found[name + "_from"] = ordered[low - 1] if low >= 1 else math.nan
        found[name + "_to"] = ordered[high - 1] if high <= n else math.nan
    return found


def main(folder):
    text = ["flaps", "trim_thrust", "from", "to", "extras", "type", "tail", "date", "status"]
    flights = pd.read_csv(folder / "flights.csv", dtype={name: str for name in text}, float_precision="round_trip")
    flights[text] = flights[text].fillna("")
    statistics = pd.read_csv(
        folder / "statistics.csv",
        dtype={"flaps": str, "thrust": str, "group": str, "type": str},
        keep_default_na=False,
        float_precision="round_trip",
    )
    groups = {}
    worst, compared, left = 0.0, 0, 0
    for _, row in statistics.iterrows():
        if row["grouping"] == "load factor":
            left += 1
            continue
        if row["grouping"] == "take-off mass":
            same = in_band(row["group"], flights["tow_kg"])
        else:
            key = row["grouping"]
            groups.setdefault(key, group_of(key, flights))
            same = groups[key] == row["group"]
        same &= flights["type"] == row["type"]
        if row["flaps"] or row["measure"] == "take-off trim":
            same &= (flights["flaps"] == row["flaps"]) & (flights["trim_thrust"] == row["thrust"])
        chosen = flights[same & flights[MEASURES[row["measure"]]].notna()]
        for name, expected in figures(chosen[MEASURES[row["measure"]]], chosen["status"]).items():
            cell = row[name]
            if isinstance(cell, str) and cell == "":
                difference = 0.0 if math.isnan(expected) else math.inf
            else:
                difference = abs(float(cell) - expected)
            if not difference <= NEAR:
                print(f"{row['grouping']} {row['group']} {row['measure']} {name}: {cell}, recomputed {expected}")
            worst = max(worst, difference if not math.isnan(difference) else math.inf)
            compared += 1
    print(
        f"{len(statistics) - left} groups, {compared} figures, greatest difference {worst:.2e};"
        f" {left} groups by load factor left out (numpy {np.__version__}, pandas {pd.__version__})"
    )
    return 0 if worst <= NEAR else 1


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1] if len(sys.argv) > 1 else "reports/demo")))
