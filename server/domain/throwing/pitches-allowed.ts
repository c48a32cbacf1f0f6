import { type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { type DayNumber, dayNumber, dayOfNumber } from "@/server/domain/time/day-number";
import { adviceOn } from "./advice-on";
import type { ArmQuestion, PitchesAllowed } from "./arm-question";
import { currentEntries } from "./throw-entry";
import { type Arm, answerOf, layOut, weighDay } from "./weigh-day";

export type { ArmQuestion, LimitOverride, PitchesAllowed } from "./arm-question";

/**
 * How many pitches the books leave one arm on one day, looking both ways: rest owed by what was thrown before, and rest
 * that what is planned later will need. Counted in calendar days only, so clock changes and leap days do not matter; the
 * age on each day decides that day's row. Of several books the strictest answers, and every one of them weighs all
 * throws of the arm.
 * @example A 12-year-old who threw 51 on Wed 25 Nov rests until Sun 29 Nov; with an outing on Tue 1 Dec that Sunday
 * has room for at most 35.
 */
export function pitchesAllowed(question: ArmQuestion): PitchesAllowed {
  const arm = layOut(question);
  const day = dayNumber(question.day);
  const weighed = weighDay(arm, day);
  return {
    ...answerOf(arm, weighed, question.day),
    day: question.day,
    firstFreeDay: weighed.pitches === 0 ? firstFree(arm, day, 1) : null,
    nothingReportedSince: nothingReportedSince(question),
    warnings: question.pain ? [] : adviceOn(arm, weighed, question.day),
  };
}

/**
 * The first day from `question.day` on, that day included, with room for this many pitches more; null under a pain
 * stop, when the books have no limit for the age by then, or when even a rested arm with nothing planned has not.
 * @param pitches 1 or more
 */
export function firstDayWithRoom(question: ArmQuestion, pitches: number): CalendarDay | null {
  return firstFree(layOut(question), dayNumber(question.day), pitches);
}

function firstFree(arm: Arm, from: DayNumber, pitches: number): CalendarDay | null {
  if (arm.question.pain) return null;
  const lastKnown = Math.max(from, arm.view.pitchedOn.at(-1) ?? from, ...arm.overrideOn.keys());
  // Past the last load by the longest reach of any rule nothing can hold the arm any more.
  const lastDay = lastKnown + Math.max(...arm.books.map(({ dated }) => dated.reachDays)) + 1;
  for (let day = from; day <= lastDay; day += 1) {
    const weighed = weighDay(arm, day);
    if (weighed.status === "no_published_limit") return null;
    if (weighed.pitches >= pitches) return dayOfNumber(day);
  }
  return null;
}

function nothingReportedSince(question: ArmQuestion): CalendarDay | null {
  let last = question.lastReportedOn;
  for (const { thrownOn } of currentEntries(question.entries)) if (thrownOn > last) last = thrownOn;
  const silentDays = Math.min(daysBetween(last, question.day), daysBetween(last, question.today));
  return silentDays > question.reading.askAfterDays ? last : null;
}
