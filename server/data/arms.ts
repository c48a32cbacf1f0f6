import { and, eq, gte, inArray, isNotNull, isNull, max, notInArray, or } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { session, sessionAthlete } from "@/db/schema/sessions";
import { site } from "@/db/schema/sites";
import { checkIn, painClearance, painReport, plannedOuting, throwEntry } from "@/db/schema/throwing";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import { openOutings } from "@/server/domain/throwing/open-outings";
import { painStop } from "@/server/domain/throwing/pain";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import type { PlannedThrows, ThrowEntry, ThrowKind } from "@/server/domain/throwing/throw-entry";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { academyReading } from "./academy-reading";
import { booksOfArms, overridesOfArms } from "./arm-books";

/** How far back the log is read for a limit, in days: longer than any rest and any row of days a book asks for. */
const LOOK_BACK_DAYS = 40;

const THROWN_AS: Record<SessionKind, ThrowKind> = {
  lesson: "lesson",
  bullpen: "bullpen",
  group: "lesson",
  assessment: "lesson",
  dry_work: "lesson",
};

/** How throws in a session of this kind stand on the log. */
export function thrownAs(kind: SessionKind): ThrowKind {
  return THROWN_AS[kind];
}

/** All that is known of one arm, ready to be asked about any day. */
export interface ArmKnowledge extends Omit<ArmQuestion, "day"> {
  athleteId: string;
  zone: string;
  /** Planned id -> the session it stands for; outings are not in it. */
  sessionOfPlanned: ReadonlyMap<string, string>;
}

/**
 * What is known of several arms as of `nowMs`, by athlete id; unknown ids are left out. Booked sessions count at their
 * planned pitches until they are logged; `exceptSessionId` leaves one out, as when it is being moved.
 */
export async function armsOf(
  db: Db,
  athleteIds: readonly string[],
  nowMs: number,
  exceptSessionId: string | null = null,
): Promise<Map<string, ArmKnowledge>> {
  const ids = [...athleteIds];
  const athletes = await db
    .select({
      id: athlete.id,
      bornOn: athlete.bornOn,
      joinedOn: athlete.joinedOn,
      zone: site.zone,
    })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(inArray(athlete.id, ids));
  const zoneOf = new Map(athletes.map((row) => [row.id, row.zone]));
  const sinceDay = addDays(dayOf(nowMs, "UTC"), -LOOK_BACK_DAYS);
  const entries = byAthlete(await entriesSince(db, ids, sinceDay));
  const outings = byAthlete(await outingsSince(db, ids, sinceDay));
  const sessions = byAthlete(await bookedThrows(db, ids, nowMs, exceptSessionId, zoneOf));
  const pain = await painOf(db, ids);
  const spoken = await lastSpokenOf(db, ids);
  const books = await booksOfArms(db, ids);
  const overrides = await overridesOfArms(db, ids);
  const { countedKinds, askAfterDays } = await academyReading(db);
  return new Map(
    athletes.flatMap((row) => {
      const ofBooks = books.get(row.id);
      if (!ofBooks) return [];
      const own = entries.get(row.id) ?? [];
      const booked = sessions.get(row.id) ?? [];
      const askedMs = spoken.checkIns.get(row.id);
      const askedOn = askedMs === undefined ? row.joinedOn : dayOf(askedMs, row.zone);
      const arm: ArmKnowledge = {
        athleteId: row.id,
        zone: row.zone,
        bornOn: row.bornOn,
        books: ofBooks,
        overrides: overrides.get(row.id) ?? [],
        today: dayOf(nowMs, row.zone),
        reading: { countedKinds, askAfterDays },
        entries: own,
        planned: [...openOutings(outings.get(row.id) ?? [], own), ...booked],
        sessionOfPlanned: new Map(booked.map((each) => [each.id, each.sessionId])),
        pain: pain(row.id),
        lastReportedOn: latest(row.joinedOn, askedOn, spoken.thrown.get(row.id)),
      };
      return [[row.id, arm] as const];
    }),
  );
}

/** What is known of one arm. @throws Error when there is no such athlete (the caller's fault) */
export async function armOf(
  db: Db,
  athleteId: string,
  nowMs: number,
  exceptSessionId: string | null = null,
): Promise<ArmKnowledge> {
  const arm = (await armsOf(db, [athleteId], nowMs, exceptSessionId)).get(athleteId);
  if (!arm) throw new Error(`There is no athlete ${athleteId}.`);
  return arm;
}

function latest(...days: (CalendarDay | undefined)[]): CalendarDay {
  return days.reduce<CalendarDay>((last, day) => (day && day > last ? day : last), "0000-01-01");
}

