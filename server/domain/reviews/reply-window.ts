import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";

/** When a reply is asked for. All null while nobody knows when the arm may throw again. */
export interface ReplyWindow {
  /** The first day a reply is asked for. */
  replyFrom: CalendarDay | null;
  /** The last day on which a reply still comes into the same round. */
  dueOn: CalendarDay | null;
  /** The first day on which the round has lapsed. */
  lapsesOn: CalendarDay | null;
}

/**
 * When a reply is asked for after a review. It is due the academy's span after the day of sending, and neither asked
 * for nor due before the arm's first free day.
 * @param facts.armFreeOn the first day the book leaves the arm free; null while pain stops all throwing
 * @example sent 1 Nov, span 21 days, arm free 4 Nov: asked for from 4 Nov, due 22 Nov, lapses 23 Nov
 */
export function replyWindow(facts: {
  sentOn: CalendarDay;
  spanDays: number;
  armFreeOn: CalendarDay | null;
}): ReplyWindow {
  if (facts.armFreeOn === null) return { replyFrom: null, dueOn: null, lapsesOn: null };
  const replyFrom = later(facts.sentOn, facts.armFreeOn);
  const dueOn = later(addDays(facts.sentOn, facts.spanDays), replyFrom);
  return { replyFrom, dueOn, lapsesOn: addDays(dueOn, 1) };
}

/** Whether a round has lapsed by the start of a day. Without a day to lapse on it never has. */
export function hasLapsed(lapsesOn: CalendarDay | null, today: CalendarDay): boolean {
  return lapsesOn !== null && today >= lapsesOn;
}

/** ISO days compare as text. */
function later(a: CalendarDay, b: CalendarDay): CalendarDay {
  return a > b ? a : b;
}
