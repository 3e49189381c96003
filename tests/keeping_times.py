#!/usr/bin/env python3
"""Writes model/keeping_times_table.cpp from the FoodKeeper file of the USDA FSIS, version 128.

    tests/keeping_times.py FOODKEEPER.json > model/keeping_times_table.cpp

Takes the rows that the catalogue names. Times counted from the purchase (DOP) come first; where there are none, those
without an anchor are taken and marked so.
"""
import json
import pathlib
import re
import sys

root = pathlib.Path(__file__).resolve().parent.parent
wanted = set()
for table in root.glob("model/catalogue_*.cpp"):
    wanted.update(int(n) for n in re.findall(r"\| (?:bb|ub|-) (\d+)$", table.read_text(), re.M))

data = json.loads(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8"))
sheet = next(s for s in data["sheets"] if s["name"] == "Product")
rows = [{k: v for cell in row for k, v in cell.items()} for row in sheet["data"]]

units = {"Days": "days", "Weeks": "weeks", "Months": "months", "Year": "years", "Years": "years"}


def span(row, column):
    metric, most = row.get(column + "_Metric"), row.get(column + "_Max")
    if metric in units and most is not None:
        least = row.get(column + "_Min")
        return "%d %d %s" % (least if least is not None else most, most, units[metric])
    return metric or "-"


def bought(row, place):
    stated = span(row, "DOP_" + place)
    plain = span(row, place)
    return stated if stated != "-" else plain if plain == "-" else plain + "*"


print('#include "model/keeping_times.h"\n')
print("// Written by tests/keeping_times.py. Data: U.S. Department of Agriculture, Food Safety and Inspection Service,")
print("// FoodKeeper, version 128 (2018); a work of the United States Government, published as CC0 1.0.")
print("// Row | name | subtitle | pantry | fridge | freezer | pantry after opening | fridge after opening.")
print("// A star: the data do not say from when the time counts.")
print("namespace model {\n\nstd::string_view keepingTimesTable() {")
print('    return R"(')
for row in sorted(rows, key=lambda r: int(r["ID"])):
    if int(row["ID"]) in wanted:
        print(" | ".join([str(int(row["ID"])), (row["Name"] or "").strip(), (row["Name_subtitle"] or "-").strip(),
                          bought(row, "Pantry"), bought(row, "Refrigerate"), bought(row, "Freeze"),
                          span(row, "Pantry_After_Opening"), span(row, "Refrigerate_After_Opening")]))
print(')";\n}\n\n} // namespace model')
