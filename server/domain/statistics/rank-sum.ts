import { twoSidedNormal } from "./distributions";
import { rankSumChance } from "./rank-sum-chance";
import { requireFinite } from "./require-finite";
import { sumOver, tieSizes } from "./tie-sizes";
import { type TooFew, tooFew } from "./too-few";

/** Up to this many values on both sides together every split is counted. */
export const SPLITS_COUNTED_UP_TO = 30;

/** Whether one group tends to lie above the other. */
export interface RankSum {
  kind: "rank_sum";
  /** Mann and Whitney's U of the second group: pairs in which it is the greater, ties as half. */
  secondIsGreater: number;
  /** Of all pairs, 0 to 1; a half where neither tends to be greater. */
  share: number;
  /** Two-sided. */
  chance: number;
  method: "exact" | "normal";
}

/**
 * The Wilcoxon rank-sum test (Wilcoxon 1945, Biometrics Bulletin 1:80-83; Mann and Whitney 1947). Ties share the mean
 * of their ranks.
 *
 * Exact up to 30 values together, with ties or without: the share of all splits whose rank sum lies at least as far
 * from its expectation. Beyond that normal, with the variance for ties and a continuity correction of a half (as R's
 * `wilcox.test`).
 * @returns too_few where a group is empty; all values equal: chance 1
 * @example rankSum([1, 2, 3], [4, 5, 6]) // U 9 of 9, chance 0.1: 2 of 20 splits
 */
export function rankSum(first: readonly number[], second: readonly number[]): RankSum | TooFew {
  const both = [...first, ...second];
  requireFinite(both);
  if (first.length === 0 || second.length === 0) return tooFew(Math.min(first.length, second.length), 1);
  const ranks = doubledRanks(both);
  const rankSumOfSecond = sumOver(ranks.slice(first.length), (rank) => rank) / 2;
  const secondIsGreater = rankSumOfSecond - (second.length * (second.length + 1)) / 2;
  const isExact = both.length <= SPLITS_COUNTED_UP_TO;
  return {
    kind: "rank_sum",
    secondIsGreater,
    share: secondIsGreater / (first.length * second.length),
    chance: isExact
      ? rankSumChance(ranks, second.length, 2 * rankSumOfSecond)
      : normalChance(first.length, second.length, both, secondIsGreater),
    method: isExact ? "exact" : "normal",
  };
}

/** The rank of each value, twice: whole numbers whatever the ties. */
function doubledRanks(values: readonly number[]): number[] {
  const sorted = [...values].sort((one, other) => one - other);
  const ranks = new Map<number, number>();
  sorted.forEach((value, index) => {
    if (!ranks.has(value)) ranks.set(value, index + sorted.lastIndexOf(value) + 2);
  });
  return values.map((value) => ranks.get(value) ?? 0);
}

function normalChance(first: number, second: number, both: readonly number[], above: number): number {
  const n = both.length;
  const ties = sumOver(tieSizes(both), (size) => size ** 3 - size) / (n * (n - 1));
  const variance = ((first * second) / 12) * (n + 1 - ties);
  const apart = above - (first * second) / 2;
  return variance <= 0
    ? 1
    : twoSidedNormal((Math.abs(apart) - (apart === 0 ? 0 : 0.5)) / Math.sqrt(variance));
}
