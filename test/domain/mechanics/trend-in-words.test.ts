import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { observedDays } from "@/server/domain/mechanics/observation";
import { shiftInSeries } from "@/server/domain/mechanics/shift-in-series";
import { type TrendOutcome, trendInWords } from "@/server/domain/mechanics/trend-in-words";
import type { WantedDirection } from "@/server/domain/mechanics/wanted-direction";
import { addDays } from "@/server/domain/time/calendar-day";
import { expectFinite } from "../statistics/agree";
import { GIVEN_ON, observation, weekly } from "./observations";

const knee = "front_knee_flexion";
const MORE = { kind: "more" } as const;
const trendOf = (values: readonly number[], wanted?: WantedDirection) =>
  trendInWords({ kind: knee, days: weekly(values) }, wanted);

describe("a trend in words", () => {
  /* By hand: 1° a week is 30.4375 / 7 = 4.348° a month; all ten pairs rise: 2 of 120 orders, 0.017. */
  it("is the slope per month with its interval and the chance, never one without the other", () => {
    const trend = trendOf([40, 41, 42, 43, 44], MORE);
    expect(trend.words).toBe(
      "better month by month: 4.3° a month (4.3° to 4.3°) over 5 days, chance 0.017 if nothing changed",
    );
    expect(trend.slope).toBeCloseTo(30.4375 / 7, 9);
    expect(trend.chance).toBeCloseTo(2 / 120, 9);
  });

  /* Sen's example of 1968, times read as days: slope 4, 3.714 to 4.375 a day. */
  it("agrees with the example of Sen 1968, 4 a day, whatever the spacing", () => {
    const times = [1, 2, 3, 4, 10, 12, 18];
    const values = [9, 15, 19, 20, 45, 55, 78];
    const days = observedDays(
      times.map((at, index) => observation({ day: addDays("2026-01-01", at), value: values[index] ?? 0 })),
    );
    const { slope, lower, upper } = trendInWords({ kind: knee, days });
    expect([slope, lower, upper].map((each) => (each ?? 0) / 30.4375)).toEqual([
      expect.closeTo(4, 9),
      expect.closeTo(26 / 7, 9),
      expect.closeTo(4.375, 9),
    ]);
  });

  it.each([
    ["better", "less of what should be less", [44, 43, 42, 41, 40], { kind: "less" }],
    ["worse", "more of what should be less", [40, 41, 42, 43, 44], { kind: "less" }],
    ["better", "nearer to 0 from either side", [-9, 7, -5, 4, -2], { kind: "nearer", to: 0 }],
    ["worse", "farther off", [1, -3, 5, -7, 9], { kind: "nearer", to: 0 }],
    ["rises", "nobody said which way is better", [40, 41, 42, 43, 44], { kind: "unstated" }],
    ["falls", "nobody said, the other way", [44, 43, 42, 41, 40], { kind: "unstated" }],
    ["none", "up and down", [40, 44, 41, 43, 40, 44], MORE],
    ["none", "all equal", [40, 40, 40, 40, 40], MORE],
    ["too_few", "four days, however steep", [10, 20, 30, 40], MORE],
  ] as [TrendOutcome, string, number[], WantedDirection][])("is %s of %s", (outcome, _, values, wanted) => {
    expect(trendOf(values, wanted).outcome).toBe(outcome);
  });

  it("of values that never differ names the value, of a distance to what, of too few how many it takes", () => {
    expect(trendOf([40, 40, 40, 40, 40]).words).toBe("no trend that can be told: 40° on each of 5 days");
    expect(trendOf([9, 7, 5, 4, 2], { kind: "nearer", to: 0 }).words).toMatch(
      /, told of the distance to 0°$/,
    );
    expect(trendOf([40]).words).toBe("too few observations (1 of at least 5)");
    expect(trendOf([])).toMatchObject({ outcome: "too_few", days: 0, slope: null, chance: null });
  });

  it("has words and no NaN whatever was seen, and turns with its sign", () => {
    const turned: Partial<Record<TrendOutcome, TrendOutcome>> = { better: "worse", worse: "better" };
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -30, max: 30 }), { maxLength: 12 }), (values) => {
        const trend = trendOf(values, MORE);
        expectFinite(trend);
        expect(trend.words).not.toMatch(/NaN|null|Infinity|undefined|−0°/);
        const { outcome } = trendOf(
          values.map((value) => -value),
          MORE,
        );
        expect(outcome).toBe(turned[trend.outcome] ?? trend.outcome);
      }),
    );
  });
});

