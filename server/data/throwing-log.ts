import { and, asc, desc, eq, gte, isNotNull, isNull, or } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { person, remark } from "@/db/schema/people";
import { athleteTeam, plannedOuting, throwEntry } from "@/db/schema/throwing";
import type { AthleteScope } from "@/server/domain/access/relation";
import { IMPORT_KEY_PREFIX } from "@/server/domain/throwing/import-key";
import type { KnownLog } from "@/server/domain/throwing/import-plan";
import { currentEntries, type ThrowEntry } from "@/server/domain/throwing/throw-entry";
import type { GameDetails } from "@/server/domain/throwing/validate-game";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { athleteScope } from "./access";
import { newId } from "./new-id";

/** A row of the log as it is shown. */
export interface LoggedThrows extends ThrowEntry, GameDetails {
  teamName: string;
  opponent: string;
  sessionId: string | null;
  clipId: string | null;
  note: string;
  byGivenName: string;
  byFamilyName: string;
}

const opponent = alias(remark, "opponent");

/**
 * An athlete's log from a day on, each row with the rows it corrects, latest day first. What was corrected to a day
 * before that is left out. Erased words are empty.
 */
export async function throwLog(db: Db, athleteId: string, sinceDay: CalendarDay): Promise<LoggedThrows[]> {
  const rows = await db
    .select({
      id: throwEntry.id,
      athleteId: throwEntry.athleteId,
      thrownOn: throwEntry.thrownOn,
      kind: throwEntry.kind,
      pitches: throwEntry.pitches,
      replacesId: throwEntry.replacesId,
      reportedAtMs: throwEntry.reportedAtMs,
      sessionId: throwEntry.sessionId,
      clipId: throwEntry.clipId,
      outs: throwEntry.outs,
      inningsCaught: throwEntry.inningsCaught,
      pitchesAtLastBatter: throwEntry.pitchesAtLastBatter,
      intentionalWalks: throwEntry.intentionalWalks,
      teamId: throwEntry.teamId,
      teamName: athleteTeam.name,
      opponent: opponent.text,
      note: remark.text,
      byGivenName: person.givenName,
      byFamilyName: person.familyName,
    })
    .from(throwEntry)
    .leftJoin(remark, eq(remark.id, throwEntry.remarkId))
    .leftJoin(opponent, eq(opponent.id, throwEntry.opponentRemarkId))
    .leftJoin(athleteTeam, eq(athleteTeam.id, throwEntry.teamId))
    .leftJoin(person, eq(person.id, throwEntry.reportedByPersonId))
    .where(
      and(
        eq(throwEntry.athleteId, athleteId),
        or(gte(throwEntry.thrownOn, sinceDay), isNotNull(throwEntry.replacesId)),
      ),
    )
    .orderBy(desc(throwEntry.thrownOn), desc(throwEntry.reportedAtMs), desc(throwEntry.id));
  const shown = chainsSince(rows, sinceDay);
  return rows
    .filter((row) => shown.has(row.id))
    .map((row) => ({
      ...row,
      note: row.note ?? "",
      teamName: row.teamName ?? "",
      opponent: row.opponent ?? "",
      byGivenName: row.byGivenName ?? "",
      byFamilyName: row.byFamilyName ?? "",
    }));
}

/** The rows that stand on a day or later, with all that they correct, by id. */
function chainsSince(rows: readonly ThrowEntry[], sinceDay: CalendarDay): Set<string> {
  const byId = new Map(rows.map((row) => [row.id, row]));
  const shown = new Set<string>();
  for (const last of currentEntries(rows)) {
    let row = last.thrownOn >= sinceDay ? last : undefined;
    while (row) {
      shown.add(row.id);
      row = row.replacesId ? byId.get(row.replacesId) : undefined;
    }
  }
  return shown;
}

