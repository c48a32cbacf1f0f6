import { bodyOf } from "./body";
import type { ClipParameters, ClipView } from "./clip-parameters";
import { cross, direction, dot, minus, mirrored, type Vector } from "./vector";

/** A place in a picture: pixels to the right and down from its upper left corner. */
export type Pixel = readonly [number, number];

/** A pinhole camera, level. */
export type Camera = {
  readonly at: Vector;
  readonly right: Vector;
  readonly up: Vector;
  readonly ahead: Vector;
  /** Pixels for a metre at a metre's distance. */
  readonly focalPx: number;
  readonly middlePx: Pixel;
};

/** Where each view stands and looks, and how much it takes in, all in body heights, for a right-hander. */
const STANDS: Record<ClipView, { at: Vector; toward: Vector; wide: number; high: number }> = {
  open_side: { at: [0.48, 0.7, 4.4], toward: [0.48, 0.63, 0], wide: 2.05, high: 1.38 },
  closed_side: { at: [0.48, 0.7, -4.4], toward: [0.48, 0.63, 0], wide: 2.05, high: 1.38 },
  front: { at: [6, 0.85, 0.3], toward: [0.4, 0.6, 0.02], wide: 1.12, high: 1.5 },
  back: { at: [-4.6, 0.95, 0.3], toward: [0.4, 0.62, 0.02], wide: 1.16, high: 1.52 },
};

/** The camera of a clip: it frames the body whatever its height and whichever way up the picture is. */
export function cameraOf(parameters: ClipParameters): Camera {
  const { heightM } = bodyOf(parameters.ageYears, parameters.heightM);
  const stand = STANDS[parameters.view];
  const placed = (shares: Vector): Vector => {
    const place: Vector = [shares[0] * heightM, shares[1] * heightM, shares[2] * heightM];
    return parameters.throws === "R" ? place : mirrored(place);
  };
  const at = placed(stand.at);
  const way = minus(placed(stand.toward), at);
  const ahead = direction(way);
  const right = direction(cross(ahead, [0, 1, 0]));
  const perHeight = Math.min(parameters.widthPx / stand.wide, parameters.heightPx / stand.high);
  return {
    at,
    right,
    up: cross(right, ahead),
    ahead,
    focalPx: (perHeight / heightM) * Math.sqrt(dot(way, way)),
    middlePx: [parameters.widthPx / 2, parameters.heightPx / 2],
  };
}

/** How far in front of the camera a place is, in metres; negative behind it. */
export function depthM(place: Vector, camera: Camera): number {
  return dot(minus(place, camera.at), camera.ahead);
}

/** Where a place is seen. Only for places in front of the camera. */
export function pixelOf(place: Vector, camera: Camera): Pixel {
  const way = minus(place, camera.at);
  const scale = camera.focalPx / dot(way, camera.ahead);
  return [
    camera.middlePx[0] + dot(way, camera.right) * scale,
    camera.middlePx[1] - dot(way, camera.up) * scale,
  ];
}

/** Where each of some named places is seen. */
export function project<Name extends string>(
  places: Readonly<Record<Name, Vector>>,
  camera: Camera,
): Record<Name, Pixel> {
  const names = Object.keys(places) as Name[];
  return Object.fromEntries(names.map((name) => [name, pixelOf(places[name], camera)])) as Record<
    Name,
    Pixel
  >;
}
