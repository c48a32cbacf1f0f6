import { and, eq, isNotNull, isNull, ne } from "drizzle-orm";
import type { Db } from "@/db/client";
import { account, staffRole } from "@/db/schema/people";
import type { StaffRole } from "@/server/domain/people/person";
import { endSignIns, spendLinks } from "./accounts";

/** The account of a person, or null while they were never invited. */
export async function accountOf(db: Db, personId: string) {
  const [row] = await db
    .select({
      email: account.email,
      hasPassword: account.passwordHash,
      disabledAtMs: account.disabledAtMs,
    })
    .from(account)
    .where(eq(account.personId, personId));
  return row
    ? { email: row.email, hasJoined: row.hasPassword !== null, isDisabled: row.disabledAtMs !== null }
    : null;
}

/** Whether somebody else already signs in with an address; disabled accounts count, since they may be enabled again. */
export async function isEmailTaken(db: Db, email: string, exceptPersonId: string): Promise<boolean> {
  const [row] = await db
    .select({ personId: account.personId })
    .from(account)
    .where(and(eq(account.email, email.toLowerCase()), ne(account.personId, exceptPersonId)));
  return row !== undefined;
}

/** Makes an account; without a password hash it can only be joined by an invitation. */
export async function insertAccount(
  tx: Db,
  row: { personId: string; email: string; passwordHash: string | null; nowMs: number },
): Promise<void> {
  await tx.insert(account).values({
    personId: row.personId,
    email: row.email.toLowerCase(),
    passwordHash: row.passwordHash,
    createdAtMs: row.nowMs,
  });
}

/**
 * Lets an account sign in with another address, and spends the links that went to the one before. Nothing happens for a
 * person without an account, or when the address stays.
 */
export async function setAccountEmail(
  tx: Db,
  personId: string,
  address: string,
  nowMs: number,
): Promise<void> {
  const email = address.toLowerCase();
  const changed = await tx
    .update(account)
    .set({ email })
    .where(and(eq(account.personId, personId), ne(account.email, email)))
    .returning({ personId: account.personId });
  if (changed.length > 0) await spendLinks(tx, personId, nowMs);
}

/** Disables an account, ends its sign-ins at once and spends its links. */
export async function disableAccount(tx: Db, personId: string, nowMs: number): Promise<void> {
  await tx
    .update(account)
    .set({ disabledAtMs: nowMs })
    .where(and(eq(account.personId, personId), isNull(account.disabledAtMs)));
  await endSignIns(tx, personId, nowMs);
  await spendLinks(tx, personId, nowMs);
}

/** Lets a disabled account sign in again. */
export async function enableAccount(tx: Db, personId: string): Promise<void> {
  await tx.update(account).set({ disabledAtMs: null }).where(eq(account.personId, personId));
}

/** Gives a person a staff role, or gives it back when it had ended. */
export async function grantRole(tx: Db, personId: string, role: StaffRole): Promise<void> {
  await tx
    .insert(staffRole)
    .values({ personId, role })
    .onConflictDoUpdate({ target: [staffRole.personId, staffRole.role], set: { endedAtMs: null } });
}

/** Ends a person's staff role; it is kept as ended. */
export async function endRole(tx: Db, personId: string, role: StaffRole, nowMs: number): Promise<void> {
  await tx
    .update(staffRole)
    .set({ endedAtMs: nowMs })
    .where(and(eq(staffRole.personId, personId), eq(staffRole.role, role), isNull(staffRole.endedAtMs)));
}

/** The live staff roles of a person. */
export async function rolesOf(db: Db, personId: string): Promise<StaffRole[]> {
  const rows = await db
    .select({ role: staffRole.role })
    .from(staffRole)
    .where(and(eq(staffRole.personId, personId), isNull(staffRole.endedAtMs)))
    .orderBy(staffRole.role);
  return rows.map((row) => row.role);
}

/** Whether somebody else is an admin who has joined and can sign in, so that the academy would not be left without one. */
export async function hasOtherAdmin(db: Db, personId: string): Promise<boolean> {
  const [row] = await db
    .select({ personId: staffRole.personId })
    .from(staffRole)
    .innerJoin(account, eq(account.personId, staffRole.personId))
    .where(
      and(
        eq(staffRole.role, "admin"),
        isNull(staffRole.endedAtMs),
        isNull(account.disabledAtMs),
        isNotNull(account.passwordHash),
        ne(staffRole.personId, personId),
      ),
    );
  return row !== undefined;
}
