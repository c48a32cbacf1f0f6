import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AgeBand,
  ageBandSchema,
  mostPitchesWithRest,
  restBandSchema,
  restDaysAfter,
} from "@/server/domain/throwing/age-band";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { adviceLineSchema, bandForAge, ruleBookSchema, rulesOf } from "@/server/domain/throwing/rule-book";

const [COUNTS] = rulesOf(USA_BASEBALL_2018, "pitch_count");
if (!COUNTS) throw new Error("the book counts pitches");

const BAND: AgeBand = {
  ageMin: 7,
  ageMax: 8,
  dailyMaxPitches: 50,
  restBands: [
    { minPitches: 1, maxPitches: 20, restDays: 0 },
    { minPitches: 21, maxPitches: 35, restDays: 1 },
    { minPitches: 36, maxPitches: 50, restDays: 2 },
  ],
};

const LEAP_DAY = { kind: "league_age", cutOff: "02-29", yearOffset: 0 };

function faultsOf(parsed: { success: boolean; error?: { issues: { path: PropertyKey[] }[] } }): string[] {
  return parsed.error?.issues.map((issue) => issue.path.join(".")) ?? [];
}

describe("a rule book", () => {
  it.each([
    ["a gap between bands", 1, { minPitches: 22 }, ["restBands.1.minPitches"]],
    ["an overlap of bands", 1, { minPitches: 20 }, ["restBands.1.minPitches"]],
    ["a first band that starts at 2", 0, { minPitches: 2 }, ["restBands.0.minPitches"]],
    ["a last band short of the daily number", 2, { maxPitches: 49 }, ["restBands.2.maxPitches"]],
    ["a last band past the daily number", 2, { maxPitches: 51 }, ["restBands.2.maxPitches"]],
    ["rest that does not grow", 2, { restDays: 1 }, ["restBands.2.restDays"]],
    ["half a day of rest", 1, { restDays: 0.5 }, ["restBands.1.restDays"]],
  ])("refuses %s and names the field", (_name, index, change, paths) => {
    const restBands = BAND.restBands.map((band, at) => (at === index ? { ...band, ...change } : band));
    expect(faultsOf(ageBandSchema.safeParse({ ...BAND, restBands }))).toEqual(paths);
  });

  it("refuses a band whose last pitch comes before its first, and ages the wrong way round", () => {
    const restBands = [
      { minPitches: 1, maxPitches: 20, restDays: 0 },
      { minPitches: 21, maxPitches: 15, restDays: 1 },
    ];
    expect(faultsOf(ageBandSchema.safeParse({ ...BAND, dailyMaxPitches: 15, restBands }))).toEqual([
      "restBands.1.maxPitches",
    ]);
    expect(faultsOf(ageBandSchema.safeParse({ ...BAND, ageMax: 6 }))).toEqual(["ageMax"]);
    expect(restBandSchema.safeParse({ minPitches: 1, maxPitches: 20, restDays: -1 }).success).toBe(false);
  });

  it.each([
    ["a gap in the ages", { ageMin: 10, ageMax: 10 }],
    ["ages that overlap", { ageMin: 8, ageMax: 10 }],
  ])("refuses %s", (_name, ages) => {
    const rule = { ...COUNTS, ageBands: [BAND, { ...BAND, ...ages }] };
    const book = { ...USA_BASEBALL_2018, rules: [rule] };
    expect(faultsOf(ruleBookSchema.safeParse(book))).toEqual(["rules.0.ageBands.1.ageMin"]);
  });

  it.each([
    ["without a source", { source: "" }, "source"],
    ["with a cut-off that is no day of every year", { ageBasis: LEAP_DAY }, "ageBasis.cutOff"],
    ["without rules", { rules: [] }, "rules"],
    [
      "with a first day that does not exist",
      { rules: [{ ...COUNTS, effectiveFrom: "2018-02-29" }] },
      "rules.0.effectiveFrom",
    ],
    [
      "with a rule that ends before it begins",
      { rules: [{ ...COUNTS, effectiveUntil: "2018-01-01" }] },
      "rules.0.effectiveUntil",
    ],
    ["without ages", { rules: [{ ...COUNTS, ageBands: [] }] }, "rules.0.ageBands"],
  ])("is refused %s", (_name, change, path) => {
    expect(faultsOf(ruleBookSchema.safeParse({ ...USA_BASEBALL_2018, ...change }))).toEqual([path]);
  });

  it("refuses advice without a source", () => {
    const line = { ageMin: 0, ageMax: 8, words: "Play other sports too.", source: "" };
    expect(faultsOf(adviceLineSchema.safeParse(line))).toEqual(["source"]);
  });

  it.each([
    [6, null],
    [7, 7],
    [8, 7],
    [9, 9],
    [22, 19],
    [23, null],
    [-1, null],
  ])("finds for age %i the row that starts at %s", (age, ageMin) => {
    expect(bandForAge(USA_BASEBALL_2018, age, "2026-11-25")?.ageMin ?? null).toBe(ageMin);
  });

  it.each([
    [-1, 0],
    [0, 0],
    [1, 0],
    [20, 0],
    [21, 1],
    [50, 2],
    [51, 2],
    [400, 2],
  ])("asks after %i pitches for %i days", (pitches, restDays) => {
    expect(restDaysAfter(BAND, pitches)).toBe(restDays);
  });

  it.each([
    [-1, 0],
    [0, 20],
    [1, 35],
    [2, 50],
    [9, 50],
  ])("fits into %i days of rest at most %i pitches", (restDays, pitches) => {
    expect(mostPitchesWithRest(BAND, restDays)).toBe(pitches);
  });

  it("reads its bands the same forward and back: the most that fits a rest asks for no more than it", () => {
    const bands = fc.constantFrom(...COUNTS.ageBands);
    fc.assert(
      fc.property(bands, fc.integer({ min: 0, max: 7 }), (band, restDays) => {
        const most = mostPitchesWithRest(band, restDays);
        expect(restDaysAfter(band, most)).toBeLessThanOrEqual(restDays);
        if (most < band.dailyMaxPitches) expect(restDaysAfter(band, most + 1)).toBeGreaterThan(restDays);
      }),
    );
  });
});
