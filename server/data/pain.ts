import { and, desc, eq, isNull } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { athlete, person, remark, staffRole } from "@/db/schema/people";
import { painClearance, painReport } from "@/db/schema/throwing";
import { clearanceNotice, painNotice } from "@/server/domain/notices/pain-notices";
import { fullName } from "@/server/domain/people/person";
import type { PainKind } from "@/server/domain/throwing/pain";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { newId } from "./new-id";
import { type NoticeText, tellFamily, tellPerson } from "./notices";

/** A report of pain as it is shown, with who gave it. */
export interface ToldPain {
  id: string;
  kind: PainKind;
  feltOn: CalendarDay;
  reportedAtMs: number;
  note: string;
  byName: string;
}

/** A clearance as it is shown, with who gave it. */
export interface ToldClearance {
  id: string;
  symptomFreeSince: CalendarDay;
  clearedAtMs: number;
  examinedBy: string;
  byName: string;
}

const teller = alias(person, "teller");

/** Every report and clearance of an athlete, latest first. Erased words are empty. */
export async function painRecord(
  db: Db,
  athleteId: string,
): Promise<{ reports: ToldPain[]; clearances: ToldClearance[] }> {
  const reports = await db
    .select({
      id: painReport.id,
      kind: painReport.kind,
      feltOn: painReport.feltOn,
      reportedAtMs: painReport.reportedAtMs,
      note: remark.text,
      givenName: teller.givenName,
      familyName: teller.familyName,
    })
    .from(painReport)
    .leftJoin(remark, eq(remark.id, painReport.remarkId))
    .leftJoin(teller, eq(teller.id, painReport.reportedByPersonId))
    .where(eq(painReport.athleteId, athleteId))
    .orderBy(desc(painReport.reportedAtMs), desc(painReport.id));
  const clearances = await db
    .select({
      id: painClearance.id,
      symptomFreeSince: painClearance.symptomFreeSince,
      clearedAtMs: painClearance.clearedAtMs,
      examinedBy: remark.text,
      givenName: teller.givenName,
      familyName: teller.familyName,
    })
    .from(painClearance)
    .leftJoin(remark, eq(remark.id, painClearance.examinedByRemarkId))
    .leftJoin(teller, eq(teller.id, painClearance.clearedByPersonId))
    .where(eq(painClearance.athleteId, athleteId))
    .orderBy(desc(painClearance.clearedAtMs), desc(painClearance.id));
  return {
    reports: reports.map(({ givenName, familyName, note, ...report }) => ({
      ...report,
      note: note ?? "",
      byName: nameOf({ givenName, familyName }),
    })),
    clearances: clearances.map(({ givenName, familyName, examinedBy, ...clearance }) => ({
      ...clearance,
      examinedBy: examinedBy ?? "",
      byName: nameOf({ givenName, familyName }),
    })),
  };
}

/** Tells the family and the coach of pain at once; without a coach, every admin. Goes with `insertPainReport`. */
export async function tellOfPain(
  tx: Db,
  pain: { athleteId: string; kind: PainKind; feltOn: CalendarDay; byName: string },
  nowMs: number,
): Promise<void> {
  const name = await athleteName(tx, pain.athleteId);
  await tellFamilyAndCoach(tx, pain.athleteId, nowMs, painNotice({ ...pain, name }));
}

/** Appends the word that an arm is well again. @param clearance `examinedByRemarkId`: a remark kept before */
export async function insertPainClearance(
  tx: Db,
  clearance: {
    athleteId: string;
    symptomFreeSince: CalendarDay;
    examinedByRemarkId: string;
    clearedByPersonId: string;
    clearedAtMs: number;
  },
): Promise<void> {
  await tx.insert(painClearance).values({ id: newId("pcl"), ...clearance });
}

/** Tells the family and the coach that an arm was cleared. Who examined it is left to the page. */
export async function tellOfClearance(
  tx: Db,
  cleared: { athleteId: string; symptomFreeSince: CalendarDay; byName: string },
  nowMs: number,
): Promise<void> {
  const name = await athleteName(tx, cleared.athleteId);
  await tellFamilyAndCoach(tx, cleared.athleteId, nowMs, clearanceNotice({ ...cleared, name }));
}

/** Tells the family and the coach; without a coach, every admin. */
export async function tellFamilyAndCoach(
  tx: Db,
  athleteId: string,
  nowMs: number,
  text: NoticeText,
): Promise<void> {
  await tellFamily(tx, athleteId, text, nowMs);
  for (const personId of await staffFor(tx, athleteId))
    await tellPerson(tx, personId, text, nowMs, athleteId);
}

/** The athlete's coach; every admin when there is none. */
async function staffFor(db: Db, athleteId: string): Promise<string[]> {
  const [row] = await db
    .select({ coachPersonId: athlete.coachPersonId })
    .from(athlete)
    .where(eq(athlete.id, athleteId));
  if (row?.coachPersonId) return [row.coachPersonId];
  const admins = await db
    .select({ personId: staffRole.personId })
    .from(staffRole)
    .where(and(eq(staffRole.role, "admin"), isNull(staffRole.endedAtMs)));
  return admins.map((admin) => admin.personId);
}

async function athleteName(db: Db, athleteId: string): Promise<string> {
  const [row] = await db
    .select({ givenName: person.givenName, familyName: person.familyName })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(eq(athlete.id, athleteId));
  return nameOf(row ?? { givenName: null, familyName: null });
}

function nameOf(row: { givenName: string | null; familyName: string | null }): string {
  return fullName({ givenName: row.givenName ?? "", familyName: row.familyName ?? "" });
}
