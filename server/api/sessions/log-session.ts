import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { thrownAs } from "@/server/data/arms";
import { insertCharge } from "@/server/data/charges";
import { type CorrectionRecord, correctionsOf, stepCorrection } from "@/server/data/corrections";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { roundsAwaitingClip, stepRound } from "@/server/data/rounds";
import { checkInsOf, insertSessionLog } from "@/server/data/session-logs";
import { changeSession, type SessionCard } from "@/server/data/sessions";
import { insertThrowEntry } from "@/server/data/throw-log";
import { SPEED_UNITS } from "@/server/domain/calendar/radar-speed";
import { sessionLogInWords } from "@/server/domain/calendar/session-in-words";
import { MAX_SESSION_MIN } from "@/server/domain/calendar/session-kind";
import { sessionLogProblem } from "@/server/domain/calendar/session-log-problem";
import { ATTENDANCES, WORK_OUTCOMES } from "@/server/domain/calendar/session-state";
import { Refusal } from "@/server/domain/errors/refusal";
import { isOpen, moveCorrection } from "@/server/domain/reviews/correction-state";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import { dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";
import { noteAct } from "../note-act";
import { sessionOrRefuse } from "./book-session";
import { pitchCount, rowId } from "./session-shapes";
import { stepOrRefuse } from "./step-or-refuse";
import { tellOfSession } from "./tell-of-session";

const line = z.strictObject({
  athleteId: rowId,
  attendance: z.enum(ATTENDANCES),
  minutes: z.int().min(0).max(MAX_SESSION_MIN),
  pitches: pitchCount,
  /** How hard it was, in the athlete's own word; null when it was not asked. */
  effort: z.int().min(0).max(MAX_EFFORT).nullable().default(null),
  /** Strikes among the pitches, and the fastest by radar; null when nobody counted or read. */
  strikes: pitchCount.nullable().default(null),
  topSpeed: z.number().min(0).max(200).nullable().default(null),
  speedUnit: z.enum(SPEED_UNITS).nullable().default(null),
  work: z
    .array(z.strictObject({ correctionId: rowId, outcome: z.enum(WORK_OUTCOMES) }))
    .max(20)
    .refine((all) => new Set(all.map((one) => one.correctionId)).size === all.length, "each correction once"),
  note: z.string().max(1000),
});

/** What was done, a line for each athlete of the session. */
export const logInput = z.strictObject({
  sessionId: rowId,
  version: z.int().min(1),
  lines: z.array(line).min(1).max(8),
});

type LogInput = z.output<typeof logInput>;
type Line = LogInput["lines"][number];

/**
 * Writes down a session: each athlete's line, the throws on the arm, what was worked on and what holds now, and the
 * charge under the rate in force; the session is logged. All in the caller's one unit of work.
 * @throws Refusal when it cannot be logged yet, somebody was not asked, or nothing is priced: then nothing is written
 */
export async function logSession(scope: Scope, input: LogInput): Promise<void> {
  const { db, nowMs } = scope;
  const card = await sessionOrRefuse(scope, input.sessionId);
  const state = stepOrRefuse(card, "log", nowMs);
  const checkIns = await checkInsOf(db, card.id);
  const problem = sessionLogProblem(
    {
      kind: card.kind,
      athleteIds: card.athletes.map((one) => one.athleteId),
      checkedInIds: new Set(checkIns.map((one) => one.athleteId)),
    },
    input.lines,
  );
  if (problem) throw new Refusal(problem);
  await changeSession(db, { id: card.id, version: input.version }, { state });
  for (const each of input.lines) await logLine(scope, card, each);
  await noteAct(scope, "session.log", card.id, { athletes: input.lines.length });
  for (const each of input.lines) await tellOfSessionsWithoutRoom(db, each.athleteId, nowMs);
  await tellOfSession(scope, card, "session_logged", (athlete) =>
    input.lines.filter((each) => each.athleteId === athlete.athleteId).flatMap(lineInWords),
  );
}

async function logLine(scope: Scope, card: SessionCard, logged: Line): Promise<void> {
  const { db, actor, nowMs } = scope;
  const by = { sessionId: card.id, loggedByPersonId: actor.personId, loggedAtMs: nowMs };
  const known = await correctionsOf(db, logged.athleteId);
  const worked = logged.work.map((each) => ({ ...each, record: recordOf(known, each.correctionId) }));
  await insertSessionLog(db, { ...logged, ...by });
  if (logged.attendance !== "came") return;
  await logThrows(scope, card, logged);
  for (const { record, outcome } of worked) {
    if (outcome === "confirmed") await confirm(scope, card.id, record);
  }
  if (worked.some(({ outcome }) => outcome === "confirmed")) await settleWithoutOpen(scope, logged.athleteId);
  await insertCharge(db, {
    ...{ kind: card.kind, athleteId: logged.athleteId, source: { sessionId: card.id } },
    ...{ coachPersonId: card.coachPersonId, siteId: card.siteId, atMs: nowMs },
    chargedOn: dayOf(card.startsAtMs, card.zone),
  });
}

/** The throws stand on the day at the athlete's home site, as every limit counts them. */
async function logThrows(
  { db, actor, nowMs }: Scope,
  card: SessionCard,
  { athleteId, pitches }: Line,
): Promise<void> {
  if (pitches === 0) return;
  const home = await athleteScope(db, athleteId);
  await insertThrowEntry(db, {
    ...{ athleteId, pitches, kind: thrownAs(card.kind), sessionId: card.id },
    thrownOn: dayOf(card.startsAtMs, home?.zone ?? card.zone),
    ...{ reportedByPersonId: actor.personId, reportedAtMs: nowMs },
  });
}

function recordOf(known: readonly CorrectionRecord[], correctionId: string): CorrectionRecord {
  const record = known.find(({ id }) => id === correctionId);
  if (!record || record.standing.state === "retired") throw new Refusal({ reason: "not_found" });
  return record;
}

async function confirm(
  { db, actor, nowMs }: Scope,
  sessionId: string,
  { id: correctionId, standing }: CorrectionRecord,
): Promise<void> {
  const move = moveCorrection(standing, { kind: "confirmed", atMs: nowMs, reason: "" });
  if (!move.ok) throw new Error(`A correction could not be confirmed: ${move.refusal}.`);
  const step = { correctionId, kind: "confirmed", sessionId, actorPersonId: actor.personId } as const;
  await stepCorrection(db, { ...step, atMs: nowMs, standing: move.standing });
}

/** A round that waits for a reply has nothing to wait for once everything holds in person. */
async function settleWithoutOpen({ db, actor, nowMs }: Scope, athleteId: string): Promise<void> {
  const open = (await correctionsOf(db, athleteId)).filter((each) => isOpen(each.standing.state));
  if (open.length > 0) return;
  const waiting = (await roundsAwaitingClip(db, athleteId)).filter((row) => row.state === "sent");
  for (const row of waiting) {
    const changes = { settledAtMs: nowMs, dueAtMs: null };
    await stepRound(db, row, { step: "settled", actorPersonId: actor.personId, nowMs, changes });
  }
}

function lineInWords({ athleteId: _, work, ...line }: Line): string[] {
  return sessionLogInWords({ ...line, held: work.filter((each) => each.outcome === "confirmed").length });
}
