import { describe, expect, it } from "vitest";
import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import { fQuantile, fTail, normalReach, normalTail } from "@/server/domain/statistics/distributions";
import { icc } from "@/server/domain/statistics/icc";
import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import { kappa } from "@/server/domain/statistics/kappa";
import {
  agreementOf,
  linearWeights,
  quadraticWeights,
  sameOrNot,
} from "@/server/domain/statistics/kappa-weights";
import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { measurementError, withinSubjectError } from "@/server/domain/statistics/measurement-error";
import { permutationTest } from "@/server/domain/statistics/permutation-test";
import { processChart } from "@/server/domain/statistics/process-chart";
import { median, quantile } from "@/server/domain/statistics/quantile";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import { theilSen } from "@/server/domain/statistics/theil-sen";
import { twoWay } from "@/server/domain/statistics/two-way";
import random from "../../reference/statistics-random.json" with { type: "json" };
import { agree, agreeAll, enough } from "./agree";

const numbered = <Set>(sets: readonly Set[]) => sets.map((set, index) => [index, set] as const);
const observations = (set: { at: number[]; values: number[] }) =>
  set.at.map((at, index) => ({ at, value: set.values[index] ?? 0 }));

it("draws more than a thousand sets and says by which versions they were computed", () => {
  const sets = Object.values(random).filter(Array.isArray);
  expect(sets.flat().length - random.distributions.length).toBeGreaterThanOrEqual(1000);
  expect(random.versions.R).toContain("4.2.2");
  expect(Object.keys(random.versions)).toEqual(["R", "psych", "vcd", "survival", "Python", "NumPy", "SciPy"]);
});

