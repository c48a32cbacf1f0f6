import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bodyOf } from "@/seed/clips/body";
import { CLIP_FAULTS, type ClipParameters, clipParameters } from "@/seed/clips/clip-parameters";
import { deliveryAt, deliveryOf } from "@/seed/clips/delivery";
import { JOINT_NAMES, type Joints } from "@/seed/clips/figure";
import { clearanceM } from "@/seed/clips/foot";
import { CLIP_S, EVENT_TIMES_S } from "@/seed/clips/timeline";
import { frontKneeFlexionDeg, trunkTiltDeg } from "@/seed/clips/truth";
import { angleBetweenDeg, lengthOf, minus } from "@/seed/clips/vector";
import published from "../../reference/kinematics.json";

const { kageyama_2015: kageyama, diffendaffer_2023: diffendaffer, seroyer_2010: seroyer } = published;
const {
  front_foot_contact: contactS,
  ball_release: releaseS,
  max_external_rotation: laybackS,
} = EVENT_TIMES_S;

const anyClip: fc.Arbitrary<ClipParameters> = fc
  .record({
    throws: fc.constantFrom("R" as const, "L" as const),
    ageYears: fc.integer({ min: 8, max: 20 }),
    faults: fc.record(
      Object.fromEntries(CLIP_FAULTS.map((fault) => [fault, fc.double({ min: 0, max: 1, noNaN: true })])),
    ),
  })
  .map(clipParameters);

const sampledS = Array.from({ length: CLIP_S * 60 }, (_, frame) => frame / 60);
const distanceM = (joints: Joints, from: keyof Joints, to: keyof Joints) =>
  lengthOf(minus(joints[from], joints[to]));
const inSwing = (joints: Joints) => clearanceM({ heel: joints.leadHeel, toe: joints.leadToe });

describe("a delivery without faults follows the published means", () => {
  const sound = deliveryOf(clipParameters());
  const elbowFlexionDeg = (joints: Joints) =>
    angleBetweenDeg(
      minus(joints.throwingElbow, joints.throwingShoulder),
      minus(joints.throwingWrist, joints.throwingElbow),
    );
  const stridePct =
    ((sound(contactS).joints.leadAnkle[0] - sound(0).joints.backAnkle[0]) / bodyOf(15).heightM) * 100;

  // Kageyama et al. 2015, Tables 2 and 3 (adolescents); Diffendaffer et al. 2023; Seroyer et al. 2010.
  test.each([
    ["stride in % of height", stridePct, kageyama.stride_length_pct_height[0], 0.5],
    [
      "front knee at contact",
      frontKneeFlexionDeg(sound(contactS)),
      kageyama.front_knee_flexion_contact_deg[0],
      0.5,
    ],
    [
      "front knee laid back",
      frontKneeFlexionDeg(sound(laybackS)),
      kageyama.front_knee_flexion_max_external_rotation_deg[0],
      0.5,
    ],
    [
      "front knee at release",
      frontKneeFlexionDeg(sound(releaseS)),
      kageyama.front_knee_flexion_release_deg[0],
      0.5,
    ],
    ["trunk tilt at contact", trunkTiltDeg(sound(contactS)), kageyama.trunk_tilt_contact_deg[0], 0.5],
    ["trunk tilt at release", trunkTiltDeg(sound(releaseS)), kageyama.trunk_tilt_release_deg[0], 0.5],
    ["elbow at contact", elbowFlexionDeg(sound(contactS).joints), diffendaffer.contact_elbow_flexion_deg, 1],
    [
      "shoulder at contact",
      sound(contactS).externalRotationDeg,
      diffendaffer.contact_external_rotation_deg,
      1,
    ],
    ["shoulder laid back", sound(laybackS).externalRotationDeg, diffendaffer.max_external_rotation_deg, 1],
    ["contact to release", releaseS - contactS, seroyer.contact_to_release_s, 0.0005],
  ])("%s", (_, found, mean, within) => {
    expect(Math.abs(found - (mean ?? Number.NaN))).toBeLessThanOrEqual(within);
  });

  test.each([
    ["pelvis", "leadHip", "backHip", kageyama.max_pelvis_velocity_deg_s],
    ["upper trunk", "gloveShoulder", "throwingShoulder", kageyama.max_upper_torso_velocity_deg_s],
  ] as const)(
    "its %s turns as fast as a pitcher's, within two standard deviations",
    (_, lead, back, meanAndSd) => {
      const turnDeg = (timeS: number) => {
        const { joints } = sound(timeS);
        return (
          (Math.atan2(joints[back][2] - joints[lead][2], joints[lead][0] - joints[back][0]) * 180) / Math.PI
        );
      };
      const speeds = Array.from({ length: 70 }, (__, n) => 1.75 + n * 0.003).map(
        (timeS) => (turnDeg(timeS + 0.003) - turnDeg(timeS)) / 0.003,
      );
      const [mean = 0, deviation = 0] = meanAndSd;
      expect(Math.abs(Math.max(...speeds) - mean)).toBeLessThan(2 * deviation);
    },
  );
});

