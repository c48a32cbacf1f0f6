import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BASE_DAYS, loadRatios, RECENT_DAYS, weightedMeans } from "@/server/domain/throwing/load-ratios";
import published from "../../reference/load-ratios.json" with { type: "json" };

const DIGITS = 9;
const loads = published.days.map((day) => day.load);

function close(figure: number | null | undefined, expected: number | null) {
  if (expected === null) expect(figure).toBeNull();
  else expect(figure).toBeCloseTo(expected, DIGITS);
}

describe("ratios over 7 and 28 days, beside a series computed in Python and R", () => {
  const figures = loadRatios(loads);

  it.each(published.days.map((day, index) => [day.day, index] as const))("agree on %s", (_day, index) => {
    const expected = published.days[index];
    const figure = figures[index];
    if (!expected) throw new Error("The series ends early.");
    close(figure?.mean7, expected.mean7);
    close(figure?.mean28, expected.mean28);
    close(figure?.coupled, expected.coupled);
    close(figure?.uncoupled, expected.uncoupled);
    close(figure?.weighted, index < BASE_DAYS - 1 ? null : expected.weighted);
  });

  it("weigh the days as Williams et al. 2017 do, from the first day on", () => {
    weightedMeans(loads, RECENT_DAYS).forEach((mean, index) => {
      close(mean, published.days[index]?.weighted7 ?? null);
    });
    weightedMeans(loads, BASE_DAYS).forEach((mean, index) => {
      close(mean, published.days[index]?.weighted28 ?? null);
    });
  });

  it("weigh five days as they come out by hand", () => {
    const { handExample } = published;
    expect(weightedMeans(handExample.loads, 7)).toEqual(handExample.weighted7);
    weightedMeans(handExample.loads, 28).forEach((mean, index) => {
      close(mean, handExample.weighted28[index] ?? null);
    });
    expect(weightedMeans([100, 0, 50], 7)).toEqual([100, 75, 68.75]);
  });
});

describe("a record too short or too empty for a ratio", () => {
  const last = (throws: number[]) => loadRatios(throws).at(-1);
  const zeros = (count: number) => new Array<number>(count).fill(0);

  it.each([
    ["no days", [], undefined],
    ["27 days", new Array(27).fill(20), { mean28: null, coupled: null, uncoupled: null, weighted: null }],
    [
      "28 even days",
      new Array(28).fill(20),
      { mean7: 20, mean28: 20, coupled: 1, uncoupled: 1, weighted: 1 },
    ],
    ["28 days of nothing", zeros(28), { mean28: 0, coupled: null, uncoupled: null, weighted: null }],
    [
      "28 days of nothing after one of 90",
      [90, ...zeros(28)],
      { mean28: 0, coupled: null, uncoupled: null, weighted: null },
    ],
    ["throws in the last 7 days alone", [...zeros(27), 40], { coupled: 4, uncoupled: null }],
    ["throws in the 21 days before alone", [40, ...zeros(27)], { coupled: 0, uncoupled: 0 }],
  ])("has blanks and never a zero in their place: %s", (_what, throws, expected) => {
    if (expected === undefined) expect(last(throws)).toBeUndefined();
    else expect(last(throws)).toMatchObject(expected);
  });
});

describe("the laws of the ratios", () => {
  const series = fc.array(fc.integer({ min: 0, max: 120 }), { minLength: 28, maxLength: 120 });
  const each = (throws: number[]) => loadRatios(throws);

  it("coupled is 4 times uncoupled over uncoupled and 3, and never above 4", () => {
    fc.assert(
      fc.property(series, (throws) => {
        for (const { coupled, uncoupled } of each(throws)) {
          if (coupled !== null) expect(coupled).toBeLessThanOrEqual(4);
          if (coupled === null || uncoupled === null) continue;
          expect(coupled).toBeCloseTo((4 * uncoupled) / (uncoupled + 3), DIGITS);
        }
      }),
    );
  });

  it("twice the throws every day give the same ratios", () => {
    fc.assert(
      fc.property(series, (throws) => {
        const doubled = each(throws.map((count) => 2 * count));
        each(throws).forEach(({ coupled, uncoupled, weighted }, index) => {
          close(doubled[index]?.coupled, coupled);
          close(doubled[index]?.uncoupled, uncoupled);
          close(doubled[index]?.weighted, weighted);
        });
      }),
    );
  });

  it("a later day changes no earlier one", () => {
    fc.assert(
      fc.property(series, fc.integer({ min: 0, max: 120 }), (throws, more) => {
        expect(each([...throws, more]).slice(0, -1)).toEqual(each(throws));
      }),
    );
  });

  it("no figure is endless or no number", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(0, 0, 0, 0, 1, 400), { maxLength: 90 }), (throws) => {
        for (const figure of each(throws).flatMap((day) => Object.values(day))) {
          expect(figure === null || (Number.isFinite(figure) && figure >= 0)).toBe(true);
        }
      }),
    );
  });
});
