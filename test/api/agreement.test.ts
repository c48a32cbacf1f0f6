import { beforeEach, describe, expect, it } from "vitest";
import { blindItem, blindSet } from "@/db/schema/mechanics";
import { appendConsent } from "@/server/data/consents";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { drawn, itemIds, judge, placedKnee, reviewedFrames } from "../helpers/blind-desk";
import { refused } from "../helpers/review-desk";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
  await reviewedFrames(academy);
});

const as = (personId: string) => academy.as(personId);
const acts = (action: string) =>
  academy.sqlite.prepare("SELECT actor_person_id FROM audit_log WHERE action = ?").pluck().all(action);

describe("drawing a set", () => {
  it("takes frames that reviews marked, spread over athletes, and puts it on every coach's list", async () => {
    const setId = await drawn(academy);
    const rows = (await academy.db.select().from(blindItem)).filter((row) => row.setId === setId);
    expect(rows).toHaveLength(6);
    expect(new Set(rows.map(({ athleteId }) => athleteId)).size).toBe(4);
    expect(new Set(rows.map(({ clipId }) => clipId)).size).toBe(6);
    for (const row of rows) expect(row).toMatchObject({ frame: 108, view: "open_side", kind: "judgement" });
    const { isCoach, isAdmin, sets } = await (await as(WHO.coach)).agreement.sets({});
    expect([isCoach, isAdmin]).toEqual([true, false]);
    expect(sets).toMatchObject([
      { id: setId, name: "Front knee", way: "judge", items: 6, finished: 0, begun: 0, rated: 0 },
    ]);
    expect(acts("agreement.drawn")).toEqual([WHO.admin]);
  });

  it("says how many frames there are, without those whose film is gone or whose consent was withdrawn", async () => {
    const admin = await as(WHO.admin);
    const counted = async () =>
      (await admin.agreement.pool({})).counts
        .filter(({ checkpointId }) => checkpointId === "front-knee-bent")
        .map(({ way, view, frames }) => [way, view, frames]);
    expect(await counted()).toEqual([
      ["judge", "open_side", 8],
      ["measure", "open_side", 8],
    ]);
    academy.sqlite.prepare("UPDATE clip SET state = 'expired' WHERE id LIKE 'clp_rnd_blind_0%'").run();
    await (await as(WHO.otherGuardian)).consent.decide({
      athleteId: WHO.stranger.athleteId,
      kind: "withdrawn",
    });
    expect(await counted()).toEqual([
      ["judge", "open_side", 5],
      ["measure", "open_side", 5],
    ]);
  });

  it("is refused where too few frames are there, with how many, and for a checkpoint that is none", async () => {
    const admin = await as(WHO.admin);
    const asked = { name: "Many", way: "judge", view: "open_side", frames: 9 } as const;
    const drawing = (checkpointIds: string[]) => () => admin.agreement.draw({ ...asked, checkpointIds });
    expect(await refused(academy, drawing(["front-knee-bent"]))).toEqual({
      ...{ reason: "too_few_frames", asked: 9, there: 8 },
    });
    expect(await refused(academy, drawing(["no-such-thing"]))).toMatchObject({ reason: "not_found" });
  });

  it("is an admin's alone, as closing is; nobody of a family sees a set", async () => {
    const setId = await drawn(academy);
    for (const personId of [WHO.coach, WHO.guardian]) {
      const who = await as(personId);
      const input = { name: "Mine", way: "judge", view: "open_side", frames: 5 } as const;
      for (const call of [
        () => who.agreement.pool({}),
        () => who.agreement.draw({ ...input, checkpointIds: ["front-knee-bent"] }),
        () => who.agreement.close({ setId }),
      ]) {
        expect(await refused(academy, call)).toMatchObject({ reason: "not_found" });
      }
    }
    const family = await as(WHO.guardian);
    const [itemId = ""] = await itemIds(academy, setId);
    for (const call of [
      () => family.agreement.sets({}),
      () => family.agreement.set({ setId }),
      () => family.agreement.next({ setId }),
      () => family.agreement.rate({ itemId, answer: { kind: "unseen" } }),
    ]) {
      expect(await refused(academy, call)).toMatchObject({ reason: "not_found" });
    }
  });
});

