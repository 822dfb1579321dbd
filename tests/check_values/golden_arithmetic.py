# SPDX-License-Identifier: GPL-3.0-or-later
# Works the numbers of fit_golden.csv out again from the working written in each row, and the band from the limits
# written there; nothing of the program is asked. usage: golden_arithmetic.py FILE. Ends with "N passed, N failed".
import csv
import math
import sys

WORDS = {name: getattr(math, name) for name in ("sqrt", "log10")}
WORDS.update(abs=abs, max=max)
# Bands that another rule decides, as the row's "why" says: an unknown PD is never better than a caution; prism
# prescribed is not supplied by decentration; centres beyond 2 mm ask for little prism; a cylinder no better than a
# sphere; criteria that never fail.
OTHER_RULE = {"horizontal_prism", "centres", "supplied_cylinder", "axis_turn", "frame_size", "reading_level"}


def band(measured, limits):
    for part in limits.split(", "):
        name, limit = part.split(" ")
        value = float(limit.lstrip("<"))
        if measured < value - 1e-6 if limit.startswith("<") else measured <= value + 1e-6:
            return {"trial": "on_trial"}.get(name, name)
    return "fails"


def main():
    passed, failed = 0, 0
    with open(sys.argv[1], newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            measured = eval(row["working"], {"__builtins__": {}}, WORDS)
            good = abs(measured - float(row["measured"])) < 0.00006
            derived = band(measured, row["limits"])
            good = good and (derived == row["band"] or row["criterion"] in OTHER_RULE)
            good = good and row["why"] != "" and row["source"] != ""
            passed, failed = passed + good, failed + (not good)
            if not good:
                print("%s: %s is %.4f, %s; written %s, %s" % (row["case"], row["working"], measured, derived,
                                                             row["measured"], row["band"]))
    print("%d passed, %d failed" % (passed, failed))
    return 1 if failed or passed < 60 else 0


sys.exit(main())
