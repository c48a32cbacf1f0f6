import { amountInWords, levelInWords } from "@/server/domain/mechanics/amount-in-words";
import type { SeriesEvidence } from "@/server/domain/mechanics/athlete-evidence";
import { JUDGEMENT_WORDS } from "@/server/domain/mechanics/judgement";
import { ENOUGH_FREEDOM } from "@/server/domain/mechanics/measure-error";
import type { SeriesKind } from "@/server/domain/mechanics/observation";
import { directionInWords } from "@/server/domain/mechanics/wanted-direction";
import { detectableChange } from "@/server/domain/statistics/measurement-error";

/**
 * A value of a series as it is read: a whole judgement by its word.
 * @example seriesValueInWords("judgement", 2) // "mostly (2)"
 */
export function seriesValueInWords(kind: SeriesKind, value: number): string {
  const word = kind === "judgement" ? JUDGEMENT_WORDS[value] : undefined;
  return word === undefined ? levelInWords(kind, value) : `${word} (${value})`;
}

/**
 * The error of a series in a sentence: how far a delivery lies from the athlete's usual, what two days must differ by,
 * and on what that rests.
 */
export function seriesErrorInWords({ series, error }: Pick<SeriesEvidence, "series" | "error">): string {
  const { kind } = series;
  if (!error?.figure.isEnough) {
    const have = error?.figure.degreesOfFreedom ?? 0;
    return `Its error is not yet known: ${have} of ${ENOUGH_FREEDOM} repeats. Days with three deliveries and more tell it.`;
  }
  const { figure, of } = error;
  const rests =
    of === "checkpoint" ? "of this checkpoint" : "of all checkpoints seen like this, its own being too few";
  return `One delivery lies within ${amountInWords(kind, figure.plusMinus)} of the athlete's usual in 95 of 100; two must differ by ${amountInWords(kind, detectableChange(figure.withinSd))} to be more than error (from ${figure.degreesOfFreedom} repeats on days with three deliveries and more, ${rests}).`;
}

/** Which way is better, in a sentence. */
export function wantedInWords({ series, wanted }: Pick<SeriesEvidence, "series" | "wanted">): string {
  if (wanted.kind === "unstated") return "Nobody said which way is better.";
  return `Better is ${directionInWords(wanted, series.kind)}.`;
}
