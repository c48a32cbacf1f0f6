import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { correction as correctionTable } from "@/db/schema/corrections";
import { charge, rate } from "@/db/schema/ledger";
import { eventMark, judgement } from "@/db/schema/mechanics";
import { notice } from "@/db/schema/notices";
import { keep as keepTable } from "@/db/schema/reviews";
import { draft as draftTable, round, roundEvent } from "@/db/schema/rounds";
import { painReport, throwEntry } from "@/db/schema/throwing";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { refused, save, sendReview, takenRound } from "../helpers/review-desk";
import { correction, keep, review } from "../helpers/review-drafts";

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

describe("sending a review", () => {
  const full = () =>
    review({
      eventMarks: [
        { clipId, event: "first_movement", frame: 10 },
        { clipId, event: "ball_release", frame: 110 },
      ],
      judgements: [{ checkpointId: "gaze-on-plate", clipId, frame: 10, score: 0 }],
      keeps: [keep({ text: " Quiet start " })],
      corrections: [
        onClip({ id: "late", frame: 143 }),
        onClip({ id: "early", checkpointId: "gaze-on-plate", phase: "wind_up", cue: "Eyes up", frame: 12 }),
      ],
    });

  it("writes all that was marked in the delivery's order, moves the round and throws the draft away", async () => {
    const reviewId = await sendReview(academy, roundId, full());
    expect(await academy.db.select().from(eventMark)).toHaveLength(2);
    expect(await academy.db.select().from(judgement)).toMatchObject([
      { reviewId, clipId, frame: 10, score: 0, view: "open_side", judgedOn: "2026-11-25" },
    ]);
    expect(await academy.db.select().from(keepTable)).toMatchObject([{ text: "Quiet start", position: 0 }]);
    const rows = await openRows();
    expect(rows.map((row) => [row.position, row.cue, row.state])).toEqual([
      [0, "Eyes up", "given"],
      [1, "Hip first", "given"],
    ]);
    expect(await roundRow()).toMatchObject({ state: "sent", dueAtMs: null, sentAtMs: academy.clock.ms });
    expect(await academy.db.select().from(draftTable)).toEqual([]);
    const kinds = (await academy.db.select().from(roundEvent)).map((event) => event.kind);
    expect(kinds).toEqual(["received", "sent"]);
  });

  it("tells the guardian with the generated recap, numbered as the delivery runs", async () => {
    await sendReview(academy, roundId, full());
    const told = await academy.db.select().from(notice);
    expect(told.map((each) => each.toPersonId)).toEqual([WHO.guardian]);
    expect(told[0]?.subject).toBe("The review for Kit is here: 2 corrections");
    expect(told[0]?.body).toContain(
      "Work on 2 corrections:\n1. Gaze level and on the plate (wind-up): Eyes up.",
    );
    expect(told[0]?.body).toContain(`/family/${WHO.child.athleteId}/rounds/${roundId}`);
  });

  it("charges the review once under the rate of the day", async () => {
    const reviewId = await sendReview(academy, roundId, full());
    expect(await academy.db.select().from(charge)).toMatchObject([
      { kind: "review", reviewId, amountCents: 3500, chargedOn: "2026-11-25", coachPersonId: WHO.coach },
    ]);
  });

  it("asks for a reply from the arm's first free day, not before", async () => {
    await academy.db.insert(throwEntry).values({
      id: "thr_1",
      athleteId: WHO.child.athleteId,
      thrownOn: "2026-11-24",
      kind: "game",
      pitches: 51,
      reportedByPersonId: WHO.guardian,
      reportedAtMs: academy.clock.ms,
    });
    await sendReview(academy, roundId, full());
    expect(await roundRow()).toMatchObject({ replyFrom: "2026-11-28", lapsesOn: "2026-12-17" });
  });

  it("asks for none while pain stops the arm", async () => {
    await academy.db.insert(painReport).values({
      id: "pain_1",
      athleteId: WHO.child.athleteId,
      kind: "pain",
      feltOn: "2026-11-24",
      reportedByPersonId: WHO.guardian,
      reportedAtMs: academy.clock.ms,
    });
    await sendReview(academy, roundId, full());
    expect(await roundRow()).toMatchObject({ replyFrom: null, lapsesOn: null });
    const { reply } = await (await academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(reply).toMatchObject({ isWanted: true, isOpen: false });
  });

  it("refuses what is not ready, writes nothing and lists all that is missing", async () => {
    const version = await save(academy, roundId, {
      kind: "review",
      document: review({
        corrections: [onClip({ cue: " " }), onClip({ id: "c2", frame: 180 })],
        judgements: [{ checkpointId: "closed-start", clipId, frame: 3, score: 2 }],
      }),
    });
    const caller = await coach();
    const why = await refused(academy, () => caller.reviews.send({ roundId, version }));
    expect(why).toEqual({
      reason: "draft_incomplete",
      missing: [
        "write the cue of correction 1",
        "frame 181 is marked on a clip of 180 frames",
        "Feet and front shoulder closed at the start cannot be judged from the open side",
        "leave one correction on Hips lead: the draft has several",
      ],
    });
  });

  it("refuses to send a draft that is another by now, and one that is not there", async () => {
    const caller = await coach();
    const version = await save(academy, roundId, { kind: "review", document: full() });
    const stale = await refused(academy, () => caller.reviews.send({ roundId, version: version - 1 }));
    expect(stale).toEqual({ reason: "changed_meanwhile" });
    await caller.reviews.send({ roundId, version });
    const again = await refused(academy, () => caller.reviews.send({ roundId, version }));
    expect(again).toEqual({ reason: "round_state", action: "reviewed", state: "sent" });
  });

  it("refuses without a rate for reviews and writes nothing", async () => {
    await academy.db.update(rate).set({ effectiveFrom: "2026-11-26" }).where(eq(rate.kind, "review"));
    const version = await save(academy, roundId, { kind: "review", document: full() });
    const caller = await coach();
    const why = await refused(academy, () => caller.reviews.send({ roundId, version }));
    expect(why).toEqual({ reason: "no_rate", kind: "review", day: "2026-11-25" });
  });

  it("takes a review of keeps alone, and such a round is settled without a reply", async () => {
    await sendReview(academy, roundId, review({ corrections: [], keeps: [keep()] }));
    await (await coach()).reviews.settle({ roundId, version: 0 });
    expect(await roundRow()).toMatchObject({ state: "settled", settledAtMs: academy.clock.ms });
  });

  it("is answered the same way again under the same request, and happens once", async () => {
    const version = await save(academy, roundId, { kind: "review", document: full() });
    const caller = await academy.as(WHO.coach, "7d0a1a8e-0000-4000-8000-000000000001");
    const first = await caller.reviews.send({ roundId, version });
    expect(await caller.reviews.send({ roundId, version })).toEqual(first);
    expect(await academy.db.select().from(charge)).toHaveLength(1);
  });
});
