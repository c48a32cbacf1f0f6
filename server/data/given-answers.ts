import { eq, lt } from "drizzle-orm";
import type { Db } from "@/db/client";
import { givenAnswer } from "@/db/schema/people";

/** An answer kept under its request id. */
export interface GivenAnswer {
  requestId: string;
  personId: string | null;
  path: string;
  /** Keyed hash (HMAC-SHA-256) of caller, path and content. */
  fingerprint: string;
  /** The answer as it went over the wire, serialised. */
  answer: string;
  atMs: number;
}

/** The answer given before under this request id, or null. */
export async function findGivenAnswer(tx: Db, requestId: string): Promise<GivenAnswer | null> {
  const [row] = await tx.select().from(givenAnswer).where(eq(givenAnswer.requestId, requestId));
  return row ?? null;
}

/** Keeps an answer in the transaction of its effect. */
export async function keepGivenAnswer(tx: Db, answer: GivenAnswer): Promise<void> {
  await tx.insert(givenAnswer).values(answer);
}

/** Drops answers given before an instant; a repeat so late is a new request. */
export async function dropGivenAnswersBefore(tx: Db, beforeMs: number): Promise<void> {
  await tx.delete(givenAnswer).where(lt(givenAnswer.atMs, beforeMs));
}
