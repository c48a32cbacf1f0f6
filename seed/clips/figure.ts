import type { Body } from "./body";
import { footOf } from "./foot";
import { type ArmPose, externalRotationDeg, middleJoint } from "./limb";
import type { Pose } from "./pose";
import { acrossOf, cross, direction, inFrame, mirrored, plus, radians, times, type Vector } from "./vector";

/** The joints of the figure. `lead` is the striding side, `back` the rubber side; a hand is where the ball sits. */
export const JOINT_NAMES = [
  "head",
  "neck",
  "midShoulder",
  "midHip",
  "throwingShoulder",
  "throwingElbow",
  "throwingWrist",
  "throwingHand",
  "gloveShoulder",
  "gloveElbow",
  "gloveWrist",
  "gloveHand",
  "leadHip",
  "leadKnee",
  "leadAnkle",
  "leadHeel",
  "leadToe",
  "backHip",
  "backKnee",
  "backAnkle",
  "backHeel",
  "backToe",
] as const;
export type JointName = (typeof JOINT_NAMES)[number];
/** Where each joint is, in metres. */
export type Joints = Readonly<Record<JointName, Vector>>;

/** The figure at one instant: joints in metres, which way head and chest face, how far the throwing shoulder is laid back. */
export type Figure = {
  readonly joints: Joints;
  readonly headUp: Vector;
  readonly headAhead: Vector;
  readonly chestAhead: Vector;
  readonly externalRotationDeg: number;
};

/** A posture whose pelvis height in metres is settled. */
export type Stance = Omit<Pose, "support" | "supportFlexionDeg"> & { readonly pelvisYM: number };

type Frame = readonly [toLead: Vector, up: Vector, ahead: Vector];

/** The figure of a right-hander in a posture: joints found from the pelvis outward. */
export function figureOf(stance: Stance, body: Body): Figure {
  const trunk = trunkFrame(stance);
  const midHip = pelvisOf(stance, body);
  const midShoulder = plus(midHip, times(trunk[1], body.trunkM));
  const neck = plus(midShoulder, times(trunk[1], body.neckM));
  const headUp = direction(plus(times(trunk[1], 0.45), [0, 0.55, 0]));
  const head = plus(neck, times(headUp, body.headRadiusM * 0.95));
  return {
    joints: {
      ...legsOf(stance, body),
      ...armOf("throwing", stance.throwing, midShoulder, trunk, body),
      ...armOf("glove", stance.glove, midShoulder, trunk, body),
      midHip,
      midShoulder,
      neck,
      head,
    },
    headUp,
    headAhead: direction(acrossOf(facing(stance.headYawDeg), headUp)),
    chestAhead: trunk[2],
    externalRotationDeg: externalRotationDeg(straightened(stance.throwing)),
  };
}

/** The hip joints of a posture. */
export function hipsOf(stance: Stance, body: Body): { lead: Vector; back: Vector } {
  const pelvis = pelvisOf(stance, body);
  const toLead = leadward(stance.pelvisYawDeg);
  return {
    lead: plus(pelvis, times(toLead, body.halfHipM)),
    back: plus(pelvis, times(toLead, -body.halfHipM)),
  };
}

/** The same figure thrown with the other arm. */
export function mirroredFigure(figure: Figure): Figure {
  const joints = Object.fromEntries(
    JOINT_NAMES.map((name) => [name, mirrored(figure.joints[name])]),
  ) as Joints;
  return {
    joints,
    headUp: mirrored(figure.headUp),
    headAhead: mirrored(figure.headAhead),
    chestAhead: mirrored(figure.chestAhead),
    externalRotationDeg: figure.externalRotationDeg,
  };
}

function pelvisOf(stance: Stance, body: Body): Vector {
  return [stance.pelvisX * body.heightM, stance.pelvisYM, stance.pelvisZ * body.heightM];
}

function trunkFrame(stance: Stance): Frame {
  const up = direction([Math.tan(radians(stance.tiltDeg)), 1, Math.tan(radians(stance.leanDeg))]);
  const toLead = direction(acrossOf(leadward(stance.trunkYawDeg), up));
  return [toLead, up, cross(toLead, up)];
}

function facing(yawDeg: number): Vector {
  return [Math.sin(radians(yawDeg)), 0, Math.cos(radians(yawDeg))];
}

function leadward(yawDeg: number): Vector {
  return [Math.cos(radians(yawDeg)), 0, -Math.sin(radians(yawDeg))];
}

function legsOf(stance: Stance, body: Body) {
  const hips = hipsOf(stance, body);
  const lead = footOf(stance.leadFoot, body, "ankle");
  const back = footOf(stance.backFoot, body, "toe");
  const kneeOf = (hip: Vector, ankle: Vector, toward: Vector) =>
    middleJoint(hip, ankle, body.thighM, body.shankM, toward);
  return {
    leadHip: hips.lead,
    leadKnee: kneeOf(hips.lead, lead.ankle, stance.leadKneeToward),
    leadAnkle: lead.ankle,
    leadHeel: lead.heel,
    leadToe: lead.toe,
    backHip: hips.back,
    backKnee: kneeOf(hips.back, back.ankle, stance.backKneeToward),
    backAnkle: back.ankle,
    backHeel: back.heel,
    backToe: back.toe,
  };
}

function armOf<Side extends "throwing" | "glove">(
  side: Side,
  pose: ArmPose,
  midShoulder: Vector,
  trunk: Frame,
  body: Body,
) {
  const outward = times(trunk[0], side === "glove" ? 1 : -1);
  const { upper, fore } = straightened(pose);
  const along = (way: Vector, lengthM: number) => times(inFrame([outward, trunk[1], trunk[2]], way), lengthM);
  const shoulder = plus(midShoulder, times(outward, body.halfShoulderM));
  const elbow = plus(shoulder, along(upper, body.upperArmM));
  const wrist = plus(elbow, along(fore, body.forearmM));
  const hand = plus(wrist, along(fore, body.handM));
  return {
    [`${side}Shoulder`]: shoulder,
    [`${side}Elbow`]: elbow,
    [`${side}Wrist`]: wrist,
    [`${side}Hand`]: hand,
  } as Record<`${Side}${"Shoulder" | "Elbow" | "Wrist" | "Hand"}`, Vector>;
}

function straightened(arm: ArmPose): ArmPose {
  return { upper: direction(arm.upper), fore: direction(arm.fore) };
}
