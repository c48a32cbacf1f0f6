import type { Connections } from "@/db/client";
import { correction, correctionEvent } from "@/db/schema/corrections";
import { person } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { round } from "@/db/schema/rounds";
import { insertCheckpoints } from "@/server/data/checkpoints";
import { unitOfWork } from "@/server/data/unit-of-work";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { type CorrectionEventKind, standingOf } from "@/server/domain/reviews/correction-state";
import { NOW_MS } from "./filled-records";

const DAY_MS = 86_400_000;
const COACHES = 20;
/** Corrections of one athlete. */
const EACH = 10;

/** What can happen to a correction after it is given. */
const LIVES: readonly (readonly Exclude<CorrectionEventKind, "given">[])[] = [
  ["not_yet", "partly", "yes", "yes"],
  ["partly", "yes", "yes", "not_yet"],
  ["yes", "not_yet", "partly"],
  ["partly", "confirmed"],
  ["not_yet", "retired"],
  [],
];

/**
 * Writes ten corrections to each athlete over two years, with up to four checks each, by twenty coaches.
 * @returns how many corrections there are
 */
export async function fillCorrections(on: Connections, athleteIds: readonly string[]): Promise<number> {
  await unitOfWork(on, async (tx) => {
    await insertCheckpoints(tx, STARTING_LIBRARY);
    const coaches = Array.from({ length: COACHES }, (_, at) => ({
      id: `coach_${at}`,
      givenName: `Coach ${at}`,
    }));
    await tx
      .insert(person)
      .values(coaches.map((each) => ({ ...each, familyName: "Hill", createdAtMs: NOW_MS })));
    for (const [at, athleteId] of athleteIds.entries()) {
      const own = Array.from({ length: EACH }, (_, turn) => correctionOf(athleteId, at * EACH + turn));
      await tx.insert(round).values(own.map((each) => each.round));
      await tx.insert(review).values(own.map((each) => each.review));
      await tx.insert(correction).values(own.map((each) => each.correction));
      await tx.insert(correctionEvent).values(own.flatMap((each) => each.events));
    }
  });
  return athleteIds.length * EACH;
}

function correctionOf(athleteId: string, number: number) {
  const looked = STARTING_LIBRARY[(number * 7) % STARTING_LIBRARY.length];
  if (looked === undefined) throw new Error("The starting library is empty.");
  const [id, roundId, reviewId] = [`cor_${number}`, `rnd_${number}`, `rev_${number}`];
  const coachPersonId = `coach_${number % COACHES}`;
  const givenAtMs = NOW_MS - (60 + ((number * 37) % 670)) * DAY_MS;
  const gapMs = (2 + (number % 11)) * DAY_MS;
  const kinds = ["given", ...(LIVES[number % LIVES.length] ?? [])] as const;
  const events = kinds.map((kind, turn) => ({
    ...{ id: `cev_${number}_${turn}`, correctionId: id, kind, roundId, actorPersonId: coachPersonId },
    atMs: givenAtMs + turn * gapMs,
  }));
  const { state, cameBack } = standingOf(events.map((each) => ({ ...each, reason: "No longer wanted." })));
  return {
    round: {
      ...{ id: roundId, athleteId, siteId: "site", coachPersonId },
      ...SETTLED,
      receivedAtMs: givenAtMs,
    },
    review: {
      ...{ id: reviewId, roundId, athleteId, kind: "review" as const, coachPersonId },
      ...{ openedAtMs: givenAtMs, sentAtMs: givenAtMs },
    },
    correction: {
      ...{ id, athleteId, reviewId, roundId, checkpointId: looked.id, phase: looked.phase, cue: "Hip first" },
      ...{
        drill: looked.drills[number % looked.drills.length] ?? "Towel drill",
        position: 0,
        state,
        cameBack,
        givenAtMs,
      },
    },
    events,
  };
}

const SETTLED = { state: "settled" as const };