describe("a shift in a series", () => {
  const base = [40, 42, 41, 43, 40, 42];
  const shiftOf = (before: number[], after: number[] = []) =>
    shiftInSeries({ kind: knee, days: weekly(before, after) }, GIVEN_ON);

  /* By hand: mean 248 / 6 = 41.33; ranges 2 1 2 3 2, mean 2; 3 × 2 / 1.128 = 5.32: 36.01 to 46.65. */
  it("is a day beyond limits that rest on the days before the correction alone", () => {
    const { centre, lower, upper, shifts, words } = shiftOf(base, [46, 50]);
    expect([centre, lower, upper]).toEqual([248 / 6, expect.closeTo(36.014, 3), expect.closeTo(46.652, 3)]);
    expect(shifts.map(({ day, rule, side }) => [day, rule, side])).toEqual([
      ["2026-06-15", "beyond_limits", "above"],
    ]);
    expect(words).toBe(
      "The middle of 6 days is 41°, its limits 36° to 47°. On Mon 15 Jun 2026 50° lies above the limits.",
    );
  });

  it("is eight days in a row on one side, told once however long it goes on", () => {
    const { shifts } = shiftOf([...base, 41], Array(10).fill(44));
    expect(shifts).toMatchObject([{ day: "2026-07-27", rule: "run_of_eight", side: "above" }]);
    expect(shifts[0]?.words).toBe("From Mon 8 Jun 2026 on, 8 days in a row lie above the middle, 41°.");
  });

  it("is none where days stay within, and says so", () => {
    expect(shiftOf(base, [41, 42]).words).toMatch(
      /No shift is seen: no day beyond limits, no 8 days in a row/,
    );
  });

  it("has no limits where the base never varied, and still tells a run", () => {
    const flat = shiftOf([40, 40, 40, 40, 40, 40], [41]);
    expect(flat).toMatchObject({ kind: "chart", lower: null, upper: null, shifts: [] });
    expect(flat.words).toMatch(/as they never varied there are no limits/);
    const run = shiftOf([40, 40, 40, 40, 40, 40], Array(8).fill(41));
    expect(run.shifts).toMatchObject([{ rule: "run_of_eight" }]);
  });

  it("rests on all days without a correction, and of fewer than six says too few", () => {
    expect(shiftInSeries({ kind: knee, days: weekly(base) }, null)).toMatchObject({
      kind: "chart",
      baseDays: 6,
    });
    expect(shiftOf(base.slice(1), [50])).toMatchObject({
      ...{ kind: "too_few", baseDays: 5, shifts: [] },
      words: "too few observations (5 of at least 6)",
    });
    expect(shiftOf([])).toMatchObject({ kind: "too_few", baseDays: 0 });
  });

  it("tells many of one sort together, and a few one by one", () => {
    const { shifts, words } = shiftOf(base, [50, 50, 50, 50, 50, 50, 50, 50, 30]);
    const above = shifts.filter(({ rule, side }) => rule === "beyond_limits" && side === "above");
    expect(above.length).toBe(8);
    expect(words).toContain("8 days lie above the limits, between Mon 8 Jun 2026 and Mon 27 Jul 2026.");
    expect(words.match(/above the limits/g)).toHaveLength(1);
    expect(words).toContain("30° lies below the limits.");
    expect(words).toContain("8 days in a row lie above the middle, 41°.");
    expect(shiftOf(base, [50, 50, 50]).words.match(/50° lies above the limits/g)).toHaveLength(3);
  });

  it("has words and no NaN whatever was seen", () => {
    const values = fc.array(fc.integer({ min: -30, max: 30 }), { maxLength: 14 });
    fc.assert(
      fc.property(values, values, (before, after) => {
        const found = shiftOf(before, after);
        expectFinite(found);
        expect(found.words).not.toMatch(/NaN|null|Infinity|undefined/);
        for (const one of found.shifts) {
          const alike = found.shifts.filter(({ rule, side }) => rule === one.rule && side === one.side);
          expect(found.words).toContain(alike.length > 3 ? `${alike.length} ` : one.words);
        }
      }),
    );
  });
});