/* A correction is read whatever its day: it may have moved throws out of the days that are looked back on. */
async function entriesSince(db: Db, ids: string[], sinceDay: CalendarDay): Promise<ThrowEntry[]> {
  return db
    .select({
      id: throwEntry.id,
      athleteId: throwEntry.athleteId,
      thrownOn: throwEntry.thrownOn,
      kind: throwEntry.kind,
      pitches: throwEntry.pitches,
      outs: throwEntry.outs,
      inningsCaught: throwEntry.inningsCaught,
      pitchesAtLastBatter: throwEntry.pitchesAtLastBatter,
      intentionalWalks: throwEntry.intentionalWalks,
      teamId: throwEntry.teamId,
      replacesId: throwEntry.replacesId,
      reportedAtMs: throwEntry.reportedAtMs,
    })
    .from(throwEntry)
    .where(
      and(
        inArray(throwEntry.athleteId, ids),
        or(gte(throwEntry.thrownOn, sinceDay), isNotNull(throwEntry.replacesId)),
      ),
    );
}

async function outingsSince(db: Db, ids: string[], sinceDay: CalendarDay) {
  const rows = await db
    .select({
      id: plannedOuting.id,
      athleteId: plannedOuting.athleteId,
      plannedOn: plannedOuting.plannedOn,
      pitches: plannedOuting.pitches,
      teamId: plannedOuting.teamId,
    })
    .from(plannedOuting)
    .where(
      and(
        inArray(plannedOuting.athleteId, ids),
        gte(plannedOuting.plannedOn, sinceDay),
        isNull(plannedOuting.cancelledAtMs),
      ),
    );
  return rows.map((row) => ({ ...row, kind: "game" as const }));
}

async function bookedThrows(
  db: Db,
  ids: string[],
  nowMs: number,
  exceptSessionId: string | null,
  zoneOf: ReadonlyMap<string, string>,
): Promise<(PlannedThrows & { athleteId: string; sessionId: string })[]> {
  const rows = await db
    .select({
      sessionId: session.id,
      athleteId: sessionAthlete.athleteId,
      kind: session.kind,
      startsAtMs: session.startsAtMs,
      pitches: sessionAthlete.plannedPitches,
    })
    .from(sessionAthlete)
    .innerJoin(session, eq(session.id, sessionAthlete.sessionId))
    .where(
      and(
        inArray(sessionAthlete.athleteId, ids),
        gte(session.startsAtMs, nowMs - LOOK_BACK_DAYS * 86_400_000),
        inArray(session.state, ["booked", "checked_in"]),
      ),
    );
  return rows
    .filter((row) => row.sessionId !== exceptSessionId)
    .map((row) => ({
      id: `${row.sessionId}:${row.athleteId}`,
      sessionId: row.sessionId,
      athleteId: row.athleteId,
      plannedOn: dayOf(row.startsAtMs, zoneOf.get(row.athleteId) ?? "UTC"),
      kind: thrownAs(row.kind),
      pitches: row.pitches,
      teamId: null,
    }));
}

async function painOf(db: Db, ids: string[]) {
  const reports = byAthlete(await db.select().from(painReport).where(inArray(painReport.athleteId, ids)));
  const clearances = byAthlete(
    await db.select().from(painClearance).where(inArray(painClearance.athleteId, ids)),
  );
  return (id: string) => painStop({ reports: reports.get(id) ?? [], clearances: clearances.get(id) ?? [] });
}

/* The day of a row that was corrected is no day on which anything was reported. */
async function lastSpokenOf(db: Db, ids: string[]) {
  const corrected = db
    .select({ id: throwEntry.replacesId })
    .from(throwEntry)
    .where(and(inArray(throwEntry.athleteId, ids), isNotNull(throwEntry.replacesId)));
  const thrown = await db
    .select({ id: throwEntry.athleteId, day: max(throwEntry.thrownOn) })
    .from(throwEntry)
    .where(and(inArray(throwEntry.athleteId, ids), notInArray(throwEntry.id, corrected)))
    .groupBy(throwEntry.athleteId);
  const asked = await db
    .select({ id: checkIn.athleteId, atMs: max(checkIn.atMs) })
    .from(checkIn)
    .where(inArray(checkIn.athleteId, ids))
    .groupBy(checkIn.athleteId);
  return {
    thrown: new Map(thrown.map((row) => [row.id, row.day ?? undefined])),
    checkIns: new Map(asked.flatMap((row) => (row.atMs === null ? [] : [[row.id, row.atMs] as const]))),
  };
}

function byAthlete<Row extends { athleteId: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const grouped = new Map<string, Row[]>();
  for (const row of rows) {
    const own = grouped.get(row.athleteId);
    if (own) own.push(row);
    else grouped.set(row.athleteId, [row]);
  }
  return grouped;
}
