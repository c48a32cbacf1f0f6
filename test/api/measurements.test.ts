import { beforeEach, describe, expect, it } from "vitest";
import { measurement, remeasureRequest } from "@/db/schema/mechanics";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { finish, knee, kneePoints } from "../helpers/measures";
import { addClip, refused, sendReview, takenRound } from "../helpers/review-desk";
import { keep, review } from "../helpers/review-drafts";

let academy: TestAcademy;
let clipId: string;
let measurementId: string;

beforeEach(async () => {
  academy = await makeAcademy();
  const taken = await takenRound(academy);
  ({ clipId } = taken);
  academy.sqlite.prepare("UPDATE clip SET captured_fps = 240").run();
  const measures = [knee({ clipId }), finish({ clipId })];
  await sendReview(academy, taken.roundId, review({ keeps: [keep()], corrections: [], measures }));
  measurementId = (await sentIds())[0] ?? "";
});

const sentIds = async () => (await academy.db.select().from(measurement)).map((row) => row.id);
const coach = () => academy.as(WHO.coach);
const placed = (flexionDeg: number) => kneePoints(flexionDeg).map(({ x, y }) => ({ x, y }));

/** Asks for a second measure and gives its request's id. */
async function asked(forPersonId: string | null = null, of = measurementId): Promise<string> {
  await (await coach()).measurements.askAgain({ measurementId: of, forPersonId });
  const rows = await academy.db.select().from(remeasureRequest);
  return rows.findLast((row) => row.measurementId === of && row.doneAtMs === null)?.id ?? "";
}

describe("asking for a second measure", () => {
  it("puts the frame on the list of the coach it is asked of, and of who asked, who can take it back", async () => {
    const requestId = await asked(WHO.otherCoach);
    const theirs = await (await academy.as(WHO.otherCoach)).measurements.again({});
    expect(theirs.waiting).toEqual([
      {
        ...{ requestId, kind: "front_knee_flexion", view: "open_side", frame: 108, isForMe: true },
        ...{ askedOf: expect.stringMatching(/\S/), mayWithdraw: false },
        athleteName: expect.stringContaining("Kit"),
      },
    ]);
    const own = await (await coach()).measurements.again({});
    expect(own.waiting).toMatchObject([{ requestId, isForMe: false, mayWithdraw: true }]);
    expect(theirs.latest.find((row) => row.id === measurementId)).toMatchObject({
      isAsked: true,
      timesAgain: 0,
    });
  });

  it("of whoever comes first puts it on every coach's list, one's own too", async () => {
    await asked();
    for (const personId of [WHO.coach, WHO.otherCoach]) {
      const { waiting } = await (await academy.as(personId)).measurements.again({});
      expect(waiting).toMatchObject([{ isForMe: false }]);
    }
  });

  it("asked twice of the same coach, stays one", async () => {
    await asked(WHO.coach);
    await asked(WHO.coach);
    expect(await academy.db.select().from(remeasureRequest)).toHaveLength(1);
  });

  it("is not asked of somebody who is no coach", async () => {
    const asking = async () =>
      (await coach()).measurements.askAgain({ measurementId, forPersonId: WHO.guardian });
    expect(await refused(academy, asking)).toMatchObject({ reason: "not_found" });
  });

  it("is neither asked nor seen by the family", async () => {
    const family = await academy.as(WHO.guardian);
    const requestId = await asked();
    for (const call of [
      () => family.measurements.askAgain({ measurementId, forPersonId: null }),
      () => family.measurements.again({}),
      () => family.measurements.blind({ requestId }),
      () => family.measurements.measureAgain({ requestId, points: placed(41), untilFrame: null }),
    ]) {
      expect(await refused(academy, call)).toMatchObject({ reason: "not_found" });
    }
  });

  it("is off the list once the film is gone", async () => {
    const requestId = await asked();
    academy.sqlite.prepare("UPDATE clip SET state = 'expired'").run();
    const list = await (await coach()).measurements.again({});
    expect([list.waiting, list.latest]).toEqual([[], []]);
    const looking = async () => (await coach()).measurements.blind({ requestId });
    expect(await refused(academy, looking)).toMatchObject({ reason: "clip_not_kept" });
  });
});

