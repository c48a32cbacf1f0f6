import { and, asc, eq, gt, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { academy, account, accountLink, person, signIn } from "@/db/schema/people";
import type { LinkPurpose } from "@/server/domain/people/person";

/** How long a sign-in lasts without being renewed, in milliseconds (30 days). */
export const SIGN_IN_LIFE_MS = 30 * 86_400_000;

/** The account that signs in with an address (any letter case), or null. */
export async function accountByEmail(db: Db, email: string) {
  const [row] = await db
    .select({ personId: account.personId, passwordHash: account.passwordHash })
    .from(account)
    .innerJoin(person, eq(person.id, account.personId))
    .where(
      and(
        eq(account.email, email.trim().toLowerCase()),
        isNull(account.disabledAtMs),
        isNull(person.erasedAtMs),
      ),
    );
  return row ?? null;
}

/** Starts a sign-in for a person. */
export async function startSignIn(
  tx: Db,
  row: { id: string; personId: string; device: string; nowMs: number },
): Promise<void> {
  await tx.insert(signIn).values({
    id: row.id,
    personId: row.personId,
    device: row.device,
    createdAtMs: row.nowMs,
    lastSeenAtMs: row.nowMs,
    expiresAtMs: row.nowMs + SIGN_IN_LIFE_MS,
  });
}

/** The sign-ins of a person that neither ended nor expired, oldest first. */
export async function listSignIns(db: Db, personId: string, nowMs: number) {
  return db
    .select({ id: signIn.id, device: signIn.device, createdAtMs: signIn.createdAtMs })
    .from(signIn)
    .where(and(eq(signIn.personId, personId), isNull(signIn.endedAtMs), gt(signIn.expiresAtMs, nowMs)))
    .orderBy(asc(signIn.createdAtMs));
}

/** Ends one sign-in of a person; nothing happens when it is not theirs or has ended. */
export async function endSignIn(tx: Db, personId: string, signInId: string, nowMs: number): Promise<void> {
  await tx
    .update(signIn)
    .set({ endedAtMs: nowMs })
    .where(and(eq(signIn.id, signInId), eq(signIn.personId, personId), isNull(signIn.endedAtMs)));
}

/** Ends every sign-in of a person. */
export async function endSignIns(tx: Db, personId: string, nowMs: number): Promise<void> {
  await tx
    .update(signIn)
    .set({ endedAtMs: nowMs })
    .where(and(eq(signIn.personId, personId), isNull(signIn.endedAtMs)));
}

/** Sets the password of an account. */
export async function setPasswordHash(tx: Db, personId: string, passwordHash: string): Promise<void> {
  await tx.update(account).set({ passwordHash }).where(eq(account.personId, personId));
}

/** Keeps a single-use link by the SHA-256 of its token; links of the same purpose made before are spent. */
export async function keepLink(
  tx: Db,
  link: { tokenHash: string; personId: string; purpose: LinkPurpose; nowMs: number; expiresAtMs: number },
): Promise<void> {
  await tx
    .update(accountLink)
    .set({ usedAtMs: link.nowMs })
    .where(
      and(
        eq(accountLink.personId, link.personId),
        eq(accountLink.purpose, link.purpose),
        isNull(accountLink.usedAtMs),
      ),
    );
  await tx.insert(accountLink).values({
    tokenHash: link.tokenHash,
    personId: link.personId,
    purpose: link.purpose,
    createdAtMs: link.nowMs,
    expiresAtMs: link.expiresAtMs,
  });
}

/** The person and purpose of a link that is neither used nor expired, or null. */
export async function findLink(db: Db, tokenHash: string, nowMs: number) {
  const [row] = await db
    .select({
      personId: accountLink.personId,
      purpose: accountLink.purpose,
      expiresAtMs: accountLink.expiresAtMs,
      usedAtMs: accountLink.usedAtMs,
      givenName: person.givenName,
      email: account.email,
    })
    .from(accountLink)
    .innerJoin(person, eq(person.id, accountLink.personId))
    .innerJoin(account, eq(account.personId, accountLink.personId))
    .where(and(eq(accountLink.tokenHash, tokenHash), isNull(account.disabledAtMs)));
  if (!row || row.usedAtMs !== null || row.expiresAtMs <= nowMs) return null;
  return row;
}

/** Spends every link of a person, invitation and reset alike: one was used, or the address they went to is no longer theirs. */
export async function spendLinks(tx: Db, personId: string, nowMs: number): Promise<void> {
  await tx
    .update(accountLink)
    .set({ usedAtMs: nowMs })
    .where(and(eq(accountLink.personId, personId), isNull(accountLink.usedAtMs)));
}

/** Whether the academy exists yet; until it does, the first visit makes it. */
export async function academyExists(db: Db): Promise<boolean> {
  const [row] = await db.select({ id: academy.id }).from(academy);
  return row !== undefined;
}
