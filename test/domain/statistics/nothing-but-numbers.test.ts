import fc from "fast-check";
import { describe, it } from "vitest";
import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import { icc } from "@/server/domain/statistics/icc";
import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import { kappa } from "@/server/domain/statistics/kappa";
import { linearWeights, quadraticWeights } from "@/server/domain/statistics/kappa-weights";
import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { measurementError, withinSubjectError } from "@/server/domain/statistics/measurement-error";
import { permutationTest } from "@/server/domain/statistics/permutation-test";
import { processChart } from "@/server/domain/statistics/process-chart";
import { median, quantile } from "@/server/domain/statistics/quantile";
import { rankSum } from "@/server/domain/statistics/rank-sum";
import { theilSen } from "@/server/domain/statistics/theil-sen";
import { expectFinite } from "./agree";

/** Judgements, measures, and the least and greatest that are let in. */
const value = fc.oneof(
  fc.integer({ min: 0, max: 3 }),
  fc.double({ min: -200, max: 200, noNaN: true }).map((each) => Math.round(each * 100) / 100),
  fc.constantFrom(0, 1e15, -1e15, 1e-100, -1e-100),
);
const values = fc.array(value, { maxLength: 12 });
const observations = fc.array(fc.record({ at: fc.oneof(fc.nat(6), value), value }), { maxLength: 12 });
const table = fc.tuple(fc.nat(5), fc.nat(5)).chain(([rows, columns]) =>
  fc.array(fc.array(value, { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);
const counts = fc.integer({ min: 1, max: 4 }).chain((size) =>
  fc.array(fc.array(fc.nat(20), { minLength: size, maxLength: size }), {
    minLength: size,
    maxLength: size,
  }),
);
const spans = fc.array(fc.record({ duration: fc.nat(15), hasEnded: fc.boolean() }), { maxLength: 20 });
const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 });

describe("whatever the data, no NaN and no infinity comes of", () => {
  it("a series", () => {
    fc.assert(
      fc.property(observations, (drawn) => {
        expectFinite([
          mannKendall(drawn),
          theilSen(drawn),
          theilSen(drawn, { perTime: 30.4375, level: 0.8 }),
        ]);
      }),
      { numRuns: 500 },
    );
  });

  it("values in order, and two groups of them", () => {
    fc.assert(
      fc.property(values, values, (first, second) => {
        expectFinite([median(first), quantile(first, 0.9), processChart(first)]);
        expectFinite([rankSum(first, second), rankSum([...first, ...second, ...first], second)]);
        expectFinite(permutationTest(first.slice(0, 5), second.slice(0, 5)));
      }),
      { numRuns: 300 },
    );
  });

  it("a table of repeats or judges", () => {
    fc.assert(
      fc.property(table, (drawn) => {
        expectFinite([icc(drawn), measurementError(drawn), withinSubjectError(drawn)]);
      }),
      { numRuns: 1000 },
    );
  });

  it("judgements, spans and chances", () => {
    fc.assert(
      fc.property(counts, spans, chances, (judged, watched, many) => {
        const size = judged.length;
        expectFinite([kappa(judged, linearWeights(size)), kappa(judged, quadraticWeights(size))]);
        expectFinite([kaplanMeier(watched), adjustForMany(many)]);
      }),
      { numRuns: 500 },
    );
  });
});
