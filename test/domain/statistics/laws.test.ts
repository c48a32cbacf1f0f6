import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import { icc } from "@/server/domain/statistics/icc";
import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import { kendallChance } from "@/server/domain/statistics/kendall-chance";
import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { permutationTest } from "@/server/domain/statistics/permutation-test";
import { processChart, RUN_LENGTH } from "@/server/domain/statistics/process-chart";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import { theilSen } from "@/server/domain/statistics/theil-sen";
import { agree, enough } from "./agree";

const moderate = fc.integer({ min: -50, max: 50 });
const spans = fc.array(fc.record({ duration: fc.nat(15), hasEnded: fc.boolean() }), { maxLength: 20 });
const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 });

describe("a trend", () => {
  const series = fc.array(fc.record({ at: fc.nat(30), value: moderate }), { minLength: 3, maxLength: 14 });
  const spread = series.filter((drawn) => new Set(drawn.map((each) => each.at)).size > 1);

  it("turns its sign with the values, and nothing else", () => {
    fc.assert(
      fc.property(spread, (drawn) => {
        const turned = drawn.map((each) => ({ ...each, value: -each.value }));
        const [one, other] = [enough(mannKendall(drawn)), enough(mannKendall(turned))];
        expect(one.s + other.s).toBe(0);
        expect(other.chance).toBe(one.chance);
        const [line, mirrored] = [enough(theilSen(drawn)), enough(theilSen(turned))];
        agree(mirrored.slope, -line.slope);
        if (line.lower !== null) agree(mirrored.upper, -line.lower);
      }),
    );
  });

  it("is the same in whatever order the observations come", () => {
    fc.assert(
      fc.property(spread, (drawn) => {
        const backwards = [...drawn].reverse();
        expect(mannKendall(backwards)).toEqual(mannKendall(drawn));
        expect(theilSen(backwards)).toEqual(theilSen(drawn));
      }),
    );
  });

  it("lies within its interval, and a line is found exactly", () => {
    fc.assert(
      fc.property(spread, moderate, moderate, (drawn, slope, start) => {
        const { slope: found, lower, upper } = enough(theilSen(drawn));
        if (lower !== null && upper !== null) expect(lower <= found && found <= upper).toBe(true);
        const onLine = drawn.map(({ at }) => ({ at, value: start + slope * at }));
        expect(enough(theilSen(onLine)).slope).toBe(slope === 0 ? 0 : slope);
      }),
    );
  });

  it("without ties has an interval that covers the 95 % it claims, counted out from 5 observations to 60", () => {
    for (let n = 5; n <= 60; n++) {
      const pairs = (n * (n - 1)) / 2;
      const rising = Array.from({ length: n }, (_, at) => ({ at, value: at * at }));
      const slopes = rising.flatMap((one, index) => rising.slice(0, index).map((other) => one.at + other.at));
      slopes.sort((one, other) => one - other);
      const { lower } = enough(theilSen(rising));
      const below = slopes.filter((slope) => slope < (lower ?? 0)).length;
      const missed = kendallChance(n, pairs - 2 * below);
      expect(missed, `n ${n}`).toBeLessThan(0.05);
    }
  });
});

describe("the exact chance of Kendall's S", () => {
  it("is the share of all orders that lie as far, listed one by one", () => {
    for (let n = 1; n <= 6; n++) {
      const sums = ordersOf(n).map((order) =>
        order.reduce(
          (sum, one, index) =>
            sum + order.slice(index + 1).reduce((part, other) => part + Math.sign(other - one), 0),
          0,
        ),
      );
      for (const s of new Set(sums)) {
        const asFar = sums.filter((each) => Math.abs(each) >= Math.abs(s)).length;
        agree(kendallChance(n, s), asFar / sums.length, `n ${n}, S ${s}`);
      }
    }
  });
});

function ordersOf(n: number): number[][] {
  if (n === 0) return [[]];
  return ordersOf(n - 1).flatMap((order) =>
    Array.from({ length: n }, (_, place) => [...order.slice(0, place), n, ...order.slice(place)]),
  );
}

