import { describe, expect, it } from "vitest";
import { plannedWithoutRoom } from "@/server/domain/throwing/flag-planned";
import { CAUTIOUS_READING } from "@/server/domain/throwing/throw-entry";
import { ask, type Throws } from "./arm-question";

const BOOKED: Throws[] = [
  ["2026-12-03", 40, "lesson"],
  ["2026-12-01", 30, "bullpen"],
];

const flagged = (question: Parameters<typeof ask>[1]) =>
  plannedWithoutRoom(ask("2026-11-28", { planned: BOOKED, ...question })).map(({ planned, answer }) => [
    planned.plannedOn,
    answer.status,
    answer.pitches,
    answer.firstFreeDay,
  ]);

describe("planned sessions a later log leaves no room for", () => {
  it("names none while the plan holds together", () => {
    expect(flagged({})).toEqual([]);
    expect(flagged({ thrown: [["2026-11-27", 50]] })).toEqual([]);
  });

  it("names Tuesday's bullpen when 68 are logged on Saturday, and leaves Thursday's lesson alone", () => {
    expect(flagged({ thrown: [["2026-11-28", 68]] })).toEqual([["2026-12-01", "resting", 0, "2026-12-03"]]);
  });

  it("names both, earliest first, when both have lost their room", () => {
    expect(flagged({ planned: [...BOOKED, ["2026-12-04", 30]], thrown: [["2026-11-30", 51]] })).toEqual([
      ["2026-12-01", "resting", 0, "2026-12-06"],
      ["2026-12-03", "resting", 0, "2026-12-04"],
    ]);
  });

  it("says the number a bullpen is down to before an outing added later", () => {
    expect(
      flagged({
        planned: [
          ["2026-12-01", 30, "bullpen"],
          ["2026-12-02", 60],
        ],
      }),
    ).toEqual([["2026-12-01", "at_most", 20, null]]);
    expect(
      flagged({
        planned: [
          ["2026-12-01", 20, "bullpen"],
          ["2026-12-02", 60],
        ],
      }),
    ).toEqual([]);
  });

  it("leaves games to their team, past plans to the log, and sessions that do not count alone", () => {
    const thrown: Throws[] = [["2026-11-28", 80]];
    expect(flagged({ thrown, planned: [["2026-11-30", 40, "game"]] })).toEqual([]);
    expect(flagged({ thrown, planned: [["2026-11-30", 40, "long_toss"]] })).toEqual([]);
    expect(flagged({ thrown, planned: [["2026-11-30", 0, "lesson"]] })).toEqual([]);
    expect(flagged({ thrown, planned: [["2026-11-27", 90, "lesson"]] })).toEqual([]);
    const reading = { ...CAUTIOUS_READING, countedKinds: ["lesson" as const] };
    expect(flagged({ thrown, planned: [["2026-11-30", 40, "bullpen"]], reading })).toEqual([]);
    expect(flagged({ thrown, planned: [["2026-11-30", 40, "lesson"]], reading })).toHaveLength(1);
  });

  it("names no session for its number at an age without a published limit", () => {
    expect(flagged({ bornOn: "2020-12-31", thrown: [["2026-11-28", 80]] })).toEqual([]);
  });

  it("names everything planned that throws while pain stands, of whatever kind", () => {
    const pain = {
      kind: "pain" as const,
      firstFeltOn: "2026-11-28",
      lastFeltOn: "2026-11-28",
      reportIds: ["a"],
    };
    const planned: Throws[] = [
      ["2026-11-29", 60, "game"],
      ["2026-11-30", 20, "long_toss"],
      ["2026-12-01", 0, "lesson"],
      ["2026-12-02", 20, "bullpen"],
    ];
    expect(flagged({ pain, planned })).toEqual([
      ["2026-11-29", "pain", 0, null],
      ["2026-11-30", "pain", 0, null],
      ["2026-12-02", "pain", 0, null],
    ]);
  });
});
