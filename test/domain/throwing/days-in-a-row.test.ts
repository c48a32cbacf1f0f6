import { describe, expect, it } from "vitest";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { type ArmQuestion, firstDayWithRoom, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import type { Rule } from "@/server/domain/throwing/rule";
import { ask, type Throws } from "./arm-question";

describe("days in a row", () => {
  const two: Throws[] = [
    ["2026-11-23", 10],
    ["2026-11-24", 10],
  ];

  it("allows a second day and no third, however few the pitches", () => {
    expect(pitchesAllowed(ask("2026-11-24", { thrown: two.slice(0, 1) })).pitches).toBe(85);
    const third = pitchesAllowed(ask("2026-11-25", { thrown: two }));
    expect(third).toMatchObject({ status: "resting", pitches: 0, firstFreeDay: "2026-11-26" });
    expect(third.reasons).toEqual([
      {
        kind: "days_in_a_row",
        days: ["2026-11-23", "2026-11-24"],
        maxDays: 2,
        entryIds: ["2026-11-23", "2026-11-24"],
        plannedIds: [],
      },
    ]);
  });

  it.each([
    ["before", "2026-11-22"],
    ["after", "2026-11-25"],
  ])("allows none on the day %s two", (_where, day) => {
    expect(pitchesAllowed(ask(day, { planned: two }))).toMatchObject({ status: "resting", pitches: 0 });
  });

  it("allows none between two, and any on either side of a free day", () => {
    const around: Throws[] = [
      ["2026-11-23", 10],
      ["2026-11-25", 10],
    ];
    expect(
      pitchesAllowed(ask("2026-11-24", { thrown: around.slice(0, 1), planned: around.slice(1) })),
    ).toMatchObject({
      pitches: 0,
      reasons: [{ kind: "days_in_a_row", days: ["2026-11-23", "2026-11-25"] }],
    });
    expect(pitchesAllowed(ask("2026-11-21", { planned: around })).pitches).toBe(35);
    expect(pitchesAllowed(ask("2026-11-27", { thrown: around })).pitches).toBe(85);
  });

  it("takes every counted kind for an appearance, and long toss for none", () => {
    const bullpens = two.map(([day, pitches]): Throws => [day, pitches, "bullpen"]);
    const tosses = two.map(([day, pitches]): Throws => [day, pitches, "long_toss"]);
    expect(pitchesAllowed(ask("2026-11-25", { thrown: bullpens })).pitches).toBe(0);
    expect(pitchesAllowed(ask("2026-11-25", { thrown: tosses })).pitches).toBe(85);
  });

  it("knows books without the rule, and books with three days", () => {
    const books = (maxDays: number | null): ArmQuestion["books"] => [
      {
        ...USA_BASEBALL_2018,
        rules: USA_BASEBALL_2018.rules.flatMap((rule): Rule[] => {
          if (rule.kind !== "days_in_a_row") return [rule];
          return maxDays === null ? [] : [{ ...rule, maxDays }];
        }),
      },
    ];
    expect(pitchesAllowed(ask("2026-11-25", { thrown: two, books: books(null) })).pitches).toBe(85);
    expect(pitchesAllowed(ask("2026-11-25", { thrown: two, books: books(3) })).pitches).toBe(85);
    const three: Throws[] = [...two, ["2026-11-22", 10]];
    expect(pitchesAllowed(ask("2026-11-25", { thrown: three, books: books(3) })).pitches).toBe(0);
    expect(firstDayWithRoom(ask("2026-11-25", { thrown: two, books: books(null) }), 85)).toBe("2026-11-25");
  });
});