describe("two groups", () => {
  const group = fc.array(moderate, { minLength: 1, maxLength: 6 });

  it("may be told in either order", () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        const [one, other] = [enough(rankSum(first, second)), enough(rankSum(second, first))];
        agree(one.chance, other.chance);
        agree(one.share + other.share, 1);
        const [mixed, turned] = [permutationTest(first, second), permutationTest(second, first)];
        if (mixed.kind !== "permutation_test" || turned.kind !== "permutation_test") throw new Error("Few.");
        agree(mixed.chance, turned.chance);
        agree(mixed.difference, -turned.difference);
        expect(mixed.chance).toBeGreaterThanOrEqual(1 / mixed.splits);
      }),
    );
  });

  it("are compared by rank as if every split were listed", () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        const both = [...first, ...second];
        const rank = (one: number) =>
          1 + both.filter((each) => each < one).length + (both.filter((each) => each === one).length - 1) / 2;
        const byRank = permutationTest(first.map(rank), second.map(rank));
        if (byRank.kind !== "permutation_test") throw new Error("There are few splits.");
        agree(enough(rankSum(first, second)).chance, byRank.chance);
      }),
    );
  });
});

describe("a chart", () => {
  it("flags the eighth and each further point of a run, and a point on the centre ends it", () => {
    const runs = (drawn: number[]) =>
      enough(processChart(drawn, 4))
        .signals.filter((signal) => signal.rule === "run_of_eight")
        .map((signal) => signal.index);
    const base = [0, 2, 0, 2];
    const above = new Array<number>(RUN_LENGTH - 2).fill(1.5);
    expect(runs([...base, ...above])).toEqual([]);
    expect(runs([...base, ...above, 1.5])).toEqual([10]);
    expect(runs([...base, ...above, 1.5, 1.5])).toEqual([10, 11]);
    expect(runs([...base, ...above, 1, 1.5, 1.5])).toEqual([]);
    expect(runs([...base, ...above, 0.5, 1.5])).toEqual([]);
  });

  it("moves and stretches with its values", () => {
    fc.assert(
      fc.property(fc.array(moderate, { minLength: 2, maxLength: 20 }), moderate, (drawn, shift) => {
        const chart = enough(processChart(drawn));
        const moved = enough(processChart(drawn.map((each) => 2 * each + shift)));
        agree(moved.upper, 2 * chart.upper + shift);
        agree(moved.lower, 2 * chart.lower + shift);
      }),
    );
  });
});

describe("spans", () => {
  it("never last longer as time goes on, and the open ones count while they are watched", () => {
    fc.assert(
      fc.property(spans, (drawn) => {
        const curve = kaplanMeier(drawn);
        if (curve.kind === "too_few") return;
        let before = 1;
        for (const step of curve.steps) {
          expect(step.atRisk).toBe(drawn.filter((span) => span.duration >= step.at).length);
          expect(step.lasting).toBeLessThan(before);
          before = step.lasting;
        }
        expect(curve.steps.reduce((sum, step) => sum + step.ended, 0)).toBe(curve.ended);
      }),
    );
  });
});

describe("chances adjusted for many", () => {
  it("are never less than they were, never above 1, and keep their order", () => {
    fc.assert(
      fc.property(chances, (drawn) => {
        const adjusted = adjustForMany(drawn);
        adjusted.forEach((each, index) => {
          expect(each).toBeGreaterThanOrEqual(drawn[index] ?? 1);
          expect(each).toBeLessThanOrEqual(1);
          drawn.forEach((other, place) => {
            if (other < (drawn[index] ?? 0)) expect(adjusted[place] ?? 2).toBeLessThanOrEqual(each);
          });
        });
      }),
    );
  });
});

describe("correlations", () => {
  it("of model 3 do not mind what a judge always adds, and those of the others do", () => {
    const rows = fc.array(fc.tuple(moderate, moderate), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(rows, (drawn) => {
        const shifted = drawn.map(([first, second]) => [first, second + 1000]);
        const [plain, moved] = [enough(icc(drawn)).forms, enough(icc(shifted)).forms];
        agree(moved["3,1"].icc, plain["3,1"].icc, "3,1", 1e-7);
        if (moved["2,1"].icc !== null) expect(moved["2,1"].icc).toBeLessThan(0.2);
      }),
    );
  });
});
