import { guideShapes, type MarkShape, type PictureSize } from "@/components/marks/guide-shapes";
import { MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import type { MeasuredPoint, Place } from "@/server/domain/reviews/draft";

/** A measure as it is drawn; its points may still be coming, in the order its kind asks for them. */
export interface DrawnMeasure {
  kind: MeasureKind;
  frame: number;
  points: readonly MeasuredPoint[];
}

/** Points, by their place in the order, that a line joins, or a guide is fitted to. */
type Part =
  | { line: readonly [number, number]; isDashed?: boolean }
  | { guide: "limbs" | "level"; points: readonly number[] }
  /** From a point upright as far as to another: what a lean is read against. */
  | { upright: readonly [foot: number, top: number] };

const TRUNK: readonly Part[] = [{ line: [0, 1] }, { upright: [0, 1] }];

const PARTS: Readonly<Record<MeasureKind, readonly Part[]>> = {
  front_knee_flexion: [{ guide: "limbs", points: [0, 1, 2] }],
  trunk_tilt_forward: TRUNK,
  trunk_tilt_side: TRUNK,
  stride_length: [{ line: [0, 1] }, { line: [2, 3] }],
  stride_direction: [{ line: [0, 1] }, { line: [2, 3], isDashed: true }, { line: [2, 4] }],
  shoulder_tilt: [{ guide: "level", points: [0, 1] }],
  glove_height: [{ line: [0, 1] }],
  head_travel: [{ line: [0, 1] }, { line: [2, 3] }],
  finish_hold: [],
};

/** The points, by their place in the order, in whose middle a measure's worth is written. */
const WORDS_AT: Readonly<Record<MeasureKind, readonly number[]>> = {
  ...{ front_knee_flexion: [1], trunk_tilt_forward: [1], trunk_tilt_side: [1], stride_length: [2, 3] },
  ...{ stride_direction: [4], shoulder_tilt: [0, 1], glove_height: [2], head_travel: [3], finish_hold: [] },
};

/** Where a measure's worth is written, clear of what other measures of the frame say; null while its points are coming. */
export function wordsPlace({ kind, points }: DrawnMeasure): Place | null {
  const places = WORDS_AT[kind].flatMap((number) => points[number] ?? []);
  if (places.length === 0 || places.length < WORDS_AT[kind].length) return null;
  const middle = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return { x: middle(places.map(({ x }) => x)), y: middle(places.map(({ y }) => y)) };
}

/**
 * What a measure draws on a frame: the lines of which a point belongs to that frame, and its points there. A line to a
 * point of an earlier frame is drawn on the measured one, since the camera stands still.
 */
export function measureShapes(measure: DrawnMeasure, frame: number, size: PictureSize): MarkShape[] {
  const parts = PARTS[measure.kind].filter((part) => lastFrame(measure, numbersOf(part)) === frame);
  const dots = measure.points.filter((point) => point.frame === frame);
  return [
    ...parts.flatMap((part) => shapesOf(part, measure.points, size)),
    ...dots.map((at): MarkShape => ({ kind: "dot", at })),
  ];
}

/** The frame on which a part is drawn: the measured one as soon as one of its points belongs there. Null while some are missing. */
function lastFrame({ kind, frame, points }: DrawnMeasure, numbers: readonly number[]): number | null {
  if (numbers.some((number) => points[number] === undefined)) return null;
  const isHere = numbers.some((number) => MEASURES[kind].points[number]?.on === "here");
  return isHere ? frame : (points[numbers[0] ?? 0]?.frame ?? null);
}

function numbersOf(part: Part): readonly number[] {
  if ("guide" in part) return part.points;
  return "line" in part ? part.line : part.upright;
}

function shapesOf(part: Part, points: readonly MeasuredPoint[], size: PictureSize): MarkShape[] {
  const places = numbersOf(part).flatMap((number): readonly Place[] =>
    points[number] ? [points[number]] : [],
  );
  const [from, to] = places;
  if (!from || !to) return [];
  if ("guide" in part) return guideShapes({ guide: part.guide, points: places, text: "" }, size);
  if ("line" in part) return [{ kind: "line", from, to, isDashed: part.isDashed ?? false }];
  const top = { x: from.x, y: from.y - Math.hypot(to.x - from.x, to.y - from.y) };
  return [{ kind: "line", from, to: top, isDashed: true }];
}
