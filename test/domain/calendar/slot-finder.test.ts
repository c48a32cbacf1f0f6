import { describe, expect, it } from "vitest";
import type { ArmRoom } from "@/server/domain/calendar/arm-room";
import { findTimes, MAX_WINDOW_DAYS, type TimeSearch } from "@/server/domain/calendar/slot-finder";
import { addDays } from "@/server/domain/time/calendar-day";
import { at, atMost, calmAcademy, calmSearch, everyDay, restingUntil } from "./calm-academy";

const MONDAY = ["2026-11-30T05:00Z", "2026-12-01T05:00Z"] as const;
const utcStarts = (search: TimeSearch) =>
  findTimes(search).times.map(({ startsAtMs }) => new Date(startsAtMs).toISOString().slice(11, 16));

describe("times across the clock changes", () => {
  // IANA time zone database 2026f: New York goes from 01:59 EST to 03:00 EDT at 07:00Z on 8 March 2026.
  it("skips the starts that the spring change leaves out", () => {
    const search = calmSearch("2026-03-08T06:00Z", "2026-03-08T09:00Z", { stepMin: 30, durationMin: 30 });
    expect(utcStarts(search)).toEqual(["06:00", "06:30", "07:00", "07:30", "08:00", "08:30"]);
    const oddSteps = calmSearch("2026-03-08T06:00Z", "2026-03-08T09:00Z", { stepMin: 50, durationMin: 30 });
    // 01:40 is 06:40Z; 02:30 is left out; 03:20 is 07:20Z; 04:10 is 08:10Z.
    expect(utcStarts(oddSteps)).toEqual(["06:40", "07:20", "08:10"]);
  });

  // RFC 5545 section 3.3.5: a local time that occurs twice is the first; in New York 01:00 to 01:59 EDT on 1 November.
  it("gives a start of the hour that comes twice once, the first time", () => {
    const search = calmSearch("2026-11-01T04:30Z", "2026-11-01T08:00Z", { stepMin: 30, durationMin: 30 });
    expect(utcStarts(search)).toEqual(["04:30", "05:00", "05:30", "07:00", "07:30"]);
  });

  it("lets a session run through the change for its real length", () => {
    const spring = calmSearch("2026-03-08T06:30Z", "2026-03-08T08:00Z", { durationMin: 90, stepMin: 30 });
    const [time] = findTimes(spring).times;
    expect((time?.endsAtMs ?? 0) - (time?.startsAtMs ?? 0)).toBe(90 * 60_000);
  });

  it.each([
    ["New York in winter", "America/New_York", "2026-03-03", "22:00"],
    ["New York in summer", "America/New_York", "2026-03-10", "21:00"],
    ["New York before the autumn change", "America/New_York", "2026-10-27", "21:00"],
    ["New York after it", "America/New_York", "2026-11-03", "22:00"],
    ["Phoenix in winter", "America/Phoenix", "2026-03-03", "00:00"],
    ["Phoenix in summer", "America/Phoenix", "2026-03-10", "00:00"],
  ])("keeps the 17:00 start at 17:00 by the clock of %s", (_name, zone, day, utc) => {
    const search = calmSearch(
      `${day}T12:00Z`,
      `${addDays(day, 1)}T12:00Z`,
      calmAcademy(zone, everyDay(1020, 1080)),
    );
    const found = findTimes(search);
    expect(found.times.map(({ startsAtMs }) => new Date(startsAtMs).toISOString().slice(11, 16))).toEqual([
      utc,
    ]);
    expect(found.times[0]?.day).toBe(day);
  });
});

describe("times at the edges of a day", () => {
  it("lets a session run over midnight when the site is open on both sides of it, on the day it starts", () => {
    const search = calmSearch("2026-12-01T04:30Z", "2026-12-01T05:30Z");
    const { times } = findTimes(search);
    expect(times.map(({ day }) => day)).toEqual(["2026-11-30"]);
  });

  it("ends at closing time and not a minute after, and starts with opening time", () => {
    const search = calmSearch(...MONDAY, { ...calmAcademy("America/New_York", everyDay(1020, 1110)) });
    expect(utcStarts(search)).toEqual(["22:00", "22:15", "22:30"]);
  });

  it("finds nothing on a day the site is closed, or before the notice has passed", () => {
    const week = everyDay(1020, 1080);
    const academy = calmAcademy("America/New_York", week);
    const hours = { zone: "America/New_York", week, closedOn: new Set(["2026-11-30"]) };
    const sites = [{ id: "north", hours }];
    expect(findTimes(calmSearch(...MONDAY, { ...academy, sites })).times).toEqual([]);
    const soon = { ...academy, nowMs: at("2026-11-30T20:00:00Z"), noticeMin: 120 };
    expect(findTimes(calmSearch(...MONDAY, soon)).times).toHaveLength(1);
    expect(findTimes(calmSearch(...MONDAY, { ...soon, noticeMin: 121 })).times).toEqual([]);
  });

  it("follows one session with the next without a gap, and never into a taken minute", () => {
    const academy = calmAcademy("America/New_York", everyDay(1020, 1140));
    const taken = { startsAtMs: at("2026-11-30T22:00Z"), endsAtMs: at("2026-11-30T23:00Z") };
    for (const resource of ["coach:coach-1", "lane:mound-1", "athlete:athlete-1"] as const) {
      const search = calmSearch(...MONDAY, { ...academy, busy: [{ resource, ...taken }] });
      expect(utcStarts(search)).toEqual(["23:00"]);
    }
  });
});

