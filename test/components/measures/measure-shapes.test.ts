import { describe, expect, it } from "vitest";
import { type DrawnMeasure, measureShapes, wordsPlace } from "@/components/measures/measure-shapes";

const SIZE = { widthPx: 1280, heightPx: 720 };
const point = (frame: number, x: number, y: number) => ({ frame, x, y });
const STRIDE: DrawnMeasure = {
  kind: "stride_length",
  frame: 142,
  points: [point(3, 400, 100), point(3, 400, 600), point(3, 410, 590), point(142, 800, 590)],
};
const kinds = (measure: DrawnMeasure, frame: number) =>
  measureShapes(measure, frame, SIZE).map((shape) => shape.kind);

describe("a measure on the picture", () => {
  it("draws the standing height where it was placed, and the stride on the measured frame", () => {
    expect(kinds(STRIDE, 3)).toEqual(["line", "dot", "dot", "dot"]);
    expect(measureShapes(STRIDE, 142, SIZE)).toEqual([
      { kind: "line", from: point(3, 410, 590), to: point(142, 800, 590), isDashed: false },
      { kind: "dot", at: point(142, 800, 590) },
    ]);
  });

  it("draws nothing on any other frame", () => {
    expect(measureShapes(STRIDE, 60, SIZE)).toEqual([]);
  });

  it("draws what there is while points are still to come", () => {
    expect(kinds({ ...STRIDE, points: STRIDE.points.slice(0, 2) }, 3)).toEqual(["line", "dot", "dot"]);
    expect(kinds({ ...STRIDE, points: STRIDE.points.slice(0, 1) }, 3)).toEqual(["dot"]);
  });

  it("reads a lean against an upright of the same length", () => {
    const lean: DrawnMeasure = {
      ...{ kind: "trunk_tilt_forward", frame: 142 },
      points: [point(142, 600, 400), point(142, 660, 320)],
    };
    expect(measureShapes(lean, 142, SIZE)[1]).toEqual({
      ...{ kind: "line", from: point(142, 600, 400), to: { x: 600, y: 300 }, isDashed: true },
    });
  });
});

describe("the worth of a measure on the picture", () => {
  it("is written in the middle of a stride and at the joint of a knee", () => {
    expect(wordsPlace(STRIDE)).toEqual({ x: 605, y: 590 });
    const knee: DrawnMeasure = {
      ...{ kind: "front_knee_flexion", frame: 142 },
      points: [point(142, 1, 1), point(142, 7, 8), point(142, 5, 20)],
    };
    expect(wordsPlace(knee)).toEqual({ x: 7, y: 8 });
  });

  it("is not written while its points are still coming", () => {
    expect(wordsPlace({ ...STRIDE, points: STRIDE.points.slice(0, 3) })).toBeNull();
  });
});
