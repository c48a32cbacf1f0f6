/** A point or direction in metres: x toward the plate, y up, z to the throwing side of the mound (a right-hander's right). */
export type Vector = readonly [number, number, number];

/** a + b, component by component. */
export function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** a - b: the way from b to a. */
export function minus(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** The vector stretched by a factor. */
export function times(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

/** Inner product. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Cross product, right-handed. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Length in the vector's own unit. */
export function lengthOf(a: Vector): number {
  return Math.hypot(a[0], a[1], a[2]);
}

/** The direction of a vector, length 1. @throws RangeError for a vector without length */
export function direction(a: Vector): Vector {
  const length = lengthOf(a);
  if (length === 0) throw new RangeError("a vector without length has no direction");
  return times(a, 1 / length);
}

/** The part of `a` at right angles to the unit vector `axis`. */
export function acrossOf(a: Vector, axis: Vector): Vector {
  return minus(a, times(axis, dot(a, axis)));
}

/** From a (share 0) to b (share 1) in a straight line. */
export function between(a: Vector, b: Vector, share: number): Vector {
  return plus(a, times(minus(b, a), share));
}

/** The same point on the other side of the plane through rubber and plate. */
export function mirrored(a: Vector): Vector {
  return [a[0], a[1], -a[2]];
}

/** Sum of scaled axes: a point given in the frame of three axes. */
export function inFrame(axes: readonly [Vector, Vector, Vector], at: Vector): Vector {
  return plus(plus(times(axes[0], at[0]), times(axes[1], at[1])), times(axes[2], at[2]));
}

/** Angle between two directions in degrees, 0 to 180. */
export function angleBetweenDeg(a: Vector, b: Vector): number {
  return degrees(Math.atan2(lengthOf(cross(a, b)), dot(a, b)));
}

/** Radians as degrees. */
export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** Degrees as radians. */
export function radians(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}
