import { normalReach } from "./distributions";
import type { Observation } from "./observation";
import { median, quantileOfSorted } from "./quantile";
import { requireFinite } from "./require-finite";
import { sumOver, tieSizes } from "./tie-sizes";
import { type TooFew, tooFew } from "./too-few";

/** An interval takes this many: of four, the widest there is (least to greatest slope) covers 92 % only. */
export const INTERVAL_NEEDS = 5;

/** A straight line that a few odd observations do not bend. */
export interface TheilSen {
  kind: "theil_sen";
  n: number;
  /** Change in `perTime` units of time: the median over all pairs. */
  slope: number;
  /** Value of the line at time 0: median value less slope times median time (Conover 1980). */
  intercept: number;
  /** Of the slope; both null below 5 observations. */
  lower: number | null;
  upper: number | null;
}

/** For how long the slope is told, and what share its interval is to cover. */
export interface SlopeTerms {
  perTime?: number;
  level?: number;
}

/**
 * The Theil-Sen slope with its interval (Theil 1950; Sen 1968, JASA 63:1379-1389). Each pair counts by its own
 * distance in time, so unequal spacing does no harm; pairs of one time are left out.
 *
 * Interval: of the three conventions in use (Sen's exact small-sample one, order statistics by Sen's normal
 * approximation with the variance of eq. 2.6, Gilbert's interpolation) the second, with the rounding of SciPy's
 * `theilslopes`. Its bounds are slopes that occurred, it holds with ties in value and in time, and without ties it
 * covers at least the 95 % it claims from 5 observations on (a test counts it out).
 * @param terms `perTime`: 30.4375 tells times in days by the month; 1 when left out. `level` 0.95 when left out
 * @returns too_few while there are no two times; the slope is 0 and so are its bounds where all values are equal
 * @example times 1 2 3 4 10 12 18, values 9 15 19 20 45 55 78: slope 4, 3.714 to 4.375 (the example of Sen 1968)
 */
export function theilSen(observations: readonly Observation[], terms: SlopeTerms = {}): TheilSen | TooFew {
  const { perTime = 1, level = 0.95 } = terms;
  const times = observations.map((each) => each.at);
  const values = observations.map((each) => each.value);
  requireFinite([perTime, ...times, ...values]);
  const slopes = slopesOfPairs(observations);
  const slope = quantileOfSorted(slopes, 0.5);
  const middleTime = median(times);
  const middleValue = median(values);
  if (slope === null || middleTime === null || middleValue === null) return tooFew(new Set(times).size, 2);
  const bounds = boundsOf(slopes, spreadOfOrder(times, values), normalReach(level));
  const hasInterval = observations.length >= INTERVAL_NEEDS;
  return {
    kind: "theil_sen",
    n: observations.length,
    slope: slope * perTime,
    intercept: middleValue - slope * middleTime,
    lower: hasInterval ? bounds.lower * perTime : null,
    upper: hasInterval ? bounds.upper * perTime : null,
  };
}

/* Sorted in a typed array: of sixty observations there are 1,770, and a series is drawn for each checkpoint. */
function slopesOfPairs(observations: readonly Observation[]): Float64Array {
  const inTime = [...observations].sort((one, other) => one.at - other.at);
  const slopes = new Float64Array((inTime.length * (inTime.length - 1)) / 2);
  let count = 0;
  inTime.forEach((one, index) => {
    for (const other of inTime.slice(index + 1)) {
      if (other.at > one.at) slopes[count++] = (other.value - one.value) / (other.at - one.at);
    }
  });
  return slopes.subarray(0, count).sort();
}

/** Sen's eq. 2.6: the standard deviation of Kendall's S with ties on either side, never below 0. */
function spreadOfOrder(times: readonly number[], values: readonly number[]): number {
  const spread = (size: number) => size * (size - 1) * (2 * size + 5);
  const ties = sumOver(tieSizes(times), spread) + sumOver(tieSizes(values), spread);
  return Math.sqrt(Math.max(0, spread(times.length) - ties) / 18);
}

function boundsOf(slopes: ArrayLike<number>, spread: number, reach: number) {
  const last = slopes.length - 1;
  const above = Math.min(roundToEven((slopes.length + reach * spread) / 2), last);
  const below = Math.max(roundToEven((slopes.length - reach * spread) / 2) - 1, 0);
  return { lower: slopes[below] ?? 0, upper: slopes[above] ?? 0 };
}

/* Math.round would take a half up, NumPy takes it to the even neighbour. */
function roundToEven(value: number): number {
  const rounded = Math.round(value);
  return rounded - value === 0.5 && rounded % 2 !== 0 ? rounded - 1 : rounded;
}
