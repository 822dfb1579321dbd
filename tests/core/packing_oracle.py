# SPDX-License-Identifier: GPL-3.0-or-later
# Solves the packing problems that packing_instances printed again, as integer programs by scipy.optimize.milp
# (HiGHS): whole packs within the budget, whole needs served in every scenario, most needs together. The order
# printed must stay within the budget and serve what is said; no order may pass the printed bound; the orders may
# fall short of the best by SHORT needs in a hundred at most, counted over all instances.
# usage: packing_oracle.py PROGRAM [SMALL LARGE]. Ends with "N passed, N failed"; 77 and "N skipped" without scipy.
import os
import subprocess
import sys

SMALL = sys.argv[2] if len(sys.argv) > 2 else "60"
LARGE = sys.argv[3] if len(sys.argv) > 3 else ("12" if os.environ.get("QS_LONG") else "4")
SHORT = 1.0  # in a hundred of the needs that can be served

try:
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import coo_matrix
except ImportError:
    print("%d skipped: python3-scipy is not installed" % (int(SMALL) + int(LARGE)))
    sys.exit(77)


def solve(resources, budget, onhand, offers, needs, seconds=40):
    """(most needs served, bound on it, proved)"""
    rows, columns, values, most = [], [], [], []

    def entry(row, column, value):
        rows.append(row)
        columns.append(column)
        values.append(value)

    for column, (cost, _) in enumerate(offers):
        entry(0, column, cost)
    most.append(budget)
    scenarios = 1 + max(scenario for scenario, _ in needs)
    for scenario in range(scenarios):  # pieces used - pieces bought <= pieces on hand
        for resource in range(resources):
            row = 1 + scenario * resources + resource
            most.append(onhand[resource])
            for column, (_, holds) in enumerate(offers):
                if resource in holds:
                    entry(row, column, -holds[resource])
    column = len(offers)
    for scenario, ways in needs:
        row = len(most)
        most.append(1.0)
        for used in ways:
            entry(row, column, 1.0)
            for resource in used:
                entry(1 + scenario * resources + resource, column, 1.0)  # the same line twice adds up
            column += 1
    gains = np.concatenate([np.zeros(len(offers)), np.ones(column - len(offers))])
    upper = np.concatenate([np.full(len(offers), np.inf), np.ones(column - len(offers))])
    matrix = coo_matrix((values, (rows, columns)), shape=(len(most), column)).tocsr()
    result = milp(-gains, integrality=np.ones(column), bounds=Bounds(0, upper),
                  constraints=LinearConstraint(matrix, -np.inf, most),
                  options={"time_limit": seconds, "mip_rel_gap": 0.0})
    if result.x is None:
        return 0, len(needs), False
    return round(-result.fun), -result.mip_dual_bound, result.status == 0


def instances(text):
    name = None
    for line in text.splitlines():
        words = line.split()
        if words[0] == "instance":
            name, resources, budget, offers, needs = words[1], int(words[2]), float(words[3]), [], []
        elif words[0] == "onhand":
            onhand = [float(w) for w in words[1:]]
        elif words[0] == "offer":
            holds = {int(words[i]): float(words[i + 1]) for i in range(2, len(words), 2)}
            offers.append((float(words[1]), holds))
        elif words[0] == "need":
            needs.append((int(words[1]), []))
        elif words[0] == "way":
            needs[-1][1].append([int(w) for w in words[1:]])
        else:
            yield name, resources, budget, onhand, offers, needs, [float(w) for w in words[1:]]


passed = failed = equal = proved_all = 0
ours = best_of_all = 0.0
text = subprocess.run([sys.argv[1], SMALL, LARGE], capture_output=True, text=True, check=True).stdout
for name, resources, budget, onhand, offers, needs, (served, bound, greedy, cost) in instances(text):
    best, theirs, proved = solve(resources, budget, onhand, offers, needs)
    good = served <= theirs + 1e-6 and best <= bound + 1e-6 and served <= bound + 1e-6 and cost <= budget
    equal += abs(served - best) < 1e-6
    proved_all += proved
    if proved:
        ours += served
        best_of_all += best
    passed += good
    failed += not good
    if not good or served < best - 1e-6:
        print("%s %s: served %.0f (greedy %.0f), bound %.2f; milp %d%s"
              % ("ok" if good else "FAILED", name, served, greedy, bound, best, "" if proved else " (not proved in time)"))
short = 100.0 * (best_of_all - ours) / max(1.0, best_of_all)
print("%d equal to the best; %d proved by milp; %.2f in a hundred short of the best on average (at most %.1f)"
      % (equal, proved_all, short, SHORT))
failed += short > SHORT
print("%d passed, %d failed" % (passed, failed))
sys.exit(1 if failed else 0)
