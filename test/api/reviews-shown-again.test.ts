import { beforeEach, describe, expect, it } from "vitest";
import { correction as correctionTable } from "@/db/schema/corrections";
import { notice } from "@/db/schema/notices";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addClip, answer, refused, save, sendReview, settle, takenRound } from "../helpers/review-desk";
import {
  check,
  correction,
  many,
  review,
  shownAgain,
  strideCheckpoint,
  verdict,
} from "../helpers/review-drafts";

let academy: TestAcademy;
let openId: string;
let next: { roundId: string; clipId: string };

/** One correction is open from the first round; a second round of the child is taken an hour later. */
beforeEach(async () => {
  academy = await makeAcademy();
  const first = await takenRound(academy);
  await sendReview(academy, first.roundId, review({ corrections: [correction({ clipId: first.clipId })] }));
  openId = (await academy.db.select().from(correctionTable))[0]?.id ?? "";
  academy.clock.ms += 3_600_000;
  next = await takenRound(academy, "rnd_2");
});

const again = (changes: Parameters<typeof shownAgain>[1] = {}) =>
  shownAgain(openId, { clipId: next.clipId, frame: 90, ...changes });
const only = (rows: ReturnType<typeof again>[]) => review({ corrections: [], shownAgain: rows });
const room = async () => (await academy.as(WHO.coach)).reviews.room({ roundId: next.roundId });
const theOne = async () => (await room()).corrections.find((each) => each.id === openId);

describe("a correction from an earlier round, shown again in a review", () => {
  it("stays the one correction it is, open, with the frame and the word of today on its record", async () => {
    await sendReview(academy, next.roundId, only([again({ note: "A little later now" })]));
    expect(await academy.db.select().from(correctionTable)).toHaveLength(1);
    expect(await theOne()).toMatchObject({
      state: "given",
      frame: 143,
      happenings: [
        { kind: "given", roundId: "rnd_1" },
        { kind: "not_yet", roundId: "rnd_2", clipId: next.clipId, frame: 90, reason: "A little later now" },
      ],
    });
  });

  it("is told to the family beside what is new, and counted apart", async () => {
    const fresh = correction({ id: "new", checkpointId: "gaze-on-plate", phase: "wind_up", cue: "Eyes up" });
    await sendReview(
      academy,
      next.roundId,
      review({ corrections: [{ ...fresh, clipId: next.clipId, frame: 12 }], shownAgain: [again()] }),
    );
    const told = (await academy.db.select().from(notice)).at(-1);
    expect(told?.subject).toBe("The review for Kit is here: 1 correction, 1 still open");
    expect(told?.body).toContain("Go on with what is still open:\n- Hips lead (stride): Hip first.");
    const reading = await (await academy.as(WHO.guardian)).reviews.read({ roundId: next.roundId });
    expect(reading.corrections.map((each) => each.id)).toContain(openId);
  });

  it("that is partly there is showing, and the check of the reply goes on from it", async () => {
    await sendReview(academy, next.roundId, only([again({ verdict: "partly" })]));
    expect(await theOne()).toMatchObject({ state: "showing" });
    academy.clock.ms += 3_600_000;
    await answer(academy, next.roundId);
    await settle(academy, next.roundId, check({ verdicts: [verdict(openId)] }));
    expect(await theOne()).toMatchObject({ state: "showing", yesInARow: 1 });
    const sent = (await room()).sent.map((each) => each.kind);
    expect(sent).toEqual(["review", "check"]);
  });

  it("needs no place among the most that may be open", async () => {
    const four = many(4, (index) =>
      correction({
        id: `n${index}`,
        checkpointId: strideCheckpoint(1 + index),
        clipId: next.clipId,
        frame: index,
      }),
    );
    await sendReview(academy, next.roundId, review({ corrections: four, shownAgain: [again()] }));
    const states = (await academy.db.select().from(correctionTable)).map((row) => row.state);
    expect(states).toEqual(many(5, () => "given"));
  });

  it("is not given a second time: refused by name, nothing is written, and showing it again is what goes through", async () => {
    const twice = review({
      corrections: [correction({ id: "twin", clipId: next.clipId })],
      shownAgain: [again()],
    });
    const at = await save(academy, next.roundId, { kind: "review", document: twice });
    const coach = await academy.as(WHO.coach);
    const send = (version: number) => () => coach.reviews.send({ roundId: next.roundId, version });
    expect(await refused(academy, send(at))).toEqual({
      reason: "draft_incomplete",
      missing: ["leave out the new correction on Hips lead: one is open there already, show that one again"],
    });
    const version = await save(academy, next.roundId, { kind: "review", document: only([again()]) }, at);
    await send(version)();
    expect(await academy.db.select().from(correctionTable)).toHaveLength(1);
  });

  it("may be given anew once it is retired", async () => {
    await (await academy.as(WHO.coach)).reviews.retire({ correctionId: openId, reason: "Another cue" });
    await sendReview(academy, next.roundId, review({ corrections: [correction({ clipId: next.clipId })] }));
    expect(await academy.db.select().from(correctionTable)).toHaveLength(2);
  });

  it("is refused once it is not open any more, or on a clip of another round, and nothing is written", async () => {
    const coach = await academy.as(WHO.coach);
    const strange = await addClip(academy, "rnd_1", "reply");
    const elsewhere = only([again({ clipId: strange })]);
    const at = await save(academy, next.roundId, { kind: "review", document: elsewhere });
    const send = (version: number) => () => coach.reviews.send({ roundId: next.roundId, version });
    expect(await refused(academy, send(at))).toEqual({
      reason: "draft_incomplete",
      missing: ["something is marked on a clip that is not in this round"],
    });
    const version = await save(academy, next.roundId, { kind: "review", document: only([again()]) }, at);
    await coach.reviews.retire({ correctionId: openId, reason: "Not wanted any more" });
    expect(await refused(academy, send(version))).toEqual({
      reason: "draft_incomplete",
      missing: ["leave out what is shown again and is not open any more"],
    });
  });
});
