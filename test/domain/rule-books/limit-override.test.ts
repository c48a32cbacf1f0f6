import { describe, expect, it } from "vitest";
import { overrideProblem, standingOverrides } from "@/server/domain/rule-books/limit-override";

const TODAY = "2026-11-25";
const BOUNDS = { today: TODAY, byTheBook: 20, already: 0, isStanding: false };

describe("an override of a limit", () => {
  it.each([
    ["today", { day: TODAY, pitches: 21 }, {}],
    ["the last day ahead", { day: "2026-12-09", pitches: 21 }, {}],
    ["a resting arm", { day: TODAY, pitches: 1 }, { byTheBook: 0 }],
    ["taking one back", { day: TODAY, pitches: 0 }, { isStanding: true }],
  ])("stands for %s", (_case, override, change) => {
    expect(overrideProblem(override, { ...BOUNDS, ...change })).toBeNull();
  });

  it.each([
    ["a day that is past", { day: "2026-11-24", pitches: 60 }, {}, "Tue 24 Nov is past"],
    ["a day too far ahead", { day: "2026-12-10", pitches: 60 }, {}, "at most 14 days before"],
    [
      "no more than the books leave",
      { day: TODAY, pitches: 20 },
      {},
      "20 in all on Wed 25 Nov needs no override",
    ],
    [
      "no more than is on the day already",
      { day: TODAY, pitches: 30 },
      { byTheBook: 0, already: 30 },
      "30 in all",
    ],
    [
      "an age without a published limit",
      { day: TODAY, pitches: 60 },
      { byTheBook: null },
      "nothing to override",
    ],
    ["taking back what is not there", { day: TODAY, pitches: 0 }, {}, "No override stands on Wed 25 Nov"],
  ])("is refused for %s", (_case, override, change, words) => {
    expect(overrideProblem(override, { ...BOUNDS, ...change })).toContain(words);
  });
});

describe("the overrides that stand", () => {
  const row = (id: string, day: string, pitches: number, atMs: number) => ({ id, day, pitches, atMs });

  it("are the latest of each day, in the order of days", () => {
    const rows = [
      row("a", "2026-11-27", 50, 1),
      row("b", "2026-11-26", 60, 2),
      row("c", "2026-11-27", 40, 3),
    ];
    expect(standingOverrides(rows).map(({ id }) => id)).toEqual(["b", "c"]);
    expect(standingOverrides(rows.toReversed()).map(({ id }) => id)).toEqual(["b", "c"]);
  });

  it("are the same in whatever order rows of one millisecond are read", () => {
    const rows = [row("a", TODAY, 50, 1), row("b", TODAY, 0, 1)];
    expect(standingOverrides(rows)).toEqual(standingOverrides(rows.toReversed()));
  });

  it("leave out a day whose latest took it back, until it is overridden anew", () => {
    const rows = [row("a", TODAY, 50, 1), row("b", TODAY, 0, 2)];
    expect(standingOverrides(rows)).toEqual([]);
    expect(standingOverrides([...rows, row("c", TODAY, 30, 3)]).map(({ id }) => id)).toEqual(["c"]);
  });
});
