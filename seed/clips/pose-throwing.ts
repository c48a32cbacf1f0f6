import { armByAngles } from "./limb";
import type { Pose } from "./pose";

/**
 * Front foot contact. Stride 83 % of height, front-knee flexion 40 and trunk tilt -2 degrees: Kageyama et al. 2015,
 * adolescents, Tables 2 and 3. Arm after Diffendaffer et al. 2023: abduction and elbow 90, 20 behind the line of the
 * shoulders, external rotation 45.
 */
export const CONTACT: Partial<Pose> = {
  pelvisX: 0.505,
  pelvisZ: 0.03,
  support: "lead",
  supportFlexionDeg: 40,
  pelvisYawDeg: 24,
  trunkYawDeg: 0,
  tiltDeg: -2.1,
  leanDeg: 4,
  headYawDeg: 86,
  leadFoot: { at: [0.829, 0, 0.02], yawDeg: 80, pitchDeg: 0 },
  backFoot: { at: [0.085, 0, 0.1], yawDeg: 38, pitchDeg: 50 },
  leadKneeToward: [1, 0.4, 0.03],
  backKneeToward: [1, -0.3, 0.6],
  throwing: armByAngles(90, -20, 45, 90),
  glove: armByAngles(84, 22, 50, 55),
};

/** Maximum external rotation: 170 degrees (Diffendaffer et al. 2023), front-knee flexion 39 (Kageyama et al. 2015). */
export const LAYBACK: Partial<Pose> = {
  pelvisX: 0.59,
  pelvisZ: 0.045,
  supportFlexionDeg: 39,
  pelvisYawDeg: 84,
  trunkYawDeg: 84,
  tiltDeg: 14,
  leanDeg: -14,
  headYawDeg: 90,
  backFoot: { at: [0.2, 0.01, 0.09], yawDeg: 62, pitchDeg: 70 },
  leadKneeToward: [1, 0.3, 0.02],
  backKneeToward: [1, -0.6, 0.25],
  throwing: armByAngles(93, 8, 170, 82),
  glove: armByAngles(52, 30, 22, 112),
};

/** Ball release: front-knee flexion 31.4 and trunk tilt 29.3 degrees (Kageyama et al. 2015, adolescents). */
export const RELEASE: Partial<Pose> = {
  pelvisX: 0.635,
  pelvisZ: 0.05,
  supportFlexionDeg: 31.4,
  pelvisYawDeg: 92,
  trunkYawDeg: 106,
  tiltDeg: 29.3,
  leanDeg: -24,
  headYawDeg: 92,
  backFoot: { at: [0.28, 0.03, 0.09], yawDeg: 68, pitchDeg: 76 },
  leadKneeToward: [1, 0.2, 0],
  throwing: armByAngles(94, 6, 112, 24),
  glove: armByAngles(36, 18, -12, 128),
};

/** The arm slows across the body. */
export const SLOWING: Partial<Pose> = {
  pelvisX: 0.7,
  pelvisZ: 0.04,
  supportFlexionDeg: 24,
  pelvisYawDeg: 104,
  trunkYawDeg: 138,
  tiltDeg: 53,
  leanDeg: -26,
  backFoot: { at: [0.38, 0.13, 0.1], yawDeg: 76, pitchDeg: 86 },
  backKneeToward: [1, -0.4, 0.2],
  throwing: armByAngles(66, 82, -30, 20),
  glove: armByAngles(28, 6, -14, 118),
};

/** Bent over the front leg, the back foot coming round. */
export const FOLLOWING: Partial<Pose> = {
  pelvisX: 0.75,
  pelvisZ: 0.04,
  supportFlexionDeg: 20,
  pelvisYawDeg: 108,
  trunkYawDeg: 146,
  tiltDeg: 63,
  leanDeg: -18,
  headYawDeg: 90,
  backFoot: { at: [0.68, 0.17, 0.2], yawDeg: 84, pitchDeg: 70 },
  backKneeToward: [1, 0, 0.25],
  throwing: armByAngles(42, 112, -40, 34),
  glove: armByAngles(28, 2, -8, 100),
};

/** The back foot is down beside the front one. */
export const FINISH: Partial<Pose> = {
  pelvisX: 0.82,
  pelvisZ: 0.08,
  supportFlexionDeg: 42,
  pelvisYawDeg: 96,
  trunkYawDeg: 122,
  tiltDeg: 46,
  leanDeg: -9,
  backFoot: { at: [1.03, 0, 0.23], yawDeg: 88, pitchDeg: 0 },
  leadKneeToward: [1, 0.2, -0.1],
  backKneeToward: [1, 0.1, 0.2],
  throwing: armByAngles(34, 96, -20, 48),
  glove: armByAngles(34, 30, 20, 90),
};

/** Coming up balanced, ready to field. */
export const SETTLING: Partial<Pose> = {
  pelvisX: 0.835,
  pelvisZ: 0.1,
  supportFlexionDeg: 43,
  pelvisYawDeg: 91,
  trunkYawDeg: 100,
  tiltDeg: 34,
  leanDeg: -3,
  throwing: armByAngles(34, 60, 10, 70),
  glove: armByAngles(36, 48, 20, 82),
};

/** Held: still, hands ready. */
export const HELD: Partial<Pose> = {
  supportFlexionDeg: 44,
  pelvisYawDeg: 90,
  trunkYawDeg: 92,
  tiltDeg: 28,
  leanDeg: 0,
  throwing: armByAngles(34, 52, 20, 80),
  glove: armByAngles(36, 50, 24, 84),
};
