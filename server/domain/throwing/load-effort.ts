import { addDays, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { mondayOf } from "./throws-by-week";

/** The hardest an effort can be: the ten-point scale of Foster et al. 2001 (J Strength Cond Res 15:109-115). */
export const MAX_EFFORT = 10;

/** A session that an athlete came to. */
export interface SessionEffort {
  heldOn: CalendarDay;
  minutes: number;
  /** 0 to 10, the athlete's own word; null when it was not asked. */
  effort: number | null;
}

/** How one week of sessions was, by effort times minutes; null where there is no honest figure. */
export interface EffortOfWeek {
  /** The Monday that the week begins with. */
  weekOf: CalendarDay;
  sessions: number;
  /** Sessions whose effort was not asked: with any, the week has no figures. */
  withoutEffort: number;
  load: number | null;
  monotony: number | null;
  strain: number | null;
}

/** What {@link weekEffort} makes of seven daily loads. */
export type EffortFigures = Pick<EffortOfWeek, "load" | "monotony" | "strain">;

/**
 * Load, monotony and strain of seven daily loads (Foster 1998, Med Sci Sports Exerc 30:1164-1168; Foster et al. 2001,
 * J Strength Cond Res 15:109-115; the formulas from memory): the week's load is their sum, monotony their mean over
 * their standard deviation, strain load times monotony. The papers leave open which deviation; this is the sample's
 * (n - 1). Seven equal days deviate by 0: monotony and strain are blank.
 * @param loads one a day, effort times minutes; whole numbers
 * @example weekEffort([300, 450, 0, 360, 240, 540, 0]) // load 1890, monotony 1.29, strain 2447
 */
export function weekEffort(loads: readonly number[]): EffortFigures {
  const load = loads.reduce((sum, each) => sum + each, 0);
  if (loads.every((each) => each === loads[0])) return { load, monotony: null, strain: null };
  const mean = load / loads.length;
  const squares = loads.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const monotony = mean / Math.sqrt(squares / (loads.length - 1));
  return { load, monotony, strain: load * monotony };
}

/**
 * The weeks that are over and hold a session whose effort was asked, earliest first. Weeks begin on Monday (ISO 8601);
 * a day without a session is 0. Only sessions are in it: games and throwing at home have no minutes on the log.
 */
export function effortByWeek(sessions: readonly SessionEffort[], today: CalendarDay): EffortOfWeek[] {
  const weeks = new Map<CalendarDay, SessionEffort[]>();
  for (const session of sessions) {
    const weekOf = mondayOf(session.heldOn);
    if (addDays(weekOf, 6) >= today) continue;
    weeks.set(weekOf, [...(weeks.get(weekOf) ?? []), session]);
  }
  return [...weeks]
    .filter(([, held]) => held.some((session) => session.effort !== null))
    .map(([weekOf, held]) => effortOf(weekOf, held))
    .sort((a, b) => daysBetween(b.weekOf, a.weekOf));
}

function effortOf(weekOf: CalendarDay, held: readonly SessionEffort[]): EffortOfWeek {
  const loads = [0, 0, 0, 0, 0, 0, 0];
  let withoutEffort = 0;
  for (const { heldOn, minutes, effort } of held) {
    const index = daysBetween(weekOf, heldOn);
    if (effort === null) withoutEffort += 1;
    else loads[index] = (loads[index] ?? 0) + effort * minutes;
  }
  const figures = withoutEffort === 0 ? weekEffort(loads) : { load: null, monotony: null, strain: null };
  return { weekOf, sessions: held.length, withoutEffort, ...figures };
}
