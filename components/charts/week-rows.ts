import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { monthInWords } from "@/server/domain/time/words";

/** What was counted in one week, by kind. */
export interface WeekCounts {
  /** The Monday that the week begins with. */
  weekOf: CalendarDay;
  counts: Readonly<Record<string, number>>;
}

/** What was computed for one week, by name; null where there is no figure. */
export interface WeekFigures {
  /** The Monday that the week begins with. */
  weekOf: CalendarDay;
  figures: Readonly<Record<string, number | null>>;
}

/** One kind of what is counted. */
export interface CountKind {
  key: string;
  label: string;
}

/** All that was counted in a week; a kind that is missing counts nothing. */
export function weekTotal(week: WeekCounts, kinds: readonly CountKind[]): number {
  return kinds.reduce((total, { key }) => total + (week.counts[key] ?? 0), 0);
}

/**
 * The weeks under which a month's name stands, the first that begins in it: Monday to "Sep". A first week that is the
 * last of its month bears none, since the next month's name would run into it.
 */
export function monthLabels(weeks: readonly Pick<WeekCounts, "weekOf">[]): Map<CalendarDay, string> {
  const labels = new Map<CalendarDay, string>();
  let last = "";
  for (const { weekOf } of weeks) {
    const month = weekOf.slice(0, 7);
    if (month !== last) labels.set(weekOf, monthInWords(month).slice(0, 3));
    last = month;
  }
  const [first, second] = weeks;
  if (first && second && labels.has(second.weekOf)) labels.delete(first.weekOf);
  return labels;
}
