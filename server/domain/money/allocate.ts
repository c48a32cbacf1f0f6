/**
 * Splits an amount by weights so that the parts add up to it exactly: each part is its exact share rounded down, and
 * the units left over go one each to the largest fractions, ties to the earlier (largest remainder, as in Fowler,
 * Patterns of Enterprise Application Architecture, "Money"). A negative amount is split like the positive one and
 * its signs turned, so that a refund undoes a charge part by part.
 * @param totalCents integer minor units, any sign
 * @param weights whole numbers of 0 or more, at least one above 0; a weight of 0 gets nothing
 * @throws RangeError when total or weights are not such numbers (the caller's fault)
 * @example allocate(5, [3, 7]) // [2, 3]
 */
export function allocate(totalCents: number, weights: readonly number[]): number[] {
  assertSplittable(totalCents, weights);
  const total = BigInt(Math.abs(totalCents));
  const weightSum = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
  const shares = weights.map((weight, index) => ({
    index,
    floor: Number((total * BigInt(weight)) / weightSum),
    remainder: (total * BigInt(weight)) % weightSum,
  }));
  const left = Math.abs(totalCents) - shares.reduce((sum, share) => sum + share.floor, 0);
  const byRemainder = [...shares].sort((a, b) => Number(b.remainder - a.remainder) || a.index - b.index);
  const raised = new Set(byRemainder.slice(0, left).map((share) => share.index));
  const sign = totalCents < 0 ? -1 : 1;
  return shares.map((share) => sign * (share.floor + (raised.has(share.index) ? 1 : 0)) + 0);
}

function assertSplittable(totalCents: number, weights: readonly number[]): void {
  if (!Number.isSafeInteger(totalCents)) throw new RangeError(`Not a whole minor amount: ${totalCents}`);
  const whole = weights.every((weight) => Number.isSafeInteger(weight) && weight >= 0);
  if (!whole || !weights.some((weight) => weight > 0)) {
    throw new RangeError("Weights must be whole numbers of 0 or more, at least one of them above 0");
  }
}
