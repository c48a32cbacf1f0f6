import { describe, expect, it } from "vitest";
import { hasLeft, leavingProblem } from "@/server/domain/people/leaving";

describe("an athlete who leaves", () => {
  it.each([
    ["stays while no day is known", null, "2026-11-25", false],
    ["is there the day before", "2026-11-26", "2026-11-25", false],
    ["is gone on the day itself", "2026-11-25", "2026-11-25", true],
    ["is gone ever after", "2026-11-25", "2027-11-25", true],
  ] as const)("%s", (_, leftOn, day, gone) => {
    expect(hasLeft(leftOn, day)).toBe(gone);
  });
});

describe("a day to leave on", () => {
  const known = { joinedOn: "2026-01-05", today: "2026-11-25" };

  it.each(["2026-01-05", "2026-11-24", "2026-11-25", "2027-11-25"])("may be %s", (leftOn) => {
    expect(leavingProblem(leftOn, known)).toBeNull();
  });

  it("is neither before they joined nor more than a year away", () => {
    expect(leavingProblem("2026-01-04", known)).toBe(
      "They joined on Mon 5 Jan 2026, so they cannot leave before it.",
    );
    expect(leavingProblem("2027-11-26", known)).toBe("Fri 26 Nov 2027 is more than 12 months away.");
  });
});
