/** The share that held by a day on which something held, 0 to 1. */
export interface HeldPoint {
  days: number;
  share: number;
  /** The interval; null where there is none. */
  lower: number | null;
  upper: number | null;
}

/**
 * The points that a step curve is drawn through: from nothing on the day of giving to the last day watched, on which the
 * last step still stands.
 * @example heldRows([{ days: 10, share: 1, lower: null, upper: null }], 15).map(({ days }) => days) // [0, 10, 15]
 */
export function heldRows(points: readonly HeldPoint[], longestDays: number): HeldPoint[] {
  const start = { days: 0, share: 0, lower: 0, upper: 0 };
  const last = points.at(-1) ?? start;
  return [start, ...points, ...(last.days < longestDays ? [{ ...last, days: longestDays }] : [])];
}

/** Whole days at which an axis has its words: about six, evenly apart, from 0. */
export function dayTicks(longestDays: number): number[] {
  const apart = STEPS.find((step) => longestDays / step <= 6) ?? Math.ceil(longestDays / 6);
  return Array.from({ length: Math.floor(longestDays / apart) + 1 }, (_, at) => at * apart);
}

/* Days that people count in: days, weeks, months, years. */
const STEPS = [1, 2, 7, 14, 30, 60, 90, 180, 365];
