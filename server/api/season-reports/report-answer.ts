import { z } from "zod";
import type { Db } from "@/db/client";
import { findSettings } from "@/server/data/academy-settings";
import { correctionsOf } from "@/server/data/corrections";
import { sessionsOf } from "@/server/data/season";
import { writtenReportsOf } from "@/server/data/season-reports";
import { throwLog } from "@/server/data/throwing-log";
import type { AthleteScope } from "@/server/domain/access/relation";
import { SESSION_KINDS } from "@/server/domain/calendar/session-kind";
import { DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { fullName } from "@/server/domain/people/person";
import { CORRECTION_STATES } from "@/server/domain/reviews/correction-state";
import type { SeasonSpan } from "@/server/domain/season-reports/season-span";
import { seasonThrowing } from "@/server/domain/season-reports/season-throwing";
import { sessionsAttended } from "@/server/domain/season-reports/sessions-attended";
import { workedOn } from "@/server/domain/season-reports/worked-on";
import { type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { weekOfThrows } from "../throwing-view";
import { changesFor, seasonChanges } from "./season-changes";

const day = z.string();

/** A season's report, the same for everybody who may read it; whose it is stands beside it, since a link tells less. */
export const reportAnswer = z.strictObject({
  academyName: z.string(),
  fromOn: day,
  toOn: day,
  /** The day it was drawn up on: it is worked out anew each time. */
  asOf: day,
  workedOn: z.array(
    z.strictObject({
      id: z.string(),
      checkpointName: z.string(),
      phase: z.enum(DELIVERY_PHASES),
      cue: z.string(),
      givenOn: day,
      state: z.enum(CORRECTION_STATES),
      heldOn: day.nullable(),
      cameBackOn: day.nullable(),
      practiceDays: z.int(),
    }),
  ),
  changes: seasonChanges,
  throwing: z.strictObject({
    weeks: z.array(weekOfThrows),
    months: z.array(
      z.strictObject({ month: z.string(), throws: z.int(), outings: z.int(), outingPitches: z.int() }),
    ),
    words: z.array(z.string()),
  }),
  sessions: z.strictObject({
    booked: z.int(),
    came: z.int(),
    missed: z.int(),
    notLogged: z.int(),
    byKind: z.array(z.strictObject({ kind: z.enum(SESSION_KINDS), came: z.int() })),
  }),
  /** What the next season is for; null until a coach wrote it. */
  focus: z.strictObject({ text: z.string(), byName: z.string(), writtenOn: day }).nullable(),
});

/** The value of {@link reportAnswer}. */
export type ReportAnswer = z.output<typeof reportAnswer>;

/** Before any throw: the whole log is read, so that a month before it began is not taken for a month off. */
const FIRST_DAY = "0001-01-01";

/** Draws up the report of an athlete for a span, from what is on record now. */
export async function reportFor(
  db: Db,
  athlete: AthleteScope,
  span: SeasonSpan,
  nowMs: number,
): Promise<ReportAnswer> {
  const { athleteId, zone } = athlete;
  const asOf = dayOf(nowMs, zone);
  const written = (await writtenReportsOf(db, athleteId)).find(
    ({ fromOn, toOn }) => fromOn === span.fromOn && toOn === span.toOn,
  );
  const worked = workedOn(await correctionsOf(db, athleteId), span, zone);
  return {
    academyName: (await findSettings(db))?.name ?? "",
    ...{ fromOn: span.fromOn, toOn: span.toOn, asOf },
    workedOn: worked,
    changes: await changesFor(
      db,
      athlete,
      span,
      worked.map(({ id }) => id),
    ),
    throwing: seasonThrowing(await throwLog(db, athleteId, FIRST_DAY), span, asOf),
    sessions: sessionsAttended(await startedSessions(db, athlete, span, nowMs)),
    focus: written?.focus
      ? {
          text: written.focus,
          byName: fullName({ givenName: written.byGivenName, familyName: written.byFamilyName }),
          writtenOn: dayOf(written.writtenAtMs, zone),
        }
      : null,
  };
}

async function startedSessions(db: Db, athlete: AthleteScope, span: SeasonSpan, nowMs: number) {
  const rows = await sessionsOf(db, athlete.athleteId, instantOf(span.fromOn, 0, athlete.zone));
  return rows.filter(
    ({ startsAtMs, zone }) => startsAtMs <= nowMs && isWithin(dayOf(startsAtMs, zone), span),
  );
}

const isWithin = (on: CalendarDay, { fromOn, toOn }: SeasonSpan) => on >= fromOn && on <= toOn;
