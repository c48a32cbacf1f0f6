import { and, eq, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete, guardianship, person } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import { signInState } from "@/server/domain/people/people-filter";
import { accountOf, rolesOf } from "./accounts-of-people";
import { guardiansOf } from "./athlete-records";
import { findPerson } from "./people";

/**
 * Everything on record of a person: addresses, roles, sign-in, the athlete they are with those who stand for them, and
 * the athletes they stand for. Null when there is no such person.
 */
export async function personRecord(db: Db, personId: string) {
  const card = await findPerson(db, personId);
  if (!card) return null;
  return {
    ...card,
    roles: await rolesOf(db, personId),
    signIn: signInState(await accountOf(db, personId)),
    athlete: await athletePart(db, personId),
    standsFor: await standsFor(db, personId),
  };
}

async function athletePart(db: Db, personId: string) {
  const [row] = await db
    .select({
      athleteId: athlete.id,
      bornOn: athlete.bornOn,
      throws: athlete.throws,
      heightCm: athlete.heightCm,
      homeSiteId: athlete.homeSiteId,
      siteName: site.name,
      zone: site.zone,
      coachPersonId: athlete.coachPersonId,
      ruleBookId: athlete.ruleBookId,
      joinedOn: athlete.joinedOn,
      leftOn: athlete.leftOn,
      grantsGuardians: athlete.grantsGuardians,
      version: athlete.version,
    })
    .from(athlete)
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(eq(athlete.personId, personId));
  return row ? { ...row, guardians: await guardiansOf(db, row.athleteId) } : null;
}

function standsFor(db: Db, guardianPersonId: string) {
  return db
    .select({
      athleteId: athlete.id,
      personId: person.id,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(guardianship)
    .innerJoin(athlete, eq(athlete.id, guardianship.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(and(eq(guardianship.guardianPersonId, guardianPersonId), isNull(guardianship.endedAtMs)))
    .orderBy(person.givenName, person.id);
}
