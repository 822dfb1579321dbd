# SPDX-License-Identifier: GPL-3.0-or-later
# Solves the lines that planning_instances printed again, as integer programs by scipy.optimize.milp (HiGHS): served
# first, then least loss. Ready-made lines must agree in both; mixed lines must agree or stay within the bound
# printed, which may never be passed.
# usage: planning_oracle.py PROGRAM [SMALL LARGE]. QS_LONG=1: 20 large lines. Ends with "N passed, N failed"; 77 and
# "N skipped" without scipy.
import os
import subprocess
import sys

SMALL = sys.argv[2] if len(sys.argv) > 2 else "200"
LARGE = sys.argv[3] if len(sys.argv) > 3 else ("20" if os.environ.get("QS_LONG") else "4")

try:
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import coo_matrix
except ImportError:
    print("%d skipped: python3-scipy is not installed" % (int(SMALL) + int(LARGE)))
    sys.exit(77)


def solve(people, pieces, ways, seconds=60):
    """(served, loss, bound on the served, proved)"""
    if not ways:
        return 0, 0, 0, True
    loss = np.array([w[1] for w in ways], float)
    worst = {}
    for person, lost, _ in ways:
        worst[person] = max(worst.get(person, 0), lost)
    unit = 1.0 / (1.0 + sum(worst.values()))
    rows, columns, values = [], [], []
    for column, (person, _, used) in enumerate(ways):
        for row in [person] + [people + r for r in used]:
            rows.append(row)
            columns.append(column)
            values.append(1.0)  # the same line twice adds up
    matrix = coo_matrix((values, (rows, columns)), shape=(people + len(pieces), len(ways))).tocsr()
    result = milp(-(1.0 - unit * loss), integrality=np.ones(len(ways)), bounds=Bounds(0, 1),
                  constraints=LinearConstraint(matrix, -np.inf, [1.0] * people + pieces),
                  options={"time_limit": seconds, "mip_rel_gap": 0.0})
    if result.x is None:
        return 0, 0, people, False
    taken = result.x > 0.5
    bound = int(np.floor(-result.mip_dual_bound + 1.0 - 1e-9)) if result.status != 0 else int(taken.sum())
    return int(taken.sum()), int(loss[taken].sum()), bound, result.status == 0


def instances(text):
    name, people, pieces, ways = None, 0, [], []
    for line in text.splitlines():
        words = line.split()
        if words[0] == "instance":
            name, people, pieces, ways = words[1], int(words[2]), [], []
        elif words[0] == "pieces":
            pieces = [float(w) for w in words[1:]]
        elif words[0] == "way":
            ways.append((int(words[1]), int(words[2]), [int(w) for w in words[3:]]))
        else:
            yield name, people, pieces, ways, [float(w) for w in words[1:]]


passed = failed = unproved = equal = 0
text = subprocess.run([sys.argv[1], SMALL, LARGE], capture_output=True, text=True, check=True).stdout
for name, people, pieces, ways, (served, loss, bound, floor) in instances(text):
    best, least, theirs, proved = solve(people, pieces, ways)
    unproved += not proved
    exact = served == best and (loss == least or not proved)
    if not proved:  # only what was found in time can contradict
        good = served >= best or best <= bound
    elif "ready-made" in name:
        good = exact and bound == served
    else:
        # Neither printed bound is ever passed: more people, or less loss with as many.
        good = served <= theirs and best <= bound and (best != served or not proved or floor <= least + 1 <= loss + 1)
    equal += exact
    passed += good
    failed += not good
    if not good or not exact:
        print("%s %s: served %d loss %d, bounds %d %.0f; milp %d, %d, bound %d%s"
              % ("ok" if good else "FAILED", name, served, loss, bound, floor, best, least, theirs,
                 "" if proved else " (not proved in time)"))
print("%d equal in served and loss; %d of milp not proved in time" % (equal, unproved))
print("%d passed, %d failed" % (passed, failed))
sys.exit(1 if failed else 0)
