import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";

/** How many days ahead are searched when nothing else is asked for, today included (common practice, no source). */
export const SEARCH_DAYS = 14;

/** The days in which a settled round should be confirmed in person, both included. */
export interface FollowUpWindow {
  fromDay: CalendarDay;
  toDay: CalendarDay;
  /** The academy's span has passed: the next {@link SEARCH_DAYS} days are searched all the same. */
  isLate: boolean;
}

/**
 * From today to the last day of the academy's span after the round was settled.
 * @example settled 20 Nov, span 14 days, today 25 Nov: from 25 Nov to 4 Dec
 */
export function followUpWindow(facts: {
  settledOn: CalendarDay;
  followUpDays: number;
  today: CalendarDay;
}): FollowUpWindow {
  const { settledOn, followUpDays, today } = facts;
  const until = addDays(settledOn, followUpDays);
  const isLate = until < today;
  return { fromDay: today, toDay: isLate ? addDays(today, SEARCH_DAYS - 1) : until, isLate };
}
