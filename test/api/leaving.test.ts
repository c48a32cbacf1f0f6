import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { athlete, auditLog } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addWaitingClip, said } from "../helpers/clips";
import { because, refuses } from "../helpers/refuses";
import { takenRound } from "../helpers/review-desk";
import { received, roundEvents, roundRow } from "../helpers/rounds";
import { at, bullpen } from "../helpers/sessions";

const { athleteId } = WHO.child;
const TODAY = "2026-11-25";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});

const leave = async (leftOn: string, version = 1) =>
  (await academy.as(WHO.admin)).families.leave({ athleteId, version, leftOn });
const refusesLeaving = (leftOn: string, refusal: object, version = 1) =>
  refuses(academy, WHO.admin, (api) => api.families.leave({ athleteId, version, leftOn }), refusal);
const theAthlete = async () => (await academy.db.select().from(athlete).where(eq(athlete.id, athleteId)))[0];
const acts = async () =>
  (await academy.db.select().from(auditLog).where(eq(auditLog.subjectId, athleteId))).map((row) => [
    row.action,
    JSON.parse(row.facts),
  ]);
const names = async () =>
  (await (await academy.as(WHO.coach)).athletes.list({})).athletes.map((each) => each.athleteId);

describe("an athlete who leaves", () => {
  it("is gone from the lists from that day on, comes back whole, and both acts are on the record", async () => {
    await leave("2026-11-30");
    expect(await names()).toContain(athleteId);
    academy.clock.ms = at("2026-11-30", 480);
    expect(await names()).not.toContain(athleteId);
    const coach = await academy.as(WHO.coach);
    expect(await coach.athletes.search({ text: "Kit" })).toEqual([]);
    expect((await coach.calendar.whom({})).athletes.map((each) => each.athleteId)).not.toContain(athleteId);
    await (await academy.as(WHO.admin)).families.comeBack({ athleteId, version: 2 });
    expect(await names()).toContain(athleteId);
    expect(await theAthlete()).toMatchObject({ leftOn: null, coachPersonId: WHO.coach, version: 3 });
    expect(await acts()).toEqual([
      ["athlete.left", { leftOn: "2026-11-30", roundsLapsed: 0 }],
      ["athlete.returned", { leftOn: "2026-11-30" }],
    ]);
  });

  it("has nothing booked from that day on: what is booked is named, what comes before may stay", async () => {
    const admin = await academy.as(WHO.admin);
    for (const day of ["2026-12-01", "2026-12-08", "2026-12-15", "2026-12-22"]) {
      const athletes = [{ athleteId, plannedPitches: 0 }];
      await admin.sessions.book(bullpen({ kind: "dry_work", startsAtMs: at(day, 1020), athletes }));
    }
    await refusesLeaving(
      TODAY,
      because("athlete_not_free", {
        athleteGivenName: "Kit",
        booked: ["Tue 1 Dec 17:00", "Tue 8 Dec 17:00", "Tue 15 Dec 17:00"],
        moreBooked: 1,
        rounds: 0,
      }),
    );
    await refusesLeaving(TODAY, {
      message:
        "Kit cannot leave yet: booked for Tue 1 Dec 17:00, Tue 8 Dec 17:00, Tue 15 Dec 17:00 and 1 more, to be cancelled first. Nothing was changed.",
    });
    await refusesLeaving("2026-12-22", because("athlete_not_free", { booked: ["Tue 22 Dec 17:00"] }));
    await leave("2026-12-23");
    expect((await theAthlete())?.leftOn).toBe("2026-12-23");
  });

  it("is owed no review any more, and a round that waits for their clip is closed", async () => {
    const roundId = await received(academy);
    await refusesLeaving(TODAY, because("athlete_not_free", { booked: [], rounds: 1 }));
    await leave("2026-11-26");
    await (await academy.as(WHO.admin)).families.comeBack({ athleteId, version: 2 });
    await academy.db.update(round).set({ state: "sent", dueAtMs: null, lapsesOn: "2026-12-20" });
    await leave(TODAY, 3);
    expect(await roundRow(academy, roundId)).toMatchObject({ state: "lapsed", dueAtMs: null });
    expect((await roundEvents(academy)).at(-1)).toMatchObject({ kind: "lapsed", actorPersonId: WHO.admin });
    expect((await acts()).at(-1)).toEqual(["athlete.left", { leftOn: TODAY, roundsLapsed: 1 }]);
  });

  it("leaves neither before joining, nor over what somebody else saved; nobody comes back who did not leave", async () => {
    await refusesLeaving("2026-01-04", because("settings_invalid"));
    await refusesLeaving(TODAY, because("changed_meanwhile"), 7);
    await refuses(
      academy,
      WHO.admin,
      (api) => api.families.comeBack({ athleteId, version: 1 }),
      because("changed_meanwhile"),
    );
  });
});

