import { z } from "zod";
import type { Db } from "@/db/client";
import { athleteScope } from "@/server/data/access";
import {
  accountOf,
  disableAccount,
  isEmailTaken,
  rolesOf,
  setAccountEmail,
} from "@/server/data/accounts-of-people";
import {
  athleteOfPerson,
  endGuardianship,
  guardiansOf,
  insertAthlete,
  insertPerson,
  saveArm,
  saveAthlete,
  setCoach,
  startGuardianship,
} from "@/server/data/athlete-records";
import { findPerson } from "@/server/data/people";
import { findSite } from "@/server/data/sites";
import { Refusal } from "@/server/domain/errors/refusal";
import {
  type AthleteRecord,
  athleteRecord,
  birthProblem,
  calendarDay,
  isMinorAlone,
} from "@/server/domain/people/athlete-record";
import { isOfAge, maySignIn } from "@/server/domain/people/person";
import { type GuardianChoice, guardianChoice } from "@/server/domain/people/person-details";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { comeBack, leaveOn } from "../athlete-leaves";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command } from "../procedures";
import { refuseUnoffered } from "../rule-books/book-answer";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const version = z.int().min(1);
const coachPersonId = id.nullable();
const locate = (db: Db, { athleteId }: { athleteId: string }) => athleteScope(db, athleteId);

export const familiesRouter = router({
  /** Adds an athlete with those who stand for them; a minor never without one. */
  addAthlete: command({
    action: "people.manage",
    input: athleteRecord.extend({ coachPersonId, guardians: z.array(guardianChoice).max(6) }),
    output: z.strictObject({ athleteId: id, personId: id }),
    async run(scope, { guardians, coachPersonId: coach, ...record }) {
      const today = await checkRecord(scope, record, guardians.length);
      await refuseUnoffered(scope.db, record.ruleBookId, null);
      await refuseTakenEmail(scope.db, record.email, "");
      await mustCoach(scope.db, coach);
      const facts = { coachPersonId: coach, today, nowMs: scope.nowMs };
      const ids = await insertAthlete(scope.db, record, facts);
      for (const guardian of guardians) await addGuardian(scope, ids, guardian);
      await noteAct(scope, "athlete.added", ids.athleteId, { guardians: guardians.length });
      return ids;
    },
  }),

  /** Changes an athlete's record over the version it was read at. */
  editAthlete: command({
    action: "people.manage",
    input: athleteRecord.extend({ athleteId: id, version }),
    output: done,
    athlete: locate,
    async run(scope, { athleteId, version: at, ...record }) {
      const { personId } = scope.athlete;
      const guardians = await guardiansOf(scope.db, athleteId);
      const today = await checkRecord(scope, record, guardians.length);
      await refuseTakenEmail(scope.db, record.email, personId);
      await refuseUnoffered(
        scope.db,
        record.ruleBookId,
        (await athleteOfPerson(scope.db, personId))?.ruleBookId ?? null,
      );
      if (!(await saveAthlete(scope.db, { athleteId, personId, version: at }, record))) {
        throw new Refusal({ reason: "changed_meanwhile" });
      }
      await keepSignInLawful(scope, record, today);
      const { throws, heightCm, homeSiteId, ruleBookId } = record;
      await noteAct(scope, "athlete.edited", athleteId, { throws, heightCm, homeSiteId, ruleBookId });
      return DONE;
    },
  }),

  /** Writes down a measured height and the throwing hand, as any coach may beside the mound. */
  editArm: command({
    action: "athlete.edit",
    input: athleteRecord.pick({ throws: true, heightCm: true }).extend({ athleteId: id, version }),
    output: done,
    athlete: locate,
    async run(scope, { athleteId, version: at, ...arm }) {
      if (!(await saveArm(scope.db, { athleteId, version: at }, arm))) {
        throw new Refusal({ reason: "changed_meanwhile" });
      }
      await noteAct(scope, "athlete.edited", athleteId, { ...arm });
      return DONE;
    },
  }),

  /** Assigns an athlete to a coach, or to nobody. */
  assignCoach: command({
    action: "people.manage",
    input: z.strictObject({ athleteId: id, coachPersonId }),
    output: done,
    athlete: locate,
    async run(scope, { athleteId, coachPersonId: coach }) {
      await mustCoach(scope.db, coach);
      await setCoach(scope.db, athleteId, coach);
      await noteAct(scope, "athlete.assigned", athleteId, { coachPersonId: coach });
      return DONE;
    },
  }),

  /** Says from which day on an athlete is gone; refused while anything is booked or owed then. */
  leave: command({
    action: "people.manage",
    input: z.strictObject({ athleteId: id, version, leftOn: calendarDay }),
    output: done,
    athlete: locate,
    async run(scope, input) {
      await leaveOn(scope, input.leftOn, input.version);
      return DONE;
    },
  }),

  /** Says that an athlete who left is back, or does not leave after all. */
  comeBack: command({
    action: "people.manage",
    input: z.strictObject({ athleteId: id, version }),
    output: done,
    athlete: locate,
    async run(scope, input) {
      await comeBack(scope, input.version);
      return DONE;
    },
  }),

  /** Lets a person on record, or a new one, stand for an athlete. */
  addGuardian: command({
    action: "people.manage",
    input: z.strictObject({ athleteId: id, guardian: guardianChoice }),
    output: z.strictObject({ personId: id }),
    athlete: locate,
    run: async (scope, { guardian }) => ({ personId: await addGuardian(scope, scope.athlete, guardian) }),
  }),

  /** Ends a guardianship at once; the last one of a minor cannot end. */
  endGuardianship: command({
    action: "people.manage",
    input: z.strictObject({ athleteId: id, guardianPersonId: id }),
    output: done,
    athlete: locate,
    async run(scope, { athleteId, guardianPersonId }) {
      const guardians = await guardiansOf(scope.db, athleteId);
      const others = guardians.filter((guardian) => guardian.personId !== guardianPersonId);
      if (others.length === guardians.length) throw new Refusal({ reason: "not_a_guardian" });
      if (isMinorAlone(scope.athlete.bornOn, others.length, scope.today)) {
        const athleteGivenName = (await findPerson(scope.db, scope.athlete.personId))?.givenName ?? "";
        throw new Refusal({ reason: "guardian_missing", athleteGivenName });
      }
      await endGuardianship(scope.db, guardianPersonId, athleteId, scope.nowMs);
      await noteAct(scope, "guardian.ended", athleteId, { guardianPersonId });
      return DONE;
    },
  }),
});

