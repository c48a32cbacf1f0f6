import { eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { session, sessionAthlete, sessionLog } from "@/db/schema/sessions";
import { site } from "@/db/schema/sites";
import { athleteTeam, checkIn, plannedOuting, throwEntry } from "@/db/schema/throwing";
import { standingOverrides } from "@/server/domain/rule-books/limit-override";
import { knownAt } from "@/server/domain/throwing/known-at";
import { openOutings } from "@/server/domain/throwing/open-outings";
import { painStop } from "@/server/domain/throwing/pain";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import { currentEntries, type PlannedThrows } from "@/server/domain/throwing/throw-entry";
import { dayOf } from "@/server/domain/time/calendar-day";
import { academyReading } from "./academy-reading";
import { thrownAs } from "./arms";
import { listOverrides } from "./limit-overrides";
import { painRecord } from "./pain";
import { booksById } from "./rule-books";

/**
 * One arm as it was known at an instant: rows of the log, plans, pain, overrides, teams and versions of books written down
 * later are left out. Which book is the athlete's own, which mound work counts, and when and with how many pitches a
 * session is, are as they are now: of those no history is kept.
 * @throws Error when there is no such athlete (the caller's fault)
 */
export async function armKnownAt(db: Db, athleteId: string, atMs: number): Promise<Omit<ArmQuestion, "day">> {
  const person = await bearerOf(db, athleteId);
  const today = dayOf(atMs, person.zone);
  const { entries, planned, reports, clearances } = await recordAt(db, athleteId, person.zone, atMs);
  const overrides = await listOverrides(db, athleteId);
  return {
    bornOn: person.bornOn,
    today,
    books: await booksAt(db, athleteId, person.bookId, atMs),
    reading: await academyReading(db),
    overrides: standingOverrides(overrides.filter((row) => row.atMs <= atMs)),
    entries,
    planned: [
      ...openOutings(planned.filter(isOuting), entries),
      ...planned.filter((plan) => !isOuting(plan)),
    ],
    pain: painStop({ reports, clearances }),
    lastReportedOn: await lastReportedOn(db, athleteId, { ...person, entries, atMs }),
  };
}

/** No session is thrown as a game, so what is planned as one is an outing. */
const isOuting = ({ kind }: PlannedThrows) => kind === "game";

async function bearerOf(db: Db, athleteId: string) {
  const [row] = await db
    .select({
      ...{ bornOn: athlete.bornOn, joinedOn: athlete.joinedOn, bookId: athlete.ruleBookId },
      zone: site.zone,
    })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.id, athleteId));
  if (!row) throw new Error(`There is no athlete ${athleteId}.`);
  return row;
}

/** The teams pitched for at the instant bring their books, each once, the athlete's own before them. */
async function booksAt(
  db: Db,
  athleteId: string,
  ownId: string,
  atMs: number,
): Promise<ArmQuestion["books"]> {
  const teams = await db.select().from(athleteTeam).where(eq(athleteTeam.athleteId, athleteId));
  const then = teams.filter(
    (team) => team.addedAtMs <= atMs && (team.endedAtMs === null || team.endedAtMs > atMs),
  );
  const ids = new Set([ownId, ...then.map((team) => team.ruleBookId)]);
  const books = await booksById(db, ids, atMs);
  const [own, ...others] = [...ids].flatMap((id) => books.get(id) ?? []);
  if (!own) throw new Error(`There is no rule book ${ownId}.`);
  return [own, ...others];
}

async function recordAt(db: Db, athleteId: string, zone: string, atMs: number) {
  const entries = await db.select().from(throwEntry).where(eq(throwEntry.athleteId, athleteId));
  const outings = await db.select().from(plannedOuting).where(eq(plannedOuting.athleteId, athleteId));
  const games = outings.map((row) => ({ ...row, kind: "game" as const }));
  const planned = [...games, ...(await sessionsOf(db, athleteId, zone))];
  return knownAt({ entries, planned, ...(await painRecord(db, athleteId)) }, atMs);
}

/** A session is a plan from its booking until it was cancelled or logged. */
async function sessionsOf(db: Db, athleteId: string, zone: string) {
  const rows = await db
    .select({
      id: session.id,
      kind: session.kind,
      startsAtMs: session.startsAtMs,
      pitches: sessionAthlete.plannedPitches,
      addedAtMs: session.bookedAtMs,
      cancelledAtMs: session.cancelledAtMs,
    })
    .from(sessionAthlete)
    .innerJoin(session, eq(session.id, sessionAthlete.sessionId))
    .where(eq(sessionAthlete.athleteId, athleteId));
  const logs = await db.select().from(sessionLog).where(eq(sessionLog.athleteId, athleteId));
  const loggedAtMs = new Map(logs.map((row) => [row.sessionId, row.loggedAtMs]));
  return rows.map((row) => ({
    ...{ id: row.id, pitches: row.pitches, teamId: null, addedAtMs: row.addedAtMs },
    plannedOn: dayOf(row.startsAtMs, zone),
    kind: thrownAs(row.kind),
    cancelledAtMs: row.cancelledAtMs ?? loggedAtMs.get(row.id) ?? null,
  }));
}

async function lastReportedOn(
  db: Db,
  athleteId: string,
  then: Pick<ArmQuestion, "entries"> & { joinedOn: string; zone: string; atMs: number },
): Promise<string> {
  const asked = await db.select().from(checkIn).where(eq(checkIn.athleteId, athleteId));
  const days = [
    ...currentEntries(then.entries).map((row) => row.thrownOn),
    ...asked.filter((row) => row.atMs <= then.atMs).map((row) => dayOf(row.atMs, then.zone)),
  ];
  return [then.joinedOn, ...days].sort().at(-1) ?? then.joinedOn;
}