describe("measuring again", () => {
  it("tells neither points nor value before it is done, and both values after", async () => {
    const requestId = await asked();
    const list = await (await coach()).measurements.again({});
    const blind = await (await coach()).measurements.blind({ requestId });
    expect(blind).toMatchObject({
      kind: "front_knee_flexion",
      frame: 108,
      frames: { here: 108 },
      clip: { id: clipId },
    });
    const told = JSON.stringify({ ...blind, clip: null, list });
    expect(told).not.toMatch(/"value"|"points"|"first"/);
    academy.clock.ms += 60_000;
    const answer = await (await coach()).measurements.measureAgain({
      requestId,
      points: placed(43),
      untilFrame: null,
    });
    expect(answer.kind).toBe("front_knee_flexion");
    expect([answer.first, answer.again].map((value) => Math.round(value * 1000) / 1000)).toEqual([40, 43]);
    const rows = await academy.db.select().from(measurement);
    expect(rows.find((row) => row.repeatOfId !== null)).toMatchObject({
      ...{ repeatOfId: measurementId, reviewId: null, clipId, frame: 108, view: "open_side" },
      ...{ checkpointId: "front-knee-bent", coachPersonId: WHO.coach, atMs: academy.clock.ms },
    });
    expect((await (await coach()).measurements.again({})).waiting).toEqual([]);
  });

  it("is not shown to the family: what was sent stays what was sent", async () => {
    const requestId = await asked();
    await (await coach()).measurements.measureAgain({ requestId, points: placed(43), untilFrame: null });
    const read = await (await academy.as(WHO.guardian)).reviews.read({ roundId: "rnd_1" });
    expect(read.measurements.map((row) => row.id)).toEqual(await sentIds().then((ids) => ids.slice(0, 2)));
  });

  it("times a held finish by its own last frame", async () => {
    const requestId = await asked(null, (await sentIds())[1]);
    expect(await (await coach()).measurements.blind({ requestId })).toMatchObject({ kind: "finish_hold" });
    const answer = await (await coach()).measurements.measureAgain({
      requestId,
      points: [],
      untilFrame: 168,
    });
    expect(answer.first).toBeCloseTo(125, 3);
    expect(answer.again).toBeCloseTo(100, 3);
  });

  it.each([
    ["too few points", placed(43).slice(1), "Place every point."],
    ["points on one place", [1, 2, 3].map(() => ({ x: 5, y: 5 })), /one place/],
  ])("is refused with %s, and writes nothing", async (_, points, why) => {
    const requestId = await asked();
    const call = async () =>
      (await coach()).measurements.measureAgain({ requestId, points, untilFrame: null });
    const wanted = typeof why === "string" ? why : expect.stringMatching(why);
    expect(await refused(academy, call)).toMatchObject({ reason: "measure_invalid", why: wanted });
  });

  it("is refused a second time, and to another coach than the one asked", async () => {
    const requestId = await asked(WHO.coach);
    const answer = { requestId, points: placed(43), untilFrame: null };
    const other = async () => (await academy.as(WHO.otherCoach)).measurements.measureAgain(answer);
    expect(await refused(academy, other)).toMatchObject({ reason: "not_found" });
    await (await coach()).measurements.measureAgain(answer);
    const again = async () => (await coach()).measurements.measureAgain({ ...answer, points: placed(44) });
    expect(await refused(academy, again)).toMatchObject({ reason: "changed_meanwhile" });
  });
});

describe("the error of a measure in the academy", () => {
  const error = async () => {
    const { measureErrors } = await (await coach()).measurements.again({});
    return measureErrors.find((each) => each.kind === "front_knee_flexion");
  };

  it("comes of frames that were measured again, however often", async () => {
    expect(await error()).toBeUndefined();
    for (const deg of [42, 44]) {
      const requestId = await asked();
      await (await coach()).measurements.measureAgain({ requestId, points: placed(deg), untilFrame: null });
    }
    const found = await error();
    expect(found?.sameFrame?.withinSd).toBeCloseTo(2, 6);
    expect(found?.sameFrame).toMatchObject({ degreesOfFreedom: 2, isEnough: false });
    expect(found?.sameDay).toBeNull();
  });

  it("comes of three deliveries of one day, measured once each at one moment", async () => {
    const { roundId, clipId: second } = await takenRound(academy, "rnd_2");
    const clips = [second, await addClip(academy, roundId, "reply")];
    const unlike = { checkpointId: "front-knee-firms" };
    const measures = clips.map((id, index) => knee({ id, clipId: id, points: kneePoints(42 + 2 * index) }));
    const twice = measures.map((each) => knee({ ...each, id: `${each.id}b`, points: kneePoints(90) }));
    const other = measures.map((each) =>
      knee({ ...each, ...unlike, id: `${each.id}c`, points: kneePoints(10) }),
    );
    const document = review({
      keeps: [keep()],
      corrections: [],
      measures: [...measures, ...twice, ...other],
    });
    await sendReview(academy, roundId, document);
    const found = await error();
    /* Forty, 42 and 44 at contact; what was measured twice on a clip and what is of another moment stays apart. */
    expect(found?.sameDay?.withinSd).toBeCloseTo(2, 6);
    expect(found?.sameDay?.degreesOfFreedom).toBe(2);
    academy.sqlite.prepare("UPDATE clip SET filmed_on = '2026-11-20' WHERE round_id = 'rnd_1'").run();
    expect((await error())?.sameDay ?? null).toBeNull();
  });
});
