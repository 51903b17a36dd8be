#!/usr/bin/python3
"""compare.py FLIGHTS.csv PANDAS.csv: greatest differences of what the program and the pandas script both compute."""
import sys

import pandas as pd

ours, theirs = pd.read_csv(sys.argv[1]), pd.read_csv(sys.argv[2])
if len(ours) != len(theirs):
    sys.exit(f"{len(ours)} flights here, {len(theirs)} there")
bad = False
for column in ("dow_kg", "dow_cg_pct_mac", "zfw_kg", "zfw_cg_pct_mac", "tow_kg", "tow_cg_pct_mac", "lw_kg", "lw_cg_pct_mac",
               "tow_fwd_margin_pct_mac", "tow_aft_margin_pct_mac", "zfw_aft_margin_pct_mac", "trim_units"):
    worst = (ours[column] - theirs[column]).abs().max()
    bad |= not worst < (0.02 if column == "trim_units" else 1e-8)
    print(f"{column:26} {worst:.2e}")
sys.exit("they differ" if bad else 0)
