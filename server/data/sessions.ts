import { and, asc, eq, gt, inArray, lt, ne, type SQL } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { correction } from "@/db/schema/corrections";
import { athlete, person, remark } from "@/db/schema/people";
import { session, sessionAthlete, sessionPlan } from "@/db/schema/sessions";
import { lane, site } from "@/db/schema/sites";
import type { AthleteScope } from "@/server/domain/access/relation";
import type { SecondAdult } from "@/server/domain/calendar/second-adult";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import type { SessionState } from "@/server/domain/calendar/session-state";
import { Refusal } from "@/server/domain/errors/refusal";
import { fullName } from "@/server/domain/people/person";
import { athleteScope } from "./access";
import { newId } from "./new-id";
import { freeClaims, takeClaims } from "./session-claims";

/** A coaching session as it stands, with the names of all that it brings together. */
export interface SessionCard {
  id: string;
  kind: SessionKind;
  state: SessionState;
  siteId: string;
  siteName: string;
  zone: string;
  laneId: string;
  laneName: string;
  coachPersonId: string;
  coachName: string;
  startsAtMs: number;
  endsAtMs: number;
  places: number;
  secondAdult: (SecondAdult & { name: string }) | null;
  roundId: string | null;
  bookedByPersonId: string;
  bookedAtMs: number;
  cancelledAtMs: number | null;
  cancelReason: string | null;
  version: number;
  athletes: SessionArm[];
}

/** One athlete of a session and the pitches planned for the arm. */
export interface SessionArm {
  athleteId: string;
  name: string;
  givenName: string;
  plannedPitches: number;
}

const coachPerson = alias(person, "coach_person");
const adultPerson = alias(person, "adult_person");

/** A session, or null when there is none by that id. */
export async function findSession(db: Db, sessionId: string): Promise<SessionCard | null> {
  const [found] = await sessionsWhere(db, eq(session.id, sessionId));
  return found ?? null;
}

/** Sessions that overlap `[fromMs, toMs)` and were not cancelled, earliest first. */
export async function sessionsBetween(db: Db, span: { fromMs: number; toMs: number }) {
  return sessionsWhere(
    db,
    and(lt(session.startsAtMs, span.toMs), gt(session.endsAtMs, span.fromMs), ne(session.state, "cancelled")),
  );
}

/** An athlete's sessions that end after `fromMs` and are booked or under way, earliest first. */
export async function comingSessionsOf(db: Db, athleteId: string, fromMs: number): Promise<SessionCard[]> {
  const own = db
    .select({ id: sessionAthlete.sessionId })
    .from(sessionAthlete)
    .where(eq(sessionAthlete.athleteId, athleteId));
  return sessionsWhere(
    db,
    and(
      inArray(session.id, own),
      gt(session.endsAtMs, fromMs),
      inArray(session.state, ["booked", "checked_in"]),
    ),
  );
}

/** What access needs of everybody on a session, or null when there is no such session. */
export async function sessionScopes(db: Db, sessionId: string): Promise<AthleteScope[] | null> {
  const rows = await db
    .select({ athleteId: sessionAthlete.athleteId })
    .from(sessionAthlete)
    .where(eq(sessionAthlete.sessionId, sessionId))
    .orderBy(sessionAthlete.athleteId);
  const scopes = await Promise.all(rows.map((row) => athleteScope(db, row.athleteId)));
  return scopes.length === 0 ? null : scopes.filter((scope) => scope !== null);
}

async function sessionsWhere(db: Db, condition: SQL | undefined): Promise<SessionCard[]> {
  const rows = await db
    .select({
      session,
      siteName: site.name,
      zone: site.zone,
      laneName: lane.name,
      coach: { givenName: coachPerson.givenName, familyName: coachPerson.familyName },
      adult: { givenName: adultPerson.givenName, familyName: adultPerson.familyName },
      cancelReason: remark.text,
    })
    .from(session)
    .innerJoin(site, eq(site.id, session.siteId))
    .innerJoin(lane, eq(lane.id, session.laneId))
    .innerJoin(coachPerson, eq(coachPerson.id, session.coachPersonId))
    .leftJoin(adultPerson, eq(adultPerson.id, session.secondAdultPersonId))
    .leftJoin(remark, eq(remark.id, session.cancelRemarkId))
    .where(condition)
    .orderBy(asc(session.startsAtMs), asc(session.id));
  const arms = await armsOn(
    db,
    rows.map((row) => row.session.id),
  );
  return rows.map(({ session: row, coach, adult, ...names }) => {
    const { secondAdultKind: kind, secondAdultPersonId: personId, cancelRemarkId: _, ...rest } = row;
    const secondAdult = kind && personId && adult ? { kind, personId, name: fullName(adult) } : null;
    const athletes = arms.filter((arm) => arm.sessionId === row.id).map(({ sessionId: _own, ...arm }) => arm);
    return { ...rest, ...names, coachName: fullName(coach), secondAdult, athletes };
  });
}

