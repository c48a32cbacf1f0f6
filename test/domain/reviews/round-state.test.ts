import { describe, expect, it } from "vitest";
import {
  isEnded,
  isOwed,
  moveRound,
  ROUND_EVENT_KINDS,
  ROUND_STATES,
  ROUND_STEP_WORDS,
  type RoundState,
  type RoundStep,
} from "@/server/domain/reviews/round-state";

const STEPS = ROUND_EVENT_KINDS.filter((kind) => kind !== "received");
const clear = { retakeFrom: null, awaitingVerdict: 0 };

/** Every step that is allowed, as the product's rules put it; whatever is not here is refused. */
const ALLOWED: [RoundState, RoundStep, RoundState][] = [
  ["received", "taken", "taken"],
  ["received", "handed_over", "taken"],
  ["received", "retake_asked", "retake"],
  ["received", "withdrawn", "withdrawn"],
  ["taken", "put_back", "received"],
  ["taken", "handed_over", "taken"],
  ["taken", "retake_asked", "retake"],
  ["taken", "sent", "sent"],
  ["taken", "withdrawn", "withdrawn"],
  ["sent", "handed_over", "sent"],
  ["sent", "answered", "answered"],
  ["sent", "settled", "settled"],
  ["sent", "lapsed", "lapsed"],
  ["answered", "handed_over", "answered"],
  ["answered", "retake_asked", "retake"],
  ["answered", "settled", "settled"],
  ["retake", "clip_replaced", "taken"],
  ["retake", "withdrawn", "withdrawn"],
  ["retake", "lapsed", "lapsed"],
];
const factsFor = (state: RoundState) =>
  state === "retake" ? { ...clear, retakeFrom: "taken" as const } : clear;
const allowed = (state: RoundState, step: RoundStep) =>
  ALLOWED.find(([from, by]) => from === state && by === step)?.[2];

describe("a round", () => {
  const everyPair = ROUND_STATES.flatMap((state) => STEPS.map((step) => [state, step] as const));

  it.each(everyPair.filter(([state, step]) => allowed(state, step)))(
    "that is %s can be %s",
    (state, step) => {
      expect(moveRound(state, step, factsFor(state))).toEqual({ ok: true, state: allowed(state, step) });
    },
  );

  it.each(everyPair.filter(([state, step]) => !allowed(state, step)))(
    "that is %s cannot be %s",
    (state, step) => {
      expect(moveRound(state, step, factsFor(state))).toEqual({
        ok: false,
        refusal: { reason: "round_state", action: ROUND_STEP_WORDS[step], state },
      });
    },
  );

  it.each(["received", "taken", "answered"] as const)(
    "goes back to %s when the clip of a retake comes",
    (from) => {
      expect(moveRound(from, "retake_asked", clear)).toEqual({ ok: true, state: "retake" });
      expect(moveRound("retake", "clip_replaced", { ...clear, retakeFrom: from })).toEqual({
        ok: true,
        state: from,
      });
    },
  );

  it("is never withdrawn once its review is out, not even while a reply is to be filmed again", () => {
    const facts = { ...clear, retakeFrom: "answered" as const };
    expect(moveRound("retake", "withdrawn", facts).ok).toBe(false);
    expect(moveRound("retake", "lapsed", facts)).toEqual({ ok: true, state: "lapsed" });
  });

  it.each([
    ["answered", 1, "1 correction has no verdict"],
    ["answered", 3, "3 corrections have no verdict"],
    ["sent", 2, "2 corrections have no verdict"],
  ] as const)(
    "that is %s does not settle while %i wait, and says that %s",
    (state, awaitingVerdict, missing) => {
      expect(moveRound(state, "settled", { ...clear, awaitingVerdict })).toEqual({
        ok: false,
        refusal: { reason: "draft_incomplete", missing: [missing] },
      });
    },
  );

  it("in a retake that does not know where it came from is a broken record, not a refusal", () => {
    expect(() => moveRound("retake", "clip_replaced", clear)).toThrow("retake");
  });

  it("has three ends, which nothing leaves", () => {
    expect(ROUND_STATES.filter(isEnded)).toEqual(["settled", "withdrawn", "lapsed"]);
    for (const state of ROUND_STATES.filter(isEnded)) {
      expect(STEPS.filter((step) => moveRound(state, step, clear).ok)).toEqual([]);
    }
  });

  it("is owed by the academy until the review is out and again once the reply is in", () => {
    expect(ROUND_STATES.filter(isOwed)).toEqual(["received", "taken", "answered"]);
  });
});
