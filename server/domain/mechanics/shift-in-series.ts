import { type ChartSignal, processChart, RUN_LENGTH } from "@/server/domain/statistics/process-chart";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { levelInWords } from "./amount-in-words";
import type { ObservedDay, Series, SeriesKind } from "./observation";

/** So many days the limits rest on at least: of fewer they stand too wide or too narrow. Common practice, no source. */
export const BASE_NEEDS = 6;

/** A day on which the series shows a shift. */
export interface Shift {
  day: CalendarDay;
  rule: ChartSignal["rule"];
  side: ChartSignal["side"];
  words: string;
}

/** What the process chart of a series says. */
export interface ShiftInSeries {
  kind: "chart" | "too_few";
  /** The days that the limits rest on. */
  baseDays: number;
  /** All three null of too few; the limits null too where the base never varied. */
  centre: number | null;
  lower: number | null;
  upper: number | null;
  /** Earliest first; of a run the day on which it is eight long. */
  shifts: Shift[];
  words: string;
}

/**
 * The signals of a process chart (individuals and moving ranges) on a series: a day beyond the limits, or eight days in
 * a row on one side of the middle. The limits rest on the days up to and with the day a correction was given, so that
 * what changed since does not widen them; without a correction on all.
 *
 * A base that never varied gives no limits: judgements of four steps are often all the same, and any other would be
 * beyond them.
 * @param days each once, earliest first
 * @returns too_few below 6 days of base
 * @example 40 42 41 43 40 42 | 50: the middle 41.33, mean range 2, limits 41.33 ± 3 × 2 / 1.128: 50° lies above 46.65°
 */
export function shiftInSeries(
  { kind, days }: Pick<Series, "kind" | "days">,
  givenOn: CalendarDay | null,
): ShiftInSeries {
  const baseDays = givenOn === null ? days.length : days.filter(({ day }) => day <= givenOn).length;
  const chart = processChart(
    days.map(({ value }) => value),
    baseDays,
  );
  if (chart.kind === "too_few" || baseDays < BASE_NEEDS) {
    const words = `too few observations (${baseDays} of at least ${BASE_NEEDS})`;
    return { kind: "too_few", baseDays, centre: null, lower: null, upper: null, shifts: [], words };
  }
  const { centre, lower, upper, signals } = chart;
  const limits = chart.meanRange > 0 ? { lower, upper } : { lower: null, upper: null };
  const shifts = signals
    .filter(({ rule }) => rule === "run_of_eight" || limits.lower !== null)
    .filter((signal) => isFirstOfRun(signal, signals))
    .flatMap((signal) => shiftOf(kind, days, signal, centre));
  const base = `The middle of ${baseDays} days is ${levelInWords(kind, centre)}, ${limitsInWords(kind, limits)}.`;
  const words = [base, ...(shifts.length === 0 ? [NO_SHIFT] : inFewWords(shifts))].join(" ");
  return { kind: "chart", baseDays, centre, ...limits, shifts, words };
}

/** Shifts of one sort are told one by one up to so many; more of them together. */
const MOST_TOLD = 3;

/** The words of all shifts, the sort that came first before the others. */
function inFewWords(shifts: readonly Shift[]): string[] {
  const sorts = new Map<string, Shift[]>();
  for (const shift of shifts) {
    const sort = `${shift.rule} ${shift.side}`;
    sorts.set(sort, [...(sorts.get(sort) ?? []), shift]);
  }
  return [...sorts.values()].flatMap((alike) =>
    alike.length <= MOST_TOLD ? alike.map(({ words }) => words) : [together(alike)],
  );
}

function together(alike: readonly Shift[]): string {
  const [first, last] = [alike[0], alike.at(-1)];
  if (!first || !last) return "";
  const between = [first, last].map(({ day }) => dayInWords(day, { withYear: true })).join(" and ");
  return first.rule === "run_of_eight"
    ? `${alike.length} times ${RUN_LENGTH} days in a row lie ${first.side} the middle, the eighth of them between ${between}.`
    : `${alike.length} days lie ${first.side} the limits, between ${between}.`;
}

const NO_SHIFT = `No shift is seen: no day beyond limits, no ${RUN_LENGTH} days in a row on one side.`;

/* The chart flags the eighth day of a run and each further one; a shift is told once. */
function isFirstOfRun({ rule, index }: ChartSignal, all: readonly ChartSignal[]): boolean {
  return rule !== "run_of_eight" || !all.some((each) => each.rule === rule && each.index === index - 1);
}

function limitsInWords(kind: SeriesKind, { lower, upper }: { lower: number | null; upper: number | null }) {
  if (lower === null || upper === null) return "and as they never varied there are no limits";
  return `its limits ${levelInWords(kind, lower)} to ${levelInWords(kind, upper)}`;
}

function shiftOf(
  kind: SeriesKind,
  days: readonly ObservedDay[],
  { index, rule, side }: ChartSignal,
  centre: number,
): Shift[] {
  const day = days[index];
  const first = days[index + 1 - RUN_LENGTH];
  if (day === undefined) return [];
  const on = (of: CalendarDay) => dayInWords(of, { withYear: true });
  const words =
    rule === "run_of_eight" && first !== undefined
      ? `From ${on(first.day)} on, ${RUN_LENGTH} days in a row lie ${side} the middle, ${levelInWords(kind, centre)}.`
      : `On ${on(day.day)} ${levelInWords(kind, day.value)} lies ${side} the limits.`;
  return [{ day: day.day, rule, side, words }];
}
