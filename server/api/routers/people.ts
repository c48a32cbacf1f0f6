import { z } from "zod";
import type { Db } from "@/db/client";
import {
  endRole,
  grantRole,
  hasOtherAdmin,
  isEmailTaken,
  rolesOf,
  setAccountEmail,
} from "@/server/data/accounts-of-people";
import { athleteOfPerson, insertPerson, savePerson, unassignAthletesOf } from "@/server/data/athlete-records";
import { findPerson, type PersonCard } from "@/server/data/people";
import { listAdults, listPeople, listStaff } from "@/server/data/people-list";
import { personRecord } from "@/server/data/person-record";
import { listSites } from "@/server/data/sites";
import { roundsInHand, sessionsAheadOfCoach } from "@/server/data/work-ahead";
import { Refusal } from "@/server/domain/errors/refusal";
import { calendarDay } from "@/server/domain/people/athlete-record";
import { peopleFilter, SIGN_IN_STATES } from "@/server/domain/people/people-filter";
import { STAFF_ROLES, THROWING_HANDS } from "@/server/domain/people/person";
import { emailAddress, personDetails } from "@/server/domain/people/person-details";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { bookChoices } from "../rule-books/book-answer";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const role = z.enum(STAFF_ROLES);
const name = { givenName: z.string(), familyName: z.string() };
const addresses = { email: z.string().nullable(), phone: z.string().nullable() };

/** People on one page of the list. */
const PAGE_SIZE = 50;

