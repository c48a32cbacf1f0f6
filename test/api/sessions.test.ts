import { beforeEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { claim } from "@/db/schema/sessions";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { at, bullpen, expectRefused, TUESDAY_AT_FIVE, throwOn } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const book = async (over: Parameters<typeof bullpen>[0] = {}, by: string = WHO.guardian) =>
  (await academy.as(by)).sessions.book(bullpen(over));

const expectRefusal = (call: () => Promise<unknown>, detail: object) => expectRefused(academy, call, detail);

describe("moving and cancelling", () => {
  it("moves what is claimed along, and tells of it", async () => {
    const { sessionId } = await book();
    const { roundId: _, correctionIds: __, ...place } = bullpen({ startsAtMs: at("2026-12-02", 1080) });
    await (await academy.as(WHO.guardian)).sessions.move({ ...place, sessionId, version: 1 });
    const claims = await academy.db.select().from(claim);
    expect(new Set(claims.map((row) => row.startsAtMs))).toEqual(new Set([at("2026-12-02", 1080)]));
    expect(claims).toHaveLength(3);
    const kinds = (await academy.db.select().from(notice)).map((row) => row.kind);
    expect(kinds.filter((kind) => kind === "session_moved")).toHaveLength(2);
  });

  it("tells the coach it is taken from as well as the coach it goes to", async () => {
    const { sessionId } = await book();
    const { roundId: _, correctionIds: __, ...place } = bullpen({ coachPersonId: WHO.otherCoach });
    await (await academy.as(WHO.admin)).sessions.move({ ...place, sessionId, version: 1 });
    const told = (await academy.db.select().from(notice)).filter((row) => row.kind === "session_moved");
    expect(told.map((row) => row.toPersonId).sort()).toEqual(
      [WHO.coach, WHO.guardian, WHO.otherCoach].sort(),
    );
    const former = told.find((row) => row.toPersonId === WHO.coach);
    expect(former?.body).toContain("with Dana Field.");
    expect(former?.body).toContain("with Cole Rivers. You need do nothing.");
  });

  it("refuses to move over somebody else's change, to a taken time, or what was cancelled; nothing is written", async () => {
    const { sessionId } = await book();
    const teen = [{ athleteId: WHO.teen.athleteId, plannedPitches: 10 }];
    await book({ startsAtMs: at("2026-12-02", 1080), athletes: teen });
    const guardian = await academy.as(WHO.guardian);
    const { roundId: _, correctionIds: __, ...place } = bullpen({ startsAtMs: at("2026-12-02", 1080) });
    await expectRefusal(() => guardian.sessions.move({ ...place, sessionId, version: 1 }), {
      reason: "time_taken",
      what: "coach",
    });
    const free = { ...place, startsAtMs: at("2026-12-02", 1140), sessionId };
    await expectRefusal(() => guardian.sessions.move({ ...free, version: 7 }), {
      reason: "changed_meanwhile",
    });
    await guardian.sessions.cancel({ sessionId, version: 1, reason: "Ill." });
    await expectRefusal(() => guardian.sessions.move({ ...free, version: 2 }), {
      reason: "session_state",
      state: "cancelled",
    });
  });

  it("plans a session anew where it is, without mound throws, once a later game took its room", async () => {
    const { sessionId } = await book();
    await throwOn(academy, WHO.child.athleteId, "2026-11-29", 51);
    const { roundId: _, correctionIds: __, ...place } = bullpen();
    const coach = await academy.as(WHO.coach);
    const same = { ...place, sessionId, version: 1 };
    await expectRefusal(() => coach.sessions.move(same), {
      reason: "arm_resting",
      firstFreeDay: "2026-12-03",
      dryWorkFits: true,
    });
    const none = [{ athleteId: WHO.child.athleteId, plannedPitches: 0 }];
    await coach.sessions.move({ ...same, kind: "dry_work", athletes: none });
    const seen = await coach.sessions.forStaff({ sessionId });
    expect(seen.head).toMatchObject({ kind: "dry_work", startsAtMs: TUESDAY_AT_FIVE, version: 2 });
    expect(seen.athletes[0]).toMatchObject({ plannedPitches: 0, now: null });
  });

  it("gives the time back when it is cancelled, and says why to everybody", async () => {
    const { sessionId } = await book();
    await (await academy.as(WHO.coach)).sessions.cancel({ sessionId, version: 1, reason: "The roof leaks." });
    expect(await academy.db.select().from(claim)).toHaveLength(0);
    const told = (await academy.db.select().from(notice)).filter((row) => row.kind === "session_cancelled");
    expect(told.map((row) => row.toPersonId)).toEqual([WHO.guardian]);
    expect(told[0]?.body).toContain("The roof leaks.");
    await book();
  });

  it("lets one family give up its place without ending the others' session", async () => {
    const { sessionId } = await book(
      {
        kind: "group",
        secondAdult: null,
        athletes: [WHO.child, WHO.stranger].map(({ athleteId }) => ({ athleteId, plannedPitches: 10 })),
      },
      WHO.coach,
    );
    const guardian = await academy.as(WHO.guardian);
    const reason = "A birthday.";
    await expectRefusal(() => guardian.sessions.cancel({ sessionId, version: 1, reason }), {
      reason: "not_found",
    });
    await guardian.sessions.giveUpPlace({ sessionId, athleteId: WHO.child.athleteId, version: 1, reason });
    const left = await (await academy.as(WHO.coach)).sessions.forStaff({ sessionId });
    expect([left.head.state, left.athletes.map((one) => one.athleteId)]).toEqual([
      "booked",
      [WHO.stranger.athleteId],
    ]);
    expect(await academy.db.select().from(claim)).toHaveLength(3);
    const told = (await academy.db.select().from(notice)).filter((row) => row.kind === "session_cancelled");
    expect(told.map((row) => row.toPersonId)).toEqual([WHO.guardian, WHO.coach]);
  });
});

describe("what a family sees", () => {
  it("is their own athlete's session, without a word of who else comes", async () => {
    const { sessionId } = await book(
      {
        kind: "group",
        secondAdult: null,
        athletes: [WHO.child, WHO.stranger].map(({ athleteId }) => ({ athleteId, plannedPitches: 10 })),
      },
      WHO.coach,
    );
    const guardian = await academy.as(WHO.guardian);
    const seen = await guardian.sessions.forFamily({ sessionId, athleteId: WHO.child.athleteId });
    expect(seen.others).toBe(1);
    expect(JSON.stringify(seen)).not.toMatch(/Pip|Stone|stranger/);
    await expectRefusal(() => guardian.sessions.forFamily({ sessionId, athleteId: WHO.stranger.athleteId }), {
      reason: "not_found",
    });
    await expectRefusal(() => guardian.sessions.forStaff({ sessionId }), { reason: "not_found" });
    const coming = await guardian.sessions.coming({ athleteId: WHO.child.athleteId });
    expect([coming.mayBook, coming.sessions.length]).toEqual([true, 1]);
    const teen = await academy.as(WHO.teen.personId);
    expect((await teen.sessions.coming({ athleteId: WHO.teen.athleteId })).mayBook).toBe(false);
  });
});
