/**
 * How many times each value occurs that occurs more than once, in no order that matters.
 * @example tieSizes([5, 7, 5, 8, 7, 5]) // [3, 2]
 */
export function tieSizes(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()].filter((count) => count > 1);
}

/**
 * A sum over groups of ties: what each takes off a variance.
 * @example sumOver([3, 2], (size) => size * (size - 1)) // 8
 */
export function sumOver(sizes: readonly number[], share: (size: number) => number): number {
  return sizes.reduce((sum, size) => sum + share(size), 0);
}
