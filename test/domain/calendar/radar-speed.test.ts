import { describe, expect, it } from "vitest";
import { SPEED_BOUNDS, speedIn, speedInWords } from "@/server/domain/calendar/radar-speed";

describe("a speed by radar", () => {
  it.each([
    ["km_h", 60, "mph", 96.56064],
    ["mph", 96.56064, "km_h", 60],
    ["mph", 71.5, "mph", 71.5],
    ["km_h", 0, "mph", 0],
  ] as const)("in %s, %d read in %s, is %d (a mile is 1,609.344 m)", (unit, speed, readIn, expected) => {
    expect(speedIn(unit, speed, readIn)).toBeCloseTo(expected, 9);
  });

  it("has the same bounds in both units, to a whole number", () => {
    expect(SPEED_BOUNDS.mph.map((mph) => Math.round(speedIn("km_h", mph, "mph")))).toEqual(SPEED_BOUNDS.km_h);
  });

  it("is written to a tenth in the unit it was read in", () => {
    expect(speedInWords(71.5, "mph")).toBe("71.5 mph");
    expect(speedInWords(114.96, "km_h")).toBe("115 km/h");
  });
});
