import { and, asc, eq, gt, inArray } from "drizzle-orm";
import type { Db } from "@/db/client";
import { coachAbsence, coachHours } from "@/db/schema/coaches";
import type { WeekSpan } from "@/server/domain/time/week-problem";
import { newId } from "./new-id";
import { listStaff } from "./people-list";

/** A span of a coach's week at one site. */
export interface CoachSpan extends WeekSpan {
  siteId: string;
}

/** A coach with their week and the absences that end after an instant. */
export interface CoachWeek {
  personId: string;
  givenName: string;
  familyName: string;
  week: CoachSpan[];
  absences: { absenceId: string; startsAtMs: number; endsAtMs: number }[];
}

/** Every coach by name, with the absences that end after `fromMs`. */
export async function listCoachWeeks(db: Db, fromMs: number): Promise<CoachWeek[]> {
  const coaches = await listStaff(db, "coach");
  const ids = coaches.map((coach) => coach.personId);
  const spans = await db
    .select()
    .from(coachHours)
    .where(inArray(coachHours.coachPersonId, ids))
    .orderBy(asc(coachHours.weekday), asc(coachHours.startsMin));
  const absences = await db
    .select()
    .from(coachAbsence)
    .where(and(inArray(coachAbsence.coachPersonId, ids), gt(coachAbsence.endsAtMs, fromMs)))
    .orderBy(asc(coachAbsence.startsAtMs));
  return coaches.map((coach) => ({
    ...coach,
    week: spans
      .filter((span) => span.coachPersonId === coach.personId)
      .map(({ siteId, weekday, startsMin, endsMin }) => ({ siteId, weekday, startsMin, endsMin })),
    absences: absences
      .filter((absence) => absence.coachPersonId === coach.personId)
      .map(({ id: absenceId, startsAtMs, endsAtMs }) => ({ absenceId, startsAtMs, endsAtMs })),
  }));
}

/** Replaces the weekly hours of a coach. */
export async function saveCoachWeek(
  tx: Db,
  coachPersonId: string,
  week: readonly CoachSpan[],
): Promise<void> {
  await tx.delete(coachHours).where(eq(coachHours.coachPersonId, coachPersonId));
  for (const { siteId, weekday, startsMin, endsMin } of week) {
    await tx
      .insert(coachHours)
      .values({ id: newId("chr"), coachPersonId, siteId, weekday, startsMin, endsMin });
  }
}

/** Writes down when a coach is away, `[startMs, endMs)`. */
export async function insertAbsence(
  tx: Db,
  coachPersonId: string,
  span: { startMs: number; endMs: number },
): Promise<void> {
  const { startMs: startsAtMs, endMs: endsAtMs } = span;
  await tx.insert(coachAbsence).values({ id: newId("abs"), coachPersonId, startsAtMs, endsAtMs });
}

/** Takes an absence back. @returns false when there is none by that id */
export async function deleteAbsence(tx: Db, absenceId: string): Promise<boolean> {
  const gone = await tx
    .delete(coachAbsence)
    .where(eq(coachAbsence.id, absenceId))
    .returning({ id: coachAbsence.id });
  return gone.length === 1;
}
