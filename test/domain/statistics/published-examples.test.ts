import { describe, expect, it } from "vitest";
import { icc } from "@/server/domain/statistics/icc";
import { kaplanMeier, lastingUntil } from "@/server/domain/statistics/kaplan-meier";
import { kappa } from "@/server/domain/statistics/kappa";
import { agreementOf, linearWeights, sameOrNot } from "@/server/domain/statistics/kappa-weights";
import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { detectableChange, measurementError } from "@/server/domain/statistics/measurement-error";
import { processChart } from "@/server/domain/statistics/process-chart";
import { median, quantile } from "@/server/domain/statistics/quantile";
import { theilSen } from "@/server/domain/statistics/theil-sen";
import { twoWay } from "@/server/domain/statistics/two-way";
import shroutFleiss from "../../reference/icc.json" with { type: "json" };
import curves from "../../reference/kaplan-meier.json" with { type: "json" };
import agreement from "../../reference/kappa.json" with { type: "json" };
import trends from "../../reference/mann-kendall.json" with { type: "json" };
import percentiles from "../../reference/percentiles.json" with { type: "json" };
import nist from "../../reference/process-chart.json" with { type: "json" };
import weir from "../../reference/standard-error.json" with { type: "json" };
import sen from "../../reference/theil-sen.json" with { type: "json" };
import { agree, agreeAll, enough } from "./agree";

/** Figures that were written down with ten digits or so. */
const TEN_DIGITS = 1e-9;
const inOrder = (values: readonly number[]) => values.map((value, at) => ({ at, value }));

describe("Mann-Kendall gives the figures of", () => {
  interface Expected {
    S: number;
    varS: number;
    Z: number;
    p_two_sided?: number;
    p_exact_two_sided?: number;
    tau_b?: number | null;
  }
  it.each(trends.examples.map((example) => [example.name, example] as const))("%s", (_, example) => {
    const expected: Expected = example.expected;
    const trend = enough(mannKendall(inOrder(example.x)));
    expect(trend.s).toBe(expected.S);
    agree(trend.variance, expected.varS, "variance");
    agree(trend.z, expected.Z, "z");
    agree(trend.chance, expected.p_exact_two_sided ?? expected.p_two_sided, "chance", TEN_DIGITS);
    if ("tau_b" in expected) agree(trend.tau, expected.tau_b, "tau");
  });

  it("EPA QA/G-9S, p. 109, as printed", () => {
    const trend = enough(mannKendall(inOrder(trends.examples[0]?.x ?? [])));
    const printed = trends.examples[0]?.published as { S: number; varS: number; Z: number };
    expect([trend.s, trend.variance.toFixed(2), trend.z.toFixed(3)]).toEqual([
      printed.S,
      String(printed.varS),
      String(printed.Z),
    ]);
  });
});

describe("Theil-Sen gives, for the data of Sen 1968,", () => {
  const [example] = sen.examples;
  if (!example) throw new Error("The example is missing.");
  const { expected } = example;
  const points = example.t.map((at, index) => ({ at, value: example.y[index] ?? 0 }));

  it("slope 4, intercept 4 and the interval of SciPy", () => {
    const line = enough(theilSen(points));
    expect(line.slope).toBe(expected.slope);
    expect(line.intercept).toBe(expected.intercept_conover_median_y_minus_b_median_t);
    agreeAll([line.lower, line.upper], expected.ci_scipy_theilslopes_95pct);
    const narrower = enough(theilSen(points, { level: 0.9 }));
    agreeAll([narrower.lower, narrower.upper], expected.ci_scipy_theilslopes_90pct);
  });

  it("the same line told by the month: 30.4375 times as steep, from the same start", () => {
    const byDay = enough(theilSen(points));
    const byMonth = enough(theilSen(points, { perTime: 30.4375 }));
    agree(byMonth.slope, byDay.slope * 30.4375);
    agree(byMonth.upper, (byDay.upper ?? 0) * 30.4375);
    expect(byMonth.intercept).toBe(byDay.intercept);
  });
});

