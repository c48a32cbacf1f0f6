import { describe, expect, test } from "vitest";
import { type Camera, cameraOf, type Pixel } from "@/seed/clips/camera";
import { CLIP_VIEWS, clipParameters } from "@/seed/clips/clip-parameters";
import { deliveryOf } from "@/seed/clips/delivery";
import { JOINT_NAMES } from "@/seed/clips/figure";
import { clearanceM } from "@/seed/clips/foot";
import { type ClipTruth, eventFrames, truthOf } from "@/seed/clips/truth";
import { cross, direction, dot, lengthOf, minus, plus, times, type Vector } from "@/seed/clips/vector";

const frameOf = (truth: ClipTruth, frame: number) => {
  const found = truth.frames[frame];
  if (found === undefined) throw new Error(`no frame ${frame}`);
  return found;
};

/** Included angle by cross and inner product, flexion its supplement: how a measurement on a picture is taken. */
function flexionOnPictureDeg(proximal: Pixel, vertex: Pixel, distal: Pixel): number {
  const [a, b] = [
    [proximal[0] - vertex[0], proximal[1] - vertex[1]],
    [distal[0] - vertex[0], distal[1] - vertex[1]],
  ] as const;
  const included = Math.atan2(Math.abs(a[0] * b[1] - a[1] * b[0]), a[0] * b[0] + a[1] * b[1]);
  return 180 - (included * 180) / Math.PI;
}

describe("the sidecar", () => {
  const parameters = clipParameters();
  const truth = truthOf(parameters);

  test("tells what it is about and says every joint on every frame at its time", () => {
    expect(truth).toMatchObject({
      version: 1,
      view: "open_side",
      throws: "R",
      fps: 60,
      widthPx: 640,
      heightPx: 360,
    });
    expect(truth.frames).toHaveLength(180);
    expect(truth.frames.map((frame) => frame.timeMs)).toEqual(
      truth.frames.map((_, frame) => Math.round((frame * 1e6) / 60) / 1e3),
    );
    for (const frame of truth.frames)
      expect(Object.keys(frame.joints).sort()).toEqual([...JOINT_NAMES].sort());
  });

  test("is the same each time", () => {
    expect(truthOf(clipParameters())).toEqual(truth);
  });

  test("names the events in order, on the frames where the motion has them", () => {
    expect(truth.events).toEqual({
      first_movement: 18,
      peak_knee_height: 60,
      front_foot_contact: 108,
      max_external_rotation: 115,
      ball_release: 117,
      finish: 144,
    });
    const delivery = deliveryOf(parameters);
    const framesBy = (measure: (frame: number) => number, from: number, to: number) =>
      Array.from({ length: to - from + 1 }, (_, n) => from + n).sort((a, b) => measure(b) - measure(a))[0];
    expect(framesBy((frame) => delivery(frame / 60).joints.leadKnee[1], 0, 179)).toBe(
      truth.events.peak_knee_height,
    );
    expect(framesBy((frame) => delivery(frame / 60).externalRotationDeg, 108, 117)).toBe(
      truth.events.max_external_rotation,
    );
    const down = (frame: number) => {
      const { joints } = delivery(frame / 60);
      return clearanceM({ heel: joints.leadHeel, toe: joints.leadToe }) < 0.001;
    };
    expect(truth.frames.findIndex((_, frame) => frame > 60 && down(frame))).toBe(
      truth.events.front_foot_contact,
    );
  });

  test("has the ball in the hand until release, gone from then on", () => {
    const away = (frame: number) => {
      const { ball, joints } = frameOf(truth, frame);
      return ball === null
        ? Number.POSITIVE_INFINITY
        : Math.hypot(ball[0] - joints.throwingHand[0], ball[1] - joints.throwingHand[1]);
    };
    expect(away(truth.events.ball_release - 1)).toBe(0);
    expect(away(truth.events.ball_release)).toBeGreaterThan(5);
    expect(away(179)).toBe(Number.POSITIVE_INFINITY);
  });

  test.each([24, 30, 60, 120, 240])(
    "at %i frames a second each event is the first frame at or after it",
    (fps) => {
      const events = eventFrames(fps);
      expect(events.peak_knee_height).toBe(fps);
      expect(events.ball_release / fps).toBeGreaterThanOrEqual(1.945);
      expect((events.ball_release - 1) / fps).toBeLessThan(1.945);
    },
  );

  test("writes a knee that collapsed and a front side that flew open as what they are", () => {
    const faulty = truthOf(clipParameters({ faults: { collapsing_front_knee: 1, open_front_side: 1 } }));
    expect(faulty.angles.frontKneeFlexionDeg.release).toBeGreaterThan(
      truth.angles.frontKneeFlexionDeg.release + 25,
    );
    expect(faulty.angles.shoulderTurnDeg.contact).toBeGreaterThan(truth.angles.shoulderTurnDeg.contact + 40);
  });
});

