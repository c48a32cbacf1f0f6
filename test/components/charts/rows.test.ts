import { describe, expect, it } from "vitest";
import { scoreRows } from "@/components/charts/score-rows";
import { monthLabels, weekTotal } from "@/components/charts/week-rows";

describe("judgements of several series", () => {
  const axis = { startDay: "2026-11-01", endDay: "2026-12-01" };

  it("come in the order of their days, each under its own series", () => {
    const rows = scoreRows(
      [
        { name: "open side", points: [{ day: "2026-11-20", score: 3 }] },
        {
          name: "back",
          points: [
            { day: "2026-11-02", score: 0 },
            { day: "2026-11-20", score: 2 },
          ],
        },
      ],
      axis,
    );
    expect(rows).toEqual([
      { offset: 1, day: "2026-11-02", series: 1, score: 0 },
      { offset: 19, day: "2026-11-20", series: 0, score: 3 },
      { offset: 19, day: "2026-11-20", series: 1, score: 2 },
    ]);
  });

  it("are none without points", () => {
    expect(scoreRows([{ name: "back", points: [] }], axis)).toEqual([]);
  });
});

describe("weeks", () => {
  const kinds = [
    { key: "outing", label: "outings" },
    { key: "bullpen", label: "bullpens" },
  ];

  it("add up the kinds that are shown, a missing one as nothing", () => {
    expect(weekTotal({ weekOf: "2026-11-02", counts: { outing: 51, other: 9 } }, kinds)).toBe(51);
    expect(weekTotal({ weekOf: "2026-11-02", counts: { outing: 51, bullpen: 20 } }, kinds)).toBe(71);
  });

  it("name a month once, at the first week that begins in it", () => {
    const weeks = ["2026-10-19", "2026-10-26", "2026-11-02", "2026-11-09"].map((weekOf) => ({
      weekOf,
      counts: {},
    }));
    expect([...monthLabels(weeks)]).toEqual([
      ["2026-10-19", "Oct"],
      ["2026-11-02", "Nov"],
    ]);
  });

  it("leave out a first week that is the last of its month", () => {
    const weeks = ["2026-10-26", "2026-11-02", "2026-11-09"].map((weekOf) => ({ weekOf, counts: {} }));
    expect([...monthLabels(weeks)]).toEqual([["2026-11-02", "Nov"]]);
  });
});
