import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import type { PainStop } from "@/server/domain/throwing/pain";
import { firstDayWithRoom, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import {
  CAUTIOUS_READING,
  type PlannedThrows,
  type ThrowEntry,
  type ThrowKind,
} from "@/server/domain/throwing/throw-entry";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";

/** One arm's throws as they are laid down, past and planned, in no order. */
export interface Arm {
  bornOn: CalendarDay;
  today: CalendarDay;
  entries: ThrowEntry[];
  planned: PlannedThrows[];
  /** Days that stay free of throws, for a story of their own; both bounds included. */
  blocked: { from: CalendarDay; to: CalendarDay }[];
}

/** Nothing further away than this touches a day: the longest rest and the longest row of days, with some to spare. */
const REACH_DAYS = 9;
const NO_PAIN: PainStop | null = null;
const READ_CAUTIOUSLY = {
  books: [USA_BASEBALL_2018] as const,
  overrides: [],
  reading: CAUTIOUS_READING,
};

/** At most how many pitches the book leaves on a day given all that is laid down before and after; 0 on a blocked day. */
export function roomOn(arm: Arm, day: CalendarDay): number {
  if (arm.blocked.some(({ from, to }) => from <= day && day <= to)) return 0;
  return pitchesAllowed(questionAbout(arm, day)).pitches ?? 0;
}

/** The first day from `day` on that is free for a pitch, as far as was known on that day. */
export function freeFrom(arm: Arm, day: CalendarDay): CalendarDay {
  const entries = arm.entries.filter((entry) => entry.thrownOn <= day);
  return firstDayWithRoom({ ...questionAbout({ ...arm, entries, planned: [] }, day) }, 1) ?? day;
}

/** Counted pitches laid down on a day by kind and origin, so that a clip can name the outing it was filmed in. */
export function thrownOn(arm: Arm, day: CalendarDay): number {
  const counted: readonly ThrowKind[] = ["game", "bullpen", "lesson"];
  return arm.entries
    .filter((entry) => entry.thrownOn === day && counted.includes(entry.kind))
    .reduce((sum, entry) => sum + entry.pitches, 0);
}

/** All that is laid down for an arm, for the book to look at every plan of it from a day on. */
export function plansOf(arm: Arm, { today, pain }: { today: CalendarDay; pain: PainStop | null }) {
  return { ...READ_CAUTIOUSLY, ...arm, today, pain, lastReportedOn: today };
}

function questionAbout(arm: Arm, day: CalendarDay) {
  const from = addDays(day, -REACH_DAYS);
  const to = addDays(day, REACH_DAYS);
  return {
    ...READ_CAUTIOUSLY,
    day,
    bornOn: arm.bornOn,
    today: arm.today,
    pain: NO_PAIN,
    lastReportedOn: day,
    entries: arm.entries.filter((entry) => from <= entry.thrownOn && entry.thrownOn <= to),
    planned: arm.planned.filter((plan) => from <= plan.plannedOn && plan.plannedOn <= to),
  };
}
