import type { CorrectionStanding } from "@/server/domain/reviews/correction-state";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayNumber } from "@/server/domain/time/day-number";

/** How long one correction took to hold, or has been watched without holding. */
export interface HoldingTime {
  /** Whole days from given until it first held; else until it was retired, else until today. Never below 0. */
  days: number;
  hasHeld: boolean;
  /** Still worked on, and never held: its end is not known yet. */
  isOpen: boolean;
  /** It held once and was given again. */
  hasComeBack: boolean;
}

/**
 * The holding time of a correction from its history. What was retired was watched until then and no longer: whether it
 * would have held nobody knows.
 * @param history of its standing, oldest first
 * @param dayAt the day of an instant, by the zone of its athlete
 * @example given on 1 Nov, held on 20 Nov, given again on 25 Nov: 19 days, held, come back
 */
export function holdingTime(
  history: CorrectionStanding["history"],
  today: CalendarDay,
  dayAt: (instantMs: number) => CalendarDay,
): HoldingTime {
  const heldAt = history.findIndex(({ state }) => state === "held");
  const retired = history.find(({ state }) => state === "retired");
  const dayFrom = (step: { fromMs: number } | undefined) => (step ? dayAt(step.fromMs) : null);
  const endedOn = dayFrom(history[heldAt] ?? retired) ?? today;
  const hasHeld = heldAt >= 0;
  return {
    days: Math.max(0, dayNumber(endedOn) - dayNumber(dayFrom(history[0]) ?? endedOn)),
    hasHeld,
    isOpen: !hasHeld && retired === undefined,
    hasComeBack: hasHeld && history.slice(heldAt).some(({ state }) => state === "given"),
  };
}
