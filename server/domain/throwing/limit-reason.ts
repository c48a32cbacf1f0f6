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
}

/** Counted pitches of the day itself, thrown or planned: they come off what the other reasons leave. */
export interface AlreadyToday extends Causes {
  kind: "already_today";
  pitches: number;
}

/** An admin let the arm reach `pitches` on this day, whatever the books say. */
export interface Overridden {
  kind: "override";
  overrideId: string;
  pitches: number;
}

/** Why the number is what it is. */
export type LimitReason =
  | Overridden
  | PainReason
  | NoPublishedLimit
  | RestOwed
  | DaysInARow
  | OutingAhead
  | AlreadyToday
  | DailyMax;

/** What a rule that only advises has to say of the day. It changes no number. */
export interface Advice {
  bookId: string;
  /** Where the rule is published. */
  source: string;
  reason: LimitReason;
}
