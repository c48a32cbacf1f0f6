import type { Place } from "./angles";
import { CAMERA_VIEW_WORDS, type CameraView } from "./delivery";
import { canBeMeasuredFrom, MEASURES, type MeasureKind } from "./measure-kind";

/** A measure as its points were placed, in the order its kind asks for them. Frames count from 0. */
export interface TakenMeasure {
  kind: MeasureKind;
  points: readonly (Place & { frame: number })[];
  frame: number;
  /** The last frame of a held finish, else null. */
  untilFrame: number | null;
}

/**
 * Why a kind of measure cannot be taken on a clip of this view, or null when it can.
 * @example viewProblem("front_knee_flexion", "front")
 * // "Front-knee flexion is measured from the open side or the closed side, not from the front."
 */
export function viewProblem(kind: MeasureKind, view: CameraView | null): string | null {
  if (canBeMeasuredFrom(kind, view)) return null;
  const { words, views } = MEASURES[kind];
  if (view === null) return `${words} needs to know where the camera stood, and nobody has said.`;
  const named = views.map((each) => `the ${CAMERA_VIEW_WORDS[each].toLowerCase()}`).join(" or ");
  return `${words} is measured from ${named}, not from the ${CAMERA_VIEW_WORDS[view].toLowerCase()}.`;
}

/** Why the points of a measure are not all where its kind asks for them, or null when they are. */
export function pointProblem({ kind, points, frame }: TakenMeasure): string | null {
  const asked = MEASURES[kind].points;
  if (points.length !== asked.length) return "Place every point.";
  const astray = asked.find(({ on }, index) => {
    const placed = points[index]?.frame ?? frame;
    return (on === "here" && placed !== frame) || (on === "before" && placed >= frame);
  });
  if (!astray) return null;
  const where = astray.on === "here" ? "on the frame that is measured" : "on an earlier frame";
  return `Place the point “${astray.name}” ${where}.`;
}
