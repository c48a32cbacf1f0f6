import { describe, expect, it } from "vitest";
import { givenAt, standingOf, VERDICTS } from "@/server/domain/reviews/correction-state";
import {
  type CheckedCorrection,
  outcomesInWords,
  outcomesOf,
  outcomeWord,
} from "@/server/domain/reviews/settling";
import { check, verdict } from "../../helpers/review-drafts";

const hips: CheckedCorrection = {
  id: "hips",
  phase: "stride",
  frame: 60,
  checkpointName: "Hips lead",
  cue: "Hip first",
  standing: givenAt(0),
};
const gaze: CheckedCorrection = {
  ...hips,
  id: "gaze",
  phase: "wind_up",
  frame: 10,
  checkpointName: "Gaze level",
};
const held: CheckedCorrection = {
  ...hips,
  id: "held",
  phase: "follow_through",
  standing: standingOf([
    { kind: "given", atMs: 0, reason: "" },
    { kind: "confirmed", atMs: 1, reason: "" },
  ]),
};

describe("outcomesOf", () => {
  it("follows the delivery, not the order of the verdicts, and leaves an open verdict alone", () => {
    const draft = check({
      verdicts: [verdict("hips"), verdict("held", { verdict: null }), verdict("gaze", { verdict: "partly" })],
    });
    const outcomes = outcomesOf(draft, [hips, held, gaze], 9);
    expect(outcomes.map((each) => [each.correctionId, each.kind, each.standing.state])).toEqual([
      ["gaze", "partly", "showing"],
      ["hips", "yes", "showing"],
    ]);
  });

  it("brings back what had held, and retires with a reason", () => {
    const draft = check({
      verdicts: [verdict("held", { verdict: "not_yet" })],
      retirements: [{ correctionId: "gaze", reason: "Grown out of it" }],
    });
    const outcomes = outcomesOf(draft, [hips, held, gaze], 9);
    expect(outcomes).toMatchObject([
      { correctionId: "gaze", kind: "retired", reason: "Grown out of it", standing: { state: "retired" } },
      { correctionId: "held", kind: "not_yet", standing: { state: "given", cameBack: true } },
    ]);
  });

  it("throws on a correction it does not know, and on what cannot be done", () => {
    expect(() => outcomesOf(check({ verdicts: [verdict("nobody")] }), [hips], 9)).toThrow("strange");
    const draft = check({ retirements: [{ correctionId: "held", reason: "No" }] });
    expect(() => outcomesOf(draft, [held], 9)).toThrow("held_already");
  });
});

describe("outcomesInWords", () => {
  it("numbers the corrections, adds the notes in one line, and ends with the coach's word", () => {
    const draft = check({
      verdicts: [verdict("hips", { note: "On every\npitch." }), verdict("gaze", { verdict: "not_yet" })],
    });
    const corrections = [hips, gaze];
    expect(outcomesInWords(outcomesOf(draft, corrections, 9), corrections, " Good work. ")).toBe(
      "1. Gaze level (wind-up): not yet, go on with it.\n" +
        "2. Hips lead (stride): yes; it holds when it is seen a second time. On every pitch.\n" +
        "Good work.",
    );
  });

  it("says that nothing was open when nothing was", () => {
    expect(outcomesInWords([], [], "")).toBe("Nothing was open any more.");
  });

  it("has a word for every verdict, held and retired included", () => {
    const words = [...VERDICTS, "retired" as const].map((kind) =>
      outcomeWord({ kind, standing: hips.standing }),
    );
    expect(new Set(words).size).toBe(4);
    expect(outcomeWord({ kind: "yes", standing: held.standing })).toBe("it holds now");
  });
});
