import { eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, person } from "@/db/schema/people";
import { type Actor, relationsOf } from "@/server/domain/access/relation";
import { hasLeft } from "@/server/domain/people/leaving";
import { dayOf } from "@/server/domain/time/calendar-day";
import { athleteScope } from "./access";

/** A person by name and the addresses they are reached at. */
export interface PersonCard {
  personId: string;
  givenName: string;
  familyName: string;
  email: string | null;
  phone: string | null;
}

/** One person's names and addresses, or null when there is no such person. */
export async function findPerson(db: Db, personId: string): Promise<PersonCard | null> {
  const [row] = await db
    .select({
      personId: person.id,
      givenName: person.givenName,
      familyName: person.familyName,
      email: person.email,
      phone: person.phone,
    })
    .from(person)
    .where(eq(person.id, personId));
  return row ?? null;
}

/** An athlete whose family screens a person may open. */
export interface OwnAthlete {
  athleteId: string;
  givenName: string;
  isSelf: boolean;
  /** Whether the athlete has left the academy by now: the record stays to read. */
  hasLeft: boolean;
}

/**
 * The athletes a person may open the family screens of: themselves first, then those they stand for, by given name. An
 * athlete of age who grants no view is left out.
 */
export async function ownAthletes(db: Db, actor: Actor, nowMs: number): Promise<OwnAthlete[]> {
  const own: OwnAthlete[] = [];
  for (const athleteId of new Set([...(actor.athleteId ? [actor.athleteId] : []), ...actor.guardianOf])) {
    const scope = await athleteScope(db, athleteId);
    if (!scope) continue;
    const today = dayOf(nowMs, scope.zone);
    const relations = relationsOf(actor, scope, today);
    const isSelf = relations.has("self_minor") || relations.has("self_of_age");
    const stands = relations.has("guardian") || relations.has("granted_guardian");
    if (!isSelf && !stands) continue;
    const { givenName, leftOn } = await headOf(db, athleteId);
    own.push({ athleteId, isSelf, givenName, hasLeft: hasLeft(leftOn, today) });
  }
  return own.sort((a, b) => Number(b.isSelf) - Number(a.isSelf) || a.givenName.localeCompare(b.givenName));
}

async function headOf(db: Db, athleteId: string) {
  const [row] = await db
    .select({ givenName: person.givenName, leftOn: athlete.leftOn })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(eq(athlete.id, athleteId));
  return row ?? { givenName: "", leftOn: null };
}
