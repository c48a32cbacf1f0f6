import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  ENOUGH_FREEDOM,
  errorFigure,
  errorOf,
  FEWEST_DELIVERIES,
  measureErrors,
  type Repeats,
} from "@/server/domain/mechanics/measure-error";

type Set = { trial1: number[]; trial2: number[]; ms_within: number };
const reference = JSON.parse(readFileSync("test/reference/measurement-error.json", "utf8"));

describe("the error of a measure", () => {
  it.each(["A", "B"])("is the root of the published residual mean square of data set %s", (name) => {
    const { trial1, trial2, ms_within }: Set = reference[name];
    const figure = errorFigure(trial1.map((first, index) => [first, trial2[index] ?? Number.NaN]));
    expect(figure?.withinSd).toBeCloseTo(Math.sqrt(ms_within), 9);
    expect(figure?.plusMinus).toBeCloseTo(1.96 * Math.sqrt(ms_within), 9);
    expect(figure?.degreesOfFreedom).toBe(trial1.length);
  });

  it("weighs groups of unequal size by their freedom, and counts no single value", () => {
    expect(
      errorFigure([
        [10, 12],
        [20, 20],
      ])?.withinSd,
    ).toBeCloseTo(1, 12);
    const figure = errorFigure([[1, 3], [5, 5, 5, 9], [40]]);
    expect(figure?.degreesOfFreedom).toBe(4);
    expect(figure?.withinSd).toBeCloseTo(Math.sqrt((2 + 12) / 4), 12);
    expect(errorFigure([[3], [4], []])).toBeNull();
  });

  it("is printed from 15 degrees of freedom on", () => {
    const pairs = (count: number) => Array.from({ length: count }, (_, index) => [index, index + 1]);
    expect(ENOUGH_FREEDOM).toBe(15);
    expect(errorFigure(pairs(14))?.isEnough).toBe(false);
    expect(errorFigure(pairs(15))?.isEnough).toBe(true);
  });

  it("does not see how athletes differ from one another: only their repeats count", () => {
    const group = fc.array(
      fc.integer({ min: -20_000, max: 20_000 }).map((each) => each / 100),
      { minLength: 2, maxLength: 5 },
    );
    fc.assert(
      fc.property(
        fc.array(group, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: -500, max: 500 }),
        (groups, by) => {
          const moved = groups.map((values, index) => values.map((value) => value + by * index));
          expect(errorFigure(moved)?.withinSd).toBeCloseTo(errorFigure(groups)?.withinSd ?? -1, 6);
        },
      ),
    );
  });

  it("covers 95 of 100 measures about their true value", () => {
    let state = 12_345;
    const uniform = () => {
      state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
      return (state + 0.5) / 2_147_483_648;
    };
    const bell = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const groups = Array.from({ length: 2000 }, (_, index) => [index + 3 * bell(), index + 3 * bell()]);
    const plusMinus = errorFigure(groups)?.plusMinus ?? 0;
    const within = groups.flatMap((values, index) =>
      values.map((value) => Math.abs(value - index) <= plusMinus),
    );
    const share = within.filter(Boolean).length / within.length;
    expect(share).toBeGreaterThan(0.94);
    expect(share).toBeLessThan(0.96);
  });
});

describe("the errors of an academy", () => {
  const day = (values: number[], of: Partial<Repeats> = {}): Repeats => ({
    ...{ kind: "front_knee_flexion", view: "open_side", source: "sameDay", values },
    ...of,
  });

  it("stand by kind and view, and by their two sources", () => {
    const errors = measureErrors([
      day([40, 42, 44]),
      day([41, 41], { source: "sameFrame" }),
      day([30, 34], { source: "sameFrame" }),
      day([10, 20, 30], { view: "closed_side" }),
      day([1, 2, 3], { kind: "stride_length" }),
    ]);
    expect(errors).toHaveLength(3);
    const knee = errorOf(errors, "front_knee_flexion", "open_side");
    expect(knee?.sameDay?.withinSd).toBeCloseTo(2, 12);
    expect(knee?.sameFrame?.withinSd).toBeCloseTo(2, 12);
    expect(errorOf(errors, "front_knee_flexion", "closed_side")?.sameFrame).toBeNull();
    expect(errorOf(errors, "front_knee_flexion", null)).toBeNull();
    expect(errorOf(errors, "glove_height", "front")).toBeNull();
  });

  it("count a day of three deliveries and no shorter one", () => {
    expect(FEWEST_DELIVERIES).toBe(3);
    expect(measureErrors([day([40, 42])])).toEqual([]);
    expect(measureErrors([day([40, 42, 44]), day([10, 50])])[0]?.sameDay?.degreesOfFreedom).toBe(2);
  });
});
