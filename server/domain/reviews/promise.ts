import type { PROMISE_KINDS } from "@/server/domain/people/academy-settings";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import {
  afterOpenMs,
  firstOpenDay,
  type OpenHours,
  openingsOn,
  openMsBetween,
} from "@/server/domain/time/open-hours";

/**
 * The turnaround an academy owes. `working_days` counts days on which the site is open, to their close;
 * `working_hours` counts hours in which it is open. `amount` is a whole number from 1.
 */
export interface TurnaroundPromise {
  kind: (typeof PROMISE_KINDS)[number];
  amount: number;
}

const HOUR_MS = 3_600_000;

/**
 * When a review is due. One working day is the close (the end of the last opening) of the next day the site is open
 * after the day of receipt, be that Saturday or Monday; the day of receipt itself never counts, however early the
 * clip came. Working hours run only while the site is open, in real time, so an hour that a clock change takes away is
 * not counted and one that comes twice counts twice.
 * @param receivedAtMs UTC epoch milliseconds
 * @returns UTC epoch milliseconds, or null when the site has no opening hours to count in
 * @example received Fri 6 Mar 2026 16:00 at a site open Mon to Fri to 17:00, one working day: Mon 9 Mar 17:00
 */
export function dueAtMs(promise: TurnaroundPromise, hours: OpenHours, receivedAtMs: number): number | null {
  if (promise.kind === "working_hours") return afterOpenMs(hours, receivedAtMs, promise.amount * HOUR_MS);
  let day: CalendarDay | null = dayOf(receivedAtMs, hours.zone);
  for (let counted = 0; counted < promise.amount && day !== null; counted += 1) {
    day = firstOpenDay(hours, addDays(day, 1));
  }
  return day === null ? null : closeOfMs(hours, day);
}

/**
 * What is left of a promise when a retake stops its clock: open milliseconds until it is due, or, when it was already
 * missed, minus the real milliseconds it was late by. Waiting for the family is not held against the academy, and
 * asking for a retake does not mend a promise that was already broken.
 */
export function pausePromise(hours: OpenHours, promisedAtMs: number, pausedAtMs: number): number {
  const lateByMs = pausedAtMs - promisedAtMs;
  return lateByMs > 0 ? -lateByMs : openMsBetween(hours, pausedAtMs, promisedAtMs);
}

/**
 * When a paused promise is due once the new clip is in: after the open time that was left, or as late as it was before.
 * @param pausedOpenMs what {@link pausePromise} gave; 0 is due at once
 * @returns UTC epoch milliseconds, or null when the site has no opening hours to count in
 */
export function resumePromise(hours: OpenHours, pausedOpenMs: number, resumedAtMs: number): number | null {
  return pausedOpenMs < 0 ? resumedAtMs + pausedOpenMs : afterOpenMs(hours, resumedAtMs, pausedOpenMs);
}

/** How a promise stands: real milliseconds left (0 or more), or late by (more than 0). */
export type Lateness = { kind: "left"; leftMs: number } | { kind: "late"; lateByMs: number };

/** How a promise stands at an instant. At the very instant it is due it is still kept. */
export function lateness(promisedAtMs: number, nowMs: number): Lateness {
  const leftMs = promisedAtMs - nowMs;
  return leftMs >= 0 ? { kind: "left", leftMs } : { kind: "late", lateByMs: -leftMs };
}

function closeOfMs(hours: OpenHours, day: CalendarDay): number {
  return Math.max(...openingsOn(hours, day).map((opening) => opening.endMs));
}
