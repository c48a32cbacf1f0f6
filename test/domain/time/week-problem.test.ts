import { describe, expect, it } from "vitest";
import { minuteInWords, weekdayInWords, weekProblem } from "@/server/domain/time/week-problem";

const span = (weekday: number, startsMin: number, endsMin: number) => ({ weekday, startsMin, endsMin });

describe("a week of hours", () => {
  it.each([
    ["an empty week", [], null],
    ["one shift", [span(1, 840, 1260)], null],
    ["two shifts that touch", [span(1, 540, 720), span(1, 720, 1260)], null],
    ["the same hours on two days", [span(1, 840, 1260), span(2, 840, 1260)], null],
    ["until midnight", [span(6, 0, 1440)], null],
    ["an end before its start", [span(1, 900, 840)], "On Monday, 15:00 to 14:00 ends before it starts."],
    ["no minute at all", [span(7, 600, 600)], "On Sunday, 10:00 to 10:00 ends before it starts."],
    [
      "a shared minute",
      [span(3, 540, 721), span(3, 720, 1260)],
      "On Wednesday, 09:00 to 12:01 and 12:00 to 21:00 overlap.",
    ],
  ])("%s", (_, week, problem) => {
    expect(weekProblem(week)).toBe(problem);
  });

  it("is written on the 24-hour clock, Monday first", () => {
    expect([0, 990, 1440].map(minuteInWords)).toEqual(["00:00", "16:30", "24:00"]);
    expect([1, 7, 8].map(weekdayInWords)).toEqual(["Monday", "Sunday", ""]);
  });
});
