import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { claim, session } from "@/db/schema/sessions";
import { painReport } from "@/db/schema/throwing";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { at, bullpen, expectRefused, outingOn, TUESDAY_AT_FIVE, throwOn } from "../helpers/sessions";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const book = async (over: Parameters<typeof bullpen>[0] = {}, by: string = WHO.guardian) =>
  (await academy.as(by)).sessions.book(bullpen(over));

const expectRefusal = (call: () => Promise<unknown>, detail: object) => expectRefused(academy, call, detail);

describe("booking", () => {
  it("takes coach, lane and athlete, and tells the family and the coach", async () => {
    const { sessionId } = await book();
    const taken = await academy.db.select().from(claim).where(eq(claim.sessionId, sessionId));
    expect(taken.map((row) => row.resource).sort()).toEqual([
      `athlete:${WHO.child.athleteId}`,
      `coach:${WHO.coach}`,
      `lane:${WHO.moundLane}`,
    ]);
    const told = await academy.db.select().from(notice);
    expect(told.map((row) => [row.kind, row.toPersonId])).toEqual([
      ["session_booked", WHO.guardian],
      ["session_booked", WHO.coach],
    ]);
    expect(told[0]?.subject).toBe("Kit: booked Tue 1 Dec 17:00");
  });

  it("claims a second adult of the staff, who is then nowhere else", async () => {
    await book({ secondAdult: { kind: "staff", personId: WHO.otherCoach } });
    const other = { laneId: WHO.secondMoundLane, coachPersonId: WHO.otherCoach };
    await expectRefusal(
      () => book({ ...other, athletes: [{ athleteId: WHO.teen.athleteId, plannedPitches: 10 }] }),
      { reason: "time_taken", what: "coach" },
    );
  });

  const taken: [string, Parameters<typeof bullpen>[0], object][] = [
    [
      "coach",
      { laneId: WHO.secondMoundLane, athletes: [{ athleteId: WHO.teen.athleteId, plannedPitches: 10 }] },
      { reason: "time_taken", what: "coach" },
    ],
    [
      "lane",
      { coachPersonId: WHO.otherCoach, athletes: [{ athleteId: WHO.teen.athleteId, plannedPitches: 10 }] },
      { reason: "time_taken", what: "lane" },
    ],
    [
      "athlete",
      {
        kind: "dry_work",
        coachPersonId: WHO.otherCoach,
        laneId: WHO.flatLane,
        athletes: [{ athleteId: WHO.child.athleteId, plannedPitches: 0 }],
      },
      { reason: "time_taken", what: "athlete" },
    ],
  ];
  for (const [what, over, detail] of taken) {
    it(`refuses a ${what} who is taken, writes nothing, and says what is taken`, async () => {
      await book();
      await expectRefusal(() => book({ startsAtMs: TUESDAY_AT_FIVE + 15 * 60_000, ...over }), detail);
    });
  }

  it("lets the next session begin when the one before ends", async () => {
    await book();
    const next = { startsAtMs: TUESDAY_AT_FIVE + 30 * 60_000 };
    await book({ ...next, athletes: [{ athleteId: WHO.teen.athleteId, plannedPitches: 10 }] });
    expect(await academy.db.select().from(session)).toHaveLength(2);
  });

  const refused: [string, Parameters<typeof bullpen>[0], object][] = [
    ["a closed day", { startsAtMs: at("2026-11-29", 1020) }, { reason: "site_closed", day: "2026-11-29" }],
    ["a flat lane for mound work", { laneId: WHO.flatLane }, { reason: "no_lane" }],
    ["nobody to watch a minor", { secondAdult: null }, { reason: "second_adult_missing" }],
    [
      "somebody else's guardian as second adult",
      { secondAdult: { kind: "guardian", personId: WHO.otherGuardian } },
      { reason: "second_adult_missing" },
    ],
    [
      "a second adult who is not on the staff",
      { secondAdult: { kind: "staff", personId: WHO.otherGuardian } },
      { reason: "second_adult_missing" },
    ],
    [
      "the coach as the second adult",
      { secondAdult: { kind: "staff", personId: WHO.coach } },
      { reason: "second_adult_missing" },
    ],
    [
      "less than the academy's notice",
      { startsAtMs: at("2026-11-25", 960) },
      { reason: "too_soon", noticeMin: 120 },
    ],
    [
      "beyond the academy's horizon",
      { startsAtMs: at("2027-01-25", 1020) },
      { reason: "too_far_ahead", horizonDays: 60 },
    ],
    [
      "more than the book leaves",
      { athletes: [{ athleteId: WHO.child.athleteId, plannedPitches: 90 }] },
      { reason: "too_many_pitches", atMost: 85 },
    ],
    ["a site that is not there", { siteId: "site_nowhere" }, { reason: "not_found" }],
    ["a coach who is not there", { coachPersonId: "per_nobody" }, { reason: "outside_coach_hours" }],
    ["somebody else's correction on the plan", { correctionIds: ["cor_of_nobody"] }, { reason: "not_found" }],
  ];
  for (const [what, over, detail] of refused) {
    it(`refuses ${what} and writes nothing`, async () => {
      await expectRefusal(() => book(over), detail);
    });
  }

  it("refuses a bullpen the arm is not rested for, writes nothing, and says the first day it is", async () => {
    await throwOn(academy, WHO.child.athleteId, "2026-11-29", 51);
    await expectRefusal(() => book(), {
      reason: "arm_resting",
      firstFreeDay: "2026-12-03",
      dryWorkFits: true,
      why: "51 on Sun 29 Nov asks for three days of rest; to Wed 2 Dec at least.",
    });
    await book({ startsAtMs: at("2026-12-03", 1020) });
  });

  it("takes a session without mound throws on that rest day", async () => {
    await throwOn(academy, WHO.child.athleteId, "2026-11-29", 51);
    const none = [{ athleteId: WHO.child.athleteId, plannedPitches: 0 }];
    await book({ kind: "dry_work", laneId: WHO.flatLane, athletes: none });
  });

  it("looks ahead: an outing to come takes its share", async () => {
    await outingOn(academy, WHO.child.athleteId, "2026-12-03", 60);
    const athletes = [{ athleteId: WHO.child.athleteId, plannedPitches: 36 }];
    await expectRefusal(() => book({ athletes }), { reason: "too_many_pitches", atMost: 35 });
  });

  it("refuses mound work under pain and names the day it was felt", async () => {
    await academy.db.insert(painReport).values({
      ...{ id: "pai_1", athleteId: WHO.child.athleteId, kind: "pain", feltOn: "2026-11-24" },
      ...{ reportedByPersonId: WHO.guardian, reportedAtMs: academy.clock.ms },
    });
    await expectRefusal(() => book(), { reason: "pain_stop", since: "2026-11-24" });
  });

  it("lets staff book on the spot, and an athlete of age for themselves without a second adult", async () => {
    await book({ startsAtMs: at("2026-11-25", 930) }, WHO.coach);
    const athletes = [{ athleteId: WHO.adult.athleteId, plannedPitches: 20 }];
    await book({ athletes, secondAdult: null }, WHO.adult.personId);
  });

  it("writes down a watching guardian for their own athlete alone, and nobody's name from an id", async () => {
    const alone = [{ athleteId: WHO.adult.athleteId, plannedPitches: 20 }];
    const two = [WHO.child, WHO.teen].map(({ athleteId }) => ({ athleteId, plannedPitches: 10 }));
    const named = (personId: string) => ({ secondAdult: { kind: "guardian", personId } as const });
    const strange = await book({ athletes: alone, ...named(WHO.otherGuardian) }, WHO.adult.personId);
    const nobody = { ...named("per_nobody"), startsAtMs: at("2026-12-02", 1020) };
    const unknown = await book({ athletes: alone, ...nobody }, WHO.adult.personId);
    const place = { laneId: WHO.secondMoundLane, startsAtMs: at("2026-12-03", 1020), kind: "group" } as const;
    const shared = await book({ ...place, athletes: two, ...named(WHO.guardian) });
    for (const { sessionId } of [strange, unknown, shared]) {
      const [row] = await academy.db.select().from(session).where(eq(session.id, sessionId));
      expect(row).toMatchObject({ secondAdultKind: null, secondAdultPersonId: null });
    }
  });

  it("refuses a plan that names a correction twice", async () => {
    const before = academy.snapshot();
    await expect(book({ correctionIds: ["cor_1", "cor_1"] })).rejects.toMatchObject({ code: "BAD_REQUEST" });
    expect(academy.snapshot()).toBe(before);
  });

  it("turns away whoever does not decide for the athlete, and writes nothing", async () => {
    for (const person of [WHO.otherGuardian, WHO.teen.personId, WHO.adult.personId]) {
      const athletes = [{ athleteId: WHO.teen.athleteId, plannedPitches: 10 }];
      await expectRefusal(() => book({ athletes }, person), { reason: "not_found" });
    }
    const together = [
      { athleteId: WHO.child.athleteId, plannedPitches: 10 },
      { athleteId: WHO.stranger.athleteId, plannedPitches: 10 },
    ];
    await expectRefusal(() => book({ athletes: together }), { reason: "not_found" });
  });

  it("refuses planned pitches in a session without mound throws, and two coaches' worth of athletes", async () => {
    const before = academy.snapshot();
    await expect(book({ kind: "dry_work" })).rejects.toMatchObject({ code: "BAD_REQUEST" });
    const three = [WHO.child, WHO.teen, WHO.adult].map(({ athleteId }) => ({ athleteId, plannedPitches: 5 }));
    await expect(book({ athletes: three }, WHO.coach)).rejects.toMatchObject({ code: "BAD_REQUEST" });
    expect(academy.snapshot()).toBe(before);
  });
});
