import { mean } from "./mean";
import { requireFinite } from "./require-finite";
import { type TooFew, tooFew } from "./too-few";

/** More ways than this to split the values in two are not tried: about 9 against 9. */
export const MOST_SPLITS = 50_000;

/** Whether two groups differ by more than their mixing would bring. */
export interface PermutationTest {
  kind: "permutation_test";
  /** Mean of the second less mean of the first. */
  difference: number;
  /** All ways to split the values into groups of these sizes: no chance is less than one of them. */
  splits: number;
  /** Two-sided: the share of splits whose means lie at least as far apart. */
  chance: number;
}

/** There are more splits than are tried: the rank-sum test does for groups of this size. */
export interface TooManySplits {
  kind: "too_many";
  splits: number;
}

/**
 * The exact permutation test of two small groups by the difference of their means (Fisher 1935; Pitman 1937, Suppl J R
 * Stat Soc 4:119-130). Means and not medians: of few values most splits share a handful of medians, so that a test by
 * them can hardly ever tell a change; the chance is exact for either.
 * @returns too_few where a group is empty; too_many above 50,000 splits; all values equal: chance 1
 * @example permutationTest([1, 2, 3], [4, 5, 9]) // difference 4, 20 splits, chance 0.1
 */
export function permutationTest(
  first: readonly number[],
  second: readonly number[],
): PermutationTest | TooFew | TooManySplits {
  const both = [...first, ...second];
  requireFinite(both);
  const [meanOfFirst, meanOfSecond, grand] = [mean(first), mean(second), mean(both)];
  if (meanOfFirst === null || meanOfSecond === null || grand === null) {
    return tooFew(Math.min(first.length, second.length), 1);
  }
  const splits = waysToChoose(both.length, first.length);
  if (splits > MOST_SPLITS) return { kind: "too_many", splits };
  const fewer = first.length <= second.length ? first : second;
  const asFar = countAsFar(
    both.map((value) => value - grand),
    fewer.length,
    Math.abs(fewer.reduce((sum, value) => sum + (value - grand), 0)),
  );
  const difference = meanOfSecond - meanOfFirst;
  return { kind: "permutation_test", difference, splits, chance: asFar / splits };
}

/**
 * How many ways there are to choose some of n.
 * @returns 0 where there are fewer than are chosen; never above the greatest whole number a double counts to
 * @example waysToChoose(6, 3) // 20
 */
export function waysToChoose(n: number, chosen: number): number {
  let ways = chosen > n ? 0 : 1;
  for (let index = 0; index < Math.min(chosen, n - chosen); index++) {
    ways = Math.min(Number.MAX_SAFE_INTEGER, Math.round((ways * (n - index)) / (index + 1)));
  }
  return ways;
}

/** About their common mean the two groups sum to opposite numbers: the means are as far apart as one sum is from 0. */
function countAsFar(values: readonly number[], chosen: number, apart: number): number {
  const rounding = 1e-12 * values.reduce((sum, value) => sum + Math.abs(value), 0);
  const walk = (from: number, left: number, sum: number): number => {
    if (left === 0) return Math.abs(sum) >= apart - rounding ? 1 : 0;
    let count = 0;
    for (let index = from; index <= values.length - left; index++) {
      count += walk(index + 1, left - 1, sum + (values[index] ?? 0));
    }
    return count;
  };
  return walk(0, chosen, 0);
}
