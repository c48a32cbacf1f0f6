import { type ArmPose, armByAngles, armReaching } from "./limb";
import type { Vector } from "./vector";

/** A foot: a place in shares of body height (x, clearance over the ground, z), where it points and how far its heel is up. */
export type FootPose = { readonly at: Vector; readonly yawDeg: number; readonly pitchDeg: number };

/**
 * One posture of the delivery, for a right-hander. Places are shares of body height from the front edge of the rubber; yaw
 * is 0 when facing third base and 90 when facing the plate; tilt is toward the plate, lean toward third base.
 */
export type Pose = {
  /** Pelvis along the lane and across it; its height follows from the supporting leg. */
  readonly pelvisX: number;
  readonly pelvisZ: number;
  readonly support: "back" | "lead";
  readonly supportFlexionDeg: number;
  readonly pelvisYawDeg: number;
  readonly trunkYawDeg: number;
  readonly tiltDeg: number;
  readonly leanDeg: number;
  readonly headYawDeg: number;
  /** Placed by its ankle. */
  readonly leadFoot: FootPose;
  /** Placed by its toe, on which it turns. */
  readonly backFoot: FootPose;
  readonly leadKneeToward: Vector;
  readonly backKneeToward: Vector;
  readonly throwing: ArmPose;
  readonly glove: ArmPose;
};

const HANDS_IN_FRONT = handsTogether(-0.13, 0.17);
const HANDS_AT_CHEST = handsTogether(-0.09, 0.165);
const HANDS_AT_BELT = handsTogether(-0.17, 0.165);

/** Standing in the set position, hands together. */
export const SET_POSE: Pose = {
  pelvisX: 0.065,
  pelvisZ: -0.01,
  support: "back",
  supportFlexionDeg: 22,
  pelvisYawDeg: 0,
  trunkYawDeg: 0,
  tiltDeg: 0,
  leanDeg: 5,
  headYawDeg: 70,
  leadFoot: { at: [0.145, 0, 0], yawDeg: 8, pitchDeg: 0 },
  backFoot: { at: [0, 0, 0.115], yawDeg: 0, pitchDeg: 0 },
  leadKneeToward: [0.25, 0, 1],
  backKneeToward: [0.1, 0, 1],
  throwing: HANDS_IN_FRONT,
  glove: HANDS_IN_FRONT,
};

/** What changes from the posture before: the leg comes up. */
export const LIFTING: Partial<Pose> = {
  pelvisX: 0.035,
  supportFlexionDeg: 18,
  pelvisYawDeg: -8,
  trunkYawDeg: -8,
  leadFoot: { at: [0.11, 0.11, 0.08], yawDeg: 0, pitchDeg: 22 },
  leadKneeToward: [0.5, 0.3, 1],
  throwing: HANDS_AT_CHEST,
  glove: HANDS_AT_CHEST,
};

/** Peak knee height, balanced over the back leg. */
export const PEAK_KNEE: Partial<Pose> = {
  pelvisX: 0.005,
  pelvisZ: -0.02,
  supportFlexionDeg: 12,
  pelvisYawDeg: -20,
  trunkYawDeg: -18,
  tiltDeg: -4,
  leanDeg: 1,
  headYawDeg: 62,
  leadFoot: { at: [0.135, 0.33, 0.13], yawDeg: 2, pitchDeg: 28 },
  leadKneeToward: [0.75, 0.6, 1],
};

/** The hands part as the leg comes down. */
export const HANDS_PART: Partial<Pose> = {
  pelvisX: 0.07,
  supportFlexionDeg: 32,
  pelvisYawDeg: -16,
  trunkYawDeg: -22,
  tiltDeg: -5,
  leanDeg: 5,
  headYawDeg: 72,
  leadFoot: { at: [0.17, 0.17, 0.12], yawDeg: 0, pitchDeg: 22 },
  leadKneeToward: [0.5, 0.3, 1],
  backKneeToward: [0.25, 0, 1],
  throwing: HANDS_AT_BELT,
  glove: HANDS_AT_BELT,
};

/** Riding out: the back leg drives, the arms swing down and apart. */
export const RIDING: Partial<Pose> = {
  pelvisX: 0.2,
  pelvisZ: 0,
  supportFlexionDeg: 46,
  pelvisYawDeg: -6,
  trunkYawDeg: -22,
  tiltDeg: -5,
  leanDeg: 7,
  headYawDeg: 80,
  leadFoot: { at: [0.43, 0.085, 0.075], yawDeg: 20, pitchDeg: 8 },
  leadKneeToward: [0.8, 0.3, 0.8],
  backKneeToward: [0.4, 0, 1],
  throwing: armByAngles(38, -28, -60, 22),
  glove: armByAngles(55, 30, 10, 50),
};

/** Late in the stride: both elbows coming up to the line of the shoulders. */
export const STRIDING: Partial<Pose> = {
  pelvisX: 0.36,
  pelvisZ: 0.02,
  supportFlexionDeg: 42,
  pelvisYawDeg: 8,
  trunkYawDeg: -18,
  tiltDeg: -4,
  leanDeg: 6,
  headYawDeg: 84,
  leadFoot: { at: [0.67, 0.05, 0.04], yawDeg: 52, pitchDeg: -6 },
  backFoot: { at: [0.015, 0, 0.112], yawDeg: 14, pitchDeg: 18 },
  leadKneeToward: [1, 0.4, 0.4],
  backKneeToward: [0.6, -0.1, 0.9],
  throwing: armByAngles(78, -30, -20, 58),
  glove: armByAngles(84, 14, 20, 38),
};

function handsTogether(up: number, ahead: number): ArmPose {
  return armReaching([0.112, 0, 0], [0.012, up, ahead], 0.186, 0.146);
}
