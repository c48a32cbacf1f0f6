import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BoardCell,
  bySoonestLimit,
  decodeCells,
  encodeCells,
  freeAfter,
  isLimited,
  limitedInDays,
} from "@/server/domain/throwing/board-cell";

const cell = (limit: BoardCell["limit"], others: Partial<BoardCell> = {}): BoardCell => ({
  limit,
  outs: 0,
  thrown: 0,
  outing: 0,
  booked: 0,
  ...others,
});

describe("the text of a row", () => {
  it.each([
    ["34t51", cell(34, { thrown: 51 })],
    ["0", cell(0)],
    ["R", cell("resting")],
    ["Po60", cell("pain", { outing: 60 })],
    ["I9t20", cell("outs", { outs: 9, thrown: 20 })],
    ["I0", cell("outs")],
    ["Vb20", cell("overridden", { booked: 20 })],
    ["Nt1o2b3", cell("no_published_limit", { thrown: 1, outing: 2, booked: 3 })],
  ])("%s is one day", (text, day) => {
    expect(encodeCells([day])).toBe(text);
    expect(decodeCells(text)).toEqual([day]);
  });

  it("gives back every row that was put into it", () => {
    const count = fc.integer({ min: 0, max: 400 });
    const limit = fc.oneof(
      count,
      fc.constantFrom(...(["resting", "pain", "no_published_limit", "overridden"] as const)),
    );
    const byPitches = fc.record({ limit, outs: fc.constant(0), thrown: count, outing: count, booked: count });
    const byOuts = fc.record({
      ...{ limit: fc.constant("outs" as const), outs: count, thrown: count, outing: count, booked: count },
    });
    const row = fc.array(fc.oneof(byPitches, byOuts), { minLength: 1 });
    fc.assert(
      fc.property(row, (cells) => {
        expect(decodeCells(encodeCells(cells))).toEqual(cells);
      }),
    );
  });

  it.each(["", "X", "34 ", "-1", "t5", "3.5", "I", "Ia"])("is not %j", (text) => {
    expect(() => decodeCells(text)).toThrow(RangeError);
  });
});

describe("the day an arm is first limited", () => {
  it.each([
    ["today, when it rests", [cell("resting"), cell(85)], 0, 0],
    ["today, when its number is used up", [cell(0), cell(85)], 0, 0],
    ["in two days, past days left out", [cell("resting"), cell(85), cell(20), cell("resting")], 1, 2],
    ["none, when the book leaves something every day", [cell(85), cell(1)], 0, null],
    ["none, where the book has no limit", [cell("no_published_limit")], 0, null],
  ])("is %s", (_, cells, today, days) => {
    expect(limitedInDays(cells, today)).toBe(days);
  });

  it("orders pain before rest, the sooner before the later, and the free last", () => {
    const rows = {
      free: [cell(85), cell(85), cell(85)],
      later: [cell(85), cell(85), cell("resting")],
      soon: [cell(85), cell("resting"), cell(85)],
      resting: [cell("resting"), cell(85), cell(85)],
      hurting: [cell("pain"), cell("pain"), cell("pain")],
    };
    const order = Object.entries(rows).sort(([, a], [, b]) => bySoonestLimit(a, b, 0));
    expect(order.map(([name]) => name)).toEqual(["hurting", "resting", "soon", "later", "free"]);
  });
});

describe("the end of a rest", () => {
  it("is the first later day with a pitch, and unknown beyond the last", () => {
    const cells = [cell("resting"), cell("resting"), cell(0), cell(20), cell("resting")];
    expect(freeAfter(cells, 0)).toBe(3);
    expect(freeAfter(cells, 4)).toBeNull();
  });

  it("is also a day of an age without a limit", () => {
    expect(freeAfter([cell("resting"), cell("no_published_limit")], 0)).toBe(1);
  });

  it("leaves only rest, pain and a used-up number limited", () => {
    const open = [cell(1), cell("no_published_limit"), cell("outs", { outs: 3 })];
    expect(open.some(isLimited)).toBe(false);
    expect([cell(0), cell("resting"), cell("pain"), cell("outs")].every(isLimited)).toBe(true);
  });
});
