import { crossOf, distancePx, flexionDeg, leanDeg, type Place, riseDeg, shareAlong, wayTo } from "./angles";
import type { MeasureKind } from "./measure-kind";

/** The points of a measure, read by the place its kind asks for them in. */
type At = (index: number) => Place;

/** The value of one kind of measure; `ahead` is 1 when the plate or the glove side lies to the right, else -1. */
type Geometry = (at: At, ahead: 1 | -1) => number;

/**
 * What the points of each kind are worth: degrees, or hundredths. Not a number where points that span a length lie on
 * one place.
 *
 * - `front_knee_flexion`: 0 straight, more as it bends (180 less the included angle of hip, knee and ankle).
 * - `trunk_tilt_forward`: line of the trunk from the upright, plus toward the plate.
 * - `trunk_tilt_side`: the same from an end, plus to the glove side.
 * - `stride_length`: along the lane from the ankle on the rubber to the front ankle, as a share of standing height.
 * - `stride_direction`: how far the front foot lies off the line from the back foot to the plate, in widths of the rubber
 *   as it looks at the rubber; plus to the glove side (open). Zero is exact; away from it a foot nearer the camera looks
 *   farther off, so such values compare within one view only.
 * - `shoulder_tilt`: line of the shoulders from level, plus when the throwing shoulder is higher.
 * - `glove_height`: along the trunk, hips 0 and shoulders 100.
 * - `head_travel`: how far the head has moved sideways, plus to the glove side, as a share of standing height.
 */
export const GEOMETRY: Readonly<Record<Exclude<MeasureKind, "finish_hold">, Geometry>> = {
  front_knee_flexion: (at) =>
    sameSpot(at, 0, 1) || sameSpot(at, 1, 2) ? NaN : flexionDeg(at(0), at(1), at(2)),
  trunk_tilt_forward: (at, ahead) => leaning(at, ahead),
  trunk_tilt_side: (at, ahead) => leaning(at, ahead),
  stride_length: (at, ahead) => percent((ahead * wayTo(at(2), at(3)).x) / distancePx(at(0), at(1))),
  stride_direction: (at, ahead) => percent(offLine(at, ahead)),
  shoulder_tilt: (at) => (sameSpot(at, 0, 1) ? NaN : riseDeg(at(0), at(1))),
  glove_height: (at) => percent(shareAlong(at(2), at(0), at(1))),
  head_travel: (at, ahead) => percent((ahead * wayTo(at(2), at(3)).x) / distancePx(at(0), at(1))),
};

const percent = (share: number) => share * 100;

function sameSpot(at: At, one: number, other: number): boolean {
  return distancePx(at(one), at(other)) === 0;
}

function leaning(at: At, ahead: 1 | -1): number {
  return sameSpot(at, 0, 1) ? NaN : ahead * leanDeg(at(0), at(1));
}

/** The front foot off the line from the back foot to the plate, along the rubber's edge, in lengths of that edge. */
function offLine(at: At, ahead: 1 | -1): number {
  const edge = wayTo(at(0), at(1));
  const line = wayTo(at(2), at(3));
  const toGloveSide = Math.sign(edge.x) * ahead;
  return (toGloveSide * crossOf(line, wayTo(at(2), at(4)))) / crossOf(line, edge);
}
