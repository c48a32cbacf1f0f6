import { z } from "zod";
import { armOf } from "@/server/data/arms";
import { type LoggedThrows, plannedOutings, throwLog } from "@/server/data/throwing-log";
import { fullName } from "@/server/domain/people/person";
import { adviceForAge } from "@/server/domain/throwing/rule-book";
import { currentEntries, THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { THROW_GROUPS, throwsByWeek } from "@/server/domain/throwing/throws-by-week";
import { addMonths, ageOn } from "@/server/domain/time/calendar-day";
import { answerFor, armAnswer } from "./arm-answer";
import { athleteHead, headOf } from "./athlete-head";
import type { Scope } from "./context";
import { painAnswer, painFor } from "./pain-answer";

/** Throws of one week by group; `weekOf` is its Monday. */
export const weekOfThrows = z.strictObject({
  weekOf: z.string(),
  counts: z.record(z.enum(THROW_GROUPS), z.int()),
});

/** An outing that is coming. */
export const outingAnswer = z.strictObject({ id: z.string(), plannedOn: z.string(), pitches: z.int() });

/** Whose arm it is, what the book leaves it today and why, and the year's throwing. */
export const throwingView = z.strictObject({
  athlete: athleteHead,
  today: z.string(),
  arm: armAnswer,
  book: z.strictObject({
    name: z.string(),
    source: z.string(),
    notes: z.array(z.string()),
    advice: z.array(z.string()),
  }),
  pain: painAnswer,
  log: z.array(
    z.strictObject({
      id: z.string(),
      thrownOn: z.string(),
      kind: z.enum(THROW_KINDS),
      pitches: z.int(),
      note: z.string(),
      byName: z.string(),
      reportedAtMs: z.number(),
      origin: z.enum(["log", "session", "clip"]),
      /** What the row it corrects had said; null when it corrects none. */
      corrects: z
        .strictObject({ thrownOn: z.string(), kind: z.enum(THROW_KINDS), pitches: z.int() })
        .nullable(),
      mayCorrect: z.boolean(),
    }),
  ),
  outings: z.array(outingAnswer),
  weeks: z.array(weekOfThrows),
});

/** Reads everything the throwing page of the athlete in hand shows this caller: a year back. */
export async function throwingViewFor(scope: Scope): Promise<z.output<typeof throwingView>> {
  const { db, athlete, nowMs, today } = scope;
  const sinceDay = addMonths(today, -12);
  const arm = await armOf(db, athlete.athleteId, nowMs);
  const rows = await throwLog(db, athlete.athleteId, sinceDay);
  const { name, source, notes } = arm.book;
  const advice = adviceForAge(arm.book, ageOn(athlete.bornOn, today)).map((line) => line.words);
  return {
    athlete: await headOf(scope),
    today,
    arm: answerFor({ ...arm, day: today }),
    book: { name, source, notes, advice },
    pain: await painFor(scope),
    log: loggedFor(scope, rows),
    outings: await plannedOutings(db, athlete.athleteId, today),
    weeks: throwsByWeek(rows, sinceDay, today),
  };
}

function loggedFor(scope: Scope, rows: readonly LoggedThrows[]) {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return currentEntries(rows).map((row) => {
    const before = row.replacesId ? byId.get(row.replacesId) : undefined;
    return {
      id: row.id,
      thrownOn: row.thrownOn,
      kind: row.kind,
      pitches: row.pitches,
      note: row.note,
      byName: fullName({ givenName: row.byGivenName, familyName: row.byFamilyName }),
      reportedAtMs: row.reportedAtMs,
      origin: originOf(row),
      corrects: before ? { thrownOn: before.thrownOn, kind: before.kind, pitches: before.pitches } : null,
      mayCorrect: mayCorrect(scope, row),
    };
  });
}

function originOf(row: { sessionId: string | null; clipId: string | null }) {
  if (row.sessionId) return "session" as const;
  return row.clipId ? ("clip" as const) : ("log" as const);
}

/** What was logged with a session is the coach's record: only coaches and admins correct it. */
export function mayCorrect({ relations }: Scope, row: { sessionId: string | null }): boolean {
  const isStaff = relations.has("coach") || relations.has("admin");
  return isStaff || row.sessionId === null;
}
