import { addDays, type CalendarDay, isCalendarDay } from "@/server/domain/time/calendar-day";

/** How far ahead an outing can be planned, in days; common practice, no source. */
export const OUTING_HORIZON_DAYS = 400;

/**
 * What is wrong with an outing that is to be planned, in a sentence, or null. Today is allowed; a day that is past
 * belongs into the log.
 * @param bounds `today`: the day at the athlete's home site
 * @example outingProblem({ plannedOn: "2026-11-24", pitches: 50 }, { today: "2026-11-25", plausibleMaxPitches: 400 })
 * // "That day is past: log what was thrown."
 */
export function outingProblem(
  outing: { plannedOn: CalendarDay; pitches: number },
  bounds: { today: CalendarDay; plausibleMaxPitches: number },
): string | null {
  const { plannedOn, pitches } = outing;
  const { today, plausibleMaxPitches } = bounds;
  if (!isCalendarDay(plannedOn)) return "That is not a day of the calendar.";
  if (plannedOn < today) return "That day is past: log what was thrown.";
  if (plannedOn > addDays(today, OUTING_HORIZON_DAYS)) {
    return `Outings are planned up to ${OUTING_HORIZON_DAYS} days ahead.`;
  }
  if (!Number.isInteger(pitches) || pitches < 1) return "An outing has at least 1 pitch.";
  if (pitches <= plausibleMaxPitches) return null;
  return `More than ${plausibleMaxPitches} pitches looks like a slip: check the number.`;
}
