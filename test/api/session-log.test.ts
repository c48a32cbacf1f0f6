import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { charge, rate } from "@/db/schema/ledger";
import { notice } from "@/db/schema/notices";
import { session, sessionLog } from "@/db/schema/sessions";
import { checkIn, throwEntry } from "@/db/schema/throwing";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { bullpen, expectRefused, TUESDAY_AT_FIVE } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const book = async (over: Parameters<typeof bullpen>[0] = {}, by: string = WHO.guardian) =>
  (await academy.as(by)).sessions.book(bullpen(over));

const expectRefusal = (call: () => Promise<unknown>, detail: object) => expectRefused(academy, call, detail);

describe("logging", () => {
  const came = {
    athleteId: WHO.child.athleteId,
    attendance: "came" as const,
    minutes: 30,
    pitches: 22,
    work: [],
    note: "Good rhythm.",
  };

  async function heldSession(over: Parameters<typeof bullpen>[0] = {}) {
    const { sessionId } = await book(over, WHO.coach);
    academy.clock.ms = TUESDAY_AT_FIVE;
    const coach = await academy.as(WHO.coach);
    if (over.kind !== "dry_work") {
      for (const { athleteId } of over.athletes ?? [{ athleteId: WHO.child.athleteId }]) {
        await coach.sessions.checkIn({ sessionId, athleteId, throws: [], pain: null });
      }
    }
    academy.clock.ms = TUESDAY_AT_FIVE + 35 * 60_000;
    const state = (await academy.db.select().from(session).where(eq(session.id, sessionId)))[0];
    return { sessionId, version: state?.version ?? 0 };
  }

  it("writes the throws on the arm, the charge under the rate in force, and the log in one stroke", async () => {
    const held = await heldSession();
    await (await academy.as(WHO.coach)).sessions.log({ ...held, lines: [came] });
    expect(await academy.db.select().from(throwEntry)).toMatchObject([
      {
        athleteId: WHO.child.athleteId,
        thrownOn: "2026-12-01",
        kind: "bullpen",
        pitches: 22,
        sessionId: held.sessionId,
      },
    ]);
    expect(await academy.db.select().from(charge)).toMatchObject([
      {
        kind: "bullpen",
        amountCents: 8000,
        rateId: "rate_bullpen",
        chargedOn: "2026-12-01",
        sessionId: held.sessionId,
      },
    ]);
    expect(await academy.db.select().from(sessionLog)).toMatchObject([{ minutes: 30, pitches: 22 }]);
    expect((await academy.db.select().from(session))[0]?.state).toBe("logged");
    const told = (await academy.db.select().from(notice)).filter((row) => row.kind === "session_logged");
    expect(told.map((row) => row.toPersonId)).toEqual([WHO.guardian]);
    expect(told[0]?.body).toContain("30 min, 22 pitches thrown.");
  });

  it("keeps the effort in the athlete's own word, tells the family, and shows it in session and season", async () => {
    const held = await heldSession();
    const coach = await academy.as(WHO.coach);
    await coach.sessions.log({ ...held, lines: [{ ...came, effort: 6 }] });
    expect(await academy.db.select().from(sessionLog)).toMatchObject([{ minutes: 30, effort: 6 }]);
    const [told] = (await academy.db.select().from(notice)).filter((row) => row.kind === "session_logged");
    expect(told?.body).toContain("30 min, 22 pitches thrown, effort 6 of 10.");
    const { athletes } = await coach.sessions.forStaff({ sessionId: held.sessionId });
    expect(athletes[0]?.log?.effort).toBe(6);
    const guardian = await academy.as(WHO.guardian);
    const { sessions } = await guardian.athletes.season({ athleteId: WHO.child.athleteId });
    expect(sessions[0]?.effort).toBe(6);
  });

  it("keeps strikes and the fastest pitch by radar, tells the family, and shows them in session and season", async () => {
    const held = await heldSession();
    const coach = await academy.as(WHO.coach);
    const counted = { strikes: 14, topSpeed: 71.5, speedUnit: "mph" as const };
    await coach.sessions.log({ ...held, lines: [{ ...came, ...counted }] });
    expect(await academy.db.select().from(sessionLog)).toMatchObject([counted]);
    const [told] = (await academy.db.select().from(notice)).filter((row) => row.kind === "session_logged");
    expect(told?.body).toContain("30 min, 22 pitches thrown, 14 strikes, fastest 71.5 mph.");
    const { athletes } = await coach.sessions.forStaff({ sessionId: held.sessionId });
    expect(athletes[0]?.log).toMatchObject(counted);
    const guardian = await academy.as(WHO.guardian);
    const { sessions } = await guardian.athletes.season({ athleteId: WHO.child.athleteId });
    expect(sessions[0]).toMatchObject(counted);
  });

  it.each([
    ["less than nothing", -1],
    ["more than 10", 11],
    ["half a step", 5.5],
  ])("refuses an effort of %s and writes nothing", async (_what, effort) => {
    const held = await heldSession();
    const before = academy.snapshot();
    const coach = await academy.as(WHO.coach);
    await expect(coach.sessions.log({ ...held, lines: [{ ...came, effort }] })).rejects.toThrow();
    expect(academy.snapshot()).toBe(before);
  });

  it("charges each athlete of a group, but nobody who stayed away", async () => {
    const athletes = [WHO.child, WHO.teen].map(({ athleteId }) => ({ athleteId, plannedPitches: 10 }));
    const held = await heldSession({ kind: "group", athletes, secondAdult: null });
    const away = {
      athleteId: WHO.teen.athleteId,
      attendance: "no_show" as const,
      minutes: 0,
      pitches: 0,
      work: [],
      note: "",
    };
    await (await academy.as(WHO.coach)).sessions.log({ ...held, lines: [came, away] });
    expect((await academy.db.select().from(charge)).map((row) => row.athleteId)).toEqual([
      WHO.child.athleteId,
    ]);
    expect(await academy.db.select().from(throwEntry)).toHaveLength(1);
    expect(await academy.db.select().from(sessionLog)).toHaveLength(2);
  });

  it("refuses without a rate and writes nothing at all", async () => {
    const held = await heldSession();
    await academy.db.update(rate).set({ effectiveTo: "2026-12-01" }).where(eq(rate.kind, "bullpen"));
    await expectRefusal(async () => (await academy.as(WHO.coach)).sessions.log({ ...held, lines: [came] }), {
      reason: "no_rate",
      kind: "bullpen",
      day: "2026-12-01",
    });
  });

  it("refuses before the start, before the check-in, twice, and for whoever is no coach; nothing is written", async () => {
    const { sessionId } = await book();
    const coach = await academy.as(WHO.coach);
    await expectRefusal(() => coach.sessions.log({ sessionId, version: 1, lines: [came] }), {
      reason: "session_not_started",
    });
    academy.clock.ms = TUESDAY_AT_FIVE + 1;
    const later = await academy.as(WHO.coach);
    await expectRefusal(() => later.sessions.log({ sessionId, version: 1, lines: [came] }), {
      reason: "check_in_missing",
    });
    await later.sessions.checkIn({ sessionId, athleteId: WHO.child.athleteId, throws: [], pain: null });
    for (const person of [WHO.guardian, WHO.admin]) {
      const call = async () =>
        (await academy.as(person)).sessions.log({ sessionId, version: 2, lines: [came] });
      await expectRefusal(call, { reason: "not_found" });
    }
    await later.sessions.log({ sessionId, version: 2, lines: [came] });
    await expectRefusal(() => later.sessions.log({ sessionId, version: 3, lines: [came] }), {
      reason: "session_state",
      state: "logged",
    });
  });

  const bad: [string, object][] = [
    ["a line for somebody else", { athleteId: WHO.stranger.athleteId }],
    ["more strikes than pitches", { strikes: 23 }],
    ["a speed without its unit", { topSpeed: 60 }],
    ["minutes for somebody who stayed away", { attendance: "no_show" }],
    ["an effort of somebody who stayed away", { attendance: "no_show", minutes: 0, pitches: 0, effort: 3 }],
  ];
  for (const [what, over] of bad) {
    it(`refuses ${what} and writes nothing`, async () => {
      const held = await heldSession();
      const lines = [{ ...came, ...over }];
      await expectRefusal(async () => (await academy.as(WHO.coach)).sessions.log({ ...held, lines }), {
        reason: "throw_entry_invalid",
      });
    });
  }

  it("logs a session without mound throws straight away, and no pitches in it", async () => {
    const none = [{ athleteId: WHO.child.athleteId, plannedPitches: 0 }];
    const held = await heldSession({ kind: "dry_work", laneId: WHO.flatLane, athletes: none });
    const coach = await academy.as(WHO.coach);
    await expectRefusal(() => coach.sessions.log({ ...held, lines: [came] }), {
      reason: "throw_entry_invalid",
    });
    await coach.sessions.log({ ...held, lines: [{ ...came, pitches: 0 }] });
    expect(await academy.db.select().from(throwEntry)).toHaveLength(0);
    expect(await academy.db.select().from(charge)).toMatchObject([{ kind: "dry_work" }]);
  });

  it("marks a no-show, who is neither charged nor thrown for, and who may come after all", async () => {
    const { sessionId } = await book();
    academy.clock.ms = TUESDAY_AT_FIVE + 20 * 60_000;
    const coach = await academy.as(WHO.coach);
    await coach.sessions.markNoShow({ sessionId, version: 1 });
    expect(await academy.db.select().from(charge)).toHaveLength(0);
    await coach.sessions.checkIn({ sessionId, athleteId: WHO.child.athleteId, throws: [], pain: null });
    expect((await academy.db.select().from(session))[0]?.state).toBe("checked_in");
    expect(await academy.db.select().from(checkIn)).toHaveLength(1);
  });
});
