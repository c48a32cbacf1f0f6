import { type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { currentEntries, type ThrowEntry } from "./throw-entry";

/** All throws of an arm, one number a calendar day from the first day on record. */
export interface ThrowRecord {
  /** The day of the earliest entry: before it nothing is known, which is not the same as nothing thrown. */
  firstDay: CalendarDay;
  /** Throws by days since `firstDay`; a day without an entry is 0 (common practice for such series, no source). */
  throws: readonly number[];
}

/**
 * The record of an arm up to a day, that day included. Every logged throw is one, off a mound or not, however hard:
 * the log does not know how hard. Replaced rows are left out; null when nothing was logged by that day.
 * @example one game of 40 on 24 Nov, asked to 26 Nov: firstDay 24 Nov, throws [40, 0, 0]
 */
export function throwRecord(entries: readonly ThrowEntry[], toDay: CalendarDay): ThrowRecord | null {
  const known = currentEntries(entries).filter((entry) => entry.thrownOn <= toDay);
  const firstDay = known.map((entry) => entry.thrownOn).sort()[0];
  if (firstDay === undefined) return null;
  const throws = new Array<number>(daysBetween(firstDay, toDay) + 1).fill(0);
  for (const { thrownOn, pitches } of known) {
    const index = daysBetween(firstDay, thrownOn);
    throws[index] = (throws[index] ?? 0) + pitches;
  }
  return { firstDay, throws };
}
