import { beforeEach, describe, expect, it } from "vitest";
import { drawnMark, measurement } from "@/db/schema/mechanics";
import { remark } from "@/db/schema/people";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { finish, knee, levelMark, noteMark, spread } from "../helpers/measures";
import { addClip, answer, refused, save, sendReview, takenRound } from "../helpers/review-desk";
import { check, correction, keep, review, verdict } from "../helpers/review-drafts";

let academy: TestAcademy;
let roundId: string;
let clipId: string;

beforeEach(async () => {
  academy = await makeAcademy();
  ({ roundId, clipId } = await takenRound(academy));
});

const coach = () => academy.as(WHO.coach);
const measured = () =>
  review({
    corrections: [correction({ clipId })],
    measures: [knee({ clipId })],
    marks: [levelMark({ clipId }), noteMark({ clipId })],
  });

describe("measures and marks of a review that is sent", () => {
  it("are written with the value the server computes, for good, and a note's words apart", async () => {
    const reviewId = await sendReview(academy, roundId, measured());
    const rows = await academy.db.select().from(measurement);
    expect(rows).toMatchObject([
      {
        ...{
          reviewId,
          clipId,
          athleteId: WHO.child.athleteId,
          kind: "front_knee_flexion",
          view: "open_side",
        },
        ...{ frame: 108, repeatOfId: null, coachPersonId: WHO.coach, measuredOn: "2026-11-25" },
      },
    ]);
    expect(rows[0]?.value).toBeCloseTo(40, 6);
    const marks = await academy.db.select().from(drawnMark);
    expect(marks.map((mark) => [mark.guide, mark.position])).toEqual([
      ["level", 0],
      ["note", 1],
    ]);
    expect((await academy.db.select().from(remark)).map((row) => row.text)).toEqual(["Glove here"]);
    for (const table of ["measurement", "drawn_mark"]) {
      expect(() => academy.sqlite.prepare(`UPDATE ${table} SET frame = 1`).run()).toThrow(/append_only/);
      expect(() => academy.sqlite.prepare(`DELETE FROM ${table}`).run()).toThrow(/append_only/);
    }
  });

  it("are read by the coach and the family at their frames, and not before they are sent", async () => {
    const version = await save(academy, roundId, { kind: "review", document: measured() });
    const before = await (await coach()).reviews.room({ roundId });
    expect([before.measurements, before.marks, before.measureErrors]).toEqual([[], [], []]);
    await (await coach()).reviews.send({ roundId, version });
    const family = await academy.as(WHO.guardian);
    for (const read of [
      await (await coach()).reviews.room({ roundId }),
      await family.reviews.read({ roundId }),
    ]) {
      expect(read.measurements).toMatchObject([
        { clipId, frame: 108, kind: "front_knee_flexion", view: "open_side" },
      ]);
      expect(read.measurements[0]?.points).toEqual(knee().points);
      expect(read.marks).toMatchObject([
        { clipId, guide: "level", frame: 108, untilFrame: null, text: "" },
        { clipId, guide: "note", frame: 100, untilFrame: 110, text: "Glove here" },
      ]);
    }
  });

  it("draws a note without words once its words are erased", async () => {
    await sendReview(academy, roundId, measured());
    academy.sqlite.prepare("UPDATE remark SET text = ''").run();
    const { marks } = await (await academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(marks.map((mark) => mark.text)).toEqual(["", ""]);
  });

  it("are taken from every view that can show them, and refused from every other, with nothing written", async () => {
    const end = await addClip(academy, roundId, "first", WHO.child.athleteId, "back");
    const document = review({
      keeps: [keep()],
      corrections: [],
      measures: [spread("stride_length", clipId), spread("shoulder_tilt", end), spread("head_travel", end)],
    });
    const wrong = { ...document, measures: [...document.measures, spread("trunk_tilt_side", clipId)] };
    const version = await save(academy, roundId, { kind: "review", document: wrong });
    const sending = async () => (await coach()).reviews.send({ roundId, version });
    expect(await refused(academy, sending)).toMatchObject({
      reason: "draft_incomplete",
      missing: [expect.stringMatching(/trunk tilt sideways is measured from the front or the back/)],
    });
    const next = await save(academy, roundId, { kind: "review", document }, version);
    await (await coach()).reviews.send({ roundId, version: next });
    expect(await academy.db.select().from(measurement)).toHaveLength(3);
  });

  it("tell a held finish only once somebody has said how fast the clip was recorded", async () => {
    const document = review({ keeps: [keep()], corrections: [], measures: [finish({ clipId })] });
    const version = await save(academy, roundId, { kind: "review", document });
    const sending = async () => (await coach()).reviews.send({ roundId, version });
    expect(await refused(academy, sending)).toMatchObject({ reason: "draft_incomplete" });
    academy.sqlite.prepare("UPDATE clip SET captured_fps = 240").run();
    await sending();
    expect((await academy.db.select().from(measurement))[0]?.value).toBeCloseTo(125, 3);
  });

  it("are refused under a checkpoint there is not", async () => {
    const marks = [levelMark({ clipId, checkpointId: "nowhere" })];
    const document = review({ keeps: [keep()], corrections: [], marks });
    const version = await save(academy, roundId, { kind: "review", document });
    const sending = async () => (await coach()).reviews.send({ roundId, version });
    expect(await refused(academy, sending)).toMatchObject({
      missing: ["a checkpoint is named that there is not"],
    });
  });
});

describe("measures and marks of a check", () => {
  it("are written when the round is settled, on the new clip", async () => {
    await sendReview(academy, roundId, review({ corrections: [correction({ clipId })] }));
    const newClip = await answer(academy, roundId);
    const [given] = (await (await coach()).reviews.room({ roundId })).corrections;
    const document = check({
      verdicts: [verdict(given?.id ?? "")],
      measures: [knee({ clipId: newClip })],
      marks: [levelMark({ clipId: newClip })],
    });
    const wrong = { ...document, measures: [spread("shoulder_tilt", newClip)] };
    const version = await save(academy, roundId, { kind: "check", document: wrong });
    const settling = async () => (await coach()).reviews.settle({ roundId, version });
    expect(await refused(academy, settling)).toMatchObject({ reason: "draft_incomplete" });
    const next = await save(academy, roundId, { kind: "check", document }, version);
    await (await coach()).reviews.settle({ roundId, version: next });
    expect(await academy.db.select().from(measurement)).toMatchObject([{ clipId: newClip }]);
    expect(await academy.db.select().from(drawnMark)).toMatchObject([{ clipId: newClip, guide: "level" }]);
  });
});
