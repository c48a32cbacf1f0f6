import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { type CorrectionState, isOpen } from "./correction-state";

/** How many days back a day of practice may still be ticked, today included. Common practice, no source. */
export const PRACTICE_DAYS = 14;

/** What a tick is held against. */
export interface PracticeFacts {
  /** The day the correction was given, at the athlete's home site. */
  givenOn: CalendarDay;
  state: CorrectionState;
  today: CalendarDay;
}

/**
 * The days that can be ticked, oldest first: the last fourteen, none before the correction was given. None once it has
 * held or is retired.
 * @example given 24 Nov, today 25 Nov: 24 and 25 Nov
 */
export function practiceDays({ givenOn, state, today }: PracticeFacts): CalendarDay[] {
  if (!isOpen(state)) return [];
  return Array.from({ length: PRACTICE_DAYS }, (_, index) =>
    addDays(today, index + 1 - PRACTICE_DAYS),
  ).filter((day) => day >= givenOn);
}

/** Why a day cannot be ticked or unticked, as one sentence; null when it can. */
export function practiceProblem(day: CalendarDay, facts: PracticeFacts): string | null {
  if (!isOpen(facts.state)) return "This correction is not being worked on any more.";
  if (day > facts.today) return "That day is still to come.";
  if (day < facts.givenOn) return "That day is before the correction was given.";
  return practiceDays(facts).includes(day) ? null : `Only the last ${PRACTICE_DAYS} days can be ticked.`;
}
