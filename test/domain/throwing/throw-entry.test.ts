import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayLoads } from "@/server/domain/throwing/day-load";
import {
  CAUTIOUS_READING,
  countsTowardLimit,
  currentEntries,
  MOUND_WORK_KINDS,
  THROW_KINDS,
  throwReadingSchema,
} from "@/server/domain/throwing/throw-entry";
import { ask, entry, plan } from "./arm-question";

const GAMES_ONLY = { ...CAUTIOUS_READING, countedKinds: [] };

describe("what counts toward the limit", () => {
  it.each([
    ["game", true, true],
    ["live_at_bats", true, true],
    ["showcase", true, true],
    ["bullpen", true, false],
    ["lesson", true, false],
    ["flat_ground", false, false],
    ["long_toss", false, false],
    ["weighted_balls", false, false],
  ] as const)("%s: %s by the cautious reading, %s when games only count", (kind, cautious, gamesOnly) => {
    expect(countsTowardLimit(kind, CAUTIOUS_READING)).toBe(cautious);
    expect(countsTowardLimit(kind, GAMES_ONLY)).toBe(gamesOnly);
  });

  it("is settable kind by kind for mound work alone", () => {
    expect(MOUND_WORK_KINDS).toEqual(["bullpen", "lesson"]);
    const lessonsOnly = throwReadingSchema.parse({ countedKinds: ["lesson"], askAfterDays: 7 });
    expect(THROW_KINDS.filter((kind) => countsTowardLimit(kind, lessonsOnly))).toEqual([
      "game",
      "lesson",
      "live_at_bats",
      "showcase",
    ]);
    expect(throwReadingSchema.safeParse({ countedKinds: ["game"], askAfterDays: 7 }).success).toBe(false);
    expect(throwReadingSchema.safeParse({ countedKinds: ["long_toss"], askAfterDays: 7 }).success).toBe(
      false,
    );
    expect(throwReadingSchema.safeParse({ countedKinds: [], askAfterDays: 0 }).success).toBe(false);
  });

  it("adds up a day from entries and plans, names their rows, and knows no day without pitches", () => {
    const loads = dayLoads(
      ask("2026-11-25", {
        thrown: [
          ["2026-11-25", 30],
          ["2026-11-25", 12, "bullpen"],
          ["2026-11-25", 80, "long_toss"],
          ["2026-11-24", 0],
        ],
        planned: [
          ["2026-11-25", 9, "lesson"],
          ["2026-11-26", 0, "lesson"],
          ["2026-11-27", 40, "flat_ground"],
        ],
      }),
    );
    expect([...loads.values()]).toMatchObject([
      {
        day: "2026-11-25",
        pitches: 51,
        entryIds: ["2026-11-25", "2026-11-25"],
        plannedIds: [plan(["2026-11-25", 9]).id],
      },
    ]);
  });
});

describe("corrections", () => {
  const first = entry(["2026-11-21", 50], { id: "a", reportedAtMs: 100 });
  const second = entry(["2026-11-21", 45], { id: "b", replacesId: "a", reportedAtMs: 200 });
  const third = entry(["2026-11-22", 47], { id: "c", replacesId: "b", reportedAtMs: 300 });
  const other = entry(["2026-11-23", 10], { id: "d", reportedAtMs: 250 });

  it.each([
    ["nothing", [], []],
    ["a row alone", [first], ["a"]],
    ["a row and its correction", [first, second], ["b"]],
    ["a chain, in any order", [third, first, second], ["c"]],
    ["another row beside a chain", [first, second, other, third], ["d", "c"]],
    ["a correction whose row is not here", [second], ["b"]],
  ])("leave the last word: %s", (_name, entries, ids) => {
    expect(currentEntries(entries).map((row) => row.id)).toEqual(ids);
  });

  it("change nothing when they are worked out twice, and leave one row of any chain", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 99 }), (length, turn) => {
        const chain = Array.from({ length }, (_, index) =>
          entry(["2026-11-21", index], { id: `${index}`, replacesId: index === 0 ? null : `${index - 1}` }),
        );
        const turned = [...chain.slice(turn % length), ...chain.slice(0, turn % length)];
        const current = currentEntries(turned);
        expect(current.map((row) => row.id)).toEqual([`${length - 1}`]);
        expect(currentEntries(current)).toEqual(current);
      }),
    );
  });
});
