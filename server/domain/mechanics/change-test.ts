import { fTail } from "@/server/domain/statistics/distributions";
import { permutationTest } from "@/server/domain/statistics/permutation-test";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import type { ErrorFigure } from "./measure-error";

/** Up to so many on either side every split is tried by the means; with more the ranks are compared. */
export const SPLITS_UP_TO = 6;

/** Whether two sides differ by more than their mixing would bring. */
export interface ChangeTest {
  method: "permutation" | "rank_sum";
  /** Two-sided, from 0 to 1. */
  chance: number;
  /** 1 when the second side tends to lie higher, -1 lower, 0 neither. */
  direction: -1 | 0 | 1;
}

/**
 * The exact permutation test of the means up to 6 a side, beyond that Wilcoxon's rank sum, exact up to 30 together. Both
 * hold whatever the spread of days, so long as the days of one side might as well have been the other's.
 * @returns chance 1 and no direction where a side is empty or all values are equal
 * @example testOfChange([0, 1, 0], [2, 3, 3]).chance // 0.1: 2 of 20 splits
 */
export function testOfChange(before: readonly number[], after: readonly number[]): ChangeTest {
  const isSmall = Math.max(before.length, after.length) <= SPLITS_UP_TO;
  const split = isSmall ? permutationTest(before, after) : null;
  if (split?.kind === "permutation_test") {
    return { method: "permutation", chance: split.chance, direction: signOf(split.difference) };
  }
  const ranked = rankSum(before, after);
  if (ranked.kind === "too_few") return { method: "rank_sum", chance: 1, direction: 0 };
  return { method: "rank_sum", chance: ranked.chance, direction: signOf(ranked.share - 0.5) };
}

/**
 * The two-sided chance that error alone brings a change of medians so great: t by the standard error of two medians,
 * the variance of a median taken as π/2 that of a mean (its limit, more than it is for few), with the freedom of the
 * error.
 * @param error 0 when repeats never differed: chance 0 for any change, 1 for none
 * @example of 3 against 3 with a standard error of 1 on 20 degrees, a change of 2.0467: t 2, chance 0.0593
 */
export function chanceByError(
  change: number,
  error: Pick<ErrorFigure, "withinSd" | "degreesOfFreedom">,
  before: number,
  after: number,
): number {
  if (change === 0) return 1;
  const variance = (Math.PI / 2) * error.withinSd ** 2 * (1 / before + 1 / after);
  return variance === 0 ? 0 : fTail(change ** 2 / variance, 1, error.degreesOfFreedom);
}

function signOf(value: number): -1 | 0 | 1 {
  if (value === 0) return 0;
  return value > 0 ? 1 : -1;
}
