import type { OpenHours } from "@/server/domain/time/open-hours";

const MINUTE_MS = 60_000;
const WEEKDAYS = ["", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** A wall clock that shares no code with the product: the platform's own formatter, one minute at a time. */
export function wallClock(
  zone: string,
): (instantMs: number) => { day: string; weekday: number; minute: number } {
  const format = new Intl.DateTimeFormat("en-US", {
    timeZone: zone,
    hourCycle: "h23",
    weekday: "short",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
  });
  return (instantMs) => {
    /* "Fri, 03/06/2026, 16:00" */
    const text = format.format(instantMs);
    return {
      day: `${text.slice(11, 15)}-${text.slice(5, 7)}-${text.slice(8, 10)}`,
      weekday: WEEKDAYS.indexOf(text.slice(0, 3)),
      minute: Number(text.slice(17, 19)) * 60 + Number(text.slice(20, 22)),
    };
  };
}

/** Whether the minute that begins at an instant is an open one, by the wall clock. */
export function minuteIsOpen(
  hours: OpenHours,
  clock: ReturnType<typeof wallClock>,
  instantMs: number,
): boolean {
  const { day, weekday, minute } = clock(instantMs);
  if (hours.closedOn.has(day)) return false;
  return hours.week.some(
    (opening) => opening.weekday === weekday && opening.opensMin <= minute && minute < opening.closesMin,
  );
}

/** Walks open minutes from an instant until so many have passed; the end of the last. Whole minutes only. */
export function walkOpenMinutes(hours: OpenHours, fromMs: number, openMinutes: number): number {
  const clock = wallClock(hours.zone);
  let left = openMinutes;
  let at = fromMs;
  while (left > 0) {
    if (minuteIsOpen(hours, clock, at)) left -= 1;
    at += MINUTE_MS;
  }
  return at;
}

/** Walks minute by minute to the end of the last open minute of the n-th open day after the day of an instant. */
export function walkToClose(hours: OpenHours, fromMs: number, openDays: number): number {
  const clock = wallClock(hours.zone);
  const startDay = clock(fromMs).day;
  const seen: string[] = [];
  let closeMs = 0;
  for (let at = fromMs; ; at += MINUTE_MS) {
    const { day } = clock(at);
    if (day === startDay || !minuteIsOpen(hours, clock, at)) continue;
    if (!seen.includes(day)) seen.push(day);
    if (seen.length > openDays) return closeMs;
    closeMs = at + MINUTE_MS;
  }
}
