import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayNumber, dayOfNumber } from "@/server/domain/time/day-number";
import { daysOn, type TimeAxis } from "./time-axis";

/** The least that is shown at once, in days. */
export const LEAST_WINDOW_DAYS = 28;

/** So many days of a whole, from a day on; moved within it where it would run over, and never more than there is. */
function windowFrom(whole: TimeAxis, startDay: CalendarDay, days: number): TimeAxis {
  const [first, end] = [dayNumber(whole.startDay), dayNumber(whole.endDay)];
  const length = Math.min(Math.max(days, LEAST_WINDOW_DAYS), Math.max(end - first, 1));
  const start = Math.max(first, Math.min(dayNumber(startDay), end - length));
  return { startDay: dayOfNumber(start), endDay: dayOfNumber(start + length) };
}

/**
 * A window narrowed or widened about a day, which keeps its place in it.
 * @param factor 0.5 shows half as many days, 2 twice as many; never fewer than 28 or more than the whole
 */
export function zoomed(axis: TimeAxis, whole: TimeAxis, factor: number, about: CalendarDay): TimeAxis {
  const days = daysOn(axis);
  const length = Math.min(Math.max(Math.round(days * factor), LEAST_WINDOW_DAYS), daysOn(whole));
  const before = dayNumber(about) - dayNumber(axis.startDay);
  const start = dayNumber(about) - Math.round((before * length) / days);
  return windowFrom(whole, dayOfNumber(start), length);
}

/** A window moved by half of itself: -1 earlier, 1 later. */
export function moved(axis: TimeAxis, whole: TimeAxis, way: -1 | 1): TimeAxis {
  const half = Math.max(1, Math.round(daysOn(axis) / 2));
  return windowFrom(whole, dayOfNumber(dayNumber(axis.startDay) + way * half), daysOn(axis));
}

/** The window itself where it holds the day, else moved until the day stands in its middle. */
export function holding(axis: TimeAxis, whole: TimeAxis, day: CalendarDay): TimeAxis {
  if (day >= axis.startDay && day < axis.endDay) return axis;
  const start = dayNumber(day) - Math.floor(daysOn(axis) / 2);
  return windowFrom(whole, dayOfNumber(start), daysOn(axis));
}

/** The part of a whole from a day on. */
export function since(whole: TimeAxis, day: CalendarDay): TimeAxis {
  const first = Math.max(dayNumber(day), dayNumber(whole.startDay));
  return windowFrom(whole, dayOfNumber(first), dayNumber(whole.endDay) - first);
}

/** Whether nothing is left out of a window. */
export function isWhole(axis: TimeAxis, whole: TimeAxis): boolean {
  return axis.startDay <= whole.startDay && axis.endDay >= whole.endDay;
}
