import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { throwRecord } from "@/server/domain/throwing/load-by-day";
import { loadByWeek } from "@/server/domain/throwing/load-by-week";
import { loadRatios } from "@/server/domain/throwing/load-ratios";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { throwsByWeek } from "@/server/domain/throwing/throws-by-week";
import { addDays } from "@/server/domain/time/calendar-day";
import { entry } from "./arm-question";

describe("the record of an arm", () => {
  it("has a number for every day from the first entry on, whatever was thrown", () => {
    const entries = [
      entry(["2026-11-26", 30, "long_toss"], { id: "toss" }),
      entry(["2026-11-24", 40]),
      entry(["2026-11-26", 20, "bullpen"]),
    ];
    expect(throwRecord(entries, "2026-11-27")).toEqual({ firstDay: "2026-11-24", throws: [40, 0, 50, 0] });
  });

  it("begins with a day on which nothing was thrown, if that was reported", () => {
    const entries = [entry(["2026-11-20", 0]), entry(["2026-11-22", 10])];
    expect(throwRecord(entries, "2026-11-22")).toEqual({ firstDay: "2026-11-20", throws: [0, 0, 10] });
  });

  it("neither counts nor begins with what was corrected away", () => {
    const entries = [
      entry(["2026-11-01", 40], { id: "wrong" }),
      entry(["2026-11-24", 45], { id: "right", replacesId: "wrong" }),
    ];
    expect(throwRecord(entries, "2026-11-24")).toEqual({ firstDay: "2026-11-24", throws: [45] });
  });

  it("is none before the first entry", () => {
    expect(throwRecord([], "2026-11-24")).toBeNull();
    expect(throwRecord([entry(["2026-11-25", 40])], "2026-11-24")).toBeNull();
  });
});

describe("load by week", () => {
  it("takes each week at its Sunday and the running one as of the last day", () => {
    const throws = new Array<number>(30).fill(10);
    const weeks = loadByWeek({ firstDay: "2026-10-26", throws }, "2026-01-01");
    expect(weeks.map(({ weekOf, asOf, throws: count }) => [weekOf, asOf, count])).toEqual([
      ["2026-10-26", "2026-11-01", 70],
      ["2026-11-02", "2026-11-08", 70],
      ["2026-11-09", "2026-11-15", 70],
      ["2026-11-16", "2026-11-22", 70],
      ["2026-11-23", "2026-11-24", 20],
    ]);
    expect(weeks.map((week) => week.coupled)).toEqual([null, null, null, 1, 1]);
  });

  it("begins with the week asked for, though its ratios look back past it", () => {
    const throws = Array.from({ length: 60 }, (_, index) => (index * 7) % 30);
    const [first] = loadByWeek({ firstDay: "2026-09-28", throws }, "2026-11-05");
    expect(first?.weekOf).toBe("2026-11-02");
    expect(first?.weighted).toBe(loadRatios(throws)[41]?.weighted);
  });

  it("counts a first week that the record cuts from the record's first day", () => {
    expect(loadByWeek({ firstDay: "2026-11-27", throws: [5, 6] }, "2026-11-01")).toMatchObject([
      { weekOf: "2026-11-23", asOf: "2026-11-28", throws: 11 },
    ]);
  });

  it("counts every week as the bars of the year do", () => {
    const thrown = fc.tuple(
      fc.integer({ min: 0, max: 80 }),
      fc.integer({ min: 0, max: 100 }),
      fc.constantFrom(...THROW_KINDS),
    );
    fc.assert(
      fc.property(fc.array(thrown, { minLength: 1, maxLength: 40 }), (all) => {
        const entries = all.map(([days, pitches, kind], index) =>
          entry([addDays("2026-02-01", days), pitches, kind], { id: String(index) }),
        );
        const today = addDays("2026-02-01", 80);
        const record = throwRecord(entries, today);
        if (!record) throw new Error("There are entries.");
        const bars = throwsByWeek(entries, record.firstDay, today).map(({ weekOf, counts }) => {
          return [weekOf, Object.values(counts).reduce((sum, count) => sum + count, 0)];
        });
        const weeks = loadByWeek(record, "2026-01-01");
        expect(weeks.map(({ weekOf, throws }) => [weekOf, throws])).toEqual(bars);
      }),
    );
  });
});
