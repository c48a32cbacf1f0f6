import { icc } from "@/server/domain/statistics/icc";
import { crossTable, kappa } from "@/server/domain/statistics/kappa";
import { quadraticWeights } from "@/server/domain/statistics/kappa-weights";
import { capitalised } from "../text/capitalised";
import { amountInWords } from "./amount-in-words";
import { type BlindRating, coachesOf, FEWEST_ITEMS, itemsOfAll, pairsOf } from "./blind-ratings";
import { type CoachDifferences, coachDifferences } from "./coach-differences";
import { JUDGEMENT_WORDS } from "./judgement";
import type { MeasureKind } from "./measure-kind";

/** One figure of agreement with its interval at 95 %; null where it is not defined. */
export interface Agreement {
  coaches: string[];
  items: number;
  /** 1 is full agreement; ICC(2,1) of measures, weighted kappa of judgements. */
  figure: number | null;
  lower: number | null;
  upper: number | null;
  words: string;
}

/** How coaches agree on measures: one figure for all. */
export interface MeasureAgreement extends Agreement {
  /** Standard error of one coach's measure, in the unit of the kind; null of too few. */
  standardError: number | null;
  /** Items that not every coach has measured. */
  leftOut: number;
  differences: CoachDifferences;
}

/** How coaches agree on judgements: a figure for each pair, for kappa is a figure of two. */
export interface JudgementAgreement {
  pairs: Agreement[];
  /** On the items that all have judged. */
  differences: CoachDifferences;
}

/**
 * How coaches agree on one kind of measure: ICC(2,1) of Shrout and Fleiss 1979. Form 2, for these coaches stand for any
 * coach of the academy and agreeing means the same number: a coach who always reads five degrees more is a difference.
 * Form 1 (one judge), for a series is made of single measures and not of means of several coaches. The standard error
 * stands beside it, since the figure alone grows with how unlike the athletes are.
 * @param ratings of one kind from one view; items not seen by every coach are left out
 */
export function measureAgreement(kind: MeasureKind, ratings: readonly BlindRating[]): MeasureAgreement {
  const coaches = coachesOf(ratings);
  const items = itemsOfAll(ratings, coaches);
  const about = {
    ...{ coaches, items: items.length, differences: coachDifferences(items, coaches) },
    leftOut: new Set(ratings.map(({ itemId }) => itemId)).size - items.length,
  };
  const found = icc(items.map(({ values }) => values));
  if (found.kind === "too_few" || items.length < FEWEST_ITEMS) {
    return { ...about, ...NO_FIGURE, standardError: null, words: tooFewWords(coaches.length, items.length) };
  }
  const { icc: figure, lower, upper } = found.forms["2,1"];
  const standardError = Math.sqrt(found.squares.withinSubjects);
  const of = `of ${coaches.length} coaches on ${items.length} frames`;
  const reach = `95 of 100 measures lie within ${amountInWords(kind, 1.96 * standardError)} of what coaches say on average.`;
  const words =
    figure === null
      ? `No measure differed from any other ${of}: agreement cannot be told.`
      : `ICC(2,1) ${figureInWords({ figure, lower, upper })} ${of}. ${reach}`;
  return { ...about, figure, lower, upper, standardError, words };
}

/**
 * How coaches agree on judgements, two by two: Cohen's kappa with quadratic weights (Fleiss and Cohen 1973), under which
 * two steps apart count four times one step, and which is near the ICC, so that both stand on one scale. The interval
 * is of large samples; where every judgement agrees it has no width and is not told.
 * @throws RangeError for what is not a whole number from 0 to 3: the caller's fault
 */
export function judgementAgreement(ratings: readonly BlindRating[]): JudgementAgreement {
  const coaches = coachesOf(ratings);
  const pairs = pairsOf(coaches).map((pair) => pairAgreement(ratings, pair));
  return { pairs, differences: coachDifferences(itemsOfAll(ratings, coaches), coaches) };
}

function pairAgreement(ratings: readonly BlindRating[], pair: [string, string]): Agreement {
  const said = itemsOfAll(ratings, pair).map(({ values: [one = 0, other = 0] }) => [one, other] as const);
  const about = { coaches: pair, items: said.length };
  const steps = JUDGEMENT_WORDS.length;
  const found = kappa(crossTable(said, steps), quadraticWeights(steps));
  if (found.kind === "too_few" || said.length < FEWEST_ITEMS) {
    return { ...about, ...NO_FIGURE, words: tooFewWords(2, said.length) };
  }
  const same = said.filter(([one, other]) => one === other).length;
  const counted = `the same step on ${same} of ${said.length} frames`;
  if (found.kappa === null) {
    const words = `${capitalised(counted)}, and it was one step throughout: such a set cannot tell agreement from chance.`;
    return { ...about, ...NO_FIGURE, words };
  }
  const hasInterval = same < said.length;
  const { kappa: figure, lower, upper } = found;
  const told = hasInterval ? { figure, lower, upper } : { ...NO_FIGURE, figure };
  return { ...about, ...told, words: `Weighted kappa ${figureInWords(told)}, ${counted}.` };
}

const NO_FIGURE = { figure: null, lower: null, upper: null } as const;

function figureInWords({
  figure,
  lower,
  upper,
}: {
  figure: number;
  lower: number | null;
  upper: number | null;
}) {
  const interval = lower === null || upper === null ? "" : ` (${rounded(lower)} to ${rounded(upper)})`;
  return `${rounded(figure)}${interval}`;
}

/**
 * Why nothing is told of how coaches agree.
 * @example tooFewWords(1, 12) // "too few coaches (1 of at least 2)"
 */
export function tooFewWords(coaches: number, items: number): string {
  return coaches < 2
    ? `too few coaches (${coaches} of at least 2)`
    : `too few observations (${items} of at least ${FEWEST_ITEMS})`;
}

const rounded = (value: number) =>
  value
    .toFixed(2)
    .replace(/^-(0\.00)$/, "$1")
    .replace("-", "−");
