import { describe, expect, it } from "vitest";
import {
  figureInWords,
  loadInWords,
  monthsOffInWords,
  twelveMonthsInWords,
} from "@/server/domain/throwing/load-in-words";
import { monthsOff } from "@/server/domain/throwing/load-months-off";
import { twelveMonths } from "@/server/domain/throwing/load-year";
import { entry } from "./arm-question";

const TODAY = "2026-11-25";

describe("twelve months of an arm", () => {
  it("add up pitches off a mound, those in competition, and outs", () => {
    const entries = [
      entry(["2026-05-01", 40], { outs: 10 }),
      entry(["2026-05-09", 35], { outs: 9 }),
      entry(["2026-05-16", 20]),
      entry(["2026-05-20", 15, "live_at_bats"]),
      entry(["2026-06-01", 30, "bullpen"]),
      entry(["2026-06-03", 25, "lesson"]),
      entry(["2026-06-05", 60, "long_toss"]),
    ];
    expect(twelveMonths(entries, TODAY)).toEqual({
      fromDay: "2025-11-26",
      toDay: TODAY,
      moundPitches: 165,
      competitionPitches: 110,
      outs: 19,
      gamesWithoutOuts: 1,
    });
  });

  it.each([
    ["on the same date a year before", "2025-11-25", 0],
    ["a day later", "2025-11-26", 40],
    ["today", TODAY, 40],
  ])("count a game %s as %s says: %i", (_when, day, pitches) => {
    expect(twelveMonths([entry([day, 40])], TODAY).moundPitches).toBe(pitches);
  });

  it("begin on 1 March after 29 February, and leave out what was corrected away", () => {
    expect(twelveMonths([], "2028-02-29").fromDay).toBe("2027-03-01");
    const entries = [
      entry(["2026-05-01", 40], { id: "wrong", outs: 9 }),
      entry(["2026-05-01", 0], { id: "right", replacesId: "wrong" }),
    ];
    expect(twelveMonths(entries, TODAY)).toMatchObject({ moundPitches: 0, outs: 0, gamesWithoutOuts: 0 });
  });
});

describe("load in words", () => {
  it("says the year with what is missing from it", () => {
    const year = twelveMonths([entry(["2026-05-01", 40], { outs: 10 }), entry(["2026-05-09", 35])], TODAY);
    expect(twelveMonthsInWords(year, "2026-05-01")).toEqual([
      "Since Wed 26 Nov 2025: 75 pitches off a mound, 75 of them in games, live at-bats and showcases.",
      "The log begins on Fri 1 May 2026.",
      "Innings pitched: 3 1/3.",
      "1 game has no innings on the log.",
    ]);
    expect(twelveMonthsInWords(twelveMonths([], TODAY), null)).toEqual([
      "Since Wed 26 Nov 2025: 0 pitches off a mound, 0 of them in games, live at-bats and showcases.",
    ]);
  });

  it("says the months off with the longest run, and that others are not counted", () => {
    const entries = [entry(["2026-05-31", 40]), entry(["2026-07-04", 20, "bullpen"])];
    expect(monthsOffInWords(monthsOff(entries, TODAY))).toEqual([
      "Whole months off from games, live at-bats and showcases, June 2026 to October 2026: 5 of 5 (5 in a row).",
      "Whole months off from all throwing: 4 of 5 (3 in a row).",
      "Months that the log does not cover whole are not counted.",
    ]);
    const played = ["2026-09-30", "2026-10-04"].map((day) => entry([day, 20]));
    expect(monthsOffInWords(monthsOff(played, TODAY))[0]).toBe(
      "Whole months off from games, live at-bats and showcases, October 2026: none of 1.",
    );
    expect(monthsOffInWords(null)).toEqual([
      "No whole calendar month is on the log yet, so none is counted as off.",
    ]);
  });

  it("says a day without a verdict, and why it has no ratio yet", () => {
    const ratios = { coupled: 1.14, uncoupled: 1.2, weighted: 1.26 };
    const none = { coupled: null, uncoupled: null, weighted: null };
    expect(loadInWords({ mean7: 150 / 7, mean28: 18.75, ...ratios }, TODAY)).toBe(
      "Wed 25 Nov: 21.4 throws a day over the last 7 days, 18.8 over the last 28.",
    );
    expect(loadInWords({ mean7: 3, mean28: null, ...none }, TODAY)).toBe(
      "Wed 25 Nov: 3.0 throws a day over the last 7 days. The log is younger than 28 days, so there is no ratio yet.",
    );
    expect(loadInWords({ mean7: null, mean28: null, ...none }, TODAY)).toBe(
      "Wed 25 Nov: the log is younger than 7 days.",
    );
  });

  it("writes figures to two decimals, and a dash for none", () => {
    expect([1.2, 0, 1.2581665, null].map(figureInWords)).toEqual(["1.20", "0.00", "1.26", "–"]);
  });
});
