import { mannKendall } from "@/server/domain/statistics/mann-kendall";
import { INTERVAL_NEEDS, theilSen } from "@/server/domain/statistics/theil-sen";
import { dayNumber } from "@/server/domain/time/day-number";
import { chanceInWords, levelInWords, signedInWords } from "./amount-in-words";
import type { ObservedDay, Series, SeriesKind } from "./observation";
import { towardBetter, type WantedDirection } from "./wanted-direction";

/** A mean month, 365.25 / 12 days. */
export const DAYS_OF_MONTH = 30.4375;

/** A trend is told up to this two-sided chance. Common practice, no source. */
export const MOST_TREND_CHANCE = 0.05;

/** Which way a series goes; better and worse where somebody said which way is. */
export type TrendOutcome = "better" | "worse" | "rises" | "falls" | "none" | "too_few";

/** The trend of a series, with the words that go with its numbers. */
export interface Trend {
  outcome: TrendOutcome;
  days: number;
  /** Theil-Sen slope per month in the unit of the series, with its interval at 95 %; null of too few. */
  slope: number | null;
  lower: number | null;
  upper: number | null;
  /** Mann-Kendall, two-sided. */
  chance: number | null;
  words: string;
}

const OUTCOME_WORDS: Record<Exclude<TrendOutcome, "too_few">, string> = {
  better: "better month by month",
  worse: "worse month by month",
  rises: "rises month by month",
  falls: "falls month by month",
  none: "no trend that can be told",
};

/**
 * The trend of a series in words: the Theil-Sen slope per month with its interval and the Mann-Kendall test. It is told
 * when both say so: a chance of at most 0.05 and an interval without 0. A slope where the best is a value in between
 * (`nearer`) is that of the distance to it.
 * @param days each once, in any order; unequal spacing does no harm
 * @returns too_few below the 5 days that an interval takes
 * @example 40 41 42 43 44 a week apart: "better month by month: 4.3° a month (4.3° to 4.3°) over 5 days, chance 0.017"
 */
export function trendInWords(
  { kind, days }: Pick<Series, "kind" | "days">,
  wanted: WantedDirection = { kind: "unstated" },
): Trend {
  const points = days.map(({ day, value }) => ({ at: dayNumber(day), value: scaled(wanted, value) }));
  const line = theilSen(points, { perTime: DAYS_OF_MONTH });
  const test = mannKendall(points);
  if (line.kind === "too_few" || test.kind === "too_few" || days.length < INTERVAL_NEEDS) {
    return tooFewDays(days.length);
  }
  const { slope, lower, upper } = line;
  const isApart = lower !== null && upper !== null && (lower > 0 || upper < 0);
  const isTold = isApart && test.chance <= MOST_TREND_CHANCE;
  const outcome = isTold ? outcomeOf(wanted, slope) : "none";
  const words = `${OUTCOME_WORDS[outcome]}: ${figuresOf(kind, days, { slope, lower, upper }, test.chance)}${ofDistance(kind, wanted)}`;
  return { outcome, days: days.length, slope, lower, upper, chance: test.chance, words };
}

/* Told in the unit as it is read; only a distance has to be turned, so that less of it is a fall. */
function scaled(wanted: WantedDirection, value: number): number {
  return wanted.kind === "nearer" ? -towardBetter(wanted, value) : value;
}

function ofDistance(kind: SeriesKind, wanted: WantedDirection): string {
  return wanted.kind === "nearer" ? `, told of the distance to ${levelInWords(kind, wanted.to)}` : "";
}

function tooFewDays(days: number): Trend {
  const words = `too few observations (${days} of at least ${INTERVAL_NEEDS})`;
  return { outcome: "too_few", days, slope: null, lower: null, upper: null, chance: null, words };
}

function outcomeOf(wanted: WantedDirection, slope: number): Exclude<TrendOutcome, "too_few" | "none"> {
  const isRising = slope > 0;
  if (wanted.kind === "unstated") return isRising ? "rises" : "falls";
  return isRising === (wanted.kind === "more") ? "better" : "worse";
}

function figuresOf(
  kind: SeriesKind,
  days: readonly ObservedDay[],
  { slope, lower, upper }: { slope: number; lower: number | null; upper: number | null },
  chance: number,
): string {
  const [first] = days;
  const isFlat = first !== undefined && days.every(({ value }) => value === first.value);
  if (isFlat) return `${levelInWords(kind, first.value)} on each of ${days.length} days`;
  const per = (value: number | null) => signedInWords(kind, value ?? 0);
  const interval = `${per(lower)} to ${per(upper)}`;
  return `${per(slope)} a month (${interval}) over ${days.length} days, chance ${chanceInWords(chance)} if nothing changed`;
}
