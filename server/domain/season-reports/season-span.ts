import { addMonths, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

/** What a report tells of: its first and its last day, both included. */
export interface SeasonSpan {
  fromOn: CalendarDay;
  toOn: CalendarDay;
}

/** A report tells of a year at most. */
export const LONGEST_SPAN_DAYS = 366;

/** So long after its last day a season that a coach wrote of is still the one to open first. Common practice, no source. */
const STAYS_FIRST_MONTHS = 6;

/**
 * The season of a day: its calendar year, by which seasons are called; in January and February still the year before,
 * of which there is more to tell. Common practice, no source.
 * @example usualSpan("2026-11-25") // 1 Jan to 31 Dec 2026
 * @example usualSpan("2027-02-28") // the same
 */
export function usualSpan(today: CalendarDay): SeasonSpan {
  const year = Number(today.slice(0, 4));
  return wholeYear(today.slice(5, 7) <= "02" ? year - 1 : year);
}

/** The span to open first: what a coach wrote of lately, else {@link usualSpan}. @param written latest first */
export function firstSpan(today: CalendarDay, written: readonly SeasonSpan[]): SeasonSpan {
  const since = addMonths(today, -STAYS_FIRST_MONTHS);
  return written.find(({ fromOn, toOn }) => fromOn <= today && toOn >= since) ?? usualSpan(today);
}

/** The spans to choose from, the latest first and each once: this season, the one before, and those a coach wrote of. */
export function offeredSpans(today: CalendarDay, written: readonly SeasonSpan[]): SeasonSpan[] {
  const usual = usualSpan(today);
  const year = Number(usual.fromOn.slice(0, 4));
  const offered = new Map([usual, wholeYear(year - 1), ...written].map((span) => [keyOf(span), span]));
  return [...offered.values()].sort((one, other) => (keyOf(one) < keyOf(other) ? 1 : -1));
}

/** Why there can be no report of a span, in a sentence, or null when there can. */
export function spanProblem({ fromOn, toOn }: SeasonSpan, today: CalendarDay): string | null {
  if (fromOn >= toOn) return "The first day must lie before the last.";
  if (fromOn > today) return "That season has not begun.";
  if (daysBetween(fromOn, toOn) >= LONGEST_SPAN_DAYS) return "A report tells of a year at most.";
  return null;
}

/** The last day of a span of which anything can be known. */
export function knownUntil({ toOn }: SeasonSpan, today: CalendarDay): CalendarDay {
  return toOn < today ? toOn : today;
}

/**
 * A span as it is called: the year alone for a whole one.
 * @example spanInWords({ fromOn: "2026-03-01", toOn: "2026-10-31" }) // "Sun 1 Mar 2026 to Sat 31 Oct 2026"
 */
export function spanInWords({ fromOn, toOn }: SeasonSpan): string {
  const year = fromOn.slice(0, 4);
  if (fromOn === `${year}-01-01` && toOn === `${year}-12-31`) return year;
  return `${dayInWords(fromOn, { withYear: true })} to ${dayInWords(toOn, { withYear: true })}`;
}

const wholeYear = (year: number): SeasonSpan => ({ fromOn: `${year}-01-01`, toOn: `${year}-12-31` });
const keyOf = ({ fromOn, toOn }: SeasonSpan) => `${fromOn} ${toOn}`;
