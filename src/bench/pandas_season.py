#!/usr/bin/python3
"""The same season by vectorised pandas, as an analyst would write it: for comparison of time and memory.

pandas_season.py SEASON.csv TYPE.json OUT.csv

It reads the file that the program reads and computes less: zero-fuel, take-off and landing mass and CG, take-off trim
and its setting, room to the envelope's lines at these three states (not along the fuel path), and a verdict from masses
and these lines; groups trim by flap setting; and writes as many columns as flights.csv has. No holds, floors, tanks,
groups, recorded settings, sentences, rejected rows, workbook or page.
"""
import json
import sys

import numpy as np
import pandas as pd

ZONES = ["pax A", "pax B", "pax C", "pax D", "pax E", "pax F"]
HOLDS = ["hold 1 kg", "hold 2 kg", "hold 3 kg", "hold 4 kg", "hold 5 kg"]


def tank_moment(quantity, table):
    points = np.array([[0, 0]] + table)
    return np.interp(quantity, points[:, 0], points[:, 1])


def limit_arm(mass, line):
    straight, points = line[0], np.array(line[1:])
    masses, arms = points[:, 0], points[:, 1]
    if straight == "ARM":
        return np.interp(mass, masses, arms)
    return np.interp(mass, masses, masses * arms) / mass


def burn_stages(left, centre, right, amount):
    """Centre to 800 kg, wings together to 1600 kg each, the centre's rest, the wings' rest."""
    def centre_to(floor, centre, amount):
        used = np.minimum(np.maximum(centre - floor, 0), amount)
        return centre - used, amount - used

    def wings_to(floor, left, right, amount):
        a, b = np.maximum(left - floor, 0), np.maximum(right - floor, 0)
        both = np.minimum(np.minimum(a, b), amount / 2)
        left, right, amount = left - both, right - both, amount - 2 * both
        one = np.minimum(np.maximum(left - floor, 0), amount)
        left, amount = left - one, amount - one
        one = np.minimum(np.maximum(right - floor, 0), amount)
        return left, right - one, amount - one

    centre, amount = centre_to(800, centre, amount)
    left, right, amount = wings_to(1600, left, right, amount)
    centre, amount = centre_to(0, centre, amount)
    left, right, amount = wings_to(0, left, right, amount)
    return left, centre, right


def trim(frame, cg, mass, scales):
    out = np.full(len(frame), np.nan)
    for flaps, scale in scales.items():
        here = (frame["flaps"] == int(flaps)).to_numpy()
        rows, masses = np.array(scale["rows"]), np.array(scale["masses"])
        place = (cg[here] - scale["from"]) / 0.5
        column = np.clip(np.floor(place).astype(int), 0, rows.shape[1] - 2)
        across = place - column
        row = np.clip(np.searchsorted(masses, mass[here]) - 1, 0, len(masses) - 2)
        down = (mass[here] - masses[row]) / (masses[row + 1] - masses[row])
        low = rows[row, column] + across * (rows[row, column + 1] - rows[row, column])
        high = rows[row + 1, column] + across * (rows[row + 1, column + 1] - rows[row + 1, column])
        out[here] = np.where((place < 0) | (place > rows.shape[1] - 1), np.nan, low + down * (high - low))
    return out


