import { and, eq, gte, inArray, like, lt, min, or } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { charge, rate } from "@/db/schema/ledger";
import { athlete, person } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { session, sessionAthlete, sessionLog } from "@/db/schema/sessions";
import { site } from "@/db/schema/sites";
import type {
  MonthCharge,
  MonthRecords,
  MonthReview,
  MonthSession,
} from "@/server/domain/ledger/month-records";
import { fullName } from "@/server/domain/people/person";
import { addMonths, dayOf, instantOf } from "@/server/domain/time/calendar-day";

/* A day either side of the month in UTC holds it in every zone; what does not belong is left out by the books. */
const DAY_MS = 86_400_000;

const coachPerson = alias(person, "coach_person");
const athletePerson = alias(person, "athlete_person");

/** A session of the month and when it is over, so that one left unlogged shows. */
export type DatedSession = MonthSession & { endsAtMs: number };

/**
 * Everything the books of a month are made from: its sessions, reviews and charges, and the sessions and reviews of
 * other months that something of this month was charged or taken back for.
 * @param month `YYYY-MM`
 */
export async function monthRecords(
  db: Db,
  month: string,
  currency: string,
): Promise<Omit<MonthRecords, "sessions"> & { sessions: DatedSession[] }> {
  const fromMs = instantOf(`${month}-01`, 0, "UTC") - DAY_MS;
  const toMs = instantOf(addMonths(`${month}-01`, 1), 0, "UTC") + DAY_MS;
  const charges = await chargesOf(db, month);
  const charged = (kind: "session" | "review") =>
    charges.flatMap(({ source }) => {
      if (source.kind !== kind) return [];
      return [source.kind === "session" ? source.sessionId : source.reviewId];
    });
  return {
    month,
    currency,
    charges,
    sessions: await sessionsOf(db, fromMs, toMs, charged("session")),
    reviews: await reviewsOf(db, fromMs, toMs, charged("review")),
  };
}

async function chargesOf(db: Db, month: string): Promise<MonthCharge[]> {
  const rows = await db
    .select({ charge, rateCents: rate.priceCents })
    .from(charge)
    .innerJoin(rate, eq(rate.id, charge.rateId))
    .where(like(charge.chargedOn, `${month}-%`));
  return rows.map(({ charge: { sessionId, reviewId, ...row }, rateCents }): MonthCharge => {
    const source = sessionId
      ? { kind: "session" as const, sessionId }
      : { kind: "review" as const, reviewId: reviewId ?? "" };
    return { ...row, rateCents, source };
  });
}

/** The first month with a session or a charge, `YYYY-MM` (a session's by UTC), or null before there is any. */
export async function firstMonth(db: Db): Promise<string | null> {
  const [charged] = await db.select({ day: min(charge.chargedOn) }).from(charge);
  const [held] = await db.select({ startsAtMs: min(session.startsAtMs) }).from(session);
  const days = [charged?.day, held?.startsAtMs ? dayOf(held.startsAtMs, "UTC") : null];
  return days.flatMap((day) => (day ? [day.slice(0, 7)] : [])).sort()[0] ?? null;
}

async function sessionsOf(
  db: Db,
  fromMs: number,
  toMs: number,
  alsoIds: readonly string[],
): Promise<DatedSession[]> {
  const rows = await db
    .select({
      id: session.id,
      kind: session.kind,
      state: session.state,
      startsAtMs: session.startsAtMs,
      endsAtMs: session.endsAtMs,
      zone: site.zone,
      siteName: site.name,
      coachId: session.coachPersonId,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(session)
    .innerJoin(site, eq(site.id, session.siteId))
    .innerJoin(person, eq(person.id, session.coachPersonId))
    .where(
      or(
        and(gte(session.startsAtMs, fromMs), lt(session.startsAtMs, toMs)),
        inArray(session.id, [...alsoIds]),
      ),
    );
  const comers = await comersOf(
    db,
    rows.map((row) => row.id),
  );
  return rows.map(({ givenName, familyName, ...row }) => ({
    ...row,
    coachName: fullName({ givenName, familyName }),
    athletes: comers.get(row.id) ?? [],
  }));
}

async function comersOf(db: Db, sessionIds: string[]) {
  const rows = await db
    .select({
      sessionId: sessionAthlete.sessionId,
      id: sessionAthlete.athleteId,
      givenName: person.givenName,
      familyName: person.familyName,
      attendance: sessionLog.attendance,
      minutes: sessionLog.minutes,
      pitches: sessionLog.pitches,
    })
    .from(sessionAthlete)
    .innerJoin(athlete, eq(athlete.id, sessionAthlete.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .leftJoin(
      sessionLog,
      and(
        eq(sessionLog.sessionId, sessionAthlete.sessionId),
        eq(sessionLog.athleteId, sessionAthlete.athleteId),
      ),
    )
    .where(inArray(sessionAthlete.sessionId, sessionIds));
  const bySession = new Map<string, MonthSession["athletes"][number][]>();
  for (const { sessionId, id, attendance, minutes, pitches, ...name } of rows) {
    const log = attendance ? { attendance, minutes: minutes ?? 0, pitches: pitches ?? 0 } : null;
    const own = bySession.get(sessionId) ?? [];
    own.push({ id, name: fullName(name), log });
    bySession.set(sessionId, own);
  }
  return bySession;
}

async function reviewsOf(
  db: Db,
  fromMs: number,
  toMs: number,
  alsoIds: readonly string[],
): Promise<MonthReview[]> {
  const rows = await db
    .select({
      id: review.id,
      roundId: review.roundId,
      sentAtMs: review.sentAtMs,
      zone: site.zone,
      siteName: site.name,
      coachId: review.coachPersonId,
      coach: { givenName: coachPerson.givenName, familyName: coachPerson.familyName },
      athleteId: review.athleteId,
      athlete: { givenName: athletePerson.givenName, familyName: athletePerson.familyName },
    })
    .from(review)
    .innerJoin(athlete, eq(athlete.id, review.athleteId))
    .innerJoin(athletePerson, eq(athletePerson.id, athlete.personId))
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .innerJoin(coachPerson, eq(coachPerson.id, review.coachPersonId))
    .where(
      and(
        eq(review.kind, "review"),
        or(and(gte(review.sentAtMs, fromMs), lt(review.sentAtMs, toMs)), inArray(review.id, [...alsoIds])),
      ),
    );
  return rows.map(({ coach, athlete: own, athleteId, ...row }) => ({
    ...row,
    coachName: fullName(coach),
    athlete: { id: athleteId, name: fullName(own) },
  }));
}
