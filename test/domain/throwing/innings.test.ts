import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inningsInWords, outsOfInnings } from "@/server/domain/throwing/innings";

describe("innings as they are typed", () => {
  it.each([
    ["2 1/3", 7],
    ["2", 6],
    [" 5  2/3 ", 17],
    ["1/3", 1],
    ["2/3", 2],
    ["2⅓", 7],
    ["⅔", 2],
    ["0", 0],
    ["2.1", 7],
    ["2.2", 8],
    ["2.0", 6],
  ])("%j is %i outs", (typed, outs) => {
    expect(outsOfInnings(typed)).toBe(outs);
  });

  it.each([
    "",
    " ",
    "two",
    "2.5",
    "2.33",
    "2 3/3",
    "1/2",
    "21/3",
    "-1",
    "2,1",
    ".1",
    "1e3",
    "2 1/3 innings",
    "9999",
  ])("%j says no innings", (typed) => {
    expect(outsOfInnings(typed)).toBeNull();
  });

  it("are read back as they were written, for every number of outs", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2999 }), (outs) => {
        expect(outsOfInnings(inningsInWords(outs))).toBe(outs);
      }),
    );
  });

  it.each([
    [0, "0"],
    [1, "1/3"],
    [6, "2"],
    [7, "2 1/3"],
  ])("of %i outs read %j", (outs, words) => {
    expect(inningsInWords(outs)).toBe(words);
  });
});
