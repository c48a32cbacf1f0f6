import { desc, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { person, remark } from "@/db/schema/people";
import { seasonReport } from "@/db/schema/season-reports";
import type { SeasonSpan } from "@/server/domain/season-reports/season-span";
import { newId } from "./new-id";
import { keepRemark } from "./remarks";

/** What a coach wrote into a report; empty words were erased. */
export interface WrittenReport extends SeasonSpan {
  id: string;
  focus: string;
  byGivenName: string;
  byFamilyName: string;
  writtenAtMs: number;
}

/** All that was written into an athlete's reports, the latest first. */
export async function writtenReportsOf(db: Db, athleteId: string): Promise<WrittenReport[]> {
  const rows = await db
    .select({
      id: seasonReport.id,
      fromOn: seasonReport.fromOn,
      toOn: seasonReport.toOn,
      focus: remark.text,
      byGivenName: person.givenName,
      byFamilyName: person.familyName,
      writtenAtMs: seasonReport.writtenAtMs,
    })
    .from(seasonReport)
    .leftJoin(remark, eq(remark.id, seasonReport.focusRemarkId))
    .innerJoin(person, eq(person.id, seasonReport.writtenByPersonId))
    .where(eq(seasonReport.athleteId, athleteId))
    .orderBy(desc(seasonReport.writtenAtMs), desc(seasonReport.id));
  return rows.map((row) => ({ ...row, focus: row.focus ?? "" }));
}

/** Appends what a coach writes of a span. @returns its id */
export async function appendSeasonReport(
  tx: Db,
  written: SeasonSpan & { athleteId: string; focus: string; writtenByPersonId: string; writtenAtMs: number },
): Promise<string> {
  const { focus, ...row } = written;
  const id = newId("spr");
  await tx.insert(seasonReport).values({ id, ...row, focusRemarkId: await keepRemark(tx, focus) });
  return id;
}
