import { describe, expect, it } from "vitest";
import { checkTime, type ProposedSession, type TimeKnowledge } from "@/server/domain/calendar/check-time";
import type { ClaimResource } from "@/server/domain/calendar/claims";
import { at, atMost, calmAcademy, everyDay, restingUntil } from "./calm-academy";

const START = at("2026-12-01T22:00Z");
const MINUTE_MS = 60_000;

const athlete = { id: "athlete-1", bornOn: "2012-05-05", guardianIds: ["guardian-1"], plannedPitches: 30 };
const proposed: ProposedSession = {
  kind: "bullpen",
  startsAtMs: START,
  durationMin: 60,
  siteId: "north",
  laneId: "mound-1",
  coachId: "coach-1",
  athletes: [athlete],
  secondAdult: { kind: "guardian", personId: "guardian-1" },
};
const known: TimeKnowledge = {
  ...calmAcademy("America/New_York", everyDay(960, 1260)),
  nowMs: at("2026-11-24T12:00Z"),
  noticeMin: 120,
  roomOn: atMost(30),
};
const busy = (resource: ClaimResource, fromMin: number, toMin: number): TimeKnowledge => ({
  ...known,
  busy: [{ resource, startsAtMs: START + fromMin * MINUTE_MS, endsAtMs: START + toMin * MINUTE_MS }],
});

describe("one exact session", () => {
  it("is free of refusals when everything fits", () => {
    expect(checkTime(proposed, known)).toEqual([]);
  });

  it.each([
    ["until its start", -60, 0],
    ["from its end", 60, 120],
  ])("may touch another claim %s", (_name, fromMin, toMin) => {
    for (const resource of ["coach:coach-1", "lane:mound-1", "athlete:athlete-1"] as const) {
      expect(checkTime(proposed, busy(resource, fromMin, toMin))).toEqual([]);
    }
  });

  it.each([
    ["the coach", "coach:coach-1", { reason: "coach_taken", coachId: "coach-1" }],
    ["the lane", "lane:mound-1", { reason: "lane_taken", laneId: "mound-1", freeLaneIds: [] }],
    ["the athlete", "athlete:athlete-1", { reason: "athlete_taken", athleteId: "athlete-1" }],
  ] as const)("is refused when %s is taken for a single minute of it", (_name, resource, refusal) => {
    expect(checkTime(proposed, busy(resource, -30, 1))).toEqual([refusal]);
    expect(checkTime(proposed, busy(resource, 59, 90))).toEqual([refusal]);
  });

  it("is refused before opening, past closing, on a day off, and by a coach who is away", () => {
    const early = checkTime({ ...proposed, startsAtMs: START - 61 * MINUTE_MS }, known);
    expect(early).toEqual([
      { reason: "site_closed", siteId: "north" },
      { reason: "outside_coach_hours", coachId: "coach-1" },
    ]);
    const [coach] = known.coaches;
    const away = {
      id: "coach-1",
      hours: coach?.hours ?? [],
      absences: [{ startMs: START, endMs: START + MINUTE_MS }],
    };
    expect(checkTime(proposed, { ...known, coaches: [away] })).toEqual([
      { reason: "outside_coach_hours", coachId: "coach-1" },
    ]);
    expect(checkTime({ ...proposed, coachId: "nobody" }, known)).toEqual([
      { reason: "outside_coach_hours", coachId: "nobody" },
    ]);
  });

  it("is refused on a lane that does not suit, and names the lanes that do", () => {
    const onFlat = checkTime({ ...proposed, laneId: "flat-1" }, known);
    expect(onFlat).toEqual([{ reason: "no_lane", laneId: "flat-1", freeLaneIds: ["mound-1"] }]);
    const elsewhere = checkTime({ ...proposed, laneId: "lane-of-another-site" }, known);
    expect(elsewhere.map(({ reason }) => reason)).toEqual(["no_lane"]);
  });

  it("names a free lane beside the taken one", () => {
    const lanes = [...known.lanes, { id: "mound-2", siteId: "north", kind: "mound" as const }];
    const refusals = checkTime(proposed, { ...busy("lane:mound-1", 0, 10), lanes });
    expect(refusals).toEqual([{ reason: "lane_taken", laneId: "mound-1", freeLaneIds: ["mound-2"] }]);
  });

  it("is refused a minute inside the notice, and says from when it could be", () => {
    const nowMs = START - 119 * MINUTE_MS;
    expect(checkTime(proposed, { ...known, nowMs })).toEqual([
      { reason: "too_soon_notice", earliestMs: START + MINUTE_MS },
    ]);
    expect(checkTime(proposed, { ...known, nowMs: nowMs - MINUTE_MS })).toEqual([]);
  });

  it("asks for a second adult, and for one who is free", () => {
    expect(checkTime({ ...proposed, secondAdult: null }, known)).toEqual([
      { reason: "second_adult_missing", athleteId: "athlete-1", why: "nobody_named" },
    ]);
    const secondAdult = { kind: "staff" as const, personId: "coach-2" };
    expect(checkTime({ ...proposed, secondAdult }, known)).toEqual([]);
    expect(checkTime({ ...proposed, secondAdult }, busy("coach:coach-2", 30, 40))).toEqual([
      { reason: "second_adult_taken", personId: "coach-2" },
    ]);
  });
});

