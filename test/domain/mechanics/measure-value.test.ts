import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type TimeBase, timeBaseOf } from "@/server/domain/clips/time-base";
import { CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { rightOfPicture } from "@/server/domain/mechanics/handedness";
import { canBeMeasuredFrom, MEASURE_KINDS, MEASURES } from "@/server/domain/mechanics/measure-kind";
import { pointProblem, type TakenMeasure, viewProblem } from "@/server/domain/mechanics/measure-refusal";
import { type MeasuredClip, measureValue } from "@/server/domain/mechanics/measure-value";

const FRAME = 90;
const UNKNOWN: TimeBase = { kind: "unknown", why: "Frames only." };
const clip = (of: Partial<MeasuredClip> = {}): MeasuredClip => ({
  ...{ view: "open_side", throws: "right", timeBase: UNKNOWN, frameTimesMs: [] },
  ...of,
});

/** A measure on frame 90, its standing points on frame 3 and those of before on frame 40; places as "x,y x,y". */
function taken(kind: TakenMeasure["kind"], places: string): TakenMeasure {
  const onFrame = { here: FRAME, standing: 3, before: 40 };
  const points = [...places.matchAll(/(-?\d+),(-?\d+)/g)].map(([, x, y], index) => ({
    ...{ x: Number(x), y: Number(y) },
    frame: onFrame[MEASURES[kind].points[index]?.on ?? "here"],
  }));
  return { kind, frame: FRAME, untilFrame: null, points };
}

function worth(measure: TakenMeasure, of: MeasuredClip): number {
  const result = measureValue(measure, of);
  if ("problem" in result) throw new Error(result.problem);
  return result.value;
}

describe("what a measure is worth", () => {
  const standing = "500,100 500,500";
  it.each([
    ["a knee bent by a right angle", "front_knee_flexion", "0,0 0,100 100,100", {}, 90],
    ["a straight knee", "front_knee_flexion", "0,0 0,100 0,200", {}, 0],
    ["a trunk toward the plate", "trunk_tilt_forward", "100,200 200,100", {}, 45],
    ["the same, seen from behind", "trunk_tilt_forward", "100,200 200,100", { view: "closed_side" }, -45],
    ["the same of a left-hander", "trunk_tilt_forward", "100,200 200,100", { throws: "left" }, -45],
    ["a trunk to the glove side", "trunk_tilt_side", "100,200 200,100", { view: "front" }, 45],
    ["the same from behind the mound", "trunk_tilt_side", "100,200 200,100", { view: "back" }, -45],
    ["a stride of four fifths", "stride_length", `${standing} 480,480 800,520`, {}, 80],
    ["a stride to the left", "stride_length", `${standing} 800,480 480,520`, { view: "closed_side" }, 80],
    ["a throwing shoulder higher", "shoulder_tilt", "200,200 100,100", { view: "front" }, 45],
    ["a glove shoulder higher", "shoulder_tilt", "200,100 100,200", { view: "back" }, -45],
    ["a glove half-way up an upright trunk", "glove_height", "100,300 100,100 180,200", {}, 50],
    ["a glove at the shoulders of a level trunk", "glove_height", "100,300 300,300 300,250", {}, 100],
    ["a glove below the hips", "glove_height", "100,300 100,100 100,340", { view: "front" }, -20],
    ["a head to the glove side", "head_travel", `${standing} 300,90 340,190`, { view: "front" }, 10],
    ["a head to the throwing side", "head_travel", `${standing} 300,90 340,190`, { view: "back" }, -10],
  ] as const)("of %s", (_, kind, places, of, value) => {
    expect(worth(taken(kind, places), clip(of))).toBeCloseTo(value, 9);
  });

  it.each([
    ["on the line", [500, 700], 0],
    ["half a rubber's width to the glove side", [550, 700], 50],
    ["a tenth to the throwing side", [490, 700], -10],
  ] as const)("of a front foot %s, whichever end of the rubber is named first", (_, foot, value) => {
    const rest = `500,400 500,900 ${foot}`;
    const front = clip({ view: "front" });
    expect(worth(taken("stride_direction", `450,400 550,400 ${rest}`), front)).toBeCloseTo(value, 9);
    expect(worth(taken("stride_direction", `550,400 450,400 ${rest}`), front)).toBeCloseTo(value, 9);
    expect(worth(taken("stride_direction", `450,400 550,400 ${rest}`), clip({ view: "back" }))).toBeCloseTo(
      -value,
      9,
    );
  });

  /* What hangs straight down leans by 180 degrees to the one side as to the other. */
  const turnBetween = (one: number, other: number) =>
    Math.abs(one) === 180 && Math.abs(other) === 180 ? 0 : Math.abs(one - other);

  it("is one and the same for either hand and either side, the picture mirrored", () => {
    const px = fc.integer({ min: 0, max: 1080 });
    const kinds = MEASURE_KINDS.filter((kind) => kind !== "finish_hold");
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.constantFrom(...CAMERA_VIEWS),
        fc.array(fc.tuple(px, px), { minLength: 5, maxLength: 5 }),
        (kind, view, places) => {
          fc.pre(canBeMeasuredFrom(kind, view));
          const own = places.slice(0, MEASURES[kind].points.length);
          const mirrored = own.map(([x, y]) => [1080 - x, y] as const);
          const right = measureValue(taken(kind, own.join(" ")), clip({ view, throws: "right" }));
          const left = measureValue(taken(kind, mirrored.join(" ")), clip({ view, throws: "left" }));
          if ("problem" in right || "problem" in left) expect(left).toEqual(right);
          else expect(turnBetween(left.value, right.value)).toBeLessThan(1e-6);
        },
      ),
    );
  });
});

