import { z } from "zod";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { tellOfPain } from "@/server/data/pain";
import { findPerson } from "@/server/data/people";
import { keepRemark } from "@/server/data/remarks";
import { insertCheckIn } from "@/server/data/session-logs";
import { changeSession, type SessionCard } from "@/server/data/sessions";
import { insertPainReport, insertThrowEntry } from "@/server/data/throw-log";
import { Refusal } from "@/server/domain/errors/refusal";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { fullName } from "@/server/domain/people/person";
import { PAIN_KINDS } from "@/server/domain/throwing/pain";
import { entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { entryRefusals, PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import type { Scope } from "../context";
import { sessionOrRefuse } from "./book-session";
import { pitchCount, rowId } from "./session-shapes";
import { stepOrRefuse } from "./step-or-refuse";

/** What was thrown since the last entry (nothing: an empty list), and whether anything hurts. */
export const checkInInput = z.strictObject({
  sessionId: rowId,
  athleteId: rowId,
  throws: z
    .array(z.strictObject({ thrownOn: calendarDay, kind: z.enum(THROW_KINDS), pitches: pitchCount.min(1) }))
    .max(10),
  pain: z
    .strictObject({ kind: z.enum(PAIN_KINDS), feltOn: calendarDay, note: z.string().max(1000) })
    .nullable(),
});

type CheckInInput = z.output<typeof checkInInput>;

/**
 * Records what a coach asked before mound work: throws go to the log, pain stops the arm and is told of at once, and
 * booked sessions that lose their room are flagged. The first check-in opens the session.
 * @returns how many booked sessions of the athlete stand without room now
 */
export async function checkInAthlete(scope: Scope, input: CheckInInput): Promise<number> {
  const { db, actor, nowMs, athlete } = scope;
  const card = await sessionOrRefuse(scope, input.sessionId);
  await openForCheckIn(scope, card);
  assertDays(scope, input);
  const { athleteId } = athlete;
  const reported = { athleteId, reportedByPersonId: actor.personId, reportedAtMs: nowMs };
  for (const thrown of input.throws) await insertThrowEntry(db, { ...thrown, ...reported });
  await insertCheckIn(db, {
    ...{ sessionId: card.id, athleteId, thrownSince: input.throws.length > 0, pain: input.pain !== null },
    ...{ askedByPersonId: actor.personId, atMs: nowMs },
  });
  if (input.pain) await stopForPain(scope, card.id, input.pain);
  return tellOfSessionsWithoutRoom(db, athleteId, nowMs);
}

async function openForCheckIn({ db, nowMs }: Scope, card: SessionCard): Promise<void> {
  if (card.state === "checked_in") return;
  const state = stepOrRefuse(card, "check_in", nowMs);
  await changeSession(db, card, { state });
}

function assertDays({ athlete, today }: Scope, input: CheckInInput): void {
  const bounds = { bornOn: athlete.bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
  const felt = input.pain ? [{ thrownOn: input.pain.feltOn, pitches: 0 }] : [];
  const [refusal] = [...input.throws, ...felt].flatMap((entry) => entryRefusals(entry, bounds));
  if (refusal) throw new Refusal({ reason: "throw_entry_invalid", why: entryRefusalInWords(refusal) });
}

async function stopForPain(
  { db, actor, nowMs, athlete }: Scope,
  sessionId: string,
  pain: NonNullable<CheckInInput["pain"]>,
): Promise<void> {
  const { athleteId } = athlete;
  const { kind, feltOn } = pain;
  await insertPainReport(db, {
    ...{ athleteId, kind, feltOn, sessionId, remarkId: await keepRemark(db, pain.note) },
    ...{ reportedByPersonId: actor.personId, reportedAtMs: nowMs },
  });
  const teller = await findPerson(db, actor.personId);
  const byName = fullName(teller ?? { givenName: actor.givenName, familyName: "" });
  await tellOfPain(db, { athleteId, kind, feltOn, byName }, nowMs);
}