describe("the intraclass correlations give, for the data of Shrout and Fleiss 1979,", () => {
  const table = shroutFleiss.ratings_targets_by_judges;

  it("their mean squares", () => {
    const squares = enough(twoWay(table));
    const { BMS, JMS, EMS, WMS } = shroutFleiss.anova;
    [squares.ofSubjects, squares.ofColumns, squares.ofError, squares.withinSubjects].forEach(
      (each, index) => {
        agree(each, [BMS, JMS, EMS, WMS][index], "mean square", TEN_DIGITS);
      },
    );
  });

  it.each(["1,1", "2,1", "3,1", "1,k", "2,k", "3,k"] as const)(
    "ICC(%s) with its test and interval",
    (name) => {
      const form = enough(icc(table)).forms[name];
      const expected = shroutFleiss.expected[`ICC(${name})`];
      agree(form.icc, expected.icc, "icc", TEN_DIGITS);
      agree(form.f, expected.F, "F", TEN_DIGITS);
      expect(form.freedom).toEqual([expected.df1, expected.df2]);
      agree(form.chance, expected.p, "chance", TEN_DIGITS);
      agree(form.lower, expected.ci95[0], "lower", TEN_DIGITS);
      agree(form.upper, expected.ci95[1], "upper", TEN_DIGITS);
      const printed = shroutFleiss.published_rounded[`ICC(${name.replace("k", "4") as "1,1"})`];
      expect(form.icc?.toFixed(2)).toBe(printed.toFixed(2));
    },
  );
});

describe("kappa gives, for the table of Cohen 1968,", () => {
  const [given, linear] = agreement.examples;
  if (!given || !linear) throw new Error("An example is missing.");
  const { expected, counts_rowsB_colsA: counts } = given;

  it("0.492 without weights", () => {
    const plain = enough(kappa(counts, sameOrNot(3)));
    agree(plain.kappa, expected.kappa, "kappa", TEN_DIGITS);
    agree(plain.standardError, expected.ase_kappa, "standard error", TEN_DIGITS);
    agree(plain.observed, expected.po);
    agree(plain.expected, expected.pe);
    expect(plain.kappa?.toFixed(3)).toBe(String(given.published?.kappa));
  });

  it("0.348 with his weights, and the standard error of Fleiss, Cohen and Everitt", () => {
    const disagreement = given.disagreement_weights_v ?? [];
    const weighted = enough(kappa(counts, agreementOf(disagreement)));
    agree(weighted.kappa, expected.weighted_kappa, "kappa", TEN_DIGITS);
    agree(weighted.standardError, expected.ase_weighted, "standard error", TEN_DIGITS);
    agree((1 - weighted.observed) * 6, expected.qo_mean_disagreement);
    agree((1 - weighted.expected) * 6, expected.qe);
    expect(weighted.kappa?.toFixed(3)).toBe(String(given.published?.weighted_kappa));
  });

  it("0.474 with linear weights", () => {
    const weighted = enough(kappa(counts, linearWeights(3)));
    agree(weighted.kappa, linear.expected.weighted_kappa, "kappa", TEN_DIGITS);
    agree(weighted.standardError, linear.expected.ase_weighted, "standard error", TEN_DIGITS);
  });
});

