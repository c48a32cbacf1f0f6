import type { Db } from "@/db/client";
import { nameOf } from "@/server/data/names";
import { findRound, type Round } from "@/server/data/rounds";
import { Refusal } from "@/server/domain/errors/refusal";
import { fullName } from "@/server/domain/people/person";
import { isEnded } from "@/server/domain/reviews/round-state";

/** A round by its id. @throws Refusal `not_found` */
export async function roundInHand(db: Db, roundId: string): Promise<Round> {
  const row = await findRound(db, roundId);
  if (!row) throw new Refusal({ reason: "not_found" });
  return row;
}

/**
 * A round that no other coach has: it may be taken, put back or sent for a new clip by this one. How a round ended is
 * not told as somebody having taken it.
 * @throws Refusal `round_taken_by` with the name of the coach who has it, `not_found`
 */
export async function roundFreeFor(db: Db, roundId: string, coachPersonId: string): Promise<Round> {
  const row = await roundInHand(db, roundId);
  const holderId = row.coachPersonId;
  if (holderId !== null && holderId !== coachPersonId && !isEnded(row.state)) {
    throw new Refusal({ reason: "round_taken_by", coachName: fullName(await nameOf(db, holderId)) });
  }
  return row;
}