/** Checks a record against the day at its home site, and gives that day. */
async function checkRecord(
  { db, nowMs }: Pick<Scope, "db" | "nowMs">,
  record: AthleteRecord,
  guardians: number,
): Promise<CalendarDay> {
  const site = await findSite(db, record.homeSiteId);
  if (!site) throw new Refusal({ reason: "not_found" });
  const today = dayOf(nowMs, site.zone);
  const why = birthProblem(record.bornOn, today);
  if (why) throw new Refusal({ reason: "settings_invalid", why });
  if (isMinorAlone(record.bornOn, guardians, today)) {
    throw new Refusal({ reason: "guardian_missing", athleteGivenName: record.givenName });
  }
  return today;
}

/** The sign-in follows the e-mail, and ends when the birth date turns out to be under the age for one. */
async function keepSignInLawful(scope: Scope, record: AthleteRecord, today: CalendarDay): Promise<void> {
  const { personId } = scope.athlete;
  if (record.email) await setAccountEmail(scope.db, personId, record.email, scope.nowMs);
  if (maySignIn(record.bornOn, today) || !(await accountOf(scope.db, personId))) return;
  await disableAccount(scope.db, personId, scope.nowMs);
  await noteAct(scope, "account.disabled", personId);
}

async function addGuardian(
  scope: Pick<Scope, "db" | "actor" | "nowMs">,
  athlete: { athleteId: string; personId: string },
  guardian: GuardianChoice,
): Promise<string> {
  const personId = await guardianPerson(scope, guardian);
  const asAthlete = await athleteOfPerson(scope.db, personId);
  const isMinor = asAthlete !== null && !isOfAge(asAthlete.bornOn, dayOf(scope.nowMs, "UTC"));
  if (isMinor || personId === athlete.personId) throw new Refusal({ reason: "not_a_guardian" });
  await startGuardianship(scope.db, personId, athlete.athleteId, scope.nowMs);
  await noteAct(scope, "guardian.added", athlete.athleteId, { guardianPersonId: personId });
  return personId;
}

async function guardianPerson(scope: Pick<Scope, "db" | "nowMs">, guardian: GuardianChoice): Promise<string> {
  if (!("personId" in guardian)) {
    await refuseTakenEmail(scope.db, guardian.email, "");
    return insertPerson(scope.db, guardian, scope.nowMs);
  }
  if (!(await findPerson(scope.db, guardian.personId))) throw new Refusal({ reason: "not_found" });
  return guardian.personId;
}

async function mustCoach(db: Db, personId: string | null): Promise<void> {
  const roles = personId === null ? null : await rolesOf(db, personId);
  if (roles && !roles.includes("coach")) throw new Refusal({ reason: "not_found" });
}

async function refuseTakenEmail(db: Db, email: string | null, exceptPersonId: string): Promise<void> {
  if (email && (await isEmailTaken(db, email, exceptPersonId))) throw new Refusal({ reason: "email_taken" });
}
