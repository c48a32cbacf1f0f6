import { z } from "zod";
import type { Db } from "@/db/client";
import { newLinkToken } from "@/server/auth/link-token";
import { findSettings } from "@/server/data/academy-settings";
import { keepLink } from "@/server/data/accounts";
import {
  accountOf,
  disableAccount,
  enableAccount,
  hasOtherAdmin,
  insertAccount,
  isEmailTaken,
  rolesOf,
} from "@/server/data/accounts-of-people";
import { athleteOfPerson } from "@/server/data/athlete-records";
import { tellPerson } from "@/server/data/notices";
import { findPerson } from "@/server/data/people";
import { findSite } from "@/server/data/sites";
import { Refusal } from "@/server/domain/errors/refusal";
import { LINK_LIFE_MS, maySignIn } from "@/server/domain/people/person";
import { ageOn, dayOf } from "@/server/domain/time/calendar-day";
import { env } from "@/server/env";
import type { Scope } from "../context";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command } from "../procedures";
import { router } from "../trpc";

const onePerson = z.strictObject({ personId: z.string().min(1).max(60) });

export const invitationsRouter = router({
  /** Invites a person by a single-use link in the outbox; a new invitation makes the one before it useless. */
  send: command({
    action: "people.manage",
    input: onePerson,
    output: done,
    async run(scope, { personId }) {
      const { db, nowMs } = scope;
      const person = await findPerson(db, personId);
      if (!person) throw new Refusal({ reason: "not_found" });
      await refuseTooYoung(db, personId, nowMs);
      await ensureAccount(db, person, nowMs);
      const { token, tokenHash } = newLinkToken();
      const expiresAtMs = nowMs + LINK_LIFE_MS.invitation;
      await keepLink(db, { tokenHash, personId, purpose: "invitation", nowMs, expiresAtMs });
      await sayWelcome(scope, person, token);
      await noteAct(scope, "account.invited", personId);
      return DONE;
    },
  }),

  /** Disables an account and ends its sign-ins at once; never the last admin's. */
  disable: command({
    action: "people.manage",
    input: onePerson,
    output: done,
    async run(scope, { personId }) {
      await mustHaveAccount(scope.db, personId);
      const isAdmin = (await rolesOf(scope.db, personId)).includes("admin");
      if (isAdmin && !(await hasOtherAdmin(scope.db, personId))) throw new Refusal({ reason: "last_admin" });
      await disableAccount(scope.db, personId, scope.nowMs);
      await noteAct(scope, "account.disabled", personId);
      return DONE;
    },
  }),

  /** Lets a disabled account sign in again; an athlete under the age for a sign-in stays without one. */
  enable: command({
    action: "people.manage",
    input: onePerson,
    output: done,
    async run(scope, { personId }) {
      await mustHaveAccount(scope.db, personId);
      await refuseTooYoung(scope.db, personId, scope.nowMs);
      await enableAccount(scope.db, personId);
      await noteAct(scope, "account.enabled", personId);
      return DONE;
    },
  }),
});

async function mustHaveAccount(db: Db, personId: string): Promise<void> {
  if (!(await accountOf(db, personId))) throw new Refusal({ reason: "not_found" });
}

async function refuseTooYoung(db: Db, personId: string, nowMs: number): Promise<void> {
  const athlete = await athleteOfPerson(db, personId);
  if (!athlete) return;
  const site = await findSite(db, athlete.homeSiteId);
  const today = dayOf(nowMs, site?.zone ?? "UTC");
  if (maySignIn(athlete.bornOn, today)) return;
  throw new Refusal({ reason: "too_young_to_sign_in", ageYears: ageOn(athlete.bornOn, today) });
}

/** Makes the account an invitation is for, or refuses: no e-mail, an address in use, joined already, or disabled. */
async function ensureAccount(
  db: Db,
  person: { personId: string; email: string | null },
  nowMs: number,
): Promise<void> {
  const { personId, email } = person;
  const before = await accountOf(db, personId);
  if (before?.hasJoined || before?.isDisabled) throw new Refusal({ reason: "already_joined" });
  if (!email) throw new Refusal({ reason: "email_missing" });
  if (await isEmailTaken(db, email, personId)) throw new Refusal({ reason: "email_taken" });
  if (!before) await insertAccount(db, { personId, email, passwordHash: null, nowMs });
}

async function sayWelcome(
  { db, nowMs }: Pick<Scope, "db" | "nowMs">,
  person: { personId: string; givenName: string },
  token: string,
): Promise<void> {
  const academyName = (await findSettings(db))?.name ?? "the academy";
  const text = {
    kind: "invitation",
    subject: `${academyName} invites you`,
    body: `${person.givenName}, ${academyName} keeps its reviews, sessions and throws here and invites you in. This link works once, for a week:\n${env.publicUrl}/join/${token}\nIf you did not expect it, there is nothing to do.`,
    forGuardians: `${person.givenName} was invited to a sign-in at ${academyName}. The link went to them alone; whatever they can see there, you can see too.`,
  } as const;
  await tellPerson(db, person.personId, text, nowMs);
}