describe("the hold of a finish", () => {
  const frameTimesMs = Array.from({ length: 200 }, (_, frame) => (frame * 1000) / 30);
  const held = (untilFrame: number | null): TakenMeasure => ({
    ...{ kind: "finish_hold", frame: 100, untilFrame, points: [] },
  });
  const slow = { view: "back" as const, frameTimesMs };

  it("is told in true time, whatever the file was stretched to", () => {
    const timeBase = timeBaseOf({ frameTimesMs, capturedFps: 240 });
    expect(worth(held(160), clip({ ...slow, timeBase }))).toBeCloseTo(250, 6);
    const plain = timeBaseOf({ frameTimesMs, capturedFps: 30 });
    expect(worth(held(160), clip({ ...slow, timeBase: plain }))).toBeCloseTo(2000, 6);
  });

  it("is not told while nobody has said how fast the clip was recorded, and says so", () => {
    const timeBase = timeBaseOf({ frameTimesMs, capturedFps: null });
    const result = measureValue(held(160), clip({ ...slow, timeBase }));
    expect(result).toEqual({ problem: expect.stringMatching(/^Frames only: nobody has said/) });
  });

  it.each([
    ["without a last frame", null, "Name the last frame of the finish."],
    ["that ends before it begins", 99, "The finish ends before it begins."],
    ["beyond the clip", 200, "The finish is held on a frame this clip does not have."],
  ])("is refused %s", (_, untilFrame, problem) => {
    const timeBase = timeBaseOf({ frameTimesMs, capturedFps: 30 });
    expect(measureValue(held(untilFrame), clip({ ...slow, timeBase }))).toEqual({ problem });
  });
});

describe("what is refused", () => {
  it("says from where a kind is measured", () => {
    expect(viewProblem("front_knee_flexion", "front")).toBe(
      "Front-knee flexion is measured from the open side or the closed side, not from the front.",
    );
    expect(viewProblem("shoulder_tilt", null)).toBe(
      "Shoulder-line tilt needs to know where the camera stood, and nobody has said.",
    );
    expect(viewProblem("shoulder_tilt", "back")).toBeNull();
  });

  it("refuses every kind from every view that cannot show it", () => {
    for (const kind of MEASURE_KINDS)
      for (const view of CAMERA_VIEWS) {
        const isRefused = viewProblem(kind, view) !== null;
        expect(isRefused, `${kind} from ${view}`).toBe(!canBeMeasuredFrom(kind, view));
        if (isRefused) expect(measureValue(taken(kind, ""), clip({ view }))).toHaveProperty("problem");
      }
  });

  it("wants every point on the frame it belongs to", () => {
    const knee = taken("front_knee_flexion", "0,0 0,100 0,200");
    const [hip, joint, ankle] = knee.points;
    if (!hip || !joint || !ankle) throw new Error("no points");
    expect(pointProblem(knee)).toBeNull();
    expect(pointProblem({ ...knee, points: [hip, joint] })).toBe("Place every point.");
    expect(pointProblem({ ...knee, points: [hip, { ...joint, frame: 91 }, ankle] })).toBe(
      "Place the point “front knee” on the frame that is measured.",
    );
    const head = taken("head_travel", "0,0 0,9 5,0 6,0");
    expect(pointProblem({ ...head, frame: 40 })).toMatch(/on an earlier frame/);
  });

  it.each([
    ["front_knee_flexion", "4,4 4,4 9,9", "open_side"],
    ["trunk_tilt_forward", "4,4 4,4", "open_side"],
    ["stride_length", "4,4 4,4 0,0 9,9", "open_side"],
    ["glove_height", "4,4 4,4 9,9", "front"],
    ["stride_direction", "0,0 4,0 2,2 2,2 3,9", "front"],
    ["shoulder_tilt", "4,4 4,4", "front"],
    ["head_travel", "4,4 4,4 0,0 9,9", "front"],
  ] as const)("gives no value of %s for points on one place", (kind, places, view) => {
    expect(measureValue(taken(kind, places), clip({ view }))).toEqual({
      problem: "Two points lie on one place: place them apart.",
    });
  });
});

it("knows what lies to the right of the picture", () => {
  const rights = CAMERA_VIEWS.map((view) => [
    view,
    rightOfPicture("right", view),
    rightOfPicture("left", view),
  ]);
  expect(rights).toEqual([
    ["front", "glove_side", "throwing_side"],
    ["back", "throwing_side", "glove_side"],
    ["open_side", "plate", "rubber"],
    ["closed_side", "rubber", "plate"],
  ]);
});
