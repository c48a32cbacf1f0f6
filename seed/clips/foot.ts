import type { Body } from "./body";
import { groundHeightM } from "./ground";
import type { FootPose } from "./pose";
import { degrees, minus, plus, radians, times, type Vector } from "./vector";

/** Ankle, heel and toe of a foot in metres. */
export type Foot = { readonly ankle: Vector; readonly heel: Vector; readonly toe: Vector };

/**
 * A foot set on or held over the ground: its lowest point is exactly the pose's clearance above it, its sole follows
 * the slope.
 * @param placedBy which of its points stands at the pose's place
 */
export function footOf(pose: FootPose, body: Body, placedBy: "ankle" | "toe"): Foot {
  const [x, clearance, z] = times(pose.at, body.heightM);
  const ahead: Vector = [Math.sin(radians(pose.yawDeg)), 0, Math.cos(radians(pose.yawDeg))];
  const pitch = radians(pose.pitchDeg + fallDeg(x) * ahead[0]);
  const along = plus(times(ahead, Math.cos(pitch)), [0, -Math.sin(pitch), 0]);
  const sole = times(plus(times(ahead, Math.sin(pitch)), [0, Math.cos(pitch), 0]), -body.ankleM);
  const toHeel = plus(sole, times(along, -body.heelM));
  const toToe = plus(sole, times(along, body.toeM));
  const flat = placedBy === "ankle" ? ([x, 0, z] as const) : minus([x, 0, z], [toToe[0], 0, toToe[2]]);
  const lift = Math.max(...[toHeel, toToe].map((way) => groundHeightM(flat[0] + way[0]) - way[1]));
  const ankle: Vector = [flat[0], lift + clearance, flat[2]];
  return { ankle, heel: plus(ankle, toHeel), toe: plus(ankle, toToe) };
}

/** Height of a foot's lowest point over the ground, in metres. */
export function clearanceM(foot: Pick<Foot, "heel" | "toe">): number {
  return Math.min(...[foot.heel, foot.toe].map((point) => point[1] - groundHeightM(point[0])));
}

/** Slope of the ground in degrees, positive where it falls toward the plate, evened out over a foot's length. */
function fallDeg(xM: number): number {
  return degrees(Math.atan2(groundHeightM(xM - 0.15) - groundHeightM(xM + 0.15), 0.3));
}
