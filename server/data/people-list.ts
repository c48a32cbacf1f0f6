import { and, asc, count, eq, exists, inArray, isNull, type SQL, sql } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { account, athlete, guardianship, person, staffRole } from "@/db/schema/people";
import {
  type PeopleFilter,
  type PersonKind,
  type SignInState,
  signInState,
} from "@/server/domain/people/people-filter";
import type { StaffRole } from "@/server/domain/people/person";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** A person as the list of people shows them. */
export interface ListedPerson {
  personId: string;
  givenName: string;
  familyName: string;
  email: string | null;
  roles: StaffRole[];
  athlete: {
    athleteId: string;
    bornOn: CalendarDay;
    coachName: string | null;
    leftOn: CalendarDay | null;
  } | null;
  standsFor: { personId: string; givenName: string }[];
  signIn: SignInState;
}

const coachPerson = alias(person, "coach_person");
const wardPerson = alias(person, "ward_person");

/**
 * One page of the people on record, by family name, with the number of all that fit. Erased people are left out; ended
 * roles and guardianships do not count.
 */
export async function listPeople(
  db: Db,
  filter: PeopleFilter,
  page: { limit: number; offset: number },
): Promise<{ rows: ListedPerson[]; total: number }> {
  const fits = conditionOf(db, filter);
  const [all] = await db.select({ total: count() }).from(person).where(fits);
  const found = await personRows(db, fits)
    .orderBy(asc(person.familyName), asc(person.givenName), asc(person.id))
    .limit(page.limit)
    .offset(page.offset);
  const ids = found.map((row) => row.personId);
  const roles = await rolesOf(db, ids);
  const wards = await wardsOf(db, ids);
  const rows = found.map((row) => ({
    personId: row.personId,
    givenName: row.givenName,
    familyName: row.familyName,
    email: row.email,
    roles: roles.filter((each) => each.personId === row.personId).map((each) => each.role),
    athlete:
      row.athleteId && row.bornOn
        ? { ...athletePart(row), athleteId: row.athleteId, bornOn: row.bornOn }
        : null,
    standsFor: wards
      .filter((each) => each.guardianPersonId === row.personId)
      .map(({ personId, givenName }) => ({ personId, givenName })),
    signIn: signInState(
      row.accountEmail === null
        ? null
        : { hasJoined: row.passwordHash !== null, isDisabled: row.disabledAtMs !== null },
    ),
  }));
  return { rows, total: all?.total ?? 0 };
}

function athletePart(row: {
  coachGivenName: string | null;
  coachFamilyName: string | null;
  leftOn: string | null;
}) {
  const coachName =
    row.coachGivenName === null ? null : `${row.coachGivenName} ${row.coachFamilyName ?? ""}`.trim();
  return { coachName, leftOn: row.leftOn };
}

function personRows(db: Db, fits: SQL | undefined) {
  return db
    .select({
      personId: person.id,
      givenName: person.givenName,
      familyName: person.familyName,
      email: person.email,
      athleteId: athlete.id,
      bornOn: athlete.bornOn,
      leftOn: athlete.leftOn,
      coachGivenName: coachPerson.givenName,
      coachFamilyName: coachPerson.familyName,
      accountEmail: account.email,
      passwordHash: account.passwordHash,
      disabledAtMs: account.disabledAtMs,
    })
    .from(person)
    .leftJoin(athlete, eq(athlete.personId, person.id))
    .leftJoin(coachPerson, eq(coachPerson.id, athlete.coachPersonId))
    .leftJoin(account, eq(account.personId, person.id))
    .where(fits)
    .$dynamic();
}

function conditionOf(db: Db, { search, kind }: PeopleFilter): SQL | undefined {
  const words = search.toLowerCase();
  return and(
    isNull(person.erasedAtMs),
    words === ""
      ? undefined
      : sql`instr(lower(${person.givenName} || ' ' || ${person.familyName} || ' ' || coalesce(${person.email}, '')), ${words}) > 0`,
    kind === null ? undefined : isOfKind(db, kind),
  );
}

function isOfKind(db: Db, kind: PersonKind): SQL {
  if (kind === "athlete") {
    return exists(db.select({ one: sql`1` }).from(athlete).where(eq(athlete.personId, person.id)));
  }
  if (kind === "guardian") {
    const live = and(eq(guardianship.guardianPersonId, person.id), isNull(guardianship.endedAtMs));
    return exists(db.select({ one: sql`1` }).from(guardianship).where(live));
  }
  const holds = and(eq(staffRole.personId, person.id), eq(staffRole.role, kind), isNull(staffRole.endedAtMs));
  return exists(db.select({ one: sql`1` }).from(staffRole).where(holds));
}

function rolesOf(db: Db, personIds: readonly string[]) {
  return db
    .select({ personId: staffRole.personId, role: staffRole.role })
    .from(staffRole)
    .where(and(inArray(staffRole.personId, [...personIds]), isNull(staffRole.endedAtMs)))
    .orderBy(staffRole.role);
}

function wardsOf(db: Db, personIds: readonly string[]) {
  return db
    .select({
      guardianPersonId: guardianship.guardianPersonId,
      personId: wardPerson.id,
      givenName: wardPerson.givenName,
    })
    .from(guardianship)
    .innerJoin(athlete, eq(athlete.id, guardianship.athleteId))
    .innerJoin(wardPerson, eq(wardPerson.id, athlete.personId))
    .where(and(inArray(guardianship.guardianPersonId, [...personIds]), isNull(guardianship.endedAtMs)))
    .orderBy(wardPerson.givenName);
}

/** The people who hold a staff role, by name: for choosing a coach. */
export async function listStaff(db: Db, role: StaffRole) {
  return db
    .select({ personId: person.id, givenName: person.givenName, familyName: person.familyName })
    .from(staffRole)
    .innerJoin(person, eq(person.id, staffRole.personId))
    .where(and(eq(staffRole.role, role), isNull(staffRole.endedAtMs)))
    .orderBy(person.givenName, person.familyName, person.id);
}

/** Everybody on record who is no athlete, by name: for choosing who stands for one. */
export async function listAdults(db: Db) {
  return db
    .select({
      personId: person.id,
      givenName: person.givenName,
      familyName: person.familyName,
      email: person.email,
    })
    .from(person)
    .leftJoin(athlete, eq(athlete.personId, person.id))
    .where(and(isNull(person.erasedAtMs), isNull(athlete.id)))
    .orderBy(person.givenName, person.familyName, person.id);
}
