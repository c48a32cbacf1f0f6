import type { AgeBand, RestBand } from "../age-band";

/**
 * The row of a published table from the highest count of each rest: the first asks for no rest, each next for one day
 * more, the last is the daily number.
 * @example ages(7, 8, 20, 35, 50): 1 to 20 without rest, 21 to 35 with one day, 36 to 50 with two; 50 a day
 */
export function ages(ageMin: number, ageMax: number, ...maxPitches: number[]): AgeBand {
  return { ageMin, ageMax, dailyMaxPitches: Math.max(...maxPitches), restBands: restBands(maxPitches) };
}

function restBands(maxPitches: readonly number[]): RestBand[] {
  return maxPitches.map((max, restDays) => ({
    minPitches: (maxPitches[restDays - 1] ?? 0) + 1,
    maxPitches: max,
    restDays,
  }));
}
