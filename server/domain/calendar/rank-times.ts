import { type CalendarDay, instantOf, type MinuteOfDay, weekdayOf } from "@/server/domain/time/calendar-day";
import type { Interval } from "@/server/domain/time/open-hours";
import type { SessionRoom } from "./arm-room";
import { isWithin } from "./intervals";

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

/**
 * What the family's wish comes to on one day at a site: the span that a session should lie within, or null when the
 * day is not wished for.
 */
export function wishedSpan(wish: FamilyWish | null, day: CalendarDay, zone: string): Interval | null {
  if (wish === null) return null;
  if (wish.weekdays.length > 0 && !wish.weekdays.includes(weekdayOf(day))) return null;
  return { startMs: instantOf(day, wish.fromMin, zone), endMs: instantOf(day, wish.toMin, zone) };
}

/** What speaks for a time that fits, in the order of {@link TIME_REASONS}. */
export function reasonsFor(
  time: Omit<FoundTime, "reasons">,
  preferredCoachId: string | null,
  wished: Interval | null,
): TimeReason[] {
  const isShort = time.room.status === "at_most" && !time.room.holdsPlanned;
  const reasons: TimeReason[] = [isShort ? "fewer_pitches" : "full_room"];
  if (time.coachId === preferredCoachId) reasons.push("same_coach");
  if (wished !== null && isWithin([wished], time.startsAtMs, time.endsAtMs)) reasons.push("family_wish");
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
