import { describe, expect, it } from "vitest";
import { drawnEverywhere, isSameTable } from "@/server/domain/clips/conversion";

describe("a film that every browser draws", () => {
  it.each([
    "avc1.42c01f",
    "avc1.4d401e",
    "avc1.640028",
    "AVC1.64000a",
    "avc3.640028",
    "vp8",
    "vp09.00.10.08",
    "av01.0.04M.08",
  ])("may be of the codec %s", (codec) => expect(drawnEverywhere(codec)).toBe(true));
  it.each([
    "hvc1.1.6.L93.B0",
    "hev1.2.4.L120.90",
    "dvh1.05.06",
    "avc1.6e0028",
    "avc1.7a0028",
    "avc1.f40028",
    "apcn",
    "",
  ])("is not sure to be of the codec %s", (codec) => expect(drawnEverywhere(codec)).toBe(false));
});

describe("a copy", () => {
  it.each([
    ["the same table", [0, 16.7, 33.3], true],
    ["times rounded to 90,000 parts of a second", [0, 16.7 + 1 / 90, 33.3 - 1 / 90], true],
    ["a frame too few", [0, 16.7], false],
    ["a frame too many", [0, 16.7, 33.3, 50], false],
    ["one frame a tenth of a millisecond late", [0, 16.8, 33.3], false],
    ["all of it shifted", [11.7, 28.4, 45], false],
    ["times that are none", [0, Number.NaN, 33.3], false],
  ])("with %s is told right", (_, copy, isSame) => {
    expect(isSameTable([0, 16.7, 33.3], copy)).toBe(isSame);
  });
});
