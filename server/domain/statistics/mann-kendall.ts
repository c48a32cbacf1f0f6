import { twoSidedNormal } from "./distributions";
import { kendallChance } from "./kendall-chance";
import type { Observation } from "./observation";
import { requireFinite } from "./require-finite";
import { sumOver, tieSizes } from "./tie-sizes";
import { type TooFew, tooFew } from "./too-few";

/** Fewer observations are no trend: of two, one is always the greater. */
export const TREND_NEEDS = 3;
/** Below this many observations, without ties, the chance is exact: as R's `cor.test` draws the line. */
export const EXACT_BELOW = 50;

/** Whether later values tend to be greater. */
export interface MannKendall {
  kind: "mann_kendall";
  n: number;
  /** Pairs that rise less pairs that fall. */
  s: number;
  /** Of S if nothing changed, ties taken off. */
  variance: number;
  /** S less 1 towards 0 (continuity), in standard deviations; 0 where S or its variance is. */
  z: number;
  /** Kendall's tau-b, -1 to 1; null where all values or all times are equal. */
  tau: number | null;
  /** Two-sided. */
  chance: number;
  method: "exact" | "normal";
}

/**
 * The Mann-Kendall test for a trend (Mann 1945, Econometrica 13:245-259; Kendall 1970, Rank Correlation Methods).
 * Only order counts, so unequal spacing does no harm; the observations may come in any order.
 *
 * Exact below 50 observations without ties. Otherwise normal with Kendall's variance for ties and a continuity
 * correction of 1; ties in time as well, where pairs of one time count for nothing. Without ties in time that is the
 * variance of EPA QA/G-9S (2006).
 * @returns too_few below 3; all values equal: S 0, chance 1
 * @example values 10 10 10 5 10 20 18 17 15 24 15 in order: S 22, variance 155.33, z 1.685 (EPA QA/G-9S, p. 109)
 */
export function mannKendall(observations: readonly Observation[]): MannKendall | TooFew {
  const n = observations.length;
  const times = observations.map((each) => each.at);
  const values = observations.map((each) => each.value);
  requireFinite([...times, ...values]);
  if (n < TREND_NEEDS) return tooFew(n, TREND_NEEDS);
  const timeTies = tieSizes(times);
  const valueTies = tieSizes(values);
  const s = risesLessFalls(observations);
  const variance = varianceOfS(n, timeTies, valueTies);
  const z = variance === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  const isExact = n < EXACT_BELOW && timeTies.length + valueTies.length === 0;
  return {
    kind: "mann_kendall",
    ...{ n, s, variance, z },
    tau: tauB(n, s, timeTies, valueTies),
    chance: isExact ? kendallChance(n, s) : twoSidedNormal(z),
    method: isExact ? "exact" : "normal",
  };
}

function risesLessFalls(observations: readonly Observation[]): number {
  let s = 0;
  observations.forEach((one, index) => {
    for (const other of observations.slice(index + 1)) {
      s += Math.sign(other.at - one.at) * Math.sign(other.value - one.value);
    }
  });
  return s;
}

const pairsIn = (size: number) => size * (size - 1);
const triplesIn = (size: number) => size * (size - 1) * (size - 2);

/**
 * The variance of Kendall's S if time and value have nothing to do with each other (Kendall 1970, section 5.8).
 * @param n 3 or more
 * @param timeTies sizes of the groups of equal times
 * @example varianceOfS(11, [], [4, 2]) // 155.33, rounded
 */
export function varianceOfS(n: number, timeTies: readonly number[], valueTies: readonly number[]): number {
  if ([...timeTies, ...valueTies].includes(n)) return 0;
  const spread = (size: number) => size * (size - 1) * (2 * size + 5);
  const alone = (spread(n) - sumOver(timeTies, spread) - sumOver(valueTies, spread)) / 18;
  const inPairs = (sumOver(timeTies, pairsIn) * sumOver(valueTies, pairsIn)) / (2 * pairsIn(n));
  const inTriples = (sumOver(timeTies, triplesIn) * sumOver(valueTies, triplesIn)) / (9 * triplesIn(n));
  return alone + inPairs + inTriples;
}

function tauB(n: number, s: number, timeTies: readonly number[], valueTies: readonly number[]) {
  const inTime = pairsIn(n) - sumOver(timeTies, pairsIn);
  const inValue = pairsIn(n) - sumOver(valueTies, pairsIn);
  return inTime === 0 || inValue === 0 ? null : (2 * s) / Math.sqrt(inTime * inValue);
}
