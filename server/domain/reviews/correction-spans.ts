import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import type { CorrectionStanding, CorrectionState } from "./correction-state";

/** A stretch of days in which a correction stood in one state, `[fromDay, toDay)`; `toDay` null while it still does. */
export interface CorrectionSpan {
  state: CorrectionState;
  fromDay: CalendarDay;
  toDay: CalendarDay | null;
}

/**
 * The history of a correction as stretches of days, earliest first, by the calendar of the zone. What was passed through
 * within one day has no length and is left out, unless it is how the correction stands now.
 * @example given on 1 Nov, held on 20 Nov: given [1 Nov, 20 Nov), held from 20 Nov on
 */
export function correctionSpans(history: CorrectionStanding["history"], zone: string): CorrectionSpan[] {
  const steps = history.map(({ state, fromMs }) => ({ state, fromDay: dayOf(fromMs, zone) }));
  return steps
    .map((step, index) => ({ ...step, toDay: steps[index + 1]?.fromDay ?? null }))
    .filter((span) => span.toDay === null || span.toDay > span.fromDay);
}
