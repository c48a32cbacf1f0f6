import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { throwEntry } from "@/db/schema/throwing";
import { insertThrowEntry } from "@/server/data/throw-log";
import { makeAcademy, WHO } from "../helpers/academy";
import { refused } from "../helpers/refuses";
import { bookBullpen, told } from "../helpers/throwing-desk";

const CHILD = WHO.child.athleteId;
const TODAY = "2026-11-25";
const GAME = { athleteId: CHILD, thrownOn: TODAY, kind: "game", pitches: 51 } as const;

describe("logging throws", () => {
  it("writes one row, answers with how the arm stands, and shows in the log and the year", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const { arm } = await guardian.throwing.log({ ...GAME, note: "Two innings" });
    expect(arm.words).toBe("at most 34 by the book");
    const view = await guardian.throwing.view({ athleteId: CHILD });
    expect(view.log).toMatchObject([
      { pitches: 51, kind: "game", note: "Two innings", byName: "Gwen Marsh", origin: "log", corrects: null },
    ]);
    expect(view.weeks.at(-1)).toMatchObject({ weekOf: "2026-11-23", counts: { games: 51 } });
    expect(view.arm.why).toContain("51 already thrown on this day come off that.");
  });

  it.each([
    ["tomorrow", { thrownOn: "2026-11-26" }, "UNPROCESSABLE_CONTENT"],
    ["a day before birth", { thrownOn: "2014-05-09" }, "UNPROCESSABLE_CONTENT"],
    ["a day that is none", { thrownOn: "2026-02-30" }, "BAD_REQUEST"],
    ["less than nothing", { pitches: -1 }, "BAD_REQUEST"],
    ["more than anybody throws", { pitches: 401 }, "BAD_REQUEST"],
    ["half a pitch", { pitches: 10.5 }, "BAD_REQUEST"],
  ])("refuses %s and writes nothing", async (_, change, code) => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await refused(academy, () => guardian.throwing.log({ ...GAME, ...change }), { code });
  });

  it("tells family and coach, once, of the booked bullpen whose room a game took away", async () => {
    const academy = await makeAcademy();
    await bookBullpen(academy, "2026-11-27");
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.log(GAME);
    expect(await told(academy, "session_without_room")).toEqual([WHO.coach, WHO.guardian]);
    await guardian.throwing.log({ ...GAME, kind: "long_toss", pitches: 20 });
    expect(await told(academy, "session_without_room")).toHaveLength(2);
  });

  it("is the family's and the staff's, and nobody else's", async () => {
    const academy = await makeAcademy();
    for (const personId of [WHO.coach, WHO.otherCoach, WHO.admin, WHO.guardian]) {
      await expect((await academy.as(personId)).throwing.log(GAME)).resolves.toBeDefined();
    }
    for (const personId of [WHO.otherGuardian, WHO.teen.personId]) {
      const caller = await academy.as(personId);
      await refused(academy, () => caller.throwing.log(GAME), { code: "NOT_FOUND" });
      await refused(academy, () => caller.throwing.view({ athleteId: CHILD }), { code: "NOT_FOUND" });
    }
    const nobody = await academy.as(null);
    await refused(academy, () => nobody.throwing.log(GAME), { code: "UNAUTHORIZED" });
  });
});

describe("correcting an entry", () => {
  it("adds a row that replaces it; the old one stays on record and no longer counts", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const { entryId } = await guardian.throwing.log(GAME);
    const { arm } = await guardian.throwing.correct({ entryId, thrownOn: TODAY, kind: "game", pitches: 15 });
    expect(arm.words).toBe("at most 70 by the book");
    expect(await academy.db.select().from(throwEntry)).toHaveLength(2);
    const { log } = await guardian.throwing.view({ athleteId: CHILD });
    expect(log).toMatchObject([{ pitches: 15, corrects: { thrownOn: TODAY, kind: "game", pitches: 51 } }]);
  });

  it("is refused for one that was corrected already, for a day to come, and for another family's", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const { entryId } = await guardian.throwing.log(GAME);
    const change = { entryId, thrownOn: TODAY, kind: "game", pitches: 15 } as const;
    const stranger = await academy.as(WHO.otherGuardian);
    await refused(academy, () => stranger.throwing.correct(change), { code: "NOT_FOUND" });
    await refused(academy, () => guardian.throwing.correct({ ...change, thrownOn: "2026-11-26" }), {
      code: "UNPROCESSABLE_CONTENT",
    });
    await guardian.throwing.correct(change);
    await refused(academy, () => guardian.throwing.correct(change), { code: "CONFLICT" });
  });

  it("of what a coach logged with a session is for staff alone, and stays with the session", async () => {
    const academy = await makeAcademy();
    await bookBullpen(academy, "2026-11-24");
    const entryId = await insertThrowEntry(academy.db, {
      athleteId: CHILD,
      thrownOn: "2026-11-24",
      kind: "bullpen",
      pitches: 40,
      reportedByPersonId: WHO.coach,
      reportedAtMs: academy.clock.ms,
      sessionId: "ses_bullpen",
    });
    const change = { entryId, thrownOn: "2026-11-24", kind: "bullpen", pitches: 25 } as const;
    const guardian = await academy.as(WHO.guardian);
    await refused(academy, () => guardian.throwing.correct(change), {
      message: "This was logged with a session: ask the coach to correct it. Nothing was logged.",
    });
    expect((await guardian.throwing.view({ athleteId: CHILD })).log[0]?.mayCorrect).toBe(false);
    await (await academy.as(WHO.coach)).throwing.correct(change);
    const [row] = await academy.db.select().from(throwEntry).where(eq(throwEntry.replacesId, entryId));
    expect(row).toMatchObject({ pitches: 25, sessionId: "ses_bullpen" });
  });
});

