import type { MinuteOfDay } from "./calendar-day";

/** One span `[startsMin, endsMin)` on an ISO weekday, by the wall clock. */
export interface WeekSpan {
  weekday: number;
  startsMin: MinuteOfDay;
  endsMin: MinuteOfDay;
}

/** The days as they are written on a screen, Monday first: `WEEKDAY_WORDS[weekday - 1]`. */
export const WEEKDAY_WORDS = [
  "Monday",
  "Tuesday",
  "Wednesday",
  "Thursday",
  "Friday",
  "Saturday",
  "Sunday",
] as const;

/** The name of an ISO weekday, 1 to 7. */
export function weekdayInWords(weekday: number): string {
  return WEEKDAY_WORDS[weekday - 1] ?? "";
}

/** A minute of the day on the 24-hour clock: 990 is "16:30", 1440 is "24:00". */
export function minuteInWords(minute: MinuteOfDay): string {
  return `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
}

/**
 * What is wrong with a week of spans, as a sentence, or null when nothing is: each ends after it starts, and no two of
 * one day share a minute. Spans that only touch are two shifts and are fine. The first fault in the order given is told.
 * @example weekProblem([{ weekday: 1, startsMin: 900, endsMin: 840 }]) // "On Monday, 15:00 to 14:00 ends before it starts."
 */
export function weekProblem(week: readonly WeekSpan[]): string | null {
  for (const [index, span] of week.entries()) {
    const words = `On ${weekdayInWords(span.weekday)}, ${spanInClock(span)}`;
    if (span.endsMin <= span.startsMin) return `${words} ends before it starts.`;
    const other = week.slice(index + 1).find((next) => meet(span, next));
    if (other) return `${words} and ${spanInClock(other)} overlap.`;
  }
  return null;
}

/** A span on the clock: "14:00 to 21:00". */
export function spanInClock(span: Pick<WeekSpan, "startsMin" | "endsMin">): string {
  return `${minuteInWords(span.startsMin)} to ${minuteInWords(span.endsMin)}`;
}

function meet(one: WeekSpan, other: WeekSpan): boolean {
  return one.weekday === other.weekday && one.startsMin < other.endsMin && other.startsMin < one.endsMin;
}
