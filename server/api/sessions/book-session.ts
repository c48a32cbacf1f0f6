import { openCorrectionsOf } from "@/server/data/corrections";
import { findRound } from "@/server/data/rounds";
import { findSession, insertSession, moveSession, type SessionCard } from "@/server/data/sessions";
import { SESSION_KIND } from "@/server/domain/calendar/session-kind";
import { Refusal } from "@/server/domain/errors/refusal";
import type { Scope } from "../context";
import { noteAct } from "../note-act";
import { proveTime } from "./prove-time";
import type { BookInput, MoveInput } from "./session-shapes";
import { stepOrRefuse } from "./step-or-refuse";
import { tellFormerCoach, tellOfSession } from "./tell-of-session";

/** Books a session that was proved to fit, takes all that it needs, and tells everybody. */
export async function bookSession(scope: Scope, input: BookInput): Promise<string> {
  const { db, actor, nowMs } = scope;
  await assertPlanIsTheirs(scope, input);
  const { endsAtMs, secondAdult } = await proveTime(scope, input, null);
  const { durationMin: _, ...row } = input;
  const places = input.kind === "group" ? SESSION_KIND.group.mostAthletes : input.athletes.length;
  const sessionId = await insertSession(db, {
    ...row,
    ...{ endsAtMs, secondAdult, places, bookedByPersonId: actor.personId, bookedAtMs: nowMs },
  });
  await noteAct(scope, "session.book", sessionId, { startsAtMs: input.startsAtMs, kind: input.kind });
  await tellOfSession(scope, await sessionOrRefuse(scope, sessionId), "session_booked", (athlete) =>
    athlete.plannedPitches > 0 ? [`${athlete.plannedPitches} pitches planned.`] : [],
  );
  return sessionId;
}

/** Moves a session that was proved to fit its new time, or plans it anew where it is, and tells everybody. */
export async function moveBooked(scope: Scope, input: MoveInput): Promise<void> {
  const { db, nowMs } = scope;
  const card = await sessionOrRefuse(scope, input.sessionId);
  stepOrRefuse(card, "move", nowMs);
  const isSameCompany =
    input.athletes.length === card.athletes.length &&
    card.athletes.every((one) => input.athletes.some(({ athleteId }) => athleteId === one.athleteId));
  if (!isSameCompany) throw new Refusal({ reason: "not_found" });
  const { endsAtMs, secondAdult } = await proveTime(scope, input, card.id);
  const { kind, startsAtMs, siteId, laneId, coachPersonId, athletes, version } = input;
  const to = { kind, startsAtMs, endsAtMs, siteId, laneId, coachPersonId, secondAdult };
  await moveSession(db, { id: card.id, version }, to, athletes);
  await noteAct(scope, "session.move", card.id, { fromMs: card.startsAtMs, toMs: startsAtMs, kind });
  const moved = await sessionOrRefuse(scope, card.id);
  await tellOfSession(scope, moved, "session_moved", (athlete) =>
    athlete.plannedPitches > 0 ? [`${athlete.plannedPitches} pitches planned.`] : [],
  );
  await tellFormerCoach(scope, card, moved);
}

/** The session, or the refusal that there is none. */
export async function sessionOrRefuse({ db }: Pick<Scope, "db">, sessionId: string): Promise<SessionCard> {
  const card = await findSession(db, sessionId);
  if (!card) throw new Refusal({ reason: "not_found" });
  return card;
}

/** A plan names open corrections, and follows up a round, of those who come and of nobody else. */
async function assertPlanIsTheirs({ db }: Scope, input: BookInput): Promise<void> {
  const ids = input.athletes.map((one) => one.athleteId);
  const open = new Set<string>();
  for (const id of ids) for (const each of await openCorrectionsOf(db, id)) open.add(each.id);
  const round = input.roundId === null ? null : await findRound(db, input.roundId);
  const isRoundTheirs = input.roundId === null || (round !== null && ids.includes(round.athleteId));
  if (!isRoundTheirs || input.correctionIds.some((id) => !open.has(id))) {
    throw new Refusal({ reason: "not_found" });
  }
}
