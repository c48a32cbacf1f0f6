import {
  addDays,
  type CalendarDay,
  dayOf,
  instantOf,
  minuteOfDay,
  weekdayOf,
} from "@/server/domain/time/calendar-day";
import type { Interval } from "@/server/domain/time/open-hours";
import { type AcademyTime, type CoachHours, freeTogether } from "./academy-time";
import { MIN_SESSION_MIN } from "./session-kind";

/** A stretch of one day's wall clock in whole hours, `[fromHour, toHour)`, 0 to 24. */
export interface BoardHours {
  fromHour: number;
  toHour: number;
}

/** A day without hours or sessions is drawn as an afternoon, so that the page keeps its shape. */
const QUIET_DAY: BoardHours = { fromHour: 12, toHour: 21 };

/**
 * The whole hours that hold every opening and every session of a day.
 * @param spans within the day or reaching over its ends, which cut them off
 */
export function boardHours(day: CalendarDay, zone: string, spans: readonly Interval[]): BoardHours {
  if (spans.length === 0) return QUIET_DAY;
  const starts = spans.map((span) => hoursInto(day, zone, span.startMs));
  const ends = spans.map((span) => hoursInto(day, zone, span.endMs));
  return {
    fromHour: Math.max(0, Math.floor(Math.min(...starts))),
    toHour: Math.min(24, Math.ceil(Math.max(...ends))),
  };
}

/**
 * How far into a day an instant lies, in hours by the wall clock, cut off at 0 and 24. On a day with a clock change a
 * skipped hour has no width of its own, and one that comes twice is drawn over itself.
 */
export function hoursInto(day: CalendarDay, zone: string, instantMs: number): number {
  const own = dayOf(instantMs, zone);
  if (own < day) return 0;
  if (own > day) return 24;
  return minuteOfDay(instantMs, zone) / 60;
}

/** The Monday of a day's week. */
export function mondayOf(day: CalendarDay): CalendarDay {
  return addDays(day, 1 - weekdayOf(day));
}

/**
 * When a coach works on a day and nothing is booked, over all sites, earliest first; gaps too short for any session are
 * left out.
 */
export function freeSpans(
  academy: AcademyTime,
  coach: CoachHours,
  day: CalendarDay,
): (Interval & { zone: string })[] {
  return academy.sites
    .flatMap((site) => {
      const { zone } = site.hours;
      const [fromMs, toMs] = [instantOf(day, 0, zone), instantOf(addDays(day, 1), 0, zone)];
      return freeTogether(academy, { coach, site, athleteIds: [] }, fromMs, toMs)
        .map((span) => ({ startMs: Math.max(span.startMs, fromMs), endMs: Math.min(span.endMs, toMs), zone }))
        .filter((span) => span.endMs - span.startMs >= MIN_SESSION_MIN * 60_000);
    })
    .sort((a, b) => a.startMs - b.startMs);
}
