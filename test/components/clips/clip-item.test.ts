import { describe, expect, it } from "vitest";
import {
  type ClipItem,
  type ClipStanding,
  isUnderWay,
  missingOf,
  NOTHING_SAID,
  progressInWords,
  sayingOf,
} from "@/components/clips/clip-item";
import { sendClipInput } from "@/server/domain/clips/send-clip";

const item = (standing: ClipStanding, sentBytes = 12_900_000, byteCount = 48_000_000): ClipItem => ({
  key: "k",
  name: "IMG_1.MOV",
  byteCount,
  sentBytes,
  standing,
  sentence: "",
  clipId: null,
  conversion: null,
  pictureUrl: null,
});
const WHOLE = { ...NOTHING_SAID, view: "front", pitchesThrown: 0 } as const;

describe("a clip on its way", () => {
  it.each([
    ["sending", "12 of 48 MB"],
    ["in_line", "48 MB, next in line"],
    ["held", "12 of 48 MB, held"],
    ["broken", "12 of 48 MB, no connection: it goes on by itself"],
    ["stopped", "12 of 48 MB, stopped: the connection is gone"],
    ["looked_at", "48 MB, all sent: being checked"],
  ] as const)("that is %s says: %s", (standing, words) => {
    expect(progressInWords(item(standing))).toBe(words);
    expect(isUnderWay(standing)).toBe(true);
  });

  it("never shows a size of 0 MB, and is under way no more once it is ready or refused", () => {
    expect(progressInWords(item("sending", 100, 900_000))).toBe("under 1 MB");
    expect(isUnderWay("ready") || isUnderWay("refused")).toBe(false);
  });
});

describe("what is said of the clips", () => {
  it("is asked for clip by clip until it can be sent; 0 pitches is an answer", () => {
    expect(missingOf([NOTHING_SAID, WHOLE], null, null)).toEqual({
      filmedOn: "Say on which day the clips were filmed.",
      filmedSpeed: "Say how fast they were filmed, or that you don't know.",
      "clip-0-view": "Clip 1: Say where the camera stood.",
      "clip-0-pitchesThrown": "Clip 1: Say how many pitches were thrown; 0 for dry work.",
    });
    expect(missingOf([WHOLE], "2026-11-25", "unknown")).toEqual({});
    expect(missingOf([NOTHING_SAID], "2026-11-25", "normal")["clip-0-view"]).toBe(
      "Say where the camera stood.",
    );
  });

  it("goes out only when it is whole, and then as the academy takes it", () => {
    expect(sayingOf("clp_1", NOTHING_SAID, "2026-11-25")).toBeNull();
    expect(sayingOf(null, WHOLE, "2026-11-25")).toBeNull();
    const saying = sayingOf("clp_1", WHOLE, "2026-11-25");
    expect(sendClipInput.parse(saying)).toEqual(saying);
  });
});
