import { z } from "zod";
import type { Db } from "@/db/client";
import {
  coachesNow,
  openCorrectionsAt,
  pastMinutes,
  type QueuedRound,
  roundsIn,
  viewsOf,
} from "@/server/data/round-queue";
import { CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { DEFAULT_ESTIMATE_MIN, estimateMin, queueOrder } from "@/server/domain/reviews/queue-order";
import { OWED_STATES } from "@/server/domain/reviews/round-state";
import { ageOn, dayOf } from "@/server/domain/time/calendar-day";

const lateness = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("left"), leftMs: z.number() }),
  z.strictObject({ kind: z.literal("late"), lateByMs: z.number() }),
]);

const listed = {
  roundId: z.string(),
  athleteId: z.string(),
  athleteName: z.string(),
  ageYears: z.number(),
  coachPersonId: z.string().nullable(),
  coachName: z.string().nullable(),
  /** Whether the caller looks after the athlete. */
  isOwnAthlete: z.boolean(),
  siteName: z.string(),
  zone: z.string(),
};

const owedRound = z.strictObject({
  ...listed,
  state: z.enum(OWED_STATES),
  /** A first clip is owed a review, a reply a check. */
  kind: z.enum(["first", "reply"]),
  views: z.array(z.enum(CAMERA_VIEWS)),
  receivedAtMs: z.number(),
  dueAtMs: z.number(),
  lateness,
  estimateMin: z.number(),
  openCorrections: z.array(
    z.strictObject({ correctionId: z.string(), checkpointId: z.string(), name: z.string() }),
  ),
});
export type OwedRow = z.output<typeof owedRound>;

const awaitedRound = z.strictObject({
  ...listed,
  state: z.enum(["sent", "retake"]),
  replyFrom: z.string().nullable(),
  lapsesOn: z.string().nullable(),
  /** Whether it may still be withdrawn: the review is not out. */
  mayBeWithdrawn: z.boolean(),
});
export type AwaitedRow = z.output<typeof awaitedRound>;

/** The queue as the screen gets it. */
export const queueOutput = z.strictObject({
  owed: z.array(owedRound),
  awaited: z.array(awaitedRound),
  /** To whom a round can be handed. */
  coaches: z.array(z.strictObject({ personId: z.string(), name: z.string() })),
});

/** Everything the academy owes a step on, in the order it falls due, and everything that waits for a family. */
export async function readQueue(
  db: Db,
  callerPersonId: string,
  nowMs: number,
): Promise<z.input<typeof queueOutput>> {
  const owed = await roundsIn(db, OWED_STATES);
  const awaited = await roundsIn(db, ["sent", "retake"]);
  return {
    owed: queueOrder(await owedRows(db, owed, callerPersonId, nowMs), nowMs).map(({ id, ...row }) => row),
    awaited: awaited.map((row) => ({
      ...listedFacts(row, callerPersonId, nowMs),
      state: row.state === "retake" ? ("retake" as const) : ("sent" as const),
      replyFrom: row.replyFrom,
      lapsesOn: row.lapsesOn,
      mayBeWithdrawn: row.state === "retake" && row.retakeFrom !== "answered",
    })),
    coaches: await coachesNow(db),
  };
}

async function owedRows(db: Db, rounds: readonly QueuedRound[], callerPersonId: string, nowMs: number) {
  const views = await viewsOf(
    db,
    rounds.map((row) => row.roundId),
  );
  const corrections = await openCorrectionsAt(
    db,
    rounds.map((row) => row.athleteId),
  );
  const minutes = { review: await pastMinutes(db, "review"), check: await pastMinutes(db, "check") };
  return rounds.map((row) => {
    const kind = row.state === "answered" ? ("reply" as const) : ("first" as const);
    const work = kind === "reply" ? ("check" as const) : ("review" as const);
    const worker = row.coachPersonId ?? row.ownCoachPersonId ?? "";
    return {
      ...listedFacts(row, callerPersonId, nowMs),
      id: row.roundId,
      state: owedState(row.state),
      kind,
      views: views.get(row.roundId)?.[kind] ?? [],
      receivedAtMs: row.receivedAtMs,
      dueAtMs: owedAtMs(row),
      estimateMin: Math.round(estimateMin(minutes[work].get(worker) ?? [], DEFAULT_ESTIMATE_MIN[work])),
      openCorrections: corrections.get(row.athleteId) ?? [],
    };
  });
}

function listedFacts(row: QueuedRound, callerPersonId: string, nowMs: number) {
  return {
    roundId: row.roundId,
    athleteId: row.athleteId,
    athleteName: row.athleteName,
    ageYears: ageOn(row.bornOn, dayOf(nowMs, row.zone)),
    coachPersonId: row.coachPersonId,
    coachName: row.coachName,
    isOwnAthlete: row.ownCoachPersonId === callerPersonId,
    siteName: row.siteName,
    zone: row.zone,
  };
}

function owedState(state: QueuedRound["state"]): OwedRow["state"] {
  const owed = OWED_STATES.find((each) => each === state);
  if (!owed) throw new Error(`A round that is ${state} is not owed.`);
  return owed;
}

function owedAtMs({ roundId, dueAtMs }: QueuedRound): number {
  if (dueAtMs === null) throw new Error(`The round ${roundId} is owed and says not by when.`);
  return dueAtMs;
}
