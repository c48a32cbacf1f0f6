import { and, eq, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { account, athlete, guardianship, person, signIn, staffRole } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import type { Actor, AthleteScope } from "@/server/domain/access/relation";
import { maySignIn } from "@/server/domain/people/person";
import { dayOf } from "@/server/domain/time/calendar-day";

/**
 * The caller behind a sign-in, or null when it was ended, has expired, the account is disabled or erased, or the person
 * is an athlete too young for one. Read on every request, so that a change of rights works at once.
 */
export async function actorOfSignIn(db: Db, signInId: string, nowMs: number): Promise<Actor | null> {
  const [row] = await db
    .select({
      personId: signIn.personId,
      expiresAtMs: signIn.expiresAtMs,
      givenName: person.givenName,
    })
    .from(signIn)
    .innerJoin(account, eq(account.personId, signIn.personId))
    .innerJoin(person, eq(person.id, signIn.personId))
    .where(
      and(
        eq(signIn.id, signInId),
        isNull(signIn.endedAtMs),
        isNull(account.disabledAtMs),
        isNull(person.erasedAtMs),
      ),
    );
  if (!row || row.expiresAtMs <= nowMs || (await isTooYoung(db, row.personId, nowMs))) return null;
  return actorOf(db, row.personId, signInId, row.givenName);
}

/**
 * A person as the caller they would be if they signed in now, for what holds only as long as their right does; null when
 * their account is disabled or they were erased.
 */
export async function actorOfPerson(db: Db, personId: string): Promise<Actor | null> {
  const [row] = await db
    .select({ givenName: person.givenName })
    .from(person)
    .innerJoin(account, eq(account.personId, person.id))
    .where(and(eq(person.id, personId), isNull(account.disabledAtMs), isNull(person.erasedAtMs)));
  return row ? actorOf(db, personId, "", row.givenName) : null;
}

/** Whether a person is an athlete under the age for a sign-in: none of theirs counts, however it came about. */
async function isTooYoung(db: Db, personId: string, nowMs: number): Promise<boolean> {
  const [row] = await db
    .select({ bornOn: athlete.bornOn, zone: site.zone })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.personId, personId));
  return row !== undefined && !maySignIn(row.bornOn, dayOf(nowMs, row.zone));
}

async function actorOf(db: Db, personId: string, signInId: string, givenName: string): Promise<Actor> {
  const roles = await db
    .select({ role: staffRole.role })
    .from(staffRole)
    .where(and(eq(staffRole.personId, personId), isNull(staffRole.endedAtMs)));
  const [self] = await db.select({ id: athlete.id }).from(athlete).where(eq(athlete.personId, personId));
  const wards = await db
    .select({ id: guardianship.athleteId })
    .from(guardianship)
    .where(and(eq(guardianship.guardianPersonId, personId), isNull(guardianship.endedAtMs)));
  return {
    personId,
    signInId,
    givenName,
    roles: roles.map((row) => row.role),
    athleteId: self?.id ?? null,
    guardianOf: wards.map((row) => row.id),
  };
}

/** What access needs of an athlete, or null when there is none by that id. */
export async function athleteScope(db: Db, athleteId: string): Promise<AthleteScope | null> {
  const [row] = await db
    .select({
      athleteId: athlete.id,
      personId: athlete.personId,
      bornOn: athlete.bornOn,
      coachPersonId: athlete.coachPersonId,
      grantsGuardians: athlete.grantsGuardians,
      zone: site.zone,
    })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.id, athleteId));
  return row ?? null;
}
