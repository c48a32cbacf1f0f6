import { addDays, type CalendarDay, dayOf, instantOf, type MinuteOfDay, weekdayOf } from "./calendar-day";

/** One weekly opening `[opensMin, closesMin)` on an ISO weekday, by the wall clock of the site. */
export interface WeeklyHours {
  weekday: number;
  opensMin: MinuteOfDay;
  closesMin: MinuteOfDay;
}

/** When a place is open: its zone, its week, and the days it is closed all the same. */
export interface OpenHours {
  zone: string;
  week: readonly WeeklyHours[];
  closedOn: ReadonlySet<CalendarDay>;
}

/** A half-open interval of instants `[startMs, endMs)`. */
export interface Interval {
  startMs: number;
  endMs: number;
}

/**
 * The openings of one day as instants, earliest first; empty on a closed day. Wall-clock bounds, so a day with a
 * clock change inside its hours is an hour longer or shorter in real time. Overlapping openings are one, so that no
 * minute counts twice.
 */
export function openingsOn(hours: OpenHours, day: CalendarDay): Interval[] {
  if (hours.closedOn.has(day)) return [];
  const weekday = weekdayOf(day);
  const openings = hours.week
    .filter((opening) => opening.weekday === weekday && opening.opensMin < opening.closesMin)
    .map((opening) => ({
      startMs: instantOf(day, opening.opensMin, hours.zone),
      endMs: instantOf(day, opening.closesMin, hours.zone),
    }))
    .filter((opening) => opening.startMs < opening.endMs)
    .sort((a, b) => a.startMs - b.startMs);
  return openings.reduce<Interval[]>(joinOverlapping, []);
}

function joinOverlapping(joined: Interval[], next: Interval): Interval[] {
  const last = joined.at(-1);
  if (last === undefined || last.endMs <= next.startMs) return [...joined, next];
  return [...joined.slice(0, -1), { startMs: last.startMs, endMs: Math.max(last.endMs, next.endMs) }];
}

/** How many days ahead an opening is looked for before hours are taken to be missing. */
export const OPENING_SEARCH_DAYS = 400;

/** The first day on or after `day` that has an opening, or null when none is within {@link OPENING_SEARCH_DAYS}. */
export function firstOpenDay(hours: OpenHours, day: CalendarDay): CalendarDay | null {
  for (let ahead = 0; ahead <= OPENING_SEARCH_DAYS; ahead += 1) {
    const candidate = addDays(day, ahead);
    if (openingsOn(hours, candidate).length > 0) return candidate;
  }
  return null;
}

/** Real open milliseconds within `[startMs, endMs)`; 0 when the end is not after the start. */
export function openMsBetween(hours: OpenHours, startMs: number, endMs: number): number {
  let total = 0;
  for (let day = dayOf(startMs, hours.zone); instantOf(day, 0, hours.zone) < endMs; day = addDays(day, 1)) {
    for (const opening of openingsOn(hours, day)) {
      total += Math.max(0, Math.min(opening.endMs, endMs) - Math.max(opening.startMs, startMs));
    }
  }
  return total;
}

/**
 * The instant by which `openMs` of open time have passed since `fromMs`. Zero gives `fromMs` itself.
 * @returns null when the hours never open again within {@link OPENING_SEARCH_DAYS} days of an opening
 */
export function afterOpenMs(hours: OpenHours, fromMs: number, openMs: number): number | null {
  if (openMs <= 0) return fromMs;
  let left = openMs;
  let day: CalendarDay | null = dayOf(fromMs, hours.zone);
  while (true) {
    day = firstOpenDay(hours, day);
    if (day === null) return null;
    for (const opening of openingsOn(hours, day)) {
      const startMs = Math.max(opening.startMs, fromMs);
      if (startMs >= opening.endMs) continue;
      if (opening.endMs - startMs >= left) return startMs + left;
      left -= opening.endMs - startMs;
    }
    day = addDays(day, 1);
  }
}
