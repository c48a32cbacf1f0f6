import { and, asc, eq, inArray, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { correction, correctionEvent, practiceDay } from "@/db/schema/corrections";
import { remark } from "@/db/schema/people";
import type { AthleteScope } from "@/server/domain/access/relation";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import {
  type CorrectionEventKind,
  type CorrectionStanding,
  isOpen,
  standingOf,
} from "@/server/domain/reviews/correction-state";
import type { DraftCorrection } from "@/server/domain/reviews/draft";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { athleteScope } from "./access";
import { newId } from "./new-id";
import { keepRemark } from "./remarks";

/** One thing that happened to a correction, with the words said and the frame it was seen on. */
export interface CorrectionHappening {
  kind: CorrectionEventKind;
  atMs: number;
  /** The note of a verdict or the reason of a retirement; empty when there was none. */
  reason: string;
  roundId: string | null;
  sessionId: string | null;
  clipId: string | null;
  frame: number | null;
}

/** A correction with all that happened to it, oldest first. */
export interface CorrectionRecord extends Omit<typeof correction.$inferSelect, "state" | "cameBack"> {
  checkpointName: string;
  /** The moment whose frame its checkpoint is judged on. */
  event: DeliveryEvent;
  standing: CorrectionStanding;
  happenings: CorrectionHappening[];
  /** Days on which its drill was ticked as practised, oldest first. */
  practisedOn: CalendarDay[];
}

/** Every correction an athlete was ever given, in the order given; open, held and retired ones. */
export async function correctionsOf(db: Db, athleteId: string): Promise<CorrectionRecord[]> {
  const rows = await db
    .select({ correction, checkpointName: checkpoint.name, event: checkpoint.event })
    .from(correction)
    .innerJoin(checkpoint, eq(checkpoint.id, correction.checkpointId))
    .where(eq(correction.athleteId, athleteId))
    .orderBy(asc(correction.givenAtMs), asc(correction.position));
  const ids = rows.map((row) => row.correction.id);
  const happenings = await happeningsOf(db, ids);
  const practised = await practisedDays(db, ids);
  return rows.map(({ correction: { state, cameBack, ...row }, checkpointName, event }) => {
    const own = happenings
      .filter((each) => each.correctionId === row.id)
      .map(({ correctionId, ...each }) => each);
    const practisedOn = practised.filter((each) => each.correctionId === row.id).map((each) => each.day);
    return { ...row, checkpointName, event, happenings: own, standing: standingOf(own), practisedOn };
  });
}

/** The corrections an athlete works on, in the order given. */
export async function openCorrectionsOf(db: Db, athleteId: string): Promise<CorrectionRecord[]> {
  return (await correctionsOf(db, athleteId)).filter((each) => isOpen(each.standing.state));
}

async function happeningsOf(db: Db, correctionIds: string[]) {
  const rows = await db
    .select({ event: correctionEvent, reason: remark.text })
    .from(correctionEvent)
    .leftJoin(remark, eq(remark.id, correctionEvent.remarkId))
    .where(inArray(correctionEvent.correctionId, correctionIds))
    .orderBy(asc(correctionEvent.atMs), sql`"correction_event".rowid`);
  return rows.map(({ event, reason }) => ({
    correctionId: event.correctionId,
    kind: event.kind,
    atMs: event.atMs,
    // An erased reason still was one: the record of a retirement must not break when its words go.
    reason: event.remarkId === null ? "" : reason || "Erased.",
    roundId: event.roundId,
    sessionId: event.sessionId,
    clipId: event.clipId,
    frame: event.frame,
  }));
}

async function practisedDays(db: Db, correctionIds: string[]) {
  return db
    .select({ correctionId: practiceDay.correctionId, day: practiceDay.practisedOn })
    .from(practiceDay)
    .where(inArray(practiceDay.correctionId, correctionIds))
    .orderBy(asc(practiceDay.practisedOn));
}

/** What access needs of the athlete a correction is of, or null when there is no such correction. */
export async function correctionScope(db: Db, correctionId: string): Promise<AthleteScope | null> {
  const [row] = await db
    .select({ athleteId: correction.athleteId })
    .from(correction)
    .where(eq(correction.id, correctionId));
  return row ? athleteScope(db, row.athleteId) : null;
}

/** Gives the corrections of a review, in the order of its recap, and notes each as given. */
export async function giveCorrections(
  tx: Db,
  given: {
    athleteId: string;
    reviewId: string;
    roundId: string;
    actorPersonId: string;
    atMs: number;
    corrections: readonly DraftCorrection[];
  },
): Promise<void> {
  const { athleteId, reviewId, roundId, actorPersonId, atMs } = given;
  for (const [position, { id: _draftId, cue, drill, ...seen }] of given.corrections.entries()) {
    const id = newId("cor");
    await tx.insert(correction).values({
      id,
      athleteId,
      reviewId,
      roundId,
      ...seen,
      cue: cue.trim(),
      drill: drill.trim(),
      position,
      state: "given",
      givenAtMs: atMs,
    });
    const { clipId, frame } = seen;
    await insertEvent(tx, { correctionId: id, kind: "given", roundId, clipId, frame, actorPersonId, atMs });
  }
}

/** One thing that happens to a correction, and how it stands afterwards. */
export interface CorrectionStep {
  correctionId: string;
  kind: Exclude<CorrectionEventKind, "given">;
  /** Kept apart, so that it can be erased; blank text is left out. */
  reason?: string;
  roundId?: string | null;
  sessionId?: string | null;
  clipId?: string | null;
  frame?: number | null;
  actorPersonId: string;
  atMs: number;
  /** What the domain made of it. */
  standing: CorrectionStanding;
}

/** Notes what happened to a correction and moves its row to where it stands now. */
export async function stepCorrection(tx: Db, { standing, reason, ...step }: CorrectionStep): Promise<void> {
  await insertEvent(tx, { ...step, remarkId: await keepRemark(tx, reason) });
  const { state, cameBack } = standing;
  const closedAtMs = isOpen(state) ? null : (standing.history.at(-1)?.fromMs ?? step.atMs);
  await tx
    .update(correction)
    .set({ state, cameBack, closedAtMs })
    .where(eq(correction.id, step.correctionId));
}

async function insertEvent(tx: Db, event: Omit<typeof correctionEvent.$inferInsert, "id">): Promise<void> {
  await tx.insert(correctionEvent).values({ ...event, id: newId("cev") });
}

/** Ticks a day of practice; nothing happens when it was ticked before. */
export async function tickDay(
  tx: Db,
  tick: { correctionId: string; practisedOn: CalendarDay; tickedByPersonId: string },
): Promise<void> {
  await tx.insert(practiceDay).values(tick).onConflictDoNothing();
}

/** Takes a tick back; nothing happens when there was none. */
export async function untickDay(tx: Db, correctionId: string, practisedOn: CalendarDay): Promise<void> {
  await tx
    .delete(practiceDay)
    .where(and(eq(practiceDay.correctionId, correctionId), eq(practiceDay.practisedOn, practisedOn)));
}
