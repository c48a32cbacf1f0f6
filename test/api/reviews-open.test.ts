import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { correction as correctionTable } from "@/db/schema/corrections";
import { judgement } from "@/db/schema/mechanics";
import { review as reviewTable } from "@/db/schema/reviews";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addClip, refused, save, sendReview, takenRound } from "../helpers/review-desk";
import { correction, many, review, strideCheckpoint } from "../helpers/review-drafts";

let academy: TestAcademy;
let roundId: string;
let clipId: string;

beforeEach(async () => {
  academy = await makeAcademy();
  ({ roundId, clipId } = await takenRound(academy));
});

const coach = () => academy.as(WHO.coach);
const onClip = (changes: Parameters<typeof correction>[0] = {}) => correction({ clipId, ...changes });
const openRows = () => academy.db.select().from(correctionTable);

describe("five open corrections at the most", () => {
  const corrections = (count: number) =>
    many(count, (index) => onClip({ id: `c${index}`, checkpointId: strideCheckpoint(index), frame: index }));

  it("lets five through and refuses the sixth until one is retired", async () => {
    await sendReview(academy, roundId, review({ corrections: corrections(5) }));
    const next = await takenRound(academy, "rnd_2");
    const version = await save(academy, next.roundId, {
      kind: "review",
      document: review({ corrections: [onClip({ clipId: next.clipId })] }),
    });
    const caller = await coach();
    const why = await refused(academy, () => caller.reviews.send({ roundId: next.roundId, version }));
    expect(why).toEqual({ reason: "corrections_full", open: 5, max: 5 });
    const [first] = await openRows();
    await caller.reviews.retire({ correctionId: first?.id ?? "", reason: "Another cue does the same job" });
    await caller.reviews.send({ roundId: next.roundId, version });
    expect((await openRows()).filter((row) => row.state === "given")).toHaveLength(5);
  });

  it("says how many to leave out when some would fit", async () => {
    await sendReview(academy, roundId, review({ corrections: corrections(4) }));
    const next = await takenRound(academy, "rnd_2");
    const two = many(2, (index) =>
      onClip({ id: `n${index}`, checkpointId: strideCheckpoint(4 + index), clipId: next.clipId }),
    );
    const version = await save(academy, next.roundId, {
      kind: "review",
      document: review({ corrections: two }),
    });
    const caller = await coach();
    const why = await refused(academy, () => caller.reviews.send({ roundId: next.roundId, version }));
    expect(why).toEqual({
      reason: "draft_incomplete",
      missing: ["leave out 1 correction: 4 open already and 5 is the most at a time"],
    });
  });

  it("retires with a reason, once, and only what is open", async () => {
    await sendReview(academy, roundId, review({ corrections: corrections(1) }));
    const [row] = await openRows();
    const caller = await coach();
    const correctionId = row?.id ?? "";
    expect(await refused(academy, () => caller.reviews.retire({ correctionId, reason: "  " }))).toBe(
      "BAD_REQUEST",
    );
    await caller.reviews.retire({ correctionId, reason: "Not needed" });
    expect((await openRows())[0]).toMatchObject({ state: "retired", closedAtMs: academy.clock.ms });
    const again = await refused(academy, () => caller.reviews.retire({ correctionId, reason: "Again" }));
    expect(again).toEqual({ reason: "changed_meanwhile" });
  });
});

describe("an addendum", () => {
  it("is added by the coach who has the round, changes nothing that was sent, and is never empty", async () => {
    const reviewId = await sendReview(academy, roundId, review({ corrections: [onClip()] }));
    const sentBefore = JSON.stringify(await academy.db.select().from(reviewTable));
    const other = await academy.as(WHO.otherCoach);
    const why = await refused(academy, () => other.reviews.addAddendum({ reviewId, text: "Mine" }));
    expect(why).toEqual({ reason: "round_taken_by", coachName: "Cole Rivers" });
    const caller = await coach();
    expect(await refused(academy, () => caller.reviews.addAddendum({ reviewId, text: " " }))).toBe(
      "BAD_REQUEST",
    );
    await caller.reviews.addAddendum({ reviewId, text: "One more thing" });
    expect(JSON.stringify(await academy.db.select().from(reviewTable))).toBe(sentBefore);
  });
});

describe("several clips of one day", () => {
  it("are judged each from its own view", async () => {
    const behind = await addClip(academy, roundId, "first", WHO.child.athleteId, "back");
    const reviewId = await sendReview(
      academy,
      roundId,
      review({
        corrections: [onClip()],
        judgements: [
          { checkpointId: "hips-lead", clipId, frame: 60, score: 1 },
          { checkpointId: "closed-start", clipId: behind, frame: 4, score: 3 },
        ],
      }),
    );
    const rows = await academy.db.select().from(judgement).where(eq(judgement.reviewId, reviewId));
    expect(rows.map((row) => row.view)).toEqual(["open_side", "back"]);
    const room = await (await coach()).reviews.room({ roundId });
    expect(room.latestJudgements).toEqual(
      expect.arrayContaining([{ checkpointId: "closed-start", score: 3, judgedOn: "2026-11-25" }]),
    );
  });
});
