import { beforeEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { refused, sendReview, takenRound } from "../helpers/review-desk";
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

describe("what the family reads", () => {
  it("opens each correction on its frame, with keeps, addenda and when a reply is asked for", async () => {
    const reviewId = await sendReview(academy, roundId, review({ corrections: [onClip()], keeps: [keep()] }));
    await (await coach()).reviews.addAddendum({ reviewId, text: "And breathe." });
    const read = await (await academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(read.corrections).toMatchObject([
      { cue: "Hip first", clipId, frame: 143, state: "given", tickableDays: ["2026-11-25"] },
    ]);
    expect(read.sent[0]).toMatchObject({
      kind: "review",
      coachName: "Cole Rivers",
      keeps: [{ text: "Quiet start" }],
      addenda: [{ text: "And breathe.", coachName: "Cole Rivers" }],
    });
    expect(read.reply).toEqual({ isWanted: true, isOpen: true, words: "Please send it by Wed 16 Dec." });
    expect(read.clips[0]?.frameTimesMs).toHaveLength(180);
    const kinds = (await academy.db.select().from(notice)).map((each) => each.kind);
    expect(kinds).toEqual(["review_sent", "addendum_sent"]);
  });

  it("is theirs alone: other families and the athlete's peers find nothing", async () => {
    for (const personId of [WHO.otherGuardian, WHO.adult.personId, WHO.teen.personId]) {
      const caller = await academy.as(personId);
      expect(await refused(academy, () => caller.reviews.read({ roundId }))).toEqual({ reason: "not_found" });
      expect(await refused(academy, () => caller.reviews.room({ roundId }))).toEqual({ reason: "not_found" });
    }
    const nobody = await academy.as(null);
    expect(await refused(academy, () => nobody.reviews.read({ roundId }))).toEqual({
      reason: "not_signed_in",
    });
  });

  it("lists the rounds of the athlete, the latest first, with what is open of each", async () => {
    await sendReview(academy, roundId, review({ corrections: [onClip()] }));
    academy.clock.ms += 1000;
    await takenRound(academy, "rnd_2");
    const list = await (await academy.as(WHO.guardian)).reviews.list({ athleteId: WHO.child.athleteId });
    expect(list.rounds).toMatchObject([
      { id: "rnd_2", state: "taken", givenCount: 0, openCount: 0, coachName: "Cole Rivers" },
      { id: roundId, state: "sent", givenCount: 1, openCount: 1 },
    ]);
  });

  it("never takes a family's word for a coach's", async () => {
    for (const personId of [WHO.guardian, WHO.admin]) {
      const caller = await academy.as(personId);
      const calls = [
        () => caller.reviews.saveDraft({ kind: "review", roundId, version: 0, document: review() }),
        () => caller.reviews.send({ roundId, version: 1 }),
        () => caller.reviews.settle({ roundId, version: 1 }),
      ];
      for (const call of calls) expect(await refused(academy, call)).toEqual({ reason: "not_found" });
    }
  });
});
