import { acrossOf, cross, direction, lengthOf, minus, plus, radians, times, type Vector } from "./vector";

/** Distance between the ends of a two-part limb whose middle joint is flexed; 0 degrees is straight. */
export function reachOf(upper: number, lower: number, flexionDeg: number): number {
  return Math.sqrt(upper ** 2 + lower ** 2 + 2 * upper * lower * Math.cos(radians(flexionDeg)));
}

/**
 * Where the middle joint of a limb sits between its two ends, bent toward a direction. An end that is out of reach is
 * taken as just within reach along the same line.
 */
export function middleJoint(from: Vector, to: Vector, upper: number, lower: number, toward: Vector): Vector {
  const axis = direction(minus(to, from));
  const reach = Math.min(lengthOf(minus(to, from)), (upper + lower) * 0.9999);
  const along = (upper ** 2 - lower ** 2 + reach ** 2) / (2 * reach);
  const aside = Math.sqrt(Math.max(0, upper ** 2 - along ** 2));
  return plus(from, plus(times(axis, along), times(direction(acrossOf(toward, axis)), aside)));
}

/** Directions of upper arm and forearm in the arm's own frame: away from the spine, up along it, out from the chest. */
export type ArmPose = { readonly upper: Vector; readonly fore: Vector };

/**
 * An arm by its joint angles in degrees: abduction 0 hangs, 90 level with the shoulders; horizontal adduction 0 points
 * out sideways, 90 straight ahead; external rotation 0 has the forearm ahead, 90 up, 180 back; elbow flexion 0 straight.
 */
export function armByAngles(
  abductionDeg: number,
  adductionDeg: number,
  rotationDeg: number,
  elbowDeg: number,
): ArmPose {
  const [abduction, adduction, rotation, elbow] = [
    radians(abductionDeg),
    radians(adductionDeg),
    radians(rotationDeg),
    radians(elbowDeg),
  ];
  const upper: Vector = [
    Math.sin(abduction) * Math.cos(adduction),
    -Math.cos(abduction),
    Math.sin(abduction) * Math.sin(adduction),
  ];
  const ahead: Vector = [-Math.sin(adduction), 0, Math.cos(adduction)];
  const bend = plus(times(ahead, Math.cos(rotation)), times(cross(ahead, upper), Math.sin(rotation)));
  return { upper, fore: plus(times(upper, Math.cos(elbow)), times(bend, Math.sin(elbow))) };
}

/** External rotation of the shoulder in degrees, -180 to 180, read back from an arm's directions. */
export function externalRotationDeg(arm: ArmPose): number {
  const ahead = direction(acrossOf([0, 0, 1], arm.upper));
  const up = cross(ahead, arm.upper);
  const fore = arm.fore;
  const along = (axis: Vector) => fore[0] * axis[0] + fore[1] * axis[1] + fore[2] * axis[2];
  return (Math.atan2(along(up), along(ahead)) * 180) / Math.PI;
}

/**
 * An arm reaching for a place with the elbow down and out.
 * @param shoulder the shoulder, and `hand` the wrist, both in shares of body height in the arm's own frame
 */
export function armReaching(shoulder: Vector, hand: Vector, upperShare: number, foreShare: number): ArmPose {
  const elbow = middleJoint(shoulder, hand, upperShare, foreShare, [0.3, -1, -0.15]);
  return { upper: direction(minus(elbow, shoulder)), fore: direction(minus(hand, elbow)) };
}
