import fCdf from "@stdlib/stats-base-dists-f-cdf";
import fQuantileOf from "@stdlib/stats-base-dists-f-quantile";
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import normalQuantileOf from "@stdlib/stats-base-dists-normal-quantile";

/**
 * The chance that a standard normal value lies above z.
 * @example normalTail(0) // 0.5
 */
export function normalTail(z: number): number {
  return normalCdf(-z, 0, 1);
}

/**
 * The chance of a standard normal value at least as far from 0 as z, on either side.
 * @example twoSidedNormal(0) // 1
 */
export function twoSidedNormal(z: number): number {
  return Math.min(1, 2 * normalTail(Math.abs(z)));
}

/**
 * How many standard errors an interval that covers this share reaches to either side.
 * @param level above 0 and below 1
 * @throws RangeError for another level: the caller's fault
 * @example normalReach(0.95) // 1.959964, rounded
 */
export function normalReach(level: number): number {
  return normalQuantileOf(1 - upperShare(level), 0, 1);
}

/**
 * What an interval of this level leaves out above: half of the rest.
 * @throws RangeError for a level that is not above 0 and below 1: the caller's fault
 * @example upperShare(0.5) // 0.25
 */
export function upperShare(level: number): number {
  if (!(level > 0 && level < 1)) throw new RangeError(`A level lies between 0 and 1, not at ${level}.`);
  return (1 - level) / 2;
}

/**
 * The chance that an F value lies above `ratio`. Taken from the lower tail of the reciprocal, so that a small chance
 * keeps its digits.
 * @param ratio 0 or more; at 0 the chance is 1
 * @param above degrees of freedom of the numerator, above 0, whole or not
 * @param below degrees of freedom of the denominator
 * @example fTail(1, 4, 4) // 0.5
 */
export function fTail(ratio: number, above: number, below: number): number {
  return ratio <= 0 ? 1 : fCdf(1 / ratio, below, above);
}

/**
 * The F value that this share lies below; see {@link fTail} for the degrees of freedom.
 * @example fQuantile(0.5, 4, 4) // 1
 */
export function fQuantile(share: number, above: number, below: number): number {
  return fQuantileOf(share, above, below);
}