describe("what is measured on the picture from the open side is what the sidecar says", () => {
  test.each([
    ["a right-hander of 15", clipParameters()],
    ["a left-hander of 9", clipParameters({ throws: "L", ageYears: 9 })],
    ["a man of 20 upright", clipParameters({ ageYears: 20, widthPx: 360, heightPx: 640 })],
    ["a collapsing knee", clipParameters({ faults: { collapsing_front_knee: 0.8 } })],
  ])("%s", (_, parameters) => {
    const truth = truthOf(parameters);
    for (const [moment, frame] of [
      ["contact", truth.events.front_foot_contact],
      ["release", truth.events.ball_release],
    ] as const) {
      const { joints } = frameOf(truth, frame);
      const kneeDeg = flexionOnPictureDeg(joints.leadHip, joints.leadKnee, joints.leadAnkle);
      expect(Math.abs(kneeDeg - truth.angles.frontKneeFlexionDeg[moment])).toBeLessThan(3);
      const towardPlate = parameters.throws === "R" ? 1 : -1;
      const tilt = Math.atan2(
        (joints.midShoulder[0] - joints.midHip[0]) * towardPlate,
        joints.midHip[1] - joints.midShoulder[1],
      );
      expect(Math.abs((tilt * 180) / Math.PI - truth.angles.trunkTiltDeg[moment])).toBeLessThan(3);
    }
  });
});

describe("all views are of one figure", () => {
  const rayThrough = (pixel: Pixel, camera: Camera): Vector =>
    direction(
      plus(
        times(camera.ahead, camera.focalPx),
        plus(
          times(camera.right, pixel[0] - camera.middlePx[0]),
          times(camera.up, camera.middlePx[1] - pixel[1]),
        ),
      ),
    );

  test("sight lines to a joint from two cameras meet at the joint", () => {
    const views = [clipParameters(), clipParameters({ view: "front" })].map((parameters) => ({
      camera: cameraOf(parameters),
      truth: truthOf(parameters),
    }));
    const delivery = deliveryOf(clipParameters());
    for (const frame of [0, 60, 108, 117, 150]) {
      const { joints } = delivery(frame / 60);
      for (const name of JOINT_NAMES) {
        const [a, b] = views.map(({ camera, truth }) => ({
          at: camera.at,
          ray: rayThrough(frameOf(truth, frame).joints[name], camera),
        }));
        if (a === undefined || b === undefined) throw new Error("two cameras are needed");
        const normal = direction(cross(a.ray, b.ray));
        expect(Math.abs(dot(minus(b.at, a.at), normal))).toBeLessThan(0.003);
        const across = cross(b.ray, normal);
        const alongA = dot(minus(b.at, a.at), across) / dot(a.ray, across);
        const met = plus(a.at, times(a.ray, alongA));
        expect(lengthOf(minus(met, joints[name]))).toBeLessThan(0.01);
      }
    }
  });

  test.each(CLIP_VIEWS)("a left-hander from the %s is a right-hander in the mirror", (view) => {
    const [right, left] = [truthOf(clipParameters({ view })), truthOf(clipParameters({ view, throws: "L" }))];
    for (const frame of [0, 60, 108, 117, 160]) {
      for (const name of JOINT_NAMES) {
        const [a, b] = [frameOf(right, frame).joints[name], frameOf(left, frame).joints[name]];
        expect(a[0] + b[0]).toBeCloseTo(640, 1);
        expect(a[1]).toBeCloseTo(b[1], 1);
      }
    }
    expect(left.angles).toEqual(right.angles);
  });

  test.each(CLIP_VIEWS)("the whole body stays in the picture from the %s, either way up", (view) => {
    for (const [widthPx, heightPx] of [
      [640, 360],
      [360, 640],
    ] as const) {
      for (const frame of truthOf(clipParameters({ view, widthPx, heightPx })).frames) {
        for (const [x, y] of Object.values(frame.joints)) {
          expect(x > 2 && x < widthPx - 2 && y > 2 && y < heightPx - 2).toBe(true);
        }
      }
    }
  });
});
