import { describe, expect, it } from "vitest";
import { slowSpan } from "@/components/reviews/slow-span";

const times = (count: number, stepMs: number) => Array.from({ length: count }, (_, frame) => frame * stepMs);

describe("the slow stretch round a frame", () => {
  it("is half a second to either side at a quarter of the true speed", () => {
    const clip = { frameTimesMs: times(200, 10), capturedFps: 100 };
    expect(slowSpan(clip, 100)).toEqual({ from: 50, to: 150, rest: 100, speed: 0.25 });
  });

  it("is as long on the mound in a film that is stretched four times, which is slow as it plays", () => {
    const clip = { frameTimesMs: times(400, 40), capturedFps: 100 };
    expect(slowSpan(clip, 200)).toEqual({ from: 150, to: 250, rest: 200, speed: 1 });
  });

  it("goes by the file's own times where nobody said how fast it was recorded", () => {
    const clip = { frameTimesMs: times(200, 10), capturedFps: null };
    expect(slowSpan(clip, 100)).toEqual({ from: 50, to: 150, rest: 100, speed: 0.25 });
  });

  it.each([
    [0, 0, 50],
    [30, 0, 80],
    [199, 149, 199],
  ])("stays within the clip round frame %d", (frame, from, to) => {
    expect(slowSpan({ frameTimesMs: times(200, 10), capturedFps: 100 }, frame)).toMatchObject({ from, to });
  });
});