describe("agrees to 1e-9 on random sets with", () => {
  it.each(numbered(random.quantile))("R's quantile, type 7, and median: set %d", (_, set) => {
    agree(quantile(set.values, set.share), set.expected.quantile);
    agree(median(set.values), set.expected.median);
  });

  it.each(numbered(random.theilSen))("SciPy's theilslopes: set %d", (_, set) => {
    const line = enough(theilSen(observations(set)));
    agree(line.slope, set.expected.slope, "slope");
    agree(line.intercept, set.expected.intercept, "intercept");
    const hasInterval = set.at.length >= 5;
    agree(line.lower, hasInterval ? set.expected.lower : null, "lower");
    agree(line.upper, hasInterval ? set.expected.upper : null, "upper");
  });

  it.each(numbered(random.mannKendall))("R's cor.test by Kendall: set %d", (_, set) => {
    const trend = enough(mannKendall(observations(set)));
    agree(trend.z, set.expected.z, "z");
    agree(trend.tau, set.expected.tau, "tau");
    agree(trend.chance, set.expected.chance, "chance");
  });

  it.each(numbered(random.twoWay))("R's aov and psych's ICC: set %d", (_, set) => {
    const { expected } = set;
    const squares = enough(twoWay(set.table));
    agreeAll([squares.ofSubjects, squares.ofColumns, squares.ofError], expected.squares, "mean squares");
    const error = enough(measurementError(set.table));
    agree(error.standardError, expected.standardError, "standard error");
    agree(error.detectableChange, expected.detectableChange, "detectable change");
    const { forms } = enough(icc(set.table));
    const all = (["1,1", "2,1", "3,1", "1,k", "2,k", "3,k"] as const).map((name) => forms[name]);
    all.forEach((form, index) => {
      agree(form.f, expected.f[index], `F ${index}`);
      agree(form.chance, expected.chance[index], `chance ${index}`);
      if (form.icc === null) return;
      agree(form.icc, expected.icc[index], `icc ${index}`);
      agree(form.lower, expected.lower[index], `lower ${index}`);
      agree(form.upper, expected.upper[index], `upper ${index}`);
    });
  });

  it.each(numbered(random.within))("R's lm within subjects: set %d", (_, set) => {
    const error = enough(withinSubjectError(set.repeats));
    agree(error.standardError, set.expected.standardError);
    expect(error.freedom).toBe(set.expected.freedom);
  });

  it.each(numbered(random.kappa))("vcd's Kappa: set %d", (_, set) => {
    const { expected } = set;
    const size = set.counts.length;
    const weights = { linear: linearWeights(size), quadratic: quadraticWeights(size) };
    const given = agreementOf(set.disagreement);
    const weighted = enough(kappa(set.counts, set.kind in weights ? weights[set.kind as "linear"] : given));
    const plain = enough(kappa(set.counts, sameOrNot(size)));
    agreeAll([plain.kappa, plain.standardError], [expected.plain, expected.plainError], "plain");
    agreeAll([weighted.kappa, weighted.standardError], [expected.weighted, expected.error], "weighted");
    agreeAll([weighted.lower, weighted.upper], [expected.lower, expected.upper], "interval");
  });

  it.each(numbered(random.rankSum))("R's wilcox.test and every split listed by SciPy: set %d", (_, set) => {
    const expected: { chance?: number | null; u?: number; exact?: number } = set.expected;
    const test = enough(rankSum(set.first, set.second));
    if (typeof expected.chance === "number") agree(test.chance, expected.chance, "R");
    if (expected.exact !== undefined) agree(test.chance, expected.exact, "SciPy");
    if (expected.u !== undefined) expect(test.secondIsGreater).toBe(expected.u);
  });

  it.each(numbered(random.permutation))("every split listed by SciPy: set %d", (_, set) => {
    const test = enough(permutationTest(set.first, set.second));
    if (test.kind !== "permutation_test") throw new Error("There are few splits.");
    agree(test.chance, set.expected.chance, "chance");
    agree(test.difference, set.expected.difference, "difference");
  });

  it.each(numbered(random.kaplanMeier))("R's survfit: set %d", (_, set) => {
    const { expected } = set;
    const spans = set.durations.map((duration, index) => ({ duration, hasEnded: set.ended[index] === 1 }));
    const { steps, median: middle, medianLower, medianUpper } = enough(kaplanMeier(spans));
    expect(steps.map((step) => step.at)).toEqual(expected.at);
    expect(steps.map((step) => step.atRisk)).toEqual(expected.atRisk);
    for (const what of ["lasting", "standardError", "lower", "upper"] as const) {
      agreeAll(
        steps.map((step) => step[what]),
        expected[what],
        what,
      );
    }
    agreeAll(
      [middle, medianLower, medianUpper],
      [expected.median, expected.medianLower, expected.medianUpper],
      "medians",
    );
  });

  it.each(numbered(random.adjust))("R's p.adjust: set %d", (_, set) => {
    agreeAll(adjustForMany(set.chances), set.expected.adjusted);
  });

  it.each(numbered(random.chart))("NIST's formulas in NumPy: set %d", (_, set) => {
    const { expected } = set;
    const chart = enough(processChart(set.values, set.base));
    agreeAll(
      [chart.centre, chart.lower, chart.upper, chart.rangeLimit],
      [expected.centre, expected.lower, expected.upper, expected.rangeLimit],
    );
    const flagged = (rule: string) =>
      chart.signals.filter((signal) => signal.rule === rule).map((signal) => signal.index);
    expect(flagged("beyond_limits")).toEqual(expected.beyond);
    expect(flagged("run_of_eight")).toEqual(expected.runs);
  });

  it.each(numbered(random.distributions))("SciPy's normal and F distributions: set %d", (_, set) => {
    agree(normalTail(set.z), set.expected.tail, "tail");
    agree(normalReach(set.level), set.expected.reach, "reach");
    agree(fTail(set.ratio, set.above, set.below), set.expected.fTail, "F tail");
    agree(fQuantile(set.level, set.above, set.below), set.expected.fQuantile, "F quantile");
  });
});
