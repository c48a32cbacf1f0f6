import type { CorrectionStanding } from "@/server/domain/reviews/correction-state";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { dayNumber } from "@/server/domain/time/day-number";

/** How long one correction took to hold, or has been watched without holding. */
export interface HoldingTime {
  /** Whole days from given until it first held; else until it was retired, else until today. Never below 0. */
  days: number;
  hasHeld: boolean;
  /** It held once and was given again. */
  hasComeBack: boolean;
}

/**
 * The holding time of a correction from its history. What was retired was watched until then and no longer: whether it
 * would have held nobody knows.
 * @param history of its standing, oldest first
 * @example given on 1 Nov, held on 20 Nov, given again on 25 Nov: 19 days, held, come back
 */
export function holdingTime(
  history: CorrectionStanding["history"],
  today: CalendarDay,
  zone: string,
): HoldingTime {
  const steps = history.map(({ state, fromMs }) => ({ state, onDay: dayOf(fromMs, zone) }));
  const heldAt = steps.findIndex(({ state }) => state === "held");
  const retired = steps.find(({ state }) => state === "retired");
  const endedOn = steps[heldAt]?.onDay ?? retired?.onDay ?? today;
  const hasHeld = heldAt >= 0;
  return {
    days: Math.max(0, dayNumber(endedOn) - dayNumber(steps[0]?.onDay ?? endedOn)),
    hasHeld,
    hasComeBack: hasHeld && steps.slice(heldAt).some(({ state }) => state === "given"),
  };
}
