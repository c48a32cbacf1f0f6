import { addDays, addMonths, type CalendarDay } from "@/server/domain/time/calendar-day";
import { currentEntries, type ThrowEntry } from "./throw-entry";
import { isOutingKind } from "./throws-by-week";

/** How many of the months were free of something, and how many of those came one after another. */
export interface FreeMonths {
  months: number;
  longestRun: number;
}

/** The months off of an arm. Months are written "2026-11". */
export interface MonthsOff {
  /** The earliest and the latest month that was counted, both included. */
  fromMonth: string;
  toMonth: string;
  /** How many were counted: at most twelve. */
  monthsOnRecord: number;
  withoutCompetition: FreeMonths;
  withoutThrowing: FreeMonths;
}

/**
 * Months off in the twelve whole calendar months before the one that is running: those without a pitch in a game, in
 * live at-bats or at a showcase, and those without any throw on the log. Months that began before the log did are not
 * counted: nothing is known of them. Null when no whole month is on record.
 *
 * Published advice speaks of months off a year without saying how to count them (MLB and USA Baseball, Pitch Smart);
 * whole calendar months are the reading that never takes a part of a month for a month off.
 */
export function monthsOff(entries: readonly ThrowEntry[], today: CalendarDay): MonthsOff | null {
  return monthsOffAmong(entries, wholeMonthsBefore(today));
}

/**
 * The same over the whole calendar months between two days, both included: for a season. At most twelve.
 * @example from 10 Mar 2026 to 25 Nov 2026: April to October
 */
export function monthsOffBetween(
  entries: readonly ThrowEntry[],
  fromDay: CalendarDay,
  toDay: CalendarDay,
): MonthsOff | null {
  const within = wholeMonthsBefore(addDays(toDay, 1)).filter((month) => `${month}-01` >= fromDay);
  return monthsOffAmong(entries, within);
}

function monthsOffAmong(entries: readonly ThrowEntry[], among: readonly string[]): MonthsOff | null {
  const known = currentEntries(entries);
  const firstDay = known.map((entry) => entry.thrownOn).sort()[0];
  if (firstDay === undefined) return null;
  const months = among.filter((month) => `${month}-01` >= firstDay);
  const [fromMonth, toMonth] = [months[0], months.at(-1)];
  if (fromMonth === undefined || toMonth === undefined) return null;
  const thrown = known.filter((entry) => entry.pitches > 0);
  const competed = thrown.filter((entry) => isOutingKind(entry.kind));
  return {
    fromMonth,
    toMonth,
    monthsOnRecord: months.length,
    withoutCompetition: freeMonths(months, competed),
    withoutThrowing: freeMonths(months, thrown),
  };
}

/** The twelve months before the one that holds a day, earliest first. */
function wholeMonthsBefore(today: CalendarDay): string[] {
  const running = `${today.slice(0, 7)}-01`;
  return Array.from({ length: 12 }, (_, index) => addMonths(running, index - 12).slice(0, 7));
}

function freeMonths(months: readonly string[], thrown: readonly ThrowEntry[]): FreeMonths {
  const taken = new Set(thrown.map((entry) => entry.thrownOn.slice(0, 7)));
  let run = 0;
  let longestRun = 0;
  for (const month of months) {
    run = taken.has(month) ? 0 : run + 1;
    longestRun = Math.max(longestRun, run);
  }
  return { months: months.filter((month) => !taken.has(month)).length, longestRun };
}
