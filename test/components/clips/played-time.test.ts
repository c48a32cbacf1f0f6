import { describe, expect, it } from "vitest";
import { filmRatio } from "@/components/clips/film-ratio";
import { clipCopyAddress, clipVideoAddress, drawableAddress } from "@/components/clips/played-clip";
import { playedTimeInWords, trueTimesMs } from "@/components/clips/played-time";

const every = (ms: number, frames = 60) => Array.from({ length: frames }, (_, frame) => frame * ms);

describe("the time a player tells", () => {
  it("is that of the delivery, a stretched file's shrunk to what it was", () => {
    const stretched = trueTimesMs({ frameTimesMs: every(1000 / 30), capturedFps: 240 });
    expect(stretched?.[48]).toBeCloseTo(200, 6);
    expect(playedTimeInWords(stretched, 48)).toBe("0.200 s");
    expect(playedTimeInWords(trueTimesMs({ frameTimesMs: every(1000 / 60), capturedFps: 60 }), 6)).toBe(
      "0.100 s",
    );
  });

  it("is not told where nobody has said how fast it was recorded, nor where the speed changes on the way", () => {
    expect(trueTimesMs({ frameTimesMs: every(1000 / 30), capturedFps: null })).toBeNull();
    const ramped = [...every(1000 / 30, 30), ...every(1000 / 120, 90).map((ms) => 1000 + ms)];
    expect(trueTimesMs({ frameTimesMs: ramped, capturedFps: 120 })).toBeNull();
    expect(playedTimeInWords(null, 6)).toBe("");
  });
});

describe("where a clip is drawn from", () => {
  it("is its copy once one is made", () => {
    for (const conversion of [null, "waiting", "running", "failed", "no_program"] as const)
      expect(drawableAddress({ id: "clp_1", conversion })).toBe(clipVideoAddress("clp_1"));
    expect(drawableAddress({ id: "clp_1", conversion: "made" })).toBe(clipCopyAddress("clp_1"));
  });
});

describe("the room of a small picture", () => {
  it("is as the film is, within what a strip can bear", () => {
    expect(filmRatio({ widthPx: 1080, heightPx: 1920 })).toBe(0.75);
    expect(filmRatio({ widthPx: 640, heightPx: 480 })).toBeCloseTo(4 / 3);
    expect(filmRatio({ widthPx: 4000, heightPx: 1000 })).toBeCloseTo(16 / 9);
    expect(filmRatio({ widthPx: null, heightPx: null })).toBe(1.6);
  });
});
