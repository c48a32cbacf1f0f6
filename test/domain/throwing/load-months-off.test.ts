import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthsOff } from "@/server/domain/throwing/load-months-off";
import { addDays } from "@/server/domain/time/calendar-day";
import { entry, type Throws } from "./arm-question";

const TODAY = "2026-11-25";
const OLD: Throws = ["2024-01-10", 20, "lesson"];

const off = (thrown: Throws[], today = TODAY) =>
  monthsOff(
    thrown.map((throws, index) => entry(throws, { id: String(index) })),
    today,
  );

describe("months off", () => {
  it("are counted over the twelve whole months before the running one", () => {
    expect(off([OLD])).toEqual({
      fromMonth: "2025-11",
      toMonth: "2026-10",
      monthsOnRecord: 12,
      withoutCompetition: { months: 12, longestRun: 12 },
      withoutThrowing: { months: 12, longestRun: 12 },
    });
  });

  it("tell a month without games from one without any throw, and find the longest run", () => {
    const thrown: Throws[] = [
      OLD,
      ["2026-03-31", 40],
      ["2026-04-01", 30, "showcase"],
      ["2026-06-15", 30, "live_at_bats"],
      ["2026-07-15", 30, "bullpen"],
      ["2026-08-15", 30, "long_toss"],
    ];
    expect(off(thrown)).toMatchObject({
      withoutCompetition: { months: 9, longestRun: 4 },
      withoutThrowing: { months: 7, longestRun: 4 },
    });
  });

  it("begin with the first month that the log covers whole", () => {
    expect(off([["2026-08-02", 40]])).toMatchObject({
      fromMonth: "2026-09",
      monthsOnRecord: 2,
      withoutThrowing: { months: 2, longestRun: 2 },
    });
    expect(off([["2026-08-01", 40]])).toMatchObject({
      fromMonth: "2026-08",
      monthsOnRecord: 3,
      withoutThrowing: { months: 2, longestRun: 2 },
    });
  });

  it.each([
    ["an empty log", []],
    ["a log that began within the running month", [["2026-11-02", 40]]],
    ["a log that began within the last whole month", [["2026-10-02", 40]]],
  ] satisfies [string, Throws[]][])("are not counted from %s", (_what, thrown) => {
    expect(off(thrown)).toBeNull();
  });

  it("take a day on which nothing was thrown for no throwing, and a corrected row for none", () => {
    expect(off([OLD, ["2026-05-05", 0]])?.withoutThrowing.months).toBe(12);
    const entries = [
      entry(OLD),
      entry(["2026-05-05", 40], { id: "wrong" }),
      entry(["2026-05-05", 0], { id: "right", replacesId: "wrong" }),
    ];
    expect(monthsOff(entries, TODAY)?.withoutThrowing.months).toBe(12);
  });

  it("hold 29 February and the turn of a year like any other day", () => {
    expect(off([OLD, ["2024-02-29", 40]], "2024-03-01")).toMatchObject({
      toMonth: "2024-02",
      withoutThrowing: { months: 0, longestRun: 0 },
    });
    expect(off([OLD], "2026-01-01")).toMatchObject({ fromMonth: "2025-01", toMonth: "2025-12" });
  });

  it("are never more for another throw, and never fewer without games than without throwing", () => {
    const day = fc.integer({ min: 0, max: 500 }).map((days) => addDays("2025-07-01", days));
    const kind = fc.constantFrom("game", "bullpen", "long_toss" as const);
    const thrown = fc.tuple(day, fc.integer({ min: 1, max: 90 }), kind) as fc.Arbitrary<Throws>;
    fc.assert(
      fc.property(fc.array(thrown, { maxLength: 20 }), thrown, (all, more) => {
        const before = off([OLD, ...all]);
        const after = off([OLD, ...all, more]);
        if (!before || !after) throw new Error("The log is long enough.");
        expect(after.withoutThrowing.months).toBeLessThanOrEqual(before.withoutThrowing.months);
        expect(after.withoutThrowing.longestRun).toBeLessThanOrEqual(before.withoutThrowing.longestRun);
        expect(before.withoutCompetition.months).toBeGreaterThanOrEqual(before.withoutThrowing.months);
      }),
    );
  });
});
