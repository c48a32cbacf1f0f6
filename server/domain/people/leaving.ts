import { addMonths, type CalendarDay } from "../time/calendar-day";
import { dayInWords } from "../time/words";

/** How far ahead a day of leaving may lie, in months; a later one is taken for mistyped (common practice, no source). */
export const LEAVES_WITHIN_MONTHS = 12;

/**
 * Whether an athlete has left by a day; on the day they leave on they are no longer there.
 * @param leftOn null for an athlete of whom no leaving is known
 * @example hasLeft("2026-11-25", "2026-11-25") // true
 */
export function hasLeft(leftOn: CalendarDay | null, day: CalendarDay): boolean {
  return leftOn !== null && leftOn <= day;
}

/**
 * What is wrong with a day to leave on, as a sentence, or null when nothing is. A day that has passed is right: the
 * desk may hear of it late.
 */
export function leavingProblem(
  leftOn: CalendarDay,
  known: { joinedOn: CalendarDay; today: CalendarDay },
): string | null {
  if (leftOn < known.joinedOn) {
    return `They joined on ${dayInWords(known.joinedOn, { withYear: true })}, so they cannot leave before it.`;
  }
  if (leftOn > addMonths(known.today, LEAVES_WITHIN_MONTHS)) {
    return `${dayInWords(leftOn, { withYear: true })} is more than ${LEAVES_WITHIN_MONTHS} months away.`;
  }
  return null;
}
