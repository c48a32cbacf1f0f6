import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type DayNumber, dayNumber } from "@/server/domain/time/day-number";
import {
  countsTowardLimit,
  currentEntries,
  isGameLike,
  type PlannedThrows,
  type ThrowEntry,
  type ThrowReading,
} from "./throw-entry";

/** All that counts of one arm on one day, thrown and planned, with the rows it comes from. */
export interface DayLoad {
  day: CalendarDay;
  /** 0 where only catching is known of the day, or only outs. */
  pitches: number;
  /** Of games thrown on the day, planned ones not. */
  gamePitches: number;
  games: number;
  intentionalWalks: number;
  /** The count at the start of the last batter, where the whole day is one outing that says it. */
  pitchesAtLastBatter: number | null;
  outs: number;
  /** Innings in which at least one pitch is known to have been thrown. */
  inningsBegun: number;
  inningsCaught: number;
  entryIds: string[];
  plannedIds: string[];
  /** Rows of games with pitches that say no outs. */
  withoutOutsIds: string[];
}

/** What an arm has thrown and has coming. Entries and plans are one athlete's; a plan already logged is left out. */
export interface ArmRecord {
  entries: readonly ThrowEntry[];
  planned: readonly PlannedThrows[];
  reading: ThrowReading;
}

/** Whether the arm pitches on the day at all, planned throws included. */
export function isPitched(load: DayLoad | undefined): load is DayLoad {
  return load !== undefined && (load.pitches > 0 || load.outs > 0);
}

/**
 * What counts, by day. Replaced rows, kinds that do not count and rows that say nothing are left out, so a day without a
 * load is a day without pitching or catching. Planned throws weigh like thrown ones: what was planned and never logged
 * is taken as thrown until someone says otherwise.
 */
export function dayLoads(record: ArmRecord): Map<CalendarDay, DayLoad> {
  return loadsBy(record, (day) => day);
}

/** {@link dayLoads}, by the number of the day. */
export function numberedLoads(record: ArmRecord): Map<DayNumber, DayLoad> {
  return loadsBy(record, dayNumber);
}

function loadsBy<Key>(record: ArmRecord, keyOf: (day: CalendarDay) => Key): Map<Key, DayLoad> {
  const loads = new Map<Key, DayLoad>();
  const loadOn = (day: CalendarDay) => {
    const key = keyOf(day);
    const load = loads.get(key) ?? nothingOn(day);
    loads.set(key, load);
    return load;
  };
  for (const entry of currentEntries(record.entries)) {
    if (!countsTowardLimit(entry.kind, record.reading) || saysNothing(entry)) continue;
    addEntry(loadOn(entry.thrownOn), entry);
  }
  for (const plan of record.planned) {
    if (plan.pitches <= 0 || !countsTowardLimit(plan.kind, record.reading)) continue;
    addPlan(loadOn(plan.plannedOn), plan);
  }
  return loads;
}

function nothingOn(day: CalendarDay): DayLoad {
  return {
    day,
    pitches: 0,
    gamePitches: 0,
    games: 0,
    intentionalWalks: 0,
    pitchesAtLastBatter: null,
    outs: 0,
    inningsBegun: 0,
    inningsCaught: 0,
    entryIds: [],
    plannedIds: [],
    withoutOutsIds: [],
  };
}

function saysNothing({ pitches, outs, inningsCaught }: ThrowEntry): boolean {
  return pitches <= 0 && !outs && !inningsCaught;
}

function addEntry(load: DayLoad, entry: ThrowEntry): void {
  load.inningsCaught += entry.inningsCaught ?? 0;
  load.entryIds.push(entry.id);
  const outs = entry.outs ?? 0;
  if (entry.pitches <= 0 && outs === 0) return;
  // A second outing, before or after, makes the count at the last batter of one of them say too little of the day.
  load.pitchesAtLastBatter = isPitched(load) ? null : entry.pitchesAtLastBatter;
  load.pitches += entry.pitches;
  load.intentionalWalks += entry.intentionalWalks;
  if (!isGameLike(entry.kind)) return;
  load.gamePitches += entry.pitches;
  load.games += 1;
  load.outs += outs;
  load.inningsBegun += Math.max(1, Math.ceil(outs / 3));
  if (entry.outs === null) load.withoutOutsIds.push(entry.id);
}

function addPlan(load: DayLoad, plan: PlannedThrows): void {
  load.pitchesAtLastBatter = null;
  load.pitches += plan.pitches;
  if (isGameLike(plan.kind)) load.games += 1;
  load.plannedIds.push(plan.id);
}