/** One row of the log, or null. `isReplaced`: another row corrects it already. */
export async function findThrowEntry(db: Db, entryId: string) {
  const [row] = await db.select().from(throwEntry).where(eq(throwEntry.id, entryId));
  if (!row) return null;
  const [later] = await db
    .select({ id: throwEntry.id })
    .from(throwEntry)
    .where(eq(throwEntry.replacesId, entryId));
  return { ...row, isReplaced: later !== undefined };
}

/** The entry that came in under a key, or null: see `importKeyOf` and `keptKeyOf`. */
export async function entryByImportKey(db: Db, importKey: string): Promise<string | null> {
  const [row] = await db
    .select({ id: throwEntry.id })
    .from(throwEntry)
    .where(eq(throwEntry.importKey, importKey));
  return row?.id ?? null;
}

/** What a file of past throwing is held against: the keys of what was imported before, and everything else that stands. */
export async function knownLog(db: Db, athleteId: string): Promise<KnownLog> {
  const rows = await db
    .select({
      id: throwEntry.id,
      replacesId: throwEntry.replacesId,
      importKey: throwEntry.importKey,
      thrownOn: throwEntry.thrownOn,
      kind: throwEntry.kind,
      pitches: throwEntry.pitches,
    })
    .from(throwEntry)
    .where(eq(throwEntry.athleteId, athleteId));
  const replaced = new Set(rows.map((row) => row.replacesId));
  const imported = rows.filter((row) => row.importKey?.startsWith(IMPORT_KEY_PREFIX));
  const importedIds = new Set(imported.map((row) => row.id));
  return {
    importKeys: new Set(imported.flatMap((row) => row.importKey ?? [])),
    entries: rows.filter((row) => !replaced.has(row.id) && !importedIds.has(row.id)),
  };
}

/** What access needs of the athlete a log row is about, or null when there is no such row. */
export async function throwEntryScope(db: Db, entryId: string): Promise<AthleteScope | null> {
  const row = await findThrowEntry(db, entryId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** A planned outing that was not called off. */
export interface PlannedOuting {
  id: string;
  plannedOn: CalendarDay;
  pitches: number;
  teamId: string | null;
  teamName: string | null;
}

/** The outings of an athlete planned from a day on, earliest first; those called off are left out. */
export async function plannedOutings(
  db: Db,
  athleteId: string,
  fromDay: CalendarDay,
): Promise<PlannedOuting[]> {
  return db
    .select({
      id: plannedOuting.id,
      plannedOn: plannedOuting.plannedOn,
      pitches: plannedOuting.pitches,
      teamId: plannedOuting.teamId,
      teamName: athleteTeam.name,
    })
    .from(plannedOuting)
    .leftJoin(athleteTeam, eq(athleteTeam.id, plannedOuting.teamId))
    .where(
      and(
        eq(plannedOuting.athleteId, athleteId),
        gte(plannedOuting.plannedOn, fromDay),
        isNull(plannedOuting.cancelledAtMs),
      ),
    )
    .orderBy(asc(plannedOuting.plannedOn), asc(plannedOuting.id));
}

/** Plans an outing. @returns its id */
export async function insertOuting(
  tx: Db,
  outing: {
    athleteId: string;
    plannedOn: CalendarDay;
    pitches: number;
    teamId: string | null;
    addedByPersonId: string;
    addedAtMs: number;
  },
): Promise<string> {
  const id = newId("out");
  await tx.insert(plannedOuting).values({ id, ...outing });
  return id;
}

/** What access needs of the athlete an outing is planned for, or null when there is no such outing. */
export async function outingScope(db: Db, outingId: string): Promise<AthleteScope | null> {
  const [row] = await db
    .select({ athleteId: plannedOuting.athleteId })
    .from(plannedOuting)
    .where(eq(plannedOuting.id, outingId));
  return row ? athleteScope(db, row.athleteId) : null;
}

/** Calls an outing off; one that was called off already stays as it is. */
export async function cancelOuting(tx: Db, outingId: string, nowMs: number): Promise<void> {
  await tx
    .update(plannedOuting)
    .set({ cancelledAtMs: nowMs })
    .where(and(eq(plannedOuting.id, outingId), isNull(plannedOuting.cancelledAtMs)));
}
