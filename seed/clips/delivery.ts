import { type Body, bodyOf } from "./body";
import type { ClipParameters } from "./clip-parameters";
import { shapeThrough } from "./curve";
import { type Figure, figureOf, hipsOf, type Joints, mirroredFigure, type Stance } from "./figure";
import { footOf } from "./foot";
import { reachOf } from "./limb";
import type { Pose } from "./pose";
import { EVENT_TIMES_S, timelineOf } from "./timeline";

/** A whole delivery: the figure at any time in seconds of the clip. */
export type Delivery = (timeS: number) => Figure;

/** The delivery that parameters describe. Ask once and sample it often: its curves are laid here. */
export function deliveryOf(parameters: ClipParameters): Delivery {
  const body = bodyOf(parameters.ageYears, parameters.heightM);
  const moments = timelineOf(parameters);
  const stanceAt = shapeThrough<Stance>(
    moments.map((moment) => moment.timeS),
    moments.map((moment) => stanceOf(moment.pose, body)),
    { leadFoot: EVENT_TIMES_S.front_foot_contact, backFoot: EVENT_TIMES_S.finish },
  );
  return (timeS) => {
    const figure = figureOf(stanceAt(timeS), body);
    return parameters.throws === "R" ? figure : mirroredFigure(figure);
  };
}

/** The joints at one time in seconds; before the start or after the end, those of the first or last posture. */
export function deliveryAt(parameters: ClipParameters, timeS: number): Joints {
  return deliveryOf(parameters)(timeS).joints;
}

/** A posture with the height of its pelvis settled, so that the supporting knee has just the flexion asked for. */
function stanceOf(pose: Pose, body: Body): Stance {
  const { support, supportFlexionDeg, ...rest } = pose;
  const level: Stance = { ...rest, pelvisYM: 0 };
  const hip = hipsOf(level, body)[support];
  const { ankle } =
    support === "lead" ? footOf(pose.leadFoot, body, "ankle") : footOf(pose.backFoot, body, "toe");
  const reach = reachOf(body.thighM, body.shankM, supportFlexionDeg);
  const overM = Math.sqrt(reach ** 2 - (hip[0] - ankle[0]) ** 2 - (hip[2] - ankle[2]) ** 2);
  if (Number.isNaN(overM)) throw new RangeError("the supporting leg does not reach the ground");
  return { ...level, pelvisYM: ankle[1] + overM };
}
