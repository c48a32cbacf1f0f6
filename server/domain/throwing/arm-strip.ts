import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayNumber } from "@/server/domain/time/day-number";
import type { ArmQuestion, PitchesAllowed } from "./arm-question";
import { layOut, weighDay } from "./weigh-day";

/** One day of a strip; `pitches` and `outs` as {@link pitchesAllowed} answers them. */
export interface StripDay {
  status: PitchesAllowed["status"];
  pitches: number | null;
  outs: number | null;
  /** Whether the number is an admin's, and not the books' own. */
  isOverridden: boolean;
}

/**
 * What the books leave an arm on each day from `from` to `to`, both included, in order: the numbers of `pitchesAllowed`
 * without their reasons, with the log laid out once. Empty when `to` is before `from`.
 */
export function armStrip(
  question: Omit<ArmQuestion, "day">,
  { from, to }: { from: CalendarDay; to: CalendarDay },
): StripDay[] {
  const arm = layOut(question);
  const strip: StripDay[] = [];
  const last = dayNumber(to);
  for (let day = dayNumber(from); day <= last; day += 1) {
    const { status, pitches, outs, override } = weighDay(arm, day);
    strip.push({
      status,
      pitches: finite(pitches),
      outs: status === "pain" ? null : finite(outs),
      isOverridden: override !== null,
    });
  }
  return strip;
}

function finite(number: number): number | null {
  return number === Number.POSITIVE_INFINITY ? null : number;
}
