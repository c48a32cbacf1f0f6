import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords, monthInWords } from "@/server/domain/time/words";
import { inningsInWords } from "./innings";
import type { FreeMonths, MonthsOff } from "./load-months-off";
import type { LoadOfDay } from "./load-ratios";
import type { TwelveMonths } from "./load-year";

/**
 * A figure of load as it is written: two decimals, a dash where there is none.
 * @example figureInWords(1.2) // "1.20"
 */
export function figureInWords(figure: number | null): string {
  return figure === null ? "–" : figure.toFixed(2);
}

/**
 * How a day stands beside the four weeks that end with it, in one sentence without a verdict.
 * @example "Wed 25 Nov: 21.4 throws a day over the last 7 days, 18.8 over the last 28."
 */
export function loadInWords({ mean7, mean28 }: LoadOfDay, day: CalendarDay): string {
  const of = dayInWords(day);
  if (mean7 === null) return `${of}: the log is younger than 7 days.`;
  const seven = `${of}: ${mean7.toFixed(1)} throws a day over the last 7 days`;
  if (mean28 === null) return `${seven}. The log is younger than 28 days, so there is no ratio yet.`;
  return `${seven}, ${mean28.toFixed(1)} over the last 28.`;
}

/**
 * Pitches and innings of twelve months, a sentence each, with what is missing from them.
 * @param recordFrom the first day on the log; null for an empty one
 */
export function twelveMonthsInWords(year: TwelveMonths, recordFrom: CalendarDay | null): string[] {
  const since = dayInWords(year.fromDay, { withYear: true });
  const pitches = counted(year.moundPitches, "pitch", "pitches");
  const competed = `${year.competitionPitches} of them in games, live at-bats and showcases`;
  const begins = recordFrom !== null && recordFrom > year.fromDay;
  return [
    `Since ${since}: ${pitches} off a mound, ${competed}.`,
    ...(begins ? [`The log begins on ${dayInWords(recordFrom, { withYear: true })}.`] : []),
    ...inningsSentences(year),
  ];
}

function inningsSentences({ outs, gamesWithoutOuts }: TwelveMonths): string[] {
  const innings = outs === 0 ? [] : [`Innings pitched: ${inningsInWords(outs)}.`];
  if (gamesWithoutOuts === 0) return innings;
  const have = gamesWithoutOuts === 1 ? "has" : "have";
  return [...innings, `${counted(gamesWithoutOuts, "game", "games")} ${have} no innings on the log.`];
}

/** The months off, counted, a sentence each; of months that the log does not cover it says so. */
export function monthsOffInWords(off: MonthsOff | null): string[] {
  if (off === null) return ["No whole calendar month is on the log yet, so none is counted as off."];
  const { fromMonth, toMonth, monthsOnRecord } = off;
  const span = `${monthInWords(fromMonth)}${fromMonth === toMonth ? "" : ` to ${monthInWords(toMonth)}`}`;
  const isShort = monthsOnRecord < 12;
  return [
    `Whole months off from games, live at-bats and showcases, ${span}: ${free(off.withoutCompetition, monthsOnRecord)}.`,
    `Whole months off from all throwing: ${free(off.withoutThrowing, monthsOnRecord)}.`,
    ...(isShort ? ["Months that the log does not cover whole are not counted."] : []),
  ];
}

function free({ months, longestRun }: FreeMonths, of: number): string {
  const share = `${months === 0 ? "none" : months} of ${of}`;
  return longestRun > 1 ? `${share} (${longestRun} in a row)` : share;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
