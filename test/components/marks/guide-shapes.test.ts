import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { guideShapes, type MarkShape } from "@/components/marks/guide-shapes";
import type { Place } from "@/server/domain/reviews/draft";

const SIZE = { widthPx: 1000, heightPx: 500 };

const at = (x: number, y: number): Place => ({ x, y });
const fitted = (guide: Parameters<typeof guideShapes>[0]["guide"], ...points: Place[]) =>
  guideShapes({ guide, points, text: "" }, SIZE);
const lines = (shapes: MarkShape[]) => shapes.filter((shape) => shape.kind === "line");

describe("a guide fits itself to its points", () => {
  it("hangs a plumb line through its point from the upper edge to the lower", () => {
    expect(lines(fitted("plumb", at(320, 90)))).toEqual([
      { kind: "line", from: at(320, 0), to: at(320, 500), isDashed: false },
    ]);
  });

  it.each([
    ["level", [at(200, 400), at(700, 400)], at(0, 400), at(1000, 400)],
    ["rising to the right", [at(250, 250), at(500, 200)], at(0, 300), at(1000, 100)],
    ["to the left", [at(500, 200), at(250, 250)], at(1000, 100), at(0, 300)],
    ["upright", [at(300, 100), at(300, 200)], at(300, 0), at(300, 500)],
  ])("draws the plate line on to both edges of the picture: %s", (_how, points, from, to) => {
    const [drawn] = lines(fitted("plate_line", ...points));
    expect(drawn).toEqual({ kind: "line", from, to, isDashed: false });
  });

  it("joins the shoulders and lays a true level through their middle, dashed", () => {
    expect(lines(fitted("level", at(400, 200), at(500, 240)))).toEqual([
      { kind: "line", from: at(400, 200), to: at(500, 240), isDashed: false },
      expect.objectContaining({ isDashed: true, from: expect.objectContaining({ y: 220 }) }),
    ]);
  });

  it("draws a ring around its middle through its second point", () => {
    expect(fitted("ring", at(100, 100), at(130, 140))).toContainEqual({
      kind: "circle",
      centre: at(100, 100),
      radiusPx: 50,
    });
  });

  it.each([
    ["clockwise", [at(400, 100), at(400, 200), at(300, 200)], false],
    ["the other way", [at(300, 200), at(400, 200), at(400, 100)], true],
  ])("bends its arc into the angle between the limbs, %s", (_how, points, isClockwise) => {
    const arc = fitted("limbs", ...points).find((shape) => shape.kind === "arc");
    expect(arc).toMatchObject({ centre: at(400, 200), isClockwise });
    expect(arc?.kind === "arc" ? arc.radiusPx : 0).toBeCloseTo(100 / 3);
  });

  it("writes a note's words beside its place", () => {
    const shapes = guideShapes({ guide: "note", points: [at(5, 6)], text: "chest over the knee" }, SIZE);
    expect(shapes).toContainEqual({ kind: "words", at: at(5, 6), text: "chest over the knee" });
  });

  it("draws what it can of points that are not all there, or all at one place, and never a broken number", () => {
    const place = fc.record({
      x: fc.integer({ min: -50, max: 1050 }),
      y: fc.integer({ min: -50, max: 550 }),
    });
    const guide = fc.constantFrom("plumb", "plate_line", "level", "ring", "limbs", "pencil", "note");
    fc.assert(
      fc.property(guide, fc.array(place, { maxLength: 3 }), fc.boolean(), (of, points, isOnePlace) => {
        const given = isOnePlace ? points.map(() => at(10, 10)) : points;
        const numbers = JSON.stringify(guideShapes({ guide: of, points: given, text: "" }, SIZE));
        expect(numbers).not.toContain("null");
      }),
    );
  });

  it("runs the plate line through both its points wherever they are", () => {
    const inside = fc.record({ x: fc.integer({ min: 0, max: 1000 }), y: fc.integer({ min: 0, max: 500 }) });
    fc.assert(
      fc.property(inside, inside, (a, b) => {
        fc.pre(a.x !== b.x || a.y !== b.y);
        const [drawn] = lines(fitted("plate_line", a, b));
        if (drawn?.kind !== "line") throw new Error("No line was drawn.");
        const { from, to } = drawn;
        for (const point of [a, b]) {
          const off = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
          expect(Math.abs(off) / Math.hypot(to.x - from.x, to.y - from.y)).toBeLessThan(1e-6);
        }
      }),
    );
  });
});
