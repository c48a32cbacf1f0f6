import { and, asc, count, eq, gt, gte, inArray, isNotNull, isNull, lt, or } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { athlete, person } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { session } from "@/db/schema/sessions";
import { site } from "@/db/schema/sites";
import { OWED_STATES } from "@/server/domain/reviews/round-state";

/** The sites in use, by name. */
export async function sitesInUse(db: Db) {
  return db
    .select({ id: site.id, name: site.name, zone: site.zone })
    .from(site)
    .where(isNull(site.retiredAtMs))
    .orderBy(asc(site.name), asc(site.id));
}

const coachPerson = alias(person, "coach_person");

/** A round the academy owes a step on. */
export interface OwedRoundRow {
  id: string;
  state: "received" | "taken" | "answered";
  dueAtMs: number;
  zone: string;
  athleteId: string;
  givenName: string;
  familyName: string;
  coachPersonId: string | null;
  coachGivenName: string | null;
  coachFamilyName: string | null;
}

/** Every round the academy owes a step on, in the order they fall due. */
export async function owedRounds(db: Db): Promise<OwedRoundRow[]> {
  const rows = await db
    .select({
      id: round.id,
      state: round.state,
      dueAtMs: round.dueAtMs,
      zone: site.zone,
      athleteId: round.athleteId,
      givenName: person.givenName,
      familyName: person.familyName,
      coachPersonId: round.coachPersonId,
      coachGivenName: coachPerson.givenName,
      coachFamilyName: coachPerson.familyName,
    })
    .from(round)
    .innerJoin(site, eq(site.id, round.siteId))
    .innerJoin(athlete, eq(athlete.id, round.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .leftJoin(coachPerson, eq(coachPerson.id, round.coachPersonId))
    .where(and(inArray(round.state, [...OWED_STATES]), isNotNull(round.dueAtMs)))
    .orderBy(asc(round.dueAtMs), asc(round.id));
  return rows.flatMap(({ state, dueAtMs, ...row }) => {
    const owed = OWED_STATES.find((each) => each === state);
    return owed && dueAtMs !== null ? [{ ...row, state: owed, dueAtMs }] : [];
  });
}

/** How far back a session is still asked for that nobody logged, in milliseconds: two months. */
const UNLOGGED_LOOK_BACK_MS = 62 * 86_400_000;

/** The ids of sessions that ended before an instant and were never logged, earliest first. */
export async function unloggedSessionIds(db: Db, nowMs: number): Promise<string[]> {
  const rows = await db
    .select({ id: session.id })
    .from(session)
    .where(
      and(
        inArray(session.state, ["booked", "checked_in"]),
        gte(session.startsAtMs, nowMs - UNLOGGED_LOOK_BACK_MS),
        lt(session.endsAtMs, nowMs),
      ),
    )
    .orderBy(asc(session.startsAtMs), asc(session.id));
  return rows.map((row) => row.id);
}

/** The id of the first booked session that starts after an instant, with this coach if one is named; null for none. */
export async function nextSessionId(
  db: Db,
  afterMs: number,
  coachPersonId: string | null,
): Promise<string | null> {
  const [row] = await db
    .select({ id: session.id })
    .from(session)
    .where(
      and(
        eq(session.state, "booked"),
        gt(session.startsAtMs, afterMs),
        coachPersonId === null ? undefined : eq(session.coachPersonId, coachPersonId),
      ),
    )
    .orderBy(asc(session.startsAtMs), asc(session.id))
    .limit(1);
  return row?.id ?? null;
}

/** How many clips can be watched, and how many of the demo's are still being drawn. */
export async function drawingProgress(db: Db): Promise<{ ready: number; drawing: number }> {
  const rows = await db
    .select({ state: clip.state, clips: count() })
    .from(clip)
    .where(or(eq(clip.state, "drawing"), eq(clip.state, "ready")))
    .groupBy(clip.state);
  const of = (state: string) => rows.find((row) => row.state === state)?.clips ?? 0;
  return { ready: of("ready"), drawing: of("drawing") };
}
