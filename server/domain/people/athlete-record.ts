import { z } from "zod";
import { ageOn, type CalendarDay, isCalendarDay } from "../time/calendar-day";
import { isOfAge, THROWING_HANDS } from "./person";
import { personDetails } from "./person-details";

/** A calendar day that exists. */
export const calendarDay = z.string().refine(isCalendarDay, "Enter a day that exists.");

/** What is written down of an athlete. Height in whole centimetres, null while nobody has measured. */
export const athleteRecord = personDetails.extend({
  bornOn: calendarDay,
  throws: z.enum(THROWING_HANDS),
  heightCm: z.int().min(80).max(230).nullable(),
  homeSiteId: z.string().min(1, "Choose a home site.").max(60),
  ruleBookId: z.string().min(1, "Choose a rule book.").max(80),
});

/** See {@link athleteRecord}. */
export type AthleteRecord = z.output<typeof athleteRecord>;

/** The youngest an academy takes, in years (common practice, no source; the rule book's table begins at 7). */
export const YOUNGEST_YEARS = 5;

/** Above this age a birth date is taken to be mistyped, in years (common practice, no source). */
export const OLDEST_YEARS = 80;

/**
 * What is wrong with a birth date on a day, as a sentence, or null when nothing is.
 * @example birthProblem("2030-01-01", "2026-11-25") // "That birth date gives an age of -4."
 */
export function birthProblem(bornOn: CalendarDay, today: CalendarDay): string | null {
  const ageYears = ageOn(bornOn, today);
  if (ageYears >= YOUNGEST_YEARS && ageYears <= OLDEST_YEARS) return null;
  return `That birth date gives an age of ${ageYears}.`;
}

/** Whether the athlete would stand alone: under 18 on the day with nobody on record who acts for them. */
export function isMinorAlone(bornOn: CalendarDay, guardians: number, today: CalendarDay): boolean {
  return guardians === 0 && !isOfAge(bornOn, today);
}
