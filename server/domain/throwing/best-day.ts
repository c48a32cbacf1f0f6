import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type DayNumber, dayNumber, dayOfNumber } from "@/server/domain/time/day-number";
import type { ArmQuestion } from "./arm-question";
import { type Arm, layOut, weighDay } from "./weigh-day";

/** A day with room, and at most how many pitches the books leave on it. */
export interface DayWithRoom {
  day: CalendarDay;
  pitches: number;
}

/**
 * The day of a window, both ends included, that suits a number of pitches best: of the days with room for it the one on
 * which the books leave most; of those the one furthest from other pitching, then the earliest (own). Null when none has
 * room, and where the books have no number of pitches.
 * @param pitches 1 or more
 */
export function bestDay(
  question: Omit<ArmQuestion, "day">,
  pitches: number,
  { from, to }: { from: CalendarDay; to: CalendarDay },
): DayWithRoom | null {
  const arm = layOut(question);
  let best: { day: DayNumber; pitches: number; away: number } | null = null;
  const last = dayNumber(to);
  for (let day = dayNumber(from); day <= last; day += 1) {
    const room = weighDay(arm, day).pitches;
    if (room < pitches || room === Number.POSITIVE_INFINITY) continue;
    const away = daysAway(arm, day);
    if (!best || room > best.pitches || (room === best.pitches && away > best.away)) {
      best = { day, pitches: room, away };
    }
  }
  return best && { day: dayOfNumber(best.day), pitches: best.pitches };
}

function daysAway({ view }: Arm, day: DayNumber): number {
  return Math.min(...view.pitchedOn.map((pitched) => Math.abs(pitched - day)));
}
