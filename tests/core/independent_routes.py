# SPDX-License-Identifier: GPL-3.0-or-later
# Works out by numpy and scipy what independent_values printed, each by a route of its own: matrices and their
# eigenvalues, quantiles, Grubbs limits, covariance, and the repeatability of a difference by Monte Carlo.
# usage: independent_routes.py PROGRAM. Ends with "N passed, N failed"; 77 and "N skipped" without scipy.
import subprocess
import sys

ROUTES = ["chi_square", "student", "f", "hotelling", "grubbs_two", "grubbs_one", "readings", "matrix", "crossed",
          "decentre", "vertex", "reproducibility", "chance_alike", "chance",
          "exact_limits", "funnel", "g_chart", "accepted", "accepted_in_lot", "smallest_plan", "funnel_lower",
          "p_chart", "p_chart_needs"]

try:
    import numpy as np
    from scipy import stats
except ImportError:
    print("%d skipped: python3-scipy is not installed" % len(ROUTES))
    sys.exit(77)


def lens(s, c, a):
    """Power matrix as a rotated diagonal one: S along the axis, S + C across it."""
    t = np.radians(a)
    turn = np.array([[np.cos(t), -np.sin(t)], [np.sin(t), np.cos(t)]])
    return turn @ np.diag([s, s + c]) @ turn.T


def grubbs(n, alpha):
    t = stats.t.ppf(1 - alpha / n, n - 2)
    return (n - 1) / np.sqrt(n) * np.sqrt(t * t / (n - 2 + t * t))


def crossed(v):
    """Principal powers and meridian of the sum by eigen-decomposition, minus-cylinder form."""
    values, vectors = np.linalg.eigh(lens(*v[:3]) + lens(*v[3:]))
    axis = np.degrees(np.arctan2(vectors[1, 1], vectors[0, 1])) % 180
    return [values[1], values[0] - values[1], axis if axis > 0 else 180.0]


def readings(v):
    x = np.array(v).reshape(-1, 3)
    n = len(x)
    s = np.cov(x, rowvar=False)
    values = np.sort(np.linalg.eigvalsh(s))[::-1]
    ball = 4 / 3 * np.pi * np.sqrt(np.linalg.det(s))
    t2 = 3 * (n - 1) / (n - 3) * stats.f.ppf(0.95, 3, n - 3)
    away = x[0] - x.mean(axis=0)
    return [s[0, 0], s[0, 1], s[1, 2], *values, ball * stats.chi2.ppf(0.95, 3) ** 1.5, ball * (t2 / n) ** 1.5,
            away @ np.linalg.solve(s, away)]


def vertex(v):
    """Matrix form of effectivity: F (I - d F)^-1."""
    f = np.array([[v[0], v[1]], [v[1], v[2]]])
    g = f @ np.linalg.inv(np.eye(2) - v[3] * f)
    return [g[0, 0], (g[0, 1] + g[1, 0]) / 2, g[1, 1]]


def matrix(v):
    f = lens(*v)
    values = np.linalg.eigvalsh(f)
    return [f[0, 0], f[0, 1], f[1, 1], values[1], values[0]]


def reproducibility(v):
    """95 % of differences of two measurements, by a million draws: within 0.5 %."""
    rng = np.random.default_rng(20261125)
    difference = rng.normal(0, v[0], 1000000) - rng.normal(0, v[0], 1000000)
    return [np.quantile(np.abs(difference), 0.95)]


def chance_alike(v):
    """Equal scatter in every direction: the squared length is a non-central chi-square."""
    mean, deviation, radius = np.array(v[:3]), v[3], v[4]
    return [stats.ncx2.cdf((radius / deviation) ** 2, 3, mean @ mean / deviation**2)]


def chance(v):
    """Any covariance: inversion of the characteristic function (Imhof JP, Biometrika 1961;48:419-426)."""
    mean, radius = np.array(v[:3]), v[9]
    values, vectors = np.linalg.eigh(np.array([[v[3], v[4], v[5]], [v[4], v[6], v[7]], [v[5], v[7], v[8]]]))
    away, x = (vectors.T @ mean) ** 2 / values, radius * radius

    def under(u):
        spread = 1 + (values * u) ** 2
        turn = 0.5 * np.sum(np.arctan(values * u) + away * values * u / spread) - 0.5 * x * u
        size = np.prod(spread**0.25) * np.exp(0.5 * np.sum(away * (values * u) ** 2 / spread))
        return np.sin(turn) / (u * size)

    last = 1.0
    while np.prod((1 + (values * last) ** 2) ** 0.25) * last < 1e6:
        last *= 2
    edges = np.concatenate([[1e-9], np.arange(1, min(int(last * x / 6) + 2, 4000)) * 6 / x])
    nodes, weights = np.polynomial.legendre.leggauss(24)
    total = 0.0
    for a, b in zip(edges[:-1], edges[1:]):
        total += sum(w * under((b - a) / 2 * n + (a + b) / 2) for n, w in zip(nodes, weights)) * (b - a) / 2
    return [0.5 - total / np.pi]


