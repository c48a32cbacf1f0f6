import { eq, inArray } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, person } from "@/db/schema/people";

/** How somebody is called; both parts are empty once the name was erased. */
export interface Name {
  givenName: string;
  familyName: string;
}

/** Somebody whose name is not on record any more. */
export const NAMELESS: Name = { givenName: "", familyName: "" };

/** The names of persons by their ids; unknown ids are left out. */
export async function namesOf(db: Db, personIds: readonly string[]): Promise<Map<string, Name>> {
  const rows = await db
    .select({ id: person.id, givenName: person.givenName, familyName: person.familyName })
    .from(person)
    .where(inArray(person.id, [...personIds]));
  return new Map(rows.map(({ id, ...name }) => [id, name]));
}

/** The name of one person. */
export async function nameOf(db: Db, personId: string): Promise<Name> {
  return (await namesOf(db, [personId])).get(personId) ?? NAMELESS;
}

/** The name of an athlete. */
export async function nameOfAthlete(db: Db, athleteId: string): Promise<Name> {
  const [row] = await db
    .select({ givenName: person.givenName, familyName: person.familyName })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(eq(athlete.id, athleteId));
  return row ?? NAMELESS;
}
