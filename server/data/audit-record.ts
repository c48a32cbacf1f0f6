import { count, desc, eq, inArray, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { athlete, auditLog, person } from "@/db/schema/people";
import { lane, site } from "@/db/schema/sites";
import { booksById } from "./rule-books";

const personName = sql<string>`trim(${person.givenName} || ' ' || ${person.familyName})`;

/** One act as the record shows it; ids are given as the names they have now, where they have one. */
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
  const acts = found.map((row) => ({ ...row, facts: JSON.parse(row.facts) as RecordedAct["facts"] }));
  const names = await namesOf(db, acts.flatMap(idsIn));
  const named = (id: string | null) => (id === null ? null : (names.get(id) ?? null));
  const rows = acts.map((act) => ({
    sequence: act.sequence,
    atMs: act.atMs,
    actorName: named(act.actorPersonId),
    action: act.action,
    subjectId: act.subjectId,
    subjectName: named(act.subjectId),
    facts: Object.fromEntries(
      Object.entries(act.facts).map(([name, value]) => [
        name,
        typeof value === "string" ? (names.get(value) ?? value) : value,
      ]),
    ),
  }));
  return { rows, total: all?.total ?? 0 };
}

function idsIn(act: Pick<RecordedAct, "subjectId" | "facts"> & { actorPersonId: string | null }): string[] {
  const all = [act.subjectId, act.actorPersonId, ...Object.values(act.facts)];
  return all.filter((value): value is string => typeof value === "string");
}

async function namesOf(db: Db, ids: readonly string[]): Promise<Map<string, string>> {
  const wanted = [...new Set(ids)];
  const people = await db
    .select({ id: person.id, name: personName })
    .from(person)
    .where(inArray(person.id, wanted));
  const athletes = await db
    .select({ id: athlete.id, name: personName })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(inArray(athlete.id, wanted));
  const sites = await db.select({ id: site.id, name: site.name }).from(site).where(inArray(site.id, wanted));
  const lanes = await db.select({ id: lane.id, name: lane.name }).from(lane).where(inArray(lane.id, wanted));
  const checkpoints = await db
    .select({ id: checkpoint.id, name: checkpoint.name })
    .from(checkpoint)
    .where(inArray(checkpoint.id, wanted));
  const books = [...(await booksById(db, wanted)).values()];
  return new Map(
    [...people, ...athletes, ...sites, ...lanes, ...checkpoints, ...books].map((row) => [row.id, row.name]),
  );
}
