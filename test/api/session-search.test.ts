import { beforeEach, describe, expect, it } from "vitest";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { at, bullpen, expectRefused, outingOn, TUESDAY_AT_FIVE, throwOn } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const book = async (over: Parameters<typeof bullpen>[0] = {}, by: string = WHO.guardian) =>
  (await academy.as(by)).sessions.book(bullpen(over));

const expectRefusal = (call: () => Promise<unknown>, detail: object) => expectRefused(academy, call, detail);

type Search = Parameters<Awaited<ReturnType<TestAcademy["as"]>>["sessions"]["findTimes"]>[0];

describe("finding a time", () => {
  const search = {
    athleteIds: [WHO.child.athleteId],
    kind: "bullpen" as const,
    durationMin: 30,
    plannedPitches: 40,
    fromDay: "2026-11-26",
    toDay: "2026-12-02",
    coachPersonId: null,
    siteId: null,
    wish: null,
    roundId: null,
    moveSessionId: null,
  } satisfies Search;

  it("says each time in one sentence with what the book leaves, and tells refused days with the first free one", async () => {
    await throwOn(academy, WHO.child.athleteId, "2026-11-25", 51);
    const found = await (await academy.as(WHO.guardian)).sessions.findTimes(search);
    expect(found.times[0]?.sentence).toBe(
      "Mon 30 Nov 14:00, Lane 1, with Cole Rivers: at most 85 by the book.",
    );
    expect(found.refused).toEqual([
      {
        fromDay: "2026-11-26",
        toDay: "2026-11-28",
        sentence:
          "Thu 26 Nov to Sat 28 Nov: none by the book. 51 on Wed 25 Nov asks for three days of rest; free again Sun 29 Nov.",
        firstFreeDay: "2026-11-29",
        dryWorkFits: true,
        isPain: false,
      },
    ]);
  });

  it("offers what can be booked: every time it names is then taken by booking it", async () => {
    await outingOn(academy, WHO.child.athleteId, "2026-12-03", 60);
    const guardian = await academy.as(WHO.guardian);
    const { times } = await guardian.sessions.findTimes(search);
    expect(times.length).toBeGreaterThan(5);
    for (const time of times.slice(0, 6)) {
      const { sessionId } = await guardian.sessions.book(
        bullpen({
          ...placeOf(time),
          athletes: [{ athleteId: WHO.child.athleteId, plannedPitches: Math.min(40, time.atMost ?? 40) }],
        }),
      );
      await guardian.sessions.cancel({ sessionId, version: 1, reason: "Trying out." });
    }
  });

  it("counts the session that is being moved as free", async () => {
    const { sessionId } = await book();
    const day = { fromDay: "2026-12-01", toDay: "2026-12-01" };
    const guardian = await academy.as(WHO.guardian);
    const same = { ...search, ...day, coachPersonId: WHO.coach };
    const starts = async (moveSessionId: string | null) =>
      (
        await guardian.sessions.findTimes({
          ...same,
          wish: { weekdays: [], fromMin: 1020, toMin: 1050 },
          moveSessionId,
        })
      ).times.map((time) => time.startsAtMs);
    expect(await starts(null)).not.toContain(TUESDAY_AT_FIVE);
    expect(await starts(sessionId)).toContain(TUESDAY_AT_FIVE);
  });

  it("names what was not reported", async () => {
    academy.clock.ms = at("2026-11-25", 900);
    const found = await (await academy.as(WHO.coach)).sessions.findTimes(search);
    expect(found.unreported).toEqual(["Nothing reported for Kit since Mon 5 Jan: ask."]);
  });

  it("keeps the horizon for families and turns others away", async () => {
    const far = { ...search, fromDay: "2027-02-01", toDay: "2027-02-07" };
    await expectRefusal(async () => (await academy.as(WHO.guardian)).sessions.findTimes(far), {
      reason: "too_far_ahead",
    });
    await expectRefusal(async () => (await academy.as(WHO.otherGuardian)).sessions.findTimes(search), {
      reason: "not_found",
    });
  });
});

const placeOf = (time: { startsAtMs: number; siteId: string; laneId: string; coachPersonId: string }) => {
  const { startsAtMs, siteId, laneId, coachPersonId } = time;
  return { startsAtMs, siteId, laneId, coachPersonId };
};