describe("one exact session and the arm", () => {
  it("refuses a bullpen the arm is not rested for, says the first day it is, and that dry work fits", () => {
    expect(checkTime(proposed, { ...known, roomOn: restingUntil("2026-12-03") })).toEqual([
      {
        reason: "arm_resting",
        athleteId: "athlete-1",
        status: "resting",
        firstFreeDay: "2026-12-03",
        dryWorkFits: true,
      },
    ]);
  });

  it("does not offer dry work when the coach is taken then, but does when only the mound is", () => {
    const roomOn = restingUntil("2026-12-03");
    const dryWork = (knowledge: TimeKnowledge) =>
      checkTime(proposed, { ...knowledge, roomOn }).flatMap((one) =>
        one.reason === "arm_resting" ? [one.dryWorkFits] : [],
      );
    expect(dryWork(busy("coach:coach-1", 0, 60))).toEqual([false]);
    expect(dryWork(busy("lane:mound-1", 0, 60))).toEqual([true]);
  });

  it("never refuses dry work for the arm, be it resting or in pain", () => {
    const dryWork = { ...proposed, kind: "dry_work" as const, laneId: "flat-1" };
    const roomOn = () => ({ status: "pain" as const, pitches: 0, firstFreeDay: null });
    expect(checkTime(dryWork, { ...known, roomOn })).toEqual([]);
    expect(checkTime(proposed, { ...known, roomOn })[0]).toMatchObject({
      status: "pain",
      firstFreeDay: null,
    });
  });

  it("refuses one pitch more than the book leaves, for the athlete with the least to spare", () => {
    const athletes = [
      { ...athlete, plannedPitches: 30 },
      { ...athlete, id: "athlete-2", plannedPitches: 31 },
    ];
    const group = { ...proposed, kind: "group" as const, athletes, secondAdult: null };
    expect(checkTime(group, known)).toEqual([
      { reason: "too_many_pitches", athleteId: "athlete-2", atMost: 30 },
    ]);
  });

  it("asks the book about the day on the site's wall, not in UTC", () => {
    const asked: string[] = [];
    const lateStart = at("2026-12-02T01:00Z");
    checkTime(
      { ...proposed, startsAtMs: lateStart },
      {
        ...known,
        roomOn: (_id, day) => {
          asked.push(day);
          return atMost(30)();
        },
      },
    );
    expect(asked).toEqual(["2026-12-01"]);
  });

  it("says everything at once, in a fixed order", () => {
    const all = checkTime(
      { ...proposed, startsAtMs: at("2026-12-02T03:00Z"), laneId: "flat-1", secondAdult: null },
      { ...known, nowMs: at("2026-12-02T03:00Z"), roomOn: restingUntil("2026-12-03") },
    );
    expect(all.map(({ reason }) => reason)).toEqual([
      "too_soon_notice",
      "site_closed",
      "outside_coach_hours",
      "no_lane",
      "second_adult_missing",
      "arm_resting",
    ]);
  });

  it("throws for a site that is not there and a length that cannot be", () => {
    expect(() => checkTime({ ...proposed, siteId: "nowhere" }, known)).toThrow(RangeError);
    expect(() => checkTime({ ...proposed, durationMin: 241 }, known)).toThrow(RangeError);
  });
});
