import { describe, expect, it } from "vitest";
import { askedOfInWords, figureInWords, onFrame } from "@/components/remeasure/remeasure-words";

describe("how sure a measure is, in words", () => {
  const figure = { withinSd: 1.4, plusMinus: 2.744, degreesOfFreedom: 18, isEnough: true };

  it.each([
    ["front_knee_flexion", figure, "± 3° from 18 repeats"],
    ["stride_length", figure, "± 3 % from 18 repeats"],
    ["finish_hold", { ...figure, plusMinus: 42 }, "± 0.04 s from 18 repeats"],
    [
      "front_knee_flexion",
      { ...figure, degreesOfFreedom: 4, isEnough: false },
      "not yet known: 4 of 15 repeats",
    ],
    ["front_knee_flexion", null, "not yet known: 0 of 15 repeats"],
  ] as const)("%s", (kind, of, words) => {
    expect(figureInWords(kind, of)).toBe(words);
  });

  it("counts frames from 1 where they are read", () => {
    expect(onFrame({ view: "open_side", frame: 108 })).toBe("open side, frame 109");
  });

  it.each([
    [{ isForMe: true, askedOf: "Ines Roe" }, "you"],
    [{ isForMe: false, askedOf: "Ines Roe" }, "Ines Roe"],
    [{ isForMe: false, askedOf: null }, "whoever comes first"],
  ])("says of whom it is asked: %o", (asked, words) => {
    expect(askedOfInWords(asked)).toBe(words);
  });
});
