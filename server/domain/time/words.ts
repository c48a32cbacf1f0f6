import { type CalendarDay, dayOf, instantOf } from "./calendar-day";

/** A day in words, e.g. "Sat 28 Nov"; with the year when asked. */
export function dayInWords(day: CalendarDay, options: { withYear?: boolean; long?: boolean } = {}): string {
  return dayFormat(options.withYear === true, options.long === true)
    .format(instantOf(day, 720, "UTC"))
    .replace(",", "");
}

/* Kept once made: making one takes longer than all the rest, and a season page writes many days. */
const DAY_FORMATS = new Map<string, Intl.DateTimeFormat>();

function dayFormat(withYear: boolean, isLong: boolean): Intl.DateTimeFormat {
  const key = `${withYear} ${isLong}`;
  const kept = DAY_FORMATS.get(key);
  if (kept) return kept;
  const made = new Intl.DateTimeFormat("en-GB", {
    timeZone: "UTC",
    weekday: isLong ? "long" : "short",
    day: "numeric",
    month: isLong ? "long" : "short",
    ...(withYear ? { year: "numeric" as const } : {}),
  });
  DAY_FORMATS.set(key, made);
  return made;
}

/** A month such as "2026-11" in words: "November 2026". */
export function monthInWords(month: string): string {
  return new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", month: "long", year: "numeric" }).format(
    instantOf(`${month}-15`, 720, "UTC"),
  );
}

/** Wall-clock time in the zone, "17:00". */
export function timeInWords(instantMs: number, zone: string): string {
  return new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).format(instantMs);
}

/** Wall-clock time to the second in the zone, "17:00:31". */
export function clockInWords(instantMs: number, zone: string): string {
  return new Intl.DateTimeFormat("en-GB", { timeZone: zone, timeStyle: "medium" }).format(instantMs);
}

/** "Tue 1 Dec 17:00", by the wall clock of the zone; "Tue 1 Dec 2026 17:00" with the year. */
export function momentInWords(instantMs: number, zone: string, options: { withYear?: boolean } = {}): string {
  return `${dayInWords(dayOf(instantMs, zone), options)} ${timeInWords(instantMs, zone)}`;
}

/**
 * A span in the two largest units that matter: "2 days 3 h", "3 h 20 min", "45 min", "under a minute".
 * @param spanMs zero or more; the sign is the caller's to word ("late by")
 */
export function spanInWords(spanMs: number): string {
  const minutes = Math.floor(Math.abs(spanMs) / 60_000);
  if (minutes < 1) return "under a minute";
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours < 24) return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
  const days = Math.floor(hours / 24);
  const dayWord = days === 1 ? "1 day" : `${days} days`;
  return hours % 24 === 0 ? dayWord : `${dayWord} ${hours % 24} h`;
}
