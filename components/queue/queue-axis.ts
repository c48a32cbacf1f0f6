import { addDays, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { dayInWords, timeInWords } from "@/server/domain/time/words";

/** What all rows of the queue share: one stretch of time, now somewhere on it. */
export interface QueueAxis {
  startMs: number;
  nowMs: number;
  endMs: number;
  ticks: { atMs: number; label: string }[];
}

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** Less than this ahead is not drawn as if it were the whole page. */
const LEAST_AHEAD_MS = 10 * HOUR_MS;
/** What is later than this stands at the edge: the queue looks forward. */
const MOST_BEHIND_SHARE = 0.25;
/** A little before now and after the last due, so that nothing stands on an edge. */
const MARGIN_SHARE = 0.04;
/** More day names than this run into each other. */
const MOST_TICKS = 7;

/**
 * The axis on which everything owed can be compared: from the latest round's due (at most a quarter of what lies ahead)
 * to the last due. Ticks are midnights by the wall clock of the zone; within a day and a half, every six hours.
 */
export function queueAxis(duesMs: readonly number[], nowMs: number, zone: string): QueueAxis {
  const aheadMs = Math.max(LEAST_AHEAD_MS, ...duesMs.map((dueMs) => dueMs - nowMs));
  const behindMs = Math.min(
    Math.max(0, ...duesMs.map((dueMs) => nowMs - dueMs)),
    aheadMs * MOST_BEHIND_SHARE,
  );
  const marginMs = (aheadMs + behindMs) * MARGIN_SHARE;
  const startMs = nowMs - behindMs - marginMs;
  const endMs = nowMs + aheadMs + marginMs;
  return { startMs, nowMs, endMs, ticks: ticksOf(startMs, endMs, zone) };
}

function ticksOf(startMs: number, endMs: number, zone: string): QueueAxis["ticks"] {
  const isShort = endMs - startMs < 1.5 * DAY_MS;
  const minutes = isShort ? [0, 360, 720, 1080] : [0];
  const ticks: QueueAxis["ticks"] = [];
  for (let day = dayOf(startMs, zone); instantOf(day, 0, zone) <= endMs; day = addDays(day, 1)) {
    for (const minute of minutes) {
      const atMs = instantOf(day, minute, zone);
      if (atMs <= startMs || atMs >= endMs) continue;
      ticks.push({
        atMs,
        label: minute === 0 ? dayInWords(day).split(" ").slice(0, 2).join(" ") : timeInWords(atMs, zone),
      });
    }
  }
  const step = Math.ceil(ticks.length / MOST_TICKS);
  return ticks.filter((_, index) => index % step === 0);
}

/** Where an instant stands on the axis, 0 at its start to 1 at its end; what lies outside stands at the edge. */
export function placeOnQueue({ startMs, endMs }: QueueAxis, atMs: number): number {
  return Math.min(1, Math.max(0, (atMs - startMs) / (endMs - startMs)));
}
