import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import { entryRefusals, PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";

const BOUNDS = { bornOn: "2014-05-10", today: "2026-11-25", plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };

describe("a log entry", () => {
  it.each([
    [0, []],
    [1, []],
    [400, []],
    [401, ["More than 400 pitches in one entry looks like a slip: check the number."]],
    [10_000, ["More than 400 pitches in one entry looks like a slip: check the number."]],
    [-1, ["Pitches cannot be below 0."]],
    [12.5, ["Pitches are a whole number."]],
    [Number.NaN, ["Pitches are a whole number."]],
    [Number.POSITIVE_INFINITY, ["Pitches are a whole number."]],
  ])("with %d pitches is answered with %j", (pitches, words) => {
    const refusals = entryRefusals({ thrownOn: "2026-11-25", pitches }, BOUNDS);
    expect(refusals.map(entryRefusalInWords)).toEqual(words);
  });

  it.each([
    ["2026-11-25", []],
    ["2014-05-10", []],
    ["2026-11-26", ["The day has not come yet: the log holds what was thrown."]],
    ["2014-05-09", ["The day is before the athlete was born (Sat 10 May 2014)."]],
    ["2026-02-29", ["That is not a day of the calendar."]],
    ["yesterday", ["That is not a day of the calendar."]],
    ["", ["That is not a day of the calendar."]],
  ])("of day %j is answered with %j", (thrownOn, words) => {
    expect(entryRefusals({ thrownOn, pitches: 20 }, BOUNDS).map(entryRefusalInWords)).toEqual(words);
  });

  it("is told about each field once, and keeps to the academy's own bound", () => {
    const refusals = entryRefusals(
      { thrownOn: "2030-01-01", pitches: 151 },
      { ...BOUNDS, plausibleMaxPitches: 150 },
    );
    expect(refusals).toEqual([
      { field: "pitches", reason: "implausible", maxPitches: 150 },
      { field: "thrownOn", reason: "in_the_future", today: "2026-11-25" },
    ]);
  });

  it("is answered, never thrown at, whatever comes in", () => {
    fc.assert(
      fc.property(fc.string(), fc.double(), (thrownOn, pitches) => {
        expect(entryRefusals({ thrownOn, pitches }, BOUNDS).length).toBeLessThanOrEqual(2);
      }),
    );
  });
});
