import { describe, expect, it } from "vitest";
import {
  judgeVoice,
  MAX_VOICE_MS,
  voiceRefusalInWords,
  voicesMissing,
  voicesNamed,
} from "@/server/domain/reviews/voice-note";
import { correction, keep, review } from "../../helpers/review-drafts";

describe("a recording", () => {
  it.each([
    [0, "empty"],
    [20, null],
    [MAX_VOICE_MS, null],
    [MAX_VOICE_MS + 2000, null],
    [MAX_VOICE_MS + 2001, "too_long"],
  ])("of %d ms is kept or says why not", (lengthMs, refusal) => {
    expect(judgeVoice(lengthMs)).toBe(refusal);
  });

  it("that is not kept says what to do instead", () => {
    for (const refusal of ["empty", "not_voice", "not_copied", "too_big", "too_long"] as const)
      expect(voiceRefusalInWords(refusal)).toMatch(/again/);
  });
});

describe("the spoken notes of a review", () => {
  const draft = review({
    corrections: [
      correction({ id: "late", phase: "acceleration", frame: 160, voiceId: "voi_late" }),
      correction({ id: "early", phase: "stride", frame: 100, voiceId: "voi_early" }),
      correction({ id: "silent", phase: "stride", frame: 120 }),
    ],
    keeps: [keep({ voiceId: "voi_keep" }), keep({ id: "k2", voiceId: "voi_early" })],
  });

  it("are named as the recap runs, each once", () => {
    expect(voicesNamed(draft)).toEqual(["voi_early", "voi_late", "voi_keep"]);
  });

  it("are all there, or what is missing is told by the recap's own numbers", () => {
    expect(voicesMissing(draft, ["voi_early", "voi_late", "voi_keep"])).toEqual([]);
    expect(voicesMissing(draft, ["voi_early"])).toEqual([
      "speak the note on correction 3 again or take it off: it is not there any more",
      "speak the note on keep 1 again or take it off: it is not there any more",
    ]);
    expect(voicesMissing(review(), [])).toEqual([]);
  });
});
