import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { isOutingKind, mondayOf, throwsByWeek } from "@/server/domain/throwing/throws-by-week";
import { addDays, weekdayOf } from "@/server/domain/time/calendar-day";
import { entry } from "./arm-question";

describe("throws by week", () => {
  it("begin weeks on Monday and hold weeks without throws", () => {
    const weeks = throwsByWeek([entry(["2026-11-29", 40])], "2026-11-18", "2026-12-01");
    expect(weeks.map((week) => [week.weekOf, week.counts.games])).toEqual([
      ["2026-11-16", 0],
      ["2026-11-23", 40],
      ["2026-11-30", 0],
    ]);
  });

  it("give one week when both days lie in it", () => {
    expect(throwsByWeek([], "2026-11-25", "2026-11-25").map((week) => week.weekOf)).toEqual(["2026-11-23"]);
  });

  it("add up kinds by group and leave replaced rows out", () => {
    const entries = [
      entry(["2026-11-23", 40], { id: "first" }),
      entry(["2026-11-23", 45], { id: "second", replacesId: "first" }),
      entry(["2026-11-24", 20, "showcase"]),
      entry(["2026-11-25", 30, "bullpen"]),
      entry(["2026-11-26", 25, "lesson"]),
      entry(["2026-11-27", 60, "long_toss"]),
    ];
    expect(throwsByWeek(entries, "2026-11-23", "2026-11-29")[0]?.counts).toEqual({
      games: 65,
      bullpens: 30,
      lessons: 25,
      other: 60,
    });
  });

  it("lose no throw and count none twice", () => {
    const thrown = fc.record({
      days: fc.integer({ min: 0, max: 60 }),
      pitches: fc.integer({ min: 0, max: 100 }),
      kind: fc.constantFrom(...THROW_KINDS),
    });
    fc.assert(
      fc.property(fc.array(thrown, { maxLength: 30 }), (all) => {
        const entries = all.map(({ days, pitches, kind }, index) =>
          entry([addDays("2026-02-01", days), pitches, kind], { id: String(index) }),
        );
        const weeks = throwsByWeek(entries, "2026-02-01", addDays("2026-02-01", 60));
        const counted = weeks.flatMap(({ counts }) => Object.values(counts)).reduce((a, b) => a + b, 0);
        expect(counted).toBe(all.reduce((sum, { pitches }) => sum + pitches, 0));
      }),
    );
  });

  it("take games, live at-bats and showcases for outings, and nothing else", () => {
    expect(THROW_KINDS.filter(isOutingKind)).toEqual(["game", "live_at_bats", "showcase"]);
  });

  it("find the Monday across year end and clock changes", () => {
    expect(mondayOf("2027-01-01")).toBe("2026-12-28");
    expect(mondayOf("2026-03-08")).toBe("2026-03-02");
    expect(weekdayOf(mondayOf("2028-02-29"))).toBe(1);
  });
});
