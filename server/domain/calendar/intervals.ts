import type { Interval } from "@/server/domain/time/open-hours";

/**
 * The same instants as the given intervals, in order, apart from each other: overlapping and touching ones become one,
 * empty ones go. Every list below is expected in this form and given in it.
 */
export function merged(intervals: readonly Interval[]): Interval[] {
  const apart: Interval[] = [];
  const inOrder = intervals.filter((one) => one.startMs < one.endMs).sort((a, b) => a.startMs - b.startMs);
  for (const next of inOrder) {
    const last = apart.at(-1);
    if (last !== undefined && next.startMs <= last.endMs) last.endMs = Math.max(last.endMs, next.endMs);
    else apart.push({ ...next });
  }
  return apart;
}

/** The instants in both lists. */
export function common(a: readonly Interval[], b: readonly Interval[]): Interval[] {
  return merged(
    a.flatMap((one) =>
      b.map((other) => ({
        startMs: Math.max(one.startMs, other.startMs),
        endMs: Math.min(one.endMs, other.endMs),
      })),
    ),
  );
}

/** The instants of the first list that are not in the second. */
export function without(from: readonly Interval[], taken: readonly Interval[]): Interval[] {
  const gaps = merged(taken);
  return merged(from).flatMap((one) => {
    const cuts = gaps.filter((gap) => gap.startMs < one.endMs && one.startMs < gap.endMs);
    const starts = [one.startMs, ...cuts.map((gap) => gap.endMs)];
    const ends = [...cuts.map((gap) => gap.startMs), one.endMs];
    return starts
      .map((startMs, index) => ({ startMs, endMs: ends[index] ?? one.endMs }))
      .filter((left) => left.startMs < left.endMs);
  });
}

/** Whether `[startMs, endMs)` lies within a single interval of the list. */
export function isWithin(intervals: readonly Interval[], startMs: number, endMs: number): boolean {
  return intervals.some((one) => one.startMs <= startMs && endMs <= one.endMs);
}
