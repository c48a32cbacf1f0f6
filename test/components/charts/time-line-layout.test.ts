import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  BAR_ROW_PX,
  itemInWords,
  LANE_PX,
  placeRows,
  ROW_AIR_PX,
} from "@/components/charts/time-line-layout";
import { entryItem, itemAfterKey, itemAt } from "@/components/charts/time-line-moves";
import type { TimeLineItem } from "@/components/charts/time-line-parts";
import { addDays } from "@/server/domain/time/calendar-day";

const axis = { startDay: "2026-09-01", endDay: "2026-12-10" };
const ground = { axis, widthPx: 900 };
const rows = [
  { key: "top", label: "Top" },
  { key: "empty", label: "Empty" },
  { key: "low", label: "Low" },
];

function item(
  id: string,
  startDay: string,
  endDay: string | null,
  more: Partial<TimeLineItem> = {},
): TimeLineItem {
  return { id, row: "top", kind: "span", startDay, endDay, label: id, state: "", ...more };
}

describe("spans in a row", () => {
  it("share a lane when one begins on the day the other ends", () => {
    const [top] = placeRows(
      rows,
      [item("a", "2026-09-05", "2026-09-20"), item("b", "2026-09-20", null)],
      ground,
    );
    expect(top?.items.map(({ lane }) => lane)).toEqual([0, 0]);
    expect(top?.heightPx).toBe(LANE_PX + 2 * ROW_AIR_PX);
  });

  it("stand in two lanes when they overlap by a day, the earlier one above", () => {
    const [top] = placeRows(
      rows,
      [item("b", "2026-09-19", null), item("a", "2026-09-05", "2026-09-20")],
      ground,
    );
    expect(top?.items.map(({ item: { id }, lane }) => [id, lane])).toEqual([
      ["a", 0],
      ["b", 1],
    ]);
    expect(top?.heightPx).toBe(2 * LANE_PX + 2 * ROW_AIR_PX);
  });

  it("never overlap within a lane", () => {
    const span = fc
      .tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 60 }), fc.uuid())
      .map(([from, length, id]) =>
        item(id, addDays(axis.startDay, from), addDays(axis.startDay, from + length)),
      );
    fc.assert(
      fc.property(fc.array(span, { maxLength: 30 }), (spans) => {
        const placed = placeRows(rows, spans, ground)[0]?.items ?? [];
        expect(placed).toHaveLength(spans.length);
        for (const one of placed) {
          const after = placed.filter(
            (other) => other.lane === one.lane && other.from >= one.from && other !== one,
          );
          expect(after.every((other) => other.from >= one.to)).toBe(true);
        }
      }),
    );
  });

  it("that are still so end with today, and with the axis when no today is given", () => {
    const open = [item("a", "2026-09-01", null)];
    expect(placeRows(rows, open, { ...ground, today: "2026-10-20" })[0]?.items[0]?.to).toBeCloseTo(0.5, 10);
    expect(placeRows(rows, open, ground)[0]?.items[0]?.to).toBe(1);
  });
});

describe("a time line", () => {
  it("puts rows under one another without a gap, empty ones too", () => {
    const placed = placeRows(
      rows,
      [item("bar", "2026-09-07", "2026-09-14", { kind: "bar", value: 40 })],
      ground,
    );
    expect(placed[0]?.heightPx).toBe(BAR_ROW_PX + 2 * ROW_AIR_PX);
    for (const [index, row] of placed.entries()) {
      const before = placed[index - 1];
      expect(row.topPx).toBe(before ? before.topPx + before.heightPx : 0);
    }
  });

  it.each([
    ["a span over before it", item("x", "2026-08-01", "2026-09-01"), 0],
    ["a span that reaches into it", item("x", "2026-08-01", "2026-09-02"), 1],
    ["a mark on its first day", item("x", "2026-09-01", null, { kind: "mark" }), 1],
    ["a mark on the day before", item("x", "2026-08-31", null, { kind: "mark" }), 0],
    ["a mark on its last day", item("x", "2026-12-09", null, { kind: "mark" }), 1],
    ["a mark on the day after", item("x", "2026-12-10", null, { kind: "mark" }), 0],
    ["an item of no row", item("x", "2026-09-05", null, { row: "none" }), 0],
  ])("with %s", (_, one, count) => {
    expect(placeRows(rows, [one], ground).flatMap((row) => row.items)).toHaveLength(count);
  });

  it("measures the bars of a row by the largest of them", () => {
    const bars = [3, 71, 20].map((value, index) =>
      item(`w${index}`, addDays("2026-09-07", index * 7), addDays("2026-09-14", index * 7), {
        kind: "bar",
        value,
      }),
    );
    expect(placeRows(rows, bars, ground)[0]?.maxValue).toBe(71);
  });

  it.each([
    [
      item("Front knee", "2026-11-02", "2026-12-01", { state: "showing" }),
      "Front knee, showing, from Mon 2 Nov 2026 until Tue 1 Dec 2026",
    ],
    [item("Gaze", "2026-11-02", null, { state: "held" }), "Gaze, held, since Mon 2 Nov 2026"],
    [item("Lesson", "2026-11-02", null, { kind: "mark" }), "Lesson, Mon 2 Nov 2026"],
    [
      item("Throws", "2026-11-02", "2026-11-09", { kind: "bar", state: "71 throws" }),
      "Throws, 71 throws, week of Mon 2 Nov 2026",
    ],
  ])("says an item in words", (one, words) => {
    expect(itemInWords(one)).toBe(words);
  });
});

