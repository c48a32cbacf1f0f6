import { describe, expect, it } from "vitest";
import {
  firstSpan,
  knownUntil,
  LONGEST_SPAN_DAYS,
  offeredSpans,
  spanInWords,
  spanProblem,
  usualSpan,
} from "@/server/domain/season-reports/season-span";
import { addDays } from "@/server/domain/time/calendar-day";

const YEAR = { fromOn: "2026-01-01", toOn: "2026-12-31" };
const AUTUMN = { fromOn: "2026-09-01", toOn: "2026-11-30" };

describe("the usual season", () => {
  it.each([
    ["2026-11-25", "2026-01-01"],
    ["2026-12-31", "2026-01-01"],
    ["2027-01-01", "2026-01-01"],
    ["2027-02-28", "2026-01-01"],
    ["2027-03-01", "2027-01-01"],
  ])("on %s begins on %s", (today, fromOn) => {
    expect(usualSpan(today)).toEqual({ fromOn, toOn: `${fromOn.slice(0, 4)}-12-31` });
  });

  it("gives way to the one a coach wrote of lately, for six months after its last day", () => {
    expect(firstSpan("2026-11-25", [AUTUMN])).toEqual(AUTUMN);
    expect(firstSpan("2027-05-30", [AUTUMN])).toEqual(AUTUMN);
    expect(firstSpan("2027-06-01", [AUTUMN])).toEqual(usualSpan("2027-06-01"));
    expect(firstSpan("2026-08-31", [AUTUMN])).toEqual(YEAR);
    expect(firstSpan("2026-11-25", [])).toEqual(YEAR);
  });

  it("stands in the choice beside the year before and what a coach wrote of, each once, the latest first", () => {
    const before = { fromOn: "2025-01-01", toOn: "2025-12-31" };
    expect(offeredSpans("2026-11-25", [AUTUMN, YEAR, AUTUMN])).toEqual([AUTUMN, YEAR, before]);
  });
});

describe("a span", () => {
  const longest = { fromOn: "2026-01-01", toOn: addDays("2026-01-01", LONGEST_SPAN_DAYS - 1) };
  it.each([
    [YEAR, null],
    [longest, null],
    [{ ...longest, toOn: addDays(longest.toOn, 1) }, "A report tells of a year at most."],
    [{ fromOn: "2026-05-01", toOn: "2026-05-02" }, null],
    [{ fromOn: "2026-05-01", toOn: "2026-05-01" }, "The first day must lie before the last."],
    [{ fromOn: "2026-05-02", toOn: "2026-05-01" }, "The first day must lie before the last."],
    [{ fromOn: "2026-11-25", toOn: "2026-12-01" }, null],
    [{ fromOn: "2026-11-26", toOn: "2026-12-01" }, "That season has not begun."],
  ])("%o is told of, or why not: %s", (span, problem) => {
    expect(spanProblem(span, "2026-11-25")).toBe(problem);
  });

  it("is known of until today at most", () => {
    expect(knownUntil(YEAR, "2026-11-25")).toBe("2026-11-25");
    expect(knownUntil(YEAR, "2027-03-01")).toBe("2026-12-31");
  });

  it("is called by its year when it is a whole one", () => {
    expect(spanInWords(YEAR)).toBe("2026");
    expect(spanInWords({ ...YEAR, toOn: "2027-12-31" })).toBe("Thu 1 Jan 2026 to Fri 31 Dec 2027");
    expect(spanInWords(AUTUMN)).toBe("Tue 1 Sept 2026 to Mon 30 Nov 2026");
  });
});
