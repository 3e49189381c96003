#!/usr/bin/env python3
"""Counts the check values of the published tables by text, mark and source, and lists what was left out and why.

    tests/check_values/count.py [--sources]

A row is one line of a published table; a value is one number or word of it that a test compares. A row is eligible if it
is computed, or gives a value that a function of the program gives too. "left-out" is eligible and not tested; "no-value"
is not eligible: a fact of a study, or a thing that the program does not do. Exit 1 if fewer than 400 rows are tested, or
fewer than 90 of 100 eligible rows of a text.
"""
import csv
import pathlib
import re
import sys
from collections import Counter

HERE = pathlib.Path(__file__).parent
UNTESTED = ("left-out", "no-value")
PAIRS = HERE.parent / "reports" / "braille_pairs.h"


def rows_of(file):
    with file.open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream, delimiter="\t", quoting=csv.QUOTE_NONE))


def braille_pairs():
    """Rows B and K of braille_test.cpp: uncontracted, contracted and ASCII of one print."""
    found = []
    for name, source in re.findall(r'\{"([BK]\d+)",.*?"((?:UEB|liblouis)[^"]*)"\}', PAIRS.read_text(encoding="utf-8"), re.S):
        mark = "verified" if name.startswith("B") else "computed"
        found += [{"row": name, "function": f"braille-{k}", "mark": mark, "source": source.split(",")[0]} for k in range(3)]
    return found


def main():
    texts = {file.stem: rows_of(file) for file in sorted(HERE.glob("*.tsv"))}
    texts["print_and_braille"] += braille_pairs()
    marks, sources, tested_rows, good = Counter(), Counter(), 0, True
    print(f"{'text':<20}{'rows':>6}{'values':>8}{'left out':>10}{'share':>8}{'not eligible':>14}")
    for name, rows in texts.items():
        tested = [row for row in rows if row["function"] not in UNTESTED]
        left, none = (sum(int(row["tolerance"]) for row in rows if row["function"] == kind) for kind in UNTESTED)
        names = {row["row"] for row in tested}
        share = len(names) / (len(names) + left)
        good = good and share >= 0.9
        tested_rows += len(names)
        print(f"{name:<20}{len(names):>6}{len(tested):>8}{left:>10}{share:>8.1%}{none:>14}")
        marks.update(mark for _, mark in {(row["row"], row["mark"]) for row in tested})
        sources.update(row["source"] for row in tested)
    print(f"{'together':<20}{tested_rows:>6}\n\nrows by mark (a row with two marks counts in both):")
    for mark, count in marks.most_common():
        print(f"  {mark:<18}{count:>5}")
    print(f"\nsources: {len(sources)}" + ("" if "--sources" in sys.argv else " (--sources lists them with their values)"))
    if "--sources" in sys.argv:
        for source, count in sources.most_common():
            print(f"  {count:>4}  {source}")
    for kind, words in zip(UNTESTED, ("left out", "not eligible")):
        print(f"\n{words}:")
        for name, rows in texts.items():
            for row in rows:
                if row["function"] == kind:
                    print(f"  {name}: {row['row']} ({row['tolerance']}) [{row['mark']}]: {row['source']}")
    return 0 if good and tested_rows >= 400 else 1


if __name__ == "__main__":
    sys.exit(main())
