import { type CalendarDay, instantOf, type MinuteOfDay, weekdayOf } from "@/server/domain/time/calendar-day";
import type { SessionRoom } from "./arm-room";

/** When the family would like to come: ISO weekdays (none named means any), and a span of the site's wall clock. */
export interface FamilyWish {
  weekdays: readonly number[];
  fromMin: MinuteOfDay;
  toMin: MinuteOfDay;
}

/** What speaks for a time, or what to know about it. */
export const TIME_REASONS = ["full_room", "fewer_pitches", "same_coach", "family_wish"] as const;
export type TimeReason = (typeof TIME_REASONS)[number];

/** A time that fits everyone, with the lane to take and the room that the book leaves. */
export interface FoundTime {
  day: CalendarDay;
  startsAtMs: number;
  endsAtMs: number;
  siteId: string;
  laneId: string;
  coachId: string;
  room: SessionRoom;
  reasons: TimeReason[];
}

/** What makes one time better than another. */
export interface TimePreferences {
  preferredCoachId: string | null;
  wish: FamilyWish | null;
}

/** What speaks for a time that fits, in the order of {@link TIME_REASONS}. `zone` is the site's. */
export function reasonsFor(
  time: Omit<FoundTime, "reasons">,
  preferences: TimePreferences,
  zone: string,
): TimeReason[] {
  const isShort = time.room.status === "at_most" && !time.room.holdsPlanned;
  const reasons: TimeReason[] = [isShort ? "fewer_pitches" : "full_room"];
  if (time.coachId === preferences.preferredCoachId) reasons.push("same_coach");
  if (preferences.wish !== null && isWished(preferences.wish, time, zone)) reasons.push("family_wish");
  return reasons;
}

const RANKED_REASONS = ["full_room", "same_coach", "family_wish"] as const satisfies readonly TimeReason[];

/**
 * The best `limit` times, best first, at most `limitPerDay` of one day: by each ranked reason in turn, then the
 * earliest; equals keep their order.
 */
export function bestFirst(times: readonly FoundTime[], limit: number, limitPerDay: number): FoundTime[] {
  const ranked = [...times].sort((a, b) => {
    const deciding = RANKED_REASONS.find(
      (reason) => a.reasons.includes(reason) !== b.reasons.includes(reason),
    );
    if (deciding !== undefined) return a.reasons.includes(deciding) ? -1 : 1;
    return a.startsAtMs - b.startsAtMs;
  });
  const perDay = new Map<CalendarDay, number>();
  const spread = ranked.filter(({ day }) => {
    const place = (perDay.get(day) ?? 0) + 1;
    perDay.set(day, place);
    return place <= limitPerDay;
  });
  return spread.slice(0, limit);
}

function isWished(wish: FamilyWish, time: Omit<FoundTime, "reasons">, zone: string): boolean {
  if (wish.weekdays.length > 0 && !wish.weekdays.includes(weekdayOf(time.day))) return false;
  const fromMs = instantOf(time.day, wish.fromMin, zone);
  return fromMs <= time.startsAtMs && time.endsAtMs <= instantOf(time.day, wish.toMin, zone);
}
