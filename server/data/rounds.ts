import { and, asc, eq, inArray, isNotNull, isNull, or } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { draft, round, roundEvent } from "@/db/schema/rounds";
import type { AthleteScope } from "@/server/domain/access/relation";
import { Refusal } from "@/server/domain/errors/refusal";
import { hasLapsed } from "@/server/domain/reviews/reply-window";
import { moveRound, type RoundState, type RoundStep } from "@/server/domain/reviews/round-state";
import { dayOf } from "@/server/domain/time/calendar-day";
import { athleteScope } from "./access";
import { newId } from "./new-id";

/** A round as it stands. Instants in epoch milliseconds. */
export type Round = typeof round.$inferSelect;

/** A round, or null when there is none by that id. */
export async function findRound(db: Db, roundId: string): Promise<Round | null> {
  const [row] = await db.select().from(round).where(eq(round.id, roundId));
  return row ?? null;
}

/** What access needs of the athlete a round is about, or null when there is no such round. */
export async function roundScope(db: Db, roundId: string): Promise<AthleteScope | null> {
  const row = await findRound(db, roundId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** The site an athlete's rounds are owed at. @throws Error when there is no such athlete */
export async function homeSiteOf(db: Db, athleteId: string): Promise<string> {
  const [row] = await db
    .select({ siteId: athlete.homeSiteId })
    .from(athlete)
    .where(eq(athlete.id, athleteId));
  if (!row) throw new Error(`There is no athlete ${athleteId}.`);
  return row.siteId;
}

/** Begins a round with the clips that have just come in, and notes it. @returns its id */
export async function openRound(
  tx: Db,
  start: { athleteId: string; siteId: string; dueAtMs: number; actorPersonId: string; nowMs: number },
): Promise<string> {
  const { athleteId, siteId, dueAtMs, actorPersonId, nowMs } = start;
  const id = newId("rnd");
  await tx
    .insert(round)
    .values({ id, athleteId, siteId, state: "received", receivedAtMs: nowMs, dueAtMs, version: 1 });
  await tx
    .insert(roundEvent)
    .values({ id: newId("rev"), roundId: id, kind: "received", actorPersonId, atMs: nowMs });
  return id;
}

/** A step of a round and what goes with it. */
export interface RoundStepTaken {
  step: RoundStep;
  /** Null for a step that time takes by itself. */
  actorPersonId: string | null;
  nowMs: number;
  /** Columns that change with the step, beside the state. */
  changes?: Partial<Omit<Round, "id" | "athleteId" | "siteId" | "state" | "version">>;
  toPersonId?: string | null;
  remarkId?: string | null;
  /** Open corrections without a verdict; matters to `settled` alone. */
  awaitingVerdict?: number;
}

/**
 * Takes one step of a round: moves its state, sets what changes with it, and notes it. The round must stand as it was
 * read.
 * @returns the new state
 * @throws Refusal when the step does not fit the state, or somebody moved the round in between; nothing is written then
 */
export async function stepRound(tx: Db, row: Round, taken: RoundStepTaken): Promise<RoundState> {
  const { step, actorPersonId, nowMs, changes = {}, toPersonId, remarkId, awaitingVerdict = 0 } = taken;
  const move = moveRound(row.state, step, { retakeFrom: row.retakeFrom, awaitingVerdict });
  if (!move.ok) throw new Refusal(move.refusal);
  const moved = await tx
    .update(round)
    .set({ ...changes, state: move.state, version: row.version + 1 })
    .where(and(eq(round.id, row.id), eq(round.version, row.version)))
    .returning({ id: round.id });
  if (moved.length === 0) throw new Refusal({ reason: "changed_meanwhile" });
  await tx.insert(roundEvent).values({
    id: newId("rev"),
    roundId: row.id,
    kind: step,
    actorPersonId,
    toPersonId: toPersonId ?? null,
    remarkId: remarkId ?? null,
    atMs: nowMs,
  });
  return move.state;
}

/** Gives what is being written on a round to the coach who has the round now. */
export async function passDrafts(tx: Db, roundId: string, coachPersonId: string): Promise<void> {
  await tx.update(draft).set({ coachPersonId }).where(eq(draft.roundId, roundId));
}

/** The rounds that wait for a clip of this athlete, oldest first. */
export async function roundsAwaitingClip(db: Db, athleteId: string): Promise<Round[]> {
  return db
    .select()
    .from(round)
    .where(and(eq(round.athleteId, athleteId), inArray(round.state, ["sent", "retake"])))
    .orderBy(asc(round.receivedAtMs));
}

/** The rounds whose last day for a clip has passed at `nowMs`, each by the day at the athlete's home site. */
export async function lapsedRounds(db: Db, nowMs: number): Promise<Round[]> {
  const rows = await db
    .select()
    .from(round)
    .where(and(inArray(round.state, ["sent", "retake"]), isNotNull(round.lapsesOn)));
  const lapsed: Round[] = [];
  for (const row of rows) {
    const scope = await athleteScope(db, row.athleteId);
    if (scope && hasLapsed(row.lapsesOn, dayOf(nowMs, scope.zone))) lapsed.push(row);
  }
  return lapsed;
}

/** The rounds that wait for a clip without a day to lapse on, since pain had stopped the arm when it was asked for. */
export async function roundsWithoutWindow(db: Db): Promise<Round[]> {
  return db
    .select()
    .from(round)
    .where(
      and(inArray(round.state, ["sent", "retake"]), or(isNull(round.lapsesOn), isNull(round.replyFrom))),
    );
}

/** Sets from when and until when a round waits for a clip. */
export async function setReplyWindow(
  tx: Db,
  roundId: string,
  window: { replyFrom: string | null; lapsesOn: string | null },
): Promise<void> {
  await tx
    .update(round)
    .set({ replyFrom: window.replyFrom, lapsesOn: window.lapsesOn })
    .where(eq(round.id, roundId));
}
