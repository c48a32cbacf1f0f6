import { describe, expect, it } from "vitest";
import { ROUND_STATES } from "@/server/domain/reviews/round-state";
import { writingRefusal } from "@/server/domain/reviews/writing";

const round = { state: "taken" as const, coachPersonId: "coach", coachName: "Cole Rivers" };

describe("writingRefusal", () => {
  it.each([
    ["review", "taken"],
    ["check", "answered"],
  ] as const)("lets a %s be written on a round that is %s, by its coach alone", (kind, only) => {
    for (const state of ROUND_STATES) {
      const own = writingRefusal(kind, { ...round, state }, "coach");
      if (state === only) expect(own).toBeNull();
      else expect(own).toMatchObject({ reason: "round_state", state });
    }
    expect(writingRefusal(kind, { ...round, state: only }, "other")).toEqual({
      reason: "round_taken_by",
      coachName: "Cole Rivers",
    });
  });
});
