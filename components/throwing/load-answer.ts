import type { LoadOfWeek } from "@/server/domain/throwing/load-by-week";
import type { EffortOfWeek } from "@/server/domain/throwing/load-effort";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** How an arm was loaded, as a procedure answers it: figures and sentences, no verdict. */
export interface LoadAnswer {
  /** How the last day stands; null for an empty log. */
  now: string | null;
  /** The last 28 days on record, latest first. */
  days: readonly { day: CalendarDay; throws: number }[];
  /** Twelve months, earliest first. */
  weeks: readonly LoadOfWeek[];
  effort: readonly EffortOfWeek[];
  year: readonly string[];
  monthsOff: readonly string[];
}
