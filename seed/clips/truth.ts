import { ballAt } from "./ball";
import { bodyOf } from "./body";
import { type Camera, cameraOf, depthM, type Pixel, pixelOf, project } from "./camera";
import type { ClipParameters, ClipView } from "./clip-parameters";
import { type Delivery, deliveryOf } from "./delivery";
import type { Figure, JointName } from "./figure";
import { CLIP_S, type DeliveryEvent, EVENT_TIMES_S } from "./timeline";
import { angleBetweenDeg, degrees, minus } from "./vector";

/** What is true of one frame: its time and where each joint is seen; the ball is null once it has left the picture. */
export type FrameTruth = {
  readonly timeMs: number;
  readonly joints: Readonly<Record<JointName, Pixel>>;
  readonly ball: Pixel | null;
};

/** A quantity at front foot contact and at ball release, on the frames of those events. */
export type AtContactAndRelease = { readonly contact: number; readonly release: number };

/** The sidecar of a clip: what a perfect observer would find in it. Angles are those of the body, not of its picture. */
export type ClipTruth = {
  readonly version: 1;
  readonly view: ClipView;
  readonly throws: "R" | "L";
  readonly fps: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly frames: readonly FrameTruth[];
  /** Frame numbers counted from 0: the first frame at or after the event. */
  readonly events: Readonly<Record<DeliveryEvent, number>>;
  readonly angles: {
    /** 0 is a straight leg. */
    readonly frontKneeFlexionDeg: AtContactAndRelease;
    /** Seen from the side, positive toward the plate. */
    readonly trunkTiltDeg: AtContactAndRelease;
    /** Line of the shoulders as seen from above: 0 in line with the plate, 90 square to it. */
    readonly shoulderTurnDeg: AtContactAndRelease;
    /** Rubber-side ankle in the set position to front ankle at contact, along the lane, as a share of body height. */
    readonly strideFraction: number;
  };
};

/** Number of frames of a clip at its rate. */
export function frameCountOf(fps: number): number {
  return Math.round(CLIP_S * fps);
}

/** The frame number of each event: the first frame at or after it. */
export function eventFrames(fps: number): Record<DeliveryEvent, number> {
  const names = Object.keys(EVENT_TIMES_S) as DeliveryEvent[];
  const frameOf = (timeS: number) => Math.ceil(timeS * fps - 1e-6);
  return Object.fromEntries(names.map((name) => [name, frameOf(EVENT_TIMES_S[name])])) as Record<
    DeliveryEvent,
    number
  >;
}

/** The truth of the clip that parameters describe, without drawing it. */
export function truthOf(parameters: ClipParameters): ClipTruth {
  const { view, throws, fps, widthPx, heightPx } = parameters;
  const delivery = deliveryOf(parameters);
  const camera = cameraOf(parameters);
  const frames = Array.from({ length: frameCountOf(fps) }, (_, frame) =>
    frameTruth(frame, delivery, camera, parameters),
  );
  return {
    version: 1,
    view,
    throws,
    fps,
    widthPx,
    heightPx,
    frames,
    events: eventFrames(fps),
    angles: anglesOf(delivery, parameters),
  };
}

function frameTruth(
  frame: number,
  delivery: Delivery,
  camera: Camera,
  parameters: ClipParameters,
): FrameTruth {
  const timeS = frame / parameters.fps;
  const pixels = project(delivery(timeS).joints, camera);
  const joints = Object.fromEntries(Object.entries(pixels).map(([name, pixel]) => [name, rounded(pixel)]));
  return {
    timeMs: Math.round(timeS * 1e6) / 1e3,
    joints: joints as Record<JointName, Pixel>,
    ball: seen(ballAt(delivery, parameters, timeS), camera),
  };
}

function seen(place: readonly [number, number, number], camera: Camera): Pixel | null {
  if (depthM(place, camera) < 0.3) return null;
  const pixel = pixelOf(place, camera);
  const inside = [0, 1] as const;
  return inside.every((axis) => pixel[axis] >= 0 && pixel[axis] <= 2 * camera.middlePx[axis])
    ? rounded(pixel)
    : null;
}

function rounded(pixel: Pixel): Pixel {
  return [Math.round(pixel[0] * 100) / 100, Math.round(pixel[1] * 100) / 100];
}

function anglesOf(delivery: Delivery, parameters: ClipParameters): ClipTruth["angles"] {
  const events = eventFrames(parameters.fps);
  const figureAt = (frame: number) => delivery(frame / parameters.fps);
  const contact = figureAt(events.front_foot_contact);
  const release = figureAt(events.ball_release);
  const both = (measure: (figure: Figure) => number): AtContactAndRelease => ({
    contact: measure(contact),
    release: measure(release),
  });
  const strideM = contact.joints.leadAnkle[0] - figureAt(0).joints.backAnkle[0];
  return {
    frontKneeFlexionDeg: both(frontKneeFlexionDeg),
    trunkTiltDeg: both(trunkTiltDeg),
    shoulderTurnDeg: both((figure) => shoulderTurnDeg(figure, parameters.throws)),
    strideFraction: strideM / bodyOf(parameters.ageYears, parameters.heightM).heightM,
  };
}

/** Front-knee flexion of a figure in degrees, 0 straight. */
export function frontKneeFlexionDeg({ joints }: Pick<Figure, "joints">): number {
  return angleBetweenDeg(minus(joints.leadKnee, joints.leadHip), minus(joints.leadAnkle, joints.leadKnee));
}

/** Trunk tilt of a figure in degrees, seen square from the side, positive toward the plate. */
export function trunkTiltDeg({ joints }: Pick<Figure, "joints">): number {
  const spine = minus(joints.midShoulder, joints.midHip);
  return degrees(Math.atan2(spine[0], spine[1]));
}

function shoulderTurnDeg({ joints }: Figure, throws: "R" | "L"): number {
  const line = minus(joints.gloveShoulder, joints.throwingShoulder);
  return degrees(Math.atan2(throws === "R" ? -line[2] : line[2], line[0]));
}