describe("whatever the age, the arm and the faults", () => {
  test("no limb stretches and no foot sinks into the mound", () => {
    fc.assert(
      fc.property(anyClip, (parameters) => {
        const body = bodyOf(parameters.ageYears);
        const delivery = deliveryOf(parameters);
        const limbs = [
          ["leadHip", "leadKnee", body.thighM],
          ["leadKnee", "leadAnkle", body.shankM],
          ["backHip", "backKnee", body.thighM],
          ["backKnee", "backAnkle", body.shankM],
          ["throwingShoulder", "throwingElbow", body.upperArmM],
          ["throwingElbow", "throwingWrist", body.forearmM],
          ["gloveShoulder", "gloveElbow", body.upperArmM],
          ["gloveElbow", "gloveWrist", body.forearmM],
          ["midHip", "midShoulder", body.trunkM],
        ] as const;
        for (const timeS of sampledS) {
          const { joints } = delivery(timeS);
          for (const [from, to, lengthM] of limbs)
            expect(distanceM(joints, from, to)).toBeCloseTo(lengthM, 2);
          for (const side of ["lead", "back"] as const) {
            const foot = { heel: joints[`${side}Heel`], toe: joints[`${side}Toe`] };
            expect(clearanceM(foot)).toBeGreaterThan(-0.001);
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  test("the knee is highest at peak knee height, and the foot touches down exactly at contact and stays", () => {
    fc.assert(
      fc.property(anyClip, (parameters) => {
        const delivery = deliveryOf(parameters);
        const kneeM = (timeS: number) => delivery(timeS).joints.leadKnee[1];
        for (const timeS of sampledS)
          expect(kneeM(timeS)).toBeLessThanOrEqual(kneeM(EVENT_TIMES_S.peak_knee_height));
        const planted = delivery(contactS).joints;
        for (const timeS of sampledS.filter((at) => at > EVENT_TIMES_S.peak_knee_height)) {
          const { joints } = delivery(timeS);
          if (timeS < contactS - 1e-9) expect(inSwing(joints)).toBeGreaterThan(0.001);
          else expect(lengthOf(minus(joints.leadAnkle, planted.leadAnkle))).toBeLessThan(0.02);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("the shoulder is laid back furthest at maximum external rotation", () => {
    fc.assert(
      fc.property(anyClip, (parameters) => {
        const delivery = deliveryOf(parameters);
        const most = delivery(laybackS).externalRotationDeg;
        for (let timeS = contactS; timeS <= releaseS; timeS += 0.002) {
          expect(delivery(timeS).externalRotationDeg).toBeLessThanOrEqual(most + 1);
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe("the delivery begins and ends still", () => {
  const sound = clipParameters();
  const driftM = (parameters: ClipParameters, fromS: number, toS: number) => {
    const [before, after] = [deliveryAt(parameters, fromS), deliveryAt(parameters, toS)];
    return Math.max(...JOINT_NAMES.map((name) => lengthOf(minus(after[name], before[name]))));
  };

  test("nothing moves before the first movement, something does soon after", () => {
    expect(driftM(sound, 0, EVENT_TIMES_S.first_movement)).toBe(0);
    expect(driftM(sound, 0, EVENT_TIMES_S.first_movement + 0.07)).toBeGreaterThan(0.01);
  });

  test("the back foot is down from the finish on, and not before", () => {
    const clear = (timeS: number) => {
      const joints = deliveryAt(sound, timeS);
      return clearanceM({ heel: joints.backHeel, toe: joints.backToe });
    };
    expect(clear(EVENT_TIMES_S.finish - 1 / 60)).toBeGreaterThan(0.005);
    for (const timeS of sampledS.filter((at) => at >= EVENT_TIMES_S.finish))
      expect(clear(timeS)).toBeLessThan(0.001);
  });

  test("a held finish is held, one that is not goes on moving", () => {
    expect(driftM(sound, 2.82, CLIP_S)).toBeLessThan(0.002);
    expect(driftM(clipParameters({ faults: { finish_not_held: 1 } }), 2.82, CLIP_S)).toBeGreaterThan(0.05);
  });
});

describe("the worse a fault, the more of it there is to see", () => {
  type Measure = (parameters: ClipParameters) => number;
  const shareOfHeight = (metres: number) => metres / bodyOf(15).heightM;
  const measures: Record<(typeof CLIP_FAULTS)[number], Measure> = {
    open_front_side: (parameters) => {
      const joints = deliveryAt(parameters, contactS);
      return Math.atan2(
        joints.throwingShoulder[2] - joints.gloveShoulder[2],
        joints.gloveShoulder[0] - joints.throwingShoulder[0],
      );
    },
    collapsing_front_knee: (parameters) =>
      frontKneeFlexionDeg(deliveryOf(parameters)(releaseS)) -
      frontKneeFlexionDeg(deliveryOf(parameters)(contactS)),
    dropping_glove: (parameters) => {
      const joints = deliveryAt(parameters, releaseS);
      return shareOfHeight(joints.midShoulder[1] - joints.gloveHand[1]);
    },
    finish_not_held: (parameters) => {
      const [finish, end] = [deliveryAt(parameters, EVENT_TIMES_S.finish), deliveryAt(parameters, CLIP_S)];
      return shareOfHeight(lengthOf(minus(end.midHip, finish.midHip)));
    },
    short_stride: (parameters) => -shareOfHeight(deliveryAt(parameters, contactS).leadAnkle[0]),
    head_drift: (parameters) => shareOfHeight(-deliveryAt(parameters, releaseS).head[2]),
  };

  test.each(CLIP_FAULTS)("%s", (fault) => {
    const found = [0, 0.25, 0.5, 0.75, 1].map((severity) =>
      measures[fault](clipParameters({ faults: { [fault]: severity } })),
    );
    for (const [n, value] of found.entries())
      if (n > 0) expect(value).toBeGreaterThan(found[n - 1] ?? Number.NaN);
  });

  test("a sound front knee firms from contact to release, a collapsing one gives way", () => {
    expect(measures.collapsing_front_knee(clipParameters())).toBeLessThan(-5);
    expect(
      measures.collapsing_front_knee(clipParameters({ faults: { collapsing_front_knee: 1 } })),
    ).toBeGreaterThan(15);
  });
});

describe("parameters out of range are refused by name", () => {
  test.each([
    ["ageYears", { ageYears: 7 }],
    ["ageYears", { ageYears: Number.NaN }],
    ["fps", { fps: 0 }],
    ["heightM", { heightM: 3 }],
    ["widthPx must be even", { widthPx: 641 }],
    ["heightPx", { heightPx: 0 }],
    ["kit", { kit: -1 }],
    ["dropping_glove", { faults: { dropping_glove: 1.2 } }],
  ] as const)("%s", (name, chosen) => {
    expect(() => clipParameters(chosen)).toThrow(name);
  });
});
