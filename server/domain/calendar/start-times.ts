import { addDays, type CalendarDay, dayOf, instantOf, minuteOfDay } from "@/server/domain/time/calendar-day";

/** A start by the wall clock of a site: the instant, and the day that it falls on there. */
export interface StartTime {
  day: CalendarDay;
  startsAtMs: number;
}

const DAY_MIN = 1440;
const DAY_MS = DAY_MIN * 60_000;

/**
 * The starts within `[fromMs, toMs)`, every `stepMin` minutes from each midnight of the wall clock, earliest first.
 * A wall time that a clock change skips is left out. One that comes twice is given once, the first time it comes,
 * as a family that reads "01:30" would take it (RFC 5545 section 3.3.5 reads it so too).
 */
export function startTimes(zone: string, stepMin: number, fromMs: number, toMs: number): StartTime[] {
  const starts: StartTime[] = [];
  for (let day = dayOf(fromMs, zone); instantOf(day, 0, zone) < toMs; day = addDays(day, 1)) {
    for (const startsAtMs of startsOn(day, zone, stepMin)) {
      if (startsAtMs >= fromMs && startsAtMs < toMs) starts.push({ day, startsAtMs });
    }
  }
  return starts;
}

function startsOn(day: CalendarDay, zone: string, stepMin: number): number[] {
  const midnightMs = instantOf(day, 0, zone);
  const isPlain =
    instantOf(day, DAY_MIN, zone) - midnightMs === DAY_MS && minuteOfDay(midnightMs, zone) === 0;
  const minutes = Array.from({ length: Math.ceil(DAY_MIN / stepMin) }, (_, index) => index * stepMin);
  // A day without a clock change needs no calendar: this spares almost every conversion of a long search.
  if (isPlain) return minutes.map((minute) => midnightMs + minute * 60_000);
  return minutes.flatMap((minute) => {
    const startsAtMs = instantOf(day, minute, zone);
    return minuteOfDay(startsAtMs, zone) === minute && dayOf(startsAtMs, zone) === day ? [startsAtMs] : [];
  });
}
