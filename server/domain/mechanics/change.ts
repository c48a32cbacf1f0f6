import type { ChangeTest } from "./change-test";
import type { WantedDirection } from "./wanted-direction";

/** What may be said of a change. The words are fixed: every screen and page uses these and no others. */
export const CHANGE_WORDS = {
  improved: "improved beyond measurement error",
  worse: "worse beyond measurement error",
  changed: "changed beyond measurement error",
  no_change: "no change that can be told from error",
} as const;

/** Improved and worse where somebody said which way is better, else changed. */
export type ChangeOutcome = keyof typeof CHANGE_WORDS;

/** Days before, days after, or degrees of freedom of the error, whichever is short. */
export interface TooFewToCompare {
  kind: "too_few";
  of: "before" | "after" | "repeats";
  have: number;
  needed: number;
  words: string;
}

/** Before and after a correction; a chance never stands without the words. */
export interface Change {
  kind: "change";
  outcome: ChangeOutcome;
  words: string;
  wanted: WantedDirection;
  /** How many days, and their median in the unit of the series. */
  before: { days: number; median: number };
  after: { days: number; median: number };
  /** Of the medians; plus is better, or more where nobody said which way is. */
  change: number;
  /** The least change of two observations that is more than error. */
  detectableChange: number;
  /** The change in such; null where the error is 0. */
  inDetectable: number | null;
  test: ChangeTest;
  /** The chance that error alone brings so great a change, for weighing many checkpoints together. */
  chanceByError: number;
  /** The day that called for the correction was left out of the days before. */
  isTriggerLeftOut: boolean;
}

/** What is known of a correction's change. */
export type SinceCorrection = Change | TooFewToCompare;
