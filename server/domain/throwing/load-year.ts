import { addDays, addMonths, type CalendarDay } from "@/server/domain/time/calendar-day";
import { currentEntries, MOUND_WORK_KINDS, type ThrowEntry } from "./throw-entry";
import { isOutingKind } from "./throws-by-week";

/** What an arm pitched in twelve months, as far as it was logged. */
export interface TwelveMonths {
  /** The first day and the last, both included. */
  fromDay: CalendarDay;
  toDay: CalendarDay;
  /** Pitches off a mound, in competition or not, whatever the academy counts toward a limit. */
  moundPitches: number;
  /** Those of them in games, live at-bats and showcases. */
  competitionPitches: number;
  /** Outs pitched, three to an inning, where they were logged. */
  outs: number;
  /** Games whose outs were not logged: their innings are missing from `outs`. */
  gamesWithoutOuts: number;
}

/**
 * Pitches and innings of the twelve months that end with a day: from the day after the same date a year before to that
 * day. Published totals are a year's, or any twelve months' (MLB and USA Baseball, Pitch Smart); rolling is the reading
 * that no turn of a year resets. Flat ground, long toss and weighted balls are no pitches. Replaced rows are left out.
 * @example asked on 25 Nov 2026: 26 Nov 2025 to 25 Nov 2026
 */
export function twelveMonths(entries: readonly ThrowEntry[], today: CalendarDay): TwelveMonths {
  return pitchedBetween(entries, addDays(addMonths(today, -12), 1), today);
}

/** The same of the days between two, both included: for a season. */
export function pitchedBetween(
  entries: readonly ThrowEntry[],
  fromDay: CalendarDay,
  toDay: CalendarDay,
): TwelveMonths {
  const thrown = currentEntries(entries).filter(
    ({ thrownOn, pitches }) => thrownOn >= fromDay && thrownOn <= toDay && pitches > 0,
  );
  const competed = thrown.filter(({ kind }) => isOutingKind(kind));
  const worked = thrown.filter(({ kind }) => MOUND_WORK_KINDS.some((mound) => mound === kind));
  const competitionPitches = pitchesIn(competed);
  return {
    fromDay,
    toDay,
    moundPitches: competitionPitches + pitchesIn(worked),
    competitionPitches,
    outs: competed.reduce((sum, { outs }) => sum + (outs ?? 0), 0),
    gamesWithoutOuts: competed.filter(({ kind, outs }) => kind === "game" && outs === null).length,
  };
}

function pitchesIn(entries: readonly ThrowEntry[]): number {
  return entries.reduce((sum, { pitches }) => sum + pitches, 0);
}
