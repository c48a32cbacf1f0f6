import type { CalendarDay } from "@/server/domain/time/calendar-day";
import {
  countsTowardLimit,
  currentEntries,
  type PlannedThrows,
  type ThrowEntry,
  type ThrowReading,
} from "./throw-entry";

/** All counted pitches of one arm on one day, thrown and planned, with the rows they come from. Always over 0. */
export interface DayLoad {
  day: CalendarDay;
  pitches: number;
  entryIds: string[];
  plannedIds: string[];
}

/** What an arm has thrown and has coming. Entries and plans are one athlete's; a plan already logged is left out. */
export interface ArmRecord {
  entries: readonly ThrowEntry[];
  planned: readonly PlannedThrows[];
  reading: ThrowReading;
}

/**
 * Counted pitches by day. Replaced rows, kinds that do not count and zeros are left out, so a day without a load
 * is a day without pitching. Planned throws weigh like thrown ones: what was planned and never logged is taken as
 * thrown until someone says otherwise.
 */
export function dayLoads(record: ArmRecord): Map<CalendarDay, DayLoad> {
  const loads = new Map<CalendarDay, DayLoad>();
  for (const entry of currentEntries(record.entries)) {
    if (entry.pitches <= 0 || !countsTowardLimit(entry.kind, record.reading)) continue;
    loadOn(loads, entry.thrownOn, entry.pitches).entryIds.push(entry.id);
  }
  for (const plan of record.planned) {
    if (plan.pitches <= 0 || !countsTowardLimit(plan.kind, record.reading)) continue;
    loadOn(loads, plan.plannedOn, plan.pitches).plannedIds.push(plan.id);
  }
  return loads;
}

function loadOn(loads: Map<CalendarDay, DayLoad>, day: CalendarDay, pitches: number): DayLoad {
  const load = loads.get(day) ?? { day, pitches: 0, entryIds: [], plannedIds: [] };
  load.pitches += pitches;
  loads.set(day, load);
  return load;
}