describe("the error of a measure is, for the data of Weir 2005,", () => {
  it.each([
    ["A", weir.A],
    ["B", weir.B],
  ] as const)("the same in set %s, however the subjects differ", (_, set) => {
    const table = set.trial1.map((first, index) => [first, set.trial2[index] ?? 0]);
    const { expected } = set;
    const error = enough(measurementError(table));
    agree(error.standardError, expected.SEM_sqrtMSE, "standard error", TEN_DIGITS);
    agree(error.detectableChange, expected.MDC95_sqrtMSE, "detectable change", TEN_DIGITS);
    agree(error.standardError * Math.SQRT2, expected.SD_diff, "spread of the differences", TEN_DIGITS);
    const squares = enough(twoWay(table));
    agree(squares.ofSubjects, expected.MS_subjects, "subjects", TEN_DIGITS);
    agree(squares.ofColumns, expected.MS_trials, "trials", TEN_DIGITS);
    agree(squares.withinSubjects, expected.MS_within, "within", TEN_DIGITS);
    const { forms } = enough(icc(table));
    agree(forms["1,1"].icc, expected.icc11, "1,1", TEN_DIGITS);
    agree(forms["2,1"].icc, expected.icc21, "2,1", TEN_DIGITS);
    agree(forms["3,1"].icc, expected.icc31, "3,1", TEN_DIGITS);
  });

  it("as the paper prints it, who rounds before it multiplies", () => {
    const { SEM, MD } = weir.published_rounded;
    expect(detectableChange(SEM).toFixed(1)).toBe(MD.toFixed(1));
  });
});

describe("the process chart gives, for the flow data of NIST,", () => {
  const chart = enough(processChart(nist.x));

  it("the limits it prints", () => {
    expect([chart.upper.toFixed(4), chart.lower.toFixed(4)]).toEqual([
      String(nist.published.ucl),
      String(nist.published.lcl),
    ]);
    agree(chart.centre, nist.expected.mean);
    agree(chart.meanRange, nist.expected.mr_bar);
    expect(chart.upper).toBeCloseTo(nist.expected["ucl_using_1.128"], 5);
    expect(chart.rangeLimit).toBeCloseTo(nist.expected["url_mr_3.267"], 4);
  });

  it("the moving ranges, and no signal", () => {
    agreeAll(chart.movingRanges, nist.moving_ranges);
    expect(chart.signals).toEqual([]);
  });
});

describe("Kaplan-Meier gives the curve of", () => {
  it.each(curves.examples.map((example) => [example.name, example] as const))("%s", (_, example) => {
    const { expected } = example;
    const spans = example.time.map((duration, index) => ({ duration, hasEnded: example.event[index] === 1 }));
    const curve = enough(kaplanMeier(spans));
    expect(curve.steps.map((step) => step.at)).toEqual(expected.time);
    expect(curve.steps.map((step) => step.atRisk)).toEqual(expected.n_risk);
    expect(curve.steps.map((step) => step.ended)).toEqual(expected.n_event);
    curve.steps.forEach((step, index) => {
      agree(step.lasting, expected.surv[index], "lasting", TEN_DIGITS);
      agree(step.standardError, expected.se_greenwood[index], "standard error", TEN_DIGITS);
      agree(step.lower, expected.lower_log[index], "lower", TEN_DIGITS);
      agree(step.upper, expected.upper_log[index], "upper", TEN_DIGITS);
    });
    const fractions = "surv_exact_float" in expected ? expected.surv_exact_float : undefined;
    fractions?.forEach((fraction, index) => {
      agree(curve.steps[index]?.lasting, fraction, "as a fraction", 1e-14);
    });
    expect(curve.median).toBe(expected.median);
    expect(lastingUntil(curve.steps, 0.75)).toBe(expected.quantiles["25"]);
    expect(lastingUntil(curve.steps, 0.25)).toBe(expected.quantiles["75"]);
  });
});

describe("quantiles are of type 7", () => {
  it.each([
    ["NIST, section 7.2.6.2", percentiles.x, percentiles.by_type.type7],
    ["one to ten", [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], percentiles.one_to_ten.type7],
  ] as const)("for %s", (_, values, expected) => {
    const shares = [0.1, 0.25, 0.5, 0.75, 0.9];
    const { p10, p25, p50, p75, p90 } = expected;
    agreeAll(
      shares.map((share) => quantile(values, share)),
      [p10, p25, p50, p75, p90],
    );
    agree(median(values), p50);
  });
});
