import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seasonThrowing, throwsOf } from "@/server/domain/season-reports/season-throwing";
import { sessionsAttended, sessionsInWords } from "@/server/domain/season-reports/sessions-attended";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { addDays } from "@/server/domain/time/calendar-day";
import { entry, type Throws } from "../throwing/arm-question";

const SEASON = { fromOn: "2026-03-01", toOn: "2026-10-31" };
const TODAY = "2026-11-25";

const thrown = (throws: Throws[], span = SEASON, today = TODAY) =>
  seasonThrowing(
    throws.map((each, index) => entry(each, { id: String(index) })),
    span,
    today,
  );

describe("the throwing of a season", () => {
  it("is told by month, with its outings and the most of one day", () => {
    const { months, words, weeks } = thrown([
      ["2026-02-28", 90],
      ["2026-03-01", 20, "bullpen"],
      ["2026-04-11", 30],
      ["2026-04-11", 25, "showcase"],
      ["2026-05-02", 40],
      ["2026-10-31", 60, "long_toss"],
      ["2026-11-01", 90],
    ]);
    expect(months.map(({ month, throws }) => [month, throws])).toEqual([
      ...[
        ["2026-03", 20],
        ["2026-04", 55],
        ["2026-05", 40],
        ["2026-06", 0],
        ["2026-07", 0],
        ["2026-08", 0],
      ],
      ...[
        ["2026-09", 0],
        ["2026-10", 60],
      ],
    ]);
    expect(months[1]).toEqual({ month: "2026-04", throws: 55, outings: 2, outingPitches: 55 });
    expect(words.slice(0, 2)).toEqual([
      "175 throws, 115 of them pitches off a mound. Of 2 games no innings are on the log.",
      "3 outings (games, live at-bats, showcases), 95 pitches; the most on one day were 55, on Sat 11 Apr 2026.",
    ]);
    expect(words[2]).toBe(
      "Whole months off from games, live at-bats and showcases, March 2026 to October 2026: 6 of 8 (5 in a row).",
    );
    expect(weeks.reduce((sum, week) => sum + throwsOf(week), 0)).toBe(175);
  });

  it("of a running season ends today, and a month before the log began is none off", () => {
    const { months, words } = thrown([["2026-06-10", 30]], SEASON, "2026-08-15");
    expect(months.map(({ month }) => month)).toEqual([
      ...["2026-03", "2026-04", "2026-05", "2026-06", "2026-07", "2026-08"],
    ]);
    expect(words).toContain("Whole months off from all throwing: 1 of 1.");
  });

  it("of nothing logged says so, and nothing of months off", () => {
    expect(thrown([]).words).toEqual(["Nothing was logged in this time."]);
    expect(thrown([["2026-02-28", 90]]).words).toEqual(["Nothing was logged in this time."]);
  });

  it("adds up alike by week and by month, for any log, with figures that are numbers", () => {
    const day = fc.integer({ min: 0, max: 400 }).map((days) => addDays("2026-01-01", days));
    const row = fc.tuple(day, fc.integer({ min: 0, max: 120 }), fc.constantFrom(...THROW_KINDS));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 30 }), day, (rows, today) => {
        fc.pre(today > SEASON.fromOn);
        const { weeks, months, words } = thrown(rows as Throws[], SEASON, today);
        const inWeeks = weeks.reduce((sum, week) => sum + throwsOf(week), 0);
        expect(months.reduce((sum, { throws }) => sum + throws, 0)).toBe(inWeeks);
        expect(words.join(" ")).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: 60 },
    );
  });
});

describe("sessions attended", () => {
  it("are counted of those booked, by kind, with the missed and those nobody logged", () => {
    const attended = sessionsAttended([
      { kind: "bullpen", state: "logged", attendance: "came" },
      { kind: "lesson", state: "logged", attendance: "came" },
      { kind: "lesson", state: "logged", attendance: "came" },
      { kind: "lesson", state: "logged", attendance: "no_show" },
      { kind: "group", state: "no_show", attendance: null },
      { kind: "group", state: "booked", attendance: null },
    ]);
    expect(attended).toMatchObject({ booked: 6, came: 3, missed: 2, notLogged: 1 });
    expect(sessionsInWords(attended)).toEqual([
      "3 of 6 booked sessions attended: lesson 2, bullpen 1.",
      "2 missed.",
      "1 is not logged yet.",
    ]);
  });

  it("of none booked are none, in words", () => {
    expect(sessionsInWords(sessionsAttended([]))).toEqual(["No session was booked in this time."]);
  });
});
