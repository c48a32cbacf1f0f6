import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allocate } from "@/server/domain/money/allocate";
import reference from "../../reference/money.json";

const weights = fc
  .array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 12 })
  .filter((list) => list.some((weight) => weight > 0));
const total = fc.integer({ min: -(10 ** 15), max: 10 ** 15 });

describe("an amount split by weights", () => {
  // Fowler, Patterns of Enterprise Application Architecture, Money: allocate; see the reference file for each case.
  it.each(reference.allocate.cases)("splits $total by $weights into $parts", ({ total, weights, parts }) => {
    expect(allocate(total, weights)).toEqual(parts);
  });

  it.each([
    ["a refund as the mirror of the charge", -5, [3, 7], [-2, -3]],
    ["nothing into nothings", 0, [1, 2], [0, 0]],
    ["nothing to a weight of 0", 7, [0, 1], [0, 7]],
    ["a tie to the earlier", 1, [1, 1], [1, 0]],
    [
      "an amount beyond what a product of doubles holds",
      Number.MAX_SAFE_INTEGER,
      [1, 0],
      [Number.MAX_SAFE_INTEGER, 0],
    ],
  ])("gives %s", (_name, cents, by, parts) => {
    expect(allocate(cents, by)).toEqual(parts);
  });

  it.each([
    ["no weights", 5, []],
    ["weights that are all 0", 5, [0, 0]],
    ["a negative weight", 5, [2, -1]],
    ["a broken weight", 5, [0.5]],
    ["a broken amount", 0.5, [1]],
  ])("throws for %s", (_name, cents, by) => {
    expect(() => allocate(cents, by)).toThrow(RangeError);
  });

  it("always adds up to the amount, and no part is a whole unit away from its exact share", () => {
    fc.assert(
      fc.property(total, weights, (cents, by) => {
        const parts = allocate(cents, by);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(cents + 0);
        const weightSum = by.reduce((sum, weight) => sum + weight, 0);
        parts.forEach((part, index) => {
          const gap = BigInt(part) * BigInt(weightSum) - BigInt(cents) * BigInt(by[index] ?? 0);
          expect(gap < BigInt(weightSum) && gap > -BigInt(weightSum)).toBe(true);
        });
      }),
    );
  });
});