describe("throws that were written on a wrong day", () => {
  it.each([
    ["weeks before", "2026-09-01", 1],
    ["more than a year before", "2025-11-24", 0],
  ])("count where they were corrected to, %s, and nowhere else", async (_when, thrownOn, onPage) => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const before = await guardian.throwing.view({ athleteId: CHILD });
    const thrown = { kind: "game", pitches: 60 } as const;
    const { entryId } = await guardian.throwing.log({ athleteId: CHILD, thrownOn: "2026-11-24", ...thrown });
    expect((await guardian.throwing.view({ athleteId: CHILD })).arm).not.toEqual(before.arm);
    academy.clock.ms += 1000;
    const twice = await guardian.throwing.correct({ entryId, thrownOn: "2026-11-23", ...thrown });
    academy.clock.ms += 1000;
    await guardian.throwing.correct({ entryId: twice.entryId, thrownOn, ...thrown });
    const after = await guardian.throwing.view({ athleteId: CHILD });
    expect(after.arm.words).toBe(before.arm.words);
    expect(after.log).toHaveLength(onPage);
    const { games } = await guardian.athletes.season({ athleteId: CHILD });
    expect(games.map((game) => game.thrownOn)).toEqual([thrownOn]);
  });

  it("are not taken for a word on the days they were moved from", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    const thrown = { kind: "game", pitches: 20 } as const;
    const { entryId } = await coach.throwing.log({ athleteId: CHILD, thrownOn: "2026-11-24", ...thrown });
    await coach.throwing.correct({ entryId, thrownOn: "2026-11-02", ...thrown });
    const { unreported } = await coach.sessions.findTimes({
      ...{ athleteIds: [CHILD], kind: "bullpen", durationMin: 30, plannedPitches: 10 },
      ...{ fromDay: "2026-11-27", toDay: "2026-11-28", coachPersonId: null, siteId: null },
      ...{ wish: null, roundId: null, moveSessionId: null },
    });
    expect(unreported).toEqual(["Nothing reported for Kit since Mon 2 Nov: ask."]);
  });
});

describe("outings", () => {
  it("keep the days before them free until they are called off", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const plan = { athleteId: CHILD, plannedOn: "2026-11-27", pitches: 60 };
    const { outingId } = await guardian.throwing.planOuting(plan);
    const planned = await guardian.throwing.view({ athleteId: CHILD });
    expect(planned.outings).toEqual([
      { id: outingId, plannedOn: "2026-11-27", pitches: 60, teamId: null, teamName: null },
    ]);
    expect(planned.arm.words).toBe("at most 35 by the book");
    const stranger = await academy.as(WHO.otherGuardian);
    await refused(academy, () => stranger.throwing.cancelOuting({ outingId }), { code: "NOT_FOUND" });
    await guardian.throwing.cancelOuting({ outingId });
    const free = await guardian.throwing.view({ athleteId: CHILD });
    expect(free.outings).toEqual([]);
    expect(free.arm.words).toBe("at most 85 by the book");
  });

  it.each([
    ["a day that is past", { plannedOn: "2026-11-24" }, "UNPROCESSABLE_CONTENT"],
    ["a day too far ahead", { plannedOn: "2027-12-31" }, "UNPROCESSABLE_CONTENT"],
    ["no pitches", { pitches: 0 }, "BAD_REQUEST"],
  ])("are refused for %s, and nothing is written", async (_, change, code) => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const plan = { athleteId: CHILD, plannedOn: "2026-11-28", pitches: 60, ...change };
    await refused(academy, () => guardian.throwing.planOuting(plan), { code });
  });

  it("name the booked bullpen that a planned game leaves without room", async () => {
    const academy = await makeAcademy();
    await bookBullpen(academy, "2026-11-27");
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.planOuting({ athleteId: CHILD, plannedOn: "2026-11-28", pitches: 60 });
    expect(await told(academy, "session_without_room")).toEqual([WHO.coach, WHO.guardian]);
  });
});
