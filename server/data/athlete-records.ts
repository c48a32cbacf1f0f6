import { and, eq, isNotNull, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, guardianship, person } from "@/db/schema/people";
import type { AthleteRecord } from "@/server/domain/people/athlete-record";
import type { PersonDetails } from "@/server/domain/people/person-details";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { newId } from "./new-id";

/** Writes down a person. */
export async function insertPerson(tx: Db, details: PersonDetails, nowMs: number): Promise<string> {
  const id = newId("per");
  const { givenName, familyName, email, phone } = details;
  await tx.insert(person).values({ id, givenName, familyName, email, phone, createdAtMs: nowMs });
  return id;
}

/** Changes a person's names and addresses. */
export async function savePerson(tx: Db, personId: string, details: PersonDetails): Promise<void> {
  const { givenName, familyName, email, phone } = details;
  await tx.update(person).set({ givenName, familyName, email, phone }).where(eq(person.id, personId));
}

/** Writes down an athlete and the person they are. */
export async function insertAthlete(
  tx: Db,
  record: AthleteRecord,
  facts: { coachPersonId: string | null; today: CalendarDay; nowMs: number },
): Promise<{ athleteId: string; personId: string }> {
  const personId = await insertPerson(tx, record, facts.nowMs);
  const athleteId = newId("ath");
  await tx.insert(athlete).values({
    id: athleteId,
    personId,
    ...armOf(record),
    coachPersonId: facts.coachPersonId,
    joinedOn: facts.today,
  });
  return { athleteId, personId };
}

/**
 * Saves an athlete's record over the version it was read at.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveAthlete(
  tx: Db,
  ids: { athleteId: string; personId: string; version: number },
  record: AthleteRecord,
): Promise<boolean> {
  const saved = await tx
    .update(athlete)
    .set({ ...armOf(record), version: ids.version + 1 })
    .where(and(eq(athlete.id, ids.athleteId), eq(athlete.version, ids.version)))
    .returning({ id: athlete.id });
  if (saved.length === 0) return false;
  await savePerson(tx, ids.personId, record);
  return true;
}

const armOf = ({ bornOn, throws, heightCm, homeSiteId, ruleBookId }: AthleteRecord) => ({
  bornOn,
  throws,
  heightCm,
  homeSiteId,
  ruleBookId,
});

/** The athlete that a person is, or null. */
export async function athleteOfPerson(db: Db, personId: string) {
  const [row] = await db.select().from(athlete).where(eq(athlete.personId, personId));
  return row ?? null;
}

/** Assigns an athlete to a coach, or to nobody. */
export async function setCoach(tx: Db, athleteId: string, coachPersonId: string | null): Promise<void> {
  await tx.update(athlete).set({ coachPersonId }).where(eq(athlete.id, athleteId));
}

/** Leaves the athletes of a coach without one. */
export async function unassignAthletesOf(tx: Db, coachPersonId: string): Promise<number> {
  const freed = await tx
    .update(athlete)
    .set({ coachPersonId: null })
    .where(eq(athlete.coachPersonId, coachPersonId))
    .returning({ id: athlete.id });
  return freed.length;
}

/** The people who stand for an athlete, by name. */
export async function guardiansOf(db: Db, athleteId: string) {
  return db
    .select({
      personId: person.id,
      givenName: person.givenName,
      familyName: person.familyName,
      email: person.email,
      phone: person.phone,
    })
    .from(guardianship)
    .innerJoin(person, eq(person.id, guardianship.guardianPersonId))
    .where(and(eq(guardianship.athleteId, athleteId), isNull(guardianship.endedAtMs)))
    .orderBy(person.givenName, person.familyName, person.id);
}

/** Lets a person stand for an athlete; an ended guardianship begins anew. */
export async function startGuardianship(
  tx: Db,
  guardianPersonId: string,
  athleteId: string,
  nowMs: number,
): Promise<void> {
  await tx
    .insert(guardianship)
    .values({ guardianPersonId, athleteId, sinceMs: nowMs })
    .onConflictDoUpdate({
      target: [guardianship.guardianPersonId, guardianship.athleteId],
      set: { sinceMs: nowMs, endedAtMs: null },
      setWhere: isNotNull(guardianship.endedAtMs),
    });
}

/** Ends a guardianship; it is kept as ended. */
export async function endGuardianship(
  tx: Db,
  guardianPersonId: string,
  athleteId: string,
  nowMs: number,
): Promise<void> {
  await tx
    .update(guardianship)
    .set({ endedAtMs: nowMs })
    .where(
      and(
        eq(guardianship.guardianPersonId, guardianPersonId),
        eq(guardianship.athleteId, athleteId),
        isNull(guardianship.endedAtMs),
      ),
    );
}

/** Lets guardians of an athlete of age go on seeing the record, or no longer. */
export async function setGuardiansGranted(tx: Db, athleteId: string, grants: boolean): Promise<void> {
  await tx.update(athlete).set({ grantsGuardians: grants }).where(eq(athlete.id, athleteId));
}

/**
 * Saves an athlete's throwing hand and height over the version they were read at.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveArm(
  tx: Db,
  at: { athleteId: string; version: number },
  arm: Pick<AthleteRecord, "throws" | "heightCm">,
): Promise<boolean> {
  const saved = await tx
    .update(athlete)
    .set({ throws: arm.throws, heightCm: arm.heightCm, version: at.version + 1 })
    .where(and(eq(athlete.id, at.athleteId), eq(athlete.version, at.version)))
    .returning({ id: athlete.id });
  return saved.length === 1;
}
