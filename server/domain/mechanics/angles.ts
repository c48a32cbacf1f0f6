/** A place on the upright picture: source pixels to the right and down from its upper left corner. */
export interface Place {
  x: number;
  y: number;
}

/** The way from one place to another, in pixels to the right and down. */
export function wayTo(from: Place, to: Place): Place {
  return { x: to.x - from.x, y: to.y - from.y };
}

/** How far two places lie apart, in pixels. */
export function distancePx(a: Place, b: Place): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Cross product of two ways: plus when the second turns clockwise from the first as seen on the picture. */
export function crossOf(a: Place, b: Place): number {
  return a.x * b.y - a.y * b.x;
}

/** Inner product of two ways. */
export function dotOf(a: Place, b: Place): number {
  return a.x * b.x + a.y * b.y;
}

const degrees = (radians: number) => (radians * 180) / Math.PI;

/**
 * The angle between two limbs at their joint, 0 to 180 degrees: atan2(|v1 × v2|, v1 · v2). Turning, mirroring or scaling
 * the picture leaves it as it is. A limb without length gives 0.
 * @example includedAngleDeg({ x: 0, y: 0 }, { x: 3, y: 4 }, { x: 3, y: 9 }) // 143.130102
 */
export function includedAngleDeg(near: Place, joint: Place, far: Place): number {
  const [first, second] = [wayTo(joint, near), wayTo(joint, far)];
  return degrees(Math.atan2(Math.abs(crossOf(first, second)), dotOf(first, second)));
}

/** How far a joint is bent, in degrees: 180 less the included angle, 0 for a straight limb. */
export function flexionDeg(near: Place, joint: Place, far: Place): number {
  return 180 - includedAngleDeg(near, joint, far);
}

/**
 * How far a line leans from the upright, in degrees from its lower place to its upper: plus to the right of the picture,
 * minus to the left, 0 upright, beyond 90 when its head hangs below its foot.
 */
export function leanDeg(lower: Place, upper: Place): number {
  const { x, y } = wayTo(lower, upper);
  return degrees(Math.atan2(x, -y));
}

/** How far a line rises from level toward its second place, -90 to 90 degrees, whichever way it runs. */
export function riseDeg(from: Place, to: Place): number {
  const { x, y } = wayTo(from, to);
  return degrees(Math.atan2(-y, Math.abs(x)));
}

/** Where a place lies along the way from one place (0) to another (1), seen square to it. NaN for a way of no length. */
export function shareAlong(place: Place, from: Place, to: Place): number {
  const way = wayTo(from, to);
  return dotOf(wayTo(from, place), way) / dotOf(way, way);
}
