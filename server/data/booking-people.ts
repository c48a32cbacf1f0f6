import { and, eq, inArray, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, guardianship, person, staffRole } from "@/db/schema/people";
import { fullName } from "@/server/domain/people/person";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { isStillThere } from "./leaving";

/** An athlete as a booking needs them: age, who stands for them, who coaches them, where they are at home. */
export interface BookingAthlete {
  id: string;
  personId: string;
  name: string;
  givenName: string;
  bornOn: CalendarDay;
  coachPersonId: string | null;
  homeSiteId: string;
  /** The day from which on nothing is booked for them; null when they stay. */
  leftOn: CalendarDay | null;
  guardianIds: string[];
  guardians: { personId: string; name: string }[];
}

/** The athletes by these ids, in the order of the ids; unknown ones are left out. */
export async function bookingAthletes(db: Db, ids: readonly string[]): Promise<BookingAthlete[]> {
  const rows = await db
    .select({
      id: athlete.id,
      personId: athlete.personId,
      bornOn: athlete.bornOn,
      coachPersonId: athlete.coachPersonId,
      homeSiteId: athlete.homeSiteId,
      leftOn: athlete.leftOn,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(inArray(athlete.id, [...ids]));
  const standing = await db
    .select({
      athleteId: guardianship.athleteId,
      personId: person.id,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(guardianship)
    .innerJoin(person, eq(person.id, guardianship.guardianPersonId))
    .where(and(inArray(guardianship.athleteId, [...ids]), isNull(guardianship.endedAtMs)))
    .orderBy(person.givenName, person.familyName, person.id);
  return ids.flatMap((id) => {
    const row = rows.find((each) => each.id === id);
    if (!row) return [];
    const { familyName, ...rest } = row;
    const guardians = standing
      .filter((each) => each.athleteId === id)
      .map((each) => ({ personId: each.personId, name: fullName(each) }));
    const guardianIds = guardians.map((guardian) => guardian.personId);
    return [{ ...rest, name: fullName({ givenName: row.givenName, familyName }), guardianIds, guardians }];
  });
}

/** Everybody on the staff by name, each once: those who may be named as a second adult. */
export async function staffNames(db: Db): Promise<{ personId: string; name: string }[]> {
  const rows = await db
    .selectDistinct({ personId: person.id, givenName: person.givenName, familyName: person.familyName })
    .from(staffRole)
    .innerJoin(person, eq(person.id, staffRole.personId))
    .where(isNull(staffRole.endedAtMs))
    .orderBy(person.givenName, person.familyName, person.id);
  return rows.map((row) => ({ personId: row.personId, name: fullName(row) }));
}

/** The athletes who have not left by a day, by name: for choosing whom to book for. */
export async function athleteNames(
  db: Db,
  today: CalendarDay,
): Promise<{ athleteId: string; name: string; coachPersonId: string | null }[]> {
  const rows = await db
    .select({
      athleteId: athlete.id,
      coachPersonId: athlete.coachPersonId,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(isStillThere(today))
    .orderBy(person.givenName, person.familyName, athlete.id);
  return rows.map(({ athleteId, coachPersonId, ...name }) => ({
    athleteId,
    coachPersonId,
    name: fullName(name),
  }));
}
