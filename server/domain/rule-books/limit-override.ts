import { addDays, type CalendarDay } from "../time/calendar-day";
import { dayInWords } from "../time/words";

/** How far ahead a limit can be overridden, in days; common practice, no source. Beyond it too little is known. */
export const OVERRIDE_HORIZON_DAYS = 14;

/** The longest reason, in characters; common practice, no source. */
export const OVERRIDE_REASON_MAX_LENGTH = 500;

/** One row of the record: what an admin let one arm reach on one day. 0 pitches take an earlier one back. */
export interface OverrideRow {
  id: string;
  day: CalendarDay;
  pitches: number;
  atMs: number;
}

/**
 * The overrides that stand, by day: the latest of each day, and none where the latest took it back. Of two made in the
 * same millisecond the one with the later id stands, in whatever order they are read.
 */
export function standingOverrides<Row extends OverrideRow>(rows: readonly Row[]): Row[] {
  const latest = new Map<CalendarDay, Row>();
  for (const row of rows) {
    const before = latest.get(row.day);
    if (!before || isLater(row, before)) latest.set(row.day, row);
  }
  return [...latest.values()].filter((row) => row.pitches > 0).toSorted((a, b) => a.day.localeCompare(b.day));
}

function isLater(row: OverrideRow, before: OverrideRow): boolean {
  return row.atMs === before.atMs ? row.id > before.id : row.atMs > before.atMs;
}

/** What an override is held against. */
export interface OverrideBounds {
  /** Today at the athlete's home site. */
  today: CalendarDay;
  /** What the books leave the arm on that day without any override; null where they have no published limit. */
  byTheBook: number | null;
  /** Counted pitches thrown or planned on that day; an override is the day's whole number. */
  already: number;
  /** Whether one stands on that day. */
  isStanding: boolean;
}

/**
 * What is wrong with an override, as a sentence; null when nothing is. It is of today or of one of the next
 * {@link OVERRIDE_HORIZON_DAYS} days, and more than the books leave beside what is on the day already; 0 takes back one that stands.
 * @example overrideProblem({ day: "2026-11-24", pitches: 60 }, { today: "2026-11-25", byTheBook: 0, already: 0, isStanding: false })
 * // "Tue 24 Nov is past: a limit is overridden for today or a day to come."
 */
export function overrideProblem(
  override: { day: CalendarDay; pitches: number },
  { today, byTheBook, already, isStanding }: OverrideBounds,
): string | null {
  const { day, pitches } = override;
  if (day < today) return `${dayInWords(day)} is past: a limit is overridden for today or a day to come.`;
  if (day > addDays(today, OVERRIDE_HORIZON_DAYS)) {
    return `${dayInWords(day)} is too far ahead: a limit is overridden at most ${OVERRIDE_HORIZON_DAYS} days before.`;
  }
  if (pitches === 0) return isStanding ? null : `No override stands on ${dayInWords(day)}.`;
  if (byTheBook === null)
    return "The books have no published limit for this age: there is nothing to override.";
  const inAll = byTheBook + already;
  if (pitches > inAll) return null;
  return `${inAll} in all on ${dayInWords(day)} needs no override: it is for more than that.`;
}
