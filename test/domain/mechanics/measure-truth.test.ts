import { describe, expect, it } from "vitest";
import { bodyOf } from "@/seed/clips/body";
import { cameraOf, type Pixel, pixelOf } from "@/seed/clips/camera";
import { CLIP_VIEWS, type ClipParameters, clipParameters } from "@/seed/clips/clip-parameters";
import { deliveryOf } from "@/seed/clips/delivery";
import type { JointName } from "@/seed/clips/figure";
import { type ClipTruth, truthOf } from "@/seed/clips/truth";
import type { MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { measureValue } from "@/server/domain/mechanics/measure-value";

/** A phone held level, upright, and both again at another size. */
const PICTURES = [
  { widthPx: 1280, heightPx: 720 },
  { widthPx: 720, heightPx: 1280 },
  { widthPx: 1920, heightPx: 1080 },
  { widthPx: 1080, heightPx: 1920 },
] as const;

const CASES = CLIP_VIEWS.flatMap((view) =>
  (["R", "L"] as const).flatMap((throws) => PICTURES.map((picture) => ({ view, throws, ...picture }))),
);
const FROM_A_SIDE = CASES.filter(({ view }) => view.endsWith("side"));
const FROM_AN_END = CASES.filter(({ view }) => !view.endsWith("side"));

/** A drawn clip and a way to measure on it at the places that are true. */
function deskOf(chosen: Partial<ClipParameters>) {
  const parameters = clipParameters(chosen);
  const truth = truthOf(parameters);
  const pixel = (frame: number, joint: JointName): Pixel => {
    const place = truth.frames[frame]?.joints[joint];
    if (!place) throw new Error(`no frame ${frame}`);
    return place;
  };
  const measure = (kind: MeasureKind, frame: number, points: readonly (readonly [number, Pixel])[]) => {
    const taken = {
      kind,
      frame,
      untilFrame: null,
      points: points.map(([on, [x, y]]) => ({ frame: on, x, y })),
    };
    const throws = truth.throws === "R" ? ("right" as const) : ("left" as const);
    const timeBase = { kind: "unknown" as const, why: "" };
    const result = measureValue(taken, { view: truth.view, throws, timeBase, frameTimesMs: [] });
    if ("problem" in result) throw new Error(result.problem);
    return result.value;
  };
  const onJoints = (kind: MeasureKind, frame: number, joints: readonly JointName[]) =>
    measure(
      kind,
      frame,
      joints.map((joint) => [frame, pixel(frame, joint)] as const),
    );
  return { parameters, truth, pixel, measure, onJoints };
}

/** Standing straight on the rubber: the top of the head and the sole under it, as the camera sees them. */
function standingStraight(parameters: ClipParameters): [top: Pixel, sole: Pixel] {
  const { heightM, ankleM } = bodyOf(parameters.ageYears, parameters.heightM);
  const [x, y, z] = deliveryOf(parameters)(0).joints.backAnkle;
  const camera = cameraOf(parameters);
  return [pixelOf([x, y - ankleM + heightM, z], camera), pixelOf([x, y - ankleM, z], camera)];
}

/** The way of a line on the picture, in degrees; the measured angles must be differences of such ways. */
const wayDeg = (from: Pixel, to: Pixel) => (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
const turned = (fromDeg: number, toDeg: number) => Math.abs(((toDeg - fromDeg + 540) % 360) - 180);
const moments = ({ events }: ClipTruth) =>
  [
    ["contact", events.front_foot_contact],
    ["release", events.ball_release],
  ] as const;

describe("measured at the true places of a drawn clip", () => {
  it.each(FROM_A_SIDE)("the knee is bent as it is: $view $throws $widthPx x $heightPx", (chosen) => {
    const { truth, pixel, onJoints } = deskOf(chosen);
    for (const [when, frame] of moments(truth)) {
      const measured = onJoints("front_knee_flexion", frame, ["leadHip", "leadKnee", "leadAnkle"]);
      const thigh = wayDeg(pixel(frame, "leadHip"), pixel(frame, "leadKnee"));
      const shank = wayDeg(pixel(frame, "leadKnee"), pixel(frame, "leadAnkle"));
      expect(measured).toBeCloseTo(turned(thigh, shank), 6);
      /* A leg does not stride quite square to the camera: half a degree is what the picture itself hides. */
      expect(Math.abs(measured - truth.angles.frontKneeFlexionDeg[when])).toBeLessThan(0.5);
    }
  });

  it.each(FROM_A_SIDE)(
    "the trunk leans to the side the plate is on: $view $throws $widthPx x $heightPx",
    (chosen) => {
      const { truth, pixel, onJoints } = deskOf(chosen);
      for (const [when, frame] of moments(truth)) {
        const measured = onJoints("trunk_tilt_forward", frame, ["midHip", "midShoulder"]);
        const way = wayDeg(pixel(frame, "midHip"), pixel(frame, "midShoulder"));
        expect(Math.abs(measured)).toBeCloseTo(turned(way, -90), 6);
        expect(Math.abs(measured - truth.angles.trunkTiltDeg[when])).toBeLessThan(1.2);
        expect(Math.sign(measured)).toBe(Math.sign(truth.angles.trunkTiltDeg[when]));
      }
    },
  );

  it.each(FROM_A_SIDE)("the stride is as long as it is: $view $throws $widthPx x $heightPx", (chosen) => {
    const { parameters, truth, pixel, measure } = deskOf(chosen);
    const [top, sole] = standingStraight(parameters);
    const contact = truth.events.front_foot_contact;
    const [backAnkle, frontAnkle] = [pixel(0, "backAnkle"), pixel(contact, "leadAnkle")];
    const measured = measure("stride_length", contact, [
      ...([
        [0, top],
        [0, sole],
        [0, backAnkle],
      ] as const),
      [contact, frontAnkle],
    ]);
    const heightPx = Math.hypot(top[0] - sole[0], top[1] - sole[1]);
    const onPicture = (100 * Math.abs(frontAnkle[0] - backAnkle[0])) / heightPx;
    expect(Math.abs(measured / onPicture - 1)).toBeLessThan(0.002);
    /* The ankles pass the camera at not quite one distance: half a hundredth of height. */
    expect(Math.abs(measured - 100 * truth.angles.strideFraction)).toBeLessThan(0.5);
  });

  it("the stride is within 0.2 % from the open side, where the pitcher faces the camera", () => {
    for (const chosen of FROM_A_SIDE.filter(({ view }) => view === "open_side")) {
      const { parameters, truth, pixel, measure } = deskOf(chosen);
      const [top, sole] = standingStraight(parameters);
      const contact = truth.events.front_foot_contact;
      const measured = measure("stride_length", contact, [
        ...([
          [0, top],
          [0, sole],
          [0, pixel(0, "backAnkle")],
        ] as const),
        [contact, pixel(contact, "leadAnkle")],
      ]);
      expect(Math.abs(measured / (100 * truth.angles.strideFraction) - 1)).toBeLessThan(0.002);
    }
  });

  it.each(FROM_AN_END)("both hands lean and travel alike: $view $throws $widthPx x $heightPx", (chosen) => {
    const { parameters, truth, measure, onJoints, pixel } = deskOf(chosen);
    const { front_foot_contact: contact, ball_release: release } = truth.events;
    const lean = onJoints("trunk_tilt_side", release, ["midHip", "midShoulder"]);
    const delivery = deliveryOf(parameters)(release / truth.fps).joints;
    const acrossM = delivery.midShoulder[2] - delivery.midHip[2];
    expect(Math.sign(lean)).toBe(Math.sign(truth.throws === "R" ? -acrossM : acrossM));
    const shoulders = onJoints("shoulder_tilt", release, ["gloveShoulder", "throwingShoulder"]);
    expect(Math.sign(shoulders)).toBe(Math.sign(delivery.throwingShoulder[1] - delivery.gloveShoulder[1]));
    const [top, sole] = standingStraight(parameters);
    const travel = measure("head_travel", release, [
      ...([
        [0, top],
        [0, sole],
      ] as const),
      ...([
        [contact, pixel(contact, "head")],
        [release, pixel(release, "head")],
      ] as const),
    ]);
    const other = deskOf({ ...chosen, throws: chosen.throws === "R" ? "L" : "R" });
    expect(lean).toBeCloseTo(other.onJoints("trunk_tilt_side", release, ["midHip", "midShoulder"]), 1);
    expect(travel).toBeGreaterThan(0);
  });
});
