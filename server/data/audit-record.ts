import { count, desc, eq, inArray } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, auditLog, person } from "@/db/schema/people";

/** One act as the record shows it; names are looked up as they are now. */
export interface RecordedAct {
  sequence: number;
  atMs: number;
  actorName: string | null;
  action: string;
  subjectId: string;
  subjectName: string | null;
  facts: Record<string, string | number | boolean | null>;
}

/** One page of the audit log, latest first, with the number of all. */
export async function listActs(
  db: Db,
  page: { limit: number; offset: number },
): Promise<{ rows: RecordedAct[]; total: number }> {
  const found = await db
    .select()
    .from(auditLog)
    .orderBy(desc(auditLog.sequence))
    .limit(page.limit)
    .offset(page.offset);
  const [all] = await db.select({ total: count() }).from(auditLog);
  const names = await namesOf(
    db,
    found.flatMap((row) => [row.subjectId, ...(row.actorPersonId ? [row.actorPersonId] : [])]),
  );
  const rows = found.map((row) => ({
    sequence: row.sequence,
    atMs: row.atMs,
    actorName: row.actorPersonId ? (names.get(row.actorPersonId) ?? null) : null,
    action: row.action,
    subjectId: row.subjectId,
    subjectName: names.get(row.subjectId) ?? null,
    facts: JSON.parse(row.facts) as RecordedAct["facts"],
  }));
  return { rows, total: all?.total ?? 0 };
}

async function namesOf(db: Db, ids: readonly string[]): Promise<Map<string, string>> {
  const wanted = [...new Set(ids)];
  const people = await db
    .select({ id: person.id, givenName: person.givenName, familyName: person.familyName })
    .from(person)
    .where(inArray(person.id, wanted));
  const athletes = await db
    .select({ id: athlete.id, givenName: person.givenName, familyName: person.familyName })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(inArray(athlete.id, wanted));
  return new Map(
    [...people, ...athletes].map((row) => [row.id, `${row.givenName} ${row.familyName}`.trim()]),
  );
}
