/**
 * Where in a frame to seek, in the order tried: the middle first, since a browser may round a time to either side of a
 * frame's edge.
 */
export const SEEK_PARTS = [0.5, 0.25, 0.75, 0.1] as const;

/** A frame is taken for shown from a tenth of a millisecond before its time: browsers hand times back rounded. */
const ROUNDING_MS = 0.1;

/**
 * The frame that is on the picture at a time, counted from 0: the last one whose time has come. Before the first frame
 * it is the first; an empty table gives 0.
 * @param timesMs every frame's time, ascending
 * @example frameAt([0, 16.7, 33.3], 20) // 1
 */
export function frameAt(timesMs: readonly number[], timeMs: number): number {
  let low = 0;
  let high = timesMs.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((timesMs[middle] ?? 0) <= timeMs + ROUNDING_MS) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}

/** The frame within the table that is nearest to a number; 0 for an empty table. */
export function clampFrame(timesMs: readonly number[], frame: number): number {
  return Math.max(0, Math.min(timesMs.length - 1, Math.round(frame)));
}

/**
 * The time to seek to so that a frame is shown, in milliseconds.
 * @param part where between the frame's time and the next, 0 to 1
 * @param durationMs the clip's length, the end of the last frame; not finite while a browser does not know it
 * @example seekTargetMs([0, 10, 30], 1, 0.5, 40) // 20
 */
export function seekTargetMs(
  timesMs: readonly number[],
  frame: number,
  part: number,
  durationMs: number,
): number {
  const from = timesMs[frame] ?? 0;
  const before = timesMs[frame - 1];
  const lastLength = before === undefined ? 1 : from - before;
  const end = Number.isFinite(durationMs) ? durationMs : 0;
  const to = timesMs[frame + 1] ?? Math.max(end, from + lastLength);
  return from + (to - from) * part;
}

/** Some containers round a frame's time to a whole millisecond: two tables of one instant differ by that. */
const CONTAINER_MS = 1;

/**
 * The frame of a second clip that goes with a frame of the first when both are lined up on a pair of frames: the one
 * whose time is nearest to as long after (or before) its own as the first is; of two as near, the earlier.
 * @example followFrame({ leader: 3, follower: 1 }, [0, 10, 20, 30, 40], [0, 20, 40], 4) // 1: 10 ms later is 30 ms, as near to either
 * @example followFrame({ leader: 0, follower: 0 }, [0, 16.7, 33.3], [0, 17, 33], 1) // 1
 */
export function followFrame(
  linedUp: { leader: number; follower: number },
  leaderTimesMs: readonly number[],
  followerTimesMs: readonly number[],
  leaderFrame: number,
): number {
  const sinceMs = (leaderTimesMs[leaderFrame] ?? 0) - (leaderTimesMs[linedUp.leader] ?? 0);
  const timeMs = (followerTimesMs[linedUp.follower] ?? 0) + sinceMs;
  const before = frameAt(followerTimesMs, timeMs);
  const sinceBefore = timeMs - (followerTimesMs[before] ?? 0);
  const untilAfter = (followerTimesMs[before + 1] ?? Number.POSITIVE_INFINITY) - timeMs;
  return sinceBefore - untilAfter > CONTAINER_MS ? before + 1 : before;
}

/** A time in a clip as it is written: seconds to the millisecond. @example secondsInWords(612.3) // "0.612 s" */
export function secondsInWords(timeMs: number): string {
  return `${(Math.max(0, timeMs) / 1000).toFixed(3)} s`;
}
