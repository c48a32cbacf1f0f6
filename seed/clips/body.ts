import { curveThrough } from "./curve";

/** Lengths of a body in metres. */
export type Body = {
  readonly heightM: number;
  readonly thighM: number;
  readonly shankM: number;
  /** Ankle joint above the sole. */
  readonly ankleM: number;
  /** Ankle to heel and ankle to toe along the sole. */
  readonly heelM: number;
  readonly toeM: number;
  /** Half the distance between the hip joints, and between the shoulder joints. */
  readonly halfHipM: number;
  readonly halfShoulderM: number;
  readonly trunkM: number;
  readonly upperArmM: number;
  readonly forearmM: number;
  /** Wrist to the ball in the hand. */
  readonly handM: number;
  /** Middle of the shoulders to the base of the head, and the radius of the head. */
  readonly neckM: number;
  readonly headRadiusM: number;
  /** How thick the limbs are drawn, 1 for a grown pitcher. */
  readonly girth: number;
};

const AGES = [8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 20];
const medianHeight = curveThrough(
  AGES,
  [1.28, 1.335, 1.385, 1.435, 1.49, 1.56, 1.64, 1.7, 1.735, 1.755, 1.765, 1.77],
);
const headShare = curveThrough([8, 14, 20], [0.077, 0.07, 0.065]);
const girthShare = curveThrough([8, 14, 20], [0.88, 0.94, 1.04]);

/**
 * The body of a pitcher. Segment lengths are shares of body height after Drillis and Contini (1966), as printed in
 * Winter, Biomechanics and Motor Control of Human Movement; shares, median heights and head sizes are from memory.
 * @param ageYears 8 to 20
 * @param heightM body height; left out, the median boy's of that age
 */
export function bodyOf(ageYears: number, heightM = medianHeight(ageYears)): Body {
  const share = (part: number) => part * heightM;
  return {
    heightM,
    thighM: share(0.245),
    shankM: share(0.246),
    ankleM: share(0.039),
    heelM: share(0.035),
    toeM: share(0.115),
    halfHipM: share(0.05),
    halfShoulderM: share(0.112),
    trunkM: share(0.288),
    upperArmM: share(0.186),
    forearmM: share(0.146),
    handM: share(0.055),
    neckM: share(0.052),
    headRadiusM: share(headShare(ageYears)),
    girth: girthShare(ageYears),
  };
}
