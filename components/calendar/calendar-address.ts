import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";

/** The two ways to look at the calendar. */
export type CalendarView = "day" | "week";

/** Where one is in the calendar. */
export interface CalendarPlace {
  view: CalendarView;
  day: CalendarDay;
  /** Null for all sites. */
  siteId: string | null;
}

/**
 * The address of a place in the calendar.
 * @example calendarHref({ view: "week", day: "2026-12-01", siteId: null }) // "/calendar?view=week&day=2026-12-01"
 */
export function calendarHref({ view, day, siteId }: CalendarPlace): string {
  const query = new URLSearchParams({
    ...(view === "week" ? { view } : {}),
    day,
    ...(siteId === null ? {} : { site: siteId }),
  });
  return `/calendar?${query}`;
}

/** The place one step before (-1) or after (1): a day, or a week. */
export function stepped(place: CalendarPlace, steps: -1 | 1): CalendarPlace {
  return { ...place, day: addDays(place.day, steps * (place.view === "week" ? 7 : 1)) };
}
