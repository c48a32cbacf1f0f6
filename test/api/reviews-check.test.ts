import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { correction as correctionTable } from "@/db/schema/corrections";
import { charge } from "@/db/schema/ledger";
import { notice } from "@/db/schema/notices";
import { review as reviewTable } from "@/db/schema/reviews";
import { round } from "@/db/schema/rounds";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { answer, refused, save, sendReview, settle, takenRound } from "../helpers/review-desk";
import { check, correction, keep, many, review, strideCheckpoint, verdict } from "../helpers/review-drafts";

let academy: TestAcademy;
let roundId: string;
let clipId: string;

beforeEach(async () => {
  academy = await makeAcademy();
  ({ roundId, clipId } = await takenRound(academy));
});

const coach = () => academy.as(WHO.coach);
const onClip = (changes: Parameters<typeof correction>[0] = {}) => correction({ clipId, ...changes });
const roundRow = async () => (await academy.db.select().from(round).where(eq(round.id, roundId)))[0];
const openRows = () => academy.db.select().from(correctionTable);

describe("the check", () => {
  async function answered(count = 2) {
    const given = many(count, (index) =>
      onClip({
        id: `c${index}`,
        checkpointId: strideCheckpoint(index),
        cue: `Cue ${index}`,
        frame: 20 + index,
      }),
    );
    await sendReview(academy, roundId, review({ corrections: given }));
    academy.clock.ms += 7 * 86_400_000;
    const replyId = await answer(academy, roundId);
    return { replyId, ids: (await openRows()).map((row) => row.id) };
  }

  it("shows old and new with the old frames, and settles with a verdict for each", async () => {
    const { replyId, ids } = await answered();
    const room = await (await coach()).reviews.room({ roundId });
    expect(room.clips.map((clip) => [clip.id, clip.part])).toEqual([
      [clipId, "first"],
      [replyId, "reply"],
    ]);
    expect(room.corrections.map((each) => [each.clipId, each.frame])).toEqual([
      [clipId, 20],
      [clipId, 21],
    ]);
    const [first = "", second = ""] = ids;
    await settle(
      academy,
      roundId,
      check({
        verdicts: [
          verdict(first, { note: "On every pitch", clipId: replyId, frame: 30 }),
          verdict(second, { verdict: "not_yet" }),
        ],
        judgements: [{ checkpointId: "hips-lead", clipId: replyId, frame: 30, score: 3 }],
        eventMarks: [{ clipId: replyId, event: "ball_release", frame: 100 }],
        note: "Good work.",
      }),
    );
    expect((await openRows()).map((row) => row.state)).toEqual(["showing", "given"]);
    expect(await roundRow()).toMatchObject({ state: "settled", dueAtMs: null });
    const told = (await academy.db.select().from(notice)).filter((each) => each.kind === "check_sent");
    expect(told[0]?.body).toContain("1. Hips lead");
    expect(told[0]?.body).toContain("On every pitch");
    expect(told[0]?.body).toContain("Good work.");
    expect((await academy.db.select().from(reviewTable)).map((row) => row.kind)).toEqual(["review", "check"]);
    expect(await academy.db.select().from(charge)).toHaveLength(1);
  });

  it("refuses while a correction has no verdict, and writes nothing", async () => {
    const { ids } = await answered();
    const document = check({ verdicts: [verdict(ids[0] ?? ""), verdict(ids[1] ?? "", { verdict: null })] });
    const version = await save(academy, roundId, { kind: "check", document });
    const caller = await coach();
    const why = await refused(academy, () => caller.reviews.settle({ roundId, version }));
    expect(why).toEqual({ reason: "draft_incomplete", missing: ["1 correction has no verdict"] });
    const stale = await refused(academy, () => caller.reviews.settle({ roundId, version: 0 }));
    expect(stale).toEqual({ reason: "changed_meanwhile" });
  });

  it("retires with a reason in place of a verdict, and not without one", async () => {
    const { ids } = await answered(1);
    const [correctionId = ""] = ids;
    const version = await save(academy, roundId, {
      kind: "check",
      document: check({ retirements: [{ correctionId, reason: " " }] }),
    });
    const caller = await coach();
    const why = await refused(academy, () => caller.reviews.settle({ roundId, version }));
    expect(why).toMatchObject({ reason: "draft_incomplete" });
    const better = await save(
      academy,
      roundId,
      { kind: "check", document: check({ retirements: [{ correctionId, reason: "Grown out of it" }] }) },
      version,
    );
    await caller.reviews.settle({ roundId, version: better });
    expect((await openRows())[0]).toMatchObject({ state: "retired" });
    const read = await (await academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(read.corrections[0]?.happenings.at(-1)).toMatchObject({
      kind: "retired",
      reason: "Grown out of it",
    });
  });

  it("is not settled by another coach, nor before the reply while something is open", async () => {
    await sendReview(academy, roundId, review({ corrections: [onClip()] }));
    const caller = await coach();
    const early = await refused(academy, () => caller.reviews.settle({ roundId, version: 0 }));
    expect(early).toEqual({ reason: "draft_incomplete", missing: ["1 correction has no verdict"] });
    await answer(academy, roundId);
    const other = await academy.as(WHO.otherCoach);
    const why = await refused(academy, () => other.reviews.settle({ roundId, version: 0 }));
    expect(why).toEqual({ reason: "round_taken_by", coachName: "Cole Rivers" });
  });

  it("carries what has not taken into the next round with its history, holds on the second yes, and marks what came back", async () => {
    const { ids } = await answered(2);
    const [hips = "", other = ""] = ids;
    const verdicts = (first: "yes" | "not_yet", second: "yes" | "partly" | "not_yet") => ({
      document: check({ verdicts: [verdict(hips, { verdict: first }), verdict(other, { verdict: second })] }),
    });
    await settle(academy, roundId, verdicts("yes", "partly").document);

    academy.clock.ms += 86_400_000;
    const second = await takenRound(academy, "rnd_2");
    const room = await (await coach()).reviews.room({ roundId: "rnd_2" });
    expect(room.corrections.map((each) => [each.id, each.state, each.yesInARow])).toEqual([
      [hips, "showing", 1],
      [other, "showing", 0],
    ]);
    expect(room.clips.map((clip) => clip.id)).toContain(clipId);
    await sendReview(
      academy,
      "rnd_2",
      review({ corrections: [], keeps: [keep({ clipId: second.clipId, frame: 4 })] }),
    );
    academy.clock.ms += 7 * 86_400_000;
    await answer(academy, "rnd_2");
    await settle(academy, "rnd_2", verdicts("yes", "not_yet").document);
    expect((await openRows()).map((row) => [row.state, row.closedAtMs !== null])).toEqual([
      ["held", true],
      ["given", false],
    ]);

    academy.clock.ms += 86_400_000;
    await takenRound(academy, "rnd_3");
    await sendReview(academy, "rnd_3", review({ corrections: [], keeps: [keep()] }));
    academy.clock.ms += 7 * 86_400_000;
    await answer(academy, "rnd_3");
    await settle(academy, "rnd_3", verdicts("not_yet", "yes").document);
    expect((await openRows()).map((row) => [row.state, row.cameBack, row.closedAtMs])).toEqual([
      ["given", true, null],
      ["showing", false, null],
    ]);
    const told = (await academy.db.select().from(notice)).filter((each) => each.kind === "check_sent");
    expect(told.at(-1)?.body).toContain("it came back, so it is open again");
  });
});
