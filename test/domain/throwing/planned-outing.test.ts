import { describe, expect, it } from "vitest";
import { outingProblem } from "@/server/domain/throwing/planned-outing";

const BOUNDS = { today: "2026-11-25", plausibleMaxPitches: 400 };
const problem = (plannedOn: string, pitches = 50) => outingProblem({ plannedOn, pitches }, BOUNDS);

describe("an outing that is to be planned", () => {
  it.each(["2026-11-25", "2026-11-26", "2027-12-30"])("may be on %s", (day) => {
    expect(problem(day)).toBeNull();
  });

  it.each([
    ["2026-11-24", "That day is past: log what was thrown."],
    ["2027-12-31", "Outings are planned up to 400 days ahead."],
    ["2027-02-29", "That is not a day of the calendar."],
  ])("may not be on %s", (day, sentence) => {
    expect(problem(day)).toBe(sentence);
  });

  it.each([
    [0, "An outing has at least 1 pitch."],
    [1.5, "An outing has at least 1 pitch."],
    [401, "More than 400 pitches looks like a slip: check the number."],
  ])("may not have %d pitches", (pitches, sentence) => {
    expect(problem("2026-11-26", pitches)).toBe(sentence);
  });

  it.each([1, 400])("may have %i pitches", (pitches) => {
    expect(problem("2026-11-26", pitches)).toBeNull();
  });
});
