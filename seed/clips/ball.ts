import type { ClipParameters } from "./clip-parameters";
import { curveThrough } from "./curve";
import type { Delivery } from "./delivery";
import { plateDistanceM } from "./ground";
import { EVENT_TIMES_S } from "./timeline";
import { plus, times, type Vector } from "./vector";

const GRAVITY_M_S2 = 9.81;
/** 30.7 m/s at 14 and 35.2 at 20: Kageyama et al. 2015, Table 1; 20 at eight is from memory. */
const speedAt = curveThrough([8, 14, 20], [20, 30.7, 35.2]);

/**
 * Where the ball is at a time in seconds: in the throwing hand, then in free flight to the knees over the plate, where it
 * stops against the backstop. Out of the hand exactly from ball release on.
 */
export function ballAt(delivery: Delivery, parameters: ClipParameters, timeS: number): Vector {
  if (timeS < EVENT_TIMES_S.ball_release) return delivery(timeS).joints.throwingHand;
  const from = delivery(EVENT_TIMES_S.ball_release).joints.throwingHand;
  const target: Vector = [plateDistanceM(parameters.ageYears), 0.55, 0];
  const flightS = (target[0] - from[0]) / speedAt(parameters.ageYears);
  const sinceS = Math.min(flightS, timeS - EVENT_TIMES_S.ball_release);
  const velocity: Vector = [
    (target[0] - from[0]) / flightS,
    (target[1] - from[1]) / flightS + (GRAVITY_M_S2 * flightS) / 2,
    (target[2] - from[2]) / flightS,
  ];
  return plus(plus(from, times(velocity, sinceS)), [0, (-GRAVITY_M_S2 * sinceS ** 2) / 2, 0]);
}
