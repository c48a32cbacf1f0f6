import { requireFinite } from "./require-finite";

/**
 * A quantile by Hyndman and Fan's type 7 (1996, Am Stat 50:361-365): linear between the order statistics at rank
 * 1 + p(n - 1). The default of R, NumPy and Excel's PERCENTILE.INC; NIST's handbook uses type 6, which asks for more
 * values than a short series has in its tails.
 * @param share p, from 0 (the least value) to 1 (the greatest)
 * @returns null without values
 * @throws RangeError for a share outside 0 to 1 or a value that is not finite: the caller's fault
 * @example quantile([1, 2, 3, 4], 0.25) // 1.75
 */
export function quantile(values: readonly number[], share: number): number | null {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`A share lies from 0 to 1, not at ${share}.`);
  requireFinite(values);
  return quantileOfSorted(
    [...values].sort((one, other) => one - other),
    share,
  );
}

/**
 * {@link quantile} of values that are in order already, whatever their size: of ratios of observations, too.
 * @example quantileOfSorted([1, 3], 0.5) // 2
 */
export function quantileOfSorted(sorted: ArrayLike<number>, share: number): number | null {
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)];
  const above = sorted[Math.ceil(place)];
  if (below === undefined || above === undefined) return null;
  return below + (above - below) * (place - Math.floor(place));
}

/**
 * The middle value, or the mean of the middle two. The same for types 2 and 4 to 9 but for rounding.
 * @returns null without values
 * @example median([3, 1, 2, 10]) // 2.5
 */
export function median(values: readonly number[]): number | null {
  return quantile(values, 0.5);
}
