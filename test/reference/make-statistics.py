"""Draws random data sets and has R and SciPy say what the statistics of each are.

    python3 test/reference/make-statistics.py

Needs R with jsonlite, psych, vcd and survival, and Python with NumPy and SciPy. Writes statistics-random.json beside
itself: the same seed draws the same sets; the versions stand in it. R computes what make-statistics.R says; SciPy the
Theil-Sen slopes, the distribution functions and, by listing every split, the exact tests of two groups; NumPy the
process chart from the formulas of NIST's handbook, as neither has one.
"""

import json
import platform
import subprocess
import tempfile
from pathlib import Path

import numpy
import scipy
from scipy import stats

SEED = 20261125
random = numpy.random.default_rng(SEED)


def whole(low, high):
    return int(random.integers(low, high + 1))


def times(count, tied):
    """Days, unequally spaced; tied ones come twice now and then."""
    gaps = random.integers(0 if tied else 1, 15, count)
    return [int(day) for day in numpy.cumsum(gaps)]


def values(count, digits):
    """Angles around some middle, rounded: 0 digits make ties, 3 hardly any."""
    middle, spread = random.uniform(-20, 120), random.uniform(1, 15)
    drawn = middle + spread * random.standard_normal(count)
    return [round(float(value), digits) for value in drawn]


def series(index):
    count = whole(3, 40) if index % 5 else whole(50, 70)
    tied = index % 2 == 0
    at = times(count, tied and index % 4 == 0)
    drawn = values(count, 0 if tied else 3)
    slope = random.uniform(-0.2, 0.2)
    drawn = [round(value + slope * day, 0 if tied else 3) for value, day in zip(drawn, at)]
    if len(set(at)) < 2 or len(set(drawn)) < 2:
        return series(index)
    return {"at": at, "values": drawn}


def table(_):
    subjects, columns = whole(2, 12), whole(2, 5)
    own = random.normal(0, random.uniform(0, 10), subjects)
    shift = random.normal(0, random.uniform(0, 4), columns)
    noise = random.normal(0, random.uniform(0.5, 6), (subjects, columns))
    cells = 90 + own[:, None] + shift[None, :] + noise
    return {"table": [[round(float(cell), 2) for cell in row] for row in cells]}


def repeats(_):
    return {"repeats": [values(whole(1, 4), 1) for _ in range(whole(1, 9))] + [values(2, 1)]}


def judgements(index):
    size = whole(2, 5)
    apart = numpy.abs(numpy.subtract.outer(numpy.arange(size), numpy.arange(size)))
    chance = random.uniform(0.2, 2.0)
    counts = random.poisson(random.uniform(2, 15) * numpy.exp(-chance * apart)) + (apart == 0)
    kind = ["linear", "quadratic", "given"][index % 3]
    given = numpy.triu(random.integers(1, 9, (size, size)), 1)
    disagreement = {"linear": apart, "quadratic": apart**2, "given": given + given.T}[kind].astype(float)
    weights = 1 - disagreement / disagreement.max()
    return {"kind": kind, "counts": counts.tolist(), "disagreement": disagreement.tolist(), "weights": weights.tolist()}


def groups(most):
    def draw(index):
        digits = 0 if index % 2 else 2
        first, second = values(whole(2, most), digits), values(whole(2, most), digits)
        shift = round(numpy.median(first) - numpy.median(second) + random.normal(0, 5), digits)
        return {"first": first, "second": [round(value + shift, digits) for value in second]}

    return draw


def rank_groups(index):
    return groups(7)(index) if index % 3 else large_groups(index)


def large_groups(index):
    pair = groups(40)(index)
    return pair if len(pair["first"]) + len(pair["second"]) > 30 else large_groups(index)


def spans(index):
    count = whole(1, 24)
    durations = [int(days) + 1 for days in random.exponential(20, count)]
    share = [0.0, 0.3, 0.6, 0.9][index % 4]
    ended = [int(random.random() >= share) for _ in durations]
    if sum(ended) == 0:
        return spans(index)
    return {"durations": durations, "ended": ended}


def chances(_):
    return {"chances": [round(float(chance), 6) for chance in random.beta(0.5, 2, whole(1, 30))]}


def chart_values(_):
    count = whole(2, 30)
    drawn = numpy.array(values(count, 1))
    base = whole(2, count)
    drawn[base:] += random.normal(0, 10)
    return {"values": [round(float(value), 1) for value in drawn], "base": base}


def points(_):
    above = [whole(1, 30), float(random.uniform(0.5, 60))][whole(0, 1)]
    below = [whole(1, 120), float(random.uniform(0.5, 60))][whole(0, 1)]
    z, ratio = float(random.normal(0, 3)), float(10 ** random.uniform(-2, 2))
    return {"z": z, "level": float(random.uniform(0.5, 0.999)), "ratio": ratio, "above": above, "below": below}