async function armsOn(db: Db, sessionIds: string[]): Promise<(SessionArm & { sessionId: string })[]> {
  const rows = await db
    .select({
      sessionId: sessionAthlete.sessionId,
      athleteId: sessionAthlete.athleteId,
      plannedPitches: sessionAthlete.plannedPitches,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(sessionAthlete)
    .innerJoin(athlete, eq(athlete.id, sessionAthlete.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(inArray(sessionAthlete.sessionId, sessionIds))
    .orderBy(person.givenName, person.familyName, sessionAthlete.athleteId);
  return rows.map(({ familyName, ...row }) => ({
    ...row,
    name: fullName({ givenName: row.givenName, familyName }),
  }));
}

/** Where and when a session is held, and by whom. */
export interface SessionPlace {
  startsAtMs: number;
  endsAtMs: number;
  siteId: string;
  laneId: string;
  coachPersonId: string;
  secondAdult: SecondAdult | null;
}

/** A session about to be booked; checked before by `checkTime`. */
export interface NewSession extends SessionPlace {
  kind: SessionKind;
  places: number;
  athletes: readonly { athleteId: string; plannedPitches: number }[];
  /** The settled round it follows up, and the corrections it is to confirm. */
  roundId: string | null;
  correctionIds: readonly string[];
  bookedByPersonId: string;
  bookedAtMs: number;
}

/**
 * Books a session with all that it takes.
 * @returns its id
 * @throws Refusal `time_taken` when its coach, lane, an athlete or the second adult is taken
 */
export async function insertSession(tx: Db, booked: NewSession): Promise<string> {
  const { athletes, correctionIds, secondAdult, ...row } = booked;
  const id = newId("ses");
  await tx.insert(session).values({ id, state: "booked", ...row, ...adultColumns(secondAdult) });
  for (const one of athletes) await tx.insert(sessionAthlete).values({ sessionId: id, ...one });
  for (const correctionId of correctionIds) {
    await tx.insert(sessionPlan).values({ sessionId: id, correctionId });
  }
  await claimPlace(tx, id, booked, athletes);
  return id;
}

/**
 * Moves a session to another time or place, or plans it anew where it is.
 * @throws Refusal `changed_meanwhile` when it is no longer the version read; `time_taken` as when booking
 */
export async function moveSession(
  tx: Db,
  moved: { id: string; version: number },
  to: SessionPlace & { kind: SessionKind },
  athletes: readonly { athleteId: string; plannedPitches: number }[],
): Promise<void> {
  const { secondAdult, ...place } = to;
  await changeSession(tx, moved, { ...place, ...adultColumns(secondAdult) });
  for (const { athleteId, plannedPitches } of athletes) {
    await tx
      .update(sessionAthlete)
      .set({ plannedPitches })
      .where(and(eq(sessionAthlete.sessionId, moved.id), eq(sessionAthlete.athleteId, athleteId)));
  }
  await freeClaims(tx, moved.id);
  await claimPlace(tx, moved.id, to, athletes);
}

/** Takes one athlete off a session, with what is claimed and planned for them. */
export async function leaveSession(tx: Db, sessionId: string, athleteId: string): Promise<void> {
  await freeClaims(tx, sessionId, `athlete:${athleteId}`);
  const own = tx.select({ id: correction.id }).from(correction).where(eq(correction.athleteId, athleteId));
  await tx
    .delete(sessionPlan)
    .where(and(eq(sessionPlan.sessionId, sessionId), inArray(sessionPlan.correctionId, own)));
  await tx
    .delete(sessionAthlete)
    .where(and(eq(sessionAthlete.sessionId, sessionId), eq(sessionAthlete.athleteId, athleteId)));
}

/** Changes columns of a session over the version read. @throws Refusal `changed_meanwhile` */
export async function changeSession(
  tx: Db,
  { id, version }: { id: string; version: number },
  changes: Partial<Omit<typeof session.$inferInsert, "id" | "version">>,
): Promise<void> {
  const changed = await tx
    .update(session)
    .set({ ...changes, version: version + 1 })
    .where(and(eq(session.id, id), eq(session.version, version)))
    .returning({ id: session.id });
  if (changed.length === 0) throw new Refusal({ reason: "changed_meanwhile" });
}

function adultColumns(secondAdult: SecondAdult | null) {
  return {
    secondAdultKind: secondAdult?.kind ?? null,
    secondAdultPersonId: secondAdult?.personId ?? null,
  };
}

async function claimPlace(
  tx: Db,
  sessionId: string,
  place: SessionPlace,
  athletes: readonly { athleteId: string }[],
): Promise<void> {
  const { startsAtMs, endsAtMs, laneId, coachPersonId: coachId, secondAdult } = place;
  const athleteIds = athletes.map((one) => one.athleteId);
  await takeClaims(tx, sessionId, { coachId, laneId, athleteIds, secondAdult, startsAtMs, endsAtMs });
}
