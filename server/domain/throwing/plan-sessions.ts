import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import type { ArmQuestion } from "./arm-question";
import type { DayWithRoom } from "./best-day";
import { pitchesAllowed } from "./pitches-allowed";

/** What is to be planned: how many sessions, the outing's day, and the first day that can be used. */
export interface PlanWish {
  sessions: number;
  before: CalendarDay;
  from: CalendarDay;
}

/**
 * Sessions before an outing, the latest first, each with as many pitches as the books leave beside the outing, all that
 * is known and the sessions already planned: taken together they break no rule. Fewer than asked for when the days run
 * out; none under a pain stop or where the books have no number of pitches. The outing itself is among `planned`.
 * @example an outing of 60 on Tue 1 Dec at 12 years, two sessions from Wed 25 Nov: 20 on Monday, then none on Sunday …
 */
export function plan(
  question: Omit<ArmQuestion, "day">,
  { sessions, before, from }: PlanWish,
): DayWithRoom[] {
  const found: DayWithRoom[] = [];
  for (let day = addDays(before, -1); day >= from && found.length < sessions; day = addDays(day, -1)) {
    const pitches = roomOn(question, day, found);
    if (pitches === 0) continue;
    const together = [...found, { day, pitches }];
    if (found.every((each) => roomOn(question, each.day, together) >= each.pitches))
      found.push({ day, pitches });
  }
  return found;
}

/**
 * The room on a day beside the sessions of other days. A book says nothing on a day that none of its counts covers, and
 * yet a throw then can be the one too many in a row for a later day: so those found before are asked again.
 */
function roomOn(question: Omit<ArmQuestion, "day">, day: CalendarDay, found: readonly DayWithRoom[]): number {
  const others = found.filter((each) => each.day !== day).map(asPlanned);
  return pitchesAllowed({ ...question, planned: [...question.planned, ...others], day }).pitches ?? 0;
}

/* Weighed as mound work that always counts, whatever the academy's reading: a plan is on the cautious side. */
function asPlanned({ day, pitches }: DayWithRoom) {
  return { id: `proposed ${day}`, plannedOn: day, kind: "live_at_bats" as const, pitches, teamId: null };
}
