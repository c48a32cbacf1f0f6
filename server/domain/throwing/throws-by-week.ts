import { addDays, type CalendarDay, weekdayOf } from "@/server/domain/time/calendar-day";
import { currentEntries, type ThrowEntry, type ThrowKind } from "./throw-entry";

/** What throws are added up by over a season: four groups, so that a drawing can tell them apart without colour. */
export const THROW_GROUPS = ["games", "bullpens", "lessons", "other"] as const;

/** One of {@link THROW_GROUPS}. */
export type ThrowGroup = (typeof THROW_GROUPS)[number];

/** The groups as they are written on a screen. */
export const THROW_GROUP_WORDS: Record<ThrowGroup, string> = {
  games: "Games and live at-bats",
  bullpens: "Bullpens",
  lessons: "Lessons",
  other: "Flat ground, long toss, weighted balls",
};

const GROUP_OF: Record<ThrowKind, ThrowGroup> = {
  game: "games",
  live_at_bats: "games",
  showcase: "games",
  bullpen: "bullpens",
  lesson: "lessons",
  flat_ground: "other",
  long_toss: "other",
  weighted_balls: "other",
};

/** Throws of one week by group; `weekOf` is its Monday. */
export interface WeekOfThrows {
  weekOf: CalendarDay;
  counts: Record<ThrowGroup, number>;
}

/**
 * The throws of every week from the one that holds `fromDay` to the one that holds `toDay`, both included, earliest
 * first; a week without throws is there with zeros. Replaced rows and days outside those weeks are left out.
 * @example from Wed 25 Nov 2026 to the same day: one week of Mon 23 Nov 2026
 */
export function throwsByWeek(
  entries: readonly ThrowEntry[],
  fromDay: CalendarDay,
  toDay: CalendarDay,
): WeekOfThrows[] {
  const weeks = new Map<CalendarDay, WeekOfThrows>();
  for (let weekOf = mondayOf(fromDay); weekOf <= toDay; weekOf = addDays(weekOf, 7)) {
    weeks.set(weekOf, { weekOf, counts: { games: 0, bullpens: 0, lessons: 0, other: 0 } });
  }
  for (const entry of currentEntries(entries)) {
    const week = weeks.get(mondayOf(entry.thrownOn));
    if (week) week.counts[GROUP_OF[entry.kind]] += entry.pitches;
  }
  return [...weeks.values()];
}

/** Whether throws of the kind are an outing: a game, live at-bats or a showcase. */
export function isOutingKind(kind: ThrowKind): boolean {
  return GROUP_OF[kind] === "games";
}

/** The Monday of the week that holds a day. */
export function mondayOf(day: CalendarDay): CalendarDay {
  return addDays(day, 1 - weekdayOf(day));
}