describe("keys on a time line", () => {
  const placed = placeRows(
    rows,
    [
      item("a", "2026-09-05", "2026-09-20"),
      item("b", "2026-10-01", "2026-10-20"),
      item("c", "2026-11-01", null),
      item("low-early", "2026-09-10", null, { row: "low", kind: "mark" }),
      item("low-late", "2026-10-25", null, { row: "low", kind: "mark" }),
    ],
    ground,
  );

  it.each([
    ["a", "ArrowRight", "b"],
    ["b", "ArrowLeft", "a"],
    ["a", "End", "c"],
    ["c", "Home", "a"],
    ["c", "ArrowRight", null],
    ["a", "ArrowLeft", null],
    ["a", "ArrowUp", null],
    ["a", "x", null],
    ["unknown", "ArrowRight", null],
  ])("from %s, %s leads to %s", (from, key, to) => {
    expect(itemAfterKey(placed, from, key)).toBe(to);
  });

  it("pass over an empty row to what begins nearest in the next", () => {
    expect(itemAfterKey(placed, "a", "ArrowDown")).toBe("low-early");
    expect(itemAfterKey(placed, "c", "ArrowDown")).toBe("low-late");
    expect(itemAfterKey(placed, "low-late", "ArrowUp")).toBe("c");
  });

  it("enter by the latest item of the first row that holds anything", () => {
    expect(entryItem(placed)).toBe("c");
    expect(entryItem(placeRows(rows, [], ground))).toBeNull();
  });
});

describe("words beside spans", () => {
  const labelled = fc
    .tuple(fc.integer({ min: -40, max: 99 }), fc.integer({ min: 1, max: 90 }), fc.uuid(), fc.boolean())
    .map(([from, length, id, isOpen]) =>
      item(id, addDays(axis.startDay, from), isOpen ? null : addDays(axis.startDay, from + length), {
        label: "A checkpoint of some length",
        state: "came back, showing",
        isLabelled: true,
      }),
    );

  it("never touch another span, its shapes or its words in their lane, on any width", () => {
    fc.assert(
      fc.property(
        fc.array(labelled, { maxLength: 25 }),
        fc.integer({ min: 200, max: 1600 }),
        (spans, widthPx) => {
          const placed = placeRows(rows, spans, { axis, widthPx, today: "2026-11-20" })[0]?.items ?? [];
          expect(placed.flatMap(({ taken }) => taken).every(Number.isFinite)).toBe(true);
          const pairs = placed.flatMap((one, at) =>
            placed.slice(at + 1).map((other) => [one, other] as const),
          );
          const touching = pairs.filter(
            ([one, other]) =>
              one.lane === other.lane && one.taken[1] > other.taken[0] && other.taken[1] > one.taken[0],
          );
          expect(touching).toEqual([]);
        },
      ),
    );
  });

  it("stand on a long span, after a short one, before one at the end, nowhere on too narrow a drawing", () => {
    const words = (start: string, end: string | null, widthPx: number) =>
      placeRows(rows, [item("Front knee", start, end, { isLabelled: true })], { axis, widthPx })[0]?.items[0]
        ?.words?.side;
    expect(words("2026-09-05", "2026-11-20", 900)).toBe("on");
    expect(words("2026-09-05", "2026-09-08", 900)).toBe("after");
    expect(words("2026-12-01", "2026-12-08", 900)).toBe("before");
    expect(words("2026-10-01", "2026-10-08", 90)).toBeUndefined();
  });
});

describe("a place on the drawing", () => {
  const placed = placeRows(
    rows,
    [
      item("a", "2026-09-05", "2026-09-20"),
      item("b", "2026-10-01", "2026-10-20"),
      item("low", "2026-10-25", null, { row: "low", kind: "mark" }),
    ],
    { axis, widthPx: 1000 },
  );
  const at = (xPx: number, yPx: number) => itemAt(placed, { xPx, yPx, widthPx: 1000 });

  it("means what lies there, or what is a finger's breadth away in the same row, or nothing", () => {
    expect(at(100, 18)).toBe("a");
    expect(at(195, 18)).toBe("a");
    expect(at(250, 18)).toBeNull();
    expect(at(300, 18)).toBe("b");
    expect(at(545, 18 + 2 * (LANE_PX + 2 * ROW_AIR_PX))).toBe("low");
    expect(at(545, 18)).toBeNull();
    expect(at(545, 5000)).toBeNull();
  });
});
