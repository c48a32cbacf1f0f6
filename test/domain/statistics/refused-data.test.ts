import { describe, expect, it } from "vitest";
import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import { normalReach, upperShare } from "@/server/domain/statistics/distributions";
import { icc } from "@/server/domain/statistics/icc";
import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import { crossTable, kappa } from "@/server/domain/statistics/kappa";
import { sameOrNot } from "@/server/domain/statistics/kappa-weights";
import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { withinSubjectError } from "@/server/domain/statistics/measurement-error";
import { permutationTest } from "@/server/domain/statistics/permutation-test";
import { processChart } from "@/server/domain/statistics/process-chart";
import { median, quantile } from "@/server/domain/statistics/quantile";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import { requireFinite } from "@/server/domain/statistics/require-finite";
import { theilSen } from "@/server/domain/statistics/theil-sen";
import { twoWay } from "@/server/domain/statistics/two-way";

const inOrder = (values: readonly number[]) => values.map((value, at) => ({ at, value }));
const open = (duration: number) => ({ duration, hasEnded: false });

describe("what is no observation is refused as the caller's fault:", () => {
  const bad = [1, Number.NaN, 3];
  it.each([
    ["a gap in a median", () => median(bad)],
    ["an infinity", () => requireFinite([Number.POSITIVE_INFINITY])],
    ["a size no measure has", () => requireFinite([1e16])],
    ["a smallness no measure has", () => requireFinite([1e-200])],
    ["a gap in a trend", () => mannKendall(inOrder(bad))],
    ["a gap in a slope", () => theilSen(inOrder(bad))],
    ["a gap in a table", () => twoWay([bad, bad])],
    ["rows of two lengths", () => twoWay([[1, 2], [1]])],
    ["a gap in repeats", () => withinSubjectError([bad])],
    ["a gap in a chart", () => processChart(bad)],
    ["a base longer than the chart", () => processChart([1, 2], 3)],
    ["half a base", () => processChart([1, 2], 1.5)],
    ["a gap in a group", () => rankSum(bad, [1])],
    ["a gap in the other", () => permutationTest([1], bad)],
    ["a duration below 0", () => kaplanMeier([open(-1)])],
    ["a chance above 1", () => adjustForMany([0.5, 1.5])],
    ["a share above 1", () => quantile([1], 1.1)],
    ["a level of 1", () => upperShare(1)],
    ["a level of 95", () => normalReach(95)],
    [
      "a level of 0 of a correlation",
      () =>
        icc(
          [
            [1, 2],
            [3, 4],
          ],
          0,
        ),
    ],
    ["counts that are not square", () => kappa([[1, 2]], sameOrNot(2))],
    [
      "half a count",
      () =>
        kappa(
          [
            [0.5, 0],
            [0, 1],
          ],
          sameOrNot(2),
        ),
    ],
    [
      "a weight above 1",
      () =>
        kappa(
          [
            [1, 0],
            [0, 1],
          ],
          [
            [2, 0],
            [0, 2],
          ],
        ),
    ],
    ["a category that is none", () => crossTable([[0, 2]], 2)],
  ])("%s", (_, attempt) => {
    expect(attempt).toThrow(RangeError);
  });
});
