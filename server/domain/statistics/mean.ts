/**
 * The mean; that of equal values is that value to the last digit.
 * @returns null without values
 * @example mean([1, 2, 6]) // 3
 */
export function mean(values: readonly number[]): number | null {
  const [first] = values;
  if (first === undefined) return null;
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
}
