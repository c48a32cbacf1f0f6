import { describe, expect, it } from "vitest";
import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import { icc } from "@/server/domain/statistics/icc";
import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import { crossTable, kappa } from "@/server/domain/statistics/kappa";
import { linearWeights, sameOrNot } from "@/server/domain/statistics/kappa-weights";
import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { mean } from "@/server/domain/statistics/mean";
import { measurementError, withinSubjectError } from "@/server/domain/statistics/measurement-error";
import { permutationTest } from "@/server/domain/statistics/permutation-test";
import { processChart } from "@/server/domain/statistics/process-chart";
import { median, quantile } from "@/server/domain/statistics/quantile";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import { theilSen } from "@/server/domain/statistics/theil-sen";
import { tooFew } from "@/server/domain/statistics/too-few";
import { twoWay } from "@/server/domain/statistics/two-way";
import { enough } from "./agree";

const inOrder = (values: readonly number[]) => values.map((value, at) => ({ at, value }));
const open = (duration: number) => ({ duration, hasEnded: false });

describe("too little says how much there is and how much it takes:", () => {
  it.each([
    ["a trend of nothing", mannKendall([]), 0, 3],
    ["a trend of two", mannKendall(inOrder([1, 2])), 2, 3],
    ["a slope of nothing", theilSen([]), 0, 2],
    [
      "a slope of one day alone",
      theilSen([
        { at: 5, value: 1 },
        { at: 5, value: 9 },
      ]),
      1,
      2,
    ],
    ["an analysis without subjects", twoWay([]), 0, 2],
    ["one subject", icc([[1, 2, 3]]), 1, 2],
    ["one repeat", measurementError([[1], [2], [3]]), 1, 2],
    ["subjects that were measured once", withinSubjectError([[1], [2]]), 1, 2],
    ["no repeats at all", withinSubjectError([]), 0, 2],
    [
      "no pair of judgements",
      kappa(
        [
          [0, 0],
          [0, 0],
        ],
        sameOrNot(2),
      ),
      0,
      1,
    ],
    ["a chart of nothing", processChart([]), 0, 2],
    ["a chart of one value", processChart([7]), 1, 2],
    ["a chart with one value before the change", processChart([7, 8, 9], 1), 1, 2],
    ["a group that is empty", rankSum([], [1, 2]), 0, 1],
    ["another that is empty", permutationTest([1, 2], []), 0, 1],
    ["no spans", kaplanMeier([]), 0, 1],
  ])("%s", (_, result, have, needed) => {
    expect(result).toEqual(tooFew(have, needed));
    expect(tooFew(have, needed)).toEqual({ kind: "too_few", have, needed });
  });

  it("no values have no middle, no quantile and no mean, and no chances stay none", () => {
    expect([median([]), quantile([], 0.9), mean([])]).toEqual([null, null, null]);
    expect(adjustForMany([])).toEqual([]);
  });
});

describe("one point", () => {
  it("is its own quantiles and mean", () => {
    expect([quantile([4], 0), median([4]), quantile([4], 1), mean([4])]).toEqual([4, 4, 4, 4]);
  });

  it("a side is compared, and proves nothing", () => {
    expect(rankSum([1], [2])).toMatchObject({ secondIsGreater: 1, share: 1, chance: 1, method: "exact" });
    expect(permutationTest([1], [2])).toEqual({
      kind: "permutation_test",
      difference: 1,
      splits: 2,
      chance: 1,
    });
  });

  it("that is open has no median, one that ended is it", () => {
    expect(kaplanMeier([open(5)])).toEqual({
      kind: "kaplan_meier",
      ...{ watched: 1, ended: 0, steps: [], median: null, medianLower: null, medianUpper: null },
    });
    const curve = enough(kaplanMeier([{ duration: 5, hasEnded: true }]));
    expect(curve.median).toBe(5);
    expect(curve.steps).toEqual([
      { at: 5, atRisk: 1, ended: 1, lasting: 0, standardError: null, lower: null, upper: null },
    ]);
  });
});

describe("all equal", () => {
  const equal = [0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1];
  const table = [equal, equal, equal];

  it("is no trend", () => {
    expect(mannKendall(inOrder(equal))).toMatchObject({ s: 0, variance: 0, z: 0, tau: null, chance: 1 });
    expect(theilSen(inOrder(equal))).toMatchObject({ slope: 0, intercept: 0.1, lower: 0, upper: 0 });
  });

  it("has no error, and no correlation", () => {
    expect(measurementError(table)).toMatchObject({ standardError: 0, detectableChange: 0 });
    expect(withinSubjectError(table)).toMatchObject({ standardError: 0, freedom: 24 });
    for (const form of Object.values(enough(icc(table)).forms)) {
      expect(form).toMatchObject({ icc: null, lower: null, upper: null, f: null, chance: null });
    }
  });

  it("is a chart without a signal, in which any other value is one", () => {
    expect(processChart(equal)).toMatchObject({ centre: 0.1, lower: 0.1, upper: 0.1, signals: [] });
    expect(processChart([...equal, 0.2], equal.length)).toMatchObject({
      signals: [{ index: 9, rule: "beyond_limits", side: "above" }],
    });
  });

  it("is two groups that do not differ", () => {
    expect(rankSum(equal, equal.slice(2))).toMatchObject({ share: 0.5, chance: 1 });
    expect(permutationTest(equal, equal.slice(2))).toMatchObject({ difference: 0, chance: 1 });
    const many = new Array<number>(40).fill(3);
    expect(rankSum(many, many)).toMatchObject({ share: 0.5, chance: 1, method: "normal" });
  });

  it("is full agreement that chance explains as well: no kappa", () => {
    const counts = [
      [9, 0],
      [0, 0],
    ];
    expect(kappa(counts, linearWeights(2))).toMatchObject({
      observed: 1,
      expected: 1,
      kappa: null,
      lower: null,
    });
    expect(kappa([[5]], linearWeights(1))).toMatchObject({ kappa: null });
  });
});

describe("what contradicts itself", () => {
  it("within one day is neither a rise nor a fall", () => {
    const points = [0, 0, 1, 1, 2, 2].map((at, index) => ({ at, value: index % 2 }));
    expect(mannKendall(points)).toMatchObject({ s: 0, z: 0, chance: 1 });
    expect(theilSen(points)).toMatchObject({ slope: 0 });
  });

  it("between judges throughout gives a kappa and a correlation below 0", () => {
    const crossed = crossTable(
      [
        [0, 1],
        [1, 0],
        [0, 1],
        [1, 0],
      ],
      2,
    );
    expect(crossed).toEqual([
      [0, 2],
      [2, 0],
    ]);
    expect(kappa(crossed, sameOrNot(2))).toMatchObject({ kappa: -1, standardError: 0, lower: -1, upper: -1 });
    const { forms } = enough(
      icc([
        [1, 2],
        [2, 1],
        [1, 2],
        [2, 1],
      ]),
    );
    expect(forms["3,1"].icc).toBe(-1);
  });

  it("but by a constant is full agreement for model 3 alone", () => {
    const { forms } = enough(
      icc([
        [1, 4],
        [2, 5],
        [3, 6],
      ]),
    );
    expect(forms["3,1"]).toMatchObject({ icc: 1, lower: 1, upper: 1, f: null });
    expect(forms["2,1"].icc).toBeLessThan(0.2);
  });
});
