import { beforeEach, describe, expect, it } from "vitest";
import { correction, correctionEvent } from "@/db/schema/corrections";
import { type CorrectionEventKind, standingOf } from "@/server/domain/reviews/correction-state";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { sendReview, takenRound } from "../helpers/review-desk";
import { correction as drafted, keep, review } from "../helpers/review-drafts";

const DAY_MS = 86_400_000;
const EVERYTHING = { phase: null, checkpointId: null, coachId: null };

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const asked = async (personId: string = WHO.coach, choice = {}) =>
  (await academy.as(personId)).evidence.holding({ ...EVERYTHING, ...choice });

/** A review with one correction, given so many days ago. @returns the review's and the round's id */
async function sent() {
  const { roundId, clipId } = await takenRound(academy);
  const corrections = [drafted({ clipId, drill: "Towel drill" })];
  return {
    roundId,
    reviewId: await sendReview(academy, roundId, review({ keeps: [keep()], corrections })),
  };
}

/** Corrections of one review, each given 60 days ago, with what happened to it so many days later. */
async function given(lives: readonly (readonly [CorrectionEventKind, number][])[]) {
  const { db, clock } = academy;
  const { roundId, reviewId } = await sent();
  const givenAtMs = clock.ms - 60 * DAY_MS;
  for (const [at, life] of lives.entries()) {
    const id = `cor_life_${at}`;
    const events = [["given", 0] as const, ...life].map(([kind, day], turn) => ({
      ...{ id: `cev_${at}_${turn}`, correctionId: id, kind, roundId, actorPersonId: WHO.coach },
      atMs: givenAtMs + day * DAY_MS,
    }));
    const { state, cameBack } = standingOf(events.map((each) => ({ ...each, reason: "no longer wanted" })));
    await db.insert(correction).values({
      ...{ id, athleteId: WHO.child.athleteId, reviewId, roundId, checkpointId: "hand-on-top" },
      ...{ phase: "stride", cue: "Up", drill: "Towel drill", position: at + 1, state, cameBack, givenAtMs },
    });
    await db.insert(correctionEvent).values(events);
  }
}

describe("the ledger of corrections", () => {
  it("of an academy that gave none, and of one, says how many it takes", async () => {
    expect(await asked()).toMatchObject({
      ...{ onRecord: 0, steps: [], byCheckpoint: [], byCoach: [], drills: [], longestDays: 0 },
      choices: { phases: [], checkpoints: [], coaches: [] },
      all: { watched: 0, words: "too few corrections (0 of at least 5)" },
    });
    await sent();
    expect(await asked()).toMatchObject({
      ...{ onRecord: 1, steps: [], longestDays: 0 },
      all: { watched: 1, open: 1, words: "too few corrections (1 of at least 5)" },
    });
  });

  it("counts each from given to first held, the open and the retired ones as long as they were watched", async () => {
    await given([
      [["confirmed", 10]],
      [
        ["yes", 5],
        ["yes", 20],
        ["not_yet", 30],
      ],
      [
        ["partly", 4],
        ["confirmed", 20],
      ],
      [["retired", 25]],
      [["partly", 9]],
    ]);
    const { all, steps, byCheckpoint, byCoach, longestDays } = await asked(WHO.admin, {
      checkpointId: "hand-on-top",
    });
    /* By hand: at 10 one of 5 holds, 4/5 last; at 20 two of 4, so that 0.4 last. */
    expect(
      steps.map(({ days, atRisk, heldThen, share }) => [days, atRisk, heldThen, share.toFixed(3)]),
    ).toEqual([
      [10, 5, 1, "0.200"],
      [20, 4, 2, "0.600"],
    ]);
    expect(all).toMatchObject({ watched: 5, held: 3, open: 1, cameBack: 1, medianDays: 20 });
    expect(longestDays).toBe(60);
    expect(byCheckpoint).toMatchObject([{ key: "hand-on-top", watched: 5 }]);
    expect(byCoach).toMatchObject([{ key: WHO.coach, watched: 5 }]);
  });

  it("offers what is on record to choose from, by name, whatever is chosen", async () => {
    await given([[]]);
    const { choices, all, onRecord } = await asked(WHO.coach, { coachId: WHO.otherCoach });
    expect(choices.phases).toEqual(["stride"]);
    expect(choices.checkpoints.map(({ id }) => id).sort()).toEqual(["hand-on-top", "hips-lead"]);
    expect(choices.coaches).toEqual([{ id: WHO.coach, name: expect.stringMatching(/\w+ \w+/) }]);
    expect([all.watched, onRecord]).toEqual([0, 2]);
  });

  it("is for staff alone", async () => {
    for (const personId of [WHO.guardian, WHO.teen.personId, WHO.adult.personId]) {
      await expect(asked(personId)).rejects.toMatchObject({ code: "NOT_FOUND" });
    }
    expect((await asked(WHO.otherCoach)).onRecord).toBe(0);
  });
});
