import type { SeasonSpan } from "@/server/domain/season-reports/season-span";
import { isCalendarDay } from "@/server/domain/time/calendar-day";

/**
 * The span that an address asks for; null unless both of its days are days of the calendar.
 * @example askedSpan({ from: "2026-01-01", to: "2026-06-30" })
 */
export function askedSpan({
  from,
  to,
}: {
  from?: string | string[] | undefined;
  to?: string | string[] | undefined;
}): SeasonSpan | null {
  if (typeof from !== "string" || typeof to !== "string") return null;
  return isCalendarDay(from) && isCalendarDay(to) ? { fromOn: from, toOn: to } : null;
}
