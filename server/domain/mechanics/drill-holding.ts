import { grouped } from "./grouped";
import {
  FEWEST_CORRECTIONS,
  type HoldingTimes,
  halfInWords,
  holdingTimes,
  type WatchedCorrection,
} from "./holding-times";

/** Stands beside every comparison of drills. */
export const DESCRIBES_ONLY =
  "This describes what went together. It does not say that the drill is the reason: who gets which drill is no accident.";

/** One drill of one checkpoint beside the other corrections of that checkpoint. */
export interface DrillHolding {
  checkpointId: string;
  /** As it was first written. */
  drill: string;
  withIt: HoldingTimes;
  withoutIt: HoldingTimes;
  /** Half held sooner with it than without. */
  isFaster: boolean;
  words: string;
}

/**
 * Which drills go with faster holding, within one checkpoint, so that an easy checkpoint does not praise its drills.
 * Drills are the same when they are written alike, capitals and spaces aside. Only where five corrections stand on
 * either side.
 * @returns the fastest first, and last those with which less than half held
 */
export function drillHolding(corrections: readonly WatchedCorrection[]): DrillHolding[] {
  return grouped(corrections, ({ checkpointId }) => checkpointId)
    .flatMap(drillsOfCheckpoint)
    .sort((one, other) => daysOf(one.withIt) - daysOf(other.withIt));
}

function drillsOfCheckpoint(corrections: readonly WatchedCorrection[]): DrillHolding[] {
  const groups = grouped(corrections, drillOf);
  return groups.flatMap((group) => {
    const [first] = group;
    const others = corrections.length - group.length;
    const isEnough = Math.min(group.length, others) >= FEWEST_CORRECTIONS;
    if (!first || !isEnough || drillOf(first) === "") return [];
    const withoutIt = holdingTimes(groups.filter((each) => each !== group).flat());
    return [besides(first, holdingTimes(group), withoutIt)];
  });
}

function besides(
  { checkpointId, drill }: WatchedCorrection,
  withIt: HoldingTimes,
  withoutIt: HoldingTimes,
): DrillHolding {
  const side = (times: HoldingTimes) => `${halfInWords(times)}, of ${times.watched}`;
  return {
    ...{ checkpointId, drill: drill.trim(), withIt, withoutIt },
    isFaster: daysOf(withIt) < daysOf(withoutIt),
    words: `With it ${side(withIt)}; without it ${side(withoutIt)}. ${DESCRIBES_ONLY}`,
  };
}

const drillOf = ({ drill }: WatchedCorrection) => drill.trim().replaceAll(/\s+/g, " ").toLowerCase();
/* No number is greater: half was not reached. */
const daysOf = ({ medianDays }: HoldingTimes) => medianDays ?? Number.MAX_VALUE;
