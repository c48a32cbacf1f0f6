import { detectableChange } from "@/server/domain/statistics/measurement-error";
import { median } from "@/server/domain/statistics/quantile";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { leastToTell } from "./amount-in-words";
import { CHANGE_WORDS, type ChangeOutcome, type SinceCorrection, type TooFewToCompare } from "./change";
import { chanceByError, testOfChange } from "./change-test";
import { ENOUGH_FREEDOM, type ErrorFigure } from "./measure-error";
import type { ObservedDay, Series } from "./observation";
import { towardBetter, type WantedDirection } from "./wanted-direction";

/** So many days on either side before anything is said: fewer have no middle. Common practice, no source. */
export const FEWEST_A_SIDE = 3;

/** A change is told up to this two-sided chance, 0.05 to a side: three days a side reach it, and only just. */
export const MOST_CHANCE = 0.1;

/** When a correction was given, and the day of the delivery that called for it; null where that was on no delivery. */
export interface GivenCorrection {
  givenOn: CalendarDay;
  seenOn: CalendarDay | null;
}

/**
 * Whether a series changed since a correction, by more than its error. Days up to and with that of giving are before,
 * for what is said today shows tomorrow. The day that called for the correction was picked because it was bad, and the
 * next would have been better anyway (regression to the mean): it is left out when three others are there.
 *
 * A change is told when three things hold: its medians differ by more than the least detectable change (Weir 2005) and
 * by what shows when it is written; the exact test of the order allows it (see {@link MOST_CHANCE}), which guards
 * against days that differ by more than the error of a day; and both point the same way.
 * @param days of one series, each once, earliest first
 * @param error of deliveries of one day, by kind and view; the placing of points alone would be too little
 * @returns too_few below three days a side or where the error is not known well enough to be printed
 * @example judgements 0 1 0 | 2 3 3 with a standard error of 0.5: improved, by 3 steps, 2.2 detectable changes
 */
export function sinceCorrection(
  { kind, days }: Pick<Series, "kind" | "days">,
  correction: GivenCorrection,
  wanted: WantedDirection,
  error: ErrorFigure | null,
): SinceCorrection {
  const { before, isTriggerLeftOut } = daysBefore(days, correction);
  const after = days.filter(({ day }) => day > correction.givenOn);
  const [middleBefore, middleAfter] = [median(valuesOf(before)), median(valuesOf(after))];
  const short = shortOf(before.length, after.length, error);
  if (short !== null || error === null || middleBefore === null || middleAfter === null) {
    return short ?? tooFew("before", before.length, FEWEST_A_SIDE);
  }
  const scaled = (side: readonly ObservedDay[]) => side.map(({ value }) => towardBetter(wanted, value));
  const [first, second] = [scaled(before), scaled(after)];
  const change = (median(second) ?? 0) - (median(first) ?? 0);
  const detectable = detectableChange(error.withinSd);
  const test = testOfChange(first, second);
  const isMore = Math.abs(change) > detectable && Math.abs(change) >= leastToTell(kind);
  const isTold = isMore && test.chance <= MOST_CHANCE && Math.sign(change) === test.direction;
  const outcome = isTold ? outcomeOf(wanted, change) : "no_change";
  return {
    ...{ kind: "change", outcome, words: CHANGE_WORDS[outcome], wanted },
    before: { days: before.length, median: middleBefore },
    after: { days: after.length, median: middleAfter },
    ...{ change, detectableChange: detectable, test, isTriggerLeftOut },
    inDetectable: detectable === 0 ? null : change / detectable,
    chanceByError: chanceByError(change, error, before.length, after.length),
  };
}

function daysBefore(days: readonly ObservedDay[], { givenOn, seenOn }: GivenCorrection) {
  const all = days.filter(({ day }) => day <= givenOn);
  const others = all.filter(({ day }) => day !== seenOn);
  const isTriggerLeftOut = others.length < all.length && others.length >= FEWEST_A_SIDE;
  return { before: isTriggerLeftOut ? others : all, isTriggerLeftOut };
}

function shortOf(before: number, after: number, error: ErrorFigure | null): TooFewToCompare | null {
  if (before < FEWEST_A_SIDE) return tooFew("before", before, FEWEST_A_SIDE);
  if (after < FEWEST_A_SIDE) return tooFew("after", after, FEWEST_A_SIDE);
  return error?.isEnough ? null : tooFew("repeats", error?.degreesOfFreedom ?? 0, ENOUGH_FREEDOM);
}

function tooFew(of: TooFewToCompare["of"], have: number, needed: number): TooFewToCompare {
  const words = `too few observations (${have} of at least ${needed})`;
  return { kind: "too_few", of, have, needed, words };
}

function outcomeOf(wanted: WantedDirection, change: number): ChangeOutcome {
  if (wanted.kind === "unstated") return "changed";
  return change > 0 ? "improved" : "worse";
}

const valuesOf = (days: readonly ObservedDay[]) => days.map(({ value }) => value);
