import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { claim } from "@/db/schema/sessions";
import {
  type Claim,
  type ClaimResource,
  claimsOf,
  type SessionParties,
} from "@/server/domain/calendar/claims";
import { Refusal } from "@/server/domain/errors/refusal";
import { newId } from "./new-id";

/**
 * Takes everything a session needs for its span. The database itself refuses what is taken already, whoever checked
 * before.
 * @throws Refusal `time_taken` naming what is taken; the unit of work then writes nothing
 */
export async function takeClaims(tx: Db, sessionId: string, parties: SessionParties): Promise<void> {
  for (const one of claimsOf(parties)) {
    try {
      await tx.insert(claim).values({ id: newId("clm"), sessionId, ...one });
    } catch (error) {
      if (!isOverlap(error)) throw error;
      throw new Refusal({ reason: "time_taken", what: whatIsTaken(one, parties) });
    }
  }
}

/** Gives back everything a session took, or one thing of it. */
export async function freeClaims(tx: Db, sessionId: string, resource?: ClaimResource): Promise<void> {
  const what = resource === undefined ? undefined : eq(claim.resource, resource);
  await tx.delete(claim).where(and(eq(claim.sessionId, sessionId), what));
}

function whatIsTaken({ resource }: Claim, parties: SessionParties) {
  if (resource.startsWith("lane:")) return "lane";
  if (resource.startsWith("athlete:")) return "athlete";
  return resource === `coach:${parties.coachId}` ? "coach" : "second_adult";
}

/** The trigger's own words, on the error or on what the query layer wrapped. */
function isOverlap(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  return error.message.includes("claim_no_overlap") || isOverlap(error.cause);
}
