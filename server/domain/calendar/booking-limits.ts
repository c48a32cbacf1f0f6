import { addDays, dayOf } from "@/server/domain/time/calendar-day";

/** How soon and how far ahead somebody may book. */
export interface BookingLimits {
  /** Minutes a start must lie ahead; 0 books on the spot. */
  noticeMin: number;
  /** Days ahead, the last one included. */
  horizonDays: number;
}

/** How far ahead staff may book, in days: as far as an academy can set it for families. */
export const STAFF_HORIZON_DAYS = 400;

/** Families keep the academy's notice and horizon; staff book on the spot and as far ahead as there is. */
export function bookingLimits(
  settings: { bookingNoticeMin: number; bookingHorizonDays: number },
  isStaff: boolean,
): BookingLimits {
  if (isStaff) return { noticeMin: 0, horizonDays: STAFF_HORIZON_DAYS };
  return { noticeMin: settings.bookingNoticeMin, horizonDays: settings.bookingHorizonDays };
}

/**
 * Whether a start lies beyond the horizon, by the site's calendar: the last day of it may still be booked.
 * @example isTooFarAhead(startOn("2027-01-25"), { noticeMin: 0, horizonDays: 60 }, startOn("2026-11-25"), zone) // true
 */
export function isTooFarAhead(
  startsAtMs: number,
  limits: BookingLimits,
  nowMs: number,
  zone: string,
): boolean {
  return dayOf(startsAtMs, zone) > addDays(dayOf(nowMs, zone), limits.horizonDays);
}
