import { and, asc, desc, eq, gte, inArray } from "drizzle-orm";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { judgement } from "@/db/schema/mechanics";
import { athlete, person } from "@/db/schema/people";
import { round, roundEvent } from "@/db/schema/rounds";
import { session, sessionAthlete, sessionLog } from "@/db/schema/sessions";
import { site } from "@/db/schema/sites";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** Whose season it is. */
export interface AthleteCard {
  athleteId: string;
  givenName: string;
  familyName: string;
  bornOn: CalendarDay;
  throws: "right" | "left";
  joinedOn: CalendarDay;
  leftOn: CalendarDay | null;
  zone: string;
  siteName: string;
  coachPersonId: string | null;
  coachGivenName: string | null;
  coachFamilyName: string | null;
}

/** One athlete's card. @throws Error when there is no such athlete (the caller's fault) */
export async function athleteCard(db: Db, athleteId: string): Promise<AthleteCard> {
  const [row] = await db
    .select({
      athleteId: athlete.id,
      givenName: person.givenName,
      familyName: person.familyName,
      bornOn: athlete.bornOn,
      throws: athlete.throws,
      joinedOn: athlete.joinedOn,
      leftOn: athlete.leftOn,
      zone: site.zone,
      siteName: site.name,
      coachPersonId: athlete.coachPersonId,
    })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.id, athleteId));
  if (!row) throw new Error(`There is no athlete ${athleteId}.`);
  const [coach] = row.coachPersonId
    ? await db
        .select({ coachGivenName: person.givenName, coachFamilyName: person.familyName })
        .from(person)
        .where(eq(person.id, row.coachPersonId))
    : [];
  return { ...row, coachGivenName: null, coachFamilyName: null, ...coach };
}

/** The rounds of an athlete received since an instant, earliest first; `endedAtMs` null while one goes on. */
export async function roundsOf(db: Db, athleteId: string, sinceMs: number) {
  const rows = await db
    .select({
      id: round.id,
      state: round.state,
      receivedAtMs: round.receivedAtMs,
      sentAtMs: round.sentAtMs,
      answeredAtMs: round.answeredAtMs,
      replyFrom: round.replyFrom,
      lapsesOn: round.lapsesOn,
      dueAtMs: round.dueAtMs,
    })
    .from(round)
    .where(and(eq(round.athleteId, athleteId), gte(round.receivedAtMs, sinceMs)))
    .orderBy(asc(round.receivedAtMs), asc(round.id));
  const ends = await db
    .select({ roundId: roundEvent.roundId, atMs: roundEvent.atMs })
    .from(roundEvent)
    .where(
      and(
        inArray(
          roundEvent.roundId,
          rows.map((row) => row.id),
        ),
        inArray(roundEvent.kind, ["settled", "withdrawn", "lapsed"]),
      ),
    );
  const endOf = new Map(ends.map((end) => [end.roundId, end.atMs]));
  return rows.map((row) => ({ ...row, endedAtMs: endOf.get(row.id) ?? null }));
}

/** What was judged of an athlete since a day, earliest first. */
export async function judgementsOf(db: Db, athleteId: string, sinceDay: CalendarDay) {
  return db
    .select({
      id: judgement.id,
      checkpointId: judgement.checkpointId,
      checkpointName: checkpoint.name,
      phase: checkpoint.phase,
      position: checkpoint.position,
      view: judgement.view,
      score: judgement.score,
      judgedOn: judgement.judgedOn,
      coachGivenName: person.givenName,
      coachFamilyName: person.familyName,
    })
    .from(judgement)
    .innerJoin(checkpoint, eq(checkpoint.id, judgement.checkpointId))
    .innerJoin(person, eq(person.id, judgement.coachPersonId))
    .where(and(eq(judgement.athleteId, athleteId), gte(judgement.judgedOn, sinceDay)))
    .orderBy(asc(judgement.atMs), asc(judgement.id));
}

/** The sessions of an athlete that start at or after an instant, latest first; cancelled ones are left out. */
export async function sessionsOf(db: Db, athleteId: string, sinceMs: number) {
  return db
    .select({
      id: session.id,
      kind: session.kind,
      state: session.state,
      startsAtMs: session.startsAtMs,
      endsAtMs: session.endsAtMs,
      zone: site.zone,
      siteName: site.name,
      plannedPitches: sessionAthlete.plannedPitches,
      attendance: sessionLog.attendance,
      effort: sessionLog.effort,
      strikes: sessionLog.strikes,
      topSpeed: sessionLog.topSpeed,
      speedUnit: sessionLog.speedUnit,
      coachGivenName: person.givenName,
      coachFamilyName: person.familyName,
    })
    .from(sessionAthlete)
    .innerJoin(session, eq(session.id, sessionAthlete.sessionId))
    .innerJoin(site, eq(site.id, session.siteId))
    .innerJoin(person, eq(person.id, session.coachPersonId))
    .leftJoin(
      sessionLog,
      and(eq(sessionLog.sessionId, session.id), eq(sessionLog.athleteId, sessionAthlete.athleteId)),
    )
    .where(
      and(
        eq(sessionAthlete.athleteId, athleteId),
        gte(session.startsAtMs, sinceMs),
        inArray(session.state, ["booked", "checked_in", "logged", "no_show"]),
      ),
    )
    .orderBy(desc(session.startsAtMs), asc(session.id));
}
