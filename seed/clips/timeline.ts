import { type ClipFault, type ClipParameters, severityOf } from "./clip-parameters";
import { type ArmPose, armByAngles } from "./limb";
import { HANDS_PART, LIFTING, PEAK_KNEE, type Pose, RIDING, SET_POSE, STRIDING } from "./pose";
import { CONTACT, FINISH, FOLLOWING, HELD, LAYBACK, RELEASE, SETTLING, SLOWING } from "./pose-throwing";
import { between, direction } from "./vector";

/**
 * When each event happens, in seconds of the clip. Contact to release is 0.145 s (Seroyer et al. 2010); lay-back falls at
 * four fifths of it and the rest of the clock is common practice, no source. Where the motion turns sharply the times are
 * whole frames at 30 and 60 frames a second.
 */
export const EVENT_TIMES_S = {
  first_movement: 0.3,
  peak_knee_height: 1,
  front_foot_contact: 1.8,
  max_external_rotation: 1.8 + 7 / 60,
  ball_release: 1.945,
  finish: 2.4,
} as const;
export type DeliveryEvent = keyof typeof EVENT_TIMES_S;

/** Length of every clip in seconds. */
export const CLIP_S = 3;

/** A posture at a time. */
export type Moment = { readonly timeS: number; readonly pose: Pose };

const STEPS: readonly (readonly [timeS: number, changes: Partial<Pose>])[] = [
  [0, {}],
  [EVENT_TIMES_S.first_movement, {}],
  [0.66, LIFTING],
  [EVENT_TIMES_S.peak_knee_height, PEAK_KNEE],
  [1.3, HANDS_PART],
  [1.53, RIDING],
  [1.69, STRIDING],
  [EVENT_TIMES_S.front_foot_contact, CONTACT],
  [EVENT_TIMES_S.max_external_rotation, LAYBACK],
  [EVENT_TIMES_S.ball_release, RELEASE],
  [2.06, SLOWING],
  [2.22, FOLLOWING],
  [EVENT_TIMES_S.finish, FINISH],
  [2.6, SETTLING],
  [2.8, HELD],
  [CLIP_S, {}],
];

/** The postures a delivery passes through, faults mixed in by their severity. */
export function timelineOf(parameters: ClipParameters): Moment[] {
  let pose = SET_POSE;
  return STEPS.map(([timeS, changes]) => {
    pose = { ...pose, ...changes };
    return { timeS, pose: withFaults(pose, timeS, parameters) };
  });
}

type Fault = (pose: Pose, timeS: number, severity: number) => Pose;

const { front_foot_contact: CONTACT_S, ball_release: RELEASE_S, finish: FINISH_S } = EVENT_TIMES_S;

const FAULTS: Record<ClipFault, Fault> = {
  open_front_side: (pose, timeS, severity) => {
    if (timeS < 1.6 || timeS > CONTACT_S) return pose;
    const share = severity * (timeS === CONTACT_S ? 1 : 0.55);
    return {
      ...turned(pose, 22 * share, 52 * share),
      glove: mixed(pose.glove, armByAngles(70, -38, 10, 40), share),
    };
  },
  collapsing_front_knee: (pose, timeS, severity) => {
    const atTime: Record<number, number> = { [EVENT_TIMES_S.max_external_rotation]: 14, [RELEASE_S]: 30 };
    const extra = atTime[timeS] ?? (timeS > RELEASE_S ? 30 : 0);
    return { ...pose, supportFlexionDeg: pose.supportFlexionDeg + extra * severity };
  },
  dropping_glove: (pose, timeS, severity) => {
    if (timeS < CONTACT_S || timeS > FINISH_S) return pose;
    const share = timeS === CONTACT_S ? 0.45 * severity : severity;
    return { ...pose, glove: mixed(pose.glove, armByAngles(22, 30, 0, 12), share) };
  },
  finish_not_held: (pose, timeS, severity) => (timeS <= RELEASE_S ? pose : fallingOff(pose, timeS, severity)),
  short_stride: (pose, timeS, severity) => {
    const shorter = 1 - 0.2 * severity;
    return timeS < 1.2 ? pose : stridesBy(pose, shorter);
  },
  head_drift: (pose, timeS, severity) => {
    const share = timeS > 2.3 || timeS <= CONTACT_S ? 0 : severity;
    return { ...pose, leanDeg: pose.leanDeg - 20 * share };
  },
};

function withFaults(pose: Pose, timeS: number, parameters: ClipParameters): Pose {
  let faulty = pose;
  for (const [fault, change] of Object.entries(FAULTS) as [ClipFault, Fault][]) {
    const severity = severityOf(parameters, fault);
    if (severity > 0) faulty = change(faulty, timeS, severity);
  }
  return faulty;
}

function turned(pose: Pose, pelvisDeg: number, trunkDeg: number): Pose {
  return { ...pose, pelvisYawDeg: pose.pelvisYawDeg + pelvisDeg, trunkYawDeg: pose.trunkYawDeg + trunkDeg };
}

/** Spun off toward the glove side after release, the back foot stepping across and stepping again. */
function fallingOff(pose: Pose, timeS: number, severity: number): Pose {
  const late = Math.min(1, (timeS - RELEASE_S) / (CLIP_S - RELEASE_S));
  const [x, clearance, z] = pose.backFoot.at;
  const stepping = timeS > FINISH_S && timeS < 2.7 ? 0.04 : 0;
  return {
    ...pose,
    pelvisZ: pose.pelvisZ - 0.3 * late * severity,
    leanDeg: pose.leanDeg - 20 * Math.sin(Math.PI * late) * severity,
    tiltDeg: pose.tiltDeg + 14 * late * severity,
    trunkYawDeg: pose.trunkYawDeg + 34 * late * severity,
    backFoot: {
      ...pose.backFoot,
      at: [x + 0.1 * late * severity, clearance + stepping * severity, z - 0.5 * late * severity],
    },
  };
}

function stridesBy(pose: Pose, share: number): Pose {
  const [x, clearance, z] = pose.leadFoot.at;
  const [backX, backClearance, backZ] = pose.backFoot.at;
  const follows = pose.support === "lead" && backX > 0.2 ? share : 1;
  return {
    ...pose,
    pelvisX: pose.pelvisX * share,
    leadFoot: { ...pose.leadFoot, at: [x * share, clearance, z] },
    backFoot: { ...pose.backFoot, at: [backX * follows, backClearance, backZ] },
  };
}

function mixed(arm: ArmPose, other: ArmPose, share: number): ArmPose {
  if (share === 0) return arm;
  return {
    upper: direction(between(arm.upper, other.upper, share)),
    fore: direction(between(arm.fore, other.fore, share)),
  };
}
