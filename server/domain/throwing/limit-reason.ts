import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { PainKind } from "./pain";

/** The rows a reason rests on: log entries and plans by id. */
export interface Causes {
  entryIds: string[];
  plannedIds: string[];
}

/** Earlier throws whose rest is not over. `pitches` is that day's total; above the daily number it says so. */
export interface RestOwed extends Causes {
  kind: "rest_owed";
  thrownOn: CalendarDay;
  pitches: number;
  /** What of them decided the rest: fewer where a rest goes by the count at the start of the last batter. */
  countedPitches: number;
  restDays: number;
  /** The first day after this rest; other reasons may still hold it. */
  freeOn: CalendarDay;
  aboveDailyMax: boolean;
}

/** Pitching on this day would join `days`, before and after it, into more days in a row than the book allows. */
export interface DaysInARow extends Causes {
  kind: "days_in_a_row";
  days: CalendarDay[];
  maxDays: number;
}

/** The next throwing leaves `restDaysBetween` days for rest, so that this day's total may be `totalPitches` at most. */
export interface OutingAhead extends Causes {
  kind: "outing_ahead";
  outingOn: CalendarDay;
  restDaysBetween: number;
  totalPitches: number;
}

/** Nothing may be thrown: pain or unusual fatigue stands. `clearedBy` is who may end it, by the age on the day. */
export interface PainReason {
  kind: "pain";
  painKind: PainKind;
  feltOn: CalendarDay;
  clearedBy: "guardian" | "athlete";
  reportIds: string[];
}

/** The book says nothing for this age. */
export interface NoPublishedLimit {
  kind: "no_published_limit";
  ageYears: number;
}

/** The book's number for a day at this age. */
export interface DailyMax {
  kind: "daily_max";
  ageYears: number;
  dailyMaxPitches: number;
  /** A batter begun before the number may be finished. */
  finishesBatter: boolean;
}

/** Counted pitches of the day itself, thrown or planned: they come off what the other reasons leave. */
export interface AlreadyToday extends Causes {
  kind: "already_today";
  pitches: number;
}

/** Innings of earlier days that ask for this day free: of one day, or of the `days` that end with it. */
export interface InningsRest extends Causes {
  kind: "innings_rest";
  thrownOn: CalendarDay;
  outs: number;
  days: number;
  freeOn: CalendarDay;
}

/** The book's innings for a day at this age, as outs. */
export interface DailyOuts {
  kind: "daily_outs";
  ageYears: number;
  outs: number;
}

/** Outs got on the day itself: they come off what the other reasons leave. */
export interface OutsToday extends Causes {
  kind: "outs_today";
  outs: number;
}

/** The next day's throwing leaves this day `totalOuts` at most: more would ask for that day free. */
export interface OutsAhead extends Causes {
  kind: "outs_ahead";
  outingOn: CalendarDay;
  totalOuts: number;
}

/** Over the `days` days that end on `lastDay` there are `got` outs, and `most` is what the book has for them. */
export interface RollingOuts extends Causes {
  kind: "rolling_outs";
  days: number;
  most: number;
  got: number;
  lastDay: CalendarDay;
}

/** Over the span that ends on `lastDay` there are `got` pitches or outs, and `most` is what the book has for it. */
export interface TotalReached extends Causes {
  kind: "total";
  unit: "pitches" | "outs";
  over: { days: number } | { months: number };
  most: number;
  got: number;
  lastDay: CalendarDay;
}

/** Caught so many innings that the day has no pitching. */
export interface Caught extends Causes {
  kind: "caught";
  innings: number;
}

/** Threw so many in games that the day has no more catching. */
export interface NoCatching extends Causes {
  kind: "no_catching";
  pitches: number;
}

/** The day holds a game already. */
export interface OneGame extends Causes {
  kind: "one_game";
}

/** Games on the log that say no innings: a rule by innings cannot weigh them. */
export interface OutsNotSaid extends Causes {
  kind: "outs_not_said";
}

/** Fewer months off in the last twelve than the book advises; `had` as they were counted. */
export interface MonthsOffShort {
  kind: "months_off";
  of: "throwing" | "competitive_pitching";
  months: number;
  runMonths: number;
  had: { months: number; longestRun: number };
}

/** An admin let the day reach `pitches`, whatever the books say. */
export interface Overridden {
  kind: "override";
  overrideId: string;
  pitches: number;
}

/** Why the number is what it is. */
export type LimitReason =
  | PainReason
  | NoPublishedLimit
  | Overridden
  | RestOwed
  | InningsRest
  | DaysInARow
  | Caught
  | OutingAhead
  | OutsAhead
  | RollingOuts
  | TotalReached
  | AlreadyToday
  | OutsToday
  | DailyMax
  | DailyOuts
  | OneGame
  | NoCatching
  | OutsNotSaid
  | MonthsOffShort;

/** What a rule that only advises has to say of the day. It changes no number. */
export interface Advice {
  bookId: string;
  /** Where the rule is published. */
  source: string;
  reason: LimitReason;
}
