import { describe, expect, it } from "vitest";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { CAUTIOUS_READING } from "@/server/domain/throwing/throw-entry";
import { ask, entry, type Throws } from "./arm-question";

// November and December 2026: Wed 25 Nov, Sat 28 Nov, Sun 29 Nov, Tue 1 Dec. The athlete is 12 unless said otherwise.

describe("pitches allowed, looking back", () => {
  it("keeps 51 on Wednesday off the mound until Sunday", () => {
    const thrown: Throws[] = [["2026-11-25", 51]];
    expect(pitchesAllowed(ask("2026-11-28", { thrown }))).toEqual({
      status: "resting",
      day: "2026-11-28",
      pitches: 0,
      outs: null,
      boundBy: "usa-baseball-2018",
      boundByName: null,
      warnings: [],
      firstFreeDay: "2026-11-29",
      nothingReportedSince: null,
      reasons: [
        {
          kind: "rest_owed",
          thrownOn: "2026-11-25",
          pitches: 51,
          countedPitches: 51,
          restDays: 3,
          freeOn: "2026-11-29",
          aboveDailyMax: false,
          entryIds: ["2026-11-25"],
          plannedIds: [],
        },
      ],
    });
    expect(pitchesAllowed(ask("2026-11-29", { thrown }))).toMatchObject({ status: "at_most", pitches: 85 });
  });

  it("asks for the rest of the day's total, not of each outing in it", () => {
    const thrown: Throws[] = [
      ["2026-11-25", 30],
      ["2026-11-25", 21, "bullpen"],
    ];
    expect(pitchesAllowed(ask("2026-11-26", { thrown })).firstFreeDay).toBe("2026-11-29");
  });

  it("takes what is on the day itself off its number, thrown and planned alike", () => {
    const answer = pitchesAllowed(
      ask("2026-11-25", { thrown: [["2026-11-25", 40]], planned: [["2026-11-25", 25, "lesson"]] }),
    );
    expect(answer).toMatchObject({ status: "at_most", pitches: 20, firstFreeDay: null });
    expect(answer.reasons).toEqual([
      { kind: "daily_max", ageYears: 12, dailyMaxPitches: 85, finishesBatter: false },
      {
        kind: "already_today",
        pitches: 65,
        entryIds: ["2026-11-25"],
        plannedIds: ["plan 2026-11-25"],
      },
    ]);
  });

  it.each([
    [84, 1, null],
    [85, 0, "2026-11-30"],
    [86, 0, "2026-11-30"],
  ])("leaves of a day with %i thrown %i", (pitches, left, firstFreeDay) => {
    const answer = pitchesAllowed(ask("2026-11-25", { thrown: [["2026-11-25", pitches]] }));
    expect(answer).toMatchObject({ status: "at_most", pitches: left, firstFreeDay });
  });

  it("counts what was planned and never logged as thrown", () => {
    const planned: Throws[] = [["2026-11-24", 36, "bullpen"]];
    const answer = pitchesAllowed(ask("2026-11-26", { planned }));
    expect(answer).toMatchObject({ status: "resting", firstFreeDay: "2026-11-27" });
    expect(answer.reasons).toMatchObject([{ entryIds: [], plannedIds: ["plan 2026-11-24"] }]);
  });

  it("believes the correction and not the row it replaces", () => {
    const entries = [
      entry(["2026-11-25", 66], { id: "slip" }),
      entry(["2026-11-25", 16], { id: "corrected", replacesId: "slip" }),
    ];
    expect(pitchesAllowed(ask("2026-11-26", { entries })).pitches).toBe(85);
  });

  it("names every rest that covers the day, the longest lasting first", () => {
    const thrown: Throws[] = [
      ["2026-11-25", 36],
      ["2026-11-24", 66],
    ];
    const { reasons, firstFreeDay } = pitchesAllowed(ask("2026-11-26", { thrown }));
    expect(reasons).toMatchObject([
      { freeOn: "2026-11-29" },
      { freeOn: "2026-11-28" },
      { kind: "days_in_a_row" },
    ]);
    expect(firstFreeDay).toBe("2026-11-29");
  });
});

describe("pitches allowed, looking ahead", () => {
  const thrown: Throws[] = [["2026-11-25", 51]];
  const planned: Throws[] = [["2026-12-01", 60]];

  it("leaves Sunday at most 35 so that Tuesday's outing has Monday's rest", () => {
    const answer = pitchesAllowed(ask("2026-11-29", { thrown, planned }));
    expect(answer.pitches).toBe(35);
    expect(answer.reasons[0]).toEqual({
      kind: "outing_ahead",
      outingOn: "2026-12-01",
      restDaysBetween: 1,
      totalPitches: 35,
      entryIds: [],
      plannedIds: ["plan 2026-12-01"],
    });
  });

  it.each([
    ["2026-11-30", 20],
    ["2026-11-29", 35],
    ["2026-11-28", 50],
    ["2026-11-27", 65],
    ["2026-11-26", 85],
  ])("on %s leaves %i before that Tuesday", (day, pitches) => {
    expect(pitchesAllowed(ask(day, { planned })).pitches).toBe(pitches);
  });

  it("takes what is already thrown today off what the outing leaves", () => {
    const answer = pitchesAllowed(ask("2026-11-29", { thrown: [["2026-11-29", 30]], planned }));
    expect(answer.pitches).toBe(5);
    expect(answer.reasons.map((reason) => reason.kind)).toEqual([
      "outing_ahead",
      "already_today",
      "daily_max",
    ]);
  });

  it("is held by the nearest outing, a booked bullpen or lesson as much as a game", () => {
    const booked: Throws[] = [
      ["2026-12-01", 60],
      ["2026-11-30", 15, "lesson"],
    ];
    expect(pitchesAllowed(ask("2026-11-29", { planned: booked }))).toMatchObject({ pitches: 0 });
    expect(pitchesAllowed(ask("2026-11-28", { planned: booked }))).toMatchObject({ pitches: 35 });
  });

  it.each([
    ["a session without throws", 0, "lesson"],
    ["long toss", 80, "long_toss"],
    ["flat ground", 40, "flat_ground"],
    ["weighted balls", 40, "weighted_balls"],
  ] as const)("is not held by %s", (_name, pitches, kind) => {
    expect(pitchesAllowed(ask("2026-11-29", { planned: [["2026-11-30", pitches, kind]] })).pitches).toBe(85);
  });

  it("is not held by a bullpen where the academy counts games only", () => {
    const reading = { ...CAUTIOUS_READING, countedKinds: [] };
    const bullpens: Throws[] = [
      ["2026-11-28", 70, "bullpen"],
      ["2026-11-30", 30, "bullpen"],
    ];
    expect(pitchesAllowed(ask("2026-11-29", { planned: bullpens, reading })).pitches).toBe(85);
  });

  it("finds the first day that is free given everything planned, not only rested", () => {
    const crowded: Throws[] = [
      ["2026-11-30", 20],
      ["2026-12-01", 85],
    ];
    // Sunday would be the first of three days in a row, Monday and Tuesday are used up, and 85 ask for four days.
    expect(pitchesAllowed(ask("2026-11-28", { thrown, planned: crowded })).firstFreeDay).toBe("2026-12-06");
  });

  it("calls a day with an outing free when there is room beside it", () => {
    const answer = pitchesAllowed(ask("2026-11-28", { thrown, planned: [["2026-11-29", 60]] }));
    expect(answer.firstFreeDay).toBe("2026-11-29");
    expect(pitchesAllowed(ask("2026-11-29", { thrown, planned: [["2026-11-29", 60]] })).pitches).toBe(25);
  });
});
