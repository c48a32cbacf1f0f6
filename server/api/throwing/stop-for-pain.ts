import type { z } from "zod";
import { tellOfPain } from "@/server/data/pain";
import { findPerson } from "@/server/data/people";
import { keepRemark } from "@/server/data/remarks";
import { insertPainReport } from "@/server/data/throw-log";
import { Refusal } from "@/server/domain/errors/refusal";
import { fullName } from "@/server/domain/people/person";
import { entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { entryRefusals, PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import type { Scope } from "../context";
import type { painInput } from "./throws-input";

/**
 * Stops the arm in hand for pain, whoever tells of it, and tells family and coach. The caller flags the booked sessions
 * afterwards.
 * @param sessionId the session at whose check-in it was said
 * @throws Refusal when it cannot have been felt on that day: then nothing is written
 */
export async function stopForPain(
  scope: Scope,
  pain: z.output<typeof painInput>,
  sessionId: string | null = null,
): Promise<void> {
  const { db, actor, nowMs, athlete } = scope;
  const { athleteId } = athlete;
  const { kind, feltOn } = pain;
  refuseBadDay(scope, feltOn);
  await insertPainReport(db, {
    ...{ athleteId, kind, feltOn, sessionId, remarkId: await keepRemark(db, pain.note) },
    ...{ reportedByPersonId: actor.personId, reportedAtMs: nowMs },
  });
  await tellOfPain(db, { athleteId, kind, feltOn, byName: await callerName(scope) }, nowMs);
}

/** Refuses a day on which nothing can have been felt or thrown: to come, before birth, none at all. */
function refuseBadDay({ athlete, today }: Scope, day: string): void {
  const bounds = { bornOn: athlete.bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
  const [refusal] = entryRefusals({ thrownOn: day, pitches: 0 }, bounds);
  if (refusal) throw new Refusal({ reason: "throw_entry_invalid", why: entryRefusalInWords(refusal) });
}

/** The caller's whole name, for what is told of their act. */
export async function callerName({ db, actor }: Scope): Promise<string> {
  const card = await findPerson(db, actor.personId);
  return card ? fullName(card) : actor.givenName;
}
