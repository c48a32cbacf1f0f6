import type { Db } from "@/db/client";
import { type AuditedAct, audit } from "@/server/data/audit";
import type { Actor } from "@/server/domain/access/relation";

/** Puts an act of the caller into the audit log, in the transaction of the act: ids and figures only. */
export async function noteAct(
  scope: { db: Db; actor: Actor; nowMs: number },
  action: string,
  subjectId: string,
  facts: AuditedAct["facts"] = {},
): Promise<void> {
  const { db, actor, nowMs } = scope;
  await audit(db, { atMs: nowMs, actorPersonId: actor.personId, action, subjectId, facts });
}