describe("rating a frame", () => {
  it("shows it without whose it is, of which day, or what was said of it", async () => {
    const setId = await drawn(academy, { way: "measure" });
    const next = await (await as(WHO.coach)).agreement.next({ setId });
    expect(next).toMatchObject({ of: 6, rated: 0, gone: 0, item: { kind: "front_knee_flexion" } });
    expect(next.item?.frames).toEqual({ here: 108 });
    const told = JSON.stringify(next);
    expect(told).not.toMatch(/ath_|per_|rnd_blind_\d"|2026-|2027-|"points"|"value"|filmedOn|note|pitchType/);
    const names = academy.sqlite.prepare("SELECT given_name, family_name FROM person").raw().all();
    for (const name of names.flat() as string[]) expect(told).not.toContain(name);
  });

  it("goes on where it was left, to the end", async () => {
    const setId = await drawn(academy, { frames: 5 });
    await judge(academy, WHO.coach, setId, [2, 0, null]);
    const ids = await itemIds(academy, setId);
    const next = await (await as(WHO.coach)).agreement.next({ setId });
    expect([next.rated, next.item?.id]).toEqual([3, ids[3]]);
    await judge(academy, WHO.coach, setId, [1, 3]);
    expect(await (await as(WHO.coach)).agreement.next({ setId })).toMatchObject({ rated: 5, item: null });
    const other = await (await as(WHO.otherCoach)).agreement.next({ setId });
    expect([other.rated, other.item?.id]).toEqual([0, ids[0]]);
  });

  it("is refused a second time: the first answer counts", async () => {
    const setId = await drawn(academy);
    const [itemId = ""] = await itemIds(academy, setId);
    await judge(academy, WHO.coach, setId, [2]);
    const again = async () =>
      (await as(WHO.coach)).agreement.rate({ itemId, answer: { kind: "judged", score: 3 } });
    expect(await refused(academy, again)).toMatchObject({ reason: "rated_before" });
  });

  it("measures points on the frames the measure was taken on, and refuses points that give no value", async () => {
    const setId = await drawn(academy, { way: "measure" });
    const [itemId = "", second = ""] = await itemIds(academy, setId);
    const coach = await as(WHO.coach);
    await coach.agreement.rate({ itemId, answer: placedKnee(43) });
    const value = academy.sqlite.prepare("SELECT value FROM blind_rating").pluck().get();
    expect(value).toBeCloseTo(43, 6);
    const points = [1, 2, 3].map(() => ({ x: 5, y: 5 }));
    const answer = { kind: "placed" as const, points, untilFrame: null };
    const placing = () => coach.agreement.rate({ itemId: second, answer });
    expect(await refused(academy, placing)).toMatchObject({ reason: "measure_invalid" });
    const judging = () => coach.agreement.rate({ itemId: second, answer: { kind: "judged", score: 1 } });
    expect(await refused(academy, judging)).toMatchObject({ reason: "not_found" });
  });

  it("leaves out what cannot be shown any more, and says how many", async () => {
    const setId = await drawn(academy);
    const [itemId = ""] = await itemIds(academy, setId);
    academy.sqlite
      .prepare("UPDATE clip SET state = 'expired' WHERE id = (SELECT clip_id FROM blind_item WHERE id = ?)")
      .run(itemId);
    const coach = await as(WHO.coach);
    const next = await coach.agreement.next({ setId });
    expect([next.gone, next.item?.id === itemId]).toEqual([1, false]);
    const rating = () => coach.agreement.rate({ itemId, answer: { kind: "unseen" } });
    expect(await refused(academy, rating)).toMatchObject({ reason: "clip_not_kept" });
    const atMs = academy.clock.ms;
    const withdrawal = { personId: WHO.guardian, purpose: "video", kind: "withdrawn", atMs } as const;
    for (const { athleteId } of [WHO.child, WHO.teen, WHO.adult, WHO.stranger]) {
      await appendConsent(academy.db, { ...withdrawal, athleteId });
    }
    expect(await coach.agreement.next({ setId })).toMatchObject({ gone: 6, item: null });
  });
});

describe("closing a set", () => {
  it("ends the rating, is written down, and is done once", async () => {
    const setId = await drawn(academy);
    const [itemId = ""] = await itemIds(academy, setId);
    const admin = await as(WHO.admin);
    await admin.agreement.close({ setId });
    expect(await academy.db.select().from(blindSet)).toMatchObject([{ closedAtMs: academy.clock.ms }]);
    expect(acts("agreement.closed")).toEqual([WHO.admin]);
    const rating = async () =>
      (await as(WHO.coach)).agreement.rate({ itemId, answer: { kind: "judged", score: 2 } });
    expect(await refused(academy, rating)).toMatchObject({ reason: "blind_set_closed" });
    expect(await refused(academy, () => admin.agreement.close({ setId }))).toMatchObject({
      reason: "blind_set_closed",
    });
    const next = await (await as(WHO.coach)).agreement.next({ setId });
    expect(next).toMatchObject({ set: { isClosed: true }, item: null });
  });

  it("tells how far coaches agree, and where they differ", async () => {
    const setId = await drawn(academy);
    await judge(academy, WHO.coach, setId, [0, 1, 2, 3, 1, 2]);
    await judge(academy, WHO.otherCoach, setId, [0, 1, 2, 3, 1, 0]);
    await (await as(WHO.admin)).agreement.close({ setId });
    const { results } = await (await as(WHO.coach)).agreement.set({ setId });
    const [found] = results?.kinds ?? [];
    /* By hand: disagreement weights are squares; of 6 pairs one lies 2 apart. */
    expect(found?.pairs).toMatchObject([{ items: 6, coaches: [WHO.coach, WHO.otherCoach] }]);
    expect(found?.pairs?.[0]?.words).toMatch(/the same step on 5 of 6 frames/);
    expect(found?.itemsApart).toMatchObject([{ position: 5, apart: 2, frame: 108 }]);
    expect(found?.itemsApart[0]?.at?.roundId).toMatch(/^rnd_blind_/);
    expect(found?.byCoach.map(({ offset }) => offset)).toEqual([
      expect.closeTo(1 / 3, 9),
      expect.closeTo(-1 / 3, 9),
    ]);
  });
});
