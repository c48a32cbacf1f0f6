import { CAMERA_VIEWS, type CameraView } from "./delivery";

/** What one camera from the side, the front or behind can honestly measure. */
export const MEASURE_KINDS = [
  "front_knee_flexion",
  "trunk_tilt_forward",
  "trunk_tilt_side",
  "stride_length",
  "stride_direction",
  "shoulder_tilt",
  "glove_height",
  "head_travel",
  "finish_hold",
] as const;

/** One kind of measure. */
export type MeasureKind = (typeof MEASURE_KINDS)[number];

/** Degrees, hundredths of a length (of height, trunk or rubber), or milliseconds. */
export type MeasureUnit = "deg" | "pct" | "ms";

/**
 * On which frame a point is placed: `here` is the frame that is measured, `standing` one on which the athlete stands
 * straight, `before` an earlier moment to compare with.
 */
export type PointFrame = "here" | "standing" | "before";

/** A point to be placed, and how it is asked for. */
export interface MeasurePoint {
  name: string;
  on: PointFrame;
}

/** What a kind of measure is. */
export interface MeasureDefinition {
  words: string;
  unit: MeasureUnit;
  /** What the value is a share of, for `pct`. */
  of: string;
  /** The views it may be taken from; from any other it is refused. */
  views: readonly CameraView[];
  /** In the order in which they are asked for; none when only frames are named. */
  points: readonly MeasurePoint[];
}

const SIDES = ["open_side", "closed_side"] as const;
const ENDS = ["front", "back"] as const;
const here = (name: string): MeasurePoint => ({ name, on: "here" });
const before = (name: string): MeasurePoint => ({ name, on: "before" });
const standing = (name: string): MeasurePoint => ({ name, on: "standing" });

/** Every kind of measure. What is plus and what is minus is said where the value is computed. */
export const MEASURES: Readonly<Record<MeasureKind, MeasureDefinition>> = {
  front_knee_flexion: {
    words: "Front-knee flexion",
    ...{ unit: "deg", of: "", views: SIDES },
    points: [here("front hip"), here("front knee"), here("front ankle")],
  },
  trunk_tilt_forward: {
    words: "Trunk tilt forward",
    ...{ unit: "deg", of: "", views: SIDES },
    points: [here("middle of the hips"), here("middle of the shoulders")],
  },
  trunk_tilt_side: {
    words: "Trunk tilt sideways",
    ...{ unit: "deg", of: "", views: ENDS },
    points: [here("middle of the hips"), here("middle of the shoulders")],
  },
  stride_length: {
    words: "Stride length",
    ...{ unit: "pct", of: "standing height", views: SIDES },
    points: [
      ...[standing("top of the head"), standing("sole under it"), standing("ankle on the rubber")],
      here("front ankle"),
    ],
  },
  stride_direction: {
    words: "Stride direction",
    ...{ unit: "pct", of: "the rubber's width", views: ENDS },
    points: [
      ...[here("one end of the rubber's edge"), here("its other end")],
      ...[here("back foot on the rubber"), here("the plate, or the line to it")],
      here("front foot"),
    ],
  },
  shoulder_tilt: {
    words: "Shoulder-line tilt",
    ...{ unit: "deg", of: "", views: ENDS },
    points: [here("glove-side shoulder"), here("throwing shoulder")],
  },
  glove_height: {
    words: "Glove height",
    ...{ unit: "pct", of: "the trunk, hips 0 to shoulders 100", views: ["front", "open_side"] },
    points: [here("middle of the hips"), here("middle of the shoulders"), here("glove")],
  },
  head_travel: {
    words: "Head travel",
    ...{ unit: "pct", of: "standing height", views: ENDS },
    points: [...[standing("top of the head"), standing("sole under it")], ...[before("head"), here("head")]],
  },
  finish_hold: {
    words: "Finish held",
    ...{ unit: "ms", of: "", views: CAMERA_VIEWS },
    points: [],
  },
};

/** Whether a kind of measure may be taken on a clip filmed from this view; unknown views allow none. */
export function canBeMeasuredFrom(kind: MeasureKind, view: CameraView | null): boolean {
  return view !== null && MEASURES[kind].views.includes(view);
}
