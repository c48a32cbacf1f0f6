import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeAfterKey } from "@/components/arms/grid-moves";

const SIZE = { rows: 20, columns: 30 };

describe("the keys of a grid", () => {
  it.each([
    ["ArrowDown", false, { row: 6, column: 9 }],
    ["ArrowUp", false, { row: 4, column: 9 }],
    ["ArrowRight", false, { row: 5, column: 10 }],
    ["ArrowLeft", false, { row: 5, column: 8 }],
    ["Home", false, { row: 5, column: 0 }],
    ["End", false, { row: 5, column: 29 }],
    ["Home", true, { row: 0, column: 0 }],
    ["End", true, { row: 19, column: 29 }],
    ["PageDown", false, { row: 13, column: 9 }],
    ["PageUp", false, { row: 0, column: 9 }],
  ])("%s, with Control %s, lead to %j", (key, isWithControl, place) => {
    expect(placeAfterKey({ row: 5, column: 9 }, key, isWithControl, SIZE)).toEqual(place);
  });

  it.each(["Tab", "Enter", "a", "Escape"])("leave %s to the browser", (key) => {
    expect(placeAfterKey({ row: 5, column: 9 }, key, false, SIZE)).toBeNull();
  });

  it("leave an arrow with Control to the browser", () => {
    expect(placeAfterKey({ row: 5, column: 9 }, "ArrowRight", true, SIZE)).toBeNull();
  });

  it("never lead out of the grid", () => {
    const keys = fc.constantFrom(
      "ArrowUp",
      "ArrowDown",
      "ArrowLeft",
      "ArrowRight",
      "PageUp",
      "PageDown",
      "End",
    );
    const sizes = fc.record({
      rows: fc.integer({ min: 1, max: 40 }),
      columns: fc.integer({ min: 2, max: 30 }),
    });
    fc.assert(
      fc.property(sizes, fc.array(keys, { maxLength: 30 }), (size, pressed) => {
        let place = { row: 0, column: 0 };
        for (const key of pressed) place = placeAfterKey(place, key, false, size) ?? place;
        expect(place.row).toBeGreaterThanOrEqual(0);
        expect(place.row).toBeLessThan(size.rows);
        expect(place.column).toBeGreaterThanOrEqual(0);
        expect(place.column).toBeLessThan(size.columns);
      }),
    );
  });
});