def main(season, type_file, out_file):
    with open(type_file, encoding="utf-8") as file:
        kind = json.load(file)
    frame = pd.read_csv(season, dtype={"pantry": str}, keep_default_na=True)
    frame["pantry"] = frame["pantry"].fillna("standard")
    percent = lambda arm: kind["lemac"] + 100 * arm / kind["chord"]

    tails = pd.DataFrame.from_dict(kind["tails"], orient="index", columns=["mass", "moment"])
    pantries = pd.DataFrame.from_dict(kind["pantries"], orient="index", columns=["mass", "moment"])
    dry = tails.loc[frame["tail"]].to_numpy() + pantries.loc[frame["pantry"]].to_numpy()
    (cockpit_seats, cockpit), (front_seats, front), (rear_seats, rear) = kind["stations"]
    crew = frame["cabin crew"].fillna(4).to_numpy()
    at_front = np.minimum(crew, front_seats)
    dry_mass = dry[:, 0] + 2 * kind["flight_crew"] + crew * kind["cabin_crew"]
    dry_moment = (dry[:, 1] + 2 * kind["flight_crew"] * cockpit
                  + kind["cabin_crew"] * (at_front * front + (crew - at_front) * rear))

    seated = frame[ZONES].to_numpy(dtype=float)
    zones = seated * kind["adult"]
    zones[:, 2] += frame["children C"].to_numpy() * kind["child"]
    holds = frame[HOLDS].to_numpy(dtype=float)
    zfw = dry_mass + zones.sum(axis=1) + holds.sum(axis=1)
    zfw_moment = dry_moment + zones @ np.array(kind["zones"]) + holds @ np.array(kind["holds"])

    tanks = [frame[name].to_numpy(dtype=float) for name in ("fuel left kg", "fuel centre kg", "fuel right kg")]
    states = {"zfw": (zfw, zfw_moment)}
    for state, burnt in (("tow", frame["taxi kg"].to_numpy(dtype=float)), ("lw", frame["trip kg"].to_numpy(dtype=float))):
        tanks = burn_stages(*tanks, burnt)
        moments = sum(tank_moment(tank, table) for tank, table in zip(tanks, kind["tanks"]))
        states[state] = (zfw + sum(tanks), zfw_moment + moments)

    columns = {name: frame[name] for name in ("flight", "date", "tail", "from", "to", "pilot", "flaps", "landing flaps")}
    outside = np.zeros(len(frame), dtype=bool)
    close = np.zeros(len(frame), dtype=bool)
    limits = dict(zip(("zfw", "tow", "lw"), kind["limits"]))
    names = {"zfw": "zero fuel", "tow": "take-off", "lw": "landing"}
    for state, (mass, moment) in states.items():
        arm = moment / mass
        columns[state + "_kg"] = mass
        columns[state + "_moment_kgm"] = moment
        columns[state + "_cg_pct_mac"] = percent(arm)
        limit = np.full(len(frame), limits[state])
        if state != "zfw":
            limit = np.fmin(limit, frame[state + " limit kg"].to_numpy())
        columns[state + "_limit_kg"] = limit
        columns[state + "_room_kg"] = limit - mass
        forward, aft = kind["envelopes"][names[state]]
        room_forward = 100 * (arm - limit_arm(mass, forward)) / kind["chord"]
        room_aft = 100 * (limit_arm(mass, aft) - arm) / kind["chord"]
        columns[state + "_fwd_margin_pct_mac"] = room_forward
        columns[state + "_aft_margin_pct_mac"] = room_aft
        outside |= (mass > limit) | (room_forward < 0) | (room_aft < 0)
        close |= (limit - mass < 0.005 * limit) | (room_forward < 1) | (room_aft < 1)
    units = trim(frame, columns["tow_cg_pct_mac"], columns["tow_kg"], kind["trim"])
    columns["trim_units"] = units
    columns["trim_setting"] = np.floor(units / 0.1 + 0.5) * 0.1
    columns["status"] = np.select([outside, close], ["breached", "marginal"], "clean")
    columns["recorded_trim_units"] = frame["trim set"]
    columns["recorded_less_right_units"] = frame["trim set"] - columns["trim_setting"]
    columns["dow_kg"] = dry_mass
    columns["dow_cg_pct_mac"] = percent(dry_moment / dry_mass)
    columns["traffic_load_kg"] = zfw - dry_mass
    columns["taxi_kg"] = frame["taxi kg"]
    columns["trip_kg"] = frame["trip kg"]
    columns["passengers"] = seated.sum(axis=1)
    columns["holds_kg"] = holds.sum(axis=1)
    columns["file"] = "season-bench.csv"
    columns["row"] = np.arange(2, len(frame) + 2)
    columns["type"] = "jet180"
    columns["pantry"] = frame["pantry"]
    for number in range(53 - len(columns)):
        columns[f"carried_{number}"] = frame[ZONES[number % 6]]
    result = pd.DataFrame(columns)
    groups = result.groupby("flaps")["trim_units"].describe(percentiles=[0.05, 0.25, 0.5, 0.75, 0.95])
    statuses = result["status"].value_counts()
    result.to_csv(out_file, index=False)
    print(groups.to_string())
    print(statuses.to_string())


if __name__ == "__main__":
    main(*sys.argv[1:])
