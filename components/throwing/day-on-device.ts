import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";

/**
 * Today by the device's own clock and zone, for the one page that has no other. The academy holds the day against the
 * athlete's home site when the entry arrives.
 */
export function dayOnDevice(
  nowMs: number = Date.now(),
  zone: string = Intl.DateTimeFormat().resolvedOptions().timeZone,
): CalendarDay {
  return dayOf(nowMs, zone);
}