describe("the order of times", () => {
  const week = everyDay(1020, 1080);
  const academy = {
    ...calmAcademy("America/New_York", week),
    coaches: ["coach-1", "coach-2"].map((id) => ({ id, hours: [{ siteId: "north", week }], absences: [] })),
  };
  const window = ["2026-11-30T05:00Z", "2026-12-03T05:00Z"] as const;
  const order = (over: Partial<TimeSearch>) =>
    findTimes(calmSearch(...window, { ...academy, ...over })).times.map(
      ({ day, coachId }) => `${day.slice(8)} ${coachId}`,
    );

  it("puts room for all the planned pitches first, then the same coach, then the family's wish, then the earliest", () => {
    const roomOn = (_id: string, day: string): ArmRoom => ({
      ...atMost(30)(),
      pitches: day === "2026-11-30" ? 20 : 40,
    });
    const wish = { weekdays: [3], fromMin: 0, toMin: 1440 };
    expect(order({ roomOn, wish, preferredCoachId: "coach-2" })).toEqual([
      "02 coach-2",
      "01 coach-2",
      "02 coach-1",
      "01 coach-1",
      "30 coach-2",
      "30 coach-1",
    ]);
  });

  it("says what speaks for a time and how much room the book leaves", () => {
    const found = findTimes(
      calmSearch(...MONDAY, { ...academy, roomOn: atMost(20), preferredCoachId: "coach-1" }),
    );
    expect(found.times[0]?.reasons).toEqual(["fewer_pitches", "same_coach"]);
    const room = { status: "at_most", atMost: 20, athleteId: "athlete-1", holdsPlanned: false };
    expect(found.times[0]?.room).toEqual(room);
  });

  it("keeps to the limit in all and for each day", () => {
    expect(order({ limit: 2 })).toEqual(["30 coach-1", "30 coach-2"]);
    expect(order({ limit: 10, limitPerDay: 1 })).toEqual(["30 coach-1", "01 coach-1", "02 coach-1"]);
    expect(order({ limit: 0 })).toEqual([]);
  });

  it("wishes for any day when no weekday is named, and for the whole session to lie within the wish", () => {
    const fits = (toMin: number) =>
      findTimes(calmSearch(...MONDAY, { ...academy, wish: { weekdays: [], fromMin: 1020, toMin } })).times[0]
        ?.reasons;
    expect(fits(1080)).toEqual(["full_room", "family_wish"]);
    expect(fits(1079)).toEqual(["full_room"]);
  });
});

describe("days on which the arm is not rested", () => {
  it("refuses the day, says the first free one, and that dry work fits", () => {
    const search = calmSearch(...MONDAY, { roomOn: restingUntil("2026-12-02") });
    expect(findTimes(search)).toEqual({
      times: [],
      refused: [
        {
          reason: "arm_resting",
          athleteId: "athlete-1",
          status: "resting",
          firstFreeDay: "2026-12-02",
          day: "2026-11-30",
          dryWorkFits: true,
        },
      ],
    });
  });

  it("does not offer dry work on a day with no free coach", () => {
    const busy = [
      {
        resource: "coach:coach-1" as const,
        startsAtMs: at("2026-11-30T04:00Z"),
        endsAtMs: at("2026-12-01T06:00Z"),
      },
    ];
    const search = calmSearch(...MONDAY, { busy, roomOn: restingUntil("2026-12-02") });
    expect(findTimes(search).refused.map(({ dryWorkFits }) => dryWorkFits)).toEqual([false]);
  });

  it("gives dry work its time on a rest day, on flat ground, without asking the arm", () => {
    const roomOn = () => {
      throw new Error("asked");
    };
    const search = calmSearch(...MONDAY, { kind: "dry_work", plannedPitches: 0, roomOn });
    const { times, refused } = findTimes(search);
    expect(refused).toEqual([]);
    expect(times[0]).toMatchObject({
      laneId: "flat-1",
      room: { status: "no_throws" },
      reasons: ["full_room"],
    });
  });

  it("stops a group for one arm that rests", () => {
    const roomOn = (id: string): ArmRoom =>
      id === "athlete-2" ? restingUntil("2026-12-03")() : atMost(40)();
    const search = calmSearch(...MONDAY, { kind: "group", athleteIds: ["athlete-1", "athlete-2"], roomOn });
    expect(findTimes(search).times).toEqual([]);
    expect(findTimes(search).refused[0]).toMatchObject({
      athleteId: "athlete-2",
      firstFreeDay: "2026-12-03",
    });
  });
});

describe("a search out of range", () => {
  it.each([
    ["a session of 241 minutes", { durationMin: 241 }],
    ["a session of no length", { durationMin: 0 }],
    ["a step of half a minute", { stepMin: 0.5 }],
    ["a step of nothing", { stepMin: 0 }],
  ])("throws for %s", (_name, over) => {
    expect(() => findTimes(calmSearch(...MONDAY, over))).toThrow(RangeError);
  });

  it("throws for a window of more days than are searched at once", () => {
    const fromMs = at(MONDAY[0]);
    const wide = (days: number) => ({ fromMs, toMs: fromMs + days * 86_400_000 });
    expect(() => findTimes({ ...calmSearch(...MONDAY), window: wide(MAX_WINDOW_DAYS + 1) })).toThrow(
      RangeError,
    );
    expect(
      findTimes({ ...calmSearch(...MONDAY), window: wide(MAX_WINDOW_DAYS), limit: 1 }).times,
    ).toHaveLength(1);
  });

  it("finds nothing in a window that ends before it begins", () => {
    expect(findTimes(calmSearch(MONDAY[1], MONDAY[0])).times).toEqual([]);
  });
});
