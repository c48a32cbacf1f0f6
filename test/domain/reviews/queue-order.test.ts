import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  DEFAULT_ESTIMATE_MIN,
  estimateMin,
  PAST_REVIEWS_NEEDED,
  queueOrder,
} from "@/server/domain/reviews/queue-order";

const round = (id: string, dueAtMs: number, estimate = 20) => ({ id, dueAtMs, estimateMin: estimate });

describe("the queue", () => {
  it("runs by due time; of two due together the shorter first, then by id", () => {
    const rounds = [
      round("d", 2000),
      round("c", 1000, 12),
      round("b", 1000),
      round("a", 1000),
      round("e", 500),
    ];
    expect(queueOrder(rounds, 800).map(({ id, lateness }) => [id, lateness])).toEqual([
      ["e", { kind: "late", lateByMs: 300 }],
      ["c", { kind: "left", leftMs: 200 }],
      ["a", { kind: "left", leftMs: 200 }],
      ["b", { kind: "left", leftMs: 200 }],
      ["d", { kind: "left", leftMs: 1200 }],
    ]);
    expect(queueOrder([], 800)).toEqual([]);
  });

  it("is the same whatever order its rounds come in, and keeps all that is known of each", () => {
    const rounds = fc.uniqueArray(
      fc.record({
        id: fc.string({ minLength: 1, maxLength: 4 }),
        dueAtMs: fc.integer({ min: 0, max: 5 }),
        estimateMin: fc.integer({ min: 1, max: 3 }),
        note: fc.string(),
      }),
      { selector: ({ id }) => id, maxLength: 12 },
    );
    fc.assert(
      fc.property(rounds, fc.integer({ min: 0, max: 5 }), (owed, nowMs) => {
        const ordered = queueOrder(owed, nowMs);
        expect(queueOrder([...owed].reverse(), nowMs)).toEqual(ordered);
        expect(ordered).toHaveLength(owed.length);
        for (const one of owed) expect(ordered).toContainEqual(expect.objectContaining(one));
        const late = ordered.map(({ lateness }) => lateness.kind === "late");
        expect(late).toEqual([...late].sort((a, b) => Number(b) - Number(a)));
      }),
    );
  });
});

describe("the minutes a review is likely to take", () => {
  it.each([
    ["nothing is on record", [], DEFAULT_ESTIMATE_MIN.review],
    ["four are on record", [5, 5, 5, 5], DEFAULT_ESTIMATE_MIN.review],
    ["five are on record", [8, 10, 30, 12, 9], 10],
    ["six are on record", [8, 10, 30, 12, 9, 40], 11],
    ["one took all night", [10, 10, 10, 10, 600], 10],
  ])("when %s: %j gives %d", (_case, past, expected) => {
    expect(estimateMin(past, DEFAULT_ESTIMATE_MIN.review)).toBe(expected);
  });

  it("have as many past ones above as below, whatever their order", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 90 }), { minLength: PAST_REVIEWS_NEEDED, maxLength: 30 }),
        (past) => {
          const median = estimateMin(past, 20);
          expect(past.filter((one) => one < median).length).toBeLessThanOrEqual(past.length / 2);
          expect(past.filter((one) => one > median).length).toBeLessThanOrEqual(past.length / 2);
          expect(estimateMin([...past].reverse(), 20)).toBe(median);
        },
      ),
    );
  });
});
