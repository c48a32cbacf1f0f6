import { amountInWords, chanceInWords, levelInWords } from "./amount-in-words";
import type { Change, SinceCorrection, TooFewToCompare } from "./change";
import type { Series } from "./observation";
import { wayInWords } from "./wanted-direction";

const METHODS = { permutation: "every split of the days", rank_sum: "the ranks of the days" } as const;

const SHORT: Record<TooFewToCompare["of"], string> = {
  before: "Days before the correction are too few.",
  after: "Days since the correction are too few.",
  repeats: "The error is not known well enough: too few deliveries of one day were measured.",
};

/**
 * What changed since a correction, in sentences: the fixed words, the medians, the change beside the error, the chance.
 * Never the chance alone.
 * @param unseen how often the checkpoint was looked for and could not be seen
 * @example "Improved beyond measurement error.", "Median 0 of 3 days before, 3 of 3 days after: 3 steps more, 2.2 times
 *   the 1.4 steps that two observations must differ by to be more than error."
 */
export function changeInWords(kind: Series["kind"], since: SinceCorrection, unseen = 0): string[] {
  const fixed = `${since.words.charAt(0).toUpperCase()}${since.words.slice(1)}.`;
  const rest = since.kind === "too_few" ? [SHORT[since.of]] : [mediansOf(kind, since), ...cautionsOf(since)];
  return [fixed, ...rest, ...unseenOf(unseen)];
}

function mediansOf(kind: Series["kind"], { before, after, ...since }: Change): string {
  const side = (of: Change["before"], word: string) =>
    `${levelInWords(kind, of.median)} of ${of.days} days ${word}`;
  const way = since.change === 0 ? "" : ` ${wayInWords(since.wanted, since.change)}`;
  const least = amountInWords(kind, since.detectableChange);
  const beside =
    since.inDetectable === null
      ? "; repeats never differed, so the error is taken as 0"
      : `, ${Math.abs(since.inDetectable).toFixed(1)} times the ${least} that two observations must differ by to be more than error`;
  return `Median ${side(before, "before")}, ${side(after, "after")}: ${amountInWords(kind, since.change)}${way}${beside}.`;
}

function cautionsOf({ test, wanted, isTriggerLeftOut }: Change): string[] {
  const chance = `By ${METHODS[test.method]}, the chance of days so far apart if nothing changed is ${chanceInWords(test.chance)}.`;
  const direction = "Nobody said which way is better.";
  const leftOut = "The day that called for the correction is left out.";
  return [chance, ...(wanted.kind === "unstated" ? [direction] : []), ...(isTriggerLeftOut ? [leftOut] : [])];
}

function unseenOf(unseen: number): string[] {
  if (unseen === 0) return [];
  return [`It was looked for ${unseen === 1 ? "once" : `${unseen} times`} more and could not be seen.`];
}
