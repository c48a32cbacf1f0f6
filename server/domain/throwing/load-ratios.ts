/** Days that count as recent, and days that they are held against. */
export const RECENT_DAYS = 7;
/** See {@link RECENT_DAYS}. The usual pair of spans in the literature on such ratios (Williams et al. 2017). */
export const BASE_DAYS = 28;

/** How one day stands beside the four weeks that end with it; null where there is no honest figure. */
export interface LoadOfDay {
  /** Mean a day over the last 7 days; null before 7 days of record. */
  mean7: number | null;
  /** Mean a day over the last 28 days; null before 28 days of record. */
  mean28: number | null;
  /** 7 days against the 28 they belong to. */
  coupled: number | null;
  /** 7 days against the 21 before them. */
  uncoupled: number | null;
  /** 7 against 28 days with weights that fade from day to day. */
  weighted: number | null;
}

/**
 * The ratios of every day of a record, in its order. They describe how the last days compare with the weeks around
 * them, and nothing more.
 *
 * - coupled C: mean of days t-6 to t over mean of days t-27 to t. Never above 4.
 * - uncoupled U: mean of days t-6 to t over mean of days t-27 to t-7; so C = 4U / (U + 3).
 *   Both as Windt and Gabbett 2019 (Br J Sports Med 53:988) name them.
 * - weighted: {@link weightedMeans} over 7 days by that over 28 (Williams et al. 2017, Br J Sports Med 51:209-210).
 *
 * Blank, not 0, before 28 days of record, and where the base is empty: 28 days without a throw for the coupled and the
 * weighted one (whose own base fades but never quite reaches 0), the earlier 21 for the uncoupled one.
 * @param throws one number a calendar day, days without throwing as 0
 * @example 28 days of 20 each: the last has 1, 1 and 1
 */
export function loadRatios(throws: readonly number[]): LoadOfDay[] {
  const recent = weightedMeans(throws, RECENT_DAYS);
  const base = weightedMeans(throws, BASE_DAYS);
  const sums = runningSums(throws);
  return throws.map((_, index) => {
    const sum7 = sumOfLast(sums, index + 1, RECENT_DAYS);
    const sum28 = sumOfLast(sums, index + 1, BASE_DAYS);
    const faded = { recent: recent[index] ?? 0, base: base[index] ?? 0 };
    return {
      mean7: sum7 === null ? null : sum7 / RECENT_DAYS,
      mean28: sum28 === null ? null : sum28 / BASE_DAYS,
      ...(sum7 === null || sum28 === null ? NO_RATIOS : ratiosOf(sum7, sum28, faded)),
    };
  });
}

/* The weighted base is read only where the 28 days hold a throw: there it is above 0. */
function ratiosOf(sum7: number, sum28: number, faded: { recent: number; base: number }) {
  const before = sum28 - sum7;
  const mean7 = sum7 / RECENT_DAYS;
  return {
    coupled: sum28 === 0 ? null : mean7 / (sum28 / BASE_DAYS),
    uncoupled: before === 0 ? null : mean7 / (before / (BASE_DAYS - RECENT_DAYS)),
    weighted: sum28 === 0 ? null : faded.recent / faded.base,
  };
}

/**
 * Exponentially weighted means: each day is lambda of its own load and the rest of the day before's mean, with
 * lambda = 2 / (N + 1); the first day is its own load (Williams et al. 2017, Br J Sports Med 51:209-210; the formula
 * for lambda from memory).
 * @param spanDays N: 7 gives lambda 0.25, 28 gives 0.069
 * @example weightedMeans([100, 0, 50], 7) // [100, 75, 68.75]
 */
export function weightedMeans(loads: readonly number[], spanDays: number): number[] {
  const lambda = 2 / (spanDays + 1);
  const means: number[] = [];
  for (const load of loads) {
    const before = means.at(-1) ?? load;
    means.push(lambda * load + (1 - lambda) * before);
  }
  return means;
}

const NO_RATIOS = { coupled: null, uncoupled: null, weighted: null } as const;

/** What was thrown up to each day, from 0 before the first: whole numbers, so that differences are exact. */
function runningSums(throws: readonly number[]): number[] {
  const sums = [0];
  for (const count of throws) sums.push((sums.at(-1) ?? 0) + count);
  return sums;
}

function sumOfLast(sums: readonly number[], days: number, span: number): number | null {
  if (days < span) return null;
  return (sums[days] ?? 0) - (sums[days - span] ?? 0);
}
