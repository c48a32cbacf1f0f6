import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { inningsInWords } from "./innings";
import type { InningsRest, LimitReason, MonthsOffShort, RollingOuts, TotalReached } from "./limit-reason";
import { inWords, thrownOrPlanned } from "./why-words";

const OTHER_KINDS = [
  "innings_rest",
  "caught",
  "outs_ahead",
  "rolling_outs",
  "total",
  "outs_today",
  "daily_outs",
  "one_game",
  "no_catching",
  "outs_not_said",
  "months_off",
] as const;

/** A reason of innings, of catching, of totals, or of a rule that holds no number. */
export type OtherReason = Extract<LimitReason, { kind: (typeof OTHER_KINDS)[number] }>;

/** Whether a reason is one of {@link otherSentence}. */
export function isOtherReason(reason: LimitReason): reason is OtherReason {
  return OTHER_KINDS.some((kind) => kind === reason.kind);
}

/**
 * Such a reason in a sentence a parent understands.
 * @example "Caught 4 innings on this day: the book has no pitching on such a day."
 */
export function otherSentence(reason: OtherReason, firstFreeDay: CalendarDay | null): string {
  switch (reason.kind) {
    case "innings_rest":
      return inningsRestSentence(reason, firstFreeDay);
    case "caught":
      return `Caught ${reason.innings} ${innings(reason.innings * 3)} on this day: the book has no pitching on such a day.`;
    case "outs_ahead":
      return `At most ${outsInWords(reason.totalOuts)} by the book, because the outing on ${dayInWords(reason.outingOn)} is the next day.`;
    case "rolling_outs":
      return rollingSentence(reason);
    case "total":
      return totalSentence(reason);
    case "outs_today":
      return `${outsInWords(reason.outs)} already ${thrownOrPlanned(reason)} on this day ${reason.outs <= 3 ? "comes" : "come"} off that.`;
    case "daily_outs":
      return `The book's innings for a day at age ${reason.ageYears} are ${inningsInWords(reason.outs)}.`;
    case "one_game":
      return "One game a day by the book, and this day has one.";
    case "no_catching":
      return `With ${reason.pitches} pitches in games, may not catch any more that day.`;
    case "outs_not_said":
      return `The log does not say the innings of ${reason.entryIds.length === 1 ? "one game" : `${inWords(reason.entryIds.length)} games`}: ask.`;
    case "months_off":
      return monthsOffSentence(reason);
  }
}

/** Outs as innings with the word. @example outsInWords(10) // "3 1/3 innings" */
export function outsInWords(outs: number): string {
  return `${inningsInWords(outs)} ${innings(outs)}`;
}

const innings = (outs: number) => (outs > 0 && outs <= 3 ? "inning" : "innings");

function inningsRestSentence(
  { thrownOn, outs, days, freeOn }: InningsRest,
  firstFreeDay: CalendarDay | null,
): string {
  const span = days === 1 ? "on" : `over ${inWords(days)} days to`;
  const until =
    freeOn === firstFreeDay
      ? `free again ${dayInWords(freeOn)}`
      : `to ${dayInWords(addDays(freeOn, -1))} at least`;
  const verb = outs <= 3 ? "asks" : "ask";
  return `${outsInWords(outs)} ${span} ${dayInWords(thrownOn)} ${verb} for the next day free; ${until}.`;
}

function rollingSentence({ most, days, got, lastDay }: RollingOuts): string {
  return `At most ${outsInWords(most)} over ${inWords(days)} days by the book; those to ${dayInWords(lastDay)} have ${inningsInWords(got)}.`;
}

function totalSentence({ unit, over, most, got, lastDay }: TotalReached): string {
  const span =
    "days" in over
      ? `${inWords(over.days)} days`
      : `${inWords(over.months)} ${over.months === 1 ? "month" : "months"}`;
  const [cap, had] =
    unit === "pitches"
      ? [`${most.toLocaleString("en-GB")} pitches`, got.toLocaleString("en-GB")]
      : [outsInWords(most), inningsInWords(got)];
  return `At most ${cap} over ${span} by the book; those to ${dayInWords(lastDay)} have ${had}.`;
}

function monthsOffSentence({ of, months, runMonths, had }: MonthsOffShort): string {
  const off = of === "throwing" ? "without throwing" : "without competitive pitching";
  const stretch = of === "throwing" ? "of them in one stretch" : "in one stretch without any throwing";
  const run = runMonths > 0 ? `, ${inWords(runMonths)} ${stretch}` : "";
  return `The book has ${inWords(months)} months of the year ${off}${run}; counted over the last twelve whole months: ${had.months}, the longest stretch without any throwing ${had.longestRun}.`;
}
