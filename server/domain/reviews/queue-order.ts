import { type Lateness, lateness } from "./promise";

/** What the queue needs to know of a round the academy owes a step on. */
export interface OwedRound {
  id: string;
  dueAtMs: number;
  /** Minutes the review is likely to take. */
  estimateMin: number;
}

/**
 * The owed rounds in the order in which they fall due, each with how long is left or how late it is. Of two due
 * together the shorter comes first, so that fewer wait; then by id, so that two screens never disagree.
 */
export function queueOrder<Round extends OwedRound>(
  rounds: readonly Round[],
  nowMs: number,
): (Round & { lateness: Lateness })[] {
  return [...rounds]
    .sort((a, b) => a.dueAtMs - b.dueAtMs || a.estimateMin - b.estimateMin || compareIds(a.id, b.id))
    .map((round) => ({ ...round, lateness: lateness(round.dueAtMs, nowMs) }));
}

/** Minutes a review (`review`) and a check (`check`) take before the coach has a record. Common practice, no source. */
export const DEFAULT_ESTIMATE_MIN = { review: 20, check: 12 } as const;

/** With fewer past ones a coach's own median says too little. Common practice, no source. */
export const PAST_REVIEWS_NEEDED = 5;

/**
 * Minutes a review by this coach is likely to take: the median of their past ones of that kind when there are at
 * least {@link PAST_REVIEWS_NEEDED} (the mean of the middle two for an even number), else the default.
 * @example estimateMin([8, 10, 30, 12, 9], 20) // 10
 */
export function estimateMin(pastMin: readonly number[], defaultMin: number): number {
  if (pastMin.length < PAST_REVIEWS_NEEDED) return defaultMin;
  const sorted = [...pastMin].sort((a, b) => a - b);
  const middle = sorted.slice(Math.ceil(sorted.length / 2) - 1, Math.floor(sorted.length / 2) + 1);
  return middle.reduce((sum, minutes) => sum + minutes, 0) / middle.length;
}

function compareIds(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