def exact_limits(v):
    interval = stats.binomtest(int(v[1]), int(v[0])).proportion_ci(v[2], method="exact")
    return [interval.low, interval.high]


def smallest_plan(v):
    """Every sample from 1 up with every number allowed, until one keeps both risks."""
    fine, bad, risk = v
    for sample in range(1, 2001):
        allowed = np.arange(sample)
        kept = (stats.binom.sf(allowed, sample, fine) <= risk) & (stats.binom.cdf(allowed, sample, bad) <= risk)
        if kept.any():
            return [sample, int(allowed[kept][0])]
    return []


def p_chart(v):
    wide = 3 * stats.binom.std(v[1], v[0]) / v[1]
    return [max(0, v[0] - wide), min(1, v[0] + wide)]


def p_chart_needs(v):
    """The first size at which the lower limit is above nought."""
    return [next(n for n in range(1, 10000) if v[0] - 3 * np.sqrt(v[0] * (1 - v[0]) / n) > 1e-12)]


WORK = {
    "chi_square": lambda v: [stats.chi2.ppf(*v)],
    "student": lambda v: [stats.t.ppf(*v)],
    "f": lambda v: [stats.f.ppf(*v)],
    "hotelling": lambda v: [v[1] * (v[2] - 1) / (v[2] - v[1]) * stats.f.ppf(v[0], v[1], v[2] - v[1])],
    "grubbs_two": lambda v: [grubbs(v[0], v[1] / 2)],
    "grubbs_one": lambda v: [grubbs(v[0], v[1])],
    "readings": readings,
    "matrix": matrix,
    "crossed": crossed,
    "decentre": lambda v: 10 * np.linalg.solve(np.array([[v[0], v[1]], [v[1], v[2]]]), np.array(v[3:])),
    "vertex": vertex,
    "reproducibility": reproducibility,
    "chance_alike": chance_alike,
    "chance": chance,
    "exact_limits": exact_limits,
    "funnel": lambda v: [stats.binom.ppf(1 - v[2], v[0], v[1])],
    "accepted": lambda v: [stats.binom.cdf(*v)],
    "accepted_in_lot": lambda v: [stats.hypergeom.cdf(*v)],
    "smallest_plan": smallest_plan,
    "funnel_lower": lambda v: [stats.binom.ppf(v[2], v[0], v[1])],
    "p_chart": p_chart,
    "p_chart_needs": p_chart_needs,
    "g_chart": lambda v: [stats.geom.isf(0.5, v[0]) - 1, stats.geom.isf(v[1], v[0]) - 1],
}
WITHIN = {"crossed": 1e-7, "decentre": 1e-6, "reproducibility": 0.005, "readings": 1e-8, "chance_alike": 1e-4, "chance": 2e-4}


def agrees(name, expected, result):
    for e, r in zip(expected, result):
        apart = abs(e - r)
        if name == "crossed" and apart > 90:
            apart = 180 - apart
        if not apart <= WITHIN.get(name, 1e-8) * max(1.0, abs(e)):
            return False
    return len(expected) == len(result)


def main():
    lines = subprocess.run([sys.argv[1]], check=True, capture_output=True, text=True).stdout.splitlines()
    passed, failed, seen = 0, 0, set()
    for line in lines:
        name, inputs, result = line.split("|")
        seen.add(name)
        values, got = [float(x) for x in inputs.split()], [float(x) for x in result.split()]
        if agrees(name, list(WORK[name](values)), got):
            passed += 1
        else:
            failed += 1
            print("differs: %s %s: %s against %s" % (name, values, got, list(WORK[name](values))))
    for name in sorted(set(ROUTES) - seen):
        failed += 1
        print("nothing was printed for", name)
    print("%d passed, %d failed, by %d routes" % (passed, failed, len(seen)))
    return 1 if failed else 0


sys.exit(main())
