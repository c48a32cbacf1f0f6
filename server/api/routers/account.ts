import { z } from "zod";
import type { Db } from "@/db/client";
import { hashOfToken, newLinkToken } from "@/server/auth/link-token";
import { hashPassword } from "@/server/auth/password";
import { countTry } from "@/server/auth/sign-in-limits";
import { findSettings } from "@/server/data/academy-settings";
import {
  academyExists,
  accountByEmail,
  endSignIn,
  endSignIns,
  findLink,
  keepLink,
  listSignIns,
  setPasswordHash,
  spendLinks,
} from "@/server/data/accounts";
import { audit } from "@/server/data/audit";
import { nameOf } from "@/server/data/names";
import { tellPerson } from "@/server/data/notices";
import { findPerson, ownAthletes } from "@/server/data/people";
import { insertStartingAcademy } from "@/server/data/starting-academy";
import { Refusal } from "@/server/domain/errors/refusal";
import { passwordProblem } from "@/server/domain/people/password-rules";
import { fullName, LINK_LIFE_MS, LINK_PURPOSES, STAFF_ROLES } from "@/server/domain/people/person";
import { startingAcademy } from "@/server/domain/people/starting-academy";
import { env } from "@/server/env";
import { DONE, done } from "../done";
import { command, openCommand, openQuery, query } from "../procedures";
import { router } from "../trpc";

const nothing = z.strictObject({});
const token = z.string().min(20).max(100);
const email = z.email().max(200);

async function hashGoodPassword(password: string): Promise<string> {
  const why = passwordProblem(password);
  if (why) throw new Refusal({ reason: "password_weak", why });
  return hashPassword(password);
}

/** The link behind a token. @throws Refusal `link_spent` when it was used, has expired, or never was */
async function liveLink(db: Db, sent: string, nowMs: number) {
  const found = await findLink(db, hashOfToken(sent), nowMs);
  if (!found) throw new Refusal({ reason: "link_spent" });
  return found;
}

export const accountRouter = router({
  /** Whether the academy exists; the first visit to one that does not makes its first admin. */
  academyExists: openQuery({
    action: "account.signIn",
    input: nothing,
    output: z.strictObject({ exists: z.boolean() }),
    run: async ({ db }) => ({ exists: await academyExists(db) }),
  }),

  /** Makes the academy with its first site, its first admin and the starting checkpoints; once only. */
  startAcademy: openCommand({
    action: "account.startAcademy",
    input: startingAcademy.extend({ password: z.string().max(300) }),
    output: done,
    async prepare({ password }, { connections }) {
      if (await academyExists(connections.reader)) throw new Refusal({ reason: "academy_exists" });
      return hashGoodPassword(password);
    },
    async run({ db, nowMs }, { password: _, ...start }, passwordHash) {
      if (await academyExists(db)) throw new Refusal({ reason: "academy_exists" });
      const adminPersonId = await insertStartingAcademy(db, start, { passwordHash, nowMs });
      await audit(db, {
        atMs: nowMs,
        actorPersonId: adminPersonId,
        action: "academy.started",
        subjectId: adminPersonId,
        facts: {},
      });
      return DONE;
    },
  }),

  /** The person and purpose behind a single-use link. */
  link: openQuery({
    action: "account.useLink",
    input: z.strictObject({ token }),
    output: z.strictObject({ purpose: z.enum(LINK_PURPOSES), givenName: z.string(), email: z.string() }),
    async run({ db, nowMs }, input) {
      const { purpose, givenName, email: address } = await liveLink(db, input.token, nowMs);
      return { purpose, givenName, email: address };
    },
  }),

  /** Spends a link, and every other of that person: sets the password and ends every sign-in of theirs. */
  useLink: openCommand({
    action: "account.useLink",
    input: z.strictObject({ token, password: z.string().max(300) }),
    output: z.strictObject({ email: z.string() }),
    async prepare({ token: sent, password }, { connections, nowMs }) {
      await liveLink(connections.reader, sent, nowMs);
      return hashGoodPassword(password);
    },
    async run({ db, nowMs }, input, passwordHash) {
      const found = await liveLink(db, input.token, nowMs);
      await spendLinks(db, found.personId, nowMs);
      await setPasswordHash(db, found.personId, passwordHash);
      await endSignIns(db, found.personId, nowMs);
      await audit(db, {
        atMs: nowMs,
        actorPersonId: found.personId,
        action: `account.${found.purpose}`,
        subjectId: found.personId,
        facts: {},
      });
      return { email: found.email };
    },
  }),

  /** Sends a reset link when there is an account; the answer is the same when there is none. */
  askReset: openCommand({
    action: "account.askReset",
    input: z.strictObject({ email }),
    output: done,
    prepare: (input, context) => countTry(input.email, context.address),
    async run({ db, nowMs }, input) {
      const found = await accountByEmail(db, input.email);
      const { token: fresh, tokenHash } = newLinkToken();
      if (found) {
        await keepLink(db, {
          tokenHash,
          personId: found.personId,
          purpose: "reset",
          nowMs,
          expiresAtMs: nowMs + LINK_LIFE_MS.reset,
        });
        await tellPerson(
          db,
          found.personId,
          {
            kind: "reset",
            subject: "Set a new password",
            forGuardians: `Somebody asked for a new password for the sign-in of ${fullName(await nameOf(db, found.personId))}. The link went to them alone. If it was not them, there is nothing to do.`,
            body: `Somebody asked for a new password for this address. This link works once, for an hour:\n${env.publicUrl}/join/${fresh}\nIf it was not you, there is nothing to do.`,
          },
          nowMs,
        );
      }
      return DONE;
    },
  }),

  /** The caller: who, which roles, whose family screens they may open, and at which academy. */
  me: query({
    action: "account.own",
    input: nothing,
    output: z.strictObject({
      personId: z.string(),
      givenName: z.string(),
      name: z.string(),
      roles: z.array(z.enum(STAFF_ROLES)),
      athleteId: z.string().nullable(),
      guardianOf: z.array(z.string()),
      athletes: z.array(
        z.strictObject({
          athleteId: z.string(),
          givenName: z.string(),
          isSelf: z.boolean(),
          hasLeft: z.boolean(),
        }),
      ),
      academyName: z.string(),
      isDemo: z.boolean(),
    }),
    async run({ db, actor, nowMs }) {
      const self = await findPerson(db, actor.personId);
      const settings = await findSettings(db);
      return {
        personId: actor.personId,
        givenName: actor.givenName,
        name: fullName(self ?? { givenName: actor.givenName, familyName: "" }),
        roles: [...actor.roles],
        athleteId: actor.athleteId,
        guardianOf: [...actor.guardianOf],
        athletes: await ownAthletes(db, actor, nowMs),
        academyName: settings?.name ?? "",
        isDemo: settings?.isDemo ?? false,
      };
    },
  }),

  /** Where the caller is signed in. */
  signIns: query({
    action: "account.own",
    input: nothing,
    output: z.array(
      z.strictObject({ id: z.string(), device: z.string(), createdAtMs: z.number(), isThis: z.boolean() }),
    ),
    async run({ db, actor, nowMs }) {
      const rows = await listSignIns(db, actor.personId, nowMs);
      return rows.map((row) => ({ ...row, isThis: row.id === actor.signInId }));
    },
  }),

  /** Ends one of the caller's sign-ins, this one included. */
  endSignIn: command({
    action: "account.own",
    input: z.strictObject({ signInId: z.string().max(60) }),
    output: done,
    async run({ db, actor, nowMs }, input) {
      await endSignIn(db, actor.personId, input.signInId, nowMs);
      return DONE;
    },
  }),
});
