import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import { grouped } from "./grouped";
import type { HoldingTime } from "./holding";

/** Of fewer corrections nothing is told but how many there are. Common practice, no source. */
export const FEWEST_CORRECTIONS = 5;

/** A correction as far as its holding is counted. */
export interface WatchedCorrection extends HoldingTime {
  checkpointId: string;
  coachId: string;
  drill: string;
}

/** How long some corrections take to hold. */
export interface HoldingTimes {
  watched: number;
  held: number;
  /** How many never held and are still worked on; what is neither held nor open was retired. */
  open: number;
  /** How many of those that held came back. */
  cameBack: number;
  /** The shortest time within which half held; null below half, or of too few. */
  medianDays: number | null;
  /** Its interval at 95 %; null on a side that is not reached. */
  lowerDays: number | null;
  upperDays: number | null;
  words: string;
}

/** {@link HoldingTimes} of one checkpoint or one coach. */
export interface HoldingGroup extends HoldingTimes {
  key: string;
}

/**
 * How long corrections take to hold, the open and the retired ones counted for as long as they were watched (Kaplan and
 * Meier 1958): leaving them out would make every correction look quicker than it is.
 * @returns of fewer than five no median, and words that say so
 * @example days 10 20 20 30 held and 25 open: half within 20 days, for 3 of 5 held by then
 */
export function holdingTimes(corrections: readonly WatchedCorrection[]): HoldingTimes {
  const counts = {
    watched: corrections.length,
    held: corrections.filter(({ hasHeld }) => hasHeld).length,
    open: corrections.filter(({ isOpen }) => isOpen).length,
    cameBack: corrections.filter(({ hasComeBack }) => hasComeBack).length,
  };
  const curve = kaplanMeier(corrections.map(({ days, hasHeld }) => ({ duration: days, hasEnded: hasHeld })));
  if (curve.kind === "too_few" || counts.watched < FEWEST_CORRECTIONS) {
    const words = `too few corrections (${counts.watched} of at least ${FEWEST_CORRECTIONS})`;
    return { ...counts, medianDays: null, lowerDays: null, upperDays: null, words };
  }
  const times = {
    ...counts,
    medianDays: curve.median,
    lowerDays: curve.median === null ? null : curve.medianLower,
    upperDays: curve.median === null ? null : curve.medianUpper,
  };
  return { ...times, words: `${halfInWords(times)}; ${countsInWords(counts)}` };
}

/** {@link holdingTimes} by checkpoint, the most watched first. */
export function holdingByCheckpoint(corrections: readonly WatchedCorrection[]): HoldingGroup[] {
  return byKey(corrections, ({ checkpointId }) => checkpointId);
}

/**
 * {@link holdingTimes} by coach, the most watched first. Coaches look after unlike athletes and give unlike corrections:
 * it describes, and ranks nobody.
 */
export function holdingByCoach(corrections: readonly WatchedCorrection[]): HoldingGroup[] {
  return byKey(corrections, ({ coachId }) => coachId);
}

/**
 * Within how many days half held, with the interval.
 * @example halfInWords({ medianDays: 20, lowerDays: 10, upperDays: null }) // "half held within 20 days (10 or more)"
 */
export function halfInWords({
  medianDays,
  lowerDays,
  upperDays,
}: Pick<HoldingTimes, "medianDays" | "lowerDays" | "upperDays">): string {
  if (medianDays === null) return "less than half have held so far";
  const interval = upperDays === null ? `${lowerDays ?? 0} or more` : `${lowerDays ?? 0} to ${upperDays}`;
  return `half held within ${medianDays === 1 ? "1 day" : `${medianDays} days`} (${interval})`;
}

function countsInWords({ watched, held, cameBack }: Pick<HoldingTimes, "watched" | "held" | "cameBack">) {
  const back = held === 0 ? "" : `, ${cameBack === 0 ? "none" : cameBack} of which came back`;
  return `${held} of ${watched} held${back}`;
}

function byKey(corrections: readonly WatchedCorrection[], keyOf: (each: WatchedCorrection) => string) {
  return grouped(corrections, keyOf)
    .map((group) => ({ key: group[0] ? keyOf(group[0]) : "", ...holdingTimes(group) }))
    .sort((one, other) => other.watched - one.watched);
}
