import { describe, expect, it } from "vitest";
import { boardHours, freeSpans, hoursInto, mondayOf } from "@/server/domain/calendar/board";
import { UNCOUNTED } from "@/server/domain/calendar/counted-pitches";
import { sessionLogProblem } from "@/server/domain/calendar/session-log-problem";
import { isUnlogged } from "@/server/domain/calendar/session-state";
import { instantOf } from "@/server/domain/time/calendar-day";
import { at, calmAcademy, everyDay } from "./calm-academy";

const ZONE = "America/New_York";
const span = (day: string, fromMin: number, toMin: number) => ({
  startMs: instantOf(day, fromMin, ZONE),
  endMs: instantOf(day, toMin, ZONE),
});

describe("the hours of a board", () => {
  it("hold every opening and session in whole hours, and an afternoon when there is nothing", () => {
    const day = "2026-12-01";
    expect(boardHours(day, ZONE, [span(day, 845, 1255)])).toEqual({ fromHour: 14, toHour: 21 });
    expect(boardHours(day, ZONE, [span(day, 840, 1260), span(day, 1410, 1470)])).toEqual({
      fromHour: 14,
      toHour: 24,
    });
    expect(boardHours(day, ZONE, [])).toEqual({ fromHour: 12, toHour: 21 });
  });

  it("place an instant by the wall clock, on both days of a clock change too", () => {
    expect(hoursInto("2026-12-01", ZONE, instantOf("2026-12-01", 1050, ZONE))).toBe(17.5);
    expect(hoursInto("2026-03-08", ZONE, instantOf("2026-03-08", 1020, ZONE))).toBe(17);
    expect(hoursInto("2026-11-01", ZONE, instantOf("2026-11-01", 1020, ZONE))).toBe(17);
    expect(hoursInto("2026-12-01", ZONE, instantOf("2026-11-30", 1380, ZONE))).toBe(0);
    expect(hoursInto("2026-12-01", ZONE, instantOf("2026-12-02", 0, ZONE))).toBe(24);
  });

  it("begin a week on Monday, Sunday being its last day", () => {
    expect(["2026-11-30", "2026-12-06", "2026-12-07"].map(mondayOf)).toEqual([
      "2026-11-30",
      "2026-11-30",
      "2026-12-07",
    ]);
  });
});

describe("the gaps of a coach's day", () => {
  it("lie between what is booked, and are left out when no session fits them", () => {
    const academy = {
      ...calmAcademy(ZONE, everyDay(840, 1260)),
      busy: [
        {
          resource: "coach:coach-1" as const,
          startsAtMs: at("2026-12-01T19:10Z"),
          endsAtMs: at("2026-12-01T22:00Z"),
        },
        {
          resource: "coach:coach-2" as const,
          startsAtMs: at("2026-12-01T23:00Z"),
          endsAtMs: at("2026-12-01T23:30Z"),
        },
      ],
    };
    const [coach] = academy.coaches;
    if (!coach) throw new Error("Nobody coaches.");
    expect(freeSpans(academy, coach, "2026-12-01")).toEqual([
      { ...span("2026-12-01", 1020, 1260), zone: ZONE },
    ]);
    expect(freeSpans({ ...academy, sites: [] }, coach, "2026-12-01")).toEqual([]);
  });
});

describe("what keeps a log from being written", () => {
  const session = { kind: "bullpen" as const, athleteIds: ["a1", "a2"], checkedInIds: new Set(["a1"]) };
  const came = {
    athleteId: "a1",
    attendance: "came" as const,
    minutes: 30,
    pitches: 20,
    effort: 6,
    ...UNCOUNTED,
    work: [],
  };
  const nothing = { minutes: 0, pitches: 0, effort: null, ...UNCOUNTED, work: [] };
  const counted = { ...came, strikes: 20, topSpeed: 71.5, speedUnit: "mph" as const };
  const away = { athleteId: "a2", attendance: "no_show" as const, ...nothing };
  const cases: [
    string,
    Parameters<typeof sessionLogProblem>[0],
    Parameters<typeof sessionLogProblem>[1],
    string | null,
  ][] = [
    ["nothing", session, [came, away], null],
    ["an athlete left out", session, [came], "throw_entry_invalid"],
    ["an athlete twice", session, [came, came], "throw_entry_invalid"],
    ["a stranger", session, [came, { ...away, athleteId: "a3" }], "throw_entry_invalid"],
    ["pitches of one who stayed away", session, [came, { ...away, pitches: 1 }], "throw_entry_invalid"],
    ["the effort of one who stayed away", session, [came, { ...away, effort: 0 }], "throw_entry_invalid"],
    ["every pitch a strike, and a speed", session, [counted, away], null],
    ["more strikes than pitches", session, [{ ...came, strikes: 21 }, away], "throw_entry_invalid"],
    ["a speed without its unit", session, [{ ...came, topSpeed: 60 }, away], "throw_entry_invalid"],
    ["a unit without its speed", session, [{ ...came, speedUnit: "mph" }, away], "throw_entry_invalid"],
    ["a speed no pitch has", session, [{ ...counted, topSpeed: 111 }, away], "throw_entry_invalid"],
    [
      "a slow one in km/h",
      session,
      [{ ...counted, topSpeed: 31, speedUnit: "km_h" }, away],
      "throw_entry_invalid",
    ],
    ["a fast one in km/h", session, [{ ...counted, topSpeed: 150, speedUnit: "km_h" }, away], null],
    ["the strikes of one who stayed away", session, [came, { ...away, strikes: 0 }], "throw_entry_invalid"],
    ["one who came and was not asked", session, [came, { ...away, attendance: "came" }], "check_in_missing"],
    ["nobody to ask in dry work", { ...session, kind: "dry_work" }, [{ ...came, pitches: 0 }, away], null],
    ["pitches in dry work", { ...session, kind: "dry_work" }, [came, away], "throw_entry_invalid"],
  ];
  for (const [name, held, lines, reason] of cases) {
    it(name, () => expect(sessionLogProblem(held, lines)?.reason ?? null).toBe(reason));
  }
});

describe("a session that is over and not logged", () => {
  it("is one that was booked or checked in and has ended", () => {
    expect(isUnlogged({ state: "booked", endsAtMs: 10 }, 9)).toBe(false);
    expect(isUnlogged({ state: "booked", endsAtMs: 10 }, 10)).toBe(true);
    expect(isUnlogged({ state: "checked_in", endsAtMs: 10 }, 11)).toBe(true);
    for (const state of ["logged", "cancelled", "no_show"] as const) {
      expect(isUnlogged({ state, endsAtMs: 10 }, 11)).toBe(false);
    }
  });
});
