import { describe, expect, it } from "vitest";
import { Refusal } from "@/server/domain/errors/refusal";

describe("a refusal", () => {
  it("says what happened, what was kept and what to do", () => {
    const refusal = new Refusal({ reason: "round_taken_by", coachName: "Cole Rivers" });
    expect(refusal.message).toBe(
      "Cole Rivers took this round a moment ago. Nothing was changed. Take the next one.",
    );
    expect(refusal.detail).toEqual({ reason: "round_taken_by", coachName: "Cole Rivers" });
  });

  it("gives the first free day and the way out on a day the arm is not rested", () => {
    const refusal = new Refusal({
      reason: "arm_resting",
      firstFreeDay: "2026-11-29",
      why: "51 on Wed 25 Nov asks for three days of rest; free again Sun 29 Nov.",
      dryWorkFits: true,
    });
    expect(refusal.message).toContain("First day free by the book: Sun 29 Nov.");
    expect(refusal.message).toContain("A session without mound throws fits this day.");
  });
});