def quantiles(_):
    return {"values": values(whole(1, 40), whole(0, 3)), "share": round(float(random.random()), 3)}


def expect_theil_sen(drawn):
    found = stats.theilslopes(drawn["values"], drawn["at"], 0.95, method="separate")
    return {"slope": found.slope, "intercept": found.intercept, "lower": found.low_slope, "upper": found.high_slope}


def share_as_far(first, second, statistic):
    """The exact test: the share of all splits whose statistic is as great."""
    found = stats.permutation_test(
        (first, second), statistic, alternative="greater", n_resamples=numpy.inf, vectorized=False
    )
    return float(found.pvalue)


def expect_rank_sum(drawn):
    first, second = drawn["first"], drawn["second"]
    if len(first) + len(second) > 30:
        return {}
    ranks = stats.rankdata(first + second)
    middle = len(second) * (len(ranks) + 1) / 2

    def apart(one, other):
        return abs(other.sum() - middle)

    return {"exact": share_as_far(ranks[: len(first)], ranks[len(first) :], apart)}


def expect_permutation(drawn):
    first, second = numpy.array(drawn["first"]), numpy.array(drawn["second"])
    chance = share_as_far(first, second, lambda one, other: abs(one.mean() - other.mean()))
    return {"chance": chance, "difference": float(second.mean() - first.mean())}


def expect_chart(drawn):
    base = numpy.array(drawn["values"][: drawn["base"]])
    centre, spread = base.mean(), numpy.abs(numpy.diff(base)).mean()
    lower, upper = centre - 3 * spread / 1.128, centre + 3 * spread / 1.128
    beyond = [i for i, value in enumerate(drawn["values"]) if value > upper or value < lower]
    sides = numpy.sign(numpy.array(drawn["values"]) - centre)
    runs = [i for i in range(7, len(sides)) if abs(sides[i - 7 : i + 1].sum()) == 8]
    limits = {"centre": centre, "lower": lower, "upper": upper, "rangeLimit": 3.267 * spread}
    return {**{name: float(limit) for name, limit in limits.items()}, "beyond": beyond, "runs": runs}


def expect_points(drawn):
    degrees = (drawn["above"], drawn["below"])
    return {
        "tail": float(stats.norm.sf(drawn["z"])),
        "reach": float(-stats.norm.ppf((1 - drawn["level"]) / 2)),
        "fTail": float(stats.f.sf(drawn["ratio"], *degrees)),
        "fQuantile": float(stats.f.ppf(drawn["level"], *degrees)),
    }


DRAWS = {
    "quantile": (100, quantiles),
    "theilSen": (150, series),
    "mannKendall": (150, series),
    "twoWay": (150, table),
    "within": (50, repeats),
    "kappa": (150, judgements),
    "rankSum": (100, rank_groups),
    "permutation": (50, groups(7)),
    "kaplanMeier": (60, spans),
    "adjust": (40, chances),
    "chart": (50, chart_values),
    "distributions": (50, points),
}
BY_PYTHON = {
    "theilSen": expect_theil_sen,
    "rankSum": expect_rank_sum,
    "permutation": expect_permutation,
    "chart": expect_chart,
    "distributions": expect_points,
}


def by_r(sets):
    here = Path(__file__).resolve().parent
    with tempfile.TemporaryDirectory() as folder:
        drawn, told = Path(folder, "drawn.json"), Path(folder, "told.json")
        drawn.write_text(json.dumps(sets))
        subprocess.run(["Rscript", str(here / "make-statistics.R"), str(drawn), str(told)], check=True)
        return json.loads(told.read_text())


def main():
    sets = {name: [draw(index) for index in range(count)] for name, (count, draw) in DRAWS.items()}
    told = by_r(sets)
    lines = []
    for name, drawn in sets.items():
        by_python = [BY_PYTHON[name](each) if name in BY_PYTHON else {} for each in drawn]
        expected = told["expected"].get(name, [{} for _ in drawn])
        rows = [{**each, "expected": {**a, **b}} for each, a, b in zip(drawn, expected, by_python)]
        body = ",\n".join(json.dumps(row, separators=(",", ":"), allow_nan=False) for row in rows)
        lines.append(f'"{name}": [\n{body}\n]')
    versions = {**told["versions"], "Python": platform.python_version()}
    versions |= {"NumPy": numpy.__version__, "SciPy": scipy.__version__}
    head = {"source": "made by make-statistics.py; see there who computes what", "seed": SEED, "versions": versions}
    opening = json.dumps(head, indent=1)[:-2]
    path = Path(__file__).resolve().parent / "statistics-random.json"
    path.write_text(opening + ",\n" + ",\n".join(lines) + "\n}\n")


main()
