import type { Relation } from "../access/relation";
import { OF_AGE_YEARS } from "../people/person";
import { type CalendarDay, isCalendarDay } from "../time/calendar-day";

/** What stops an arm: pain, or fatigue that is not the usual. */
export const PAIN_KINDS = ["pain", "unusual_fatigue"] as const;

/** One of {@link PAIN_KINDS}. */
export type PainKind = (typeof PAIN_KINDS)[number];

/** The longest name or note of who examined the arm, in characters; common practice, no source. */
export const EXAMINED_BY_MAX_LENGTH = 200;

/** A report by anyone. `feltOn` is a day at the athlete's home site. */
export interface PainReport {
  id: string;
  kind: PainKind;
  feltOn: CalendarDay;
  reportedAtMs: number;
}

/** A clearance ends every report made before it. */
export interface PainClearance {
  clearedAtMs: number;
}

/** An arm that is stopped: the first and the last day it was felt and nobody has cleared, and the reports. */
export interface PainStop {
  kind: PainKind;
  firstFeltOn: CalendarDay;
  lastFeltOn: CalendarDay;
  reportIds: string[];
}

/**
 * The stop an arm is under, or null. A report is cleared only by a clearance made after it (a tie leaves it
 * standing), so pain reported late, about a day before the clearance, stops the arm again. Pain outweighs fatigue.
 */
export function painStop(record: {
  reports: readonly PainReport[];
  clearances: readonly PainClearance[];
}): PainStop | null {
  const clearedAtMs = Math.max(...record.clearances.map((clearance) => clearance.clearedAtMs));
  const standing = record.reports
    .filter((report) => report.reportedAtMs >= clearedAtMs)
    .toSorted((a, b) => a.feltOn.localeCompare(b.feltOn));
  const first = standing.at(0);
  const last = standing.at(-1);
  if (!first || !last) return null;
  return {
    kind: standing.some((report) => report.kind === "pain") ? "pain" : "unusual_fatigue",
    firstFeltOn: first.feltOn,
    lastFeltOn: last.feltOn,
    reportIds: standing.map((report) => report.id),
  };
}

/**
 * Whether someone in this relation to the athlete may clear the stop: the guardian of a minor, an athlete of age for
 * themselves, and nobody else. A coach or an admin as such never may, nor a guardian whom an athlete of age lets look
 * on.
 * @param who `ageYears`: the athlete's completed years on the day of clearing
 * @example mayClear({ relation: "guardian", ageYears: 12 }) // true
 */
export function mayClear(who: { relation: Relation; ageYears: number }): boolean {
  return who.relation === (who.ageYears >= OF_AGE_YEARS ? "self_of_age" : "guardian");
}

/** Why a clearance cannot stand, with the facts its sentence needs. */
export type ClearanceRefusal =
  | { field: "symptomFreeSince"; reason: "not_a_day" }
  | { field: "symptomFreeSince"; reason: "in_the_future"; today: CalendarDay }
  | { field: "symptomFreeSince"; reason: "before_the_report"; feltOn: CalendarDay }
  | { field: "examinedBy"; reason: "missing" }
  | { field: "examinedBy"; reason: "too_long"; maxLength: number };

/**
 * What is wrong with a clearance; empty when nothing is. The day without symptoms is neither after today nor before
 * the last day it was felt; someone examined the arm.
 */
export function clearanceRefusals(
  clearance: { symptomFreeSince: CalendarDay; examinedBy: string },
  stop: PainStop,
  today: CalendarDay,
): ClearanceRefusal[] {
  const { symptomFreeSince } = clearance;
  const examinedBy = clearance.examinedBy.trim();
  const refusals: ClearanceRefusal[] = [];
  if (!isCalendarDay(symptomFreeSince)) {
    refusals.push({ field: "symptomFreeSince", reason: "not_a_day" });
  } else if (symptomFreeSince > today) {
    refusals.push({ field: "symptomFreeSince", reason: "in_the_future", today });
  } else if (symptomFreeSince < stop.lastFeltOn) {
    refusals.push({
      field: "symptomFreeSince",
      reason: "before_the_report",
      feltOn: stop.lastFeltOn,
    });
  }
  if (examinedBy === "") refusals.push({ field: "examinedBy", reason: "missing" });
  if (examinedBy.length > EXAMINED_BY_MAX_LENGTH) {
    refusals.push({ field: "examinedBy", reason: "too_long", maxLength: EXAMINED_BY_MAX_LENGTH });
  }
  return refusals;
}
