import { type CalendarDay, isCalendarDay } from "@/server/domain/time/calendar-day";

/** More pitches than this in one entry is taken for a slip of the pen; common practice, no source. A setting. */
export const PLAUSIBLE_MAX_PITCHES = 400;

/** Why an entry cannot go into the log, with the facts its sentence needs. */
export type EntryRefusal =
  | { field: "pitches"; reason: "not_whole" }
  | { field: "pitches"; reason: "negative" }
  | { field: "pitches"; reason: "implausible"; maxPitches: number }
  | { field: "thrownOn"; reason: "not_a_day" }
  | { field: "thrownOn"; reason: "in_the_future"; today: CalendarDay }
  | { field: "thrownOn"; reason: "before_birth"; bornOn: CalendarDay };

/** What an entry is held against. `today` is the day at the athlete's home site. */
export interface EntryBounds {
  bornOn: CalendarDay;
  today: CalendarDay;
  plausibleMaxPitches: number;
}

/**
 * What is wrong with an entry, at most one line a field; empty when nothing is. 0 pitches stand: a correction says
 * with them that nothing was thrown. Today and the day of birth are allowed.
 */
export function entryRefusals(
  entry: { thrownOn: CalendarDay; pitches: number },
  bounds: EntryBounds,
): EntryRefusal[] {
  return [pitchesRefusal(entry.pitches, bounds), dayRefusal(entry.thrownOn, bounds)].filter(
    (refusal) => refusal !== null,
  );
}

function pitchesRefusal(pitches: number, { plausibleMaxPitches }: EntryBounds): EntryRefusal | null {
  if (!Number.isInteger(pitches)) return { field: "pitches", reason: "not_whole" };
  if (pitches < 0) return { field: "pitches", reason: "negative" };
  if (pitches <= plausibleMaxPitches) return null;
  return { field: "pitches", reason: "implausible", maxPitches: plausibleMaxPitches };
}

function dayRefusal(thrownOn: CalendarDay, { today, bornOn }: EntryBounds): EntryRefusal | null {
  if (!isCalendarDay(thrownOn)) return { field: "thrownOn", reason: "not_a_day" };
  if (thrownOn > today) return { field: "thrownOn", reason: "in_the_future", today };
  return thrownOn < bornOn ? { field: "thrownOn", reason: "before_birth", bornOn } : null;
}
