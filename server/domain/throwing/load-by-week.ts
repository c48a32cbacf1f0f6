import { addDays, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import type { ThrowRecord } from "./load-by-day";
import { type LoadOfDay, loadRatios } from "./load-ratios";
import { mondayOf } from "./throws-by-week";

/** A week of an arm: what it threw, and how its last day stands beside the four weeks that end with it. */
export interface LoadOfWeek extends LoadOfDay {
  /** The Monday that the week begins with. */
  weekOf: CalendarDay;
  /** The Sunday it ends with; for the week that is running, today. */
  asOf: CalendarDay;
  /** Throws of the week so far, of whatever kind. */
  throws: number;
}

/**
 * The weeks of a record from the one that holds `fromDay`, or in which the record begins if that is later, to the one
 * that holds the record's last day, earliest first. Weeks begin on Monday (ISO 8601).
 */
export function loadByWeek(record: ThrowRecord, fromDay: CalendarDay): LoadOfWeek[] {
  const { firstDay, throws } = record;
  const loads = loadRatios(throws);
  const lastDay = addDays(firstDay, throws.length - 1);
  const weeks: LoadOfWeek[] = [];
  const first = mondayOf(fromDay > firstDay ? fromDay : firstDay);
  for (let weekOf = first; weekOf <= lastDay; weekOf = addDays(weekOf, 7)) {
    const index = Math.min(daysBetween(firstDay, weekOf) + 6, throws.length - 1);
    const load = loads[index];
    if (!load) continue;
    const ofWeek = throws.slice(Math.max(0, daysBetween(firstDay, weekOf)), index + 1);
    const asOf = addDays(firstDay, index);
    weeks.push({ weekOf, asOf, throws: ofWeek.reduce((sum, count) => sum + count, 0), ...load });
  }
  return weeks;
}
