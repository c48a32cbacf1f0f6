import { describe, expect, it } from "vitest";
import type { MeasureError } from "@/server/domain/mechanics/measure-error";
import { measureInWords, valueInWords } from "@/server/domain/mechanics/measure-value";

describe("a measure in words", () => {
  const figure = (plusMinus: number, isEnough = true) => ({
    ...{ withinSd: plusMinus / 1.96, plusMinus, degreesOfFreedom: isEnough ? 20 : 4, isEnough },
  });
  const error = (of: Partial<MeasureError>) => ({ sameFrame: null, sameDay: null, ...of });

  it.each([
    ["front_knee_flexion", 38.2, error({ sameDay: figure(3.1) }), "38° ± 3"],
    ["front_knee_flexion", 38.2, error({ sameDay: figure(7), sameFrame: figure(3) }), "38° ± 7"],
    ["front_knee_flexion", 38.2, error({ sameFrame: figure(2.6) }), "38° ± 3, by placing the points alone"],
    ["front_knee_flexion", 38.2, error({ sameDay: figure(3, false) }), "38°, error not yet known"],
    ["front_knee_flexion", 38.2, error({ sameDay: figure(0.2) }), "38° ± 1"],
    ["stride_length", 82.4, null, "82 % of standing height, error not yet known"],
    ["stride_length", 82.4, error({ sameDay: figure(3) }), "82 % ± 3 of standing height"],
    ["trunk_tilt_forward", 29.4, error({ sameDay: figure(4) }), "29° ± 4 toward the plate"],
    ["trunk_tilt_forward", -4.2, null, "4° away from the plate, error not yet known"],
    ["trunk_tilt_forward", -0.3, null, "0°, error not yet known"],
    [
      "stride_direction",
      -12,
      null,
      "12 % of the rubber's width, to the throwing side, closed, error not yet known",
    ],
    ["glove_height", -8, null, "−8 % of the trunk, hips 0 to shoulders 100, error not yet known"],
    ["finish_hold", 1204, error({ sameDay: figure(52) }), "1.20 s ± 0.05"],
    ["finish_hold", 1204, error({ sameDay: figure(1) }), "1.20 s ± 0.01"],
  ] as const)("%s of %d", (kind, value, told, words) => {
    expect(measureInWords(kind, value, told)).toBe(words);
  });

  it("tells a bare value without its side", () => {
    expect(valueInWords("trunk_tilt_forward", -4.2)).toBe("4°");
    expect(valueInWords("glove_height", -0.2)).toBe("0 %");
  });
});
