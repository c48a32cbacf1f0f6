import { Temporal } from "temporal-polyfill";

/** A calendar day as `YYYY-MM-DD`; it belongs to a zone only by its context. */
export type CalendarDay = string;

/** Minutes since local midnight, 0 to 1440. */
export type MinuteOfDay = number;

/**
 * The calendar day that an instant falls on in a zone.
 * @param instantMs UTC epoch milliseconds
 * @param zone IANA zone id
 * @throws RangeError when the zone does not exist (the caller's fault)
 * @example dayOf(Date.UTC(2026, 2, 8, 4, 59), "America/New_York") // "2026-03-07"
 */
export function dayOf(instantMs: number, zone: string): CalendarDay {
  return zoned(instantMs, zone).toPlainDate().toString();
}

/** Minutes since local midnight by the wall clock of the zone, 0 to 1439 (whole minutes, seconds cut off). */
export function minuteOfDay(instantMs: number, zone: string): MinuteOfDay {
  const local = zoned(instantMs, zone);
  return local.hour * 60 + local.minute;
}

/**
 * The instant of a wall-clock time on a day. A time skipped by a clock change takes the offset before the gap,
 * one that comes twice is the first (RFC 5545 section 3.3.5, Form 3). 1440 is the next midnight.
 * @example instantOf("2026-03-08", 150, "America/New_York") // 2026-03-08T07:30Z
 */
export function instantOf(day: CalendarDay, minute: MinuteOfDay, zone: string): number {
  const date = Temporal.PlainDate.from(day).add({ days: Math.floor(minute / 1440) });
  const rest = minute % 1440;
  const time = new Temporal.PlainTime(Math.floor(rest / 60), rest % 60);
  return date.toPlainDateTime(time).toZonedDateTime(zone, { disambiguation: "compatible" }).epochMilliseconds;
}

/** The day `days` after (negative: before) the given one. Calendar arithmetic, no hours involved. */
export function addDays(day: CalendarDay, days: number): CalendarDay {
  return Temporal.PlainDate.from(day).add({ days }).toString();
}

/** The day `months` after; the last day of a shorter month stands in (31 Jan + 1 month = 28 or 29 Feb). */
export function addMonths(day: CalendarDay, months: number): CalendarDay {
  return Temporal.PlainDate.from(day).add({ months }, { overflow: "constrain" }).toString();
}

/** Days from `from` to `to`; negative when `to` is earlier. */
export function daysBetween(from: CalendarDay, to: CalendarDay): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: "day" }).days;
}

/** ISO 8601 weekday: 1 Monday to 7 Sunday. */
export function weekdayOf(day: CalendarDay): number {
  return Temporal.PlainDate.from(day).dayOfWeek;
}

/**
 * Age in completed years on a day. Born on 29 February: the birthday in a common year is 1 March
 * (the stricter reading for limits that grow with age).
 * @returns a negative number for a day before birth
 */
export function ageOn(bornOn: CalendarDay, day: CalendarDay): number {
  const born = Temporal.PlainDate.from(bornOn);
  const on = Temporal.PlainDate.from(day);
  const hadBirthday = on.month > born.month || (on.month === born.month && on.day >= born.day);
  return on.year - born.year - (hadBirthday ? 0 : 1);
}

/** Whether the text is a calendar day that exists, written `YYYY-MM-DD`. */
export function isCalendarDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    return Temporal.PlainDate.from(text, { overflow: "reject" }).toString() === text;
  } catch {
    return false;
  }
}

/** Whether the IANA zone id is known to this runtime. */
export function isZone(zone: string): boolean {
  try {
    zoned(0, zone);
    return true;
  } catch {
    return false;
  }
}

function zoned(instantMs: number, zone: string): Temporal.ZonedDateTime {
  return Temporal.Instant.fromEpochMilliseconds(instantMs).toZonedDateTimeISO(zone);
}