export const peopleRouter = router({
  /** One page of the people on record, by family name. */
  list: query({
    action: "people.staffView",
    input: peopleFilter.extend({ page: z.int().min(1).max(10_000) }),
    output: z.strictObject({
      rows: z.array(
        z.strictObject({
          personId: id,
          ...name,
          email: z.string().nullable(),
          roles: z.array(role),
          athlete: z
            .strictObject({
              athleteId: id,
              bornOn: calendarDay,
              coachName: z.string().nullable(),
              leftOn: calendarDay.nullable(),
            })
            .nullable(),
          standsFor: z.array(z.strictObject({ personId: id, givenName: z.string() })),
          signIn: z.enum(SIGN_IN_STATES),
        }),
      ),
      total: z.number(),
      pageSize: z.number(),
    }),
    async run({ db }, { page, ...filter }) {
      const found = await listPeople(db, filter, { limit: PAGE_SIZE, offset: (page - 1) * PAGE_SIZE });
      return { ...found, pageSize: PAGE_SIZE };
    },
  }),

  /** Everything on record of one person. */
  person: query({
    action: "people.staffView",
    input: z.strictObject({ personId: id }),
    output: z.strictObject({
      personId: id,
      ...name,
      ...addresses,
      roles: z.array(role),
      signIn: z.enum(SIGN_IN_STATES),
      athlete: z
        .strictObject({
          athleteId: id,
          bornOn: calendarDay,
          throws: z.enum(THROWING_HANDS),
          heightCm: z.number().nullable(),
          homeSiteId: id,
          siteName: z.string(),
          zone: z.string(),
          coachPersonId: id.nullable(),
          ruleBookId: z.string(),
          joinedOn: calendarDay,
          leftOn: calendarDay.nullable(),
          grantsGuardians: z.boolean(),
          version: z.number(),
          guardians: z.array(z.strictObject({ personId: id, ...name, ...addresses })),
        })
        .nullable(),
      standsFor: z.array(z.strictObject({ athleteId: id, personId: id, ...name })),
    }),
    async run({ db }, { personId }) {
      const record = await personRecord(db, personId);
      if (!record) throw new Refusal({ reason: "not_found" });
      return record;
    },
  }),

  /** What a form about a person offers: coaches, people who may stand for an athlete, sites, rule books. */
  choices: query({
    action: "people.staffView",
    input: z.strictObject({}),
    output: z.strictObject({
      coaches: z.array(z.strictObject({ personId: id, ...name })),
      adults: z.array(z.strictObject({ personId: id, ...name, email: z.string().nullable() })),
      sites: z.array(z.strictObject({ siteId: id, name: z.string(), zone: z.string() })),
      /** Every book by its name; only those offered can be chosen anew. */
      ruleBooks: z.array(z.strictObject({ id: z.string(), name: z.string(), isOffered: z.boolean() })),
    }),
    async run({ db }) {
      const live = (await listSites(db, "9999-12-31")).filter((site) => !site.isRetired);
      return {
        coaches: await listStaff(db, "coach"),
        adults: await listAdults(db),
        sites: live.map(({ siteId, name: called, zone }) => ({ siteId, name: called, zone })),
        ruleBooks: await bookChoices(db),
      };
    },
  }),

  /** Adds a member of staff; they join by an invitation. */
  addStaff: command({
    action: "people.manage",
    input: personDetails.extend({ email: emailAddress, roles: z.array(role).min(1).max(2) }),
    output: z.strictObject({ personId: id }),
    async run(scope, { roles, ...details }) {
      await refuseTakenEmail(scope.db, details.email, "");
      const personId = await insertPerson(scope.db, details, scope.nowMs);
      for (const each of roles) await grantRole(scope.db, personId, each);
      await noteAct(scope, "person.added", personId, { roles: roles.join(" ") });
      return { personId };
    },
  }),

  /** Changes names and addresses of somebody who is no athlete; their sign-in goes by the new e-mail at once. */
  edit: command({
    action: "people.manage",
    input: personDetails.extend({ personId: id }),
    output: done,
    async run(scope, { personId, ...details }) {
      await mustBeThere(scope.db, personId);
      if (await athleteOfPerson(scope.db, personId)) throw new Refusal({ reason: "not_found" });
      await refuseTakenEmail(scope.db, details.email, personId);
      await savePerson(scope.db, personId, details);
      if (details.email) await setAccountEmail(scope.db, personId, details.email, scope.nowMs);
      await noteAct(scope, "person.edited", personId);
      return DONE;
    },
  }),

  /** Makes a person a coach or an admin. */
  grantRole: command({
    action: "people.manage",
    input: z.strictObject({ personId: id, role }),
    output: done,
    async run(scope, input) {
      await mustBeThere(scope.db, input.personId);
      await grantRole(scope.db, input.personId, input.role);
      await noteAct(scope, "role.granted", input.personId, { role: input.role });
      return DONE;
    },
  }),

  /** Ends a staff role: never the last admin's, and a coach's only once nothing waits for them. */
  endRole: command({
    action: "people.manage",
    input: z.strictObject({ personId: id, role }),
    output: done,
    async run(scope, input) {
      const { db, nowMs } = scope;
      if (!(await rolesOf(db, input.personId)).includes(input.role))
        throw new Refusal({ reason: "not_found" });
      if (input.role === "admin" && !(await hasOtherAdmin(db, input.personId))) {
        throw new Refusal({ reason: "last_admin" });
      }
      const facts = input.role === "coach" ? await freeCoach(db, input.personId, nowMs) : {};
      await endRole(db, input.personId, input.role, nowMs);
      await noteAct(scope, "role.ended", input.personId, { role: input.role, ...facts });
      return DONE;
    },
  }),
});

async function mustBeThere(db: Db, personId: string): Promise<PersonCard> {
  const found = await findPerson(db, personId);
  if (!found) throw new Refusal({ reason: "not_found" });
  return found;
}

async function refuseTakenEmail(db: Db, email: string | null, exceptPersonId: string): Promise<void> {
  if (email && (await isEmailTaken(db, email, exceptPersonId))) throw new Refusal({ reason: "email_taken" });
}

async function freeCoach(db: Db, personId: string, nowMs: number): Promise<{ athletesFreed: number }> {
  const sessions = await sessionsAheadOfCoach(db, personId, nowMs);
  const rounds = await roundsInHand(db, personId);
  if (sessions + rounds > 0) throw new Refusal({ reason: "coach_has_work", sessions, rounds });
  return { athletesFreed: await unassignAthletesOf(db, personId) };
}
