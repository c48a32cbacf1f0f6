import { kaplanMeier } from "@/server/domain/statistics/kaplan-meier";
import type { Phase } from "./delivery";
import { type DrillHolding, drillHolding } from "./drill-holding";
import {
  FEWEST_CORRECTIONS,
  type HoldingGroup,
  type HoldingTimes,
  holdingByCheckpoint,
  holdingByCoach,
  holdingTimes,
  type WatchedCorrection,
} from "./holding-times";

/** A correction as the academy's ledger counts it. */
export interface LedgerCorrection extends WatchedCorrection {
  phase: Phase;
}

/** Which corrections are told of; null stands for all. */
export interface LedgerChoice {
  phase: Phase | null;
  checkpointId: string | null;
  coachId: string | null;
}

/** The share that held, from one day on which something held to the next. */
export interface HeldStep {
  /** Days since it was given. */
  days: number;
  /** How many were still watched and had not held before that day. */
  atRisk: number;
  heldThen: number;
  /** Share that held by then, 0 to 1. */
  share: number;
  /** Its interval at 95 %; both null once all have held. */
  lower: number | null;
  upper: number | null;
}

/** How long the chosen corrections take to hold, together and apart. */
export interface HoldingLedger {
  all: HoldingTimes;
  /** Earliest first; empty of fewer than {@link FEWEST_CORRECTIONS}, or while none has held. */
  steps: HeldStep[];
  /** The longest that one was watched, in days; 0 of none. */
  longestDays: number;
  /** The share that held by a few round numbers of days, as far as any was watched. */
  readings: { days: number; share: number }[];
  byCheckpoint: HoldingGroup[];
  byCoach: HoldingGroup[];
  drills: DrillHolding[];
}

/** The days at which a curve is read out: two weeks, then months. */
const READ_AT = [14, 30, 60, 90, 180, 365];

/**
 * The corrections of an academy that are chosen: how long they take to hold in all, by checkpoint, by coach, and beside
 * which drills. Open and retired ones count for as long as they were watched.
 */
export function holdingLedger(corrections: readonly LedgerCorrection[], choice: LedgerChoice): HoldingLedger {
  const chosen = corrections.filter(
    ({ phase, checkpointId, coachId }) =>
      isChosen(phase, choice.phase) &&
      isChosen(checkpointId, choice.checkpointId) &&
      isChosen(coachId, choice.coachId),
  );
  const steps = heldSteps(chosen);
  const longestDays = chosen.reduce((longest, { days }) => Math.max(longest, days), 0);
  return {
    ...{ all: holdingTimes(chosen), steps, longestDays },
    readings:
      steps.length === 0
        ? []
        : READ_AT.filter((days) => days <= longestDays).map((days) => ({ days, share: heldBy(steps, days) })),
    byCheckpoint: holdingByCheckpoint(chosen),
    byCoach: holdingByCoach(chosen),
    drills: drillHolding(chosen),
  };
}

/**
 * The curve of holding: one less the share that lasts without having held (Kaplan and Meier 1958).
 * @returns nothing of fewer than {@link FEWEST_CORRECTIONS}
 */
export function heldSteps(corrections: readonly WatchedCorrection[]): HeldStep[] {
  if (corrections.length < FEWEST_CORRECTIONS) return [];
  const curve = kaplanMeier(corrections.map(({ days, hasHeld }) => ({ duration: days, hasEnded: hasHeld })));
  if (curve.kind === "too_few") return [];
  return curve.steps.map(({ at, atRisk, ended, lasting, lower, upper }) => ({
    ...{ days: at, atRisk, heldThen: ended, share: 1 - lasting },
    lower: upper === null ? null : 1 - upper,
    upper: lower === null ? null : 1 - lower,
  }));
}

/** The share that held within so many days; 0 before the first step. */
function heldBy(steps: readonly HeldStep[], days: number): number {
  return steps.findLast((step) => step.days <= days)?.share ?? 0;
}

const isChosen = (value: string, wanted: string | null) => wanted === null || value === wanted;
