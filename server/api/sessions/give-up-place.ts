import { keepRemark } from "@/server/data/remarks";
import { freeClaims } from "@/server/data/session-claims";
import { changeSession, leaveSession, type SessionCard } from "@/server/data/sessions";
import type { Scope } from "../context";
import { noteAct } from "../note-act";
import { sessionOrRefuse } from "./book-session";
import { stepOrRefuse } from "./step-or-refuse";
import { tellOfSession } from "./tell-of-session";

/** Cancels a session, gives back all that it took, and tells everybody why. */
export async function cancelSession(
  scope: Scope,
  input: { sessionId: string; version: number; reason: string },
): Promise<void> {
  const { db, nowMs } = scope;
  const card = await sessionOrRefuse(scope, input.sessionId);
  const state = stepOrRefuse(card, "cancel", nowMs);
  const cancelRemarkId = await keepRemark(db, input.reason);
  await changeSession(
    db,
    { id: card.id, version: input.version },
    { state, cancelRemarkId, cancelledAtMs: nowMs },
  );
  await freeClaims(db, card.id);
  await noteAct(scope, "session.cancel", card.id, {});
  await tellOfSession(scope, card, "session_cancelled", () => [input.reason]);
}

/**
 * Gives up one athlete's place on a session that others come to; the session stays. The last one's place is the
 * session itself, which is then cancelled.
 */
export async function giveUpPlace(
  scope: Scope,
  input: { sessionId: string; version: number; reason: string },
): Promise<void> {
  const { db, athlete, nowMs } = scope;
  const card = await sessionOrRefuse(scope, input.sessionId);
  if (card.athletes.length === 1) return cancelSession(scope, input);
  stepOrRefuse(card, "cancel", nowMs);
  await changeSession(db, { id: card.id, version: input.version }, {});
  await leaveSession(db, card.id, athlete.athleteId);
  await noteAct(scope, "session.leave", card.id, { athleteId: athlete.athleteId });
  await tellOfSession(scope, withOnly(card, athlete.athleteId), "session_cancelled", () => [
    "The place was given up; the session goes on.",
    input.reason,
  ]);
}

function withOnly(card: SessionCard, athleteId: string): SessionCard {
  return { ...card, athletes: card.athletes.filter((one) => one.athleteId === athleteId) };
}
