import { z } from "zod";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { insertCheckIn } from "@/server/data/session-logs";
import { changeSession, type SessionCard } from "@/server/data/sessions";
import type { Scope } from "../context";
import { appendThrows } from "../throwing/append-throws";
import { stopForPain } from "../throwing/stop-for-pain";
import { painInput, pitchesInput, throwsInput } from "../throwing/throws-input";
import { sessionOrRefuse } from "./book-session";
import { rowId } from "./session-shapes";
import { stepOrRefuse } from "./step-or-refuse";

/** What was thrown since the last entry (nothing: an empty list), and whether anything hurts. */
export const checkInInput = z.strictObject({
  sessionId: rowId,
  athleteId: rowId,
  throws: z.array(z.strictObject({ ...throwsInput, pitches: pitchesInput.min(1) })).max(10),
  pain: painInput.nullable(),
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
  const { athleteId } = athlete;
  for (const thrown of input.throws) await appendThrows(scope, thrown);
  await insertCheckIn(db, {
    ...{ sessionId: card.id, athleteId, thrownSince: input.throws.length > 0, pain: input.pain !== null },
    ...{ askedByPersonId: actor.personId, atMs: nowMs },
  });
  if (input.pain) await stopForPain(scope, input.pain, card.id);
  return tellOfSessionsWithoutRoom(db, athleteId, nowMs);
}

async function openForCheckIn({ db, nowMs }: Scope, card: SessionCard): Promise<void> {
  if (card.state === "checked_in") return;
  const state = stepOrRefuse(card, "check_in", nowMs);
  await changeSession(db, card, { state });
}
