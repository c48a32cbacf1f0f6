import { createHash } from "node:crypto";
import { desc } from "drizzle-orm";
import type { Db } from "@/db/client";
import { auditLog } from "@/db/schema/people";

/** One act to remember: ids and figures only, no names and no free text. */
export interface AuditedAct {
  atMs: number;
  actorPersonId: string | null;
  action: string;
  subjectId: string;
  facts: Record<string, string | number | boolean | null>;
}

const FIRST_HASH = "0".repeat(64);

/**
 * The hash of a row over the hash before it (SHA-256 over a fixed JSON array), so that a row taken out or changed shows.
 * @example rowHash("0".repeat(64), act) // 64 hexadecimal digits
 */
export function rowHash(previousHash: string, act: AuditedAct): string {
  const line = JSON.stringify([
    previousHash,
    act.atMs,
    act.actorPersonId,
    act.action,
    act.subjectId,
    JSON.stringify(act.facts),
  ]);
  return createHash("sha256").update(line).digest("hex");
}

/** Appends an act to the audit log, in the transaction of the act itself. */
export async function audit(tx: Db, act: AuditedAct): Promise<void> {
  const [last] = await tx
    .select({ hash: auditLog.hash })
    .from(auditLog)
    .orderBy(desc(auditLog.sequence))
    .limit(1);
  const previousHash = last?.hash ?? FIRST_HASH;
  await tx.insert(auditLog).values({
    atMs: act.atMs,
    actorPersonId: act.actorPersonId,
    action: act.action,
    subjectId: act.subjectId,
    facts: JSON.stringify(act.facts),
    previousHash,
    hash: rowHash(previousHash, act),
  });
}

/**
 * Walks the whole chain.
 * @returns the sequence number of the first row that does not fit, or null when every row does
 */
export async function firstBrokenAuditRow(db: Db): Promise<number | null> {
  let previousHash = FIRST_HASH;
  for (const row of await db.select().from(auditLog).orderBy(auditLog.sequence)) {
    const act = { ...row, facts: JSON.parse(row.facts) as AuditedAct["facts"] };
    if (row.previousHash !== previousHash || row.hash !== rowHash(previousHash, act)) return row.sequence;
    previousHash = row.hash;
  }
  return null;
}
