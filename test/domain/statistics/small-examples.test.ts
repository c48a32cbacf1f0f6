import { describe, expect, it } from "vitest";
import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import {
  fQuantile,
  fTail,
  normalReach,
  normalTail,
  twoSidedNormal,
  upperShare,
} from "@/server/domain/statistics/distributions";
import { boundsOfFixed, boundsOfOneWay, boundsOfRandom, testOf } from "@/server/domain/statistics/icc-bounds";
import { kaplanMeier, lastingUntil } from "@/server/domain/statistics/kaplan-meier";
import {
  agreementOf,
  linearWeights,
  quadraticWeights,
  sameOrNot,
} from "@/server/domain/statistics/kappa-weights";
import { kendallChance } from "@/server/domain/statistics/kendall-chance";
import { varianceOfS } from "@/server/domain/statistics/mann-kendall";
import { mean } from "@/server/domain/statistics/mean";
import { withinSubjectError } from "@/server/domain/statistics/measurement-error";
import { permutationTest, waysToChoose } from "@/server/domain/statistics/permutation-test";
import { median, quantile, quantileOfSorted } from "@/server/domain/statistics/quantile";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import { rankSumChance } from "@/server/domain/statistics/rank-sum-chance";
import { sumOver, tieSizes } from "@/server/domain/statistics/tie-sizes";
import { twoWay } from "@/server/domain/statistics/two-way";
import { agree, agreeAll, enough } from "./agree";

describe("the examples of the docstrings hold:", () => {
  it("distributions", () => {
    expect([normalTail(0), twoSidedNormal(0), upperShare(0.5)]).toEqual([0.5, 1, 0.25]);
    expect(normalReach(0.95)).toBeCloseTo(1.959964, 6);
    agreeAll([fTail(1, 4, 4), fQuantile(0.5, 4, 4)], [0.5, 1]);
    expect(fTail(0, 3, 3)).toBe(1);
  });

  it("ranks, ties and splits", () => {
    expect(tieSizes([5, 7, 5, 8, 7, 5])).toEqual([3, 2]);
    expect(sumOver([3, 2], (size) => size * (size - 1))).toBe(8);
    expect(waysToChoose(6, 3)).toBe(20);
    expect(waysToChoose(2, 3)).toBe(0);
    agree(rankSumChance([2, 4, 6, 8], 2, 14), 1 / 3);
    agree(kendallChance(5, 6), 7 / 30);
    expect(varianceOfS(11, [], [4, 2])).toBeCloseTo(155.33, 2);
    expect(rankSum([1, 2, 3], [4, 5, 6])).toMatchObject({ secondIsGreater: 9, share: 1, chance: 0.1 });
    expect(permutationTest([1, 2, 3], [4, 5, 9])).toMatchObject({ difference: 4, splits: 20, chance: 0.1 });
    const twenty = Array.from({ length: 20 }, (_, at) => at);
    expect(permutationTest(twenty, twenty)).toEqual({ kind: "too_many", splits: 137_846_528_820 });
  });

  it("means, quantiles, errors and weights", () => {
    expect(quantileOfSorted([1, 3], 0.5)).toBe(2);
    expect([mean([1, 2, 6]), median([3, 1, 2, 10]), quantile([1, 2, 3, 4], 0.25)]).toEqual([3, 2.5, 1.75]);
    agree(enough(withinSubjectError([[1, 3], [5], [4, 4, 4]])).standardError, Math.sqrt(2 / 3));
    expect(sameOrNot(2)).toEqual([
      [1, 0],
      [0, 1],
    ]);
    expect([linearWeights(3)[0], quadraticWeights(3)[0]]).toEqual([
      [1, 0.5, 0],
      [1, 0.75, 0],
    ]);
    expect(
      agreementOf([
        [0, 3],
        [3, 0],
      ]),
    ).toEqual(sameOrNot(2));
    expect(
      agreementOf([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual([
      [1, 1],
      [1, 1],
    ]);
    agreeAll(adjustForMany([0.01, 0.04, 0.03]), [0.03, 0.04, 0.04]);
  });

  it("bounds of a correlation, for one judge and for the mean of all", () => {
    expect(testOf(6, 2, 4, 4).f).toBe(3);
    expect(testOf(6, 0, 4, 4)).toEqual({ f: null, chance: null, freedom: [4, 4] });
    const squares = enough(
      twoWay([
        [1, 1],
        [2, 2],
        [3, 3],
      ]),
    );
    for (const of of [boundsOfOneWay, boundsOfFixed, boundsOfRandom]) {
      expect(of(squares, 0.975)).toEqual({ single: { lower: 1, upper: 1 }, average: { lower: 1, upper: 1 } });
    }
  });

  it("half that is reached exactly is a median, in the last digit as well", () => {
    const spans = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((duration) => ({ duration, hasEnded: true }));
    const { steps, median: middle } = enough(kaplanMeier(spans));
    expect([middle, lastingUntil(steps, 0.1), lastingUntil(steps.slice(0, 3), 0.5)]).toEqual([5, 9, null]);
  });
});