describe("after an athlete has left", () => {
  const gone = because("athlete_left", { athleteGivenName: "Kit" });

  it("no clip is sent", async () => {
    const clipId = await addWaitingClip(academy, athleteId, WHO.guardian);
    await leave(TODAY);
    const clips = [said(clipId)];
    await refuses(academy, WHO.guardian, (api) => api.rounds.send({ athleteId, roundId: null, clips }), gone);
  });

  it("a round that is still open then asks for no clip", async () => {
    const { roundId } = await takenRound(academy);
    await leave("2026-11-26");
    await academy.db.update(round).set({ state: "sent", replyFrom: TODAY, lapsesOn: "2026-12-20" });
    const read = async () => (await (await academy.as(WHO.guardian)).reviews.read({ roundId })).reply;
    expect(await read()).toMatchObject({ isWanted: true, isOpen: true });
    academy.clock.ms = at("2026-11-26", 480);
    expect(await read()).toEqual({ isWanted: false, isOpen: false, words: "" });
  });

  it.each([WHO.guardian, WHO.coach, WHO.admin])("%s books nothing from that day on", async (by) => {
    await leave("2026-12-01");
    await refuses(academy, by, (api) => api.sessions.book(bullpen()), gone);
    const dayBefore = bullpen({ startsAtMs: at("2026-11-30", 1020) });
    expect((await (await academy.as(by)).sessions.book(dayBefore)).sessionId).toBeTruthy();
  });

  it("a session of the days before is not moved beyond it, and no time beyond it is found", async () => {
    const coach = await academy.as(WHO.coach);
    const { sessionId } = await coach.sessions.book(bullpen({ startsAtMs: at("2026-11-30", 1020) }));
    await leave("2026-12-01");
    const { roundId, correctionIds, ...beyond } = bullpen();
    await refuses(academy, WHO.coach, (api) => api.sessions.move({ ...beyond, sessionId, version: 1 }), gone);
    const { times } = await coach.sessions.findTimes({
      ...{ athleteIds: [athleteId], kind: "dry_work", durationMin: 30, plannedPitches: 0 },
      ...{ fromDay: "2026-11-30", toDay: "2026-12-02", siteId: null, coachPersonId: null, wish: null },
      ...{ roundId: null, moveSessionId: null },
    });
    expect(times.length).toBeGreaterThan(0);
    expect(Math.max(...times.map((time) => time.endsAtMs))).toBeLessThanOrEqual(at("2026-12-01", 0));
  });

  it.each([
    ["the guardian", WHO.child.athleteId, WHO.guardian],
    ["an athlete of 16", WHO.teen.athleteId, WHO.teen.personId],
    ["an athlete of age", WHO.adult.athleteId, WHO.adult.personId],
  ])("%s still reads the record, and is told that they left", async (_, id, personId) => {
    const admin = await academy.as(WHO.admin);
    await admin.families.leave({ athleteId: id, version: 1, leftOn: TODAY });
    const api = await academy.as(personId);
    expect((await api.athletes.season({ athleteId: id })).athlete.hasLeft).toBe(true);
    expect((await api.reviews.list({ athleteId: id })).rounds).toEqual([]);
    const own = (await api.account.me({})).athletes.find((each) => each.athleteId === id);
    expect(own?.hasLeft).toBe(true);
    expect(await api.sessions.coming({ athleteId: id })).toMatchObject({ mayBook: false, hasLeft: true });
  });
});
