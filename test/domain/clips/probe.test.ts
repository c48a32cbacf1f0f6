import { describe, expect, it } from "vitest";
import {
  judgeProbe,
  MAX_CLIP_BYTES,
  MAX_CLIP_MS,
  type Probe,
  probeRefusalInWords,
} from "@/server/domain/clips/probe";

const good = { problem: null, byteCount: 460_000, durationMs: 3000 };

describe("a file that was uploaded", () => {
  it.each([
    ["a plain clip", good],
    ["of exactly 3 minutes", { ...good, durationMs: 180_000 }],
    ["of exactly 1 GB", { ...good, byteCount: 1_000_000_000 }],
  ])("becomes a clip: %s", (_case, probe) => {
    expect(judgeProbe(probe)).toBeNull();
  });

  it.each(["empty", "not_video", "cut_off", "no_frames", "too_many_frames", "not_copied"] as const)(
    "is refused when reading it finds: %s",
    (problem) => {
      expect(judgeProbe({ problem, byteCount: 0 })).toEqual({ kind: problem });
    },
  );

  it.each<[string, Probe, ReturnType<typeof judgeProbe>]>([
    [
      "a byte too big",
      { ...good, byteCount: 1_000_000_001 },
      { kind: "too_big", byteCount: 1_000_000_001, maxBytes: MAX_CLIP_BYTES },
    ],
    [
      "a millisecond too long",
      { ...good, durationMs: 180_001 },
      { kind: "too_long", durationMs: 180_001, maxMs: MAX_CLIP_MS },
    ],
    [
      "too big before anything that was read in it",
      { problem: "cut_off", byteCount: 2_000_000_000 },
      { kind: "too_big", byteCount: 2_000_000_000, maxBytes: MAX_CLIP_BYTES },
    ],
  ])("is refused when it is %s", (_case, probe, refusal) => {
    expect(judgeProbe(probe)).toEqual(refusal);
  });

  it.each([
    [{ kind: "empty" }, "The file is empty."],
    [
      { kind: "too_big", byteCount: 1_000_000_001, maxBytes: MAX_CLIP_BYTES },
      "The file is 1.01 GB and 1 GB is the most.",
    ],
    [
      { kind: "too_big", byteCount: 2_500_000_000, maxBytes: MAX_CLIP_BYTES },
      "The file is 2.5 GB and 1 GB is the most.",
    ],
    [{ kind: "not_video" }, "The file is not a video that can be read here."],
    [{ kind: "cut_off" }, "The file stops in the middle: the end of the video is missing."],
    [{ kind: "no_frames" }, "The video has no pictures in it."],
    [{ kind: "too_many_frames" }, "The video has more frames than can be stepped through."],
    [{ kind: "not_copied" }, "The video could not be freed of its place and device data."],
    [
      { kind: "too_long", durationMs: 180_001, maxMs: MAX_CLIP_MS },
      "The video is 3 min 1 s long and 3 min is the most.",
    ],
  ] as const)("%o is told what happened, that nothing was kept, and what to do", (refusal, start) => {
    const sentence = probeRefusalInWords(refusal);
    expect(sentence.startsWith(`${start} Nothing was kept. `)).toBe(true);
    expect(sentence.split("Nothing was kept. ")[1]).toMatch(/^(Film|Trim|Choose|Send|Check) .+\.$/u);
  });
});
