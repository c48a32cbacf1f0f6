import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import {
  CAUTIOUS_READING,
  type PlannedThrows,
  type ThrowEntry,
  type ThrowKind,
} from "@/server/domain/throwing/throw-entry";
import { NO_GAME } from "@/server/domain/throwing/validate-game";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** A day's throws in short: the day, the number, and the kind when it is not a game. */
export type Throws = [day: CalendarDay, pitches: number, kind?: ThrowKind];

/** A log entry with everything that does not matter filled in. Its id is its day unless another is given. */
export function entry(
  [thrownOn, pitches, kind = "game"]: Throws,
  more: Partial<ThrowEntry> = {},
): ThrowEntry {
  return {
    id: thrownOn,
    athleteId: "athlete",
    thrownOn,
    kind,
    pitches,
    ...NO_GAME,
    replacesId: null,
    reportedAtMs: 0,
    ...more,
  };
}

/** Planned throws; the id is `plan ` and the day. */
export function plan([plannedOn, pitches, kind = "game"]: Throws): PlannedThrows {
  return { id: `plan ${plannedOn}`, plannedOn, kind, pitches, teamId: null };
}

/** A question about a healthy 12-year-old (born 10 May 2014) who reports every day. */
export function ask(
  day: CalendarDay,
  {
    thrown = [],
    planned = [],
    ...more
  }: Partial<Omit<ArmQuestion, "planned">> & { thrown?: Throws[]; planned?: Throws[] } = {},
): ArmQuestion {
  return {
    bornOn: "2014-05-10",
    books: [USA_BASEBALL_2018],
    overrides: [],
    entries: thrown.map((throws) => entry(throws)),
    planned: planned.map(plan),
    reading: CAUTIOUS_READING,
    day,
    today: day,
    pain: null,
    lastReportedOn: day,
    ...more,
  };
}
