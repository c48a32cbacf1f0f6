import { describe, expect, it } from "vitest";
import { PRACTICE_DAYS, practiceDays, practiceProblem } from "@/server/domain/reviews/practice";

const facts = { givenOn: "2026-11-24", state: "given" as const, today: "2026-11-25" };

describe("practiceDays", () => {
  it("are the days since it was given, oldest first", () => {
    expect(practiceDays(facts)).toEqual(["2026-11-24", "2026-11-25"]);
  });

  it("are never more than fourteen, across a clock change and a year's end", () => {
    const days = practiceDays({ ...facts, today: "2027-01-03" });
    expect(days).toHaveLength(PRACTICE_DAYS);
    expect([days[0], days.at(-1)]).toEqual(["2026-12-21", "2027-01-03"]);
  });

  it("are none once it has held or is retired", () => {
    expect(practiceDays({ ...facts, state: "held" })).toEqual([]);
    expect(practiceDays({ ...facts, state: "retired" })).toEqual([]);
  });
});

describe("practiceProblem", () => {
  it.each([
    ["2026-11-23", "before the correction was given"],
    ["2026-11-24", null],
    ["2026-11-25", null],
    ["2026-11-26", "still to come"],
  ])("on %s: %s", (day, problem) => {
    const found = practiceProblem(day, facts);
    if (problem === null) expect(found).toBeNull();
    else expect(found).toContain(problem);
  });

  it("agrees with the days that are offered", () => {
    const later = { ...facts, today: "2027-01-03" };
    expect(practiceProblem("2026-12-21", later)).toBeNull();
    expect(practiceProblem("2026-12-20", later)).toContain("last 14 days");
    expect(practiceProblem("2027-01-03", { ...later, state: "held" })).toContain("not being worked on");
  });
});
