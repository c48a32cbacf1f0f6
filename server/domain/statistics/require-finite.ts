const LARGEST = 1e15;
const SMALLEST = 1e-100;

/**
 * Refuses what is no observation: NaN, an infinity, and sizes no measure has (other than 0 they lie between 1e-100 and
 * 1e15), so that no square and no ratio of two of them leaves the range of a double. A missing observation is left out
 * by the caller, never passed as NaN.
 * @throws RangeError: the caller's fault
 */
export function requireFinite(values: readonly number[]): void {
  for (const value of values) {
    const size = Math.abs(value);
    const isObservation = size === 0 || (size >= SMALLEST && size <= LARGEST);
    if (!isObservation) throw new RangeError(`An observation is a finite number, not ${value}.`);
  }
}
